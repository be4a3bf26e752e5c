package boil_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit/limittest"
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

// Two readings tell no uncertainty, and the rate then has the two digits that a
// dipstick gives.
func TestMeasuredRateText(t *testing.T) {
	r := boil.MeasuredRate{Warm: units.PoundsPerHour(85.23), WarmBy: units.MassRate(math.NaN()), Readings: 2}
	if s := r.Text(units.US); s != "85 lb/h" {
		t.Error(s)
	}
	if s := r.Text(units.Metric); s != "39 kg/h" { // 85.23 x 0.4536 is 38.66
		t.Error(s)
	}
}
