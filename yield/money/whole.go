package money

import (
	"math"
	"math/bits"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/units"
)

// What stands here does the common delivery in whole numbers, exactly as decimals
// do it, and leaves to decimals what is longer: a season of a million deliveries is
// priced in a second or two.

// mostDigits are the digits that any whole number of 64 bits holds.
const mostDigits = 18

// tens are the powers of ten up to 10^mostDigits.
var tens = func() (all [mostDigits + 1]uint64) {
	all[0] = 1
	for i := range mostDigits {
		all[i+1] = 10 * all[i]
	}
	return all
}()

// whole returns the coefficient of a decimal that is not negative and short enough.
func whole(d decimal.Decimal) (n uint64, ok bool) {
	if d.Sign() < 0 || d.NumDigits() > mostDigits {
		return 0, false
	}
	return uint64(d.CoefficientInt64()), true
}

// fits reports whether gallons are plainly within the range of a delivery.
func fits(gallons decimal.Decimal) bool {
	const most, places = 10_000_000, mostDigits - 7
	e := gallons.Exponent()
	if e > 0 || e < -places {
		return false
	}
	n, ok := whole(gallons)
	return ok && n <= most*tens[-e]
}

// amount is a volume times a price, rounded to a multiple of cent, halves away from
// zero: what toStep returns.
func amount(gallons, price, cent decimal.Decimal) decimal.Decimal {
	g, ok1 := whole(gallons)
	p, ok2 := whole(price)
	c, ok3 := whole(cent)
	places := int64(cent.Exponent()) - int64(gallons.Exponent()) - int64(price.Exponent())
	if ok1 && ok2 && ok3 && places >= 0 && places <= mostDigits {
		over, step := bits.Mul64(c, tens[places])
		high, low := bits.Mul64(g, p)
		if over == 0 && high < step {
			n, rest := bits.Div64(high, low, step)
			if rest >= step-rest {
				n++
			}
			if high, n = bits.Mul64(n, c); high == 0 && n <= math.MaxInt64 {
				return decimal.New(int64(n), cent.Exponent())
			}
		}
	}
	return toStep(gallons.Mul(price), one, cent)
}

// A tally is a sum that is kept as a whole number while its parts have the same
// places and it is short.
type tally struct {
	n      int64
	places int32 // exponent of n, where n is not zero
	rest   decimal.Decimal
}

func (t *tally) add(d decimal.Decimal) {
	x, ok := whole(d)
	if e := d.Exponent(); ok && (e == t.places || t.n == 0) && t.n <= math.MaxInt64-int64(x) {
		t.n, t.places = t.n+int64(x), e
		return
	}
	t.rest = t.rest.Add(d)
}

func (t *tally) sum() decimal.Decimal {
	if t.n == 0 {
		return t.rest
	}
	return t.rest.Add(decimal.New(t.n, t.places))
}

// slip returns a reading in hundredths of a Brix, halves away from zero, as onSlip
// does it; not ok where it is not plain which hundredth that is.
func slip(sap units.Brix) (hundredths int, ok bool) {
	const clear = 0.499 // what is nearer to a half is left to decimals
	x := float64(sap) * 100
	n := math.Round(x)
	if !(n >= 0 && n <= 100*maxRuleBrix && math.Abs(x-n) < clear) {
		return 0, false
	}
	return int(n), true
}
