package numeric

import (
	"math"
	"testing"
)

// Four points reckoned by hand: the means are 1.5 and 3, the sums of squares
// xx 5, xy 5 and yy 6, so that the slope is 1 and the squares left are 6 - 5 = 1,
// over two degrees of freedom.
func TestLine(t *testing.T) {
	of := func(weight float64) (LineSum, Line) {
		var s LineSum
		for i, y := range []float64{1, 3, 4, 4} {
			s.Add(float64(i), y, weight)
		}
		return s, s.Fit()
	}
	s, l := of(1)
	sigma := s.Scatter(l)
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"slope", l.Slope, 1},
		{"height at 0", l.At(0), 1.5},
		{"height at 3", l.At(3), 4.5},
		{"scatter", sigma, math.Sqrt(0.5)},
		{"error of the slope", l.SlopeError(sigma), math.Sqrt(0.5 / 5)},
		{"error in the middle", l.ErrorAt(1.5, sigma), math.Sqrt(0.5 / 4)},
		{"error at 0", l.ErrorAt(0, sigma), math.Sqrt(0.5 * (1.0/4 + 1.5*1.5/5))},
	} {
		if !near(c.got, c.want, 1e-14) {
			t.Errorf("%s: %v, want %v", c.name, c.got, c.want)
		}
	}
	// Points that weigh four times as much scatter half as far as one of weight one.
	s4, l4 := of(4)
	if !near(s4.Scatter(l4), 2*sigma, 1e-14) || !near(l4.ErrorAt(0, s4.Scatter(l4)), l.ErrorAt(0, sigma), 1e-14) {
		t.Errorf("of weight four: scatter %v, error at 0 %v", s4.Scatter(l4), l4.ErrorAt(0, s4.Scatter(l4)))
	}
	// A tenth of the heights scatters a tenth as far, and points on a line not at all.
	var tenth, straight LineSum
	for i, y := range []float64{0.1, 0.3, 0.4, 0.4} {
		tenth.Add(float64(i), y, 1)
		straight.Add(float64(i), 2*float64(i), 1)
	}
	if got := tenth.Scatter(tenth.Fit()); !near(got, sigma/10, 1e-13) {
		t.Errorf("a tenth as high: scatter %v, want %v", got, sigma/10)
	}
	if got := straight.Scatter(straight.Fit()); !(got >= 0 && got < 1e-7) {
		t.Errorf("points on a line scatter by %v", got)
	}
	// One point of weight two is two points.
	var once, twice LineSum
	once.Add(0, 1, 2)
	twice.Add(0, 1, 1)
	twice.Add(0, 1, 1)
	for _, s := range []*LineSum{&once, &twice} {
		s.Add(2, 4, 1)
		s.Add(3, 4, 1)
	}
	if a, b := once.Fit(), twice.Fit(); !near(a.At(0), b.At(0), 1e-14) || !near(a.Slope, b.Slope, 1e-14) || !near(a.ErrorAt(1, 1), b.ErrorAt(1, 1), 1e-14) {
		t.Errorf("a point of weight two: %+v, twice the point: %+v", a, b)
	}
	// Two points leave nothing to scatter, three do.
	var two LineSum
	two.Add(0, 1, 1)
	two.Add(1, 3, 1)
	if got := two.Scatter(two.Fit()); !math.IsNaN(got) {
		t.Errorf("two points scatter by %v", got)
	}
	// Nor is what rounding leaves of two points a scatter.
	for i := range 100 {
		var two LineSum
		two.Add(0.1*float64(i), 0.3*float64(i)+0.1, 0.7)
		two.Add(0.7+1.3*float64(i), 1.1*float64(i)-0.9, 1.9)
		if got := two.Scatter(two.Fit()); !math.IsNaN(got) {
			t.Errorf("two points %d scatter by %v", i, got)
		}
	}
	two.Add(2, 2, 1) // slope 1/2 about 2; the squares left are 2 - 1/2
	if got := two.Scatter(two.Fit()); !near(got, math.Sqrt(1.5), 1e-14) {
		t.Errorf("three points scatter by %v", got)
	}
}

// near tells whether a and b agree within a share of b.
func near(a, b, share float64) bool { return math.Abs(a-b) <= share*math.Abs(b) }
