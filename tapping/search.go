package tapping

import (
	"math"
	"slices"
	"sort"

	"example.org/sapreckoner/units"
)

// spot is an old hole as the search sees it: its place as a part of a turn, its
// height in m, its year.
type spot struct {
	t, z float64
	year int
}

func spotOf(h OldHole) spot { return spot{turn(h.At), float64(h.Height), h.Year} }

func (s spot) position() Position {
	return Position{units.Angle(s.t) * units.Turn, units.Length(s.z)}
}

// search looks for places on a trunk. Seen at one place round the trunk, every
// rule forbids a stretch of heights, so what is free there is what the
// stretches leave of the reach. Going round, the free heights change only where
// a rule begins or ends to hold, so looking there and at the dropline's fitting
// finds a place if there is one.
type search struct {
	p     Planner
	spots []spot // whose stain is in reach, in order round the trunk
	fresh []spot // those of them that keep Open
	last  []spot // holes of the latest year before the present one, in order
	now   []spot // holes of the present year
	taken []interval
	tries []float64
}

// work copies what matters of the record for the year.
func (p Planner) work(record []OldHole, year int) *search {
	w := &search{p: p}
	latest := math.MinInt
	for _, h := range record {
		if !p.inReach(h.Year, year) {
			continue
		}
		s := spotOf(h)
		w.spots = append(w.spots, s)
		switch {
		case h.Year >= year || h.Year < latest:
		case h.Year > latest:
			latest, w.last = h.Year, append(w.last[:0], s)
		default:
			w.last = append(w.last, s)
		}
	}
	slices.SortStableFunc(w.spots, func(a, b spot) int {
		switch {
		case a.t < b.t:
			return -1
		case a.t > b.t:
			return 1
		}
		return 0
	})
	return w
}

// begin opens a year: its predecessors' holes are the last, stains that have
// grown over are forgotten, and holes are fresh no longer.
func (w *search) begin(year int) {
	if len(w.now) > 0 {
		w.last, w.now = append(w.last[:0], w.now...), w.now[:0]
	}
	w.fresh = w.fresh[:0]
	w.spots = slices.DeleteFunc(w.spots, func(s spot) bool {
		if isFresh(s, year) {
			w.fresh = append(w.fresh, s)
		}
		return !w.p.inReach(s.year, year)
	})
}

// isFresh reports whether a hole keeps Open in the year: it is open, or of the
// year before.
func isFresh(s spot, year int) bool { return s.year >= year-1 }

// closed reports whether a year that found no room is followed by such years
// alone: nothing heals, the trunk stands still, and no hole is fresh.
func (w *search) closed() bool { return w.p.growth == 0 && len(w.fresh) == 0 }

// drill finds the places of a year's holes and takes them: those of the pattern,
// or, where these stand too close together or are too few, the best spread.
func (w *search) drill(year, taps int) []Position {
	spots, fresh := slices.Clone(w.spots), len(w.fresh)
	for i := range taps {
		if !w.place(year, i, taps) {
			break
		}
	}
	var open []spot // of the record
	for _, s := range w.fresh[:fresh] {
		if s.year >= year {
			open = append(open, s)
		}
	}
	girth := float64(w.p.girth(year))
	found, kept := len(w.now) == taps, least(w.now, open, girth)
	if !found || kept < goodSpread*widest(taps, len(open))*girth {
		pattern := slices.Clone(w.now)
		w.spots, w.fresh, w.now = spots, w.fresh[:fresh], w.now[:0]
		best, ok := w.spread(year, taps, open)
		if !ok || found && kept >= goodSpread*least(best, open, girth) {
			best = pattern
		}
		for _, s := range best {
			w.take(s)
		}
	}
	out := make([]Position, len(w.now))
	for i, s := range w.now {
		out[i] = s.position()
	}
	return out
}

// place finds a place for hole i of taps in the year by the pattern and takes it.
func (w *search) place(year, i, taps int) bool {
	start, want, fresh := w.start(i, taps)
	girth := float64(w.p.girth(year))
	step := float64(w.p.keep.Step) / girth
	// The pattern: on round the trunk from last year's hole.
	for k := range int(math.Ceil(1 / step)) {
		if k == 0 && !fresh {
			continue // not over last year's hole
		}
		if s, ok := w.try(year, start+float64(k)*step, want, girth); ok {
			w.take(s)
			return true
		}
	}
	// Everywhere else.
	for _, t := range w.edges(year, girth) {
		if s, ok := w.try(year, t, want, girth); ok {
			w.take(s)
			return true
		}
	}
	return false
}

func (w *search) take(s spot) {
	w.now, w.fresh = append(w.now, s), append(w.fresh, s)
	w.spots = slices.Insert(w.spots, w.from(s.t), s)
}

// start returns where the pattern goes on from and the height it wants: from
// last year's hole of the same number a move up or down, toward the middle of
// the reach, so that moves take turns; without one, an even share of the turn
// from the fitting or the mark, in the middle of the reach.
func (w *search) start(i, taps int) (t, want float64, fresh bool) {
	low, high := w.p.reach.Heights()
	middle := float64(low+high) / 2
	if i >= len(w.last) {
		from := turn(w.p.reach.fitting.At)
		if len(w.now) > 0 {
			from = w.now[0].t
		}
		return from + float64(i)/float64(taps), middle, true
	}
	s, move := w.last[i], float64(w.p.keep.Up)
	if s.z > middle {
		move = -move
	}
	return s.t, s.z + move, false
}

// try returns the free height at the place t that is nearest to the one wanted.
func (w *search) try(year int, t, want, girth float64) (spot, bool) {
	t -= math.Floor(t)
	if t >= 1 {
		t = 0
	}
	reach, ok := w.p.reach.at(t, units.Length(girth))
	if !ok {
		return spot{}, false
	}
	w.taken = w.taken[:0]
	if !w.gather(year, t, girth, reach) {
		return spot{}, false
	}
	z, ok := nearestFree(w.taken, reach, want)
	return spot{t, z, year}, ok
}

// gather collects the stretches that are forbidden at t; false if nothing of
// the reach is left. The few holes that keep Open are all looked at; of the
// others only those that are no further than Side round the trunk.
func (w *search) gather(year int, t, girth float64, reach interval) bool {
	for _, s := range w.fresh {
		if !w.forbid(s, year, t, girth, reach) {
			return false
		}
	}
	around := float64(w.p.keep.Side)/girth + slack
	n := len(w.spots)
	first := w.from(t - around)
	// A window over the mark begins with the last holes of the turn.
	if t-around < 0 {
		first -= n - w.from(t-around+1)
	}
	for k := range n {
		i := first + k
		turns := 0.0
		if i < 0 {
			i, turns = i+n, -1
		} else if i >= n {
			i, turns = i-n, 1
		}
		s := w.spots[i]
		if s.t+turns > t+around {
			break
		}
		if !isFresh(s, year) && !w.forbid(s, year, t, girth, reach) {
			return false
		}
	}
	return true
}

// forbid adds the stretch of one hole; false if nothing of the reach is left.
func (w *search) forbid(s spot, year int, t, girth float64, reach interval) bool {
	f, ok := w.p.forbidden(s, year, t, girth)
	if !ok || f.low >= reach.high || f.high <= reach.low {
		return true
	}
	w.taken = append(w.taken, f)
	return f.low >= reach.low || f.high <= reach.high
}

// from returns the first of the spots in order at the place t or beyond.
func (w *search) from(t float64) int {
	return sort.Search(len(w.spots), func(i int) bool { return w.spots[i].t >= t })
}

// nearestFree returns the height in reach, outside all taken stretches, that is
// nearest to want. It sorts taken, by insertion since there are few.
func nearestFree(taken []interval, reach interval, want float64) (float64, bool) {
	for i := 1; i < len(taken); i++ {
		for k := i; k > 0 && taken[k].low < taken[k-1].low; k-- {
			taken[k], taken[k-1] = taken[k-1], taken[k]
		}
	}
	best, found := 0.0, false
	free := func(low, high float64) {
		if low > high {
			return
		}
		z := min(max(want, low), high)
		if !found || math.Abs(z-want) < math.Abs(best-want) {
			best, found = z, true
		}
	}
	low := reach.low
	for _, s := range taken {
		free(low, min(s.low, reach.high))
		low = max(low, s.high)
	}
	free(low, reach.high)
	return best, found
}

// edges returns the places round the trunk where a rule begins or ends.
func (w *search) edges(year int, girth float64) []float64 {
	w.tries = append(w.tries[:0], turn(w.p.reach.fitting.At))
	side, open := float64(w.p.keep.Side)/girth, float64(w.p.keep.Open)/girth
	for _, s := range w.spots {
		w.tries = append(w.tries, s.t-side, s.t+side)
		if isFresh(s, year) {
			w.tries = append(w.tries, s.t-open, s.t+open)
		}
	}
	return w.tries
}
