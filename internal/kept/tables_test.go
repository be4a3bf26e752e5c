package kept_test

import (
	"io"
	"os"
	"path/filepath"
	"slices"
	"testing"
	"time"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// A table is a CSV file that the library reads, and what it must find there.
type table struct {
	file string
	read func(io.Reader) (any, error)
	want any
}

// read serves a reader that gives one thing.
func read[T any](f func(io.Reader) (T, error)) func(io.Reader) (any, error) {
	return func(r io.Reader) (any, error) { return f(r) }
}

// tables lists a file of every kind. The data is invented; what is wanted is
// typed from the file.
var tables = []table{
	{"weather-days.csv", read(weather), []tapping.Day{
		{Date: date(1), Min: units.Celsius(-6.125), Max: units.Celsius(4.5)},
		{Date: date(3), Min: units.Celsius(-2), Max: units.Celsius(7.25)},
	}},
	{"weather-hours.csv", read(weather), []tapping.Day{
		// 24 readings of the first day: 23 F at 05:00 and 50 F at 15:00. The second
		// has one, and is not known.
		{Date: date(1), Min: units.Fahrenheit(23), Max: units.Fahrenheit(50)},
	}},
	{"stand.csv", read(tapping.ReadStand), []tapping.Tree{
		{Label: "A1", Stems: []tapping.Trunk{trunk(16, tapping.SugarMaple, tapping.Healthy), trunk(10.5, tapping.SugarMaple, tapping.Slow)}},
		{Label: "B, by the wall", Stems: []tapping.Trunk{trunk(12, tapping.RedMaple, tapping.NotJudged)}},
	}},
}

func date(day int) time.Time { return time.Date(2024, time.March, day, 0, 0, 0, 0, time.UTC) }

func weather(r io.Reader) ([]tapping.Day, error) {
	w, err := tapping.ReadWeather(r)
	return w.Days(), err
}

func trunk(inches float64, s tapping.Species, v tapping.Vigor) tapping.Trunk {
	t, err := tapping.NewTrunk(units.Inches(inches), s, v)
	if err != nil {
		panic(err)
	}
	return t
}

// Every table that a version kept is read, and one of each kind is kept.
func TestEveryTableIsRead(t *testing.T) {
	for _, version := range versions(t) {
		files, err := filepath.Glob(filepath.Join(version, "*.csv"))
		if err != nil {
			t.Fatal(err)
		}
		for _, path := range files {
			i := slices.IndexFunc(tables, func(t table) bool { return t.file == filepath.Base(path) })
			if i < 0 {
				t.Errorf("%s is on no list: what a version read is read for good", path)
				continue
			}
			f, err := os.Open(path)
			if err != nil {
				t.Fatal(err)
			}
			got, err := tables[i].read(f)
			f.Close()
			if err != nil {
				t.Errorf("%s: %v", path, err)
			} else if d := same(tables[i].want, got); d != "" {
				t.Errorf("%s is read otherwise (- wanted, + read):\n%s", path, d)
			}
		}
	}
	for _, table := range tables {
		if kept, err := filepath.Glob(filepath.Join("v*", table.file)); err != nil || len(kept) == 0 {
			t.Errorf("no version kept a %s: %v", table.file, err)
		}
	}
}
