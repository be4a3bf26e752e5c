package sugar

import (
	"math"

	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/units"
)

const (
	molarHexose = 180.16 // g/mol, glucose and fructose

	// gasConstant is exact in the SI of 2019, in J/(mol K). The source has
	// 8.314; the difference is 6e-5 of ln gamma.
	gasConstant = 8.314462618
)

// What the water activity may be asked for. Above 92 Brix the polynomial nears
// the end of its rise: at 98 the activity would grow with the sugar in the cold.
var (
	activityBrix = limit.Range{Arg: "brix", What: "sugar content", Low: 0, High: 92, Unit: "Brix",
		Below: "less than no sugar: check the instrument in plain water",
		Above: "hardly any water is left: go by the boiling temperature of the candy"}
	activityTemp = limit.Range{Arg: "at", What: "temperature", Low: -20, High: 140, Unit: "C",
		Below: "colder than the formula holds: let it warm",
		Above: "hotter than any syrup boils: check Fahrenheit against Celsius"}
	invertedShare = limit.Range{Arg: "Solute.Inverted", What: "inverted share", Low: 0, High: 100, Unit: "%",
		Below: "a share of the sugar cannot be less than none",
		Above: "a share of the sugar cannot be more than all"}
)

// Solute is the sugar dissolved in sap or syrup. The zero value is pure
// sucrose, which the functions of this package take when they are not told
// otherwise:
//
//	sugar.Solute{Inverted: 5 * units.Percent}.WaterActivity(66.9, t)
//
// Inverted is the share of the mass of the sugar that is glucose and fructose,
// into which microbes and heat split sucrose. In maple syrup it is a few
// percent as a rule (common practice: 0 to 12); in the sap of birches it is all.
type Solute struct {
	Inverted units.Share
}

// moles returns the moles of sugar in a gram of it.
func (s Solute) moles() float64 {
	f := s.Inverted.Fraction()
	return (1-f)/coef.MolarSucrose + f/molarHexose
}

// WaterActivity returns the water activity of a solution of sucrose of the
// given strength at the given temperature: the vapor pressure over it as a part
// of the vapor pressure over water, 1 for water. It tells nothing of safety:
// molds and yeasts grow to 0.60 (Beuchat 1981), far below any syrup, and
// infused syrups are other liquids.
//
//	ln a = ln(1-x) + Q/(R T) x^2 (1 + a1 x + a2 x^2)
//
// with x the mole fraction of the sugar, T in kelvin, Q = -17638 J/mol, a1 =
// -1.0038 and a2 = -0.24653.
//
// Range: 0 to 92 Brix, -20 to 140 C. Uncertainty: about 1 percent at syrup
// strength: 0.87 to 0.88 is also published for 66.9 Brix. At 25 C its logarithm is
// high against isopiestic coefficients (Robinson and Stokes, from memory): by 0.4
// percent at 0.1 molal (3.3 Brix), 1.7 at 0.5, 2.3 at 1, 2.0 at 2, 0.5 at 4 and
// 0.2 at 6 (67 Brix).
//
// Source: Starzak, M., Peacock, S. D., Zuckerindustrie 122 (1997) 380-387, with
// molar masses of 342.3 and 18.02 g/mol. Check value: 0.852 at 66.9 Brix and
// 25 C (computed).
//
// Cites starzak-peacock-1997, saska-2002, robinson-stokes, beuchat-1981.
func WaterActivity(brix units.Brix, at units.Temperature) (float64, error) {
	return Solute{}.activity("sugar.WaterActivity", brix, at)
}

// WaterActivity is the function [WaterActivity] for a sugar of which a part is
// inverted: each of its molecules counts as one of sucrose. Inversion takes up
// water, 342.3 g of sucrose make 360.3 g of glucose and fructose; the weight of
// the sugar is taken as it is found, after that, so that b stays percent by mass
// and a gram with the share f holds (1-f)/342.3 + f/180.16 moles.
//
// Range: a share of 0 to 100 percent; the rest as there. Counting molecules is
// an estimate: no measured table stands behind it. Check value: 0.856 at 66.9
// Brix, 5 percent and 105 C (computed).
func (s Solute) WaterActivity(brix units.Brix, at units.Temperature) (float64, error) {
	return s.activity("sugar.Solute.WaterActivity", brix, at)
}

// BrixFromWaterActivity returns the sugar content at which sucrose lowers the
// water activity to the given one at the given temperature: the inverse of
// [WaterActivity], by Newton's method, with its range and uncertainty. Range: the activities of
// 0 to 92 Brix at that temperature. Check value: 66.9 Brix at 0.852 and 25 C (computed).
func BrixFromWaterActivity(activity float64, at units.Temperature) (units.Brix, error) {
	return Solute{}.fromActivity("sugar.BrixFromWaterActivity", activity, at)
}

// BrixFromWaterActivity is the function [BrixFromWaterActivity] for a sugar of
// which a part is inverted: the inverse of [Solute.WaterActivity].
//
// Range: a share of 0 to 100 percent; the rest as there. Check value: 66.9 Brix
// at 0.856, 5 percent and 105 C (computed).
func (s Solute) BrixFromWaterActivity(activity float64, at units.Temperature) (units.Brix, error) {
	return s.fromActivity("sugar.Solute.BrixFromWaterActivity", activity, at)
}

// LogActivity is the logarithm of the water activity of one liquid at every
// temperature T in kelvin, Mixing + Kelvin/T: for who asks for one liquid at many,
// as in the search for its boiling point.
type LogActivity struct {
	Mixing float64 // ln(1-x)
	Kelvin float64 // Q/R x^2 (1 + a1 x + a2 x^2)
}

// LogActivity returns the logarithm of [Solute.WaterActivity] as a function of
// the temperature, which holds from -20 to 140 C.
//
// Range: 0 to 92 Brix, a share of 0 to 100 percent; uncertainty and source as
// there. Check value: ln 0.852 at 66.9 Brix and 298.15 K (computed).
func (s Solute) LogActivity(brix units.Brix) (LogActivity, error) {
	const fn = "sugar.Solute.LogActivity"
	nan := LogActivity{math.NaN(), math.NaN()}
	if err := invertedShare.Check(fn, float64(s.Inverted)); err != nil {
		return nan, err
	}
	if err := activityBrix.Check(fn, float64(brix)); err != nil {
		return nan, err
	}
	x := s.moleFraction(brix)
	return LogActivity{Mixing: math.Log1p(-x), Kelvin: coef.ActivityQ / gasConstant * x * x * (1 + x*(coef.ActivityA+x*coef.ActivityB))}, nil
}

// surely is a logarithm of the activity that 92 Brix lies below at any temperature: it is
// -0.90 in the heat.
const surely = -0.5

// BrixFromLogActivity is [Solute.BrixFromWaterActivity] for the logarithm of the
// activity, 0 for water.
//
// Range: the logarithms of 0 to 92 Brix; the rest as there. Check value: 66.9 Brix
// at ln 0.852 and 25 C (computed).
func (s Solute) BrixFromLogActivity(logarithm float64, at units.Temperature) (units.Brix, error) {
	const fn = "sugar.Solute.BrixFromLogActivity"
	nan := units.Brix(math.NaN())
	if err := invertedShare.Check(fn, float64(s.Inverted)); err != nil {
		return nan, err
	}
	if err := activityTemp.Check(fn, at.Celsius()); err != nil {
		return nan, err
	}
	if logarithm >= surely && logarithm <= 0 {
		return s.fromLogActivity(logarithm, at.Kelvin()), nil
	}
	least, _ := logActivity(s.moleFraction(units.Brix(activityBrix.High)), at.Kelvin())
	if !limit.Holds(logarithm, least, 0) {
		return nan, &units.RangeError{Func: fn, Arg: "logarithm", What: "logarithm of the water activity", Value: logarithm, Low: least, High: 0,
			Hint: "water is 0 and 92 Brix the least at this temperature"}
	}
	return s.fromLogActivity(max(logarithm, least), at.Kelvin()), nil
}

func (s Solute) activity(fn string, b units.Brix, t units.Temperature) (float64, error) {
	if err := invertedShare.Check(fn, float64(s.Inverted)); err != nil {
		return math.NaN(), err
	}
	if err := activityBrix.Check(fn, float64(b)); err != nil {
		return math.NaN(), err
	}
	if err := activityTemp.Check(fn, t.Celsius()); err != nil {
		return math.NaN(), err
	}
	y, _ := logActivity(s.moleFraction(b), t.Kelvin())
	return math.Exp(y), nil
}

func (s Solute) fromActivity(fn string, a float64, t units.Temperature) (units.Brix, error) {
	nan := units.Brix(math.NaN())
	if err := invertedShare.Check(fn, float64(s.Inverted)); err != nil {
		return nan, err
	}
	if err := activityTemp.Check(fn, t.Celsius()); err != nil {
		return nan, err
	}
	least, _ := logActivity(s.moleFraction(units.Brix(activityBrix.High)), t.Kelvin())
	if low := math.Exp(least); !limit.Holds(a, low, 1) {
		return nan, &units.RangeError{Func: fn, Arg: "activity", What: "water activity", Value: a, Low: low, High: 1,
			Hint: "water is 1 and 92 Brix the least at this temperature: check that the activity is a part of one and not a percentage"}
	}
	return s.fromLogActivity(max(math.Log(min(a, 1)), least), t.Kelvin()), nil
}

// moleFraction returns the mole fraction of the sugar.
func (s Solute) moleFraction(b units.Brix) float64 {
	n := float64(b) * s.moles()
	return n / (n + (100-float64(b))/coef.MolarWater)
}

// brix is the inverse of moleFraction.
func (s Solute) brix(x float64) units.Brix {
	ratio := x / (1 - x)
	return units.Brix(100 * ratio / (ratio + coef.MolarWater*s.moles()))
}

// logActivity returns the logarithm of the water activity at mole fraction x of
// sugar and kelvin k, and its slope with x.
func logActivity(x, k float64) (y, slope float64) {
	q := coef.ActivityQ / (gasConstant * k)
	y = math.Log1p(-x) + q*x*x*(1+x*(coef.ActivityA+x*coef.ActivityB))
	slope = -1/(1-x) + q*x*(2+x*(3*coef.ActivityA+x*4*coef.ActivityB))
	return y, slope
}

// fromLogActivity returns the sugar content where the logarithm of the water
// activity is y, which lies between those of the range.
func (s Solute) fromLogActivity(y, k float64) units.Brix {
	top := s.moleFraction(units.Brix(activityBrix.High))
	// It starts where the first two terms of the series have the answer.
	c := 0.5 - coef.ActivityQ/(gasConstant*k)
	start := (math.Sqrt(1-4*c*y) - 1) / (2 * c)
	x, _ := numeric.Newton(func(x float64) (float64, float64) {
		v, slope := logActivity(x, k)
		return v - y, slope
	}, 0, top, min(start, top), 1e-13)
	return min(s.brix(x), units.Brix(activityBrix.High))
}
