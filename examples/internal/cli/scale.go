package cli

import (
	"fmt"
	"strings"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/units"
)

// Readings that may be on either scale: syrup of 60 Brix is 32.6 Be, and a reading of
// sap under 20 or of syrup over 45 is on the scale of Brix.
const (
	leastEither = 20
	mostEither  = 45
	mostReading = 90 // far past syrup
)

// A Reading is what a hydrometer shows.
type Reading struct {
	Value  float64
	Baume  bool // or Brix
	Bare   bool // no scale was said
	IsRead bool
}

// Brix returns what the hydrometer would read on a scale of Brix.
func (r Reading) Brix(h density.Hydrometer, at units.Temperature) (units.Brix, error) {
	if !r.Baume {
		return units.Brix(r.Value), nil
	}
	b, err := h.BrixFromBaume(density.Baume145(r.Value), at)
	if err != nil {
		return 0, err
	}
	return h.Reading(b, at)
}

// Reading declares a flag of what a hydrometer shows, on the scale that its unit names.
func (f *Flags) Reading(r *Reading, name, help string) {
	f.add(name, "", help, &value{f: f, name: name, set: func(s string) (err error) {
		number, unit, _ := strings.Cut(strings.TrimSpace(attached.ReplaceAllString(s, "$1 $2")), " ")
		if unit = strings.TrimSpace(unit); kindOf(unit) != strength {
			return fmt.Errorf("%q: write a reading as 59.5 Brix or 31.5 Be", clip.Text(s))
		}
		*r, err = f.reading(number, unit)
		return err
	}})
}

// reading reads a strength. A bare one is on the scale that the settings name; without
// that one which may be on either scale is asked back.
func (f *Flags) reading(number, unit string) (r Reading, err error) {
	r.IsRead, r.Bare = true, unit == ""
	var b units.Brix
	if err = b.UnmarshalText([]byte(number + " Brix")); err != nil {
		return r, fmt.Errorf("%q: write a reading as 59.5 Brix or 31.5 Be", clip.Text(number))
	}
	if r.Value = float64(b); unit == "" && r.Value > mostReading {
		or := ""
		if r.Value <= hottest {
			or = " or " + number + " C"
		}
		return r, fmt.Errorf("%s: no hydrometer reads so much: if a thermometer shows it, write %s F%s", number, number, or)
	}
	if u := strings.ToLower(unit); u != "" {
		r.Baume = strings.HasPrefix(u, "b") && u != "brix" && u != "bx"
		return r, nil
	}
	switch scale := f.own().Scale; {
	case scale == folder.BaumeScale && r.Value >= leastEither:
		if r.Baume = true; r.Value > mostEither {
			return r, fmt.Errorf("%s: that is no reading of syrup on a Baume scale, which the settings name: write %s Brix, if it is", number, number)
		}
	case scale == folder.NoScale && r.Value >= leastEither && r.Value <= mostEither:
		return r, fmt.Errorf("%s may be Brix or Baume, and they are far apart: write %s Brix or %s Be, or name the scale of the hydrometer once in %s, as in: scale: Brix", number, number, number, folder.SettingsFile)
	}
	return r, nil
}
