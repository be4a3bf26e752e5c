package boil_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/units"
)

func TestRiseDoubtLimits(t *testing.T) {
	limittest.Edges(t, "boil.RiseDoubt", "sugar content", 0, 92, 66.9, func(x float64) (float64, error) {
		d, err := boil.RiseDoubt(units.Brix(x), units.Atmosphere)
		return float64(d), err
	})
	limittest.Edges(t, "boil.RiseDoubt", "pressure", 20, 120, 95, func(x float64) (float64, error) {
		d, err := boil.RiseDoubt(66.9, units.Kilopascals(x))
		return float64(d), err
	})
	limittest.Rises(t, "doubt by strength", true, 0, 92, func(x float64) (float64, error) {
		d, err := boil.RiseDoubt(units.Brix(x), units.Atmosphere)
		return float64(d), err
	})
}

// What is known of the rise lies within about one of the stated uncertainty, and
// all of it within two: the second model (from memory) by 4.098 K at 66 Brix, the
// published stops by their rows.
func TestRiseDoubtCoversWhatIsKnown(t *testing.T) {
	rise, err := boil.Rise(66, units.Atmosphere)
	doubt, err2 := boil.RiseDoubt(66, units.Atmosphere)
	if share := (4.098 - float64(rise)) / float64(doubt); err != nil || err2 != nil || !near(share, 1, 0.1) {
		t.Errorf("the second model lies off by %v of it, %v, %v", share, err, err2)
	}
	table, err := check.Load("syrup-finish-rise")
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range table.Rows {
		b := units.Brix(r.Float("brix"))
		rise, err := boil.Rise(b, units.Atmosphere)
		doubt, err2 := boil.RiseDoubt(b, units.Atmosphere)
		if off := rise - units.FahrenheitDegrees(r.Float("rise_F")); err != nil || err2 != nil || !(math.Abs(float64(off)) <= 2*float64(doubt)) {
			t.Errorf("%s: %v off, where two of %v are stated, %v, %v", r.Text("source"), off, doubt, err, err2)
		}
	}
	if len(table.Rows) < 4 {
		t.Errorf("%d rows", len(table.Rows))
	}
	// 0.1 K at the stop of syrup, by its definition.
	if d, err := boil.RiseDoubt(66.9, units.Atmosphere); err != nil || !near(float64(d), 0.1, 1e-4) {
		t.Errorf("%v, %v", d, err)
	}
}
