package packing_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

func ExampleCappingLeast() {
	fmt.Println(packing.CappingLeast().Text(units.ScaleFahrenheit, 0))
	// Output: 180 F
}

// Ontario food safety manual D.6.3: 185 to 190 F at the filler, so that capping
// is at 180 F or above.
func ExamplePackingHeatOf() {
	for _, f := range []float64{175, 187, 200} {
		h, err := packing.PackingHeatOf(units.Fahrenheit(f))
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(f, h.Advice())
	}
	// Output:
	// 175 too cool to seal: mold may grow; heat it again
	// 187 right at the filler: seal at 180 F or above and hold sealed 5 minutes
	// 200 hotter than any source read advises: let it cool to 190 F; it darkens, throws niter and scalds
}

func ExamplePackingHeat_String() {
	fmt.Println(packing.EnoughToCap)
	text, _ := packing.RightToFill.MarshalText()
	var h packing.PackingHeat
	fmt.Println(h.UnmarshalText(text), h)
	// Output:
	// enough to cap
	// <nil> right to fill
}

// Two invented glass bottles at 68 F filled at 187 F. 50 mL is 66 g of syrup at
// 2.905 kJ/(kg K), 0.1929 kJ/K, against 60 g of glass, 0.0504 kJ/K: of the 119 F
// between them 0.0504/0.2433 goes, 24.6 F. For 1257 g in 450 g of glass it is
// 0.378/4.054, 11.1 F.
func ExampleContainer_AfterFilling() {
	for _, bottle := range []packing.Container{
		{Name: "50 mL", Label: units.Milliliters(50), Mass: units.Grams(60)},
		{Name: "quart", Label: units.USQuart, Mass: units.Grams(450)},
	} {
		t, err := bottle.AfterFilling(66.9, units.Fahrenheit(187), units.Fahrenheit(68))
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(bottle.Name, t.Text(units.ScaleFahrenheit, 1), t.Compare(packing.CappingLeast()) >= 0)
	}
	// Output:
	// 50 mL 162.4 F false
	// quart 175.9 F false
}

// The quart of the example above, warmed to 150 F, needs syrup at 183 F.
func ExampleContainer_FillAt() {
	quart := packing.Container{Name: "quart", Label: units.USQuart, Mass: units.Grams(450)}
	t, err := quart.FillAt(66.9, packing.CappingLeast(), units.Fahrenheit(150))
	fmt.Println(t.Text(units.ScaleFahrenheit, 0), err)
	// Output: 183 F <nil>
}

// A quart of 440 g, filled at 187 F. To stand at 180 F, 1257 g of syrup at 2.925
// kJ/(kg K) give 3.89 K x 3.677 kJ/K = 14.3 kJ; 0.3696 kJ/K of glass take that up
// over 38.7 K, 69.6 F, from 110 F.
func ExampleContainer_WarmTo() {
	quart := packing.Container{Name: "quart", Label: units.USQuart, Mass: units.Grams(440)}
	t, err := quart.WarmTo(66.9, units.Fahrenheit(187), packing.CappingLeast())
	fmt.Println(t.Text(units.ScaleFahrenheit, 0), err)
	// Output: 110 F <nil>
}

// Ontario food safety manual D.6.3; OMAFRA Hort Matters 2014.
func ExamplePourLeast() {
	fmt.Println(packing.PourLeast().Text(units.ScaleFahrenheit, 0))
	// Output: 185 F
}

// Ontario food safety manual D.6.3; Ohio State University Extension: 180 to 190 F.
func ExamplePourMost() {
	fmt.Println(packing.PourMost().Text(units.ScaleFahrenheit, 0))
	// Output: 190 F
}

// 7 US gal through filters of 3.
func ExampleFiltersFor() {
	n, err := packing.FiltersFor(units.USGallons(7), packing.GravityFilter)
	fmt.Println(n, err)
	// Output: 3 <nil>
}

// 66 Brix is 20.5 mPa s at 60 C and 10.0 at 80 C: twice the time.
func ExampleFilterTime() {
	t, err := packing.FilterTime(10*time.Minute, 66, units.Celsius(80), units.Celsius(60))
	fmt.Printf("%.0f minutes %v\n", t.Minutes(), err)
	// Output: 20 minutes <nil>
}

// An invented dose of 0.1 lb to the gallon.
func ExampleFilterAid() {
	m, err := packing.FilterAid(units.USGallons(12), units.PoundsPerUSGallon(0.1))
	fmt.Println(m.Text(units.Pound, 1), err)
	// Output: 1.2 lb <nil>
}

// An invented cake of 4.1 lb wet, of 1.2 lb of filter aid and 0.2 lb of niter:
// 2.7 lb of syrup, at 11.08 lb to the gallon a quarter of one.
func ExampleCakeLoss() {
	lost, err := packing.CakeLoss(units.Pounds(4.1), units.Pounds(1.2), units.Pounds(0.2), 66.9, units.Celsius(20))
	fmt.Println(lost.Mass().Text(units.Pound, 1), lost.Volume().Text(units.USGallon, 2), err)
	// Output: 2.7 lb 0.24 US gal <nil>
}
