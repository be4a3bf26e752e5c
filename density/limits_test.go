package density_test

import (
	"cmp"
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// A limit is one documented range of one argument, in words; the sweep checks
// its stable name.
type limit struct {
	fn, arg   string
	low, high float64
	call      func(x float64) (float64, error)
}

// of turns a function's answer into a plain number.
func of[Q ~float64](q Q, err error) (float64, error) { return float64(q), err }

var (
	c20, f60 = units.Celsius(20), units.Fahrenheit(60)
	stem     = density.Hydrometer{GraduatedAt: f60}
	nbsStem  = density.Hydrometer{GraduatedAt: f60, Scale: density.NBSC440}
	prism    = density.Refractometer{}
	atc      = density.Refractometer{Compensated: true}
	flask    = density.Flask{Volume: units.Liter / 2, CalibratedAt: c20}
	hot      = density.Mark{For: 66.9, At: units.Fahrenheit(211)}
	doubt    = density.Doubt{Division: 0.5, Thermometer: 0.5, Calibration: 0.1}
	weighing = density.FlaskDoubt{Division: 0.1 * units.Gram, Calibration: 0.2 * units.Gram, Volume: units.Milliliter / 2, Thermometer: 0.5}
)

func bx(x float64) units.Brix         { return units.Brix(x) }
func c(x float64) units.Temperature   { return units.Celsius(x) }
func kg(x float64) units.Density      { return units.Density(x) }
func m3(x float64) units.Volume       { return units.Volume(x) }
func sg(x float64) density.SG2020     { return density.SG2020(x) }
func be(x float64) density.Baume145   { return density.Baume145(x) }
func nd(x float64) density.ND20       { return density.ND20(x) }
func tg(x float64) density.TrueSG2020 { return density.TrueSG2020(x) }

func must(x float64, err error) float64 {
	if err != nil {
		panic(err)
	}
	return x
}

func limits() []limit {
	stemAt := func(t float64) density.Hydrometer { return density.Hydrometer{GraduatedAt: c(t)} }
	measured := func(m density.Measurement, err error) (float64, error) {
		if err != nil && m == (density.Measurement{}) {
			return math.NaN(), err
		}
		return float64(m.Brix), err
	}
	high := must(of(density.SG2020FromBrix(85)))
	nbsHigh := must(of(density.NBSC440.SG2020(95)))
	trueHigh := must(of(density.TrueSG2020FromBrix(85)))
	beHigh := must(of(density.BaumeFromBrix(85)))
	nbsBeHigh := must(of(density.NBSC440.Baume(95)))
	return []limit{
		{"density.Water", "temperature", 0, 110, func(x float64) (float64, error) { return of(density.Water(c(x))) }},
		{"density.Solution", "temperature", 0, 110, func(x float64) (float64, error) { return of(density.Solution(66, c(x))) }},
		{"density.Solution", "sugar content", 0, 85, func(x float64) (float64, error) { return of(density.Solution(bx(x), c20)) }},
		{"density.BrixFromDensity", "temperature", 0, 110, func(x float64) (float64, error) { return of(density.BrixFromDensity(1200, c(x))) }},
		{"density.BrixFromDensity", "density", must(of(density.Water(c20))), must(of(density.Solution(85, c20))),
			func(x float64) (float64, error) { return of(density.BrixFromDensity(kg(x), c20)) }},
		{"density.SG2020FromBrix", "sugar content", 0, 85, func(x float64) (float64, error) { return of(density.SG2020FromBrix(bx(x))) }},
		{"density.BrixFromSG2020", "specific gravity", 1, high, func(x float64) (float64, error) { return of(density.BrixFromSG2020(sg(x))) }},
		{"density.TrueSG2020FromBrix", "sugar content", 0, 85, func(x float64) (float64, error) { return of(density.TrueSG2020FromBrix(bx(x))) }},
		{"density.BrixFromTrueSG2020", "specific gravity", 1, trueHigh, func(x float64) (float64, error) { return of(density.BrixFromTrueSG2020(tg(x))) }},
		{"density.BaumeFromBrix", "sugar content", 0, 85, func(x float64) (float64, error) { return of(density.BaumeFromBrix(bx(x))) }},
		{"density.BrixFromBaume", "Baume", 0, beHigh, func(x float64) (float64, error) { return of(density.BrixFromBaume(be(x))) }},
		{"density.Scale.SG2020", "sugar content", 0, 85, func(x float64) (float64, error) { return of(density.ICUMSA.SG2020(bx(x))) }},
		{"density.Scale.SG2020", "sugar content", 0, 95, func(x float64) (float64, error) { return of(density.NBSC440.SG2020(bx(x))) }},
		{"density.Scale.Brix", "specific gravity", 1, high, func(x float64) (float64, error) { return of(density.ICUMSA.Brix(sg(x))) }},
		{"density.Scale.Brix", "specific gravity", 1, nbsHigh, func(x float64) (float64, error) { return of(density.NBSC440.Brix(sg(x))) }},
		{"density.Scale.Baume", "sugar content", 0, 95, func(x float64) (float64, error) { return of(density.NBSC440.Baume(bx(x))) }},
		{"density.Scale.BrixFromBaume", "Baume", 0, nbsBeHigh, func(x float64) (float64, error) { return of(density.NBSC440.BrixFromBaume(be(x))) }},
		{"density.Scale.Convert", "sugar content", 0, 85, func(x float64) (float64, error) { return of(density.ICUMSA.Convert(bx(x), density.NBSC440)) }},
		{"density.Hydrometer.Brix", "hydrometer graduation", 1, 40, func(x float64) (float64, error) { return of(stemAt(x).Brix(50, c20)) }},
		{"density.Hydrometer.Brix", "temperature", 0, 110, func(x float64) (float64, error) { return of(stem.Brix(30, c(x))) }},
		{"density.Hydrometer.Brix", "reading", -1, 85, func(x float64) (float64, error) { return of(stem.Brix(bx(x), f60)) }},
		{"density.Hydrometer.Brix", "instrument error", -5, 5, func(x float64) (float64, error) {
			return of(density.Hydrometer{GraduatedAt: f60, ReadsHigh: bx(x)}.Brix(50, f60))
		}},
		{"density.Hydrometer.Brix", "expansion", 0, 100e-6, func(x float64) (float64, error) {
			return of(density.Hydrometer{GraduatedAt: f60, Expansion: x}.Brix(50, c20))
		}},
		{"density.Hydrometer.Reading", "temperature", 0, 110, func(x float64) (float64, error) { return of(stem.Reading(66.9, c(x))) }},
		{"density.Hydrometer.Reading", "sugar content", -1, 85, func(x float64) (float64, error) { return of(stem.Reading(bx(x), f60)) }},
		{"density.Hydrometer.BrixFromBaume", "temperature", 0, 110, func(x float64) (float64, error) { return of(stem.BrixFromBaume(20, c(x))) }},
		{"density.Hydrometer.BrixFromBaume", "reading", -0.5603786814964451, beHigh, func(x float64) (float64, error) { return of(stem.BrixFromBaume(be(x), f60)) }},
		{"density.Hydrometer.Baume", "sugar content", -1, 85, func(x float64) (float64, error) { return of(stem.Baume(bx(x), f60)) }},
		{"density.Hydrometer.CheckedIn", "reading", 25, 35, func(x float64) (float64, error) {
			h, err := stem.CheckedIn(30, f60, bx(x))
			if err != nil && h == (density.Hydrometer{}) {
				return math.NaN(), err
			}
			return float64(h.ReadsHigh), err
		}},
		{"density.Mark.On", "strength of the mark", 1, 85, func(x float64) (float64, error) {
			return of(density.Mark{For: bx(x), At: f60}.On(stem))
		}},
		{"density.Mark.Brix", "temperature", 0, 110, func(x float64) (float64, error) { return of(hot.Brix(c(x))) }},
		{"density.Mark.Brix", "temperature", 0, 110, func(x float64) (float64, error) { return of(density.Mark{For: 50, At: c(x)}.Brix(c20)) }},
		{"density.Mark.Brix", "expansion", 0, 100e-6, func(x float64) (float64, error) {
			return of(density.Mark{For: 50, At: c20, Expansion: x}.Brix(c20))
		}},
		{"density.Hydrometer.FillCupTable", "temperature", 0, 110, func(x float64) (float64, error) {
			rows := []density.CupRow{{At: c(x), Brix: bx(math.NaN())}}
			err := stem.FillCupTable(66.9, rows)
			return float64(rows[0].Brix), err
		}},
		{"density.Mass", "volume", 0, 1e6, func(x float64) (float64, error) { return of(density.Mass(m3(x), 66.9, c20)) }},
		{"density.Mass", "sugar content", 0, 85, func(x float64) (float64, error) { return of(density.Mass(1, bx(x), c20)) }},
		{"density.WeightInAir", "temperature", 0, 110, func(x float64) (float64, error) { return of(density.WeightInAir(1, 66.9, c(x))) }},
		{"density.VolumeAt", "temperature", 0, 110, func(x float64) (float64, error) { return of(density.VolumeAt(1, 66.9, c(x), c20)) }},
		{"density.VolumeAt", "temperature", 0, 110, func(x float64) (float64, error) { return of(density.VolumeAt(1, 66.9, c20, c(x))) }},
		{"density.Contraction", "sugar content", 0, 85, func(x float64) (float64, error) { return of(density.Contraction(bx(x), c(85), c20)) }},
		{"density.HotVolume", "temperature", 0, 110, func(x float64) (float64, error) { return of(density.HotVolume(1, 66.9, c(x))) }},
		{"density.RefractiveIndex", "sugar content", 0, 85, func(x float64) (float64, error) { return of(density.RefractiveIndex(bx(x))) }},
		{"density.BrixFromRefractiveIndex", "refractive index", 1.33299, must(of(density.RefractiveIndex(85))),
			func(x float64) (float64, error) { return of(density.BrixFromRefractiveIndex(nd(x))) }},
		{"density.Refractometer.Brix", "prism temperature", 10, 30, func(x float64) (float64, error) { return of(prism.Brix(66.9, c(x))) }},
		{"density.Refractometer.Brix", "reading", -1, 85, func(x float64) (float64, error) { return of(prism.Brix(bx(x), c20)) }},
		{"density.Refractometer.Brix", "reading", -1, 85, func(x float64) (float64, error) { return of(atc.Brix(bx(x), c(25))) }},
		{"density.Refractometer.Brix", "instrument error", -5, 5, func(x float64) (float64, error) {
			return of(density.Refractometer{ReadsHigh: bx(x)}.Brix(50, c20))
		}},
		{"density.Refractometer.Reading", "sugar content", -1, 85, func(x float64) (float64, error) { return of(prism.Reading(bx(x), c20)) }},
		{"density.Refractometer.CheckedIn", "reading", 25, 35, func(x float64) (float64, error) {
			r, err := atc.CheckedIn(30, c20, bx(x))
			if err != nil && r == (density.Refractometer{}) {
				return math.NaN(), err
			}
			return float64(r.ReadsHigh), err
		}},
		{"density.Flask.Brix", "temperature", 0, 110, func(x float64) (float64, error) { return of(flask.Brix(units.Grams(600), c(x))) }},
		{"density.Flask.Net", "volume of the flask", 1e-6, 1e9, func(x float64) (float64, error) {
			return of(density.Flask{Volume: units.Liters(x), CalibratedAt: c20}.Net(66.9, c20))
		}},
		{"density.Flask.Brix", "calibration temperature", 1, 40, func(x float64) (float64, error) {
			return of(density.Flask{Volume: 1, CalibratedAt: c(x)}.Brix(1200, c20))
		}},
		{"density.Flask.Net", "sugar content", 0, 85, func(x float64) (float64, error) { return of(flask.Net(bx(x), c20)) }},
		{"density.Flask.Net", "expansion", 0, 100e-6, func(x float64) (float64, error) {
			return of(density.Flask{Volume: 1, CalibratedAt: c20, Expansion: x}.Net(10, c20))
		}},
		{"density.Hydrometer.Measure", "reading", -1, 85, func(x float64) (float64, error) { return measured(stem.Measure(bx(x), f60, doubt)) }},
		{"density.Refractometer.Measure", "prism temperature", 10, 30, func(x float64) (float64, error) { return measured(prism.Measure(60, c(x), doubt)) }},
		{"density.Flask.Measure", "temperature", 0, 110, func(x float64) (float64, error) { return measured(flask.Measure(units.Grams(600), c(x), weighing)) }},
	}
}

// Every range is tested inside, on both ends, outside, and with what is no
// number.
func TestLimits(t *testing.T) {
	for _, l := range limits() {
		t.Run(l.fn+" "+l.arg, func(t *testing.T) {
			mid := l.low/2 + l.high/2
			for _, x := range []float64{mid, l.low, l.high} {
				if got, err := l.call(x); err != nil || math.IsNaN(got) {
					t.Errorf("%v in %v to %v: %v, %v", x, l.low, l.high, got, err)
				}
			}
			step := 1e-6 * math.Max(math.Abs(l.low), math.Abs(l.high))
			for _, x := range []float64{l.low - step, l.high + step, math.NaN(), math.Inf(1), math.Inf(-1)} {
				got, err := l.call(x)
				var e *units.RangeError
				if !errors.Is(err, units.ErrRange) || !errors.As(err, &e) {
					t.Errorf("%v outside %v to %v: %v, error %v", x, l.low, l.high, got, err)
					continue
				}
				if !math.IsNaN(got) {
					t.Errorf("%v outside %v to %v: answer %v, want NaN", x, l.low, l.high, got)
				}
				if e.Func != l.fn || cmp.Or(e.What, e.Arg) != l.arg {
					t.Errorf("%v: the error names %s, %s", x, e.Func, e.Arg)
				}
				if math.Abs(e.Low-l.low) > 1e-6*math.Max(1, math.Abs(l.low)) || math.Abs(e.High-l.high) > 1e-6*math.Max(1, math.Abs(l.high)) {
					t.Errorf("%v: the error says %v to %v, the range is %v to %v", x, e.Low, e.High, l.low, l.high)
				}
			}
		})
	}
}

// What was not set is refused, and the message tells the way out.
func TestNotSet(t *testing.T) {
	tests := []struct {
		name string
		call func() error
		says string
	}{
		{"hydrometer without graduation", func() error { _, err := density.Hydrometer{}.Brix(60, c20); return err }, "printed on the scale"},
		{"mark for nothing", func() error { _, err := density.Mark{}.Brix(c20); return err }, "what the mark stands for"},
		{"flask without volume", func() error { _, err := density.Flask{}.Brix(1, c20); return err }, "what the flask holds"},
		{"flask without calibration", func() error { _, err := density.Flask{Volume: 1}.Brix(1, c20); return err }, "at which the volume holds"},
		{"no doubt about a stem", func() error { _, err := stem.Measure(60, c20, density.Doubt{}); return err }, "no instrument is perfect"},
		{"no doubt about its thermometer", func() error {
			_, err := stem.Measure(60, c20, density.Doubt{Division: 0.5, Calibration: 0.1})
			return err
		}, "thermometer doubt"},
		{"no doubt about a prism", func() error { _, err := prism.Measure(60, c20, density.Doubt{Division: 0.2}); return err }, "calibration doubt"},
		{"no doubt about a weighing", func() error { _, err := flask.Measure(0.6, c20, density.FlaskDoubt{}); return err }, "division doubt"},
		{"a scale that is none", func() error { _, err := density.Scale(7).SG2020(60); return err }, "ICUMSA or NBS C440"},
		{"convert to a scale that is none", func() error { _, err := density.ICUMSA.Convert(60, 7); return err }, "ICUMSA or NBS C440"},
		{"Baume on a scale that is none", func() error { _, err := density.Scale(7).BrixFromBaume(36); return err }, "ICUMSA or NBS C440"},
		{"a stem on a scale that is none", func() error {
			_, err := density.Hydrometer{GraduatedAt: f60, Scale: 7}.Brix(60, c20)
			return err
		}, "ICUMSA or NBS C440"},
		{"combine with nothing", func() error { _, err := density.Combine(density.Measurement{}, density.Measurement{}); return err }, "measured with an uncertainty"},
		{"ice", func() error { _, err := density.Solution(2, c(-0.5)); return err }, "ice"},
		{"Baume taken for Brix", func() error { _, err := density.BrixFromBaume(66); return err }, "a number near 66 is Brix"},
		{"a figure in g/mL", func() error { _, err := density.BrixFromDensity(1.33, c20); return err }, "check the unit"},
	}
	for _, tt := range tests {
		err := tt.call()
		if !errors.Is(err, units.ErrRange) || !strings.Contains(err.Error(), tt.says) {
			t.Errorf("%s: %v, want an error that says %q", tt.name, err, tt.says)
		}
	}
}

// A doubt too large to be a measurement is refused, and so is one that is no
// number.
func TestDoubtLimits(t *testing.T) {
	for _, x := range []float64{-1, 0, 5 * (1 + 1e-9), 6, math.NaN(), math.Inf(1)} {
		for _, d := range []density.Doubt{
			{Division: bx(x), Thermometer: 1, Calibration: 1},
			{Division: 1, Thermometer: units.TempDiff(2 * x), Calibration: 1},
			{Division: 1, Thermometer: 1, Calibration: bx(x)},
		} {
			if m, err := stem.Measure(60, c20, d); !errors.Is(err, units.ErrRange) || m != (density.Measurement{}) {
				t.Errorf("%+v: %+v, %v", d, m, err)
			}
		}
	}
	edge := density.Doubt{Division: 5, Thermometer: 10, Calibration: 5}
	if _, err := stem.Measure(60, c20, edge); err != nil {
		t.Errorf("the largest doubt is refused: %v", err)
	}
	// A compensated instrument needs no thermometer.
	if _, err := atc.Measure(60, c20, density.Doubt{Division: 0.2, Calibration: 0.2}); err != nil {
		t.Error(err)
	}
	for _, d := range []density.FlaskDoubt{
		{Division: 0.07, Calibration: 0.001, Volume: 1e-6, Thermometer: 1},
		{Division: 0.001, Calibration: 0.07, Volume: 1e-6, Thermometer: 1},
		{Division: 0.001, Calibration: 0.001, Volume: 1e-4, Thermometer: 1},
		{Division: 0.001, Calibration: 0.001, Volume: 1e-6, Thermometer: 11},
	} {
		if _, err := flask.Measure(0.6, c20, d); !errors.Is(err, units.ErrRange) {
			t.Errorf("%+v is accepted: %v", d, err)
		}
	}
}

// What Combine takes as an uncertainty.
func TestCombineLimits(t *testing.T) {
	for _, c := range []struct {
		x  float64
		ok bool
	}{
		{1e-6, true}, {1, true}, {85, true},
		{1e-6 * (1 - 1e-9), false}, {85 * (1 + 1e-9), false}, {0, false}, {-1, false},
		{math.NaN(), false}, {math.Inf(1), false}, {math.Inf(-1), false},
	} {
		a, b := density.Measurement{Brix: 60, Uncertainty: bx(c.x)}, density.Measurement{Brix: 60, Uncertainty: 1}
		for _, pair := range [][2]density.Measurement{{a, b}, {b, a}} {
			if _, err := density.Combine(pair[0], pair[1]); (err == nil) != c.ok || err != nil && !errors.Is(err, units.ErrRange) {
				t.Errorf("uncertainty of %v: %v", c.x, err)
			}
		}
	}
}
