package check

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// halfDigit is the word for half a unit in the last printed digit.
const halfDigit = "half-digit"

// A Tolerance is the distance that a table grants between a published figure
// and the function that reproduces it. The zero Tolerance grants none.
type Tolerance struct {
	text      string
	halfDigit bool
	absolute  float64
	share     float64 // of the published figure
}

// ParseTolerance reads a sum such as "half-digit + 0.006", "0.05" or "0.5%".
func ParseTolerance(s string) (Tolerance, error) {
	t := Tolerance{text: strings.TrimSpace(s)}
	for term := range strings.SplitSeq(s, "+") {
		term = strings.TrimSpace(term)
		if term == halfDigit {
			if t.halfDigit {
				return Tolerance{}, fmt.Errorf("%q counts %s twice", s, halfDigit)
			}
			t.halfDigit = true
			continue
		}
		digits, percent := strings.CutSuffix(term, "%")
		v, err := decimal(digits)
		if err != nil || v < 0 {
			return Tolerance{}, fmt.Errorf("%q: %q is none of %s, a number of zero or more, a percentage", s, term, halfDigit)
		}
		if percent {
			t.share += v / 100
		} else {
			t.absolute += v
		}
	}
	return t, nil
}

// String gives the tolerance as the table writes it.
func (t Tolerance) String() string { return t.text }

// of gives the tolerance of the figure want, where printed is the text that the
// half digit is taken from.
func (t Tolerance) of(want float64, printed string) (float64, error) {
	sum := t.absolute + t.share*math.Abs(want)
	if t.halfDigit {
		half, err := HalfDigit(printed)
		if err != nil {
			return math.NaN(), err
		}
		sum += half
	}
	return sum, nil
}

// decimal reads a finite decimal number, and nothing else that strconv takes.
func decimal(s string) (float64, error) {
	v, err := strconv.ParseFloat(s, 64)
	if err != nil || math.IsNaN(v) || math.IsInf(v, 0) || strings.ContainsAny(s, "xX_") {
		return math.NaN(), fmt.Errorf("%q is not a decimal number", s)
	}
	return v, nil
}

// HalfDigit gives half a unit in the last printed digit of a decimal number:
// 0.05 for "1.0", 0.5 for "60", 0.005 for "+0.39".
func HalfDigit(printed string) (float64, error) {
	if _, err := decimal(printed); err != nil {
		return math.NaN(), err
	}
	mantissa, exponent, hasExponent := strings.Cut(strings.ToLower(printed), "e")
	power := 0
	if hasExponent {
		p, err := strconv.Atoi(exponent)
		if err != nil {
			return math.NaN(), fmt.Errorf("%q has no whole exponent", printed)
		}
		power = p
	}
	_, decimals, _ := strings.Cut(mantissa, ".")
	// Written and read back, so that the result is the nearest float64 to the
	// decimal value, as the limits in the tables are.
	return strconv.ParseFloat(fmt.Sprintf("5e%d", power-len(decimals)-1), 64)
}
