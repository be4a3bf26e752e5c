package boil_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/units"
)

func TestPressureLimits(t *testing.T) {
	limittest.Edges(t, "boil.PressureAt", "elevation", -500, 5000, 300, func(x float64) (float64, error) {
		p, err := boil.PressureAt(units.Meters(x))
		return p.Pascals(), err
	})
	limittest.Edges(t, "boil.StationPressure", "altimeter setting", 25, 32.5, 30, func(x float64) (float64, error) {
		p, err := boil.StationPressure(units.InchesMercury(x), 100)
		return p.Pascals(), err
	})
	limittest.Edges(t, "boil.StationPressure", "elevation", -500, 5000, 300, func(x float64) (float64, error) {
		p, err := boil.StationPressure(30*units.InchMercury, units.Meters(x))
		return p.Pascals(), err
	})
	limittest.Edges(t, "boil.AltimeterSetting", "station pressure", 12, 36, 28, func(x float64) (float64, error) {
		p, err := boil.AltimeterSetting(units.InchesMercury(x), 100)
		return p.Pascals(), err
	})
	limittest.Edges(t, "boil.AltimeterSetting", "elevation", -500, 5000, 300, func(x float64) (float64, error) {
		p, err := boil.AltimeterSetting(28*units.InchMercury, units.Meters(x))
		return p.Pascals(), err
	})
	limittest.Edges(t, "boil.PressureAtDepth", "pressure", 20, 120, 95, func(x float64) (float64, error) {
		p, err := boil.PressureAtDepth(units.Kilopascals(x), units.Inch, 1270)
		return p.Pascals(), err
	})
	limittest.Edges(t, "boil.PressureAtDepth", "depth", 0, 2, 0.05, func(x float64) (float64, error) {
		p, err := boil.PressureAtDepth(units.Atmosphere, units.Meters(x), 1270)
		return p.Pascals(), err
	})
	limittest.Edges(t, "boil.PressureAtDepth", "density", 900, 1500, 1270, func(x float64) (float64, error) {
		p, err := boil.PressureAtDepth(units.Atmosphere, units.Inch, units.Density(x))
		return p.Pascals(), err
	})
}

// The exponent and the lapse of the published altimetry are rounded. The
// unrounded standard atmosphere stays within the documented 1 Pa.
func TestStationPressureAgainstStandardAtmosphere(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 97))
	const n = 1 / 5.255876
	worst := 0.0
	for range 2000 {
		a := units.InchesMercury(28.5 + 2.5*rng.Float64())
		h := units.Meters(-500 + 5500*rng.Float64())
		p, err := boil.StationPressure(a, h)
		if err != nil {
			t.Fatal(err)
		}
		exact := math.Pow(math.Pow(a.Pascals(), n)-math.Pow(101325, n)*0.0065*h.Meters()/288.15, 1/n)
		worst = max(worst, math.Abs(p.Pascals()-exact))
	}
	t.Logf("worst difference %.2f Pa", worst)
	if !(worst < 1) {
		t.Errorf("the unrounded atmosphere differs by %.2f Pa, documented less than 1", worst)
	}
}

func TestStationPressureRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 97))
	for range 2000 {
		a := units.InchesMercury(25 + 7.5*rng.Float64())
		h := units.Meters(-500 + 5500*rng.Float64())
		p, err := boil.StationPressure(a, h)
		if err != nil {
			t.Fatal(err)
		}
		back, err := boil.AltimeterSetting(p, h)
		if err != nil || !near(back.Pascals(), a.Pascals(), 1e-10*a.Pascals()) {
			t.Fatalf("%v at %v gives %v and back %v, %v", a, h, p, back, err)
		}
	}
}

// The U.S. Standard Atmosphere 1976 in the form that it has for whole layers,
// written with logarithms: 101,325 Pa, 288.15 K, 6.5 K/km and an earth of 6,356,766
// m; at sea level it is the first of them.
func TestStandardAtmosphere(t *testing.T) {
	for _, z := range []float64{-500, 0, 100, 2000, 5000} {
		km := z / 1000 / (1 + z/6356766)
		want := math.Exp(math.Log(101325) + 5.255876*math.Log1p(-6.5*km/288.15))
		if p, err := boil.PressureAt(units.Meters(z)); err != nil || !near(p.Pascals()/want, 1, 1e-12) {
			t.Errorf("%v m: %v Pa, want %v, %v", z, p.Pascals(), want, err)
		}
	}
}

func TestPressureAtFalls(t *testing.T) {
	last := math.Inf(1)
	for z := -500.0; z <= 5000; z += 10 {
		p, err := boil.PressureAt(units.Meters(z))
		if err != nil {
			t.Fatal(err)
		}
		if p.Pascals() >= last {
			t.Fatalf("at %v m the pressure %v is not below %v Pa", z, p, last)
		}
		last = p.Pascals()
	}
}

func BenchmarkPressureAt(b *testing.B) {
	b.ReportAllocs()
	z := units.Feet(1200)
	for b.Loop() {
		if _, err := boil.PressureAt(z); err != nil {
			b.Fatal(err)
		}
	}
}
