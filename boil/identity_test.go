package boil_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// To the strength that it has already sap is only warmed: the heat is that of its
// enthalpy between its temperature and its boiling point, and no water goes off.
func TestHeatToItsOwnStrength(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 66))
	p := units.Atmosphere
	for hundredths := 10; hundredths <= 8500; hundredths++ {
		b := units.Brix(float64(hundredths) / 100)
		l, err := sugar.NewLot(units.Volume(math.Exp(10*rng.Float64()-5)), b, units.Celsius(90*rng.Float64()))
		if err != nil {
			t.Fatal(err)
		}
		h, err := boil.Heat(l, b, p)
		if err != nil {
			t.Errorf("%v Brix: %v", float64(b), err)
			continue
		}
		at, err1 := boil.SyrupPoint(b, p)
		cold, err2 := sugar.Enthalpy(b, l.Temperature())
		hot, err3 := sugar.Enthalpy(b, at)
		if err1 != nil || err2 != nil || err3 != nil {
			t.Fatal(err1, err2, err3)
		}
		warming := (hot - cold).Energy(l.Mass()).Joules()
		little := 1e-9 * warming
		if math.Abs(h.Sensible.Joules()-warming) > little || math.Abs(h.Latent.Joules()) > little || math.Abs(h.Climb.Joules()) > little ||
			math.Abs(float64(h.Water)) > 1e-9*float64(l.Mass()) {
			t.Errorf("%v Brix: %+v, want %v J of warming alone", float64(b), h, warming)
		}
	}
}

// What boils at the temperature of water, in whatever unit it was read, is water.
func TestRiseOfNothing(t *testing.T) {
	for kPa := 50.0; kPa <= 110; kPa += 0.37 {
		p := units.Kilopascals(kPa)
		w, err := boil.Water(p)
		if err != nil {
			t.Fatal(err)
		}
		back := units.Fahrenheit(w.Fahrenheit())
		if b, err := boil.BrixFromRise(back.Sub(w), p); err != nil || !(b >= 0 && b < 1e-6) {
			t.Errorf("a rise of %v at %v kPa: %v Brix, %v", float64(back.Sub(w)), kPa, float64(b), err)
		}
	}
}
