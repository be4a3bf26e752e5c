package finish_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

var goodStop = finish.ThermometerStop{
	Target: 66.9, Pressure: 95 * units.Kilopascal,
	ProbeBy: units.FahrenheitDegrees(0.2), DepthBy: units.Inch / 2, BarometerBy: 0.05 * units.InchMercury,
	Inverted: 2 * units.Percent, InvertedBy: 1 * units.Percent,
}

var goodCup = finish.HydrometerStop{
	Target: 66.9, Instrument: density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}, Cup: units.Fahrenheit(209),
	CupBy: units.FahrenheitDegrees(3), ScaleBy: 0.2, ReadingBy: 0.1,
}

func TestErrorCostLimits(t *testing.T) {
	limittest.Edges(t, "finish.ErrorCost", "target", 50, 80, 66, func(x float64) (float64, error) {
		b, err := finish.ErrorCost(units.Brix(x), units.Atmosphere, 0.1)
		return float64(b), err
	})
	limittest.Edges(t, "finish.DepthCost", "target", 50, 80, 66, func(x float64) (float64, error) {
		b, err := finish.DepthCost(units.Brix(x), units.Atmosphere, 0.1)
		return float64(b), err
	})
	limittest.Edges(t, "finish.DepthCost", "liquid over the probe", -0.5, 0.5, 0.1, func(x float64) (float64, error) {
		b, err := finish.DepthCost(66, units.Atmosphere, units.Meters(x))
		return float64(b), err
	})
	limittest.Edges(t, "finish.ErrorCost", "temperature error", -5, 5, 0.1, func(x float64) (float64, error) {
		b, err := finish.ErrorCost(80, units.Atmosphere, units.TempDiff(x))
		return float64(b), err
	})
	// 80 Brix boil beyond 110 C here, where the density ends: it is taken there.
	if deep, err := finish.DepthCost(80, 118*units.Kilopascal, units.Inch); err != nil || !(deep < 0) {
		t.Errorf("80 Brix at 118 kPa: %v, %v", deep, err)
	}
	b, err := finish.ErrorCost(66, units.Atmosphere, -5) // under the boiling point of water
	limittest.Refuses(t, "finish.ErrorCost", "rise", float64(b), err)
	b, err = finish.ErrorCost(66, 121*units.Kilopascal, 0.1)
	limittest.Refuses(t, "finish.ErrorCost", "pressure", float64(b), err)
	b, err = finish.DepthCost(66, 121*units.Kilopascal, 0.1)
	limittest.Refuses(t, "finish.DepthCost", "pressure", float64(b), err)
}

// Each part stands alone and grows with its cause, and together they
// are the root of the sum of squares.
func TestThermometerParts(t *testing.T) {
	d, err := goodStop.Parts()
	if err != nil {
		t.Fatal(err)
	}
	sum := 0.0
	for _, p := range []units.Brix{d.Probe, d.Depth, d.Barometer, d.Inverted, d.Formula} {
		if !(p > 0) {
			t.Errorf("a part of %+v is not over 0", d)
		}
		sum += float64(p * p)
	}
	if !near(float64(d.Total), math.Sqrt(sum), 1e-12) {
		t.Errorf("total %v of %+v", d.Total, d)
	}
	for name, change := range map[string]func(*finish.ThermometerStop) func(finish.ThermometerParts) units.Brix{
		"probe": func(s *finish.ThermometerStop) func(finish.ThermometerParts) units.Brix {
			s.ProbeBy *= 2
			return func(d finish.ThermometerParts) units.Brix { return d.Probe }
		},
		"depth": func(s *finish.ThermometerStop) func(finish.ThermometerParts) units.Brix {
			s.DepthBy *= 2
			return func(d finish.ThermometerParts) units.Brix { return d.Depth }
		},
		"barometer": func(s *finish.ThermometerStop) func(finish.ThermometerParts) units.Brix {
			s.BarometerBy *= 2
			return func(d finish.ThermometerParts) units.Brix { return d.Barometer }
		},
		"inverted": func(s *finish.ThermometerStop) func(finish.ThermometerParts) units.Brix {
			s.InvertedBy *= 2
			return func(d finish.ThermometerParts) units.Brix { return d.Inverted }
		},
	} {
		s := goodStop
		part := change(&s)
		more, err := s.Parts()
		if ratio := float64(part(more) / part(d)); err != nil || !near(ratio, 2, 0.1) || !(more.Total > d.Total) {
			t.Errorf("%s: twice the cause is %.3f the part, %v", name, ratio, err)
		}
	}
	// The formula's own share is 0.1 K of 4.199 K at the thermometer.
	formula, err := boil.RiseOf(sugar.Solute{Inverted: goodStop.Inverted}, goodStop.Target+d.Formula, goodStop.Pressure)
	set, err2 := boil.RiseOf(sugar.Solute{Inverted: goodStop.Inverted}, goodStop.Target, goodStop.Pressure)
	if err != nil || err2 != nil || !near(float64(formula-set), float64(set)*0.1/4.199, 1e-9) {
		t.Errorf("the formula costs %v, which is %v, %v", d.Formula, formula-set, err)
	}
	// 5 percent inverted make the point of 66.9 Brix that of 65.9.
	five, err := finish.ThermometerStop{Target: 66.9, Pressure: units.Atmosphere, InvertedBy: 5}.Parts()
	if err != nil || !near(float64(five.Inverted), 1, 0.05) {
		t.Errorf("5 percent inverted cost %v, %v", five.Inverted, err)
	}
	for _, inverted := range []units.Share{0, 3} { // known for certain
		sure, err := finish.ThermometerStop{Target: 66.9, Pressure: units.Atmosphere, Inverted: inverted}.Parts()
		if err != nil || sure.Inverted != 0 {
			t.Errorf("%v inverted for certain cost %v, %v", inverted, float64(sure.Inverted), err)
		}
	}
}

func TestThermometerPartsLimits(t *testing.T) {
	with := func(change func(*finish.ThermometerStop, float64)) func(float64) (float64, error) {
		return func(x float64) (float64, error) {
			s := goodStop
			change(&s, x)
			d, err := s.Parts()
			if err != nil && !math.IsNaN(float64(d.Probe+d.Formula)) {
				t.Errorf("%+v beside an error", d)
			}
			return float64(d.Total), err
		}
	}
	const fn = "finish.ThermometerStop.Parts"
	limittest.Edges(t, fn, "target", 50, 80, 66, with(func(s *finish.ThermometerStop, x float64) { s.Target = units.Brix(x) }))
	limittest.Edges(t, fn, "standard uncertainty", 0, 10, 0.1, with(func(s *finish.ThermometerStop, x float64) { s.ProbeBy = units.TempDiff(x) }))
	limittest.Edges(t, fn, "standard uncertainty", 0, 10, 1, with(func(s *finish.ThermometerStop, x float64) { s.InvertedBy = units.Share(x) }))
	limittest.Edges(t, fn, "inverted share", 0, 19, 1, with(func(s *finish.ThermometerStop, x float64) { s.Inverted = units.Share(x) }))
	limittest.Edges(t, fn, "standard uncertainty of the depth", 0, 0.5, 0.01, with(func(s *finish.ThermometerStop, x float64) { s.DepthBy = units.Length(x) }))
	for name, change := range map[string]func(*finish.ThermometerStop){
		"weather":  func(s *finish.ThermometerStop) { s.BarometerBy = 10.1 * units.Kilopascal },
		"pressure": func(s *finish.ThermometerStop) { s.Pressure = units.Pressure(math.NaN()) },
	} {
		s := goodStop
		change(&s)
		_, err := s.Parts()
		wantRange(t, name, err)
	}
}

func TestHydrometerParts(t *testing.T) {
	d, err := goodCup.Parts()
	if err != nil {
		t.Fatal(err)
	}
	if want := math.Sqrt(float64(d.Cup*d.Cup + d.Scale*d.Scale + d.Reading*d.Reading + d.Float*d.Float + d.Expansion*d.Expansion)); !near(float64(d.Total), want, 1e-12) {
		t.Errorf("total %v of %+v", d.Total, d)
	}
	// Read cool there is no extrapolation, and a degree matters less.
	cool := goodCup
	cool.Cup = units.Celsius(20)
	c, err := cool.Parts()
	if err != nil || c.Expansion != 0 || !(c.Cup < d.Cup) || !near(float64(c.Float), 0.08, 0.005) {
		t.Errorf("cool: %+v, %v; hot: %+v", c, err, d)
	}
	rho, err := density.Solution(66.9, units.Celsius(20))
	lifted, err2 := density.Solution(66.9+c.Float, units.Celsius(20))
	if err != nil || err2 != nil || !near(float64(lifted/rho)-1, 370e-6, 1e-9) {
		t.Errorf("the float's %v are %v of the density", c.Float, lifted/rho-1)
	}
	for _, tc := range []struct{ at, want float64 }{{90, 0}, {94.5, 0.0175}, {98.1, 0.0315}, {99, 0.035}, {102, 0.055}, {105, 0.075}} {
		hot := goodCup
		hot.Cup = units.Celsius(tc.at)
		h, err := hot.Parts()
		if err != nil || !near(float64(h.Expansion), tc.want, 1e-9) {
			t.Errorf("at %v C: %v, want %v, %v", tc.at, h.Expansion, tc.want, err)
		}
	}
}

func TestHydrometerPartsLimits(t *testing.T) {
	with := func(change func(*finish.HydrometerStop, float64)) func(float64) (float64, error) {
		return func(x float64) (float64, error) {
			s := goodCup
			change(&s, x)
			d, err := s.Parts()
			return float64(d.Total), err
		}
	}
	const fn = "finish.HydrometerStop.Parts"
	limittest.Edges(t, fn, "target", 50, 80, 66, with(func(s *finish.HydrometerStop, x float64) { s.Target = units.Brix(x) }))
	limittest.Edges(t, fn, "standard uncertainty", 0, 10, 1, with(func(s *finish.HydrometerStop, x float64) { s.CupBy = units.TempDiff(x) }))
	limittest.Edges(t, fn, "standard uncertainty", 0, 10, 1, with(func(s *finish.HydrometerStop, x float64) { s.ScaleBy = units.Brix(x) }))
	limittest.Edges(t, fn, "standard uncertainty", 0, 10, 1, with(func(s *finish.HydrometerStop, x float64) { s.ReadingBy = units.Brix(x) }))
	limittest.Edges(t, fn, "temperature", 0, 110, 60, with(func(s *finish.HydrometerStop, x float64) { s.Cup = units.Celsius(x) }))
	limittest.Edges(t, fn, "hydrometer graduation", 1, 40, 20, with(func(s *finish.HydrometerStop, x float64) { s.Instrument.GraduatedAt = units.Celsius(x) }))
}

func BenchmarkThermometerParts(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := goodStop.Parts(); err != nil {
			b.Fatal(err)
		}
	}
}
