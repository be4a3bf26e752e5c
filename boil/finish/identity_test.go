package finish_test

import (
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A batch is stopped at its own strength for the strength to which it coasts, and
// a pot weighs at its own strength what it weighs.
func TestBatchAndPotAtTheirOwnStrength(t *testing.T) {
	rng := rand.New(rand.NewPCG(65, 1))
	for hundredths := 3000; hundredths <= 8000; hundredths++ {
		b := units.Brix(float64(hundredths) / 100)
		batch := finish.Batch{Mass: units.Mass(5 + 50*rng.Float64()), Brix: b, Evaporation: units.KilogramsPerHour(1 + 9*rng.Float64())}
		halving := time.Duration(rng.Float64() * float64(3*time.Minute))
		to, err := batch.Coast(halving)
		if err != nil {
			t.Fatal(err)
		}
		if at, err := batch.LastFiring(to, halving); err != nil || math.Abs(float64(at-b)) > 1e-9 {
			t.Errorf("last firing of %v Brix for %v: %v, %v", float64(b), float64(to), float64(at), err)
		}
		l, err := sugar.NewLotByMass(batch.Mass, b, units.Celsius(100))
		if err != nil {
			t.Fatal(err)
		}
		batch.Brix = l.Brix()
		if d, err := batch.Time(b); err != nil || d != 0 {
			t.Errorf("time from %v Brix to itself: %v, %v", float64(b), d, err)
		}
		pot := finish.PotReading{Gross: batch.Mass + 2, Tare: 2, Brix: l.Brix(), ScaleBy: 0.01, BrixBy: 0.2}
		if w, err := pot.Target(b); err != nil || !(math.Abs(float64(w.Off)) <= 1e-9) || math.Abs(float64(w.Gross-pot.Gross)) > 1e-9 {
			t.Errorf("pot from %v Brix to itself: %+v, %v", float64(b), w, err)
		}
	}
}
