package boil

import (
	"math"

	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// region4 holds the coefficients n1 to n10 of the saturation line of
// IAPWS-IF97, with temperatures in kelvin and pressures in megapascals.
var region4 = coef.Region4()

// coldest is where the source begins, in kelvin: below it water freezes.
const coldest = 273.15

// What boiling water may be asked for; the source reaches further up.
var (
	waterPressure = limit.Range{Arg: "pressure", Low: vapor(coldest) / 1000, High: 3000, Unit: "kPa",
		Below: "that is nearly a vacuum: check the unit of the pressure",
		Above: "that is far above any weather: check the unit of the pressure"}
	waterTemp = limit.Range{Arg: "at", What: "boiling point of water",
		Low: coldest - 273.15, High: saturation(3e6) - 273.15, Unit: "C",
		Below: "water does not boil so cold in any weather: check the thermometer",
		Above: "water does not boil so hot in any weather: check Fahrenheit against Celsius"}
)

// Water returns the boiling point of water under a pressure, which is the
// station pressure at the pan.
//
// Range: 0.611213 to 3,000 kPa. Uncertainty: 0.025 percent of the pressure (from
// memory, of the source), 0.007 K at 1 atm; a barometer is worse.
//
// Source: IAPWS R7-97(2012), region 4, eq. 31. Check values: 372.755919 K at
// 0.1 MPa (Table 36); 99.974 C at 1 atm, and not 100 (computed). It rises by
// 1.69 F for an inch of mercury there.
//
// Cites iapws-if97.
func Water(pressure units.Pressure) (units.Temperature, error) {
	if err := waterPressure.Check("boil.Water", pressure.Kilopascals()); err != nil {
		return units.Celsius(math.NaN()), err
	}
	return units.Kelvin(saturation(pressure.Pascals())), nil
}

// PressureFromWater returns the pressure under which water boils at a
// temperature: the inverse of [Water].
//
// It is the way to calibrate: water boils at 208.9 F here today, and the answer
// is the pressure that [SyrupPoint] wants, whatever barometer and elevation say.
// Read it with the probe, at the depth and on the fire of the syrup to come: the
// error of the thermometer then cancels.
//
// It is the vapor pressure of water as well, down to freezing.
//
// Range: 0 to 233.86 C, the boiling points of 0.611213 to 3,000 kPa. Uncertainty:
// 0.1 F at the thermometer is 0.06 inHg.
//
// Source: IAPWS R7-97(2012), region 4, eq. 30. Check value: 0.353658941e-2 MPa
// at 300 K (Table 35).
//
// Cites iapws-if97.
func PressureFromWater(at units.Temperature) (units.Pressure, error) {
	if err := waterTemp.Check("boil.PressureFromWater", at.Celsius()); err != nil {
		return units.Pressure(math.NaN()), err
	}
	// Rounding must not carry the ends of one range out of the other.
	kPa := min(max(vapor(at.Kelvin())/1000, waterPressure.Low), waterPressure.High)
	return units.Kilopascals(kPa), nil
}

// saturation returns the boiling point of water under p pascals, in kelvin:
// the equation of the source solved for the temperature.
func saturation(p float64) float64 { return fromRoot(root(p)) }

// root is the fourth root of p pascals in megapascals, of which the source makes the
// temperature.
func root(p float64) float64 { return math.Sqrt(math.Sqrt(p / 1e6)) }

func fromRoot(beta float64) float64 {
	n := &region4
	e := n[5] + beta*(n[2]+beta)
	f := n[6] + beta*(n[3]+beta*n[0])
	g := n[7] + beta*(n[4]+beta*n[1])
	d := 2 * g / (-f - math.Sqrt(f*f-4*e*g))
	s := n[9] + d
	return (s - math.Sqrt(s*s-4*(n[8]+n[9]*d))) / 2
}

// vapor returns the pressure under which water boils at k kelvin, in pascals.
func vapor(k float64) float64 {
	n := &region4
	theta := k + n[8]/(k-n[9])
	a := n[1] + theta*(n[0]+theta)
	b := n[4] + theta*(n[3]+theta*n[2])
	c := n[7] + theta*(n[6]+theta*n[5])
	root := 2 * c / (-b + math.Sqrt(b*b-4*a*c))
	return root * root * root * root * 1e6
}
