package boil

import "math"

// A lineSum gathers weighted points of a straight line. Sums are taken about the
// running mean, so that late times and slow slopes lose no digits.
type lineSum struct {
	n          int
	w, x, y    float64 // weight, mean of x, mean of y
	xx, xy, yy float64 // weighted sums of squares about the means
}

// add takes a point with a weight over 0.
func (s *lineSum) add(x, y, weight float64) {
	s.n++
	s.w += weight
	dx, dy := x-s.x, y-s.y
	s.x += dx * weight / s.w
	s.y += dy * weight / s.w
	s.xx += weight * dx * (x - s.x)
	s.xy += weight * dx * (y - s.y)
	s.yy += weight * dy * (y - s.y)
}

// A line is y = y0 + slope (x - x0) with what its errors hang on.
type line struct {
	x0, y0, slope float64
	w, xx         float64
}

// fit returns the line of least squares. It needs two different x.
func (s *lineSum) fit() line {
	return line{x0: s.x, y0: s.y, slope: s.xy / s.xx, w: s.w, xx: s.xx}
}

// scatter returns the standard deviation of a point of weight one about the
// line; NaN of fewer than three points.
func (s *lineSum) scatter(l line) float64 {
	if s.n < 3 {
		return math.NaN()
	}
	return math.Sqrt(max(s.yy-l.slope*s.xy, 0) / float64(s.n-2))
}

// at returns the line at x.
func (l line) at(x float64) float64 { return l.y0 + l.slope*(x-l.x0) }

// errorAt returns the standard uncertainty of the line at x, where sigma is that
// of a point of weight one.
func (l line) errorAt(x, sigma float64) float64 {
	return sigma * math.Sqrt(1/l.w+(x-l.x0)*(x-l.x0)/l.xx)
}

// slopeError returns the standard uncertainty of the slope.
func (l line) slopeError(sigma float64) float64 { return sigma / math.Sqrt(l.xx) }
