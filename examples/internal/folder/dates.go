package folder

import (
	"errors"
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"time"

	"example.org/sapreckoner/internal/base/clip"
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

// settle learns from a cell.
func (o dateOrder) settle(text string) dateOrder {
	if strings.IndexByte(text, '/') < 0 {
		return o
	}
	m := slashed.FindStringSubmatch(text)
	if m == nil {
		return o
	}
	tells := unsettled
	if a, _ := strconv.Atoi(m[1]); a > 12 {
		tells = dayFirst
	}
	if b, _ := strconv.Atoi(m[2]); b > 12 {
		tells = monthFirst
	}
	if tells == unsettled || tells == o {
		return o
	}
	if o != unsettled {
		return both
	}
	return tells
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
	if y < 100 {
		return "", fmt.Errorf("%q: the year %s? write all of it, as %d", clip.Text(text), year, 2000+y)
	}
	if err := yearWithin(float64(y)); err != nil {
		return "", err
	}
	mo, _ := strconv.Atoi(month)
	d, _ := strconv.Atoi(day)
	t := time.Date(y, time.Month(mo), d, 0, 0, 0, 0, time.UTC)
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
