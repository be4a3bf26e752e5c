package units

// Length is a length, in meters.
type Length float64

// Units of length. The inch is 2.54 cm exactly (international yard and pound
// agreement, 1959; NIST SP 811, App. B).
const (
	Meter      Length = 1
	Centimeter Length = 1e-2
	Millimeter Length = 1e-3
	Kilometer  Length = 1000
	Inch       Length = inch
	Foot       Length = foot
	Yard       Length = 3 * foot
	Mile       Length = 5280 * foot
	// SurveyFoot is the US survey foot, 1200/3937 m, deprecated at the end of
	// 2022; old surveys use it.
	SurveyFoot Length = 1200.0 / 3937.0

	inch = 0.0254
	foot = 12 * inch
)

// Meters returns a length of n meters.
func Meters(n float64) Length { return Length(n) }

// Centimeters returns a length of n centimeters.
func Centimeters(n float64) Length { return Length(n) * Centimeter }

// Millimeters returns a length of n millimeters.
func Millimeters(n float64) Length { return Length(n) * Millimeter }

// Inches returns a length of n inches.
func Inches(n float64) Length { return Length(n) * Inch }

// Feet returns a length of n feet.
func Feet(n float64) Length { return Length(n) * Foot }

// Meters returns the length in meters.
func (l Length) Meters() float64 { return float64(l) }

// Centimeters returns the length in centimeters.
func (l Length) Centimeters() float64 { return float64(l / Centimeter) }

// Millimeters returns the length in millimeters.
func (l Length) Millimeters() float64 { return float64(l / Millimeter) }

// Inches returns the length in inches.
func (l Length) Inches() float64 { return float64(l / Inch) }

// Feet returns the length in feet.
func (l Length) Feet() float64 { return float64(l / Foot) }

// In returns the length in any unit: l.In(SurveyFoot).
func (l Length) In(unit Length) float64 { return float64(l / unit) }

// Times returns the area of a rectangle of the two sides.
func (l Length) Times(side Length) Area { return Area(float64(l) * float64(side)) }

var lengths = table{parse: "units.ParseLength", units: []unit{
	{float64(Meter), "m", []string{"meter", "meters", "metre", "metres"}},
	{float64(Centimeter), "cm", nil},
	{float64(Millimeter), "mm", nil},
	{float64(Kilometer), "km", nil},
	{float64(Inch), "in", []string{"inch", "inches", "\""}},
	{float64(Foot), "ft", []string{"foot", "feet", "'"}},
	{float64(Yard), "yd", []string{"yard", "yards"}},
	{float64(Mile), "mi", []string{"mile", "miles"}},
	{float64(SurveyFoot), "US survey ft", nil},
}}

// ParseLength reads a length such as "7/16 in", "4.5 ft" or "110 cm". The unit is mandatory.
func ParseLength(s string) (Length, error) { return parse[Length](s, &lengths) }

// String prints the length in m with 12 significant digits.
func (l Length) String() string { return str(l, &lengths) }

// Text prints the length in the given unit with the given number of decimals.
// A unit that has no symbol here prints in m.
func (l Length) Text(unit Length, decimals int) string {
	return text(l, unit, decimals, &lengths)
}

// TextIn prints it to so many significant digits in the units that a person reads in a system.
func (l Length) TextIn(in System, digits int) string {
	return telling(in, lengthPairs, digits).one(float64(l))
}

// MarshalText prints the length in m without loss. NaN and infinity are errors.
func (l Length) MarshalText() ([]byte, error) { return marshal(l, &lengths) }

// UnmarshalText reads what [ParseLength] reads.
func (l *Length) UnmarshalText(text []byte) error { return unmarshal(l, text, &lengths) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (l Length) MarshalJSON() ([]byte, error) { return marshalJSON(l, &lengths) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (l *Length) UnmarshalJSON(text []byte) error { return unmarshalJSON(l, text, &lengths) }
