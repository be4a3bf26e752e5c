package sugar_test

import (
	"testing"

	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func plain[Q ~float64](x Q, err error) (float64, error) { return float64(x), err }

func degrees(t units.Temperature, err error) (float64, error) { return t.Celsius(), err }

// What sugar and warmth do to water, they do all the way.
func TestMonotone(t *testing.T) {
	c20 := units.Celsius(20)
	for _, tc := range []struct {
		name      string
		up        bool
		low, high float64
		f         func(x float64) (float64, error)
	}{
		{"activity against strength", false, 0, 92, func(x float64) (float64, error) { return sugar.WaterActivity(units.Brix(x), c20) }},
		{"activity against inverted sugar", false, 0, 100, func(x float64) (float64, error) {
			return sugar.Solute{Inverted: units.Share(x)}.WaterActivity(66, c20)
		}},
		{"osmotic pressure against strength", true, 0, 70, func(x float64) (float64, error) { return plain(sugar.OsmoticPressure(units.Brix(x), c20)) }},
		{"freezing point against strength", false, 0, 60, func(x float64) (float64, error) { return degrees(sugar.FreezingPoint(units.Brix(x))) }},
		{"viscosity against strength", true, 0, 85, func(x float64) (float64, error) { return plain(sugar.Viscosity(units.Brix(x), c20)) }},
		{"viscosity against warmth", false, 0, 110, func(x float64) (float64, error) { return plain(sugar.Viscosity(66, units.Celsius(x))) }},
		{"viscosity of water", false, 0, 110, func(x float64) (float64, error) { return plain(sugar.WaterViscosity(units.Celsius(x))) }},
		{"enthalpy against warmth", true, 0, 110, func(x float64) (float64, error) { return plain(sugar.Enthalpy(66, units.Celsius(x))) }},
		{"specific heat against strength", false, 0, 85, func(x float64) (float64, error) { return plain(sugar.SpecificHeat(units.Brix(x), c20)) }},
		{"saturation, Charles", true, 0, 110, func(x float64) (float64, error) { return plain(sugar.Charles.Saturation(units.Celsius(x))) }},
		{"saturation, Vavrinecz", true, 0, 110, func(x float64) (float64, error) { return plain(sugar.Vavrinecz.Saturation(units.Celsius(x))) }},
		{"flow of a membrane", true, 1, 40, func(x float64) (float64, error) { return plain(sugar.FlowFactor(units.Celsius(25), units.Celsius(x))) }},
		{"absorbance", false, 1, 100, func(x float64) (float64, error) { return plain(sugar.AbsorbanceOf(units.Share(x))) }},
		{"light through more syrup", false, 1, 50, func(x float64) (float64, error) {
			return plain(sugar.TransmissionAtPath(60, 10*units.Millimeter, units.Length(x)*units.Millimeter))
		}},
		{"volume of a lot against warmth", true, 4, 110, func(x float64) (float64, error) {
			l, err := sugar.NewLotByMass(units.Kilogram, 66, units.Celsius(x))
			return float64(l.Volume()), err
		}},
	} {
		t.Run(tc.name, func(t *testing.T) { limittest.Rises(t, tc.name, tc.up, tc.low, tc.high, tc.f) })
	}
}
