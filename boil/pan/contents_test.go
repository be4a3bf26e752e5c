package pan

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/units"
)

func TestFill(t *testing.T) {
	r, p := partitioned(), 98*units.Kilopascal
	for _, b := range []units.Brix{0, 2, 75} {
		c, err := r.Fill(b, units.Celsius(10), p)
		if err != nil {
			t.Fatal(err)
		}
		l, err := solveBoiling(b, p)
		if err != nil {
			t.Fatal(err)
		}
		for i, k := range r.Compartments {
			if got, want := float64(c[i].Mass())*l.volume, float64(k.Area.Volume(k.Depth)); !near(got, want, 1e-9) {
				t.Errorf("%v Brix: compartment %d holds %v m3, want %v", b, i, got, want)
			}
			if !near(1+float64(c[i].Brix()), 1+float64(b), 1e-12) {
				t.Errorf("%v Brix: compartment %d holds %v", b, i, c[i].Brix())
			}
		}
	}
	for _, x := range outside(0, 75) {
		if _, err := r.Fill(units.Brix(x), units.Celsius(10), p); !errors.Is(err, units.ErrRange) {
			t.Errorf("%v Brix: %v", x, err)
		}
	}
	for _, x := range outside(0, 110) {
		if _, err := r.Fill(2, units.Celsius(x), p); !errors.Is(err, units.ErrRange) {
			t.Errorf("%v C: %v", x, err)
		}
	}
	for _, x := range outside(5e4, 1.1e5) {
		if _, err := r.Fill(2, units.Celsius(10), units.Pressure(x)); !errors.Is(err, units.ErrRange) {
			t.Errorf("%v Pa: %v", x, err)
		}
	}
	if _, err := (Rig{}).Fill(2, units.Celsius(10), p); !errors.Is(err, units.ErrRange) {
		t.Error(err)
	}
}

func TestLiquid(t *testing.T) {
	var none Liquid
	if v, err := none.VolumeAt(units.Celsius(20)); none.Brix() != 0 || v != 0 || err != nil {
		t.Errorf("nothing is %v of %v Brix, %v", v, none.Brix(), err)
	}
	if _, err := none.VolumeAt(units.Celsius(-1)); !errors.Is(err, units.ErrRange) {
		t.Error(err)
	}
	syrup := Liquid{Sugar: 66, Water: 34}
	for _, x := range []units.Mass{units.Mass(math.NaN()), units.Mass(math.Inf(1)), units.Mass(math.Inf(-1)), -3} {
		for _, l := range []Liquid{{Sugar: 1, Water: x}, {Sugar: x, Water: 1}} {
			if v, err := l.VolumeAt(units.Celsius(20)); !errors.Is(err, units.ErrRange) || !math.IsNaN(float64(v)) {
				t.Errorf("%+v: %v, %v", l, v, err)
			}
		}
	}
	v, err := syrup.VolumeAt(units.Celsius(20))
	// 66 Brix weighs 1322.662 kg/m3 at 20 C (computed).
	if err != nil || !near(float64(v), 100/1322.662, 1e-6) || !near(float64(syrup.Brix()), 66, 1e-12) {
		t.Errorf("%v of %v, %v", v, syrup.Brix(), err)
	}
	c := Contents{syrup, none, syrup}
	if c.Sugar() != 132 || c.Mass() != 200 {
		t.Errorf("%v of %v", c.Sugar(), c.Mass())
	}
}
