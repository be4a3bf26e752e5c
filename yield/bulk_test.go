package yield_test

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/shopspring/decimal"

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

// Shares of boils add up, and a boil is in a jar exactly if the jar is affected
// by it.
func TestTraceProperties(t *testing.T) {
	rng := rand.New(rand.NewPCG(8, 1))
	for range 200 {
		var names []string
		var boils []yield.Boil
		for i := range 1 + rng.IntN(6) {
			boils = append(boils, yield.Boil{ID: fmt.Sprint("boil ", i), Day: march(1 + rng.IntN(4)).Add(time.Duration(rng.IntN(10)) * time.Hour)})
			names = append(names, boils[i].ID)
		}
		var lots []yield.BulkLot
		for i := range 1 + rng.IntN(8) {
			l := yield.BulkLot{ID: fmt.Sprint("lot ", i)}
			for range 1 + rng.IntN(3) {
				l.Parts = append(l.Parts, yield.Part{From: names[rng.IntN(len(names))], Mass: units.Mass(0.1 + rng.Float64())})
			}
			lots = append(lots, l)
			names = append(names, l.ID)
		}
		var packings []yield.Packing
		for i, l := range lots {
			packings = append(packings, yield.Packing{ID: strconv.Itoa(i), Lot: l.ID})
		}
		rng.Shuffle(len(lots), func(i, j int) { lots[i], lots[j] = lots[j], lots[i] })
		b, err := yield.NewBooks(boils, lots, packings)
		if err != nil {
			t.Fatal(err)
		}
		for _, p := range packings {
			tr, err := b.Trace(p.ID)
			if err != nil {
				t.Fatal(err)
			}
			sum := 0.0
			for i, o := range tr.Boils {
				sum += o.Share.Percents()
				if i > 0 && tr.Boils[i-1].Boil.Day.After(o.Boil.Day) {
					t.Errorf("boils out of order: %v", tr.Boils)
				}
				if !slices.ContainsFunc(tr.Days, func(d time.Time) bool { return d.YearDay() == o.Boil.Day.YearDay() }) {
					t.Errorf("day of %v is missing in %v", o.Boil, tr.Days)
				}
			}
			if !(math.Abs(sum-100) < 1e-9) || len(tr.Lots) == 0 || !slices.Contains(tr.Lots, p.Lot) {
				t.Errorf("%v: shares add up to %v, lots %v", p, sum, tr.Lots)
			}
			for i := 1; i < len(tr.Days); i++ {
				if tr.Days[i].YearDay() == tr.Days[i-1].YearDay() {
					t.Errorf("a day twice: %v", tr.Days)
				}
			}
			for _, x := range boils {
				hit, err := b.Affected(x.ID)
				if err != nil {
					t.Fatal(err)
				}
				has := slices.ContainsFunc(tr.Boils, func(o yield.Origin) bool { return o.Boil.ID == x.ID })
				if has != slices.ContainsFunc(hit, func(h yield.Packing) bool { return h.ID == p.ID }) {
					t.Errorf("%v and %v: in the jar %v, affected %v", p, x, has, hit)
				}
			}
		}
	}
}

// Lots that double at every step have 2^60 paths; each is opened once.
func TestTraceManyPaths(t *testing.T) {
	lots := []yield.BulkLot{{ID: "0", Parts: []yield.Part{{From: "boil", Mass: 1}}}}
	for i := 1; i < 60; i++ {
		from := strconv.Itoa(i - 1)
		lots = append(lots, yield.BulkLot{ID: strconv.Itoa(i), Parts: []yield.Part{{From: from, Mass: 1}, {From: from, Mass: 1}}})
	}
	b, err := yield.NewBooks([]yield.Boil{{ID: "boil", Day: march(1)}}, lots, []yield.Packing{{ID: "p", Lot: "59"}})
	if err != nil {
		t.Fatal(err)
	}
	tr, err := b.Trace("p")
	if err != nil || len(tr.Lots) != 60 || len(tr.Boils) != 1 || !(math.Abs(tr.Boils[0].Share.Percents()-100) < 1e-9) {
		t.Errorf("%d lots, %v, %v", len(tr.Lots), tr.Boils, err)
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

func TestCostLimits(t *testing.T) {
	cent, good := dec("0.01"), []yield.Cost{{Item: "wood", Amount: dec("10")}}
	for name, try := range map[string]func() (decimal.Decimal, error){
		"none": func() (decimal.Decimal, error) { return yield.CostPerUSGallon(nil, dec("1"), cent) },
		"negative": func() (decimal.Decimal, error) {
			return yield.CostPerUSGallon([]yield.Cost{{Amount: dec("-1")}}, dec("1"), cent)
		},
		"hostile": func() (decimal.Decimal, error) {
			return yield.CostPerUSGallon([]yield.Cost{{Amount: decimal.New(1, 1_000_000)}}, dec("1"), cent)
		},
		"no syrup":    func() (decimal.Decimal, error) { return yield.CostPerUSGallon(good, dec("0"), cent) },
		"little":      func() (decimal.Decimal, error) { return yield.CostPerUSGallon(good, dec("0.0009"), cent) },
		"much":        func() (decimal.Decimal, error) { return yield.CostPerUSGallon(good, dec("10000000.1"), cent) },
		"hostile gal": func() (decimal.Decimal, error) { return yield.CostPerUSGallon(good, decimal.New(1, -1_000_000), cent) },
		"no step":     func() (decimal.Decimal, error) { return yield.CostPerUSGallon(good, dec("1"), decimal.Zero) },
		"below step":  func() (decimal.Decimal, error) { return yield.CostPerUSGallon(good, dec("1"), dec("-0.01")) },
	} {
		if c, err := try(); !errors.Is(err, units.ErrRange) || !c.IsZero() {
			t.Errorf("%s: %v, %v", name, c, err)
		}
	}
	if c, err := yield.CostPerUSGallon(good, dec("3"), cent); err != nil || !c.Equal(dec("3.33")) {
		t.Errorf("%v, %v", c, err)
	}
	if c, err := yield.CostPerUSGallon([]yield.Cost{{Amount: dec("0.125")}}, dec("1"), cent); err != nil || !c.Equal(dec("0.13")) {
		t.Errorf("half a cent: %v, %v", c, err)
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

// Syrup repacked again and again: what it takes to find the jars must grow with
// the records and not with their square. Counted in bytes allocated.
func TestAffectedGrowth(t *testing.T) {
	bytes := func(n int) float64 {
		boils := []yield.Boil{{ID: "boil"}}
		lots := []yield.BulkLot{{ID: "0", Parts: []yield.Part{{From: "boil", Mass: 1}}}}
		packings := []yield.Packing{{ID: "0", Lot: "0"}}
		for i := 1; i < n; i++ {
			lots = append(lots, yield.BulkLot{ID: strconv.Itoa(i), Parts: []yield.Part{{From: strconv.Itoa(i - 1), Mass: 1}}})
			packings = append(packings, yield.Packing{ID: strconv.Itoa(i), Lot: strconv.Itoa(i)})
		}
		books, err := yield.NewBooks(boils, lots, packings)
		if err != nil {
			t.Fatal(err)
		}
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		if hit, err := books.Affected("boil"); err != nil || len(hit) != n {
			t.Fatalf("%d packings of %d, %v", len(hit), n, err)
		}
		runtime.ReadMemStats(&after)
		return float64(after.TotalAlloc - before.TotalAlloc)
	}
	if a, b := bytes(250), bytes(1000); b > 8*a {
		t.Errorf("%v bytes for 250 repackings, %v for 1000", a, b)
	}
}

// A name that is no name is not repeated in full, whatever is wrong with the lot.
func TestLongNames(t *testing.T) {
	long := strings.Repeat("x", 100_000)
	_, err := yield.NewBooks([]yield.Boil{{ID: "b"}}, []yield.BulkLot{{ID: long, Parts: []yield.Part{{From: "b", Mass: -1}}}}, nil)
	if !errors.Is(err, units.ErrRange) || len(err.Error()) > 1000 {
		t.Errorf("%.200v", err)
	}
}

// Days of boiling are told apart by year, month and day.
func TestTraceDays(t *testing.T) {
	date := func(y int, m time.Month, d, hour int) time.Time { return time.Date(y, m, d, hour, 0, 0, 0, time.UTC) }
	days := []time.Time{date(2030, 3, 9, 18), date(2031, 2, 9, 18), date(2031, 3, 9, 6), date(2031, 3, 9, 18), date(2031, 3, 10, 18)}
	lot := yield.BulkLot{ID: "lot"}
	var boils []yield.Boil
	for i, day := range days {
		id := string(rune('a' + i))
		boils = append(boils, yield.Boil{ID: id, Day: day})
		lot.Parts = append(lot.Parts, yield.Part{From: id, Mass: units.Kilogram})
	}
	b, err := yield.NewBooks(boils, []yield.BulkLot{lot}, []yield.Packing{{ID: "p", Lot: "lot", Day: date(2031, 4, 1, 0)}})
	if err != nil {
		t.Fatal(err)
	}
	// Two boils of 9 March 2031 are of one day.
	if tr, err := b.Trace("p"); err != nil || len(tr.Boils) != 5 || len(tr.Days) != 4 {
		t.Errorf("%d boils on days %v, %v", len(tr.Boils), tr.Days, err)
	}
}
