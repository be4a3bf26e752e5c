package density_test

import (
	"fmt"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// A hydrometer graduated at 20 C in syrup of 30 C: NBS Circular C440 adds 0.80
// to a reading of 65 (from memory).
func ExampleHydrometer_Brix() {
	h := density.Hydrometer{GraduatedAt: units.Celsius(20)}
	b, err := h.Brix(65.0, units.Celsius(30))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(2))
	// Output: 65.80 Brix
}

// Where the hot mark for 66.9 Brix stands on a 60 F scale.
func ExampleHydrometer_Reading() {
	h := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	reading, err := h.Reading(66.9, units.Fahrenheit(211))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(reading.Text(2))
	// Output: 59.00 Brix
}

// A sap hydrometer graduated at 38 F in sap of 60 F.
func ExampleHydrometer() {
	h := density.Hydrometer{GraduatedAt: units.Fahrenheit(38)}
	b, err := h.Brix(2.0, units.Fahrenheit(60))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(2))

	// One that was never told its graduation is refused.
	_, err = density.Hydrometer{}.Brix(2.0, units.Fahrenheit(60))
	fmt.Println(err)
	// Output:
	// 2.20 Brix
	// density.Hydrometer.Brix: hydrometer graduation 0 C is outside 1 to 40 C: give the temperature printed on the scale, such as 60 F or 20 C
}

// The Baume marks stand for a specific gravity 20/20 C, whatever temperature
// the stem is true at.
func ExampleHydrometer_BrixFromBaume() {
	h := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	b, err := h.BrixFromBaume(36.06, units.Fahrenheit(60))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(1))
	// Output: 66.9 Brix
}

func ExampleHydrometer_Baume() {
	h := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	be, err := h.Baume(66.9, units.Fahrenheit(60))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f Be\n", be)
	// Output: 36.06 Be
}

// In plain water at its own temperature this stem shows 0.3 where it should
// show 0; from then on the error is taken off.
func ExampleHydrometer_CheckedIn() {
	h := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	h, err := h.CheckedIn(0, units.Fahrenheit(60), 0.3)
	if err != nil {
		fmt.Println(err)
		return
	}
	b, err := h.Brix(66.3, units.Fahrenheit(60))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(h.ReadsHigh.Text(1), "too much;", b.Text(1))
	// Output: 0.3 Brix too much; 66.0 Brix
}

// The data behind a card for the wall: what a 60 F stem shows in syrup of 66.9
// Brix as the cup cools.
func ExampleHydrometer_FillCupTable() {
	h := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	rows := []density.CupRow{{At: units.Fahrenheit(211)}, {At: units.Fahrenheit(60)}}
	if err := h.FillCupTable(66.9, rows); err != nil {
		fmt.Println(err)
		return
	}
	for _, r := range rows {
		note := ""
		if r.Extrapolated {
			note = " (extrapolated)"
		}
		fmt.Printf("%s: %s%s\n", r.At.Text(units.ScaleFahrenheit, 0), r.Brix.Text(1), note)
	}
	// Output:
	// 211 F: 59.0 Brix (extrapolated)
	// 60 F: 66.9 Brix
}

// Both scales of a stem at its own temperature.
func ExampleCupRow() {
	rows := []density.CupRow{{At: units.Fahrenheit(60)}}
	if err := (density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}).FillCupTable(66.9, rows); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s, %.2f Be\n", rows[0].Brix.Text(1), rows[0].Baume)
	// Output: 66.9 Brix, 36.06 Be
}

// Where the hot mark for 66.9 Brix stands on a 60 F stem.
func ExampleMark_On() {
	hot := density.Mark{For: 66.9, At: units.Fahrenheit(211)}
	stands, err := hot.On(density.Hydrometer{GraduatedAt: units.Fahrenheit(60)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(stands.Text(2))
	// Output: 59.00 Brix
}

// The syrup floats the hot mark, but the cup has cooled to 180 F: it is thin.
func ExampleMark_Brix() {
	hot := density.Mark{For: 66.9, At: units.Fahrenheit(211)}
	for _, f := range []float64{211, 180} {
		b, err := hot.Brix(units.Fahrenheit(f))
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("in a cup of %g F: %s\n", f, b.Text(1))
	}
	// Output:
	// in a cup of 211 F: 66.9 Brix
	// in a cup of 180 F: 65.1 Brix
}

func ExampleMark() {
	cold := density.Mark{For: 66.9, At: units.Fahrenheit(60)}
	stands, err := cold.On(density.Hydrometer{GraduatedAt: units.Fahrenheit(60)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(stands.Text(1))
	// Output: 66.9 Brix
}

// The table of 1936 takes 0.39 off a reading of 60 at 15 C.
func ExampleRefractometer_Brix() {
	b, err := density.Refractometer{}.Brix(60, units.Celsius(15))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(2))
	// Output: 59.61 Brix
}

// At 30 C a plain refractometer shows 0.80 less than the truth at 66.9.
func ExampleRefractometer_Reading() {
	reading, err := density.Refractometer{}.Reading(66.9, units.Celsius(30))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(reading.Text(2))
	// Output: 66.10 Brix
}

func ExampleRefractometer() {
	atc := density.Refractometer{Compensated: true}
	b, err := atc.Brix(66.9, units.Celsius(28)) // it has corrected itself
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(1))
	// Output: 66.9 Brix
}

func ExampleRefractometer_CheckedIn() {
	r, err := density.Refractometer{Compensated: true}.CheckedIn(0, units.Celsius(20), 0.2)
	if err != nil {
		fmt.Println(err)
		return
	}
	b, err := r.Brix(66.2, units.Celsius(20))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(1))
	// Output: 66.0 Brix
}

// A gallon that weighs 11.0759 lb in air is syrup of 66.9 Brix.
func ExampleFlask_Brix() {
	f := density.Flask{Volume: units.USGallon, CalibratedAt: units.Celsius(20)}
	b, err := f.Brix(units.Pounds(11.0759), units.Celsius(20))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(1))
	// Output: 66.9 Brix
}

func ExampleFlask_Net() {
	f := density.Flask{Volume: units.USGallon, CalibratedAt: units.Celsius(20)}
	net, err := f.Net(66.9, units.Celsius(20))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(net.Text(units.Pound, 4))
	// Output: 11.0759 lb
}

func ExampleFlask() {
	_, err := density.Flask{}.Brix(units.Pounds(11), units.Celsius(20))
	fmt.Println(err)
	// Output: density.Flask.Brix: volume of the flask 0 L is outside 1e-06 to 1e+09 L: give what the flask holds, such as 500 mL
}

// Of a kilogram of 66.9 Brix 669 g are sugar. If 5 g of water steam off it is
// 669/995, 0.34 more.
func ExampleNewCheckSolution() {
	s, err := density.NewCheckSolution(units.Kilogram, 66.9)
	if err != nil {
		fmt.Println(err)
		return
	}
	b, err := s.Brix(5 * units.Gram)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(s.Sugar.Text(units.Gram, 0), s.Water.Text(units.Gram, 0), b.Text(2))
	// Output: 669 g 331 g 67.24 Brix
}

// For a sap hydrometer 20 g in a kilogram. What the hydrometer shows in it, less
// what it should, is taken off every reading: marked at 60 F, it should show 2.0
// there.
func ExampleCheckSolution() {
	s, err := density.NewCheckSolution(units.Kilogram, 2)
	if err != nil {
		fmt.Println(err)
		return
	}
	h, err := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}.CheckedIn(2, units.Fahrenheit(60), 2.3)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(s.Sugar.Text(units.Gram, 0), h.ReadsHigh.Text(1))
	// Output: 20 g 0.3 Brix
}

func ExampleCheckSolution_Brix() {
	b, err := density.CheckSolution{Sugar: 669 * units.Gram, Water: 331 * units.Gram}.Brix(0)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(1))
	// Output: 66.9 Brix
}
