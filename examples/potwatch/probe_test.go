package main

import (
	"math"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// What the thermometer shows is turned back to the surface and to the strength.
func TestSurfaceTurnsShowsRound(t *testing.T) {
	for _, p := range []units.Pressure{60 * units.Kilopascal, units.Atmosphere} {
		water, err := boil.Water(p)
		if err != nil {
			t.Fatal(err)
		}
		for name, with := range map[string]thermometer{
			"at the surface": {},
			"half an inch":   {over: units.Inch / 2},
			"ten inches":     {over: 10 * units.Inch},
			"past stops":     {over: units.Inch, learned: &own{off: 0.4}},
		} {
			th := with
			th.pressure, th.water, th.sap = p, water, sugar.Solute{Inverted: 4}
			for b := units.Brix(30); b <= 80; b += 5 {
				shown, err := th.shows(b)
				if err != nil {
					t.Fatal(err)
				}
				plain, err := boil.SyrupPointOf(th.sugar(), b, p)
				if err != nil {
					t.Fatal(err)
				}
				at := th.surface(shown)
				back, err := th.strength(at)
				if err != nil || !(math.Abs(float64(at.Sub(plain))) < 1e-6) || !(math.Abs(float64(back-b)) < 1e-5) {
					t.Errorf("%s, %v: shown %v, %v at the surface, %v Brix, %v", name, float64(b), shown.Celsius(), at.Celsius(), float64(back), err)
				}
			}
		}
	}
}
