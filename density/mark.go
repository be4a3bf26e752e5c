package density

import (
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// A Mark is a line on a stem that stands for one strength at one temperature: a
// syrup hydrometer with two of them has its hot mark for the boiling pan and
// its cold mark for the cooled cup. The zero value is refused.
//
// Where a mark stands on a graduated scale is [Mark.On]. What it means in a cup
// at another temperature than its own is [Mark.Brix]; no graduation enters
// there, since the mark and the surface are all that is read.
//
// Hot marks are read near 211 F (common practice): above 90 C, where density is
// extrapolated, and in syrup that scalds.
type Mark struct {
	For       units.Brix        // strength that the mark stands for
	At        units.Temperature // temperature of the cup at which it does
	Expansion float64           // cubical expansion per kelvin; zero means [GlassExpansion]
}

// On returns where the mark stands on the Brix scale of h.
//
// Range, uncertainty and errors are those of [Hydrometer.Reading]. Check value:
// the mark for 66.9 Brix at 211 F stands at 59.00 on a 60 F scale (computed).
func (m Mark) On(h Hydrometer) (units.Brix, error) {
	const fn = "density.Mark.On"
	if err := m.check(fn); err != nil {
		return nan[units.Brix](), err
	}
	reading, err := h.Reading(m.For, m.At)
	if err != nil {
		return reading, units.Under(fn, err)
	}
	return reading, nil
}

// Brix returns the strength of a solution at temperature cup that floats the
// stem to the mark. A cup that has cooled below the mark's temperature needs
// less sugar to do so: syrup that floats a hot mark in a cooled cup is thinner
// than the mark says.
//
// Range: a mark for 1 to 85 Brix at 0 to 110 C, a cup at 0 to 110 C, answers
// from -1 to 85 Brix. Uncertainty: as for [Hydrometer.Brix]; above 90 C see
// [Extrapolated]. Check value: 66.9 Brix at 211 F is 65.1 when the cup has
// cooled to 180 F (computed).
func (m Mark) Brix(cup units.Temperature) (units.Brix, error) {
	const fn = "density.Mark.Brix"
	if err := m.check(fn); err != nil {
		return nan[units.Brix](), err
	}
	c, c0 := cup.Celsius(), m.At.Celsius()
	if err := tempRange.CheckAs(fn, "cup", c); err != nil {
		return nan[units.Brix](), err
	}
	return answer(fn, toBrix(fraction(rho(m.For.Fraction(), c0)/(1+expansionOf(m.Expansion)*(c-c0)), c)))
}

var markRange = limit.Range{Arg: "Mark.For", What: "strength of the mark", Low: 1, High: float64(maxBrix), Unit: "Brix",
	Below: "say what the mark stands for, such as 66.9 Brix at 211 F", Above: brixRange.Above}

func (m Mark) check(fn string) error {
	if err := markRange.Check(fn, float64(m.For)); err != nil {
		return err
	}
	if err := tempRange.CheckAs(fn, "Mark.At", m.At.Celsius()); err != nil {
		return err
	}
	return glassRange.CheckAs(fn, "Mark.Expansion", m.Expansion)
}

// A CupRow is one line of the table that hangs beside the pan: what a
// hydrometer must show when the cup is at temperature At.
type CupRow struct {
	At           units.Temperature
	Brix         units.Brix // on the Brix scale of the hydrometer
	Baume        Baume145   // on its Baume scale
	Extrapolated bool       // the cup is above 90 C: see [Extrapolated]
}

// FillCupTable sets, in every row, what the hydrometer shows in a solution of
// target Brix at the row's temperature. At the first row that is out of range
// it stops with a [*units.RangeError]; that row and those after it are as they
// were.
//
// Range, uncertainty and errors are those of [Hydrometer.Reading]. Check value:
// for 66.9 Brix a 60 F scale shows 59.00 at 211 F (computed).
func (h Hydrometer) FillCupTable(target units.Brix, rows []CupRow) error {
	const fn = "density.Hydrometer.FillCupTable"
	for i := range rows {
		row := &rows[i]
		m, err := h.mark(fn, "target", "CupRow.At", target, row.At)
		if err != nil {
			return err
		}
		reading, err := answer(fn, h.Scale.fromICUMSA(m))
		if err != nil {
			return err
		}
		row.Brix = reading + h.ReadsHigh
		row.Baume = baume(gravity(m + h.ReadsHigh))
		row.Extrapolated = Extrapolated(row.At)
	}
	return nil
}
