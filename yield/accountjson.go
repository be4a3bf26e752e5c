package yield

import (
	"encoding/json"
	"strconv"

	"example.org/sapreckoner/internal/base/measure"
	"example.org/sapreckoner/internal/base/object"
	"example.org/sapreckoner/units"
)

type accountFields Account

// accountJSON is an account as JSON holds it: what is NaN is null.
type accountJSON struct {
	accountFields
	Ratio, Exact object.Number
}

// MarshalJSON gives an object with the fields by their names here. What is NaN is
// null.
func (a Account) MarshalJSON() ([]byte, error) {
	return json.Marshal(accountJSON{accountFields(a), object.Number(a.Ratio), object.Number(a.Exact)})
}

// UnmarshalJSON reads what MarshalJSON gives. It refuses missing and unknown
// fields; the account is then left alone.
func (a *Account) UnmarshalJSON(b []byte) error {
	var in accountJSON
	if err := object.Whole("yield.Account.UnmarshalJSON", b, &in); err != nil {
		return err
	}
	made := Account(in.accountFields)
	made.Ratio, made.Exact = float64(in.Ratio), float64(in.Exact)
	*a = made
	return nil
}

// String tells the loss with the digits that its limits leave, "lost 28 +/- 12
// lb of 168 +/- 12 lb of sugar".
func (a Account) String() string { return a.Text(units.US) }

// Text tells the loss in pounds, kilograms or both.
func (a Account) Text(in units.System) string {
	one := func(unit units.Mass, symbol string) string {
		limits := float64(a.Uncertainty / unit)
		s := measure.PlusMinus(float64(a.Lost/unit), limits, symbol) + " of "
		if a.SugarInLimits > 0 {
			return s + measure.PlusMinus(float64(a.SugarIn/unit), float64(a.SugarInLimits/unit), symbol)
		}
		return s + a.SugarIn.Text(unit, 0)
	}
	us, metric := one(units.Pound, "lb"), one(units.Kilogram, "kg")
	s := us
	switch in {
	case units.Metric:
		s = metric
	case units.Both:
		s = us + " (" + metric + ")"
	}
	if a.Impossible {
		return "more sugar out than in: lost " + s
	}
	return "lost " + s + " of sugar"
}

const booksParts = "encode the boils, the lots and the packings that they are made of"

// String tells how much the books hold.
func (b *Books) String() string {
	if b == nil || len(b.boils)+len(b.lots)+len(b.packings) == 0 {
		return "no books"
	}
	return count(len(b.boils), "boil") + ", " + count(len(b.lots), "lot") + ", " + count(len(b.packings), "packing")
}

// MarshalJSON refuses: books are made of what can be encoded.
func (b *Books) MarshalJSON() ([]byte, error) {
	return nil, object.Refuse("yield.Books.MarshalJSON", booksParts)
}

// UnmarshalJSON refuses, as MarshalJSON does.
func (b *Books) UnmarshalJSON([]byte) error {
	return object.Refuse("yield.Books.UnmarshalJSON", booksParts)
}

func count(n int, what string) string {
	if n != 1 {
		what += "s"
	}
	return strconv.Itoa(n) + " " + what
}
