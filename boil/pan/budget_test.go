package pan

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// evening is a tank of sap under the rigs of the tests, at 17:00.
func evening(gallons float64) Day {
	return Day{Pressure: 98 * units.Kilopascal, Light: 17 * time.Hour,
		Sap: []Sap{{At: 15 * time.Hour, Volume: units.USGallons(gallons), Brix: 2.2, Temperature: units.Fahrenheit(40)}}}
}

// What fits until a time, boiled forwards, ends at that time: within two minutes,
// for kettles and pans, with coals and without.
func TestFitsForwards(t *testing.T) {
	for _, r := range []Rig{kettle(), partitioned()} {
		for _, coals := range []time.Duration{0, 8 * time.Minute} {
			r.Coals = coals
			d := evening(400)
			for _, done := range []time.Duration{21 * time.Hour, 22*time.Hour + 30*time.Minute} {
				f, err := r.Fits(d, Budget{Done: done})
				if err != nil {
					t.Fatal(err)
				}
				then := d
				then.Out = 48 * time.Hour
				then.Sap = []Sap{d.Sap[0]}
				then.Sap[0].Volume *= units.Volume(f.Share.Fraction())
				o := mustRun(t, r, then)
				if late := o.Ended - done; late > 0 || late < -2*time.Minute || !(f.Share < 100) || f.Ended != o.Ended {
					t.Errorf("%d parts, coals %v: %v of the sap end at %v, wanted by %v", len(r.Compartments), coals, f.Share, o.Ended, done)
				}
				// And lit by the way back, the same sap is lit at the same time.
				light, o2, err := r.LightBy(then, done)
				if apart := light - d.Light; err != nil || apart.Abs() > 2*time.Minute || o2.Ended > done {
					t.Errorf("lit at %v for %v, %v", light, d.Light, err)
				}
			}
		}
	}
}

// By hand: a kettle at the boil takes a time in proportion to its sap, so that
// twice the hours from cold take twice the sap.
func TestFitsInProportion(t *testing.T) {
	r := kettle()
	share := func(hours time.Duration) float64 {
		f, err := r.Fits(evening(400), Budget{Done: 17*time.Hour + hours*time.Hour})
		if err != nil {
			t.Fatal(err)
		}
		return f.Share.Fraction()
	}
	if got := share(8) / share(4); !near(got, 2, 1e-3) {
		t.Errorf("twice the time takes %v the sap", got)
	}
}

// Half of the heat of the whole boil in wood boils half of the sap of a kettle;
// and all fits with all of it. The shorter of time and wood counts.
func TestFitsWood(t *testing.T) {
	r, d := kettle(), evening(60)
	all, err := r.Fits(d, Budget{Done: longestDay})
	if err != nil || all.Share != 100 || all.End != EventFinished {
		t.Fatalf("%+v, %v", all, err)
	}
	half, err := r.Fits(d, Budget{Done: longestDay, Heat: all.Heat / 2})
	if err != nil || !near(half.Share.Fraction(), 0.5, 1e-3) || half.Heat > all.Heat/2 {
		t.Errorf("%v of the sap, %v", half.Share, err)
	}
	if f, err := r.Fits(d, Budget{Done: longestDay, Heat: all.Heat * 1.0001}); err != nil || f.Share != 100 {
		t.Errorf("%v of the sap, %v", f.Share, err)
	}
	both, err := r.Fits(d, Budget{Done: 18 * time.Hour, Heat: all.Heat / 2})
	if err != nil || both.Ended > 18*time.Hour || both.Share >= half.Share {
		t.Errorf("both: %v at %v, %v", both.Share, both.Ended, err)
	}
}

// A boil that must be done before it is lit has no room, nor has one on a stick of
// wood; and half a gallon does not cover the pans.
func TestNoRoom(t *testing.T) {
	r, d := partitioned(), evening(100)
	for arg, err := range map[string]error{
		"Budget.Done": errOf(r.Fits(d, Budget{Done: 16 * time.Hour})),
		"Budget.Heat": errOf(r.Fits(d, Budget{Done: longestDay, Heat: units.Megajoule})),
		"done":        func() error { _, _, err := r.LightBy(d, 10*time.Minute); return err }(),
	} {
		var e *units.RangeError
		if !errors.Is(err, ErrNoRoom) || !errors.As(err, &e) || e.Arg != arg || e.Hint == "" || !(e.Value < e.Low) {
			t.Errorf("%s: %v", arg, err)
		}
	}
	for _, gallons := range []float64{0, 0.5} {
		d := evening(gallons)
		_, _, err := r.LightBy(d, 30*time.Hour)
		for _, err := range []error{err, errOf(r.Fits(d, Budget{Done: 30 * time.Hour}))} {
			var e *units.RangeError
			if errors.Is(err, ErrNoRoom) || !errors.As(err, &e) || e.Arg != "Day.Sap" || e.Hint == "" {
				t.Errorf("%v gal: %v", gallons, err)
			}
		}
	}
	for _, b := range []Budget{{Done: -1}, {Done: longestDay + time.Hour}, {Done: time.Hour, Heat: -1}, {Done: time.Hour, Heat: units.Energy(math.NaN())}} {
		if err := errOf(r.Fits(d, b)); !errors.Is(err, units.ErrRange) || errors.Is(err, ErrNoRoom) {
			t.Errorf("%+v: %v", b, err)
		}
	}
}

func errOf(_ Fit, err error) error { return err }

// Sap that comes while the fire burns does not let it be lit later than what comes
// last allows: lit by the way back, the day ends in time, and a minute later it
// does not.
func TestLightByWithMoreSap(t *testing.T) {
	g := rand.New(rand.NewPCG(18, 4))
	for range 30 {
		r, d := partitioned(), evening(40+60*g.Float64())
		d.Sap = append(d.Sap, Sap{At: time.Duration(16+2*g.Float64()) * time.Hour, Volume: units.USGallons(30 * g.Float64()), Brix: 2, Temperature: units.Celsius(3)})
		const done = 28 * time.Hour
		light, o, err := r.LightBy(d, done)
		if err != nil {
			t.Fatal(err)
		}
		checkConserved(t, d, o)
		d.Light, d.Out = light+time.Minute, longestDay
		later := mustRun(t, r, d)
		if o.Ended > done || !(later.Ended > done) {
			t.Errorf("lit at %v done at %v, a minute later at %v", light, o.Ended, later.Ended)
		}
	}
}
