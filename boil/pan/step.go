package pan

import "math"

// Coefficients of the fifth-order method of Dormand and Prince with its
// fourth-order error estimate and its continuous extension: J. R. Dormand and
// P. J. Prince, Journal of Computational and Applied Mathematics 6 (1980) 19-26;
// the extension as in E. Hairer, S. P. Norsett and G. Wanner, Solving Ordinary
// Differential Equations I, 2nd ed., Springer 1993, DOPRI5 (from memory).
//
// Cites dormand-prince-1980.
var (
	stageWeights = [7][6]float64{
		{},
		{1.0 / 5},
		{3.0 / 40, 9.0 / 40},
		{44.0 / 45, -56.0 / 15, 32.0 / 9},
		{19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
		{9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
		{35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84},
	}
	errorWeights = [7]float64{71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40}
	denseWeights = [7]float64{-12715105075.0 / 11282082432, 0, 87487479700.0 / 32700410799,
		-10690763975.0 / 1880347072, 701980252875.0 / 199316789632, -1453857185.0 / 822651844, 69997945.0 / 29380423}
)

// stageTimes is how far along the step each stage lies.
var stageTimes = [7]float64{0, 1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1, 1}

// stepper takes one error-controlled step at a time.
type stepper struct {
	f     func(after float64, y, dy []float64) // so long after the start of the step
	live  int                                  // so many numbers of the state move
	y     []float64                            // where the step starts
	next  []float64                            // where it ends
	slope [7][]float64                         // the stages; the first is at y, the last at next
	scale []float64                            // the inverse of the error that is allowed of each number
	mid   []float64                            // where between puts its answer
	poly  [][4]float64                         // the state along the step, once dense
	dense bool
}

func newStepper(size int, f func(after float64, y, dy []float64)) *stepper {
	room := make([]float64, 11*size)
	cut := func() []float64 {
		s := room[:size:size]
		room = room[size:]
		return s
	}
	s := &stepper{f: f, live: size, y: cut(), next: cut(), scale: cut(), mid: cut(), poly: make([][4]float64, size)}
	for i := range s.slope {
		s.slope[i] = cut()
	}
	return s
}

// leg is a step that was tried, h long. It is good until the next one is.
type leg struct {
	*stepper
	h     float64
	chain *chain // that has the states along an implicit step; nil along another
}

// try steps by h and returns the step, and its error as a share of the allowed
// one. NaN means that the step went out of the range of the functions.
//
// The stages are written out: half of the time of a simulation goes into them.
func (s *stepper) try(h float64) (leg, float64) {
	s.dense = false
	n := s.live
	y, next, scale := s.y[:n], s.next[:n], s.scale[:n]
	k0, k1, k2, k3, k4, k5, k6 := s.slope[0][:n], s.slope[1][:n], s.slope[2][:n], s.slope[3][:n], s.slope[4][:n], s.slope[5][:n], s.slope[6][:n]
	var w *[6]float64
	var a, b, c, d, e float64
	w = &stageWeights[1]
	a = h * w[0]
	for i := range y {
		next[i] = y[i] + a*k0[i]
	}
	s.stage(1, h)
	w = &stageWeights[2]
	a, b = h*w[0], h*w[1]
	for i := range y {
		next[i] = y[i] + a*k0[i] + b*k1[i]
	}
	s.stage(2, h)
	w = &stageWeights[3]
	a, b, c = h*w[0], h*w[1], h*w[2]
	for i := range y {
		next[i] = y[i] + a*k0[i] + b*k1[i] + c*k2[i]
	}
	s.stage(3, h)
	w = &stageWeights[4]
	a, b, c, d = h*w[0], h*w[1], h*w[2], h*w[3]
	for i := range y {
		next[i] = y[i] + a*k0[i] + b*k1[i] + c*k2[i] + d*k3[i]
	}
	s.stage(4, h)
	w = &stageWeights[5]
	a, b, c, d, e = h*w[0], h*w[1], h*w[2], h*w[3], h*w[4]
	for i := range y {
		next[i] = y[i] + a*k0[i] + b*k1[i] + c*k2[i] + d*k3[i] + e*k4[i]
	}
	s.stage(5, h)
	w = &stageWeights[6]
	a, b, c, d, e = h*w[0], h*w[2], h*w[3], h*w[4], h*w[5]
	for i := range y {
		next[i] = y[i] + a*k0[i] + b*k2[i] + c*k3[i] + d*k4[i] + e*k5[i]
	}
	s.stage(6, h)
	v := &errorWeights
	a, b, c, d, e = h*v[0], h*v[2], h*v[3], h*v[4], h*v[5]
	f, worst, all := h*v[6], 0.0, 0.0
	for i := range y {
		off := math.Abs(a*k0[i]+b*k2[i]+c*k3[i]+d*k4[i]+e*k5[i]+f*k6[i]) * scale[i]
		if off > worst {
			worst = off
		}
		all += off
	}
	if math.IsNaN(all) {
		return leg{s, h, nil}, all
	}
	return leg{s, h, nil}, worst
}

// stage finds the slope of stage k of a step by h.
func (s *stepper) stage(k int, h float64) { s.f(stageTimes[k]*h, s.next, s.slope[k]) }

// factor returns by how much the next step may be longer after one that was off
// by a share e of what is allowed.
func factor(e float64) float64 {
	if !(e >= 0 && e < math.MaxFloat64) {
		return 0.1
	}
	return min(5, max(0.1, 0.9*math.Pow(max(e, 1e-10), -0.2)))
}

// between returns the state at the share x of the step.
// Like the step itself it is y plus a combination of the stages, and conserves
// what they conserve.
func (s leg) between(x float64) []float64 {
	if s.chain != nil {
		s.chain.between(x, s.mid[:s.live])
		return s.mid
	}
	for i := range s.live {
		s.number(x, i)
	}
	return s.mid
}

// number puts one number of the state at the share x of the step where between puts
// all of them.
func (s leg) number(x float64, i int) {
	if s.chain != nil {
		s.mid[i] = s.chain.number(x, i)
		return
	}
	if !s.dense {
		s.prepare()
	}
	r := &s.poly[i]
	s.mid[i] = s.y[i] + x*(r[0]+(1-x)*(r[1]+x*(r[2]+(1-x)*r[3])))
}

// prepare finds the polynomials of the continuous extension.
func (s leg) prepare() {
	k, h := &s.slope, s.h
	d := &denseWeights
	for i, y := range s.y[:s.live] {
		r := &s.poly[i]
		r[0] = s.next[i] - y
		r[1] = h*k[0][i] - r[0]
		r[2] = r[0] - h*k[6][i] - r[1]
		r[3] = h * (d[0]*k[0][i] + d[2]*k[2][i] + d[3]*k[3][i] + d[4]*k[4][i] + d[5]*k[5][i] + d[6]*k[6][i])
	}
	s.dense = true
}

// land moves on to the share x of the step. The slope there is still to be found.
func (s leg) land(x float64) {
	s.between(x)
	s.y, s.mid = s.mid, s.y
}

// accept moves on to the end of the step.
func (s leg) accept() {
	s.y, s.next = s.next, s.y
	s.slope[0], s.slope[6] = s.slope[6], s.slope[0]
}
