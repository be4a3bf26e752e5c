package season

import "math"

// nan is the answer of a function that has none.
func nan[T ~float64]() T { return T(math.NaN()) }

const roundTo = 1e6 // temperatures are compared to 1e-6 C
