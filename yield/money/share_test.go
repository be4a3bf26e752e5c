package money_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"strconv"
	"testing"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
)

func dec(s string) decimal.Decimal { return decimal.RequireFromString(s) }

func weights(ws ...string) []money.Contribution {
	out := make([]money.Contribution, len(ws))
	for i, w := range ws {
		out[i] = money.Contribution{Name: strconv.Itoa(i), Weight: dec(w)}
	}
	return out
}

func TestDivideTies(t *testing.T) {
	for _, tt := range []struct {
		whole  string
		places int32
		among  []money.Contribution
		want   []string
	}{
		{"1.00", 2, weights("1", "1", "1"), []string{"0.34", "0.33", "0.33"}}, // equal: the first in the list
		{"1", 0, weights("1", "3", "1", "3"), []string{"0", "1", "0", "0"}},
		// Remainders 0.5 and 0.5 of the last unit: the greater weight comes first.
		{"2", 0, weights("1", "3"), []string{"0", "2"}},
		{"7", 0, weights("0", "5", "0"), []string{"0", "7", "0"}},
		{"0", 2, weights("1", "2"), []string{"0", "0"}},
		{"0.05", 2, weights("1e-30", "1e30"), []string{"0", "0.05"}},
		{"10", 0, weights("2.5"), []string{"10"}},
	} {
		got, err := money.Divide(dec(tt.whole), tt.places, tt.among)
		if err != nil {
			t.Fatal(err)
		}
		for i, p := range got {
			if !p.Amount.Equal(dec(tt.want[i])) || p.Name != tt.among[i].Name {
				t.Errorf("%s among %v: %v, want %v", tt.whole, tt.among, got, tt.want)
				break
			}
		}
	}
}

func TestDivideRefuses(t *testing.T) {
	one := weights("1")
	for name, try := range map[string]func() ([]money.Portion, error){
		"negative whole":   func() ([]money.Portion, error) { return money.Divide(dec("-0.01"), 2, one) },
		"whole too fine":   func() ([]money.Portion, error) { return money.Divide(dec("0.001"), 2, one) },
		"whole too large":  func() ([]money.Portion, error) { return money.Divide(dec("1e31"), 2, one) },
		"hostile whole":    func() ([]money.Portion, error) { return money.Divide(decimal.New(1, 1_000_000_000), 2, one) },
		"hostile fraction": func() ([]money.Portion, error) { return money.Divide(decimal.New(1, -1_000_000_000), 2, one) },
		"hostile zero":     func() ([]money.Portion, error) { return money.Divide(decimal.New(0, math.MaxInt32), 2, one) },
		"many digits":      func() ([]money.Portion, error) { return money.Divide(dec("1"+string(make300())), 2, one) },
		"hostile weight": func() ([]money.Portion, error) {
			return money.Divide(dec("1"), 2, []money.Contribution{{Weight: decimal.New(1, 1_000_000_000)}})
		},
		"negative weight":        func() ([]money.Portion, error) { return money.Divide(dec("1"), 2, weights("2", "-1")) },
		"nobody":                 func() ([]money.Portion, error) { return money.Divide(dec("1"), 2, nil) },
		"nobody brings anything": func() ([]money.Portion, error) { return money.Divide(dec("1"), 2, weights("0", "0")) },
		"places below":           func() ([]money.Portion, error) { return money.Divide(dec("1"), -1, one) },
		"places above":           func() ([]money.Portion, error) { return money.Divide(dec("1"), 13, one) },
	} {
		if got, err := try(); got != nil || !errors.Is(err, units.ErrRange) {
			t.Errorf("%s: %v, %v", name, got, err)
		}
	}
	var e *money.DecimalError
	if _, err := money.Divide(dec("1"), 0, weights("2", "-1")); !errors.As(err, &e) || e.Arg != "among[1].Weight" || e.Value != "-1" {
		t.Errorf("a negative weight: %v", err)
	}
}

func make300() []byte {
	b := make([]byte, 300)
	for i := range b {
		b[i] = '7'
	}
	return b
}

// Portions add up and stay within a unit of the exact share, whatever the
// weights.
func TestDivideAddsUp(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 9))
	for range 3000 {
		places := int32(rng.IntN(13))
		whole := decimal.New(rng.Int64N(1e12), -rng.Int32N(places+1))
		among := make([]money.Contribution, 1+rng.IntN(12))
		total := decimal.Zero
		for i := range among {
			among[i].Weight = decimal.New(rng.Int64N(1000), rng.Int32N(40)-25)
			if rng.IntN(4) == 0 {
				among[i].Weight = among[0].Weight // ties
			}
			total = total.Add(among[i].Weight)
		}
		if total.IsZero() {
			continue
		}
		got, err := money.Divide(whole, places, among)
		if err != nil {
			t.Fatal(err)
		}
		sum, unit := decimal.Zero, decimal.New(1, -places)
		for i, p := range got {
			sum = sum.Add(p.Amount)
			off := p.Amount.Mul(total).Sub(whole.Mul(among[i].Weight)).Abs()
			if off.GreaterThanOrEqual(unit.Mul(total)) {
				t.Errorf("portion %d of %v among %v is off by %v", i, whole, among, off)
			}
			if p.Amount.IsNegative() || !p.Amount.Truncate(places).Equal(p.Amount) {
				t.Errorf("portion %v", p.Amount)
			}
			if among[i].Weight.IsZero() && !p.Amount.IsZero() {
				t.Errorf("who brought nothing gets %v", p.Amount)
			}
		}
		if !sum.Equal(whole) {
			t.Errorf("%v among %v adds up to %v", whole, among, sum)
		}
	}
}

func TestContributions(t *testing.T) {
	for _, kg := range []float64{0, 12.34567, 1e7} {
		if c, err := money.BySugar("a", units.Kilograms(kg)); err != nil || !c.Weight.Equal(decimal.NewFromFloat(kg).Round(4)) {
			t.Errorf("BySugar(%v) = %v, %v", kg, c, err)
		}
	}
	for _, kg := range []float64{-1e-9, 1.1e7, notNum, inf, -inf} {
		if c, err := money.BySugar("a", units.Kilograms(kg)); !errors.Is(err, units.ErrRange) || c.Name != "" {
			t.Errorf("BySugar(%v) = %v, %v", kg, c, err)
		}
	}
	for _, n := range []int{0, 1, 1e7} {
		if c, err := money.ByTaps("a", n); err != nil || c.Weight.IntPart() != int64(n) {
			t.Errorf("ByTaps(%v) = %v, %v", n, c, err)
		}
	}
	for _, n := range []int{-1, 1e7 + 1} {
		if _, err := money.ByTaps("a", n); !errors.Is(err, units.ErrRange) {
			t.Errorf("ByTaps(%v): %v", n, err)
		}
	}
	if c, err := money.ByHours("a", 90*time.Minute); err != nil || !c.Weight.Equal(dec("1.5")) {
		t.Errorf("ByHours = %v, %v", c, err)
	}
	if c, err := money.ByHours("a", 20*time.Minute); err != nil || !c.Weight.Equal(dec("0.3333")) {
		t.Errorf("20 minutes = %v, %v", c, err)
	}
	if _, err := money.ByHours("a", -time.Second); !errors.Is(err, units.ErrRange) {
		t.Errorf("ByHours: %v", err)
	}
}

func TestDivideJars(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 5))
	sizes := []units.Volume{units.USGallon, units.USQuart, units.USPint, units.Liters(0.25), 8 * units.USFluidOunce}
	for range 500 {
		jars := make([]money.Jars, 1+rng.IntN(5))
		for k := range jars {
			jars[k] = money.Jars{Label: sizes[rng.IntN(len(sizes))], Count: rng.IntN(30)}
		}
		among := make([]money.Contribution, 1+rng.IntN(6))
		total := 0.0
		for i := range among {
			w := rng.Int64N(50)
			if i == 0 {
				w++
			}
			among[i].Weight = decimal.NewFromInt(w)
			total += float64(w)
		}
		got, err := money.DivideJars(jars, among)
		if err != nil {
			t.Fatal(err)
		}
		volume, largest := 0.0, 0.0
		for k, j := range jars {
			n := 0
			for _, b := range got {
				n += b.Counts[k]
			}
			if n != j.Count {
				t.Fatalf("%d of %d jars of size %d given out", n, j.Count, k)
			}
			volume += float64(j.Count) * j.Label.Liters()
			largest = max(largest, j.Label.Liters())
		}
		// Nobody gets a jar unless owed the most, so nobody is over by more
		// than the largest jar.
		for i, b := range got {
			v := 0.0
			for k, n := range b.Counts {
				v += float64(n) * jars[k].Label.Liters()
			}
			if due := volume * among[i].Weight.InexactFloat64() / total; v > due+largest+1e-9 {
				t.Errorf("%v L against a due of %v", v, due)
			}
		}
	}
	pint := units.USPint
	// Equal claims: the greater weight first, then the first in the list.
	for _, tt := range []struct {
		count int
		among []money.Contribution
		want  []int
	}{
		{1, weights("1", "1", "1"), []int{1, 0, 0}},
		{2, weights("1", "1", "1"), []int{1, 1, 0}},
		{4, weights("1", "1", "1"), []int{2, 1, 1}},
		{5, weights("0", "1", "0"), []int{0, 5, 0}},
		{2, weights("1", "3"), []int{0, 2}}, // owed 0.5 and 1.5, then 0.5 and 0.5
	} {
		got, err := money.DivideJars([]money.Jars{{Label: pint, Count: tt.count}}, tt.among)
		if err != nil {
			t.Fatal(err)
		}
		for i, b := range got {
			if b.Counts[0] != tt.want[i] {
				t.Errorf("%d jars among %v: %v, want %v", tt.count, tt.among, got, tt.want)
				break
			}
		}
	}
	for name, jars := range map[string][]money.Jars{
		"no jars":   nil,
		"no label":  {{Label: 0, Count: 1}},
		"NaN":       {{Label: units.Volume(notNum), Count: 1}},
		"infinite":  {{Label: units.Volume(inf), Count: 1}},
		"negative":  {{Label: pint, Count: -1}},
		"too many":  {{Label: pint, Count: 1_000_001}},
		"in all":    {{Label: pint, Count: 900_000}, {Label: pint, Count: 200_000}},
		"too large": {{Label: units.Liters(10_000.1), Count: 1}},
	} {
		if got, err := money.DivideJars(jars, weights("1")); got != nil || !errors.Is(err, units.ErrRange) {
			t.Errorf("%s: %v, %v", name, got, err)
		}
	}
	if got, err := money.DivideJars([]money.Jars{{Label: pint, Count: 1}}, nil); got != nil || !errors.Is(err, units.ErrRange) {
		t.Errorf("nobody: %v, %v", got, err)
	}
}

func FuzzDivide(f *testing.F) {
	f.Add("12.40", int32(2), "1", "2", "3")
	f.Add("1e9999", int32(0), "1", "1e-30", "0")
	f.Add("100", int32(2), "0.1", "0.1", "0.1")
	f.Fuzz(func(t *testing.T, whole string, places int32, a, b, c string) {
		w, err := decimal.NewFromString(whole)
		if err != nil {
			return
		}
		var among []money.Contribution
		for _, s := range []string{a, b, c} {
			d, err := decimal.NewFromString(s)
			if err != nil {
				return
			}
			among = append(among, money.Contribution{Weight: d})
		}
		got, err := money.Divide(w, places, among)
		if err != nil {
			return
		}
		if sum := decimal.Sum(got[0].Amount, got[1].Amount, got[2].Amount); !sum.Equal(w) {
			t.Errorf("%v among %v adds up to %v", w, among, sum)
		}
	})
}

func BenchmarkDivide(b *testing.B) {
	b.ReportAllocs()
	among := weights("11.0472", "13.7809", "9.2301")
	whole := dec("12.40")
	for b.Loop() {
		_, _ = money.Divide(whole, 2, among)
	}
}

func BenchmarkDivideJars(b *testing.B) {
	b.ReportAllocs()
	among := weights("11.0472", "13.7809", "9.2301")
	jars := []money.Jars{{Label: units.USQuart, Count: 30}, {Label: units.USPint, Count: 40}}
	for b.Loop() {
		_, _ = money.DivideJars(jars, among)
	}
}
