package packing_test

import (
	"fmt"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// An invented quart jug that holds 1000 mL to the brim. A US gallon of 66.9
// Brix weighs 11.0759 lb in air, a quart 2.769; 946.35 x 1.02982 = 974.58 mL.
func ExampleContainer_Fill() {
	jug := packing.Container{Name: "quart jug", Label: units.USQuart, Brimful: units.Milliliters(1000)}
	f, err := jug.Fill(66.9, units.Fahrenheit(185), 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("fill to", f.Hot.Text(units.Milliliter, 0))
	fmt.Println("headspace", f.Headspace.Text(units.Milliliter, 0), "hot,", f.CooledHead.Text(units.Milliliter, 0), "at 68 F")
	fmt.Println("net weight", f.NetWeight.Text(units.Pound, 3))
	// Output:
	// fill to 975 mL
	// headspace 25 mL hot, 54 mL at 68 F
	// net weight 2.769 lb
}

// 3.35 US gal at 68 F is 13.4 quarts: with 10 quart jugs and plenty of pints, 10
// quarts and 6 pints leave 0.4 quarts.
func ExampleFewestContainers() {
	lot, err := sugar.NewLot(units.USGallons(3.35), 66.9, units.Celsius(20))
	if err != nil {
		fmt.Println(err)
		return
	}
	lot, _ = lot.At(units.Fahrenheit(185))
	plan, err := packing.FewestContainers(lot, 0,
		packing.Supply{Container: packing.Container{Name: "quarts", Label: units.USQuart}, OnHand: 10},
		packing.Supply{Container: packing.Container{Name: "pints", Label: units.USPint}, OnHand: packing.Plenty},
	)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, l := range plan.Lines {
		fmt.Println(l.Count, l.Container.Name)
	}
	fmt.Println(plan.Left.Text(units.USQuart, 2), "left")
	// Output:
	// 10 quarts
	// 6 pints
	// 0.40 US qt left
}

// The same gallons, of which 8 pints are promised: 13.4 quarts less 4 hold 9
// quarts, and 0.4 are left. OnHand 8 would say: exactly 8.
func ExampleSupply() {
	lot, err := sugar.NewLot(units.USGallons(3.35), 66.9, units.Celsius(20))
	if err != nil {
		fmt.Println(err)
		return
	}
	plan, err := packing.FewestContainers(lot, 0,
		packing.Supply{Container: packing.Container{Name: "quarts", Label: units.USQuart}, OnHand: 10},
		packing.Supply{Container: packing.Container{Name: "pints", Label: units.USPint}, OnHand: packing.Plenty, AtLeast: 8},
	)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, l := range plan.Lines {
		fmt.Println(l.Count, l.Container.Name)
	}
	// Output:
	// 9 quarts
	// 8 pints
}

// One quart to two pints: 3.35 US gal make 6 sets of 2 quarts, 12 of 13.4
// quarts; a quart and no more fits into the rest.
func ExampleInMix() {
	lot, err := sugar.NewLot(units.USGallons(3.35), 66.9, units.Celsius(20))
	if err != nil {
		fmt.Println(err)
		return
	}
	plan, err := packing.InMix(lot, 0,
		packing.Mix{Container: packing.Container{Name: "quarts", Label: units.USQuart}, Parts: 1},
		packing.Mix{Container: packing.Container{Name: "pints", Label: units.USPint}, Parts: 2},
	)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(plan.Sets, "sets")
	for _, l := range plan.Lines {
		fmt.Println(l.Count, l.Container.Name)
	}
	// Output:
	// 6 sets
	// 7 quarts
	// 12 pints
}

// Four invented pints of 66.9 Brix; 11.0759/8 is 1.3845 lb on the scale. The
// allowance is the inspector's figure, here invented as 12 mL.
func ExampleCheckNet() {
	check, err := packing.CheckNet(units.USPint, 66.9, units.Milliliters(12), 0,
		[]units.Mass{units.Pounds(1.390), units.Pounds(1.380), units.Pounds(1.392), units.Pounds(1.386)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("label weighs %.4f lb; %d short; passes: %v\n", check.LabelWeight.Pounds(), check.Short, check.Passes)
	// Output: label weighs 1.3845 lb; 0 short; passes: true
}

// Ten of an invented lot of forty half liters, 66.9 Brix, by weight: one of 640 g
// is short of the 663.7 that the label weighs by more than the tolerance of 15 mL,
// 19.9 g, and one does not fail a lot of ten.
func ExampleCheckCanadianLot() {
	needed, _ := packing.CanadianSample(40)
	net := make([]units.Mass, needed)
	for i := range net {
		net[i] = 668 * units.Gram
	}
	net[3] = 640 * units.Gram
	check, err := packing.CheckCanadianLot(500*units.Milliliter, 66.9, 40, net)
	fmt.Println(check.Tolerance.Text(units.Milliliter, 0), check.Short, check.ShortFails, check.Passes, err)
	// Output: 15 mL 1 2 true <nil>
}

func ExampleCanadianTolerance() {
	t, err := packing.CanadianTolerance(946 * units.Milliliter)
	fmt.Println(t.Text(units.Milliliter, 0), err)
	// Output: 15 mL <nil>
}

func ExampleCanadianLotRule() {
	r, err := packing.CanadianLotRule(32)
	fmt.Println(r.T, r.ShortFails, err)
	// Output: 2.746 3 <nil>
}

func ExampleLabelUS() {
	us, err := packing.LabelUS(units.USPint)
	fmt.Println(us, err)
	canada, err := packing.LabelCanada(540 * units.Milliliter)
	fmt.Println(canada, err)
	// Output:
	// 16 FL OZ (1 PT) 473 mL <nil>
	// 540 mL (19 fl oz) <nil>
}
