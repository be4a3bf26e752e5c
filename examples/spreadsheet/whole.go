package main

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/internal/base/clip"
)

// What is reckoned row by row is a whole number of hundredths, which loses nothing and
// is quick. The bounds of a file keep its sums below 2^63: a million deliveries of ten
// million gallons at 30 Brix are 3e18.

// hundredths are a number that is held to the hundredth: gallons, Brix.
type hundredths int64

func (h hundredths) decimal() decimal.Decimal { return decimal.New(int64(h), -2) }

// float is the nearest number of the machine.
func (h hundredths) float() float64 { return float64(h) / 100 }

// String writes no more digits than there are.
func (h hundredths) String() string { return h.decimal().String() }

// fixed writes both decimals.
func (h hundredths) fixed() string { return string(h.append(nil, 0)) }

// append appends it with both decimals, at the right of a column.
func (h hundredths) append(b []byte, width int) []byte {
	var text [24]byte
	t, n := text[:0], uint64(h)
	if h < 0 {
		t, n = append(t, '-'), -n
	}
	t = strconv.AppendUint(t, n/100, 10)
	t = append(t, '.', byte('0'+n/10%10), byte('0'+n%10))
	return append(pad(b, width-len(t)), t...)
}

// pad appends spaces.
func pad(b []byte, n int) []byte {
	for range n {
		b = append(b, ' ')
	}
	return b
}

// hundredthsOf rounds a finite number, halves away from zero by its decimal digits.
func hundredthsOf(x float64) hundredths {
	const clear, most = 0.499, 1e11 // what is nearer to a half is left to decimals
	if n := math.Round(100 * x); n < most && math.Abs(100*x-n) < clear {
		return hundredths(n)
	}
	return hundredths(decimal.NewFromFloat(x).Round(2).CoefficientInt64())
}

// cents returns an amount that is written in cents, and is short.
func cents(amount decimal.Decimal) (hundredths, bool) {
	if amount.Exponent() != -2 || amount.NumDigits() > 17 {
		return 0, false
	}
	return hundredths(amount.CoefficientInt64()), true
}

// A sum adds amounts up. What is too long for a whole number of cents goes apart.
type sum struct {
	cents hundredths
	long  decimal.Decimal
}

func (s *sum) add(amount decimal.Decimal) {
	const most = math.MaxInt64 / 2
	if n, ok := cents(amount); ok && s.cents <= most && s.cents >= -most {
		s.cents += n
		return
	}
	s.long = s.long.Add(amount)
}

func (s *sum) decimal() decimal.Decimal { return s.long.Add(s.cents.decimal()) }

// A plain number is as it is written: digits, and how many of them stand behind the
// point.
type plain struct {
	n      int64
	places int32
}

func (p plain) decimal() decimal.Decimal { return decimal.New(p.n, -p.places) }

// tens are the powers of ten that places need.
var tens = [...]uint64{1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9}

// plainOf reads digits with a point, and no more of them than anybody needs: nine
// before it and nine behind.
func plainOf(text string) (p plain, err error) {
	const most = 9
	text = strings.TrimSpace(text)
	digits := text
	if text != "" && (text[0] == '+' || text[0] == '-') {
		digits = text[1:]
	}
	before, behind, point := 0, 0, false
	for i := range len(digits) {
		c := digits[i]
		switch {
		case c >= '0' && c <= '9' && point:
			behind++
		case c >= '0' && c <= '9':
			before++
		case c == '.' && !point:
			point = true
			continue
		default:
			before = most + 1
		}
		if before > most || behind > most {
			break
		}
		p.n = 10*p.n + int64(c-'0')
	}
	if before < 1 || before > most || behind > most || point && behind < 1 {
		return plain{}, fmt.Errorf("%q is not a plain number such as 2.1", clip.Text(text))
	}
	if p.places = int32(behind); text[0] == '-' {
		p.n = -p.n
	}
	return p, nil
}

// plainNumber is [plainOf] as a decimal.
func plainNumber(text string) (decimal.Decimal, error) {
	p, err := plainOf(text)
	return p.decimal(), err
}
