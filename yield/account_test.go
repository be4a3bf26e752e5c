package yield_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

var (
	gauge  = yield.Measured{Volume: 2, Brix: 0.1}
	closer = yield.Measured{Volume: 0.5, Brix: 0.2}
)

// season is an invented season without loss: 500 gal of 2 Brix sap.
func season(t testing.TB) yield.Season {
	t.Helper()
	ratio, err := yield.Ratio(2, 66.9)
	if err != nil {
		t.Fatal(err)
	}
	cold := units.Celsius(20)
	return yield.Season{
		Sap:   []sugar.Lot{lotOf(t, units.USGallons(300), 2, cold), {}, lotOf(t, units.USGallons(200), 2, cold)},
		Syrup: []sugar.Lot{lotOf(t, units.USGallons(500/ratio), 66.9, cold)},
		Taps:  50, Days: 10,
		SapMeasured: gauge, HeldMeasured: gauge, SyrupMeasured: closer,
	}
}

func TestAccountWithoutLoss(t *testing.T) {
	a, err := season(t).Account()
	if err != nil {
		t.Fatal(err)
	}
	near := func(what string, got, want float64) {
		t.Helper()
		if !(math.Abs(got-want) <= 1e-9*math.Max(1, math.Abs(want))) {
			t.Errorf("%s %v, want %v", what, got, want)
		}
	}
	near("lost", a.Lost.Kilograms(), 0)
	near("share", a.LostShare.Percents(), 0)
	near("in and out", a.SugarIn.Kilograms(), a.SugarOut.Kilograms())
	near("sap", a.Sap.USGallons(), 500)
	near("sap per tap", a.SapPerTap.USGallons(), 10)
	near("sap per tap and day", a.SapPerTapDay.USGallons(), 1)
	near("syrup per tap", a.SyrupPerTap.USGallons(), a.Syrup.USGallons()/50)
	near("sugar per tap", a.SugarPerTap.Kilograms(), a.SugarIn.Kilograms()/50)
	near("sap Brix", float64(a.SapBrix), 2)
	near("syrup Brix", float64(a.SyrupBrix), 66.9)
	near("ratio", a.Ratio, a.Exact)
	if a.Impossible {
		t.Error("called impossible")
	}
}

// A pot on the kitchen stove has a ratio, too: 200 g of sugar in 10 L of sap.
func TestAccountOfAPot(t *testing.T) {
	c20 := units.Celsius(20)
	s := yield.Season{
		Sap:         []sugar.Lot{lotOf(t, 10*units.Liter, 2, c20)},
		Syrup:       []sugar.Lot{lotOf(t, 0.2*units.Liter, 66.9, c20)},
		SapMeasured: gauge, HeldMeasured: gauge, SyrupMeasured: closer,
	}
	if a, err := s.Account(); err != nil || !(math.Abs(a.Ratio-50) <= 1e-9) || !(a.Exact > 40 && a.Exact < 50) {
		t.Errorf("10 L of sap to 0.2 L of syrup: ratio %v, exact %v, %v", a.Ratio, a.Exact, err)
	}
	// As much sugar held back in the pan as is in a deciliter of the syrup counts
	// as a deciliter, and as one less where it was there before.
	held := []sugar.Lot{lotOf(t, 0.1*units.Liter, 66.9, c20)}
	after, before := s, s
	after.Syrup, after.HeldAfter = held, held
	before.HeldBefore = held
	for want, s := range map[float64]yield.Season{50: after, 100: before} {
		if a, err := s.Account(); err != nil || !(math.Abs(a.Ratio-want) <= 1e-9) {
			t.Errorf("ratio %v, %v, want %v", a.Ratio, err, want)
		}
	}
	// Without sap, or without syrup, there is no ratio.
	sapless, syrupless := s, s
	sapless.Sap, sapless.HeldBefore = nil, []sugar.Lot{lotOf(t, 10*units.Liter, 2, c20)}
	syrupless.Syrup = nil
	for name, s := range map[string]yield.Season{"sap": sapless, "syrup": syrupless} {
		if a, err := s.Account(); err != nil || !math.IsNaN(a.Ratio) || !math.IsNaN(a.Exact) {
			t.Errorf("without %s: ratio %v, exact %v, %v", name, a.Ratio, a.Exact, err)
		}
	}
}

// Sap, 500 gal: 38.08 kg of sugar, known to 2 percent and 0.1 in 2 Brix: 0.762
// and 1.904 (1 + 0.0045 x 2) kg. Syrup: 0.5 percent, and 0.2 in 66.9 Brix with the
// density's 1.30: 0.190 and 0.148 kg. Together the root of 2.683^2 and 0.338^2.
func TestAccountUncertainty(t *testing.T) {
	a, err := season(t).Account()
	if err != nil || !(math.Abs(a.SugarIn.Kilograms()-38.07) < 0.01) {
		t.Fatal(a.SugarIn, err)
	}
	s := a.SugarIn.Kilograms()
	sap := s*0.02 + s/0.02*0.001*1.009
	syrup := s*0.005 + s/0.669*0.002*(1+0.0045*66.9)
	if !(math.Abs(a.SugarInLimits.Kilograms()-sap) < 1e-9) || !(math.Abs(a.SugarOutLimits.Kilograms()-syrup) < 1e-9) || a.KeptLimits > 0 {
		t.Errorf("limits %v, %v, %v; want %v, %v and nothing", a.SugarInLimits, a.SugarOutLimits, a.KeptLimits, sap, syrup)
	}
	if want := math.Hypot(sap, syrup); !(math.Abs(a.Uncertainty.Kilograms()-want) < 1e-9) {
		t.Errorf("uncertainty %v, want %v", a.Uncertainty, want)
	}
}

func TestAccountImpossible(t *testing.T) {
	a, err := season(t).Account()
	if err != nil {
		t.Fatal(err)
	}
	extra := a.Uncertainty.Kilograms() / 0.669
	for _, tt := range []struct {
		add  float64 // kg of syrup beyond what the sap holds
		want bool
	}{{0.9 * extra, false}, {1.2 * extra, true}} {
		s := season(t)
		more, err := sugar.NewLotByMass(units.Mass(tt.add), 66.9, units.Celsius(20))
		if err != nil {
			t.Fatal(err)
		}
		s.Syrup = append(s.Syrup, more)
		a, err := s.Account()
		if err != nil || a.Impossible != tt.want || !(a.Lost < 0) {
			t.Errorf("%v kg too much: %v lost, limits %v, impossible %v, %v", tt.add, a.Lost, a.Uncertainty, a.Impossible, err)
		}
	}
}

// What was drawn is the balance itself: sugar is conserved to the last bits.
func TestAccountBalances(t *testing.T) {
	rng := rand.New(rand.NewPCG(6, 6))
	lots := func(lo, hi float64) []sugar.Lot {
		out := make([]sugar.Lot, rng.IntN(5))
		for i := range out {
			out[i] = lotOf(t, units.USGallons(100*rng.Float64()), units.Brix(lo+(hi-lo)*rng.Float64()), units.Celsius(5+90*rng.Float64()))
		}
		return out
	}
	for range 300 {
		s := yield.Season{
			Sap: append(lots(1, 4), lotOf(t, 1, 2, units.Celsius(5))), Syrup: lots(60, 70),
			HeldBefore: lots(5, 60), HeldAfter: lots(5, 60), Chased: lots(1, 20),
			SapMeasured: gauge, HeldMeasured: gauge, SyrupMeasured: closer,
		}
		a, err := s.Account()
		if err != nil {
			t.Fatal(err)
		}
		in, out := 0.0, 0.0
		for _, l := range append(append([]sugar.Lot{}, s.Sap...), s.HeldBefore...) {
			in += l.Sugar().Kilograms()
		}
		for _, l := range append(append(append([]sugar.Lot{}, s.Syrup...), s.HeldAfter...), s.Chased...) {
			out += l.Sugar().Kilograms()
		}
		if !(math.Abs(a.Lost.Kilograms()-(in-out)) <= 1e-12*(in+out)) ||
			!(math.Abs((a.SugarIn - a.SugarOut - a.Kept - a.Lost).Kilograms()) <= 1e-12*(in+out)) {
			t.Errorf("in %v, out %v, lost %v", in, out, a.Lost)
		}
	}
}

func TestSeasonLimits(t *testing.T) {
	for name, change := range map[string]func(*yield.Season){
		"nothing":            func(s *yield.Season) { *s = yield.Season{} },
		"empty sap":          func(s *yield.Season) { s.Sap = []sugar.Lot{{}} },
		"only water":         func(s *yield.Season) { s.Sap = []sugar.Lot{lotOf(t, 1, 0, units.Celsius(5))} },
		"no limits of sap":   func(s *yield.Season) { s.SapMeasured = yield.Measured{} },
		"no limits of syrup": func(s *yield.Season) { s.SyrupMeasured.Brix = 0 },
		"NaN limits":         func(s *yield.Season) { s.SapMeasured.Volume = units.Share(notNum) },
		"infinite limits":    func(s *yield.Season) { s.SapMeasured.Brix = units.Brix(inf) },
		"no limits of held":  func(s *yield.Season) { s.HeldAfter, s.HeldMeasured = s.Sap, yield.Measured{} },
		"negative taps":      func(s *yield.Season) { s.Taps = -1 },
		"too many taps":      func(s *yield.Season) { s.Taps = 100_000_001 },
		"too many days":      func(s *yield.Season) { s.Days = 367 },
	} {
		s := season(t)
		change(&s)
		if a, err := s.Account(); !errors.Is(err, units.ErrRange) || a != (yield.Account{}) {
			t.Errorf("%s: %+v, %v", name, a, err)
		}
	}
	s := season(t)
	s.Syrup, s.Taps, s.Days = nil, 0, 0
	a, err := s.Account()
	if err != nil {
		t.Fatal(err)
	}
	for name, x := range map[string]float64{
		"ratio": a.Ratio, "exact": a.Exact, "per tap": float64(a.SapPerTap), "syrup per tap": float64(a.SyrupPerTap),
		"sugar per tap": float64(a.SugarPerTap), "per day": float64(a.SapPerTapDay), "syrup": float64(a.SyrupBrix),
	} {
		if !math.IsNaN(x) {
			t.Errorf("%s without syrup, taps and days: %v", name, x)
		}
	}
}

func TestMeasuredLimits(t *testing.T) {
	for _, m := range []yield.Measured{{Volume: 0.01, Brix: 0.01}, {Volume: 50, Brix: 5}} {
		s := season(t)
		s.SapMeasured = m
		if _, err := s.Account(); err != nil {
			t.Error(err)
		}
	}
	for _, m := range []yield.Measured{{Volume: 0.0099, Brix: 0.1}, {Volume: 50.1, Brix: 0.1}, {Volume: 2, Brix: 0.0099}, {Volume: 2, Brix: 5.01}, {Volume: -1, Brix: 0.1}, {Volume: 2, Brix: -1}, {Volume: units.Share(inf), Brix: 0.1}, {Volume: 2, Brix: units.Brix(notNum)}} {
		s := season(t)
		s.SapMeasured = m
		if _, err := s.Account(); !errors.Is(err, units.ErrRange) {
			t.Errorf("%v: %v", m, err)
		}
		if _, err := s.Expect(0, 66.9); !errors.Is(err, units.ErrRange) {
			t.Errorf("%v: %v", m, err)
		}
	}
	for _, ok := range []struct{ taps, days int }{{100_000_000, 366}, {0, 0}} {
		s := season(t)
		s.Taps, s.Days = ok.taps, ok.days
		if _, err := s.Account(); err != nil {
			t.Error(err)
		}
	}
}

func TestExpect(t *testing.T) {
	s := season(t)
	all, err := s.Expect(0, 66.9)
	if err != nil || !(math.Abs(float64(all/s.Syrup[0].Volume()-1)) < 1e-12) {
		t.Errorf("%v, %v", all, err)
	}
	half, err := s.Expect(50, 66.9)
	if err != nil || !(math.Abs(float64(half/all)-0.5) < 1e-12) {
		t.Errorf("%v, %v", half, err)
	}
	// What is held before counts, what is held or chased out afterwards does not:
	// of 40 and 8 kg of sugar, 3 and 2 go.
	cold := units.Celsius(20)
	kg := func(mass units.Mass, b units.Brix) []sugar.Lot {
		l, err := sugar.NewLotByMass(mass, b, cold)
		if err != nil {
			t.Fatal(err)
		}
		return []sugar.Lot{l}
	}
	book := yield.Season{Sap: kg(2000, 2), HeldBefore: kg(100, 8), HeldAfter: kg(30, 10), Chased: kg(100, 2),
		SapMeasured: gauge, HeldMeasured: gauge, SyrupMeasured: closer}
	v67, err := book.Expect(10, 66.9)
	if want := kg((40+8-3-2)*0.9/0.669, 66.9)[0].Volume(); err != nil || !(math.Abs(float64(v67/want)-1) < 1e-12) {
		t.Errorf("%v, %v, want %v", v67, err, want)
	}
	for _, ok := range [][2]float64{{0, 60}, {100, 85}} {
		if _, err := s.Expect(units.Share(ok[0]), units.Brix(ok[1])); err != nil {
			t.Error(err)
		}
	}
	for _, bad := range [][2]float64{{-0.1, 66}, {100.1, 66}, {notNum, 66}, {inf, 66}, {0, 59.9}, {0, 85.1}, {0, notNum}, {0, inf}, {0, -inf}} {
		v, err := s.Expect(units.Share(bad[0]), units.Brix(bad[1]))
		refused(t, "Expect", "yield.Season.Expect", float64(v), err)
	}
	s.HeldAfter = append(append([]sugar.Lot{}, s.Sap...), s.Sap...)
	v, err := s.Expect(0, 66.9)
	refused(t, "more held than came in", "yield.Season.Expect", float64(v), err)
	v, err = yield.Season{}.Expect(0, 66.9)
	refused(t, "nothing", "yield.Season.Expect", float64(v), err)
}

func TestAccountAllocatesNothing(t *testing.T) {
	s := season(t)
	if n := testing.AllocsPerRun(100, func() {
		_, _ = s.Account()
		_, _ = s.Expect(5, 66.9)
	}); n > 0 {
		t.Errorf("%v allocations", n)
	}
}

func BenchmarkAccount(b *testing.B) {
	b.ReportAllocs()
	s := season(b)
	for b.Loop() {
		_, _ = s.Account()
	}
}
