package season

import (
	"fmt"
	"time"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/tapping"
)

// TapVerdict is whether to tap on a day of the season.
type TapVerdict uint8

// The verdicts. The zero value says that nobody reckoned it.
const (
	NotCalled TapVerdict = iota
	TapNow
	TapWait
	TapTooLate
)

var tapVerdictNames = enum.Names[TapVerdict]{Type: "season.TapVerdict", Of: []string{"not reckoned", "now", "wait", "too late"}}

// String returns the verdict in words.
func (v TapVerdict) String() string { return tapVerdictNames.String(v) }

// MarshalText returns the verdict in words.
func (v TapVerdict) MarshalText() ([]byte, error) { return tapVerdictNames.Marshal(v) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (v *TapVerdict) UnmarshalText(text []byte) error { return tapVerdictNames.Unmarshal(v, text) }

// TapCall is the verdict for a day with what it rests on.
type TapCall struct {
	Verdict TapVerdict
	// On is the day to drill on if the verdict is now: the last one before the
	// first run ahead that is warm enough, else the day of the run. If the verdict
	// is wait it is the day to wait for, or to look at a forecast again.
	On  time.Time
	Why string
	// Running days that a hole catches in the mean spring, drilled today and at
	// the best time from today on; 0 and 0 without past springs.
	Today, Best float64
}

// What the calls rest on. They are rules of this package and not published.
const (
	gainWorthWaiting = 1.0                    // running days a spring
	leftWorthAHole   = 0.25                   // of what the best date catches
	daysWorthAHole   = 7                      // until the first flowers of silver maple
	aheadOfAll       = DegreeDays(17.0 / 1.8) // half of the first flowers
)

// Call tells on a day of the season whether to tap: now, wait, or too late.
//
// Spring holds the days from the start of the half-year and, from today on, a
// forecast. It is too late once the warmth by [BloomRule] has brought the first
// flowers of silver maple, or does within a week; and where past springs had
// less than a quarter of the best date's running days left. It waits for the
// best date of past springs where that catches a running day a spring more, but
// not in a spring that is warmer than all of them on this date and half way to
// the flowers. It waits for the weather where no day ahead runs or none is warm
// enough to drill before. These limits are rules of this package.
//
// A zero rule, as of the zero TapTiming, or a forecast without today gives
// [NotCalled].
func (t TapTiming) Call(spring Weather, today time.Time) TapCall {
	year, ok := t.rule.Hemisphere.of(today)
	now := dayNumber(today)
	ahead := spring.unbroken(now)
	if !ok || t.rule.Criterion == (Criterion{}) || len(ahead) == 0 {
		return TapCall{}
	}
	s := spring.tapSpring(year, t.rule)
	c := TapCall{On: dateOf(now)}
	first, _ := SilverMapleBloom()
	warm := s.warm[now-s.first]
	soon := s.warm[min(now-s.first+min(daysWorthAHole, len(ahead)), len(s.warm)-1)]
	switch {
	case bloomed(warm, first):
		return c.say(TapTooLate, "by its warmth silver maple flowers, and sap of trees in bud gives an off flavor")
	case bloomed(soon, first):
		return c.say(TapTooLate, "within a week silver maple flowers by its warmth, and sap of trees in bud gives an off flavor")
	}
	if done, ok := t.byPast(&c, calendarOf(today), warm); ok {
		return done
	}
	return t.byForecast(c, ahead)
}

func (c TapCall) say(v TapVerdict, why string) TapCall {
	c.Verdict, c.Why = v, why
	return c
}

// byPast compares drilling today with drilling later in past springs. It fills
// Today and Best; ok is false where they do not speak against today.
func (t TapTiming) byPast(c *TapCall, today CalendarDay, warm DegreeDays) (done TapCall, ok bool) {
	if len(t.springs) == 0 {
		return done, false
	}
	n := float64(len(t.springs))
	mean := func(on CalendarDay) float64 { caught, _ := t.Caught(on); return float64(caught) / n }
	c.Today = mean(today)
	c.Best = c.Today
	_, last := t.rule.Hemisphere.season(commonYear)
	start := dayNumber(today.In(commonYear))
	until := today
	for k := start; k <= last; k++ {
		if on := calendarDay(k); mean(on) > c.Best {
			c.Best, until = mean(on), on
		}
	}
	best := t.Best()
	switch {
	case best.Caught == 0:
		return done, false
	case c.Best >= c.Today+gainWorthWaiting && !t.warmest(today, warm):
		c.On = until.In(c.On.Year())
		return c.say(TapWait, fmt.Sprintf("in past springs a hole of %v caught %.1f running days, one of %v %.1f", until, c.Best, today, c.Today)), true
	case c.Best < leftWorthAHole*float64(best.Caught)/n:
		return c.say(TapTooLate, fmt.Sprintf("in past springs a hole of %v caught %.1f running days, one of the best date %.1f: let the trees rest", today, c.Today, float64(best.Caught)/n)), true
	}
	return done, false
}

// warmest reports whether this spring is warmer than every past one on the date,
// and well on to the flowers.
func (t TapTiming) warmest(today CalendarDay, warm DegreeDays) bool {
	if warm < aheadOfAll {
		return false
	}
	for _, s := range t.springs {
		if s.warm[s.at(today, 0)] >= warm {
			return false
		}
	}
	return true
}

// byForecast finds the day to drill on before the first run ahead.
func (t TapTiming) byForecast(c TapCall, ahead []Day) TapCall {
	eve := -1 // the last day before the run that is warm enough
	for i, d := range ahead {
		switch met := t.rule.Criterion.Met(d); {
		case met && eve < 0 && tapping.TooColdToDrill(d.Max):
			// A criterion of one's own may be met in hard frost.
		case met:
			if c.On = d.Date; eve >= 0 {
				c.On = ahead[eve].Date
			}
			return c.say(TapNow, "for the run of "+d.Date.Format("January 2"))
		case !tapping.TooColdToDrill(d.Max):
			eve = i
		}
	}
	c.On = dateOf(dayNumber(ahead[len(ahead)-1].Date) + 1)
	return c.say(TapWait, "none of the days ahead runs: look at a new forecast then")
}

func calendarOf(t time.Time) CalendarDay {
	if _, m, d := t.Date(); m != time.February || d != 29 {
		return CalendarDay{m, d}
	}
	return CalendarDay{time.February, 28}
}

// unbroken returns the days from the given one on, up to the first gap.
func (w Weather) unbroken(from int) []Day {
	i := w.from(from)
	k := i
	for k < len(w.days) && dayNumber(w.days[k].Date) == from+k-i {
		k++
	}
	return w.days[i:k]
}
