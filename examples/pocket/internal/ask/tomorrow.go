package ask

import (
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// What is usual of a day: common practice.
const (
	thaw   = 8 * time.Hour // in which the sap of a day flows
	warmup = 30 * time.Minute
)

var tomorrowScreen = Screen{
	Key: "tomorrow", Title: "Tomorrow", Lead: "Does it run, when to walk, what to boil first.",
	Questions: []Question{
		{Key: "days", Title: "The days ahead", Inputs: []Input{
			{Key: "low1", Label: "Low tonight", Need: true, Range: air()},
			{Key: "high1", Label: "High tomorrow", Need: true, Range: air()},
			{Key: "low2", Label: "Low of the next night", Range: air()},
			{Key: "high2", Label: "High of the next day", Range: air()},
			{Key: "low3", Label: "Low of the third night", More: true, Range: air()},
			{Key: "high3", Label: "High of the third day", More: true, Range: air()},
			setting("taps", "taps", "60"),
			setting("collected by", "collected", "pails"),
			{Key: "vacuum", Label: "Vacuum at the holes", Help: "of a pump", Start: "15 inHg", More: true, When: "collected=pump", Range: vacuums(0, 28*units.InchMercury)},
			{Key: "rundays", Label: "Running days of a season", Start: "30", More: true, Range: counts(10, 120)},
		}, answer: tomorrowDays},
		{Key: "walk", Title: "Walk and fire", Inputs: []Input{
			{Key: "waiting", Label: "Sap waiting in the tanks", Range: volumes(0, 1e6*units.USGallon)},
			{Key: "age", Label: "It waits since", Start: "0 h", Range: hours(0, 240*time.Hour)},
			unfolded(setting("sap waits at", "tempered", "42 F")),
			setting("pail", "pail", "2 US gal"),
			{Key: "each", Label: "Taps to a pail", Start: "2", More: true, Range: counts(1, 100)},
			setting("tank", "storage", "120 US gal"),
			setting("boils off", "rate", "8 US gal/h"),
			setting("evening", "evening", "5 h"),
			{Key: "sugar", Label: "Strength of the sap", Start: "2 Brix", More: true, Range: strengths(0.3, 20)},
			setting("target", "target", "66.9 Brix"),
			setting("elevation", "elevation", "0 ft"),
		}, answer: tomorrowWalk},
	},
}

func air() Range { return temperatures(units.Celsius(-60), units.Celsius(45)) }

// A forecast is the days ahead with the sap of a tap.
type forecast struct {
	days []season.Day
	runs []bool
	tap  []season.Figure[units.Volume]
}

// forecast reads the days ahead.
func (f *Form) forecast() (c forecast, ok bool) {
	date := f.now.Truncate(24 * time.Hour)
	for i := 1; i <= 3; i++ {
		keys := [2]string{fmt.Sprintf("low%d", i), fmt.Sprintf("high%d", i)}
		low, high := f.temperature(keys[0]), f.temperature(keys[1])
		if f.failed {
			return c, false
		}
		if i > 1 && !f.typed(keys[0]) && !f.typed(keys[1]) && !(i == 2 && (f.typed("low3") || f.typed("high3"))) {
			break
		}
		for k, t := range []units.Temperature{low, high} {
			if math.IsNaN(t.Celsius()) {
				f.failed = true
				f.note(&f.answer.Wants, lower(f.inputs[keys[k]].Label))
				return c, false
			}
		}
		if low.Compare(high) > 0 {
			f.refuse(fmt.Sprintf("high%d", i), fmt.Errorf("the day is colder than its night, %s: are they changed over?", f.temp(low)))
			return c, false
		}
		c.days = append(c.days, season.Day{Date: date.AddDate(0, 0, i), Min: low, Max: high})
	}
	collected, flowDays := f.chosen("collected"), f.count("rundays")
	vacuum := units.Pressure(0)
	if collected == "pump" {
		vacuum = f.pressure("vacuum")
		if own, err := units.ParsePressure(f.house.vacuum()); err == nil && !f.typed("vacuum") {
			vacuum = own
		}
	}
	if f.failed {
		return c, false
	}
	method, err := season.WithVacuum(vacuum)
	if f.blame(err, "vacuum") {
		return c, false
	}
	model, err := season.NewSapModel(method, float64(flowDays))
	if f.blame(err, "rundays") {
		return c, false
	}
	// The best day is the greater of the model's and what is remembered.
	aRun := season.Day{Min: units.Celsius(-5), Max: units.Celsius(5)}
	best := max(model.Day(aRun, season.SapFlowDay()).High, packing.PeakFromMemory)
	for _, d := range c.days {
		tap, runs := model.Day(d, season.SapFlowDay()), season.SapFlowDay().Met(d)
		if runs {
			tap.High = best
		}
		c.tap, c.runs = append(c.tap, tap), append(c.runs, runs)
	}
	return c, true
}

// tomorrowDays tells whether it runs.
func tomorrowDays(f *Form) {
	c, ok := f.forecast()
	taps := f.count("taps")
	if !ok || f.failed {
		return
	}
	t := Table{Key: "days", Title: "Sap likely, all taps", Head: []string{"Day", "Low", "High", "Runs", "Least", "Most"}}
	for i, d := range c.days {
		runs := "no"
		if c.runs[i] {
			runs = "yes"
		}
		all := c.tap[i].Times(float64(taps))
		t.Rows = append(t.Rows, []string{d.Date.Format("Mon Jan 2"), f.temp(d.Min), f.temp(d.Max), runs, all.Low.TextIn(f.System, 2), all.High.TextIn(f.System, 2)})
	}
	f.answer.Tables = append(f.answer.Tables, t)
	all := c.tap[0].Times(float64(taps))
	if c.runs[0] {
		f.verdict("good", "Tomorrow it runs, as far as weather tells.")
	} else {
		f.verdict("wait", "Tomorrow it hardly runs, as far as weather tells.")
	}
	f.row("least", "Sap tomorrow, at least", all.Low.TextIn(f.System, 2))
	f.row("most", "Sap tomorrow, at most", all.High.TextIn(f.System, 2), "", "days differ that much: no criterion is certain")
	if tapping.TooColdToDrill(c.days[0].Max) {
		f.caution("Too cold to drill tomorrow: frozen bark and wood split. Wait until the day is above " + tapping.ColdestDrilling().TextIn(f.System, 0) + ".")
	}
	f.note(&f.answer.Known, "a day runs that freezes at night and thaws by day: "+season.SapFlowDay().Source())
}

// tomorrowWalk tells when the pails are full and what the fire has to do.
func tomorrowWalk(f *Form) {
	c, ok := f.forecast()
	collected := f.chosen("collected")
	if !ok {
		return
	}
	if collected == "pails" {
		f.walkBy(c)
	}
	f.boilFirst(c)
	f.caution("Fetch no sap on ice or in the dark alone. Look at the sap and smell it: cloudy or sour sap is not boiled.")
}

func (f *Form) walkBy(c forecast) {
	size, each := f.volume("pail"), f.count("each")
	if own := f.house.taps(); own != "" && !f.typed("pail") && !f.typed("each") {
		each, _ = parseCount(own)
	}
	if f.failed {
		return
	}
	out, err := season.PailRound([]season.Pail{{Label: "at a tap", Size: size, Taps: each}}, c.tap[0], thaw, 24*time.Hour)
	if f.blame(err, "pail") {
		return
	}
	switch out[0].Overflow {
	case season.Lasts:
		f.row("walk", "Walk", "in the evening", "", "the pails last the day")
	default:
		f.row("walk", "Walk within", fmt.Sprintf("%.1f h", math.Floor(out[0].FullAfter.Hours()*10)/10), "", "of the first drops: on the best of days a pail is full by then")
	}
}

// boilFirst plans tomorrow's fire, with the most sap that may come.
func (f *Form) boilFirst(c forecast) {
	waiting, told := read(f, "waiting", units.ParseVolume)
	age, heat, storage := f.hours("age"), f.temperature("tempered"), f.volume("storage")
	rate, hours, strength, target, elevation := f.rate("rate"), f.hours("evening"), f.brix("sugar"), f.brix("target"), f.length("elevation")
	taps := f.count("taps")
	if f.failed {
		return
	}
	if !told {
		waiting, age = 0, 0
	}
	if waiting > storage*(1+1e-9) {
		f.refuse("waiting", fmt.Errorf("the tanks hold %s: give all of them in my sugarhouse", storage.TextIn(f.System, 3)))
		return
	}
	if hours <= warmup {
		f.refuse("evening", fmt.Errorf("all of it goes into warming the pan: keep the fire longer"))
		return
	}
	p, err := boil.PressureAt(elevation)
	if f.blame(err, "elevation") {
		return
	}
	lot, err := sugar.NewLot(units.USGallon, strength, heat)
	if f.blame(err, "tempered") {
		return
	}
	demand, err := boil.Heat(lot, target, p)
	if f.blame(err, "target") {
		return
	}
	water, err := density.Water(label)
	if f.blame(err, "rate") {
		return
	}
	power, err := fuel.PowerFor(water.MassRate(rate), fuel.Delivered, demand, fuel.Efficiency{})
	if f.blame(err, "rate") {
		return
	}
	// Sources contradict each other in days: the plan keeps to the shorter.
	keep, words := 12*time.Hour, "boil it on the day it is gathered"
	if g := pan.Spoiling(heat); g == pan.GrowthSlow || g == pan.GrowthBetween {
		keep, words = 24*time.Hour, "boil it by the day after"
	}
	var comes []pan.Gathering
	for i := range c.tap {
		comes = append(comes, pan.Gathering{Volume: c.tap[i].Times(float64(taps)).High, Brix: strength, Temperature: heat})
	}
	stands := pan.Standing{Gathering: pan.Gathering{Volume: waiting, Brix: strength, Temperature: heat}, Age: age}
	plan, err := pan.Backlog{Storage: storage, Hours: hours, Warmup: warmup, Heat: power.Middle, Syrup: target, At: p, Keep: keep}.PlanFrom([]pan.Standing{stands}, comes...)
	if f.blame(err, "waiting", "evening", "evening", "heat", "rate") {
		return
	}
	e := plan.Evenings[0]
	if waiting > 0 {
		f.row("first", "Boil first", waiting.TextIn(f.System, 3), "", "what waits, before tomorrow's: "+words)
	} else {
		f.row("first", "Boil first", "tomorrow's sap", "", words)
	}
	f.row("hours", "Fire tomorrow, at most", fmt.Sprintf("%.1f h", e.Hours.Hours()), "", "if the most sap comes")
	f.row("left", "Then still waiting", e.Waiting.TextIn(f.System, 2))
	if e.Spilled > 0 {
		f.verdict("stop", "The tanks may run over tomorrow: boil tonight, or find room for "+e.Spilled.TextIn(f.System, 2)+".")
	} else if e.Overdue > 0 {
		f.verdict("wait", "Some sap may wait too long: boil tonight.")
	}
}
