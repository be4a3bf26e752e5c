package sugar

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/units"
)

// The constants that no table holds, each from its definition and rounded as it
// is written.
func TestConstants(t *testing.T) {
	const (
		// Exact in the SI of 2019 (SI brochure, 9th ed.).
		boltzmann, avogadro = 1.380649e-23, 6.02214076e23
		// Standard atomic weights, abridged (IUPAC 2021, from memory).
		carbon, hydrogen, oxygen = 12.011, 1.008, 15.999
	)
	for _, c := range []struct {
		name      string
		got, want float64
		digit     float64 // weight of the last one written
	}{
		{"gas constant", gasConstant, boltzmann * avogadro, 1e-9},
		{"molar mass of hexose", molarHexose, 6*carbon + 12*hydrogen + 6*oxygen, 1e-2},
		{"molar mass of water (IAPWS-95, from memory)", molarMassWater, 18.015268e-3, 1e-9},
		{"molar mass of sucrose", coef.MolarSucrose, 12*carbon + 22*hydrogen + 11*oxygen, 1e-1},
	} {
		if !(math.Abs(c.got-c.want) <= c.digit/2) {
			t.Errorf("%s %v, by its definition %v", c.name, c.got, c.want)
		}
	}
}

// Sugar that is all glucose and fructose is counted by their molar mass.
func TestHexoseIsCounted(t *testing.T) {
	const b = 40.0
	got := Solute{Inverted: 100 * units.Percent}.moleFraction(b)
	want := (b / 180.16) / (b/180.16 + (100-b)/coef.MolarWater)
	if !(math.Abs(got-want) <= 1e-15) {
		t.Errorf("mole fraction %v, want %v", got, want)
	}
}

// Van 't Hoff: the activity of ice falls from 1 at 0 C with the heat of melting,
// and that heat changes with the difference of the heat capacities. Both as the
// doc comment of FreezingPoint gives them.
func TestIceFollowsItsHeat(t *testing.T) {
	const r = 1.380649e-23 * 6.02214076e23
	for _, k := range []float64{263.15, 268.15, 273.15} {
		_, slope := logIce(k)
		heat := 6009.5 + 38.2*(k-273.15)
		if got := slope * r * k * k; !(math.Abs(got-heat) <= 1e-9*heat) {
			t.Errorf("heat of melting at %v K is %v J/mol, want %v", k, got, heat)
		}
	}
	if y, _ := logIce(273.15); !(math.Abs(y) <= 1e-15) {
		t.Errorf("at 0 C the activity of ice is exp(%v), want 1", y)
	}
}

// A refused inverse names the ends of what it takes.
func TestInversesNameTheirEnds(t *testing.T) {
	at := units.Celsius(25)
	ends := func(low, high float64, err error) [2]float64 {
		if err != nil {
			t.Fatal(err)
		}
		return [2]float64{low, high}
	}
	refused := func(_ any, err error) error { return err }
	a, err := WaterActivity(92, at)
	activity := ends(a, 1, err)
	f, err := FreezingPoint(60)
	freezing := ends(f.Celsius(), 0, err)
	p, err := OsmoticPressure(70, at)
	osmosis := ends(0, p.Bars(), err)
	h, err := Enthalpy(66, units.Celsius(120))
	enthalpy := ends(0, h.KilojoulesPerKilogram(), err)
	for _, c := range []struct {
		name string
		want [2]float64
		err  error
	}{
		{"activity", activity, refused(BrixFromWaterActivity(1.5, at))},
		{"freezing point", freezing, refused(BrixFromFreezingPoint(units.Celsius(5)))},
		{"osmotic pressure", osmosis, refused(BrixFromOsmoticPressure(-units.Bar, at))},
		{"enthalpy", enthalpy, refused(TemperatureFromEnthalpy(66, units.JoulesPerKilogram(-1)))},
	} {
		var e *units.RangeError
		if !errors.As(c.err, &e) {
			t.Errorf("%s: %v, want a range error", c.name, c.err)
		} else if !(math.Abs(e.Low-c.want[0]) <= 1e-9 && math.Abs(e.High-c.want[1]) <= 1e-9) {
			t.Errorf("%s: from %v to %v, want %v", c.name, e.Low, e.High, c.want)
		}
	}
}

// The formula in kJ/(kg K) as its source prints it, at the corners of its range.
func TestSpecificHeatAsPrinted(t *testing.T) {
	for _, c := range []struct{ b, t float64 }{{0, 0}, {0, 120}, {85, 0}, {85, 120}, {66, 20}} {
		got, err := SpecificHeat(units.Brix(c.b), units.Celsius(c.t))
		want := 4.1868 - c.b*(0.0297-4.6e-5*100) + 7.5e-5*c.b*c.t
		if err != nil || !(math.Abs(got.KilojoulesPerKilogramKelvin()-want) <= 1e-12) {
			t.Errorf("%v Brix at %v C: %v, %v; want %v", c.b, c.t, got, err, want)
		}
	}
}
