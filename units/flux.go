package units

// Flux is a volume flow per area, in meters per second: what a square foot of
// pan boils off in an hour, or a falling level.
type Flux float64

// Units of flux. One inch of depth over a square foot is 0.623 US gallon.
const (
	MeterPerSecond                  Flux = 1
	LiterPerSquareMeterHour         Flux = 1e-3 / 3600
	USGallonPerSquareFootHour       Flux = usGallon / (foot * foot) / 3600
	InchPerHour                     Flux = inch / 3600
	ImperialGallonPerSquareFootHour Flux = imperialGallon / (foot * foot) / 3600
)

// MetersPerSecond returns a flux of n meters per second.
func MetersPerSecond(n float64) Flux { return Flux(n) }

// LitersPerSquareMeterHour returns a flux of n liters per square meter and hour.
func LitersPerSquareMeterHour(n float64) Flux { return Flux(n) * LiterPerSquareMeterHour }

// USGallonsPerSquareFootHour returns a flux of n US gallons per square foot and hour.
func USGallonsPerSquareFootHour(n float64) Flux { return Flux(n) * USGallonPerSquareFootHour }

// InchesPerHour returns a flux of n inches of depth per hour.
func InchesPerHour(n float64) Flux { return Flux(n) * InchPerHour }

// MetersPerSecond returns the flux in meters per second.
func (f Flux) MetersPerSecond() float64 { return float64(f) }

// LitersPerSquareMeterHour returns the flux in liters per square meter and hour.
func (f Flux) LitersPerSquareMeterHour() float64 { return float64(f / LiterPerSquareMeterHour) }

// USGallonsPerSquareFootHour returns the flux in US gallons per square foot and hour.
func (f Flux) USGallonsPerSquareFootHour() float64 { return float64(f / USGallonPerSquareFootHour) }

// InchesPerHour returns the flux in inches of depth per hour.
func (f Flux) InchesPerHour() float64 { return float64(f / InchPerHour) }

// In returns the flux in any unit: f.In(ImperialGallonPerSquareFootHour).
func (f Flux) In(unit Flux) float64 { return float64(f / unit) }

// Through returns the volume flow through area a.
func (f Flux) Through(a Area) VolumeRate { return VolumeRate(float64(f) * float64(a)) }

var fluxes = table{parse: "units.ParseFlux", display: 1, units: []unit{
	{float64(MeterPerSecond), "m/s", nil},
	{float64(LiterPerSquareMeterHour), "L/m2/h", nil},
	{float64(USGallonPerSquareFootHour), "US gal/ft2/h", nil},
	{float64(InchPerHour), "in/h", nil},
	{float64(ImperialGallonPerSquareFootHour), "imp gal/ft2/h", nil},
}, refused: map[string]string{
	"gal/ft2/h": `"US gal/ft2/h"`,
}}

// ParseFlux reads a flux such as "1.5 US gal/ft2/h" or "2 in/h". The unit is mandatory.
func ParseFlux(s string) (Flux, error) { return parse[Flux](s, &fluxes) }

// String prints the flux in L/m2/h with 12 significant digits.
func (f Flux) String() string { return str(f, &fluxes) }

// Text prints the flux in the given unit with the given number of decimals.
// A unit that has no symbol here prints in m/s.
func (f Flux) Text(unit Flux, decimals int) string {
	return text(f, unit, decimals, &fluxes)
}

// TextIn prints it to so many significant digits in the units that a person reads in a system.
func (f Flux) TextIn(in System, digits int) string {
	return telling(in, fluxPairs, digits).one(float64(f))
}

// MarshalText prints the flux in m/s without loss. NaN and infinity are errors.
func (f Flux) MarshalText() ([]byte, error) { return marshal(f, &fluxes) }

// UnmarshalText reads what [ParseFlux] reads.
func (f *Flux) UnmarshalText(text []byte) error { return unmarshal(f, text, &fluxes) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (f Flux) MarshalJSON() ([]byte, error) { return marshalJSON(f, &fluxes) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (f *Flux) UnmarshalJSON(text []byte) error { return unmarshalJSON(f, text, &fluxes) }
