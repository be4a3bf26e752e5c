package yield

import "example.org/sapreckoner/units"

// A Recalled is a packing that holds something of a boil or a lot, and its share
// of it by mass.
type Recalled struct {
	Packing Packing
	Share   units.Share
}

// Recall returns what [Books.Affected] does, with the share that the boil or the
// lot has in each packing: times what was packed, it is how much went there.
//
// An unknown name gives nil and a [*TraceError].
func (b *Books) Recall(id string) ([]Recalled, error) {
	const fn = "yield.Books.Recall"
	if !b.holds(id) {
		return nil, &TraceError{Func: fn, ID: id, Err: ErrUnknownID}
	}
	shares := map[string]float64{id: 1}
	var hit []Recalled
	for _, name := range b.order {
		p := b.packings[name]
		if s := b.share(shares, p.Lot); s > 0 {
			hit = append(hit, Recalled{p, units.FractionShare(s)})
		}
	}
	return hit, nil
}

// holds reports whether a boil or a lot is in the books.
func (b *Books) holds(id string) bool {
	if b == nil {
		return false
	}
	_, boil := b.boils[id]
	_, lot := b.lots[id]
	return boil || lot
}

// share returns the share in a lot of what stands in shares as 1, and puts those of
// all lots inside it there. It goes depth first and iterates: a chain of repackings
// may be long.
func (b *Books) share(shares map[string]float64, lot string) float64 {
	stack := []string{lot}
	for len(stack) > 0 {
		id := stack[len(stack)-1]
		if _, done := shares[id]; done {
			stack = stack[:len(stack)-1]
			continue
		}
		sum, total, whole := 0.0, 0.0, true
		for _, p := range b.lots[id].Parts {
			s, done := shares[p.From]
			if !done {
				stack, whole = append(stack, p.From), false
			}
			sum += s * p.Mass.Kilograms()
			total += p.Mass.Kilograms()
		}
		switch {
		case total == 0:
			shares[id] = 0 // a boil, and not the one looked for
		case whole:
			shares[id] = sum / total
		}
	}
	return shares[lot]
}
