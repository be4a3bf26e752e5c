package ask

import (
	"fmt"
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

var mendScreen = Screen{
	Key: "mend", Title: "Mend and jars", Lead: "Leave the syrup, thin it, boil it on or blend it; then how to fill the jars.",
	Questions: []Question{
		{Key: "mend", Title: "The syrup", Inputs: []Input{
			{Key: "amount", Label: "Syrup", Help: "a volume or a weight on the scale, without the pot", Need: true, Range: amounts()},
			{Key: "reads", Label: "The hydrometer reads", Need: true, Range: hydrometerReadings()},
			{Key: "cup", Label: "Heat of the cup", Need: true, Range: temperatures(units.Celsius(5), units.Celsius(107))},
			{Key: "heat", Label: "Heat of the syrup as it was measured", Start: "68 F", More: true, Range: temperatures(units.Celsius(0), units.Celsius(107))},
			setting("syrup hydrometer", "graduated", "60 F"),
			setting("hydrometer off", "off", ""),
			setting("target", "target", "66.9 Brix"),
			setting("place", "rules", "United States"),
		}, answer: mend},
		{Key: "blend", Title: "Blended with another", Inputs: []Input{
			{Key: "amount2", Label: "The other syrup", Range: amounts()},
			{Key: "true2", Label: "Its true strength", Range: strengths(0, 85)},
		}, answer: blend},
		{Key: "jars", Title: "Jars", Inputs: []Input{
			{Key: "jar", Label: "The label says", Need: true, Range: small(5*units.Milliliter, 60*units.Liter)},
			unfolded(setting("fill at", "pour", "187 F")),
			{Key: "glass", Label: "An empty jar weighs", Range: masses(units.Gram, 100*units.Kilogram)},
			{Key: "brim", Label: "It holds to the brim", Range: small(5*units.Milliliter, 120*units.Liter)},
			{Key: "wall", Label: "Heat of the empty jars", Start: "68 F", More: true, Range: temperatures(units.Celsius(0), units.Celsius(110))},
			{Key: "margin", Label: "Filled above the label", Start: "0.5 %", More: true, Range: within("share", units.ParseShare, 0, 10*units.Percent, units.Percent, "%")},
		}, answer: jars},
	},
}

// An amount is a volume or a weight in air.
type amount struct {
	volume units.Volume
	weight units.Mass // if it was weighed
}

func parseAmount(text string) (a amount, err error) {
	if a.weight, err = units.ParseMass(text); err == nil {
		return a, nil
	}
	a.weight = 0
	a.volume, err = units.ParseVolume(text)
	return a, err
}

func amounts() Range {
	return Range{Kind: "amount", check: func(text string) error {
		a, err := parseAmount(text)
		switch {
		case err != nil:
			return err
		case a.weight != 0:
			return masses(units.Ounce, 6000*units.Pound).check(text)
		}
		return volumes(units.USFluidOunce, 500*units.USGallon).check(text)
	}}
}

// lot is an amount as it was measured at a heat. A scale in air shows less than
// the mass.
func (a amount) lot(b units.Brix, at units.Temperature) (sugar.Lot, error) {
	if a.weight == 0 {
		return sugar.NewLot(a.volume, b, at)
	}
	lot, err := sugar.NewLotByMass(a.weight, b, at)
	if err != nil {
		return lot, err
	}
	return sugar.NewLotByMass(a.weight*(a.weight/lot.WeightInAir()), b, at)
}

// lot is the syrup of the screen, with its measured strength.
func (f *Form) lot() (lot sugar.Lot, m density.Measurement, ok bool) {
	a, _ := read(f, "amount", parseAmount)
	reading, _ := read(f, "reads", parseReading)
	at, heat, h := f.temperature("cup"), f.temperature("heat"), f.hydrometer()
	if f.failed {
		return lot, m, false
	}
	m, err := h.Measure(reading, at, syrupDoubt)
	if f.blame(err, "reads", "at", "cup", "Hydrometer.GraduatedAt", "graduated") {
		return lot, m, false
	}
	lot, err = a.lot(m.Brix, heat)
	return lot, m, !f.blame(err, "amount", "at", "heat")
}

// mend tells what to do with the syrup.
func mend(f *Form) {
	lot, m, ok := f.lot()
	target := f.brix("target")
	rule, ruled := f.standard()
	if !ok || !ruled || f.failed {
		return
	}
	advice, err := rule.Advise(m.Brix, m.Uncertainty, 0)
	if f.blame(err, "reads") {
		return
	}
	f.row("true", "True strength", m.Brix.Text(1), m.Uncertainty.Text(1))
	switch advice.Do {
	case sugar.Leave:
		f.verdict("good", "Leave it: it is inside the rule. Heating it again costs color and clearness.")
		if advice.Crystals {
			f.caution("From " + sugar.KeepsTo.Text(0) + " on crystals are likely in the jar.")
		}
	case sugar.ThinDown:
		thin, err := sugar.Thin(lot, 0, label, target)
		if f.blame(err, "target") {
			return
		}
		f.verdict("stop", "Too thick: thin it with hot water.")
		f.row("add", "Water to add", f.ounces(thin.Added.WeightInAir()), f.ounces(units.Mass(m.Uncertainty/(m.Brix-target))*thin.Added.WeightInAir()), "by weight; by volume "+f.small(thin.Added.Volume())+" of cool water. Begin with half of it")
		f.row("makes", "Then there is", thin.Result.Volume().TextIn(f.System, 3))
		f.caution("Off the fire first. In small pours, stirring after each: it foams up and spits, and syrup burns deep. Then bring it to the boil again, filter it, and read again.")
	case sugar.BoilOn:
		off, err := sugar.Concentrate(lot, target)
		if f.blame(err, "target") {
			return
		}
		f.verdict("wait", "Too thin: boil it on.")
		f.row("off", "Water to boil off", off.Removed.WeightInAir().TextIn(f.System, 2), (units.Mass(m.Uncertainty/(target-m.Brix))*off.Removed.WeightInAir()).TextIn(f.System, 2))
		f.row("makes", "Then there is", off.Concentrate.Volume().TextIn(f.System, 3))
		f.caution(stays)
	default:
		f.verdict("wait", "Too close to tell: read again before anything is mended.")
		f.caution(readAgain + " " + closeTo(m, rule))
	}
	f.caution("Look into each can first, then smell it. Moldy syrup is thrown away with all that was poured to it; do not taste, skim or boil it again.")
	f.caution(scalds)
}

func (f *Form) ounces(m units.Mass) string {
	if f.metric() {
		return m.Text(units.Gram, 0)
	}
	return m.Text(units.Ounce, 1)
}

func (f *Form) small(v units.Volume) string {
	if f.metric() {
		return v.Text(units.Milliliter, 0)
	}
	return v.Text(units.USFluidOunce, 1)
}

// blend pours two syrups together.
func blend(f *Form) {
	a, told := read(f, "amount2", parseAmount)
	b := f.brix("true2")
	if !told || nan(b) || f.failed {
		return
	}
	lot, _, ok := f.lot()
	if !ok {
		return
	}
	other, err := a.lot(b, lot.Temperature())
	if f.blame(err, "amount2", "brix", "true2") {
		return
	}
	both, err := sugar.Blend(lot, other)
	if f.blame(err, "amount2") {
		return
	}
	f.row("blend", "Together they are", both.Brix().Text(2))
	f.row("blended", "So much of it", both.Volume().TextIn(f.System, 3))
	f.caution("Smell both before they are poured together.")
}

// pours is how hot syrup is filled, by the sources of package packing. In Celsius
// each end is rounded inward.
const pours = "Pour at 185 to 190 F (85 to 87 C), never above, so that it is still 180 F (83 C) as it is capped."

// jars tells how to fill them.
func jars(f *Form) {
	lot, m, ok := f.lot()
	if !ok {
		return
	}
	c := packing.Container{Label: f.volume("jar")}
	pour, wall, margin := f.temperature("pour"), f.temperature("wall"), f.share("margin")
	if glass, told := read(f, "glass", units.ParseMass); told {
		c.Mass = glass
	}
	if brim, told := read(f, "brim", units.ParseVolume); told {
		c.Brimful = brim
	}
	if f.failed {
		return
	}
	fill, err := c.Fill(m.Brix, pour, margin)
	if f.blame(err, "jar", "at", "pour", "Container.Brimful", "brim", "margin", "margin") {
		return
	}
	f.row("jars", "Full jars", fmt.Sprint(int(math.Floor(float64(lot.Mass()/fill.NetMass)*(1+1e-9)))), "", "as the syrup is now, if the filter keeps nothing")
	f.row("hot", "Fill each, hot, to", f.small(fill.Hot), "", "the label is then true at 68 F (20 C)")
	f.row("weight", "Its syrup weighs", f.ounces(fill.NetWeight))
	if c.Brimful > 0 {
		f.row("line", "Room above the hot syrup", f.small(fill.Headspace))
	}
	f.heatInJar(c, m.Brix, pour, wall)
	if heat, err := packing.PackingHeatOf(pour); err == nil && heat == packing.TooCool {
		f.verdict("stop", "Too cool to seal: heat the syrup to "+packing.PourLeast().TextIn(f.System, 0)+" before it is poured.")
	}
	f.caution(pours + " Hot syrup scalds and sticks, and cold glass may crack: warm the jars.")
}

// heatInJar tells whether a jar seals.
func (f *Form) heatInJar(c packing.Container, b units.Brix, pour, wall units.Temperature) {
	if c.Mass == 0 {
		return
	}
	heat, err := c.AfterFilling(b, pour, wall)
	if f.blame(err, "glass", "wall", "wall", "fillAt", "pour") {
		return
	}
	least := packing.CappingLeast()
	if heat.Celsius() >= least.Celsius()-1e-9 {
		f.row("heat", "Heat in the jar", f.temp(heat), "", "hot enough to seal")
		return
	}
	f.verdict("stop", "The jars cool the syrup below "+least.TextIn(f.System, 0)+": warm them.")
	note := "the syrup itself is too cool: heat it"
	if warm, err := c.WarmTo(b, pour, least); err == nil {
		note = "warm the empty jars to " + f.temp(warm)
	}
	f.row("heat", "Heat in the jar", f.temp(heat), "", note)
}
