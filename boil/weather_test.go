package boil_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/units"
)

// By hand, in inches of mercury and feet, with 30.10^0.1903 = 1.911486 and
// 1.313e-5 x 1500 = 0.019695: (1.911486 + 0.019695)^(1/0.1903) = 31.766. Average
// weather there is 29.921 x (1 - 0.0065 x 457.17/288.15)^5.255876 = 28.335, and
// the most that weather brings (1.926929 - 0.019695)^(1/0.1903) = 29.750.
func TestWeatherAtByHand(t *testing.T) {
	w, err := boil.WeatherAt(30.10*units.InchMercury, 1500*units.Foot)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"setting", w.Setting.InchesMercury(), 31.766},
		{"average", w.Most.Middle.InchesMercury(), 28.335},
		{"most", w.Most.High.InchesMercury(), 29.750},
		{"least", w.Most.Low.InchesMercury(), 26.688},
		{"usual", w.Usual.Middle.InchesMercury(), 28.335},
		// 1.765 inHg at 1.70 to 1.77 F an inch: water boils 3.0 F too hot.
		{"hotter", w.Hotter.FahrenheitDegrees() / 10, 0.305},
	} {
		if !(math.Abs(c.got-c.want) <= 0.0015) {
			t.Errorf("%s: %v, want %v", c.name, c.got, c.want)
		}
	}
	if w.Fit != boil.NoWeather {
		t.Errorf("30.10 inHg at 1500 ft: %v", w.Fit)
	}
}

func TestWeatherAt(t *testing.T) {
	inches := func(x float64) units.Pressure { return units.InchesMercury(x) }
	water := func(f float64) units.Pressure {
		p, err := boil.PressureFromWater(units.Fahrenheit(f))
		if err != nil {
			t.Fatal(err)
		}
		return p
	}
	for _, c := range []struct {
		what     string
		pressure units.Pressure
		feet     float64
		want     boil.Fit
	}{
		{"standard", inches(29.92), 0, boil.UsualWeather},
		{"standard", inches(28.33), 1500, boil.UsualWeather},
		{"standard", inches(23.98), 6000, boil.UsualWeather},
		// The ends at sea level are those of the settings themselves.
		{"low", inches(29.33), 0, boil.UsualWeather}, {"lower", inches(29.31), 0, boil.RareWeather},
		{"high", inches(30.51), 0, boil.UsualWeather}, {"higher", inches(30.53), 0, boil.RareWeather},
		{"storm", inches(28.21), 0, boil.RareWeather}, {"no storm", inches(28.19), 0, boil.NoWeather},
		{"cold high", inches(31.39), 0, boil.RareWeather}, {"no high", inches(31.41), 0, boil.NoWeather},
		// Set to sea level: 30.1 inHg at 600 ft are 30.76 brought back down.
		{"sea level", inches(30.1), 600, boil.RareWeather},
		{"sea level", inches(30.1), 1500, boil.NoWeather},
		{"sea level", inches(30.1), 6000, boil.NoWeather},
		// A thermometer: water boils at 210.2 F at 1,000 ft, and at 213.5 in no weather.
		{"thermometer", water(213.5), 1000, boil.NoWeather},
		{"thermometer", water(210.2), 1000, boil.UsualWeather},
		{"thermometer", water(211.6), 1000, boil.RareWeather},
		{"thermometer", water(213.5), 0, boil.RareWeather},
	} {
		if w, err := boil.WeatherAt(c.pressure, units.Feet(c.feet)); err != nil || w.Fit != c.want {
			t.Errorf("%s, %v at %v ft: %v, %v; want %v", c.what, c.pressure, c.feet, w.Fit, err, c.want)
		}
	}
	// By hand: 29.921 - 28.856 = 1.065 inHg at 1.69 to 1.75 F an inch leave
	// 211.95 - 1.83 = 210.12 F in average weather at 1,000 ft, 3.38 F under 213.5.
	w, err := boil.WeatherAt(water(213.5), 1000*units.Foot)
	if err != nil || !(math.Abs(w.Hotter.FahrenheitDegrees()-3.38) <= 0.04) {
		t.Errorf("the thermometer shows %v too much, %v", w.Hotter.FahrenheitDegrees(), err)
	}
}

// What the elevation alone tells is usual weather, with nothing to write on a
// thermometer; a setting brought up and held against it comes back.
func TestWeatherAtStandard(t *testing.T) {
	for feet := -1600.0; feet <= 16000; feet += 400 {
		at := units.Feet(feet)
		p, err := boil.PressureAt(at)
		if err != nil {
			t.Fatal(err)
		}
		w, err := boil.WeatherAt(p, at)
		if err != nil || w.Fit != boil.UsualWeather || !(math.Abs(float64(w.Hotter)) <= 1e-9) {
			t.Errorf("%v ft: %+v, %v", feet, w, err)
		}
		high, err := boil.StationPressure(31*units.InchMercury, at)
		if err != nil {
			t.Fatal(err)
		}
		if w, err := boil.WeatherAt(high, at); err != nil || w.Fit != boil.RareWeather || !(math.Abs(w.Setting.InchesMercury()-31) <= 1e-9) {
			t.Errorf("%v ft: %+v, %v", feet, w, err)
		}
	}
}

func TestWeatherAtLimits(t *testing.T) {
	for _, x := range []float64{12 - 1e-9, 36 + 1e-9, math.NaN(), math.Inf(1), math.Inf(-1)} {
		if w, err := boil.WeatherAt(units.InchesMercury(x), 0); !errors.Is(err, units.ErrRange) || w != (boil.Weather{}) {
			t.Errorf("%v inHg: %+v, %v", x, w, err)
		}
	}
	for _, x := range []float64{-500 - 1e-6, 5000 + 1e-6, math.NaN(), math.Inf(1), math.Inf(-1)} {
		if w, err := boil.WeatherAt(units.Atmosphere, units.Meters(x)); !errors.Is(err, units.ErrRange) || w != (boil.Weather{}) {
			t.Errorf("%v m: %+v, %v", x, w, err)
		}
	}
	for _, c := range []struct{ inHg, m float64 }{{12.0000001, 5000}, {35.9999999, -500}, {30, 5000}, {30, -500}} {
		if _, err := boil.WeatherAt(units.InchesMercury(c.inHg), units.Meters(c.m)); err != nil {
			t.Errorf("%v inHg at %v m: %v", c.inHg, c.m, err)
		}
	}
	if s := boil.Fit(9).String(); s != "Fit(9)" {
		t.Errorf("an unknown fit prints as %q", s)
	}
}
