package packing

import (
	"errors"
	"math"
	"strings"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/shelf"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Limits of a plan for packing.
const (
	maxSizes = 32
	maxParts = 1000
	maxLot   = 200 // m3
)

// Plenty is an OnHand that never runs out.
const Plenty = 1_000_000

// A Supply is a kind of container, how many empty ones are on hand, and how many
// of them are ordered. Fill at most so many: give that as OnHand. Fill exactly so
// many: give it as both.
type Supply struct {
	Container Container
	OnHand    int // 0 to Plenty: no more are filled
	AtLeast   int // 0 to OnHand: so many are filled before all others
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

// FewestContainers plans which containers to fill from a lot. What is ordered
// comes first, and no container on hand stays empty that the rest would fill. Of
// the plans that hold to this it takes those that leave the fewest whole twentieths
// of the lot, of these the one of the fewest containers, and of those the one that
// leaves least: a gallon more is worth a container, a spoonful is not.
//
// The lot is packed at its own temperature: filling volumes are for that. What is
// short by a billionth of the lot fits. With many kinds of nearly one size the
// search ends after half a million tries: the plan then holds to the first two
// rules and may fill a container more than it must.
//
// Range: 1 to 32 kinds, each as in [Container.Fill], on hand 0 to [Plenty], at
// least 0 to as many; a lot that fills the orders, to 200 m3.
//
// Check value: 3 US gal into quarts and pints, each half a percent over its label,
// make 11 quarts and 1 pint (by hand: 11 x 1.005 + 0.5025 = 11.5575 of 12 quarts).
//
// Caution: hot syrup scalds and sticks. Cool filled jars apart from each other:
// packed in a stack they keep hot for hours and the syrup darkens. From 68 Brix on
// crystals are likely from room temperature down (OMAFRA 2013).
func FewestContainers(lot sugar.Lot, margin units.Share, supplies ...Supply) (PackPlan, error) {
	const fn = "packing.FewestContainers"
	plan, at68, err := newPlan(fn, "supplies", lot, margin, len(supplies), func(i int) Container { return supplies[i].Container })
	if err != nil {
		return PackPlan{}, err
	}
	onHand := make([]int, len(supplies))
	ordered := 0.0
	for i, s := range supplies {
		if err := limit.InItem(fn, "supplies", i, "OnHand", "containers on hand", float64(s.OnHand), 0, Plenty, "", "count the empty containers"); err != nil {
			return PackPlan{}, err
		}
		if err := limit.InItem(fn, "supplies", i, "AtLeast", "containers ordered", float64(s.AtLeast), 0, float64(s.OnHand), "", "no more can be ordered than are on hand"); err != nil {
			return PackPlan{}, err
		}
		plan.Lines[i].Count, onHand[i] = s.AtLeast, s.OnHand-s.AtLeast
		ordered += float64(float64(s.AtLeast) * float64(plan.Lines[i].Filling.Content))
	}
	least := units.Volume(ordered * (1 - packHair))
	if err := limit.Liters(fn, "lot", units.Volume(at68), least, max(maxLot, least, units.Volume(at68)),
		"it does not fill what is ordered: order fewer, or bring more syrup"); err != nil {
		return PackPlan{}, err
	}
	plan.pack(at68-ordered, at68, onHand)
	plan.close(at68, lot.Mass())
	return plan, nil
}

// InMix plans as many whole sets of a wanted mix as the lot fills, and packs the
// rest in the same containers as [FewestContainers] does.
//
// Range, errors and cautions: those of [FewestContainers], with 1 to 1000 parts of
// each kind.
func InMix(lot sugar.Lot, margin units.Share, mix ...Mix) (PackPlan, error) {
	const fn = "packing.InMix"
	plan, at68, err := newPlan(fn, "mix", lot, margin, len(mix), func(i int) Container { return mix[i].Container })
	if err != nil {
		return PackPlan{}, err
	}
	set := 0.0
	for i, m := range mix {
		if err := limit.InItem(fn, "mix", i, "Parts", "parts of a set", float64(m.Parts), 1, maxParts, "", "how many of it make up one set"); err != nil {
			return PackPlan{}, err
		}
		set += float64(float64(m.Parts) * float64(plan.Lines[i].Filling.Content))
	}
	plan.Sets = int(at68 * (1 + packHair) / set)
	onHand := make([]int, len(mix))
	for i, m := range mix {
		plan.Lines[i].Count = plan.Sets * m.Parts
		onHand[i] = Plenty
	}
	plan.pack(at68-float64(float64(plan.Sets)*set), at68, onHand)
	plan.close(at68, lot.Mass())
	return plan, nil
}

// newPlan checks a lot and its containers, and returns a plan with nothing in it
// and the volume of the lot at 68 F in m3.
func newPlan(fn, list string, lot sugar.Lot, margin units.Share, kinds int, container func(int) Container) (PackPlan, float64, error) {
	if err := limit.InAs(fn, list, "kinds of containers", float64(kinds), 1, maxSizes, "", "name at least one container"); err != nil {
		return PackPlan{}, 0, err
	}
	if lot.Empty() {
		return PackPlan{}, 0, limit.Liters(fn, "lot", 0, minContainer, maxLot, "there is nothing to pack")
	}
	cool, err := lot.VolumeAt(shelf.Temperature())
	if err != nil {
		return PackPlan{}, 0, units.Under(fn, err)
	}
	at68 := cool.CubicMeters()
	if err := limit.Liters(fn, "lot", cool, minContainer, maxLot, "check its unit"); err != nil {
		return PackPlan{}, 0, err
	}
	plan := PackPlan{Lines: make([]PackLine, kinds)}
	for i := range kinds {
		c := container(i)
		f, err := c.fill(fn, lot.Brix(), lot.Temperature(), margin)
		if err != nil {
			return PackPlan{}, 0, ofEntry(list, i, err)
		}
		plan.Lines[i] = PackLine{Container: c, Filling: f}
	}
	return plan, at68, nil
}

// ofEntry names a container by its place in the list.
func ofEntry(list string, i int, err error) error {
	var e *units.RangeError
	if errors.As(err, &e) && strings.HasPrefix(e.Arg, "Container.") {
		renamed := *e
		renamed.Arg, renamed.What = limit.Item(list, i, e.Arg), limit.Entry(i, e.What)
		return &renamed
	}
	return err
}

// pack adds containers for a volume in m3 at 68 F, what is left of a lot, to the
// plan.
func (p *PackPlan) pack(volume, lot float64, onHand []int) {
	sizes := make([]float64, len(p.Lines))
	for i, l := range p.Lines {
		sizes[i] = float64(l.Filling.Content)
	}
	for i, n := range fewestJars(math.Max(volume, 0), lot, sizes, onHand) {
		p.Lines[i].Count += n
	}
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
