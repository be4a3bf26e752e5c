package yield_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

func march(day int) time.Time { return time.Date(2031, 3, day, 0, 0, 0, 0, time.UTC) }

func TestBooksRefuse(t *testing.T) {
	boil := func(id string) yield.Boil { return yield.Boil{ID: id, Day: march(1)} }
	made := func(id string, from ...string) yield.BulkLot {
		l := yield.BulkLot{ID: id}
		for _, f := range from {
			l.Parts = append(l.Parts, yield.Part{From: f, Mass: 1})
		}
		return l
	}
	heavy := func(m float64) yield.BulkLot {
		return yield.BulkLot{ID: "A", Parts: []yield.Part{{From: "1", Mass: units.Mass(m)}}}
	}
	for name, tt := range map[string]struct {
		boils    []yield.Boil
		lots     []yield.BulkLot
		packings []yield.Packing
		want     error
	}{
		"unnamed boil":    {[]yield.Boil{boil("")}, nil, nil, yield.ErrNoName},
		"unnamed lot":     {[]yield.Boil{boil("1")}, []yield.BulkLot{made("", "1")}, nil, yield.ErrNoName},
		"unnamed packing": {[]yield.Boil{boil("1")}, []yield.BulkLot{made("A", "1")}, []yield.Packing{{Lot: "A"}}, yield.ErrNoName},
		"two boils":       {[]yield.Boil{boil("1"), boil("1")}, nil, nil, yield.ErrDuplicateID},
		"boil and lot":    {[]yield.Boil{boil("1")}, []yield.BulkLot{made("1", "1")}, nil, yield.ErrDuplicateID},
		"two packings":    {[]yield.Boil{boil("1")}, []yield.BulkLot{made("A", "1")}, []yield.Packing{{ID: "p", Lot: "A"}, {ID: "p", Lot: "A"}}, yield.ErrDuplicateID},
		"unknown part":    {nil, []yield.BulkLot{made("A", "1")}, nil, yield.ErrUnknownID},
		"unknown lot":     {[]yield.Boil{boil("1")}, nil, []yield.Packing{{ID: "p", Lot: "A"}}, yield.ErrUnknownID},
		"packed a boil":   {[]yield.Boil{boil("1")}, nil, []yield.Packing{{ID: "p", Lot: "1"}}, yield.ErrUnknownID},
		"of nothing":      {nil, []yield.BulkLot{made("A")}, nil, yield.ErrNothing},
		"of itself":       {nil, []yield.BulkLot{made("A", "A")}, nil, yield.ErrCircular},
		"in a circle":     {[]yield.Boil{boil("1")}, []yield.BulkLot{made("A", "1", "C"), made("B", "A", "A"), made("C", "B")}, nil, yield.ErrCircular},
		"no mass":         {[]yield.Boil{boil("1")}, []yield.BulkLot{heavy(0)}, nil, units.ErrRange},
		"negative mass":   {[]yield.Boil{boil("1")}, []yield.BulkLot{heavy(-1)}, nil, units.ErrRange},
		"NaN mass":        {[]yield.Boil{boil("1")}, []yield.BulkLot{heavy(notNum)}, nil, units.ErrRange},
		"infinite mass":   {[]yield.Boil{boil("1")}, []yield.BulkLot{heavy(inf)}, nil, units.ErrRange},
	} {
		b, err := yield.NewBooks(tt.boils, tt.lots, tt.packings)
		if b != nil || !errors.Is(err, tt.want) {
			t.Errorf("%s: %v, %v; want %v", name, b, err, tt.want)
		}
	}
	for name, b := range map[string]*yield.Books{"nil": nil, "zero": {}} {
		if tr, err := b.Trace("p"); !errors.Is(err, yield.ErrUnknownID) || tr.Boils != nil {
			t.Errorf("%s books: %v, %v", name, tr, err)
		}
		if p, err := b.Affected("p"); !errors.Is(err, yield.ErrUnknownID) || p != nil {
			t.Errorf("%s books: %v, %v", name, p, err)
		}
	}
}

func TestBooksKeepTheirOwn(t *testing.T) {
	parts := []yield.Part{{From: "1", Mass: 1}}
	b, err := yield.NewBooks([]yield.Boil{{ID: "1"}}, []yield.BulkLot{{ID: "A", Parts: parts}}, []yield.Packing{{ID: "p", Lot: "A"}})
	if err != nil {
		t.Fatal(err)
	}
	parts[0].From = "elsewhere"
	if tr, err := b.Trace("p"); err != nil || len(tr.Boils) != 1 || tr.Boils[0].Boil.ID != "1" {
		t.Errorf("%v, %v", tr, err)
	}
}

func TestRepacked(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 3))
	for range 300 {
		held := lotOf(t, units.USGallons(10+rng.Float64()), units.Brix(64+4*rng.Float64()), units.Celsius(20))
		packed := lotOf(t, units.USGallons(9+rng.Float64()), units.Brix(64+4*rng.Float64()), units.Celsius(20))
		r, err := yield.Repacked(held, packed)
		if err != nil {
			t.Fatal(err)
		}
		mass := packed.Mass() + r.Lost + r.WaterLost
		sweet := packed.Sugar() + packed.Brix().Sugar(r.Lost)
		if !(math.Abs(float64(mass/held.Mass())-1) < 1e-12) || !(math.Abs(float64(sweet/held.Sugar())-1) < 1e-12) {
			t.Errorf("%v of %v came out", mass, held.Mass())
		}
	}
	for kg, ok := range map[float64]bool{1.0001e-6: true, 0.9999e-6: false} {
		crumb, err := sugar.NewLotByMass(units.Mass(2*kg), 50, units.Celsius(20))
		if err != nil {
			t.Fatal(err)
		}
		if _, err := yield.Repacked(crumb, crumb); (err == nil) != ok {
			t.Errorf("%v kg of sugar: %v", kg, err)
		}
	}
	some := lotOf(t, 1, 66, units.Celsius(20))
	for _, pair := range [][2]sugar.Lot{{{}, some}, {some, {}}, {lotOf(t, 1, 0, units.Celsius(20)), some}} {
		if r, err := yield.Repacked(pair[0], pair[1]); !errors.Is(err, units.ErrRange) || r != (yield.Repacking{}) {
			t.Errorf("%v, %v", r, err)
		}
	}
}

// Records come from users' files.
func FuzzBooks(f *testing.F) {
	f.Add("1", "A", "1", "p", "A", 1.0)
	f.Add("A", "A", "A", "A", "A", math.Inf(1))
	f.Add("", "B", "B", "p", "C", -1.0)
	f.Fuzz(func(t *testing.T, boil, lot, from, packing, packed string, mass float64) {
		b, err := yield.NewBooks(
			[]yield.Boil{{ID: boil}},
			[]yield.BulkLot{{ID: lot, Parts: []yield.Part{{From: from, Mass: units.Mass(mass)}}}},
			[]yield.Packing{{ID: packing, Lot: packed}})
		if err != nil {
			var e *yield.TraceError
			if b != nil || !errors.As(err, &e) && !errors.Is(err, units.ErrRange) {
				t.Errorf("%v, %v", b, err)
			}
			return
		}
		if tr, err := b.Trace(packing); err != nil || len(tr.Boils) != 1 {
			t.Errorf("%v, %v", tr, err)
		}
	})
}

// A name that is no name is not repeated in full, whatever is wrong with the lot.
func TestLongNames(t *testing.T) {
	long := strings.Repeat("x", 100_000)
	_, err := yield.NewBooks([]yield.Boil{{ID: "b"}}, []yield.BulkLot{{ID: long, Parts: []yield.Part{{From: "b", Mass: -1}}}}, nil)
	if !errors.Is(err, units.ErrRange) || len(err.Error()) > 1000 {
		t.Errorf("%.200v", err)
	}
}
