package boil_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func lotOf(t testing.TB, mass units.Mass, b units.Brix, at units.Temperature) sugar.Lot {
	t.Helper()
	l, err := sugar.NewLotByMass(mass, b, at)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// brixOf is the strength of an answer, NaN where there is none.
func brixOf(l sugar.Lot, err error) (float64, error) {
	return float64(l.Brix()), err
}

// Sugar stays and the rest follows: 4 lb of 50 Brix leave 3 lb of 2/3 sugar, at
// the boiling point of that.
func TestDownKeepsItsSugar(t *testing.T) {
	const two3 = units.Brix(200.0 / 3)
	got, err := boil.Down(lotOf(t, 4*units.Pound, 50, units.Celsius(4)), two3, units.Atmosphere)
	if err != nil {
		t.Fatal(err)
	}
	point, err := boil.SyrupPoint(two3, units.Atmosphere)
	if err != nil || !near(got.Mass().Pounds(), 3, 1e-12) || !near(got.Sugar().Pounds(), 2, 1e-12) || !near(got.Temperature().Celsius(), point.Celsius(), 1e-9) {
		t.Errorf("%v of %v at %v, %v; want 3 lb at %v", got.Mass(), got.Brix(), got.Temperature(), err, point)
	}
}

// By hand from the density of 20 Brix at 100.37 C: 60 US gal of 2 Brix at 40 F,
// 227.12 L of 1.0079 kg/L, hold 4.578 kg of sugar, which is 22.89 kg of 20 Brix;
// of 1.0376 kg/L they fill 22.06 L, 5.83 US gal.
func TestDownToVolumeByHand(t *testing.T) {
	sap, err := sugar.NewLot(60*units.USGallon, 2, units.Fahrenheit(40))
	if err != nil {
		t.Fatal(err)
	}
	cold, err := density.Solution(2, units.Fahrenheit(40))
	hot, err2 := density.Solution(20, units.Celsius(100.37))
	if err != nil || err2 != nil || !near(float64(cold), 1007.9, 0.1) || !near(float64(hot), 1037.6, 0.1) {
		t.Fatal(cold, hot, err, err2)
	}
	got, err := boil.DownToVolume(sap, units.USGallons(5.83), units.Atmosphere)
	if err != nil || !near(float64(got.Brix()), 20, 0.01) || !near(got.Mass().Kilograms(), 22.89, 0.01) {
		t.Errorf("%v of %v, %v", got.Mass(), got.Brix(), err)
	}
}

// What a lot has boiled down to fills the volume that was asked for, and Down of
// its strength gives the same lot.
func TestDownRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 41))
	for range 2000 {
		p := units.Kilopascals(20 + 100*rng.Float64())
		from := units.Brix(0.1 + 40*rng.Float64()*rng.Float64())
		at, err := boil.Water(p)
		if err != nil {
			t.Fatal(err)
		}
		sap := lotOf(t, units.Kilograms(math.Exp(20*rng.Float64()-5)), from, units.Celsius(rng.Float64()*at.Celsius()))
		to := from + units.Brix(rng.Float64())*(70-from)
		down, err := boil.Down(sap, to, p)
		if err != nil {
			t.Fatal(err)
		}
		back, err := boil.DownToVolume(sap, down.Volume(), p)
		if err != nil || !near(float64(back.Brix()/to), 1, 1e-10) || !near(float64(back.Volume()/down.Volume()), 1, 1e-11) ||
			!near(float64(back.Sugar()/sap.Sugar()), 1, 1e-12) {
			t.Fatalf("%v of %v under %v: to %v, back %v of %v where %v, %v", sap.Mass(), from, p, to, back.Volume(), back.Brix(), down.Volume(), err)
		}
	}
}

// A lot that fits comes back as strong as it is, boiling; the larger the volume,
// the thinner what fills it.
func TestDownToVolumeFits(t *testing.T) {
	sap := lotOf(t, 100, 2, units.Celsius(4))
	hot, err := boil.Down(sap, 2, units.Atmosphere)
	if err != nil {
		t.Fatal(err)
	}
	for _, v := range []units.Volume{hot.Volume(), 2 * hot.Volume(), units.CubicMeter} {
		got, err := boil.DownToVolume(sap, v, units.Atmosphere)
		if err != nil || !near(float64(got.Brix()), 2, 1e-12) || !near(got.Mass().Kilograms(), 100, 1e-9) || !near(got.Temperature().Celsius(), hot.Temperature().Celsius(), 1e-9) {
			t.Errorf("into %v: %v of %v, %v", v, got.Mass(), got.Brix(), err)
		}
	}
	limittest.Rises(t, "strength by volume", false, 3, 100, func(x float64) (float64, error) {
		return brixOf(boil.DownToVolume(sap, units.Liters(x), units.Atmosphere))
	})
}

func TestDownLimits(t *testing.T) {
	sap := lotOf(t, 100, 2, units.Celsius(4))
	down := func(sap sugar.Lot, p units.Pressure) func(float64) (float64, error) {
		return func(x float64) (float64, error) { return brixOf(boil.Down(sap, units.Brix(x), p)) }
	}
	// At 80 kPa 85 Brix boil below 110 C; at 1 atm the strongest is that whose rise
	// is what is missing of 110 C from the 99.974 C of water.
	limittest.Edges(t, "boil.Down", "to", 2, 85, 66.9, down(sap, 80*units.Kilopascal))
	water, err := boil.Water(units.Atmosphere)
	if err != nil {
		t.Fatal(err)
	}
	most, err := boil.BrixFromRise(units.Celsius(110).Sub(water), units.Atmosphere)
	if err != nil || !near(float64(most), 80.8, 0.05) {
		t.Fatal(most, err)
	}
	limittest.Edges(t, "boil.Down", "to", 2, float64(most), 66.9, down(sap, units.Atmosphere))
	for name, f := range map[string]func(float64) (float64, error){
		"boil.Down": func(x float64) (float64, error) { return brixOf(boil.Down(sap, 66.9, units.Kilopascals(x))) },
		"boil.DownToVolume": func(x float64) (float64, error) {
			return brixOf(boil.DownToVolume(sap, 10*units.Liter, units.Kilopascals(x)))
		},
	} {
		limittest.Edges(t, name, "pressure", 20, 120, 95, f)
	}
	least, err := boil.Down(sap, most, units.Atmosphere)
	if err != nil {
		t.Fatal(err)
	}
	limittest.Edges(t, "boil.DownToVolume", "volume", float64(least.Volume()), 1e6, 0.01, func(x float64) (float64, error) {
		return brixOf(boil.DownToVolume(sap, units.Volume(x), units.Atmosphere))
	})
	// Water leaves nothing; the thinnest sap and the strongest lot have an answer.
	for x, ok := range map[units.Brix]bool{0: false, 0.0999: false, 0.1: true, 85: true} {
		got, err := boil.Down(lotOf(t, 1, x, units.Celsius(20)), max(x, 66.9), 80*units.Kilopascal)
		if e := (*units.RangeError)(nil); ok != (err == nil) || ok != !got.Empty() || !ok && !(errors.As(err, &e) && e.Arg == "sap" && e.Low > 0) {
			t.Errorf("sap of %v: %v, %v", x, got.Mass(), err)
		}
	}
	// Candy of 84 Brix boils above 110 C at 1 atm.
	_, err = boil.Down(lotOf(t, 1, 84, units.Celsius(20)), 84, units.Atmosphere)
	if e := (*units.RangeError)(nil); !errors.As(err, &e) || e.Arg != "sap" || !near(e.High, float64(most), 1e-6) {
		t.Errorf("84 Brix: %v", err)
	}
	// Nothing leaves nothing, and is asked for all the same.
	for name, call := range map[string]func(b units.Brix, v units.Volume) (sugar.Lot, error){
		"down": func(b units.Brix, _ units.Volume) (sugar.Lot, error) {
			return boil.Down(sugar.Lot{}, b, units.Atmosphere)
		},
		"volume": func(_ units.Brix, v units.Volume) (sugar.Lot, error) {
			return boil.DownToVolume(sugar.Lot{}, v, units.Atmosphere)
		},
	} {
		if l, err := call(66.9, units.Liter); err != nil || !l.Empty() {
			t.Errorf("%s: of nothing %v, %v", name, l.Mass(), err)
		}
		_, err := call(units.Brix(math.NaN()), units.Volume(math.NaN()))
		wantRange(t, name, err)
	}
}

func BenchmarkDownToVolume(b *testing.B) {
	sap := lotOf(b, 100, 2, units.Celsius(4))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := boil.DownToVolume(sap, 10*units.Liter, units.Atmosphere); err != nil {
			b.Fatal(err)
		}
	}
}
