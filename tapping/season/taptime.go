package season

import (
	"fmt"
	"time"

	"example.org/sapreckoner/internal/base/limit"
)

// The range of a hole's life.
const (
	minHoleLife = 24 * time.Hour
	maxHoleLife = 184 * 24 * time.Hour
)

// TapTiming is what a station's past springs tell about when to drill. Make it
// with [NewTapTiming]. The zero TapTiming knows no spring.
//
// A hole is taken to give sap in full from the day that it is drilled to the
// end of its life, and none after. That is an assumption: no source read has a
// curve. What counts is running days: what each of them brings is not known.
type TapTiming struct {
	rule    Rule
	life    int // days
	springs []tapSpring
}

// tapSpring is one spring counted day by day.
type tapSpring struct {
	year, first int          // number of the first day of the half-year
	runs        []int        // running days before each day and, last, in all
	warm        []DegreeDays // warmth before each day, by bloomRule
}

// NewTapTiming looks through the springs of a station for holes of the given
// life. Springs with more than a tenth of their days missing are left out, as
// by [History]. Running days are those that meet the criterion, until the warmth
// by [BloomRule] brings silver maple into full bloom: later sap is of buds.
//
// Range: life 1 to 184 days, of which whole days count; 3 to 6 weeks for an
// open spout and about two months under vacuum, see [tapping.LifeFigures]. The
// rule as in [Seasons].
func NewTapTiming(w Weather, rule Rule, life time.Duration) (TapTiming, error) {
	const fn = "season.NewTapTiming"
	if err := rule.check(fn); err != nil {
		return TapTiming{}, err
	}
	const day = 24 * time.Hour
	if err := limit.WithinAs(fn, "life", "life of a hole", float64(life), float64(minHoleLife), float64(maxHoleLife), float64(day), "days", "3 to 6 weeks with an open spout"); err != nil {
		return TapTiming{}, err
	}
	t := TapTiming{rule: rule, life: int(max(life, minHoleLife) / day)}
	for _, s := range w.seasons(rule) {
		if float64(s.Missing) <= missingAllowed*float64(s.Days+s.Missing) {
			t.springs = append(t.springs, w.tapSpring(s.Year, rule))
		}
	}
	return t, nil
}

// tapSpring counts the days of a half-year.
func (w Weather) tapSpring(year int, rule Rule) tapSpring {
	first, last := rule.Hemisphere.season(year)
	s := tapSpring{year: year, first: first, runs: make([]int, last-first+2), warm: make([]DegreeDays, last-first+2)}
	part := Weather{days: w.days[w.from(first):w.from(last+1)]}
	adds := bloomRule.Days(part)
	_, full := SilverMapleBloom()
	k := 0
	for i := range last - first + 1 {
		s.runs[i+1], s.warm[i+1] = s.runs[i], s.warm[i]
		if k == len(part.days) || dayNumber(part.days[k].Date) > first+i {
			continue
		}
		if s.warm[i+1] += adds[k]; !bloomed(s.warm[i+1], full) && rule.Criterion.Met(part.days[k]) {
			s.runs[i+1]++
		}
		k++
	}
	return s
}

// bloomed reports whether a sum of warmth is enough, but for what rounding takes
// off one that is just so.
func bloomed(sum, enough DegreeDays) bool { return sum+1e-9 >= enough }

// at returns the index of a date without a year in the spring, within it.
func (s tapSpring) at(on CalendarDay, later int) int {
	return min(max(0, dayNumber(on.In(s.year))-s.first+later), len(s.runs)-1)
}

// caught counts the running days that a hole drilled on the date catches.
func (s tapSpring) caught(on CalendarDay, life int) int {
	return s.runs[s.at(on, life)] - s.runs[s.at(on, 0)]
}

// Springs returns how many springs are looked at.
func (t TapTiming) Springs() int { return len(t.springs) }

// Caught returns how many running days of all springs together a hole drilled
// on that day of each would have caught within its life, that day among them,
// and how many there were.
//
// Check value: runs of February 14-19, March 4-17 and March 22 to April 2,
// three times the same, and a life of 35 days: 78 of 96 from March 1, 54 from
// February 9.
func (t TapTiming) Caught(on CalendarDay) (caught, all int) {
	for _, s := range t.springs {
		caught += s.caught(on, t.life)
		all += s.runs[len(s.runs)-1]
	}
	return caught, all
}

// TapWindow is when holes of a life catch the most of past springs.
type TapWindow struct {
	From, To    CalendarDay // each day between is as good
	Caught, All int         // running days of all springs
	Springs     int
}

// Best returns the days of the year on which drilling would have caught the
// most running days: the longest stretch of such days, the first of several.
// Without a spring, or without a running day, it returns no days.
//
// Check value: the springs of [TapTiming.Caught] give February 27 to March 4.
func (t TapTiming) Best() TapWindow {
	best := TapWindow{Springs: len(t.springs)}
	first, last := t.rule.Hemisphere.season(commonYear)
	length, longest := 0, 0
	for n := first; n <= last; n++ {
		on := calendarDay(n)
		caught, all := t.Caught(on)
		best.All = all
		switch {
		case caught > best.Caught:
			best.Caught, best.From, best.To, length, longest = caught, on, on, 1, 1
		case caught < best.Caught || caught == 0:
			length = 0
		default:
			if length++; length > longest {
				best.From, best.To, longest = calendarDay(n-length+1), on, length
			}
		}
	}
	return best
}

func calendarDay(n int) CalendarDay {
	d := dateOf(n)
	return CalendarDay{d.Month(), d.Day()}
}

// String words the window as "February 27 to March 4".
func (w TapWindow) String() string {
	switch {
	case w.Caught == 0:
		return "no day"
	case w.From == w.To:
		return w.From.String()
	}
	return fmt.Sprintf("%v to %v", w.From, w.To)
}
