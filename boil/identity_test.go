package boil_test

import (
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/boil/pan"
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

// Syrup leaves the pan at the boiling point of its own strength under the
// pressure of the day: that of [boil.SyrupPoint], 7.1 to 7.6 F above water
// near 66 Brix by any handbook.
func TestDaysSyrupIsAtItsBoilingPoint(t *testing.T) {
	for _, p := range []units.Pressure{1 * units.Atmosphere, 85 * units.Kilopascal} {
		day, err := kettle().Run(pan.Day{Pressure: p, Out: 24 * time.Hour,
			Sap: []pan.Sap{{Volume: 43.389 * units.USGallon, Brix: 2, Temperature: units.Celsius(20)}}})
		if err != nil {
			t.Fatal(err)
		}
		want, err := boil.SyrupPoint(day.Syrup.Brix(), p)
		if err != nil {
			t.Fatal(err)
		}
		got := []units.Temperature{day.Syrup.Temperature}
		for _, d := range day.Draws {
			got = append(got, d.Temperature)
		}
		for i, at := range got {
			if !(math.Abs(float64(at.Sub(want))) < 0.05) {
				t.Errorf("%v kPa, no. %d: syrup of %v Brix at %v C, want %v", p.Kilopascals(), i, float64(day.Syrup.Brix()), at.Celsius(), want.Celsius())
			}
		}
		if len(got) < 2 {
			t.Error("no draw")
		}
	}
}

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

// After a cold night the ice of each compartment begins at the freezing point of
// its own strength: of 2 Brix -0.12 C and of 10 Brix -0.63 C (CRC Handbook,
// concentrative properties of aqueous solutions, from memory). It is told
// whether the compartment froze or not.
func TestMeltingPointAfterANight(t *testing.T) {
	held := pan.Contents{
		{Sugar: 2, Water: 98, Temperature: units.Celsius(90)},
		{Sugar: 10, Water: 90, Temperature: units.Celsius(95)},
	}
	for _, air := range []float64{-20, 10} {
		m, err := held.Overnight(pan.Night{Length: 100 * time.Hour, Air: units.Celsius(air), Halving: time.Hour})
		if err != nil {
			t.Fatal(err)
		}
		for i, want := range []float64{-0.12, -0.63} {
			if got := m.Ice[i].Point.Celsius(); math.Abs(got-want) > 0.02 || m.Ice[i].Forms != (air < 0) {
				t.Errorf("air of %v C, compartment %d: ice at %v C (forms: %v), want %v", air, i+1, got, m.Ice[i].Forms, want)
			}
		}
	}
}
