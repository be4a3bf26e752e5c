package fuel

import (
	"math"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// A Pile tells how firewood lies. The zero value is no way to lie and is
// refused: a load of thrown wood taken for stacked wood is short by a third.
type Pile uint8

// The ways firewood is sold.
const (
	// Stacked is wood ranked in rows, sticks touching: [units.Cord] is 128 cubic
	// feet of it, a full cord.
	Stacked Pile = iota + 1
	// LooseShort is wood of 12 or 16 inches thrown in a heap: 180 cubic feet of
	// it are a full cord (from memory of a state's law of measures).
	LooseShort
	// LooseLong is wood of 24 inches thrown in a heap: 195 cubic feet of it are
	// a full cord (from memory of a state's law of measures).
	LooseLong
)

var piles = enum.Names[Pile]{Type: "fuel.Pile", Of: []string{Stacked: "stacked", LooseShort: "loose, 12 or 16 in", LooseLong: "loose, 24 in"}}

// Piles lists the ways firewood is sold.
func Piles() []Pile { return piles.List() }

// String tells how the wood lies, such as "stacked".
func (p Pile) String() string {
	if p < Stacked || p > LooseLong {
		return "no pile"
	}
	return piles.String(p)
}

// MarshalText returns what String returns, and an error for no pile.
func (p Pile) MarshalText() ([]byte, error) { return piles.Marshal(p) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (p *Pile) UnmarshalText(text []byte) error { return piles.Unmarshal(p, text) }

// What piles and sticks may be.
var (
	pileRange = limit.Range{Arg: "volume", What: "volume of the pile", Low: 0, High: 1e6, Unit: "m3",
		Below: "a pile has no less than no volume",
		Above: "check cubic feet against cubic meters"}
	stickRange = limit.Range{Arg: "sticks", What: "length of the sticks", Low: 0.15, High: 2.5, Unit: "m",
		Below: "check inches against feet: stove wood is 12 in and more",
		Above: "check inches against feet: cord wood is 4 ft long"}
)

// FullCord returns the volume of stacked wood in a pile of a volume as it lies;
// a full cord is [units.Cord] of it:
//
//	v, err := fuel.FullCord(90*units.CubicFoot, fuel.LooseShort)
//	v.Cords() // 0.5
//
// Range: volumes of 0 to 1e6 m3 that lie in one of the ways of [Piles].
// Uncertainty: 10 percent and more of a thrown heap.
//
// Source: a cord is 128 cubic feet ranked and well stowed (law of measures in
// the United States); for loose wood from memory, see [LooseShort]. Check value:
// half a cord in 90 cubic feet of short wood thrown (from memory).
func FullCord(volume units.Volume, pile Pile) (units.Volume, error) {
	const fn = "fuel.FullCord"
	nan := units.Volume(math.NaN())
	if err := pileRange.Check(fn, volume.CubicMeters()); err != nil {
		return nan, err
	}
	var cord units.Volume
	switch pile {
	case Stacked:
		cord = units.Cord
	case LooseShort:
		cord = 180 * units.CubicFoot
	case LooseLong:
		cord = 195 * units.CubicFoot
	default:
		return nan, &units.RangeError{Func: fn, Arg: "pile", Value: float64(pile), Low: float64(Stacked), High: float64(LooseLong),
			Hint: "say how the wood lies: stacked, loose in sticks of 12 or 16 in, or loose in sticks of 24 in"}
	}
	return volume / cord * units.Cord, nil
}

// FaceCord returns the volume of a face of stacked wood, 4 ft high and 8 ft
// long, as deep as the sticks are long. A face cord is a custom and not a
// measure: what is sold by that name varies, and so does a rick.
//
// Range: sticks of 0.15 to 2.5 m (6 to 98 in). Check value: a third of a cord
// with 16 in sticks, by definition.
func FaceCord(sticks units.Length) (units.Volume, error) {
	if err := stickRange.Check("fuel.FaceCord", sticks.Meters()); err != nil {
		return units.Volume(math.NaN()), err
	}
	return (4 * units.Foot).Times(8 * units.Foot).Volume(sticks), nil
}
