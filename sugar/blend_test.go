package sugar_test

import (
	"errors"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestBlendConserves(t *testing.T) {
	r := newDraw()
	for range draws {
		lots := make([]sugar.Lot, 1+r.IntN(6))
		low, high := 85.0, 0.0
		cold, hot := 110.0, 0.0
		for i := range lots {
			if i > 0 && r.IntN(5) == 0 {
				continue // an empty lot
			}
			lots[i] = drawLot(t, r, 0, 85)
			low, high = min(low, float64(lots[i].Brix())), max(high, float64(lots[i].Brix()))
			cold, hot = min(cold, lots[i].Temperature().Celsius()), max(hot, lots[i].Temperature().Celsius())
		}
		all := must[sugar.Lot](t)(sugar.Blend(lots...))
		conserved(t, lots, []sugar.Lot{all})
		const hair = 1e-10
		if b := float64(all.Brix()); !(b >= low-hair && b <= high+hair) {
			t.Errorf("lots of %v to %v Brix blend to %v", low, high, b)
		}
		if c := all.Temperature().Celsius(); !(c >= cold && c <= hot) {
			t.Errorf("lots of %v to %v C blend to %v", cold, hot, c)
		}
		// Poured together one by one, the end is the same.
		var step sugar.Lot
		for _, l := range lots {
			if l.Empty() && step.Empty() {
				continue
			}
			step = must[sugar.Lot](t)(sugar.Blend(step, l))
		}
		conserved(t, []sugar.Lot{all}, []sugar.Lot{step})
		if !near(step.Temperature().Celsius(), all.Temperature().Celsius(), 1e-9) {
			t.Errorf("one by one %v, at once %v", step.Temperature(), all.Temperature())
		}
	}
}

// Liquids at one temperature take less room together than apart.
func TestBlendContracts(t *testing.T) {
	r := newDraw()
	contraction := func(liters float64, a, b units.Brix) float64 {
		x := must[sugar.Lot](t)(sugar.NewLot(units.Liters(liters), a, units.Celsius(20)))
		y := must[sugar.Lot](t)(sugar.NewLot(units.Liters(1-liters), b, units.Celsius(20)))
		both := must[sugar.Lot](t)(sugar.Blend(x, y))
		return 1 - both.Volume().Liters()
	}
	for range draws {
		a, b := units.Brix(between(r, 0, 85)), units.Brix(between(r, 0, 85))
		if c := contraction(r.Float64(), a, b); !(c > -1e-12) {
			t.Errorf("%v and %v grow by %v on mixing", a, b, -c)
		}
	}
	most := 0.0
	for i := range 101 {
		most = max(most, contraction(float64(i)/100, 66.9, 0))
	}
	if !near(most, 0.0035, 0.00005) {
		t.Errorf("syrup and water contract by up to %v, documented as 0.35 percent", most)
	}
}

func TestBlendOfNothing(t *testing.T) {
	for _, lots := range [][]sugar.Lot{nil, {{}}, {{}, {}}} {
		l, err := sugar.Blend(lots...)
		var ie *sugar.InfeasibleError
		if !l.Empty() || !errors.Is(err, sugar.ErrInfeasible) || !errors.As(err, &ie) || ie.Func != "sugar.Blend" {
			t.Errorf("%d empty lots blend to %v, %v", len(lots), l, err)
		}
	}
}

// Equal masses of water blend to the middle, whatever the specific heat; hot
// syrup holds less heat than as much cold water, so that the blend is colder
// than the middle.
func TestBlendTemperature(t *testing.T) {
	lot := func(b units.Brix, c float64) sugar.Lot {
		return must[sugar.Lot](t)(sugar.NewLotByMass(10, b, units.Celsius(c)))
	}
	water := must[sugar.Lot](t)(sugar.Blend(lot(0, 10), lot(0, 50)))
	if !near(water.Temperature().Celsius(), 30, 1e-9) {
		t.Errorf("water at 10 and 50 C blends to %v", water.Temperature())
	}
	// By hand with the mean specific heats 2.80 kJ/(kg K) of 66 Brix between 57
	// and 90 C and 4.187 of water: (2.80 x 90 + 4.187 x 20)/(2.80 + 4.187) = 48.0.
	mixed := must[sugar.Lot](t)(sugar.Blend(lot(66, 90), lot(0, 20)))
	if c := mixed.Temperature().Celsius(); !near(c, 48.0, 0.7) {
		t.Errorf("syrup at 90 C and water at 20 C blend to %v C", c)
	}
}

func TestBlendAllocatesNothing(t *testing.T) {
	a, b := must[sugar.Lot](t)(sugar.NewLotByMass(1, 66, units.Celsius(90))), must[sugar.Lot](t)(sugar.NewLotByMass(1, 2, units.Celsius(5)))
	if n := testing.AllocsPerRun(100, func() { _, _ = sugar.Blend(a, b) }); n != 0 {
		t.Errorf("%v allocations", n)
	}
}
