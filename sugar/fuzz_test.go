package sugar_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Whatever is asked, the answer is an error or it closes.
func FuzzThin(f *testing.F) {
	f.Add(3.785, 68.9, 20.0, 0.0, 20.0, 66.9)
	f.Add(37.85, 70.0, 20.0, 2.0, 4.4, 66.9)
	f.Add(1.0, 85.0, 110.0, 0.0, 0.0, 1e-300)
	f.Add(1e-300, 2.0, 0.0, 1.999999999, 0.0, 2.0)
	f.Add(math.NaN(), math.Inf(1), -1.0, 86.0, math.Inf(-1), math.NaN())
	f.Fuzz(func(t *testing.T, liters, brix, c, with, withC, target float64) {
		l, err := sugar.NewLot(units.Liters(liters), units.Brix(brix), units.Celsius(c))
		if err != nil {
			if !l.Empty() {
				t.Errorf("%v beside %v", l, err)
			}
			return
		}
		for _, change := range []func(sugar.Lot, units.Brix, units.Temperature, units.Brix) (sugar.Addition, error){sugar.Thin, sugar.Thicken} {
			a, err := change(l, units.Brix(with), units.Celsius(withC), units.Brix(target))
			if err != nil {
				if a != (sugar.Addition{}) {
					t.Errorf("%+v beside %v", a, err)
				}
				continue
			}
			if l.Mass() < 1e-200 {
				continue // the products underflow
			}
			conserved(t, []sugar.Lot{l, a.Added}, []sugar.Lot{a.Result})
			if !near(float64(a.Result.Brix()), target, 1e-9) {
				t.Errorf("%v with %v to %v gives %v", l.Brix(), with, target, a.Result.Brix())
			}
			if v := a.Result.Volume(); !(v > 0) {
				t.Errorf("the result fills %v", v)
			}
		}
	})
}

func FuzzAdditionBrix(f *testing.F) {
	f.Add(29.4, 70.0, 1.4, 66.9)
	f.Add(1.0, 2.0, 1e-6, 85.0)
	f.Add(math.NaN(), 2.0, -1.0, math.Inf(1))
	f.Fuzz(func(t *testing.T, kg, brix, add, target float64) {
		at := units.Celsius(20)
		l, err := sugar.NewLotByMass(units.Mass(kg), units.Brix(brix), at)
		if err != nil {
			return
		}
		b, err := sugar.AdditionBrix(l, units.Mass(add), units.Brix(target))
		if err != nil {
			if !math.IsNaN(float64(b)) {
				t.Errorf("%v beside %v", b, err)
			}
			return
		}
		extra, err := sugar.NewLotByMass(units.Mass(add), b, at)
		if err != nil {
			t.Fatal(err)
		}
		both, err := sugar.Blend(l, extra)
		if err != nil || !near(float64(both.Brix()), target, 1e-8) {
			t.Errorf("%v of %v with %v of %v: %v, %v; want %v", kg, brix, add, b, both.Brix(), err, target)
		}
	})
}

func FuzzTransmission(f *testing.F) {
	for _, x := range []float64{0, 0.301030, 5, -1, 1e-320, math.NaN(), math.Inf(1)} {
		f.Add(x)
	}
	f.Fuzz(func(t *testing.T, x float64) {
		s, err := sugar.Absorbance(x).Transmission()
		if err != nil {
			if !math.IsNaN(float64(s)) {
				t.Errorf("%v beside %v", s, err)
			}
			return
		}
		a, err := sugar.AbsorbanceOf(s)
		if s >= 0.001 && (err != nil || !near(float64(a), x, 1e-12)) {
			t.Errorf("%v came back as %v, %v", x, a, err)
		}
	})
}

func FuzzMeter(f *testing.F) {
	f.Add(20.0, 10.0)
	f.Add(600.0, 50.0)
	f.Add(math.NaN(), 0.0)
	f.Fuzz(func(t *testing.T, reading, dilution float64) {
		x, err := sugar.InvertedFromMeter(sugar.Glucose(reading), dilution)
		if err != nil {
			if !math.IsNaN(float64(x)) {
				t.Errorf("%v beside %v", x, err)
			}
			return
		}
		back, err := sugar.MeterFromInverted(x, dilution)
		if err != nil || !near(float64(back), reading, 1e-9) {
			t.Errorf("%v at 1:%v is %v and came back as %v, %v", reading, dilution, x, back, err)
		}
	})
}

func FuzzMembrane(f *testing.F) {
	f.Add(100.0, 2.0, 13.0, 8.0, 0.0, 18.9)
	f.Add(100.0, 2.0, 0.0, 85.0, 50.0, 0.0)
	f.Add(1e9, 84.99999, 50.0, 85.0, 49.9, 150.0)
	f.Add(math.NaN(), 2.0, -1.0, math.Inf(1), math.NaN(), math.NaN())
	f.Fuzz(func(t *testing.T, kg, brix, c, target, passage, bar float64) {
		feed, err := sugar.NewLotByMass(units.Mass(kg), units.Brix(brix), units.Celsius(c))
		if err != nil {
			return
		}
		m := sugar.Membrane{Passage: units.Share(passage), Pump: units.Bars(bar)}
		s, err := m.Concentrate(feed, units.Brix(target))
		if err != nil {
			if s != (sugar.Separation{}) {
				t.Errorf("%+v beside %v", s, err)
			}
			return
		}
		if kg < 1e-200 || brix < 1e-50 {
			return // the products underflow
		}
		conserved(t, []sugar.Lot{feed}, []sugar.Lot{s.Concentrate, s.Removed})
		if !near(float64(s.Concentrate.Brix()), target, 1e-9) {
			t.Errorf("%v to %v gives %v", brix, target, s.Concentrate.Brix())
		}
	})
}
