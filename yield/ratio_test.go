package yield_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

var (
	inf    = math.Inf(1)
	notNum = math.NaN()
)

// refused checks that an answer is NaN and its error names the function and
// tells the range.
func refused(t *testing.T, what, fn string, got float64, err error) {
	t.Helper()
	var e *units.RangeError
	if !math.IsNaN(got) || !errors.As(err, &e) || !errors.Is(err, units.ErrRange) || e.Func != fn {
		t.Errorf("%s: %v, %v; want NaN and a RangeError of %s", what, got, err, fn)
	}
}

func TestRatioRange(t *testing.T) {
	for _, ok := range [][2]units.Brix{{0.1, 66}, {2, 2}, {66, 66}, {0.1, 0.1}, {85, 85}, {2, 85}} {
		if r, err := yield.Ratio(ok[0], ok[1]); err != nil || !(r >= 1) {
			t.Errorf("Ratio(%v) = %v, %v", ok, r, err)
		}
	}
	for _, bad := range [][2]float64{
		{0.0999, 66}, {0, 66}, {-1, 66}, {66.01, 66}, {2, 85.01}, {2, 0.05},
		{notNum, 66}, {2, notNum}, {inf, 66}, {2, inf}, {-inf, 66}, {2, -inf},
	} {
		r, err := yield.Ratio(units.Brix(bad[0]), units.Brix(bad[1]))
		refused(t, "Ratio", "yield.Ratio", r, err)
	}
}

func TestRuleRange(t *testing.T) {
	for _, sap := range []units.Brix{0.5, 2, 30} {
		if _, err := yield.RuleOf86(sap); err != nil {
			t.Error(err)
		}
	}
	for _, sap := range []float64{0.49, 30.01, 0, -2, notNum, inf, -inf} {
		r, err := yield.RuleOf86(units.Brix(sap))
		refused(t, "RuleOf86", "yield.RuleOf86", r, err)
		off, err := yield.Revised66.ErrorAt(units.Brix(sap))
		refused(t, "ErrorAt", "yield.Rule.ErrorAt", float64(off), err)
	}
	for _, r := range []yield.Rule{0, 6, 255} {
		x, err := r.Ratio(2)
		refused(t, r.String(), "yield.Rule.Ratio", x, err)
		if r.String() != "no rule" || !math.IsNaN(float64(r.Syrup())) {
			t.Errorf("Rule(%d) = %v for %v", r, r, r.Syrup())
		}
		if over, less := r.Constants(); !math.IsNaN(over) || !math.IsNaN(less) {
			t.Errorf("Rule(%d) is made of %v, %v", r, over, less)
		}
	}
}

// Constants and syrups as documented: Jones 1946; Perkins and Isselhardt, read
// second-hand, the offset from memory.
func TestRuleConstants(t *testing.T) {
	for _, tt := range []struct {
		rule       yield.Rule
		over, less float64
		syrup      units.Brix
		text       string
	}{
		{yield.Jones1946, 86, 0, 66.0, "86/X"},
		{yield.Revised66, 87.1, 0, 66.0, "87.1/X"},
		{yield.Revised669, 88.2, 0, 66.9, "88.2/X"},
		{yield.Revised66Less, 87.1, 0.32, 66.0, "87.1/X - 0.32"},
		{yield.Revised669Less, 88.2, 0.32, 66.9, "88.2/X - 0.32"},
	} {
		over, less := tt.rule.Constants()
		near := math.Abs(over-tt.over) < 1e-12 && math.Abs(less-tt.less) < 1e-12 && math.Abs(float64(tt.rule.Syrup()-tt.syrup)) < 1e-12
		if !near || tt.rule.String() != tt.text {
			t.Errorf("%v is %v/X - %v for %v; want %s for %v", tt.rule, over, less, tt.rule.Syrup(), tt.text, tt.syrup)
		}
	}
}

// The documented errors against the exact ratio, computed apart from this
// module.
func TestRuleErrors(t *testing.T) {
	for _, tt := range []struct {
		rule yield.Rule
		sap  units.Brix
		want float64
	}{
		{yield.Jones1946, 2, -0.90}, {yield.Jones1946, 10, 2.27}, {yield.Jones1946, 20, 6.49},
		{yield.Revised669Less, 2, -0.87}, {yield.Revised669Less, 10, -0.69}, {yield.Revised669Less, 20, -0.49},
	} {
		off, err := tt.rule.ErrorAt(tt.sap)
		if err != nil || !(math.Abs(off.Percents()-tt.want) <= 0.005) {
			t.Errorf("%v at %v: %v, %v; want %v", tt.rule, tt.sap, off, err, tt.want)
		}
	}
}

func TestRatioProperties(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 1))
	for range 2000 {
		syrup := units.Brix(1 + 84*rng.Float64())
		sap := 0.1 + (syrup-0.1)*units.Brix(rng.Float64())
		mid := sap + (syrup-sap)*units.Brix(rng.Float64())
		r, err := yield.Ratio(sap, syrup)
		if err != nil {
			t.Fatal(err)
		}
		back, err := yield.BrixFromRatio(r, syrup)
		if err != nil || !(math.Abs(float64(back-sap)) <= 1e-9) {
			t.Errorf("BrixFromRatio(Ratio(%v, %v)) = %v, %v", sap, syrup, back, err)
		}
		// Two steps lose no sugar.
		r1, _ := yield.Ratio(sap, mid)
		r2, _ := yield.Ratio(mid, syrup)
		if !(math.Abs(r1*r2/r-1) <= 1e-12) {
			t.Errorf("%v to %v to %v: %v * %v is not %v", sap, mid, syrup, r1, r2, r)
		}
		if mid > sap && !(r2 <= r) {
			t.Errorf("stronger sap %v needs more than %v", mid, sap)
		}
	}
}

func TestBrixFromRatioRange(t *testing.T) {
	most, err := yield.Ratio(0.1, 66)
	if err != nil {
		t.Fatal(err)
	}
	for _, ratio := range []float64{1, 43, most} {
		if b, err := yield.BrixFromRatio(ratio, 66); err != nil || !(b >= 0.1 && b <= 66) {
			t.Errorf("BrixFromRatio(%v, 66) = %v, %v", ratio, b, err)
		}
	}
	for _, bad := range [][2]float64{{0.999, 66}, {most * 1.001, 66}, {notNum, 66}, {inf, 66}, {-inf, 66}, {43, 0.09}, {43, 85.1}, {43, notNum}, {43, inf}, {43, -inf}} {
		b, err := yield.BrixFromRatio(bad[0], units.Brix(bad[1]))
		refused(t, "BrixFromRatio", "yield.BrixFromRatio", float64(b), err)
	}
}

func TestRatioAllocatesNothing(t *testing.T) {
	if n := testing.AllocsPerRun(100, func() {
		r, _ := yield.Ratio(2, 66.9)
		_, _ = yield.BrixFromRatio(r, 66.9)
		_, _ = yield.RuleOf86(2)
	}); n != 0 {
		t.Errorf("%v allocations", n)
	}
}

func FuzzBrixFromRatio(f *testing.F) {
	f.Add(43.389, 66.0)
	f.Add(1.0, 85.0)
	f.Add(math.Inf(1), 0.1)
	f.Fuzz(func(t *testing.T, ratio, syrup float64) {
		b, err := yield.BrixFromRatio(ratio, units.Brix(syrup))
		if err != nil {
			refused(t, "BrixFromRatio", "yield.BrixFromRatio", float64(b), err)
			return
		}
		back, err := yield.Ratio(b, units.Brix(syrup))
		if err != nil || !(math.Abs(back/ratio-1) <= 1e-8) {
			t.Errorf("Ratio(BrixFromRatio(%v, %v)) = %v, %v", ratio, syrup, back, err)
		}
	})
}

func BenchmarkRatio(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		_, _ = yield.Ratio(2.1, 66.9)
	}
}

func BenchmarkBrixFromRatio(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		_, _ = yield.BrixFromRatio(43.4, 66.9)
	}
}
