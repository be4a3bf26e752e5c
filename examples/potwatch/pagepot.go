package main

import (
	"fmt"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

func (p page) potPart(part *cli.Part) {
	k := p.pot
	part.Row("read", "Weighed and read", cli.Mass(k.read.Gross), "at "+k.read.Brix.Text(1), "the pot alone "+p.In(cli.Mass(k.read.Tare)))
	part.Row("stop", "Take the pot off at", cli.Mass(k.stop.Gross), "give or take "+p.In(cli.Rough(cli.Mass(k2*k.stop.GrossBy))), "pot and syrup together")
	part.Row("off", "Water off from the reading", cli.Mass(k.stop.Off))
	part.Row("brix", "Syrup at that weight", cli.Brix(p.given.target, 1), "give or take "+(k2*k.stop.BrixBy).Text(2)+", of the reading for the most part")
	if k.now > 0 {
		part.Row("now", "It is now", cli.Mass(p.given.grossNow), k.now.Text(1)+", give or take "+(k2*k.nowBy).Text(2))
		if left := p.given.grossNow - k.stop.Gross; left > 0 {
			part.Row("left", "Still to boil off", cli.Mass(left))
		} else {
			part.Row("past", "Boiled off too much", cli.Mass(-left), "take it off, and read it before it is thinned")
		}
	}
	if k.batch.Mass > 0 {
		p.firePart(part)
	}
	part.Remark("Nothing poured in, nothing spilled, and what a cup took goes back. Altitude, weather and thermometer do not enter.")
}

func (p page) firePart(part *cli.Part) {
	if f := p.pot.fire; !f.past {
		part.Row("left_min", "At an even fire it takes", minutes(f.left), "from the last weighing")
		p.fireRows(part, f, func(time.Duration) string { return "from the last weighing" })
	}
}

func (p page) productPart(part *cli.Part) {
	m := p.product
	var rows [][]cli.Value
	for i, f := range m.points {
		rows = append(rows, []cli.Value{cli.Words(letter(i)),
			span(cli.TempDiff(f.Low), cli.TempDiff(f.High)), span(cli.Temperature(f.low), cli.Temperature(f.high)),
			span(cli.Share(f.moisture.Low, 1), cli.Share(f.moisture.High, 1)), span(cli.Mass(f.least), cli.Mass(f.most))})
	}
	part.Table("points", []cli.Column{{Key: "source", Head: ""}, {Key: "above_water", Head: "above water"}, {Key: "today", Head: "today"},
		{Key: "water", Head: "water in it"}, {Key: "at_most", Head: "from a US gallon"}}, rows)
	for i, f := range m.points {
		note := f.Source + ", " + obtained(f.Obtained)
		if f.Note != "" && len(m.points) == 1 {
			note += "; with it stands: " + f.Note
		}
		part.Item(letter(i) + ": " + note)
	}
	part.If(len(m.points) > 1).Remark("The sources disagree, and so each is shown.")
	if p.pot != nil {
		p.productStops(part)
	}
	for _, g := range m.grains {
		part.Row("grain", "Cool it, still, to", span(cli.Temperature(g.Low), cli.Temperature(g.High)),
			cli.When(g.Least.Compare(g.Low) < 0, "not below "+p.AtLeast(g.Least)), g.Source, obtained(g.Obtained), g.Note)
	}
	part.If(len(m.grains) == 0).Remark("To what it cools before it is stirred, if it is, no source at hand tells.")
	if t := p.thermometer; t.learned != nil || t.over > 0 {
		part.Remark("Today's points are those at the surface, for a thermometer that is true: neither -over nor your past stops are in them.")
	}
	part.Remark("The points were printed for sea level; today's are those of the same strength under the pressure of the day. The weights are of a US gallon of syrup, measured at " + p.Degrees(label) + ", with nothing left in pan and molds: no more is possible.")
	for i, f := range m.figures {
		part.Row(fmt.Sprintf("published_%s", letter(i)), "Practice gets of a US gal", span(printed(f.Low), printed(f.High)), f.Source, obtained(f.Obtained))
	}
	part.If(len(m.figures) == 0).Remark("No published weight is at hand.")
	if m.syrup > 0 {
		low, high := m.syrup.Inverted()
		part.Row("inverted", "Syrup that suits", cli.Between(cli.Share(low, 1), cli.Share(high, 1)), "of its mass inverted sugar; from memory of producers' manuals")
	}
}

// productStops tells at what weight the pot on the scale is done, by each source.
func (p page) productStops(part *cli.Part) {
	for i, f := range p.product.points {
		heavy, err := p.pot.read.Target(f.strength.Low)
		light, err2 := p.pot.read.Target(f.strength.High)
		if err != nil || err2 != nil {
			continue // the pot was stronger when it was read
		}
		part.Row("stop_"+letter(i), "Take the pot off at, "+letter(i), span(cli.Mass(light.Gross), cli.Mass(heavy.Gross)), "pot and product together; nothing poured in or spilled")
	}
}

// printed shows a weight with no more digits than practice gives it.
func printed(m units.Mass) cli.Value { return cli.Rough(cli.Mass(m)) }

// obtained words how the packages know a figure.
func obtained(how string) string {
	if how == "memory" {
		return "from memory"
	}
	return how
}

func letter(i int) string { return string(rune('a' + i)) }

// span shows a range, or one value where both ends are the same.
func span(low, high cli.Value) cli.Value {
	if low == high {
		return low
	}
	return cli.Between(low, high)
}
