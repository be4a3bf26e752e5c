package pan

import (
	"encoding/json"
	"errors"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// What is told by depths is told back by depths, in every compartment.
func TestLevelsBothWays(t *testing.T) {
	g := rand.New(rand.NewPCG(18, 1))
	for range 200 {
		r := partitioned()
		var levels []Level
		for range r.Compartments {
			levels = append(levels, Level{Depth: units.Inches(3 * g.Float64()), Brix: units.Brix(75 * g.Float64()), Temperature: units.Celsius(110 * g.Float64())})
		}
		held, err := r.FromLevels(levels)
		if err != nil {
			t.Fatal(err)
		}
		back, err := r.Levels(held)
		if err != nil {
			t.Fatal(err)
		}
		for i, l := range levels {
			if b := back[i]; !near(float64(b.Depth), float64(l.Depth), 1e-12) || !near(float64(b.Brix), float64(l.Brix), 1e-12) || !b.Temperature.Equal(l.Temperature) {
				t.Errorf("%+v came back as %+v", l, b)
			}
		}
	}
}

func TestLevelsRefused(t *testing.T) {
	r := kettle() // 8 in deep
	good := Level{Depth: 2 * units.Inch, Brix: 4, Temperature: units.Celsius(80)}
	for arg, edit := range map[string]func(*Level){
		"levels[0].Depth":       func(l *Level) { l.Depth = 24.1 * units.Inch },
		"levels[0].Brix":        func(l *Level) { l.Brix = 75.1 },
		"levels[0].Temperature": func(l *Level) { l.Temperature = units.Celsius(math.NaN()) },
	} {
		l := good
		edit(&l)
		var e *units.RangeError
		if _, err := r.FromLevels([]Level{l}); !errors.As(err, &e) || e.Arg != arg {
			t.Errorf("%v, want %s", err, arg)
		}
	}
	var e *units.RangeError
	if _, err := r.FromLevels([]Level{good, good}); !errors.As(err, &e) || e.Arg != "levels" {
		t.Error(err)
	}
	if _, err := r.FromLevels([]Level{{Depth: 24 * units.Inch, Brix: 75, Temperature: units.Celsius(110)}}); err != nil {
		t.Error(err)
	}
	if _, err := r.Levels(Contents{{Sugar: -1}}); !errors.As(err, &e) || e.Arg != "held[0].Sugar" {
		t.Error(err)
	}
}

// Over three days and the nights between, the sugar that the tanks brought is the
// sugar drawn and held, to 1e-9, though every evening goes out as JSON and comes
// back in the morning. Nothing of an evening is counted again on the third day:
// what stood in the pans is only in what stands there now or was drawn.
func TestSugarOverTwoNights(t *testing.T) {
	g := rand.New(rand.NewPCG(18, 2))
	for range 40 {
		r := partitioned()
		r.Coals = time.Duration(g.IntN(3)) * 6 * time.Minute
		var start Contents
		var gathered, drawn, sapLeft float64
		for range 3 {
			d := longDay()
			d.Start, d.Out = start, 8*time.Hour
			d.Sap[0].Volume = units.USGallons(40 + 100*g.Float64())
			o, err := r.Run(d)
			if err != nil {
				t.Fatal(err)
			}
			brought, _ := brought(t, Day{Sap: d.Sap})
			gathered += brought
			drawn += float64(o.Syrup.Sugar)
			sapLeft += float64(o.Sweet)
			m, err := o.Held.Overnight(Night{Length: 14 * time.Hour, Air: units.Celsius(20*g.Float64() - 15), Halving: 2 * time.Hour})
			if err != nil {
				t.Fatal(err)
			}
			b, err := json.Marshal(m)
			if err != nil {
				t.Fatal(err)
			}
			var morning Morning
			if err := json.Unmarshal(b, &morning); err != nil {
				t.Fatal(err)
			}
			start = morning.Contents.Thawed()
			if got := drawn + sapLeft + float64(start.Sugar()); !near(got, gathered, 1e-9) {
				t.Errorf("%v kg of sugar gathered, %v accounted for", gathered, got)
			}
		}
	}
}

// A pan that froze is lit again when it has thawed, and not before.
func TestThawed(t *testing.T) {
	r, d := partitioned(), longDay()
	held := mustRun(t, r, d).Held
	m, err := held.Overnight(Night{Length: 24 * time.Hour, Air: units.Celsius(-15), Halving: time.Hour})
	if err != nil || !m.Ice[0].Forms {
		t.Fatalf("%+v, %v", m.Ice, err)
	}
	d.Start = m.Contents
	var e *units.RangeError
	if _, err := r.Run(d); !errors.As(err, &e) || e.Arg != "Day.Start[0].Temperature" {
		t.Errorf("a fire under ice: %v", err)
	}
	d.Start = m.Contents.Thawed()
	o := mustRun(t, r, d)
	if d.Start.Mass() != held.Mass() || d.Start[0].Temperature != units.Celsius(0) || m.Contents[0].Temperature == d.Start[0].Temperature {
		t.Errorf("thawed to %+v", d.Start)
	}
	// Sweet of last night is syrup hours before fresh sap is.
	first, ok := o.FirstDraw()
	d.Start = nil
	fresh := mustRun(t, r, d)
	later, _ := fresh.FirstDraw()
	if !ok || later-first < 2*time.Hour {
		t.Errorf("first draw after %v with the sweet, %v without", first, later)
	}
}

// From 212 F in air of 32 F with a halving of 2 hours: 140 F after 2 log2(180/108)
// = 1.474 hours, and 50 F after 2 log2(180/18) = 6.644 hours.
func TestWarm(t *testing.T) {
	warm := func(from, air units.Temperature, length time.Duration) float64 {
		m, err := (Contents{{Water: 9, Sugar: 1, Temperature: from}}).Overnight(Night{Length: length, Air: air, Halving: 2 * time.Hour})
		if err != nil {
			t.Fatal(err)
		}
		return m.Warm[0].Hours()
	}
	f := units.Fahrenheit
	for _, tc := range []struct {
		from, air, length, want float64
	}{
		{212, 32, 14, 6.644 - 1.474},
		{212, 32, 1, 0}, {212, 32, 3, 3 - 1.474},
		{100, 32, 14, 2 * math.Log2(68.0/18)},
		{45, 32, 14, 0},
		{212, 60, 14, 14 - 2*math.Log2(152.0/80)}, // never below 50 F
		{40, 70, 14, 14 - 2*math.Log2(30.0/20)},   // warms up
		{70, 70, 14, 14}, {40, 40, 14, 0},
		{200, 140, 14, 0}, {45, 50, 14, 0},
	} {
		if got := warm(f(tc.from), f(tc.air), time.Duration(tc.length*float64(time.Hour))); math.Abs(got-tc.want) > 1e-3 {
			t.Errorf("%+v: %v h", tc, got)
		}
	}
}
