package units

import (
	"math"
	"strconv"
	"strings"
)

// System is a system of units that a person reads in.
type System uint8

// The systems of units. [Both] puts the metric text in parentheses behind the
// US customary one.
const (
	Both System = iota
	US
	Metric
)

var systems = [...]string{"both", "US", "metric"}

// Systems lists the systems of units.
func Systems() []System { return []System{Both, US, Metric} }

// String returns "both", "US" or "metric".
func (s System) String() string {
	if int(s) < len(systems) {
		return systems[s]
	}
	return "System(" + strconv.Itoa(int(s)) + ")"
}

// MarshalText returns the name of the system.
func (s System) MarshalText() ([]byte, error) {
	return nameOf("units.System.MarshalText", systems[:], int(s), s.String())
}

// UnmarshalText reads the name of a system.
func (s *System) UnmarshalText(text []byte) error {
	i, err := named("units.System.UnmarshalText", systems[:], string(text))
	if err == nil {
		*s = System(i)
	}
	return err
}

// nameOf returns a name of a list as text, and an error where there is none.
func nameOf(fn string, list []string, i int, text string) ([]byte, error) {
	if i < len(list) {
		return []byte(list[i]), nil
	}
	_, err := named(fn, list, text)
	return nil, err
}

// named finds a name in a list, in any case.
func named(fn string, list []string, text string) (int, error) {
	for i, name := range list {
		if strings.EqualFold(name, text) {
			return i, nil
		}
	}
	return 0, &ParseError{Func: fn, Input: text, Err: ErrName, Hint: "use one of: " + strings.Join(list, ", ")}
}

// A measure is a unit that a number is told in.
type measure struct {
	symbol string
	size   float64 // in the base unit
	zero   float64 // of the scale, in the base unit
	tenths bool    // nobody reads it closer than that
}

// A pair is a unit of each system for numbers from a size on.
type pair struct {
	from       float64
	us, metric measure
}

func pairOf[Q ~float64](from, us Q, usSymbol string, metric Q, metricSymbol string) pair {
	return pair{float64(from), measure{symbol: usSymbol, size: float64(us)}, measure{symbol: metricSymbol, size: float64(metric)}}
}

// The units that a person reads, small amounts first.
var (
	temperaturePairs = []pair{{us: measure{"F", 5.0 / 9, -160.0 / 9, true}, metric: measure{"C", 1, 0, true}}}
	tempDiffPairs    = []pair{pairOf(0, FahrenheitDegree, "F deg", CelsiusDegree, "C deg")}
	volumePairs      = []pair{
		pairOf(0, USFluidOunce, "US fl oz", Milliliter, "mL"),
		pairOf(Liter/2, USGallon, "US gal", Liter, "L"),
	}
	massPairs     = []pair{pairOf(0, Ounce, "oz", Gram, "g"), pairOf(Pound/2, Pound, "lb", Kilogram, "kg")}
	lengthPairs   = []pair{pairOf(0, Inch, "in", Centimeter, "cm"), pairOf(10*Foot, Foot, "ft", Meter, "m")}
	inchPairs     = lengthPairs[:1]
	areaPairs     = []pair{pairOf(0, SquareFoot, "ft2", SquareMeter, "m2")}
	pressurePairs = []pair{pairOf(0, InchMercury, "inHg", Kilopascal, "kPa")}
	pumpPairs     = []pair{pairOf(0, PSI, "psi", Bar, "bar")}
	densityPairs  = []pair{pairOf(0, PoundPerUSGallon, "lb/US gal", KilogramPerCubicMeter, "kg/m3")}
	massRatePairs = []pair{pairOf(0, PoundPerHour, "lb/h", KilogramPerHour, "kg/h")}
	flowPairs     = []pair{pairOf(0, USGallonPerHour, "US gal/h", LiterPerHour, "L/h")}
	fluxPairs     = []pair{pairOf(0, USGallonPerSquareFootHour, "US gal/ft2/h", LiterPerSquareMeterHour, "L/m2/h")}
	powerPairs    = []pair{pairOf(0, BtuITPerHour, "Btu/h", Kilowatt, "kW")}
	energyPairs   = []pair{pairOf(0, BtuIT, "Btu", Megajoule, "MJ")}
)

// toldIn lists, for the unit of a number, what one of it is in the base unit
// and what a person reads it in.
var toldIn = map[string]struct {
	per float64
	as  []pair
}{
	"C": {1, temperaturePairs}, "C deg": {1, tempDiffPairs}, "F deg": {float64(FahrenheitDegree), tempDiffPairs},
	"m3": {float64(CubicMeter), volumePairs}, "L": {float64(Liter), volumePairs}, "US gal": {float64(USGallon), volumePairs},
	"mL": {float64(Milliliter), volumePairs}, "g": {float64(Gram), massPairs},
	"kg": {float64(Kilogram), massPairs}, "lb": {float64(Pound), massPairs},
	"m": {float64(Meter), lengthPairs}, "ft": {float64(Foot), lengthPairs}, "in": {float64(Inch), inchPairs},
	"m2": {float64(SquareMeter), areaPairs}, "ft2": {float64(SquareFoot), areaPairs},
	"Pa": {float64(Pascal), pressurePairs}, "kPa": {float64(Kilopascal), pressurePairs}, "inHg": {float64(InchMercury), pressurePairs},
	"bar":   {float64(Bar), pumpPairs},
	"kg/m3": {float64(KilogramPerCubicMeter), densityPairs}, "kg/s": {float64(KilogramPerSecond), massRatePairs},
	"m3/s": {float64(CubicMeterPerSecond), flowPairs}, "US gal/h": {float64(USGallonPerHour), flowPairs},
	"US gal/ft2/h": {float64(USGallonPerSquareFootHour), fluxPairs},
	"W":            {float64(Watt), powerPairs}, "J": {float64(Joule), energyPairs},
}

// plainDigits is how many digits are told where no more are asked for: one more
// than an instrument of the trade gives.
const plainDigits = 4

// hair is the part of itself by which a printed end may lie outside its range:
// that of the guards.
const hair = 1e-11

// A saying prints numbers of one unit with the same number of digits.
type saying struct {
	in     System
	per    float64
	as     []pair // what is known in one unit only has the same twice
	digits int

	low, high float64 // the ends of the range that is told
}

func sayingOf(in System, unit string, digits int) saying {
	if t, ok := toldIn[unit]; ok {
		return saying{in: in, per: t.per, as: t.as, digits: digits}
	}
	m := measure{symbol: unit, size: 1}
	return saying{in: in, per: 1, as: []pair{{us: m, metric: m}}, digits: digits}
}

// telling tells amounts in the base unit, to 1 to 17 digits.
func telling(in System, as []pair, digits int) saying {
	return saying{in: in, per: 1, as: as, digits: min(max(digits, 1), 17)}
}

// pair returns the units for a number: those for the largest that is no larger.
func (s saying) pair(x float64) pair {
	p := s.as[0]
	for _, larger := range s.as[1:] {
		if math.Abs(x*s.per) >= larger.from {
			p = larger
		}
	}
	return p
}

// one prints a number with its unit.
func (s saying) one(x float64) string { return s.with(s.pair(x), x) }

// span prints a range.
func (s saying) span(low, high float64) string {
	if from, to := s.pair(low), s.pair(high); low != 0 && from.us.symbol != to.us.symbol {
		return s.with(from, low) + " to " + s.with(to, high)
	}
	return s.with(s.pair(high), low, high)
}

// with prints one number, or a range of two, in the units of p.
func (s saying) with(p pair, xs ...float64) string {
	text := func(m measure) string {
		numbers := make([]string, len(xs))
		for i, x := range xs {
			numbers[i] = s.number(m, x)
		}
		return strings.TrimSpace(strings.Join(numbers, " to ") + " " + m.symbol)
	}
	switch {
	case s.in == Metric:
		return text(p.metric)
	case s.in == US || p.us.symbol == p.metric.symbol:
		return text(p.us)
	}
	return text(p.us) + " (" + text(p.metric) + ")"
}

// number prints a number to the digits of the saying, and a temperature to a
// tenth at least. Zeros behind the point are dropped: a limit is exact. An end
// of the range is rounded into it, so that what a message tells is accepted.
func (s saying) number(m measure, x float64) string {
	into := 0.0
	switch x {
	case s.low:
		into = 1
	case s.high:
		into = -1
	}
	x = (x*s.per - m.zero) / m.size
	verb, digits := byte('g'), s.digits
	large := math.Abs(x) >= 1e9 || x != 0 && math.Abs(x) < 1e-5
	if m.tenths && !large {
		verb, digits = 'f', max(s.digits-plainDigits+1, 0)
	}
	text := strconv.FormatFloat(x, verb, digits, 64)
	r, err := strconv.ParseFloat(text, 64)
	if err != nil {
		return text
	}
	if into*(x-r) > hair*math.Abs(x) {
		last := -digits
		if verb == 'g' {
			last = int(math.Floor(math.Log10(math.Abs(x)))) - digits + 1
		}
		text = strconv.FormatFloat(r+into*math.Pow10(last), verb, digits, 64)
		r, _ = strconv.ParseFloat(text, 64)
	}
	if large {
		return text
	}
	return strconv.FormatFloat(r+0, 'f', -1, 64) // no -0
}
