package units_test

import (
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/units"
)

// every holds one field of each quantity.
type every struct {
	Angle          units.Angle
	Area           units.Area
	Brix           units.Brix
	Density        units.Density
	Energy         units.Energy
	Flux           units.Flux
	Length         units.Length
	Mass           units.Mass
	MassRate       units.MassRate
	Power          units.Power
	Pressure       units.Pressure
	Share          units.Share
	SpecificEnergy units.SpecificEnergy
	SpecificHeat   units.SpecificHeat
	TempDiff       units.TempDiff
	Temperature    units.Temperature
	Viscosity      units.Viscosity
	Volume         units.Volume
	VolumeRate     units.VolumeRate
}

// fields calls f with each quantity of e: its name, its number and what JSON
// reads into.
func (e *every) fields(f func(name string, x float64, into any)) {
	f("Angle", float64(e.Angle), &e.Angle)
	f("Area", float64(e.Area), &e.Area)
	f("Brix", float64(e.Brix), &e.Brix)
	f("Density", float64(e.Density), &e.Density)
	f("Energy", float64(e.Energy), &e.Energy)
	f("Flux", float64(e.Flux), &e.Flux)
	f("Length", float64(e.Length), &e.Length)
	f("Mass", float64(e.Mass), &e.Mass)
	f("MassRate", float64(e.MassRate), &e.MassRate)
	f("Power", float64(e.Power), &e.Power)
	f("Pressure", float64(e.Pressure), &e.Pressure)
	f("Share", float64(e.Share), &e.Share)
	f("SpecificEnergy", float64(e.SpecificEnergy), &e.SpecificEnergy)
	f("SpecificHeat", float64(e.SpecificHeat), &e.SpecificHeat)
	f("TempDiff", float64(e.TempDiff), &e.TempDiff)
	f("Temperature", e.Temperature.Celsius(), &e.Temperature)
	f("Viscosity", float64(e.Viscosity), &e.Viscosity)
	f("Volume", float64(e.Volume), &e.Volume)
	f("VolumeRate", float64(e.VolumeRate), &e.VolumeRate)
}

// What goes out comes back bit for bit; NaN goes as null, and null comes in as
// NaN over whatever stood there.
func TestJSON(t *testing.T) {
	const x = 0.1 + 1e-17
	nan := math.NaN()
	for _, value := range []float64{x, 0, -3, 1e300, nan} {
		e := every{
			units.Angle(value), units.Area(value), units.Brix(value), units.Density(value), units.Energy(value), units.Flux(value),
			units.Length(value), units.Mass(value), units.MassRate(value), units.Power(value), units.Pressure(value), units.Share(value),
			units.SpecificEnergy(value), units.SpecificHeat(value), units.TempDiff(value), units.Celsius(value), units.Viscosity(value),
			units.Volume(value), units.VolumeRate(value),
		}
		b, err := json.Marshal(e)
		if err != nil {
			t.Fatal(err)
		}
		var back every
		if math.IsNaN(value) {
			if n := strings.Count(string(b), ":null"); n != 19 {
				t.Errorf("%d of 19 are null: %s", n, b)
			}
		}
		if err := json.Unmarshal(b, &back); err != nil {
			t.Fatal(err)
		}
		back.fields(func(name string, y float64, _ any) {
			if math.Float64bits(y) != math.Float64bits(value) && !(math.IsNaN(y) && math.IsNaN(value)) {
				t.Errorf("%s: %v came back as %v", name, value, y)
			}
		})
	}
	if b, err := json.Marshal(units.Volume(math.Inf(1))); err == nil {
		t.Errorf("infinity went out as %s", b)
	}
}

// What is no text with a unit is refused, and leaves the value alone.
func TestJSONRefused(t *testing.T) {
	var e every
	e.fields(func(name string, _ float64, into any) {
		for _, text := range []string{"60", `"60"`, `"60 stones"`, `""`, `"NaN m3"`, "true", "{}", "[]"} {
			err := json.Unmarshal([]byte(text), into)
			var pe *units.ParseError
			if !errors.As(err, &pe) || pe.Hint == "" {
				t.Errorf("%s of %s: %v", name, text, err)
			}
		}
	})
	e.fields(func(name string, x float64, _ any) {
		if x != 0 {
			t.Errorf("%s is now %v", name, x)
		}
	})
}

// A form that presets its inputs to NaN refuses what is missing and what is null
// alike.
func ExampleVolume_UnmarshalJSON() {
	for _, body := range []string{`{"sap": "60 US gal"}`, `{"sap": null}`, `{}`} {
		in := struct {
			Sap units.Volume `json:"sap"`
		}{units.Volume(math.NaN())}
		err := json.Unmarshal([]byte(body), &in)
		fmt.Println(in.Sap.TextIn(units.US, 3), math.IsNaN(float64(in.Sap)), err)
	}
	// Output:
	// 60 US gal false <nil>
	// NaN US fl oz true <nil>
	// NaN US fl oz true <nil>
}

// A range error is the body of an answer, and comes back whole.
func TestRangeErrorJSON(t *testing.T) {
	inf, nan := math.Inf(1), math.NaN()
	for _, e := range []units.RangeError{
		{Func: "density.Solution", Arg: "at", What: "temperature", Value: 150, Low: 0, High: 110, Unit: "C", Hint: "cool it"},
		{Arg: "n", Value: nan, Low: 1, High: inf},
		{Arg: "n", Value: -inf, Low: -inf, High: nan},
	} {
		b, err := json.Marshal(&e)
		if err != nil {
			t.Fatal(err)
		}
		var back units.RangeError
		if err := json.Unmarshal(b, &back); err != nil {
			t.Fatal(err)
		}
		if fmt.Sprintf("%#v", back) != fmt.Sprintf("%#v", e) {
			t.Errorf("%s\n got %#v\nwant %#v", b, back, e)
		}
	}
}

func ExampleRangeError_Text() {
	err := &units.RangeError{Func: "density.Hydrometer.Brix", Arg: "t", What: "temperature of the cup", Value: 1340.0 / 9, Low: 0, High: 110, Unit: "C",
		Hint: "let the cup cool"}
	fmt.Println(err.Text(units.US))
	fmt.Println(err.Text(units.Metric))
	fmt.Println(err)
	// Output:
	// temperature of the cup 300 F is outside 32 to 230 F: let the cup cool
	// temperature of the cup 148.9 C is outside 0 to 110 C: let the cup cool
	// density.Hydrometer.Brix: temperature of the cup 148.88889 C is outside 0 to 110 C: let the cup cool
}

// Words around an error of the library stay as they are.
func ExampleReason() {
	_, err := units.ParseVolume("60 gal")
	fmt.Println(units.Reason(fmt.Errorf("line 3: %w", err), units.US))
	// Output:
	// line 3: "60 gal": ambiguous unit: write "US gal" or "imp gal"
}

func ExampleAsFlag() {
	barometer := units.Pressure(0)
	set := flag.NewFlagSet("demo", flag.ContinueOnError)
	set.Var(units.AsFlag(&barometer, "29.92 inHg"), "barometer", "station pressure")
	set.SetOutput(io.Discard)
	fmt.Println("default", set.Lookup("barometer").DefValue)
	fmt.Println(set.Parse([]string{"-barometer", "30.1 gal"}))
	// Output:
	// default 29.92 inHg
	// invalid value "30.1 gal" for flag -barometer: "30.1 gal": unknown unit: use one of: Pa, hPa, kPa, MPa, bar, atm, psi, inHg, mmHg, inH2O, ftH2O, inHg(32F), inHg(60F)
}

func ExampleVolume_TextIn() {
	sap := 60 * units.USGallon
	fmt.Println(sap.TextIn(units.US, 3), "or", sap.TextIn(units.Metric, 3))
	fmt.Println((units.Cord / 25).TextIn(units.Both, 3))
	// Output:
	// 60 US gal or 227 L
	// 38.3 US gal (145 L)
}

func TestSystemText(t *testing.T) {
	for _, s := range units.Systems() {
		b, err := s.MarshalText()
		var back units.System = 9
		if err != nil || back.UnmarshalText(b) != nil || back != s {
			t.Errorf("%v: %s, %v came back as %v", s, b, err, back)
		}
	}
	var s units.System
	if err := s.UnmarshalText([]byte("furlongs")); !errors.Is(err, units.ErrName) {
		t.Error(err)
	}
	if _, err := units.System(9).MarshalText(); !errors.Is(err, units.ErrName) {
		t.Error(err)
	}
}

// A parse error goes out with its reason and is itself again.
func TestParseErrorJSON(t *testing.T) {
	for text, want := range map[string]error{"60": units.ErrNoUnit, "60 gal": units.ErrAmbiguous, "x": units.ErrSyntax, "60 stones": units.ErrUnit, "1e999 L": units.ErrRange} {
		_, err := units.ParseVolume(text)
		b, broken := json.Marshal(err)
		var back units.ParseError
		if broken == nil {
			broken = json.Unmarshal(b, &back)
		}
		if broken != nil || !errors.Is(&back, want) || back.Error() != err.Error() {
			t.Errorf("%s: %s came back as %v, want %v: %v", text, b, &back, err, broken)
		}
	}
}

func TestScaleText(t *testing.T) {
	var s units.Scale
	if err := s.UnmarshalText([]byte("fahrenheit")); err != nil || s != units.ScaleFahrenheit {
		t.Errorf("%v, %v", s, err)
	}
	if err := s.UnmarshalText([]byte("Reaumur")); !errors.Is(err, units.ErrName) || s != units.ScaleFahrenheit {
		t.Errorf("%v, %v", s, err)
	}
}

// 140 F are 60 C by definition.
func ExampleTemperature_TextIn() {
	t := units.Celsius(60)
	fmt.Println(t.TextIn(units.Both, 0), t.TextIn(units.US, 1), t.TextIn(units.Metric, 1))
	// Output: 140 F (60 C) 140.0 F 60.0 C
}
