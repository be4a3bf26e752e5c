package main

import (
	"fmt"
	"math/big"
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/units"
)

// A season reckoned in whole numbers agrees to the cent with one in fractions, which
// knows nothing of them: volumes of any unit to nine decimals, on halves of a
// hundredth too, and amounts on half a cent. Strength and price come from the library.
func TestSeasonByFractions(t *testing.T) {
	// In liters a US gallon is 3.785411784 and an imperial one 4.54609.
	per := map[string]*big.Rat{"us_gal": big.NewRat(1, 1), "imp_gal": big.NewRat(4_546_090_000, 3_785_411_784), "l": big.NewRat(1_000_000_000, 3_785_411_784)}
	draw := rand.New(rand.NewPCG(20, 6))
	s := demoSettings(t)
	for unit, gallons := range per {
		var text strings.Builder
		text.WriteString(strings.Replace(header, "us_gal", unit, 1))
		type load struct {
			volume *big.Rat
			read   float64
			cup    int
		}
		loads := map[string][]load{}
		for i := range 2*atOnce + 100 {
			places := []int{0, 1, 2, 3, 3, 9}[draw.IntN(6)]
			volume := strconv.FormatFloat(100+100*draw.Float64(), 'f', places, 64)
			if places == 3 {
				volume = volume[:len(volume)-1] + "5"
			}
			who, read, cup := fmt.Sprint("Lane ", i%7), 1.3+float64(draw.IntN(14))/10, 34+draw.IntN(20)
			fmt.Fprintf(&text, "2026-03-%02d,%s,%s,%.1f,%d\n", 1+i%28, who, volume, read, cup)
			v, ok := new(big.Rat).SetString(volume)
			if !ok {
				t.Fatal(volume)
			}
			loads[who] = append(loads[who], load{v.Mul(v, gallons), read, cup})
		}
		f := &file{name: "f"}
		if err := f.begin(strings.NewReader(text.String())); err != nil {
			t.Fatal(err)
		}
		a := newAccount(s, f)
		if err := a.run(); err != nil && !strings.HasPrefix(err.Error(), "nothing is paid yet") {
			t.Fatal(err)
		}
		if err := a.settle(); err != nil { // whatever is to be looked at again
			t.Fatal(err)
		}
		all := new(big.Rat)
		for _, b := range a.settled.Balances {
			want, delivered, sugar := new(big.Rat), new(big.Rat), new(big.Rat)
			for _, l := range loads[b.Payee] {
				m, err := s.hydrometer.Measure(units.Brix(number(t, fmt.Sprintf("%.1f", l.read))), units.Fahrenheit(float64(l.cup)), s.doubt)
				if err != nil {
					t.Fatal(err)
				}
				strength := decimal.NewFromFloat(float64(m.Brix)).Round(2)
				volume, _ := new(big.Rat).SetString(l.volume.FloatString(2)) // halves away from zero
				delivered.Add(delivered, volume)
				sugar.Add(sugar, new(big.Rat).Mul(volume, strength.Rat()))
				if strength.LessThan(decimal.NewFromFloat(1.5)) {
					continue
				}
				price, err := s.offer(s.prices[0]).PerUSGallon(units.Brix(strength.InexactFloat64()))
				if err != nil {
					t.Fatal(err)
				}
				pay, _ := new(big.Rat).SetString(volume.Mul(volume, price.Rat()).FloatString(2))
				want.Add(want, pay)
			}
			seller := a.of(b.Payee)
			if mean := sugar.Quo(sugar, delivered).FloatString(2); b.Earned.Rat().Cmp(want) != 0 || seller.gallons.decimal().Rat().Cmp(delivered) != 0 || seller.mean().StringFixed(2) != mean {
				t.Errorf("%s, %s: %s for %s at %s, by fractions %s for %s at %s", unit, b.Payee, b.Earned, seller.gallons, seller.mean(), want.FloatString(2), delivered.FloatString(2), mean)
			}
			all.Add(all, want)
		}
		if a.amount.decimal().Rat().Cmp(all) != 0 || len(loads) != len(a.settled.Balances) {
			t.Errorf("%s: %s in all, by fractions %s", unit, a.amount.decimal(), all.FloatString(2))
		}
	}
}

// A plain number is what the pattern says, and the digits that are written.
func FuzzPlain(f *testing.F) {
	pattern := regexp.MustCompile(`^[+-]?[0-9]{1,9}(\.[0-9]{1,9})?$`)
	for _, text := range []string{"2.1", "-0.50", "+7", ".5", "5.", "1e3", "", "-", "999999999.999999999", "1234567890", "1.1234567890", "1.2.3", " 3 ", "٣", "--1"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		p, err := plainOf(text)
		trimmed := strings.TrimSpace(text)
		if pattern.MatchString(trimmed) != (err == nil) {
			t.Fatalf("%q: %v", text, err)
		}
		if err == nil && !p.decimal().Equal(decimal.RequireFromString(trimmed)) {
			t.Errorf("%q is %s", text, p.decimal())
		}
	})
}

// Hundredths are what decimals make of a number, on halves by the digits of it: by
// hand, 1.005 is stored as 1.00499999999999989 and is 1.01.
func FuzzHundredths(f *testing.F) {
	for _, x := range []float64{1.005, 2.675, 0, 0.005, 0.0049999, 12345678.125, 1e11, 9e15, 0.1 + 0.2, -1.005} {
		f.Add(x)
	}
	f.Fuzz(func(t *testing.T, x float64) {
		if !(x > -1e16 && x < 1e16) {
			return
		}
		h, want := hundredthsOf(x), decimal.NewFromFloat(x).Round(2)
		if !h.decimal().Equal(want) || h.fixed() != want.StringFixed(2) && !want.IsZero() {
			t.Errorf("%v is %s, written %s, not %s", x, h, h.fixed(), want)
		}
	})
}

// Amounts that are too long for a whole number of cents are added all the same.
func TestLongSums(t *testing.T) {
	var s sum
	want := decimal.Zero
	for _, text := range []string{"0.01", "46000000000000000.05", "92233720368547758.07", "-0.5", "3", "123456789012345678901234567890.25"} {
		d := decimal.RequireFromString(text)
		for range 300 {
			s.add(d)
			want = want.Add(d)
		}
	}
	for range 300 { // seventeen digits, the longest that are added as a whole number
		d := decimal.New(99999999999999999, -2)
		s.add(d)
		want = want.Add(d)
	}
	if !s.decimal().Equal(want) {
		t.Errorf("%s, not %s", s.decimal(), want)
	}
}

// What is kept of readings has a bound, and what is read again after it gives the same:
// of 17,000 readings, all of which differ, twice over, the halves agree.
func TestStrengthsAreBounded(t *testing.T) {
	const many = mostStrengths + 1000
	var text strings.Builder
	text.WriteString(header)
	for _, who := range []string{"North lane", "Creek lot"} {
		for i := range many {
			fmt.Fprintf(&text, "2026-03-09,%s,100,2.%05d,40\n", who, i)
		}
	}
	f := &file{name: "f"}
	if err := f.begin(strings.NewReader(text.String())); err != nil {
		t.Fatal(err)
	}
	a := newAccount(demoSettings(t), f)
	if err := a.run(); err != nil {
		t.Fatal(err)
	}
	b := a.settled.Balances
	if len(a.strengths) > mostStrengths || len(b) != 2 || !b[0].Earned.Equal(b[1].Earned) || !b[0].Earned.IsPositive() {
		t.Errorf("%d kept, %+v", len(a.strengths), b)
	}
}
