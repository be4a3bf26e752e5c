package cookbook_test

import (
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// By hand: 218.6 - 209.9 = 8.7 F above water, 1.2 F more than syrup of 66.9, and
// 0.1 F is 0.24 Brix near there: 66.9 + 2.8.
func Example_thermometerSays() {
	p := must(boil.PressureAt(units.Feet(1150)))
	water := must(boil.Water(p))
	fmt.Println(must(boil.BrixFromRise(units.Fahrenheit(218.6).Sub(water), p)).Text(1))
	// Output: 69.6 Brix
}

// By hand: 218.6 - 211.2 = 7.4 F above water, 0.1 F less than syrup of 66.9 needs.
func Example_thermometerAndWater() {
	water := units.Fahrenheit(211.2)
	p := must(boil.PressureFromWater(water))
	fmt.Println(must(boil.BrixFromRise(units.Fahrenheit(218.6).Sub(water), p)).Text(1))
	// Output: 66.5 Brix
}

// By hand: less 0.35 F that this thermometer shows too much, 6.95 F above water; 0.55 F
// under syrup of 66.9, and 0.1 F is 0.25 Brix: 1.4 less.
func Example_ownThermometer() {
	water := units.Fahrenheit(209.6)
	p := must(boil.PressureFromWater(water))
	true := units.Fahrenheit(216.9).Add(units.FahrenheitDegrees(-0.35))
	fmt.Println(must(boil.BrixFromRise(true.Sub(water), p)).Text(1))
	// Output: 65.5 Brix
}

// By hand: 208.9 + 7.5 F; the README's program tells the same.
func Example_waterBoilsAt() {
	p := must(boil.PressureFromWater(units.Fahrenheit(208.9)))
	stop := must(boil.SyrupPoint(66.9, p))
	fmt.Printf("%.1f F\n", math.Floor(10*stop.Fahrenheit())/10)
	// Output: 216.3 F
}

// By hand: 216.4 F and the 0.35 F by which past stops were over.
func Example_learnedStop() {
	p := must(boil.PressureFromWater(units.Fahrenheit(208.9)))
	stop := must(boil.SyrupPoint(66.9, p)).Add(units.FahrenheitDegrees(0.35))
	fmt.Printf("%.1f F\n", math.Floor(10*stop.Fahrenheit())/10)
	// Output: 216.7 F
}

// The hot mark of the trade is 59 at 211 F (common practice).
func Example_hotCup() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	reads := must(stem.Reading(66.9, units.Fahrenheit(211)))
	fmt.Printf("%.1f Brix\n", math.Ceil(10*float64(reads))/10)
	// Output: 59.1 Brix
}

// The hot mark of the trade is 32 on a stem of Baume (common practice).
func Example_hotCupBaume() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	reads := must(stem.Baume(66.9, units.Fahrenheit(211)))
	fmt.Printf("%.1f Be\n", math.Ceil(10*float64(reads))/10)
	// Output: 32.1 Be
}

// By hand: at home at 60 F it shows what is there, 145 (1 - 1/1.331) = 36.06 with the
// specific gravity of 66.9 Brix.
func Example_coldCupBaume() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	reads := must(stem.Baume(66.9, units.Fahrenheit(60)))
	fmt.Printf("%.1f Be\n", math.Ceil(10*float64(reads))/10)
	// Output: 36.1 Be
}

// By hand: 145/(145 - 36) = 1.3303 is the specific gravity of 66.8 Brix.
func Example_baume() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	fmt.Println(must(stem.BrixFromBaume(36, units.Fahrenheit(60))).Text(1))
	// Output: 66.8 Brix
}

// By hand: the hot mark of 32.0 stands for 66.9, and a degree of Baume is 1.86 Brix.
func Example_hotBaume() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	fmt.Println(must(stem.BrixFromBaume(31.5, units.Fahrenheit(211))).Text(1))
	// Output: 65.9 Brix
}

// By hand: 59 at 211 F is 66.9, and a cup 7 F cooler takes off 0.05 a degree: 59.35.
func Example_hotReading() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	fmt.Println(must(stem.Brix(59.5, units.Fahrenheit(204))).Text(1))
	// Output: 67.0 Brix
}

// By hand: 8 F over 60 F add 0.04 Brix a degree.
func Example_roomReading() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	fmt.Println(must(stem.Brix(66, units.Fahrenheit(68))).Text(1))
	// Output: 66.3 Brix
}

// By hand: half way from 60.4, as it reads at 188 F, to 61.4 at 172 F.
func Example_coolingCup() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	reads := must(stem.Reading(66.9, units.Fahrenheit(180)))
	fmt.Printf("%.1f Brix\n", math.Ceil(10*float64(reads))/10)
	// Output: 60.9 Brix
}

// By hand: 4.5 under the mark of 59.1 at 209 F, and hot and cold scales run alike.
func Example_notYet() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	fmt.Println(must(stem.Brix(54.5, units.Fahrenheit(209))).Text(1))
	// Output: 62.5 Brix
}

// By hand: 61 at 205 F lies 1.6 over 59.4, the mark there: 66.9 + 1.6.
func Example_tooFar() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	fmt.Println(must(stem.Brix(61, units.Fahrenheit(205))).Text(1))
	// Output: 68.5 Brix
}

// By hand: 35.2 lb of 38.5 Brix hold 13.55 lb of sugar, which is 66.9 percent of
// 20.26 lb; with the pot of 6.2 lb that is 26.46 lb.
func Example_potOff() {
	pot := finish.PotReading{Tare: units.Pounds(6.2), Gross: units.Pounds(41.4), Brix: 38.5}
	lb, part := math.Modf(must(pot.Target(66.9)).Gross.Pounds())
	fmt.Printf("%.0f lb %.0f oz\n", lb, math.Floor(16*part))
	// Output: 26 lb 7 oz
}

// By hand: 13.55 lb of sugar in 21.7 lb.
func Example_byWeight() {
	pot := finish.PotReading{Tare: units.Pounds(6.2), Gross: units.Pounds(41.4), Brix: 38.5}
	fmt.Println(must(pot.At(units.Pounds(27.9))).Text(1))
	// Output: 62.5 Brix
}

// By hand: 21.7 lb less 20.26 lb at 8 lb an hour are 10.8 min.
func Example_minutesLeft() {
	pot := finish.Batch{Mass: units.Pounds(21.7), Brix: 62.45, Evaporation: units.PoundsPerHour(8)}
	fmt.Printf("%.0f min\n", math.Floor(must(pot.Time(66.9)).Minutes()))
	// Output: 10 min
}

// By hand: the coals still boil off 8 lb/h x 2 min/ln 2 = 0.385 lb, so that the wood
// ends at 20.26 + 0.385 = 20.64 lb, where 13.55 lb of sugar are 65.65 Brix.
func Example_lastFiring() {
	pot := finish.Batch{Mass: units.Pounds(21.7), Brix: 62.45, Evaporation: units.PoundsPerHour(8)}
	last := must(pot.LastFiring(66.9, 2*time.Minute))
	fmt.Printf("%.1f Brix\n", math.Floor(10*float64(last))/10)
	// Output: 65.6 Brix
}

// By hand: half a degree at 0.25 Brix for 0.1 F.
func Example_badThermometer() {
	off := must(finish.ErrorCost(66.9, units.Atmosphere, units.FahrenheitDegrees(0.5)))
	fmt.Println(off.Text(1))
	// Output: 1.2 Brix
}

// By hand: 18 to 23.9 F above water of 209.9 F.
func Example_cream() {
	p := must(boil.PressureAt(units.Feet(1150)))
	low, high := math.Inf(1), math.Inf(-1)
	for _, f := range finish.ConfectionFinishes() {
		if from, to, err := f.At(p); err == nil && f.Product == "cream or butter" {
			low, high = min(low, from.Fahrenheit()), max(high, to.Fahrenheit())
		}
	}
	fmt.Printf("%.1f to %.1f F\n", low, high)
	// Output: 227.8 to 233.7 F
}
