package main

import (
	"errors"
	"fmt"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/sugarhouse"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// course is where the season stands and what the days ahead look like.
type course struct {
	start, today time.Time
	missing      int // days from the start of the season to yesterday without figures
	soFar        season.Season
	toNow, toEnd season.DegreeDays   // by season.BloomRule
	adds         []season.DegreeDays // of the days ahead
	year         season.Weather      // of this season, with the days ahead
	before       season.Weather      // of earlier years
	past         season.Weather      // springs of the station to compare with
	end          season.EndOutlook
	weeks        []season.Week // those without a day missing

	days                       []season.Day // ahead
	ahead                      season.Weather
	colder, warmer             []season.Day // the days ahead, a degree C off
	stages                     []stage      // of the days ahead
	timing                     season.TapTiming
	call                       season.TapCall
	lives                      []lifeRow
	history                    bool
	ifColder, asRead, ifWarmer season.Window
}

// degree is how far a thermometer or a forecast is easily off.
const (
	degree units.TempDiff = 1
	off                   = "1 C (1.8 F)"
)

func readWeather(e *cli.Env, flag, path string) (season.Weather, error) {
	in, err := e.Open(flag, path)
	if err != nil {
		return season.Weather{}, err
	}
	defer in.Close()
	w, err := season.ReadWeather(in)
	if err == nil && w.Len() == 0 {
		err = errors.New("no day with figures below the header: a day needs its low and its high, or 20 readings of its hours")
	}
	if err != nil {
		return w, cli.For(flag, fmt.Errorf("%s: %w", path, err))
	}
	return w, nil
}

// lastOnRecord is the last day of a season, or of all if that is 0, that was written
// down and has weather; the weather's own if there is none.
func lastOnRecord(f *cli.Flags, season int, weather []season.Day) (last time.Time) {
	of := func(t time.Time) bool { return season == 0 || t.Year() == season }
	known := map[time.Time]bool{}
	for _, d := range weather {
		known[d.Date] = true
		if of(d.Date) && d.Date.After(last) {
			last = d.Date
		}
	}
	var written time.Time
	for _, d := range f.House().Days {
		if of(d.Date) && known[d.Date] && d.Date.After(written) {
			written = d.Date
		}
	}
	if !written.IsZero() {
		return written
	}
	return last
}

// firstDay is the first of the days ahead.
func (s *setup) firstDay(f *cli.Flags, weather []season.Day) (time.Time, error) {
	switch {
	case !s.today.IsZero():
		return s.today, nil
	case f.Source("weather").Kind == cli.Invented:
		return sugarhouse.Today(), nil
	}
	y, m, d := time.Now().Date()
	if asked := f.House().Season(); f.Given("season") && asked != y {
		way := fmt.Sprintf("a day of %d", asked)
		if last := lastOnRecord(f, asked, weather); !last.IsZero() {
			way = "as -today " + last.Format(time.DateOnly) + ", the last day on record"
		}
		return time.Time{}, cli.For("season", fmt.Errorf("this is %d: give -today too, %s", y, way))
	}
	return time.Date(y, m, d, 0, 0, 0, 0, time.UTC), nil
}

// spring is the month that the season begins with. It refuses a day of the other
// half-year with the way out of whoever told it: the person or the computer.
func (s *setup) spring(today time.Time, told bool, last time.Time) (time.Month, error) {
	month, out := time.January, "in the south give -south"
	if s.south {
		month, out = time.July, "in the north leave out -south"
	}
	if (today.Month() >= time.July) == s.south {
		return month, nil
	}
	if !told {
		out = "give -today, the first of the days ahead"
		if !last.IsZero() {
			out += ", such as the last day on record: -today " + last.Format(time.DateOnly)
		}
	}
	return month, fmt.Errorf("%s is not in the half-year of the season, which begins with %v: %s", today.Format(time.DateOnly), month, out)
}

// readSeason reads the weather and looks through it.
func (p *plan) readSeason(e *cli.Env) (err error) {
	s := p.given
	if s.weather == "" {
		return cli.For("weather", errors.New("no weather: list the lows and highs of the days, with the forecast, in weather.csv of the folder, or name the CSV"))
	}
	w, err := readWeather(e, "weather", s.weather)
	if err != nil {
		return err
	}
	if p.today, err = s.firstDay(p.flags, w.Days()); err != nil {
		return err
	}
	spring, err := s.spring(p.today, p.flags.Given("today"), lastOnRecord(p.flags, 0, w.Days()))
	if err != nil {
		return cli.For("today", err)
	}
	if h := p.house(); len(h.Days) > 0 && p.today.Year() != h.Season() && p.flags.Source("weather").Kind != cli.Told {
		return cli.For("season", fmt.Errorf("the record is read as of %d: give -season %d too", h.Season(), p.today.Year()))
	}
	p.start = time.Date(p.today.Year(), spring, 1, 0, 0, 0, 0, time.UTC)
	if p.rule, err = s.rule(p.flags); err != nil {
		return err
	}
	past, err := p.part(w.Days())
	if err != nil {
		return err
	}
	if err := p.standing(past); err != nil {
		return err
	}
	warmer, err := p.ahead.Shift(degree)
	if err != nil {
		return err
	}
	colder, err := p.ahead.Shift(-degree)
	p.colder, p.warmer = colder.Days(), warmer.Days()
	p.stageDays()
	return err
}

// rule is what counts as a run.
func (s *setup) rule(f *cli.Flags) (season.Rule, error) {
	rule := season.Rule{Criterion: criteria[s.criterion](), RunDays: s.runDays, Hemisphere: s.hemisphere()}
	if !f.Given("night-below") {
		return rule, nil
	}
	var err error
	page := cli.Sheet{Metric: s.metric}
	night, thaw := page.In(cli.Temperature(s.night)), page.In(cli.Temperature(s.thaw))
	rule.Criterion, err = season.NewCriterion("own criterion, a night below "+night+" and a day above "+thaw, s.night, s.thaw)
	if err == nil && s.night.Compare(s.thaw) > 0 {
		err = fmt.Errorf("%s is warmer than -day-above %s: a run is a freeze and then a thaw, so give a night no warmer than the day", night, thaw)
	}
	return rule, cli.ForArg(err, "night-below", "above", "day-above")
}

// part parts the days into those of earlier years, past ones of this season, which
// it returns, and those ahead, up to the first without a forecast.
func (p *plan) part(days []season.Day) (past []season.Day, err error) {
	next := p.today
	var before []season.Day
	for _, d := range days {
		switch {
		case d.Date.Before(p.start):
			before = append(before, d)
		case d.Date.Before(p.today):
			past = append(past, d)
		case d.Date.Equal(next) && len(p.days) < p.given.days:
			p.days = append(p.days, d)
			next = next.AddDate(0, 0, 1)
		}
	}
	if len(p.days) == 0 {
		return nil, cli.For("today", fmt.Errorf("the weather has no figures of %s, only days from %s to %s: name the first day of the forecast",
			p.today.Format(time.DateOnly), days[0].Date.Format(time.DateOnly), days[len(days)-1].Date.Format(time.DateOnly)))
	}
	p.missing = int(p.today.Sub(p.start)/day) - len(past)
	if p.before, err = season.NewWeather(before); err != nil {
		return nil, err
	}
	p.ahead, err = season.NewWeather(p.days)
	return past, err
}

// standing finds where the season stands.
func (p *plan) standing(past []season.Day) error {
	before, err := season.NewWeather(past)
	if err != nil {
		return err
	}
	seasons, err := season.Seasons(before, p.rule)
	if err != nil {
		return err
	}
	if len(seasons) > 0 {
		p.soFar = seasons[0]
	}
	if p.year, err = season.NewWeather(append(past, p.days...)); err != nil {
		return err
	}
	adds := season.BloomRule().Days(p.year)
	for _, d := range adds[:len(past)] {
		p.toNow += d
	}
	p.toEnd, p.adds = p.toNow, adds[len(past):]
	for _, d := range p.adds {
		p.toEnd += d
	}
	for _, week := range season.ProducingWeeks(p.year, p.start.Year(), p.rule.Hemisphere) {
		if week.Missing == 0 && !week.Start.Before(p.today.AddDate(0, 0, -14)) {
			p.weeks = append(p.weeks, week)
		}
	}
	return nil
}

// readHistory looks through past springs, those of -history or the earlier years of
// the weather, and tells when to tap.
func (p *plan) readHistory(e *cli.Env) (err error) {
	s := p.given
	w := p.before
	if s.history != "" {
		if w, err = readWeather(e, "history", s.history); err != nil {
			return err
		}
	}
	p.past = w
	if p.history = w.Len() > 0; !p.history {
		return p.tapTime(w)
	}
	if p.ifColder, p.asRead, p.ifWarmer, err = season.Sensitivity(w, p.rule, degree); err != nil {
		return err
	}
	return p.tapTime(w)
}
