package tapping

import (
	"math"
	"slices"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/units"
)

// HoleLimit is a legal limit on the hole itself.
type HoleLimit struct {
	Jurisdiction  string
	Bit           units.Length // widest bit
	DepthWithBark units.Length // greatest depth, bark included
	Source        string
}

var holeLimits = []HoleLimit{{
	Jurisdiction:  quebecPublic,
	Bit:           11 * units.Millimeter,
	DepthWithBark: 6 * units.Centimeter,
	Source:        "Quebec, regulation A-18.1 r. 2, s. 3; r. 8.1, s. 58 (in force to the end of 2022)",
}}

// HoleLimits returns the limits that are known here. A place that is not among
// them is not free of rules: ask.
func HoleLimits() []HoleLimit { return slices.Clone(holeLimits) }

// Legality is how a size stands to a legal limit.
type Legality uint8

// The answers. The zero value means that nothing was compared.
const (
	NotCompared Legality = iota
	WithinLimit
	NominalAtLimit // a spout size by name that the limit, printed in whole millimeters, stands for
	OverLimit
)

var legalityNames = enum.Names[Legality]{Type: "tapping.Legality", Of: []string{"not compared", "within the limit", "nominal size at the limit", "over the limit"}}

// String returns the answer in words.
func (l Legality) String() string { return legalityNames.String(l) }

// MarshalText returns the answer in words.
func (l Legality) MarshalText() ([]byte, error) { return legalityNames.Marshal(l) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (l *Legality) UnmarshalText(text []byte) error { return legalityNames.Unmarshal(l, text) }

// Compare returns how bit and depth stand to the limit. The comparison is made
// in millimeters rounded to 1e-6. A bit of 7/16 in is 11.11 mm: against a limit
// of 11 mm it is neither within nor plainly over, and is reported as
// [NominalAtLimit], because 11 mm is what it is called in whole millimeters: ask
// whoever enforces the limit. Sizes that are no spout's have no such grace.
//
// The zero Hole or a zero limit gives [NotCompared].
func (l HoleLimit) Compare(h Hole) (bit, depth Legality) {
	if h == (Hole{}) {
		return NotCompared, NotCompared
	}
	bit = compareLimit(h.bit, l.Bit)
	if bit == OverLimit && isNominal(h.bit) && sameMillimeter(h.bit, l.Bit) {
		bit = NominalAtLimit
	}
	return bit, compareLimit(h.DepthWithBark(), l.DepthWithBark)
}

func compareLimit(size, limit units.Length) Legality {
	switch s, l := printed(size, units.Millimeter), printed(limit, units.Millimeter); {
	case !(l > 0):
		return NotCompared
	case s <= l:
		return WithinLimit
	default:
		return OverLimit
	}
}

// isNominal reports whether the bit is one of the spout sizes to 1e-6 mm.
func isNominal(bit units.Length) bool {
	return slices.ContainsFunc(spouts, func(s Spout) bool {
		return math.Abs((s.Bit - bit).Millimeters()) < 1/roundTo
	})
}

func sameMillimeter(a, b units.Length) bool {
	return int(math.Round(a.Millimeters())) == int(math.Round(b.Millimeters()))
}
