package tapping

import (
	"math"
	"slices"
)

// goodSpread is the share of the best least distance between the holes of a year
// that the pattern must keep to be followed.
const goodSpread = 0.8

// turnSlack is a rounding error of places, in turns: on the thickest trunk less
// than slack.
const turnSlack = 1e-12

// spread finds places for so many holes in the year, none yet drilled by the
// plan, whose least distance round the trunk, among each other and from the open
// holes of the record, is as large as it can be; false where there are none.
func (w *search) spread(year, taps int, drilled []spot) ([]spot, bool) {
	girth := float64(w.p.girth(year))
	free := w.freeArcs(year, girth)
	open := make([]float64, len(drilled))
	for i, s := range drilled {
		open[i] = s.t
	}
	low, high := float64(w.p.keep.Open)/girth, widest(taps, len(open))
	best, ok := choose(free, open, taps, low)
	if !ok {
		return nil, false
	}
	for high-low > 1e-6 {
		middle := (low + high) / 2
		if at, ok := choose(free, open, taps, middle); ok {
			best, low = at, middle
		} else {
			high = middle
		}
	}
	out := make([]spot, 0, taps)
	for i, t := range best {
		_, want, _ := w.start(i, taps)
		s, ok := w.try(year, t, want, girth)
		if !ok {
			return nil, false
		}
		out = append(out, s)
	}
	return out, true
}

// widest is the part of a turn that is never bettered: an even share, with the
// open holes as if all in one place.
func widest(taps, open int) float64 { return 1 / float64(taps+min(open, 1)) }

// A freeArc is a stretch of the turn in which a hole finds a height.
type freeArc struct{ from, to float64 }

// freeArcs lists where round the trunk the holes of the record leave a height,
// in order. Between two places where a rule begins or ends the forbidden heights
// stay the same; what a dropline reaches shrinks away from its fitting.
func (w *search) freeArcs(year int, girth float64) []freeArc {
	cuts := w.edges(year, girth)
	if reach := w.p.reach; reach.dropline > 0 {
		cuts = append(cuts, turn(reach.fitting.At)+0.5) // beyond it the fitting is nearer the other way
	}
	for i := range cuts {
		cuts[i] -= math.Floor(cuts[i])
	}
	cuts = append(cuts, 0, 1)
	slices.Sort(cuts)
	cuts = slices.Compact(cuts)
	var free []freeArc
	add := func(a freeArc) {
		if n := len(free); n > 0 && a.from <= free[n-1].to+turnSlack {
			free[n-1].to = max(free[n-1].to, a.to)
			return
		}
		free = append(free, a)
	}
	for i, t := range cuts {
		if _, ok := w.try(year, t, 0, girth); ok {
			add(freeArc{t, t})
		}
		if i+1 < len(cuts) {
			if a, ok := w.freeBetween(year, t, cuts[i+1], girth); ok {
				add(a)
			}
		}
	}
	return free
}

// freeBetween is the free part of the stretch between two cuts.
func (w *search) freeBetween(year int, from, to, girth float64) (a freeArc, ok bool) {
	reach := interval{float64(w.p.reach.low), float64(w.p.reach.high)}
	middle := (from + to) / 2
	w.taken = w.taken[:0]
	if !w.gather(year, middle, girth, reach) {
		return a, false
	}
	lowest, ok := nearestFree(w.taken, reach, reach.low)
	if !ok || w.p.reach.dropline == 0 {
		return freeArc{from, to}, ok
	}
	up, length := lowest-reach.low, float64(w.p.reach.dropline)
	side := math.Sqrt(max(0, length*length-up*up)) / girth
	fitting := turn(w.p.reach.fitting.At)
	if fitting -= math.Round(fitting - middle); fitting < middle {
		to = min(to, fitting+side-turnSlack)
	} else {
		from = max(from, fitting-side+turnSlack)
	}
	return freeArc{from, to}, from <= to
}

// choose finds so many places in the free arcs that lie at least so far apart and
// from the open holes, all parts of a turn. A choice can be turned back until one
// of its places is the beginning of an arc, or an open hole stops it: so it tries
// these for the first and takes for each other the next that is far enough.
func choose(free []freeArc, open []float64, taps int, apart float64) ([]float64, bool) {
	starts := make([]float64, 0, len(free)+len(open))
	for _, a := range free {
		starts = append(starts, a.from)
	}
	for _, o := range open {
		starts = append(starts, o+apart)
	}
	at := make([]float64, 0, taps)
	for _, s := range starts {
		first, ok := nextFree(free, open, s-math.Floor(s), apart)
		if !ok {
			continue
		}
		at = append(at[:0], first)
		for len(at) < taps {
			t, ok := nextFree(free, open, at[len(at)-1]+apart, apart)
			if !ok || t-first > 1-apart+turnSlack {
				break
			}
			at = append(at, t)
		}
		if len(at) == taps {
			return at, true
		}
	}
	return nil, false
}

// nextFree returns the first place from t on that is free and far enough from the
// open holes, within a turn.
func nextFree(free []freeArc, open []float64, t, apart float64) (float64, bool) {
	end := t + 1
	for moved := true; moved && t <= end; {
		moved = false
		next := math.Inf(1)
		for _, a := range free {
			turns := math.Ceil(t - a.to - turnSlack)
			next = min(next, max(t, a.from+turns))
		}
		if next > t {
			t, moved = next, true
		}
		for _, o := range open {
			if d := t - o - math.Round(t-o); math.Abs(d) < apart-turnSlack {
				t, moved = t+apart-d, true
			}
		}
	}
	return t, t <= end
}

// least is the least distance round the trunk of the holes from each other and
// from the open ones.
func least(at, open []spot, girth float64) float64 {
	d := math.Inf(1)
	for i, a := range at {
		for _, b := range at[:i] {
			d = min(d, arc(a.t, b.t, girth))
		}
		for _, b := range open {
			d = min(d, arc(a.t, b.t, girth))
		}
	}
	return d
}
