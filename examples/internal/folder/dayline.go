package folder

import (
	"errors"
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"time"

	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/units"
)

// DayLine is an example of what [House.DayLine] understands.
const DayLine = "3/10 40 gal 2.1 at 41 F lit 2pm out 8pm wood 6 note windy"

// DayLine understands a day typed as one short line: the date first, then figures,
// each with the name of its column before it where the unit does not tell which it
// is. A volume alone is sap, a length a dip, a bare number the sugar. A date without
// a year is of the season that is asked for, or else not after today.
func (h *House) DayLine(text string, today time.Time) (Row, error) {
	l := dayLine{h: h, said: map[string]bool{}}
	note := ""
	if m := noted.FindStringSubmatch(text); m != nil {
		text, note = m[1], m[2]
	}
	for _, word := range strings.Fields(text) {
		word = commaed.ReplaceAllString(strings.TrimRight(word, ",;"), "$1.$2$3")
		if m := joined.FindStringSubmatch(word); m != nil {
			l.words = append(l.words, m[1], m[2])
		} else if word != "" {
			l.words = append(l.words, word)
		}
	}
	if len(l.words) == 0 {
		return nil, fmt.Errorf("type the day, as %s", DayLine)
	}
	date, err := h.typedDate(l.next(), today)
	if err != nil {
		return nil, err
	}
	l.tell("date", date)
	for len(l.words) > 0 && l.err == nil {
		l.figure()
	}
	if note != "" {
		l.tell("note", note)
	}
	if l.err != nil {
		return nil, fmt.Errorf("%w; a day is typed as %s", l.err, DayLine)
	}
	return l.row, nil
}

var (
	joined   = regexp.MustCompile(`^([0-9][0-9./:½¼¾]*)([A-Za-z°%].*)$`)   // 40gal
	commaed  = regexp.MustCompile(`^([0-9]+),([0-9]{1,2})([A-Za-z%].*|)$`) // three digits may be thousands
	noted    = regexp.MustCompile(`(?is)^(.*?\S)\s+note:?\s+(.*)$`)
	monthDay = regexp.MustCompile(`^([0-9]{1,2})/([0-9]{1,2})$`)
)

// typedDate reads the date of a line. Month or day first is as the file has it, and
// where that is not settled as in the country of the gallon.
func (h *House) typedDate(text string, today time.Time) (string, error) {
	switch strings.ToLower(text) {
	case "today":
		return today.Format(time.DateOnly), nil
	case "yesterday":
		return today.AddDate(0, 0, -1).Format(time.DateOnly), nil
	}
	order := unsettled
	if h.files != nil {
		sp, _ := specOf(DaysFile)
		order, _ = h.settle(sp) // of a file that is not there nothing is settled
	}
	if order == unsettled {
		order = new(turning).settle(order, text+"/2000", 0)
	}
	if order == unsettled {
		order = new(turning).settle(order, text, 0)
	}
	if order == unsettled && h.Settings.Gallon == units.USGallon {
		order = monthFirst
	}
	if !monthDay.MatchString(text) {
		return order.cell(text)
	}
	year := today.Year()
	if h.season != 0 {
		year = h.season
	} else if h.lastYear > year { // of a record that is ahead of the clock
		year = h.lastYear
	}
	date, err := order.cell(text + "/" + strconv.Itoa(year))
	if err != nil {
		return "", errors.New(strings.ReplaceAll(err.Error(), text+"/"+strconv.Itoa(year), text))
	}
	if h.season == 0 && year == today.Year() && date > today.Format(time.DateOnly) {
		date, err = order.cell(text + "/" + strconv.Itoa(year-1))
	}
	return date, err
}

// A dayLine is a line that is being understood.
type dayLine struct {
	h     *House
	words []string
	row   Row
	said  map[string]bool
	err   error
}

func (l *dayLine) next() string {
	word := l.words[0]
	l.words = l.words[1:]
	return word
}

func (l *dayLine) fail(format string, args ...any) {
	if l.err == nil {
		l.err = fmt.Errorf(format, args...)
	}
}

// tell keeps a cell.
func (l *dayLine) tell(column, text string) {
	if l.said[column] {
		l.fail("%s is told twice, or say what %q is", column, clip.Text(text))
		return
	}
	l.said[column] = true
	l.row = append(l.row, Cell{column, text})
}

// labels are words before a figure.
var labels = map[string]string{"sap": "sap", "gathered": "sap", "dip": "dip", "sugar": "sugar", "at": "read_at", "cup": "read_at",
	"boiled": "boiled", "thrown": "thrown", "lit": "lit", "out": "out", "syrup": "syrup", "wood": "wood", "tank": "tank"}

// figure understands the next words.
func (l *dayLine) figure() {
	if n := l.tank(); n > 0 {
		l.tell("tank", strings.Join(l.words[:n], " "))
		l.words = l.words[n:]
		return
	}
	column, labeled := labels[strings.ToLower(l.words[0])]
	if labeled {
		label := l.next()
		if (column == "lit" || column == "out") && len(l.words) > 0 && strings.EqualFold(l.words[0], "at") {
			l.next()
		}
		switch {
		case len(l.words) == 0:
			l.fail("nothing stands behind %s", label)
			return
		case column == "tank":
			n := max(l.tank(), 1)
			l.tell(column, strings.Join(l.words[:n], " "))
			l.words = l.words[n:]
			return
		}
	}
	number, unit, ok := l.number()
	if !ok {
		l.fail("%q is not understood", clip.Text(l.words[0]))
		return
	}
	if column == "" {
		column = l.guess(number, unit)
	}
	if unit == "" {
		unit = l.unitOf(column)
	}
	switch {
	case strings.Contains(unit, " ") && l.unknown(column, number+" "+unit):
		l.fail("%q is not understood: a remark stands behind the word note", clip.Text(number+" "+unit))
	case column == "":
		l.fail("say what %q is", clip.Text(strings.TrimSpace(number+" "+unit)))
	case unit == "" && examples[column] != "":
		l.fail("%s %s of what? write its unit, as %s", column, clip.Text(number), examples[column])
	case column == "sugar" && unit == "%":
		l.tell(column, number+" Brix")
	default:
		l.tell(column, strings.TrimSpace(number+" "+unit))
	}
}

// unknown reports whether a figure has words behind it that are no unit of its column.
func (l *dayLine) unknown(column, text string) bool {
	sp, _ := specOf(DaysFile)
	k := sp.columns[column]
	if k == nil || k.own == nil {
		return false
	}
	_, err := k.own(&l.h.Settings, text)
	return errors.Is(err, units.ErrUnit)
}

// examples are figures whose unit must be told or known.
var examples = map[string]string{"sap": "40 gal", "boiled": "36 gal", "thrown": "12 gal", "syrup": "3 qt", "dip": "12 in", "read_at": "41 F", "wood": "1/4 cord"}

// unitOf is the unit of a bare figure where the settings leave no doubt of it.
func (l *dayLine) unitOf(column string) string {
	s := &l.h.Settings
	us := s.Gallon == units.USGallon && !s.Metric
	metric := s.Metric && s.Gallon == 0
	switch {
	case column == "wood" && s.Measure.Wood > 0:
		return s.Measure.Name + "s"
	case column == "dip" && us:
		return "in"
	case column == "dip" && metric:
		return "cm"
	case column == "read_at" && us:
		return "F"
	case column == "read_at" && metric:
		return "C"
	}
	return ""
}

// tank returns how many of the next words name a tank of the settings.
func (l *dayLine) tank() (n int) {
	for _, t := range l.h.Settings.Tanks {
		k := len(strings.Fields(t.Name))
		if k > n && k <= len(l.words) && sameName(t.Name, strings.Join(l.words[:k], " ")) {
			n = k
		}
	}
	return n
}

// number takes a number, with a fraction behind it, and the words of its unit.
func (l *dayLine) number() (number, unit string, ok bool) {
	if !figure(l.words[0]) {
		return "", "", false
	}
	number = l.next()
	if len(l.words) > 0 && strings.Contains(l.words[0], "/") && figure(l.words[0]) { // 50 1/2 gal
		number += " " + l.next()
	}
	for len(l.words) > 0 && !figure(l.words[0]) && labels[strings.ToLower(l.words[0])] == "" && l.tank() == 0 {
		unit = strings.TrimSpace(unit + " " + l.next())
	}
	return number, unit, true
}

// figure reports whether a word is a number or a time of the day.
func figure(word string) bool {
	if _, ok := plain(word); ok {
		return true
	}
	_, err := Clock(word)
	return err == nil
}

// guess finds the column of a figure without a name by its unit.
func (l *dayLine) guess(number, unit string) string {
	text := strings.TrimSpace(number + " " + unit)
	reads := func(k *kind) bool { _, err := k.own(&l.h.Settings, text); return err == nil }
	_, clockErr := Clock(text)
	switch _, err := l.h.Settings.Volume(text); {
	case unit == "" && clockErr != nil, unit == "%", reads(brixCell):
		return "sugar"
	case clockErr == nil: // lit or out?
		return ""
	case strings.Contains(unit, "cord"), l.h.Settings.Measure.Name != "" && reads(woodCell) && err != nil:
		return "wood"
	case err == nil, errors.Is(err, units.ErrAmbiguous):
		return "sap"
	case reads(lengthCell):
		return "dip"
	case reads(warmthCell):
		return "read_at"
	}
	return ""
}
