package units

// Area is an area, in square meters.
type Area float64

// Units of area. The acre is 43,560 square feet; the survey acre is that of US
// survey feet (NIST SP 811, App. B).
const (
	SquareMeter      Area = 1
	SquareCentimeter Area = 1e-4
	Hectare          Area = 1e4
	SquareInch       Area = inch * inch
	SquareFoot       Area = foot * foot
	Acre             Area = 43560 * foot * foot
	SurveyAcre       Area = 43560 * (1200.0 / 3937.0) * (1200.0 / 3937.0)
)

// SquareMeters returns an area of n square meters.
func SquareMeters(n float64) Area { return Area(n) }

// SquareInches returns an area of n square inches.
func SquareInches(n float64) Area { return Area(n) * SquareInch }

// SquareFeet returns an area of n square feet.
func SquareFeet(n float64) Area { return Area(n) * SquareFoot }

// Acres returns an area of n acres.
func Acres(n float64) Area { return Area(n) * Acre }

// Hectares returns an area of n hectares.
func Hectares(n float64) Area { return Area(n) * Hectare }

// SquareMeters returns the area in square meters.
func (a Area) SquareMeters() float64 { return float64(a) }

// SquareInches returns the area in square inches.
func (a Area) SquareInches() float64 { return float64(a / SquareInch) }

// SquareFeet returns the area in square feet.
func (a Area) SquareFeet() float64 { return float64(a / SquareFoot) }

// Acres returns the area in acres.
func (a Area) Acres() float64 { return float64(a / Acre) }

// Hectares returns the area in hectares.
func (a Area) Hectares() float64 { return float64(a / Hectare) }

// In returns the area in any unit: a.In(SurveyAcre).
func (a Area) In(unit Area) float64 { return float64(a / unit) }

// Volume returns the volume of liquid that stands to the given depth.
func (a Area) Volume(depth Length) Volume { return Volume(float64(a) * float64(depth)) }

var areas = table{parse: "units.ParseArea", units: []unit{
	{float64(SquareMeter), "m2", []string{"m^2", "sq m"}},
	{float64(SquareCentimeter), "cm2", []string{"cm^2", "sq cm"}},
	{float64(Hectare), "ha", []string{"hectare", "hectares"}},
	{float64(SquareInch), "in2", []string{"in^2", "sq in"}},
	{float64(SquareFoot), "ft2", []string{"ft^2", "sq ft"}},
	{float64(Acre), "ac", []string{"acre", "acres"}},
	{float64(SurveyAcre), "US survey ac", nil},
}}

// ParseArea reads an area such as "12 ft2" or "1.1 m2". The unit is mandatory.
func ParseArea(s string) (Area, error) { return parse[Area](s, &areas) }

// String prints the area in m2 with 12 significant digits.
func (a Area) String() string { return str(a, &areas) }

// Text prints the area in the given unit with the given number of decimals.
// A unit that has no symbol here prints in m2.
func (a Area) Text(unit Area, decimals int) string {
	return text(a, unit, decimals, &areas)
}

// TextIn prints it to so many significant digits in the units that a person reads in a system.
func (a Area) TextIn(in System, digits int) string {
	return telling(in, areaPairs, digits).one(float64(a))
}

// MarshalText prints the area in m2 without loss. NaN and infinity are errors.
func (a Area) MarshalText() ([]byte, error) { return marshal(a, &areas) }

// UnmarshalText reads what [ParseArea] reads.
func (a *Area) UnmarshalText(text []byte) error { return unmarshal(a, text, &areas) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (a Area) MarshalJSON() ([]byte, error) { return marshalJSON(a, &areas) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (a *Area) UnmarshalJSON(text []byte) error { return unmarshalJSON(a, text, &areas) }
