package finish

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Standard uncertainties that stand behind a stop.
const (
	// Of a hydrometer in use, as a part of the density. Aguilera, Wright, Bean,
	// Measurement Science and Technology 19 (2008) 015104, abstract: this or more.
	floatSigma = 370e-6
	// Of the expansion above 90 C, in Brix at 99 and 105 C: the flattening of
	// the density polynomial.
	expansion99, expansion105 = 0.035, 0.075
)

// What a stop may be asked for.
var (
	stopTarget = limit.Range{Arg: "target", What: "target", Low: 50, High: 80, Unit: "Brix",
		Below: "syrup so thin ferments",
		Above: "candy is finished by its boiling temperature"}
	stopDiff = limit.Range{Arg: "off", What: "temperature error", Low: -5, High: 5, Unit: "C deg",
		Below: "a thermometer so far off is broken: calibrate it in boiling water",
		Above: "a thermometer so far off is broken: calibrate it in boiling water"}
	stopSigma = limit.Range{Arg: "ThermometerStop.ProbeBy", What: "standard uncertainty", Low: 0, High: 10,
		Below: "an uncertainty is not negative",
		Above: "with that the stop tells nothing: check the unit"}
	stopDepthSigma = limit.Range{Arg: "ThermometerStop.DepthBy", What: "standard uncertainty of the depth", Low: 0, High: 0.5, Unit: "m",
		Below: "an uncertainty is not negative",
		Above: "check inches against feet"}
	stopDepth = limit.Range{Arg: "over", What: "liquid over the probe", Low: -0.5, High: 0.5, Unit: "m",
		Below: "check inches against feet",
		Above: "check inches against feet"}
)

// A ThermometerStop is a boil that is ended by a thermometer, which was set by
// boiling water. All that ends in By is a standard uncertainty: what you would
// put down as plus or minus two times of three.
type ThermometerStop struct {
	Target   units.Brix
	Pressure units.Pressure // when water was boiled
	// ProbeBy is that of the difference between two readings of the probe.
	ProbeBy units.TempDiff
	// DepthBy is that of the liquid over the probe, against the calibration.
	DepthBy units.Length
	// BarometerBy is that of how far the barometer has moved since; in a day 0.3
	// inHg is nothing unusual (common practice).
	BarometerBy units.Pressure
	// Inverted is the share of the sugar that is taken as inverted in setting
	// the stop, and InvertedBy that of it.
	Inverted, InvertedBy units.Share
}

// ThermometerParts tell what makes a stop by thermometer uncertain: standard
// uncertainties in Brix, part by part and all together.
type ThermometerParts struct {
	Probe, Depth, Barometer, Inverted, Formula, Total units.Brix
}

// Parts returns the standard uncertainty of the stop, part by part. All together
// is the root of the sum of squares: the parts know nothing of each other.
//
// Range: targets of 50 to 80 Brix, 20 to 120 kPa, inverted shares to 20 percent
// with their uncertainty; the other uncertainties of 0 to 10 C deg, 0.5 m, 10
// kPa. All parts are NaN beside an error.
//
// Source: [boil.Rise], [DepthCost], and [boil.RiseDoubt] for the formula. Check values at 66
// Brix and 1 atm: 0.26 Brix for 0.1 F of the probe, 0.8 for 2 in of depth, 1.3 for
// 0.3 inHg, 0.44 of the formula (computed).
func (s ThermometerStop) Parts() (ThermometerParts, error) {
	const fn = "finish.ThermometerStop.Parts"
	d, err := s.parts(fn)
	if err != nil {
		nan := units.Brix(math.NaN())
		return ThermometerParts{nan, nan, nan, nan, nan, nan}, limit.Renamed(fn, err,
			"pressure", "ThermometerStop.Pressure", "Solute.Inverted", "ThermometerStop.Inverted", "rise", "answer")
	}
	return d, nil
}

func (s ThermometerStop) parts(fn string) (d ThermometerParts, err error) {
	if err := stopTarget.CheckAs(fn, "ThermometerStop.Target", float64(s.Target)); err != nil {
		return d, err
	}
	for _, by := range [...]named{
		{"ThermometerStop.ProbeBy", s.ProbeBy.CelsiusDegrees()}, {"ThermometerStop.BarometerBy", s.BarometerBy.Kilopascals()},
		{"ThermometerStop.InvertedBy", float64(s.InvertedBy)},
	} {
		if err := stopSigma.CheckAs(fn, by.arg, by.value); err != nil {
			return d, err
		}
	}
	if err := stopDepthSigma.Check(fn, s.DepthBy.Meters()); err != nil {
		return d, err
	}
	sap := sugar.Solute{Inverted: s.Inverted}
	if d.Probe, err = errorCost(fn, sap, s.Target, s.Pressure, s.ProbeBy); err != nil {
		return d, err
	}
	rise, err := rise(fn, sap, s.Target, s.Pressure)
	if err != nil {
		return d, err
	}
	if d.Formula, err = errorCost(fn, sap, s.Target, s.Pressure, riseShare*rise); err != nil {
		return d, err
	}
	// Syrup thins faster than it thickens with an error: half the way between an
	// error up and one down is what an uncertainty means.
	for _, sign := range [...]float64{-0.5, 0.5} {
		depth, err := depthCost(fn, sap, s.Target, s.Pressure, s.DepthBy*units.Length(2*sign))
		if err != nil {
			return d, err
		}
		weather, err := pressureCost(fn, sap, s.Target, s.Pressure, s.BarometerBy*units.Pressure(2*sign))
		if err != nil {
			return d, err
		}
		d.Depth -= depth * units.Brix(sign)
		d.Barometer -= weather * units.Brix(sign)
	}
	// More is always possible of the share, less not. A share that is known leaves
	// nothing, and not what rounding leaves of a way there and back.
	if s.InvertedBy > 0 {
		more, err := strength(fn, sugar.Solute{Inverted: s.Inverted + s.InvertedBy}, rise, s.Pressure)
		if err != nil {
			return d, err
		}
		d.Inverted = s.Target - more
	}
	d.Total = rootSum(d.Probe, d.Depth, d.Barometer, d.Inverted, d.Formula)
	return d, nil
}

// A HydrometerStop is a boil that is ended by a hydrometer in a cup drawn from
// the pan. All that ends in By is a standard uncertainty: half of a Calibration in
// [example.org/sapreckoner/density.Doubt].
type HydrometerStop struct {
	Target     units.Brix
	Instrument density.Hydrometer
	Cup        units.Temperature // of the syrup when it is read
	CupBy      units.TempDiff
	ScaleBy    units.Brix // half of the field instruments checked lie within 0.2 Brix
	ReadingBy  units.Brix // of the eye at the stem
}

// HydrometerParts tell what makes a stop by hydrometer uncertain: standard
// uncertainties in Brix, part by part and all together. Float is that of surface
// tension and the like, Expansion that of the density above 90 C.
type HydrometerParts struct {
	Cup, Scale, Reading, Float, Expansion, Total units.Brix
}

// Parts returns the standard uncertainty of the stop, part by part and as the
// root of the sum of squares. Compare it with [ThermometerStop.Parts] to see
// which instrument to trust.
//
// Range: targets of 50 to 80 Brix, cups to 110 C; uncertainties of 0 to 10.
// All parts are NaN beside an error.
//
// Source: [example.org/sapreckoner/density.Hydrometer]; 370e-6 of density in use
// (Aguilera, Wright, Bean, Measurement Science and Technology 19 (2008) 015104,
// abstract); 0.035 Brix at 99 C and 0.075 at 105 of expansion (computed). Check
// value: 0.08 Brix of the float at 66.9 Brix (computed).
func (s HydrometerStop) Parts() (HydrometerParts, error) {
	const fn = "finish.HydrometerStop.Parts"
	d, err := s.parts(fn)
	if err != nil {
		nan := units.Brix(math.NaN())
		return HydrometerParts{nan, nan, nan, nan, nan, nan}, limit.Renamed(fn, err, "at", "HydrometerStop.Cup", "brix", "HydrometerStop.Target")
	}
	return d, nil
}

func (s HydrometerStop) parts(fn string) (d HydrometerParts, err error) {
	if err := stopTarget.CheckAs(fn, "HydrometerStop.Target", float64(s.Target)); err != nil {
		return d, err
	}
	for _, by := range [...]named{
		{"HydrometerStop.CupBy", s.CupBy.CelsiusDegrees()}, {"HydrometerStop.ScaleBy", float64(s.ScaleBy)}, {"HydrometerStop.ReadingBy", float64(s.ReadingBy)},
	} {
		if err := stopSigma.CheckAs(fn, by.arg, by.value); err != nil {
			return d, err
		}
	}
	shown, err := s.Instrument.Reading(s.Target, s.Cup)
	if err != nil {
		return d, units.Under(fn, err)
	}
	// Toward the middle of the range, so that a cup at its end has an answer.
	by := s.CupBy
	if s.Cup.Celsius() > 55 {
		by = -by
	}
	off, err := s.Instrument.Brix(shown, s.Cup.Add(by))
	if err != nil {
		return d, units.Under(fn, err)
	}
	rho, err := density.Solution(s.Target, s.Cup)
	if err != nil {
		return d, units.Under(fn, err)
	}
	lifted, err := density.BrixFromDensity(rho*(1+floatSigma), s.Cup)
	if err != nil {
		return d, units.Under(fn, err)
	}
	d = HydrometerParts{
		Cup:     units.Brix(math.Abs(float64(off - s.Target))),
		Scale:   s.ScaleBy,
		Reading: s.ReadingBy,
		Float:   lifted - s.Target,
	}
	if c := s.Cup.Celsius(); density.Extrapolated(s.Cup) {
		d.Expansion = units.Brix(expansion99 * (c - 90) / 9)
		if c > 99 {
			d.Expansion = units.Brix(expansion99 + (expansion105-expansion99)*(c-99)/6)
		}
	}
	d.Total = rootSum(d.Cup, d.Scale, d.Reading, d.Float, d.Expansion)
	return d, nil
}

// A named value is a field with its stable name.
type named struct {
	arg   string
	value float64
}

func rootSum(parts ...units.Brix) units.Brix {
	var sum float64
	for _, p := range parts {
		sum += float64(p * p)
	}
	return units.Brix(math.Sqrt(sum))
}
