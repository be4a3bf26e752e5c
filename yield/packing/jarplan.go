package packing

import (
	"cmp"
	"math"
	"slices"
)

// How finely a plan counts, and how long it is searched.
const (
	packUnit  = 1e-15   // m3, a millionth of a microliter: nothing is rounded up
	packHair  = 1e-9    // of the lot: what is short by less fits all the same
	packSteps = 500_000 // counts tried, a part of a second
	leftPart  = 20      // what is left counts in twentieths of the lot
)

// A jarKind is a size of container in packUnits, and how many there are.
type jarKind struct {
	size int64
	most int
}

// A jarSearch finds, of the plans that leave no jar empty which the rest would
// fill, those that leave the fewest whole twentieths of the lot, of these the ones
// of the fewest jars, and of these the one that leaves least. Without the first, a
// jar of 20.1 L alone would beat two of 20 for a lot of 40; without the coarse
// step, dozens of small jars would beat a few large ones for the last spoonful.
//
// A plan has that property if some kind m is not used up, each smaller one is,
// and the rest is smaller than m. For each m the smaller jars are taken as filled,
// and the counts of the others are tried from the largest jar down, with what no
// better plan can follow cut off: the least that may be left, the fewest jars that
// may still be needed, and the least that so many may leave, all grow as a count of
// large jars falls.
type jarSearch struct {
	kinds  []jarKind // from the largest
	last   int       // of the kinds whose count is open
	counts []int
	hair   int64
	step   int64 // a twentieth of the lot

	best      []int
	bestParts int64 // whole steps that are left
	bestCount int
	bestRest  int64
	steps     int
}

// fewestJars returns how many of each size to fill from a volume in m3, which is a
// lot or what is left of it. Sizes in m3 come in any order; most is how many there
// are of each. When the steps are used up it returns the best that was found.
func fewestJars(volume, lot float64, sizes []float64, most []int) []int {
	order := make([]int, len(sizes))
	whole := make([]int64, len(sizes))
	for i, size := range sizes {
		order[i], whole[i] = i, int64(math.Round(size/packUnit))
	}
	slices.SortStableFunc(order, func(i, j int) int { return cmp.Compare(whole[j], whole[i]) })
	s := &jarSearch{hair: int64(packHair * volume / packUnit), step: max(1, int64(lot/packUnit)/leftPart)}
	for _, i := range order {
		if n := len(s.kinds); n > 0 && s.kinds[n-1].size == whole[i] {
			s.kinds[n-1].most += most[i]
			continue
		}
		s.kinds = append(s.kinds, jarKind{whole[i], most[i]})
	}
	s.run(int64(math.Round(volume/packUnit)) + s.hair)
	// Kinds of one size were one; the first in the list is filled first.
	counts := make([]int, len(sizes))
	k := 0
	for _, i := range order {
		for s.kinds[k].size != whole[i] {
			k++
		}
		counts[i] = min(most[i], s.best[k])
		s.best[k] -= counts[i]
	}
	return counts
}

// run searches a room.
func (s *jarSearch) run(room int64) {
	s.counts, s.best = make([]int, len(s.kinds)), make([]int, len(s.kinds))
	// The largest first leaves no jar empty either: it is what others must beat.
	s.bestRest = room
	for i, k := range s.kinds {
		s.best[i] = k.fit(s.bestRest)
		s.bestCount += s.best[i]
		s.bestRest -= int64(s.best[i]) * k.size
	}
	s.bestParts = s.bestRest / s.step
	count := 0
	for s.last = len(s.kinds) - 1; s.last >= 0; s.last-- {
		s.place(0, room, count)
		k := s.kinds[s.last]
		if k.fit(room) < k.most {
			return // so many do not fit
		}
		s.counts[s.last] = k.most
		count += k.most
		room -= int64(k.most) * k.size
	}
}

// fit returns how many fit into a room.
func (k jarKind) fit(room int64) int { return int(min(int64(k.most), room/k.size)) }

// place tries the counts of kind i and of the smaller ones.
func (s *jarSearch) place(i int, rest int64, count int) {
	if rest < s.kinds[s.last].size {
		if parts := rest / s.step; parts < s.bestParts || parts == s.bestParts &&
			(count < s.bestCount || count == s.bestCount && rest < s.bestRest-s.hair) {
			s.bestParts, s.bestCount, s.bestRest = parts, count, rest
			copy(s.best, s.counts)
		}
		return
	}
	if i > s.last {
		return
	}
	k := s.kinds[i]
	for n := k.fit(rest); n >= 0 && s.steps < packSteps; n-- {
		s.steps++
		left := rest - int64(n)*k.size
		if s.hopeless(i+1, left, count+n) {
			break
		}
		s.counts[i] = n
		s.place(i+1, left, count+n)
	}
	s.counts[i] = 0
}

// hopeless reports whether kinds from i on cannot better the best plan.
func (s *jarSearch) hopeless(i int, rest int64, count int) bool {
	open := s.kinds[i : s.last+1]
	if s.bestParts > 0 {
		if _, ok := fewestFor(open, rest-s.bestParts*s.step+1); ok {
			return false // may leave a step less
		}
	}
	fewest, ok := fewestFor(open, rest-min(s.kinds[s.last].size, (s.bestParts+1)*s.step)+1)
	fewest += count
	if !ok || fewest > s.bestCount {
		return true
	}
	if fewest < s.bestCount {
		return false
	}
	// As many jars as the best plan has: the largest leave least.
	for _, k := range open {
		n := min(s.bestCount-count, k.fit(rest))
		rest -= int64(n) * k.size
		count += n
		if n < k.most && count < s.bestCount {
			return 0 >= s.bestRest-s.hair // the next would take up the rest
		}
	}
	return rest >= s.bestRest-s.hair
}

// fewestFor returns how few jars of the kinds take up a room or more, and whether
// they do.
func fewestFor(kinds []jarKind, room int64) (count int, ok bool) {
	for _, k := range kinds {
		if room <= 0 {
			break
		}
		n := min(int64(k.most), (room+k.size-1)/k.size)
		count += int(n)
		room -= n * k.size
	}
	return count, room <= 0
}
