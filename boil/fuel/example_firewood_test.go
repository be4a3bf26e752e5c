package fuel_test

import (
	"fmt"

	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/units"
)

// 20 percent of the wood as it lies are 25 percent of the dry wood in it.
func ExampleWetMoisture_Dry() {
	fmt.Printf("%.0f\n", float64(fuel.WetMoisture(20).Dry()))
	// Output: 25
}

// Wood at 100 percent, dry basis, is half water.
func ExampleDryMoisture_Wet() {
	fmt.Printf("%.0f\n", float64(fuel.DryMoisture(100).Wet()))
	// Output: 50
}

// The form 8600 (1-M) - 1050 (M + 0.54 (1-M)), from memory: 6,880 - 664 at 20
// percent.
func ExampleWoodHeat() {
	h, err := fuel.WoodHeat(20)
	fmt.Println(h.Text(units.BtuITPerPound, 0), err)
	// Output: 6216 Btu/lb <nil>
}

func ExampleNetWood() {
	f, err := fuel.NetWood(20)
	fmt.Println(f.Heat.Text(units.BtuIT, 0), f.Basis, err)
	// Output: 6216 Btu net <nil>
}

// Sugar maple in the table of the University of Kentucky.
func ExampleFirewoodKentucky() {
	for _, w := range fuel.FirewoodKentucky() {
		if w.Species == "Sugar maple" {
			fmt.Println(w.Heat.Text(units.MillionBtuIT, 1), w.Basis)
		}
	}
	// Output: 25.9 MMBtu gross
}

// Sugar maple in the table of the Missouri Department of Conservation, on
// another basis.
func ExampleFirewoodMissouri() {
	for _, w := range fuel.FirewoodMissouri() {
		if w.Species == "Maple (sugar)" {
			fmt.Println(w.Heat.Text(units.MillionBtuIT, 1), w.Basis)
		}
	}
	// Output: 25.0 MMBtu less moisture
}

// What the table has in green sugar maple.
func ExampleFirewood_CordWeight() {
	maple := fuel.FirewoodMissouri()[10]
	green, err := maple.CordWeight(maple.Green)
	fmt.Println(maple.Species, green.Text(units.Pound, 0), err)
	// Output: Maple (sugar) 4386 lb <nil>
}

// 3,577 lb at 20 percent less a sixth of water.
func ExampleFirewood_OvenDry() {
	fmt.Println(fuel.FirewoodMissouri()[10].OvenDry().Text(units.Pound, 0))
	// Output: 2981 lb
}

func ExampleFirewood_Cord() {
	oak := fuel.FirewoodKentucky()[3]
	fuel := oak.Cord()
	fmt.Println(fuel.Name, fuel.Heat.Text(units.MillionBtuIT, 1), fuel.Basis)
	// Output: White oak 27.9 MMBtu gross
}

// The same cord wet and dry: 3,726 lb of 6,216 Btu/lb at 20 percent wet basis.
func ExampleFirewood_Net() {
	maple := fuel.FirewoodMissouri()[10]
	dry, err := maple.Net(fuel.WetMoisture(20).Dry())
	fmt.Println(dry.Heat.Text(units.MillionBtuIT, 1), dry.Basis, err)
	// Output: 23.2 MMBtu net <nil>
}

func ExampleFirewood() {
	w := fuel.FirewoodKentucky()[5]
	fmt.Println(w.Species, w.Note)
	// Output: Beech more heat for its weight than any other hardwood: probably a slip of the source
}

// A load thrown in a trailer of 90 cubic feet is half a cord (from memory).
func ExampleFullCord() {
	v, err := fuel.FullCord(90*units.CubicFoot, fuel.LooseShort)
	fmt.Println(v.Text(units.Cord, 2), err)
	// Output: 0.50 cord <nil>
}

func ExamplePile() {
	v, err := fuel.FullCord(128*units.CubicFoot, fuel.Stacked)
	fmt.Println(v.Text(units.Cord, 0), err)
	// Output: 1 cord <nil>
}

func ExamplePile_String() {
	for _, pile := range []fuel.Pile{fuel.Stacked, fuel.LooseShort, fuel.LooseLong} {
		fmt.Println(pile)
	}
	// Output:
	// stacked
	// loose, 12 or 16 in
	// loose, 24 in
}

// Three faces of 16 in sticks are a cord, by definition.
func ExampleFaceCord() {
	face, err := fuel.FaceCord(16 * units.Inch)
	fmt.Println((3*face).Text(units.Cord, 2), err)
	// Output: 1.00 cord <nil>
}
