package units

import (
	"math"
	"strconv"
	"strings"
)

// A unit is one row of a quantity's table.
type unit struct {
	size   float64  // in the base unit
	symbol string   // what Text prints and parsing accepts
	also   []string // further spellings that parsing accepts
}

// A table lists the units of one quantity. The first row is the base unit.
type table struct {
	parse   string            // name of the Parse function, for errors
	units   []unit            //
	display int               // row that String prints
	refused map[string]string // ambiguous spellings and what to write instead
}

// find returns the row with the given spelling: as it stands, or else without
// regard to case, for a person who types "LB" or "btu".
func (tab *table) find(name string) (unit, bool) {
	for _, match := range []func(a, b string) bool{exactly, loosely} {
		for _, u := range tab.units {
			if match(u.symbol, name) {
				return u, true
			}
			for _, a := range u.also {
				if match(a, name) {
					return u, true
				}
			}
		}
	}
	return unit{}, false
}

func exactly(symbol, name string) bool { return symbol == name }

// loosely folds case except for a leading m: milli and mega are a factor of a
// billion apart.
func loosely(symbol, name string) bool {
	if symbol[0] == 'm' || symbol[0] == 'M' {
		return symbol[0] == name[0] && strings.EqualFold(symbol, name)
	}
	return strings.EqualFold(symbol, name)
}

// symbols lists what parsing accepts, for the hint of an error.
func (tab *table) symbols() string {
	s := make([]string, len(tab.units))
	for i, u := range tab.units {
		s[i] = u.symbol
	}
	return strings.Join(s, ", ")
}

// read splits s into a number and a unit of the table. The number is in the
// returned unit, unconverted.
func (tab *table) read(s string) (float64, unit, error) {
	fail := func(reason error, hint string) (float64, unit, error) {
		return math.NaN(), unit{}, &ParseError{Func: tab.parse, Input: s, Err: reason, Hint: hint}
	}
	x, rest, hint, reason := number(s)
	if reason != nil {
		return fail(reason, hint)
	}
	name := spelling(rest)
	if name == "" {
		return fail(ErrNoUnit, "write the unit behind the number, one of: "+tab.symbols())
	}
	if instead, ok := tab.refused[strings.ToLower(name)]; ok {
		return fail(ErrAmbiguous, "write "+instead)
	}
	u, ok := tab.find(name)
	if !ok {
		return fail(ErrUnit, "use one of: "+tab.symbols())
	}
	return x, u, nil
}

// spelling folds white space to single spaces and drops degree signs.
func spelling(s string) string {
	s = strings.NewReplacer("°", " ", "º", " ").Replace(s)
	return strings.Join(strings.Fields(s), " ")
}

// number reads a decimal number, a fraction (7/16) or both (1 1/2, 1-1/2) at
// the start of s and returns what follows it.
func number(s string) (x float64, rest, hint string, reason error) {
	s = strings.TrimSpace(s)
	whole, rest := decimal(s)
	if whole == "" {
		return 0, "", "begin with a number, such as 60 or 7/16", ErrSyntax
	}
	if strings.HasPrefix(rest, ",") {
		return 0, "", "write numbers without commas, with a point for decimals: 1200.5", ErrSyntax
	}
	x, err := strconv.ParseFloat(whole, 64)
	if err != nil {
		return 0, "", "the number is too large", ErrRange
	}
	// A fraction may stand alone or behind a whole number.
	if over, ok := strings.CutPrefix(rest, "/"); ok {
		y, tail, ok := divisor(over)
		if !ok || !digits(strings.TrimLeft(whole, "+-")) {
			return 0, "", "write a fraction as 7/16", ErrSyntax
		}
		return x / y, tail, "", nil
	}
	if digits(strings.TrimLeft(whole, "+-")) && rest != "" && (rest[0] == ' ' || rest[0] == '-') {
		part := strings.TrimLeft(rest[1:], " ")
		if top, over, ok := strings.Cut(part, "/"); ok && digits(top) {
			y, tail, ok := divisor(over)
			if !ok {
				return 0, "", "write a fraction as 1 7/16", ErrSyntax
			}
			n, err := strconv.ParseFloat(top, 64)
			if err != nil {
				return 0, "", "the number is too large", ErrRange
			}
			if strings.HasPrefix(whole, "-") {
				n = -n
			}
			return x + n/y, tail, "", nil
		}
	}
	return x, rest, "", nil
}

// divisor reads the whole number below the bar of a fraction.
func divisor(s string) (y float64, rest string, ok bool) {
	n := 0
	for n < len(s) && s[n] >= '0' && s[n] <= '9' {
		n++
	}
	y, err := strconv.ParseFloat(s[:n], 64)
	return y, s[n:], err == nil && y > 0
}

func digits(s string) bool {
	for i := range len(s) {
		if s[i] < '0' || s[i] > '9' {
			return false
		}
	}
	return s != ""
}

// decimal cuts the longest decimal number from the start of s. It is stricter
// than strconv: no hexadecimal, no underscores, no inf and no nan.
func decimal(s string) (num, rest string) {
	i, seen := 0, false
	run := func() {
		for i < len(s) && s[i] >= '0' && s[i] <= '9' {
			i++
			seen = true
		}
	}
	if i < len(s) && (s[i] == '+' || s[i] == '-') {
		i++
	}
	run()
	if i < len(s) && s[i] == '.' {
		i++
		run()
	}
	if !seen {
		return "", s
	}
	if mark := i; i < len(s) && (s[i] == 'e' || s[i] == 'E') {
		i++
		if i < len(s) && (s[i] == '+' || s[i] == '-') {
			i++
		}
		seen = false
		if run(); !seen {
			i = mark
		}
	}
	return s[:i], s[i:]
}

// parse reads a proportional quantity.
func parse[Q ~float64](s string, tab *table) (Q, error) {
	x, u, err := tab.read(s)
	if err != nil {
		return Q(math.NaN()), err
	}
	q := x * u.size
	if math.IsInf(q, 0) {
		return Q(math.NaN()), &ParseError{Func: tab.parse, Input: s, Err: ErrRange, Hint: "the number is too large"}
	}
	return Q(q), nil
}

// unmarshal parses into q and leaves it alone on error.
func unmarshal[Q ~float64](q *Q, text []byte, tab *table) error {
	v, err := parse[Q](string(text), tab)
	if err != nil {
		return err
	}
	*q = v
	return nil
}

// marshal prints the shortest text that parses back to the same float64.
func marshal[Q ~float64](q Q, tab *table) ([]byte, error) {
	return marshalNumber(float64(q), tab.units[0].symbol, tab.parse)
}

func marshalNumber(x float64, symbol, parse string) ([]byte, error) {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return nil, &ParseError{Func: parse, Input: strconv.FormatFloat(x, 'g', -1, 64), Err: ErrRange, Hint: "only finite quantities can be written"}
	}
	b := strconv.AppendFloat(make([]byte, 0, 24+len(symbol)), x, 'g', -1, 64)
	b = append(b, ' ')
	return append(b, symbol...), nil
}

// str prints 12 significant digits in the table's display unit.
func str[Q ~float64](q Q, tab *table) string {
	u := tab.units[tab.display]
	return bare(float64(q)/u.size, 12) + " " + u.symbol
}

// text prints q in the given unit, or in the base unit when the table does not
// hold a unit of that size.
func text[Q ~float64](q, in Q, decimals int, tab *table) string {
	use := tab.units[0]
	for _, u := range tab.units {
		if u.size == float64(in) {
			use = u
			break
		}
	}
	return fixed(float64(q)/use.size, decimals) + " " + use.symbol
}

// mostDecimals is past the last digit of any float64: more would be zeros.
const mostDecimals = 1074

// fixed prints x with the given number of decimals and never a negative zero.
func fixed(x float64, decimals int) string {
	s := strconv.FormatFloat(x, 'f', min(max(decimals, 0), mostDecimals), 64)
	if strings.HasPrefix(s, "-") && strings.Trim(s, "-0.") == "" {
		return s[1:]
	}
	return s
}
