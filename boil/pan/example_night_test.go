package pan_test

import (
	"encoding/json"
	"fmt"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/units"
)

// An invented flat pan of 12 ft2 and its sap of an evening.
func flat() (pan.Rig, pan.Day) {
	rig := pan.Rig{
		Compartments: []pan.Compartment{{Area: 12 * units.SquareFoot, Depth: 2 * units.Inch, SafeDepth: units.Inch}},
		Heat:         units.Kilowatt, Draw: pan.DrawOff{At: 66.9},
	}
	sap := pan.Sap{Volume: 40 * units.USGallon, Brix: 2, Temperature: units.Fahrenheit(40)}
	// A gallon of water at 60 F weighs 8.337 lb: it boils off 12 gallons an hour.
	heat, err := rig.HeatFor(units.Pounds(12*8.337).Per(time.Hour), sap, units.Atmosphere)
	if err != nil {
		panic(err)
	}
	rig.Heat = heat
	return rig, pan.Day{Pressure: units.Atmosphere, Light: 17 * time.Hour, Sap: []pan.Sap{sap}}
}

// An inch over 12 square feet is a cubic foot, 7.48 gallons, and as much of the hot
// water in it weighs 7.2 gallons of cold. With the cold sap gone the fire boils off
// 12 (970 + 1.03 172)/970 = 14.2 gallons an hour: 7.2/14.2 hours are 30 minutes. At
// 12 gallons it would be 36, which nobody has.
func ExampleRig_FeedStopped() {
	rig, _ := flat()
	hot, err := boil.SyrupPoint(15, units.Atmosphere)
	if err != nil {
		fmt.Println(err)
		return
	}
	held, err := rig.FromLevels([]pan.Level{{Depth: 2 * units.Inch, Brix: 15, Temperature: hot}})
	if err != nil {
		fmt.Println(err)
		return
	}
	s, err := rig.FeedStopped(held, units.Atmosphere)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(s.End, "after", s.After.Truncate(time.Minute))
	// Output: low level after 30m0s
}

// Twelve gallons an hour of cold sap are 12 8.337 (970 + 1.03 172) = 114,800 Btu/h,
// and 574,000 from 17:00 to 22:00. A gallon of sap, 8.40 lb, takes 1,430 Btu to come
// to the boil; one of water takes 8,090 to boil off, and the last inch, which weighs
// as much as 7.2, stays. So 40 gallons fit, and of 120 those of which 1,430 V + 8,090
// (V - 7.2) are 574,000: 66.4, 55 percent.
func ExampleRig_Fits() {
	rig, day := flat()
	f, err := rig.Fits(day, pan.Budget{Done: 22 * time.Hour})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(f.Share.Text(0), f.Ended < 22*time.Hour)
	day.Sap[0].Volume = 120 * units.USGallon
	f, err = rig.Fits(day, pan.Budget{Done: 22 * time.Hour})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(f.Share.Text(0), (22*time.Hour - f.Ended).Round(time.Minute))
	// Output:
	// 100 % true
	// 55 % 0s
}

// By the figures of the example of Fits 40 gallons take 1,430 40 + 8,090 (40 - 7.2) =
// 322,600 Btu, 2.81 hours: it is lit at 19:11 to be done at 22:00.
func ExampleRig_LightBy() {
	rig, day := flat()
	light, o, err := rig.LightBy(day, 22*time.Hour)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(light.Round(5*time.Minute), (22*time.Hour - o.Ended).Round(time.Minute))
	// Output: 19h10m0s 0s
}

// An inch over a square foot, 0.623 gallon of 9.02 lb, of 20 Brix is 1.12 lb of sugar.
func ExampleRig_FromLevels() {
	rig := pan.Rig{
		Compartments: []pan.Compartment{{Area: units.SquareFoot, Depth: 2 * units.Inch, SafeDepth: 0.5 * units.Inch}},
		Heat:         units.Kilowatt,
	}
	held, err := rig.FromLevels([]pan.Level{{Depth: units.Inch, Brix: 20, Temperature: units.Celsius(20)}})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(held.Sugar().Text(units.Pound, 2))
	// Output: 1.12 lb
}

// What is written down at night is there in the morning.
func ExampleRig_Levels() {
	rig, day := flat()
	day.Out = 18 * time.Hour
	o, err := rig.Run(day)
	if err != nil {
		fmt.Println(err)
		return
	}
	levels, err := rig.Levels(o.Held)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(levels[0].Depth.Text(units.Inch, 1))
	b, err := json.Marshal(o.Held)
	if err != nil {
		fmt.Println(err)
		return
	}
	var morning pan.Contents
	if err := json.Unmarshal(b, &morning); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(morning.Sugar() == o.Held.Sugar())
	// Output:
	// 2.0 in
	// true
}

// A pan that was left out in the frost is not lit before its ice has melted.
func ExampleContents_Thawed() {
	held := pan.Contents{{Sugar: 1 * units.Kilogram, Water: 20 * units.Kilogram, Temperature: units.Celsius(95)}}
	m, err := held.Overnight(pan.Night{Length: 12 * time.Hour, Air: units.Celsius(-12), Halving: time.Hour})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(m.Ice[0].Forms, m.Contents.Thawed()[0].Temperature.Text(units.ScaleCelsius, 0))
	// Output: true 0 C
}
