package main

import (
	"fmt"

	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// feedStops finds how long the full pan lasts when the sap stops, as strong as it is
// when the last of it goes in.
func (p *plan) feedStops(s *setup) error {
	if p.alone || p.overrun {
		return nil
	}
	rig, day, err := p.rig(s)
	if err != nil {
		return err
	}
	levels := make([]pan.Level, len(rig.Compartments))
	for i, c := range rig.Compartments {
		levels[i] = pan.Level{Depth: c.Depth, Brix: p.lastBrix, Temperature: p.waterBoils}
		if p.run != nil {
			levels[i].Brix = p.run.Held[i].Brix()
		}
	}
	if p.run != nil && len(levels) > 1 {
		rig.Draw = pan.DrawOff{} // syrup is drawn on
	}
	held, err := rig.FromLevels(levels)
	if err == nil {
		p.stopped, err = rig.FeedStopped(held, day.Pressure)
	}
	return cli.For("boil-rate", err)
}

// stoppedRow tells it.
func (p page) stoppedRow(part *cli.Part) {
	if p.stopped.End == pan.EventReading {
		return
	}
	what := "from full to the safe depth under full fire: sap or water must be in by then, since the steam rises when no cold sap comes"
	if p.stopped.End != pan.EventLow {
		what = "from full to syrup under full fire: sap or water must be in by then"
	}
	wood := cli.When(p.given.coals > 0, "no more wood after "+p.In(cli.Minutes(p.stopped.LastWood, cli.Down)))
	if p.stopped.Overruns {
		wood = "the coals alone do it: no more wood, and pour in what there is"
	}
	part.Row("stopped", "If the sap stops", cli.Minutes(p.stopped.After, cli.Down), what, wood)
}

// stoppedCaution is the same in short.
func (p page) stoppedCaution() string {
	if p.stopped.End == pan.EventReading {
		return "Never leave it; keep it over " + p.In(cli.Eighths(p.given.safe, cli.Up)) + " deep with sap or water."
	}
	to := p.In(cli.Eighths(p.given.safe, cli.Up))
	if p.stopped.End != pan.EventLow {
		to = "syrup"
	}
	return fmt.Sprintf("Never leave it: unfed, %s to %s. Keep water by.", p.In(cli.Minutes(p.stopped.After, cli.Down)), to)
}

// rig is the pan of the day.
func (p *plan) rig(s *setup) (pan.Rig, pan.Day, error) {
	power, err := p.power(s)
	if err != nil {
		return pan.Rig{}, pan.Day{}, err
	}
	rig := pan.Rig{Heat: power, Draw: pan.DrawOff{At: s.target, Until: s.drawTo}, Coals: s.coals}
	areas := []units.Area(s.compartments)
	if len(areas) == 0 {
		areas = []units.Area{s.pan.Area}
	}
	for _, a := range areas {
		rig.Compartments = append(rig.Compartments, pan.Compartment{Area: a, Depth: s.depth, SafeDepth: s.safe})
	}
	day := pan.Day{Pressure: p.pressure, Sap: p.loads(s, p.start)}
	if p.sweet.Mass() > 0 && len(s.compartments) > 0 {
		day.Start = p.sweet.in
	}
	return rig, day, nil
}
