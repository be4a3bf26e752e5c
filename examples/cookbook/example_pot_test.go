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

// By hand: 218.6 - 209.9 = 8.7 F above water, 1.2 F more than syrup of 66.9, and 0.1 F
// is 0.23 Brix there: 66.9 + 2.7.
func Example_thermometerSays() {
	p := must(boil.PressureAt(units.Feet(1150)))
	water := must(boil.Water(p))
	fmt.Println(must(boil.BrixFromRise(units.Fahrenheit(218.6).Sub(water), p)).Text(1))
	// Output: 69.6 Brix
}

// By hand: 218.6 - 211.2 = 7.4 F above water, 0.15 F short of syrup at 7.55, and 0.1 F
// is 0.25 Brix: 0.4 less.
func Example_thermometerAndWater() {
	water := units.Fahrenheit(211.2)
	p := must(boil.PressureFromWater(water))
	fmt.Println(must(boil.BrixFromRise(units.Fahrenheit(218.6).Sub(water), p)).Text(1))
	// Output: 66.5 Brix
}

// By hand: less 0.35 F that past stops were over, 6.95 F above water: 0.55 F short of
// syrup, and 0.1 F is 0.25 Brix: 1.4 less.
func Example_ownThermometer() {
	water := units.Fahrenheit(209.6)
	p := must(boil.PressureFromWater(water))
	less := units.Fahrenheit(216.9).Add(units.FahrenheitDegrees(-0.35))
	fmt.Println(must(boil.BrixFromRise(less.Sub(water), p)).Text(1))
	// Output: 65.5 Brix
}

// By hand: 7.56 F at sea level, by the square of the absolute temperature of water 7.56
// x (668.6/671.6)^2 = 7.49 F: 216.39 F, rounded down.
func Example_waterBoilsAt() {
	p := must(boil.PressureFromWater(units.Fahrenheit(208.9)))
	stop := must(boil.SyrupPoint(66.9, p))
	fmt.Printf("%.1f F\n", math.Floor(10*stop.Fahrenheit())/10)
	// Output: 216.3 F
}

// By hand: 216.39 F and the 0.35 F by which past stops were over, rounded down.
func Example_learnedStop() {
	p := must(boil.PressureFromWater(units.Fahrenheit(208.9)))
	stop := must(boil.SyrupPoint(66.9, p)).Add(units.FahrenheitDegrees(0.35))
	fmt.Printf("%.1f F\n", math.Floor(10*stop.Fahrenheit())/10)
	// Output: 216.7 F
}

// 59.00, the mark of the trade (table hydrometer-worked).
func Example_hotCup() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	fmt.Println(must(stem.Reading(66.9, units.Fahrenheit(211))).Text(1))
	// Output: 59.0 Brix
}

// By hand: 59 Brix is a specific gravity of 1.28320 (NBS Circular 440, table 114): 145
// - 145/1.28320 = 32.001.
func Example_hotCupBaume() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	fmt.Printf("%.1f Be\n", must(stem.Baume(66.9, units.Fahrenheit(211))))
	// Output: 32.0 Be
}

// By hand: 66.9 Brix is 1.33068 (NBS Circular 440, table 114): 145 - 145/1.33068 =
// 36.03, rounded up, to be sure.
func Example_coldCupBaume() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	reads := must(stem.Baume(66.9, units.Fahrenheit(60)))
	fmt.Printf("%.1f Be\n", math.Ceil(10*float64(reads))/10)
	// Output: 36.1 Be
}

// By hand: 145/(145 - 36) = 1.33028, and 66 Brix is 1.32516, 67 is 1.33129 (NBS
// Circular 440, table 114): 66 + 0.00512/0.00613.
func Example_baume() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	fmt.Println(must(stem.BrixFromBaume(36, units.Fahrenheit(60))).Text(1))
	// Output: 66.8 Brix
}

// By hand: 145/(145 - 31.5) = 1.27753 is 58.00 Brix, 1.00 under the mark of 59.00 at
// 211 F, and a Brix is 1.04 on the hot stem: 66.9 - 0.96.
func Example_hotBaume() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	fmt.Println(must(stem.BrixFromBaume(31.5, units.Fahrenheit(211))).Text(1))
	// Output: 65.9 Brix
}

// By hand: 66.9 reads 59.00 at 211 F (table hydrometer-worked) and 0.059 more for each
// F cooler, 59.41 at 204 F; 59.5 is 0.09 over that.
func Example_hotReading() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	fmt.Println(must(stem.Brix(59.5, units.Fahrenheit(204))).Text(1))
	// Output: 67.0 Brix
}

// By hand: 0.34 for the 8 F from 60 F to 68 F (table hydrometer-traps-worked).
func Example_roomReading() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	fmt.Println(must(stem.Brix(66, units.Fahrenheit(68))).Text(1))
	// Output: 66.3 Brix
}

// By hand: 59.00 at 211 F (table hydrometer-worked) and 0.059 for each of 31 F,
// rounded up.
func Example_coolingCup() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	reads := must(stem.Reading(66.9, units.Fahrenheit(180)))
	fmt.Printf("%.1f Brix\n", math.Ceil(10*float64(reads))/10)
	// Output: 60.9 Brix
}

// By hand: 66.9 reads 59.12 at 209 F, 4.62 more. A Brix is 0.00613 of gravity near 67
// and 0.00589 near 59 (NBS Circular 440, table 114), so that it is 1.04 on the hot
// stem: 66.9 - 4.62/1.04.
func Example_notYet() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	fmt.Println(must(stem.Brix(54.5, units.Fahrenheit(209))).Text(1))
	// Output: 62.5 Brix
}

// By hand: 66.9 reads 59.36 at 205 F, 1.64 less, and a Brix is 1.04 on the hot stem:
// 66.9 + 1.64/1.04.
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

// By hand: syrup boils 7.01, 7.20 and 7.56 F above water at 65.5, 66 and 66.9 Brix
// (Starzak and Peacock 1997), 0.38 and then 0.40 F for a Brix, so 0.43 past 66.9:
// 0.5/0.43 = 1.16.
func Example_badThermometer() {
	off := must(finish.ErrorCost(66.9, units.Atmosphere, units.FahrenheitDegrees(0.5)))
	fmt.Println(off.Text(1))
	// Output: 1.2 Brix
}

// By hand: 18 F (Ontario) to 24 F (Cornell, from memory) above water at sea level,
// half a percent less under 28.7 inHg, over water of 209.9 F.
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
