package main

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// compartments are the areas of the compartments of a pan, from the sap's end.
type compartments []units.Area

// UnmarshalText reads areas divided by commas, such as "8 ft2, 4 ft2".
func (c *compartments) UnmarshalText(text []byte) error {
	*c = nil
	for _, part := range strings.Split(string(text), ",") {
		a, err := units.ParseArea(part)
		if err != nil {
			return err
		}
		*c = append(*c, a)
	}
	return nil
}

func (s *setup) declareRig(f *cli.Flags) {
	f.Group("A pan of several compartments")
	f.Quantity(&s.compartments, "compartments", "", `areas from the sap's end to the draw-off, such as "8 ft2, 4 ft2", instead of -pan-area: the day is then simulated and shown as a timeline`)
	f.Quantity(&s.drawTo, "draw-to", "", "strength at which the valve is shut after it was opened at the target; without it a thin stream is drawn that holds the target")
	f.String(&s.out, "out", "22:00", "time when the fire is out at the latest; sap left over waits for the next day")
	f.Quantity(&s.chase, "chase", "", "water that follows the last sap of the season, to save the sweet in the pans")
}

// A stop is a line of the timeline.
type stop struct {
	at      time.Duration
	what    string
	brix    []units.Brix
	drawn   units.Mass
	sapLeft units.Mass
}

// run is the simulated day.
type run struct {
	pan.Outcome
	stops []stop
	noSap bool // the tank ran empty

	first  units.Area   // of the compartment at the sap's end
	depth  units.Length // in it at the last wood
	tank   units.Mass   // sap left then
	wooded bool         // there was a last wood before the end
}

const (
	most       = 60 // stops of the longest timeline that a page shows
	firstSyrup = "first syrup"
)

// simulate runs the day through the compartments.
func (p *plan) simulate(s *setup) error {
	if len(s.compartments) == 0 {
		return nil
	}
	out, err := time.Parse("15:04", s.out)
	if err != nil {
		return cli.For("out", errors.New("write a time of the day as 22:00"))
	}
	if !out.After(p.start) {
		out = out.Add(24 * time.Hour)
	}
	rig, day, err := p.rig(s)
	if err != nil {
		return err
	}
	day.Out = out.Sub(p.start)
	if !p.deadline.by.IsZero() { // the deadline is kept by when it is lit, or by what is boiled
		day.Out = 13 * 24 * time.Hour
	}
	p.over = day.Out
	p.run = &run{first: s.compartments[0]}
	p.run.Outcome, err = rig.Trace(day, time.Hour, func(m pan.Moment) bool {
		p.run.note(m)
		return true
	})
	if err != nil {
		return cli.ForArg(err, "compartments", "Rig.Coals", "coals", "DrawOff.Until", "draw-to")
	}
	if p.run.Burned == 0 && p.run.Heat == 0 && p.run.ToCome == 0 {
		p.run = nil // no fire is lit under so little
		return p.intoPot(s)
	}
	return p.kettle(s)
}

// kettle takes off for the pot what is too little to become syrup in a pan of a
// single compartment.
func (p *plan) kettle(s *setup) error {
	o := &p.run.Outcome
	if len(s.compartments) > 1 || len(o.Draws) > 0 || !p.run.noSap || o.ToCome > 0 || o.End == pan.EventFinished || !o.WasLow && !p.run.wooded || o.LastWood >= p.over {
		return nil
	}
	in := o.Held[0]
	boils, err := boil.SyrupPoint(in.Brix(), p.pressure)
	if err != nil {
		return err
	}
	lot, err := sugar.NewLotByMass(in.Mass(), in.Brix(), boils)
	if err != nil {
		return err
	}
	p.small, p.done = true, o.Ended
	return p.takeOff(s, lot)
}

// loads is the sap as it comes to the tank at the pan, counted from a time such as the
// lighting: each gathering from a file at its time, and what ice or a membrane left all
// at the start.
func (p *plan) loads(s *setup, from time.Time) []pan.Sap {
	load := func(at time.Duration, l sugar.Lot) pan.Sap {
		return pan.Sap{At: at, Volume: l.Volume(), Brix: l.Brix(), Temperature: l.Temperature()}
	}
	if p.membrane != nil || p.ice != nil || s.sapFile == "" {
		return []pan.Sap{load(0, p.sap)}
	}
	var loads []pan.Sap
	for _, g := range p.gatherings {
		loads = append(loads, load(max(0, g.when.Sub(from)), g.lot))
	}
	return loads
}

// note writes a moment into the timeline. The many events of a busy valve are
// left to the table of draws.
func (r *run) note(m pan.Moment) {
	r.noSap = r.noSap || m.Event == pan.EventSapOut
	if m.Event == pan.EventLastWood {
		r.wooded, r.depth, r.tank = true, units.Length(m.Volume(0)/units.Volume(r.first)), m.SapLeft()
	}
	switch m.Event {
	case pan.EventDrawShuts, pan.EventPailIn, pan.EventOffBoil:
		return
	case pan.EventDrawOpens:
		if slices.ContainsFunc(r.stops, func(s stop) bool { return s.what == firstSyrup }) {
			return
		}
	}
	if n := len(r.stops); n == most || m.Event == pan.EventReading && n > 0 && r.stops[n-1].at == m.At {
		return
	}
	s := stop{at: m.At, what: m.Event.String(), drawn: m.Drawn().Mass(), sapLeft: m.SapLeft()}
	switch m.Event {
	case pan.EventReading:
		s.what = ""
	case pan.EventBoils, pan.EventLow, pan.EventTooThick:
		s.what = fmt.Sprintf("%s, no. %d", s.what, m.Compartment+1)
	case pan.EventDrawOpens:
		s.what = firstSyrup
	}
	for i := range m.Len() {
		s.brix = append(s.brix, m.Liquid(i).Brix())
	}
	r.stops = append(r.stops, s)
}

// noSyrup tells why none was drawn.
func (p page) noSyrup() string {
	last := p.run.Held[len(p.run.Held)-1].Brix().Text(1)
	switch {
	case p.small:
		return "the sap is out at " + last + ", and the pan is too low to boil on"
	case !p.sapStays():
		return "the sap is out, and the last compartment is at " + last
	}
	return "the pans are still growing sweeter"
}

// upTo shows a mass in a column to a tenth of what it is known to.
func upTo(m, known units.Mass) cli.Value { return cli.Known(cli.Mass(m), cli.Mass(known)) }

// rigPart shows the simulated day.
func (p page) rigPart(part *cli.Part) {
	cols := []cli.Column{{Key: "time", Head: "time"}, {Key: "event", Head: ""}}
	for i := range p.given.compartments {
		cols = append(cols, cli.Column{Key: fmt.Sprintf("compartment_%d_brix", i+1), Head: fmt.Sprintf("no. %d", i+1)})
	}
	cols = append(cols, cli.Column{Key: "drawn", Head: "drawn"}, cli.Column{Key: "sap_left", Head: "sap left"})
	var rows [][]cli.Value
	for _, s := range p.run.stops {
		row := []cli.Value{cli.Clock(p.start, p.start.Add(s.at)), cli.Words(s.what)}
		for _, b := range s.brix {
			row = append(row, cli.Number(float64(b), 1, ""))
		}
		rows = append(rows, append(row, upTo(s.drawn, units.Pound), upTo(s.sapLeft, 10*units.Pound)))
	}
	p.coalsOverrun(part)
	part.Remark("Brix in each compartment from the sap's end on, syrup drawn, and sap in the tank.")
	part.Table("timeline", cols, rows)
	p.stoppedRow(part)
	o := &p.run.Outcome
	part.Row("fire", "Under fire", cli.Hours(o.Burned))
	if first, ok := o.FirstDraw(); ok {
		part.Row("first_syrup", "First syrup", cli.Clock(p.start, p.start.Add(first)))
	} else {
		part.Row("first_syrup", "First syrup", cli.Words("none today"), p.noSyrup())
	}
	part.Row("drawn", "Syrup drawn", cli.Mass(o.Syrup.Mass()), p.In(cli.Volume(cold(o.Syrup)))+" at "+p.cool(), cli.Plural(len(o.Draws), "draw"))
	part.Row("off", "Water boiled off", cli.Mass(o.Evaporated))
	sweet := "the sweet for the next day: boil it up or keep it cold"
	if p.small {
		sweet = "all but what sticks goes into the pot, below"
	}
	part.Row("held", "Sugar held in the pans", cli.Mass(o.Held.Sugar()), sweet)
	part.Row("sap_left", "Sap left for tomorrow", cli.Mass(o.SapLeft))
	p.lastWoodRows(part)
	part.If(o.WasLow && p.given.coals == 0).Row("low", "Level at the safe depth", cli.ClockBy(p.start, p.start.Add(o.LowAt), time.Minute, cli.Down), "the fire must be out by then, or sap or water in the pan")
	p.drawTable(part)
	part.Remark(coldArch)
}
