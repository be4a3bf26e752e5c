package main

import (
	"math"

	"example.org/sapreckoner/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

func (p page) packPart(part *cli.Part) {
	s := p.given
	// The temperature is in the range of the library: it made the plan.
	heat, _ := yield.PackingHeatOf(s.packAt)
	part.Row("at", "Pack at", cli.Temperature(s.packAt), heat.String())
	part.Row("margin", "Above the label", cli.Share(s.margin, 2))
	var rows, fills [][]cli.Value
	labels, count := units.Volume(0), 0
	for i, l := range p.plan.Lines {
		name := cli.Words(l.Container.Name)
		rows = append(rows, []cli.Value{name, cli.Count(l.Count, ""), cli.SmallVolume(l.Container.Label), cli.Mass(l.Filling.NetMass * units.Mass(l.Count)), cli.Mass(l.Filling.NetWeight)})
		fills = append(fills, []cli.Value{name, cli.SmallVolume(l.Filling.Hot), cli.Share(l.Filling.Overfill, 2), cli.SmallVolume(l.Filling.Headspace), cli.Temperature(p.capping[i])})
		labels += l.Container.Label * units.Volume(l.Count)
		count += l.Count
	}
	part.Table("containers", []cli.Column{{Key: "container", Head: "container"}, {Key: "count", Head: "fill"}, {Key: "label", Head: "label at 68 F"},
		{Key: "mass", Head: "hold together"}, {Key: "net_weight", Head: "net weight of one"}}, rows)
	part.Table("filling", []cli.Column{{Key: "container", Head: "container"}, {Key: "fill_to", Head: "fill hot to"}, {Key: "overfill", Head: "above label"},
		{Key: "headspace", Head: "headspace"}, {Key: "capping", Head: "capped at"}}, fills)
	part.Row("count", "Containers", cli.Count(count, ""))
	part.Row("labels", "On their labels, at 68 F", cli.Volume(labels))
	part.Row("packed", "In them, at 68 F", cli.Volume(p.plan.Packed))
	part.Row("left", "Left over, at 68 F", cli.SmallVolume(p.plan.Left), "keep it cold, and use it first")
	if p.short {
		part.Remark("The containers run out: what is left over would fill more.")
	}
	if p.coldest < 0 {
		part.Remark("Whether they still hold 180 F at capping is told where -container-file gives their empty weight.")
	}
	part.Remark("Labels are measured at 68 F: filled hot to the label, a jar is short on the shelf. Weigh some full jars against the net weight, on a scale that has been checked.")
}

func (p page) cappingPart(part *cli.Part) {
	s := p.given
	c := p.plan.Lines[p.coldest].Container
	at := p.capping[p.coldest]
	note := "it holds " + p.In(cli.Temperature(yield.CappingLeast()))
	if at.Compare(yield.CappingLeast()) < 0 {
		note = "below " + p.In(cli.Temperature(yield.CappingLeast())) + ": it may not seal. Warm the empties or pour hotter, and cap at once"
	}
	part.Row("coldest", "The coldest, "+c.Name, cli.Temperature(at), note)
	var rows [][]cli.Value
	for _, wall := range []units.Temperature{s.wall, units.Fahrenheit(120), units.Fahrenheit(150), units.Fahrenheit(180)} {
		then, err := c.AfterFilling(p.pack.Brix(), s.packAt, wall)
		if err != nil {
			then = units.Celsius(math.NaN())
		}
		pour, err := c.FillAt(p.pack.Brix(), yield.CappingLeast(), wall)
		if err != nil {
			pour = units.Celsius(math.NaN()) // hotter than syrup gets
		}
		rows = append(rows, []cli.Value{cli.Temperature(wall), cli.Temperature(then), cli.Temperature(pour)})
	}
	part.Table("walls", []cli.Column{{Key: "empties", Head: "empties at"}, {Key: "capping", Head: "full, at capping"}, {Key: "pour", Head: "pour at, to cap at the least heat"}}, rows)
	part.Remark("A balance of heat over syrup and wall, the most to hope for: slow filling and a draft take more. Above 190 F no source read advises to pack; hot syrup may crack cold glass.")
}

func (p page) sharePart(part *cli.Part) {
	by := map[string]cli.Column{"worked": {Key: "worked_h", Head: "hours"}, "taps": {Key: "taps", Head: "taps"}, "sugar": {Key: "sugar_kg", Head: "kg sugar"}, "parts": {Key: "parts", Head: "parts"}}[p.by]
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
	for i, b := range p.baskets {
		row := []cli.Value{cli.Words(b.Name), cli.Number(p.helpers[i].Weight.InexactFloat64(), decimals, "")}
		volume := units.Volume(0)
		for k, n := range b.Counts {
			row = append(row, cli.Count(n, ""))
			volume += p.plan.Lines[k].Container.Label * units.Volume(n)
		}
		rows = append(rows, append(row, cli.Volume(volume)))
	}
	part.Table("shares", cols, rows)
	part.Remark("Jars go out from the largest, each to whoever is then owed the most; what is left over is not in it.")
}

func (p page) accountPart(part *cli.Part) {
	line := func(name string, mass, sugar units.Mass) []cli.Value {
		return []cli.Value{cli.Words(name), cli.Mass(mass), cli.Mass(sugar)}
	}
	rows := [][]cli.Value{line("in the cans", p.pool.lot.Mass(), p.pool.lot.Sugar())}
	if !p.added.Empty() {
		rows = append(rows, line("added to thin", p.added.Mass(), p.added.Sugar()))
	}
	if p.off > 0 {
		rows = append(rows, line("boiled off", p.off, 0))
	}
	rows = append(rows,
		line("stays in the filter", p.kept.Mass(), p.kept.Sugar()),
		line("packed", p.packed, p.pack.Brix().Sugar(p.packed)),
		line("left over", p.plan.LeftMass, p.leftSugar))
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
	part.Row("crystals", "Crystals on your shelf", crystals(p.given.store), "at its coldest, "+p.In(cli.Temperature(p.given.store)))
	var rows [][]cli.Value
	for _, f := range []float64{38, 50, 60, 68, 77} {
		at := units.Fahrenheit(f)
		rows = append(rows, []cli.Value{cli.Temperature(at), crystals(at)})
	}
	part.Table("storage", []cli.Column{{Key: "at", Head: "shelf at"}, {Key: "crystals", Head: "crystals"}}, rows)
	if t, err := sugar.Vavrinecz.SaturationTemperature(p.pack.Brix()); err == nil {
		part.Row("saturated", "Saturated below", cli.Temperature(t), "pure sugar, give or take a Brix")
	}
	part.Remark("Common practice sees crystals from about 68 Brix at room temperature; a little excess often stays clear. They do no harm: warm the jar in hot water.")
}
