package boil_test

import (
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/units"
)

// A kettle on a block arch, invented.
func kettle() boil.Rig {
	return boil.Rig{
		Compartments: []boil.Compartment{{
			Area: 6 * units.SquareFoot, Depth: 8 * units.Inch, SafeDepth: 0.1 * units.Inch,
		}},
		Heat: 25 * units.Kilowatt,
		Draw: boil.DrawOff{At: 66.0},
	}
}

// An invented flat pan with three partitions.
func fourParts() boil.Rig {
	rig := boil.Rig{Heat: 60 * units.Kilowatt, Draw: boil.DrawOff{At: 66.0}}
	for range 4 {
		rig.Compartments = append(rig.Compartments, boil.Compartment{
			Area: 4 * units.SquareFoot, Depth: 2 * units.Inch, SafeDepth: 1 * units.Inch,
		})
	}
	return rig
}

// A gallon of syrup of 66.0 Brix takes 43.389 gallons of sap of 2.0 Brix, both
// measured at 20 C.
func ExampleRig_Run() {
	day, err := kettle().Run(boil.Day{
		Pressure: 1 * units.Atmosphere,
		Sap:      []boil.Sap{{Volume: 43.389 * units.USGallon, Brix: 2.0, Temperature: units.Celsius(20)}},
		Out:      24 * time.Hour,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	syrup, err := day.Syrup.VolumeAt(units.Celsius(20))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v: %s of %s\n", day.End, syrup.Text(units.USGallon, 3), day.Syrup.Brix().Text(1))
	// Output: finished: 1.000 US gal of 66.0 Brix
}

// A kettle that is topped up comes to the boil once, and its one draw is the end
// of the day.
func ExampleRig_Trace() {
	day := boil.Day{
		Pressure: 1 * units.Atmosphere,
		Sap:      []boil.Sap{{Volume: 60 * units.USGallon, Brix: 2.0, Temperature: units.Fahrenheit(40)}},
		Out:      24 * time.Hour,
	}
	_, err := kettle().Trace(day, 0, func(m boil.Moment) bool {
		fmt.Println(m.Event)
		return true
	})
	if err != nil {
		fmt.Println(err)
	}
	// Output:
	// fire lit
	// boils
	// sap out
	// draw opens
	// draw shuts
	// finished
	// fire out
}

// Every hour, what stands in the last compartment is thicker than what stands in
// the first.
func ExampleMoment() {
	day := boil.Day{
		Pressure: 1 * units.Atmosphere,
		Sap:      []boil.Sap{{Volume: 200 * units.USGallon, Brix: 2.0, Temperature: units.Fahrenheit(40)}},
		Out:      4 * time.Hour,
	}
	_, err := fourParts().Trace(day, time.Hour, func(m boil.Moment) bool {
		if m.Event == boil.Reading {
			fmt.Println(m.At, m.Liquid(3).Brix() > m.Liquid(0).Brix())
		}
		return true
	})
	if err != nil {
		fmt.Println(err)
	}
	// Output:
	// 0s false
	// 1h0m0s true
	// 2h0m0s true
	// 3h0m0s true
	// 4h0m0s true
}

// The sweet left in the pans gives the next day's first syrup sooner.
func ExampleOutcome_FirstDraw() {
	rig := fourParts()
	day := boil.Day{
		Pressure: 1 * units.Atmosphere,
		Sap:      []boil.Sap{{Volume: 300 * units.USGallon, Brix: 2.0, Temperature: units.Fahrenheit(40)}},
		Out:      12 * time.Hour,
	}
	monday, err := rig.Run(day)
	if err != nil {
		fmt.Println(err)
		return
	}
	day.Start = monday.Held
	tuesday, err := rig.Run(day)
	if err != nil {
		fmt.Println(err)
		return
	}
	first, ok := monday.FirstDraw()
	sooner, again := tuesday.FirstDraw()
	fmt.Println(ok, again, sooner < first)
	// Output: true true true
}

// One inch over one square foot is 0.623 US gallon.
func ExampleRig_Fill() {
	rig := boil.Rig{
		Compartments: []boil.Compartment{{Area: 1 * units.SquareFoot, Depth: 1 * units.Inch, SafeDepth: 0.5 * units.Inch}},
		Heat:         1 * units.Kilowatt,
	}
	p := 1 * units.Atmosphere
	water, err := rig.Fill(0, units.Fahrenheit(50), p)
	if err != nil {
		fmt.Println(err)
		return
	}
	hot, err := boil.Water(p)
	if err != nil {
		fmt.Println(err)
		return
	}
	v, err := water[0].VolumeAt(hot)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(v.Text(units.USGallon, 3))
	// Output: 0.623 US gal
}

// By mass, 33 of sap of 2 Brix make 1 of syrup of 66, and the other 32 are steam.
func ExampleRig_Steady() {
	s, err := fourParts().Steady(boil.Sap{Brix: 2, Temperature: units.Fahrenheit(40)}, units.Atmosphere)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f %.1f\n", float64(s.Feed/s.Syrup), float64(s.Evaporation/s.Syrup))
	fmt.Println(s.Brix[3].Text(1))
	// Output:
	// 33.0 32.0
	// 66.0 Brix
}

// Boiling off a pound of water takes some 1,150 Btu with the warming of the sap:
// 404,680 Btu for 353.22 pounds.
func ExampleRig_HeatFor() {
	q, err := fourParts().HeatFor(100*units.PoundPerHour, boil.Sap{Brix: 2, Temperature: units.Fahrenheit(40)}, units.Atmosphere)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f thousand Btu/h\n", math.Round(q.BtusITPerHour()/5000)*5)
	// Output: 115 thousand Btu/h
}

func ExamplePlugFlow() {
	b, err := boil.PlugFlow(2, 66, 92*units.Percent)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(1))
	// Output: 18.5 Brix
}

// About 135 minutes, where 45 are published for modern flue pans.
func ExampleTransit() {
	t, err := boil.Transit(2, 66, 2*units.Inch, 2*units.USGallonPerSquareFootHour, units.Atmosphere)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(t.Round(5 * time.Minute))
	// Output: 2h15m0s
}

// From 212 F in air of 32 F, half of the way is 122 F, and half of the rest 77.
func ExampleContents_Overnight() {
	held := boil.Contents{{Sugar: 2 * units.Kilogram, Water: 48 * units.Kilogram, Temperature: units.Fahrenheit(212)}}
	morning, err := held.Overnight(boil.Night{Length: 10 * time.Hour, Air: units.Fahrenheit(32), Halving: 5 * time.Hour})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(morning.Contents[0].Temperature.Text(units.ScaleFahrenheit, 0), morning.Ice[0].Forms)
	// Output: 77 F false
}

func ExampleHalving() {
	t, err := boil.Halving(units.Fahrenheit(212), units.Fahrenheit(122), units.Fahrenheit(32), time.Hour)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(t.Round(time.Second))
	// Output: 1h0m0s
}

// The more water follows, the more of the sweet comes off as syrup.
func ExampleRig_Chase() {
	rig := fourParts()
	held, err := rig.Fill(30, units.Fahrenheit(200), units.Atmosphere)
	if err != nil {
		fmt.Println(err)
		return
	}
	few, err := rig.Chase(held, 10*units.USGallon, units.Fahrenheit(50), units.Atmosphere)
	if err != nil {
		fmt.Println(err)
		return
	}
	many, err := rig.Chase(held, 20*units.USGallon, units.Fahrenheit(50), units.Atmosphere)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(many.Recovered > few.Recovered)
	// Output: true
}

// A fire a quarter larger needs four fifths of the time.
func ExampleCompare() {
	now, then := fourParts(), fourParts()
	then.Heat = now.Heat * 1.25
	c, err := boil.Compare(boil.Day{
		Pressure: 1 * units.Atmosphere,
		Sap:      []boil.Sap{{Volume: 100 * units.USGallon, Brix: 2.0, Temperature: units.Fahrenheit(40)}},
		Out:      24 * time.Hour,
	}, now, then)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f\n", c.Then.Burned.Hours()/c.Now.Burned.Hours())
	// Output: 0.80
}

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
