package density

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Range of sugar content, in Brix.
const (
	minBrix units.Brix = 0
	maxBrix units.Brix = 85
)

// Temperature range of the densities of this package, in degrees Celsius. The
// upper end holds the boiling point of syrup in any weather: 66.9 Brix boils at
// 106.5 C under 110 kPa.
const (
	minC = 0.0
	maxC = 110.0
)

var (
	brixRange = limit.Range{Arg: "brix", What: "sugar content", Low: float64(minBrix), High: float64(maxBrix), Unit: "Brix",
		Below: "less than no sugar: check the instrument in plain water",
		Above: "beyond 85 Brix the liquid sets as candy: go by its boiling temperature"}
	tempRange = limit.Range{Arg: "at", What: "temperature", Low: minC, High: maxC, Unit: "C",
		Below: "below 0 C ice may be forming: thaw it and let it mix",
		Above: "let it cool and measure again"}
)

// rounding is how far, in mass fraction or specific gravity, an inverse may
// land outside its range when the forward formula was evaluated at the limit.
const rounding = 1e-12

// snap moves x to the end of the range when it lies outside by no more than
// slack.
func snap(x, slack float64, r *limit.Range) float64 {
	switch {
	case x < r.Low && x >= r.Low-slack:
		return r.Low
	case x > r.High && x <= r.High+slack:
		return r.High
	}
	return x
}

func nan[Q ~float64]() Q { return Q(math.NaN()) }

// toBrix turns a mass fraction into Brix.
func toBrix(w float64) units.Brix { return units.Brix(100 * w) }

// solved turns a solved mass fraction into Brix and tells whether it lies in
// the range.
func solved(w float64) (units.Brix, bool) {
	b := snap(100*w, 100*rounding, &brixRange)
	if !(b >= brixRange.Low && b <= brixRange.High) {
		return nan[units.Brix](), false
	}
	return units.Brix(b), true
}
