package pan

import (
	"math"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// What plug flow may be asked for.
var (
	plugSap = limit.Range{Arg: "sap", What: "sugar content of the sap", Low: 0.1, High: 92, Unit: "Brix",
		Below: "without sugar nothing gets thicker"}
	plugWay  = limit.Range{Arg: "way", What: "share of the way", Low: 0, High: 100, Unit: "%"}
	plugDeep = limit.Range{Arg: "depth", What: "depth", Low: 0, High: rigDepth.High, Unit: "m",
		Below: "a depth cannot be negative"}
	plugFlux = limit.Range{Arg: "evaporation", What: "evaporation", Low: 1e-9, High: 1, Unit: "m/s",
		Below: "without evaporation nothing moves on",
		Above: "check the unit of the evaporation"}
)

// PlugFlow returns the strength at a share of the way, counted by the water
// evaporated, through a pan so long and narrow that nothing mixes along it. It
// is what a partitioned pan comes to with many compartments, and what a few
// well-mixed ones hold at their outlets if way is the share of the evaporation
// up to there.
//
// Range: sap from 0.1 Brix, syrup up to 92 and thicker, 0 to 100 percent.
//
// Source: mass balance, B = B0/(1 - f (1 - B0/Bs)). Check value: 18.5 Brix at 92
// percent of the way from 2 to 66 (computed).
func PlugFlow(sap, syrup units.Brix, way units.Share) (units.Brix, error) {
	const fn = "pan.PlugFlow"
	if err := checkPlug(fn, sap, syrup); err != nil {
		return units.Brix(math.NaN()), err
	}
	if err := plugWay.Check(fn, float64(way)); err != nil {
		return units.Brix(math.NaN()), err
	}
	return sap / (1 - units.Brix(way.Fraction())*(1-sap/syrup)), nil
}

func checkPlug(fn string, sap, syrup units.Brix) error {
	if err := plugSap.Check(fn, float64(sap)); err != nil {
		return err
	}
	thick := limit.Range{Arg: "syrup", What: "sugar content of the syrup", Low: float64(sap), High: plugSap.High, Unit: "Brix",
		Below: "syrup is thicker than its sap"}
	return thick.Check(fn, float64(syrup))
}

// Transit returns how long liquid takes through a plug-flow pan of an even
// depth, where so much water evaporates from every part of it: how old syrup is
// when it comes off. A well-mixed rig takes about as long on the average, but
// holds some of the oldest liquid back.
//
// The depth is that of the hot liquid. The evaporation is a volume of water at
// 60 F.
//
// Range: sap from 0.1 Brix, syrup to 75 Brix and thicker, depths to 10 m,
// evaporations of 1e-9 to 1 m/s, 50 to 110 kPa. Uncertainty: foam holds less
// than its depth of liquid.
//
// Source: mass balance, t = (h/e) times the integral of rho/rho60 over the
// logarithm of B. Check value: 135.5 minutes for 2 inches from 2 to 66 Brix at 2
// US gal/ft2/h and 1 atm (computed).
func Transit(sap, syrup units.Brix, depth units.Length, evaporation units.Flux, pressure units.Pressure) (time.Duration, error) {
	const fn = "pan.Transit"
	if err := checkPlug(fn, sap, syrup); err != nil {
		return 0, err
	}
	if err := sapBrix.CheckAs(fn, "syrup", float64(syrup)); err != nil {
		return 0, err
	}
	if err := plugDeep.Check(fn, float64(depth)); err != nil {
		return 0, err
	}
	if err := plugFlux.Check(fn, float64(evaporation)); err != nil {
		return 0, err
	}
	h, err := newHot(fn, "pressure", pressure)
	if err != nil {
		return 0, err
	}
	water, err := density.Water(units.Fahrenheit(60))
	if err != nil {
		return 0, units.Under(fn, err)
	}
	// Gauss's rule of five points on each of a few stretches of ln B.
	const stretches = 8
	span := math.Log(float64(syrup/sap)) / stretches
	sum := 0.0
	for i := range stretches {
		for k, x := range gaussPoints {
			b := sap.Fraction() * math.Exp(span*(float64(i)+(1+x)/2))
			sum += gaussWeights[k] / 2 * span / h.at(b).volume
		}
	}
	return units.VolumeRate(evaporation).Time(units.Volume(float64(depth) * sum / float64(water))), nil
}

// Gauss-Legendre quadrature on -1 to 1.
var (
	gaussPoints  = [5]float64{-0.9061798459386640, -0.5384693101056831, 0, 0.5384693101056831, 0.9061798459386640}
	gaussWeights = [5]float64{0.2369268850561891, 0.4786286704993665, 128.0 / 225, 0.4786286704993665, 0.2369268850561891}
)
