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

const aNumber = `([-+]?[0-9][0-9./ -]*|[-+]?\.[0-9]+)`

// liquid is a volume or a flow whose unit comes with or without its country.
var liquid = regexp.MustCompile(`(?i)^` + aNumber + `\s*(US |U\.S\. |imp |imp\. |imperial )?(gallons?|gals?|quarts?|qts?|pints?|pts?|fluid ounces?|fl\.? oz)(/h|/min)?$`)

// byTime are the ways in which people say by the hour.
var byTime = strings.NewReplacer(" an hour", "/h", " in an hour", "/h", " per hour", "/h", " a hour", "/h", "/hour", "/h", "/hr", "/h", " a minute", "/min", " per minute", "/min")

// Spell turns a quantity as people write it into one that package units reads:
// a bare gallon, quart or pint is that of the settings, and "8 gallons an hour"
// becomes "8 US gal/h". What it does not know it returns as it is.
func (s *Settings) Spell(text string) string {
	text = byTime.Replace(strings.Join(strings.Fields(text), " "))
	m := liquid.FindStringSubmatch(text)
	if m == nil {
		return text
	}
	country := "US "
	switch {
	case m[2] == "" && s.Gallon == 0:
		country = "" // which is refused
	case m[2] == "" && s.Gallon == units.ImperialGallon, len(m[2]) > 0 && strings.EqualFold(m[2][:1], "i"):
		country = "imp "
	}
	unit := "fl oz"
	switch strings.ToLower(m[3])[0] {
	case 'g':
		unit = "gal"
	case 'q':
		unit = "qt"
	case 'p':
		unit = "pt"
	}
	return strings.TrimSpace(m[1]) + " " + country + unit + m[4]
}

// named tells where a bare gallon can be named once.
func (s *Settings) named(err error) error {
	if errors.Is(err, units.ErrAmbiguous) && s.Gallon == 0 {
		return fmt.Errorf("%w; or name the gallon once for the whole folder, with the line %q in %s", err, "gallons: US", SettingsFile)
	}
	return err
}

// Volume reads a volume as people write it: a bare gallon, quart or pint is that
// of the settings, and refused where they do not name one.
func (s *Settings) Volume(text string) (units.Volume, error) {
	v, err := units.ParseVolume(s.Spell(text))
	return v, s.named(err)
}

// rate reads a flow such as "8 gallons an hour".
func (s *Settings) rate(text string) (units.VolumeRate, error) {
	v, err := units.ParseVolumeRate(s.Spell(text))
	if errors.Is(err, units.ErrNoUnit) || errors.Is(err, units.ErrUnit) {
		err = fmt.Errorf("%q: write the volume of an hour, as 8 gallons an hour", clip.Text(text))
	}
	return v, s.named(err)
}

var sides = regexp.MustCompile(`(?i)^(.+?)\s*(?:x|×|\bby\b)\s*(.+)$`)

// rectangle reads an area as two sides, "2 x 4 ft", or as one, "8 ft2".
func rectangle(text string) (units.Area, error) {
	m := sides.FindStringSubmatch(text)
	if m == nil {
		a, err := units.ParseArea(text)
		if err != nil {
			err = fmt.Errorf("%q: write width and length of the liquid, as 2 x 4 ft", clip.Text(text))
		}
		return a, err
	}
	long, err := units.ParseLength(m[2])
	if err != nil {
		return 0, err
	}
	wide, err := units.ParseLength(m[1])
	if errors.Is(err, units.ErrNoUnit) { // 2 x 4 ft
		unit := strings.TrimLeft(m[2], "0123456789./ -")
		wide, err = units.ParseLength(m[1] + " " + unit)
	}
	if err == nil && !(wide > 0 && long > 0) {
		err = fmt.Errorf("%q: both sides are longer than nothing", clip.Text(text))
	}
	return wide.Times(long), err
}

// squareFeet writes an area as a flag takes it.
func squareFeet(a units.Area) string {
	return strconv.FormatFloat(a.SquareFeet(), 'g', 12, 64) + " ft2"
}

var stretch = regexp.MustCompile(`(?i)^(?:([0-9]+(?:\.[0-9]+)?)\s*(?:hours?|hrs?|h))?\s*(?:and\s+)?(?:([0-9]+(?:\.[0-9]+)?)\s*(?:minutes?|mins?|m))?$`)

// Hours reads a stretch of time as people write it: 5 hours, 4 h 30 min, 8m.
func Hours(text string) (time.Duration, error) {
	text = strings.TrimSpace(text)
	m := stretch.FindStringSubmatch(text)
	if m == nil || m[1] == "" && m[2] == "" {
		return 0, fmt.Errorf("%q is not a stretch of time such as 5 hours or 8 minutes", clip.Text(text))
	}
	var sum float64
	for i, unit := range []time.Duration{time.Hour, time.Minute} {
		if m[i+1] != "" {
			n, err := strconv.ParseFloat(m[i+1], 64)
			if err != nil || !(n <= 1e4) {
				return 0, fmt.Errorf("%q is longer than a week", clip.Text(text))
			}
			sum += n * float64(unit)
		}
	}
	d := time.Duration(sum).Round(time.Second)
	if d > 7*24*time.Hour {
		return 0, fmt.Errorf("%q is longer than a week", clip.Text(text))
	}
	return d, nil
}

var clock = regexp.MustCompile(`(?i)^([0-9]{1,2})(?:[:.]([0-9]{2}))?\s*(am|pm|a\.m\.|p\.m\.)?$`)

// Clock reads a time of the day as people write it, 2pm or 14:30, and returns
// the time since midnight. A bare number is refused: 8 may be in the evening.
func Clock(text string) (time.Duration, error) {
	text = strings.TrimSpace(text)
	m := clock.FindStringSubmatch(text)
	bad := fmt.Errorf("%q is not a time of the day such as 14:30 or 2pm", clip.Text(text))
	if m == nil || m[2] == "" && m[3] == "" {
		return 0, bad
	}
	hour, _ := strconv.Atoi(m[1])
	minute, _ := strconv.Atoi("0" + m[2])
	if half := strings.ToLower(m[3]); half != "" {
		if hour < 1 || hour > 12 {
			return 0, bad
		}
		hour %= 12
		if half[0] == 'p' {
			hour += 12
		}
	}
	if hour > 23 || minute > 59 {
		return 0, bad
	}
	return time.Duration(hour)*time.Hour + time.Duration(minute)*time.Minute, nil
}
