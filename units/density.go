package units

// Density is mass per volume, in kilograms per cubic meter.
type Density float64

// Units of density (NIST SP 811, App. B).
const (
	KilogramPerCubicMeter  Density = 1
	GramPerMilliliter      Density = 1000
	PoundPerUSGallon       Density = pound / usGallon
	PoundPerImperialGallon Density = pound / imperialGallon
)

// KilogramsPerCubicMeter returns a density of n kilograms per cubic meter.
func KilogramsPerCubicMeter(n float64) Density { return Density(n) }

// GramsPerMilliliter returns a density of n grams per milliliter.
func GramsPerMilliliter(n float64) Density { return Density(n) * GramPerMilliliter }

// PoundsPerUSGallon returns a density of n pounds per US gallon.
func PoundsPerUSGallon(n float64) Density { return Density(n) * PoundPerUSGallon }

// PoundsPerImperialGallon returns a density of n pounds per imperial gallon.
func PoundsPerImperialGallon(n float64) Density { return Density(n) * PoundPerImperialGallon }

// KilogramsPerCubicMeter returns the density in kilograms per cubic meter.
func (d Density) KilogramsPerCubicMeter() float64 { return float64(d) }

// GramsPerMilliliter returns the density in grams per milliliter.
func (d Density) GramsPerMilliliter() float64 { return float64(d / GramPerMilliliter) }

// PoundsPerUSGallon returns the density in pounds per US gallon.
func (d Density) PoundsPerUSGallon() float64 { return float64(d / PoundPerUSGallon) }

// PoundsPerImperialGallon returns the density in pounds per imperial gallon.
func (d Density) PoundsPerImperialGallon() float64 { return float64(d / PoundPerImperialGallon) }

// In returns the density in any unit: d.In(PoundPerImperialGallon).
func (d Density) In(unit Density) float64 { return float64(d / unit) }

// Mass returns the mass of a volume v at this density.
func (d Density) Mass(v Volume) Mass { return Mass(float64(d) * float64(v)) }

// MassRate returns the mass flow of a volume flow q at this density.
func (d Density) MassRate(q VolumeRate) MassRate { return MassRate(float64(d) * float64(q)) }

var densities = table{parse: "units.ParseDensity", units: []unit{
	{float64(KilogramPerCubicMeter), "kg/m3", []string{"kg/m^3"}},
	{float64(GramPerMilliliter), "g/mL", []string{"g/ml", "g/cm3", "kg/L"}},
	{float64(PoundPerUSGallon), "lb/US gal", nil},
	{float64(PoundPerImperialGallon), "lb/imp gal", nil},
}, refused: map[string]string{
	"lb/gal": `"lb/US gal" or "lb/imp gal"`,
}}

// ParseDensity reads a density such as "1328.2 kg/m3" or "11.08 lb/US gal". The unit is mandatory.
func ParseDensity(s string) (Density, error) { return parse[Density](s, &densities) }

// String prints the density in kg/m3 with 12 significant digits.
func (d Density) String() string { return str(d, &densities) }

// Text prints the density in the given unit with the given number of decimals.
// A unit that has no symbol here prints in kg/m3.
func (d Density) Text(unit Density, decimals int) string {
	return text(d, unit, decimals, &densities)
}

// TextIn prints it to so many significant digits in the units that a person reads in a system.
func (d Density) TextIn(in System, digits int) string {
	return telling(in, densityPairs, digits).one(float64(d))
}

// MarshalText prints the density in kg/m3 without loss. NaN and infinity are errors.
func (d Density) MarshalText() ([]byte, error) { return marshal(d, &densities) }

// UnmarshalText reads what [ParseDensity] reads.
func (d *Density) UnmarshalText(text []byte) error { return unmarshal(d, text, &densities) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (d Density) MarshalJSON() ([]byte, error) { return marshalJSON(d, &densities) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (d *Density) UnmarshalJSON(text []byte) error { return unmarshalJSON(d, text, &densities) }
