package main

import (
	"fmt"
	"iter"
	"math"
	"math/rand/v2"
	"runtime"
	"slices"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
)

const spring = 2034

// none is what nobody told.
var none = math.NaN()

// invent gives the days of an invented season of 60 days and 40 tanks, and adds up
// the volume of the sap as measured.
func invent(rows int, sap *units.Volume) iter.Seq[folder.Day] {
	return func(yield func(folder.Day) bool) {
		draw := rand.New(rand.NewPCG(20, 34))
		for i := range rows {
			d := gathering(i*60/rows, fmt.Sprintf("line %d", draw.IntN(40)), float64(50+draw.IntN(600))/10)
			d.Sugar, d.ReadAt, d.Line = units.Brix(1.5+draw.Float64()*1.5), units.Fahrenheit(float64(34+draw.IntN(20))), i+2
			*sap += d.Sap
			if !yield(d) {
				return
			}
		}
	}
}

// gathering is a row with sap of 2 Brix and nothing else, so many days into February.
func gathering(day int, tank string, gallons float64) folder.Day {
	d := folder.Day{Date: time.Date(spring, 2, 1+day, 0, 0, 0, 0, time.UTC), Tank: tank, Sap: units.USGallons(gallons), Sugar: 2, ReadAt: units.Fahrenheit(38), Line: 2}
	d.Boiled, d.Syrup, d.Wood = units.Volume(none), units.Volume(none), units.Volume(none)
	return d
}

// newSeason is a book that nothing was read into.
func newSeason() *book {
	s := &setup{Settings: folder.Settings{SapHydrometer: units.Fahrenheit(38), SyrupHydrometer: units.Fahrenheit(60), Target: 66.9, Fuel: "wood", Wood: "Sugar maple", Moisture: 25}}
	b := newBook(s, new(cli.Flags))
	b.house = new(folder.House)
	return b
}

// nothing is a file without rows.
func nothing[Row any](func(Row) bool) {}

// memory returns what of the heap lives. What the heap takes from the machine is not
// asked for: it grows with the garbage that waits, and that waits longer where the
// machine is busy.
func memory() (live uint64) {
	var m runtime.MemStats
	runtime.GC()
	runtime.ReadMemStats(&m)
	return m.HeapAlloc
}

// A million gatherings are counted to the last one, in no more memory than the totals
// by day and tank, and the first rows that are looked at again, 100,000 of some 64
// bytes.
func TestMillion(t *testing.T) {
	if testing.Short() {
		t.Skip("a million rows")
	}
	const rows = million
	live, most, n := memory(), uint64(0), 0
	var sap units.Volume
	watched := func(yield func(folder.Day) bool) {
		for d := range invent(rows, &sap) {
			if n++; n%(rows/20) == 0 {
				most = max(most, memory())
			}
			if !yield(d) {
				return
			}
		}
	}
	b := newSeason()
	if err := b.read(watched, nothing[folder.Batch], nothing[folder.Jars], nothing[folder.Blend]); err != nil {
		t.Fatal(err)
	}
	if grown := int64(most) - int64(live); most == 0 || grown > 12<<20 {
		t.Errorf("%d MB live while the rows come", grown>>20)
	}
	if grown := int64(memory()) - int64(live); grown > 1<<20 {
		t.Errorf("%d KB are kept", grown>>10)
	}
	counted, volume := 0, 0.0
	for i := range b.days {
		counted += b.days[i].sap.rows
		lot, err := b.days[i].sap.lot()
		if err != nil {
			t.Fatal(err)
		}
		volume += lot.Volume().CubicMeters()
	}
	if counted != rows || len(b.sources) != 40 {
		t.Errorf("%d rows, %d tanks", counted, len(b.sources))
	}
	// Cold sap fills up to 0.2 percent less than at 68 F.
	if r := volume / sap.CubicMeters(); math.Abs(r-1.001) > 0.001 {
		t.Errorf("volume is %v of what was written", r)
	}
}

// Rows that are all wrong are told at once, the first 20, and the reading ends.
func TestAllWrong(t *testing.T) {
	n := 0
	rows := func(yield func(folder.Day) bool) {
		for ; n < 50_000; n++ {
			d := gathering(0, "line", 10)
			d.Sugar = 66
			if !yield(d) {
				return
			}
		}
	}
	err := newSeason().read(rows, nothing[folder.Batch], nothing[folder.Jars], nothing[folder.Blend])
	if err == nil || strings.Count(err.Error(), "days.csv:2: column sugar: true strength") != mostWrong || n > mostWrong {
		t.Errorf("%d rows, %v", n, err)
	}
}

// What is kept is bounded: a column of notes taken for tanks is refused.
func TestTooMany(t *testing.T) {
	for what, c := range map[string]struct {
		most int
		want string
	}{
		"tanks":   {mostSources, "days.csv:9: column tank: more than 500 names"},
		"batches": {mostLots, "batches.csv:9: column batch: more than 5000 batches"},
		"sizes":   {mostSizes, "bottled.csv:9: column size: more than 100 sizes"},
	} {
		t.Run(what, func(t *testing.T) {
			read := func(rows int) error {
				var days []folder.Day
				var batches []folder.Batch
				var bottled []folder.Jars
				for i := range rows {
					on, name := gathering(20, "line", 10), fmt.Sprint("number ", i)
					switch on.Line = 9; what {
					case "tanks":
						on.Tank = name
						days = append(days, on)
					case "batches":
						batches = append(batches, folder.Batch{Name: name, Date: on.Date, Volume: units.Liter, Weight: units.Mass(none), Reading: 66.9, Cup: label, Temp: label, Line: 9})
					case "sizes":
						bottled = append(bottled, folder.Jars{Batch: "A", Date: on.Date, Size: units.Milliliters(float64(10 + i)), Count: 1, Line: 9})
					}
				}
				return newSeason().read(slices.Values(days), slices.Values(batches), slices.Values(bottled), nothing[folder.Blend])
			}
			if err := read(c.most); err != nil {
				t.Errorf("%d are refused: %v", c.most, err)
			}
			if err := read(c.most + 1); err == nil || !strings.Contains(err.Error(), c.want) {
				t.Errorf("got %v, want %q", err, c.want)
			}
		})
	}
}

func BenchmarkGatherings(b *testing.B) {
	const rows = 200_000
	b.ReportAllocs()
	for b.Loop() {
		var sap units.Volume
		if err := newSeason().read(invent(rows, &sap), nothing[folder.Batch], nothing[folder.Jars], nothing[folder.Blend]); err != nil {
			b.Fatal(err)
		}
	}
	b.ReportMetric(rows*float64(b.N)/b.Elapsed().Seconds(), "rows/s")
}
