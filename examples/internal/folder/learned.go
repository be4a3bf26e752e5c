package folder

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.org/sapreckoner/units"
)

// fewest is how many days teach something.
const fewest = 3

// Learned lists what the record teaches for the season, in the form of settings,
// each with what it was learned from and the flags that it fills. Remarks tell of
// days that were left out because no other was like them.
//
//   - boils off: the median of the water that went off in an hour between lit and
//     out. The time in which the pan comes to a boil counts, so that a plan is
//     rather late than early. A day's sap counts as boiled down to syrup: what it
//     leaves in the pan as sweet, the day before left as much.
//   - efficiency: all heat into the sap against the net heat of all wood.
//   - sugar: the median of the readings of the last three days that have some; before
//     the first of a season that of all readings of the last season with three days.
//   - best day: the most sap that a tap gave on a day.
//   - taps: where the settings do not tell them, the holes of this season, or of the
//     last that has some.
//   - syrup to the cord: of the last season before this that tells both.
func (h *House) Learned() (lessons []Line, remarks []string) {
	learn := func(name, value, from, beaten string, flags ...string) {
		l := Line{Name: name, Value: value, From: from, Beaten: strings.Fields(beaten)}
		for _, f := range flags {
			fill := to(f)
			fill.Text = value
			l.Fills = append(l.Fills, fill)
		}
		lessons = append(lessons, l)
	}
	all, year := h.boils()
	from := func(n int) string {
		if year == h.Season() {
			return many(n, "boil")
		}
		return many(n, "boil") + " of " + strconv.Itoa(year)
	}
	boils, left := typical(all, boilRow.rate)
	remarks = h.remark(remarks, left, "water went off at %.2g times the usual rate")
	if n := len(boils); n >= fewest {
		learn("boils off", h.volume3(units.USGallons(middle(boils, boilRow.rate)))+"/h", from(n), "boil-rate pan-rate heat pan-area compartments", "boilday.boil-rate", "sapweek.boil-rate")
	}
	fired, left := h.firings(boils)
	remarks = h.remark(remarks, left, "the sap took %.2g times the usual part of the heat of the wood")
	if fired.Boils >= fewest {
		learn("efficiency", fmt.Sprintf("%.3g %%", fired.Middle().Percents()), from(fired.Boils), "fuel", "boilday.efficiency", "sapweek.efficiency")
	}
	if sugar, from := h.LastSugar(); from != "" {
		learn("sugar", sugar.Text(2), from, "species part", "sapweek.sugar")
	}
	best, n, left := h.bestDay()
	remarks = h.remark(remarks, left, "a tap gave %.2g times as much as on the next best day")
	if n >= fewest {
		learn("best day", h.volume3(best), many(n, "day"), "", "sapweek.peak")
	}
	if h.Settings.Taps == 0 {
		holes := h.holes()
		for year := h.Season(); year > h.Season()-oldest; year-- {
			if n := holes[year]; n > 0 && !h.tooFew(n, year) {
				learn("taps", strconv.Itoa(n), "the holes of "+strconv.Itoa(year), "", "sapweek.taps")
				break
			}
		}
	}
	if syrup, year := h.syrupByCord(); year > 0 {
		learn("syrup to the cord", h.volume3(syrup), strconv.Itoa(year), "", "sapweek.syrup-per-cord")
	}
	return lessons, remarks
}

// volume3 writes a volume in the units of the pages to three digits: no more is known.
func (h *House) volume3(v units.Volume) string {
	x, unit := v.USGallons(), " US gal"
	if h.Settings.Metric {
		x, unit = v.Liters(), " L"
	}
	if r, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 3, 64), 64); err == nil {
		x = r // 1250, and not 1.25e+03
	}
	return digits(x) + unit
}

// many counts things.
func many(n int, thing string) string {
	if n == 1 {
		return "1 " + thing
	}
	return fmt.Sprintf("%d %ss", n, thing)
}

// An odd is a row that is not like the others.
type odd struct {
	line  int
	times float64 // of what is usual
}

// remark tells of rows that were left out.
func (h *House) remark(remarks []string, left []odd, what string) []string {
	for _, o := range left {
		remarks = append(remarks, fmt.Sprintf("%s:%d: "+what+": check the row; it is left out of what is learned", h.Shown(DaysFile), o.line, o.times))
	}
	return remarks
}

// farOff is how many times the usual, or what part of it, a day may be: beyond lie
// slips of the pen, such as a lost hour or another unit. A bound of our own.
const farOff = 3

// typical parts boils whose figure lies near the median of all from those whose
// does not.
func typical(all []boilRow, figure func(boilRow) float64) (near []boilRow, left []odd) {
	usual := middle(all, figure)
	for _, b := range all {
		if times := figure(b) / usual; times >= 1./farOff && times <= farOff {
			near = append(near, b)
		} else {
			left = append(left, odd{b.line, times})
		}
	}
	return near, left
}

// middle is the median of a figure, and 0 of none.
func middle(boils []boilRow, figure func(boilRow) float64) float64 {
	if len(boils) == 0 {
		return 0
	}
	var all []float64
	for _, b := range boils {
		all = append(all, figure(b))
	}
	return median(all)
}

// LastSugar is the median true strength of the sap of the last three days on which it
// was read, and which readings that are; empty if there are none. Before the first of
// a season it is that of the whole last season which has three such days: the sap of
// its last days is thinner than what a new season begins with.
func (h *House) LastSugar() (sugar units.Brix, from string) {
	if last, _ := h.sugars(h.Season(), fewest); len(last) > 0 {
		return median(last), many(len(last), "reading")
	}
	for year := h.Season() - 1; year > h.Season()-oldest; year-- {
		if all, days := h.sugars(year, len(h.Days)); days >= fewest {
			return median(all), many(len(all), "reading") + " of " + strconv.Itoa(year)
		}
	}
	return 0, ""
}

// sugars are the readings of the last days of a year that have some, no more than
// most of those, and how many days that are.
func (h *House) sugars(year, most int) (last []units.Brix, read int) {
	days := h.daysOf(year)
	for i := len(days) - 1; i >= 0 && read < most; i-- {
		if b, ok := h.TrueSugar(days[i]); ok {
			last = append(last, b)
			if i == 0 || !days[i-1].Date.Equal(days[i].Date) || !given(days[i-1].Sugar) {
				read++
			}
		}
	}
	return last, read
}

// median sorts what it is given, which is not empty.
func median[Q ~float64](all []Q) Q {
	slices.Sort(all)
	n := len(all)
	return (all[(n-1)/2] + all[n/2]) / 2
}
