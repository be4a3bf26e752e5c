package pan_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/units"
)

// Buckets of two gallons are poured in as there is room.
func ExampleFeed() {
	rig := kettle()
	rig.Feed = pan.PailFeed
	rig.Pail = 2 * units.USGallon
	rig.Draw = pan.DrawOff{At: 66.0, Until: 60}
	day, err := rig.Run(pan.Day{
		Pressure: 1 * units.Atmosphere,
		Sap:      []pan.Sap{{Volume: 60 * units.USGallon, Brix: 2.0, Temperature: units.Fahrenheit(40)}},
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

// What people choose from is listed, by names that are read back.
func ExampleFeeds() {
	fmt.Println(pan.Feeds())
	var feed pan.Feed
	err := feed.UnmarshalText([]byte("pail"))
	fmt.Println(feed == pan.PailFeed, err)
	// Output:
	// [float pail]
	// true <nil>
}

func ExampleFeed_String() {
	fmt.Println(pan.FloatFeed, "or", pan.PailFeed)
	// Output: float or pail
}

// A valve that is opened and shut draws in turns, where a thin stream flows on.
func ExampleDrawOff() {
	day := pan.Day{
		Pressure: 1 * units.Atmosphere,
		Sap:      []pan.Sap{{Volume: 400 * units.USGallon, Brix: 3.0, Temperature: units.Fahrenheit(40)}},
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
	held := pan.Contents{{Sugar: 1, Water: 19}, {Sugar: 6, Water: 14}}
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
	syrup := pan.Liquid{Sugar: 66, Water: 34}
	v, err := syrup.VolumeAt(units.Celsius(20))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(v.Text(units.Liter, 2))
	// Output: 75.61 L
}

func ExampleEvent() {
	fmt.Println(pan.EventDrawOpens, "-", pan.EventFireOut)
	// Output: draw opens - fire out
}

// A kettle over wood: when to stop firing, and when it is syrup. The yard is
// invented. 20 kW and coals of 8 minutes make 20 kW x 480 s/0.6931 = 13.85 MJ after
// the last wood, as much as 11 min 32 s of full fire: by so long it comes before
// the end over gas.
func ExampleRig_coals() {
	rig := pan.Rig{
		Compartments: []pan.Compartment{{Area: 4 * units.SquareFoot, Depth: 8 * units.Inch, SafeDepth: units.Inch / 4}},
		Heat:         20 * units.Kilowatt,
		Draw:         pan.DrawOff{At: 66.9},
	}
	day := pan.Day{
		Pressure: 98 * units.Kilopascal, Out: 24 * time.Hour,
		Sap: []pan.Sap{{Volume: 40 * units.USGallon, Brix: 2, Temperature: units.Fahrenheit(40)}},
	}
	gas, err := rig.Run(day)
	if err != nil {
		fmt.Println(err)
		return
	}
	rig.Coals = 8 * time.Minute
	wood, err := rig.Run(day)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("the last wood before the end over gas:", (gas.Ended - wood.LastWood).Round(time.Second))
	fmt.Println("syrup after the last wood, too:", wood.Ended > gas.Ended && wood.End == pan.EventFinished)
	fmt.Printf("of %.2f MJ after the last wood\n", (float64(wood.Heat)-float64(rig.Heat)*wood.Burned.Seconds())/1e6)
	// Output:
	// the last wood before the end over gas: 11m32s
	// syrup after the last wood, too: true
	// of 13.85 MJ after the last wood
}
