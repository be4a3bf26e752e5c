package season

import "math"

// nan is the answer of a function that has none.
func nan[T ~float64]() T { return T(math.NaN()) }

const roundTo = 1e6 // diameters are compared in the printed unit to 1e-6
