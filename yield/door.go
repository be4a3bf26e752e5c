package yield

import "math"

// Limits of masses: a crumb, and what catches a wrong unit, in kg.
const (
	leastMass = 1e-6
	mostMass  = 1e9
)

func nan[Q ~float64]() Q { return Q(math.NaN()) }
