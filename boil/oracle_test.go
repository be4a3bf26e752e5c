package boil_test

import (
	"bytes"
	"fmt"
	"math"
	"os"
	"os/exec"
	"strconv"
	"strings"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// The oracles are other people's programs: the general-purpose libraries iapws
// and scipy under the system's own Python, and GNU units. Without them these
// tests are skipped; SAPRECKONER_ORACLES=required makes that a failure.

const systemPython = "/usr/bin/python3"

// ask runs a program on the input and returns the numbers it prints.
func ask(t *testing.T, input string, name string, args ...string) []float64 {
	t.Helper()
	cmd := exec.Command(name, args...)
	cmd.Stdin = strings.NewReader(input)
	var stderr bytes.Buffer
	cmd.Stderr = &stderr
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("%s: %v\n%s", name, err, stderr.String())
	}
	var numbers []float64
	for field := range strings.FieldsSeq(string(out)) {
		x, err := strconv.ParseFloat(field, 64)
		if err != nil {
			continue // a unit
		}
		numbers = append(numbers, x)
	}
	return numbers
}

// needs skips the test unless the probe runs.
func needs(t *testing.T, what, name string, args ...string) {
	t.Helper()
	if err := exec.Command(name, args...).Run(); err != nil {
		if os.Getenv("SAPRECKONER_ORACLES") == "required" {
			t.Fatalf("%s is required and does not run: %v", what, err)
		}
		t.Skipf("%s does not run: %v", what, err)
	}
}

// compare asks the Python script for a number for every line of input and holds
// got to them.
func compare(t *testing.T, script string, inputs []string, got []float64, tol func(want float64) float64) {
	t.Helper()
	want := ask(t, strings.Join(inputs, "\n"), systemPython, "-c", script)
	if len(want) != len(got) || len(got) == 0 {
		t.Fatalf("the oracle answers %d of %d lines", len(want), len(got))
	}
	worst := 0.0
	for i := range got {
		d := math.Abs(got[i]-want[i]) / tol(want[i])
		worst = max(worst, d)
		if !(d <= 1) {
			t.Errorf("%s: got %v, oracle %v, tolerance %.3g", inputs[i], got[i], want[i], tol(want[i]))
		}
	}
	t.Logf("%d comparisons, worst at %.3f of the tolerance", len(got), worst)
}

func relative(share float64) func(float64) float64 {
	return func(want float64) float64 { return share * math.Abs(want) }
}

func absolute(tol float64) func(float64) float64 { return func(float64) float64 { return tol } }

const iapwsProbe = "import iapws"

func TestOracleSaturationTemperature(t *testing.T) {
	needs(t, "python3-iapws", systemPython, "-c", iapwsProbe)
	var inputs []string
	var got []float64
	for kPa := 1.0; kPa < 3000; kPa *= 1.02 {
		at, err := boil.Water(units.Kilopascals(kPa))
		if err != nil {
			t.Fatal(err)
		}
		inputs = append(inputs, fmt.Sprint(kPa))
		got = append(got, at.Kelvin())
	}
	compare(t, `
import sys
from iapws.iapws97 import _TSat_P
for line in sys.stdin: print(repr(float(_TSat_P(float(line)/1000))))
`, inputs, got, relative(1e-12))
}

func TestOracleSaturationPressure(t *testing.T) {
	needs(t, "python3-iapws", systemPython, "-c", iapwsProbe)
	var inputs []string
	var got []float64
	for c := 7.0; c <= 233; c += 0.5 {
		p, err := boil.PressureFromWater(units.Celsius(c))
		if err != nil {
			t.Fatal(err)
		}
		inputs = append(inputs, fmt.Sprint(c))
		got = append(got, p.Pascals())
	}
	compare(t, `
import sys
from iapws.iapws97 import _PSat_T
for line in sys.stdin: print(repr(float(_PSat_T(float(line)+273.15)*1e6)))
`, inputs, got, relative(1e-11))
}

// The doc of LatentHeat says how far it is from IAPWS-IF97.
func TestOracleLatentHeat(t *testing.T) {
	needs(t, "python3-iapws", systemPython, "-c", iapwsProbe)
	for _, tc := range []struct{ from, to, share float64 }{{0.5, 105, 0.015e-2}, {105, 140, 0.02e-2}} {
		var inputs []string
		var got []float64
		for c := tc.from; c <= tc.to; c += 0.5 {
			h, err := boil.LatentHeat(units.Celsius(c))
			if err != nil {
				t.Fatal(err)
			}
			inputs = append(inputs, fmt.Sprint(c))
			got = append(got, h.KilojoulesPerKilogram())
		}
		compare(t, `
import sys
from iapws import IAPWS97
for line in sys.stdin:
    t = float(line)+273.15
    print(repr(float(IAPWS97(T=t, x=1).h - IAPWS97(T=t, x=0).h)))
`, inputs, got, relative(tc.share))
	}
}

// The doc of sugar.SpecificHeat says how far its water is from the truth.
func TestOracleSpecificHeatOfWater(t *testing.T) {
	needs(t, "python3-iapws", systemPython, "-c", iapwsProbe)
	for _, tc := range []struct{ from, to, share float64 }{{0.5, 100, 0.01}, {100, 120, 0.015}} {
		var inputs []string
		var got []float64
		for c := tc.from; c <= tc.to; c += 0.5 {
			cp, err := sugar.SpecificHeat(0, units.Celsius(c))
			if err != nil {
				t.Fatal(err)
			}
			inputs = append(inputs, fmt.Sprint(c))
			got = append(got, cp.KilojoulesPerKilogramKelvin())
		}
		compare(t, `
import sys
from iapws import IAPWS97
for line in sys.stdin: print(repr(float(IAPWS97(T=float(line)+273.15, x=0).cp)))
`, inputs, got, relative(tc.share))
	}
}

// The boiling equation written again, in another language, with the vapor
// pressure of iapws and the root finder of scipy.
func TestOracleRise(t *testing.T) {
	needs(t, "python3-iapws and python3-scipy", systemPython, "-c", "import iapws, scipy.optimize")
	var inputs []string
	var got []float64
	for kPa := 20.0; kPa <= 120; kPa += 25 {
		for b := 0.0; b <= 92; b += 11.5 {
			for _, share := range []float64{0, 5, 20} {
				d, err := boil.Solute{Inverted: units.Percents(share)}.Rise(units.Brix(b), units.Kilopascals(kPa))
				if err != nil {
					t.Fatal(err)
				}
				inputs = append(inputs, fmt.Sprint(b, kPa, share))
				got = append(got, d.CelsiusDegrees())
			}
		}
	}
	compare(t, `
import sys, math
from scipy.optimize import brentq
from iapws.iapws97 import _PSat_T, _TSat_P
def escaping(T, sucrose, hexose, water):
    # pressure in MPa of the vapor over a mixture given in moles
    x = (sucrose + hexose) / (sucrose + hexose + water)
    gamma = math.exp(-17638 / (8.314462618 * T) * (x**2 - 1.0038 * x**3 - 0.24653 * x**4))
    return (1 - x) * gamma * _PSat_T(T)
for line in sys.stdin:
    b, kPa, share = map(float, line.split())
    moles = b * (1 - share/100) / 342.3, b * share/100 / 180.16, (100 - b) / 18.02
    t0 = _TSat_P(kPa/1000)
    t = brentq(lambda T: escaping(T, *moles) - kPa/1000, t0 - 1, t0 + 60, xtol=1e-11, rtol=1e-14)
    print(repr(float(t - t0)))
`, inputs, got, absolute(1e-9))
}

// GNU units has the closed form at 1 atm as a table of pure sucrose; the exact
// form agrees to 0.002 K up to 70 Brix, to the digits documented.
func TestOracleUnitsRise(t *testing.T) {
	needs(t, "GNU units", "units", "-t", "brix(66)", "sugar_bpe")
	// Between these its table is read along straight lines.
	for _, b := range []int{5, 10, 20, 30, 40, 50, 60, 62, 64, 66, 67, 68, 70} {
		want := ask(t, "", "units", "-t", fmt.Sprintf("brix(%d)", b), "sugar_bpe")
		if len(want) != 1 {
			t.Fatalf("units answers %v", want)
		}
		d, err := boil.Rise(units.Brix(b), units.Atmosphere)
		if err != nil || !near(d.CelsiusDegrees(), want[0], 0.0025) {
			t.Errorf("%d Brix: got %v, %v, oracle %v K", b, d, err, want[0])
		}
	}
}
