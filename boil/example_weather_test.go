package boil_test

import (
	"fmt"
	"log"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/units"
)

// A barometer that is set to sea level, in a sugarhouse at 1,500 ft: by hand
// (30.10^0.1903 + 1.313e-5 x 1500)^(1/0.1903) = 31.77 inHg, which no weather
// brings; the average there is 28.33.
func ExampleWeatherAt() {
	w, err := boil.WeatherAt(30.10*units.InchMercury, 1500*units.Foot)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%v: a setting of %.2f inHg, %.2f on average\n", w.Fit, w.Setting.InchesMercury(), w.Most.Middle.InchesMercury())
	// Output: no weather: a setting of 31.77 inHg, 28.33 on average
}

// A thermometer that shows 210.6 F in boiling water where average weather makes
// it 210.1 at 1,000 ft: the weather explains the half degree.
func ExampleWeather() {
	p, err := boil.PressureFromWater(units.Fahrenheit(210.6))
	if err != nil {
		log.Fatal(err)
	}
	w, err := boil.WeatherAt(p, 1000*units.Foot)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%v: %.1f F hotter than average\n", w.Fit, w.Hotter.FahrenheitDegrees())
	// Output: usual weather: 0.5 F hotter than average
}

func ExampleFit_String() {
	fmt.Println(boil.RareWeather)
	// Output: rare weather
}

// Boiled at 1,500 ft, where a barometer in the sugarhouse says 30.10 inHg, a
// thermometer shows 209.5 F and 32 F in ice. Under 30.10 water boils at 212.3: 2.8
// F are missing. No weather brings 30.10 inHg up there, and 209.5 F is just right
// for it, so the barometer is set to sea level.
func ExampleProbe_CheckedIn() {
	c, err := boil.Probe{Pressure: 30.10 * units.InchMercury}.CheckedIn(units.Fahrenheit(209.5), units.Fahrenheit(32), 1500*units.Foot)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(c.Suspect)
	fmt.Printf("%.1f F off under that pressure; water boils as in %v\n", c.Boil.FahrenheitDegrees(), c.Water.Fit)
	// Output:
	// barometer or elevation
	// -2.8 F off under that pressure; water boils as in usual weather
}

// Two degrees high in ice and at the boil: it is the thermometer, and readings of
// syrup want two degrees off.
func ExampleThermometerCheck() {
	c, err := boil.Probe{Pressure: units.Atmosphere}.CheckedIn(units.Fahrenheit(214), units.Fahrenheit(34), 0)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%v: %.0f F off\n", c.Suspect, c.Boil.FahrenheitDegrees())
	// Output: thermometer: 2 F off
}

func ExampleSuspects() {
	for _, s := range boil.Suspects() {
		fmt.Println(s)
	}
	// Output:
	// nothing
	// thermometer
	// thermometer at the boil
	// barometer or elevation
	// thermometer or barometer
}
