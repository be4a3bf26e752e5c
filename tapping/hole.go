package tapping

import (
	"math"
	"slices"
	"time"

	"example.org/sapreckoner/units"
)

// The range of holes: wider than any spout in use.
const (
	minBit   = 3 * units.Millimeter
	maxBit   = 20 * units.Millimeter
	minDepth = 5 * units.Millimeter
	maxDepth = 4 * units.Inch
	maxBark  = 4 * units.Inch
)

// Hole is a tap hole: its bit, its depth into the wood, and the bark over it.
// Make one with [NewHole]. The zero Hole holds nothing.
type Hole struct{ bit, depth, bark units.Length }

// NewHole returns a hole of the given bit diameter, depth into the wood and
// thickness of bark.
//
// Range: bit 3 to 20 mm; depth, measured from the inner bark, 5 mm to 4 in, so
// that old records can be entered; bark 0 to 4 in. [DepthAdvised] tells what is
// good for the tree.
func NewHole(bit, depth, bark units.Length) (Hole, error) {
	const fn = "tapping.NewHole"
	if err := checkLength(fn, "bit", bit, minBit, maxBit, "spouts are 3/16 to 7/16 in"); err != nil {
		return Hole{}, err
	}
	if err := checkLength(fn, "depth", depth, minDepth, maxDepth, "into the wood, without the bark"); err != nil {
		return Hole{}, err
	}
	if err := checkLength(fn, "bark", bark, 0, maxBark, "0 if it is not known"); err != nil {
		return Hole{}, err
	}
	return Hole{bit, depth, bark}, nil
}

// Bit returns the diameter of the bit.
func (h Hole) Bit() units.Length { return h.bit }

// Depth returns the depth into the wood.
func (h Hole) Depth() units.Length { return h.depth }

// Bark returns the thickness of the bark.
func (h Hole) Bark() units.Length { return h.bark }

// DepthWithBark returns how far the bit goes in from the outside: what a stop
// on the bit is set to, and what a law may limit.
func (h Hole) DepthWithBark() units.Length { return h.depth + h.bark }

// Volume returns the wood that the bit takes out, without bark.
//
// Formula: pi/4 d^2 h. Check value: 5/16 in by 1.5 in is 0.1150 in3, 7/16 in by
// 2 in is 0.3007 in3.
//
// Cites nist-sp811.
func (h Hole) Volume() units.Volume { return (math.Pi / 4 * h.bit.Times(h.bit)).Volume(h.depth) }

// DepthAdvised returns the range of depth into clean white sapwood for a trunk
// of that vigor.
//
// Sources: 1.5 to 2 in, University of Vermont Extension, Beginning Sugarmaking;
// near 1 in for slow or small trees, never over 2 in, Cornell, conservative
// tapping guidelines, 2005. An unhealthy trunk is not tapped and gives 0, 0.
func DepthAdvised(v Vigor) (low, high units.Length) {
	switch v {
	case Slow:
		return 1 * units.Inch, 1 * units.Inch
	case Unhealthy:
		return 0, 0
	default:
		return 1.5 * units.Inch, 2 * units.Inch
	}
}

// Spout is a kind of spout, by its size.
type Spout struct {
	Name     string
	Bit      units.Length
	Obtained string
	Source   string
}

var spouts = []Spout{
	{"7/16 in", 7 * units.Inch / 16, "read", "University of Vermont Extension: the traditional bit"},
	{"5/16 in", 5 * units.Inch / 16, "read", "University of Vermont Extension: the bit of today"},
	{"19/64 in", 19 * units.Inch / 64, "memory", "extension advice"},
	{"1/4 in", units.Inch / 4, "memory", "extension advice"},
	{"3/16 in", 3 * units.Inch / 16, "memory", "extension advice"},
}

// Spouts returns the sizes of spouts in use, the widest first. Between 5/16 and
// 7/16 in no significant difference of sap was found (Cornell, Uihlein
// station), and the smaller hole takes half the wood.
func Spouts() []Spout { return slices.Clone(spouts) }

// coldestDrilling is where bark splits. OMAFRA report, 26 February 2015.
const coldestDrilling = -5.0

// ColdestDrilling returns -5 C: below it the bark splits under the drill.
//
// Source: OMAFRA report, 26 February 2015.
func ColdestDrilling() units.Temperature { return units.Celsius(coldestDrilling) }

// TooColdToDrill reports whether the wood is colder than [ColdestDrilling]. At
// -5 C itself it is not; NaN is too cold, since nobody knows.
//
// Cites omafra.
func TooColdToDrill(t units.Temperature) bool { return !(t.Celsius() >= coldestDrilling) }

// HoleLife returns how long a hole with an open spout and a pail gives sap
// before it dries: 3 to 6 weeks, from 3-4 of a producer (read) and 4-6 of
// extension advice (from memory). [LifeFigures] has the sources, and what is
// told of vacuum. Warm days shorten it. A season lasts 5 to 8 weeks in Vermont
// (University of Vermont Extension, Beginning Sugarmaking), so a hole drilled
// for the first thaw may be dry in the best weeks: see
// [example.org/sapreckoner/tapping/season.TapTiming]. Never drill it again or
// deeper in the same season.
func HoleLife() (low, high time.Duration) { return 3 * week, 6 * week }
