package measure

import (
	"math"
	"strconv"

	"example.org/sapreckoner/units"
)

// PlusMinus prints a number with its uncertainty, to the digit that the
// uncertainty leaves: its first, or its second if the first is 1. 12.34 within
// 0.56 is "12.3 +/- 0.6", 66.58 within 0.179 is "66.58 +/- 0.18".
func PlusMinus(x, uncertainty float64, symbol string) string {
	unit := ""
	if symbol != "" {
		unit = " " + symbol
	}
	u := math.Abs(uncertainty)
	if math.IsNaN(x) || math.IsInf(x, 0) || !(u > 0) || math.IsInf(u, 0) {
		return strconv.FormatFloat(x, 'g', 4, 64) + " +/- " + strconv.FormatFloat(uncertainty, 'g', 2, 64) + unit
	}
	const most = 12 // decimals
	place := place(u)
	// Rounding may have lifted it to the next power: 0.96 is 1.0.
	if step := math.Pow(10, float64(place)); place < most && place > -most {
		place = max(place, placeAt(math.Round(u/step)*step))
	}
	decimals := min(max(-place, 0), most)
	if place > 0 {
		step := math.Pow(10, float64(place))
		x, u = math.Round(x/step)*step, math.Round(u/step)*step
	}
	return fixed(x, decimals) + " +/- " + fixed(u, decimals) + unit
}

// Either takes the text of one system of units, or both, the metric one in
// parentheses.
func Either(in units.System, us, metric string) string {
	switch in {
	case units.US:
		return us
	case units.Metric:
		return metric
	}
	return us + " (" + metric + ")"
}

// place is the power of ten of the last digit that an uncertainty leaves.
func place(u float64) int {
	p := int(math.Floor(math.Log10(u)))
	if u/math.Pow(10, float64(p)) < 2 {
		p--
	}
	return p
}

// placeAt is [place] of a number that was rounded, which may miss its power by a
// hair.
func placeAt(u float64) int { return place(u * (1 + 1e-12)) }

func fixed(x float64, decimals int) string {
	s := strconv.FormatFloat(x, 'f', decimals, 64)
	if v, err := strconv.ParseFloat(s, 64); err == nil && v == 0 { // no -0
		s = strconv.FormatFloat(0, 'f', decimals, 64)
	}
	return s
}
