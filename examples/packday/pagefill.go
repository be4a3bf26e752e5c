package main

import (
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

func (p page) packPart(part *cli.Part) {
	s := p.given
	least := p.AtLeast(packing.CappingLeast())
	note := strings.ReplaceAll(p.pourHeat().Advice(), packing.CappingLeast().Text(units.ScaleFahrenheit, 0), least)
	if cold := p.cold(); len(cold) > 0 && p.pourHeat() == packing.RightToFill {
		note = "right at the filler; the empties are too cool for the " + list(cold) + ": see the heat at capping"
	}
	part.Row("at", "Pack at", cli.Temperature(s.packAt), note)
	part.Row("margin", "Above the label", cli.Share(s.margin, 1))
	var rows, fills [][]cli.Value
	labels, count := units.Volume(0), 0
	for i, l := range p.plan.Lines {
		name := cli.Words(l.Container.Name)
		rows = append(rows, []cli.Value{name, cli.Count(l.Count, ""), cli.SmallVolume(l.Container.Label), cli.Mass(l.Filling.NetWeight * units.Mass(l.Count)), cli.Mass(l.Filling.NetWeight)})
		fills = append(fills, []cli.Value{name, cli.Digits(cli.SmallVolume(l.Filling.Hot), 3), cli.Share(l.Filling.Overfill, 1), cli.Digits(cli.SmallVolume(l.Filling.Headspace), 2), cli.Temperature(p.seals[i].warmed)})
		labels += l.Container.Label * units.Volume(l.Count)
		count += l.Count
	}
	part.Table("containers", []cli.Column{{Key: "container", Head: "container"}, {Key: "count", Head: "fill"}, {Key: "label", Head: "label at " + p.Degrees(label)},
		{Key: "weight", Head: "net weight of all"}, {Key: "net_weight", Head: "of one"}}, rows)
	part.Table("filling", []cli.Column{{Key: "container", Head: "container"}, {Key: "fill_to", Head: "fill hot to"}, {Key: "overfill", Head: "above label"},
		{Key: "headspace", Head: "headspace"}, {Key: "warmed", Head: "once warmed"}}, fills)
	part.Row("count", "Containers", cli.Count(count, ""))
	part.Row("labels", "On their labels, at "+p.Degrees(label), cli.Total(totalDigits, cli.Volume(labels)))
	part.Row("packed", "In them, at "+p.Degrees(label), cli.Volume(p.plan.Packed))
	part.Row("left", "Left over, at "+p.Degrees(label), cli.Digits(cli.SmallVolume(p.plan.Left), 3), "keep it cold, and use it first")
	if p.short {
		part.Remark("No more containers are on hand or asked for: what is left over would fill more.")
	}
	if p.coldest < 0 {
		part.Remark("Whether the syrup still holds " + least + " once it has warmed the container is told where jars.csv gives its empty weight. " + p.howToFill("Warm the empties"))
		part.Remark(warmJars)
	}
	part.Remark("Labels are measured at " + p.Degrees(label) + ": filled hot to the label, a jar is short on the shelf. Weigh some full jars against the net weight, on a scale that has been checked.")
}

// scalePart tells the line of each label and what a full jar must weigh.
func (p page) scalePart(part *cli.Part) {
	var rows [][]cli.Value
	bare := false
	for _, l := range p.plan.Lines {
		if row, err := p.given.scaleRow(l.Container, p.pack.Brix()); err == nil { // the plan was made of it
			rows = append(rows, row)
		}
		bare = bare || l.Container.Mass == 0
	}
	part.Table("scale", scaleColumns, rows)
	part.Remark(scaleRemark)
	if bare {
		part.Remark(netRemark)
	}
}

// cold names the filled containers that may not seal as they are filled.
func (p page) cold() (names []string) {
	for i, l := range p.plan.Lines {
		if l.Count > 0 && p.seals[i].cold() {
			names = append(names, l.Container.Name)
		}
	}
	return names
}

// list words a list of one or more.
func list(names []string) string {
	last := len(names) - 1
	if last == 0 {
		return names[0]
	}
	return strings.Join(names[:last], ", ") + " and " + names[last]
}

// howToFill is how heat is kept until the lid is on.
func (p page) howToFill(warm string) string {
	return warm + ", fill the smallest first while the syrup is hottest, never above " + p.AtMost(packing.PourMost()) +
		", cap at once, and probe one filled jar: it must hold " + p.AtLeast(packing.CappingLeast()) + "."
}

// warmJars tells how empties are warmed.
const warmJars = "Warm glass slowly, in an oven set low or in hot water, drain it dry, and hold it with mitts (common practice). Never pour hot syrup into cold glass: it may crack. No plastic in the oven; fill hot only what its maker allows for it."

func (p page) cappingPart(part *cli.Part) {
	s := p.given
	least := p.AtLeast(packing.CappingLeast())
	part.Row("empties", "Empties at", cli.Temperature(s.wall))
	var rows [][]cli.Value
	unknown := false
	for i, l := range p.plan.Lines {
		if l.Count == 0 {
			continue
		}
		seal := p.seals[i]
		seals := "yes"
		switch {
		case !seal.known():
			seals, unknown = "unknown", true
		case seal.cold():
			seals = "may not"
		}
		rows = append(rows, []cli.Value{cli.Words(l.Container.Name), cli.Temperature(seal.warmed), cli.Words(seals), cli.Temperature(seal.warm)})
	}
	part.Table("seals", []cli.Column{{Key: "container", Head: "container"}, {Key: "warmed", Head: "once warmed"}, {Key: "seals", Head: "seals"},
		{Key: "warm", Head: "warm empties to"}}, rows)
	if cold := p.cold(); len(cold) > 0 {
		part.Item("By the cautious reading, once the glass has warmed, the syrup in the " + list(cold) + " would stand below " + least + ": such a jar may not seal, and mold may grow in it.")
		if p.pourHeat() == packing.TooCool {
			part.Item("No warm container mends syrup that is poured below " + least + ": heat it to " + p.AtLeast(packing.PourLeast()) + " first.")
		} else {
			part.Item(p.howToFill("Warm the empties to what the table says"))
			part.Item(warmJars)
		}
	}
	if unknown {
		part.Remark("The empty weight of a container that is unknown belongs into jars.csv.")
	}
	part.Remark("A balance of heat over syrup and wall. Capped at once, the middle of a jar is still hotter; slow filling and a draft take more. Hot syrup may crack cold glass.")
}

func (p page) sharePart(part *cli.Part) {
	by := map[string]cli.Column{"worked": {Key: "worked_h", Head: "hours"}, "taps": {Key: "taps", Head: "taps"}, "sugar": {Key: "sugar", Head: "sugar"}, "parts": {Key: "parts", Head: "parts"},
		"wood": {Key: "wood_cord", Head: "cords"}, several: {Key: "share", Head: "share"}}[p.by]
	decimals := 2
	if p.by == "taps" {
		decimals = 0
	}
	cols := []cli.Column{{Key: "name", Head: "name"}, by}
	for _, l := range p.plan.Lines {
		cols = append(cols, cli.Column{Key: "jars_" + key(l.Container.Name), Head: l.Container.Name})
	}
	cols = append(cols, cli.Column{Key: "volume", Head: "in all"})
	var rows [][]cli.Value
	var volumes []cli.Value
	all := units.Volume(0)
	whole := 0.0
	for _, h := range p.helpers {
		whole += h.Weight.InexactFloat64()
	}
	for i, b := range p.baskets {
		brought := p.helpers[i].Weight.InexactFloat64()
		weight := cli.Number(brought, decimals, "")
		if p.by == "sugar" {
			weight = cli.Mass(units.Kilograms(brought))
		}
		if p.by == several {
			weight = cli.Share(units.FractionShare(brought/whole), 1)
		}
		row := []cli.Value{cli.Words(b.Name), weight}
		volume := units.Volume(0)
		for k, n := range b.Counts {
			row = append(row, cli.Count(n, ""))
			volume += p.plan.Lines[k].Container.Label * units.Volume(n)
		}
		rows = append(rows, row)
		volumes = append(volumes, cli.Volume(volume))
		all += volume
	}
	for i, v := range cli.AddUp(totalDigits, cli.Volume(all), volumes...) {
		rows[i] = append(rows[i], v)
	}
	part.Table("shares", cols, rows)
	if p.took {
		part.Remark("What was taken already counts in each share, and is not in this table.")
	}
	part.Remark("Jars go out from the largest, each to whoever is then owed the most; what is left over is not in it.")
}

// totalDigits is how many digits a total has whose parts add up as they are
// printed.
const totalDigits = 4

func (p page) accountPart(part *cli.Part) {
	type line struct {
		name        string
		mass, sugar units.Mass
	}
	in := []line{{"in the cans", p.pool.lot.Mass(), p.pool.lot.Sugar()}}
	if !p.added.Empty() {
		in = append(in, line{"added to thin", p.added.Mass(), p.added.Sugar()})
	}
	var out []line
	if p.off > 0 {
		out = append(out, line{"boiled off", p.off, 0})
	}
	out = append(out,
		line{"stays in the filter", p.kept.Mass(), p.kept.Sugar()},
		line{"packed", p.packed, p.pack.Brix().Sugar(p.packed)},
		line{"left over", p.plan.LeftMass, p.leftSugar})
	var mass, sugar units.Mass
	for _, l := range in {
		mass, sugar = mass+l.mass, sugar+l.sugar
	}
	var rows [][]cli.Value
	for _, side := range [][]line{in, out} {
		var masses, sugars []cli.Value
		for _, l := range side {
			masses, sugars = append(masses, cli.Mass(l.mass)), append(sugars, cli.Mass(l.sugar))
		}
		masses, sugars = cli.AddUp(totalDigits, cli.Mass(mass), masses...), cli.AddUp(totalDigits, cli.Mass(sugar), sugars...)
		for i, l := range side {
			rows = append(rows, []cli.Value{cli.Words(l.name), masses[i], sugars[i]})
		}
	}
	part.Table("account", []cli.Column{{Key: "line", Head: "true mass"}, {Key: "mass", Head: "in all"}, {Key: "sugar", Head: "sugar"}}, rows)
	part.Remark("What comes in is what goes out: boiled off, in the filter, packed and left over. A scale in air shows a little less than the true mass, 0.08 percent of syrup.")
}

func (p page) keepPart(part *cli.Part) {
	crystals := func(at units.Temperature) cli.Value {
		risk, err := sugar.Crystals(p.pack.Brix(), at)
		if err != nil {
			risk = sugar.CrystalsUnknown
		}
		return cli.Words(risk.String())
	}
	// How much more sugar a gram of water carries than it holds, by the source that
	// holds most and by the one that holds least.
	excess := func(at units.Temperature) cli.Value {
		low, high := math.Inf(1), 0.0
		for _, s := range sugar.Solubilities() {
			x, err := s.Supersaturation(p.pack.Brix(), at)
			if err != nil {
				return cli.Words("-")
			}
			low, high = min(low, x), max(high, x)
		}
		return cli.Words(fmt.Sprintf("%.2f to %.2f", low, high))
	}
	part.Row("crystals", "Crystals on your shelf", crystals(p.given.store), "at its coldest, "+p.In(cli.Temperature(p.given.store)))
	var rows [][]cli.Value
	for _, f := range []float64{38, 50, 60, 68, 77} {
		at := units.Fahrenheit(f)
		rows = append(rows, []cli.Value{cli.Temperature(at), crystals(at), excess(at)})
	}
	part.Table("storage", []cli.Column{{Key: "at", Head: "shelf at"}, {Key: "crystals", Head: "crystals"}, {Key: "supersaturation", Head: "times saturated"}}, rows)
	if t, err := sugar.Vavrinecz.SaturationTemperature(p.pack.Brix()); err == nil {
		part.Row("saturated", "Saturated below", cli.Words(p.Degrees(t)), "pure sugar by Vavrinecz, give or take a Brix")
	}
	part.Remark("Times saturated: sugar to a part of water, against what published tables of pure sugar hold; above 1 crystals can grow, in weeks. Likely is said from 68 Brix on, where practice sees them from room temperature down (OMAFRA 2013), if every table agrees. They do no harm: warm the jar in hot water.")
}
