package pan

// kernel is the pan as a set of differential equations: the flows between the
// compartments at a moment, in kilograms, seconds, joules, and degrees Celsius.
// Compartments count along the flow, so that the sap comes into the first one
// whatever the direction of the flow is.
//
// The state is one row of numbers, see [kernel.size]: the sugar and the water of
// each compartment, the mass in the feed tank, the running totals of water
// evaporated and of sugar and water drawn, and the heat that each compartment
// lacks to boil, which stands still at nothing once all boil.
// Everything that leaves one number enters another, so that a Runge-Kutta step
// of any length conserves sugar and water.
type kernel struct {
	hot      *hot
	n        int
	q        []float64 // heat of the full fire into each compartment, W
	glow     float64   // what the fire gives of that now: 1 but for coals
	full     []float64 // volume of each when full, m3
	safe     []float64 // volume of each at its safe depth, m3
	rate     float64   // flow through the open valve, m3/s, by volume of hot syrup
	strength float64   // at which it opens, as a mass fraction

	// The regime, which holds until an event.
	boils []bool // whether each compartment boils
	all   bool   // whether all do
	fed   bool   // whether the feed holds the level of the first
	valve valve

	tank stream // what the feed brings

	// The room in which flows lays out what it finds: see flowing.
	w      []float64 // mass fraction of sugar in each compartment
	m      []float64 // mass
	l      []boiling // the liquid at its boiling point
	in     []float64 // flow into each compartment; the last is the draw
	off    []float64 // water evaporating
	spare  []float64 // heat left to boil each with; it goes off the boil at zero
	warm   []float64 // heat that brings a kilogram of its feed to the boil
	demand float64   // the draw that would hold the strength
	richer float64   // by how much the feed of the last is thicker than it, as a mass fraction
}

// stream is a kilogram of liquid on its way into a compartment.
type stream struct {
	w     float64 // mass fraction of sugar
	lack  float64 // heat that it lacks to boil
	point float64 // its boiling point
	heat  float64 // its specific heat there
}

// warm returns the heat that brings it to a boiling point of t.
func (s *stream) warm(t float64) float64 { return s.lack + s.heat*(t-s.point) }

// valve is the state of the draw-off.
type valve uint8

const (
	shut    valve = iota
	open          // between two strengths
	holding       // a thin stream holds the strength
	wide          // a thin stream cannot hold it; the valve is open
)

func newKernel(h *hot, r *Rig) *kernel {
	n := len(r.Compartments)
	room := make([]float64, 8*n+1)
	cut := func(k int) []float64 {
		s := room[:k:k]
		room = room[k:]
		return s
	}
	k := &kernel{
		hot: h, n: n, q: r.fire(), full: cut(n), safe: cut(n),
		rate: float64(r.Draw.Rate), strength: r.Draw.At.Fraction(),
		boils: make([]bool, n), l: make([]boiling, n), glow: 1,
		w: cut(n), m: cut(n), in: cut(n + 1), off: cut(n), spare: cut(n), warm: cut(n),
	}
	for i, c := range r.Compartments {
		k.full[i] = float64(c.Area.Volume(c.Depth))
		k.safe[i] = float64(c.Area.Volume(c.SafeDepth))
	}
	return k
}

// Where things stand in the state of n compartments.
func (k *kernel) water(i int) int { return k.n + i }
func (k *kernel) inTank() int     { return 2 * k.n }
func (k *kernel) steam() int      { return 2*k.n + 1 }
func (k *kernel) drawnSugar() int { return 2*k.n + 2 }
func (k *kernel) drawnWater() int { return 2*k.n + 3 }
func (k *kernel) lack(i int) int  { return 2*k.n + 4 + i }
func (k *kernel) size() int       { return 3*k.n + 4 }

// fraction returns the mass fraction of sugar at place i of state y.
func (k *kernel) fraction(y []float64, i int) float64 { return y[i] / (y[i] + y[k.water(i)]) }

// holds returns the hot volume there.
func (k *kernel) holds(y []float64, i int) float64 {
	m := y[i] + y[k.water(i)]
	if !(m > 0) {
		return 0
	}
	return m * k.hot.at(y[i]/m).volume
}

// cap returns the flow through the open valve, by mass, of the liquid behind it.
func (k *kernel) cap(l *boiling) float64 {
	rate := k.rate
	if rate == 0 {
		rate = k.full[k.n-1] / emptying
	}
	return rate / l.volume
}

// flowing is the pan in a state, with the flows that belong to it. It is good
// until flows are found for another state.
type flowing struct {
	*kernel
	y []float64
}

// flows finds all flows of state y. From the draw-off upward every compartment
// asks the one before for what holds its level: with a the sugar of the feed,
// F the feed, G what flows out, E what evaporates, V the volumes,
//
//	F (a Vsugar + (1-a) Vwater) = G V + E Vwater      the level is held
//	q = F c + E L                                     the fire is shared
//
// where c warms a kilogram of the feed. If E comes out negative the compartment
// is off the boil, which is a regime of its own: E is zero, and the heat goes to
// what the compartment lacks.
func (k *kernel) flows(y []float64) flowing {
	n := k.n
	mass, ls, ws, qs := k.m[:n], k.l[:n], k.w[:n], k.q[:n] // known to be as long, they are not checked again
	sugar, water := y[:n], y[n:][:n]
	for i, s := range sugar {
		m := s + water[i]
		mass[i], ws[i] = m, s/m
		k.hot.set(&ls[i], ws[i])
	}
	ins, offs, spares, warms, boils := k.in[:n], k.off[:n], k.spare[:n], k.warm[:n], k.boils[:n]
	out := 0.0
	if k.valve == open || k.valve == wide {
		out = k.cap(&k.l[n-1])
	}
	k.in[n] = out
	for i := n - 1; i >= 0; i-- {
		l, b, q := &ls[i], ws[i], qs[i]*k.glow
		if i == 0 && !k.fed {
			k.in[0], k.warm[0], k.off[0], k.spare[0] = 0, 0, 0, q
			if k.boils[0] {
				k.off[0] = q / l.latent
			}
			if n == 1 {
				k.demand, k.richer = 0, 0
			}
			break
		}
		a, c := k.tank.w, 0.0
		if i == 0 {
			c = k.tank.warm(l.point)
		} else {
			from := &ls[i-1]
			a, c = ws[i-1], from.heat*(l.point-from.point)
			if !boils[i-1] {
				c += y[k.lack(i-1)] / mass[i-1]
			}
		}
		v := l.waterVolume(b)
		room := a*l.sugarVolume(b) + (1-a)*v
		need := 0.0
		if i == n-1 && k.valve >= holding {
			// The strength holds if F a = G b, and then E = F (1 - a/b). As the
			// feed nears the strength itself there is no such flow any more; the
			// least of the denominator keeps it finite until the valve is wide. Off
			// the boil there is no steam, and nothing flows until it boils again.
			if k.valve == wide || k.boils[i] {
				need = q / l.latent / max(1-a/b+c/l.latent, 1e-6)
			}
			k.richer = a - b
			k.demand = need * a / b
			if k.valve == holding {
				out = k.demand
				k.in[n] = out
			}
		}
		in, off, left := 0.0, 0.0, 0.0
		switch {
		case i == n-1 && k.valve == holding:
			in, off = need, need-out
			left = q - c*(out*l.volume/room)
		case boils[i]:
			// The factors do not wait for the flow out of it. Were it just not to boil,
			// the heat left would be another by a factor over zero.
			each := 1 / (room*l.latent + v*c)
			in = out*(l.volume*l.latent*each) + v*q*each
			left = q - in*c
			off = left / l.latent
		default:
			in = out * (l.volume / room)
			left = q - c*in
		}
		ins[i], offs[i], spares[i], warms[i] = in, off, left, c
		out = in
	}
	return flowing{k, y}
}

// rates sets dy to the rate of change of the state.
func (f flowing) rates(dy []float64) {
	k, y := f.kernel, f.y
	n := k.n
	a := k.tank.w
	steam := 0.0
	ins, outs, ws, offs := k.in[:n], k.in[1:][:n], k.w[:n], k.off[:n]
	sugar, water := dy[:n], dy[n:][:n]
	for i, in := range ins {
		out, b, off := outs[i], ws[i], offs[i]
		flow := in*a - out*b
		sugar[i] = flow
		water[i] = in - out - off - flow
		if !k.all {
			lack := 0.0
			if !k.boils[i] {
				lack = in*k.warm[i] - k.q[i]*k.glow - out*y[k.lack(i)]/k.m[i]
			}
			dy[k.lack(i)] = lack
		}
		steam += off
		a = b
	}
	dy[k.inTank()] = -k.in[0]
	dy[k.steam()] = steam
	dy[k.drawnSugar()] = k.in[n] * a
	dy[k.drawnWater()] = k.in[n] * (1 - a)
}
