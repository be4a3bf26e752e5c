package pan

import (
	"math"
	"time"

	"example.org/sapreckoner/units"
)

// Stopped is what a pan has left when nothing flows in any more and the fire
// goes on: see [Rig.FeedStopped].
type Stopped struct {
	// After is the time until the first of what End tells: EventLow, a
	// compartment is down to its safe depth; EventDrawOpens, syrup stands in the
	// last one; EventTooThick, one has come to 75 Brix.
	After       time.Duration
	End         Event
	Compartment int // the one that End speaks of

	// LastWood is when the last wood may go on so that the coals do no more than
	// that; without coals it is After. Overruns tells that the coals alone do more,
	// even if no more wood goes on: liquid must be poured in.
	LastWood time.Duration
	Overruns bool
}

// FeedStopped tells how long the pan may go on under the full fire when the sap
// stops, with the valve shut: until the safe depth or until syrup, whichever
// comes first. Never count on the time until it is dry: a pan may boil dry in
// minutes (University of Vermont), buckles then and may burn the house (common
// practice).
//
// With the cold feed gone no heat goes into warming it, and the steam rises: a
// pan that boils off 12 gallons an hour of sap from 40 F then boils off 14. The
// level of the first compartment falls for all, since the others are held from
// it; partitions with open gates fall together and last longer.
//
// Range: contents of every compartment, or none; a rig and a pressure as of
// [Rig.Run]. A pan that is low already has no time. Uncertainty: that of Heat, in
// proportion, and that of the depth: an eighth of an inch is 12 percent of the inch
// that may go. Foam hides how low it stands, and a pan that is not level is lower
// at one end.
//
// Method: as of [Rig.Run] without sap; coals give as much as the full fire in
// half-life over ln 2. Check value: 12 ft2 of 15 Brix from 2 in to 1 in take 30 to
// 31 minutes at 12 US gal/h of sap from 40 F: 7.2 gal of water at 14.1 (computed).
func (r Rig) FeedStopped(held Contents, pressure units.Pressure) (Stopped, error) {
	const fn = "pan.Rig.FeedStopped"
	if err := r.check(fn, false); err != nil {
		return Stopped{}, err
	}
	if len(held) == 0 {
		held = make(Contents, len(r.Compartments))
	}
	if err := held.check(fn, "held", len(r.Compartments)); err != nil {
		return Stopped{}, err
	}
	h, err := newHot(fn, "pressure", pressure)
	if err != nil {
		return Stopped{}, err
	}
	then := r
	then.Coals, then.Feed, then.Draw.Until, then.Draw.Rate = 0, FloatFeed, 0, 0
	then.Compartments = make([]Compartment, len(r.Compartments))
	for i, c := range r.Compartments {
		// The levels hold from where they stand, and not from the full ones.
		volume := float64(held[i].Mass()) * h.at(held[i].Brix().Fraction()).volume
		c.Depth = units.Length(volume / float64(c.Area))
		if !(c.Depth*leastDrop > c.SafeDepth) {
			return Stopped{End: EventLow, Compartment: i, Overruns: r.Coals > 0}, nil
		}
		then.Compartments[i] = c
	}
	s := Stopped{Compartment: -1}
	o, err := then.run(fn, Day{Pressure: pressure, Start: held, Out: longestDay}, stepError, 0, func(m Moment) bool {
		switch m.Event {
		case EventLow, EventTooThick, EventDrawOpens:
			s.End, s.After, s.Compartment = m.Event, m.At, m.Compartment
			if m.Event == EventDrawOpens {
				s.Compartment = len(held) - 1
			}
			return false
		}
		return true
	})
	if err != nil {
		return Stopped{}, err
	}
	if s.Compartment < 0 { // a fire too small for a fortnight
		s.End, s.After = EventFireOut, o.Ended
	}
	glow := time.Duration(float64(r.Coals) / math.Ln2)
	s.LastWood = max(0, s.After-glow)
	s.Overruns = glow > s.After
	return s, nil
}

// leastDrop is the share of a depth down to which a compartment that stands so near
// to its safe depth counts as there: no stick tells them apart.
const leastDrop = 0.98
