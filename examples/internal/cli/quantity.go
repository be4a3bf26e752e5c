package cli

import (
	"encoding/json"
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"example.org/sapreckoner/units"
)

// A Value is a quantity in the units of a page: US customary and metric. A
// quantity that is NaN is one that nobody knows: a dash on the page, null in
// JSON.
type Value struct {
	us, metric view
}

// A view is a value in one unit: as a page prints it, and as JSON does, with
// the unit in the key.
type view struct {
	text   string
	suffix string // of the JSON key, as in a CSV header; empty for words
	json   any
}

// unit is a unit of a page.
type unit[Q ~float64] struct {
	size           Q
	symbol, suffix string
}

// digits is how many digits a page shows of a measured quantity: one more than
// an instrument of the trade gives.
const digits = 4

// significant prints x to n digits and never in powers of ten. A whole number
// prints as one: 60 and not 60.00.
func significant(x float64, n int) string {
	decimals := 0
	if a := math.Abs(x); a > 0 && !math.IsInf(x, 0) {
		decimals = n - 1 - magnitude(a)
	}
	if decimals < 0 {
		tens := math.Pow10(-decimals)
		x = math.Round(x/tens) * tens
	}
	s := decimal(x, min(decimals, 6))
	if whole, zeros, ok := strings.Cut(s, "."); ok && strings.Trim(zeros, "0") == "" {
		return whole
	}
	return s
}

func decimal(x float64, decimals int) string {
	s := strconv.FormatFloat(x, 'f', max(decimals, 0), 64)
	if math.Signbit(x) && s[1:] == strconv.FormatFloat(0, 'f', max(decimals, 0), 64) {
		return s[1:]
	}
	return s
}

// number is x as JSON gives it: null if nobody knows it.
func number(x float64) any {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return nil
	}
	return x
}

// known is the text of x, or a dash for NaN: a quantity that nobody knows.
func known(x float64, text string) string {
	if math.IsNaN(x) {
		return "-"
	}
	return text
}

func both[Q ~float64](q Q, us, metric unit[Q]) Value {
	in := func(u unit[Q]) view {
		x := float64(q / u.size)
		return view{known(x, significant(x, digits)+" "+u.symbol), u.suffix, number(x)}
	}
	return Value{in(us), in(metric)}
}

func same(v view) Value { return Value{v, v} }

// Volume shows a volume in US gallons and liters.
func Volume(v units.Volume) Value {
	return both(v, unit[units.Volume]{units.USGallon, "US gal", "us_gal"}, unit[units.Volume]{units.Liter, "L", "l"})
}

// SmallVolume shows a volume in US fluid ounces and milliliters.
func SmallVolume(v units.Volume) Value {
	return both(v, unit[units.Volume]{units.USFluidOunce, "US fl oz", "us_fl_oz"}, unit[units.Volume]{units.Milliliter, "mL", "ml"})
}

// Wood shows a volume of stacked wood in cords and cubic meters.
func Wood(v units.Volume) Value {
	return both(v, unit[units.Volume]{units.Cord, "cord", "cord"}, unit[units.Volume]{units.CubicMeter, "m3", "m3"})
}

// TinyVolume shows a volume in cubic inches and milliliters: the wood of a hole.
func TinyVolume(v units.Volume) Value {
	const cubicInch = units.USGallon / 231
	return both(v, unit[units.Volume]{cubicInch, "in3", "in3"}, unit[units.Volume]{units.Milliliter, "mL", "ml"})
}

// Mass shows a mass in pounds and kilograms.
func Mass(m units.Mass) Value {
	return both(m, unit[units.Mass]{units.Pound, "lb", "lb"}, unit[units.Mass]{units.Kilogram, "kg", "kg"})
}

// Length shows a length in inches and centimeters.
func Length(l units.Length) Value {
	return both(l, unit[units.Length]{units.Inch, "in", "in"}, unit[units.Length]{units.Centimeter, "cm", "cm"})
}

// Area shows an area in square feet and square meters.
func Area(a units.Area) Value {
	return both(a, unit[units.Area]{units.SquareFoot, "ft2", "ft2"}, unit[units.Area]{units.SquareMeter, "m2", "m2"})
}

// Pressure shows a pressure in inches of mercury and kilopascals.
func Pressure(p units.Pressure) Value {
	return both(p, unit[units.Pressure]{units.InchMercury, "inHg", "inhg"}, unit[units.Pressure]{units.Kilopascal, "kPa", "kpa"})
}

// Energy shows heat in Btu and megajoules.
func Energy(e units.Energy) Value {
	return both(e, unit[units.Energy]{units.BtuIT, "Btu", "btu"}, unit[units.Energy]{units.Megajoule, "MJ", "mj"})
}

// Flow shows a volume flow by the hour.
func Flow(q units.VolumeRate) Value {
	return both(q, unit[units.VolumeRate]{units.USGallonPerHour, "US gal/h", "us_gal_per_h"}, unit[units.VolumeRate]{units.LiterPerHour, "L/h", "l_per_h"})
}

// Temperature shows a temperature in F and C to a tenth.
func Temperature(t units.Temperature) Value {
	return Value{
		view{known(t.Celsius(), t.Text(units.ScaleFahrenheit, 1)), "f", number(t.Fahrenheit())},
		view{known(t.Celsius(), t.Text(units.ScaleCelsius, 1)), "c", number(t.Celsius())},
	}
}

// TempDiff shows a difference of temperatures to a hundredth.
func TempDiff(d units.TempDiff) Value {
	return Value{
		view{d.Text(units.FahrenheitDegree, 2), "f_deg", number(d.FahrenheitDegrees())},
		view{d.Text(units.CelsiusDegree, 2), "c_deg", number(d.CelsiusDegrees())},
	}
}

// DegreeDays shows warmth summed over days to a tenth.
func DegreeDays(sum units.TempDiff) Value {
	return Value{
		view{known(float64(sum), decimal(sum.FahrenheitDegrees(), 1)+" F degree-days"), "f_degree_days", number(sum.FahrenheitDegrees())},
		view{known(float64(sum), decimal(sum.CelsiusDegrees(), 1)+" C degree-days"), "c_degree_days", number(sum.CelsiusDegrees())},
	}
}

// Brix shows a sugar content.
func Brix(b units.Brix, decimals int) Value {
	return same(view{known(float64(b), b.Text(decimals)), "brix", number(float64(b))})
}

// Share shows a share in percent.
func Share(s units.Share, decimals int) Value {
	return same(view{known(float64(s), s.Text(decimals)), "pct", number(float64(s))})
}

// Number shows a pure number, with its unit in words if it has one.
func Number(x float64, decimals int, unit string) Value {
	text := decimal(x, decimals)
	if unit != "" {
		text += " " + unit
	}
	return same(view{known(x, text), "", number(x)})
}

// Shown shows a number as what it is drawn to, so that a column adds up; JSON keeps
// the number itself.
func Shown(x, drawn float64, decimals int) Value {
	return same(view{known(x, decimal(drawn, decimals)), "", number(x)})
}

// Count shows a whole number.
func Count(n int, unit string) Value { return Number(float64(n), 0, unit) }

// Amount shows an amount of money as it is written, with its cents: JSON has the same
// digits.
func Amount(text string) Value { return same(view{text, "", json.Number(text)}) }

// Plural words a count of things: 1 row, 2 rows.
func Plural(n int, what string) string {
	if n != 1 {
		what += "s"
	}
	return fmt.Sprintf("%d %s", n, what)
}

// Words shows words.
func Words(s string) Value { return same(view{s, "", s}) }

// Hours shows a stretch of time in hours and minutes.
func Hours(d time.Duration) Value {
	min := int(math.Round(d.Minutes()))
	text := fmt.Sprintf("%d h %02d min", min/60, min%60)
	if min < 60 {
		text = fmt.Sprintf("%d min", min)
	}
	return same(view{text, "h", number(d.Hours())})
}

// Date shows a day of the calendar, in JSON with its year.
func Date(t time.Time) Value {
	return same(view{t.Format("Mon Jan 2"), "", t.Format(time.DateOnly)})
}

// Clock shows a time of the day that begins with start; another day says which.
func Clock(start, t time.Time) Value {
	text := t.Round(time.Minute).Format("15:04")
	day := func(t time.Time) time.Time { return time.Date(t.Year(), t.Month(), t.Day(), 0, 0, 0, 0, time.UTC) }
	switch n := int(day(t.Round(time.Minute)).Sub(day(start)).Hours() / 24); {
	case n == 0:
	case n == 1:
		text += " the next day"
	case n == -1:
		text += " the day before"
	case n < 0:
		text += fmt.Sprintf(" %d days before", -n)
	default:
		text += fmt.Sprintf(" %d days on", n)
	}
	return same(view{text, "", text})
}

// span joins two views of one kind: 3.0 to 4.0 lb. Quantities that print alike
// are printed once; counts are not, as 1 to 1 says that all agree. Hours keep their
// minutes: 3 h 00 min to 5 h 00 min.
func span(low, high view) view {
	text := low.text + " to " + high.text
	number, unit := low.parted()
	_, other := high.parted()
	switch {
	case low.text == high.text && low.suffix != "":
		text = low.text
	case unit == other && low.suffix != "" && !strings.HasPrefix(unit, "h "):
		text = number + " to " + high.text
	}
	return view{text, low.suffix, [2]any{low.json, high.json}}
}

// parted parts the text into its number, which may have a fraction as 6 1/2 has, and
// its unit.
func (v view) parted() (number, unit string) {
	number, unit, _ = strings.Cut(v.text, " ")
	if part, rest, ok := strings.Cut(unit, " "); ok && strings.Contains(part, "/") && part[0] >= '0' && part[0] <= '9' {
		return number + " " + part, rest
	}
	return number, unit
}

// Rough shows a quantity to two digits, since no more is known of it.
func Rough(v Value) Value { return Digits(v, 2) }

// Digits shows a quantity to n digits.
func Digits(v Value, n int) Value {
	return Value{v.us.digits(n), v.metric.digits(n)}
}

// Known shows a quantity no closer than it is known, and so to the second digit
// of its limits.
func Known(v, limits Value) Value {
	as := func(v, limits view) view {
		x, known := v.json.(float64)
		off, limited := limits.json.(float64)
		if !known || !limited || off == 0 {
			return v
		}
		return v.digits(2 + magnitude(x) - magnitude(off))
	}
	return Value{as(v.us, limits.us), as(v.metric, limits.metric)}
}

// magnitude is the power of ten of the first digit.
func magnitude(x float64) int { return int(math.Floor(math.Log10(math.Abs(x)))) }

// digits returns the view with its number to n digits, 0 where that is none.
func (v view) digits(n int) view {
	if x, ok := v.json.(float64); ok {
		_, unit, _ := strings.Cut(v.text, " ")
		number := "0"
		if x != 0 && n > 0 {
			number = significant(x, n)
		}
		v.text = number + " " + unit
	}
	return v
}

// Between shows a range.
func Between(low, high Value) Value {
	return Value{span(low.us, high.us), span(low.metric, high.metric)}
}
