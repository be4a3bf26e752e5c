package numeric

import (
	"math"
	"testing"
)

// The arcsine law, 2/pi asin(sqrt x), a straight line and powers in closed form.
func TestBetaClosed(t *testing.T) {
	for x := 0.0005; x < 1; x += 0.0137 {
		for _, tc := range []struct{ a, b, want float64 }{
			{0.5, 0.5, 2 / math.Pi * math.Asin(math.Sqrt(x))},
			{1, 1, x},
			{0.03, 1, math.Pow(x, 0.03)},
			{7, 1, math.Pow(x, 7)},
			{1, 40, -math.Expm1(40 * math.Log1p(-x))},
			{2, 3, x * x * (6 - 8*x + 3*x*x)},
		} {
			if got := BetaBelow(x, tc.a, tc.b); !(math.Abs(got-tc.want) <= 1e-12*tc.want) {
				t.Errorf("%v and %v below %v: %v, want %v", tc.a, tc.b, x, got, tc.want)
			}
		}
	}
}

// With whole parameters it is the chance of a or more of n = a+b-1 throws, each
// with the chance x: a sum of the binomial distribution.
func TestBetaBinomial(t *testing.T) {
	for _, x := range []float64{0.01, 0.2, 0.5, 0.77, 0.99} {
		for _, ab := range [][2]int{{1, 5}, {3, 3}, {10, 4}, {25, 60}, {200, 40}} {
			n, want := ab[0]+ab[1]-1, 0.0
			for k := ab[0]; k <= n; k++ {
				all, _ := math.Lgamma(float64(n) + 1)
				these, _ := math.Lgamma(float64(k) + 1)
				rest, _ := math.Lgamma(float64(n-k) + 1)
				want += math.Exp(all - these - rest + float64(k)*math.Log(x) + float64(n-k)*math.Log1p(-x))
			}
			if got := BetaBelow(x, float64(ab[0]), float64(ab[1])); !(math.Abs(got-want) <= 1e-10) {
				t.Errorf("%v below %v: %v, want %v", ab, x, got, want)
			}
		}
	}
}

// One parameter more takes off a term: I_x(a+1, b) = I_x(a, b) - x^a (1-x)^b/(a B(a, b)).
func TestBetaNext(t *testing.T) {
	for x := 0.003; x < 1; x += 0.031 {
		for a := 0.004; a < 3000; a *= 2.7 {
			for b := 0.05; b < 3000; b *= 3.1 {
				logA, _ := math.Lgamma(a + 1)
				logB, _ := math.Lgamma(b)
				logSum, _ := math.Lgamma(a + b)
				want := BetaBelow(x, a, b) - math.Exp(a*math.Log(x)+b*math.Log1p(-x)+logSum-logA-logB)
				if got := BetaBelow(x, a+1, b); !(math.Abs(got-want) <= 1e-10) {
					t.Errorf("%v and %v below %v: %v, want %v", a+1, b, x, got, want)
				}
			}
		}
	}
}

func TestBetaEdges(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for _, tc := range []struct{ x, a, b, want float64 }{{0, 2, 3, 0}, {-inf, 2, 3, 0}, {1, 2, 3, 1}, {inf, 2, 3, 1}, {1.5, 2, 3, 1}, {-0.5, 2, 3, 0}} {
		if got := BetaBelow(tc.x, tc.a, tc.b); !(math.Abs(got-tc.want) <= 1e-300) {
			t.Errorf("%+v: %v", tc, got)
		}
	}
	for _, bad := range [][3]float64{{nan, 1, 1}, {0.5, 0, 1}, {0.5, 1, -1}, {0.5, 1, 0}, {0.5, nan, 1}, {0.5, 1, nan}} {
		if got := BetaBelow(bad[0], bad[1], bad[2]); !math.IsNaN(got) {
			t.Errorf("%v: %v", bad, got)
		}
	}
}
