package pan

import (
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Day is what a day brings to a [Rig]. Times count from any hour of choice, such
// as midnight or the lighting of the fire.
type Day struct {
	// Pressure is the station pressure at the pans.
	Pressure units.Pressure

	// Sap is what is there, and what arrives, in any order.
	Sap []Sap

	// Start is what stands in the pans. Empty compartments are filled with sap
	// when the fire is lit.
	Start Contents

	// Light and Out are when the fire is lit and when it is out at the latest;
	// with [Rig.Coals], when the last wood goes on at the latest.
	Light, Out time.Duration

	// Reverse holds the moments at which the flow changes direction: sap then
	// comes in where syrup was drawn before.
	Reverse []time.Duration
}

// Sap is a load of sap for the feed tank: its volume as it was measured, at its
// temperature. The tank mixes what it is given.
type Sap struct {
	At          time.Duration
	Volume      units.Volume
	Brix        units.Brix
	Temperature units.Temperature
}

// longestDay is how long one fire may be followed.
const longestDay = 14 * 24 * time.Hour

// What a day may be.
var (
	dayHours = limit.Range{Arg: "Day.Light", What: "time of the day", Low: 0, High: longestDay.Hours(), Unit: "h",
		Below: "count the times from the first of them",
		Above: "simulate one fire at a time"}
	dayFire = limit.Range{Arg: "Day.Out", What: "time of the fire", Low: 0, High: dayHours.High, Unit: "h",
		Below: "the fire is out before it is lit"}
	sapVolume = limit.Range{Arg: "Sap.Volume", What: "volume of sap", Low: 0, High: 1e6, Unit: "m3",
		Above: "check the unit of the volume"}
	sapBrix = limit.Range{Arg: "Sap.Brix", What: "sugar content of the sap", Low: 0, High: thickest, Unit: "Brix",
		Below: "less than no sugar: check the instrument in plain water"}
	sapTemp = limit.Range{Arg: "Sap.Temperature", What: "temperature of the sap", Low: 0, High: 100, Unit: "C",
		Below: "ice does not flow: thaw it",
		Above: "check Fahrenheit against Celsius"}
)

func (d *Day) check(fn string, n int) error {
	for i := range d.Sap {
		if err := d.Sap[i].check(fn, "Day.Sap", i); err != nil {
			return err
		}
		if err := dayHours.CheckItem(fn, "Day.Sap", i, "At", d.Sap[i].At.Hours()); err != nil {
			return err
		}
	}
	if err := dayHours.Check(fn, d.Light.Hours()); err != nil {
		return err
	}
	if err := dayHours.CheckAs(fn, dayFire.Arg, d.Out.Hours()); err != nil {
		return err
	}
	for i, t := range d.Reverse {
		if err := dayHours.CheckItem(fn, "Day.Reverse", i, "", t.Hours()); err != nil {
			return err
		}
	}
	if err := dayFire.Check(fn, (d.Out - d.Light).Hours()); err != nil {
		return err
	}
	return d.Start.check(fn, "Day.Start", n)
}

// check tells what is wrong with the i-th of a list, or with one that is called
// so if i is negative.
func (s *Sap) check(fn, list string, i int) error {
	if err := sapVolume.CheckItem(fn, list, i, "Volume", float64(s.Volume)); err != nil {
		return err
	}
	if err := sapBrix.CheckItem(fn, list, i, "Brix", float64(s.Brix)); err != nil {
		return err
	}
	return sapTemp.CheckItem(fn, list, i, "Temperature", s.Temperature.Celsius())
}
