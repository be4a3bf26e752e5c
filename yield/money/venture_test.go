package money_test

import (
	"errors"
	"testing"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
)

// Straight lines by hand; whatever is spread adds up to what was paid.
func TestStraightLine(t *testing.T) {
	for _, tt := range []struct {
		paid  string
		years int
		want  []string
	}{
		{"100", 3, []string{"33.34", "33.33", "33.33"}},
		{"0.02", 3, []string{"0.01", "0.01", "0"}},
		{"240", 1, []string{"240"}},
		{"0", 2, []string{"0", "0"}},
	} {
		got, err := money.StraightLine(dec(tt.paid), tt.years, cent)
		if err != nil || len(got) != len(tt.want) {
			t.Fatalf("%v, %v", got, err)
		}
		sum := decimal.Zero
		for i, p := range got {
			sum = sum.Add(p)
			if !p.Equal(dec(tt.want[i])) {
				t.Errorf("%s over %d: %v", tt.paid, tt.years, got)
			}
		}
		if !sum.Equal(dec(tt.paid)) {
			t.Errorf("%v are not %s", got, tt.paid)
		}
	}
	for name, try := range map[string]func() ([]decimal.Decimal, error){
		"negative":  func() ([]decimal.Decimal, error) { return money.StraightLine(dec("-1"), 3, cent) },
		"no years":  func() ([]decimal.Decimal, error) { return money.StraightLine(dec("1"), 0, cent) },
		"ages":      func() ([]decimal.Decimal, error) { return money.StraightLine(dec("1"), 101, cent) },
		"half cent": func() ([]decimal.Decimal, error) { return money.StraightLine(dec("0.005"), 3, cent) },
		"no cent":   func() ([]decimal.Decimal, error) { return money.StraightLine(dec("1"), 3, decimal.Zero) },
	} {
		if got, err := try(); !errors.Is(err, units.ErrRange) || got != nil {
			t.Errorf("%s: %v, %v", name, got, err)
		}
	}
}

// By hand: 600 of hours and 150 of costs are 750, 62.50 for each of 12 gallons and
// 7.8125 a pint; 150/8/12 is 1.5625. At 60 a gallon 2.5 cover 150 and 12.5 cover
// 750; 12 bring 720, 570 more than the costs, 14.25 in each of 40 hours.
func TestVenture(t *testing.T) {
	v := money.Venture{
		Costs:     []money.Cost{{Item: "jars", Amount: dec("100")}, {Item: "pan, this year", Amount: dec("50")}},
		USGallons: dec("12"), Hours: dec("40"), Wage: dec("15"), Price: dec("60"), Step: cent,
	}
	r, err := v.Reckon()
	if err != nil {
		t.Fatal(err)
	}
	for name, tt := range map[string]struct{ got, want string }{
		"costs": {r.Costs.String(), "150"}, "wages": {r.Wages.String(), "600"}, "gallon": {r.PerUSGallon.String(), "12.5"},
		"pint": {r.PerUSPint.String(), "1.56"}, "gallon with wages": {r.PerUSGallonWithWages.String(), "62.5"},
		"pint with wages": {r.PerUSPintWithWages.String(), "7.81"}, "break-even": {r.BreakEven.Decimal.String(), "2.5"},
		"with wages": {r.BreakEvenWithWages.Decimal.String(), "12.5"}, "left": {r.Left.Decimal.String(), "570"}, "hourly": {r.Hourly.Decimal.String(), "14.25"},
	} {
		if !dec(tt.got).Equal(dec(tt.want)) {
			t.Errorf("%s: %s, not %s", name, tt.got, tt.want)
		}
	}
	// Break-even is rounded up: 2.50 gallons at 59.99 do not cover 150. A loss is one:
	// 12 at 10 are 30 short, 0.75 an hour.
	v.Price = dec("59.99")
	if r, err = v.Reckon(); err != nil || !r.BreakEven.Decimal.Equal(dec("2.51")) {
		t.Errorf("%v, %v", r, err)
	}
	v.Price = dec("10")
	if r, err = v.Reckon(); err != nil || !r.Left.Decimal.Equal(dec("-30")) || !r.Hourly.Decimal.Equal(dec("-0.75")) {
		t.Errorf("%v, %v", r, err)
	}
	v.Hours = decimal.Zero
	if r, err = v.Reckon(); err != nil || r.Hourly.Valid || !r.Left.Valid {
		t.Errorf("%v, %v", r, err)
	}
	v.Price = decimal.Zero
	if r, err = v.Reckon(); err != nil || r.BreakEven.Valid || r.BreakEvenWithWages.Valid || r.Left.Valid {
		t.Errorf("%v, %v", r, err)
	}
	for arg, change := range map[string]func(v *money.Venture){
		"Venture.Costs":           func(v *money.Venture) { v.Costs = nil },
		"Venture.Costs[0].Amount": func(v *money.Venture) { v.Costs = []money.Cost{{Amount: dec("-1")}} },
		"Venture.USGallons":       func(v *money.Venture) { v.USGallons = decimal.Zero },
		"Venture.Hours":           func(v *money.Venture) { v.Hours = dec("-1") },
		"Venture.Wage":            func(v *money.Venture) { v.Wage = decimal.New(1, 1<<30) },
		"Venture.Price":           func(v *money.Venture) { v.Price = dec("-0.01") },
		"Venture.Step":            func(v *money.Venture) { v.Step = decimal.Zero },
	} {
		bad := v
		change(&bad)
		_, err := bad.Reckon()
		var out *units.RangeError
		var exact *money.DecimalError
		if !(errors.As(err, &out) && out.Arg == arg || errors.As(err, &exact) && exact.Arg == arg) {
			t.Errorf("%s: %v", arg, err)
		}
	}
}
