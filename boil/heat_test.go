package boil_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// sap returns a lot by mass.
func sap(t testing.TB, m units.Mass, b units.Brix, at units.Temperature) sugar.Lot {
	t.Helper()
	l, err := sugar.NewLotByMass(m, b, at)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// mustHeat returns a demand.
func mustHeat(t testing.TB, lot sugar.Lot, to units.Brix, p units.Pressure) boil.HeatDemand {
	t.Helper()
	h, err := boil.Heat(lot, to, p)
	if err != nil {
		t.Fatal(err)
	}
	return h
}

func wantRange(t *testing.T, name string, err error) {
	t.Helper()
	var e *units.RangeError
	if !errors.As(err, &e) || !errors.Is(err, units.ErrRange) {
		t.Errorf("%s: error %v, want a RangeError", name, err)
	}
}

// The climb of the boiling point is integrated in steps: halving the way must
// not change the sum.
func TestHeatAddsUp(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 200 {
		p := units.Kilopascals(60 + 45*r.Float64())
		from := units.Brix(0.5 + 10*r.Float64())
		mid := from + units.Brix(1+40*r.Float64())
		to := mid + units.Brix(1+(83-float64(mid))*r.Float64())
		whole := mustHeat(t, sap(t, 100, from, units.Celsius(5)), to, p)
		first := mustHeat(t, sap(t, 100, from, units.Celsius(5)), mid, p)
		at, err := boil.SyrupPoint(mid, p)
		if err != nil {
			t.Fatal(err)
		}
		if at.Celsius() > 110 {
			continue // the lot would lie outside its range
		}
		second := mustHeat(t, sap(t, first.Syrup(), mid, at), to, p)
		if a, b := whole.Total(), first.Total()+second.Total(); !near(float64(a/b), 1, 2e-5) {
			t.Errorf("%v to %v to %v at %v: %v at once, %v in two steps", from, mid, to, p, a, b)
		}
		if !near(float64(whole.Water), float64(first.Water+second.Water), 1e-10) {
			t.Errorf("water %v at once, %v in two steps", whole.Water, first.Water+second.Water)
		}
		if !near(float64(whole.Water+whole.Syrup()), 100, 1e-10) {
			t.Errorf("water and syrup of 100 kg are %v", whole.Water+whole.Syrup())
		}
	}
}

// A US gallon of 66.0 Brix from 2.0 Brix at 40 F: the plain balance gives
// 404,680 Btu, and Ohio State University Extension prints 400,000.
func TestHeatOfAGallon(t *testing.T) {
	h := mustHeat(t, sap(t, 100, 2, units.Fahrenheit(40)), 66, units.Atmosphere)
	e, err := h.Per(units.USGallon, units.Celsius(20))
	if err != nil || !near(e.BtusIT(), 404680, 0.001*404680) || math.Round(e.BtusIT()/1e5) != 4 {
		t.Errorf("%.0f Btu, %v", e.BtusIT(), err)
	}
}

// Water boiled at the water's own boiling point is the plain balance; the climb
// of the syrup's changes it by less than a tenth of a percent.
func TestHeatAgainstPlainBalance(t *testing.T) {
	for _, p := range []units.Pressure{units.Atmosphere, 80 * units.Kilopascal} {
		h := mustHeat(t, sap(t, 100, 2, units.Fahrenheit(40)), 66, p)
		water, err := boil.Water(p)
		if err != nil {
			t.Fatal(err)
		}
		steam, err := boil.LatentHeat(water)
		if err != nil {
			t.Fatal(err)
		}
		plain := units.KilojoulesPerKilogramKelvin(4.145).Energy(100, water.Sub(units.Fahrenheit(40))) + steam.Energy(h.Water)
		if !near(float64(h.Total()/plain), 1, 1e-3) {
			t.Errorf("at %v: %v, plain balance %v", p, h.Total(), plain)
		}
	}
}

// A small step of strength shows the parts one by one: the heat of its steam, and
// what warms the liquid to its new boiling point.
func TestHeatOfASmallStep(t *testing.T) {
	const p = 90 * units.Kilopascal
	for _, b := range []units.Brix{1, 10, 50, 66, 80} {
		at, err := boil.SyrupPoint(b, p)
		if err != nil {
			t.Fatal(err)
		}
		next := b + b/1000
		after, err := boil.SyrupPoint(next, p)
		if err != nil {
			t.Fatal(err)
		}
		c, err := sugar.SpecificHeat(b, at)
		if err != nil {
			t.Fatal(err)
		}
		steam, err := boil.LatentHeat(at)
		if err != nil {
			t.Fatal(err)
		}
		h := mustHeat(t, sap(t, 100, b, at), next, p)
		if want := c.Energy(100, after.Sub(at)); !near(float64(h.Climb/want), 1, 0.002) {
			t.Errorf("%v: climb takes %v, want %v", b, h.Climb, want)
		}
		if want := steam.Energy(h.Water); !near(float64(h.Latent/want), 1, 1e-4) || !near(float64(h.Water), 100-100/1.001, 1e-9) {
			t.Errorf("%v: steam takes %v, want %v; %v of water", b, h.Latent, want, h.Water)
		}
		if !near(float64(h.Sensible), 0, 1e-3) {
			t.Errorf("%v: boiling already, and %v to warm it", b, h.Sensible)
		}
	}
}

func TestHeatLimits(t *testing.T) {
	total := func(from, to units.Brix) (float64, error) {
		h, err := boil.Heat(sap(t, 1, from, units.Celsius(5)), to, units.Atmosphere)
		if err != nil {
			return math.NaN(), err
		}
		return h.Total().Joules(), nil
	}
	for _, from := range []units.Brix{0.1, 0.1001, 85} { // no lot is stronger
		if _, err := total(from, 85); err != nil {
			t.Errorf("sap of %v: %v", from, err)
		}
	}
	limittest.Edges(t, "boil.Heat", "target", 0.1, 85, 66, func(x float64) (float64, error) { return total(0.1, units.Brix(x)) })
	cold := units.Celsius(5)
	for name, tc := range map[string]struct {
		lot sugar.Lot
		to  units.Brix
		p   units.Pressure
	}{
		"water":       {sap(t, 1, 0.099999, cold), 66, units.Atmosphere},
		"thinner":     {sap(t, 1, 60, cold), 59.9, units.Atmosphere},
		"candy":       {sap(t, 1, 2, cold), 85.01, units.Atmosphere},
		"not a goal":  {sap(t, 1, 2, cold), units.Brix(math.NaN()), units.Atmosphere},
		"inf":         {sap(t, 1, 2, cold), units.Brix(math.Inf(1)), units.Atmosphere},
		"-inf":        {sap(t, 1, 2, cold), units.Brix(math.Inf(-1)), units.Atmosphere},
		"vacuum":      {sap(t, 1, 2, cold), 66, 19.99 * units.Kilopascal},
		"pressure":    {sap(t, 1, 2, cold), 66, 120.01 * units.Kilopascal},
		"nan p":       {sap(t, 1, 2, cold), 66, units.Pressure(math.NaN())},
		"boiling sap": {sap(t, 1, 2, units.Celsius(101)), 66, units.Atmosphere},
		"empty, nan":  {sugar.Lot{}, units.Brix(math.NaN()), units.Atmosphere},
	} {
		h, err := boil.Heat(tc.lot, tc.to, tc.p)
		wantRange(t, name, err)
		if h != (boil.HeatDemand{}) {
			t.Errorf("%s: %+v with an error", name, h)
		}
	}
	for _, to := range []units.Brix{2, 85} {
		for _, p := range []units.Pressure{20 * units.Kilopascal, 120 * units.Kilopascal} {
			if _, err := boil.Heat(sap(t, 1, 2, cold), to, p); err != nil {
				t.Errorf("on the limit: %v", err)
			}
		}
	}
	if h, err := boil.Heat(sugar.Lot{}, 66, units.Atmosphere); err != nil || h.Total() != 0 || h.Syrup() != 0 {
		t.Errorf("an empty lot takes %v, %v", h, err)
	}
}

func TestHeatPer(t *testing.T) {
	h := mustHeat(t, sap(t, 100, 2, units.Fahrenheit(40)), 66, units.Atmosphere)
	one, err := h.Per(units.USGallon, units.Celsius(20))
	if err != nil {
		t.Fatal(err)
	}
	two, err := h.Per(2*units.USGallon, units.Celsius(20))
	if err != nil || !near(float64(two/one), 2, 1e-12) {
		t.Errorf("two gallons take %v, one %v, %v", two, one, err)
	}
	// A cup of sap boils as a tank does.
	cup := mustHeat(t, sap(t, 0.06, 2, units.Fahrenheit(40)), 66, units.Atmosphere)
	small, err := cup.Per(units.USGallon, units.Celsius(20))
	if err != nil || !near(float64(small/one), 1, 1e-9) || cup.Water > 1*units.Kilogram {
		t.Errorf("of %v water: %v, of a tank %v, %v", cup.Water, small, one, err)
	}
	var e *units.RangeError
	if _, err := (boil.HeatDemand{}).Per(1, units.Celsius(20)); !errors.As(err, &e) || e.Value != 0 || e.Low != 1e-9 {
		t.Errorf("empty: %v", err)
	}
	if _, err := boil.Heat(sap(t, 1, 2, units.Celsius(101)), 66, units.Atmosphere); !errors.As(err, &e) || e.Low != 0 || !near(e.High, 100, 0.05) {
		t.Errorf("sap hotter than it boils: %v", err)
	}
	for name, call := range map[string]func() (units.Energy, error){
		"empty":    func() (units.Energy, error) { return boil.HeatDemand{}.Per(units.USGallon, units.Celsius(20)) },
		"negative": func() (units.Energy, error) { return h.Per(-1, units.Celsius(20)) },
		"nan":      func() (units.Energy, error) { return h.Per(units.Volume(math.NaN()), units.Celsius(20)) },
		"inf":      func() (units.Energy, error) { return h.Per(units.Volume(math.Inf(1)), units.Celsius(20)) },
		"hot":      func() (units.Energy, error) { return h.Per(1, units.Celsius(111)) },
	} {
		e, err := call()
		wantRange(t, name, err)
		if !math.IsNaN(float64(e)) {
			t.Errorf("%s: %v, want NaN", name, e)
		}
	}
}

func TestHeatAllocatesNothing(t *testing.T) {
	lot := sap(t, 100, 2, units.Fahrenheit(40))
	if n := testing.AllocsPerRun(100, func() { _, _ = boil.Heat(lot, 66, units.Atmosphere) }); n != 0 {
		t.Errorf("%v allocations", n)
	}
}

// A demand that was not asked of Heat is refused where it holds nothing, or more
// than there is.
func TestDemandLimits(t *testing.T) {
	per := func(change func(h *boil.HeatDemand, x float64)) func(float64) (float64, error) {
		return func(x float64) (float64, error) {
			h := boil.HeatDemand{From: 2, To: 66, Sugar: 1, Water: 1, Latent: 1}
			change(&h, x)
			e, err := h.Per(units.USGallon, units.Celsius(20))
			return e.Joules(), err
		}
	}
	const fn = "boil.HeatDemand.Per"
	limittest.Edges(t, fn, "water to boil off", 1e-9, 1e15, 30, per(func(h *boil.HeatDemand, x float64) { h.Water = units.Mass(x) }))
	limittest.Edges(t, fn, "sugar of the demand", 1e-9, 1e15, 30, per(func(h *boil.HeatDemand, x float64) { h.Sugar = units.Mass(x) }))
	limittest.Edges(t, fn, "heat of the demand", 1e-9, 1e24, 1e6, per(func(h *boil.HeatDemand, x float64) { h.Latent = units.Energy(x) }))
}

func BenchmarkHeat(b *testing.B) {
	lot := sap(b, 100, 2, units.Fahrenheit(40))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := boil.Heat(lot, 66, units.Atmosphere); err != nil {
			b.Fatal(err)
		}
	}
}
