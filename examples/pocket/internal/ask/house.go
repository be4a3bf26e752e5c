package ask

import (
	"fmt"
	"strings"
	"time"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// settings are the lines of the settings file that the phone uses. A field that
// names one takes it where nothing is typed.
var settings = []Input{
	{Key: "name", Label: "Name", Range: words()},
	{Key: "gallons", Label: "A bare gallon is", Range: choice("", "not said", "US", "a US gallon", "imperial", "an imperial gallon")},
	{Key: "units", Label: "Units", Range: choice("", "not said", "US", "US", "metric", "metric")},
	{Key: "elevation", Label: "Elevation of the pan", Range: heights(-1640*units.Foot, 16400*units.Foot)},
	{Key: "pan", Label: "Pan", Help: "its two sides, such as 2 x 4 ft, or its area", Range: areas(0.1*units.SquareFoot, 1e4*units.SquareFoot)},
	{Key: "boils off", Label: "It boils off", Help: "water in an hour, measured on your own pan", Range: rates(0.05*units.USGallonPerHour, 1e5*units.USGallonPerHour)},
	{Key: "depth", Label: "Depth kept in the pan", Range: lengths(units.Inch/4, 40*units.Inch)},
	{Key: "safe depth", Label: "Least depth that does not scorch", Range: lengths(units.Inch/8, 40*units.Inch)},
	{Key: "coals", Label: "Coals", Help: "time in which the boil falls to half once no more wood goes on", Range: hours(0, 12*time.Hour)},
	{Key: "fire", Label: "The fire stands", Range: choice("", "not said", "under a roof", "under a roof", "outdoors", "outdoors")},
	{Key: "evening", Label: "An evening's fire", Range: hours(time.Hour, 24*time.Hour)},
	{Key: "taps", Label: "Taps", Range: counts(1, 1e6)},
	{Key: "collected by", Label: "Collected by", Range: choice("", "not said", "pails", "pails", "tubing", "tubing", "pump", "a pump")},
	{Key: "pail", Label: "A pail holds", Range: volumes(0.1*units.USGallon, 100*units.USGallon)},
	{Key: "storage", Label: "All tanks hold", Range: volumes(units.USGallon, 1e6*units.USGallon)},
	{Key: "sap hydrometer", Label: "Sap hydrometer marked at", Range: graduations()},
	{Key: "syrup hydrometer", Label: "Syrup hydrometer marked at", Range: graduations()},
	{Key: "hydrometer off", Label: "Syrup hydrometer reads too much", Help: "as found by a check; less than nothing if it reads too little", Range: strengths(-5, 5)},
	{Key: "target", Label: "Strength to finish at", Range: strengths(60, 74)},
	{Key: "place", Label: "Rules of", Range: places()},
	{Key: "guideline", Label: "Tapping guideline", Range: guidelines()},
	{Key: "bit", Label: "Bit", Range: lengths(3*units.Millimeter, 20*units.Millimeter)},
	{Key: "hole depth", Label: "Depth of a hole", Help: "into the wood, without bark", Range: lengths(5*units.Millimeter, 4*units.Inch)},
}

func graduations() Range { return temperatures(units.Celsius(1), units.Celsius(40)) }

func places() Range {
	r := []string{"", "not said"}
	for _, j := range sugar.Jurisdictions() {
		r = append(r, j.String(), j.String())
	}
	return choice(r...)
}

func guidelines() Range {
	r := []string{"", "not said"}
	for _, g := range tapping.Guidelines() {
		r = append(r, g.ID(), g.ID())
	}
	return choice(r...)
}

// setting makes a field that takes a line of the settings where nothing is typed.
func setting(name, key, start string) Input {
	for _, in := range settings {
		if in.Key == name {
			in.Key, in.Setting, in.Start, in.More = key, name, start, true
			return in
		}
	}
	panic("no setting " + name)
}

// A house is the settings file, line by line, so that what the phone does not
// know goes back as it came.
type house struct {
	lines []string
}

// One file is asked of again and again.
var lastText string
var lastHouse = &house{}

func houseOf(text string) *house {
	if text != lastText {
		lastText, lastHouse = text, &house{}
		if text != "" {
			lastHouse.lines = strings.Split(strings.TrimRight(strings.ReplaceAll(text, "\r\n", "\n"), "\n"), "\n")
		}
	}
	return lastHouse
}

// named splits a line into name and value; remarks have none.
func named(line string) (name, value string) {
	line = strings.TrimPrefix(line, "\ufeff")
	if strings.HasPrefix(strings.TrimSpace(line), "#") {
		return "", ""
	}
	name, value, _ = strings.Cut(line, ":")
	return strings.ToLower(strings.Join(strings.Fields(name), " ")), strings.TrimSpace(value)
}

// value is a setting as the fields read it, or nothing.
func (h *house) value(name string) string {
	for _, l := range h.lines {
		if n, v := named(l); n == name {
			return h.plain(v)
		}
	}
	return ""
}

// plain turns a value as people write it into what package units reads.
func (h *house) plain(v string) string {
	v = strings.TrimPrefix(v, "marked at ")
	v = strings.ReplaceAll(v, " an hour", "/h")
	gallon := ""
	for _, l := range h.lines {
		if n, g := named(l); n == "gallons" {
			gallon = map[string]string{"US": "US gal", "imperial": "imp gal"}[g]
		}
	}
	if gallon == "" {
		return v
	}
	words := strings.Fields(v)
	for i, w := range words {
		base, rest, _ := strings.Cut(w, "/")
		if rest != "" {
			rest = "/" + rest
		}
		alone := i == 0 || words[i-1] != "US" && words[i-1] != "imp" && words[i-1] != "imperial"
		switch strings.TrimRight(base, ",") {
		case "gal", "gallon", "gallons":
			if alone {
				words[i] = gallon + rest
			}
		}
	}
	return strings.Join(words, " ")
}

// A tank is one of the lines "tank: big, 120 gallons, 2.5 gallons an inch".
type tank struct {
	name          string
	holds, byInch units.Volume
}

func (h *house) tanks() (all []tank) {
	for _, l := range h.lines {
		n, v := named(l)
		if n != "tank" {
			continue
		}
		part := strings.Split(v, ",")
		if len(part) != 3 {
			continue
		}
		t := tank{name: strings.TrimSpace(part[0])}
		var err, err2 error
		t.holds, err = units.ParseVolume(h.plain(strings.TrimSpace(part[1])))
		inch := strings.TrimSuffix(strings.TrimSpace(part[2]), "an inch")
		t.byInch, err2 = units.ParseVolume(h.plain(strings.TrimSpace(inch)))
		if err == nil && err2 == nil && t.holds > 0 && t.byInch > 0 {
			all = append(all, t)
		}
	}
	return all
}

// tell lists the settings, and what of them no field can read.
func (h *house) tell(r *Reply) {
	r.Values, r.Errors = map[string]string{}, map[string]string{}
	for _, in := range settings {
		v := h.value(in.Key)
		if v == "" {
			continue
		}
		r.Values[in.Key] = v
		if err := in.check(v); err != nil {
			r.Errors[in.Key] = reason(err, units.Both)
		}
	}
	for _, t := range h.tanks() {
		r.Tanks = append(r.Tanks, Choice{t.name, fmt.Sprintf("%s, %s", t.name, t.holds.Text(units.USGallon, 0))})
	}
	r.Title = r.Values["name"]
	if u := r.Values["units"]; u != "" {
		metric := u == "metric"
		r.Metric = &metric
	}
	r.House = strings.Join(h.lines, "\n")
}

// set writes one setting, in its line or in a new one.
func (h *house) set(r *Reply, q *Request) {
	r.Errors = map[string]string{}
	for _, in := range settings {
		if in.Key != q.Name {
			continue
		}
		value := strings.TrimSpace(q.Value)
		if value != "" {
			if err := in.check(h.plain(value)); err != nil {
				r.Errors[q.Name] = reason(err, q.system())
				return
			}
		}
		out, done := []string{}, false
		for _, l := range h.lines {
			if n, _ := named(l); n != q.Name {
				out = append(out, l)
			} else if value != "" && !done {
				out, done = append(out, q.Name+": "+value), true
			}
		}
		if value != "" && !done {
			out = append(out, q.Name+": "+value)
		}
		houseOf(strings.Join(out, "\n")).tell(r)
		return
	}
	r.Error = "no such setting: " + q.Name
}
