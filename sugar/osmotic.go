package sugar

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// molarMassWater is that of water in kg/mol (IAPWS-95). The activity model counts
// its moles with the rounded 18.02 g/mol of its own source, coef.MolarWater.
const molarMassWater = 18.015268e-3

// What the osmotic pressure may be asked for.
var (
	osmoticBrix = limit.Range{Arg: "brix", What: "sugar content", Low: 0, High: 70, Unit: "Brix",
		Below: "less than no sugar: check the instrument in plain water",
		Above: "no membrane works so thick: at 70 Brix it would have to bear 250 bar"}
	osmoticTemp = limit.Range{Arg: "at", What: "temperature", Low: 0, High: 110, Unit: "C",
		Below: "ice may be forming: thaw it and let it mix",
		Above: "hotter than sap under a membrane: check Fahrenheit against Celsius"}
)

// OsmoticPressure returns the osmotic pressure of a solution of sucrose of the
// given strength at the given temperature: the least pressure that presses
// water out of it through a membrane. A pump must beat that of the concentrate,
// not that of the sap.
//
// Range: 0 to 70 Brix, 0 to 110 C. Uncertainty: that of [WaterActivity]; it is
// high by 0.4 percent at 3.3 Brix, 2.3 at 25 and 0.2 at 67. Direct measurements
// of 1914 lie above it, by 6 percent at 3.3 Brix. Minerals of the sap add a
// little.
//
// Source: -(R T/V) ln a with V the molar volume of water, as of
// [example.org/sapreckoner/density.Water]. Check value: 1.43 bar at 2 Brix and
// 55 F (computed).
//
// Cites starzak-peacock-1997, morse-1914.
func OsmoticPressure(brix units.Brix, at units.Temperature) (units.Pressure, error) {
	const fn = "sugar.OsmoticPressure"
	if err := osmoticBrix.Check(fn, float64(brix)); err != nil {
		return units.Pressure(math.NaN()), err
	}
	unit, err := osmoticUnit(fn, at)
	if err != nil {
		return units.Pressure(math.NaN()), err
	}
	return osmotic(brix, at, unit), nil
}

// BrixFromOsmoticPressure returns the sugar content that has the given
// osmotic pressure at the given temperature: the inverse of [OsmoticPressure]. With the
// pressure that a pump can keep up it is the strength at which the machine
// stands still.
//
// Range: the pressures of 0 to 70 Brix at that temperature. Uncertainty: that
// of [OsmoticPressure]. Check value: 20.0 Brix at 18.9 bar and 55 F (computed).
func BrixFromOsmoticPressure(pressure units.Pressure, at units.Temperature) (units.Brix, error) {
	const fn = "sugar.BrixFromOsmoticPressure"
	unit, err := osmoticUnit(fn, at)
	if err != nil {
		return units.Brix(math.NaN()), err
	}
	top := units.Brix(osmoticBrix.High)
	if high := osmotic(top, at, unit); !limit.Holds(pressure, 0, high) {
		return units.Brix(math.NaN()), &units.RangeError{Func: fn, Arg: "pressure", What: "osmotic pressure", Value: pressure.Bars(), Low: 0, High: high.Bars(), Unit: "bar",
			Hint: "water is 0 and 70 Brix the most at this temperature: check the unit of the pressure"}
	}
	return min(Solute{}.fromLogActivity(-float64(pressure/unit), at.Kelvin()), top), nil
}

// osmoticUnit returns R T/V, the pressure of an activity of 1/e.
func osmoticUnit(fn string, t units.Temperature) (units.Pressure, error) {
	if err := osmoticTemp.Check(fn, t.Celsius()); err != nil {
		return units.Pressure(math.NaN()), err
	}
	d, err := density.Water(t)
	if err != nil {
		return units.Pressure(math.NaN()), units.Under(fn, err)
	}
	return units.Pascals(gasConstant * t.Kelvin() * float64(d) / molarMassWater), nil
}

func osmotic(b units.Brix, t units.Temperature, unit units.Pressure) units.Pressure {
	y, _ := logActivity(Solute{}.moleFraction(b), t.Kelvin())
	return units.Pressure(-y) * unit
}
