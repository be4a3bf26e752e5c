package money

import (
	"github.com/shopspring/decimal"

	"example.org/sapreckoner/internal/base/limit"
)

// pintsToGallon is exact for both gallons.
var pintsToGallon = decimal.NewFromInt(8)

// StraightLine spreads what was paid for a thing that lasts over its years in
// equal parts that add up to it. A cent that does not divide goes to the first
// years.
//
// Range: paid from 0 to 1e9 and a multiple of cent, 1 to 100 years, cent from
// 1e-9 to 1e9. Check value: 100 over 3 years are 33.34, 33.33 and 33.33.
func StraightLine(paid decimal.Decimal, years int, cent decimal.Decimal) ([]decimal.Decimal, error) {
	const fn = "money.StraightLine"
	if err := exactly(fn, "paid", "amount paid", paid, decimal.Zero, maxMoney, "what was paid"); err != nil {
		return nil, err
	}
	if err := limit.In(fn, "years", float64(years), 1, 100, "", "the years that the thing lasts, 1 for what is used up"); err != nil {
		return nil, err
	}
	if err := exactly(fn, "cent", "step of payments", cent, minStep, maxMoney, "0.01 for cents"); err != nil {
		return nil, err
	}
	if !paid.Mod(cent).IsZero() {
		return nil, &DecimalError{Func: fn, Arg: "paid", What: "amount paid", Value: paid.String(), Reason: "it is not a multiple of " + cent.String() + ": round it first"}
	}
	cents, left := paid.DivRound(cent, 0).QuoRem(decimal.NewFromInt(int64(years)), 0)
	parts := make([]decimal.Decimal, years)
	for i := range parts {
		parts[i] = cents
		if decimal.NewFromInt(int64(i)).LessThan(left) {
			parts[i] = cents.Add(one)
		}
		parts[i] = parts[i].Mul(cent)
	}
	return parts, nil
}

// A Venture is a season in money. Price and Hours may be zero where they are not
// known: what needs them is then not valid in the [Result].
type Venture struct {
	Costs     []Cost          // without wages; of what lasts the part of this year
	USGallons decimal.Decimal // of syrup made, 0.001 to 1e7
	Hours     decimal.Decimal // of work, 0 to 1e7
	Wage      decimal.Decimal // what an hour is counted at, 0 to 1e9
	Price     decimal.Decimal // of a US gallon sold, 0 to 1e9
	Step      decimal.Decimal // answers are multiples of it, 0.01 for cents
}

// A Result is what a [Venture] came to.
type Result struct {
	Costs, Wages         decimal.Decimal // sums, exact
	PerUSGallon          decimal.Decimal // without wages: the price that just covers the costs
	PerUSPint            decimal.Decimal
	PerUSGallonWithWages decimal.Decimal
	PerUSPintWithWages   decimal.Decimal
	BreakEven            decimal.NullDecimal // US gallons to sell at Price until the costs are covered, to a hundredth, up
	BreakEvenWithWages   decimal.NullDecimal
	Left                 decimal.NullDecimal // of all syrup sold at Price, without wages; negative is a loss
	Hourly               decimal.NullDecimal // Left by the hour: what the work earned
}

// Reckon returns what the season came to. Costs are taken as they stand: syrup
// unsold saves none of them.
//
// Range: 1 to 100,000 costs from 0 to 1e9, and the fields of [Venture]. Prices
// are rounded to Step, halves up; a loss by the hour is rounded away from zero.
// Prices are the caller's; none is known here.
//
// Check value: 150 of costs, 12 gallons, 40 hours at 15 and a price of 60 are
// 12.50 a gallon and 62.50 with wages; 2.5 gallons cover the costs, and 570 are
// left, 14.25 an hour.
func (v Venture) Reckon() (Result, error) {
	const fn = "money.Venture.Reckon"
	perGallon, err := costPerGallon(fn, "Venture.Costs", "Venture.USGallons", "Venture.Step", v.Costs, v.USGallons, v.Step)
	if err != nil {
		return Result{}, err
	}
	for _, f := range []struct {
		arg, what string
		d, high   decimal.Decimal
		hint      string
	}{
		{"Venture.Hours", "hours of work", v.Hours, maxGallons, "zero if they were not counted"},
		{"Venture.Wage", "wage of an hour", v.Wage, maxMoney, "what an hour is counted at, zero for none"},
		{"Venture.Price", "price of a gallon", v.Price, maxMoney, "zero if none was sold"},
	} {
		if err := exactly(fn, f.arg, f.what, f.d, decimal.Zero, f.high, f.hint); err != nil {
			return Result{}, err
		}
	}
	r := Result{Wages: v.Hours.Mul(v.Wage), PerUSGallon: perGallon}
	for _, c := range v.Costs {
		r.Costs = r.Costs.Add(c.Amount)
	}
	all, pints := r.Costs.Add(r.Wages), v.USGallons.Mul(pintsToGallon)
	r.PerUSPint = toStep(r.Costs, pints, v.Step)
	r.PerUSGallonWithWages = toStep(all, v.USGallons, v.Step)
	r.PerUSPintWithWages = toStep(all, pints, v.Step)
	if v.Price.IsPositive() {
		r.BreakEven = decimal.NewNullDecimal(upTo(r.Costs, v.Price))
		r.BreakEvenWithWages = decimal.NewNullDecimal(upTo(all, v.Price))
		left := v.Price.Mul(v.USGallons).Sub(r.Costs)
		r.Left = decimal.NewNullDecimal(left)
		if v.Hours.IsPositive() {
			r.Hourly = decimal.NewNullDecimal(toStep(left, v.Hours, v.Step))
		}
	}
	return r, nil
}

// upTo returns num/den rounded up to a hundredth; both are not negative.
func upTo(num, den decimal.Decimal) decimal.Decimal {
	q, rest := num.QuoRem(den, 2)
	if rest.IsPositive() {
		q = q.Add(decimal.New(1, -2))
	}
	return q
}
