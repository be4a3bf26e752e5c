package pan

import (
	"math"
	"slices"
	"time"

	"example.org/sapreckoner/units"
)

// Outcome is what came of a [Day].
type Outcome struct {
	// End tells why the day ended: FireOut when its time was over, Low, TooThick,
	// Finished, or Reading if the caller's function wanted no more.
	End   Event
	Ended time.Duration

	// LastWood is when no more wood went on. With coals Ended is when they have
	// done their work, see [Rig.Run]; without, both are one.
	LastWood time.Duration

	// Burned is the time under fire until the last wood, without the time that
	// the fire was banked.
	Burned time.Duration

	// Heat is what the liquid took up. Fuel is heat over efficiency and heat
	// value. ToCome is what the coals have still to give at the end: next to
	// nothing, unless they overrun the pan.
	Heat, ToCome units.Energy
	Evaporated   units.Mass

	// Syrup is what was drawn, in Draws one by one.
	Syrup Liquid
	Draws []Drawn

	Held    Contents   // what is left in the pans
	SapLeft units.Mass // what is left in the tank, with what arrived after the end
	Sweet   units.Mass // the sugar in it

	// Backlog is the most sap that waited in the tank at a time, in kilograms.
	Backlog units.Mass

	// Pails is how many pails were poured in after the first filling.
	Pails int

	// LowAt is when a level would first have fallen below its safe depth, if
	// WasLow.
	LowAt  time.Duration
	WasLow bool
}

// Drawn is one draw of syrup. Its liquid has the boiling point of its strength.
type Drawn struct {
	From, To time.Duration
	Liquid
}

// FirstDraw returns when the first syrup was drawn, and whether there was any.
func (o *Outcome) FirstDraw() (time.Duration, bool) {
	if len(o.Draws) == 0 {
		return 0, false
	}
	return o.Draws[0].From, true
}

// close sums up the day once the fire is out.
func (s *simulation) close(fn string) error {
	s.finish()
	for len(s.sap) > 0 {
		if err := s.unload(fn); err != nil {
			return err
		}
	}
	s.out.SapLeft = units.Mass(s.y[s.inTank()])
	s.out.Sweet = units.Mass(s.tank.w) * s.out.SapLeft
	return nil
}

// finish sums up the day.
func (s *simulation) finish() {
	s.shutValve()
	s.tell(EventFireOut, -1)
	o := &s.out
	o.Ended = s.clock(s.now)
	o.Burned = time.Duration(math.Round(s.burned * 1e9))
	s.sumHeat()
	o.Evaporated = units.Mass(s.y[s.steam()])
	o.Syrup = Liquid{Sugar: units.Mass(s.y[s.drawnSugar()]), Water: units.Mass(s.y[s.drawnWater()])}
	o.Syrup.Temperature = s.syrupPoint(o.Syrup)
	o.Held = make(Contents, s.n)
	for i := range o.Held {
		o.Held[i] = s.liquid(s.y, i)
	}
	if s.reversed {
		slices.Reverse(o.Held)
	}
}

// syrupPoint returns the boiling point of a liquid that left the pan.
func (s *simulation) syrupPoint(l Liquid) units.Temperature {
	return units.Celsius(s.hot.at(l.Brix().Fraction()).point)
}

// followError tells which function could not follow a day.
type followError struct {
	fn  string
	err error
}

func (e *followError) Error() string { return e.fn + ": " + e.err.Error() }

// Text tells the reason to a person.
func (e *followError) Text(in units.System) string { return units.Reason(e.err, in) }

func (e *followError) Unwrap() error { return e.err }
