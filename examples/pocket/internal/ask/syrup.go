package ask

import (
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// What is taken of the instruments of the finish, 19 times of 20: a thermometer
// that jumps, depths and weather that nobody measured. Common practice.
const (
	waterBy     = 0.2 * units.FahrenheitDegree
	probeBy     = 0.4 * units.FahrenheitDegree
	depthBy     = units.Inch / 2
	barometerBy = 0.1 * units.InchMercury
	weatherBy   = 0.6 * units.InchMercury // where the elevation alone is known
)

// syrupDoubt is that of the hydrometer in the cup, sapDoubt of the instrument in
// the sap.
var (
	syrupDoubt = density.Doubt{Division: 0.5, Thermometer: 2 * units.FahrenheitDegree, Calibration: 0.2}
	sapDoubt   = density.Doubt{Division: 0.2, Thermometer: 2 * units.FahrenheitDegree, Calibration: 0.2}
)

// stays is said wherever a pot is over a fire.
const (
	stays  = "Stay with the pot: it foams over or burns in minutes. No number and no alarm is a reason to leave it."
	scalds = "Syrup near 219 F (104 C) burns through the skin at once and sticks. Keep children and animals away."
)

var syrupScreen = Screen{
	Key: "syrup", Title: "Is it syrup?", Lead: "Where this thermometer and this hydrometer must stand today, and how long the pot still takes.",
	Questions: []Question{
		{Key: "stop", Title: "Where it stops", Inputs: append(placeInputs(), setting("target", "target", "66.9 Brix"), setting("thermometer off", "shifted", "")), answer: stop},
		{Key: "cup", Title: "In the cup now", Inputs: []Input{
			{Key: "cup", Label: "Heat of the cup", Help: "the thermometer in the cup, as the hydrometer is read", Need: true, Range: temperatures(units.Celsius(5), units.Celsius(107))},
			{Key: "reads", Label: "The hydrometer reads", Range: hydrometerReadings()},
			setting("syrup hydrometer", "graduated", "60 F"),
			setting("hydrometer off", "off", ""),
			setting("place", "rules", "United States"),
		}, answer: cup},
		{Key: "watch", Title: "How long still", Extra: "watch", Inputs: []Input{
			{Key: "shows", Label: "The thermometer in the pot shows", Help: "press the stamp as you read it; pour nothing in meanwhile", Range: temperatures(units.Fahrenheit(178.5), units.Fahrenheit(250))},
		}, answer: watch},
	},
}

// hydrometerReadings are on the scale of the unit button.
func hydrometerReadings() Range {
	r := within("strength", parseReading, 20, 85, 1, "Brix")
	return r
}

// parseReading reads a mark of either scale as the strength that it stands for.
func parseReading(text string) (units.Brix, error) {
	if !strings.HasSuffix(strings.ToLower(text), "e") {
		return units.ParseBrix(text)
	}
	b, err := density.ParseBaume145(text)
	if err != nil {
		return 0, err
	}
	return density.BrixFromBaume(b)
}

// stop tells where the thermometer stops.
func stop(f *Form) {
	p, ok := f.place()
	target := f.brix("target")
	if !ok || f.failed {
		return
	}
	syrup, err := boil.SyrupPoint(target, p.pressure)
	if f.blame(err, p.by, "target", "target") {
		return
	}
	s := finish.ThermometerStop{Target: target, Pressure: p.pressure, ProbeBy: probeBy / 2, DepthBy: depthBy / 2, BarometerBy: barometerBy / 2}
	if p.by == "height" {
		s.BarometerBy = weatherBy / 2
	}
	parts, err := s.Parts()
	if f.blame(err, p.by, "Target", "target") {
		return
	}
	shift := f.shift(p)
	if f.failed {
		return
	}
	f.verdict("", "Stop at "+f.below(syrup.Add(shift)))
	f.row("stop", "The thermometer stops at", f.below(syrup.Add(shift)), (density.Coverage * parts.Total).Text(1), "at "+target.Text(1)+", if it is read as the water was")
	f.row("water", "Water boils at", f.temp(p.water), "", f.told(p))
	f.row("rise", "So much above water", syrup.Sub(p.water).TextIn(f.System, 3))
	if p.by != "water" && shift == 0 {
		f.caution("The thermometer is taken as true. Read it in boiling water: then its own error drops out.")
	}
	f.caution("The thermometer calls you, the hydrometer decides.")
	f.caution(scalds)
}

// shift is what the thermometer shows too much. Read in boiling water it counts
// already.
func (f *Form) shift(p place) units.TempDiff {
	if off, ok := read(f, "shifted", units.ParseTempDiff); ok && p.by != "water" {
		return off
	}
	return 0
}

// hydrometer is the one for syrup.
func (f *Form) hydrometer() density.Hydrometer {
	h := density.Hydrometer{GraduatedAt: f.temperature("graduated")}
	if off, ok := read(f, "off", units.ParseBrix); ok {
		h.ReadsHigh = off
	}
	return h
}

// standard is the rule on density.
func (f *Form) standard() (sugar.Standard, bool) {
	var place sugar.Jurisdiction
	if err := place.UnmarshalText([]byte(f.chosen("rules"))); f.blame(err, "rules") {
		return sugar.Standard{}, false
	}
	s, err := place.Standard()
	return s, !f.blame(err, "rules")
}

// cup tells what the hydrometer must read, and what it says.
func cup(f *Form) {
	at, target, h := f.temperature("cup"), f.brix("target"), f.hydrometer()
	rule, ok := f.standard()
	reading, read := read(f, "reads", parseReading)
	if !ok || f.failed {
		return
	}
	must, err := h.Reading(target, at)
	if f.blame(err, "cup", "target", "target", "Hydrometer.GraduatedAt", "graduated") {
		return
	}
	baume, err := h.Baume(target, at)
	if f.blame(err, "cup") {
		return
	}
	f.row("must", "In this cup it must read", must.Text(1), "", fmt.Sprintf("on a Baume stem %.1f Be", float64(baume)))
	f.caution(scalds)
	if !read {
		return
	}
	m, err := h.Measure(reading, at, syrupDoubt)
	if f.blame(err, "reads", "at", "cup") {
		return
	}
	f.row("true", "True strength", m.Brix.Text(1), m.Uncertainty.Text(1))
	advice, err := rule.Advise(m.Brix, m.Uncertainty, 0)
	if f.blame(err, "reads") {
		return
	}
	f.finished(advice, m, target, rule)
}

// finished words the verdict of the finish.
func (f *Form) finished(a sugar.Advice, m density.Measurement, target units.Brix, rule sugar.Standard) {
	rules := rule.Min.Text(1) + " or more"
	if rule.Max > 0 {
		rules = fmt.Sprintf("%.1f to %s", float64(rule.Min), rule.Max.Text(1))
	}
	f.row("rule", "The rule asks for", rules, "", rule.Place+"; local rules come first")
	switch a.Do {
	case sugar.BoilOn:
		f.verdict("wait", "Not yet syrup: boil on, and read again.")
	case sugar.ThinDown:
		f.verdict("stop", "Too far: take it off the fire now.")
		f.caution("Off the fire first. Thin it there with hot water or hot sap, in small pours, stirring after each. Stand back: it foams up and spits. Then bring it to the boil again, filter it, and read again. Mend and jars tells how much.")
	case sugar.Leave:
		if short := target - m.Brix; short > 0.05 { // a tenth is what the page shows
			f.verdict("wait", "Syrup by the rule, and not yet your "+target.Text(1)+": boil on a little, and read again.")
			break
		}
		f.verdict("good", "It is syrup: take it off the fire now.")
	default:
		f.verdict("wait", "Too close to tell: read again.")
		f.caution(readAgain + " " + closeTo(m, rule))
	}
	if a.Crystals {
		f.caution("From " + sugar.KeepsTo.Text(0) + " on crystals are likely in the jar.")
	}
	if m.Caveats.Extrapolated {
		f.caution("Above 194 F (90 C) the density is extrapolated, by less than 0.1 Brix.")
	}
	f.caution(stays)
}

// readAgain tells how to read so that the reading decides. Common practice.
const readAgain = "Read again: stem clean and dry, cup full and deep, the heat of the cup taken with the reading."

// closeTo tells what to do about a second reading that is as close to a limit of
// the rule.
func closeTo(m density.Measurement, rule sugar.Standard) string {
	if rule.Max > 0 && m.Brix > rule.Max-m.Uncertainty {
		return "If it stays so near the most, take it off the fire: it is thinned there with a little hot water, brought to the boil and read again until it is sure."
	}
	return "If it stays so near the least, it is boiled on until it is sure."
}

// nan tells that a figure is not known.
func nan[Q ~float64](q Q) bool { return math.IsNaN(float64(q)) }
