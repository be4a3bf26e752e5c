package fuel_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/units"
)

// Delivered heat has its efficiency in it: the fuel is the heat over its figure
// and no more, and an amount of it holds its figure, told as delivered. By hand:
// 230,000 Btu from oil of 115,000 Btu to the gallon are 2 gallons.
func TestDeliveredFuel(t *testing.T) {
	oil := fuel.Fuel[units.Volume]{Name: "oil", Heat: 115000 * units.BtuIT, Per: units.USGallon, Basis: fuel.Delivered}
	need, err := oil.Needed(230000*units.BtuIT, fuel.Efficiency{})
	if err != nil {
		t.Fatal(err)
	}
	for _, v := range []units.Volume{need.Low, need.Middle, need.High} {
		if math.Abs(v.USGallons()-2) > 1e-12 {
			t.Errorf("%v US gal, want 2", v.USGallons())
		}
	}
	h, err := oil.Of(2 * units.USGallon)
	if err != nil || h.Basis != fuel.Delivered || math.Abs(float64(h.Energy/(230000*units.BtuIT))-1) > 1e-12 {
		t.Errorf("%+v, %v", h, err)
	}
	made, err := oil.Makes(2*units.USGallon, fuel.Efficiency{})
	if err != nil || math.Abs(float64(made.Middle/(230000*units.BtuIT))-1) > 1e-12 {
		t.Errorf("%+v, %v", made, err)
	}
}
