package cli

import (
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
)

// Side is the way in which a number to act on is rounded to what a person reads: up
// where more is safe (a depth that is needed, wood to have ready), down where less is
// (syrup to count on, a weight to stop at).
type Side int

// The sides.
const (
	Down    Side = -1
	Nearest Side = 0
	Up      Side = 1
)

// hair is how far processors may differ, as a share of a step.
const hair = 1e-6

// round rounds x to whole steps.
func (to Side) round(x float64) float64 {
	switch to {
	case Down:
		return math.Floor(x + hair)
	case Up:
		return math.Ceil(x - hair)
	}
	return math.Round(x)
}

// mixed writes n of so many parts of a whole as a ruler has it: 9 of 8 are 1 1/8.
func mixed(n float64, parts int) string {
	whole, rest := math.Modf(math.Abs(n) / float64(parts))
	top := int(math.Round(rest * float64(parts)))
	sign := ""
	if n < 0 {
		sign = "-"
	}
	if top == 0 {
		return sign + decimal(whole, 0)
	}
	for top%2 == 0 {
		top, parts = top/2, parts/2
	}
	if whole == 0 {
		return fmt.Sprintf("%s%d/%d", sign, top, parts)
	}
	return fmt.Sprintf("%s%s %d/%d", sign, decimal(whole, 0), top, parts)
}

// fraction shows x in parts of a whole, and step shows it in steps with decimals.
func (to Side) fraction(x float64, parts int, symbol, suffix string) view {
	n := to.round(x * float64(parts))
	return view{known(x, mixed(n, parts)+" "+symbol), suffix, number(n / float64(parts))}
}

func (to Side) step(x, step float64, decimals int, symbol, suffix string) view {
	n := to.round(x/step) * step
	return view{known(x, decimal(n, decimals)+" "+symbol), suffix, number(n)}
}

// tenth shows x to the tenth.
func (to Side) tenth(x float64, symbol, suffix string) view {
	n := to.round(x*10) / 10
	return view{known(x, decimal(n, 1)+" "+symbol), suffix, number(n)}
}

// Eighths shows a length as a ruler is read: to the eighth of an inch, or to the
// millimeter.
func Eighths(l units.Length, to Side) Value {
	return Value{to.fraction(l.Inches(), 8, "in", "in"), to.step(l.Centimeters(), 0.1, 1, "cm", "cm")}
}

// Gallons shows sap as a person measures it: to the half gallon under 10, to the
// gallon under 1000, then to ten.
func Gallons(v units.Volume, to Side) Value {
	return Value{to.coarse(v.USGallons(), 2, "US gal", "us_gal"), to.coarse(v.Liters(), 1, "L", "l")}
}

// Quarts shows syrup as it is bottled: to the quarter of a quart under 10, to the
// quart under 1000; or of a liter.
func Quarts(v units.Volume, to Side) Value {
	return Value{to.coarse(v.USQuarts(), 4, "US qt", "us_qt"), to.coarse(v.Liters(), 4, "L", "l")}
}

// coarse shows parts of one under ten, whole ones, and tens from a thousand on.
func (to Side) coarse(x float64, parts int, symbol, suffix string) view {
	switch {
	case math.Abs(x) < 10:
		return to.fraction(x, parts, symbol, suffix)
	case math.Abs(x) < 1000:
		return to.step(x, 1, 0, symbol, suffix)
	}
	return to.step(x, 10, 0, symbol, suffix)
}

// Weight shows a mass as a scale is read: pounds and ounces, to a quarter of an ounce
// under 10 lb, to half of one under 20, to the ounce under 100, then to the pound; or
// to 5, 10 and 50 g and half a kilogram.
func Weight(m units.Mass, to Side) Value {
	lb, kg := m.Pounds(), m.Kilograms()
	parts, grams := 64, 5.0
	switch {
	case math.Abs(lb) >= 100:
		parts, grams = 1, 500
	case math.Abs(lb) >= 20:
		parts, grams = 16, 50
	case math.Abs(lb) >= 10:
		parts, grams = 32, 10
	}
	n := to.round(lb * float64(parts))
	us := view{known(lb, ounces(n, parts)), "lb", number(n / float64(parts))}
	decimals := 2
	switch {
	case grams == 500:
		decimals = 1
	case grams == 5:
		decimals = 3
	}
	return Value{us, to.step(kg, grams/1000, decimals, "kg", "kg")}
}

// Pounds shows what is bought by weight in whole pounds or kilograms.
func Pounds(m units.Mass, to Side) Value {
	return Value{to.step(m.Pounds(), 1, 0, "lb", "lb"), to.step(m.Kilograms(), 1, 0, "kg", "kg")}
}

// ounces words n of so many parts of a pound.
func ounces(n float64, parts int) string {
	pounds := math.Trunc(n / float64(parts))
	rest := math.Abs(n - pounds*float64(parts))
	switch oz := mixed(rest, max(parts/16, 1)); {
	case rest == 0 || parts == 1:
		return decimal(pounds, 0) + " lb"
	case pounds == 0 && n < 0:
		return "-" + oz + " oz"
	case pounds == 0:
		return oz + " oz"
	default:
		return decimal(pounds, 0) + " lb " + oz + " oz"
	}
}

// A Measure is what a person carries wood in, as the settings tell it: a barrow of 1/25
// cord.
type Measure folder.Measure

// FaceCord is a row of stove wood, 4 ft high, 8 ft long and 16 in deep (common
// practice): a third of a cord.
var FaceCord = Measure{"face cord", units.Cord / 3}

// Carried shows wood in a measure: by halves of it under 10, else by whole ones. The
// zero measure is a [FaceCord] by quarters under 3, then by halves; or tenths of a
// cubic meter.
func (m Measure) Carried(v units.Volume, to Side) Value {
	if !(m.Wood > 0) {
		parts := 2
		if v < 3*FaceCord.Wood {
			parts = 4
		}
		return Value{FaceCord.of(v, parts, to), to.step(v.CubicMeters(), 0.1, 1, "m3", "m3")}
	}
	if v < 10*m.Wood {
		return same(m.of(v, 2, to))
	}
	return same(m.of(v, 1, to))
}

func (m Measure) of(v units.Volume, parts int, to Side) view {
	x := float64(v / m.Wood)
	n := to.round(x*float64(parts)) / float64(parts)
	name := m.Name
	if n > 1 {
		name += "s"
	}
	return view{known(x, mixed(n*float64(parts), parts)+" "+name), "measure", number(n)}
}

// WholeDegree shows a temperature in whole degrees, or in steps of several of them: what
// an oven or a kitchen thermometer is set to.
func WholeDegree(t units.Temperature, step float64, to Side) Value {
	return Value{to.step(t.Fahrenheit(), step, 0, "F", "f"), to.step(t.Celsius(), step, 0, "C", "c")}
}

// TenthDegree shows a temperature as the finest thermometers of the trade are read.
func TenthDegree(t units.Temperature, to Side) Value {
	return Value{to.tenth(t.Fahrenheit(), "F", "f"), to.tenth(t.Celsius(), "C", "c")}
}

// TenthBrix shows a reading of a hydrometer.
func TenthBrix(b units.Brix, to Side) Value {
	return same(to.tenth(float64(b), "Brix", "brix"))
}

// ClockBy shows a time of the day that begins with start, to a step such as
// [time.Minute] or five of them: see [Clock].
func ClockBy(start, t time.Time, step time.Duration, to Side) Value {
	at := t.Truncate(step)
	if left := t.Sub(at); to == Up && left > time.Second || to == Nearest && 2*left >= step {
		at = at.Add(step)
	}
	return Clock(start, at)
}

// Minutes shows a stretch of time in whole minutes, from two hours on in hours and
// minutes.
func Minutes(d time.Duration, to Side) Value {
	n := to.round(d.Minutes())
	text := decimal(n, 0) + " min"
	if n >= 120 {
		text = fmt.Sprintf("%d h %02d min", int(n)/60, int(n)%60)
	}
	return same(view{text, "min", number(n)})
}

// Feet shows an elevation as a map tells it.
func Feet(l units.Length) Value {
	return Value{Nearest.step(l.Feet(), 1, 0, "ft", "ft"), Nearest.step(l.Meters(), 1, 0, "m", "m")}
}

// TenthBaume shows a reading on a Baume scale.
func TenthBaume(b density.Baume145, to Side) Value {
	return same(to.tenth(float64(b), "Be", "baume_145"))
}
