package money_test

import "math"

var inf = math.Inf(1)

var notNum = math.NaN()
