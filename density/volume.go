package density

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// labelC is the temperature at which the volume on a label is measured, in
// degrees Celsius: 68 F. Source: Maine Department of Agriculture, rules ch. 117;
// 21 CFR 101.7 (from memory).
const labelC = 20.0

// maxVolume is more than any tank holds.
const maxVolume = 1e6 * units.CubicMeter

var volumeRange = limit.Range{Arg: "volume", Low: 0, High: float64(maxVolume), Unit: "m3", Above: "check its unit: no tank holds that"}

// Mass returns the mass of a volume of the given strength at the given
// temperature: its weight in vacuo.
//
// Range: volume 0 to 1e6 m3, 0 to 85 Brix, 0 to 110 C. Uncertainty: that of
// [Solution]. Check value: a US gallon of 66.9 Brix at 20 C is 11.0843 lb
// (computed).
func Mass(volume units.Volume, brix units.Brix, at units.Temperature) (units.Mass, error) {
	d, err := densityOf("density.Mass", volume, brix, at)
	return d.Mass(volume), err
}

// WeightInAir returns what a scale in air shows for a volume of the given
// strength at the given temperature, the container's own weight taken off. A
// bathroom or kitchen scale weighs in air.
//
// Range: as for [Mass]. Uncertainty: with that of [Solution], 0.06 kg/m3 for
// the air of the day: see [InAir]. Check value: a US gallon of 66.9 Brix at 20 C
// weighs 11.0759 lb (computed).
func WeightInAir(volume units.Volume, brix units.Brix, at units.Temperature) (units.Mass, error) {
	d, err := densityOf("density.WeightInAir", volume, brix, at)
	return InAir(d).Mass(volume), err
}

// densityOf guards a volume of solution and returns its density.
func densityOf(fn string, v units.Volume, b units.Brix, t units.Temperature) (units.Density, error) {
	if err := volumeRange.Check(fn, float64(v)); err != nil {
		return nan[units.Density](), err
	}
	d, err := Solution(b, t)
	if err != nil {
		return d, units.Under(fn, err)
	}
	return d, nil
}

// VolumeAt returns the volume at temperature to of what fills a volume at
// temperature from, at the given strength. The vessel's own expansion is not in
// it: glass grows by 0.2 percent over 80 K, steel by 0.4.
//
// Range: as for [Mass]. Uncertainty: 0.01 percent to 90 C. Check value: a US
// gallon of 66.9 Brix at 185 F is 0.97104 US gal at 68 F (computed).
func VolumeAt(volume units.Volume, brix units.Brix, from, to units.Temperature) (units.Volume, error) {
	const fn = "density.VolumeAt"
	if err := volumeRange.Check(fn, float64(volume)); err != nil {
		return nan[units.Volume](), err
	}
	ratio, err := shrink(fn, brix, from, to, "from", "to")
	return units.Volume(ratio) * volume, err
}

// Contraction returns the share by which a volume of the given strength shrinks
// from temperature from to temperature to; warming gives a negative share.
//
// Range and uncertainty: as for [VolumeAt]. Check values: 66.9 Brix from 180,
// 185 and 200 F to 68 F shrinks by 2.758, 2.896 and 3.310 percent (computed;
// 200 F is extrapolated).
func Contraction(brix units.Brix, from, to units.Temperature) (units.Share, error) {
	ratio, err := shrink("density.Contraction", brix, from, to, "from", "to")
	return units.FractionShare(1 - ratio), err
}

// HotVolume returns the volume that must go into the container at the packing
// temperature so that the label's volume is there at 68 F (20 C), at which
// labels are measured.
//
// The container must hold it: what is filled hot to the brim is short when it is
// cold. Syrup at packing temperature scalds.
//
// Range and uncertainty: as for [VolumeAt], which also leads back, from the
// packing temperature to 68 F. Check value: a US quart of 66.9 Brix packed at
// 185 F must be 1.02983 US qt (computed).
func HotVolume(label units.Volume, brix units.Brix, packing units.Temperature) (units.Volume, error) {
	const fn = "density.HotVolume"
	if err := volumeRange.CheckAs(fn, "label", float64(label)); err != nil {
		return nan[units.Volume](), err
	}
	ratio, err := shrink(fn, brix, units.Celsius(labelC), packing, "", "packing")
	return units.Volume(ratio) * label, err
}

// shrink returns the ratio of the volume at temperature to and at temperature
// from, which the caller calls by these names.
func shrink(fn string, b units.Brix, from, to units.Temperature, fromArg, toArg string) (float64, error) {
	if err := brixRange.Check(fn, float64(b)); err != nil {
		return math.NaN(), err
	}
	if err := tempRange.CheckAs(fn, fromArg, from.Celsius()); err != nil {
		return math.NaN(), err
	}
	if err := tempRange.CheckAs(fn, toArg, to.Celsius()); err != nil {
		return math.NaN(), err
	}
	w := b.Fraction()
	return rho(w, from.Celsius()) / rho(w, to.Celsius()), nil
}
