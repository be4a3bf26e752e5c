package folder

import (
	"errors"
	"fmt"
	"io"
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"time"

	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/units/records"
)

// A dateOrder is how the dates with slashes of a file are read.
type dateOrder uint8

const (
	unsettled  dateOrder = iota // no date with slashes that tells
	monthFirst                  // 3/13/2034
	dayFirst                    // 13/3/2034
	both                        // some tell the one, some the other
)

var (
	dashed  = regexp.MustCompile(`^([0-9]{1,4})-([0-9]{1,2})-([0-9]{1,2})(|[ T].*)$`)
	slashed = regexp.MustCompile(`^([0-9]{1,2})/([0-9]{1,2})/([0-9]{1,4})(|[ T].*)$`)
	dotted  = regexp.MustCompile(`^([0-9]{1,2})\.([0-9]{1,2})\.([0-9]{1,4})(|[ T].*)$`)
)

// A turning counts what tells the order of the dates of a file.
type turning struct {
	told int    // different dates that tell
	line int    // of the first of them
	by   string // as it stands there
	open string // the first date that could be either
}

// settle learns from a cell in a line.
func (w *turning) settle(o dateOrder, text string, line int) dateOrder {
	if strings.IndexByte(text, '/') < 0 {
		return o
	}
	m := slashed.FindStringSubmatch(text)
	if m == nil {
		return o
	}
	tells := unsettled
	a, _ := strconv.Atoi(m[1])
	b, _ := strconv.Atoi(m[2])
	if a > 12 {
		tells = dayFirst
	}
	if b > 12 {
		tells = monthFirst
	}
	if tells == unsettled {
		if w.open == "" && a != b {
			w.open = text
		}
		return o
	}
	switch {
	case w.told == 0:
		w.told, w.line, w.by = 1, line, text
	case text != w.by: // a day may have several rows
		w.told++
	}
	if tells == o {
		return o
	}
	if o != unsettled {
		return both
	}
	return tells
}

// turned keeps how the dates of a file are read where one line alone tells: a slip
// there turns all of them.
func (h *House) turned(name string, o dateOrder, w turning) {
	text, err := o.cell(w.open)
	if w.told != 1 || w.open == "" || err != nil {
		return
	}
	on, err := time.Parse(time.DateOnly, text[:len(time.DateOnly)])
	if err != nil {
		return
	}
	first := "month first"
	if o == dayFirst {
		first = "day first"
	}
	if h.orders == nil {
		h.orders = map[string]string{}
	}
	h.orders[name] = fmt.Sprintf("%s: dates are read %s, so that %s is %s, by line %d alone, %s: if that is a slip, mend it; dates as %s leave no doubt",
		h.Shown(name), first, clip.Text(w.open), on.Format("January 2"), w.line, clip.Text(w.by), on.Format(time.DateOnly))
}

// Turned tells of files whose dates with slashes could be read either way but for
// one line, each with that line and how they are read.
func (h *House) Turned() (all []string) {
	for _, name := range slices.Sorted(maps.Keys(h.orders)) {
		if !h.aside[name] {
			all = append(all, h.orders[name])
		}
	}
	return all
}

// settle reads through the file for dates with slashes that tell their order.
func (h *House) settle(sp spec) (order dateOrder, err error) {
	f, err := h.files.Open(sp.name)
	if err != nil {
		return order, err
	}
	defer f.Close()
	r, err := records.Open("", f)
	if err != nil {
		return order, nil // told when it is read
	}
	var (
		dates []int
		turns turning
	)
	for i, name := range lower(r.Cells()) {
		if c, _ := sp.column(name); c.kind == dateCell {
			dates = append(dates, i)
		}
	}
	for len(dates) > 0 {
		err := r.Next()
		if err == io.EOF || r.Broken() {
			break
		}
		for _, i := range dates {
			if cells := r.Cells(); i < len(cells) {
				order = turns.settle(order, strings.TrimSpace(cells[i]), r.Line())
			}
		}
	}
	h.turned(sp.name, order, turns)
	return order, nil
}

// The years of a record.
const (
	firstYear = 1900
	lastYear  = 2199
)

// cell hands on a date as 2034-03-10, with the time behind it if there is one.
func (o dateOrder) cell(text string) (string, error) {
	if t, err := time.Parse(time.DateOnly, text); err == nil { // the common cell
		return text, yearWithin(float64(t.Year()))
	}
	var year, month, day, rest string
	if m := dashed.FindStringSubmatch(text); m != nil {
		year, month, day, rest = m[1], m[2], m[3], m[4]
	} else if m := dotted.FindStringSubmatch(text); m != nil { // days stand first wherever dots are written
		day, month, year, rest = m[1], m[2], m[3], m[4]
	} else if m := slashed.FindStringSubmatch(text); m != nil {
		switch {
		case o == monthFirst, o != dayFirst && m[1] == m[2]:
			month, day, year, rest = m[1], m[2], m[3], m[4]
		case o == dayFirst:
			day, month, year, rest = m[1], m[2], m[3], m[4]
		case o == both:
			return "", fmt.Errorf("%q: some dates of the file have the month first and some the day: write it as 2034-03-10", clip.Text(text))
		default:
			return "", fmt.Errorf("%q: month or day first? no date of the file tells: write it as 2034-03-10", clip.Text(text))
		}
	} else if text == "" {
		return "", errors.New("no date: write it as 2034-03-10")
	} else {
		return "", fmt.Errorf("%q is not a date such as 2034-03-10", clip.Text(text))
	}
	y, _ := strconv.Atoi(year)
	if y <= 31 && dashed.MatchString(text) { // 30-3-28 may be the 30th or the 28th
		return "", fmt.Errorf("%q: which is the year? write it as 2034-03-10", clip.Text(text))
	}
	if y < 100 {
		return "", fmt.Errorf("%q: the year %s? write all of it, as %d", clip.Text(text), year, 2000+y)
	}
	if err := yearWithin(float64(y)); err != nil {
		return "", err
	}
	mo, _ := strconv.Atoi(month)
	d, _ := strconv.Atoi(day)
	t := time.Date(y, time.Month(mo), d, 0, 0, 0, 0, time.UTC)
	if mo > 12 && d >= 1 && d <= 12 && slashed.MatchString(text) {
		first := "month"
		if o == dayFirst {
			first = "day"
		}
		return "", fmt.Errorf("%q: the other dates have the %s first, and there is no month %d: write it as 2034-03-10", clip.Text(text), first, mo)
	}
	if mo < 1 || mo > 12 || t.Day() != d || d < 1 {
		return "", fmt.Errorf("%q: there is no such day", clip.Text(text))
	}
	return t.Format(time.DateOnly) + rest, nil
}

func yearWithin(y float64) error {
	switch {
	case y > 0 && y < 100:
		return fmt.Errorf("the year %.0f? write all of it, as %.0f", y, 2000+y)
	case !(y >= firstYear && y <= lastYear):
		return fmt.Errorf("%s is no year from %d to %d", digits(y), firstYear, lastYear)
	}
	return nil
}
