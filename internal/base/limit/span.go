package limit

import (
	"math"

	"example.org/sapreckoner/units"
)

// NoSpan is the answer that goes with an error.
func NoSpan[Q ~float64]() units.Span[Q] {
	nan := Q(math.NaN())
	return units.Span[Q]{Low: nan, Middle: nan, High: nan}
}

// NoMiss is the miss that goes with an error.
func NoMiss() units.Miss {
	return units.Miss{Brix: units.Brix(math.NaN()), Syrup: units.Volume(math.NaN())}
}
