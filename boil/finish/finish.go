package finish

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A Finish is a published point at which syrup or a further product is done: so
// far above the boiling point of water that day, from Low to High. Where sources
// disagree there is a Finish for each; show them all, for the disagreement is
// real.
type Finish struct {
	Product   string
	Low, High units.TempDiff
	// Printed is the strength that the source gives with the point; 0 if it
	// gives none.
	Printed  units.Brix
	Obtained string // read or memory
	Source   string
	Note     string
}

// ConfectionFinishes returns published points of further products. They were
// printed without a pressure and are taken as those of 1 atm.
//
// Hot sugar burns deep and sticks. Milk, nuts and butter in a recipe are
// allergens to name on the label.
//
// Cites ohio-extension, vermont-producers, ontario-producers,
// usda-handbook-134, cornell-208, producers-manuals.
func ConfectionFinishes() []Finish {
	const (
		ohio     = "Ohio State University Extension F-46"
		vermont  = "Vermont county producers page"
		ontario  = "Ontario maple producers confection sheet"
		cornell  = "USDA and Cornell"
		manuals  = "producers manuals"
		disagree = "the sources disagree: show both"
	)
	at := func(product, source string, low, high float64, obtained, note string) Finish {
		return Finish{Product: product, Low: units.FahrenheitDegrees(low), High: units.FahrenheitDegrees(high),
			Obtained: obtained, Source: source, Note: note}
	}
	return []Finish{
		at("granulated sugar", ohio, 40, 45, "memory", ""),
		at("granulated sugar", vermont, 48, 48, "read", "260 F"),
		at("soft molded candy", ontario, 32, 34, "read", "cool to 200 to 210 F, not below 160 F, then stir"),
		at("cream or butter", ontario, 18, 20, "read", disagree),
		at("cream or butter", cornell, 22, 24, "memory", disagree),
		at("sugar on snow", manuals, 22, 28, "memory", ""),
		at("fudge", vermont, 23, 23, "read", "235 F"),
		at("hard block sugar", vermont, 33, 34, "read", "246 F"),
		at("fondant", manuals, 27, 27, "memory", ""),
	}
}

// SyrupFinishes returns published points of syrup with the strength that each
// source gives. They lie up to 0.2 F under those of pure sucrose, [boil.Rise], at the
// same strength.
//
// Cites usda-handbook-134, producers-manuals, ohio-extension.
func SyrupFinishes() []Finish {
	at := func(b units.Brix, rise float64, obtained, source, note string) Finish {
		d := units.FahrenheitDegrees(rise)
		return Finish{Product: "syrup", Low: d, High: d, Printed: b, Obtained: obtained, Source: source, Note: note}
	}
	return []Finish{
		at(65.5, 7.0, "memory", "USDA Agriculture Handbook 134", "the standard of its day"),
		at(66.0, 7.1, "memory", "North American producers manual and state bulletins", ""),
		at(66.0, 7, "read", "Ohio State University Extension", "219 F; whole degrees"),
		at(66.9, 7.5, "memory", "practice in states with a 66.9 Brix minimum", ""),
	}
}

// Strength returns the sugar content that a pure sucrose solution has at the
// point at 1 atm; Middle belongs to the middle of the rise. The moisture of the
// product is what is missing to 100: see [Finish.Moisture].
//
// Range: rises of 0 to that of 92 Brix, 50.1 F, Low no more than High.
// Uncertainty: that of [boil.Rise], which is less sure above 85 Brix; a sap
// with inverted sugar gives a moister product.
//
// Source: [boil.BrixFromRise] at 1 atm. Check value: 87.6 Brix at a 32 F rise, where
// 7.41 lb of solids make 8.45 lb of product (computed).
func (f Finish) Strength() (units.Span[units.Brix], error) {
	return f.strength("finish.Finish.Strength")
}

func (f Finish) strength(fn string) (units.Span[units.Brix], error) {
	low, err := strength(fn, sugar.Solute{}, f.Low, units.Atmosphere)
	if err != nil {
		return limit.NoSpan[units.Brix](), limit.Renamed(fn, err, "rise", "Finish.Low")
	}
	high, err := strength(fn, sugar.Solute{}, f.High, units.Atmosphere)
	if err != nil {
		return limit.NoSpan[units.Brix](), limit.Renamed(fn, err, "rise", "Finish.High")
	}
	if !(f.Low <= f.High || limit.Same(f.Low, f.High)) {
		return limit.NoSpan[units.Brix](), &units.RangeError{Func: fn, Arg: "Finish.High", What: "rise, high end", Value: f.High.CelsiusDegrees(),
			Low: f.Low.CelsiusDegrees(), High: math.Inf(1), Unit: "C deg", Hint: "the ends are the wrong way round"}
	}
	middle, err := strength(fn, sugar.Solute{}, (f.Low+f.High)/2, units.Atmosphere)
	if err != nil {
		return limit.NoSpan[units.Brix](), err
	}
	return units.Span[units.Brix]{Low: low, Middle: middle, High: high}, nil
}

// Moisture returns the water in the product, in percent by mass: what
// [Finish.Strength] leaves to 100. The dry end is Low.
//
// Range, errors and source as there. Check value: 12.4 percent at a 32 F rise
// (computed).
func (f Finish) Moisture() (units.Span[units.Share], error) {
	s, err := f.strength("finish.Finish.Moisture")
	if err != nil {
		return limit.NoSpan[units.Share](), err
	}
	return units.Span[units.Share]{Low: units.Share(100 - s.High), Middle: units.Share(100 - s.Middle), High: units.Share(100 - s.Low)}, nil
}

// At returns the temperatures between which the product is done under the
// pressure at the pan: those of its strength, not of its rise, which shrinks as
// one climbs.
//
// Range: 20 to 120 kPa; the rest as for [Finish.Strength]. Check value: 243.95
// and 245.95 F for a rise of 32 to 34 F at 1 atm, where water boils at 211.95 F
// (computed).
func (f Finish) At(pressure units.Pressure) (low, high units.Temperature, err error) {
	const fn = "finish.Finish.At"
	s, err := f.strength(fn)
	if err != nil {
		return units.Celsius(math.NaN()), units.Celsius(math.NaN()), err
	}
	if low, err = point(fn, sugar.Solute{}, s.Low, pressure); err != nil {
		return units.Celsius(math.NaN()), units.Celsius(math.NaN()), err
	}
	if high, err = point(fn, sugar.Solute{}, s.High, pressure); err != nil {
		return units.Celsius(math.NaN()), units.Celsius(math.NaN()), err
	}
	return low, high, nil
}
