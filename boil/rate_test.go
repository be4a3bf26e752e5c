package boil_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/limit/limittest"
	"example.org/sapreckoner/units"
)

func TestPanRate(t *testing.T) {
	limittest.Edges(t, "boil.PanRate", "area of the pan", 0, 1000, 1, func(x float64) (float64, error) {
		r, err := boil.PanRate(boil.FluePan, units.SquareMeters(x))
		return float64(r.Middle), err
	})
	for _, kind := range []boil.PanKind{0, boil.FluePan + 1} {
		r, err := boil.PanRate(kind, 1)
		limittest.Refuses(t, "boil.PanRate", "kind of pan", float64(r.Low), err)
		if s := kind.String(); s != "no kind of pan" {
			t.Errorf("pan %d is called %q", kind, s)
		}
	}
}

// The fire's heat and the demand must agree: the water of a boil goes off in the
// time that its heat takes to come.
func TestHeatRateIsTheHeatOfTheBoil(t *testing.T) {
	d := mustHeat(t, sap(t, 100, 2, units.Fahrenheit(40)), 66, units.Atmosphere)
	half := boil.Efficiency{Low: 40, High: 60, Basis: boil.Gross}
	r, err := boil.HeatRate(d.Total().Per(time.Hour)*2, boil.Gross, d, half)
	if err != nil || !near(float64(r.Middle.Over(time.Hour)/d.Water), 1, 1e-12) || r.Low >= r.Middle || r.High <= r.Middle {
		t.Errorf("%v, %v; want %v in an hour", r, err, d.Water)
	}
	// From a quarter to three of the heat: the rate goes with it.
	wide := boil.Efficiency{Low: 25, High: 75, Basis: boil.Gross}
	if s, err := boil.HeatRate(d.Total().Per(time.Hour)*2, boil.Gross, d, wide); err != nil ||
		!near(float64(s.Low/r.Middle), 0.5, 1e-9) || !near(float64(s.Middle/r.Middle), 1, 1e-9) || !near(float64(s.High/r.Middle), 1.5, 1e-9) {
		t.Errorf("%+v, %v, want half, all and half more of %v", s, err, r.Middle)
	}
	limittest.Edges(t, "boil.HeatRate", "power", 0, 1e9, 1e4, func(x float64) (float64, error) {
		r, err := boil.HeatRate(units.Watts(x), boil.Delivered, d, boil.Efficiency{})
		return float64(r.Middle), err
	})
	_, err = boil.HeatRate(1, boil.Delivered, d, half)
	wantBasis(t, "twice", err)
	_, err = boil.HeatRate(1, boil.Gross, d, boil.Efficiency{})
	wantBasis(t, "no efficiency", err)
	_, err = boil.HeatRate(1, boil.Delivered, boil.HeatDemand{}, boil.Efficiency{})
	wantRange(t, "empty", err)
}

func TestLevelRate(t *testing.T) {
	const area = 10 * units.SquareFoot
	// An inch in the cold hour, then two inches an hour, with 5 gal poured in.
	level := func(h, inches, gallons float64) boil.LevelReading {
		return boil.LevelReading{At: time.Duration(h * float64(time.Hour)), Level: units.Inches(inches), Added: units.USGallons(gallons)}
	}
	got, err := boil.LevelRate(area, time.Hour, level(0, 8, 0), level(1, 7, 0), level(1.5, 6, 0), level(2, 5, 0), level(3, 3, 0))
	if err != nil {
		t.Fatal(err)
	}
	inch := units.GramsPerMilliliter(0.9584).Mass(area.Volume(units.Inch)) // water at 100 C, from memory
	if !near(float64(got.ColdStart/inch), 1, 2e-4) || !near(float64(got.Warm.Over(time.Hour)/(2*inch)), 1, 2e-4) || got.Readings != 4 {
		t.Errorf("%+v; an inch is %v", got, inch)
	}
	if got.WarmBy > got.Warm*1e-6 {
		t.Errorf("plus or minus %v on a straight line", got.WarmBy)
	}
	fed, err := boil.LevelRate(area, 0, level(0, 5, 0), level(1, 5, 10), level(2, 5, 10))
	cold, err2 := density.Solution(2, units.Celsius(4))
	if err != nil || err2 != nil || !near(float64(fed.Warm.Over(time.Hour)/cold.Mass(10*units.USGallon)), 1, 1e-9) {
		t.Errorf("held by 10 gal an hour: %v lb/h, %v", fed.Warm.PoundsPerHour(), err)
	}
	two, err := boil.LevelRate(area, 0, level(0, 5, 0), level(1, 4, 0))
	if err != nil || !math.IsNaN(float64(two.WarmBy)) {
		t.Errorf("two readings: %+v, %v", two, err)
	}
}

// More readings narrow the rate, and the truth lies within the stated
// uncertainty as often as it should.
func TestLevelRateUncertainty(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	var last float64 = math.Inf(1)
	for _, n := range []int{4, 16, 64} {
		var sum, within float64
		const runs = 2000
		for range runs {
			readings := make([]boil.LevelReading, n)
			for i := range readings {
				at := 4 * time.Hour * time.Duration(i) / time.Duration(n-1)
				readings[i] = boil.LevelReading{At: at, Level: units.Inches(10 - 2*at.Hours() + 0.1*r.NormFloat64())}
			}
			got, err := boil.LevelRate(units.SquareMeter, 0, readings...)
			if err != nil {
				t.Fatal(err)
			}
			sum += float64(got.WarmBy)
			truth := units.KilogramsPerHour(958.35 * 2 * 0.0254)
			if math.Abs(float64(got.Warm-truth)) < 2*float64(got.WarmBy) {
				within++
			}
		}
		if mean := sum / runs; !(mean < last) {
			t.Errorf("%d readings: plus or minus %v after %v", n, mean, last)
		} else {
			last = mean
		}
		// Four readings leave two degrees of freedom, which widens the tails:
		// 81.6 percent lie within two standard errors, 93.5 of 14, 95 of many.
		if share := within / runs; share < 0.79 || share > 0.97 {
			t.Errorf("%d readings: %.3f within two standard errors", n, share)
		}
	}
}

func TestLevelRateRefuses(t *testing.T) {
	ok := []boil.LevelReading{{At: 0, Level: 0.1}, {At: time.Hour, Level: 0.05}}
	rate := func(change func(r *boil.LevelReading, area *units.Area, x float64)) func(float64) (float64, error) {
		return func(x float64) (float64, error) {
			area, r := 1*units.SquareMeter, ok[1]
			change(&r, &area, x)
			got, err := boil.LevelRate(area, 0, ok[0], r)
			if err != nil {
				return math.NaN(), err
			}
			return float64(got.Warm), nil
		}
	}
	limittest.Edges(t, "boil.LevelRate", "sap poured in", 0, 1000, 1, rate(func(r *boil.LevelReading, _ *units.Area, x float64) { r.Added = units.Volume(x) }))
	limittest.Edges(t, "boil.LevelRate", "level", 0, 2, 0.01, rate(func(r *boil.LevelReading, _ *units.Area, x float64) { r.Level = units.Length(x) }))
	limittest.Edges(t, "boil.LevelRate", "area of the pan", 1e-9, 1000, 1, rate(func(_ *boil.LevelReading, area *units.Area, x float64) { *area = units.Area(x) }))
	call := func(area units.Area, cold time.Duration, r ...boil.LevelReading) error {
		got, err := boil.LevelRate(area, cold, r...)
		if err != nil && got != (boil.MeasuredRate{}) {
			t.Errorf("%+v beside an error", got)
		}
		return err
	}
	var e *units.RangeError
	if err := call(0, 0, ok...); !errors.As(err, &e) || e.Value != 0 || e.Low != 0 || e.High != 1000 {
		t.Errorf("no area: %v", err)
	}
	if err := call(1, 0, ok[0]); !errors.As(err, &e) || e.Value != 1 || e.Low != 2 {
		t.Errorf("one reading: %v", err)
	}
	for name, err := range map[string]error{
		"no area":    call(0, 0, ok...),
		"nan area":   call(units.Area(math.NaN()), 0, ok...),
		"none":       call(1, 0),
		"one":        call(1, 0, ok[0]),
		"all cold":   call(1, 2*time.Hour, ok...),
		"backward":   call(1, 0, ok[1], ok[0]),
		"same time":  call(1, 0, ok[0], ok[0]),
		"deep":       call(1, 0, boil.LevelReading{Level: 2.01}, ok[1]),
		"nan level":  call(1, 0, boil.LevelReading{Level: units.Length(math.NaN())}, ok[1]),
		"drawn off":  call(1, 0, ok[0], boil.LevelReading{At: time.Hour, Level: 0.05, Added: -1}),
		"inf poured": call(1, 0, ok[0], boil.LevelReading{At: time.Hour, Level: 0.05, Added: units.Volume(math.Inf(1))}),
	} {
		wantRange(t, name, err)
	}
}

// The figures as their sources print them.
func TestEffectsAsPrinted(t *testing.T) {
	want := []units.Span[units.Share]{{Low: 8, High: 8}, {Low: 27, High: 27}, {Low: 15, High: 17}}
	for i, e := range boil.Effects() {
		if !near(float64(e.Low), float64(want[i].Low), 1e-12) || !near(float64(e.High), float64(want[i].High), 1e-12) {
			t.Errorf("%s: %v to %v, want %v", e.Change, e.Low, e.High, want[i])
		}
	}
	for kind, want := range map[boil.PanKind][3]float64{boil.FlatPan: {1, 1, 1}, boil.FluePan: {1.5, 2, 3}} {
		r, err := boil.PanRate(kind, units.SquareFoot)
		got := [3]float64{r.Low.USGallonsPerHour(), r.Middle.USGallonsPerHour(), r.High.USGallonsPerHour()}
		for i := range got {
			if err != nil || !near(got[i], want[i], 1e-12) {
				t.Errorf("kind %d: %v, want %v, %v", kind, got, want, err)
			}
		}
	}
}

func TestEffects(t *testing.T) {
	d := mustHeat(t, sap(t, 100, 2, units.Fahrenheit(40)), 66, units.Atmosphere)
	for _, e := range boil.Effects() {
		r, err := e.Apply(units.PoundsPerHour(100), d)
		if err != nil || !(r.Low > units.PoundsPerHour(100)) || r.High < r.Low {
			t.Errorf("%s: %v, %v", e.Change, r, err)
		}
	}
	// Warm sap leaves a preheater little to do, whatever it did elsewhere.
	warm := mustHeat(t, sap(t, 100, 2, units.Celsius(95)), 66, units.Atmosphere)
	r, err := boil.Effects()[0].Apply(1, warm)
	if err != nil || !near(float64(r.High), 1+warm.More().Fraction(), 1e-12) || r.High > 1.02 {
		t.Errorf("with hot sap: %v, ceiling %v, %v", r, warm.More(), err)
	}
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), -1, 1001} {
		for _, e := range []boil.Effect{{Low: units.Share(x), High: 10}, {Low: 10, High: units.Share(x)}} {
			r, err := e.Apply(1, d)
			if wantRange(t, "an effect that is none", err); !math.IsNaN(float64(r.Low)) {
				t.Errorf("%v beside an error", r)
			}
		}
	}
	_, err = boil.Effects()[0].Apply(1, boil.HeatDemand{})
	wantRange(t, "no demand", err)
	gain, err := boil.Effects()[2].Apply(1, d)
	if err != nil || !near(float64(gain.Middle), 1.16, 1e-12) {
		t.Errorf("between 15 and 17 percent: %v, %v", gain, err)
	}
	limittest.Edges(t, "boil.Effect.Apply", "evaporation", 0, 1e6, 1, func(x float64) (float64, error) {
		r, err := boil.Effects()[1].Apply(units.MassRate(x), d)
		return float64(r.Middle), err
	})
}

func BenchmarkLevelRate(b *testing.B) {
	readings := make([]boil.LevelReading, 20)
	for i := range readings {
		readings[i] = boil.LevelReading{At: time.Duration(i) * time.Hour, Level: units.Inches(20 - float64(i)/2)}
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := boil.LevelRate(1, 0, readings...); err != nil {
			b.Fatal(err)
		}
	}
}
