package boil

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// What boiling syrup may be asked for.
var (
	panPressure = limit.Range{Arg: "pressure", What: "pressure", Low: 20, High: 120, Unit: "kPa",
		Below: "thinner air than on any mountain: check the unit of the pressure",
		Above: "above any weather: check the unit; pressure kettles are not covered"}
	riseBrix = limit.Range{Arg: "brix", What: "sugar content", Low: 0, High: 92, Unit: "Brix",
		Below: "less than no sugar: check the instrument in plain water",
		Above: "hardly any water is left to boil: the formula ends here"}
	riseInverted = limit.Range{Arg: "Solute.Inverted", What: "inverted share", Low: 0, High: 20, Unit: "%",
		Below: "a share of the sugar cannot be less than none",
		Above: "a thermometer does not finish such a sap: syrup of glucose and fructose, as of birch, would stop at 51.5 Brix at the temperature of 66.9 Brix maple syrup, which ferments; finish it by density"}
)

const (
	// The search for a boiling point ends when a step is this small, in kelvin;
	// what is left is then below 1e-11 K.
	// It takes two to four steps.
	pointStep  = 1e-6
	pointSteps = 30
	// hottest is above the boiling point of everything in the range, in Celsius.
	hottest = 140.0
)

// Rise returns how far above water a solution of sucrose boils, both under one
// pressure.
//
// Range: 0 to 92 Brix, 20 to 120 kPa. The rise shrinks with the pressure: a
// fixed rise of 7.2 F overshoots by 0.33 Brix at 90 kPa and by 0.65 at 80.
// Uncertainty: 2.4 percent of the rise, 0.1 K at 66.9 Brix: see [RiseDoubt];
// published finishing points lie up to 0.2 F lower. At 66 Brix 0.1 F is 0.26
// Brix. Inverted sugar adds: see [sugar.Solute].
//
// It is the exact form: the temperature at which the water activity, of the
// equation at [example.org/sapreckoner/sugar.WaterActivity], times the vapor
// pressure of water is that pressure.
//
// Source: Starzak, M., Peacock, S. D., Zuckerindustrie 122 (1997) 380-387, for
// the activity; IAPWS R7-97(2012) for water. Check value: 4.199 K (7.56 F) at
// 66.9 Brix and 1 atm (computed).
//
// Cites starzak-peacock-1997, iapws-if97.
func Rise(brix units.Brix, pressure units.Pressure) (units.TempDiff, error) {
	return riseOf("boil.Rise", sugar.Solute{}, brix, pressure)
}

// RiseOf is [Rise] for a sugar of which a part is inverted.
//
// Range: a share of 0 to 20 percent; the rest as there. Check value: 7.56 F at
// 65.9 Brix, 5 percent and 1 atm (computed).
func RiseOf(solute sugar.Solute, brix units.Brix, pressure units.Pressure) (units.TempDiff, error) {
	return riseOf("boil.RiseOf", solute, brix, pressure)
}

// BrixFromRise returns the sugar content of a sucrose solution that boils by
// rise above water, both under one pressure: the inverse of [Rise], with its
// uncertainty.
//
// Range: the rises of 0 to 92 Brix, 20 to 120 kPa.
//
// Check value: 66.9 Brix of 7.56 F at 1 atm (computed).
func BrixFromRise(rise units.TempDiff, pressure units.Pressure) (units.Brix, error) {
	return brixFromRiseOf("boil.BrixFromRise", sugar.Solute{}, rise, pressure)
}

// BrixFromRiseOf is [BrixFromRise] for a sugar of which a part is
// inverted.
//
// Range: a share of 0 to 20 percent; the rest as there. Check value: 65.9 Brix
// of 7.56 F, 5 percent and 1 atm (computed).
func BrixFromRiseOf(solute sugar.Solute, rise units.TempDiff, pressure units.Pressure) (units.Brix, error) {
	return brixFromRiseOf("boil.BrixFromRiseOf", solute, rise, pressure)
}

func riseOf(fn string, s sugar.Solute, b units.Brix, p units.Pressure) (units.TempDiff, error) {
	if err := checkRise(fn, s, b, p); err != nil {
		return units.TempDiff(math.NaN()), err
	}
	water, syrup, err := pointsOf(fn, s, b, p)
	return units.TempDiff(syrup - water), err
}

func brixFromRiseOf(fn string, s sugar.Solute, rise units.TempDiff, p units.Pressure) (units.Brix, error) {
	nan := units.Brix(math.NaN())
	if err := checkRise(fn, s, 0, p); err != nil {
		return nan, err
	}
	water := units.Kelvin(saturation(p.Pascals()))
	if rise < 0 && rise >= -limit.HairC { // what boils is water
		rise = 0
	}
	at := water.Add(rise)
	if rise >= 0 && at.Celsius() <= hottest {
		if b, err := s.BrixFromLogActivity(min(math.Log(p.Pascals()/vapor(at.Kelvin())), 0), at); err == nil {
			return b, nil
		}
	}
	top, err := pointOf(fn, s, units.Brix(riseBrix.High), p)
	if err != nil {
		return nan, err
	}
	return nan, &units.RangeError{Func: fn, Arg: "rise", Value: float64(rise), Low: 0, High: top.Sub(water).CelsiusDegrees(), Unit: "C deg",
		Hint: "it counts from the boiling point of water today, and ends at 92 Brix: boil water and read the thermometer again"}
}

// checkRise tells whether s, b and p lie in the range.
func checkRise(fn string, s sugar.Solute, b units.Brix, p units.Pressure) error {
	if err := riseInverted.Check(fn, float64(s.Inverted)); err != nil {
		return err
	}
	if err := riseBrix.Check(fn, float64(b)); err != nil {
		return err
	}
	return panPressure.Check(fn, p.Kilopascals())
}

// pointOf returns the boiling point of a solution that was checked.
func pointOf(fn string, s sugar.Solute, b units.Brix, p units.Pressure) (units.Temperature, error) {
	_, syrup, err := pointsOf(fn, s, b, p)
	return units.Kelvin(syrup), err
}

// pointsOf returns the boiling points of water and of the solution, in kelvin.
//
// The water of a solution of activity a boils under p where pure water boils
// under p/a. The activity hardly moves with temperature, and so the point where
// both belong together is found by going round: what is left after a round is a
// small and nearly constant share of what was left before. It is the slope of the
// boiling point of water with the logarithm of the pressure, about 28.5 K at 100 C
// and as the square of the temperature, times that of the logarithm of the
// activity; from the second round on it is known from the rounds before.
func pointsOf(fn string, s sugar.Solute, b units.Brix, p units.Pressure) (water, syrup float64, err error) {
	l, err := s.LogActivity(b)
	if err != nil {
		return math.NaN(), math.NaN(), units.Under(fn, err)
	}
	const slope = 28.5 / (373.15 * 373.15)
	pure := root(p.Pascals())
	water = fromRoot(pure)
	k := water
	last, share := 0.0, slope*l.Kelvin
	step := math.Inf(1)
	for range pointSteps {
		left := fromRoot(pure*math.Exp((l.Mixing+l.Kelvin/k)/-4)) - k
		if last != 0 {
			share = 1 - (last-left)/step
		}
		step = left / (1 - share)
		last = left
		k += step
		if math.Abs(step) < pointStep {
			break
		}
	}
	return water, k, nil
}
