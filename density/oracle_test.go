package density_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/proving/check"
)

// GNU units carries Table 114 of NBS Circular C440 and draws straight lines
// between its rows; a curve may leave them by an eighth of the second
// difference, 6e-5 at most. Its unit of density is 0.99717 g/cm3, the water of
// the circular.
func TestOracleGNUUnitsTable114(t *testing.T) {
	const steps = 4 * 95
	var ask strings.Builder
	for i := range steps + 1 {
		fmt.Fprintf(&ask, "brix(%g)\n0.99717 g/cm^3\n", float64(i)/4)
	}
	answers := check.Numbers(t, steps+1, ask.String(), check.GNUUnits, "--quiet", "--terse", "--output-format", "%.9g")
	worst := 0.0
	for i, want := range answers {
		b := bx(float64(i) / 4)
		got, err := density.NBSC440.SG2020(b)
		if err != nil {
			t.Fatal(err)
		}
		within := 1e-8 // the digits asked for
		if i%4 != 0 {
			within += 6e-5 / 8
		}
		off := math.Abs(float64(got) - want)
		worst = math.Max(worst, off)
		if !(off <= within) {
			t.Errorf("oracle GNU units at %v: %v, want %v within %v", b, got, want, within)
		}
	}
	check.Compared(t, len(answers), "GNU units")
	t.Logf("worst %.2g", worst)
}

// The weight in air of the ICUMSA polynomial against the same table: the two
// scales differ by up to 0.0006 in specific gravity, the water by 0.00002.
func TestOracleGNUUnitsICUMSA(t *testing.T) {
	const steps = 4 * 85
	var ask strings.Builder
	for i := range steps + 1 {
		fmt.Fprintf(&ask, "brix(%g)\ng/cm^3\n", float64(i)/4)
	}
	answers := check.Numbers(t, steps+1, ask.String(), check.GNUUnits, "--quiet", "--terse", "--output-format", "%.9g")
	for i, want := range answers {
		d, err := density.Solution(bx(float64(i)/4), c20)
		if err != nil {
			t.Fatal(err)
		}
		if got := density.InAir(d).GramsPerMilliliter(); !(math.Abs(got-want) <= 0.0006+0.00002*want) {
			t.Errorf("oracle GNU units at %v Brix: %v g/mL in air, want %v", float64(i)/4, got, want)
		}
	}
	check.Compared(t, len(answers), "GNU units")
}

// Back from density: what GNU units calls the strength of a density in air.
func TestOracleGNUUnitsInverse(t *testing.T) {
	const steps = 140
	var ask strings.Builder
	for i := range steps + 1 {
		fmt.Fprintf(&ask, "%g * 0.99717 g/cm^3\nbrix\n", 1+0.003*float64(i))
	}
	answers := check.Numbers(t, steps+1, ask.String(), check.GNUUnits, "--quiet", "--terse", "--output-format", "%.9g")
	for i, want := range answers {
		got, err := density.NBSC440.Brix(sg(1 + 0.003*float64(i)))
		// 6e-5/8 of gravity over the least slope, 0.0039 a Brix.
		if err != nil || !(math.Abs(float64(got)-want) <= 0.002) {
			t.Errorf("oracle GNU units at %v: %v, %v; want %v", 1+0.003*float64(i), got, err, want)
		}
	}
	check.Compared(t, len(answers), "GNU units")
}

// IAPWS-95 is the standard of the density of water. The documented difference of
// Kell's equation is 0.006 kg/m3 to 100 C; at 100 C the pressure is a little
// above an atmosphere, which keeps it liquid.
//
// What a plain refractometer shows in water follows from the refractive index of
// water alone: IAPWS 1997 for the ratio to 20 C, the scale for the rest.
func TestOracleIAPWSWater(t *testing.T) {
	const script = `
from iapws import IAPWS95
from iapws._iapws import _Refractive
rho = [IAPWS95(T=273.15 + i/2, P=0.101325 if i < 200 else 0.1015).rho for i in range(201)]
for x in rho:
    print(repr(x))
for i in range(20, 61):
    print(repr(_Refractive(rho[i], 273.15 + i/2, 0.5893)))
`
	const densities, indices = 201, 41
	answers := check.Numbers(t, densities+indices, script, check.Python, "-")
	worst := 0.0
	for i, want := range answers[:densities] {
		got, err := density.Water(c(float64(i) / 2))
		if err != nil {
			t.Fatal(err)
		}
		off := math.Abs(float64(got) - want)
		worst = math.Max(worst, off)
		if !(off <= 0.006) {
			t.Errorf("oracle IAPWS-95 at %v C: %v, want %v kg/m3", float64(i)/2, got, want)
		}
	}
	compared := densities
	at20 := answers[densities+20]
	for i, n := range answers[densities:] {
		reading, err := prism.Reading(0, c(10+float64(i)/2))
		if err != nil {
			t.Fatal(err)
		}
		if reading < 0 { // the scale of indices begins at 0 Brix
			continue
		}
		compared++
		got, err := density.RefractiveIndex(reading)
		// Kell's water differs by up to 0.006 kg/m3, which is 2e-6 of index.
		if want := 1.33299 * n / at20; err != nil || !(math.Abs(float64(got)-want) <= 2e-6) {
			t.Errorf("oracle IAPWS refraction at %v C: %v, %v; want %v", 10+float64(i)/2, got, err, want)
		}
	}
	check.Compared(t, compared, "iapws")
	t.Logf("worst density off by %.4f kg/m3", worst)
}
