package main

import (
	"fmt"
	"math"
	"slices"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// brief tells whether to mend the syrup, then the order of work.
func (p page) brief() {
	b := &p.Brief
	s := p.given
	fills := p.fills()
	b.Verdict = p.verdict(len(fills))
	switch {
	case p.off > 0:
		b.Answer("boil_off", "Boil off, water", cli.Weight(p.off, cli.Down), "weigh the pot")
	case !p.added.Empty():
		b.Answer("add", "Thin with", cli.Weight(p.added.WeightInAir(), cli.Down), p.thinnedWith()+", off the fire; then boil up and read again")
	}
	own, _ := p.flags.OnScale(p.reads)
	b.Answer("reads", "Hydrometer reads", own, "in the cup at "+p.Degrees(s.cup))
	filter := "Heat to"
	if p.off > 0 || !p.added.Empty() {
		filter = "Filter at" // it comes hotter from the fire
	}
	if math.IsNaN(float64(p.aid)) {
		b.Answer("filter", filter, cli.WholeDegree(s.filterAt, 1, cli.Down), cli.Plural(p.filters, "gravity filter")+", hot")
	} else {
		b.Answer("filter", filter, cli.WholeDegree(s.filterAt, 1, cli.Down), "through the press, "+p.In(cli.Weight(p.aid, cli.Nearest))+" of filter aid")
	}
	pour := "into warm jars, smallest first; cap at once; probe one: " + p.AtLeast(packing.CappingLeast())
	switch p.pourHeat() {
	case packing.EnoughToCap:
		pour = "cool for the filler, and it cools on the way: heat it to " + p.AtLeast(packing.PourLeast()) + " first"
	case packing.TooCool:
		pour = "too cool: no jar seals below " + p.AtLeast(packing.CappingLeast()) + ", heat it to " + p.AtLeast(packing.PourLeast()) + " first"
	}
	if len(fills) > 0 {
		b.Answer("pour", "Pour at", cli.WholeDegree(s.packAt, 1, cli.Down), pour)
	}
	if p.plan.Left >= units.USQuart/4 { // less is not worth a jar
		b.Answer("left", "Left over", cli.Quarts(p.plan.Left, cli.Down), "keep it cold, use it first")
	}
	p.jarList(fills)
	p.known()
	thin, keeping := p.tooThin() != "", cli.KeepingBrief(p.pack.Brix())
	b.Caution(thin && keeping == "", p.pack.Brix().Text(1)+" is thinner than the rule allows: "+p.rule()+".")
	b.Caution(thin || p.pack.Brix() >= sugar.KeepsTo, keeping)
	b.Caution(p.batches, perhapsSour(p.cans))
	b.Caution(true, s.outOfBlend())
	b.Warn(p.flags.House().Settings.Roof,
		cli.Scald("Syrup", p.AtMost(s.filterAt)),
		"Smell each can first. Any mold: throw it all away; do not taste, skim or boil it.",
	)
	if n := len(s.again); n > 0 {
		b.Further = append(b.Further, "Look again at "+cli.Plural(n, "row")+": -full lists them.")
	}
	b.Further = append(b.Further, "-full: why, color, seals, account, keeping.")
}

// thinCans names what is thinner than it keeps, beyond doubt.
func thinCans(cans []can) (names []string) {
	for _, c := range cans {
		if c.true.Brix+c.true.Uncertainty < sugar.KeepsFrom {
			names = append(names, c.name)
		}
	}
	return names
}

// known tells where the numbers come from.
func (p page) known() {
	b := &p.Brief
	if b.House = p.flags.Demo(); b.House != "" && !p.batches {
		b.House = "The place is invented: give -dir."
	}
	var names []string
	for _, c := range p.cans {
		name := c.name
		if !p.batches {
			name = p.In(amount(c.lot.Volume())) + " that read " + c.reading.Text(1)
		}
		names = append(names, name)
	}
	const few = 6
	if len(names) > few {
		names = []string{fmt.Sprintf("%d batches", len(names))}
	}
	b.Told(list(names))
	p.Mark(p.flags, "hydrometer", "hydrometer", p.given.stem)
	b.From(p.flags, p.from, p.given.pan.Words(p.Sheet, p.water), "filter-keeps", p.In(cli.Rough(cli.SmallVolume(p.given.keeps)))+" stays in a filter")
}

// amount shows a volume in what it is measured in.
func amount(v units.Volume) cli.Value {
	if v < units.USQuart {
		return cli.SmallVolume(v)
	}
	return cli.Volume(v)
}

// verdict is what to do with the syrup as it is.
func (p page) verdict(kinds int) string {
	count, all := 0, units.Volume(0)
	for _, l := range p.plan.Lines {
		count += l.Count
		all += l.Container.Label * units.Volume(l.Count)
	}
	fill := "fill " + cli.Plural(count, "container") + ", " + p.In(cli.Quarts(all, cli.Down)) + " by their labels."
	it := " it hot and " + fill
	if kinds == 0 {
		fill, it = "warm it.", " it hot. "+p.unfilled()
	}
	is := "It is " + p.pool.lot.Brix().Text(1) + ": "
	switch {
	case p.off > 0:
		return is + "boil it on to " + p.mark.lot.Brix().Text(1) + ", filter" + it
	case !p.added.Empty():
		return is + "thin it to " + p.mark.lot.Brix().Text(1) + ", filter" + it
	case p.do == sugar.ReadAgain:
		return is + "too close to a limit to tell. Read again before you " + fill
	case p.own && p.pool.verdict != sugar.Inside:
		return is + "as thin or thick as you asked, and outside the rule (" + p.rule() + "). Filter" + it
	}
	return is + "leave it. Filter" + it
}

// unfilled tells what becomes of syrup that fills no container.
func (p page) unfilled() string {
	const then = "keep it cold, and use it first."
	if p.short {
		return "No container is on hand for it: " + then
	}
	return "It is too little for the smallest container: " + then
}

// thinnedWith names what syrup is thinned with.
func (p page) thinnedWith() string {
	switch s := p.given; {
	case s.thinner >= sugar.KeepsFrom/2:
		return "the lighter syrup, hot"
	case s.thinner > 0:
		return "hot sap"
	}
	return "hot water"
}

// fills are the lines of the plan that are filled, the smallest first, as they are
// poured.
func (p page) fills() (all []int) {
	for i, l := range p.plan.Lines {
		if l.Count > 0 {
			all = append(all, i)
		}
	}
	slices.SortStableFunc(all, func(a, b int) int {
		if p.plan.Lines[a].Container.Label < p.plan.Lines[b].Container.Label {
			return -1
		}
		return 1
	})
	return all
}

// jarList is what to fill, how warm the empties must be, and who gets what: a column a
// kind, or where that is too wide a row a kind, and -full tells who gets it.
func (p page) jarList(fills []int) {
	cold := len(p.cold()) > 0
	cols, wide := []cli.Column{{Key: "what", Head: "smallest first"}}, len("warm empties to")
	fill, warm := []cli.Value{cli.Words("fill")}, []cli.Value{cli.Words("warm empties to")}
	for _, basket := range p.baskets {
		wide = max(wide, len(basket.Name))
	}
	var tall [][]cli.Value
	for _, i := range fills {
		name, count, to := p.plan.Lines[i].Container.Name, cli.Count(p.plan.Lines[i].Count, ""), cli.WholeDegree(p.seals[i].warm, 5, cli.Up)
		cols, fill, warm = append(cols, cli.Column{Key: key(name), Head: name}), append(fill, count), append(warm, to)
		row := []cli.Value{cli.Words(name), count}
		if cold {
			row = append(row, to)
		}
		tall = append(tall, row)
		wide += 2 + max(len(name), len("155 F"))
	}
	rows := [][]cli.Value{fill}
	if cold {
		rows = append(rows, warm)
	}
	for _, basket := range p.baskets {
		row := []cli.Value{cli.Words(basket.Name)}
		for _, i := range fills {
			row = append(row, cli.Count(basket.Counts[i], ""))
		}
		rows = append(rows, row)
	}
	switch {
	case len(fills) == 0:
	case wide <= cli.BriefColumns:
		p.Brief.List(cols, rows)
	case cold:
		p.Brief.List([]cli.Column{cols[0], {Key: "fill", Head: "fill"}, {Key: "warm", Head: "warm empties to"}}, tall)
	default:
		p.Brief.List([]cli.Column{cols[0], {Key: "fill", Head: "fill"}}, tall)
	}
}

// pourHeat is how the syrup that is poured stands to published advice.
func (p page) pourHeat() packing.PackingHeat {
	heat, _ := packing.PackingHeatOf(p.given.packAt) // in range, or there were no plan
	return heat
}

// outOfBlend words which cans are thrown away; nothing if none is.
func (s *setup) outOfBlend() string {
	if len(s.moldy) == 0 {
		return ""
	}
	return "Moldy, and in no blend: " + list(s.moldy) + ". Throw it away."
}

// perhapsSour words which cans are thin; nothing if none is.
func perhapsSour(cans []can) string {
	thin := thinCans(cans)
	if len(thin) == 0 {
		return ""
	}
	return "Thin, and perhaps fermented: " + list(thin) + ". Sour goes into no blend."
}
