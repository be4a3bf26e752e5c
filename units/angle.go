package units

import "math"

// Angle is a plane angle, in radians.
type Angle float64

// Units of angle.
const (
	Radian Angle = 1
	Degree Angle = math.Pi / 180
	Turn   Angle = 2 * math.Pi
)

// Radians returns an angle of n radians.
func Radians(n float64) Angle { return Angle(n) }

// Degrees returns an angle of n degrees.
func Degrees(n float64) Angle { return Angle(n) * Degree }

// Radians returns the angle in radians.
func (a Angle) Radians() float64 { return float64(a) }

// Degrees returns the angle in degrees.
func (a Angle) Degrees() float64 { return float64(a / Degree) }

// In returns the angle in any unit: a.In(Turn).
func (a Angle) In(unit Angle) float64 { return float64(a / unit) }

// Arc returns the length of the angle along a circle of radius r.
func (a Angle) Arc(r Length) Length { return Length(float64(a) * float64(r)) }

var angles = table{parse: "units.ParseAngle", display: 1, units: []unit{
	{float64(Radian), "rad", nil},
	{float64(Degree), "deg", []string{"degree", "degrees"}},
	{float64(Turn), "turn", []string{"turns"}},
}}

// ParseAngle reads an angle such as "90 deg". The unit is mandatory.
func ParseAngle(s string) (Angle, error) { return parse[Angle](s, &angles) }

// String prints the angle in deg with 12 significant digits.
func (a Angle) String() string { return str(a, &angles) }

// Text prints the angle in the given unit with the given number of decimals.
// A unit that has no symbol here prints in rad.
func (a Angle) Text(unit Angle, decimals int) string {
	return text(a, unit, decimals, &angles)
}

// MarshalText prints the angle in rad without loss. NaN and infinity are errors.
func (a Angle) MarshalText() ([]byte, error) { return marshal(a, &angles) }

// UnmarshalText reads what [ParseAngle] reads.
func (a *Angle) UnmarshalText(text []byte) error { return unmarshal(a, text, &angles) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (a Angle) MarshalJSON() ([]byte, error) { return marshalJSON(a, &angles) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (a *Angle) UnmarshalJSON(text []byte) error { return unmarshalJSON(a, text, &angles) }
