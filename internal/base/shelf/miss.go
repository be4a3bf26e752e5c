package shelf

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/units"
)

var amount = limit.Range{What: "volume", Low: 0, High: 1e6, Unit: "m3",
	Below: "a volume is not negative", Above: "check its unit: no tank holds that"}

var held = limit.Range{What: "sugar in a volume", Unit: "kg/m3",
	Below: "there is no sugar in it", Above: "beyond 85 Brix it sets as candy"}

// Strength returns how strong a solution is that holds so much sugar at 20 C, in
// kg/m3: the inverse of [Sugar].
func Strength(fn, arg string, sugar float64) (units.Brix, error) {
	r := held
	r.High, _ = Sugar(fn, MaxBrix) // 85 Brix has a density, and so has all below
	if err := r.CheckAs(fn, arg, sugar); err != nil {
		return units.Brix(math.NaN()), err
	}
	sugar = r.Clip(sugar)
	excess := func(b float64) float64 {
		rho, _ := density.Solution(units.Brix(b), Temperature())
		return float64(rho)*b/100 - sugar
	}
	b, ok := numeric.Root(excess, 0, MaxBrix, 1e-11)
	if !ok {
		return units.Brix(math.NaN()), r.CheckAs(fn, arg, math.NaN())
	}
	return units.Brix(b), nil
}

// Missed returns what comes of making one strength where a volume of another was
// meant: the sugar is the same.
func Missed(fn, arg string, volume units.Volume, meant, made units.Brix) (units.Miss, error) {
	if err := amount.CheckAs(fn, arg, float64(volume)); err != nil {
		return limit.NoMiss(), err
	}
	want, err := Sugar(fn, meant)
	if err != nil {
		return limit.NoMiss(), err
	}
	got, err := Sugar(fn, made)
	if err != nil {
		return limit.NoMiss(), err
	}
	return units.Miss{Brix: made - meant, Syrup: volume * units.Volume(want/got-1)}, nil
}

// Promised returns what comes of boiling down to the volume that a rule promises
// where less or more of a strength can be had.
func Promised(fn, arg string, exact, promised units.Volume, meant units.Brix) (units.Miss, error) {
	miss := units.Miss{Syrup: promised - exact}
	if !(exact > 0) { // of nothing comes nothing
		return miss, nil
	}
	want, err := Sugar(fn, meant)
	if err != nil {
		return limit.NoMiss(), err
	}
	made, err := Strength(fn, arg, want*float64(exact/promised))
	if err != nil {
		return limit.NoMiss(), err
	}
	miss.Brix = made - meant
	return miss, nil
}

// Amount guards a volume of sap or syrup.
func Amount(fn, arg string, v units.Volume) error { return amount.CheckAs(fn, arg, float64(v)) }
