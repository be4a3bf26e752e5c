package boil

import (
	"math"
	"testing"
)

// Four points reckoned by hand: the means are 1.5 and 3, the sums of squares
// xx 5, xy 5 and yy 6, so that the slope is 1 and the squares left are 6 - 5 = 1,
// over two degrees of freedom.
func TestLine(t *testing.T) {
	of := func(weight float64) (lineSum, line) {
		var s lineSum
		for i, y := range []float64{1, 3, 4, 4} {
			s.add(float64(i), y, weight)
		}
		return s, s.fit()
	}
	s, l := of(1)
	sigma := s.scatter(l)
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"slope", l.slope, 1},
		{"height at 0", l.at(0), 1.5},
		{"height at 3", l.at(3), 4.5},
		{"scatter", sigma, math.Sqrt(0.5)},
		{"error of the slope", l.slopeError(sigma), math.Sqrt(0.5 / 5)},
		{"error in the middle", l.errorAt(1.5, sigma), math.Sqrt(0.5 / 4)},
		{"error at 0", l.errorAt(0, sigma), math.Sqrt(0.5 * (1.0/4 + 1.5*1.5/5))},
	} {
		if !near(c.got, c.want, 1e-14) {
			t.Errorf("%s: %v, want %v", c.name, c.got, c.want)
		}
	}
	// Points that weigh four times as much scatter half as far as one of weight one.
	s4, l4 := of(4)
	if !near(s4.scatter(l4), 2*sigma, 1e-14) || !near(l4.errorAt(0, s4.scatter(l4)), l.errorAt(0, sigma), 1e-14) {
		t.Errorf("of weight four: scatter %v, error at 0 %v", s4.scatter(l4), l4.errorAt(0, s4.scatter(l4)))
	}
	// One point of weight two is two points.
	var once, twice lineSum
	once.add(0, 1, 2)
	twice.add(0, 1, 1)
	twice.add(0, 1, 1)
	for _, s := range []*lineSum{&once, &twice} {
		s.add(2, 4, 1)
		s.add(3, 4, 1)
	}
	if a, b := once.fit(), twice.fit(); !near(a.at(0), b.at(0), 1e-14) || !near(a.slope, b.slope, 1e-14) || !near(a.errorAt(1, 1), b.errorAt(1, 1), 1e-14) {
		t.Errorf("a point of weight two: %+v, twice the point: %+v", a, b)
	}
	// Two points leave nothing to scatter, three do.
	var two lineSum
	two.add(0, 1, 1)
	two.add(1, 3, 1)
	if got := two.scatter(two.fit()); !math.IsNaN(got) {
		t.Errorf("two points scatter by %v", got)
	}
	two.add(2, 2, 1) // slope 1/2 about 2; the squares left are 2 - 1/2
	if got := two.scatter(two.fit()); !near(got, math.Sqrt(1.5), 1e-14) {
		t.Errorf("three points scatter by %v", got)
	}
}
