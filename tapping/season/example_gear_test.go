package season_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// exampleGear compares invented prices: pails at hand with a pump of 20 inHg.
func exampleGear() []season.GearSeason {
	pump, _ := season.WithVacuum(20 * units.InchMercury)
	s, _ := season.CompareGear(season.GearUse{Taps: 100, FlowDays: 20, Worth: 0.4, Per: units.USGallon, Hour: 10}, []season.Gear{
		{Name: "pails", Depth: 1.5 * units.Inch, Clean: units.Whole, Round: time.Hour},
		{Name: "pump", Method: pump, Depth: 1.5 * units.Inch, Clean: units.Whole, Round: 15 * time.Minute, First: 1500, Yearly: 150},
	})
	return s
}

// By hand: the pump brings 200 more in a poor season, so 1500 takes 7.5 of them.
func ExampleCompareGear() {
	s := exampleGear()[1]
	fmt.Printf("%s: %.1f seasons at the worst, %v of walking\n", s.Name, s.PaysTo, s.Walking)
	// Output: pump: 7.5 seasons at the worst, 5h0m0s of walking
}

func ExampleGearSeason() {
	s := exampleGear()[0]
	fmt.Printf("%.0f to %.0f left\n", s.LeastLeft, s.MostLeft)
	// Output: 0 to 400 left
}

func ExampleGear() {
	_, err := season.CompareGear(season.GearUse{Taps: 10, FlowDays: 20, Per: units.USGallon}, []season.Gear{{Name: "pails"}})
	fmt.Println(err)
	// Output: season.CompareGear: gear 1: depth 0 in is outside 1 to 4 in: 1.5 in is usual
}

func ExampleGearUse() {
	_, err := season.CompareGear(season.GearUse{}, nil)
	fmt.Println(err)
	// Output: season.CompareGear: taps 0 is outside 1 to 1000000: the holes of the stand
}

// The source prints 63 % at 1 in.
func ExampleSapByDepth() {
	s, _ := season.SapByDepth(1 * units.Inch)
	fmt.Println(s.Text(0))
	// Output: 63 %
}

func ExampleCleaningFigures() {
	f := season.CleaningFigures()[0]
	fmt.Println(f.What, f.Low.Text(0))
	// Output: new spout and drop against a spout that stops backflow and an old drop 21 %
}

func ExampleCleaningFigure() {
	fmt.Println(season.CleaningFigure{Left: true}.Left)
	// Output: true
}

// A pail of 2 gallons under two taps runs over where a tap gives more than 1.
func ExampleSapRecord_Over() {
	over, _ := exampleRecord().Over(2 * units.USGallon / 2)
	fmt.Println(over < 10*units.Percent)
	// Output: true
}
