package folder

import (
	"cmp"
	"fmt"
	"io"
	"maps"
	"slices"
	"strconv"
	"strings"
	"time"

	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield/packing"
)

// Taps returns the taps of a year: as the settings say for that of the last date, else
// as many holes as were drilled, else as the past seasons tell, else for the last year
// with days as the settings say, which are hardly of an older one. It is 0 if nothing
// tells.
func (h *House) Taps(year int) int {
	if year == h.lastYear && h.Settings.Taps > 0 {
		return h.Settings.Taps
	}
	if n := h.holes()[year]; n > 0 && !h.tooFew(n, year) {
		return n
	}
	for _, s := range h.Seasons {
		if s.Year == year {
			return s.Taps
		}
	}
	if !slices.ContainsFunc(h.Days, func(d Day) bool { return d.Date.Year() > year }) {
		return h.Settings.Taps
	}
	return 0
}

// mostOfTap is more sap than a tap gives on a day: five times a good one from memory.
// A bound of our own.
const mostOfTap = 5 * packing.PeakFromMemory

// tooFew reports whether so many holes cannot have given the sap of a day of the year:
// then not all were written down.
func (h *House) tooFew(holes, year int) bool {
	sum := map[time.Time]units.Volume{}
	for _, d := range h.Days {
		if d.Date.Year() == year && given(d.Sap) {
			if sum[d.Date] += d.Sap; sum[d.Date] > units.Volume(holes)*mostOfTap {
				return true
			}
		}
	}
	return false
}

// Doubts tells of a record that can be read and hardly be so as a whole: holes that
// are too few for the sap, and wood that gave next to nothing of its heat.
func (h *House) Doubts() (all []string) {
	holes := h.holes()
	var few []string
	for _, year := range slices.Sorted(maps.Keys(holes)) {
		if h.tooFew(holes[year], year) {
			few = append(few, strconv.Itoa(year))
		}
	}
	if len(few) > 0 {
		all = append(all, fmt.Sprintf("%s: too few holes of %s for the sap of their days. Write down all, or the taps into %s.", h.Shown(HolesFile), strings.Join(few, ", "), SeasonsFile))
	}
	boils, _ := h.boils()
	boils, _ = typical(boils, boilRow.rate)
	least := fuel.HomeBuiltPan()
	if fired, _ := h.firings(boils); fired.Boils >= fewest && fired.Middle() < least.Low/farOff {
		all = append(all, fmt.Sprintf("%s: the sap took %.2g %% of the heat of the wood, over an open fire it is %.0f to %.0f: how much is a %s?", h.Shown(DaysFile), fired.Middle().Percents(), least.Low.Percents(), least.High.Percents(), cmp.Or(h.Settings.Measure.Name, "cord")))
	}
	return all
}

// holes counts the holes by year.
func (h *House) holes() map[int]int {
	f, ok := h.File(HolesFile)
	if !ok {
		return nil
	}
	defer f.Close()
	var year float64
	r, err := records.New(HolesFile, f, records.Number("year", &year))
	if err != nil {
		return nil
	}
	n := map[int]int{}
	for {
		switch err := r.Next(); {
		case err == io.EOF || err != nil && r.Broken():
			return n
		case err == nil:
			n[int(year)]++
		}
	}
}

// PastSeasons lists the seasons before the one that counts, those told in a row and
// those whose days tell taps and syrup, in the order of years.
func (h *House) PastSeasons() (all []PastSeason) {
	told := map[int]bool{}
	for _, s := range h.Seasons {
		if s.Year < h.Season() {
			all = append(all, s)
			told[s.Year] = true
		}
	}
	for year, syrup := range h.sums(func(d Day) units.Volume { return d.Syrup }) {
		if taps := h.Taps(year); year < h.Season() && !told[year] && taps > 0 && syrup > 0 {
			all = append(all, PastSeason{Year: year, Taps: taps, Syrup: syrup})
		}
	}
	slices.SortFunc(all, func(a, b PastSeason) int { return a.Year - b.Year })
	return all
}

// sums adds up a column of the days by year.
func (h *House) sums(of func(Day) units.Volume) map[int]units.Volume {
	sum := map[int]units.Volume{}
	for _, d := range h.Days {
		if v := of(d); given(v) {
			sum[d.Date.Year()] += v
		}
	}
	return sum
}

// syrupByCord is the syrup that a cord of wood made in the last season before this
// one that tells both.
func (h *House) syrupByCord() (units.Volume, int) {
	syrup := h.sums(func(d Day) units.Volume { return d.Syrup })
	wood := h.sums(func(d Day) units.Volume { return d.Wood })
	for year := h.Season() - 1; year > h.Season()-oldest; year-- {
		if syrup[year] > 0 && wood[year] > 0 {
			return units.Volume(float64(syrup[year]) / float64(wood[year]/units.Cord)), year
		}
	}
	return 0, 0
}

// bestDay is the most that a tap gave on a day of any season up to this, and how
// many days that is the best of. A best day far beyond the next best is left out.
func (h *House) bestDay() (best units.Volume, n int, left []odd) {
	type yield struct {
		line int
		tap  units.Volume
	}
	byDate := map[time.Time]*yield{}
	taps := map[int]int{}
	for _, d := range h.Days {
		year := d.Date.Year()
		if year > h.Season() || !given(d.Sap) || !(d.Sap > 0) {
			continue
		}
		if _, ok := taps[year]; !ok {
			taps[year] = h.Taps(year)
		}
		if taps[year] == 0 {
			continue
		}
		y := byDate[d.Date]
		if y == nil {
			y = &yield{line: d.Line}
			byDate[d.Date] = y
		}
		y.tap += d.Sap / units.Volume(taps[year])
	}
	var all []*yield
	for _, y := range byDate {
		all = append(all, y)
	}
	slices.SortFunc(all, func(a, b *yield) int { return b.line - a.line })
	slices.SortStableFunc(all, func(a, b *yield) int {
		switch {
		case a.tap > b.tap:
			return -1
		case a.tap < b.tap:
			return 1
		}
		return 0
	})
	for len(all) > fewest && all[0].tap > farOff*all[1].tap {
		left = append(left, odd{all[0].line, float64(all[0].tap / all[1].tap)})
		all = all[1:]
	}
	if len(all) == 0 {
		return 0, 0, left
	}
	return all[0].tap, len(all), left
}
