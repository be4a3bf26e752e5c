package units_test

import (
	"encoding"
	"encoding/json"
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.org/sapreckoner/units"
)

// textual is what every quantity offers a flag set, JSON and CSV.
type textual interface {
	encoding.TextUnmarshaler
	encoding.TextMarshaler
	String() string
}

// quantities makes a fresh zero of each quantity.
var quantities = map[string]func() textual{
	"Temperature":    func() textual { return new(units.Temperature) },
	"TempDiff":       func() textual { return new(units.TempDiff) },
	"Mass":           func() textual { return new(units.Mass) },
	"Volume":         func() textual { return new(units.Volume) },
	"Length":         func() textual { return new(units.Length) },
	"Area":           func() textual { return new(units.Area) },
	"Pressure":       func() textual { return new(units.Pressure) },
	"Energy":         func() textual { return new(units.Energy) },
	"Power":          func() textual { return new(units.Power) },
	"Density":        func() textual { return new(units.Density) },
	"VolumeRate":     func() textual { return new(units.VolumeRate) },
	"MassRate":       func() textual { return new(units.MassRate) },
	"Flux":           func() textual { return new(units.Flux) },
	"SpecificEnergy": func() textual { return new(units.SpecificEnergy) },
	"SpecificHeat":   func() textual { return new(units.SpecificHeat) },
	"Viscosity":      func() textual { return new(units.Viscosity) },
	"Brix":           func() textual { return new(units.Brix) },
	"Share":          func() textual { return new(units.Share) },
	"Angle":          func() textual { return new(units.Angle) },
}

func TestParse(t *testing.T) {
	near := func(got, want float64) bool {
		return math.Abs(got-want) <= 1e-15*math.Max(1, math.Abs(want))
	}
	cases := []struct {
		quantity, text string
		same           string // another spelling of the same amount
	}{
		{"Temperature", "68 F", "20 C"},
		{"Temperature", "68°F", "20 °C"},
		{"Temperature", " 211.0 f ", "99.44444444444444 C"},
		{"Temperature", "293.15 K", "20 C"},
		{"Temperature", "-40 F", "-40 C"},
		{"TempDiff", "1.8 F deg", "1 C deg"},
		{"TempDiff", "4 °C deg", "4 K deg"},
		{"Mass", "16 oz", "1 lb"},
		{"Mass", "1 short ton", "2000 LB"},
		{"Mass", "2.5e3 g", "2.5 kg"},
		{"Volume", "1 US gal", "231 in3"},
		{"Volume", "1 us gallon", "4 US qt"},
		{"Volume", "1 imp gal", "4.54609 L"},
		{"Volume", "3 face cord 16 in", "1 cord"},
		{"Length", "7/16 in", "0.4375 in"},
		{"Length", "1 1/2 in", "1.5 in"},
		{"Length", "1-1/2 in", "1.5 in"},
		{"Length", "-1 1/2 in", "-1.5 in"},
		{"Length", "1 ft", "12 in"},
		{"Length", `4"`, "4 in"},
		{"Length", "4'", "4 ft"},
		{"Area", "1 ha", "10000 m2"},
		{"Pressure", "1 atm", "101325 Pa"},
		{"Pressure", "1 hpa", "100 Pa"},
		{"Energy", "1 kWh", "3.6 MJ"},
		{"Energy", "1 MMBtu", "1e6 Btu"},
		{"Power", "1 kW", "1000 W"},
		{"Density", "1 g/cm3", "1000 kg/m3"},
		{"VolumeRate", "60 US gal/h", "1 US gal/min"},
		{"Brix", "66.9 Bx", "66.9 Brix"},
		{"Brix", "66.9 °Brix", "66.9 Brix"},
		{"Share", "65%", "65 percent"},
		{"Angle", "1 turn", "360 deg"},
	}
	for _, c := range cases {
		t.Run(c.quantity+"/"+c.text, func(t *testing.T) {
			a, b := quantities[c.quantity](), quantities[c.quantity]()
			if err := a.UnmarshalText([]byte(c.text)); err != nil {
				t.Fatal(err)
			}
			if err := b.UnmarshalText([]byte(c.same)); err != nil {
				t.Fatal(err)
			}
			if !near(number(a), number(b)) {
				t.Errorf("%q is %v, want %v as %q", c.text, a, b, c.same)
			}
		})
	}
}

// number is the magnitude in the base unit.
func number(q textual) float64 {
	b, err := q.MarshalText()
	if err != nil {
		return math.NaN()
	}
	var x json.Number
	num, _, _ := strings.Cut(string(b), " ")
	x = json.Number(num)
	f, err := x.Float64()
	if err != nil {
		return math.NaN()
	}
	return f
}

func TestParseRefuses(t *testing.T) {
	cases := []struct {
		quantity, text string
		reason         error
		way            string // what the message must say
	}{
		{"Volume", "60 gal", units.ErrAmbiguous, `"US gal" or "imp gal"`},
		{"Volume", "60 Gallons", units.ErrAmbiguous, `"US gal" or "imp gal"`},
		{"Volume", "3 qt", units.ErrAmbiguous, `"US qt" or "imp qt"`},
		{"Volume", "3 pt", units.ErrAmbiguous, `"US pt" or "imp pt"`},
		{"Volume", "3 fl oz", units.ErrAmbiguous, `"US fl oz"`},
		{"Volume", "3 oz", units.ErrAmbiguous, "oz is a mass"},
		{"Volume", "3 ML", units.ErrUnit, "use one of"},
		{"Volume", "60", units.ErrNoUnit, "US gal"},
		{"Volume", "60 lb", units.ErrUnit, "use one of"},
		{"Volume", "NaN L", units.ErrSyntax, "number"},
		{"Volume", "inf L", units.ErrSyntax, "number"},
		{"Volume", "0x10 L", units.ErrUnit, "use one of"},
		{"Volume", "1e999 L", units.ErrRange, "too large"},
		{"Volume", "1,200 L", units.ErrSyntax, "without commas"},
		{"Volume", "", units.ErrSyntax, "number"},
		{"Mass", "1 ton", units.ErrAmbiguous, "short ton"},
		{"Mass", "1e308 t", units.ErrRange, "too large"},
		{"Temperature", "68", units.ErrNoUnit, "F"},
		{"Temperature", "7.1 F deg", units.ErrAmbiguous, "difference"},
		{"Temperature", "68 deg", units.ErrAmbiguous, "68 F"},
		{"TempDiff", "7.1 F", units.ErrAmbiguous, "7.1 F deg"},
		{"Energy", "1 mj", units.ErrUnit, "use one of"},
		{"Energy", "1 cal", units.ErrAmbiguous, "cal_IT"},
		{"Density", "11 lb/gal", units.ErrAmbiguous, "lb/US gal"},
		{"VolumeRate", "20 gal/h", units.ErrAmbiguous, "US gal/h"},
		{"Length", "7/0 in", units.ErrSyntax, "7/16"},
		{"Length", "1.5/2 in", units.ErrSyntax, "7/16"},
		{"Brix", "66.9 %", units.ErrAmbiguous, "66.9 Brix"},
		{"Share", "0.65", units.ErrNoUnit, "%"},
	}
	for _, c := range cases {
		t.Run(c.quantity+"/"+c.text, func(t *testing.T) {
			q := quantities[c.quantity]()
			err := q.UnmarshalText([]byte(c.text))
			var pe *units.ParseError
			if !errors.As(err, &pe) || !errors.Is(err, c.reason) {
				t.Fatalf("error %v, want a ParseError of %v", err, c.reason)
			}
			if !strings.Contains(err.Error(), c.way) {
				t.Errorf("%q does not tell %q", err, c.way)
			}
			if !strings.HasPrefix(err.Error(), "units.Parse"+c.quantity) {
				t.Errorf("%q does not name units.Parse%s", err, c.quantity)
			}
			if q.String() != quantities[c.quantity]().String() {
				t.Errorf("the target changed to %v", q)
			}
		})
	}
}

// MarshalText reads back to the same bits, and String to 12 digits.
func TestTextRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for name, fresh := range quantities {
		for range 500 {
			x := math.Exp(20*rng.NormFloat64()) * float64(1-2*rng.IntN(2))
			q, back, short := fresh(), fresh(), fresh()
			base, _ := q.MarshalText()
			_, symbol, _ := strings.Cut(string(base), " ")
			b, err := json.Marshal(x)
			if err != nil {
				t.Fatal(err)
			}
			text := string(b) + " " + symbol
			if err := q.UnmarshalText([]byte(text)); err != nil {
				t.Fatal(name, err)
			}
			m, err := q.MarshalText()
			if err != nil {
				t.Fatal(name, err)
			}
			if err := back.UnmarshalText(m); err != nil || number(back) != number(q) {
				t.Fatalf("%s %v marshals to %q and reads back as %v, %v", name, q, m, back, err)
			}
			if err := short.UnmarshalText([]byte(q.String())); err != nil || math.Abs(number(short)-x) > 1e-11*math.Abs(x) {
				t.Fatalf("%s %v prints %q, which reads back as %v, %v", name, x, q, short, err)
			}
		}
	}
}

func TestMarshalRefusesNonFinite(t *testing.T) {
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		for _, q := range []encoding.TextMarshaler{units.Celsius(x), units.TempDiff(x), units.Volume(x), units.Brix(x)} {
			if b, err := q.MarshalText(); err == nil {
				t.Errorf("%v marshals to %q", q, b)
			}
		}
	}
}

func TestText(t *testing.T) {
	for _, c := range []struct{ got, want string }{
		{(60 * units.USGallon).Text(units.USGallon, 1), "60.0 US gal"},
		{(60 * units.USGallon).Text(units.Liter, 2), "227.12 L"},
		{(60 * units.USGallon).Text(3*units.Liter, 2), "0.23 m3"},
		{units.Celsius(100).Text(units.ScaleFahrenheit, 1), "212.0 F"},
		{units.Celsius(0).Text(units.ScaleKelvin, 2), "273.15 K"},
		{units.Celsius(-0.01).Text(units.ScaleCelsius, 1), "0.0 C"},
		{(4 * units.CelsiusDegree).Text(units.FahrenheitDegree, 1), "7.2 F deg"},
		{units.Brix(66.9).Text(1), "66.9 Brix"},
		{(65 * units.Percent).Text(0), "65 %"},
		{units.ScaleCelsius.String(), "Celsius"},
		{units.ScaleKelvin.String(), "kelvin"},
		{units.Scale(3).String(), "Scale(3)"},
		{units.Celsius(20).String(), "20 C"},
		{(2 * units.USGallon).String(), "7.570823568 L"},
		{(101325 * units.Pascal).String(), "101.325 kPa"},
	} {
		if c.got != c.want {
			t.Errorf("got %q, want %q", c.got, c.want)
		}
	}
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"60 US gal", "7/16 in", "1 1/2 in", "-1e3 kPa", "68 °F", "7.1 F deg", "66.9 Brix", "65%", "1e999 L", "1,2 L", "1/0 in", "3 \"", "+.5 lb", "1-", "1 /"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		for name, fresh := range quantities {
			q, back := fresh(), fresh()
			if err := q.UnmarshalText([]byte(s)); err != nil {
				continue
			}
			b, err := q.MarshalText()
			if err != nil {
				t.Fatalf("%s reads %q but cannot write it: %v", name, s, err)
			}
			if err := back.UnmarshalText(b); err != nil || number(back) != number(q) {
				t.Fatalf("%s reads %q, writes %q, reads %v, %v", name, s, b, back, err)
			}
		}
	})
}

// The sign of zero is not printed.
func TestNoNegativeZero(t *testing.T) {
	zero := math.Copysign(0, -1)
	for got, want := range map[string]string{
		units.Volume(zero).String():                      "0 L",
		units.Celsius(zero).String():                     "0 C",
		units.Celsius(-0.04).Text(units.ScaleCelsius, 1): "0.0 C",
		units.Volume(-1e-9).Text(units.Liter, 1):         "0.0 L",
		(-1e-12 * units.Kilogram).Text(units.Pound, 2):   "0.00 lb",
		units.TempDiff(zero).String():                    "0 C deg",
	} {
		if got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

// Every quantity tells what it cannot read, of each kind of text that is none,
// and keeps its value.
func TestUnmarshalTellsEveryError(t *testing.T) {
	for name, fresh := range quantities {
		kept, _ := fresh().MarshalText()
		_, symbol, _ := strings.Cut(string(kept), " ")
		for text, reason := range map[string]error{
			"": units.ErrSyntax, "NaN " + symbol: units.ErrSyntax, "Inf " + symbol: units.ErrSyntax, "7": units.ErrNoUnit,
			"7 no such unit": units.ErrUnit, "1e999 " + symbol: units.ErrRange,
		} {
			q := fresh()
			if err := q.UnmarshalText([]byte("3 " + symbol)); err != nil {
				t.Fatal(name, err)
			}
			before := number(q)
			if err := q.UnmarshalText([]byte(text)); !errors.Is(err, reason) || number(q) != before {
				t.Errorf("%s of %q: %v and an error %v, want %v", name, text, q, err, reason)
			}
		}
	}
}
