package limittest

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"example.org/sapreckoner/units"
)

// InEveryUnit writes both ends of a range in every unit that parse reads, with
// the 12 digits of String and with all, and checks that call takes what is read
// back; two billionths beyond an end are refused, by a message in which the
// value is not the end. At zero, which only a temperature passes, they count in
// the unit. The ends are given as text; an empty one is not tried.
func InEveryUnit[Q any](t *testing.T, name, low, high string, parse func(string) (Q, error), call func(Q) error) {
	t.Helper()
	_, err := parse("1 no such unit")
	var pe *units.ParseError
	if !errors.As(err, &pe) {
		t.Fatalf("%s: %v", name, err)
	}
	_, list, _ := strings.Cut(pe.Hint, "use one of: ")
	tried := 0
	for i, text := range [2]string{low, high} {
		if text == "" {
			continue
		}
		for _, symbol := range strings.Split(list, ", ") {
			x, ok := written(parse, text, symbol)
			if !ok {
				t.Errorf("%s: no text of %q in %s", name, text, symbol)
				continue
			}
			for _, digits := range []int{12, 15, -1} {
				s := strconv.FormatFloat(x, 'g', digits, 64) + " " + symbol
				q, err := parse(s)
				if err == nil {
					err = call(q)
				}
				if err != nil {
					t.Errorf("%s: its limit %s, written as %q: %v", name, text, s, err)
				}
				tried++
			}
			out := 1e-9 * math.Abs(x)
			if x == 0 {
				out = 1e-9
			}
			if i == 0 {
				out = -out
			}
			q, err := parse(strconv.FormatFloat(x+2*out, 'g', -1, 64) + " " + symbol)
			if err != nil {
				t.Fatal(err)
			}
			err = call(q)
			var e *units.RangeError
			if !errors.As(err, &e) || e.Value == e.Low || e.Value == e.High {
				t.Errorf("%s: beyond its limit %s in %s: %v, want a RangeError", name, text, symbol, err)
				continue
			}
			if _, said, ok := strings.Cut(e.Error(), cmp.Or(e.What, e.Arg)+" "); ok {
				words := strings.Fields(said)
				for _, w := range words[1:] {
					if w == words[0] {
						t.Errorf("%s: the value is the limit: %v", name, e)
					}
				}
			}
		}
	}
	if tried == 0 {
		t.Errorf("%s: nothing was tried", name)
	}
}

// written returns the number of units that is the quantity of a text: two
// parsings tell the scale and its zero.
func written[Q any](parse func(string) (Q, error), text, symbol string) (float64, bool) {
	number := func(s string) (float64, bool) {
		q, err := parse(s)
		if err != nil {
			return 0, false
		}
		switch v := any(q).(type) {
		case units.Temperature:
			return v.Celsius(), true
		case interface{ MarshalText() ([]byte, error) }:
			b, err := v.MarshalText()
			if err != nil {
				return 0, false
			}
			digits, _, _ := strings.Cut(string(b), " ")
			x, err := strconv.ParseFloat(digits, 64)
			return x, err == nil
		}
		return 0, false
	}
	if q, err := parse(text); err == nil {
		if v, ok := any(q).(units.Temperature); ok {
			switch symbol {
			case "F":
				return v.Fahrenheit(), true
			case "K":
				return v.Kelvin(), true
			}
			return v.Celsius(), true
		}
	}
	x, ok1 := number(text)
	one, ok2 := number("1 " + symbol)
	return x / one, ok1 && ok2
}

// Number returns err, and an error of its own where an answer that should be
// good has a part that is not a number.
func Number(answer any, err error) error {
	if text := fmt.Sprintf("%+v", answer); err == nil && strings.Contains(text, "NaN") {
		return errors.New("no error beside " + text)
	}
	return err
}
