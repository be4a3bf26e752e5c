package units_test

import (
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/units"
)

// A point and a difference of temperature are two types.
func Example() {
	water := units.Fahrenheit(211.95)
	syrup := water.Add(7.1 * units.FahrenheitDegree)
	fmt.Println(syrup.Text(units.ScaleFahrenheit, 2))
	fmt.Println(syrup.Sub(water).Text(units.FahrenheitDegree, 1))
	// Output:
	// 219.05 F
	// 7.1 F deg
}

// 212 F is 100 C by definition (NIST SP 811).
func ExampleTemperature() {
	boiling := units.Fahrenheit(212)
	fmt.Println(boiling, boiling.Kelvin())
	fmt.Println(units.Celsius(20).Fahrenheit(), units.Kelvin(293.15))
	// Output:
	// 100 C 373.15
	// 68 20 C
}

func ExampleTemperature_Compare() {
	sap, ice := units.Fahrenheit(38), units.Celsius(0)
	fmt.Println(sap.Compare(ice), ice.Equal(units.Fahrenheit(32)))
	// Output: 1 true
}

// A cup that was not sent is no cup of ice water: it begins as NaN, and null is NaN.
func ExampleTemperature_UnmarshalJSON() {
	for _, body := range []string{`{"cup":"204 F"}`, `{"cup":null}`, `{}`} {
		ask := struct{ Cup units.Temperature }{units.Celsius(math.NaN())}
		err := json.Unmarshal([]byte(body), &ask)
		fmt.Println(ask.Cup.Text(units.ScaleFahrenheit, 0), err)
	}
	// Output:
	// 204 F <nil>
	// NaN F <nil>
	// NaN F <nil>
}

func ExampleTemperature_Text() {
	t := units.Celsius(104)
	fmt.Println(t.Text(units.ScaleFahrenheit, 1), "or", t.Text(units.ScaleCelsius, 0), "or", t.Text(units.ScaleKelvin, 2))
	// Output: 219.2 F or 104 C or 377.15 K
}

func ExampleParseTemperature() {
	t, err := units.ParseTemperature("68 °F")
	fmt.Println(t, err)
	_, err = units.ParseTemperature("68")
	fmt.Println(errors.Is(err, units.ErrNoUnit))
	// Output:
	// 20 C <nil>
	// true
}

func ExampleScale() {
	for _, s := range []units.Scale{units.ScaleCelsius, units.ScaleFahrenheit, units.ScaleKelvin} {
		fmt.Println(units.Celsius(0).Text(s, 2))
	}
	// Output:
	// 0.00 C
	// 32.00 F
	// 273.15 K
}

func ExampleScale_String() {
	fmt.Println(units.ScaleFahrenheit)
	// Output: Fahrenheit
}

// A Fahrenheit degree is 5/9 of a Celsius degree.
func ExampleTempDiff() {
	rise := units.CelsiusDegrees(4)
	fmt.Printf("%.1f\n", rise.FahrenheitDegrees())
	fmt.Printf("%.0f\n", units.FahrenheitDegrees(-9).Abs().CelsiusDegrees())
	fmt.Printf("%.1f\n", (1.8 * units.FahrenheitDegree / units.CelsiusDegree))
	// Output:
	// 7.2
	// 5
	// 1.0
}

func ExampleParseTempDiff() {
	d, err := units.ParseTempDiff("7.2 F deg")
	fmt.Println(d.Text(units.CelsiusDegree, 1), err)
	_, err = units.ParseTempDiff("7.2 F") // that is a point on the scale
	fmt.Println(err)
	// Output:
	// 4.0 C deg <nil>
	// units.ParseTempDiff: "7.2 F": ambiguous unit: write a difference as "7.1 F deg"
}

func ExampleBrix() {
	syrup := units.Brix(66.9)
	fmt.Printf("%.3f\n", syrup.Fraction())
	fmt.Println(syrup.Sugar(100*units.Pound).Text(units.Pound, 1))
	fmt.Println((50 * units.DegreeBrix).Of(10*units.Kilogram).Text(units.Kilogram, 0))
	// Output:
	// 0.669
	// 66.9 lb
	// 20 kg
}

func ExampleParseBrix() {
	b, err := units.ParseBrix("66.9 Brix")
	fmt.Println(b.Text(1), err)
	_, err = units.ParseBrix("66.9 %")
	fmt.Println(errors.Is(err, units.ErrAmbiguous))
	// Output:
	// 66.9 Brix <nil>
	// true
}

func ExampleShare() {
	fmt.Println(units.FractionShare(0.65), units.Percents(65).Fraction(), units.Whole.Percents())
	fmt.Println((12.5 * units.Percent).Text(1))
	// Output:
	// 65 % 0.65 100
	// 12.5 %
}

func ExampleParseShare() {
	s, err := units.ParseShare("65 %")
	fmt.Println(s.Percents(), err)
	// Output: 65 <nil>
}

// A function that relies on another's check passes its error on under the name
// that the caller wrote.
func ExampleUnder() {
	err := error(&units.RangeError{Func: "inner", Arg: "volume", Value: -1, Low: 0, High: 10, Unit: "L"})
	fmt.Println(units.Under("outer", err))
	// Output: outer: volume -1 L is outside 0 to 10 L
}

func ExampleRangeError() {
	err := error(&units.RangeError{Func: "density.Solution", Arg: "temperature", Value: 120, Low: 0, High: 110, Unit: "C", Hint: "let it cool"})
	fmt.Println(err)
	fmt.Println(errors.Is(err, units.ErrRange))
	// Output:
	// density.Solution: temperature 120 C is outside 0 to 110 C: let it cool
	// true
}

// A bare gallon is refused, and the message tells the way out.
func ExampleParseError() {
	_, err := units.ParseVolume("60 gal")
	var e *units.ParseError
	if errors.As(err, &e) {
		fmt.Println(e.Input, "|", e.Hint, "|", errors.Is(err, units.ErrAmbiguous))
	}
	for _, text := range []string{"sixty", "60", "60 hogsheads"} {
		_, err := units.ParseVolume(text)
		fmt.Println(errors.Is(err, units.ErrSyntax), errors.Is(err, units.ErrNoUnit), errors.Is(err, units.ErrUnit))
	}
	// Output:
	// 60 gal | write "US gal" or "imp gal" | true
	// true false false
	// false true false
	// false false true
}

// Quantities are flags, JSON and CSV cells as they are.
func ExampleVolume_UnmarshalText() {
	sap := 40 * units.USGallon
	flags := flag.NewFlagSet("plan", flag.ContinueOnError)
	flags.TextVar(&sap, "sap", sap, "sap to boil")
	if err := flags.Parse([]string{"-sap", "100 L"}); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(sap.Text(units.Liter, 0))
	// Output: 100 L
}

func ExampleTemperature_MarshalText() {
	page, err := json.Marshal(map[string]any{"cup": units.Celsius(98.5), "reading": units.Brix(59)})
	fmt.Println(string(page), err)
	// Output: {"cup":"98.5 C","reading":"59 Brix"} <nil>
}

// A flow and a time make a volume.
func ExampleVolumeRate_Over() {
	fmt.Println(units.USGallonsPerHour(30).Over(90*time.Minute).Text(units.USGallon, 0))
	// Output: 45 US gal
}

// The factors are those of NIST SP 811: 1 lb/gal is 119.8264 kg/m3 and 1
// Btu/(lb F) is 4.1868 kJ/(kg K).
func ExampleDensity_Text() {
	fmt.Println(units.PoundsPerUSGallon(1).Text(units.KilogramPerCubicMeter, 4))
	fmt.Println((25 * units.Degree).Text(units.Degree, 0))
	fmt.Println(units.BtuITPerPoundFahrenheit.Text(units.KilojoulePerKilogramKelvin, 4))
	fmt.Println((184 * units.MillipascalSecond).Text(units.MillipascalSecond, 0))
	// Output:
	// 119.8264 kg/m3
	// 25 deg
	// 4.1868 kJ/(kg K)
	// 184 mPa s
}
