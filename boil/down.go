package boil

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// hottestPan is the temperature to which the density of hot syrup is known, in
// degrees Celsius.
const hottestPan = 110.0

// What a lot may be boiled down to.
var (
	downFrom = limit.Range{Arg: "sap", What: "sugar content of the sap", Low: heatLow, High: heatHigh, Unit: "Brix",
		Below: "that is water: nothing is left when it has boiled",
		Above: "that is candy already"}
	downTo = limit.Range{Arg: "to", Low: heatLow, High: heatHigh, Unit: "Brix",
		Below: "that is water: name the strength to boil to",
		Above: "the volume of candy on the fire is not known"}
	downVolume = limit.Range{Arg: "volume", Low: 0, High: 1e6, Unit: "m3",
		Below: "a volume is not negative",
		Above: "check its unit"}
)

// Down returns what is left of a lot that has boiled down to a strength under
// the pressure at the pan, boiling: its sugar with less water.
//
// Range: sap of 0.1 to 85 Brix; strengths from there to 85 Brix and to where it
// boils at 110 C, 80.8 Brix at 1 atm; 20 to 120 kPa. An empty lot leaves none.
// Uncertainty: that of [SyrupPoint] and of the density at the boil, 0.1 percent
// of the volume.
//
// Source: conservation of sugar, m1 = m B/B1. Check value: 4 lb of 50 Brix leave
// 3 lb of 66.67 (by arithmetic).
func Down(sap sugar.Lot, to units.Brix, pressure units.Pressure) (sugar.Lot, error) {
	const fn = "boil.Down"
	if err := downTo.Check(fn, float64(to)); err != nil {
		return sugar.Lot{}, err
	}
	most, err := downMost(fn, sap, pressure)
	if err != nil || sap.Empty() {
		return sugar.Lot{}, err
	}
	if from := sap.Brix(); !limit.Holds(to, from, most) {
		return sugar.Lot{}, &units.RangeError{Func: fn, Arg: downTo.Arg, Value: float64(to), Low: float64(from), High: float64(most), Unit: "Brix",
			Hint: "boiling never thins, and above 110 C the volume of syrup is not known"}
	}
	return down(fn, sap, min(max(to, sap.Brix()), most), pressure)
}

// DownToVolume returns what is left of a lot that has boiled down to a volume,
// measured boiling: when to take a small batch off a big pan, before it lies too
// low. It is the inverse of [Down]. A lot that fits into the volume comes back
// boiling, as strong as it is.
//
// Range: volumes down to that of the strongest lot of [Down]; the rest as there.
//
// Source: conservation of sugar and [example.org/sapreckoner/density.Solution]
// at the boiling point. Check value: 20 Brix when 60 US gal of 2 Brix
// at 40 F have boiled down to 5.83 at 1 atm (computed).
func DownToVolume(sap sugar.Lot, volume units.Volume, pressure units.Pressure) (sugar.Lot, error) {
	const fn = "boil.DownToVolume"
	if err := downVolume.Check(fn, float64(volume)); err != nil {
		return sugar.Lot{}, err
	}
	most, err := downMost(fn, sap, pressure)
	if err != nil || sap.Empty() {
		return sugar.Lot{}, err
	}
	least, err := down(fn, sap, most, pressure)
	if err != nil {
		return sugar.Lot{}, err
	}
	if !(volume >= least.Volume() || limit.Same(volume, least.Volume())) {
		return sugar.Lot{}, &units.RangeError{Func: fn, Arg: downVolume.Arg, Value: float64(volume), Low: float64(least.Volume()), High: downVolume.High, Unit: "m3",
			Hint: "it would be candy before it has come down so far: take it off earlier"}
	}
	whole, err := down(fn, sap, sap.Brix(), pressure)
	if err != nil || whole.Volume() <= volume {
		return whole, err
	}
	// The volume over the mass is all but a straight line: what goes off is water,
	// and takes about the room of boiling water. Each step leaves a twentieth of
	// the error.
	rho, err := density.Water(units.Celsius(min(whole.Temperature().Celsius(), hottestPan)))
	if err != nil {
		return sugar.Lot{}, units.Under(fn, err)
	}
	over := func(mass float64) (y, slope float64) {
		l, err := down(fn, sap, sap.Brix()*units.Brix(sap.Mass().Kilograms()/mass), pressure)
		if err != nil {
			return math.NaN(), 0
		}
		return float64(l.Volume() - volume), 1 / float64(rho)
	}
	mass, _ := numeric.Newton(over, float64(least.Mass()), float64(whole.Mass()), float64(whole.Mass()-rho.Mass(whole.Volume()-volume)), 1e-12*float64(least.Mass()))
	return down(fn, sap, min(sap.Brix()*units.Brix(float64(sap.Mass())/mass), most), pressure)
}

// downMost returns the strength to which a lot may boil down.
func downMost(fn string, sap sugar.Lot, p units.Pressure) (units.Brix, error) {
	nan := units.Brix(math.NaN())
	if err := panPressure.Check(fn, p.Kilopascals()); err != nil {
		return nan, err
	}
	if sap.Empty() {
		return nan, nil
	}
	if err := downFrom.Check(fn, float64(sap.Brix())); err != nil {
		return nan, err
	}
	at, err := SyrupPoint(heatHigh, p)
	if err != nil {
		return nan, units.Under(fn, err)
	}
	if at.Celsius() <= hottestPan {
		return heatHigh, nil
	}
	water, err := Water(p)
	if err != nil {
		return nan, units.Under(fn, err)
	}
	most, err := BrixFromRise(units.Celsius(hottestPan).Sub(water), p)
	if err != nil {
		return nan, units.Under(fn, err)
	}
	if from := sap.Brix(); !(from <= most || limit.Same(from, most)) {
		return nan, &units.RangeError{Func: fn, Arg: downFrom.Arg, What: downFrom.What, Value: float64(from), Low: downFrom.Low, High: float64(most), Unit: "Brix",
			Hint: "it boils above 110 C, where the volume of syrup is not known"}
	}
	return max(most, sap.Brix()), nil
}

// down returns the sugar of a lot with as much water as the strength has,
// boiling.
func down(fn string, sap sugar.Lot, to units.Brix, p units.Pressure) (sugar.Lot, error) {
	at, err := SyrupPoint(to, p)
	if err != nil {
		return sugar.Lot{}, units.Under(fn, err)
	}
	l, err := sugar.NewLotByMass(to.Of(sap.Sugar()), to, at)
	if err != nil {
		return sugar.Lot{}, units.Under(fn, err)
	}
	return l, nil
}
