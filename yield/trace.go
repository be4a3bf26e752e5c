package yield

import (
	"cmp"
	"slices"
	"time"

	"example.org/sapreckoner/units"
)

// An Origin is a boil that is in a packed jar, and its share of it by mass.
type Origin struct {
	Boil  Boil
	Share units.Share
}

// A Trace is what a packed jar comes from.
type Trace struct {
	Packing Packing
	Lots    []string    // the lot packed and all lots in it, in alphabetical order
	Boils   []Origin    // in order of day and name; shares add up to 100 percent
	Days    []time.Time // days of boiling, each once
}

// Trace returns what the jars of a packing come from.
//
// An unknown packing gives the zero Trace and a [*TraceError].
func (b *Books) Trace(packing string) (Trace, error) {
	const fn = "yield.Books.Trace"
	if b == nil {
		return Trace{}, &TraceError{Func: fn, ID: packing, Err: ErrUnknownID}
	}
	p, known := b.packings[packing]
	if !known {
		return Trace{}, &TraceError{Func: fn, ID: packing, Err: ErrUnknownID}
	}
	t := Trace{Packing: p}
	shares := b.inside(p.Lot)
	for id, s := range shares {
		if boil, ok := b.boils[id]; ok {
			t.Boils = append(t.Boils, Origin{boil, units.FractionShare(s)})
		} else {
			t.Lots = append(t.Lots, id)
		}
	}
	slices.Sort(t.Lots)
	slices.SortFunc(t.Boils, func(x, y Origin) int {
		return cmp.Or(x.Boil.Day.Compare(y.Boil.Day), cmp.Compare(x.Boil.ID, y.Boil.ID))
	})
	for _, o := range t.Boils {
		if n := len(t.Days); n == 0 || !sameDay(t.Days[n-1], o.Boil.Day) {
			t.Days = append(t.Days, o.Boil.Day)
		}
	}
	return t, nil
}

// sameDay reports whether two times carry the same date.
func sameDay(a, b time.Time) bool {
	ay, am, ad := a.Date()
	by, bm, bd := b.Date()
	return ay == by && am == bm && ad == bd
}

// inside returns, for every boil and lot inside a lot, its share of it.
//
// Lots are worked through in an order in which none comes before a lot that it is
// part of, so that each is opened once however many paths lead to it.
func (b *Books) inside(lot string) map[string]float64 {
	// Depth first, iterative: a chain of repackings may be long.
	var order []string
	state := map[string]int{lot: 0} // next part to visit
	stack := []string{lot}
	for len(stack) > 0 {
		id := stack[len(stack)-1]
		parts := b.lots[id].Parts
		if state[id] == len(parts) {
			order = append(order, id)
			stack = stack[:len(stack)-1]
			continue
		}
		next := parts[state[id]].From
		state[id]++
		if _, seen := state[next]; !seen {
			state[next] = 0
			stack = append(stack, next)
		}
	}
	shares := map[string]float64{lot: 1}
	for _, id := range slices.Backward(order) {
		total := 0.0
		for _, p := range b.lots[id].Parts {
			total += p.Mass.Kilograms()
		}
		for _, p := range b.lots[id].Parts {
			shares[p.From] += shares[id] * p.Mass.Kilograms() / total
		}
	}
	return shares
}

// Affected returns the packings, in the order in which they were given, that hold
// anything of a boil or a lot: which jars to look for if something was wrong with
// it.
//
// An unknown name gives nil and a [*TraceError].
func (b *Books) Affected(id string) ([]Packing, error) {
	const fn = "yield.Books.Affected"
	if !b.holds(id) {
		return nil, &TraceError{Func: fn, ID: id, Err: ErrUnknownID}
	}
	uses := map[string][]string{} // lots made of a boil or a lot
	for _, l := range b.lots {
		for _, p := range l.Parts {
			uses[p.From] = append(uses[p.From], l.ID)
		}
	}
	holds := map[string]bool{id: true}
	for reached := []string{id}; len(reached) > 0; {
		next := reached[len(reached)-1]
		reached = reached[:len(reached)-1]
		for _, user := range uses[next] {
			if !holds[user] {
				holds[user] = true
				reached = append(reached, user)
			}
		}
	}
	var hit []Packing
	for _, p := range b.order {
		if holds[b.packings[p].Lot] {
			hit = append(hit, b.packings[p])
		}
	}
	return hit, nil
}
