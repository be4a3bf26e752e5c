package boil

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/units"
)

// At 1,500 ft and an altimeter setting of 30.10 inHg a barometer says 28.50: the
// ICAO formula by hand, (30.10^0.1903 - 1.313e-5 1500)^(1/0.1903). Water boils at
// 209.5 F there, by the steam tables (from memory), and at 212.3 under 30.10.
func TestCheckedInSuspects(t *testing.T) {
	const elevation = 1500 * units.Foot
	for _, tc := range []struct {
		name      string
		barometer float64 // inHg
		boil, ice float64 // F
		want      Suspect
	}{
		{"all agree", 28.50, 209.5, 32, SuspectNothing},
		{"all within half a degree", 28.50, 209.9, 32.4, SuspectNothing},
		{"two degrees high at both ends", 28.50, 211.5, 34, SuspectThermometer},
		{"a sea-level barometer", 30.10, 209.5, 32, SuspectPressure},
		{"the same, and a thermometer a degree low", 30.10, 208.5, 31, SuspectPressure},
		{"thermometer and barometer agree on the sea, and the elevation does not", 30.10, 212.3, 32, SuspectPressure},
		{"four degrees low at the boil alone", 28.50, 205.5, 32, SuspectScale},
		{"a degree at the boil, which weather would explain", 28.50, 210.5, 32, SuspectUnclear},
	} {
		c, err := Probe{Pressure: units.InchesMercury(tc.barometer)}.CheckedIn(units.Fahrenheit(tc.boil), units.Fahrenheit(tc.ice), elevation)
		if err != nil || c.Suspect != tc.want {
			t.Errorf("%s: %v of %+v, %v", tc.name, c.Suspect, c, err)
		}
		if got := c.Ice.FahrenheitDegrees(); math.Abs(got-(tc.ice-32)) > 1e-9 {
			t.Errorf("%s: %v F off in ice", tc.name, got)
		}
		should := 209.5
		if tc.barometer > 30 {
			should = 212.3
		}
		if got := c.Boil.FahrenheitDegrees(); math.Abs(got-(tc.boil-should)) > 0.1 {
			t.Errorf("%s: %v F off at the boil", tc.name, got)
		}
	}
}

// Six inches of water weigh 1.43 kPa, and so a thermometer that deep shows 0.7 F
// more (27.6 Pa for 0.001 inches; 3.6 kPa to the degree C). It is not off.
func TestCheckedInDeep(t *testing.T) {
	p := Probe{Pressure: units.Atmosphere, Over: 6 * units.Inch}
	c, err := p.CheckedIn(units.Fahrenheit(211.95+0.7), units.Fahrenheit(32), 0)
	if err != nil || math.Abs(c.Boil.FahrenheitDegrees()) > 0.05 || c.Suspect != SuspectNothing || math.Abs(c.Water.Hotter.FahrenheitDegrees()) > 0.1 {
		t.Errorf("%+v, %v", c, err)
	}
}

func TestCheckedInRefused(t *testing.T) {
	good := Probe{Pressure: units.Atmosphere}
	f := units.Fahrenheit
	for _, tc := range []struct {
		arg       string
		p         Probe
		boil, ice float64
		elevation units.Length
	}{
		{"Probe.Pressure", Probe{Pressure: 1}, 212, 32, 0},
		{"Probe.Over", Probe{Pressure: units.Atmosphere, Over: -1}, 212, 32, 0},
		{"boiling", good, 190, 32, 0}, {"boiling", good, 231, 32, 0}, {"boiling", good, math.NaN(), 32, 0},
		{"ice", good, 212, 20, 0}, {"ice", good, 212, 42, 0},
		{"elevation", good, 212, 32, 6000},
	} {
		var e *units.RangeError
		if _, err := tc.p.CheckedIn(f(tc.boil), f(tc.ice), tc.elevation); !errors.As(err, &e) || e.Arg != tc.arg || e.Func != "boil.Probe.CheckedIn" {
			t.Errorf("%s: %v", tc.arg, err)
		}
	}
}

func TestSuspectText(t *testing.T) {
	for _, s := range Suspects() {
		var back Suspect
		if b, err := s.MarshalText(); err != nil || back.UnmarshalText(b) != nil || back != s {
			t.Errorf("%v came back as %v, %v", s, back, err)
		}
	}
}
