package boil_test

import (
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestSyrupPointLimits(t *testing.T) {
	limittest.Edges(t, "boil.SyrupPoint", "sugar content", 0, 92, 66.9, func(x float64) (float64, error) {
		v, err := boil.SyrupPoint(units.Brix(x), units.Atmosphere)
		return v.Celsius(), err
	})
	limittest.Edges(t, "boil.SyrupPoint", "pressure", 20, 120, 95, func(x float64) (float64, error) {
		v, err := boil.SyrupPoint(66.9, units.Kilopascals(x))
		return v.Celsius(), err
	})
	limittest.Edges(t, "boil.SyrupPointOf", "inverted share", 0, 20, 5, func(x float64) (float64, error) {
		v, err := boil.SyrupPointOf(sugar.Solute{Inverted: units.Percents(x)}, 66.9, units.Atmosphere)
		return v.Celsius(), err
	})
}

func TestSyrupPointIsWaterPlusRise(t *testing.T) {
	for kPa := 20.0; kPa <= 120; kPa += 5 {
		p := units.Kilopascals(kPa)
		water, err := boil.Water(p)
		if err != nil {
			t.Fatal(err)
		}
		rise, err := boil.Rise(66.9, p)
		if err != nil {
			t.Fatal(err)
		}
		got, err := boil.SyrupPoint(66.9, p)
		if err != nil || !near(got.Celsius(), water.Add(rise).Celsius(), 1e-12) {
			t.Errorf("%v: syrup boils at %v, water and rise make %v, %v", p, got, water.Add(rise), err)
		}
	}
}

// A thermometer that is off by the same at water and at syrup, calibrated in
// boiling water, still finds the rise.
func TestCalibrationCancelsTheThermometer(t *testing.T) {
	const off = units.TempDiff(0.5)
	water, err := boil.Water(units.Kilopascals(97))
	if err != nil {
		t.Fatal(err)
	}
	truth, err := boil.SyrupPoint(66.9, units.Kilopascals(97))
	if err != nil {
		t.Fatal(err)
	}
	p, err := boil.PressureFromWater(water.Add(off))
	if err != nil {
		t.Fatal(err)
	}
	shown, err := boil.SyrupPoint(66.9, p)
	if err != nil {
		t.Fatal(err)
	}
	// What is left is the change of the rise with the pressure: half a kelvin is
	// 1.73 kPa, and the published rises fall by 0.22 K over 31.3 kPa.
	if left := (shown.Sub(truth) - off).Abs(); left > 0.0125 {
		t.Errorf("the error of the thermometer leaves %v in the stop", left)
	}
}

func BenchmarkSyrupPoint(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := boil.SyrupPoint(66.9, units.Atmosphere); err != nil {
			b.Fatal(err)
		}
	}
}
