package units_test

import (
	"errors"
	"math"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

func TestTemperature(t *testing.T) {
	water, syrup := units.Fahrenheit(211.95), units.Fahrenheit(219.05)
	if rise := syrup.Sub(water).FahrenheitDegrees(); math.Abs(rise-7.1) > 1e-12 {
		t.Errorf("rise %v F, want 7.1", rise)
	}
	if got := water.Add(7.1 * units.FahrenheitDegree); math.Abs(got.Sub(syrup).CelsiusDegrees()) > 1e-12 {
		t.Errorf("%v, want %v", got, syrup)
	}
	if water.Compare(syrup) != -1 || syrup.Compare(water) != 1 || !water.Equal(water) || water.Equal(syrup) {
		t.Error("order of two temperatures is wrong")
	}
	// A tabulated tenth of a degree Celsius survives unchanged.
	for i := -400; i <= 1500; i++ {
		c := float64(i) / 10
		if got := units.Celsius(c).Celsius(); got != c {
			t.Fatalf("%v C comes back as %v", c, got)
		}
	}
}

func TestProducts(t *testing.T) {
	near := func(name string, got, want float64) {
		t.Helper()
		if math.Abs(got-want) > 1e-12*math.Abs(want) {
			t.Errorf("%s: got %v, want %v", name, got, want)
		}
	}
	d := units.KilogramsPerCubicMeter(1328)
	m := d.Mass(2 * units.Liter)
	near("mass", m.Kilograms(), 2.656)
	near("volume", m.Volume(d).Liters(), 2)
	near("rate over time", (30 * units.USGallonPerHour).Over(90*time.Minute).USGallons(), 45)
	near("volume per time", (45 * units.USGallon).Per(90*time.Minute).USGallonsPerHour(), 30)
	near("time", (30 * units.USGallonPerHour).Time(45*units.USGallon).Hours(), 1.5)
	near("mass per time", (10 * units.Kilogram).Per(time.Hour).KilogramsPerHour(), 10)
	near("mass over time", (10 * units.KilogramPerHour).Over(2*time.Hour).Kilograms(), 20)
	near("mass time", (10 * units.KilogramPerHour).Time(20*units.Kilogram).Hours(), 2)
	near("mass rate", d.MassRate(units.CubicMeterPerSecond).KilogramsPerSecond(), 1328)
	near("volume rate", units.MassRate(1328).VolumeRate(d).CubicMetersPerSecond(), 1)
	near("energy per time", (units.KilowattHour).Per(time.Hour).Kilowatts(), 1)
	near("power over time", units.Kilowatt.Over(time.Hour).KilowattHours(), 1)
	near("latent", units.BtuITPerPound.Energy(units.Pound).BtusIT(), 1)
	near("boiled off", units.BtuIT.Divide(units.BtuITPerPound).Pounds(), 1)
	near("sensible", units.BtuITPerPoundFahrenheit.Energy(units.Pound, units.FahrenheitDegree).BtusIT(), 1)
	near("sugar", units.Brix(66.9).Sugar(100*units.Gram).Grams(), 66.9)
	near("solution", units.Brix(66.9).Of(66.9*units.Gram).Grams(), 100)
	near("area", (2 * units.Foot).Times(6*units.Foot).SquareFeet(), 12)
	// 1 in over 1 ft2 is 0.623 US gallon: 144/231.
	near("pan", units.SquareFoot.Volume(units.Inch).USGallons(), 144.0/231)
	near("depth", units.USGallon.Depth(units.SquareFoot).Inches(), 231.0/144)
	near("flux", units.USGallonPerSquareFootHour.Through(12*units.SquareFoot).USGallonsPerHour(), 12)
	near("share", units.FractionShare(0.65).Percents(), 65)
	near("share back", (65 * units.Percent).Fraction(), 0.65)
	near("arc", units.Degrees(180).Arc(units.Meter).Meters(), math.Pi)
}

// What one unit holds of another, by definition: SP 811, appendix B.
func TestReadInAnotherUnit(t *testing.T) {
	near := func(name string, got, want float64) {
		t.Helper()
		if math.Abs(got-want) > 1e-12*math.Abs(want) {
			t.Errorf("%s: got %v, want %v", name, got, want)
		}
	}
	near("two feet", (24 * units.Inch).Feet(), 2)
	near("two inches", (2 * units.Inch).Millimeters(), 50.8)
	near("two acres", (2 * 43560 * units.SquareFoot).Acres(), 2)
	near("two cubic feet", units.CubicFeet(2).CubicInches(), 2*1728)
	near("two US gallons", units.CubicInches(2*231).USGallons(), 2)
	near("two imperial gallons", units.ImperialFluidOunces(2*160).ImperialGallons(), 2)
	near("two liters", (2 * units.Liter).Milliliters(), 2000)
	near("two cords", units.CubicFeet(2*128).Cords(), 2)
	near("three tonnes", (3000 * units.Kilogram).Tonnes(), 3)
	near("two short tons", (4000 * units.Pound).ShortTons(), 2)
	near("a liter over a square meter, a millimeter deep", (2 * units.InchPerHour).LitersPerSquareMeterHour(), 50.8)
}

// Flows of zero never end, and no flow makes a negative or undefined time.
func TestTimeSaturates(t *testing.T) {
	const never = time.Duration(math.MaxInt64)
	if got := units.VolumeRate(0).Time(units.USGallon); got != never {
		t.Errorf("no flow takes %v", got)
	}
	// 2^63 ns is one more than a Duration holds.
	for _, v := range []units.Volume{0x1p63 / 1e9, 1e12} {
		if got := units.CubicMeterPerSecond.Time(v); got != never {
			t.Errorf("%v at 1 m3/s takes %v", float64(v), got)
		}
	}
	for _, q := range []units.VolumeRate{-1, units.VolumeRate(math.NaN())} {
		if got := q.Time(units.USGallon); got != 0 {
			t.Errorf("flow %v takes %v", float64(q), got)
		}
	}
}

func TestRangeError(t *testing.T) {
	err := error(&units.RangeError{Func: "density.Solution", Arg: "temperature", Value: 120, Low: 0, High: 110, Unit: "C", Hint: "let it cool"})
	if !errors.Is(err, units.ErrRange) {
		t.Error("does not unwrap to ErrRange")
	}
	const want = "density.Solution: temperature 120 C is outside 0 to 110 C: let it cool"
	if err.Error() != want {
		t.Errorf("got %q, want %q", err, want)
	}
	under := units.Under("sugar.NewLot", err)
	if got := under.Error(); got != strings.Replace(want, "density.Solution", "sugar.NewLot", 1) {
		t.Errorf("renamed: %q", got)
	}
	if err.Error() != want {
		t.Error("Under changed the original")
	}
	other := errors.New("other")
	if units.Under("x", other) != other || units.Under("x", nil) != nil {
		t.Error("Under touches other errors")
	}
	for value, want := range map[float64]string{
		0: "f: doubt must be more than 0 and at most 5 K",
		5: "f: doubt must be less than 5 K and at least 0",
		6: "f: doubt 6 K is outside 0 to 5 K",
	} {
		open := &units.RangeError{Func: "f", Arg: "doubt", Value: value, Low: 0, High: 5, Unit: "K"}
		if got := open.Error(); got != want {
			t.Errorf("%v: got %q, want %q", value, got, want)
		}
	}
	nan := &units.RangeError{Func: "f", Arg: "Brix", Value: math.NaN(), Low: 0, High: 85}
	if got := nan.Error(); got != "f: Brix is not a number; it must lie in 0 to 85" {
		t.Errorf("NaN: %q", got)
	}
}

// An end that bounds nothing is left out, and so is the sign of zero.
func TestRangeErrorEnds(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for want, e := range map[string]units.RangeError{
		"f: x 0 K is outside 1 to 5 K":                         {Value: math.Copysign(0, -1), Low: 1, High: 5},
		"f: x 7 K is outside 0 to 5 K":                         {Value: 7, Low: math.Copysign(0, -1), High: 5},
		"f: x 5.000000000000001 K is outside 0 to 5 K":         {Value: math.Nextafter(5, 6), Low: 0, High: 5},
		"f: x +Inf K is outside 0 to 5 K":                      {Value: inf, Low: 0, High: 5},
		"f: x -1 K is out of range; it must be at least 0 K":   {Value: -1, Low: 0, High: inf},
		"f: x +Inf K is out of range; it must be at least 0 K": {Value: inf, Low: 0, High: inf},
		"f: x is not a number; it must be at least 0 K":        {Value: nan, Low: 0, High: nan},
		"f: x must be more than 0 K":                           {Value: 0, Low: 0, High: inf},
		"f: x 6 K is out of range; it must be at most 5 K":     {Value: 6, Low: -inf, High: 5},
		"f: x must be less than 5 K":                           {Value: 5, Low: nan, High: 5},
		"f: x -Inf K is out of range":                          {Value: -inf, Low: -inf, High: inf},
		"f: x is not a number":                                 {Value: nan, Low: nan, High: nan},
	} {
		e.Func, e.Arg, e.Unit = "f", "x", "K"
		if got := e.Error(); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}
