package tapping

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// nan is the answer of a function that has none.
func nan[T ~float64]() T { return T(math.NaN()) }

var diameterRange = limit.Range{
	Arg: "diameter", What: "diameter", Low: 0, High: float64(maxDiameter), Unit: "in", Per: float64(units.Inch),
	Below: diameterHint, Above: diameterHint,
}

const diameterHint = "a diameter at breast height, not a girth"

// lengthAs is [checkLength] with the argument in words besides.
func lengthAs(fn, arg, what string, v, low, high units.Length, hint string) error {
	return limit.WithinAs(fn, arg, what, v, low, high, units.Inch, "in", hint)
}

// checkLength is the door of lengths: inches are the unit of the drill and the
// tape.
func checkLength(fn, arg string, v, low, high units.Length, hint string) error {
	return limit.Within(fn, arg, v, low, high, units.Inch, "in", hint)
}
