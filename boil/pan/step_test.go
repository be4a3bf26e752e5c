package pan

import (
	"math"
	"testing"
)

// The nodes of Dormand and Prince: where along the step the stages lie.
var stageNodes = [7]float64{0, 1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1, 1}

// The coefficients obey what makes the method one of order 5 with an estimate of
// order 4 and an extension of order 4, each condition to rounding (E. Hairer, S. P.
// Norsett and G. Wanner, Solving Ordinary Differential Equations I, II.2 and
// II.6). A digit that is wrong breaks the sum it stands in.
func TestOrderConditions(t *testing.T) {
	holds := func(what string, got, want float64) {
		t.Helper()
		if !(math.Abs(got-want) <= 1e-14) {
			t.Errorf("%s: %v, want %v", what, got, want)
		}
	}
	for i, row := range stageWeights {
		sum := 0.0
		for _, a := range row {
			sum += a
		}
		holds("a row adds up to its node", sum, stageNodes[i])
	}
	b := append(stageWeights[6][:], 0) // the last stage is that of the next step
	// c^k, and the same through the stages before: sums over all a of a c^k.
	power := func(k int) (v [7]float64) {
		for i, c := range stageNodes {
			v[i] = math.Pow(c, float64(k))
		}
		return v
	}
	through := func(v [7]float64) (u [7]float64) {
		for i, row := range stageWeights {
			for j, a := range row {
				u[i] += a * v[j]
			}
		}
		return u
	}
	times := func(v, u [7]float64) (w [7]float64) {
		for i := range v {
			w[i] = v[i] * u[i]
		}
		return w
	}
	dot := func(w []float64, v [7]float64) (sum float64) {
		for i := range w {
			sum += w[i] * v[i]
		}
		return sum
	}
	c := power(1)
	ac, ac2, ac3 := through(c), through(power(2)), through(power(3))
	for _, tree := range []struct {
		name  string
		of    [7]float64
		want  float64 // of the step
		order int
	}{
		{"1", power(0), 1, 1},
		{"c", c, 1.0 / 2, 2},
		{"c2", power(2), 1.0 / 3, 3},
		{"Ac", ac, 1.0 / 6, 3},
		{"c3", power(3), 1.0 / 4, 4},
		{"cAc", times(c, ac), 1.0 / 8, 4},
		{"Ac2", ac2, 1.0 / 12, 4},
		{"AAc", through(ac), 1.0 / 24, 4},
		{"c4", power(4), 1.0 / 5, 5},
		{"c2Ac", times(power(2), ac), 1.0 / 10, 5},
		{"AcAc", times(ac, ac), 1.0 / 20, 5},
		{"cAc2", times(c, ac2), 1.0 / 15, 5},
		{"cAAc", times(c, through(ac)), 1.0 / 30, 5},
		{"Ac3", ac3, 1.0 / 20, 5},
		{"AcAc", through(times(c, ac)), 1.0 / 40, 5},
		{"AAc2", through(ac2), 1.0 / 60, 5},
		{"AAAc", through(through(ac)), 1.0 / 120, 5},
	} {
		holds("b "+tree.name, dot(b, tree.of), tree.want)
		if tree.order > 4 {
			continue
		}
		holds("error "+tree.name, dot(errorWeights[:], tree.of), 0)
		// Along the step a tree of order q grows as x^q. At an end and at the two
		// slopes there the extension is exact by its form; the middle holds d.
		const x = 0.5
		f := tree.of
		r0 := dot(b, f)
		r1 := f[0] - r0
		r2 := r0 - f[6] - r1
		r3 := dot(denseWeights[:], f)
		holds("between "+tree.name, x*(r0+(1-x)*(r1+x*(r2+(1-x)*r3))), tree.want*math.Pow(x, float64(tree.order)))
	}
}

// The extension of the code is that of the weights: a step along a polynomial of
// degree 4 is exact everywhere.
func TestBetweenIsExact(t *testing.T) {
	s := newStepper(2, func(_ float64, y, dy []float64) { dy[0], dy[1] = 1, 4*y[0]*y[0]*y[0] })
	s.scale[0], s.scale[1] = 1, 1
	const from, h = 0.5, 0.8
	s.y[0], s.y[1] = from, math.Pow(from, 4)
	s.f(0, s.y, s.slope[0])
	taken, e := s.try(h)
	if !(e < 1e-12) {
		t.Errorf("error of %v", e)
	}
	for x := 0.0; x <= 1; x += 0.125 {
		if got, want := taken.between(x)[1], math.Pow(from+x*h, 4); !near(got, want, 1e-13) {
			t.Errorf("at %v: %v, want %v", x, got, want)
		}
	}
}
