package ask

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"example.org/sapreckoner/units"
)

// kinds are the units of every kind of field, the usual one first.
var kinds = map[string]Kind{
	"temperature": {US: []Unit{{"F", 0.5}, {"C", 0.2}}, Metric: []Unit{{"C", 0.2}, {"F", 0.5}}},
	"difference":  {US: []Unit{{"F deg", 0.1}, {"C deg", 0.1}}, Metric: []Unit{{"C deg", 0.1}, {"F deg", 0.1}}},
	"brix":        {US: []Unit{{"Brix", 0.1}}, Metric: []Unit{{"Brix", 0.1}}},
	"strength":    {US: []Unit{{"Brix", 0.5}, {"Be", 0.25}}, Metric: []Unit{{"Brix", 0.5}, {"Be", 0.25}}},
	"pressure":    {US: []Unit{{"inHg", 0.01}, {"hPa", 1}}, Metric: []Unit{{"hPa", 1}, {"kPa", 0.1}, {"inHg", 0.01}}},
	"vacuum":      {US: []Unit{{"inHg", 1}, {"kPa", 5}}, Metric: []Unit{{"kPa", 5}, {"inHg", 1}}},
	"volume":      {US: []Unit{{"US gal", 1}, {"US qt", 1}, {"imp gal", 1}, {"L", 5}}, Metric: []Unit{{"L", 5}, {"US gal", 1}, {"imp gal", 1}}},
	"small":       {US: []Unit{{"US qt", 1}, {"US pt", 1}, {"US fl oz", 1}, {"US gal", 1}, {"mL", 50}}, Metric: []Unit{{"mL", 50}, {"L", 1}, {"US qt", 1}, {"US fl oz", 1}}},
	"amount":      {US: []Unit{{"US gal", 0.25}, {"US qt", 1}, {"lb", 1}, {"imp gal", 0.25}, {"L", 1}, {"kg", 0.5}}, Metric: []Unit{{"L", 1}, {"kg", 0.5}, {"US gal", 0.25}, {"lb", 1}}},
	"mass":        {US: []Unit{{"lb", 0.5}, {"oz", 1}, {"g", 50}}, Metric: []Unit{{"g", 50}, {"kg", 0.5}, {"lb", 0.5}}},
	"rate":        {US: []Unit{{"US gal/h", 1}, {"imp gal/h", 1}, {"L/h", 5}}, Metric: []Unit{{"L/h", 5}, {"US gal/h", 1}}},
	"length":      {US: []Unit{{"in", 0.5}, {"cm", 1}}, Metric: []Unit{{"cm", 1}, {"in", 0.5}}},
	"height":      {US: []Unit{{"ft", 50}, {"m", 20}}, Metric: []Unit{{"m", 20}, {"ft", 50}}},
	"area":        {US: []Unit{{"ft2", 1}, {"m2", 0.1}}, Metric: []Unit{{"m2", 0.1}, {"ft2", 1}}},
	"share":       {US: []Unit{{"%", 1}}, Metric: []Unit{{"%", 1}}},
	"hours":       {US: []Unit{{"h", 0.5}, {"min", 1}}, Metric: []Unit{{"h", 0.5}, {"min", 1}}},
	"wood":        {US: []Unit{{"load", 1}, {"cord", 0.05}, {"m3", 0.1}}, Metric: []Unit{{"load", 1}, {"m3", 0.1}, {"cord", 0.05}}},
	"count":       {US: []Unit{{"", 1}}, Metric: []Unit{{"", 1}}},
	"clock":       {US: []Unit{{"", 15}}, Metric: []Unit{{"", 15}}},
	"words":       {},
	"choice":      {},
}

// hair is the part of itself by which a typed end may lie outside its range.
const hair = 1e-12

// within makes the range of a kind from the parser of its quantity. The range
// is told in a unit that package units knows.
func within[Q ~float64](kind string, parse func(string) (Q, error), low, high, per Q, unit string) Range {
	return Range{Kind: kind, check: func(text string) error {
		q, err := parse(text)
		if err != nil {
			return err
		}
		slack := hair * math.Max(math.Abs(float64(low)), math.Abs(float64(high)))
		if x := float64(q); !(x >= float64(low)-slack && x <= float64(high)+slack) {
			return &units.RangeError{Arg: kind, Value: x / float64(per), Low: float64(low / per), High: float64(high / per), Unit: unit}
		}
		return nil
	}}
}

func temperatures(low, high units.Temperature) Range {
	return Range{Kind: "temperature", check: func(text string) error {
		t, err := units.ParseTemperature(text)
		if err != nil {
			return err
		}
		const hair = 1e-9
		if c := t.Celsius(); !(c >= low.Celsius()-hair && c <= high.Celsius()+hair) {
			return &units.RangeError{Arg: "temperature", Value: c, Low: low.Celsius(), High: high.Celsius(), Unit: "C"}
		}
		return nil
	}}
}

func differences(low, high units.TempDiff) Range {
	return within("difference", units.ParseTempDiff, low, high, units.CelsiusDegree, "C deg")
}

func strengths(low, high units.Brix) Range {
	return within("brix", units.ParseBrix, low, high, 1, "Brix")
}

func volumes(low, high units.Volume) Range {
	return within("volume", units.ParseVolume, low, high, units.USGallon, "US gal")
}

func small(low, high units.Volume) Range {
	return within("small", units.ParseVolume, low, high, units.USGallon, "US gal")
}

func masses(low, high units.Mass) Range {
	return within("mass", units.ParseMass, low, high, units.Pound, "lb")
}

func rates(low, high units.VolumeRate) Range {
	return within("rate", units.ParseVolumeRate, low, high, units.USGallonPerHour, "US gal/h")
}

func lengths(low, high units.Length) Range {
	return within("length", units.ParseLength, low, high, units.Inch, "in")
}

func heights(low, high units.Length) Range {
	return within("height", units.ParseLength, low, high, units.Foot, "ft")
}

func pressures(low, high units.Pressure) Range {
	return within("pressure", units.ParsePressure, low, high, units.InchMercury, "inHg")
}

func vacuums(low, high units.Pressure) Range {
	return within("vacuum", units.ParsePressure, low, high, units.InchMercury, "inHg")
}

func areas(low, high units.Area) Range {
	return within("area", parseArea, low, high, units.SquareFoot, "ft2")
}

// parseArea reads an area, or the two sides of a pan: "2 x 4 ft".
func parseArea(text string) (units.Area, error) {
	first, second, sides := strings.Cut(text, "x")
	if !sides {
		return units.ParseArea(text)
	}
	b, err := units.ParseLength(second)
	if err != nil {
		return 0, err
	}
	unit := strings.TrimLeft(strings.TrimSpace(second), "0123456789.")
	if bare(first) {
		first += unit
	}
	a, err := units.ParseLength(first)
	return a.Times(b), err
}

// hours are stretches of time, such as "5 h", "8 min" or "1h30m".
func hours(low, high time.Duration) Range {
	return Range{Kind: "hours", check: func(text string) error {
		d, err := parseHours(text)
		if err != nil {
			return err
		}
		if d < low || d > high {
			return &units.RangeError{Arg: "time", Value: d.Hours(), Low: low.Hours(), High: high.Hours(), Unit: "h"}
		}
		return nil
	}}
}

var errHours = errors.New(`write it as 5 h or 8 min`)

func parseHours(text string) (time.Duration, error) {
	text = strings.TrimSpace(text)
	for _, u := range []struct {
		word string
		is   time.Duration
	}{{"hours", time.Hour}, {"hour", time.Hour}, {"h", time.Hour}, {"minutes", time.Minute}, {"minute", time.Minute}, {"min", time.Minute}} {
		number, ok := strings.CutSuffix(text, u.word)
		if !ok {
			continue
		}
		if x, err := strconv.ParseFloat(strings.TrimSpace(number), 64); err == nil && math.Abs(x) < 1e4 {
			return time.Duration(x * float64(u.is)), nil
		}
	}
	d, err := time.ParseDuration(text)
	if err != nil {
		return 0, fmt.Errorf("%q: %w", clip(text), errHours)
	}
	return d, nil
}

// counts are whole numbers.
func counts(low, high int) Range {
	return Range{Kind: "count", check: func(text string) error {
		n, err := parseCount(text)
		if err == nil && (n < low || n > high) {
			return &units.RangeError{Arg: "number", Value: float64(n), Low: float64(low), High: float64(high)}
		}
		return err
	}}
}

func parseCount(text string) (int, error) {
	n, err := strconv.Atoi(strings.TrimSpace(text))
	if err != nil {
		return 0, fmt.Errorf("%q: write a whole number", clip(text))
	}
	return n, nil
}

// clocks are times of the day.
func clocks() Range {
	return Range{Kind: "clock", check: func(text string) error {
		_, err := parseClock(text)
		return err
	}}
}

// parseClock reads "14:05", "2 pm" or "2:05 pm" as the time since midnight.
func parseClock(text string) (time.Duration, error) {
	plain := strings.ToLower(strings.ReplaceAll(text, " ", ""))
	for _, layout := range []string{"15:04", "3:04pm", "3pm"} {
		if t, err := time.Parse(layout, plain); err == nil {
			return time.Duration(t.Hour())*time.Hour + time.Duration(t.Minute())*time.Minute, nil
		}
	}
	return 0, fmt.Errorf("%q: write a time of the day as 14:05 or 2 pm", clip(text))
}

// choice is one of a few, the keys and labels by turns.
func choice(keysAndLabels ...string) Range {
	r := Range{Kind: "choice"}
	for i := 0; i < len(keysAndLabels); i += 2 {
		r.Choices = append(r.Choices, Choice{keysAndLabels[i], keysAndLabels[i+1]})
	}
	r.check = func(text string) error {
		var names []string
		for _, c := range r.Choices {
			if c.Key == text {
				return nil
			}
			names = append(names, c.Label)
		}
		return fmt.Errorf("%q is not known: use one of %s", clip(text), strings.Join(names, ", "))
	}
	return r
}

// words take anything of a line.
func words() Range {
	return Range{Kind: "words", check: func(text string) error {
		if len(text) > 200 {
			return errors.New("at most 200 letters")
		}
		return nil
	}}
}

// clip bounds how much of a text a message repeats.
func clip(text string) string {
	if r := []rune(text); len(r) > 40 {
		return string(r[:40]) + "..."
	}
	return text
}

// bare tells that a text is a number alone, so that the unit button counts.
func bare(text string) bool {
	return strings.Trim(text, "0123456789.,+-/ ") == ""
}
