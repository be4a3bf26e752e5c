package tapping

import (
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/internal/clip"
	"example.org/sapreckoner/internal/limit"
	"example.org/sapreckoner/units"
)

// nan is the answer of a function that has none.
func nan[T ~float64]() T { return T(math.NaN()) }

var diameterRange = limit.Range{
	Arg: "diameter", Low: 0, High: float64(maxDiameter), Unit: "in", Per: float64(units.Inch),
	Below: diameterHint, Above: diameterHint,
}

const diameterHint = "a diameter at breast height, not a girth"

// checkLength is the door of lengths: inches are the unit of the drill and the
// tape.
func checkLength(fn, arg string, v, low, high units.Length, hint string) error {
	return limit.Within(fn, arg, v, low, high, units.Inch, "in", hint)
}

// checkNumber is the door of pure numbers.
func checkNumber(fn, arg string, x, low, high float64, hint string) error {
	return limit.Within(fn, arg, x, low, high, 1, "", hint)
}

// checkCount is the door of whole numbers.
func checkCount(fn, arg string, n, low, high int, hint string) error {
	return checkNumber(fn, arg, float64(n), float64(low), float64(high), hint)
}

// names are the words of an enumeration, by value.
type names []string

func (n names) name(i int) string {
	if i >= len(n) {
		return fmt.Sprintf("unknown (%d)", i)
	}
	return n[i]
}

func (n names) marshal(what string, i int) ([]byte, error) {
	if i >= len(n) {
		return nil, fmt.Errorf("tapping: unknown %s %d", what, i)
	}
	return []byte(n[i]), nil
}

// find reads a name in any case; an empty text is the zero value.
func (n names) find(what, text string) (int, error) {
	text = strings.TrimSpace(text)
	if text == "" {
		return 0, nil
	}
	for i, name := range n {
		if strings.EqualFold(text, name) {
			return i, nil
		}
	}
	if near := nearest(strings.ToLower(text), n); near != "" {
		return 0, fmt.Errorf("%q is no %s known here: is it %s?", clip.Text(text), what, near)
	}
	return 0, fmt.Errorf("%q is no %s known here: want one of %s", clip.Text(text), what, strings.Join(n, ", "))
}
