package sugar_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func tinCan(t testing.TB, gallons float64, brix units.Brix, light units.Share) sugar.Can {
	t.Helper()
	lot, err := sugar.NewLot(units.USGallons(gallons), brix, units.Celsius(20))
	if err != nil {
		t.Fatal(err)
	}
	return sugar.Can{Lot: lot, Transmission: light}
}

// By hand: 82 percent lifts 46 to 50.5 with a share of 0.16145 (the check value of
// LightShare), so that a gallon of it takes 1/0.16145 - 1 = 5.194 gallons of the
// dark one along: of 10 gallons 51.94 percent.
func TestReachColorByHand(t *testing.T) {
	r, err := sugar.Aim{LeastLight: 50.5}.Reach(tinCan(t, 10, 66.9, 46), tinCan(t, 1, 66.9, 82))
	if err != nil {
		t.Fatal(err)
	}
	if !(math.Abs(r.Parts[0].Percents()-51.94) < 0.005) || !(math.Abs(r.Parts[1].Percents()-100) < 1e-9) || !(math.Abs(float64(r.Transmission)-50.5) < 1e-9) {
		t.Errorf("%+v", r)
	}
	// The same two are Amber together without a drop left: 0.5 x (A46 + A82) is 61.4.
	r, err = sugar.Amber.Aim().Reach(tinCan(t, 1, 66.9, 46), tinCan(t, 1, 66.9, 82))
	if err != nil || !(math.Abs(float64(r.Left)) < 1e-12) || !(math.Abs(float64(r.Transmission)-61.42) < 0.005) {
		t.Errorf("%+v, %v", r, err)
	}
}

// By hand, in mass: 69 to 67.5 with 66: x 69 + y 66 = 67.5 (x + y), equal parts. Of 2
// lots of one mass all is poured; of twice the dense one half of it.
func TestReachStrengthByHand(t *testing.T) {
	mass := func(kg units.Mass, b units.Brix) sugar.Can {
		lot, err := sugar.NewLotByMass(kg, b, units.Celsius(20))
		if err != nil {
			t.Fatal(err)
		}
		return sugar.Can{Lot: lot}
	}
	r, err := sugar.Aim{MostBrix: 67.5}.Reach(mass(20, 69), mass(10, 66))
	if err != nil || !(math.Abs(r.Parts[0].Percents()-50) < 1e-9) || !(math.Abs(r.Parts[1].Percents()-100) < 1e-9) || !(math.Abs(float64(r.Left)-10) < 1e-9) || !math.IsNaN(float64(r.Transmission)) {
		t.Errorf("%+v, %v", r, err)
	}
	if !(math.Abs(float64(r.Lot.Brix())-67.5) < 1e-9) {
		t.Errorf("%v", r.Lot.Brix())
	}
}

// Whatever stands there: a blend that is told lies within the aim, and no other
// proportion that is tried at random does and leaves less. Where none is told, none
// that is tried does.
func TestReachLeavesLeast(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 9))
	found, none := 0, 0
	for range 300 {
		var cans []sugar.Can
		var all units.Mass
		for range 2 + rng.IntN(3) {
			cans = append(cans, tinCan(t, 0.5+5*rng.Float64(), units.Brix(63+7*rng.Float64()), units.Share(20+70*rng.Float64())))
			all += cans[len(cans)-1].Lot.Mass()
		}
		class := sugar.ColorClasses()[rng.IntN(4)]
		aim := class.Aim()
		if rng.IntN(3) > 0 {
			aim.LeastBrix, aim.MostBrix = 66.5, 67.5
		}
		within := func(lot sugar.Lot, light units.Share, hair float64) bool {
			return (aim.LeastLight == 0 || float64(light) >= float64(aim.LeastLight)-hair) && (aim.MostLight == 0 || float64(light) <= float64(aim.MostLight)+hair) &&
				(aim.LeastBrix == 0 || float64(lot.Brix()) >= float64(aim.LeastBrix)-hair) && (aim.MostBrix == 0 || float64(lot.Brix()) <= float64(aim.MostBrix)+hair)
		}
		r, err := aim.Reach(cans...)
		poured := 0.0
		switch {
		case err == nil:
			found++
			if !within(r.Lot, r.Transmission, 1e-6) || !(math.Abs(float64(r.Left+r.Lot.Mass()-all)) < 1e-9) {
				t.Errorf("%+v of %+v", r, aim)
			}
			v, err := r.Lot.VolumeAt(units.Celsius(20))
			if err != nil {
				t.Fatal(err)
			}
			poured = float64(v)
		case errors.Is(err, sugar.ErrInfeasible):
			none++
		default:
			t.Fatal(err)
		}
		for range 300 {
			var lots []sugar.Lot
			var tinted []sugar.Tinted
			volume := 0.0
			for _, c := range cans {
				part := min(1, 1.5*rng.Float64())
				lot, err := sugar.NewLotByMass(units.Mass(part)*c.Lot.Mass(), c.Lot.Brix(), c.Lot.Temperature())
				if err != nil {
					t.Fatal(err)
				}
				v, err := lot.VolumeAt(units.Celsius(20))
				if err != nil {
					t.Fatal(err)
				}
				lots, tinted, volume = append(lots, lot), append(tinted, sugar.Tinted{Volume: v, Transmission: c.Transmission}), volume+float64(v)
			}
			lot, err := sugar.Blend(lots...)
			if err != nil {
				t.Fatal(err)
			}
			light, err := sugar.BlendTransmission(tinted...)
			if err != nil {
				t.Fatal(err)
			}
			// Volumes contract by less than a thousandth.
			if within(lot, light, 0) && volume > poured*1.001 {
				t.Errorf("%v leaves less than %+v, %v, of %+v", tinted, r, err, aim)
				break
			}
		}
	}
	if found < 50 || none < 20 {
		t.Errorf("%d found, %d none: the cans prove little", found, none)
	}
}

func TestReachRefuses(t *testing.T) {
	good := tinCan(t, 1, 66.9, 60)
	for name, tt := range map[string]struct {
		aim  sugar.Aim
		cans []sugar.Can
		want error
	}{
		"no aim":      {sugar.Aim{}, []sugar.Can{good}, sugar.ErrInfeasible},
		"no class":    {sugar.ColorClass(0).Aim(), []sugar.Can{good}, sugar.ErrInfeasible},
		"empty":       {sugar.Amber.Aim(), []sugar.Can{good, {Transmission: 60}}, sugar.ErrInfeasible},
		"too dark":    {sugar.Golden.Aim(), []sugar.Can{good}, sugar.ErrInfeasible},
		"too light":   {sugar.Dark.Aim(), []sugar.Can{good}, sugar.ErrInfeasible},
		"too thin":    {sugar.Aim{LeastBrix: 68}, []sugar.Can{good}, sugar.ErrInfeasible},
		"too dense":   {sugar.Aim{MostBrix: 66}, []sugar.Can{good}, sugar.ErrInfeasible},
		"not both":    {sugar.Aim{LeastLight: 75, LeastBrix: 66}, []sugar.Can{tinCan(t, 1, 60, 90), tinCan(t, 1, 67, 60)}, sugar.ErrInfeasible},
		"no cans":     {sugar.Amber.Aim(), nil, units.ErrRange},
		"no light":    {sugar.Amber.Aim(), []sugar.Can{tinCan(t, 1, 66.9, units.Share(math.NaN()))}, units.ErrRange},
		"upside down": {sugar.Aim{LeastLight: 60, MostLight: 50}, []sugar.Can{good}, units.ErrRange},
		"NaN aim":     {sugar.Aim{LeastBrix: units.Brix(math.NaN())}, []sugar.Can{good}, units.ErrRange},
		"101 cans":    {sugar.Amber.Aim(), make([]sugar.Can, 101), units.ErrRange},
	} {
		if r, err := tt.aim.Reach(tt.cans...); !errors.Is(err, tt.want) || r.Parts != nil {
			t.Errorf("%s: %+v, %v", name, r, err)
		}
	}
}
