package units

import (
	"math"
	"time"
)

// MassRate is a mass flow, in kilograms per second.
type MassRate float64

// Units of mass flow.
const (
	KilogramPerSecond MassRate = 1
	KilogramPerHour   MassRate = 1.0 / 3600
	PoundPerHour      MassRate = pound / 3600
)

// KilogramsPerSecond returns a mass flow of n kilograms per second.
func KilogramsPerSecond(n float64) MassRate { return MassRate(n) }

// KilogramsPerHour returns a mass flow of n kilograms per hour.
func KilogramsPerHour(n float64) MassRate { return MassRate(n) * KilogramPerHour }

// PoundsPerHour returns a mass flow of n pounds per hour.
func PoundsPerHour(n float64) MassRate { return MassRate(n) * PoundPerHour }

// KilogramsPerSecond returns the mass flow in kilograms per second.
func (q MassRate) KilogramsPerSecond() float64 { return float64(q) }

// KilogramsPerHour returns the mass flow in kilograms per hour.
func (q MassRate) KilogramsPerHour() float64 { return float64(q / KilogramPerHour) }

// PoundsPerHour returns the mass flow in pounds per hour.
func (q MassRate) PoundsPerHour() float64 { return float64(q / PoundPerHour) }

// In returns the mass flow in any unit: q.In(PoundPerHour).
func (q MassRate) In(unit MassRate) float64 { return float64(q / unit) }

// Over returns the mass that flows in time t.
func (q MassRate) Over(t time.Duration) Mass { return Mass(float64(q) * t.Seconds()) }

// Time returns how long the flow takes to move m.
func (q MassRate) Time(m Mass) time.Duration { return seconds(float64(m) / float64(q)) }

// VolumeRate returns the volume flow at density d.
func (q MassRate) VolumeRate(d Density) VolumeRate { return VolumeRate(float64(q) / float64(d)) }

// seconds returns a duration of s seconds, held at the longest duration where
// s is larger (a flow of zero never ends) and at zero where s is not a number
// or negative.
func seconds(s float64) time.Duration {
	const longest = math.MaxInt64
	ns := s * float64(time.Second)
	switch {
	case !(ns > 0):
		return 0
	case ns >= longest:
		return longest
	}
	return time.Duration(ns)
}

var massRates = table{parse: "units.ParseMassRate", display: 1, units: []unit{
	{float64(KilogramPerSecond), "kg/s", nil},
	{float64(KilogramPerHour), "kg/h", []string{"kg/hr"}},
	{float64(PoundPerHour), "lb/h", []string{"lb/hr"}},
}}

// ParseMassRate reads a mass flow such as "200 lb/h". The unit is mandatory.
func ParseMassRate(s string) (MassRate, error) { return parse[MassRate](s, &massRates) }

// String prints the mass flow in kg/h with 12 significant digits.
func (q MassRate) String() string { return str(q, &massRates) }

// Text prints the mass flow in the given unit with the given number of decimals.
// A unit that has no symbol here prints in kg/s.
func (q MassRate) Text(unit MassRate, decimals int) string {
	return text(q, unit, decimals, &massRates)
}

// TextIn prints it to so many significant digits in the units that a person reads in a system.
func (q MassRate) TextIn(in System, digits int) string {
	return telling(in, massRatePairs, digits).one(float64(q))
}

// MarshalText prints the mass flow in kg/s without loss. NaN and infinity are errors.
func (q MassRate) MarshalText() ([]byte, error) { return marshal(q, &massRates) }

// UnmarshalText reads what [ParseMassRate] reads.
func (q *MassRate) UnmarshalText(text []byte) error { return unmarshal(q, text, &massRates) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (q MassRate) MarshalJSON() ([]byte, error) { return marshalJSON(q, &massRates) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (q *MassRate) UnmarshalJSON(text []byte) error { return unmarshalJSON(q, text, &massRates) }
