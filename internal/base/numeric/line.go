package numeric

import "math"

// A LineSum gathers weighted points of a straight line. Sums are taken about the
// running mean, so that late times and slow slopes lose no digits.
type LineSum struct {
	n          int
	w, x, y    float64 // weight, mean of x, mean of y
	xx, xy, yy float64 // weighted sums of squares about the means
}

// Add takes a point with a weight over 0.
func (s *LineSum) Add(x, y, weight float64) {
	s.n++
	s.w += weight
	dx, dy := x-s.x, y-s.y
	s.x += dx * weight / s.w
	s.y += dy * weight / s.w
	s.xx += weight * dx * (x - s.x)
	s.xy += weight * dx * (y - s.y)
	s.yy += weight * dy * (y - s.y)
}

// A Line is y = Y0 + Slope (x - X0) with what its errors hang on.
type Line struct {
	X0, Y0, Slope float64
	W, xx         float64
}

// Fit returns the line of least squares. It needs two different x.
func (s *LineSum) Fit() Line {
	return Line{X0: s.x, Y0: s.y, Slope: s.xy / s.xx, W: s.w, xx: s.xx}
}

// Scatter returns the standard deviation of a point of weight one about the
// line; NaN of fewer than three points.
func (s *LineSum) Scatter(l Line) float64 {
	if s.n < 3 {
		return math.NaN()
	}
	return math.Sqrt(max(s.yy-l.Slope*s.xy, 0) / float64(s.n-2))
}

// At returns the line at x.
func (l Line) At(x float64) float64 { return l.Y0 + l.Slope*(x-l.X0) }

// ErrorAt returns the standard uncertainty of the line at x, where sigma is that
// of a point of weight one.
func (l Line) ErrorAt(x, sigma float64) float64 {
	return sigma * math.Sqrt(1/l.W+(x-l.X0)*(x-l.X0)/l.xx)
}

// SlopeError returns the standard uncertainty of the slope.
func (l Line) SlopeError(sigma float64) float64 { return sigma / math.Sqrt(l.xx) }
