package season

import (
	"math"
	"time"

	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

const (
	maxEvents     = 366
	maxDegreeDays = 10000.0
)

// HouleThreshold is the probability above which a week counts as producing.
const HouleThreshold = 0.51

// houleBase is the base of the degree-days of that paper.
var houleBase = units.Celsius(5)

// HouleProbability returns the probability that sugarhouses of a region
// produce in a week, from the freeze-thaw events and growing degree-days over
// 5 C cumulated since 1 January. A week counts as producing where it is above
// [HouleThreshold].
//
// The paper's first day of counting was not seen; here it is 1 January. The
// curve in events is highest at 25.8: past it every further event would lower
// the probability. Such counts lie outside of what the equation was made for,
// and what it gives there says nothing.
//
// Range: events 0 to 366; degree-days 0 to 10000 C. Skill as published: 83 %
// of the producing weeks and 95 % of the others, 11 regions of Quebec,
// 1999-2011; elsewhere unproven.
//
// Source: Houle et al. 2015, PLoS ONE 10(12) e0144844, eq. 1-2: logit p = c0 +
// c1 N + c2 N^2 + c3 G, N the events and G the degree-days. Check value: 15
// events and 10 degree-days give 0.8688.
//
// Cites houle-2015.
func HouleProbability(events int, warmth DegreeDays) (float64, error) {
	const fn = "season.HouleProbability"
	if err := limit.Count(fn, "events", events, 0, maxEvents, "days since 1 January with a thaw after a freeze"); err != nil {
		return math.NaN(), err
	}
	if err := limit.WithinAs(fn, "warmth", "degree-days", float64(warmth), 0, maxDegreeDays, 1, "", "Celsius degree-days over 5 C since 1 January"); err != nil {
		return math.NaN(), err
	}
	return houleProbability(events, warmth), nil
}

func houleProbability(events int, warmth DegreeDays) float64 {
	n := float64(events)
	return 1 / (1 + math.Exp(-(coef.HouleC0 + coef.HouleC1*n + coef.HouleC2*n*n + coef.HouleC3*float64(warmth))))
}

// Week is seven days of a season as Houle's equation sees them at their end.
type Week struct {
	Start       time.Time
	Events      int        // freeze-thaw events since the season began
	Warmth      DegreeDays // over 5 C since the season began
	Probability float64
	Producing   bool
	Missing     int // days without weather since the season began; each may hide an event
}

// ProducingWeeks runs [HouleProbability] through the season of the given year,
// week by week while there is weather. The count starts where the season does
// (see [Hemisphere]); the start in the paper was not seen. Weeks of more than
// 25 events lie outside of what the equation was made for, see
// [HouleProbability].
func ProducingWeeks(w Weather, year int, h Hemisphere) []Week {
	first, last := h.season(year)
	var (
		weeks  []Week
		events int
		warmth DegreeDays
		days   int
	)
	i, end := w.from(first), w.from(last+1)
	for start := first; start+6 <= last && i < end; start += 7 {
		for ; i < end && dayNumber(w.days[i].Date) <= start+6; i++ {
			if houleEvent.Met(w.days[i]) {
				events++
			}
			warmth += GrowingDegreeDays(w.days[i], houleBase)
			days++
		}
		p := houleProbability(events, warmth)
		weeks = append(weeks, Week{dateOf(start), events, warmth, p, p > HouleThreshold, start + 7 - first - days})
	}
	return weeks
}
