package pan

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// burntOut is a day whose sap runs out long before the fire must be out.
func burntOut() Day {
	d := longDay()
	d.Sap[0].Volume = 300 * units.USGallon
	d.Out = 48 * time.Hour
	return d
}

// What a pan does depends on the heat that came into it and not on how fast it
// came, as long as nothing runs by the clock. Coals give P H/ln 2 after the last
// wood, as much as a full fire in H/ln 2: by so long the last wood comes before
// the time at which a fire without coals must be out, and the pans end alike.
func TestLastWoodByHand(t *testing.T) {
	for name, rig := range map[string]Rig{"kettle": kettle(), "partitioned": partitioned()} {
		day := burntOut()
		if name == "kettle" {
			day.Sap[0].Volume = 40 * units.USGallon
		}
		plain := mustRun(t, rig, day)
		for _, half := range []time.Duration{time.Second, 8 * time.Minute, 30 * time.Minute} {
			rig.Coals = half
			o := mustRun(t, rig, day)
			ahead := half.Seconds() / math.Ln2
			if got, want := o.LastWood.Seconds(), plain.Ended.Seconds()-ahead; math.Abs(got-want) > 0.01 {
				t.Errorf("%s, %v: last wood at %v s, want %v", name, half, got, want)
			}
			if o.Ended <= o.LastWood || o.WasLow || o.ToCome != 0 || o.Burned != o.LastWood {
				t.Errorf("%s, %v: %v to %v, low %v, %v J to come, burned %v", name, half, o.LastWood, o.Ended, o.WasLow, float64(o.ToCome), o.Burned)
			}
			if want := float64(rig.Heat) * (o.Burned.Seconds() + ahead); !near(float64(o.Heat), want, 1e-9) {
				t.Errorf("%s, %v: %v J, want %v", name, half, float64(o.Heat), want)
			}
			if !near(float64(o.Evaporated), float64(plain.Evaporated), 1e-6) || !near(float64(o.Syrup.Sugar), float64(plain.Syrup.Sugar), 1e-5) {
				t.Errorf("%s, %v: %v evaporated and %v of sugar drawn, %v and %v without coals", name, half, o.Evaporated, o.Syrup.Sugar, plain.Evaporated, plain.Syrup.Sugar)
			}
			if name == "kettle" && o.End != EventFinished || name != "kettle" && o.End != EventFireOut {
				t.Errorf("%s, %v: %v", name, half, o.End)
			}
		}
	}
}

// While the sap lasts nothing stops the fire but the clock. Then the coals boil
// off what their heat, 100 kW x 480 s/ln 2 = 69.2 MJ, makes of cold sap: by the
// day before them, as much in H/ln 2 of the full fire.
func TestCoalsAfterTheClock(t *testing.T) {
	rig, day := partitioned(), longDay()
	rig.Coals = 8 * time.Minute
	o := mustRun(t, rig, day)
	longer := day
	longer.Out += time.Duration(float64(rig.Coals) / math.Ln2)
	plain := partitioned()
	want := mustRun(t, plain, longer)
	if o.LastWood != day.Out || !near(float64(o.Heat), float64(want.Heat), 1e-9) || !near(float64(o.Evaporated), float64(want.Evaporated), 1e-6) {
		t.Errorf("last wood at %v, %v J and %v, want %v J and %v", o.LastWood, float64(o.Heat), o.Evaporated, float64(want.Heat), want.Evaporated)
	}
	// A hundredth is left after log2(100) = 6.644 half-lives.
	if got := (o.Ended - o.LastWood).Seconds() / 480; !near(got, 6.6438562, 1e-6) {
		t.Errorf("done after %v half-lives", got)
	}
}

// Where the coals alone are too much for what is in the pan, no more than they
// is burned, and the answer says what is still to come when it runs low.
func TestCoalsOverrun(t *testing.T) {
	rig, day := partitioned(), burntOut()
	day.Sap[0].Volume = 60 * units.USGallon
	rig.Coals = 3 * time.Hour
	o := mustRun(t, rig, day)
	if o.End != EventLow || !o.WasLow || o.LastWood != day.Light || o.Burned != 0 {
		t.Fatalf("%v, last wood at %v after %v", o.End, o.LastWood, o.Burned)
	}
	if want := float64(rig.Heat) * (3 * 3600) / math.Ln2; !near(float64(o.Heat+o.ToCome), want, 1e-9) || !(o.ToCome > 0) {
		t.Errorf("%v J and %v to come, together %v", float64(o.Heat), float64(o.ToCome), want)
	}
	// The coals gave 1 - 2^(-t/H) of it by then.
	if share := 1 - math.Exp2(-o.Ended.Hours()/3); !near(float64(o.Heat), share*float64(o.Heat+o.ToCome), 1e-9) {
		t.Errorf("%v J after %v", float64(o.Heat), o.Ended)
	}
}

// On any rig sugar and water close, steam never falls, the heat is that of the
// wood and of its coals, and no pan runs low unless it is told.
func TestCoalsOnAnyRig(t *testing.T) {
	r := rand.New(rand.NewPCG(16, 8))
	days := 400
	if testing.Short() {
		days = 60
	}
	ends := map[Event]int{}
	for i := range days {
		rig := randomRig(r)
		day := randomDay(r, rig)
		rig.Coals = time.Duration(math.Exp(15*r.Float64()-4) * float64(time.Second))
		rig.Coals = min(rig.Coals, 12*time.Hour)
		var was units.Mass
		var at time.Duration
		o, err := rig.Trace(day, 10*time.Minute, func(m Moment) bool {
			if m.Evaporated() < was || m.At < at {
				t.Errorf("%d: %v evaporated at %v (%v), %v before at %v", i, m.Evaporated(), m.At, m.Event, was, at)
			}
			was, at = max(was, m.Evaporated()*(1-1e-11)), m.At
			return true
		})
		if err != nil {
			if !errors.Is(err, units.ErrRange) || rig.Feed != PailFeed {
				t.Errorf("%d: %v", i, err)
			}
			continue
		}
		ends[o.End]++
		checkConserved(t, day, o)
		if o.LastWood > day.Out || o.LastWood < day.Light || o.Ended < o.LastWood || o.WasLow && o.End != EventFireOut && o.End != EventFinished && o.ToCome == 0 {
			t.Errorf("%d: last wood at %v, ended at %v", i, o.LastWood, o.Ended)
		}
		whole := float64(rig.Heat) * (o.Burned.Seconds() + rig.Coals.Seconds()/math.Ln2)
		banked := o.End == EventFireOut && o.Ended == o.LastWood // the fire was covered when its time was over
		if !banked && !near(float64(o.Heat+o.ToCome), whole, 1e-9) {
			t.Errorf("%d: %v J and %v to come, want %v", i, float64(o.Heat), float64(o.ToCome), whole)
		}
		if t.Failed() {
			t.Fatalf("%+v\n%+v\n%+v", rig, day, o)
		}
	}
	for _, e := range []Event{EventFireOut, EventLow, EventFinished} {
		if ends[e] == 0 {
			t.Errorf("no day ended with %v: %v", e, ends)
		}
	}
}

// Neither clock jumps with the half-life or the fire, down to none.
func TestCoalsContinuous(t *testing.T) {
	for name, rig := range map[string]Rig{"kettle": kettle(), "partitioned": partitioned()} {
		day := burntOut()
		if name == "kettle" {
			day.Sap[0].Volume = 40 * units.USGallon
		}
		rig.Coals = 8 * time.Minute
		was := mustRun(t, rig, day)
		for what, change := range map[string]func(r *Rig){
			"half-life": func(r *Rig) { r.Coals += time.Millisecond },
			"fire":      func(r *Rig) { r.Heat *= 1 + 1e-7 },
		} {
			next := rig
			change(&next)
			is := mustRun(t, next, day)
			// Of a millisecond more a clock makes 7 in the end, and of a ten-millionth
			// of the fire as much of the day; the last wood is found to a millisecond.
			if d := is.LastWood - was.LastWood; d.Abs() > 10*time.Millisecond {
				t.Errorf("%s, %s: last wood moves by %v", name, what, d)
			}
			if d := is.Ended - was.Ended; d.Abs() > 20*time.Millisecond {
				t.Errorf("%s, %s: the end moves by %v", name, what, d)
			}
		}
		rig.Coals = 0
		plain := mustRun(t, rig, day)
		for _, half := range []time.Duration{1, time.Microsecond, time.Millisecond} {
			rig.Coals = half
			o := mustRun(t, rig, day)
			if d := o.Ended - plain.Ended; d.Abs() > 10*time.Millisecond+10*half {
				t.Errorf("%s: coals of %v end %v off the end without any", name, half, d)
			}
		}
	}
}

func TestCoalsLimits(t *testing.T) {
	for half, ok := range map[time.Duration]bool{-1: false, 0: true, 12 * time.Hour: true, 12*time.Hour + time.Minute: false} {
		rig := kettle()
		rig.Coals = half
		var e *units.RangeError
		if _, err := rig.Run(longDay()); ok != (err == nil) || !ok && (!errors.As(err, &e) || e.Arg != "Rig.Coals") {
			t.Errorf("%v: %v", half, err)
		}
	}
}
