package cli

import (
	"encoding/json"
	"fmt"
	"math"
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

// both shows a quantity in two units: the size, the symbol and the suffix of each.
func both[Q ~float64](q, us Q, usSymbol, usSuffix string, metric Q, symbol, suffix string) Value {
	in := func(size Q, symbol, suffix string) view {
		x := float64(q / size)
		return view{known(x, significant(x, digits)+" "+symbol), suffix, number(x)}
	}
	return Value{in(us, usSymbol, usSuffix), in(metric, symbol, suffix)}
}

func same(v view) Value { return Value{v, v} }

// Volume shows a volume in US gallons and liters.
func Volume(v units.Volume) Value {
	return both(v, units.USGallon, "US gal", "us_gal", units.Liter, "L", "l")
}

// SmallVolume shows a volume in US fluid ounces and milliliters.
func SmallVolume(v units.Volume) Value {
	return both(v, units.USFluidOunce, "US fl oz", "us_fl_oz", units.Milliliter, "mL", "ml")
}

// Wood shows a volume of stacked wood in cords and cubic meters.
func Wood(v units.Volume) Value {
	return both(v, units.Cord, "cord", "cord", units.CubicMeter, "m3", "m3")
}

// TinyVolume shows a volume in cubic inches and milliliters: the wood of a hole.
func TinyVolume(v units.Volume) Value {
	const cubicInch = units.USGallon / 231
	return both(v, cubicInch, "in3", "in3", units.Milliliter, "mL", "ml")
}

// Mass shows a mass in pounds and kilograms.
func Mass(m units.Mass) Value {
	return both(m, units.Pound, "lb", "lb", units.Kilogram, "kg", "kg")
}

// Length shows a length in inches and centimeters.
func Length(l units.Length) Value {
	return both(l, units.Inch, "in", "in", units.Centimeter, "cm", "cm")
}

// Area shows an area in square feet and square meters.
func Area(a units.Area) Value {
	return both(a, units.SquareFoot, "ft2", "ft2", units.SquareMeter, "m2", "m2")
}

// Pressure shows a pressure in inches of mercury and kilopascals.
func Pressure(p units.Pressure) Value {
	return both(p, units.InchMercury, "inHg", "inhg", units.Kilopascal, "kPa", "kpa")
}

// Energy shows heat in Btu and megajoules.
func Energy(e units.Energy) Value {
	return both(e, units.BtuIT, "Btu", "btu", units.Megajoule, "MJ", "mj")
}

// Flow shows a volume flow by the hour.
func Flow(q units.VolumeRate) Value {
	return both(q, units.USGallonPerHour, "US gal/h", "us_gal_per_h", units.LiterPerHour, "L/h", "l_per_h")
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

// Plural words a count of things: 1 row, 2 rows. Many is what several are called where
// that is not an s more.
func Plural(n int, one string, many ...string) string {
	switch {
	case n == 1:
	case len(many) > 0:
		one = many[0]
	default:
		one += "s"
	}
	return fmt.Sprintf("%d %s", n, one)
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

// Between shows a range.
func Between(low, high Value) Value {
	return Value{span(low.us, high.us), span(low.metric, high.metric)}
}
