package units

import (
	"cmp"
	"math"
	"strconv"
)

// Temperature is a point on the temperature scale. It holds degrees Celsius,
// the unit of the published tables, so that a tabulated temperature is kept
// exactly. The zero value is 0 C.
//
// Use [Temperature.Add] and [Temperature.Sub] for arithmetic, and
// [Temperature.Compare] or [Temperature.Equal] to compare. The zero value is a
// real temperature: never mark a JSON field of this type omitzero.
type Temperature struct{ c float64 }

// Fahrenheit scale, by definition: t/C = (t/F - 32)/1.8. Source: NIST SP 811
// (2008), App. B.
const (
	fahrenheitZero = 32.0
	fahrenheitStep = 1.8
	kelvinZero     = 273.15
)

// Celsius returns the temperature of c degrees Celsius.
func Celsius(c float64) Temperature { return Temperature{c} }

// Fahrenheit returns the temperature of f degrees Fahrenheit.
func Fahrenheit(f float64) Temperature {
	return Temperature{(f - fahrenheitZero) / fahrenheitStep}
}

// Kelvin returns the temperature of k kelvin.
func Kelvin(k float64) Temperature { return Temperature{k - kelvinZero} }

// Celsius returns degrees Celsius.
func (t Temperature) Celsius() float64 { return t.c }

// Fahrenheit returns degrees Fahrenheit.
func (t Temperature) Fahrenheit() float64 {
	// The conversion forbids a fused multiply-add: same bits on every processor.
	return float64(t.c*fahrenheitStep) + fahrenheitZero
}

// Kelvin returns kelvin.
func (t Temperature) Kelvin() float64 { return t.c + kelvinZero }

// Add returns t raised by d.
func (t Temperature) Add(d TempDiff) Temperature { return Temperature{t.c + float64(d)} }

// Sub returns the difference t - u.
func (t Temperature) Sub(u Temperature) TempDiff { return TempDiff(t.c - u.c) }

// Compare returns -1 if t is colder than u, 0 if they are the same, +1 if t is
// warmer. NaN sorts first, as in [cmp.Compare].
func (t Temperature) Compare(u Temperature) int { return cmp.Compare(t.c, u.c) }

// Equal reports whether t and u are the same temperature.
func (t Temperature) Equal(u Temperature) bool { return t.c == u.c }

// Scale names a temperature scale for [Temperature.Text].
type Scale uint8

// The scales that text may use.
const (
	ScaleCelsius Scale = iota
	ScaleFahrenheit
	ScaleKelvin
)

var scales = [...]string{ScaleCelsius: "Celsius", ScaleFahrenheit: "Fahrenheit", ScaleKelvin: "kelvin"}

// String returns the name of the scale.
func (s Scale) String() string {
	if int(s) < len(scales) {
		return scales[s]
	}
	return "Scale(" + strconv.Itoa(int(s)) + ")"
}

// MarshalText returns the name of the scale.
func (s Scale) MarshalText() ([]byte, error) {
	return nameOf("units.Scale.MarshalText", scales[:], int(s), s.String())
}

// UnmarshalText reads the name of a scale.
func (s *Scale) UnmarshalText(text []byte) error {
	i, err := named("units.Scale.UnmarshalText", scales[:], string(text))
	if err == nil {
		*s = Scale(i)
	}
	return err
}

// The size column serves to tell the three rows apart; conversion is by scale.
var temperatures = table{parse: "units.ParseTemperature", units: []unit{
	{float64(ScaleCelsius), "C", []string{"deg C", "Celsius"}},
	{float64(ScaleFahrenheit), "F", []string{"deg F", "Fahrenheit"}},
	{float64(ScaleKelvin), "K", []string{"kelvin"}},
}, refused: map[string]string{
	"c deg": `a temperature as "20 C"; "20 C deg" is a difference`,
	"f deg": `a temperature as "68 F"; "68 F deg" is a difference`,
	"deg":   `the scale too: "68 F" or "20 C"`,
}}

// ParseTemperature reads a temperature such as "68 F", "20 °C" or "293.15 K".
// The scale is mandatory.
func ParseTemperature(s string) (Temperature, error) {
	x, u, err := temperatures.read(s)
	if err != nil {
		return Temperature{math.NaN()}, err
	}
	switch Scale(u.size) {
	case ScaleFahrenheit:
		return Fahrenheit(x), nil
	case ScaleKelvin:
		return Kelvin(x), nil
	default:
		return Celsius(x), nil
	}
}

// String prints the temperature in degrees Celsius with 12 significant digits.
func (t Temperature) String() string { return bare(t.c, 12) + " C" }

// Text prints the temperature on the given scale: Text(ScaleFahrenheit, 1)
// gives "219.2 F".
func (t Temperature) Text(on Scale, decimals int) string {
	switch on {
	case ScaleFahrenheit:
		return fixed(t.Fahrenheit(), decimals) + " F"
	case ScaleKelvin:
		return fixed(t.Kelvin(), decimals) + " K"
	default:
		return fixed(t.c, decimals) + " C"
	}
}

// TextIn prints the temperature in F, C or both with the given number of
// decimals: TextIn(Both, 0) gives "140 F (60 C)".
func (t Temperature) TextIn(in System, decimals int) string {
	f, c := t.Text(ScaleFahrenheit, decimals), t.Text(ScaleCelsius, decimals)
	switch in {
	case US:
		return f
	case Metric:
		return c
	}
	return f + " (" + c + ")"
}

// MarshalText prints the temperature without loss. NaN and infinity are errors.
func (t Temperature) MarshalText() ([]byte, error) {
	return marshalNumber(t.c, "C", temperatures.parse)
}

// UnmarshalText reads what [ParseTemperature] reads.
func (t *Temperature) UnmarshalText(b []byte) error {
	v, err := ParseTemperature(string(b))
	if err == nil {
		*t = v
	}
	return err
}

// TempDiff is a difference of two temperatures, in kelvin: a boiling point
// rise, a warming, a tolerance.
type TempDiff float64

// Units of difference. A Fahrenheit degree is 5/9 of a Celsius degree.
const (
	CelsiusDegree    TempDiff = 1
	FahrenheitDegree TempDiff = 1 / fahrenheitStep
)

// CelsiusDegrees returns a difference of n Celsius degrees.
func CelsiusDegrees(n float64) TempDiff { return TempDiff(n) }

// FahrenheitDegrees returns a difference of n Fahrenheit degrees.
func FahrenheitDegrees(n float64) TempDiff { return TempDiff(n / fahrenheitStep) }

// CelsiusDegrees returns the difference in Celsius degrees.
func (d TempDiff) CelsiusDegrees() float64 { return float64(d) }

// FahrenheitDegrees returns the difference in Fahrenheit degrees.
func (d TempDiff) FahrenheitDegrees() float64 { return float64(d) * fahrenheitStep }

// Abs returns the size of the difference.
func (d TempDiff) Abs() TempDiff { return TempDiff(math.Abs(float64(d))) }

var tempDiffs = table{parse: "units.ParseTempDiff", units: []unit{
	{float64(CelsiusDegree), "C deg", []string{"K deg"}},
	{float64(FahrenheitDegree), "F deg", nil},
}, refused: map[string]string{
	"c": `a difference as "4 C deg"`,
	"f": `a difference as "7.1 F deg"`,
	"k": `a difference as "4 C deg"`,
}}

// ParseTempDiff reads a difference such as "7.1 F deg" or "4 C deg". A plain
// "7.1 F" is refused: that is a point on the scale.
func ParseTempDiff(s string) (TempDiff, error) { return parse[TempDiff](s, &tempDiffs) }

// String prints the difference in Celsius degrees with 12 significant digits.
func (d TempDiff) String() string { return str(d, &tempDiffs) }

// Text prints the difference in the given unit: Text(FahrenheitDegree, 1)
// gives "7.1 F deg".
func (d TempDiff) Text(unit TempDiff, decimals int) string {
	return text(d, unit, decimals, &tempDiffs)
}

// TextIn prints it to so many significant digits in the units that a person reads in a system.
func (d TempDiff) TextIn(in System, digits int) string {
	return telling(in, tempDiffPairs, digits).one(float64(d))
}

// MarshalText prints the difference without loss.
func (d TempDiff) MarshalText() ([]byte, error) { return marshal(d, &tempDiffs) }

// UnmarshalText reads what [ParseTempDiff] reads.
func (d *TempDiff) UnmarshalText(b []byte) error { return unmarshal(d, b, &tempDiffs) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (d TempDiff) MarshalJSON() ([]byte, error) { return marshalJSON(d, &tempDiffs) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (d *TempDiff) UnmarshalJSON(text []byte) error { return unmarshalJSON(d, text, &tempDiffs) }
