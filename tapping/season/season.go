package season

import (
	"sort"
	"time"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
)

// Hemisphere tells where the year's spring is. The season of a year is its
// first half in the north, 1 January to 30 June, and its second half in the
// south, 1 July to 31 December.
type Hemisphere uint8

// The hemispheres.
const (
	North Hemisphere = iota
	South
)

// String returns the name of the hemisphere.
func (h Hemisphere) String() string { return hemispheres.String(h) }

var hemispheres = enum.Names[Hemisphere]{Type: "season.Hemisphere", Of: []string{"north", "south"}}

// Hemispheres lists them.
func Hemispheres() []Hemisphere { return hemispheres.List() }

// MarshalText returns the name of the hemisphere.
func (h Hemisphere) MarshalText() ([]byte, error) { return hemispheres.Marshal(h) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (h *Hemisphere) UnmarshalText(text []byte) error { return hemispheres.Unmarshal(h, text) }

// season returns the day numbers of the first and the last day.
func (h Hemisphere) season(year int) (first, last int) {
	month := h.firstMonth()
	first = dayNumber(time.Date(year, month, 1, 0, 0, 0, 0, time.UTC))
	return first, dayNumber(time.Date(year, month+6, 1, 0, 0, 0, 0, time.UTC)) - 1
}

func (h Hemisphere) firstMonth() time.Month {
	if h == South {
		return time.July
	}
	return time.January
}

// of returns the year of the season that the date lies in; ok is false in the
// other half of the year.
func (h Hemisphere) of(date time.Time) (year int, ok bool) {
	return date.Year(), (date.Month() >= time.July) == (h == South)
}

// Rule tells what counts as a run of sap.
type Rule struct {
	Criterion  Criterion  // which days run; [SapFlowDay] to start with
	RunDays    int        // running days within a week that make a run, 0 to 7; 0 is 1: every such day counts
	Hemisphere Hemisphere // where the spring is
}

func (r Rule) check(fn string) error {
	if r.Criterion == (Criterion{}) {
		return &CriterionError{fn, "no criterion is set: take the sap-flow day to start with"}
	}
	if err := limit.InAs(fn, "Rule.Hemisphere", "hemisphere", float64(r.Hemisphere), 0, float64(South), "", "north or south"); err != nil {
		return err
	}
	return limit.WithinAs(fn, "Rule.RunDays", "run days", float64(r.RunDays), 0, 7, 1, "", "a single warm day of January is no run; 3 days in a week are one")
}

// Season is one year's sap weather.
type Season struct {
	Year        int
	FlowDays    int       // days that meet the criterion
	First, Last time.Time // first and last of the days that belong to a run; zero where none does
	Warmth      DegreeDays
	Days        int // days with weather
	Missing     int // days of the half-year without weather
}

// Seasons returns every season that the weather has a day of, in order. Warmth
// is summed over a base of 5 C.
//
// Range: a criterion, and RunDays 0 to 7.
func Seasons(w Weather, rule Rule) ([]Season, error) {
	if err := rule.check("season.Seasons"); err != nil {
		return nil, err
	}
	return w.seasons(rule), nil
}

func (w Weather) seasons(rule Rule) []Season {
	var out []Season
	for i := 0; i < len(w.days); {
		year, ok := rule.Hemisphere.of(w.days[i].Date)
		if !ok {
			i++
			continue
		}
		first, last := rule.Hemisphere.season(year)
		end := w.from(last + 1)
		out = append(out, seasonOf(w.days[i:end], year, last-first+1, rule))
		i = end
	}
	return out
}

// seasonOf looks through the days of one season of the given length.
func seasonOf(days []Day, year, length int, rule Rule) Season {
	s := Season{Year: year, Days: len(days), Missing: length - len(days)}
	need := max(1, rule.RunDays)
	flow := make([]int, 0, 64) // indexes of the running days
	for i, d := range days {
		s.Warmth += GrowingDegreeDays(d, houleBase)
		if rule.Criterion.Met(d) {
			flow = append(flow, i)
		}
	}
	s.FlowDays = len(flow)
	for k := 0; k+need <= len(flow); k++ {
		from, to := days[flow[k]].Date, days[flow[k+need-1]].Date
		if dayNumber(to)-dayNumber(from) >= 7 {
			continue
		}
		if s.First.IsZero() {
			s.First = from
		}
		s.Last = to
	}
	return s
}

// from returns the index of the first day on or after the given day.
func (w Weather) from(day int) int {
	date := dateOf(day)
	return sort.Search(len(w.days), func(i int) bool { return !w.days[i].Date.Before(date) })
}
