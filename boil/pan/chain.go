package pan

import "math"

// mostOrder is the highest order of backward differentiation that is stable enough.
const mostOrder = 5

// harmonic holds 1 + 1/2 + ... + 1/k.
//
// Where liquid passes a part of the pan faster than the pan as a whole changes, an
// explicit step may be no longer than the liquid stays there, or the steps grow
// unstable. Then they are taken by backward differentiation, which is stable:
// the state at the end of a step is that in which the slope agrees with the
// differences to the states before,
//
//	sum over j to the order k of (the j-th backward difference)/j = h slope
//
// with the method of orders 1 to 5, differences of even steps, and their change
// of length and order as in L. F. Shampine and M. W. Reichelt, SIAM Journal on
// Scientific Computing 18 (1997) 1-22 (from memory).
//
// Cites shampine-reichelt-1997.
var harmonic = [mostOrder + 1]float64{0, 1, 3.0 / 2, 11.0 / 6, 25.0 / 12, 137.0 / 60}

// chain is the state as backward differences of even steps.
type chain struct {
	order int // of the next step; 0 while the steps are explicit
	took  int // of the last one
	h     float64
	even  int                      // steps since the length changed
	turn  float64                  // by how much the next step is to be longer
	diff  [mostOrder + 3][]float64 // those of the end of the last step, from the state itself on
	d     []float64                // what the end of a step is off from where the differences led
	psi   []float64                // the part of the equation that the differences tell
	move  []float64                // by how much a round moves the end
	stiff int                      // explicit steps in succession that a part hardly stood
}

// learn takes the end of a step into the differences, and decides on the next one.
func (c *chain) learn(s *simulation) {
	k, n := c.order, s.live
	d, next, after := c.d[:n], c.diff[k+1][:n], c.diff[k+2][:n]
	for i := range d {
		after[i], next[i] = d[i]-next[i], d[i]
	}
	for j := k; j >= 0; j-- {
		row, above := c.diff[j][:n], c.diff[j+1][:n]
		for i := range row {
			row[i] += above[i]
		}
	}
	c.turn = 1
	if c.even++; c.even <= k {
		return
	}
	best, order := 0.0, k
	for q := max(1, k-1); q <= min(mostOrder, k+1); q++ {
		e := s.share(c.diff[q+1][:n]) / float64(q+1)
		if by := math.Pow(max(e, 1e-10), -1/float64(q+1)); by > best {
			best, order = by, q
		}
	}
	// Small changes are not worth their cost.
	c.even = 0
	if by := min(10, 0.9*best); order != k || by > 1.1 || by < 0.9 {
		c.order, c.turn = order, by
	}
}

// stretch makes the next step longer by a factor: the same polynomial through other
// states.
func (c *chain) stretch(by float64, live int) {
	if by == 1 {
		return
	}
	k := c.order
	var to [mostOrder + 1][mostOrder + 1]float64
	old, even := steps(k, by), steps(k, 1)
	for i := range k + 1 {
		for j := range k + 1 {
			for m := range k + 1 {
				to[i][j] += old[i][m] * even[m][j]
			}
		}
	}
	var row [mostOrder + 1][]float64
	for j := range k + 1 {
		row[j] = c.diff[j][:live]
	}
	for i := range live { // the state itself stays
		var d [mostOrder + 1]float64
		for m := 1; m <= k; m++ {
			x := row[m][i]
			for j := 1; j <= k; j++ {
				d[j] += to[m][j] * x
			}
		}
		for j := 1; j <= k; j++ {
			row[j][i] = d[j]
		}
	}
	c.h *= by
	c.even = 0
}

// steps holds the products that a polynomial has as factors of its differences at
// steps of another length.
func steps(k int, by float64) (r [mostOrder + 1][mostOrder + 1]float64) {
	for j := range k + 1 {
		r[0][j] = 1
		for i := 1; i <= k; i++ {
			r[i][j] = r[i-1][j] * (float64(i-1) - by*float64(j)) / float64(i)
		}
	}
	return r
}

// between sets the state at the share x of the last step.
func (c *chain) between(x float64, to []float64) {
	copy(to, c.diff[0])
	p := 1.0
	for j := 1; j <= c.took; j++ {
		p *= (x - 1 + float64(j-1)) / float64(j)
		for i, d := range c.diff[j][:len(to)] {
			to[i] += p * d
		}
	}
}

// number returns a number of the state at the share x of the last step, by the
// polynomial through its end and the states before.
func (c *chain) number(x float64, i int) float64 {
	sum, p := c.diff[0][i], 1.0
	for j := 1; j <= c.took; j++ {
		p *= (x - 1 + float64(j-1)) / float64(j)
		sum += p * c.diff[j][i]
	}
	return sum
}
