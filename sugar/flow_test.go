package sugar_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// iapwsViscosity holds the viscosity of water at 0.101325 MPa by the IAPWS
// Formulation 2008 for the Viscosity of Ordinary Water Substance, in mPa s,
// computed with the Python package iapws on densities of IAPWS-IF97.
var iapwsViscosity = []struct{ c, mPas float64 }{
	{0.01, 1.79113}, {1, 1.73102}, {5, 1.51817}, {10, 1.30590}, {20, 1.00160}, {30, 0.797222}, {40, 0.652731}, {60, 0.466043}, {80, 0.354058}, {99, 0.284569},
}

func TestWaterViscosityAgainstIAPWS(t *testing.T) {
	for _, tt := range iapwsViscosity {
		got := must[units.Viscosity](t)(sugar.WaterViscosity(units.Celsius(tt.c)))
		if !near(got.MillipascalSeconds(), tt.mPas, 0.003*tt.mPas) {
			t.Errorf("at %v C %v, IAPWS %v mPa s", tt.c, got, tt.mPas)
		}
	}
}

// The equation of Kestin, Sokolov and Wakeham evaluated in another language: it
// holds the coefficients, which the 0.3 percent above would let slip.
func TestWaterViscosityEquation(t *testing.T) {
	for _, tt := range []struct{ c, mPas float64 }{{0, 1.7931270}, {10, 1.3075049}, {50, 0.5471024}, {100, 0.2821187}} {
		got := must[units.Viscosity](t)(sugar.WaterViscosity(units.Celsius(tt.c)))
		if !near(got.MillipascalSeconds(), tt.mPas, 1e-7) {
			t.Errorf("at %v C %v, want %v mPa s", tt.c, got, tt.mPas)
		}
	}
}

// Over 100 C: the supplementary release of IAPWS of 2008 for liquid water at 0.1
// MPa, which reaches to 383.15 K; its equation from memory, worked out apart.
func TestHotWaterViscosity(t *testing.T) {
	for _, tt := range []struct{ c, mPas float64 }{{100, 0.281581}, {105, 0.267471}, {110, 0.254591}} {
		got := must[units.Viscosity](t)(sugar.WaterViscosity(units.Celsius(tt.c)))
		if !near(got.MillipascalSeconds(), tt.mPas, 0.003*tt.mPas) {
			t.Errorf("at %v C %v, IAPWS %v mPa s", tt.c, got, tt.mPas)
		}
	}
	if v, err := sugar.WaterViscosity(units.Celsius(110.001)); !math.IsNaN(float64(v)) || !errors.Is(err, units.ErrRange) {
		t.Errorf("over 110 C: %v, %v", v, err)
	}
}

func TestOracleWaterViscosity(t *testing.T) {
	const script = `
from iapws._iapws import _Viscosity
from iapws.iapws97 import _Region1
for c in range(1, 100):
    print(repr(float(_Viscosity(1/_Region1(c+273.15, 0.101325)["v"], c+273.15)*1e3)))
`
	for i, want := range check.Numbers(t, 99, script, check.Python, "-") {
		c := float64(i + 1)
		got := must[units.Viscosity](t)(sugar.WaterViscosity(units.Celsius(c)))
		if !near(got.MillipascalSeconds(), want, 0.003*want) {
			t.Errorf("oracle iapws at %v C: %v, want %v mPa s", c, got, want)
		}
	}
	check.Compared(t, 99, "iapws")
}

func TestFlowFactor(t *testing.T) {
	r := newDraw()
	for range draws {
		a, b := units.Celsius(between(r, 0, 100)), units.Celsius(between(r, 0, 100))
		f := must[units.Share](t)(sugar.FlowFactor(a, b))
		back := must[units.Share](t)(sugar.FlowFactor(b, a))
		if !near(f.Fraction()*back.Fraction(), 1, 1e-12) || (f > 100) != (b.Compare(a) > 0) {
			t.Errorf("from %v to %v %v, back %v", a, b, f, back)
		}
		mua, mub := must[units.Viscosity](t)(sugar.WaterViscosity(a)), must[units.Viscosity](t)(sugar.WaterViscosity(b))
		if !near(f.Fraction(), float64(mua/mub), 1e-12*f.Fraction()) {
			t.Errorf("from %v to %v %v, viscosities %v and %v", a, b, f, mua, mub)
		}
	}
}

func TestFlowLimits(t *testing.T) {
	at := units.Celsius(20)
	for _, c := range append([]float64{-0.001, 110.001}, notNumbers...) {
		x := units.Celsius(c)
		v, err1 := sugar.WaterViscosity(x)
		f, err2 := sugar.FlowFactor(x, at)
		g, err3 := sugar.FlowFactor(at, x)
		if !math.IsNaN(float64(v)) || !math.IsNaN(float64(f)) || !math.IsNaN(float64(g)) || !errors.Is(err1, units.ErrRange) || !errors.Is(err2, units.ErrRange) || !errors.Is(err3, units.ErrRange) {
			t.Errorf("%v: %v %v %v, %v %v %v", x, v, f, g, err1, err2, err3)
		}
	}
	if f, err := sugar.FlowFactor(at, units.Celsius(100.001)); !math.IsNaN(float64(f)) || !errors.Is(err, units.ErrRange) {
		t.Errorf("a membrane over 100 C: %v, %v", f, err)
	}
	for _, c := range []float64{0, 100} {
		if f, err := sugar.FlowFactor(at, units.Celsius(c)); err != nil || !(f > 0) {
			t.Errorf("%v C: %v, %v", c, f, err)
		}
	}
}
