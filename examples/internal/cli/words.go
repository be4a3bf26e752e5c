package cli

import (
	"encoding"
	"errors"
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"unicode"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/units"
)

// Words declares what may stand behind the name of the program without flags: the
// reading of the moment, as one says it, such as 59.5 at 204 F. Take is given it once
// the folder is read.
func (f *Flags) Words(example string, take func(*Spoken) error) { f.example, f.take = example, take }

// Commands declares that words behind the name of the program say what it is to do.
// Take is given them as they stand there, none of them if there are none, and tells
// whether the folder is to be read for it.
func (f *Flags) Commands(take func(words []string) (reads bool, err error)) {
	f.take, f.raw = func(*Spoken) error { return nil }, take
}

// spoken is what stands on the command line without a dash.
type spoken struct {
	example string
	take    func(*Spoken) error
	raw     func([]string) (bool, error) // instead, words that are no reading
	words   []string
}

// Spoken is the reading of the moment. A part that was not said is empty.
type Spoken struct {
	Amount   string // with its unit: 40 US gal
	Weight   string // the same by the scale: 12 lb
	Reading  Reading
	At       units.Temperature // of the cup
	HasAt    bool
	Shows    units.Temperature // a temperature by itself: of the thermometer
	HasShow  bool
	Water    units.Temperature // behind the word water: where water boils today
	HasWater bool

	flags *Flags
	inUS  bool // a unit of the American system was said
	inC   bool
}

// Say sets a flag as if it stood on the command line, unless the value is empty: then
// nothing was said.
func (s *Spoken) Say(name, value string) error {
	f := s.flags
	if value == "" {
		return nil
	}
	if f.Given(name) && f.Source(name).Kind == Told {
		return For(name, errors.New("the words behind the program's name say it already: give one of them"))
	}
	f.sources[name] = Source{Kind: Told}
	if err := f.set.Set(name, value); err != nil {
		return f.err
	}
	return nil
}

// listen understands the words, after the folder is read.
func (f *Flags) listen() error {
	if len(f.words) == 0 || f.raw != nil {
		return nil
	}
	said, err := f.understand(strings.Join(f.words, " "))
	if err != nil {
		return err
	}
	if said.inC && !said.inUS && f.set.Lookup(metricFlag) != nil && f.Source(metricFlag).Kind != Told {
		if err := said.Say(metricFlag, "true"); err != nil { // answered in the units that were said
			return err
		}
	}
	return f.take(said)
}

var (
	attached = regexp.MustCompile(`([0-9])([A-Za-z°%])`) // 204F
	numeral  = regexp.MustCompile(`^[-+]?[0-9]*\.?[0-9]+(/[0-9]+)?$`)
	fraction = regexp.MustCompile(`^[0-9]+/[0-9]+$`)
	commaed  = regexp.MustCompile(`^([0-9]+),([0-9]{1,2})$`) // three digits may be thousands
)

// understand reads number and unit, one pair after the other.
func (f *Flags) understand(text string) (*Spoken, error) {
	said := &Spoken{flags: f}
	lost := func(why string) error {
		return fmt.Errorf("%q: %s; write it as %s", clip.Text(text), why, f.example)
	}
	words := strings.Fields(attached.ReplaceAllString(strings.ReplaceAll(text, ", ", " "), "$1 $2"))
	for i, word := range words {
		words[i] = commaed.ReplaceAllString(word, "$1.$2")
	}
	key := func(word string) bool { return strings.EqualFold(word, "at") || strings.EqualFold(word, "water") }
	for len(words) > 0 {
		before := ""
		if key(words[0]) {
			before, words = strings.ToLower(words[0]), words[1:]
		}
		if len(words) == 0 || !numeral.MatchString(words[0]) {
			return nil, lost("a number is missing")
		}
		number, unit := words[0], ""
		if words = words[1:]; len(words) > 0 && fraction.MatchString(words[0]) { // 50 1/2 gal
			number, words = number+" "+words[0], words[1:]
		}
		for ; len(words) > 0 && !numeral.MatchString(words[0]) && !key(words[0]); words = words[1:] {
			unit = strings.TrimSpace(unit + " " + words[0])
		}
		if err := said.hear(before, number, unit); err == errLost {
			return nil, lost("it is not plain what " + strings.TrimSpace(number+" "+unit) + " is")
		} else if errors.Is(err, units.ErrUnit) {
			return nil, lost(fmt.Sprintf("unknown unit %q", clip.Text(unit)))
		} else if err != nil {
			return nil, err
		}
	}
	return said, nil
}

var errLost = errors.New("not plain")

// hear takes one number and its unit, and the word before them if there is one.
func (s *Spoken) hear(before, number, unit string) (err error) {
	kind, at := kindOf(unit), before == "at"
	switch said := strings.ToUpper(strings.TrimPrefix(unit, "°")); {
	case said == "C":
		s.inC = true
	case said == "F", kind == weight && !strings.HasSuffix(said, "G"), kind == liquid && (strings.HasSuffix(said, "GAL") || !strings.HasSuffix(said, "L")):
		s.inUS = true
	}
	switch {
	case before == "water" && (kind == heat || kind == bare) && !s.HasWater:
		s.HasWater = true
		s.Water, err = s.flags.degrees(number, unit)
	case before == "water":
		return errLost
	case at && (kind == heat || kind == bare) && !s.HasAt:
		s.HasAt = true
		s.At, err = s.flags.degrees(number, unit)
	case kind == heat && !at && !s.HasShow:
		s.HasShow = true
		s.Shows, err = s.flags.degrees(number, unit)
	case kind == weight && !at && s.Amount == "" && s.Weight == "":
		s.Weight = number + " " + unit
	case kind == liquid && !at && s.Amount == "" && s.Weight == "":
		s.Amount, err = s.flags.amount(number + " " + unit)
	case (kind == strength || kind == bare) && !at && !s.Reading.IsRead:
		s.Reading, err = s.flags.reading(number, unit)
	default:
		return errLost
	}
	return err
}

type kind int

const (
	bare kind = iota
	heat
	strength
	liquid
	weight
)

func kindOf(unit string) kind {
	switch strings.ToLower(strings.TrimPrefix(unit, "°")) {
	case "":
		return bare
	case "f", "c":
		return heat
	case "brix", "bx", "%", "be", "bé", "baume", "baumé":
		return strength
	case "lb", "oz", "kg", "g":
		return weight
	}
	return liquid
}

// own are the settings that the user made, in a folder or by -set: the gallon of an
// invented sugarhouse is not theirs.
func (f *Flags) own() folder.Settings {
	if f.dir != "" {
		return f.house.Settings
	}
	h, err := folder.OpenFor(nil, nil, "", 0, f.overrules...)
	if err != nil { // what -set says was read before
		return folder.Settings{}
	}
	return h.Settings
}

// hottest is in C: all candy is done below it, and no cup in F is that cold and hot.
const hottest = 125

// degrees reads a temperature whose unit may be left out where it can be but one: the
// settings name a system of units, or it is hotter than boiling syrup in the other.
func (f *Flags) degrees(number, unit string) (t units.Temperature, err error) {
	unit = strings.ToUpper(strings.TrimPrefix(unit, "°"))
	x, err := strconv.ParseFloat(number, 64)
	if err != nil {
		return t, fmt.Errorf("%q: write a temperature as 204 F", clip.Text(number))
	}
	own := f.own()
	if _, set := own.Set("units"); unit == "" && set {
		unit = "F"
		if own.Metric {
			unit = "C"
		}
	}
	switch {
	case unit == "" && x <= hottest:
		return t, fmt.Errorf("at %s: write %s F or %s C", number, number, number)
	case unit == "":
		unit = "F"
	}
	return t, t.UnmarshalText([]byte(number + " " + unit))
}

// amount reads a volume. A bare gallon is that of the settings.
func (f *Flags) amount(text string) (string, error) {
	own := f.own()
	v, err := own.Volume(text)
	if f.dir == "" && errors.Is(err, units.ErrAmbiguous) {
		number := strings.Join(strings.FieldsFunc(text, unicode.IsLetter), "")
		return "", fmt.Errorf("%q: which gallon? Write %s US gal (or imp gal), or begin a folder that says %q", clip.Text(text), clip.Text(strings.TrimSpace(number)), "gallons: US")
	}
	if err != nil {
		return "", err
	}
	b, err := v.MarshalText()
	return string(b), err
}

// SayHeat sets the flags of the temperatures that were said: where water boils, of the
// cup, and of the thermometer.
func (s *Spoken) SayHeat(at, shows string) error {
	for _, h := range []struct {
		said bool
		name string
		t    units.Temperature
	}{{s.HasWater, ByWaterBoils, s.Water}, {s.HasAt, at, s.At}, {s.HasShow, shows, s.Shows}} {
		if h.said {
			if err := s.SayValue(h.name, h.t); err != nil {
				return err
			}
		}
	}
	return nil
}

// SayReading is [Spoken.Say] of the reading, if there is one, on the scale of Brix of
// the hydrometer that is marked at a temperature and stands in a cup.
func (s *Spoken) SayReading(name string, marked, cup units.Temperature) error {
	if !s.Reading.IsRead {
		return nil
	}
	b, err := s.Reading.Brix(density.Hydrometer{GraduatedAt: marked}, cup)
	if err != nil {
		return err
	}
	return s.SayValue(name, b)
}

// SayValue is [Spoken.Say] of a quantity.
func (s *Spoken) SayValue(name string, v encoding.TextMarshaler) error {
	text, err := v.MarshalText()
	if err != nil {
		return For(name, err)
	}
	return s.Say(name, string(text))
}
