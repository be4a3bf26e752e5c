package boil

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A Probe is the end of a thermometer under the liquid that it is read in. The
// liquid over it presses on it, and so what boils there is hotter than what boils
// at the surface: 0.3 F for two inches of syrup.
//
// The thermometer itself is taken to be right. One that was set by boiling water
// at the same depth has three quarters of the liquid's weight in it already.
type Probe struct {
	Pressure units.Pressure // on the surface
	Over     units.Length   // liquid over the probe
	Sugar    sugar.Solute   // the zero value is sucrose
}

// What a probe may be asked for.
var probeOver = limit.Range{Arg: "Probe.Over", What: "liquid over the probe", Low: 0, High: 0.5, Unit: "m",
	Below: "measure from the surface down to the probe",
	Above: "check inches against feet"}

// Shows returns what the thermometer shows in boiling liquid of a strength.
//
// Range: 0 to 92 Brix, 20 to 120 kPa at the surface, 0 to 0.5 m of liquid, an
// inverted share of 0 to 20 percent. Uncertainty: [RiseDoubt]; an inch of froth
// weighs next to nothing and is no inch of liquid, 0.16 F.
//
// Source: hydrostatics as of [PressureAtDepth], with
// [example.org/sapreckoner/density.Solution] at the boiling point, or at 110 C and
// 85 Brix where it ends before. Check value: 0.32 F more under 2 in of 66 Brix at
// 1 atm than at the surface (computed).
func (p Probe) Shows(brix units.Brix) (units.Temperature, error) {
	const fn = "boil.Probe.Shows"
	if err := p.check(fn, brix); err != nil {
		return units.Celsius(math.NaN()), err
	}
	return p.shows(fn, brix)
}

// Brix returns the strength of boiling liquid in which the thermometer shows so
// much: the inverse of [Probe.Shows], with its uncertainty.
//
// Range: what is shown from 0 to 92 Brix; the rest as there.
//
// Check value: 66.9 Brix where 219.84 F is shown under 2 in at 1 atm (computed).
func (p Probe) Brix(shown units.Temperature) (units.Brix, error) {
	const fn = "boil.Probe.Brix"
	if err := p.check(fn, 0); err != nil {
		return units.Brix(math.NaN()), err
	}
	low, err := p.shows(fn, units.Brix(riseBrix.Low))
	if err != nil {
		return units.Brix(math.NaN()), err
	}
	return p.brix(fn, shown, low, low)
}

// brix is [Probe.Brix] above what water shows, with the least that may be shown.
func (p Probe) brix(fn string, shown, water, least units.Temperature) (units.Brix, error) {
	nan := units.Brix(math.NaN())
	high, err := p.shows(fn, units.Brix(riseBrix.High))
	if err != nil {
		return nan, err
	}
	if c := shown.Celsius(); !limit.Holds(c, water.Celsius(), high.Celsius()) {
		return nan, &units.RangeError{Func: fn, Arg: "shown", Value: c, Low: least.Celsius(), High: high.Celsius(), Unit: "C",
			Hint: "it ends at candy at that depth: is it boiling, and is the pressure that of today?"}
	}
	off := func(b float64) float64 {
		t, err := p.shows(fn, units.Brix(b))
		if err != nil {
			return math.NaN()
		}
		return float64(t.Sub(shown))
	}
	b, ok := numeric.Root(off, riseBrix.Low, riseBrix.High, 1e-10)
	if !ok { // a hair beyond an end
		b = riseBrix.Low
		if shown.Sub(water) > high.Sub(shown) {
			b = riseBrix.High
		}
	}
	return units.Brix(b), nil
}

// Surface returns the boiling point at the surface of the liquid in which the
// thermometer shows so much, as a [example.org/sapreckoner/boil/finish.Watch]
// wants its readings: that of [Probe.Brix]. Liquid that is not at the boil yet
// is no hotter below than above; from a reading under that of boiling water the
// share of water is taken away, so that readings of one evening stay in their
// order.
//
// Range: 0 C to what 92 Brix shows; the rest as of [Probe.Shows]. Check value:
// 219.51 F where 219.84 is shown under 2 in of syrup at 1 atm (computed).
func (p Probe) Surface(shown units.Temperature) (units.Temperature, error) {
	const fn = "boil.Probe.Surface"
	nan := units.Celsius(math.NaN())
	if err := p.check(fn, 0); err != nil {
		return nan, err
	}
	low, err := p.shows(fn, units.Brix(riseBrix.Low))
	if err != nil {
		return nan, err
	}
	if shown.Celsius() >= -limit.HairC && shown.Compare(low) < 0 {
		return shown.Add(units.Kelvin(saturation(p.Pressure.Pascals())).Sub(low)), nil
	}
	b, err := p.brix(fn, shown, low, units.Celsius(0))
	if err != nil {
		return nan, err
	}
	return pointOf(fn, p.Sugar, b, p.Pressure)
}

// Depth returns how much liquid of a strength stands over a probe that shows so
// much: it turns [Probe.Shows] round for Over, which counts for nothing here.
// Where a cup read by a hydrometer and the thermometer disagree, it tells whether
// the depth of the probe could be why.
//
// Range: temperatures from the boiling point at the surface to that under 0.5 m;
// the rest as of [Probe.Shows]. A colder one is no matter of depth. Uncertainty:
// 1.1 in for the 0.1 K of [RiseDoubt] at syrup, 0.6 in for 0.1 F of the
// thermometer.
//
// Source: the activity of the water times the vapor pressure at the temperature
// shown is the pressure at the probe; hydrostatics. Check value: 2 in where
// 219.84 F is shown in 66.9 Brix at 1 atm (computed).
func (p Probe) Depth(shown units.Temperature, brix units.Brix) (units.Length, error) {
	const fn = "boil.Probe.Depth"
	nan := units.Length(math.NaN())
	if err := p.check(fn, brix); err != nil {
		return nan, err
	}
	p.Over = 0
	low, err := p.shows(fn, brix)
	if err != nil {
		return nan, err
	}
	p.Over = units.Length(probeOver.High)
	high, err := p.shows(fn, brix)
	if err != nil {
		return nan, err
	}
	if c := shown.Celsius(); !limit.Holds(c, low.Celsius(), high.Celsius()) {
		return nan, &units.RangeError{Func: fn, Arg: "shown", Value: c, Low: low.Celsius(), High: high.Celsius(), Unit: "C",
			Hint: "no depth explains that: boil water with the thermometer, look at the barometer, and read the cup again"}
	}
	a, err := sugar.Solute(p.Sugar).WaterActivity(brix, shown)
	if err != nil {
		return nan, units.Under(fn, err)
	}
	weight, err := headOf(fn, brix, low)
	if err != nil {
		return nan, err
	}
	deep := (a*vapor(shown.Kelvin()) - p.Pressure.Pascals()) / weight
	return units.Length(min(max(deep, probeOver.Low), probeOver.High)), nil
}

func (p Probe) check(fn string, b units.Brix) error {
	if err := probeOver.Check(fn, p.Over.Meters()); err != nil {
		return err
	}
	if err := riseBrix.Check(fn, float64(b)); err != nil {
		return err
	}
	if err := riseInverted.Check(fn, float64(p.Sugar.Inverted)); err != nil {
		return err
	}
	return panPressure.CheckAs(fn, "Probe.Pressure", p.Pressure.Kilopascals())
}

// shows is [Probe.Shows], unchecked.
func (p Probe) shows(fn string, b units.Brix) (units.Temperature, error) {
	at, err := pointOf(fn, p.Sugar, b, p.Pressure)
	if err != nil || p.Over == 0 {
		return at, err
	}
	weight, err := headOf(fn, b, at)
	if err != nil {
		return units.Celsius(math.NaN()), err
	}
	return pointOf(fn, p.Sugar, b, p.Pressure+units.Pascals(weight*p.Over.Meters()))
}

// headOf returns the pressure of a meter of liquid of b Brix that boils at a
// temperature, in Pa. Beyond 110 C and 85 Brix, where the density ends, it is
// taken from there: it moves by 3 percent at most.
func headOf(fn string, b units.Brix, at units.Temperature) (float64, error) {
	rho, err := density.Solution(min(b, heatHigh), units.Celsius(min(at.Celsius(), hottestPan)))
	if err != nil {
		return math.NaN(), units.Under(fn, err)
	}
	return float64(rho) * units.StandardGravity, nil
}
