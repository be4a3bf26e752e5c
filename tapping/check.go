package tapping

import (
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/units"
)

// nan is the answer of a function that has none.
func nan[T ~float64]() T { return T(math.NaN()) }

// lengthError reports a length in inches, the unit of the drill and the tape.
func lengthError(fn, arg string, v, low, high units.Length, hint string) error {
	return &units.RangeError{Func: fn, Arg: arg, Value: v.Inches(), Low: low.Inches(), High: high.Inches(), Unit: "in", Hint: hint}
}

// numberError reports a pure number.
func numberError(fn, arg string, v, low, high float64, hint string) error {
	return &units.RangeError{Func: fn, Arg: arg, Value: v, Low: low, High: high, Hint: hint}
}

func checkDiameter(fn string, d units.Length) error {
	if !(d >= 0 && d <= maxDiameter) {
		return lengthError(fn, "diameter", d, 0, maxDiameter, "a diameter at breast height, not a girth")
	}
	return nil
}

// checkLength is the door of every other length.
func checkLength(fn, arg string, v, low, high units.Length, hint string) error {
	if !(v >= low && v <= high) {
		return lengthError(fn, arg, v, low, high, hint)
	}
	return nil
}

// checkCount is the door of every whole number.
func checkCount(fn, arg string, n, low, high int, hint string) error {
	if n < low || n > high {
		return numberError(fn, arg, float64(n), float64(low), float64(high), hint)
	}
	return nil
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
	return 0, fmt.Errorf("%q is no %s known here: want one of %s", clip(text), what, strings.Join(n, ", "))
}

// clip bounds what a message repeats.
func clip(s string) string {
	const most = 48
	if len(s) > most {
		return strings.ToValidUTF8(s[:most], "") + "..."
	}
	return s
}
