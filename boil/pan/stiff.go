package pan

import "math"

// When to go over from explicit steps to backward differentiation: after so many in
// succession in which a part empties more than once, while little of the whole pan
// passes. Dormand and Prince's method is stable to 3.3 on the real axis, and to
// about half of that for a row of parts, each of which passes on what it is told.
// Implicit steps follow the pan as a whole, and are no longer than what the last
// figure says.
const (
	stiffly = 3
	emptied = 1.3
	little  = 0.08
)

// watch goes over to implicit steps after explicit ones that were kept short by the
// stay of the liquid in a part.
func (s *simulation) watch(h float64) {
	fast, mass := 0.0, 0.0
	for i := range s.n {
		fast = max(fast, s.in[i+1]/s.m[i])
		mass += s.m[i]
	}
	c := &s.chain
	if c.stiff++; !(h*fast > emptied && h*s.in[0] < little*mass) {
		c.stiff = 0
	}
	if c.stiff < stiffly {
		return
	}
	if c.d == nil {
		size := s.size()
		room := make([]float64, (mostOrder+6)*size)
		cut := func() []float64 {
			row := room[:size:size]
			room = room[size:]
			return row
		}
		for j := range c.diff {
			c.diff[j] = cut()
		}
		c.d, c.psi, c.move = cut(), cut(), cut()
	}
	const short = 0.02 // the first step is of order 1
	c.order, c.h, c.even, c.turn = 1, short*h, 0, 1
	for j := range c.diff {
		clear(c.diff[j])
	}
	copy(c.diff[0], s.y)
	for i, slope := range s.slope[0][:s.live] {
		c.diff[1][i] = c.h * slope
	}
}

// implicit takes a step of at most to the time stop, and returns it.
func (s *simulation) implicit(stop float64) (leg, error) {
	c := &s.chain
	c.stretch(c.turn, s.live)
	for tries := 0; ; tries++ {
		if left := min(longestStep, stop-s.now); c.h > left*(1-1e-12) {
			c.stretch(left/c.h, s.live)
			c.h = left
		}
		e := s.solve()
		if e <= 1 {
			break
		}
		if tries == 100 || s.now+c.h/2 <= s.now {
			return leg{}, ErrTooBusy
		}
		c.stretch(max(0.2, min(0.5, 0.9*math.Pow(e, -1/float64(c.order+1)))), s.live)
	}
	c.took = c.order
	taken := leg{s.stepper, c.h, c}
	c.learn(s)
	return taken, nil
}

// solve finds the end of a step, and its error as a share of the allowed one; 2 if
// it was not found.
func (s *simulation) solve() float64 {
	c := &s.chain
	k, n := c.order, s.live
	next, psi, d, move, slope := s.next[:n], c.psi[:n], c.d[:n], c.move[:n], s.slope[6][:n]
	first, second := c.diff[0][:n], c.diff[1][:n]
	for i := range next {
		next[i], psi[i], d[i] = first[i]+second[i], second[i], 0
	}
	for j := 2; j <= k; j++ {
		h, row := harmonic[j], c.diff[j][:n]
		for i := range next {
			next[i] += row[i]
			psi[i] += h * row[i]
		}
	}
	part, inverse := c.h/harmonic[k], 1/harmonic[k]
	const (
		near   = 0.1 // of the error that is allowed
		rounds = 4
	)
	last := math.Inf(1)
	for round := range rounds {
		s.f(c.h, s.next, slope)
		for i := range next {
			move[i] = part*slope[i] - inverse*psi[i] - d[i]
		}
		s.sweep(part, move)
		by := s.share(move)
		switch {
		case by <= near && round > 0:
			return s.share(d) / float64(k+1)
		case !(by < last):
			return 2
		}
		last = by
		for i := range next {
			next[i] += move[i]
			d[i] += move[i]
		}
	}
	return 2
}

// share is the largest of the numbers of a row, as a share of its allowed error, or
// NaN.
func (s *simulation) share(row []float64) (most float64) {
	scale, all := s.scale[:len(row)], 0.0
	for i, e := range row {
		e = math.Abs(e) * scale[i]
		if e > most {
			most = e
		}
		all += e
	}
	if math.IsNaN(all) {
		return all
	}
	return most
}

// sweep solves (1 - part J) x = r for x, in the place of r, where J tells how the
// rates change with the sugar and the heat that the flows carry on, the flows
// being what they are. From the sap's end on every part is told by the one before.
// What r adds up to x does, so that nothing is lost.
func (s *simulation) sweep(part float64, r []float64) {
	n := s.n
	a, lacks := 0.0, 0.0 // change of the liquid that comes in: its sugar, and what it lacks to boil
	for i := range n {
		in, out, m, b := part*s.in[i], part*s.in[i+1], s.m[i], s.w[i]
		sugar, water := r[i], r[s.water(i)]
		comes := in * a
		a = ((1-b)*sugar - b*water + comes) / (m + out)
		r[i], r[s.water(i)] = sugar+comes-out*a, water-comes+out*a
		if s.all {
			continue
		}
		comes = in * lacks
		lacks = 0
		if at := s.lack(i); !s.boils[i] {
			lacks = (r[at] + comes - s.seen.y[at]/m*(sugar+water)) / (m + out)
			r[at] += comes - out*lacks
		}
	}
	r[s.drawnSugar()] += part * s.in[n] * a
	r[s.drawnWater()] -= part * s.in[n] * a
}
