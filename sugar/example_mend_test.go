package sugar_test

import (
	"fmt"
	"log"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A can is what stands on the shelf after two evenings; both are invented.
type can struct {
	name         string
	brix         units.Brix
	transmission units.Share // of light, 560 nm, 10 mm
}

var (
	thick = can{"Tuesday's", 68.9, 40}
	thin  = can{"Thursday's", 64, 80}
)

// Two batches that are both wrong mend each other: how much of each, what comes
// of it, whether it may be called syrup, and what color it has.
//
// By hand: the square rule gives 66.9 - 64 = 2.9 parts of the thick one and
// 68.9 - 66.9 = 2.0 of the thin one, by mass; 2.9 x 68.9 + 2.0 x 64 = 327.81 =
// 4.9 x 66.9. Absorbances are 0.398 and 0.097; by volume the thick one is
// 2.9/1.341 = 2.16 L, the thin one 2.0/1.310 = 1.53 L, and the mean 0.273 lets
// 53 percent through. The US rule is 66.0 to 68.9 Brix, Amber 50 to below 75.
func Example_mend() {
	const target units.Brix = 66.9
	room := units.Celsius(20)

	// How much of each. Parts are by mass: put the cans on the scale.
	a, b, err := sugar.SquareParts(thick.brix, thin.brix, target)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%.1f parts of %s, %.1f of %s\n", a, thick.name, b, thin.name)

	// What comes of it.
	first, err := sugar.NewLotByMass(units.Kilograms(a), thick.brix, room)
	if err != nil {
		log.Fatal(err)
	}
	second, err := sugar.NewLotByMass(units.Kilograms(b), thin.brix, room)
	if err != nil {
		log.Fatal(err)
	}
	syrup, err := sugar.Blend(first, second)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(syrup.Mass().Text(units.Kilogram, 1), "of", syrup.Brix().Text(1))

	// May it be called syrup? The hydrometer is good to 0.2 Brix.
	rule, err := sugar.UnitedStates.Standard()
	if err != nil {
		log.Fatal(err)
	}
	verdict, err := rule.Judge(syrup.Brix(), 0.2)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(verdict)

	// Which color? By volume, and never the mean of the transmissions.
	light, err := sugar.BlendTransmission(
		sugar.Tinted{Volume: first.Volume(), Transmission: thick.transmission},
		sugar.Tinted{Volume: second.Volume(), Transmission: thin.transmission},
	)
	if err != nil {
		log.Fatal(err)
	}
	class, err := sugar.ColorClassOf(light)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%.0f %% of the light: %v\n", light.Percents(), class)
	// Then back to 180 F or above, through the filter, and into the jar.

	// Output:
	// 2.9 parts of Tuesday's, 2.0 of Thursday's
	// 4.9 kg of 66.9 Brix
	// inside
	// 53 % of the light: Amber
}
