package units

// SpecificHeat is heat per mass and degree, in joules per kilogram and kelvin.
type SpecificHeat float64

// Units of specific heat. 1 Btu(IT)/(lb F) is 4186.8 J/(kg K) exactly (NIST SP
// 811, App. B).
const (
	JoulePerKilogramKelvin     SpecificHeat = 1
	KilojoulePerKilogramKelvin SpecificHeat = 1000
	BtuITPerPoundFahrenheit    SpecificHeat = 4186.8
)

// JoulesPerKilogramKelvin returns a specific heat of n joules per kilogram and kelvin.
func JoulesPerKilogramKelvin(n float64) SpecificHeat { return SpecificHeat(n) }

// KilojoulesPerKilogramKelvin returns a specific heat of n kilojoules per kilogram and kelvin.
func KilojoulesPerKilogramKelvin(n float64) SpecificHeat {
	return SpecificHeat(n) * KilojoulePerKilogramKelvin
}

// BtusITPerPoundFahrenheit returns a specific heat of n International Table Btu per pound and Fahrenheit degree.
func BtusITPerPoundFahrenheit(n float64) SpecificHeat {
	return SpecificHeat(n) * BtuITPerPoundFahrenheit
}

// JoulesPerKilogramKelvin returns the specific heat in joules per kilogram and kelvin.
func (c SpecificHeat) JoulesPerKilogramKelvin() float64 { return float64(c) }

// KilojoulesPerKilogramKelvin returns the specific heat in kilojoules per kilogram and kelvin.
func (c SpecificHeat) KilojoulesPerKilogramKelvin() float64 {
	return float64(c / KilojoulePerKilogramKelvin)
}

// BtusITPerPoundFahrenheit returns the specific heat in International Table Btu per pound and Fahrenheit degree.
func (c SpecificHeat) BtusITPerPoundFahrenheit() float64 { return float64(c / BtuITPerPoundFahrenheit) }

// In returns the specific heat in any unit: c.In(BtuITPerPoundFahrenheit).
func (c SpecificHeat) In(unit SpecificHeat) float64 { return float64(c / unit) }

// Energy returns the heat that warms a mass m by d.
func (c SpecificHeat) Energy(m Mass, d TempDiff) Energy {
	return Energy(float64(c) * float64(m) * float64(d))
}

var specificHeats = table{parse: "units.ParseSpecificHeat", display: 1, units: []unit{
	{float64(JoulePerKilogramKelvin), "J/(kg K)", nil},
	{float64(KilojoulePerKilogramKelvin), "kJ/(kg K)", nil},
	{float64(BtuITPerPoundFahrenheit), "Btu/(lb F)", nil},
}}

// ParseSpecificHeat reads a specific heat such as "4.145 kJ/(kg K)". The unit is mandatory.
func ParseSpecificHeat(s string) (SpecificHeat, error) { return parse[SpecificHeat](s, &specificHeats) }

// String prints the specific heat in kJ/(kg K) with 12 significant digits.
func (c SpecificHeat) String() string { return str(c, &specificHeats) }

// Text prints the specific heat in the given unit with the given number of decimals.
// A unit that has no symbol here prints in J/(kg K).
func (c SpecificHeat) Text(unit SpecificHeat, decimals int) string {
	return text(c, unit, decimals, &specificHeats)
}

// MarshalText prints the specific heat in J/(kg K) without loss. NaN and infinity are errors.
func (c SpecificHeat) MarshalText() ([]byte, error) { return marshal(c, &specificHeats) }

// UnmarshalText reads what [ParseSpecificHeat] reads.
func (c *SpecificHeat) UnmarshalText(text []byte) error { return unmarshal(c, text, &specificHeats) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (c SpecificHeat) MarshalJSON() ([]byte, error) { return marshalJSON(c, &specificHeats) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (c *SpecificHeat) UnmarshalJSON(text []byte) error {
	return unmarshalJSON(c, text, &specificHeats)
}
