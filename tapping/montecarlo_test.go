package tapping_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// A trunk in a simulation that knows nothing of the formula: stains are upright
// boxes, as deep as the hole, in a band that closes on itself round the trunk.
// All lengths are inches.
type trunkOfBoxes struct {
	girth, height, depth, growth float64
	side, column                 float64 // half the width and half the height of a stain
	holes                        []boxed
}

type boxed struct {
	x, z float64
	age  int
}

// meets returns the share of a straight hole at x, z that lies in stained wood:
// the deepest stain there, as young as any, decides how much wood over it is new.
func (b *trunkOfBoxes) meets(x, z float64) float64 {
	worst := 0.0
	for _, h := range b.holes {
		dx := math.Abs(x - h.x)
		dx = min(dx, b.girth-dx)
		dz := math.Abs(z - h.z)
		dz = min(dz, b.height-dz) // the band closes on itself, so that no stain is cut off
		if dx < b.side && dz < b.column {
			worst = max(worst, 1-float64(h.age)*b.growth/b.depth)
		}
	}
	return worst
}

// year adds a season: holes grow older, new ones are drilled.
func (b *trunkOfBoxes) year(drill func() (x, z float64)) {
	kept := b.holes[:0]
	for _, h := range b.holes {
		if h.age++; float64(h.age)*b.growth < b.depth {
			kept = append(kept, h)
		}
	}
	x, z := drill()
	b.holes = append(kept, boxed{x, z, 0})
}

// stainedShare is the mean of meets over random places of the band.
func (b *trunkOfBoxes) stainedShare(r *rand.Rand, n int) float64 {
	sum := 0.0
	for range n {
		sum += b.meets(r.Float64()*b.girth, r.Float64()*b.height)
	}
	return sum / float64(n)
}

// boxes makes the trunk of a band whose stains have the volume of the model.
// The girth is that of the middle of the wood, as in Z = H pi (D - h) h.
func boxes(t *testing.T, diameter, height, growth float64) (*trunkOfBoxes, tapping.TappingBand) {
	const bit, depth = 0.3125, 1.5
	h := hole(t, bit, depth)
	volume := tapping.StainRatio * h.Volume().CubicInches()
	const column = 6.0
	return &trunkOfBoxes{
		girth: math.Pi * (diameter - depth), height: height, depth: depth, growth: growth,
		side: volume / (depth * 2 * column) / 2, column: column,
	}, band(t, diameter, height, bit, depth, 1)
}

// Placed at random, stains overlap: what is stained is what the formula says
// less the overlap, and the formula lies on the safe side. At few stains the two
// meet. The simulation is independent of the formula; the ratio of stain to hole
// is the same calibrated one in both, so this is no proof of that ratio.
func TestRandomHolesAgreeWithTheFormula(t *testing.T) {
	r := rand.New(rand.NewPCG(25, 26))
	for _, c := range []struct{ diameter, height, growth float64 }{{20, 60, 0.15}, {14, 40, 0.10}, {10, 30, 0.0444}, {10, 30, 0.02}} {
		sum, overlapping := 0.0, 0.0
		const trees = 60
		var b tapping.TappingBand
		for range trees {
			trunk, tb := boxes(t, c.diameter, c.height, c.growth)
			b = tb
			for range 120 {
				trunk.year(func() (float64, float64) { return r.Float64() * trunk.girth, r.Float64() * trunk.height })
			}
			sum += trunk.stainedShare(r, 1000) / trees
			// Expected at a place, depth by depth: a stain k years old reaches the
			// depth share s of the hole when 1 - k g/h > s; none of them covers it
			// with the chance of the product.
			one := 4 * trunk.side * trunk.column / (trunk.girth * trunk.height)
			for k := range 200 {
				s := (float64(k) + 0.5) / 200
				n := math.Ceil((1 - s) * trunk.depth / trunk.growth)
				overlapping += (1 - math.Pow(1-one, n)) / 200 / trees
			}
		}
		formula := 1 - must[units.Share](t)(b.Steady(units.Inches(c.growth))).Fraction()
		if math.Abs(sum-overlapping) > 0.006 {
			t.Errorf("%+v: simulated %.4f, expected with overlap %.4f", c, sum, overlapping)
		}
		if sum > formula+0.006 {
			t.Errorf("%+v: simulated %.4f, more than the formula's %.4f", c, sum, formula)
		}
		if formula < 0.06 && math.Abs(sum-formula) > 0.006 {
			t.Errorf("%+v: simulated %.4f, formula %.4f", c, sum, formula)
		}
		t.Logf("%+v: formula %.2f %%, simulated %.2f %%, expected with overlap %.2f %%", c, 100*formula, 100*sum, 100*overlapping)
	}
}

// How much of each new hole lies in stained wood, by the way the holes are
// placed: at random about what the formula says; by a pattern, next to nothing
// until it comes round; by the planner, nothing.
func TestPatternGains(t *testing.T) {
	r := rand.New(rand.NewPCG(27, 28))
	const diameter, growth, years = 14.0, 0.06, 120
	hits := func(place func(trunk *trunkOfBoxes, year int) (x, z float64)) float64 {
		trunk, _ := boxes(t, diameter, 36, growth)
		sum := 0.0
		for y := range years {
			trunk.year(func() (float64, float64) {
				x, z := place(trunk, y)
				sum += trunk.meets(x, z) / years
				return x, z
			})
		}
		return sum
	}
	random := 0.0
	for range 30 {
		random += hits(func(b *trunkOfBoxes, _ int) (float64, float64) { return r.Float64() * b.girth, r.Float64() * b.height }) / 30
	}
	pattern := hits(func(b *trunkOfBoxes, y int) (float64, float64) {
		return math.Mod(3*float64(y), b.girth), 15 + 6*float64(y%2)
	})
	p := must[tapping.Planner](t)(tapping.NewPlanner(units.Inches(diameter), 0, units.Inches(growth), byHand(t, 24, 60), hole(t, 0.3125, 1.5), tapping.DefaultDistances()))
	plan := must[tapping.Plan](t)(p.Plan(nil, 0, years, 1))
	if len(plan.Resting) > 0 {
		t.Fatalf("resting %v", plan.Resting)
	}
	planned := hits(func(b *trunkOfBoxes, y int) (float64, float64) {
		at := plan.Holes[y]
		return at.At.In(units.Turn) * b.girth, (at.Height - 24*units.Inch).Inches()
	})
	t.Logf("mean share of a new hole in stained wood: random %.2f %%, pattern %.2f %%, planner %.2f %%", 100*random, 100*pattern, 100*planned)
	if planned > 0 {
		t.Errorf("the planner's holes meet stained wood: %.4f", planned)
	}
	if !(pattern < random/2) {
		t.Errorf("the pattern meets %.4f, random %.4f", pattern, random)
	}
	if !(random > 0.02) {
		t.Errorf("random holes meet %.4f: the simulation shows nothing", random)
	}
}
