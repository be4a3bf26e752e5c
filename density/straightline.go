package density

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// leastApart keeps two marks of a stem from being one, in kelvin.
const leastApart = 1

// StraightLine returns what comes of taking syrup off where a stem floats to the
// straight line between its two marks for one strength: the mark m and another,
// true at temperature other. A cup half way between the two is read half way
// between the marks. Syrup does not expand in a straight line, and so the syrup
// is a little off in the middle: the miss. Its Syrup is that of so much syrup
// meant.
//
// Range: a mark for 1 to 85 Brix, 0 to 110 C, marks 1 C deg apart or more, the
// cup between them; 0 to 1e6 m3. Uncertainty: that of [Solution], and above 90 C
// see [Extrapolated].
//
// Formula: the length of a stem under the surface is as 1/(rho (1 + gamma (t -
// t0))); the line divides it in proportion to temperature. Check value: nothing
// at either mark.
func (m Mark) StraightLine(other, cup units.Temperature, meant units.Volume) (units.Miss, error) {
	const fn = "density.Mark.StraightLine"
	if err := m.check(fn); err != nil {
		return limit.NoMiss(), err
	}
	a, b, c := m.At.Celsius(), other.Celsius(), cup.Celsius()
	if err := tempRange.CheckAs(fn, "other", b); err != nil {
		return limit.NoMiss(), err
	}
	if !(math.Abs(a-b) >= leastApart) {
		r := limit.Range{Arg: "other", Low: a + leastApart, High: tempRange.High, Unit: "C",
			Below: "give the temperature of the other mark", Above: "give the temperature of the other mark"}
		if r.Low > tempRange.High || b <= a && a >= tempRange.Low+leastApart {
			r.Low, r.High = tempRange.Low, a-leastApart
		}
		return limit.NoMiss(), r.Check(fn, b)
	}
	if err := limit.In(fn, "cup", c, min(a, b), max(a, b), "C", "beyond the marks there is no line between them"); err != nil {
		return limit.NoMiss(), err
	}
	if err := volumeRange.CheckAs(fn, "meant", float64(meant)); err != nil {
		return limit.NoMiss(), err
	}
	gamma := expansionOf(m.Expansion)
	depth := func(t float64) float64 { return 1 / (rho(m.For.Fraction(), t) * (1 + gamma*(t-a))) }
	line := depth(a) + (depth(b)-depth(a))*(c-a)/(b-a)
	made, err := answer(fn, toBrix(fraction(1/(line*(1+gamma*(c-a))), c)))
	if err != nil {
		return limit.NoMiss(), err
	}
	sugar := func(b units.Brix) float64 { return rho(b.Fraction(), labelC) * b.Fraction() }
	return units.Miss{Brix: made - m.For, Syrup: meant * units.Volume(sugar(m.For)/sugar(made)-1)}, nil
}
