package money_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"strconv"
	"testing"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/money"
)

// byRule is the worked example of the source.
func byRule() money.Offer {
	return money.Offer{
		SyrupPerPound: dec("2.50"), Share: dec("0.5"),
		Rule: yield.Jones1946, PoundsPerUSGallon: dec("11"),
		PriceStep: dec("0.0001"), Cent: dec("0.01"),
	}
}

// byBalance is the same bargain by the exact balance.
func byBalance() money.Offer {
	o := byRule()
	o.Rule, o.PoundsPerUSGallon, o.Syrup = 0, decimal.Zero, 66.9
	return o
}

func TestOfferLimits(t *testing.T) {
	for name, change := range map[string]func(*money.Offer){
		"zero":              func(o *money.Offer) { *o = money.Offer{} },
		"negative price":    func(o *money.Offer) { o.SyrupPerPound = dec("-1") },
		"great price":       func(o *money.Offer) { o.SyrupPerPound = dec("1000000000.01") },
		"hostile price":     func(o *money.Offer) { o.SyrupPerPound = decimal.New(1, 1_000_000) },
		"share above one":   func(o *money.Offer) { o.Share = dec("1.01") },
		"hostile share":     func(o *money.Offer) { o.Share = decimal.New(1, -1_000_000) },
		"no price step":     func(o *money.Offer) { o.PriceStep = decimal.Zero },
		"negative step":     func(o *money.Offer) { o.PriceStep = dec("-0.01") },
		"no cent":           func(o *money.Offer) { o.Cent = decimal.Zero },
		"unknown rule":      func(o *money.Offer) { o.Rule = 99 },
		"rule, no weight":   func(o *money.Offer) { o.PoundsPerUSGallon = decimal.Zero },
		"rule with a syrup": func(o *money.Offer) { o.Syrup = 66.9 },
		"exact, no syrup":   func(o *money.Offer) { *o = byBalance(); o.Syrup = 0 },
		"exact, thin syrup": func(o *money.Offer) { *o = byBalance(); o.Syrup = 59.9 },
		"exact, NaN syrup":  func(o *money.Offer) { *o = byBalance(); o.Syrup = units.Brix(notNum) },
		"exact with weight": func(o *money.Offer) { *o = byBalance(); o.PoundsPerUSGallon = dec("11") },
		"minimum NaN":       func(o *money.Offer) { o.MinBrix = units.Brix(notNum) },
		"minimum negative":  func(o *money.Offer) { o.MinBrix = -1 },
	} {
		o := byRule()
		change(&o)
		if p, err := o.PerUSGallon(2); !errors.Is(err, units.ErrRange) || !p.IsZero() {
			t.Errorf("%s: %v, %v", name, p, err)
		}
		if s, err := o.Statement([]money.Delivery{{USGallons: dec("1"), Sap: 2}}); !errors.Is(err, units.ErrRange) || s.Lines != nil {
			t.Errorf("%s: %v, %v", name, s, err)
		}
	}
	o := byRule()
	o.MinBrix = 1.5
	for _, sap := range []units.Brix{1.5, 2, 30} {
		if p, err := o.PerUSGallon(sap); err != nil || !p.IsPositive() {
			t.Errorf("%v: %v, %v", sap, p, err)
		}
	}
	for _, sap := range []float64{1.49, 0, -2, 30.1, notNum, inf, -inf} {
		if p, err := o.PerUSGallon(units.Brix(sap)); !errors.Is(err, units.ErrRange) || !p.IsZero() {
			t.Errorf("%v: %v, %v", sap, p, err)
		}
		if p, err := o.PerPoundOfSugar(units.Brix(sap)); !errors.Is(err, units.ErrRange) || !p.IsZero() {
			t.Errorf("%v: %v, %v", sap, p, err)
		}
	}
}

// The pounds of syrup in a gallon count to the ninth decimal: at the greatest
// price a unit is a billionth of a pound. By the balance at 20 C, 2 Brix sap and
// 66.9 Brix syrup weighed in air.
func TestPriceToTheBillionth(t *testing.T) {
	c20 := units.Celsius(20)
	sap, err := density.Solution(2, c20)
	syrup, err2 := density.Solution(66.9, c20)
	if err != nil || err2 != nil {
		t.Fatal(err, err2)
	}
	o := byBalance()
	o.SyrupPerPound, o.Share, o.PriceStep = dec("1000000000"), dec("1"), dec("1")
	got, err := o.PerUSGallon(2)
	want := 1e9 * float64(sap) * 0.02 / (float64(syrup) * 0.669) * density.InAir(syrup).PoundsPerUSGallon()
	if err != nil || !(math.Abs(got.InexactFloat64()-want) <= 0.51) {
		t.Errorf("%v, %v; want %.1f", got, err, want)
	}
}

// What is refused is told as it was given.
func TestOfferTellsWhatWasGiven(t *testing.T) {
	o := byRule()
	o.Syrup = 0.5
	_, err := o.PerUSGallon(2)
	var e *units.RangeError
	if !errors.As(err, &e) || e.Value != 0.5 || e.Low != 0 || e.High != 0 {
		t.Errorf("a rule with a syrup of half a Brix: %v", err)
	}
	for _, sap := range []float64{inf, -inf} {
		if _, err := byRule().PerUSGallon(units.Brix(sap)); !errors.As(err, &e) || e.Value != sap {
			t.Errorf("sap of %v Brix: %v", sap, err)
		}
	}
}

// By the exact balance sugar has one price, whatever the sap.
func TestSugarHasOnePrice(t *testing.T) {
	o := byBalance()
	for b := units.Brix(0.5); b <= 30; b += 0.5 {
		p, err := o.PerPoundOfSugar(b)
		if err != nil || p.Sub(dec("1.8685")).Abs().GreaterThan(dec("0.0001")) { // 1.25/0.669
			t.Errorf("%v: %v, %v", b, p, err)
		}
	}
}

// The price of a gallon follows the float formula to half a step.
func TestPriceFollowsTheRatio(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 2))
	for range 1000 {
		sap := units.Brix(math.Round(50+rng.Float64()*2950) / 100)
		for _, r := range []yield.Rule{yield.Jones1946, yield.Revised66, yield.Revised669, yield.Revised66Less, yield.Revised669Less} {
			o := byRule()
			o.Rule = r
			got, err := o.PerUSGallon(sap)
			ratio, _ := r.Ratio(sap)
			if want := 0.5 * 2.50 * 11 / ratio; err != nil || !(math.Abs(got.InexactFloat64()-want) <= 0.5e-4+1e-9) {
				t.Errorf("%v at %v: %v, %v; want %v", r, sap, got, err, want)
			}
		}
		got, err := byBalance().PerUSGallon(sap)
		ratio, _ := yield.Ratio(sap, 66.9)
		// 11.0759 lb a gallon in air, computed apart from this module.
		if want := 0.5 * 2.50 * 11.0759 / ratio; err != nil || !(math.Abs(got.InexactFloat64()-want) <= 0.5e-4+5e-6*want) {
			t.Errorf("exact at %v: %v, %v; want %v", sap, got, err, want)
		}
	}
}

func TestPrices(t *testing.T) {
	o := byRule()
	table, err := o.Prices(nil, 1.5, 3.0, 0.1)
	if err != nil || len(table) != 16 {
		t.Fatalf("%d prices, %v", len(table), err)
	}
	for i, p := range table {
		if want := 1.5 + 0.1*float64(i); !(math.Abs(float64(p.Sap)-want) < 1e-12) {
			t.Errorf("price %d is for %v, want %v", i, float64(p.Sap), want)
		}
		if direct, _ := o.PerUSGallon(p.Sap); !direct.Equal(p.PerUSGallon) {
			t.Errorf("%v: %v in the table, %v alone", p.Sap, p.PerUSGallon, direct)
		}
	}
	if one, err := o.Prices(table[:0], 2, 2, 1); err != nil || len(one) != 1 {
		t.Errorf("one price: %v, %v", one, err)
	}
	for _, bad := range [][3]float64{{3, 1.5, 0.1}, {1, 2, 0}, {1, 2, 0.009}, {1, 2, -1}, {1, 2, notNum}, {1, 2, inf}, {notNum, 2, 1}, {1, notNum, 1}, {0, 2, 1}, {1, 31, 1}} {
		got, err := o.Prices(nil, units.Brix(bad[0]), units.Brix(bad[1]), units.Brix(bad[2]))
		if got != nil || !errors.Is(err, units.ErrRange) {
			t.Errorf("%v: %v, %v", bad, got, err)
		}
	}
}

// Limits of the Brix, judged as on the slip.
func TestSlipLimits(t *testing.T) {
	for name, tt := range map[string]struct {
		low, high float64
		try       func(b units.Brix) error
	}{
		"price":     {0.5, 30, func(b units.Brix) error { _, err := byRule().PerUSGallon(b); return err }},
		"start":     {0.5, 30, func(b units.Brix) error { _, err := byRule().Prices(nil, b, 30, 1); return err }},
		"end":       {0.5, 30, func(b units.Brix) error { _, err := byRule().Prices(nil, 0.5, b, 1); return err }},
		"statement": {0.01, 30, func(b units.Brix) error { _, err := byRule().Statement([]money.Delivery{{Sap: b}}); return err }},
	} {
		for _, b := range []float64{tt.low, tt.high} {
			if err := tt.try(units.Brix(b)); err != nil {
				t.Errorf("%s, %v: %v", name, b, err)
			}
		}
		for _, b := range []float64{tt.low - 0.006, tt.high + 0.006, 0, -1, 1e300, notNum, inf, -inf} {
			if err := tt.try(units.Brix(b)); !errors.Is(err, units.ErrRange) {
				t.Errorf("%s, %v: %v", name, b, err)
			}
		}
	}
}

func TestStatementAddsUp(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 86))
	for range 300 {
		o := byRule()
		if rng.IntN(2) == 0 {
			o = byBalance()
		}
		o.MinBrix = 1.5
		list := make([]money.Delivery, 1+rng.IntN(40))
		for i := range list {
			list[i] = money.Delivery{
				Slip: strconv.Itoa(i), Seller: strconv.Itoa(rng.IntN(5)),
				USGallons: decimal.New(rng.Int64N(100000), -int32(rng.IntN(4))),
				Sap:       units.Brix(0.5 + 4*rng.Float64()),
			}
		}
		s, err := o.Statement(list)
		if err != nil {
			t.Fatal(err)
		}
		lines, payments, gallons := decimal.Zero, decimal.Zero, decimal.Zero
		for i, l := range s.Lines {
			if l.Slip != list[i].Slip || l.Bought != (math.Round(100*float64(list[i].Sap)) >= 150) || !l.Bought && !l.Amount.IsZero() {
				t.Errorf("line %d: %+v", i, l)
			}
			if exact := l.USGallons.Mul(l.PerUSGallon); l.Bought && l.Amount.Sub(exact).Abs().GreaterThan(dec("0.005")) {
				t.Errorf("line %d pays %v for %v", i, l.Amount, exact)
			}
			if !l.Amount.Equal(l.Amount.Round(2)) {
				t.Errorf("line %d pays %v", i, l.Amount)
			}
			lines = lines.Add(l.Amount)
		}
		for _, p := range s.Payments {
			payments, gallons = payments.Add(p.Amount), gallons.Add(p.USGallons)
		}
		if !lines.Equal(s.Amount) || !payments.Equal(s.Amount) || !gallons.Equal(s.USGallons) {
			t.Errorf("lines %v, payments %v, total %v", lines, payments, s.Amount)
		}
	}
}

func TestStatementRefuses(t *testing.T) {
	good := money.Delivery{USGallons: dec("1"), Sap: 2}
	for name, bad := range map[string]money.Delivery{
		"negative":     {USGallons: dec("-1"), Sap: 2},
		"great":        {USGallons: dec("10000001"), Sap: 2},
		"hostile":      {USGallons: decimal.New(1, 1_000_000), Sap: 2},
		"NaN":          {USGallons: dec("1"), Sap: units.Brix(notNum)},
		"infinite":     {USGallons: dec("1"), Sap: units.Brix(inf)},
		"no reading":   {USGallons: dec("1")},
		"above thirty": {USGallons: dec("1"), Sap: 30.1},
	} {
		s, err := byRule().Statement([]money.Delivery{good, bad})
		if !errors.Is(err, units.ErrRange) || s.Lines != nil {
			t.Errorf("%s: %v, %v", name, s, err)
		}
	}
	// What is thinner than the offer buys is listed, and judged as on the slip.
	o := byRule()
	o.MinBrix = 1.5
	for sap, want := range map[units.Brix]bool{0.3: false, 1.49: false, 1.494: false, 1.495: true, 1.5: true} {
		s, err := o.Statement([]money.Delivery{{USGallons: dec("10"), Sap: sap}})
		if err != nil || s.Lines[0].Bought != want || s.Amount.IsZero() == want {
			t.Errorf("%v: %+v, %v", sap, s, err)
		}
	}
	if s, err := byRule().Statement([]money.Delivery{{USGallons: dec("10"), Sap: 0.3}}); err != nil || s.Lines[0].Bought {
		t.Errorf("0.3 Brix: %+v, %v", s, err)
	}
	if _, err := byRule().Statement(nil); !errors.Is(err, units.ErrRange) {
		t.Errorf("no deliveries: %v", err)
	}
	var e *units.RangeError
	if _, err := byRule().Statement([]money.Delivery{good, {USGallons: dec("1")}}); !errors.As(err, &e) || e.Arg != "deliveries[1].Sap" {
		t.Errorf("the error names %v", err)
	}
}

func BenchmarkPerUSGallon(b *testing.B) {
	b.ReportAllocs()
	o := byBalance()
	for b.Loop() {
		_, _ = o.PerUSGallon(2.1)
	}
}
