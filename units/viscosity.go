package units

// Viscosity is dynamic viscosity, in pascal seconds.
type Viscosity float64

// Units of viscosity. A centipoise is a millipascal second.
const (
	PascalSecond      Viscosity = 1
	MillipascalSecond Viscosity = 1e-3
)

// PascalSeconds returns a viscosity of n pascal seconds.
func PascalSeconds(n float64) Viscosity { return Viscosity(n) }

// MillipascalSeconds returns a viscosity of n millipascal seconds.
func MillipascalSeconds(n float64) Viscosity { return Viscosity(n) * MillipascalSecond }

// PascalSeconds returns the viscosity in pascal seconds.
func (v Viscosity) PascalSeconds() float64 { return float64(v) }

// MillipascalSeconds returns the viscosity in millipascal seconds.
func (v Viscosity) MillipascalSeconds() float64 { return float64(v / MillipascalSecond) }

// In returns the viscosity in any unit: v.In(MillipascalSecond).
func (v Viscosity) In(unit Viscosity) float64 { return float64(v / unit) }

var viscosities = table{parse: "units.ParseViscosity", display: 1, units: []unit{
	{float64(PascalSecond), "Pa s", nil},
	{float64(MillipascalSecond), "mPa s", []string{"cP"}},
}}

// ParseViscosity reads a viscosity such as "184 mPa s". The unit is mandatory.
func ParseViscosity(s string) (Viscosity, error) { return parse[Viscosity](s, &viscosities) }

// String prints the viscosity in mPa s with 12 significant digits.
func (v Viscosity) String() string { return str(v, &viscosities) }

// Text prints the viscosity in the given unit with the given number of decimals.
// A unit that has no symbol here prints in Pa s.
func (v Viscosity) Text(unit Viscosity, decimals int) string {
	return text(v, unit, decimals, &viscosities)
}

// MarshalText prints the viscosity in Pa s without loss. NaN and infinity are errors.
func (v Viscosity) MarshalText() ([]byte, error) { return marshal(v, &viscosities) }

// UnmarshalText reads what [ParseViscosity] reads.
func (v *Viscosity) UnmarshalText(text []byte) error { return unmarshal(v, text, &viscosities) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (v Viscosity) MarshalJSON() ([]byte, error) { return marshalJSON(v, &viscosities) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (v *Viscosity) UnmarshalJSON(text []byte) error { return unmarshalJSON(v, text, &viscosities) }
