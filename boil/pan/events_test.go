package pan

import (
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/units"
)

// A pan that is not drawn boils down until it is too thick, at 75 Brix, and then
// the day is over.
func TestTooThick(t *testing.T) {
	r := kettle()
	r.Draw = DrawOff{}
	r.Compartments[0].SafeDepth = 0.001
	fill := r.Compartments[0].Area.Volume(r.Compartments[0].Depth)
	d := Day{Pressure: units.Atmosphere, Out: 48 * time.Hour, Sap: []Sap{{Volume: fill * 2, Brix: 20, Temperature: units.Celsius(5)}}}
	o := mustRun(t, r, d)
	held := o.Held[0]
	if o.End != EventTooThick || !near(float64(held.Brix()), 75, 1e-6) {
		t.Errorf("%v at %v Brix", o.End, held.Brix())
	}
	if len(o.Draws) != 0 || o.Syrup.Mass() != 0 {
		t.Errorf("a pan without a draw was drawn: %v", o.Draws)
	}
}

// The last sap of the tank is poured, even where it is less than a kilogram.
func TestLastPail(t *testing.T) {
	r := kettle()
	r.Feed, r.Pail, r.Draw.Until = PailFeed, 2*units.USGallon, 60
	fill := r.Compartments[0].Area.Volume(r.Compartments[0].Depth)
	pressure := 98 * units.Kilopascal
	// What the first filling takes of cold sap, by a day that brings more.
	d := Day{Pressure: pressure, Out: time.Second, Sap: []Sap{{Volume: 2 * fill, Brix: 2, Temperature: units.Celsius(5)}}}
	first := mustRun(t, r, d)
	d.Sap[0].Volume = 2 * fill * (1 - units.Volume(first.SapLeft/(first.SapLeft+first.Held.Mass())))
	d.Sap[0].Volume += units.Liter / 2
	d.Out = 48 * time.Hour
	if o := mustRun(t, r, d); o.Pails != 1 || o.SapLeft != 0 {
		t.Errorf("%d pails for half a liter, %v left", o.Pails, o.SapLeft)
	}
	// It is poured as soon as there is room for a whole pail.
	_, err := r.Trace(d, 0, func(m Moment) bool {
		if want := fill - r.Pail + units.Liter/2; m.Event == EventPailIn && !near(float64(m.Volume(0)/want), 1, 2e-3) {
			t.Errorf("%v in the pan with the last pail, want %v", m.Volume(0), want)
		}
		return true
	})
	if err != nil {
		t.Fatal(err)
	}
	// The tank is called empty when it is, and not with half a liter left.
	more := d
	more.Sap = []Sap{{Volume: d.Sap[0].Volume + r.Pail, Brix: 2, Temperature: units.Celsius(5)}}
	emptied := 0
	_, err = r.Trace(more, 0, func(m Moment) bool {
		if m.Event == EventSapOut {
			emptied++
			if m.SapLeft() != 0 {
				t.Errorf("the tank is called empty with %v in it", m.SapLeft())
			}
		}
		return true
	})
	if err != nil || emptied != 1 {
		t.Errorf("emptied %d times, %v", emptied, err)
	}
	// A float takes the last half liter as well.
	r.Feed, r.Pail, r.Draw.Until = FloatFeed, 0, 0
	if o, at := times(t, r, d); o.SapLeft != 0 || at[EventSapOut] < time.Minute {
		t.Errorf("%v left under a float, the last at %v", o.SapLeft, at[EventSapOut])
	}
	// Half a liter that comes to a full kettle is fed as it makes room.
	d.Sap[0].Volume -= units.Liter / 2
	d.Sap = append(d.Sap, Sap{At: time.Minute, Volume: units.Liter / 2, Brix: 2, Temperature: units.Celsius(5)})
	if o, at := times(t, r, d); o.SapLeft != 0 || at[EventSapOut] < 2*time.Minute {
		t.Errorf("%v left of what came later, the last at %v", o.SapLeft, at[EventSapOut])
	}
}

// A thin stream holds its strength while pails come in, out of two compartments
// as out of more.
func TestThinStreamOfTwo(t *testing.T) {
	c := Compartment{Area: units.SquareFeet(6), Depth: 3 * units.Inch, SafeDepth: 1 * units.Inch}
	r := Rig{Compartments: []Compartment{c, c}, Heat: 40 * units.Kilowatt, Draw: DrawOff{At: 10}, Feed: PailFeed, Pail: 2 * units.USGallon}
	o := mustRun(t, r, longDay())
	if len(o.Draws) == 0 || o.End != EventFireOut {
		t.Fatalf("%d draws, then %v", len(o.Draws), o.End)
	}
	for _, draw := range o.Draws {
		if !near(float64(draw.Brix()), 10, 0.01) {
			t.Errorf("drawn at %v Brix from %v to %v", draw.Brix(), draw.From, draw.To)
		}
	}
}

// Every pail of cold sap takes the kettle off the boil, and the fire brings it
// back before the next.
func TestPailsTakeItOffTheBoil(t *testing.T) {
	r := kettle()
	r.Feed, r.Pail, r.Draw = PailFeed, 2*units.USGallon, DrawOff{}
	var order []Event
	d := Day{Pressure: units.Atmosphere, Out: 6 * time.Hour, Sap: []Sap{{Volume: 100 * units.USGallon, Brix: 2, Temperature: units.Celsius(5)}}}
	o, err := r.Trace(d, 0, func(m Moment) bool {
		if m.Event == EventPailIn || m.Event == EventOffBoil || m.Event == EventBoils {
			order = append(order, m.Event)
		}
		return true
	})
	if err != nil || o.Pails < 3 || len(order) < 3*o.Pails || order[0] != EventBoils {
		t.Fatalf("%d pails, %v, %v", o.Pails, order, err)
	}
	for i, e := range order[1:] {
		if want := [...]Event{EventPailIn, EventOffBoil, EventBoils}[i%3]; e != want && !(i%3 < 2 && e == [...]Event{EventOffBoil, EventPailIn}[i%3]) {
			t.Fatalf("%v, want a pail in, off the boil and boils by turns", order)
		}
	}
}

// Only a kettle is emptied where its strength is reached and no sap follows: two
// compartments run until one is low.
func TestTwoAreNoKettle(t *testing.T) {
	c := Compartment{Area: units.SquareFeet(6), Depth: 3 * units.Inch, SafeDepth: 1 * units.Inch}
	r := Rig{Compartments: []Compartment{c, c}, Heat: 40 * units.Kilowatt, Draw: DrawOff{At: 10}}
	d := longDay()
	d.Sap[0].Volume, d.Out = 150*units.USGallon, 48*time.Hour
	o, at := times(t, r, d)
	if _, out := at[EventSapOut]; !out || o.End != EventLow || len(o.Draws) == 0 {
		t.Errorf("%v after %d draws, %v", o.End, len(o.Draws), at)
	}
	if _, finished := at[EventFinished]; finished || !(o.Held[0].Mass() > 0) {
		t.Errorf("the first was emptied: %v", o.Held)
	}
}

// Thick liquid that boils is hotter than thin liquid can be: where it flows into
// the thin one to fill it up, a little flashes off at once.
func TestThickIntoThinFlashes(t *testing.T) {
	c := Compartment{Area: units.SquareFeet(6), Depth: 3 * units.Inch, SafeDepth: 1 * units.Inch}
	r := Rig{Compartments: []Compartment{c, c}, Heat: 40 * units.Kilowatt}
	d := longDay()
	full := func(b units.Brix) Liquid {
		t.Helper()
		point, err := boil.SyrupPoint(b, d.Pressure)
		if err != nil {
			t.Fatal(err)
		}
		all, err := r.Fill(b, point, d.Pressure)
		if err != nil {
			t.Fatal(err)
		}
		return all[0]
	}
	thick, thin := full(60), full(5)
	thin.Sugar *= 0.6
	thin.Water *= 0.6
	d.Start = Contents{thick, thin}
	var flashed units.Mass
	o, err := r.Trace(d, 0, func(m Moment) bool {
		if m.Event == EventLit {
			flashed = m.Evaporated()
		}
		return false
	})
	// 0.4 of a pan of 42 L flow, some 21 kg of 60 Brix, and cool by 2.4 K to the
	// boiling point of the 30 Brix that both make: 21 x 2.9 x 2.4 kJ, over 2260 kJ
	// for a kilogram of steam, are 0.065 kg.
	if err != nil || !(flashed > 0.05 && flashed < 0.08) {
		t.Errorf("%v flash off, %v", flashed, err)
	}
	checkConserved(t, d, o)
}

// A fire waits for sap that comes before the day is over, and for no other.
func TestWaitsForSapOfTheDay(t *testing.T) {
	r := kettle()
	r.Draw = DrawOff{}
	fill := r.Compartments[0].Area.Volume(r.Compartments[0].Depth)
	load := Sap{Volume: fill, Brix: 2, Temperature: units.Celsius(5)}
	for _, tc := range []struct {
		at     time.Duration
		volume units.Volume
		waits  bool
	}{{30 * time.Hour, fill, true}, {50 * time.Hour, fill, false}, {30 * time.Hour, 0, false}} {
		later := load
		later.At, later.Volume = tc.at, tc.volume
		d := Day{Pressure: units.Atmosphere, Out: 48 * time.Hour, Sap: []Sap{load, later}}
		waited := false
		o, err := r.Trace(d, 0, func(m Moment) bool {
			waited = waited || m.Event == EventBanked
			return true
		})
		if err != nil || !o.WasLow || waited != tc.waits || (o.End == EventLow && o.Ended < 30*time.Hour) == tc.waits {
			t.Errorf("%v at %v: waited %v, low %v, %v at %v, %v", tc.volume, tc.at, waited, o.WasLow, o.End, o.Ended, err)
		}
	}
}

// A kettle that comes to its strength while half a liter of sap still waits is
// drawn down and not emptied: the sap goes in.
func TestKettleWaitsForTheRest(t *testing.T) {
	r := kettle()
	r.Feed, r.Pail, r.Draw.Until = PailFeed, 2*units.USGallon, 60
	mass := units.Mass(1250 * float64(r.Compartments[0].Area.Volume(r.Compartments[0].Depth)))
	d := Day{Pressure: units.Atmosphere, Out: 48 * time.Hour,
		Start: Contents{{Sugar: 0.659 * mass, Water: 0.341 * mass, Temperature: units.Celsius(100)}},
		Sap:   []Sap{{Volume: units.Liter / 2, Brix: 2, Temperature: units.Celsius(5)}}}
	if o, at := times(t, r, d); o.SapLeft != 0 || o.Pails != 1 || at[EventDrawOpens] > at[EventPailIn] {
		t.Errorf("%v left, %d pails, %v", o.SapLeft, o.Pails, at)
	}
}
