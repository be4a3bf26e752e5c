package finish_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/units"
)

// invented readings of a pan of 10 kg at 60 Brix that loses 10 kg in an hour,
// where water boils at 99.974 C, by the exact rise at 60, 61.0 and 62.1 Brix.
func invented(times ...time.Duration) []finish.WatchReading {
	b := finish.Batch{Mass: 10 * units.Kilogram, Brix: 60, Evaporation: 10 * units.KilogramPerHour}
	var r []finish.WatchReading
	for _, at := range times {
		brix, err := b.After(at)
		if err != nil {
			return nil
		}
		shown, err := boil.SyrupPoint(brix, units.Atmosphere)
		if err != nil {
			return nil
		}
		r = append(r, finish.WatchReading{At: at, Shown: shown})
	}
	return r
}

// Three readings a minute apart tell the time that is left: 6 min 11 s from 60
// to 66.9 Brix, 2 min of them gone.
func ExampleWatch() {
	w := finish.Watch{Target: 66.9, Water: units.Celsius(99.974), ProbeBy: 0.1 * units.FahrenheitDegree}
	out, err := w.Outlook(invented(0, time.Minute, 2*time.Minute)...)
	fmt.Println(out.Left.Round(time.Second), "left", err)
	// Output: 4m11s left <nil>
}

// After two minutes 60 Brix have become 60/(1 - 2/60).
func ExampleWatch_Outlook() {
	w := finish.Watch{Target: 66.9, Water: units.Celsius(99.974), ProbeBy: 0.1 * units.FahrenheitDegree}
	out, err := w.Outlook(invented(0, time.Minute, 2*time.Minute)...)
	fmt.Println(out.Now.Text(1), err)
	// Output: 62.1 Brix <nil>
}

// More readings narrow what is left.
func ExampleOutlook() {
	w := finish.Watch{Target: 66.9, Water: units.Celsius(99.974), ProbeBy: 0.1 * units.FahrenheitDegree}
	three, _ := w.Outlook(invented(0, time.Minute, 2*time.Minute)...)
	five, err := w.Outlook(invented(0, 30*time.Second, time.Minute, 90*time.Second, 2*time.Minute)...)
	fmt.Println(five.LeftBy < three.LeftBy, five.NowBy < three.NowBy, err)
	// Output: true true <nil>
}

func ExampleWatchReading() {
	r := finish.WatchReading{At: 90 * time.Second, Shown: units.Fahrenheit(217.4)}
	fmt.Println(r.At, r.Shown.Text(units.ScaleFahrenheit, 1))
	// Output: 1m30s 217.4 F
}

// Foam lifted the probe out at the second reading.
func ExampleOddReading() {
	w := finish.Watch{Target: 66.9, Water: units.Celsius(99.974), ProbeBy: 0.1 * units.FahrenheitDegree}
	readings := invented(0, time.Minute, 2*time.Minute, 3*time.Minute)
	readings[1].Shown = units.Fahrenheit(213)
	out, err := w.Outlook(readings...)
	for _, odd := range out.Odd {
		fmt.Printf("reading %d %v: %s\n", odd.Index+1, odd.What, odd.What.Why())
	}
	fmt.Println(out.Used, "used", err)
	// Output:
	// reading 2 dip: foam, or a bumped probe
	// 3 used <nil>
}

func ExampleOdd() {
	fmt.Println(finish.SetBack)
	// Output: setback
}

// The point of 66.9 Brix at 1 atm is 219.51 F; this rig shows 220.0.
func ExampleLearnOffset() {
	own, err := finish.LearnOffset(finish.PastStop{
		When: time.Date(2025, 3, 9, 21, 0, 0, 0, time.UTC), Pressure: units.Atmosphere,
		Stop: units.Fahrenheit(220.0), Cup: 66.9,
	})
	fmt.Println(own.Mean.Text(units.FahrenheitDegree, 1), err)
	// Output: 0.5 F deg <nil>
}

func ExamplePastStop() {
	s := finish.PastStop{Pressure: 29.5 * units.InchMercury, Stop: units.Fahrenheit(219.4), Cup: 66.4}
	fmt.Println(s.Stop.Text(units.ScaleFahrenheit, 1), "gave", s.Cup)
	// Output: 219.4 F gave 66.4 Brix
}

// What was learned in one weather holds in another.
func ExampleOffset() {
	high, _ := boil.SyrupPoint(66.9, units.Atmosphere)
	own, err := finish.LearnOffset(
		finish.PastStop{Pressure: units.Atmosphere, Stop: high.Add(0.4 * units.FahrenheitDegree), Cup: 66.9},
		finish.PastStop{Pressure: units.Atmosphere, Stop: high.Add(0.6 * units.FahrenheitDegree), Cup: 66.9},
	)
	fmt.Println(own.Mean.Text(units.FahrenheitDegree, 1), "from", own.Stops, "stops", err)
	// Output: 0.5 F deg from 2 stops <nil>
}

func ExampleOffset_Stop() {
	own, _ := finish.LearnOffset(finish.PastStop{Pressure: units.Atmosphere, Stop: units.Fahrenheit(220.0), Cup: 66.9})
	at, _, err := own.Stop(66.9, units.Atmosphere)
	fmt.Println(at.Text(units.ScaleFahrenheit, 1), err)
	// Output: 220.0 F <nil>
}
