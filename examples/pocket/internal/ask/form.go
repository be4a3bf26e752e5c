package ask

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"time"

	"example.org/sapreckoner/units"
)

// A Form is the filled fields of a screen while a question is answered.
type Form struct {
	System units.System

	request *Request
	house   *house
	inputs  map[string]*Input
	errs    map[string]string
	now     time.Time
	answer  Answer
	failed  bool     // a field of this question was refused or is missing
	assumed []string // what was taken because nobody told
}

// text returns what a field holds: what was typed, else the sugarhouse's
// setting, else what is usual. Of typed text a bare number takes the unit of the
// button beside it.
func (f *Form) text(key string) (string, bool) {
	in := f.inputs[key]
	if in == nil {
		return "", false
	}
	if typed, ok := f.request.Fields[key]; ok && strings.TrimSpace(typed[0]) != "" {
		text := strings.TrimSpace(typed[0])
		if typed[1] != "" && bare(text) {
			text += " " + typed[1]
		}
		return text, true
	}
	if in.Setting != "" {
		if text := f.house.value(in.Setting); text != "" {
			f.note(&f.answer.Known, "from my sugarhouse: "+in.Setting+" "+text)
			return text, true
		}
	}
	if in.Start != "" && in.Kind != "choice" {
		f.note(&f.assumed, lower(in.Label)+" "+in.usual(f.System))
	}
	return in.Start, in.Start != ""
}

func (f *Form) note(list *[]string, text string) {
	for _, t := range *list {
		if t == text {
			return
		}
	}
	*list = append(*list, text)
}

// typed tells that something stands in a field.
func (f *Form) typed(key string) bool {
	words, ok := f.request.Fields[key]
	return ok && strings.TrimSpace(words[0]) != ""
}

// read returns the quantity of a field. It is false if the field is empty or
// refused.
func read[Q any](f *Form, key string, parse func(string) (Q, error)) (q Q, ok bool) {
	in := f.inputs[key]
	text, ok := f.text(key)
	if !ok {
		if in != nil && in.Need {
			f.failed = true
			f.note(&f.answer.Wants, lower(in.Label))
		}
		return q, false
	}
	if f.errs[key] != "" {
		f.failed = true
		return q, false
	}
	err := in.check(text)
	if err == nil {
		q, err = parse(text)
	}
	if err != nil {
		f.refuse(key, err)
		return q, false
	}
	return q, true
}

// refuse writes the reason beside a field.
func (f *Form) refuse(key string, err error) {
	f.failed = true
	if in := f.inputs[key]; in != nil {
		err = called(in.Label, err)
	}
	if f.errs[key] == "" {
		f.errs[key] = reason(err, f.System)
	}
}

// called puts the label of a field into a range error that does not say in words
// what it is about.
func called(label string, err error) error {
	var re *units.RangeError
	if errors.As(err, &re) && re.What == "" {
		re.What = lower(label)
	}
	return err
}

// reason words an error in the person's units, on one line.
func reason(err error, in units.System) string {
	return strings.Join(strings.Fields(units.Reason(err, in)), " ")
}

// blame refuses the field that an error of the library is about: that of the
// argument that it names, else the first.
func (f *Form) blame(err error, key string, args ...string) bool {
	if err == nil {
		return false
	}
	var re *units.RangeError
	if errors.As(err, &re) {
		for i := 0; i+1 < len(args); i += 2 {
			if re.Arg == args[i] {
				key = args[i+1]
			}
		}
	}
	f.refuse(key, err)
	return true
}

func (f *Form) temperature(key string) units.Temperature {
	t, ok := read(f, key, units.ParseTemperature)
	if !ok {
		return units.Celsius(math.NaN())
	}
	return t
}

// number reads a quantity that is NaN while it is not known.
func number[Q ~float64](f *Form, key string, parse func(string) (Q, error)) Q {
	q, ok := read(f, key, parse)
	if !ok {
		return Q(math.NaN())
	}
	return q
}

func (f *Form) brix(key string) units.Brix         { return number(f, key, units.ParseBrix) }
func (f *Form) volume(key string) units.Volume     { return number(f, key, units.ParseVolume) }
func (f *Form) length(key string) units.Length     { return number(f, key, units.ParseLength) }
func (f *Form) pressure(key string) units.Pressure { return number(f, key, units.ParsePressure) }
func (f *Form) area(key string) units.Area         { return number(f, key, parseArea) }
func (f *Form) rate(key string) units.VolumeRate   { return number(f, key, units.ParseVolumeRate) }
func (f *Form) share(key string) units.Share       { return number(f, key, units.ParseShare) }

func (f *Form) count(key string) int {
	n, _ := read(f, key, parseCount)
	return n
}

func (f *Form) hours(key string) time.Duration {
	d, _ := read(f, key, parseHours)
	return d
}

func (f *Form) clock(key string) (time.Duration, bool) { return read(f, key, parseClock) }

func (f *Form) chosen(key string) string {
	text, _ := read(f, key, func(s string) (string, error) { return s, nil })
	return text
}

// row adds a figure.
func (f *Form) row(key, label, text string, more ...string) {
	r := Row{Key: key, Label: label, Text: text}
	if len(more) > 0 {
		r.Give = more[0]
	}
	if len(more) > 1 {
		r.Note = more[1]
	}
	f.answer.Rows = append(f.answer.Rows, r)
}

func (f *Form) verdict(level, text string) { f.answer.Level, f.answer.Verdict = level, text }

func (f *Form) caution(text string) { f.note(&f.answer.Cautions, text) }

// Figures in the person's units.

func (f *Form) temp(t units.Temperature) string { return t.TextIn(f.System, 1) }

// below words a heat to stop at: rounded down, as the programs' pages have it, so
// that nobody boils past it.
func (f *Form) below(t units.Temperature) string {
	const hair = 1e-6 // of a tenth: how far processors may differ
	down := func(x float64) float64 { return math.Floor(x*10+hair) / 10 }
	if f.metric() {
		return units.Celsius(down(t.Celsius())).Text(units.ScaleCelsius, 1)
	}
	return units.Fahrenheit(down(t.Fahrenheit())).Text(units.ScaleFahrenheit, 1)
}

func (f *Form) metric() bool { return f.System == units.Metric }

// at words a time of the day.
func at(d time.Duration) string {
	const day = 24 * time.Hour
	text := fmt.Sprintf("%02d:%02d", int(d%day/time.Hour), int(d%time.Hour/time.Minute))
	switch days := int(d / day); {
	case days == 1:
		text += " tomorrow"
	case days > 1:
		text += fmt.Sprintf(" after %d days", days)
	}
	return text
}

func lower(label string) string {
	if label == "" {
		return ""
	}
	return strings.ToLower(label[:1]) + label[1:]
}
