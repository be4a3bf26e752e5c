package boil

import (
	"errors"
	"math"
	"strconv"
	"testing"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// sugarhouse is an invented backlog.
func sugarhouse() Backlog {
	return Backlog{
		Storage: 300 * units.USGallon,
		Hours:   5 * time.Hour,
		Heat:    60 * units.Kilowatt,
		Syrup:   66,
		At:      1 * units.Atmosphere,
		Keep:    48 * time.Hour,
	}
}

func TestPlan(t *testing.T) {
	b := sugarhouse()
	day := func(gallons float64) Gathering {
		return Gathering{Volume: units.USGallons(gallons), Brix: 2, Temperature: units.Fahrenheit(40)}
	}
	p, err := b.Plan(day(150), day(250), day(250), day(0), day(0), day(0), day(20))
	if err != nil {
		t.Fatal(err)
	}
	// 43.389 gal of sap take 404,680 Btu: see Plan.
	perGallon := 404680 * float64(units.BtuIT) / 43.389
	night := 5 * 3600 * 60e3 / perGallon
	waiting := 150 - night
	spilled := math.Max(0, waiting+250-300)
	for i, e := range p.Evenings {
		if sum := e.Boiled.USGallons(); sum > night*1.002 {
			t.Errorf("day %d: %v gal boiled, %v at most", i, sum, night)
		}
	}
	if got := p.Evenings[0].Waiting.USGallons(); math.Abs(got-waiting) > 0.002*night {
		t.Errorf("waiting %v gal after the first evening, want %v", got, waiting)
	}
	if got := p.Evenings[1].Spilled.USGallons(); math.Abs(got-spilled) > 0.002*night {
		t.Errorf("spilled %v gal on the second day, want %v", got, spilled)
	}
	if spilled > 0 && p.FirstSpill != 1 || spilled == 0 && p.FirstSpill == 1 {
		t.Errorf("spills on day %d", p.FirstSpill)
	}
	if p.Peak > b.Storage {
		t.Errorf("peak %v", p.Peak)
	}
	total := p.Spilled + p.LeftAfter
	for _, e := range p.Evenings {
		total += e.Boiled
	}
	if !near(total.USGallons(), 670, 1e-12) {
		t.Errorf("%v gal accounted for", total.USGallons())
	}
}

// TestPlanHeat holds a gallon of syrup to the balance in the doc of Plan.
func TestPlanHeat(t *testing.T) {
	b := sugarhouse()
	b.Hours = 24 * time.Hour
	c20, c40F := units.Celsius(20), units.Fahrenheit(40)
	// The published volume is that at 20 C.
	warm, err := density.Solution(2, c20)
	if err != nil {
		t.Fatal(err)
	}
	cold, err := density.Solution(2, c40F)
	if err != nil {
		t.Fatal(err)
	}
	v := 43.389 * units.USGallon * units.Volume(warm/cold)
	p, err := b.Plan(Gathering{Volume: v, Brix: 2, Temperature: c40F})
	if err != nil || !near(p.Heat.BtusIT(), 404680, 1e-3) {
		t.Errorf("%v Btu, %v", p.Heat.BtusIT(), err)
	}
	r := kettle()
	d := Day{Pressure: b.At, Out: 48 * time.Hour, Sap: []Sap{{Volume: v, Brix: 2, Temperature: c40F}}}
	if o := mustRun(t, r, d); !near(o.Heat.BtusIT(), 404680, 1e-2) || !near(o.Evaporated.Pounds(), 353.22, 1e-4) {
		t.Errorf("%v Btu, %v lb", o.Heat.BtusIT(), o.Evaporated.Pounds())
	}
}

func TestPlanUrgentFirst(t *testing.T) {
	b := sugarhouse()
	b.Heat = 20 * units.Kilowatt
	sap := Gathering{Volume: 100 * units.USGallon, Brix: 2, Temperature: units.Celsius(4)}
	concentrate := sap
	concentrate.Brix, concentrate.Keep = 8, 12*time.Hour
	p, err := b.Plan(sap, concentrate, sap, Gathering{}, Gathering{})
	if err != nil {
		t.Fatal(err)
	}
	if p.Evenings[0].First != 0 || p.Evenings[1].First != 1 {
		t.Errorf("first %d and %d", p.Evenings[0].First, p.Evenings[1].First)
	}
	if p.FirstOverdue < 1 {
		t.Errorf("overdue on day %d", p.FirstOverdue)
	}
	b.Keep = 0
	p, err = b.Plan(sap, sap, sap, sap)
	if err != nil || p.FirstOverdue != -1 || p.Evenings[3].First > 3 {
		t.Errorf("without a keep time: overdue on day %d, %v", p.FirstOverdue, err)
	}
	for i := range 3 {
		if p.Evenings[i].First > p.Evenings[i+1].First {
			t.Errorf("day %d before day %d", p.Evenings[i].First, p.Evenings[i+1].First)
		}
	}
}

func TestPlanWarmup(t *testing.T) {
	b := sugarhouse()
	b.Warmup = 30 * time.Minute
	sap := Gathering{Volume: 40 * units.USGallon, Brix: 2, Temperature: units.Celsius(4)}
	with, err := b.Plan(sap, Gathering{})
	if err != nil {
		t.Fatal(err)
	}
	b.Warmup = 0
	without, err := b.Plan(sap, Gathering{})
	if err != nil {
		t.Fatal(err)
	}
	if d := with.Hours - without.Hours; (d - 30*time.Minute).Abs() > time.Microsecond {
		t.Errorf("warm-up of %v", d)
	}
	b.Warmup = 6 * time.Hour
	never, err := b.Plan(sap)
	if err != nil || never.Hours != 0 || never.LeftAfter != sap.Volume {
		t.Errorf("%+v, %v", never, err)
	}
}

func TestPlanLimits(t *testing.T) {
	sap := Gathering{Volume: 1, Brix: 2, Temperature: units.Celsius(4)}
	for _, tc := range []struct {
		name   string
		ok     []float64
		bad    []float64
		change func(b *Backlog, d *Gathering, x float64)
	}{
		{"storage", []float64{0, 1e6}, outside(0, 1e6), func(b *Backlog, d *Gathering, x float64) { b.Storage = units.Volume(x) }},
		{"hours", []float64{0, 24}, []float64{-1, 24.1}, func(b *Backlog, d *Gathering, x float64) { b.Hours = time.Duration(x * float64(time.Hour)) }},
		{"warm-up", []float64{0, 24}, []float64{-1, 24.1}, func(b *Backlog, d *Gathering, x float64) { b.Warmup = time.Duration(x * float64(time.Hour)) }},
		{"heat", []float64{1, 1e8}, append(outside(1, 1e8), 0), func(b *Backlog, d *Gathering, x float64) { b.Heat = units.Power(x) }},
		{"syrup", []float64{2.1, 74}, append(outside(1, 74), 0, 2), func(b *Backlog, d *Gathering, x float64) { b.Syrup = units.Brix(x) }},
		{"pressure", []float64{5e4, 1.1e5}, append(outside(5e4, 1.1e5), 0), func(b *Backlog, d *Gathering, x float64) { b.At = units.Pressure(x) }},
		{"keep", []float64{0, 1440}, []float64{-1, 1441}, func(b *Backlog, d *Gathering, x float64) { b.Keep = time.Duration(x * float64(time.Hour)) }},
		{"keep of a day", []float64{0, 1440}, []float64{-1, 1441}, func(b *Backlog, d *Gathering, x float64) { d.Keep = time.Duration(x * float64(time.Hour)) }},
		{"volume", []float64{0, 1e6}, outside(0, 1e6), func(b *Backlog, d *Gathering, x float64) { d.Volume = units.Volume(x) }},
		{"brix", []float64{0, 65.9}, outside(0, 65.95), func(b *Backlog, d *Gathering, x float64) { d.Brix = units.Brix(x) }},
		{"temperature", []float64{0, 100}, outside(0, 100), func(b *Backlog, d *Gathering, x float64) { d.Temperature = units.Celsius(x) }},
	} {
		run := func(x float64) error {
			b, d := sugarhouse(), sap
			tc.change(&b, &d, x)
			_, err := b.Plan(d)
			return err
		}
		for _, x := range tc.ok {
			if err := run(x); err != nil {
				t.Errorf("%s %v: %v", tc.name, x, err)
			}
		}
		for _, x := range tc.bad {
			var e *units.RangeError
			if err := run(x); !errors.As(err, &e) || e.Func != "boil.Backlog.Plan" {
				t.Errorf("%s %v: %v", tc.name, x, err)
			}
		}
	}
	if _, err := sugarhouse().Plan(); !errors.Is(err, units.ErrRange) {
		t.Error(err)
	}
	if _, err := sugarhouse().Plan(make([]Gathering, 1001)...); !errors.Is(err, units.ErrRange) {
		t.Error(err)
	}
}

func TestSpoiling(t *testing.T) {
	for _, tc := range []struct {
		f    float64
		want Growth
	}{{39.9, GrowthSlow}, {40.1, GrowthBetween}, {49.9, GrowthBetween}, {50.1, GrowthFast}, {math.NaN(), GrowthUnknown}, {math.Inf(1), GrowthFast}, {math.Inf(-1), GrowthSlow}} {
		if got := Spoiling(units.Fahrenheit(tc.f)); got != tc.want {
			t.Errorf("%v F: %v, want %v", tc.f, got, tc.want)
		}
	}
	if Growth(9).String() != "unknown" {
		t.Error("a growth without a name")
	}
}

func BenchmarkPlan(b *testing.B) {
	for _, days := range []int{40, 400} {
		b.Run(strconv.Itoa(days), func(b *testing.B) {
			b.ReportAllocs()
			forecast := make([]Gathering, days)
			for i := range forecast {
				forecast[i] = Gathering{Volume: units.USGallons(60 + 40*math.Sin(float64(i))), Brix: 2, Temperature: units.Celsius(4)}
			}
			for b.Loop() {
				if _, err := sugarhouse().Plan(forecast...); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
