package yield_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"runtime"
	"slices"
	"strconv"
	"testing"
	"time"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

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
