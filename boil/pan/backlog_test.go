package pan

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

// Without a fire the tanks are a sum that can be done by hand.
func TestPlanTanks(t *testing.T) {
	b := sugarhouse()
	b.Hours = 0
	day := func(gallons float64) Gathering {
		return Gathering{Volume: units.USGallons(gallons), Brix: 2, Temperature: units.Celsius(4)}
	}
	for _, tc := range []struct {
		days                                         []float64
		waiting, spilled, overdue                    []float64
		first                                        []int
		peak                                         float64
		peakDay, firstSpill, firstOverdue, spillSums int
	}{
		// 300 gal of tanks; sap may wait for two evenings.
		{
			days: []float64{100, 100, 0, 200}, waiting: []float64{100, 200, 200, 300}, spilled: []float64{0, 0, 0, 100},
			overdue: []float64{0, 0, 100, 200}, first: []int{0, 0, 0, 0}, peak: 300, peakDay: 3, firstSpill: 3, firstOverdue: 2, spillSums: 100,
		},
		{
			days: []float64{0, 200, 0}, waiting: []float64{0, 200, 200}, spilled: []float64{0, 0, 0},
			overdue: []float64{0, 0, 0}, first: []int{-1, 1, 1}, peak: 200, peakDay: 1, firstSpill: -1, firstOverdue: -1,
		},
		{
			days: []float64{400, 50}, waiting: []float64{300, 300}, spilled: []float64{100, 50},
			overdue: []float64{0, 0}, first: []int{0, 0}, peak: 300, peakDay: 0, firstSpill: 0, firstOverdue: -1, spillSums: 150,
		},
	} {
		var days []Gathering
		for _, gallons := range tc.days {
			days = append(days, day(gallons))
		}
		p, err := b.Plan(days...)
		if err != nil {
			t.Fatal(err)
		}
		is := func(what string, got units.Volume, want float64) {
			t.Helper()
			if math.Abs(got.USGallons()-want) > 1e-9 {
				t.Errorf("%v: %s %v gal, want %v", tc.days, what, got.USGallons(), want)
			}
		}
		for i, e := range p.Evenings {
			is("waiting", e.Waiting, tc.waiting[i])
			is("spilled", e.Spilled, tc.spilled[i])
			is("overdue", e.Overdue, tc.overdue[i])
			is("boiled", e.Boiled, 0)
			if e.First != tc.first[i] {
				t.Errorf("%v: on evening %d the sap of day %d is first, want %d", tc.days, i, e.First, tc.first[i])
			}
		}
		is("peak", p.Peak, tc.peak)
		is("all spilled", p.Spilled, float64(tc.spillSums))
		is("left", p.LeftAfter, tc.waiting[len(tc.waiting)-1])
		if p.PeakDay != tc.peakDay || p.FirstSpill != tc.firstSpill || p.FirstOverdue != tc.firstOverdue {
			t.Errorf("%v: peak on day %d, spill on %d, overdue on %d", tc.days, p.PeakDay, p.FirstSpill, p.FirstOverdue)
		}
	}

	// Both should be boiled by the third evening: the older comes first.
	hasty := day(10)
	hasty.Keep = 24 * time.Hour
	if p, err := b.Plan(day(10), hasty); err != nil || p.Evenings[1].First != 0 {
		t.Errorf("the sap of day %d is first, %v", p.Evenings[1].First, err)
	}
}

// Evening by evening the sums of a plan add up, and the syrup holds the sugar
// that was in the sap.
func TestPlanSums(t *testing.T) {
	b := sugarhouse()
	b.Warmup = 20 * time.Minute
	var days []Gathering
	var into units.Mass
	for i, gallons := range []float64{60, 150, 90, 0, 0, 120, 0, 0, 0} {
		d := Gathering{Volume: units.USGallons(gallons), Brix: units.Brix(1.5 + 0.5*float64(i%3)), Temperature: units.Celsius(float64(1 + i))}
		rho, err := density.Solution(d.Brix, d.Temperature)
		if err != nil {
			t.Fatal(err)
		}
		into += d.Brix.Sugar(rho.Mass(d.Volume))
		days = append(days, d)
	}
	p, err := b.Plan(days...)
	if err != nil || p.LeftAfter != 0 || p.Spilled != 0 {
		t.Fatalf("%+v, %v", p, err)
	}
	var hours time.Duration
	var heat units.Energy
	var sugar units.Mass
	fires := 0
	for _, e := range p.Evenings {
		hours += e.Hours
		heat += e.Heat
		sugar += e.Sugar
		if e.Hours > 0 {
			fires++
		}
	}
	if fires < 3 || p.Hours != hours || !near(float64(p.Heat), float64(heat), 1e-12) || !near(float64(p.Heat), float64(b.Heat)*hours.Seconds(), 1e-9) {
		t.Errorf("%d fires: %v and %v J, by the evening %v and %v J", fires, p.Hours, float64(p.Heat), hours, float64(heat))
	}
	if !near(float64(p.Sugar), float64(sugar), 1e-12) || !near(float64(p.Sugar), float64(into), 1e-12) {
		t.Errorf("%v kg of sugar, by the evening %v, in the sap %v", float64(p.Sugar), float64(sugar), float64(into))
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
			if err := run(x); !errors.As(err, &e) || e.Func != "pan.Backlog.Plan" {
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
