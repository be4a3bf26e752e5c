package units

// Pressure is a pressure, in pascals. Boiling points follow the pressure at the
// pan, the station pressure, and not the sea-level figure of a weather report.
type Pressure float64

// Units of pressure. The conventional inch of mercury takes mercury at
// 13.5951 g/cm3 and standard gravity; the 32 F and 60 F inches are measured
// values (NIST SP 811, App. B).
const (
	Pascal            Pressure = 1
	Hectopascal       Pressure = 100
	Kilopascal        Pressure = 1000
	Megapascal        Pressure = 1e6
	Bar               Pressure = 1e5
	Atmosphere        Pressure = 101325
	PSI               Pressure = pound * StandardGravity / (inch * inch)
	InchMercury       Pressure = 13595.1 * StandardGravity * inch
	InchMercury32F    Pressure = 3386.38
	InchMercury60F    Pressure = 3376.85
	MillimeterMercury Pressure = 13595.1 * StandardGravity * 1e-3
	InchWater         Pressure = 1000 * StandardGravity * inch
	FootWater         Pressure = 1000 * StandardGravity * foot
)

// StandardGravity is the standard acceleration of gravity in m/s2 (third
// General Conference on Weights and Measures, 1901; NIST SP 811, App. B).
const StandardGravity = 9.80665

// Pascals returns a pressure of n pascals.
func Pascals(n float64) Pressure { return Pressure(n) }

// Hectopascals returns a pressure of n hectopascals.
func Hectopascals(n float64) Pressure { return Pressure(n) * Hectopascal }

// Kilopascals returns a pressure of n kilopascals.
func Kilopascals(n float64) Pressure { return Pressure(n) * Kilopascal }

// Bars returns a pressure of n bars.
func Bars(n float64) Pressure { return Pressure(n) * Bar }

// InchesMercury returns a pressure of n conventional inches of mercury.
func InchesMercury(n float64) Pressure { return Pressure(n) * InchMercury }

// PoundsPerSquareInch returns a pressure of n pounds-force per square inch.
func PoundsPerSquareInch(n float64) Pressure { return Pressure(n) * PSI }

// Pascals returns the pressure in pascals.
func (p Pressure) Pascals() float64 { return float64(p) }

// Hectopascals returns the pressure in hectopascals.
func (p Pressure) Hectopascals() float64 { return float64(p / Hectopascal) }

// Kilopascals returns the pressure in kilopascals.
func (p Pressure) Kilopascals() float64 { return float64(p / Kilopascal) }

// Bars returns the pressure in bars.
func (p Pressure) Bars() float64 { return float64(p / Bar) }

// InchesMercury returns the pressure in conventional inches of mercury.
func (p Pressure) InchesMercury() float64 { return float64(p / InchMercury) }

// PoundsPerSquareInch returns the pressure in pounds-force per square inch.
func (p Pressure) PoundsPerSquareInch() float64 { return float64(p / PSI) }

// In returns the pressure in any unit: p.In(InchMercury60F).
func (p Pressure) In(unit Pressure) float64 { return float64(p / unit) }

var pressures = table{parse: "units.ParsePressure", display: 2, units: []unit{
	{float64(Pascal), "Pa", nil},
	{float64(Hectopascal), "hPa", []string{"mbar"}},
	{float64(Kilopascal), "kPa", nil},
	{float64(Megapascal), "MPa", nil},
	{float64(Bar), "bar", nil},
	{float64(Atmosphere), "atm", nil},
	{float64(PSI), "psi", nil},
	{float64(InchMercury), "inHg", []string{"in Hg"}},
	{float64(MillimeterMercury), "mmHg", []string{"mm Hg"}},
	{float64(InchWater), "inH2O", nil},
	{float64(FootWater), "ftH2O", nil},
	{float64(InchMercury32F), "inHg(32F)", nil},
	{float64(InchMercury60F), "inHg(60F)", nil},
}}

// ParsePressure reads a pressure such as "29.4 inHg", "995 hPa" or "14.2 psi". The unit is mandatory.
func ParsePressure(s string) (Pressure, error) { return parse[Pressure](s, &pressures) }

// String prints the pressure in kPa with 12 significant digits.
func (p Pressure) String() string { return str(p, &pressures) }

// Text prints the pressure in the given unit with the given number of decimals.
// A unit that has no symbol here prints in Pa.
func (p Pressure) Text(unit Pressure, decimals int) string {
	return text(p, unit, decimals, &pressures)
}

// TextIn prints it to so many significant digits in the units that a person reads in a system.
func (p Pressure) TextIn(in System, digits int) string {
	return telling(in, pressurePairs, digits).one(float64(p))
}

// MarshalText prints the pressure in Pa without loss. NaN and infinity are errors.
func (p Pressure) MarshalText() ([]byte, error) { return marshal(p, &pressures) }

// UnmarshalText reads what [ParsePressure] reads.
func (p *Pressure) UnmarshalText(text []byte) error { return unmarshal(p, text, &pressures) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (p Pressure) MarshalJSON() ([]byte, error) { return marshalJSON(p, &pressures) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (p *Pressure) UnmarshalJSON(text []byte) error { return unmarshalJSON(p, text, &pressures) }
