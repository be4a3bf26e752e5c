package boil_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/units"
)

// Buckets of two gallons are poured in as there is room.
func ExampleFeed() {
	rig := kettle()
	rig.Feed = boil.PailFeed
	rig.Pail = 2 * units.USGallon
	rig.Draw = boil.DrawOff{At: 66.0, Until: 60}
	day, err := rig.Run(boil.Day{
		Pressure: 1 * units.Atmosphere,
		Sap:      []boil.Sap{{Volume: 60 * units.USGallon, Brix: 2.0, Temperature: units.Fahrenheit(40)}},
		Out:      24 * time.Hour,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	// The kettle holds 29.9 gallons hot, which are 28.5 of cold sap. That leaves
	// 31.5 gallons for pails, the last of them not full.
	fmt.Println(day.Pails, "pails,", day.End)
	// Output: 16 pails, finished
}

func ExampleFeed_String() {
	fmt.Println(boil.FloatFeed, "or", boil.PailFeed)
	// Output: float or pail
}

// A valve that is opened and shut draws in turns, where a thin stream flows on.
func ExampleDrawOff() {
	day := boil.Day{
		Pressure: 1 * units.Atmosphere,
		Sap:      []boil.Sap{{Volume: 400 * units.USGallon, Brix: 3.0, Temperature: units.Fahrenheit(40)}},
		Out:      12 * time.Hour,
	}
	rig := fourParts()
	stream, err := rig.Run(day)
	if err != nil {
		fmt.Println(err)
		return
	}
	rig.Draw.Until = 64
	turns, err := rig.Run(day)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(len(stream.Draws), len(turns.Draws) > 1)
	// Output: 1 true
}

func ExampleContents() {
	held := boil.Contents{{Sugar: 1, Water: 19}, {Sugar: 6, Water: 14}}
	fmt.Println(held.Sugar(), "of", held.Mass())
	for _, l := range held {
		fmt.Println(l.Brix())
	}
	// Output:
	// 7 kg of 40 kg
	// 5 Brix
	// 30 Brix
}

func ExampleLiquid_VolumeAt() {
	// 66.0 Brix weighs 1322.662 kg/m3 at 20 C.
	syrup := boil.Liquid{Sugar: 66, Water: 34}
	v, err := syrup.VolumeAt(units.Celsius(20))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(v.Text(units.Liter, 2))
	// Output: 75.61 L
}

func ExampleEvent() {
	fmt.Println(boil.DrawOpens, "-", boil.FireOut)
	// Output: draw opens - fire out
}
