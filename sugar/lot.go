package sugar

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// What a lot may be made of. The amounts are far beyond any sugarhouse: they
// catch a wrong unit and keep every sum finite.
var (
	lotVolume = limit.Range{Arg: "volume", What: "volume", Low: 0, High: 1e6, Unit: "m3", Above: "check its unit"}
	lotMass   = limit.Range{Arg: "mass", What: "mass", Low: 0, High: 1e9, Unit: "kg", Above: "check its unit"}
)

// The strengths of a lot, those of [density.Solution].
const (
	thinnest  units.Brix = 0
	strongest units.Brix = 85
)

// A Lot is an amount of sap, concentrate or syrup at one strength and one
// temperature. It holds what does not change when it is warmed or poured
// together, the mass and the sugar in it; volumes follow from the density.
//
// The zero Lot is empty. Lots are made by [NewLot], [NewLotByMass] and the
// operations of this package, checked when they are made, so that their methods
// need no error. A Lot is a value: operations return new ones.
type Lot struct {
	mass  units.Mass
	sugar units.Mass
	at    units.Temperature
}

// NewLot returns the lot of a measured volume, its sugar content, and the
// temperature at which the volume was measured.
//
// Range: 0 to 1e6 m3, 0 to 85 Brix, 0 to 110 C; a volume of 0 gives the empty
// lot. Uncertainty: that of the volume, and of [density.Solution].
//
// Check value: 1 US gal of 68.9 Brix at 20 C weighs 5.0745 kg, 11.187 lb
// (computed).
func NewLot(volume units.Volume, brix units.Brix, at units.Temperature) (Lot, error) {
	rho, err := density.Solution(brix, at)
	if err != nil {
		return Lot{}, units.Under("sugar.NewLot", err)
	}
	if err := lotVolume.Check("sugar.NewLot", float64(volume)); err != nil {
		return Lot{}, err
	}
	return lot(rho.Mass(volume), brix, at), nil
}

// NewLotByMass returns the lot of a mass, its sugar content and its
// temperature. The mass is the true one: a scale in air shows 0.08 to 0.1
// percent less (see [Lot.WeightInAir]), which seldom matters.
//
// Range: 0 to 1e9 kg, 0 to 85 Brix, 0 to 110 C; a mass of 0 gives the empty
// lot.
//
// Check value: 100 lb of 66.9 Brix hold 66.9 lb of sugar, by definition.
func NewLotByMass(mass units.Mass, brix units.Brix, at units.Temperature) (Lot, error) {
	if _, err := density.Solution(brix, at); err != nil {
		return Lot{}, units.Under("sugar.NewLotByMass", err)
	}
	if err := lotMass.Check("sugar.NewLotByMass", float64(mass)); err != nil {
		return Lot{}, err
	}
	return lot(mass, brix, at), nil
}

// lot is [NewLotByMass], unchecked.
func lot(mass units.Mass, brix units.Brix, at units.Temperature) Lot {
	return parts(mass, brix.Sugar(mass), at)
}

// The temperatures of a lot in degrees Celsius, those of [density.Solution].
const (
	coldestLot = 0.0
	hottestLot = 110.0
)

// parts makes a lot of its mass and its sugar, unchecked. Nothing weighs
// nothing at any temperature, so that all empty lots are the same.
func parts(mass, sugar units.Mass, at units.Temperature) Lot {
	if mass <= 0 {
		return Lot{}
	}
	if c := at.Celsius(); !(c >= coldestLot && c <= hottestLot) { // by a hair
		at = units.Celsius(min(max(c, coldestLot), hottestLot))
	}
	return Lot{mass: mass, sugar: min(max(sugar, 0), mass), at: at}
}

// Empty reports whether there is nothing in the lot.
func (l Lot) Empty() bool { return l.mass == 0 }

// Mass returns the mass of the lot.
func (l Lot) Mass() units.Mass { return l.mass }

// Sugar returns the mass of sugar in the lot.
func (l Lot) Sugar() units.Mass { return l.sugar }

// Water returns the mass of water in the lot.
func (l Lot) Water() units.Mass { return l.mass - l.sugar }

// Brix returns the sugar content of the lot; NaN if it is empty, since nothing
// has no strength.
func (l Lot) Brix() units.Brix {
	if l.Empty() {
		return units.Brix(math.NaN())
	}
	// Rounding must not put a lot at the limit outside it.
	return min(units.Brix(100*float64(l.sugar)/float64(l.mass)), strongest)
}

// has reports whether the lot has that strength already: a lot of 66.9 Brix is
// made of its mass and its sugar, which may give back 66.90000000000001.
func (l Lot) has(b units.Brix) bool { return limit.Same(l.Brix(), b) }

// Temperature returns the temperature of the lot; NaN if it is empty.
func (l Lot) Temperature() units.Temperature {
	if l.Empty() {
		return units.Celsius(math.NaN())
	}
	return l.at
}

// Density returns the density of the lot at its temperature, in vacuo; NaN if
// it is empty. The scale is that of [density.Solution].
func (l Lot) Density() units.Density {
	// A lot lies in the range by construction; the empty one gives NaN.
	rho, _ := density.Solution(l.Brix(), l.Temperature())
	return rho
}

// Volume returns the volume of the lot at its temperature.
func (l Lot) Volume() units.Volume {
	if l.Empty() {
		return 0
	}
	return l.mass.Volume(l.Density())
}

// WeightInAir returns what a scale in air shows for the lot alone, 0.1 percent
// less than the mass for sap and 0.08 for syrup: see [density.InAir].
//
// Check value: 1 US gal of 66.9 Brix at 20 C has a mass of 11.0843 lb and
// weighs 11.0759 lb in air (computed).
func (l Lot) WeightInAir() units.Mass {
	if l.Empty() {
		return 0
	}
	return density.InAir(l.Density()).Mass(l.Volume())
}

// At returns the same lot warmed or cooled to the given temperature: mass and
// sugar stay, the volume changes.
//
// Range: 0 to 110 C. Check value: 66.9 Brix packed at 185 F takes 2.896 percent
// less room at 68 F (computed).
func (l Lot) At(at units.Temperature) (Lot, error) {
	b := thinnest // the check of the temperature is the same at any strength
	if !l.Empty() {
		b = l.Brix()
	}
	if _, err := density.Solution(b, at); err != nil {
		return Lot{}, units.Under("sugar.Lot.At", err)
	}
	return parts(l.mass, l.sugar, at), nil
}

// VolumeAt returns the volume that the lot would have at the given temperature.
// Range and source as for [Lot.At]. Check value: a US gallon of 66.9 Brix at
// 185 F is 0.97104 US gal at 68 F (computed).
func (l Lot) VolumeAt(at units.Temperature) (units.Volume, error) {
	moved, err := l.At(at)
	if err != nil {
		return units.Volume(math.NaN()), units.Under("sugar.Lot.VolumeAt", err)
	}
	return moved.Volume(), nil
}

// checkBrix returns an error unless b lies in the range of strengths.
func checkBrix(fn, arg, what string, b units.Brix) error {
	r := limit.Range{Arg: arg, What: what, Low: float64(thinnest), High: float64(strongest), Unit: "Brix",
		Below: "less than no sugar: check the instrument in plain water",
		Above: "beyond 85 Brix the liquid sets as candy: go by its boiling temperature"}
	return r.Check(fn, float64(b))
}
