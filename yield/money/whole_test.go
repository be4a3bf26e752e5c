package money_test

import (
	"math/big"
	"math/rand/v2"
	"strconv"
	"testing"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
)

// paysByFractions is what a delivery pays, in fractions of whole numbers and apart from
// the decimals of the library: gallons times price to a multiple of the cent, halves up.
func paysByFractions(gallons, price, cent decimal.Decimal) *big.Rat {
	n := new(big.Rat).Mul(gallons.Rat(), price.Rat())
	n.Quo(n, cent.Rat()).Add(n, big.NewRat(1, 2))
	whole := new(big.Int).Div(n.Num(), n.Denom()) // floor, since nothing is negative
	return new(big.Rat).Mul(new(big.Rat).SetInt(whole), cent.Rat())
}

// agreesByFractions holds a statement against that, line by line and in its sums.
func agreesByFractions(t *testing.T, o money.Offer, list []money.Delivery) {
	t.Helper()
	s, err := o.Statement(list)
	if err != nil {
		t.Fatal(err)
	}
	amount, gallons, payments := new(big.Rat), new(big.Rat), map[string]*big.Rat{}
	for i, l := range s.Lines {
		if !l.Bought {
			continue
		}
		price, err := o.PerUSGallon(l.Sap)
		if err != nil || !price.Equal(l.PerUSGallon) {
			t.Fatalf("line %d: %v a gallon alone, %v on the statement, %v", i, price, l.PerUSGallon, err)
		}
		want := paysByFractions(list[i].USGallons, price, o.Cent)
		if l.Amount.Rat().Cmp(want) != 0 {
			t.Errorf("line %d pays %v, by fractions %s, for %v at %v", i, l.Amount, want.FloatString(12), l.USGallons, price)
		}
		if payments[l.Seller] == nil {
			payments[l.Seller] = new(big.Rat)
		}
		payments[l.Seller].Add(payments[l.Seller], want)
		amount.Add(amount, want)
		gallons.Add(gallons, l.USGallons.Rat())
	}
	for _, p := range s.Payments {
		if want := payments[p.Seller]; want == nil && !p.Amount.IsZero() || want != nil && p.Amount.Rat().Cmp(want) != 0 {
			t.Errorf("%s is paid %v", p.Seller, p.Amount)
		}
	}
	if s.Amount.Rat().Cmp(amount) != 0 || s.USGallons.Rat().Cmp(gallons) != 0 {
		t.Errorf("%v for %v, by fractions %s for %s", s.Amount, s.USGallons, amount.FloatString(12), gallons.FloatString(12))
	}
}

// A season of random deliveries agrees with fractions to the last cent: volumes to
// the hundredth and finer, some of more digits than a whole number of 64 bits holds,
// steps at which half of a cent is common, and amounts too long to be added as one.
func TestStatementByFractions(t *testing.T) {
	rng := rand.New(rand.NewPCG(20, 500))
	long := dec("0.12345678901234567890123")
	for _, steps := range [][3]string{ // price of a pound, step of prices, cent
		{"2.50", "0.0001", "0.01"}, {"2.50", "0.05", "0.01"}, {"3.333333333", "1e-9", "0.05"}, {"4", "0.25", "1"},
		{"1000000000", "0.0001", "1e-9"}, {"0.01", "100", "25"}, {"2.50", "0.000000000000000000001e15", "0.01000"},
	} {
		for _, o := range []money.Offer{byRule(), byBalance()} {
			o.SyrupPerPound, o.PriceStep, o.Cent, o.MinBrix = dec(steps[0]), dec(steps[1]), dec(steps[2]), 1.5
			list := make([]money.Delivery, 400)
			for i := range list {
				list[i] = money.Delivery{Seller: strconv.Itoa(rng.IntN(12)), Sap: units.Brix(rng.IntN(300)+100) / 100,
					USGallons: decimal.New(rng.Int64N(1_000_000), -int32(rng.IntN(7)))}
				switch rng.IntN(12) {
				case 0:
					list[i].USGallons = list[i].USGallons.Mul(long)
				case 1:
					list[i].USGallons = decimal.New(rng.Int64N(11), 6)
				case 2:
					list[i].USGallons = dec("10000000")
				case 3:
					list[i].Sap = units.Brix(1 + 4*rng.Float64())
				}
			}
			agreesByFractions(t, o, list)
		}
	}
}

// Half of a cent goes up, by hand: at 0.25 a gallon 0.02 gal are 0.005 and pay 0.01,
// 0.0199 gal are 0.004975 and pay nothing; 0.06 gal are 0.015 and pay 0.02.
func TestHalfCentsByHand(t *testing.T) {
	o := byRule()
	o.PriceStep, o.SyrupPerPound = dec("0.25"), dec("2") // 2 Brix: 0.5 x 2 x 11/43 = 0.2558
	s, err := o.Statement([]money.Delivery{{USGallons: dec("0.02"), Sap: 2}, {USGallons: dec("0.0199"), Sap: 2}, {USGallons: dec("0.06"), Sap: 2}})
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []string{"0.01", "0.00", "0.02"} {
		if got := s.Lines[i].Amount.StringFixed(2); got != want || s.Lines[i].PerUSGallon.String() != "0.25" {
			t.Errorf("%v at %v pays %s, not %s", s.Lines[i].USGallons, s.Lines[i].PerUSGallon, got, want)
		}
	}
	if s.Amount.StringFixed(2) != "0.03" {
		t.Error(s.Amount)
	}
}

// A reading on half of a hundredth counts by its decimal digits, not by the binary
// fraction below them: 1.005 is stored as 1.00499999999999989 and counts as 1.01.
func TestSlipByDigits(t *testing.T) {
	o := byRule()
	for i := range 3000 {
		text := strconv.FormatFloat(float64(i)/100+0.005, 'f', 3, 64) // the digits i.xx5
		sap, err := strconv.ParseFloat(text, 64)
		if err != nil {
			t.Fatal(err)
		}
		if sap < 0.505 || sap > 29.99 {
			continue
		}
		half, err1 := o.PerUSGallon(units.Brix(sap))
		up, err2 := o.PerUSGallon(units.Brix(i+1) / 100)
		if err1 != nil || err2 != nil || !half.Equal(up) {
			t.Errorf("%s Brix: %v, and %v a half above: %v, %v", text, half, up, err1, err2)
		}
	}
}

func FuzzStatement(f *testing.F) {
	f.Add(uint64(123), uint64(5), uint8(2), uint8(4), uint64(2500), uint16(210))
	f.Add(uint64(1)<<62, uint64(25), uint8(18), uint8(0), uint64(999_999_999_999), uint16(3000))
	f.Fuzz(func(t *testing.T, volume, cent uint64, places, centPlaces uint8, price uint64, hundredths uint16) {
		gallons := decimal.NewFromUint64(volume).Shift(-int32(places % 31))
		o := byBalance()
		o.Cent = decimal.NewFromUint64(cent).Shift(-int32(centPlaces % 20))
		o.SyrupPerPound = decimal.NewFromUint64(price).Shift(-3)
		list := []money.Delivery{{USGallons: gallons, Sap: units.Brix(hundredths) / 100}, {USGallons: gallons, Sap: 2}}
		if _, err := o.Statement(list); err == nil {
			agreesByFractions(t, o, list)
		}
	})
}

// BenchmarkStatement prices 100,000 deliveries of forty sellers.
func BenchmarkStatement(b *testing.B) {
	list := make([]money.Delivery, 100_000)
	for i := range list {
		list[i] = money.Delivery{Seller: strconv.Itoa(i % 40), USGallons: decimal.New(int64(1000+i), -2), Sap: units.Brix(100+i%300) / 100}
	}
	o := byBalance()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := o.Statement(list); err != nil {
			b.Fatal(err)
		}
	}
	b.ReportMetric(float64(len(list))*float64(b.N)/b.Elapsed().Seconds(), "rows/s")
}
