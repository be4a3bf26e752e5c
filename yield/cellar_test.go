package yield_test

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// By hand. 30 kg of 66 Brix are drawn as A and 10 kg of 68 as B. 6 kg of A are
// bottled; 8 kg of the 24 left go into B, which then holds 18 kg, 8/18 of A and 10/18
// of B, with 8 x 0.66 + 10 x 0.68 = 12.08 kg of sugar. 9 kg of it are bottled, and 3
// kg of A are thrown out: left are 13 kg of A and 9 kg in B.
func TestCellarByHand(t *testing.T) {
	c, books, err := yield.KeepCellar([]yield.Move{
		{Kind: yield.Drawn, Day: march(3), Into: "A", Mass: 30, Brix: 66},
		{Kind: yield.Drawn, Day: march(9), Into: "B", Mass: 10, Brix: 68},
		{Kind: yield.Bottled, Day: march(10), From: "A", Into: "pints", Mass: 6},
		{Kind: yield.Poured, Day: march(11), From: "A", Into: "B", Mass: 8},
		{Kind: yield.Bottled, Day: march(12), From: "B", Into: "quarts", Mass: 9},
		{Kind: yield.Thrown, Day: march(13), From: "A", Mass: 3},
	})
	if err != nil {
		t.Fatal(err)
	}
	for name, tt := range map[string]struct{ got, want units.Mass }{
		"drawn": {c.Drawn.Syrup, 40}, "sugar drawn": {c.Drawn.Sugar, 26.6}, "bottled": {c.Bottled.Syrup, 15}, "sugar bottled": {c.Bottled.Sugar, 3.96 + 6.04},
		"thrown": {c.Thrown.Sugar, 1.98}, "left of A": {c.Held[0].Stage.Syrup, 13}, "sugar left in B": {c.Held[1].Stage.Sugar, 6.04}, "over": {c.Over.Syrup, 0},
	} {
		if !(math.Abs(float64(tt.got-tt.want)) < 1e-12) {
			t.Errorf("%s: %v, not %v", name, tt.got, tt.want)
		}
	}
	tr, err := books.Trace("quarts")
	if err != nil || len(tr.Boils) != 2 || tr.Boils[0].Boil.ID != "A" {
		t.Fatalf("%v, %v", tr, err)
	}
	for i, want := range []float64{800. / 18, 1000. / 18} {
		if got := tr.Boils[i].Share.Percents(); !(math.Abs(got-want) < 1e-9) {
			t.Errorf("%v: %v, not %v", tr.Boils[i].Boil.ID, got, want)
		}
	}
	hit, err := books.Recall("A")
	if err != nil || len(hit) != 2 || hit[0].Packing.ID != "pints" || !(math.Abs(hit[0].Share.Percents()-100) < 1e-9) || !(math.Abs(hit[1].Share.Percents()-800./18) < 1e-9) {
		t.Errorf("%v, %v", hit, err)
	}
	if hit, err := books.Recall("B"); err != nil || len(hit) != 1 || hit[0].Packing.ID != "quarts" {
		t.Errorf("%v, %v", hit, err)
	}
	if _, err := books.Recall("C"); !errors.Is(err, yield.ErrUnknownID) {
		t.Error(err)
	}
}

// More was bottled than a batch was said to hold: the jars are traced all the same,
// and what was over is told. 5 kg drawn and 5.5 bottled of 60 Brix: 0.5 kg over with
// 0.3 of sugar.
func TestCellarOver(t *testing.T) {
	c, books, err := yield.KeepCellar([]yield.Move{
		{Kind: yield.Drawn, Day: march(3), Into: "A", Mass: 5, Brix: 60},
		{Kind: yield.Bottled, Day: march(4), From: "A", Into: "1", Mass: 5.25},
		{Kind: yield.Bottled, Day: march(4), From: "A", Into: "2", Mass: 0.25},
	})
	if err != nil || !(math.Abs(float64(c.Held[0].Over.Syrup-0.5)) < 1e-12) || !(math.Abs(float64(c.Over.Sugar-0.3)) < 1e-12) || c.Left.Syrup != 0 {
		t.Fatalf("%+v, %v", c, err)
	}
	if hit, err := books.Recall("A"); err != nil || len(hit) != 2 {
		t.Errorf("%v, %v", hit, err)
	}
}

// Whatever is drawn, poured, bottled and thrown: syrup and sugar close to 1e-12 of
// what was drawn, the sugar of the boils in the jars is that of the runs, and a
// recall finds in each run the share that its trace tells.
func TestCellarCloses(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 5))
	for range 200 {
		var moves []yield.Move
		var names []string
		strength := map[string]units.Brix{}
		for i := range 2 + rng.IntN(40) {
			m := yield.Move{Kind: yield.Drawn, Day: march(1 + i%30), Mass: units.Mass(0.5 + 20*rng.Float64())}
			if len(names) > 0 {
				m.Kind, m.From = yield.MoveKinds()[rng.IntN(4)], names[rng.IntN(len(names))]
			}
			switch m.Kind {
			case yield.Drawn:
				m.From, m.Into, m.Brix = "", fmt.Sprint("batch ", i), units.Brix(60+8*rng.Float64())
				strength[m.Into] = m.Brix
				names = append(names, m.Into)
			case yield.Poured:
				m.Into = fmt.Sprint("drum ", rng.IntN(3))
				if m.Into == m.From {
					continue
				}
				names = append(names, m.Into)
			case yield.Bottled:
				m.Into = fmt.Sprint("run ", i)
			}
			moves = append(moves, m)
		}
		c, books, err := yield.KeepCellar(moves)
		if err != nil {
			t.Fatal(err)
		}
		near := func(what string, got, want units.Mass) {
			t.Helper()
			if !(math.Abs(float64(got-want)) <= 1e-12*float64(c.Drawn.Syrup+c.Over.Syrup)) {
				t.Errorf("%s: %v, not %v", what, got, want)
			}
		}
		near("syrup", c.Drawn.Syrup+c.Over.Syrup, c.Bottled.Syrup+c.Thrown.Syrup+c.Left.Syrup)
		near("sugar", c.Drawn.Sugar+c.Over.Sugar, c.Bottled.Sugar+c.Thrown.Sugar+c.Left.Sugar)
		for _, run := range c.Runs {
			tr, err := books.Trace(run.Packing.ID)
			if err != nil {
				t.Fatal(err)
			}
			sugar := units.Mass(0)
			for _, o := range tr.Boils {
				sugar += strength[o.Boil.ID].Sugar(units.Mass(o.Share.Fraction()) * run.Stage.Syrup)
				hit, err := books.Recall(o.Boil.ID)
				if err != nil {
					t.Fatal(err)
				}
				found := false
				for _, h := range hit {
					if h.Packing.ID == run.Packing.ID {
						found = math.Abs(h.Share.Fraction()-o.Share.Fraction()) < 1e-12
					}
				}
				if !found {
					t.Errorf("%s is %v of %s, but not in the recall: %v", o.Boil.ID, o.Share, run.Packing.ID, hit)
				}
			}
			near("sugar of a run", sugar, run.Stage.Sugar)
		}
	}
}

func TestCellarRefuses(t *testing.T) {
	drawn := yield.Move{Kind: yield.Drawn, Into: "A", Mass: 10, Brix: 66}
	for name, tt := range map[string]struct {
		m    yield.Move
		want error
	}{
		"no kind":        {yield.Move{From: "A", Into: "x", Mass: 1}, units.ErrRange},
		"unknown kind":   {yield.Move{Kind: 5, From: "A", Into: "x", Mass: 1}, units.ErrRange},
		"unknown vessel": {yield.Move{Kind: yield.Thrown, From: "B", Mass: 1}, yield.ErrUnknownID},
		"into itself":    {yield.Move{Kind: yield.Poured, From: "A", Into: "A", Mass: 1}, yield.ErrCircular},
		"into nothing":   {yield.Move{Kind: yield.Poured, From: "A", Mass: 1}, yield.ErrNoName},
		"drawn twice":    {drawn, yield.ErrDuplicateID},
		"no name":        {yield.Move{Kind: yield.Bottled, From: "A", Mass: 1}, yield.ErrNoName},
		"no vessel":      {yield.Move{Kind: yield.Drawn, Mass: 1, Brix: 66}, yield.ErrNoName},
		"nothing":        {yield.Move{Kind: yield.Thrown, From: "A"}, units.ErrRange},
		"NaN":            {yield.Move{Kind: yield.Thrown, From: "A", Mass: units.Mass(notNum)}, units.ErrRange},
		"NaN Brix":       {yield.Move{Kind: yield.Drawn, Into: "B", Mass: 1, Brix: units.Brix(notNum)}, units.ErrRange},
	} {
		c, books, err := yield.KeepCellar([]yield.Move{drawn, tt.m})
		if !errors.Is(err, tt.want) || books != nil || c.Held != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	// Names that the books make give way to names that were given.
	if _, _, err := yield.KeepCellar([]yield.Move{drawn, {Kind: yield.Drawn, Into: "A as drawn", Mass: 1, Brix: 66}, {Kind: yield.Poured, From: "A", Into: "A as drawn", Mass: 1}}); err != nil {
		t.Error(err)
	}
}

// By hand: 0.7 lb of tare and 11.7759 gross are 11.0759 lb on the scale and 11.0843
// lb of syrup, a US gallon of 66.9 Brix (the package comment of packing).
func TestWeighed(t *testing.T) {
	lot, err := yield.Weighed(units.Pounds(11.7759), units.Pounds(0.7), 66.9, units.Celsius(20))
	if err != nil || !(math.Abs(lot.Mass().Pounds()-11.0843) < 5e-5) {
		t.Errorf("%v lb, %v", lot.Mass().Pounds(), err)
	}
	for name, try := range map[string]func() error{
		"light":    func() error { _, err := yield.Weighed(1, 2, 66, units.Celsius(20)); return err },
		"negative": func() error { _, err := yield.Weighed(1, -1, 66, units.Celsius(20)); return err },
		"NaN":      func() error { _, err := yield.Weighed(units.Mass(notNum), 1, 66, units.Celsius(20)); return err },
		"hot":      func() error { _, err := yield.Weighed(2, 1, 66, units.Celsius(120)); return err },
	} {
		if !errors.Is(try(), units.ErrRange) {
			t.Errorf("%s: %v", name, try())
		}
	}
}
