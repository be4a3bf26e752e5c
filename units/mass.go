package units

import "time"

// Mass is an amount of matter, in kilograms. A scale in air shows a little
// less: see [example.org/sapreckoner/density.InAir].
type Mass float64

// Units of mass. The avoirdupois pound is 0.45359237 kg exactly (international
// yard and pound agreement, 1959; NIST SP 811, App. B).
const (
	Kilogram  Mass = 1
	Gram      Mass = 1e-3
	Milligram Mass = 1e-6
	Tonne     Mass = 1000
	Pound     Mass = pound
	Ounce     Mass = pound / 16
	ShortTon  Mass = 2000 * pound // never a bare ton

	pound = 0.45359237
)

// Kilograms returns a mass of n kilograms.
func Kilograms(n float64) Mass { return Mass(n) }

// Grams returns a mass of n grams.
func Grams(n float64) Mass { return Mass(n) * Gram }

// Tonnes returns a mass of n tonnes of 1000 kg.
func Tonnes(n float64) Mass { return Mass(n) * Tonne }

// Pounds returns a mass of n avoirdupois pounds.
func Pounds(n float64) Mass { return Mass(n) * Pound }

// Ounces returns a mass of n avoirdupois ounces.
func Ounces(n float64) Mass { return Mass(n) * Ounce }

// ShortTons returns a mass of n short tons of 2000 lb.
func ShortTons(n float64) Mass { return Mass(n) * ShortTon }

// Kilograms returns the mass in kilograms.
func (m Mass) Kilograms() float64 { return float64(m) }

// Grams returns the mass in grams.
func (m Mass) Grams() float64 { return float64(m / Gram) }

// Tonnes returns the mass in tonnes of 1000 kg.
func (m Mass) Tonnes() float64 { return float64(m / Tonne) }

// Pounds returns the mass in avoirdupois pounds.
func (m Mass) Pounds() float64 { return float64(m / Pound) }

// Ounces returns the mass in avoirdupois ounces.
func (m Mass) Ounces() float64 { return float64(m / Ounce) }

// ShortTons returns the mass in short tons of 2000 lb.
func (m Mass) ShortTons() float64 { return float64(m / ShortTon) }

// In returns the mass in any unit: m.In(ShortTon).
func (m Mass) In(unit Mass) float64 { return float64(m / unit) }

// Volume returns the volume that the mass fills at density d.
func (m Mass) Volume(d Density) Volume { return Volume(float64(m) / float64(d)) }

// Per returns the mass flow that moves the mass in time t.
func (m Mass) Per(t time.Duration) MassRate { return MassRate(float64(m) / t.Seconds()) }

var masses = table{parse: "units.ParseMass", units: []unit{
	{float64(Kilogram), "kg", []string{"kilogram", "kilograms"}},
	{float64(Gram), "g", []string{"gram", "grams"}},
	{float64(Milligram), "mg", nil},
	{float64(Tonne), "t", []string{"tonne", "tonnes"}},
	{float64(Pound), "lb", []string{"lbs", "pound", "pounds"}},
	{float64(Ounce), "oz", []string{"ounce", "ounces"}},
	{float64(ShortTon), "short ton", []string{"short tons"}},
}, refused: map[string]string{
	"ton":   `"short ton" (2000 lb) or "t" (1000 kg)`,
	"tons":  `"short ton" (2000 lb) or "t" (1000 kg)`,
	"fl oz": `a volume as "US fl oz"; a mass as "oz"`,
}}

// ParseMass reads a mass such as "60 lb" or "2.5 kg". The unit is mandatory.
func ParseMass(s string) (Mass, error) { return parse[Mass](s, &masses) }

// String prints the mass in kg with 12 significant digits.
func (m Mass) String() string { return str(m, &masses) }

// Text prints the mass in the given unit with the given number of decimals.
// A unit that has no symbol here prints in kg.
func (m Mass) Text(unit Mass, decimals int) string {
	return text(m, unit, decimals, &masses)
}

// TextIn prints it to so many significant digits in the units that a person reads in a system.
func (m Mass) TextIn(in System, digits int) string {
	return telling(in, massPairs, digits).one(float64(m))
}

// MarshalText prints the mass in kg without loss. NaN and infinity are errors.
func (m Mass) MarshalText() ([]byte, error) { return marshal(m, &masses) }

// UnmarshalText reads what [ParseMass] reads.
func (m *Mass) UnmarshalText(text []byte) error { return unmarshal(m, text, &masses) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (m Mass) MarshalJSON() ([]byte, error) { return marshalJSON(m, &masses) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (m *Mass) UnmarshalJSON(text []byte) error { return unmarshalJSON(m, text, &masses) }
