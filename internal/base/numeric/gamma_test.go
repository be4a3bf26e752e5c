package numeric

import (
	"math"
	"testing"
)

// The table that every book of statistics prints (from memory): what chi-squared
// passes in 5, and in 1, of 100 cases, to the printed digit.
func TestChiSquaredTable(t *testing.T) {
	for free, row := range map[int][2]float64{
		1: {3.841, 6.635}, 2: {5.991, 9.210}, 3: {7.815, 11.345}, 4: {9.488, 13.277}, 5: {11.070, 15.086},
		10: {18.307, 23.209}, 20: {31.410, 37.566}, 30: {43.773, 50.892}, 100: {124.342, 135.807},
	} {
		for i, chance := range [2]float64{0.05, 0.01} {
			const half = 0.0005
			if less, more := ChiSquaredBeyond(row[i]+half, free), ChiSquaredBeyond(row[i]-half, free); !(less <= chance && more >= chance) {
				t.Errorf("%d degrees, %v: %v to %v, want %v between", free, row[i], less, more, chance)
			}
		}
	}
}

// With two degrees the chance is exp(-x/2), with one erfc(sqrt(x/2)), and two
// more add a term of Poisson's: Q(a+1, h) = Q(a, h) + h^a e^-h/Gamma(a+1).
func TestChiSquaredClosed(t *testing.T) {
	for x := 0.01; x < 1200; x *= 1.3 {
		for free := 1; free <= 1000; free += 1 + free/5 {
			got := ChiSquaredBeyond(x, free)
			if want := math.Exp(-x / 2); free == 2 && !(math.Abs(got-want) <= 1e-12*want) {
				t.Errorf("2 degrees beyond %v: %v, want %v", x, got, want)
			}
			if want := math.Erfc(math.Sqrt(x / 2)); free == 1 && !(math.Abs(got-want) <= 1e-12*want) {
				t.Errorf("1 degree beyond %v: %v, want %v", x, got, want)
			}
			log, _ := math.Lgamma(float64(free)/2 + 1)
			next := got + math.Exp(float64(free)/2*math.Log(x/2)-x/2-log)
			if more := ChiSquaredBeyond(x, free+2); !(math.Abs(more-next) <= 1e-11) || !(got >= 0 && got <= 1) {
				t.Errorf("%d degrees beyond %v: %v, and two more %v, want %v", free, x, got, more, next)
			}
		}
	}
}

func TestChiSquaredEdges(t *testing.T) {
	for _, tc := range []struct {
		x    float64
		free int
		want float64
	}{{0, 3, 1}, {-1, 3, 1}, {math.Inf(-1), 1, 1}, {math.Inf(1), 1, 0}, {1e6, 5, 0}} {
		if got := ChiSquaredBeyond(tc.x, tc.free); !(math.Abs(got-tc.want) <= 1e-300) {
			t.Errorf("%d degrees beyond %v: %v", tc.free, tc.x, got)
		}
	}
	for _, got := range []float64{ChiSquaredBeyond(math.NaN(), 1), ChiSquaredBeyond(1, 0), ChiSquaredBeyond(1, -2)} {
		if !math.IsNaN(got) {
			t.Errorf("%v", got)
		}
	}
}
