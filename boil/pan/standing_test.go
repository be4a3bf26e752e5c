package pan

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

func gathered(gallons float64) Gathering {
	return Gathering{Volume: units.USGallons(gallons), Brix: 2, Temperature: units.Celsius(4)}
}

func stands(gallons float64, age time.Duration) Standing { return Standing{gathered(gallons), age} }

// Without a fire the tanks are a sum that can be done by hand: 300 gal of them, and
// two evenings that sap may wait.
func TestPlanFromTanks(t *testing.T) {
	b := sugarhouse()
	b.Hours = 0
	p, err := b.PlanFrom([]Standing{stands(120, 36*time.Hour), stands(80, 0)}, gathered(0), gathered(150), gathered(0))
	if err != nil {
		t.Fatal(err)
	}
	// The 120 gal are due after half a day, the 80 after two, the 150 after three;
	// 50 of these find no room.
	for i, want := range []struct{ waiting, spilled, overdue float64 }{{200, 0, 0}, {300, 50, 120}, {300, 0, 200}} {
		e := p.Evenings[i]
		if !near(e.Waiting.USGallons(), want.waiting, 1e-9) || !near(e.Spilled.USGallons(), want.spilled, 1e-9) || !near(e.Overdue.USGallons(), want.overdue, 1e-9) || e.First != 0 {
			t.Errorf("evening %d: %+v, want %+v", i, e, want)
		}
	}
	if !near(p.Peak.USGallons(), 300, 1e-9) || p.PeakDay != 1 || p.FirstSpill != 1 || p.FirstOverdue != 1 {
		t.Errorf("%+v", p)
	}
	// On the first day the peak counts what stands already.
	p, err = b.PlanFrom([]Standing{stands(100, 0)}, gathered(50))
	if err != nil || !near(p.Peak.USGallons(), 150, 1e-9) || p.PeakDay != 0 {
		t.Errorf("%+v, %v", p, err)
	}
}

// Old sap is boiled before what comes, and of two that are due at once the older.
func TestPlanFromBoilsTheOldFirst(t *testing.T) {
	b := sugarhouse()
	b.Storage, b.Hours = 10*b.Storage, 4*time.Hour
	start := []Standing{stands(100, 6*time.Hour), stands(100, 30*time.Hour)}
	start[0].Brix, start[1].Brix = 3, 1 // told apart by their sugar
	p, err := b.PlanFrom(start, gathered(100))
	if err != nil {
		t.Fatal(err)
	}
	e := p.Evenings[0]
	// An evening is less than 100 gal of thin sap: all sugar is that of the oldest.
	if !(e.Boiled.USGallons() < 100) || !near(float64(e.Sugar)/float64(e.Boiled), 10.0, 0.1) {
		t.Errorf("%v boiled with %v of sugar; the oldest holds 10 kg/m3", e.Boiled, e.Sugar)
	}
	start[1].Keep = b.Keep + 24*time.Hour // due with the first now, and older
	if q, err := b.PlanFrom(start, gathered(100)); err != nil || !near(float64(q.Evenings[0].Sugar/e.Sugar), 1, 1e-12) {
		t.Errorf("%v, %v", q.Evenings[0].Sugar, err)
	}
}

// Sap that stands there is that of a day before whose fire was not lit: the plan
// from it is the rest of the plan.
func TestPlanFromGoesOn(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 19))
	for range 300 {
		b := sugarhouse()
		b.Keep = time.Duration(rng.IntN(4)) * 24 * time.Hour
		b.Storage = units.USGallons(500)
		days := make([]Gathering, 6)
		for i := range days {
			days[i] = gathered(150 * rng.Float64())
			days[i].Brix = units.Brix(1 + 3*rng.Float64())
			days[i].Temperature = units.Celsius(10 * rng.Float64())
		}
		first := days[0].Volume
		rest, err := b.PlanFrom([]Standing{{days[0], 24 * time.Hour}}, days[1:]...)
		whole, err2 := b.Plan(append([]Gathering{{}}, days[1:]...)...)
		if err != nil || err2 != nil {
			t.Fatal(err, err2)
		}
		sum := rest.LeftAfter + rest.Spilled
		for _, e := range rest.Evenings {
			sum += e.Boiled
		}
		other := whole.LeftAfter + whole.Spilled + first
		for _, e := range whole.Evenings {
			other += e.Boiled
		}
		if !near(float64(sum/other), 1, 1e-12) {
			t.Fatalf("%v accounted for of %v", sum, other)
		}
		// With no sap there, or none of it, it is the plan itself.
		none, err := b.PlanFrom([]Standing{{}}, days...)
		plain, err2 := b.Plan(days...)
		if err != nil || err2 != nil || !near(float64(none.Sugar/plain.Sugar), 1, 1e-12) || none.FirstOverdue != plain.FirstOverdue {
			t.Fatalf("%+v, %v; %+v, %v", none, err, plain, err2)
		}
	}
}

// Fresh sap in the tank is as good as sap of the first day.
func TestPlanFromFresh(t *testing.T) {
	b := sugarhouse()
	a, err := b.PlanFrom([]Standing{stands(100, 0)}, gathered(50), gathered(120), gathered(0))
	c, err2 := b.Plan(gathered(150), gathered(120), gathered(0))
	if err != nil || err2 != nil || len(a.Evenings) != len(c.Evenings) {
		t.Fatal(err, err2)
	}
	for i := range a.Evenings {
		if x, y := a.Evenings[i], c.Evenings[i]; !near(x.Boiled.USGallons(), y.Boiled.USGallons(), 1e-9) || !near(x.Waiting.USGallons(), y.Waiting.USGallons(), 1e-9) ||
			!near(float64(x.Sugar), float64(y.Sugar), 1e-9) || (x.Hours-y.Hours).Abs() > time.Microsecond || !near(x.Overdue.USGallons(), y.Overdue.USGallons(), 1e-9) {
			t.Errorf("evening %d: %+v, want %+v", i, x, y)
		}
	}
}

func TestPlanFromLimits(t *testing.T) {
	b := sugarhouse()
	const longest = 60 * 24 * time.Hour
	for name, tc := range map[string]struct {
		s   Standing
		arg string // empty if it is right
	}{
		"fresh":        {stands(100, 0), ""},
		"oldest":       {stands(100, longest), ""},
		"full":         {stands(300, 0), ""},
		"none":         {stands(0, time.Hour), ""},
		"unborn":       {stands(100, -time.Second), "start[0].Age"},
		"last year's":  {stands(100, longest+time.Second), "start[0].Age"},
		"too much":     {stands(300.001, 0), "start"},
		"minus":        {stands(-1, 0), "start[0].Volume"},
		"volume NaN":   {stands(math.NaN(), 0), "start[0].Volume"},
		"volume Inf":   {stands(math.Inf(1), 0), "start[0].Volume"},
		"volume -Inf":  {stands(math.Inf(-1), 0), "start[0].Volume"},
		"syrup":        {Standing{Gathering: Gathering{Volume: 1, Brix: 66, Temperature: units.Celsius(4)}}, "start[0].Brix"},
		"Brix NaN":     {Standing{Gathering: Gathering{Volume: 1, Brix: units.Brix(math.NaN())}}, "start[0].Brix"},
		"boiling hot":  {Standing{Gathering: Gathering{Volume: 1, Brix: 2, Temperature: units.Celsius(101)}}, "start[0].Temperature"},
		"kept a year":  {Standing{Gathering: Gathering{Volume: 1, Brix: 2, Temperature: units.Celsius(4), Keep: 8760 * time.Hour}}, "start[0].Keep"},
		"kept for NaN": {Standing{Gathering: Gathering{Volume: 1, Brix: 2, Temperature: units.Celsius(math.NaN())}}, "start[0].Temperature"},
	} {
		p, err := b.PlanFrom([]Standing{tc.s}, gathered(10))
		var e *units.RangeError
		if tc.arg == "" && err != nil || tc.arg != "" && (!errors.As(err, &e) || e.Arg != tc.arg || e.Func != "pan.Backlog.PlanFrom" || p.Evenings != nil) {
			t.Errorf("%s: %+v, %v; want %q", name, p, err, tc.arg)
		}
	}
	// Two that fit one by one and not together.
	if _, err := b.PlanFrom([]Standing{stands(200, 0), stands(200, 0)}, gathered(10)); err == nil {
		t.Error("400 gal stand in tanks of 300")
	}
}
