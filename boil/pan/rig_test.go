package pan

import (
	"errors"
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// outside returns what lies a billionth below and above a range, and what is no number
// at all.
func outside(low, high float64) []float64 {
	return []float64{low - 1e-9*max(math.Abs(low), 1), high + 1e-9*max(math.Abs(high), 1), math.NaN(), math.Inf(1), math.Inf(-1)}
}

// TestLimits holds every limit of a rig and a day inside, on and outside.
func TestLimits(t *testing.T) {
	type pan struct {
		rig Rig
		day Day
	}
	hours := func(h float64) time.Duration { return time.Duration(h * float64(time.Hour)) }
	for _, tc := range []struct {
		name   string
		ok     []float64
		bad    []float64
		change func(p *pan, x float64)
	}{
		{"heat", []float64{1, 2e4}, outside(1, 1e8), func(p *pan, x float64) { p.rig.Heat = units.Power(x) }},
		{"heat of a small pan", []float64{1e5}, []float64{1e8}, func(p *pan, x float64) { p.rig.Heat = units.Power(x) }},
		{"area", []float64{0.5, 1e4}, append(outside(1e-4, 1e4), 0), func(p *pan, x float64) { p.rig.Compartments[0].Area = units.Area(x) }},
		{"depth", []float64{0.05, 10}, append(outside(1e-3, 10), 0), func(p *pan, x float64) { p.rig.Compartments[0].Depth = units.Length(x) }},
		{"safe depth", []float64{1e-4, 0.099}, append(outside(1e-4, 0.099), 0), func(p *pan, x float64) { p.rig.Compartments[0].SafeDepth = units.Length(x) }},
		{"share", []float64{99.9, 100}, append(outside(0, 100), 0.5, 50, 99.8), func(p *pan, x float64) { p.rig.Compartments[0].Fire = units.Share(x) }},
		{"feed", []float64{0}, []float64{2, 255}, func(p *pan, x float64) { p.rig.Feed = Feed(x) }},
		{"pail", []float64{0.001, 0.09}, append(outside(0.000999, 0.0901), 0), func(p *pan, x float64) {
			p.rig.Feed, p.rig.Pail, p.rig.Draw.Until = PailFeed, units.Volume(x), 60
		}},
		{"preheater", []float64{0, 100}, outside(0, 100), func(p *pan, x float64) { p.rig.PreheatTo = units.Celsius(x) }},
		{"draw at", []float64{1, 74}, append(outside(1, 74), -66), func(p *pan, x float64) { p.rig.Draw.At = units.Brix(x) }},
		{"draw until", []float64{0, 0.5, 65.95}, outside(0.5, 65.95), func(p *pan, x float64) { p.rig.Draw.Until = units.Brix(x) }},
		{"draw rate", []float64{0, 0.01, 1e-8}, outside(1e-8, 0.01), func(p *pan, x float64) { p.rig.Draw.Rate = units.VolumeRate(x) }},
		{"rate without a draw", nil, []float64{0.001}, func(p *pan, x float64) { p.rig.Draw = DrawOff{Rate: units.VolumeRate(x)} }},
		{"pressure", []float64{5e4, 1.1e5}, append(outside(5e4, 1.1e5), 0), func(p *pan, x float64) { p.day.Pressure = units.Pressure(x) }},
		{"volume", []float64{0, 0.5}, outside(0, 1e6), func(p *pan, x float64) { p.day.Sap[0].Volume = units.Volume(x) }},
		{"brix", []float64{0, 75}, outside(0, 75), func(p *pan, x float64) { p.day.Sap[0].Brix = units.Brix(x) }},
		{"temperature", []float64{0, 100}, outside(0, 100), func(p *pan, x float64) { p.day.Sap[0].Temperature = units.Celsius(x) }},
		{"out", []float64{0, 336}, []float64{-1, 336.1}, func(p *pan, x float64) { p.day.Out = hours(x) }},
		{"light", []float64{0, 4}, []float64{-1, 4.1, 337}, func(p *pan, x float64) { p.day.Light = hours(x) }},
		{"arrival", []float64{0, 336}, []float64{-1, 337}, func(p *pan, x float64) { p.day.Sap[0].At = hours(x) }},
		{"reverse", []float64{0, 336}, []float64{-1, 337}, func(p *pan, x float64) { p.day.Reverse = []time.Duration{hours(x)} }},
		{"start mass", []float64{0, 50}, outside(0, 1e8), func(p *pan, x float64) { p.day.Start = Contents{{Water: units.Mass(x)}} }},
		{"start brix", []float64{0, 75}, []float64{75.1}, func(p *pan, x float64) {
			p.day.Start = Contents{{Sugar: units.Mass(x), Water: units.Mass(100 - x)}}
		}},
		{"start temperature", []float64{0, 110}, outside(0, 110), func(p *pan, x float64) {
			p.day.Start = Contents{{Water: 1, Temperature: units.Celsius(x)}}
		}},
		{"compartments at the start", []float64{0, 1}, []float64{2, 3}, func(p *pan, x float64) { p.day.Start = make(Contents, int(x)) }},
	} {
		run := func(x float64) error {
			p := &pan{
				rig: Rig{
					Compartments: []Compartment{{Area: 1, Depth: 0.1, SafeDepth: 0.01}},
					Heat:         20 * units.Kilowatt,
					Draw:         DrawOff{At: 66},
				},
				day: Day{Pressure: 100 * units.Kilopascal, Out: 4 * time.Hour,
					Sap: []Sap{{Volume: 0.2, Brix: 2, Temperature: units.Celsius(4)}}},
			}
			tc.change(p, x)
			_, err := p.rig.Run(p.day)
			return err
		}
		for _, x := range tc.ok {
			if err := run(x); err != nil {
				t.Errorf("%s %v: %v", tc.name, x, err)
			}
		}
		for _, x := range tc.bad {
			var e *units.RangeError
			if err := run(x); !errors.As(err, &e) || e.Func != "pan.Rig.Run" || e.Arg == "" {
				t.Errorf("%s %v: %v, want a RangeError of pan.Rig.Run", tc.name, x, err)
			}
		}
	}
}

// A hundred compartments, and shares of the fire that add up to 99.9 to 100.1.
func TestCompartmentsAndShares(t *testing.T) {
	d := longDay()
	d.Out = time.Minute
	c := Compartment{Area: 1, Depth: 0.1, SafeDepth: 0.01}
	for n, ok := range map[int]bool{100: true, 101: false} {
		r := Rig{Heat: units.Kilowatt}
		for range n {
			r.Compartments = append(r.Compartments, c)
		}
		if _, err := r.Run(d); ok != (err == nil) {
			t.Errorf("%d compartments: %v", n, err)
		}
	}
	for second, ok := range map[units.Share]bool{49.89: false, 49.91: true, 50.09: true, 50.11: false} {
		a, b := c, c
		a.Fire, b.Fire = 50, second
		if _, err := (Rig{Heat: units.Kilowatt, Compartments: []Compartment{a, b}}).Run(d); ok != (err == nil) {
			t.Errorf("50 and %v percent of the fire: %v", float64(second), err)
		}
	}
}

// The whole fire takes ten seconds or more to boil a compartment away: 100 L of
// water at 2.16 GJ a cubic meter are 216 MJ, or 21.6 MW.
func TestNoFlash(t *testing.T) {
	d := longDay()
	d.Out = time.Second
	r := Rig{Compartments: []Compartment{{Area: 1, Depth: 0.1, SafeDepth: 0.01}}}
	for megawatts, ok := range map[float64]bool{21.5: true, 21.7: false} {
		r.Heat = units.Watts(megawatts * 1e6)
		_, err := r.Run(d)
		if e := (*units.RangeError)(nil); ok != (err == nil) || !ok && (!errors.As(err, &e) || e.Low != 10 || !near(e.Value, 216/megawatts, 1e-9)) {
			t.Errorf("%v MW: %v", megawatts, err)
		}
	}
}

// Where the flow turns but once, both ends must suit as the first.
func TestOneTurnAsksBothEnds(t *testing.T) {
	big, small := Compartment{Area: 1, Depth: 0.1, SafeDepth: 0.01}, Compartment{Area: 0.1, Depth: 0.1, SafeDepth: 0.01}
	r := Rig{Compartments: []Compartment{big, small}, Heat: units.Kilowatt, Feed: PailFeed, Pail: 20 * units.Liter}
	d := longDay()
	d.Out = time.Minute
	if _, err := r.Run(d); err != nil {
		t.Error(err)
	}
	d.Reverse = []time.Duration{30 * time.Second}
	if _, err := r.Run(d); !errors.Is(err, units.ErrRange) {
		t.Errorf("a pail of 20 L for a compartment of 10 L: %v", err)
	}
}

// What is no number is told with the range in which it must lie.
func TestRigTellsItsLimits(t *testing.T) {
	nan := math.NaN()
	for _, tc := range []struct {
		arg       string
		low, high float64
		change    func(r *Rig, d *Day)
	}{
		{"Rig.Heat", 1, 1e8, func(r *Rig, d *Day) { r.Heat = units.Power(nan) }},
		{"Rig.Compartments[0].Area", 1e-4, 1e4, func(r *Rig, d *Day) { r.Compartments[0].Area = units.Area(nan) }},
		{"Rig.Compartments[0].Depth", 1e-3, 10, func(r *Rig, d *Day) { r.Compartments[0].Depth = units.Length(nan) }},
		{"Rig.Compartments[0].Fire", 0, 100, func(r *Rig, d *Day) { r.Compartments[0].Fire = units.Share(nan) }},
		{"Rig.PreheatTo", 0, 100, func(r *Rig, d *Day) { r.PreheatTo = units.Celsius(nan) }},
		{"DrawOff.At", 1, 74, func(r *Rig, d *Day) { r.Draw.At = units.Brix(nan) }},
		{"DrawOff.Until", 0.5, 65.95, func(r *Rig, d *Day) { r.Draw.Until = units.Brix(nan) }},
		{"DrawOff.Rate", 10, 1e7, func(r *Rig, d *Day) { r.Draw.Rate = units.VolumeRate(nan) }},
		{"Day.Sap[0].Volume", 0, 1e6, func(r *Rig, d *Day) { d.Sap[0].Volume = units.Volume(nan) }},
		{"Day.Sap[0].Brix", 0, 75, func(r *Rig, d *Day) { d.Sap[0].Brix = units.Brix(nan) }},
		{"Day.Sap[0].Temperature", 0, 100, func(r *Rig, d *Day) { d.Sap[0].Temperature = units.Celsius(nan) }},
		{"Day.Start[0].Water", 0, 1e8, func(r *Rig, d *Day) { d.Start = Contents{{Water: units.Mass(nan)}} }},
		{"Day.Start[0].Temperature", 0, 110, func(r *Rig, d *Day) { d.Start = Contents{{Water: 1, Temperature: units.Celsius(nan)}} }},
	} {
		r, d := kettle(), longDay()
		tc.change(&r, &d)
		var e *units.RangeError
		if _, err := r.Run(d); !errors.As(err, &e) || e.Arg != tc.arg || !near(e.Low, tc.low, 1e-12) || !near(e.High, tc.high, 1e-12) {
			t.Errorf("%v; want %s from %v to %v", err, tc.arg, tc.low, tc.high)
		}
	}
}

func TestTraceEvery(t *testing.T) {
	see := func(Moment) bool { return true }
	const longest = 14 * 24 * time.Hour
	for _, every := range []time.Duration{0, time.Second, longest} {
		d := longDay()
		d.Out = time.Minute
		if _, err := partitioned().Trace(d, every, see); err != nil {
			t.Errorf("%v: %v", every, err)
		}
	}
	for _, every := range []time.Duration{-1, 1, time.Second - 1, longest + time.Millisecond} {
		if _, err := partitioned().Trace(longDay(), every, see); !errors.Is(err, units.ErrRange) {
			t.Errorf("%v: %v", every, err)
		}
	}
}

func TestEmptyRig(t *testing.T) {
	if _, err := (Rig{}).Run(longDay()); !errors.Is(err, units.ErrRange) {
		t.Error(err)
	}
	if _, err := partitioned().Run(Day{}); !errors.Is(err, units.ErrRange) {
		t.Error(err)
	}
	r := partitioned()
	r.Compartments = make([]Compartment, 101)
	if _, err := r.Run(longDay()); !errors.Is(err, units.ErrRange) {
		t.Error(err)
	}
}

// FuzzRun looks for a day that panics, never ends, or loses sugar or water.
func FuzzRun(f *testing.F) {
	f.Add(2, 1.0, 0.05, 0.02, 2e4, 0.0, 66.0, 65.0, 1e-5, 1e5, 8.0, 0.5, 2.0, 4.0, 3.0, 5.0)
	f.Add(1, 0.4, 0.2, 0.005, 2e4, 0.01, 66.0, 60.0, 0.0, 9e4, 40.0, 0.3, 3.0, 0.0, 0.0, 0.0)
	f.Add(7, 1e-3, 0.01, 0.001, 50.0, 0.0, 40.0, 0.0, 0.0, 6e4, 20.0, 0.01, 10.0, 90.0, 1.0, 2.0)
	f.Add(3, 1e4, 10.0, 1.0, 1e8, 0.0, 74.0, 73.95, 0.0, 1.1e5, 300.0, 1e4, 0.1, 20.0, 100.0, 200.0)
	f.Fuzz(func(t *testing.T, n int, area, depth, safe, heat, pail, at, until, rate, p, out, volume, brix, c, later, reverse float64) {
		hours := func(h float64) time.Duration {
			if !(math.Abs(h) < 1e5) {
				return -1
			}
			return time.Duration(h * float64(time.Hour))
		}
		r := Rig{Heat: units.Power(heat), Draw: DrawOff{At: units.Brix(at), Until: units.Brix(until), Rate: units.VolumeRate(rate)}}
		for i := range min(max(n, 0), 8) {
			r.Compartments = append(r.Compartments, Compartment{
				Area: units.Area(area / float64(i+1)), Depth: units.Length(depth), SafeDepth: units.Length(safe),
			})
		}
		if pail != 0 {
			r.Feed, r.Pail = PailFeed, units.Volume(pail)
		}
		sap := Sap{Volume: units.Volume(volume), Brix: units.Brix(brix), Temperature: units.Celsius(c)}
		second := sap
		second.At = hours(later)
		d := Day{Pressure: units.Pressure(p), Out: hours(out), Sap: []Sap{sap, second}, Reverse: []time.Duration{hours(reverse)}}
		o, err := r.Run(d)
		if errors.Is(err, units.ErrRange) || errors.Is(err, ErrTooBusy) {
			return
		}
		if err != nil {
			t.Fatal(err)
		}
		checkConserved(t, d, o)
	})
}

// A pail has to fit the first compartment, and the last too where the flow turns
// round and makes it the first.
func TestPailFitsWhereItIsPoured(t *testing.T) {
	r := Rig{
		Compartments: []Compartment{
			{Area: 1, Depth: 0.1, SafeDepth: 0.05},   // room for 50 L
			{Area: 0.2, Depth: 0.1, SafeDepth: 0.05}, // and for 10
		},
		Heat: 20 * units.Kilowatt, Feed: PailFeed, Pail: 20 * units.Liter,
	}
	d := longDay()
	if _, err := r.Run(d); err != nil {
		t.Errorf("20 L into 50: %v", err)
	}
	d.Reverse = []time.Duration{time.Hour}
	if _, err := r.Run(d); !errors.Is(err, units.ErrRange) {
		t.Errorf("20 L into 10, once the flow has turned: %v", err)
	}
	r.Pail = 9 * units.Liter
	if _, err := r.Run(d); err != nil {
		t.Errorf("9 L into either: %v", err)
	}
}
