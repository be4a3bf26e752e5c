package packing

import "math"

const maxTaps = 100_000_000

func nan[Q ~float64]() Q { return Q(math.NaN()) }
