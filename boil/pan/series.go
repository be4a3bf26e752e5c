package pan

import (
	"errors"
	"time"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Event is what happens at a [Moment] of a day.
type Event uint8

const (
	// EventReading is a moment of the series that the caller asked for.
	EventReading Event = iota
	// EventLit is when the fire is lit and the pans are filled.
	EventLit
	// EventBoils is when a compartment comes to the boil.
	EventBoils
	// EventOffBoil is when cold liquid takes a compartment off the boil.
	EventOffBoil
	// EventSapIn is when sap arrives at the tank.
	EventSapIn
	// EventSapOut is when the tank is empty.
	EventSapOut
	// EventPailIn is when a pail is poured in.
	EventPailIn
	// EventDrawOpens is when syrup starts to flow.
	EventDrawOpens
	// EventDrawShuts is when it stops.
	EventDrawShuts
	// EventReversed is when the flow changes direction.
	EventReversed
	// EventLow is when the level of a compartment would fall below its safe depth.
	// With sap still to come the fire is banked; otherwise it must be out.
	EventLow
	// EventBanked is when the fire waits for sap. No heat is counted, and the pans are
	// taken to stay hot.
	EventBanked
	// EventRekindled is when sap has come and the fire burns again.
	EventRekindled
	// EventTooThick is when a compartment comes to 75 Brix and the fire must be out.
	EventTooThick
	// EventFinished is when a kettle came to its strength with no sap left, and was
	// emptied.
	EventFinished
	// EventLastWood is when no more wood goes on and the coals are left. A fire
	// without coals has none.
	EventLastWood
	// EventFireOut is the end of the day.
	EventFireOut
)

var eventNames = enum.Names[Event]{Type: "pan.Event", Of: []string{
	"reading", "fire lit", "boils", "off the boil", "sap in", "sap out", "pail in", "draw opens", "draw shuts",
	"flow reversed", "low level", "fire banked", "fire rekindled", "too thick", "finished", "last wood", "fire out",
}}

// String names the event, such as "fire lit".
func (e Event) String() string { return eventNames.String(e) }

// MarshalText returns the name, and an error for what is no event.
func (e Event) MarshalText() ([]byte, error) { return eventNames.Marshal(e) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (e *Event) UnmarshalText(text []byte) error { return eventNames.Unmarshal(e, text) }

// Moment is the rig at one time of the day. It shows the simulation itself and
// is good until the function that received it returns: take numbers out of it,
// and not the moment.
//
// Compartments count as they stand in the rig, from 0, whatever the direction of
// the flow is.
type Moment struct {
	At    time.Duration
	Event Event

	// Compartment is the one that [EventBoils], [EventOffBoil], [EventLow], and [EventTooThick] speak
	// of; -1 at other events.
	Compartment int

	k        *kernel
	y        []float64
	reversed bool
}

// String tells the time and the event, such as "3h10m0s: draw opens".
func (m Moment) String() string { return m.At.String() + ": " + m.Event.String() }

var errMoment = errors.New("a moment shows the simulation itself and cannot be kept: write its time, its event and its liquids")

// MarshalJSON refuses: write what a Moment tells, its time, its event and its
// liquids.
func (m Moment) MarshalJSON() ([]byte, error) { return nil, errMoment }

// UnmarshalJSON refuses, as MarshalJSON does.
func (m *Moment) UnmarshalJSON([]byte) error { return errMoment }

// Len returns the number of compartments.
func (m Moment) Len() int {
	if m.k == nil {
		return 0
	}
	return m.k.n
}

// place turns the number of a compartment into its place along the flow.
func (m Moment) place(i int) (int, bool) {
	if m.k == nil || i < 0 || i >= m.k.n {
		return 0, false
	}
	if m.reversed {
		i = m.k.n - 1 - i
	}
	return i, true
}

// Liquid returns what stands in compartment i, and nothing if there is no such
// compartment.
func (m Moment) Liquid(i int) Liquid {
	i, ok := m.place(i)
	if !ok {
		return Liquid{}
	}
	return m.k.liquid(m.y, i)
}

// Volume returns the hot volume in compartment i.
func (m Moment) Volume(i int) units.Volume {
	l := m.Liquid(i)
	if !(l.Mass() > 0) {
		return 0
	}
	return units.Volume(float64(l.Mass()) * m.k.hot.at(l.Brix().Fraction()).volume)
}

// Drawn returns the syrup that has been drawn since the fire was lit. It has no
// temperature.
func (m Moment) Drawn() Liquid {
	if m.k == nil {
		return Liquid{}
	}
	return Liquid{Sugar: units.Mass(m.y[m.k.drawnSugar()]), Water: units.Mass(m.y[m.k.drawnWater()])}
}

// Evaporated returns the water that has been boiled off since the fire was lit.
func (m Moment) Evaporated() units.Mass {
	if m.k == nil {
		return 0
	}
	return units.Mass(m.y[m.k.steam()])
}

// SapLeft returns the mass of the sap in the tank.
func (m Moment) SapLeft() units.Mass {
	if m.k == nil {
		return 0
	}
	return units.Mass(m.y[m.k.inTank()])
}

// liquid returns what state y has at place i of the flow.
func (k *kernel) liquid(y []float64, i int) Liquid {
	l := Liquid{Sugar: units.Mass(y[i]), Water: units.Mass(y[k.water(i)])}
	m := float64(l.Mass())
	if !(m > 0) {
		return l
	}
	l.Temperature = units.Celsius(k.hot.at(y[i] / m).point)
	if lack := y[k.lack(i)]; lack > 0 {
		// Both calls stay in range: nothing colder than 0 C goes into a pan.
		if h, err := sugar.Enthalpy(l.Brix(), l.Temperature); err == nil {
			l.Temperature, _ = sugar.TemperatureFromEnthalpy(l.Brix(), max(0, h-units.SpecificEnergy(lack/m)))
		}
	}
	return l
}
