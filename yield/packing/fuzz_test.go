package packing_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// The inverses that take a liquid: what they accept leads back.
func FuzzInverses(f *testing.F) {
	f.Add(0.5, 66.9, 85.0, 20.0, 0.3, 5.0)
	f.Add(250.0, 85.0, 110.0, 0.0, 100.0, 35.0)
	f.Add(0.001, 0.0, 0.0, 110.0, 0.001, math.NaN())
	f.Fuzz(func(t *testing.T, liters, brix, hot, wall, kg, moisture float64) {
		v, b, at := units.Liters(liters), units.Brix(brix), units.Celsius(hot)
		c := packing.Container{Label: v, Mass: units.Kilograms(kg)}
		if meet, err := c.AfterFilling(b, at, units.Celsius(wall)); err == nil {
			back, err := c.FillAt(b, meet, units.Celsius(wall))
			// Beside a heavy container the heat of the syrup is a small
			// difference, and the way back loses as many digits.
			if err == nil && !(math.Abs(float64(back.Sub(at))) <= 1e-6*(1+kg/liters)) {
				t.Errorf("%v meets %v at %v, and back %v", at, wall, meet, back)
			}
		} else {
			refused(t, "AfterFilling", "packing.Container.AfterFilling", meet.Celsius(), err)
		}
		lot, err := sugar.NewLot(v, b, units.Celsius(20))
		if err != nil {
			return
		}
		if w, err := finish.ProductWeight(lot, units.Share(moisture)); err == nil {
			back, err := finish.ProductMoisture(lot, w)
			if err == nil && !(math.Abs(float64(back)-moisture) <= 1e-9) {
				t.Errorf("%v of moisture %v has %v", w, moisture, back)
			}
		} else {
			refused(t, "ProductWeight", "finish.ProductWeight", float64(w), err)
		}
	})
}
