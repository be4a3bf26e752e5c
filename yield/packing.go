package yield

import (
	"math"
	"slices"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Limits of a plan for packing, and how finely it is searched.
const (
	packCell   = 1e-7    // m3: contents count in tenths of a milliliter
	packWindow = 400_000 // cells searched exhaustively, 40 L
	maxSizes   = 32
	maxParts   = 1000
	maxLot     = 200 // m3: cells fit into 32 bits
)

// Plenty is an OnHand that never runs out.
const Plenty = 1_000_000

// A Supply is a kind of container and how many empty ones are on hand.
type Supply struct {
	Container Container
	OnHand    int // 0 to Plenty
}

// Mix is a kind of container and how many of it make up one set.
type Mix struct {
	Container Container
	Parts     int // 1 to 1000
}

// A PackLine is one kind of container in a plan.
type PackLine struct {
	Container Container
	Filling   Filling // of one container
	Count     int
}

// A PackPlan is a lot divided into containers. Packed and Left add up to the lot.
type PackPlan struct {
	Lines    []PackLine   // in the order in which the containers were given
	Sets     int          // whole sets of a wanted mix
	Packed   units.Volume // at 68 F, margins included
	Left     units.Volume // at 68 F
	LeftMass units.Mass
}

// FewestLeftovers plans which containers to fill from a lot so that the least
// syrup is left, and among such plans the fewest containers.
//
// The lot is packed at its own temperature: filling volumes are for that. A lot
// above 40 L is first packed down into the largest containers on hand, and only
// the rest is searched for the best combination. Contents count in tenths of a
// milliliter, rounded up.
//
// Range: 1 to 32 kinds, each as in [Container.Fill], on hand 0 to [Plenty]; a lot
// to 200 m3. Outside the range the answer is the zero PackPlan and a
// [units.RangeError].
//
// Caution: hot syrup scalds and sticks. Cool filled jars apart from each other:
// packed in a stack they keep hot for hours and the syrup darkens. Above 68 Brix
// crystals are likely from room temperature down (OMAFRA 2013).
func FewestLeftovers(lot sugar.Lot, margin units.Share, supplies ...Supply) (PackPlan, error) {
	const fn = "yield.FewestLeftovers"
	plan, at68, err := newPlan(fn, lot, margin, len(supplies), func(i int) Container { return supplies[i].Container })
	if err != nil {
		return PackPlan{}, err
	}
	onHand := make([]int, len(supplies))
	for i, s := range supplies {
		if err := withinItem(fn, "supplies", i, "OnHand", float64(s.OnHand), 0, Plenty, "", "count the empty containers"); err != nil {
			return PackPlan{}, err
		}
		onHand[i] = s.OnHand
	}
	plan.pack(at68, onHand)
	plan.close(at68, lot.Mass())
	return plan, nil
}

// InMix plans as many whole sets of a wanted mix as the lot fills, and packs the
// rest in the same containers with the fewest leftovers.
//
// Range, errors and cautions: those of [FewestLeftovers], with 1 to 1000 parts of
// each kind.
func InMix(lot sugar.Lot, margin units.Share, mix ...Mix) (PackPlan, error) {
	const fn = "yield.InMix"
	plan, at68, err := newPlan(fn, lot, margin, len(mix), func(i int) Container { return mix[i].Container })
	if err != nil {
		return PackPlan{}, err
	}
	set := 0.0
	for i, m := range mix {
		if err := withinItem(fn, "mix", i, "Parts", float64(m.Parts), 1, maxParts, "", "how many of it make up one set"); err != nil {
			return PackPlan{}, err
		}
		set += float64(m.Parts) * cells(plan.Lines[i].Filling.Content)
	}
	plan.Sets = int(roomFor(at68) / set)
	rest := at68
	onHand := make([]int, len(mix))
	for i, m := range mix {
		plan.Lines[i].Count = plan.Sets * m.Parts
		rest -= float64(plan.Lines[i].Count) * float64(plan.Lines[i].Filling.Content)
		onHand[i] = Plenty
	}
	plan.pack(math.Max(rest, 0), onHand)
	plan.close(at68, lot.Mass())
	return plan, nil
}

// newPlan checks a lot and its containers, and returns a plan with nothing in it
// and the volume of the lot at 68 F in m3.
func newPlan(fn string, lot sugar.Lot, margin units.Share, kinds int, container func(int) Container) (PackPlan, float64, error) {
	if err := within(fn, "kinds of containers", float64(kinds), 1, maxSizes, "", "name at least one container"); err != nil {
		return PackPlan{}, 0, err
	}
	if lot.Empty() {
		return PackPlan{}, 0, withinLiters(fn, "lot", 0, minContainer, maxLot, "there is nothing to pack")
	}
	cool, err := lot.VolumeAt(label())
	if err != nil {
		return PackPlan{}, 0, units.Under(fn, err)
	}
	at68 := cool.CubicMeters()
	if err := withinLiters(fn, "lot", cool, minContainer, maxLot, "check its unit"); err != nil {
		return PackPlan{}, 0, err
	}
	plan := PackPlan{Lines: make([]PackLine, kinds)}
	for i := range kinds {
		c := container(i)
		f, err := c.fill(fn, lot.Brix(), lot.Temperature(), margin)
		if err != nil {
			return PackPlan{}, 0, err
		}
		plan.Lines[i] = PackLine{Container: c, Filling: f}
	}
	return plan, at68, nil
}

// cells returns a content in cells, rounded up. A part in a million of a cell is
// rounding.
func cells(v units.Volume) float64 { return math.Ceil(v.CubicMeters()/packCell - 1e-6) }

// roomFor returns the whole cells in a volume in m3.
func roomFor(v float64) float64 { return math.Floor(v/packCell + 1e-6) }

// pack adds containers for a volume at 68 F to the plan: the largest first down
// to what can be searched, then the best of all combinations.
func (p *PackPlan) pack(volume float64, onHand []int) {
	left := int(roomFor(volume))
	need := make([]int, len(p.Lines))
	order := make([]int, len(p.Lines))
	before := make([]int, len(p.Lines))
	for i, l := range p.Lines {
		need[i], order[i], before[i] = int(cells(l.Filling.Content)), i, l.Count
	}
	slices.SortStableFunc(order, func(i, j int) int { return need[j] - need[i] })
	for _, i := range order {
		if left <= packWindow {
			break
		}
		n := min(onHand[i], left/need[i], (left-packWindow+need[i]-1)/need[i])
		p.Lines[i].Count += n
		onHand[i] -= n
		left -= n * need[i]
	}
	// No more can be filled than is on hand.
	room := 0
	for i, n := range onHand {
		room = min(left, room+min(n, left/need[i])*need[i])
	}
	for i, n := range fullest(room, need, onHand) {
		p.Lines[i].Count += n
		onHand[i] -= n
	}
	// Contents rounded up to cells add up to more than the syrup itself: many
	// small ones may leave room for another.
	const hair = 1e-9 // of a container
	rest := volume
	for i, l := range p.Lines {
		rest -= float64(l.Count-before[i]) * float64(l.Filling.Content)
	}
	for _, i := range order {
		content := float64(p.Lines[i].Filling.Content)
		n := min(onHand[i], int(math.Max(rest, 0)/content+hair))
		p.Lines[i].Count += n
		rest -= float64(n) * content
	}
}

// fullest returns how many of each size fill the most of a number of cells with
// the fewest containers.
//
// Counts are split into powers of two, so that each bundle is taken or not: a
// knapsack whose worth is its weight. most[v] is the least number of containers
// that fill v cells exactly.
func fullest(room int, need, onHand []int) []int {
	type bundle struct {
		size, count int
		taken       []uint64 // a bit for each v where the bundle improves
	}
	const never = math.MaxInt32
	least := make([]int32, room+1)
	for v := range least[1:] {
		least[v+1] = never
	}
	var bundles []bundle
	for i, n := range need {
		for left, b := min(onHand[i], room/n), 1; left > 0; left, b = left-b, 2*b {
			b = min(b, left)
			taken := make([]uint64, room/64+1)
			for v, w := room, b*n; v >= w; v-- {
				if before := least[v-w]; before != never && before+int32(b) < least[v] {
					least[v] = before + int32(b)
					taken[v/64] |= 1 << (v % 64)
				}
			}
			bundles = append(bundles, bundle{i, b, taken})
		}
	}
	counts := make([]int, len(need))
	v := room
	for least[v] == never {
		v--
	}
	for _, b := range slices.Backward(bundles) {
		if b.taken[v/64]>>(v%64)&1 == 1 {
			counts[b.size] += b.count
			v -= b.count * need[b.size]
		}
	}
	return counts
}

// close tells what is packed and what is left of a lot.
func (p *PackPlan) close(at68 float64, mass units.Mass) {
	packed := 0.0
	for _, l := range p.Lines {
		// The conversion forbids a fused multiply-add: same bits on every processor.
		packed += float64(float64(l.Count) * float64(l.Filling.Content))
	}
	// Rounding may pack a hair more than there is.
	packed = math.Min(packed, at68)
	p.Packed, p.Left = units.Volume(packed), units.Volume(at68-packed)
	p.LeftMass = mass * units.Mass((at68-packed)/at68)
}
