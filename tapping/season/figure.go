package season

import (
	"fmt"

	"example.org/sapreckoner/units"
)

// String prints the range with where it comes from, "5 US gal (19 L) to 15 US gal
// (57 L), ...".
func (f Figure[T]) String() string { return f.Text(units.Both) }

// Text prints the range in one system of units, or both, with the two digits that
// its width leaves, and where it comes from.
func (f Figure[T]) Text(in units.System) string {
	s := shown(f.Low, in)
	if high := shown(f.High, in); high != s {
		s += " to " + high
	}
	if f.Source != "" {
		s += ", " + f.Source
	}
	return s
}

// shown prints an end of a range in the units that a person reads.
func shown[T ~float64](x T, in units.System) string {
	const digits = 2
	switch q := any(x).(type) {
	case interface {
		TextIn(in units.System, digits int) string
	}:
		return q.TextIn(in, digits)
	case interface{ Text(decimals int) string }: // Brix and shares
		decimals := 1
		if x >= 10 || x <= -10 {
			decimals = 0
		}
		return q.Text(decimals)
	}
	return fmt.Sprintf("%.2g", float64(x))
}
