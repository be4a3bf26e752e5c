package pan_test

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// panScript boils through a day on a partitioned pan with scipy's LSODA. It
// shares no method with the package: properties are splines through a fine
// table, the flows solve a linear system, and the warm-up is done by hand.
//
// Input: a line with the seconds of fire, heat in watts, sap in mass fraction and
// joules per kilogram to warm it to the boiling point of water, and draw in mass
// fraction; a line of areas and the depth; the table. Output: the first draw in
// seconds, sugar and water drawn, water evaporated, mass fractions at the end, one
// a line.
const panScript = `
import sys
import numpy as np
from scipy.interpolate import CubicSpline
from scipy.integrate import solve_ivp
lines = sys.stdin.read().splitlines()
over, heat, sap, lack, target = map(float, lines[0].split())
*areas, depth = map(float, lines[1].split())
table = np.array([list(map(float, s.split())) for s in lines[2:]])
point, volume, latent, cp = (CubicSpline(table[:, 0], table[:, k]) for k in range(1, 5))
swell = volume.derivative()
areas = np.array(areas)
n = len(areas)
V = areas * depth
q = heat * areas / areas.sum()
full = V / volume(sap)

def flows(w, hold):
    # Unknowns: F_1..F_n into each compartment, then the draw.
    A = np.zeros((n + 1, n + 1))
    r = np.zeros(n + 1)
    up = np.concatenate(([sap], w[:-1]))
    tp, t = np.concatenate(([point(0)], point(w[:-1]))), point(w)
    warm = cp(up) * (t - tp)
    warm[0] += lack
    L = latent(w)
    v, dv = volume(w), swell(w)
    for i in range(n):
        # d(m v)/dt = 0 with m' = F - G - E and w' = (F (up - w) + E w)/m.
        # E = (q - F warm)/L
        A[i, i] = v[i] * (1 + warm[i] / L[i]) + dv[i] * (up[i] - w[i] - w[i] * warm[i] / L[i])
        A[i, i + 1] = -v[i]
        r[i] = q[i] / L[i] * (v[i] - dv[i] * w[i])
    A[n, n] = 1
    if hold:
        # w' = 0 in the last one.
        A[n, n] = 0
        A[n, n - 1] = up[-1] - w[-1] - w[-1] * warm[-1] / L[-1]
        r[n] = -q[-1] / L[-1] * w[-1]
    x = np.linalg.solve(A, r)
    E = (q - x[:n] * warm) / L
    return x, E, up

def rhs(hold):
    def f(t, y):
        w = y[:n]
        x, E, up = flows(w, hold)
        m = V / volume(w)
        dw = (x[:n] * (up - w) + E * w) / m
        return np.concatenate((dw, [E.sum(), x[n] * w[-1], x[n] * (1 - w[-1])]))
    return f

def reached(t, y):
    return y[n - 1] - target
reached.terminal = True

start = (full * (lack + cp(sap) * (point(sap) - point(0)))).sum() / heat
tight = dict(method='LSODA', rtol=1e-10, atol=1e-12)
one = solve_ivp(rhs(False), (start, over), np.concatenate((np.full(n, sap), np.zeros(3))), events=reached, **tight)
first = one.t_events[0][0]
two = solve_ivp(rhs(True), (first, over), one.y[:, -1], **tight)
y = two.y[:, -1]
for figure in first, y[n + 1], y[n + 2], y[n], *y[:n]:
    print(repr(float(figure)))
`

func TestOraclePan(t *testing.T) {
	p := 98 * units.Kilopascal
	rig := pan.Rig{Heat: 100 * units.Kilowatt, Draw: pan.DrawOff{At: 66.9}}
	for _, ft2 := range []float64{8, 8, 3, 3, 2} {
		rig.Compartments = append(rig.Compartments, pan.Compartment{
			Area: units.SquareFeet(ft2), Depth: 2 * units.Inch, SafeDepth: 1 * units.Inch,
		})
	}
	sap := pan.Sap{Volume: 900 * units.USGallon, Brix: 2, Temperature: units.Fahrenheit(40)}
	day := pan.Day{Pressure: p, Out: 12 * time.Hour, Sap: []pan.Sap{sap}}
	got, err := rig.Run(day)
	if err != nil {
		t.Fatal(err)
	}

	must := func(err error) {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
	}
	water, err := boil.Water(p)
	must(err)
	cold, err := sugar.Enthalpy(sap.Brix, sap.Temperature)
	must(err)
	hot, err := sugar.Enthalpy(sap.Brix, water)
	must(err)
	var in strings.Builder
	fmt.Fprintln(&in, day.Out.Seconds(), float64(rig.Heat), sap.Brix.Fraction(), float64(hot-cold), rig.Draw.At.Fraction())
	for _, c := range rig.Compartments {
		fmt.Fprint(&in, float64(c.Area), " ")
	}
	fmt.Fprintln(&in, float64(rig.Compartments[0].Depth))
	for b := units.Brix(0); b <= 75; b += 0.125 {
		at, err := boil.SyrupPoint(b, p)
		must(err)
		rho, err := density.Solution(b, at)
		must(err)
		latent, err := boil.LatentHeat(at)
		must(err)
		cp, err := sugar.SpecificHeat(b, at)
		must(err)
		fmt.Fprintln(&in, b.Fraction(), at.Celsius(), 1/float64(rho), float64(latent), float64(cp))
	}
	want := check.Numbers(t, 4+len(rig.Compartments), in.String(), check.Python, "-c", panScript)
	first, ok := got.FirstDraw()
	if !ok {
		t.Fatal("nothing was drawn")
	}
	have := []float64{first.Seconds(), float64(got.Syrup.Sugar), float64(got.Syrup.Water), float64(got.Evaporated)}
	for _, l := range got.Held {
		have = append(have, l.Brix().Fraction())
	}
	worst := 0.0
	for i := range want {
		off := math.Abs(have[i]/want[i] - 1)
		worst = max(worst, off)
		// The step control of either side allows 1e-6 Brix a step.
		if !(off <= 1e-6) {
			t.Errorf("figure %d: %v, oracle %v, off by %.2g", i, have[i], want[i], off)
		}
	}
	check.Compared(t, len(want), "scipy")
	t.Logf("worst off by %.2g", worst)
}
