package ask

import (
	"fmt"
	"slices"
	"strings"

	"example.org/sapreckoner/units"
)

// A house is the settings file, line by line: lines go back as they came, with
// their remarks and with what the phone does not use. The folder's own reader
// knows more ways to write a value and would weigh a third of the page; a test
// holds the two against each other.
type house struct {
	lines  []string
	values map[string]string // by name, without the remark
	tanks  []tank
	gallon string // what a bare one is; empty if the file does not say
}

// A tank is a line such as "big, 120 gallons, 2.5 gallons an inch".
type tank struct {
	name          string
	holds, byInch units.Volume // byInch is 0 if it is not told
}

// One file is asked of again and again.
var (
	lastText  string
	lastHouse = new(house)
)

func houseOf(text string) *house {
	if text != lastText {
		lastText, lastHouse = text, readHouse(text)
	}
	return lastHouse
}

// parts splits a line into name, value and the remark behind it.
func parts(line string) (name, value, remark string) {
	if strings.HasPrefix(strings.TrimSpace(line), "#") {
		return "", "", line
	}
	if i := strings.Index(line, " #"); i >= 0 {
		line, remark = line[:i], line[i:]
	}
	name, value, _ = strings.Cut(line, ":")
	return strings.ToLower(strings.Join(strings.Fields(name), " ")), strings.Join(strings.Fields(value), " "), remark
}

func readHouse(text string) *house {
	h := &house{values: map[string]string{}}
	text = strings.TrimPrefix(strings.ReplaceAll(text, "\r\n", "\n"), "\ufeff")
	if text = strings.TrimRight(text, "\n"); text != "" {
		h.lines = strings.Split(text, "\n")
	}
	var tanks []string
	for _, l := range h.lines {
		switch name, value, _ := parts(l); name {
		case "":
		case "tank":
			tanks = append(tanks, value)
		default:
			h.values[name] = value
		}
	}
	switch strings.ToLower(h.values["gallons"]) {
	case "us":
		h.gallon = "US"
	case "imperial":
		h.gallon = "imp"
	}
	var all units.Volume
	for _, value := range tanks {
		t := h.tank(value)
		h.tanks = append(h.tanks, t)
		all += t.holds
	}
	if len(tanks) > 0 {
		h.values["tank"] = all.String()
	}
	return h
}

// tank reads the line of a tank; one without a name is called by what it holds.
func (h *house) tank(value string) (t tank) {
	words := strings.Split(value, ",")
	if v, err := units.ParseVolume(h.plain(words[0])); err == nil {
		t.name, t.holds = words[0], v
		words = words[1:]
	} else {
		t.name = words[0]
		if words = words[1:]; len(words) > 0 {
			t.holds, _ = units.ParseVolume(h.plain(words[0]))
			words = words[1:]
		}
	}
	if len(words) > 0 {
		for _, end := range []string{" an inch", " per inch", "/inch", "/in"} {
			if inch, ok := strings.CutSuffix(strings.TrimSpace(words[0]), end); ok {
				t.byInch, _ = units.ParseVolume(h.plain(inch))
			}
		}
	}
	return t
}

// plain turns a quantity as people write it into one that package units reads.
func (h *house) plain(v string) string {
	v = strings.TrimSpace(strings.TrimPrefix(v, "marked at "))
	for _, hour := range []string{" an hour", " in an hour", " per hour"} {
		v = strings.Replace(v, hour, "/h", 1)
	}
	number, unit, ok := strings.Cut(v, " ")
	if !ok || h.gallon == "" {
		return v
	}
	base, per, _ := strings.Cut(unit, "/")
	for _, u := range []string{"gal", "gallon", "gallons", "qt", "quart", "quarts", "pt", "pint", "pints"} {
		if base != u {
			continue
		}
		v = number + " " + h.gallon + " " + map[byte]string{'g': "gal", 'q': "qt", 'p': "pt"}[u[0]]
		if per != "" {
			v += "/" + per
		}
	}
	return v
}

// value is a setting as the fields read it, or nothing.
func (h *house) value(name string) string {
	v := h.values[name]
	first, _, _ := strings.Cut(v, ",")
	switch name {
	case "name", "guideline", "place", "barrow":
		return v
	case "gallons", "units":
		return map[string]string{"us": "US", "imperial": "imperial", "metric": "metric"}[strings.ToLower(v)]
	case "fire":
		return strings.NewReplacer("indoors", "under a roof", "under the sky", "outdoors").Replace(strings.ToLower(v))
	case "collected by":
		how, _, _ := strings.Cut(strings.ToLower(v), " ")
		return strings.NewReplacer("buckets", "pails", "bags", "pails", "vacuum", "pump", ",", "").Replace(how)
	case "thermometer off", "hydrometer off":
		if off, ok := strings.CutSuffix(v, " high"); ok {
			return off
		}
		if off, ok := strings.CutSuffix(v, " low"); ok {
			return "-" + off
		}
		return v
	}
	return h.plain(first)
}

// taps is how many run into a pail, if the line of the pail tells it.
func (h *house) taps() string {
	_, behind, _ := strings.Cut(h.values["pail"], ",")
	number, _, _ := strings.Cut(strings.TrimSpace(behind), " ")
	return number
}

// vacuum is what a pump draws, if the line tells it.
func (h *house) vacuum() string {
	_, behind, _ := strings.Cut(h.values["collected by"], " at ")
	return strings.TrimSpace(behind)
}

// tell lists the settings, as they are written and as the fields take them, and
// what of them no field takes.
func (h *house) tell(r *Reply) {
	r.Values, r.Taken, r.Errors = map[string]string{}, map[string]string{}, map[string]string{}
	for _, in := range settings {
		v, ok := h.values[in.Key]
		if !ok || v == "" {
			continue
		}
		r.Values[in.Key], r.Taken[in.Key] = v, h.value(in.Key)
		if err := in.check(h.value(in.Key)); err != nil {
			r.Errors[in.Key] = reason(called(in.Label, err), units.Both)
		}
	}
	for _, t := range h.tanks {
		if t.byInch > 0 {
			r.Tanks = append(r.Tanks, Choice{t.name, t.name})
		}
	}
	metric := r.Taken["units"] == "metric"
	r.Title, r.Metric, r.House = r.Values["name"], &metric, strings.Join(h.lines, "\n")
	for i, l := range h.lines {
		if name, _, _ := parts(l); name != "" && !strings.Contains(l, ":") {
			r.Error = fmt.Sprintf("line %d: %q: write a name and a value with a colon between them", i+1, clip(l))
			return
		}
	}
}

// set writes one setting, in its line or in a new one. A remark behind it stays.
// The tanks are several lines, which the phone leaves alone.
func (h *house) set(r *Reply, q *Request) {
	value := strings.Join(strings.Fields(strings.ReplaceAll(q.Value, "#", "")), " ")
	out := slices.Clone(h.lines)
	at := slices.IndexFunc(out, func(l string) bool { name, _, _ := parts(l); return name == q.Name })
	switch {
	case value == "" && at >= 0:
		out = slices.Delete(out, at, at+1)
	case value != "" && at >= 0:
		_, _, remark := parts(out[at])
		out[at] = q.Name + ": " + value + remark
	case value != "":
		out = append(out, q.Name+": "+value)
	}
	changed := readHouse(strings.Join(out, "\n"))
	for _, in := range settings {
		if in.Key == q.Name && value != "" {
			if err := in.check(changed.value(q.Name)); err != nil {
				r.Errors = map[string]string{q.Name: reason(called(in.Label, err), q.system())}
				return
			}
		}
	}
	changed.tell(r)
}
