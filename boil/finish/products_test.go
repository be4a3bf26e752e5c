package finish_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestProducts(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 41))
	for range 500 {
		lot := lotOf(t, units.USGallons(0.1+5*rng.Float64()), units.Brix(60+10*rng.Float64()), units.Celsius(20))
		moisture := units.Share(35 * rng.Float64())
		w, err := finish.ProductWeight(lot, moisture)
		back, err2 := finish.ProductMoisture(lot, w)
		if err != nil || err2 != nil || !(math.Abs(float64(back-moisture)) < 1e-10) {
			t.Errorf("%v %v, %v, %v, %v", moisture, w, back, err, err2)
		}
	}
	lot := lotOf(t, units.USGallon, 66.9, units.Celsius(20))
	for _, x := range []float64{-0.1, 35.1, notNum, inf, -inf} {
		w, err := finish.ProductWeight(lot, units.Share(x))
		refused(t, "ProductWeight", "finish.ProductWeight", float64(w), err)
	}
	for _, lb := range []float64{7.40, 11.5, 0, -1, notNum, inf} {
		m, err := finish.ProductMoisture(lot, units.Pounds(lb))
		refused(t, "ProductMoisture", "finish.ProductMoisture", float64(m), err)
	}
	for _, none := range []sugar.Lot{{}, lotOf(t, 1, 0, units.Celsius(20))} {
		w, err := finish.ProductWeight(none, 5)
		refused(t, "no sugar", "finish.ProductWeight", float64(w), err)
		m, err := finish.ProductMoisture(none, 5)
		refused(t, "no sugar", "finish.ProductMoisture", float64(m), err)
	}
}

// The published yields are those of the table, and none is above the ceiling of
// the wettest product that practice makes.
func TestProductFigures(t *testing.T) {
	table, err := check.Load("confection-yields")
	if err != nil {
		t.Fatal(err)
	}
	ceiling, err := finish.ProductWeight(lotOf(t, units.USGallon, 66.9, units.Celsius(20)), 16) // as wet as cream at 23 F
	if err != nil {
		t.Fatal(err)
	}
	figures := finish.ProductFigures()
	if len(figures) != len(table.Rows) {
		t.Fatalf("%d products, the table has %d", len(figures), len(table.Rows))
	}
	for i, r := range table.Rows {
		f := figures[i]
		if f.Product != r.Text("product") || f.Obtained != r.Text("obtained") || f.Source != r.Text("source") ||
			!(math.Abs(f.Low.Pounds()-r.Float("low")) < 1e-9) || !(math.Abs(f.High.Pounds()-r.Float("high")) < 1e-9) {
			t.Errorf("%+v; the table has %v to %v of %s, %s, %s", f, r.Float("low"), r.Float("high"), r.Text("product"), r.Text("obtained"), r.Text("source"))
		}
		if f.High > ceiling {
			t.Errorf("%s: %v is above the ceiling %v", f.Product, f.High, ceiling)
		}
	}
}

// Of an empty lot nothing comes, and the refusal names the lot and what it may
// hold: 1 mg to a million tonnes of sugar.
func TestProductOfNothing(t *testing.T) {
	for fn, ask := range map[string]func() error{
		"finish.ProductWeight":   func() error { _, err := finish.ProductWeight(sugar.Lot{}, 5*units.Percent); return err },
		"finish.ProductMoisture": func() error { _, err := finish.ProductMoisture(sugar.Lot{}, units.Pound); return err },
	} {
		var e *units.RangeError
		if err := ask(); !errors.As(err, &e) || e.Func != fn || e.Arg != "lot" || e.What != "sugar in the lot" || e.Unit != "kg" || e.Hint != "there is nothing to boil down" ||
			!(math.Abs(e.Low-1e-6) < 1e-18) || !(math.Abs(e.High-1e9) < 1e-3) {
			t.Errorf("%s: %+v", fn, err)
		}
	}
}
