package season

import (
	"encoding/json"
	"fmt"
	"time"

	"example.org/sapreckoner/internal/base/object"
	"example.org/sapreckoner/units"
)

// dayJSON is a day of weather as JSON holds it.
type dayJSON struct {
	Date string            `json:"date"`
	Min  units.Temperature `json:"min"`
	Max  units.Temperature `json:"max"`
}

// gapJSON is a gap as JSON holds it.
type gapJSON struct {
	From string `json:"from"`
	To   string `json:"to"`
	Line int    `json:"line"`
}

// weatherJSON is weather as JSON holds it.
type weatherJSON struct {
	Days []json.RawMessage `json:"days"`
	Gaps []json.RawMessage `json:"gaps"`
}

// String prints how much weather there is, "31 days, 2024-03-01 to 2024-03-31".
func (w Weather) String() string {
	if len(w.days) == 0 {
		return "no weather"
	}
	s := fmt.Sprintf("%d days, %s to %s", len(w.days), dateText(w.days[0].Date), dateText(w.days[len(w.days)-1].Date))
	missing := 0
	for _, g := range w.gaps {
		missing += g.Days()
	}
	if missing > 0 {
		s += fmt.Sprintf(", %d missing", missing)
	}
	return s
}

func dateText(t time.Time) string { return t.Format(time.DateOnly) }

// MarshalJSON gives an object with days, each with date, min and max, and gaps,
// each with from, to and the line where a file shows it.
func (w Weather) MarshalJSON() ([]byte, error) {
	out := struct {
		Days []dayJSON `json:"days"`
		Gaps []gapJSON `json:"gaps"`
	}{make([]dayJSON, len(w.days)), make([]gapJSON, len(w.gaps))}
	for i, d := range w.days {
		out.Days[i] = dayJSON{dateText(d.Date), d.Min, d.Max}
	}
	for i, g := range w.gaps {
		out.Gaps[i] = gapJSON{dateText(g.From), dateText(g.To), g.Line}
	}
	return json.Marshal(out)
}

// UnmarshalJSON reads what MarshalJSON gives. It refuses what [NewWeather]
// refuses, and missing and unknown fields; the weather is then left alone. A
// gap that is not told is found between the days.
func (w *Weather) UnmarshalJSON(text []byte) error {
	const fn = "season.Weather.UnmarshalJSON"
	var in weatherJSON
	if err := object.Whole(fn, text, &in); err != nil {
		return err
	}
	var b weatherBuilder
	gaps, err := readGaps(fn, in.Gaps)
	if err != nil {
		return err
	}
	for i, raw := range in.Days {
		d := dayJSON{Min: unset, Max: unset}
		if err := object.Whole(fn, raw, &d); err != nil {
			return err
		}
		date, err := readDate(fn, d.Date)
		if err != nil {
			return err
		}
		for len(gaps) > 0 && gaps[0].From.Before(date) {
			if err := b.addGap(gaps[0]); err != nil {
				return ofDay(fn, i, err)
			}
			gaps = gaps[1:]
		}
		if err := b.add(Day{date, d.Min, d.Max}, 0); err != nil {
			return ofDay(fn, i, err)
		}
	}
	for _, g := range gaps {
		if err := b.addGap(g); err != nil {
			return ofDay(fn, len(in.Days), err)
		}
	}
	*w = b.w
	return nil
}

func readGaps(fn string, list []json.RawMessage) ([]Gap, error) {
	var gaps []Gap
	for _, raw := range list {
		var g gapJSON
		if err := object.Whole(fn, raw, &g); err != nil {
			return nil, err
		}
		from, err := readDate(fn, g.From)
		if err != nil {
			return nil, err
		}
		to, err := readDate(fn, g.To)
		if err != nil {
			return nil, err
		}
		gaps = append(gaps, Gap{from, to, g.Line})
	}
	return gaps, nil
}

func readDate(fn, s string) (time.Time, error) {
	t, err := time.Parse(time.DateOnly, s)
	if err != nil {
		return t, &units.ParseError{Func: fn, Input: s, Err: units.ErrSyntax, Hint: "write the date as 2024-03-01"}
	}
	return t, nil
}

// addGap takes a stretch of days that the weather does not have.
func (b *weatherBuilder) addGap(g Gap) error {
	if err := b.skip(g.From, g.Line); err != nil {
		return err
	}
	if dayNumber(g.To) == dayNumber(g.From) {
		return nil
	}
	first := b.last + 1
	if err := b.seen(g.To, g.Line); err != nil {
		return err
	}
	if first <= b.last {
		b.gap(b.last, b.last, g.Line)
	}
	return nil
}
