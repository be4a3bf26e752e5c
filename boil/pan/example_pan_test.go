package pan_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/units"
)

// A kettle on a block arch, invented.
func kettle() pan.Rig {
	return pan.Rig{
		Compartments: []pan.Compartment{{
			Area: 6 * units.SquareFoot, Depth: 8 * units.Inch, SafeDepth: 0.1 * units.Inch,
		}},
		Heat: 25 * units.Kilowatt,
		Draw: pan.DrawOff{At: 66.0},
	}
}

// An invented flat pan with three partitions.
func fourParts() pan.Rig {
	rig := pan.Rig{Heat: 60 * units.Kilowatt, Draw: pan.DrawOff{At: 66.0}}
	for range 4 {
		rig.Compartments = append(rig.Compartments, pan.Compartment{
			Area: 4 * units.SquareFoot, Depth: 2 * units.Inch, SafeDepth: 1 * units.Inch,
		})
	}
	return rig
}

// A gallon of syrup of 66.0 Brix takes 43.389 gallons of sap of 2.0 Brix, both
// measured at 20 C.
func ExampleRig_Run() {
	day, err := kettle().Run(pan.Day{
		Pressure: 1 * units.Atmosphere,
		Sap:      []pan.Sap{{Volume: 43.389 * units.USGallon, Brix: 2.0, Temperature: units.Celsius(20)}},
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
	day := pan.Day{
		Pressure: 1 * units.Atmosphere,
		Sap:      []pan.Sap{{Volume: 60 * units.USGallon, Brix: 2.0, Temperature: units.Fahrenheit(40)}},
		Out:      24 * time.Hour,
	}
	_, err := kettle().Trace(day, 0, func(m pan.Moment) bool {
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

// Every hour, all that was brought is somewhere: 200 gallons of 1.0079 kg/L are
// 763 kg. The level holds at 2 inches over 4 square feet, which are 4.99 gallons.
func ExampleMoment() {
	day := pan.Day{
		Pressure: 1 * units.Atmosphere,
		Sap:      []pan.Sap{{Volume: 200 * units.USGallon, Brix: 2.0, Temperature: units.Fahrenheit(40)}},
		Out:      3 * time.Hour,
	}
	_, err := fourParts().Trace(day, time.Hour, func(m pan.Moment) bool {
		if m.Event != pan.EventReading {
			return true
		}
		pans := units.Mass(0)
		for i := range m.Len() {
			pans += m.Liquid(i).Mass()
		}
		all := m.SapLeft() + pans + m.Evaporated() + m.Drawn().Mass()
		fmt.Println(m.At, all.Text(units.Kilogram, 0), m.Volume(3).Text(units.USGallon, 2), m.Liquid(3).Brix() > m.Liquid(0).Brix())
		return true
	})
	if err != nil {
		fmt.Println(err)
	}
	// Output:
	// 0s 763 kg 4.99 US gal false
	// 1h0m0s 763 kg 4.99 US gal true
	// 2h0m0s 763 kg 4.99 US gal true
	// 3h0m0s 763 kg 4.99 US gal true
}

// The draws add up to the syrup of the day.
func ExampleDrawn() {
	rig := fourParts()
	rig.Draw.Until = 64
	day, err := rig.Run(pan.Day{
		Pressure: 1 * units.Atmosphere,
		Sap:      []pan.Sap{{Volume: 400 * units.USGallon, Brix: 3.0, Temperature: units.Fahrenheit(40)}},
		Out:      12 * time.Hour,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	var sum pan.Drawn
	for _, d := range day.Draws {
		sum.Sugar += d.Sugar
		sum.Water += d.Water
	}
	fmt.Printf("%.6f\n", float64(sum.Mass()/day.Syrup.Mass()))
	// Output: 1.000000
}

// The sweet left in the pans gives the next day's first syrup sooner.
func ExampleOutcome_FirstDraw() {
	rig := fourParts()
	day := pan.Day{
		Pressure: 1 * units.Atmosphere,
		Sap:      []pan.Sap{{Volume: 300 * units.USGallon, Brix: 2.0, Temperature: units.Fahrenheit(40)}},
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
	rig := pan.Rig{
		Compartments: []pan.Compartment{{Area: 1 * units.SquareFoot, Depth: 1 * units.Inch, SafeDepth: 0.5 * units.Inch}},
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

// From 212 F in air of 32 F, half of the way is 122 F, and half of the rest 77.
func ExampleContents_Overnight() {
	held := pan.Contents{{Sugar: 2 * units.Kilogram, Water: 48 * units.Kilogram, Temperature: units.Fahrenheit(212)}}
	morning, err := held.Overnight(pan.Night{Length: 10 * time.Hour, Air: units.Fahrenheit(32), Halving: 5 * time.Hour})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(morning.Contents[0].Temperature.Text(units.ScaleFahrenheit, 0), morning.Ice[0].Forms)
	// Output: 77 F false
}

func ExampleHalving() {
	t, err := pan.Halving(units.Fahrenheit(212), units.Fahrenheit(122), units.Fahrenheit(32), time.Hour)
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

// A fire a quarter larger needs four fifths of the time, for the same heat.
func ExampleCompare() {
	now, then := fourParts(), fourParts()
	then.Heat = now.Heat * 1.25
	c, err := pan.Compare(pan.Day{
		Pressure: 1 * units.Atmosphere,
		Sap:      []pan.Sap{{Volume: 100 * units.USGallon, Brix: 2.0, Temperature: units.Fahrenheit(40)}},
		Out:      24 * time.Hour,
	}, now, then)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("time saved: %.2f of it\n", c.TimeSaved().Hours()/c.Now.Burned.Hours())
	fmt.Println("less heat:", c.HeatSaved() > units.Megajoule)
	fmt.Println("more sugar:", c.SugarGained() > units.Gram)
	fmt.Println("less waiting:", c.BacklogCut() > 0)
	// Output:
	// time saved: 0.20 of it
	// less heat: false
	// more sugar: false
	// less waiting: false
}
