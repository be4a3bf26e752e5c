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
	dayHours = limit.Range{Arg: "time of the day", Low: 0, High: longestDay.Hours(), Unit: "h",
		Below: "count the times from the first of them",
		Above: "simulate one fire at a time"}
	dayFire = limit.Range{Arg: "time of the fire", Low: 0, High: dayHours.High, Unit: "h",
		Below: "the fire is out before it is lit"}
	sapVolume = limit.Range{Arg: "volume of sap", Low: 0, High: 1e6, Unit: "m3",
		Above: "check the unit of the volume"}
	sapBrix = limit.Range{Arg: "sugar content of the sap", Low: 0, High: thickest, Unit: "Brix",
		Below: "less than no sugar: check the instrument in plain water"}
	sapTemp = limit.Range{Arg: "temperature of the sap", Low: 0, High: 100, Unit: "C",
		Below: "ice does not flow: thaw it",
		Above: "check Fahrenheit against Celsius"}
)

func (d *Day) check(fn string, n int) error {
	times := []time.Duration{d.Light, d.Out}
	times = append(times, d.Reverse...)
	for i := range d.Sap {
		s := &d.Sap[i]
		if err := s.check(fn); err != nil {
			return err
		}
		times = append(times, s.At)
	}
	for _, t := range times {
		if err := dayHours.Check(fn, t.Hours()); err != nil {
			return err
		}
	}
	if err := dayFire.Check(fn, (d.Out - d.Light).Hours()); err != nil {
		return err
	}
	return d.Start.check(fn, n)
}

func (s *Sap) check(fn string) error {
	if err := sapVolume.Check(fn, float64(s.Volume)); err != nil {
		return err
	}
	if err := sapBrix.Check(fn, float64(s.Brix)); err != nil {
		return err
	}
	return sapTemp.Check(fn, s.Temperature.Celsius())
}
