package cli

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Names of Go: of a function in front of an error of the library, in brackets
// behind a way out, and anywhere.
var (
	name     = `\b(units|records|density|sugar|boil|fuel|pan|finish|yield|packing|money|tapping|season)(\.[A-Z]\w*)+`
	function = regexp.MustCompile(name + ": ")
	aside    = regexp.MustCompile(` \([^()]*` + name + `[^()]*\)`)
	anyName  = regexp.MustCompile(name)
	setting  = regexp.MustCompile(`\bset [A-Z]\w* to `) // a field
	twoWords = regexp.MustCompile(`\b[A-Z][a-z]+[A-Z]`)
)

// Reason words an error for a person at the keyboard: without names of Go, and a
// value outside its range in US customary and metric units.
func Reason(err error) string {
	s := err.Error()
	var re *units.RangeError
	if errors.As(err, &re) {
		s = strings.Replace(s, re.Error(), outside(re), 1)
	}
	return aside.ReplaceAllString(function.ReplaceAllString(s, ""), "")
}

// Line words an error for a person as one line of what can be printed: names of
// files and words of their cells may hold anything.
func Line(err error) string { return visible(strings.Join(strings.Fields(Reason(err)), " ")) }

// visible spells out what would steer a terminal, or turn the order in which
// text is read.
func visible(s string) string {
	var b strings.Builder
	for i, c := range s {
		switch {
		case c == utf8.RuneError && !strings.HasPrefix(s[i:], string(utf8.RuneError)):
			fmt.Fprintf(&b, `\x%02x`, s[i])
		case unicode.IsPrint(c):
			b.WriteRune(c)
		default:
			b.WriteString(strings.Trim(strconv.QuoteRune(c), "'"))
		}
	}
	return b.String()
}

// endless is from where on the high end of a range bounds nothing that a person
// would type.
const endless = math.MaxInt32

// outside words a range error. Its forms are those of [units.RangeError.Error].
func outside(e *units.RangeError) string {
	s := cmp.Or(e.What, inWords(e.Arg))
	say := wording(e)
	open := e.High >= endless && e.Value < e.High
	switch {
	case math.IsNaN(e.Value):
		s += " is not a number; it must lie in " + say.span(e.Low, e.High)
	case e.Value == e.Low && open:
		s += " must be more than " + say.one(e.Low)
	case e.Value == e.Low:
		s += " must be more than " + say.one(e.Low) + " and at most " + say.one(e.High)
	case e.Value == e.High:
		s += " must be less than " + say.one(e.High) + " and at least " + say.one(e.Low)
	case open:
		s += " " + say.one(e.Value) + " is less than " + say.one(e.Low)
	default:
		s += " " + say.one(e.Value) + " is outside " + say.span(e.Low, e.High)
	}
	if hint := forPeople(e.Hint); hint != "" {
		s += ": " + hint
	}
	return s
}

// forPeople leaves out of a way out what only a programmer can go.
func forPeople(hint string) string {
	hint = setting.ReplaceAllString(aside.ReplaceAllString(hint, ""), "give ")
	if anyName.MatchString(hint) {
		hint, _, _ = strings.Cut(hint, ", such as ")
	}
	if anyName.MatchString(hint) || twoWords.MatchString(hint) {
		return ""
	}
	return hint
}

// inWords makes words of an argument that is called by its field in Go:
// Container.Label is a label.
func inWords(arg string) string {
	_, field, ok := strings.Cut(arg, ".")
	if !ok || strings.ContainsRune(arg, ' ') {
		return arg
	}
	var b strings.Builder
	for i, c := range field {
		if unicode.IsUpper(c) && i > 0 {
			b.WriteByte(' ')
		}
		b.WriteRune(unicode.ToLower(c))
	}
	return b.String()
}

// A scale is a unit that a range is told in.
type scale struct {
	symbol string
	size   float64 // in the base unit
	zero   float64 // of the scale, in the base unit
	tenths bool    // nobody reads it closer than that
}

// A pair is a unit of each system for numbers from a size on.
type pair struct {
	from       float64
	us, metric scale
}

func pairOf[Q ~float64](from Q, us, metric unit[Q]) pair {
	return pair{float64(from), scale{symbol: us.symbol, size: float64(us.size)}, scale{symbol: metric.symbol, size: float64(metric.size)}}
}

var (
	temperatures = []pair{{us: scale{"F", 5.0 / 9, -160.0 / 9, true}, metric: scale{"C", 1, 0, true}}}
	differences  = []pair{pairOf(0, unit[units.TempDiff]{units.FahrenheitDegree, "F deg", ""}, unit[units.TempDiff]{units.CelsiusDegree, "C deg", ""})}
	volumes      = []pair{
		pairOf(0, unit[units.Volume]{units.USFluidOunce, "US fl oz", ""}, unit[units.Volume]{units.Milliliter, "mL", ""}),
		pairOf(units.Liter/2, unit[units.Volume]{units.USGallon, "US gal", ""}, unit[units.Volume]{units.Liter, "L", ""}),
	}
	masses = []pair{
		pairOf(0, unit[units.Mass]{units.Ounce, "oz", ""}, unit[units.Mass]{units.Gram, "g", ""}),
		pairOf(units.Pound/2, unit[units.Mass]{units.Pound, "lb", ""}, unit[units.Mass]{units.Kilogram, "kg", ""}),
	}
	lengths = []pair{
		pairOf(0, unit[units.Length]{units.Inch, "in", ""}, unit[units.Length]{units.Centimeter, "cm", ""}),
		pairOf(10*units.Foot, unit[units.Length]{units.Foot, "ft", ""}, unit[units.Length]{units.Meter, "m", ""}),
	}
	areas     = []pair{pairOf(0, unit[units.Area]{units.SquareFoot, "ft2", ""}, unit[units.Area]{units.SquareMeter, "m2", ""})}
	pressures = []pair{
		pairOf(0, unit[units.Pressure]{units.InchMercury, "inHg", ""}, unit[units.Pressure]{units.Kilopascal, "kPa", ""}),
	}
	pumps     = []pair{pairOf(0, unit[units.Pressure]{units.PSI, "psi", ""}, unit[units.Pressure]{units.Bar, "bar", ""})}
	densities = []pair{pairOf(0, unit[units.Density]{units.PoundPerUSGallon, "lb/US gal", ""}, unit[units.Density]{units.KilogramPerCubicMeter, "kg/m3", ""})}
	rates     = []pair{pairOf(0, unit[units.MassRate]{units.PoundPerHour, "lb/h", ""}, unit[units.MassRate]{units.KilogramPerHour, "kg/h", ""})}
	flows     = []pair{pairOf(0, unit[units.VolumeRate]{units.USGallonPerHour, "US gal/h", ""}, unit[units.VolumeRate]{units.LiterPerHour, "L/h", ""})}
	fluxes    = []pair{pairOf(0, unit[units.Flux]{units.USGallonPerSquareFootHour, "US gal/ft2/h", ""}, unit[units.Flux]{units.LiterPerSquareMeterHour, "L/m2/h", ""})}
	powers    = []pair{pairOf(0, unit[units.Power]{units.BtuITPerHour, "Btu/h", ""}, unit[units.Power]{units.Kilowatt, "kW", ""})}
)

// inBoth lists the units of range errors: what one of it is in the base unit, and
// what it is told in.
var inBoth = map[string]struct {
	per float64
	as  []pair
}{
	"C": {1, temperatures}, "C deg": {1, differences}, "F deg": {float64(units.FahrenheitDegree), differences},
	"m3": {float64(units.CubicMeter), volumes}, "L": {float64(units.Liter), volumes}, "US gal": {float64(units.USGallon), volumes},
	"kg": {float64(units.Kilogram), masses}, "lb": {float64(units.Pound), masses},
	"m": {float64(units.Meter), lengths}, "ft": {float64(units.Foot), lengths}, "in": {float64(units.Inch), lengths[:1]},
	"m2": {float64(units.SquareMeter), areas}, "ft2": {float64(units.SquareFoot), areas},
	"kPa": {float64(units.Kilopascal), pressures}, "inHg": {float64(units.InchMercury), pressures}, "bar": {float64(units.Bar), pumps},
	"kg/m3": {float64(units.KilogramPerCubicMeter), densities}, "kg/s": {float64(units.KilogramPerSecond), rates},
	"m3/s": {float64(units.CubicMeterPerSecond), flows}, "US gal/h": {float64(units.USGallonPerHour), flows},
	"US gal/ft2/h": {float64(units.USGallonPerSquareFootHour), fluxes},
	"W":            {float64(units.Watt), powers},
}

// A saying prints the numbers of one range error with the same number of
// digits: as few as tell the value from the ends of the range.
type saying struct {
	per    float64
	as     []pair // what is known in one unit only has the same twice
	digits int

	low, high float64 // the ends of the range
}

func wording(e *units.RangeError) saying {
	say := saying{1, []pair{{us: scale{symbol: e.Unit, size: 1}, metric: scale{symbol: e.Unit, size: 1}}}, digits, e.Low, e.High}
	if t, ok := inBoth[e.Unit]; ok {
		say.per, say.as = t.per, t.as
	}
	const most = 15
	same := func(end float64) bool {
		if e.Value == end || math.IsNaN(e.Value) || math.IsInf(e.Value, 0) {
			return false
		}
		p := say.pair(end)
		return say.number(p.us, e.Value) == say.number(p.us, end) || say.number(p.metric, e.Value) == say.number(p.metric, end)
	}
	// A narrow range must not close or turn round when its ends are rounded.
	shut := func(m scale) bool {
		low, _ := strconv.ParseFloat(say.number(m, e.Low), 64)
		high, _ := strconv.ParseFloat(say.number(m, e.High), 64)
		return e.Low < e.High && low >= high
	}
	for say.digits < most && (same(e.Low) || same(e.High) || shut(say.pair(e.High).us) || shut(say.pair(e.High).metric)) {
		say.digits++
	}
	return say
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

// one prints a number with its unit, and in the other system of units.
func (s saying) one(x float64) string { return s.in(s.pair(x), x) }

// span prints a range.
func (s saying) span(low, high float64) string {
	if from, to := s.pair(low), s.pair(high); low != 0 && from.us.symbol != to.us.symbol {
		return s.in(from, low) + " to " + s.in(to, high)
	}
	return s.in(s.pair(high), low, high)
}

// in prints one number, or a range of two.
func (s saying) in(p pair, xs ...float64) string {
	text := func(u scale) string {
		var numbers []string
		for _, x := range xs {
			numbers = append(numbers, s.number(u, x))
		}
		return strings.TrimSpace(strings.Join(numbers, " to ") + " " + u.symbol)
	}
	if p.us.symbol == p.metric.symbol {
		return text(p.us)
	}
	return text(p.us) + " (" + text(p.metric) + ")"
}

// number prints a number to the digits of the saying, and a temperature to a
// tenth at least. Zeros behind the point are dropped: a limit is exact. An end
// of the range is rounded into it, so that what a message tells is accepted.
func (s saying) number(m scale, x float64) string {
	into := 0.0
	switch x {
	case s.low:
		into = 1
	case s.high:
		into = -1
	}
	x = (x*s.per - m.zero) / m.size
	verb, n := byte('g'), s.digits
	large := math.Abs(x) >= 1e9 || x != 0 && math.Abs(x) < 1e-5
	if m.tenths && !large {
		verb, n = 'f', s.digits-digits+1
	}
	text := strconv.FormatFloat(x, verb, n, 64)
	r, err := strconv.ParseFloat(text, 64)
	if err != nil {
		return text
	}
	if into*(x-r) > limit.Hair*math.Abs(x) {
		last := -n
		if verb == 'g' {
			last = int(math.Floor(math.Log10(math.Abs(x)))) - n + 1
		}
		text = strconv.FormatFloat(r+into*math.Pow10(last), verb, n, 64)
		r, _ = strconv.ParseFloat(text, 64)
	}
	if large {
		return text
	}
	return strconv.FormatFloat(r+0, 'f', -1, 64) // no -0
}
