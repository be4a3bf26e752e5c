package ask

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// An Entry is a line that was written down, as it was typed, with the phone's
// clock in milliseconds since 1970 and its local day and time.
type Entry struct {
	At    int64  `json:"at"`
	Day   string `json:"day"`
	Time  string `json:"time"`
	Sap   string `json:"sap"`
	Reads string `json:"reads"`
	Cold  string `json:"cold"`
	Syrup string `json:"syrup"`
	Wood  string `json:"wood"`
	Note  string `json:"note"`
}

var bookScreen = Screen{
	Key: "book", Title: "Write it down", Lead: "Sap, sugar, syrup and wood as they come, with the time.",
	Questions: []Question{
		{Key: "line", Title: "A line", Extra: "book", Inputs: []Input{
			{Key: "sap", Label: "Sap gathered", Range: volumes(0.1*units.USGallon, mostSap)},
			{Key: "reads", Label: "The sap hydrometer reads", Range: strengths(0, 40)},
			{Key: "cold", Label: "Heat of the sap as it was read", Range: temperatures(units.Celsius(0), units.Celsius(40))},
			{Key: "syrup", Label: "Syrup made", Range: volumes(units.USFluidOunce, 1e4*units.USGallon)},
			{Key: "wood", Label: "Wood burned", Help: "loads of the measure that my sugarhouse names, or cords", Range: woods()},
			{Key: "note", Label: "Note", Range: words()},
			setting("sap hydrometer", "graduated", "38 F"),
			setting("target", "target", "66.9 Brix"),
			setting("taps", "taps", ""),
		}, answer: bookLine},
		{Key: "season", Title: "The season so far", answer: bookSeason},
	},
}

// A wood is loads of the own measure, or a volume.
type wood struct {
	loads  float64
	volume units.Volume
}

func parseWood(text string) (w wood, err error) {
	number, own := strings.CutSuffix(strings.TrimSpace(text), "load")
	if !own {
		w.volume, err = units.ParseVolume(text)
		return w, err
	}
	w.loads, err = strconv.ParseFloat(strings.TrimSpace(number), 64)
	if err != nil || math.IsNaN(w.loads) || math.IsInf(w.loads, 0) {
		return w, fmt.Errorf("%q: write a number of loads", clip(text))
	}
	return w, nil
}

func woods() Range {
	return Range{Kind: "wood", check: func(text string) error {
		w, err := parseWood(text)
		switch {
		case err != nil:
			return err
		case w.volume != 0:
			return volumes(0.1*units.CubicFoot, 1000*units.Cord).check(text)
		case !(w.loads > 0 && w.loads <= 10000):
			return errors.New("more than nothing, and no more than 10000 loads")
		}
		return nil
	}}
}

// bookLine tells what a line still lacks.
func bookLine(f *Form) {
	if b, ok := read(f, "reads", units.ParseBrix); ok && f.sweet("reads", b) {
		return
	}
	if f.typed("reads") && !f.typed("cold") {
		f.note(&f.answer.Known, "with the heat of the sap the reading is brought to its true strength")
	}
}

// strength is the true strength of an entry's sap. Without a heat the reading
// counts as it is.
func strength(e Entry, graduated units.Temperature) (units.Brix, error) {
	reading, err := units.ParseBrix(e.Reads)
	if err != nil || e.Cold == "" {
		return reading, err
	}
	cold, err := units.ParseTemperature(e.Cold)
	if err != nil {
		return 0, err
	}
	return density.Hydrometer{GraduatedAt: graduated}.Brix(reading, cold)
}

// How well a season is measured where nobody told: a stick and a sap hydrometer,
// measures and a syrup hydrometer. Common practice.
var (
	sapMeasured   = yield.Measured{Volume: 5 * units.Percent, Brix: 0.2}
	syrupMeasured = yield.Measured{Volume: 2 * units.Percent, Brix: 0.5}
)

// A tally is what was written down, added up.
type tally struct {
	yield.Season
	days   map[string]bool
	unread units.Volume // sap without a reading
	burned wood
}

// add adds a line.
func (t *tally) add(e Entry, graduated units.Temperature, target units.Brix) error {
	if e.Sap != "" {
		v, err := units.ParseVolume(e.Sap)
		if err != nil {
			return err
		}
		t.days[e.Day] = true
		if e.Reads == "" {
			t.unread += v
		} else {
			b, err := strength(e, graduated)
			if err != nil {
				return err
			}
			lot, err := sugar.NewLot(v, b, label)
			if err != nil {
				return err
			}
			t.Sap = append(t.Sap, lot)
		}
	}
	if e.Syrup != "" {
		v, err := units.ParseVolume(e.Syrup)
		if err != nil {
			return err
		}
		lot, err := sugar.NewLot(v, target, label)
		if err != nil {
			return err
		}
		t.Syrup = append(t.Syrup, lot)
	}
	if e.Wood != "" {
		w, err := parseWood(e.Wood)
		if err != nil {
			return err
		}
		t.burned.loads, t.burned.volume = t.burned.loads+w.loads, t.burned.volume+w.volume
	}
	return nil
}

// bookSeason adds up the season: the lines of the year of the last.
func bookSeason(f *Form) {
	graduated, target := f.temperature("graduated"), f.brix("target")
	lines := f.request.Entries
	if f.failed || len(lines) == 0 {
		return
	}
	t := tally{days: map[string]bool{}}
	t.SapMeasured, t.SyrupMeasured, t.Taps = sapMeasured, syrupMeasured, f.count("taps")
	year, _, _ := strings.Cut(lines[len(lines)-1].Day, "-")
	for _, e := range lines {
		if !strings.HasPrefix(e.Day, year+"-") {
			continue
		}
		if err := t.add(e, graduated, target); err != nil {
			f.verdict("stop", "The line of "+e.Day+", "+e.Time+": "+reason(err, f.System))
			return
		}
	}
	t.Days = len(t.days)
	a, err := t.Account()
	if err != nil {
		f.verdict("stop", reason(err, f.System))
		return
	}
	f.row("sap", "Sap", (a.Sap+t.unread).TextIn(f.System, 3))
	if t.unread > 0 {
		f.row("unread", "Of it without a reading", t.unread.TextIn(f.System, 3), "", "not in the sugar below")
	}
	if !nan(a.SapBrix) {
		f.row("brix", "Its mean strength", a.SapBrix.Text(2))
		f.row("sugar", "Its sugar", a.SugarIn.TextIn(f.System, 3), a.SugarInLimits.TextIn(f.System, 2))
	}
	f.row("syrup", "Syrup", a.Syrup.TextIn(f.System, 3))
	if !nan(a.Ratio) {
		f.row("ratio", "Sap to syrup, as it came out", fmt.Sprintf("%.1f to 1", a.Ratio), "", fmt.Sprintf("without loss %.1f; what waits in tank and pan counts as lost here", a.Exact))
	}
	if a.Impossible {
		f.verdict("stop", "More sugar came out than went in: a reading, a volume or a line is wrong or missing.")
	}
	if t.burned.loads > 0 {
		f.row("loads", "Wood, in loads", strconv.FormatFloat(t.burned.loads, 'g', 6, 64))
	}
	if t.burned.volume > 0 {
		f.row("wood", "Wood", f.cords(t.burned.volume))
	}
}

func (f *Form) cords(v units.Volume) string {
	if f.metric() {
		return v.Text(units.CubicMeter, 2)
	}
	return v.Text(units.Cord, 2)
}
