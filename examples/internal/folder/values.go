package folder

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// one is the text of a setting that fills one kind of flag.
func one(text string, err error) ([]string, error) { return []string{text}, err }

// within is the text of a quantity if it lies in a range.
func within[Q ~float64](text, arg string, q Q, err error, low, high, unit Q, symbol, hint string) ([]string, error) {
	if err == nil {
		err = limit.Within("", arg, q, low, high, unit, symbol, hint)
	}
	return one(text, err)
}

// inRange reads a quantity that lies in a range.
func inRange[Q ~float64](parse func(string) (Q, error), arg string, low, high, unit Q, symbol, hint string) reader {
	return func(_ *Settings, v string) ([]string, error) {
		q, err := parse(v)
		return within(v, arg, q, err, low, high, unit, symbol, hint)
	}
}

func length(low, high units.Length, hint string) reader {
	return inRange(units.ParseLength, "length", low, high, units.Inch, "in", hint)
}

func elevation(s *Settings, v string) ([]string, error) {
	l, err := units.ParseLength(v)
	s.Elevation = l
	return within(v, "elevation", l, err, -500*units.Foot, 15000*units.Foot, units.Foot, "ft", "the pan above the sea, from a map")
}

// temperature reads one in a range in C.
func temperature(low, high float64, hint string) reader {
	return func(_ *Settings, v string) ([]string, error) {
		t, err := units.ParseTemperature(v)
		return within(v, "temperature", units.TempDiff(t.Celsius()), err, units.TempDiff(low), units.TempDiff(high), 1, "C", hint)
	}
}

func boilsOff(s *Settings, v string) ([]string, error) {
	q, err := s.rate(v)
	return within(s.Spell(v), "rate", q, err, 0.05*units.USGallonPerHour, 1e5*units.USGallonPerHour, units.USGallonPerHour, "US gal/h", "measure how far the level falls in an hour")
}

func hours(_ *Settings, v string) ([]string, error) {
	d, err := Hours(v)
	return one(d.String(), err)
}

func timeOfDay(_ *Settings, v string) ([]string, error) {
	d, err := Clock(v)
	return one(fmt.Sprintf("%02d:%02d", int(d.Hours()), int(d.Minutes())%60), err)
}

func jar(s *Settings, v string) ([]string, error) {
	q, err := s.Volume(v)
	return within(s.Spell(v), "label", q, err, units.USFluidOunce, 5*units.USGallon, units.USGallon, "US gal", "what the label of one says")
}

func target(s *Settings, v string) ([]string, error) {
	b, err := units.ParseBrix(v)
	s.Target = b
	return within(v, "target", b, err, 60, 75, units.DegreeBrix, "Brix", "syrup is 66 to 68.9 Brix")
}

// asTyped leaves what is told to the flag that it fills.
func asTyped(_ *Settings, v string) ([]string, error) { return one(v, nil) }

// title is words of one's own that can be printed.
func title(s *Settings, v string) ([]string, error) {
	s.Name = strings.Join(strings.Fields(v), " ")
	if n := utf8.RuneCountInString(s.Name); n > 40 {
		return nil, fmt.Errorf("%d characters: 40 fit on a page", n)
	}
	return one(s.Name, nil)
}

// choice finds a word among some, in any case.
func choice(v string, known ...string) (int, error) {
	for i, w := range known {
		if strings.EqualFold(strings.Join(strings.Fields(v), " "), w) {
			return i, nil
		}
	}
	if near, ok := enum.Nearest(v, slices.Values(known)); ok {
		return 0, fmt.Errorf("%q is not known: is it %q?", clip.Text(v), near)
	}
	return 0, fmt.Errorf("%q is not known: use one of %s", clip.Text(v), strings.Join(known, ", "))
}

func country(s *Settings, v string) ([]string, error) {
	i, err := choice(v, "US", "imperial")
	// Of a slip some gallon is taken, so that it is told once and not at each figure.
	s.Gallon = []units.Volume{units.USGallon, units.ImperialGallon}[i]
	return nil, err
}

func system(s *Settings, v string) ([]string, error) {
	i, err := choice(v, "US", "metric")
	if s.Metric = err == nil && i == 1; s.Metric {
		return one("true", nil)
	}
	return nil, err
}

func half(s *Settings, v string) ([]string, error) {
	i, err := choice(v, "first half of the year", "second half of the year", "first half", "second half")
	if s.South = err == nil && i%2 == 1; s.South {
		return one("true", nil)
	}
	return nil, err
}

func roof(s *Settings, v string) ([]string, error) {
	i, err := choice(v, "under a roof", "outdoors", "indoors", "under the sky")
	s.Roof = err == nil && i%2 == 0
	return nil, err
}

// Refractometers of sap: one to be corrected for its temperature, and one that does it.
const plainPrism, atcPrism = "plain", "compensated"

func scale(s *Settings, v string) ([]string, error) {
	i, err := choice(v, "Brix", "Baume", "Baumé", "Be")
	if err == nil {
		s.Scale = min(BrixScale+Scale(i), BaumeScale)
	}
	return nil, err
}

func refracted(s *Settings, v string) ([]string, error) {
	known := []string{plainPrism, atcPrism}
	i, err := choice(v, known...)
	s.Refractometer = known[i]
	return one(known[i], err)
}

// Places names those whose rule on density is in force.
func Places() (known []string) {
	for _, j := range sugar.Jurisdictions() {
		if j != sugar.UnitedStates1967 {
			known = append(known, j.String())
		}
	}
	return known
}

func legalPlace(_ *Settings, v string) ([]string, error) {
	known := Places()
	i, err := choice(v, known...)
	return one(known[i], err)
}

// guideline is the name of one; the program stand knows which there are.
func guideline(_ *Settings, v string) ([]string, error) {
	if strings.ContainsAny(v, " ,;") {
		return nil, fmt.Errorf("%q is not the short name of a guideline, such as NAMSPM-conservative", clip.Text(v))
	}
	return one(v, nil)
}

func taps(s *Settings, v string) ([]string, error) {
	n, err := wholeNumber(v, "taps")
	s.Taps = n
	return one(strconv.Itoa(n), err)
}

// wholeNumber reads a count, with or without its word behind it.
func wholeNumber(v, word string) (int, error) {
	digits, unit, _ := strings.Cut(v, " ")
	n, err := strconv.Atoi(digits)
	if err != nil || n < 1 || n > 1e6 || unit != "" && !strings.EqualFold(strings.TrimSuffix(unit, "s"), strings.TrimSuffix(word, "s")) {
		return 0, fmt.Errorf("%q is not a number of %s from 1 to 1000000", clip.Text(v), word)
	}
	return n, nil
}

// burns reads a wood with its moisture, or another fuel: the texts are fuel, wood
// and moisture.
func burns(s *Settings, v string) ([]string, error) {
	what, moisture, moist := strings.Cut(v, ",")
	known := []string{"oil", "propane", "pellets", "wood"}
	for _, w := range fuel.FirewoodKentucky() {
		known = append(known, w.Species)
	}
	i, err := choice(what, known...)
	if err != nil {
		return nil, err
	}
	texts := []string{"", "", ""}
	switch {
	case i < 3 && moist:
		return nil, fmt.Errorf("%s has no moisture to tell: leave out what stands behind the comma", known[i])
	case i < 3:
		s.Fuel, texts[0] = known[i], known[i]
	case i > 3:
		s.Wood, texts[1] = known[i], known[i]
	}
	if moist {
		m, err := units.ParseShare(strings.TrimSpace(moisture))
		if _, err = within("", "moisture", m, err, 0, 200, units.Percent, "%", "of the oven-dry weight, as a pin meter shows it: split and dried wood has 15 to 30 %"); err != nil {
			return nil, err
		}
		s.Moisture, texts[2] = m, strings.TrimSpace(moisture)
	}
	return texts, nil
}

// collected reads how sap comes: the texts are vacuum and drop.
func collected(_ *Settings, v string) ([]string, error) {
	how, behind, _ := strings.Cut(v, " ")
	behind = strings.TrimSpace(behind)
	for _, join := range []string{"at ", "falling ", "with "} {
		behind = strings.TrimPrefix(behind, join)
	}
	i, err := choice(strings.TrimRight(how, ","), "pails", "buckets", "bags", "tubing", "pump", "vacuum")
	switch {
	case err != nil:
		return nil, err
	case i < 3 && behind != "":
		return nil, fmt.Errorf("%q is not known here: write pails, and the size of one as the setting pail", clip.Text(behind))
	case i < 3:
		return []string{"", ""}, nil
	case i == 3:
		l, err := units.ParseLength(behind)
		if err != nil {
			return nil, errors.New("tell how far the line falls, as: tubing falling 20 ft; or the pump, as: pump at 20 inHg")
		}
		_, err = within("", "height", l, err, units.Foot/10, 1000*units.Foot, units.Foot, "ft", "from the highest tap to the tank")
		return []string{"", behind}, err
	}
	p, err := units.ParsePressure(behind)
	if err != nil {
		return nil, errors.New("tell the vacuum at the holes, as: pump at 20 inHg")
	}
	_, err = within("", "vacuum", p, err, units.InchMercury/10, 29*units.InchMercury, units.InchMercury, "inHg", "below the pressure of the air")
	return []string{behind, ""}, err
}

// pail reads what one holds and how many taps run into it.
func pail(s *Settings, v string) ([]string, error) {
	size, spouts, more := strings.Cut(v, ",")
	q, err := s.Volume(size)
	if _, err = within("", "size", q, err, 0.1*units.USGallon, 100*units.USGallon, units.USGallon, "US gal", "the volume to the brim"); err != nil {
		return nil, err
	}
	texts := []string{s.Spell(size), ""}
	if more {
		n, err := wholeNumber(strings.TrimSpace(spouts), "taps")
		if err == nil && n > 100 {
			err = fmt.Errorf("%d taps do not run into one pail", n)
		}
		if err != nil {
			return nil, err
		}
		texts[1] = strconv.Itoa(n)
	}
	return texts, nil
}
