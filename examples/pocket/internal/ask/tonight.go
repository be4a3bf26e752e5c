package ask

import (
	"fmt"
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// label is the temperature at which syrup is sold by volume: 68 F.
var label = units.Celsius(20)

// mostSap is more than any sugarhouse gathers in a day.
const mostSap = 1e5 * units.USGallon

var tonightScreen = Screen{
	Key: "tonight", Title: "Tonight", Lead: "What the sap makes, when it is done, when the last wood goes on, where to take it off.",
	Questions: []Question{
		{Key: "sap", Title: "The sap", Inputs: []Input{
			{Key: "how", Label: "The sap is told", Start: "volume", Range: choice("volume", "by volume", "dip", "by a stick in a tank")},
			{Key: "volume", Label: "Sap", Need: true, When: "how=volume", Range: volumes(0.1*units.USGallon, mostSap)},
			{Key: "tank", Label: "Tank", Start: "", When: "how=dip", Help: "the tanks named in my sugarhouse", Range: tankChoice()},
			{Key: "inch", Label: "An inch of depth holds", When: "how=dip", Help: "of a tank with straight sides that is not named", Range: volumes(0.01*units.USGallon, 1000*units.USGallon)},
			{Key: "dip", Label: "Depth on the stick", Need: true, When: "how=dip", Range: lengths(units.Inch/8, 240*units.Inch)},
			{Key: "instrument", Label: "Read by", Start: "hydrometer", Range: choice("hydrometer", "a hydrometer", "refractometer", "a refractometer that corrects itself")},
			{Key: "reads", Label: "It reads", Need: true, Range: strengths(0, 40)},
			{Key: "cold", Label: "Heat of the sap as it was read", Need: true, When: "instrument=hydrometer", Range: temperatures(units.Celsius(0), units.Celsius(40))},
			setting("sap hydrometer", "graduated", "38 F"),
			setting("target", "target", "66.9 Brix"),
		}, answer: tonightSap},
		{Key: "fire", Title: "The fire", Inputs: []Input{
			{Key: "lit", Label: "The fire is lit at", Need: true, Range: clocks()},
			{Key: "by", Label: "Done by", Help: "if the pan is to be done by a time; a pot comes after it", Range: clocks()},
			setting("boils off", "rate", "8 US gal/h"),
			setting("pan", "pan", "8 ft2"),
			setting("depth", "depth", "2 in"),
			setting("safe depth", "safe", "1 in"),
			setting("coals", "coals", "8 min"),
			setting("pot boils off", "pot", "1 US gal/h"),
			setting("fire", "stands", ""),
			{Key: "tempered", Label: "Heat of the sap in the tank", Start: "38 F", More: true, Range: temperatures(units.Celsius(0), units.Celsius(60))},
			setting("elevation", "elevation", "0 ft"),
		}, answer: tonightFire},
	},
}

// tankChoice is a tank of the sugarhouse, by its name.
func tankChoice() Range {
	r := choice("", "not named")
	r.check = func(string) error { return nil } // the form looks it up
	return r
}

// sapVolume is what was gathered, by volume or by the stick.
func (f *Form) sapVolume() units.Volume {
	if f.chosen("how") == "volume" {
		return f.volume("volume")
	}
	dip, name := f.length("dip"), f.chosen("tank")
	if name == "" {
		byInch := f.volume("inch")
		if nan(byInch) {
			f.failed = true
			f.note(&f.answer.Wants, "a tank of my sugarhouse, or what an inch of depth holds")
		}
		return byInch * units.Volume(dip.Inches())
	}
	for _, t := range f.house.tanks {
		if t.name != name || t.byInch == 0 {
			continue
		}
		v := t.byInch * units.Volume(dip.Inches())
		if v > t.holds*(1+hair) {
			f.refuse("dip", fmt.Errorf("that would be %s, and the tank %s holds %s: check the stick", v.TextIn(f.System, 3), t.name, t.holds.TextIn(f.System, 3)))
		}
		return v
	}
	f.refuse("tank", fmt.Errorf("%q is no tank of the settings", clip(name)))
	return units.Volume(math.NaN())
}

// sapStrength reads the sap's instrument.
func (f *Form) sapStrength() (m density.Measurement, ok bool) {
	reading, graduated := f.brix("reads"), units.Celsius(20)
	var cold units.Temperature
	var err error
	byHydrometer := f.chosen("instrument") == "hydrometer"
	if byHydrometer {
		cold, graduated = f.temperature("cold"), f.temperature("graduated")
	}
	if f.failed || f.sweet("reads", reading) {
		return m, false
	}
	if byHydrometer {
		m, err = density.Hydrometer{GraduatedAt: graduated}.Measure(reading, cold, sapDoubt)
	} else {
		m, err = density.Refractometer{Compensated: true}.Measure(reading, label, sapDoubt)
	}
	if f.blame(err, "reads", "at", "cold", "Hydrometer.GraduatedAt", "graduated") {
		return m, false
	}
	if b := m.Brix; !(b >= 0.3 && b <= 40) {
		f.refuse("reads", &units.RangeError{Arg: "sap", What: "strength of the sap", Value: float64(b), Low: 0.3, High: 40, Unit: "Brix", Hint: "sap is near 2 Brix: check the reading, its temperature, and the instrument in water"})
		return m, false
	}
	return m, true
}

// sweetest is the strongest sap that a bare number is taken for, as in the programs:
// the bound is our own.
const sweetest = 12

// sweet asks a reading of sap back whose point seems lost. What is meant all the
// same is typed with its unit.
func (f *Form) sweet(key string, b units.Brix) bool {
	if !(b > sweetest) || !bare(f.request.Fields[key][0]) {
		return false
	}
	text := b.Text(1)
	f.refuse(key, fmt.Errorf("sap of %s? it is 1 to 4: is a point lost? Type %[1]s if it is so", text))
	return true
}

// tonightSap tells the strength and the syrup to expect.
func tonightSap(f *Form) {
	v := f.sapVolume()
	target := f.brix("target")
	m, ok := f.sapStrength()
	if !ok || f.failed {
		return
	}
	lot, err := sugar.NewLot(v, m.Brix, label)
	if f.blame(err, "volume") {
		return
	}
	syrup, err := sugar.NewLotByMass(target.Of(lot.Sugar()), target, label)
	if f.blame(err, "target") {
		return
	}
	if f.chosen("how") == "dip" {
		f.row("volume", "Sap by the stick", v.TextIn(f.System, 3))
	}
	f.row("true", "True strength of the sap", m.Brix.Text(2), m.Uncertainty.Text(2))
	share := float64(m.Uncertainty) / float64(m.Brix)
	f.row("syrup", "Syrup to expect, at most", syrup.Volume().TextIn(f.System, 3), (syrup.Volume()*units.Volume(share)).TextIn(f.System, 2), "at "+target.Text(1)+", if nothing is lost")
	if rule, err := yield.RuleOf86(m.Brix); err == nil {
		f.row("rule", "By the rule of 86", (v/units.Volume(rule)).TextIn(f.System, 3), "", fmt.Sprintf("exact: %.1f of sap to 1 of syrup, the rule: %.1f", float64(lot.Volume()/syrup.Volume()), rule))
	}
	f.row("off", "Water to boil off", (lot.Mass()-syrup.Mass()).TextIn(f.System, 3))
}

// tonightFire tells the times.
func tonightFire(f *Form) {
	v := f.sapVolume()
	target := f.brix("target")
	m, ok := f.sapStrength()
	lit, _ := f.clock("lit")
	by, wanted := f.clock("by")
	if !ok || f.failed {
		return
	}
	e, ok := f.evening(v, m.Brix, target)
	if !ok {
		return
	}
	f.fireCautions()
	c := e.rig.Compartments[0]
	if v < c.Area.Volume(c.SafeDepth) {
		f.verdict("stop", "Too little for this pan: it would lie "+v.Depth(c.Area).TextIn(f.System, 2)+" deep and scorch. Boil it in a pot, or keep it cold until there is more.")
		return
	}
	o, err := e.run(v)
	if f.blame(err, "rate", "half-life of the coals", "coals") {
		return
	}
	if o.SapLeft > units.Kilogram {
		f.verdict("stop", "That is more than three days of fire: gather less at a time, or boil faster.")
		return
	}
	if o.ToCome > 0 {
		f.verdict("stop", "Do not light this fire as it is: its coals alone boil the pan below its safe depth, even if no wood goes on after the first. Gather more, or use a pot. If it burns already, pour in sap or water before the level is low.")
		return
	}
	f.row("done", "The pan is done at", at(lit+o.Ended), "", "the clock starts with a hot arch")
	f.row("wood", "Last wood at", at(lit+o.LastWood), "", "the coals do the rest: stay with them")
	f.takeOff(e, o, lit)
	if wanted {
		f.doneBy(e, o, v, lit, by)
	}
}

// fireCautions come with every fire.
func (f *Form) fireCautions() {
	if f.chosen("stands") == "under a roof" {
		f.caution("Carbon monoxide has no smell and kills: keep doors and roof vents open, the flue damper open while coals glow, and an alarm on the wall.")
	} else {
		f.caution("Never boil in a closed room: a fire needs air and a flue, and carbon monoxide has no smell.")
	}
	f.caution("Stay with the pan: it foams over or boils dry in minutes. Pour in sap or water as the level nears the safe depth. Never light a fire under an empty pan. Live coals are never raked out.")
	f.caution("Boiling sap and syrup scald.")
}
