package pan

import (
	"errors"
	"math/rand/v2"
	"slices"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// evenings lists the days with a fire.
func evenings(p Plan) (list []int) {
	for i, e := range p.Evenings {
		if e.Hours > 0 {
			list = append(list, i)
		}
	}
	return list
}

func TestFewestByHand(t *testing.T) {
	b := sugarhouse() // 300 gallons of tanks, a keep of two days
	// 43.389 gallons of 2 Brix and 40 F take 404,680 Btu: an evening boils 109.8.
	for _, tc := range []struct {
		name  string
		start []Standing
		days  []Gathering
		want  []int
	}{
		{"90 gallons wait for their last evening", nil, []Gathering{gathered(30), gathered(30), gathered(30)}, []int{2}},
		// 50 gallons of the second day are left, which keep to the fourth. On the third
		// evening as much would be left, and more would have waited.
		{"160 gallons: one now, and the rest keeps", nil, []Gathering{gathered(80), gathered(80), gathered(0)}, []int{1}},
		{"160 gallons of the first day take two", nil, []Gathering{gathered(160), gathered(0), gathered(0)}, []int{0, 1}},
		{"what need not be boiled yet is left", nil, []Gathering{gathered(0), gathered(50)}, nil},
		{"old sap cannot wait", []Standing{{Gathering: gathered(20), Age: 48 * time.Hour}}, []Gathering{gathered(0), gathered(0)}, []int{0}},
		{"a full tank must have room", []Standing{{Gathering: gathered(250)}}, []Gathering{gathered(0), gathered(100), gathered(0)}, []int{0, 1, 2}},
	} {
		p, err := b.Fewest(tc.start, tc.days)
		if err != nil {
			t.Fatal(err)
		}
		got := evenings(p)
		same := len(got) == len(tc.want)
		for i := range got {
			same = same && got[i] == tc.want[i]
		}
		if !same {
			t.Errorf("%s: fires on %v, want %v", tc.name, got, tc.want)
		}
	}
	for _, n := range []int{0, 11} {
		var e *units.RangeError
		if _, err := b.Fewest(nil, make([]Gathering, n)); !errors.As(err, &e) || e.Arg != "days" {
			t.Errorf("%d days: %v", n, err)
		}
	}
}

// Of random weeks: no more spills and no more is overdue than with a fire on every
// evening, the sap adds up, and not one of the evenings could be left out.
func TestFewestRandom(t *testing.T) {
	g := rand.New(rand.NewPCG(18, 5))
	fewer := 0
	for range 60 {
		b := sugarhouse()
		b.Keep = time.Duration(g.IntN(4)) * 24 * time.Hour
		var days []Gathering
		sap := 0.0
		for range 7 {
			n := max(0, 120*g.Float64()-30)
			sap += n
			days = append(days, gathered(n))
		}
		every, err := b.PlanFrom(nil, days...)
		if err != nil {
			t.Fatal(err)
		}
		few, err := b.Fewest(nil, days)
		if err != nil {
			t.Fatal(err)
		}
		s0, o0, _ := every.toll()
		s1, o1, _ := few.toll()
		if s1 > s0+1e-9 || o1 > o0+1e-9 || few.fires() > every.fires() {
			t.Errorf("spilled %v and %v, overdue %v and %v on %v", s0, s1, o0, o1, evenings(few))
		}
		h, err := b.ready("test", nil, days)
		if err != nil {
			t.Fatal(err)
		}
		lit := evenings(few)
		for _, out := range lit {
			less, err := b.planOn("test", h, nil, days, func(i int) bool { return i != out && slices.Contains(lit, i) })
			if s, o, _ := less.toll(); err != nil || s <= s0+1e-9 && o <= o0+1e-9 {
				t.Errorf("of the fires on %v that on %d is not needed, %v", lit, out, err)
			}
		}
		boiled := few.Spilled + few.LeftAfter
		for _, e := range few.Evenings {
			boiled += e.Boiled
		}
		if !near(boiled.USGallons(), sap, 1e-9) {
			t.Errorf("%v gal of %v", boiled.USGallons(), sap)
		}
		if few.fires() < every.fires() {
			fewer++
		}
	}
	if fewer < 20 {
		t.Errorf("only %d weeks of 60 with fewer evenings", fewer)
	}
}

func BenchmarkFewest(bm *testing.B) {
	b := sugarhouse()
	days := make([]Gathering, 10)
	for i := range days {
		days[i] = gathered(90)
	}
	for bm.Loop() {
		if _, err := b.Fewest(nil, days); err != nil {
			bm.Fatal(err)
		}
	}
}
