package season

import (
	"math"
	"slices"
	"time"

	"example.org/sapreckoner/tapping"
)

// An endLook is a look for the end of the season of a year, on a day.
type endLook struct {
	w           Weather
	q           EndQuestion
	today, year int
	first, last int // days of the half-year
}

// of returns the weather of the days from one to another, both included.
func (w Weather) of(from, to int) Weather {
	a, b := w.from(from), w.from(to+1)
	return Weather{days: w.days[a:max(a, b)]}
}

// turns are the degree-days from which on warmth warns and is there.
func turns(s tapping.Species) (near, come float64, source string) {
	const calendar = "Ohio State University Phenology Calendar; how it is read is our own"
	silver, _ := SilverMapleBloom()
	red, _ := RedMapleBloom()
	first := silver.Fahrenheit()
	switch s {
	case tapping.SugarMaple:
		return first, red.Fahrenheit(), calendar
	case tapping.BlackWalnut, tapping.Birch, tapping.OtherTree:
		return math.NaN(), math.NaN(), "no figure was found"
	}
	return first / 2, first, calendar
}

// warmth is in Fahrenheit degree-days since the first day of the half-year.
func (l *endLook) warmth() EndSign {
	near, come, source := turns(l.q.Species)
	known := l.w.of(l.first, l.last)
	days := l.w.of(l.first, l.today)
	sum := math.NaN()
	if want := float64(l.today - l.first + 1); !math.IsNaN(near) && want-float64(len(days.days)) <= missingAllowed*want {
		sum = warmthOf(days)
	}
	s := sign(Warmth, sum, near, come, source)
	if math.IsNaN(sum) {
		return s
	}
	// The first day known to reach it, or days of past springs from the last day
	// known on.
	from, to := l.reaches(known, near), l.reaches(known, come)
	if len(from) == 0 || len(to) == 0 {
		return s
	}
	s.From, s.To = at(from, 0.25), at(to, 0.75)
	return s
}

func warmthOf(w Weather) float64 {
	sum := 0.0
	for _, d := range bloomRule.Days(w) {
		sum += d.Fahrenheit()
	}
	return sum
}

// reaches lists, sorted, the days on which the warmth of this season reaches so
// much: one where it is known, else one for every past spring.
func (l *endLook) reaches(known Weather, enough float64) []int {
	sum := 0.0
	for i, d := range bloomRule.Days(known) {
		if sum += d.Fahrenheit(); sum+1e-9 >= enough {
			return []int{dayNumber(known.days[i].Date)}
		}
	}
	next := l.today + 1
	if n := len(known.days); n > 0 {
		next = max(next, dayNumber(known.days[n-1].Date)+1)
	}
	var out []int
	for _, year := range l.pastSprings() {
		first, last := l.q.Rule.Hemisphere.season(year)
		shift := first - l.first // by days of the half-year
		spring := l.w.of(next+shift, last)
		have, day := sum, last
		for i, d := range bloomRule.Days(spring) {
			if have += d.Fahrenheit(); have+1e-9 >= enough {
				day = dayNumber(spring.days[i].Date)
				break
			}
		}
		out = append(out, day-shift)
	}
	slices.Sort(out)
	return out
}

// pastSprings lists the other seasons with weather enough; none where there are
// too few for a window.
func (l *endLook) pastSprings() []int {
	var years []int
	for _, s := range l.w.seasons(l.q.Rule) {
		if s.Year != l.year && float64(s.Missing) <= missingAllowed*float64(s.Days+s.Missing) {
			years = append(years, s.Year)
		}
	}
	if len(years) < fewSprings {
		return nil
	}
	return years
}

// at is the day at that share of sorted ones.
func at(days []int, share float64) time.Time {
	return dateOf(int(math.Ceil(quantile(days, share) - 0.5)))
}

// frost is the nights on end without it, up to the last one told.
func (l *endLook) frost() EndSign {
	known := l.w.of(l.first, l.last)
	nights, day := 0, 0
	for i := len(known.days) - 1; i >= 0; i-- {
		d := known.days[i]
		if nights > 0 && dayNumber(d.Date) != day-1 || !(d.Min.Celsius() > 0) {
			break
		}
		nights, day = nights+1, dayNumber(d.Date)
	}
	figure := float64(nights)
	if n := len(known.days); n == 0 || dayNumber(known.days[n-1].Date) < l.today-1 {
		figure = math.NaN()
	}
	s := sign(FrostFree, figure, thawNights, math.Inf(1), "Ohio State University Extension, Should I tap? 2017")
	if s.State != NotKnown {
		s.Come = thawNights
	}
	var last []int
	for _, year := range l.pastSprings() {
		first, end := l.q.Rule.Hemisphere.season(year)
		if spring := seasonOf(l.w.of(first, end).days, year, end-first+1, l.q.Rule); !spring.Last.IsZero() {
			last = append(last, dayNumber(spring.Last)-first+l.first)
		}
	}
	if len(last) < fewSprings {
		return s
	}
	slices.Sort(last)
	s.From, s.To = at(last, 0.25), at(last, 0.75)
	if s.State == EndNear && l.today > dayNumber(s.To) {
		s.State = EndCome
	}
	return s
}

// ofWeek is the chance of a week by Houle's equation, with no more events than
// raise it: beyond them it was made for none.
func ofWeek(w Week) float64 {
	const most = 26
	return houleProbability(min(w.Events, most), w.Warmth)
}

// weeks is the chance that the last whole week of the season made syrup.
func (l *endLook) weeks() EndSign {
	h := l.q.Rule.Hemisphere
	s := EndSign{Kind: LastWeeks, Source: "Houle et al. 2015, PLoS ONE 10(12) e0144844: Quebec"}
	began := false
	for _, week := range ProducingWeeks(l.w.of(l.first, l.today), l.year, h) {
		if dayNumber(week.Start)+6 > l.today || float64(week.Missing) > missingAllowed*float64(dayNumber(week.Start)+7-l.first) {
			break
		}
		p := ofWeek(week)
		began = began || p > HouleThreshold
		s.State, s.Figure, s.Near, s.Come = NoSign, 100*p, 100*HouleThreshold, 100*HouleThreshold
		if began && !(p > HouleThreshold) {
			s.State = EndCome
		}
	}
	var last []int
	for _, year := range l.pastSprings() {
		first, _ := h.season(year)
		end := 0
		for _, week := range ProducingWeeks(l.w, year, h) {
			if ofWeek(week) > HouleThreshold {
				end = dayNumber(week.Start) + 6 - first + l.first
			}
		}
		if end > 0 {
			last = append(last, end)
		}
	}
	if len(last) >= fewSprings && s.State != NotKnown {
		slices.Sort(last)
		s.From, s.To = at(last, 0.25), at(last, 0.75)
	}
	return s
}
