package finish_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// The Ontario sheet and USDA with Cornell (from memory) do not agree on cream.
func ExampleConfectionFinishes() {
	for _, f := range finish.ConfectionFinishes() {
		if f.Product == "cream or butter" {
			fmt.Printf("%.0f to %.0f F over water: %s\n", f.Low.FahrenheitDegrees(), f.High.FahrenheitDegrees(), f.Source)
		}
	}
	// Output:
	// 18 to 20 F over water: Ontario maple producers confection sheet
	// 22 to 24 F over water: USDA and Cornell
}

// Ohio State University Extension: 219 F, 7 F over water, for 66 Brix.
func ExampleSyrupFinishes() {
	for _, f := range finish.SyrupFinishes() {
		if f.Obtained == "read" {
			fmt.Println(f.Printed, f.Low.Text(units.FahrenheitDegree, 0))
		}
	}
	// Output: 66 Brix 7 F deg
}

func ExampleFinish() {
	f := finish.Finish{Product: "a house fudge", Low: 22 * units.FahrenheitDegree, High: 24 * units.FahrenheitDegree}
	low, high, err := f.At(units.Atmosphere)
	// Water boils at 211.95 F.
	fmt.Println(low.Text(units.ScaleFahrenheit, 0), high.Text(units.ScaleFahrenheit, 0), err)
	// Output: 234 F 236 F <nil>
}

// A rise of 32 F: 7.41 lb of solids make 8.45 lb of product (computed).
func ExampleFinish_Strength() {
	f := finish.Finish{Low: 32 * units.FahrenheitDegree, High: 32 * units.FahrenheitDegree}
	s, err := f.Strength()
	fmt.Println(s.Middle.Of(7.41*units.Pound).Text(units.Pound, 2), err)
	// Output: 8.45 lb <nil>
}

func ExampleFinish_Moisture() {
	f := finish.Finish{Low: 32 * units.FahrenheitDegree, High: 32 * units.FahrenheitDegree}
	m, err := f.Moisture()
	// 100 less 7.41/8.45.
	fmt.Println(m.Middle.Text(0), err)
	// Output: 12 % <nil>
}

// Vermont county producers page: fudge at 235 F, 23 F over water.
func ExampleFinish_At() {
	fudge := finish.ConfectionFinishes()[6]
	low, _, err := fudge.At(units.Atmosphere)
	fmt.Println(fudge.Product, low.Text(units.ScaleFahrenheit, 0), err)
	// Output: fudge 235 F <nil>
}

// Ten kilograms that lose ten in an hour: 10 (1 - 60/66.9)/10 h.
func ExampleBatch() {
	b := finish.Batch{Mass: 10 * units.Kilogram, Brix: 60, Evaporation: 10 * units.KilogramPerHour}
	syrup, err := b.Time(66.9)
	spoiled, _ := b.Time(70)
	fmt.Println(syrup.Round(time.Second), "to syrup,", spoiled.Round(time.Second), "to rock in the jar", err)
	// Output: 6m11s to syrup, 8m34s to rock in the jar <nil>
}

func ExampleBatch_Time() {
	b := finish.Batch{Mass: 10 * units.Kilogram, Brix: 60, Evaporation: 10 * units.KilogramPerHour}
	t, err := b.Time(66.9)
	fmt.Println(t.Round(time.Second), err)
	// Output: 6m11s <nil>
}

func ExampleBatch_After() {
	b := finish.Batch{Mass: 10 * units.Kilogram, Brix: 60, Evaporation: 10 * units.KilogramPerHour}
	brix, err := b.After(6*time.Minute + 11*time.Second)
	fmt.Println(brix.Text(1), err)
	// Output: 66.9 Brix <nil>
}

// 66.9 Brix times a sixtieth.
func ExampleBatch_PerMinute() {
	b := finish.Batch{Mass: 10 * units.Kilogram, Brix: 66.9, Evaporation: 10 * units.KilogramPerHour}
	climb, err := b.PerMinute()
	fmt.Println(climb.Text(3), err)
	// Output: 1.115 Brix <nil>
}

// Water still to go: 10 kg/h for 2 min over ln 2 is 0.481 kg of 20.
func ExampleBatch_Coast() {
	b := finish.Batch{Mass: 20 * units.Kilogram, Brix: 65, Evaporation: 10 * units.KilogramPerHour}
	end, err := b.Coast(2 * time.Minute)
	fmt.Println(end.Text(1), err)
	// Output: 66.6 Brix <nil>
}

// 1.4 MJ at 2,246 kJ/kg boil off 0.62 kg of 20.
func ExampleBatch_CoastOn() {
	b := finish.Batch{Mass: 20 * units.Kilogram, Brix: 65, Evaporation: 10 * units.KilogramPerHour}
	end, err := b.CoastOn(1.4*units.Megajoule, units.Atmosphere)
	fmt.Println(end.Text(1), err)
	// Output: 67.1 Brix <nil>
}

// The 13 kg of sugar must end in 19.52 kg and coast through 0.481 kg of water.
func ExampleBatch_LastFiring() {
	b := finish.Batch{Mass: 26 * units.Kilogram, Brix: 50, Evaporation: 10 * units.KilogramPerHour}
	stop, err := b.LastFiring(66.6, 2*time.Minute)
	fmt.Println(stop.Text(1), err)
	// Output: 65.0 Brix <nil>
}

// What is still to go at 63.9 Brix is 31.36 times what is at 66.8, of 66.9: 4.97 halvings
// of 2 minutes.
func ExampleCoalsTime() {
	d, err := finish.CoalsTime(63.9, 66.9, 2*time.Minute)
	fmt.Println(d.Round(time.Second), err)
	// Output: 9m57s <nil>
}

// A tenth of a degree Fahrenheit.
func ExampleErrorCost() {
	b, err := finish.ErrorCost(66, units.Atmosphere, 0.1*units.FahrenheitDegree)
	fmt.Println(b.Text(2), err)
	// Output: 0.26 Brix <nil>
}

// Two inches over a probe that was calibrated at the surface.
func ExampleDepthCost() {
	b, err := finish.DepthCost(66, units.Atmosphere, 2*units.Inch)
	fmt.Printf("about %.0f Brix %v\n", float64(b), err)
	// Output: about -1 Brix <nil>
}

// What 0.3 inHg of weather since the calibration does: 1.3 Brix.
func ExampleThermometerStop() {
	stop := finish.ThermometerStop{Target: 66, Pressure: units.Atmosphere, BarometerBy: 0.3 * units.InchMercury}
	parts, err := stop.Parts()
	fmt.Println(parts.Barometer.Text(1), err)
	// Output: 1.3 Brix <nil>
}

func ExampleThermometerStop_Parts() {
	stop := finish.ThermometerStop{Target: 66, Pressure: units.Atmosphere, ProbeBy: 0.1 * units.FahrenheitDegree}
	parts, err := stop.Parts()
	fmt.Println(parts.Probe.Text(2), err)
	// Output: 0.26 Brix <nil>
}

// The same kettle by both instruments.
func ExampleThermometerParts() {
	thermometer, _ := finish.ThermometerStop{
		Target: 66.9, Pressure: units.Atmosphere, ProbeBy: 0.2 * units.FahrenheitDegree,
		BarometerBy: 0.1 * units.InchMercury, Inverted: 2 * units.Percent, InvertedBy: 1 * units.Percent,
	}.Parts()
	hydrometer, _ := finish.HydrometerStop{
		Target: 66.9, Instrument: density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}, Cup: units.Fahrenheit(209),
		CupBy: 3 * units.FahrenheitDegree, ScaleBy: 0.2, ReadingBy: 0.1,
	}.Parts()
	fmt.Println("trust the hydrometer:", hydrometer.Total < thermometer.Total)
	// Output: trust the hydrometer: true
}

// Surface tension and the like: 370e-6 of the density, 0.08 Brix.
func ExampleHydrometerStop() {
	stop := finish.HydrometerStop{Target: 66.9, Instrument: density.Hydrometer{GraduatedAt: units.Celsius(20)}, Cup: units.Celsius(20)}
	parts, err := stop.Parts()
	fmt.Println(parts.Float.Text(2), err)
	// Output: 0.08 Brix <nil>
}

// In a hot cup the expansion is extrapolated: 0.035 Brix at 99 C.
func ExampleHydrometerStop_Parts() {
	stop := finish.HydrometerStop{Target: 66.9, Instrument: density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}, Cup: units.Celsius(99)}
	parts, err := stop.Parts()
	fmt.Println(parts.Expansion.Text(3), err)
	// Output: 0.035 Brix <nil>
}

func ExampleHydrometerParts() {
	stop := finish.HydrometerStop{Target: 66.9, Instrument: density.Hydrometer{GraduatedAt: units.Celsius(20)}, Cup: units.Celsius(20), ScaleBy: 0.2}
	parts, err := stop.Parts()
	// 0.2 and 0.08 Brix at right angles.
	fmt.Println(parts.Total.Text(2), err)
	// Output: 0.22 Brix <nil>
}

// A pot of 5 lb with 20 lb of half syrup at 33.45 Brix: done at twice the
// strength, when half of the 20 lb is left.
func ExamplePotReading() {
	pot := finish.PotReading{Gross: 25 * units.Pound, Tare: 5 * units.Pound, Brix: 33.45}
	done, err := pot.Target(66.9)
	fmt.Println(done.Gross.Text(units.Pound, 1), err)
	// Output: 15.0 lb <nil>
}

func ExamplePotReading_Target() {
	pot := finish.PotReading{Gross: 25 * units.Pound, Tare: 5 * units.Pound, Brix: 40, BrixBy: 0.2}
	done, err := pot.Target(66)
	// 0.2 Brix of 40 is half a percent of the 66.
	fmt.Println(done.BrixBy.Text(2), err)
	// Output: 0.33 Brix <nil>
}

func ExamplePotReading_At() {
	pot := finish.PotReading{Gross: 25 * units.Pound, Tare: 5 * units.Pound, Brix: 33.45}
	b, err := pot.At(15 * units.Pound)
	fmt.Println(b.Text(1), err)
	// Output: 66.9 Brix <nil>
}

func ExamplePotTarget() {
	pot := finish.PotReading{Gross: 25 * units.Pound, Tare: 5 * units.Pound, Brix: 40}
	candy, err := pot.Target(100 - 12) // 12 percent moisture
	// 20 lb of 40 Brix are 8 lb of sugar, 9.09 lb of candy.
	fmt.Println(candy.Off.Text(units.Pound, 2), "to boil off", err)
	// Output: 10.91 lb to boil off <nil>
}
