package boil_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// boilingScript answers the questions of TestOracleIAPWS, a line each. Its rise is
// the boiling equation written again in another language, with the vapor pressure
// of iapws and the root finder of scipy.
const boilingScript = `
import sys, math
from scipy.optimize import brentq
from iapws import IAPWS97
from iapws.iapws97 import _PSat_T, _TSat_P

def escaping(T, sucrose, hexose, water):
    # pressure in MPa of the vapor over a mixture given in moles
    x = (sucrose + hexose) / (sucrose + hexose + water)
    gamma = math.exp(-17638 / (8.314462618 * T) * (x**2 - 1.0038 * x**3 - 0.24653 * x**4))
    return (1 - x) * gamma * _PSat_T(T)

def rise(brix, kPa, share):
    moles = brix * (1 - share/100) / 342.3, brix * share/100 / 180.16, (100 - brix) / 18.02
    t0 = _TSat_P(kPa/1000)
    return brentq(lambda T: escaping(T, *moles) - kPa/1000, t0 - 1, t0 + 60, xtol=1e-11, rtol=1e-14) - t0

answers = {
    "kelvin": lambda kPa: _TSat_P(kPa/1000),
    "pascals": lambda c: _PSat_T(c + 273.15) * 1e6,
    "latent": lambda c: IAPWS97(T=c + 273.15, x=1).h - IAPWS97(T=c + 273.15, x=0).h,
    "heat": lambda c: IAPWS97(T=c + 273.15, x=0).cp,
    "rise": rise,
}
for line in sys.stdin:
    name, *numbers = line.split()
    print(repr(float(answers[name](*map(float, numbers)))))
`

// A question is a line for the oracle, our answer, and what may lie between.
type question struct {
	line     string
	got, tol float64
}

// TestOracleIAPWS asks the general-purpose libraries iapws and scipy, all at once,
// since starting them takes longer than answering.
func TestOracleIAPWS(t *testing.T) {
	var all []question
	ask := func(line string, got, share float64, err error) {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, question{line, got, share * math.Abs(got)})
	}
	for kPa := 1.0; kPa < 3000; kPa *= 1.02 {
		at, err := boil.Water(units.Kilopascals(kPa))
		ask(fmt.Sprint("kelvin ", kPa), at.Kelvin(), 1e-12, err)
	}
	for c := 7.0; c <= 233; c += 0.5 {
		p, err := boil.PressureFromWater(units.Celsius(c))
		ask(fmt.Sprint("pascals ", c), p.Pascals(), 1e-11, err)
	}
	// The doc of LatentHeat says how far it is from IAPWS-IF97, that of
	// sugar.SpecificHeat how far its water is from the truth.
	for c := 0.5; c <= 140; c += 0.5 {
		h, err := boil.LatentHeat(units.Celsius(c))
		share := 0.015e-2
		if c > 105 {
			share = 0.02e-2
		}
		ask(fmt.Sprint("latent ", c), h.KilojoulesPerKilogram(), share, err)
	}
	for c := 0.5; c <= 120; c += 0.5 {
		cp, err := sugar.SpecificHeat(0, units.Celsius(c))
		share := 0.01
		if c > 100 {
			share = 0.015
		}
		ask(fmt.Sprint("heat ", c), cp.KilojoulesPerKilogramKelvin(), share, err)
	}
	alone := len(all)
	for kPa := 20.0; kPa <= 120; kPa += 25 {
		for b := 0.0; b <= 92; b += 11.5 {
			for _, share := range []float64{0, 5, 20} {
				d, err := boil.RiseOf(sugar.Solute{Inverted: units.Percents(share)}, units.Brix(b), units.Kilopascals(kPa))
				if err != nil {
					t.Fatal(err)
				}
				all = append(all, question{fmt.Sprint("rise ", b, kPa, share), d.CelsiusDegrees(), 1e-9})
			}
		}
	}
	var input strings.Builder
	for _, q := range all {
		fmt.Fprintln(&input, q.line)
	}
	for i, want := range check.Numbers(t, len(all), input.String(), check.Python, "-c", boilingScript) {
		if q := all[i]; !(math.Abs(q.got-want) <= q.tol) {
			t.Errorf("oracle iapws, %s: got %v, want %v within %.3g", q.line, q.got, want, q.tol)
		}
	}
	check.Compared(t, alone, "iapws")
	check.Compared(t, len(all)-alone, "iapws and scipy")
}

// GNU units has the closed form at 1 atm as a table of pure sucrose; the exact
// form agrees to 0.002 K up to 70 Brix, to the digits documented.
func TestOracleUnitsRise(t *testing.T) {
	// Between these its table is read along straight lines.
	points := []float64{5, 10, 20, 30, 40, 50, 60, 62, 64, 66, 67, 68, 70}
	var input strings.Builder
	for _, b := range points {
		fmt.Fprintf(&input, "~sugar_bpe(brix(%v))\nK\n", b)
	}
	for i, want := range check.Numbers(t, len(points), input.String(), check.GNUUnits, "--quiet", "--terse") {
		d, err := boil.Rise(units.Brix(points[i]), units.Atmosphere)
		if err != nil || !near(d.CelsiusDegrees(), want, 0.0025) {
			t.Errorf("oracle GNU units, %v Brix: got %v, %v, want %v K", points[i], d, err, want)
		}
	}
	check.Compared(t, len(points), "GNU units")
}
