package density_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// Each part of an uncertainty is the change of the answer with its input, by a
// difference quotient of the answer itself, times the standard uncertainty of
// the input: JCGM 100:2008, equation 10.
func TestPartsAreSensitivities(t *testing.T) {
	quotient := func(f func(dx float64) (units.Brix, error), h float64) float64 {
		t.Helper()
		at := func(dx float64) float64 {
			b, err := f(dx)
			if err != nil {
				t.Fatal(err)
			}
			return float64(b)
		}
		return math.Abs(8*(at(h)-at(-h))-(at(2*h)-at(-2*h))) / (12 * h)
	}
	type row struct {
		name string
		part units.Brix
		want float64
	}
	var rows []row
	rectangular := func(limit float64) float64 { return limit / math.Sqrt(3) }

	for _, s := range []density.Scale{density.ICUMSA, density.NBSC440} {
		h := density.Hydrometer{GraduatedAt: f60, Scale: s, Expansion: 25e-6}
		reading, at := bx(59.45), c(84)
		m, err := h.Measure(reading, at, density.Doubt{Division: 0.5, Thermometer: 0.7, Calibration: 0.3})
		if err != nil {
			t.Fatal(err)
		}
		byReading := quotient(func(d float64) (units.Brix, error) { return h.Brix(reading+bx(d), at) }, 0.01)
		byTemp := quotient(func(d float64) (units.Brix, error) { return h.Brix(reading, at.Add(units.TempDiff(d))) }, 0.05)
		byGlass := quotient(func(d float64) (units.Brix, error) {
			other := h
			other.Expansion += d
			return other.Brix(reading, at)
		}, 1e-6)
		rows = append(rows,
			row{"stem, division", m.Parts.Division, byReading * rectangular(0.25)},
			row{"stem, calibration", m.Parts.Calibration, byReading * 0.15},
			row{"stem, thermometer", m.Parts.Thermometer, byTemp * rectangular(0.7)},
			row{"stem, glass", m.Parts.Glass, byGlass * rectangular(5e-6)},
		)
	}

	// The scale is curved: what the instrument reads too much moves the slope.
	r := density.Refractometer{ReadsHigh: 0.8}
	m, err := r.Measure(66.5, c(25), density.Doubt{Division: 0.2, Thermometer: 1, Calibration: 0.2})
	if err != nil {
		t.Fatal(err)
	}
	byReading := quotient(func(d float64) (units.Brix, error) { return r.Brix(66.5+bx(d), c(25)) }, 0.01)
	byTemp := quotient(func(d float64) (units.Brix, error) { return r.Brix(66.5, c(25+d)) }, 0.05)
	rows = append(rows,
		row{"prism, division", m.Parts.Division, byReading * rectangular(0.1)},
		row{"prism, calibration", m.Parts.Calibration, byReading * 0.1},
		row{"prism, thermometer", m.Parts.Thermometer, byTemp * rectangular(1)},
		row{"prism, model", m.Parts.Model, 0.02}, // as documented: the table of 1936 in its worst column
	)
	if m, err = atc.Measure(66.5, c(25), density.Doubt{Division: 0.2, Calibration: 0.2}); err != nil {
		t.Fatal(err)
	}
	rows = append(rows, row{"compensated prism, model", m.Parts.Model, 0.003}) // the fit to the scale, 0.003 Brix

	f := density.Flask{Volume: units.Liter / 2, CalibratedAt: c20}
	net, at := units.Mass(0.65), c(30)
	m, err = f.Measure(net, at, density.FlaskDoubt{Division: 2e-4, Calibration: 2e-4, Volume: units.Milliliter / 2, Thermometer: 1})
	if err != nil {
		t.Fatal(err)
	}
	byMass := quotient(func(d float64) (units.Brix, error) { return f.Brix(net+units.Mass(d), at) }, 1e-4)
	byVolume := quotient(func(d float64) (units.Brix, error) {
		other := f
		other.Volume += m3(d)
		return other.Brix(net, at)
	}, 1e-7)
	byTemp = quotient(func(d float64) (units.Brix, error) { return f.Brix(net, c(30+d)) }, 0.05)
	rows = append(rows,
		row{"flask, division", m.Parts.Division, byMass * rectangular(1e-4)},
		row{"flask, calibration", m.Parts.Calibration, byMass * 1e-4},
		row{"flask, volume", m.Parts.Volume, byVolume * 0.25e-6},
		row{"flask, thermometer", m.Parts.Thermometer, byTemp * rectangular(1)},
	)
	for _, r := range rows {
		if !(math.Abs(float64(r.part)-r.want) <= 1e-5*r.want) {
			t.Errorf("%s: %v Brix, by the quotient %v", r.name, float64(r.part), r.want)
		}
	}
}
