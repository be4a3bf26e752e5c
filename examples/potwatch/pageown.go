package main

import (
	"math"

	"example.org/sapreckoner/examples/internal/cli"
)

func (p page) ownPart(part *cli.Part) {
	o := p.own
	from := "a barometer"
	if o.byWater {
		from = "water boiled with it that day"
	}
	part.Row("stops", "Past stops", cli.Count(o.Stops, ""), "counted from "+from)
	part.If(o.twice > 0).Row("twice", "Rows that stand twice", cli.Count(o.twice, ""), "same day and same figures: counted once")
	part.Row("offset", "Above sucrose syrup it shows", cli.TempDiff(o.Mean), "probe, depth and the sugar of your sap together")
	part.If(o.Stops > 1).Row("spread", "Spread from stop to stop", cli.TempDiff(o.Spread), "standard deviation")
	const enough = 6
	switch {
	case o.Drifts:
		part.Row("drifts", "Does it drift", cli.Words("yes"), "the last third showed "+p.In(cli.TempDiff(o.Late))+": late sap, a crusted or failing probe. Boil water with it, and count on the late stops")
	case o.Stops < enough:
		part.Row("drifts", "Does it drift", cli.Words("unknown"), "it takes six stops to tell")
	default:
		part.Row("drifts", "Does it drift", cli.Words("no"), "the last third showed "+p.In(cli.TempDiff(o.Late))+", within the spread")
	}
	switch {
	case o.stops && math.IsNaN(float64(o.cost)):
		part.Row("stop", "By these, stop today at", cli.Temperature(o.at), "how sure one stop is, nobody knows")
		part.Remark("The stop above and all that the thermometer says now are reckoned without it: two stops and more are counted.")
	case o.stops:
		part.Row("stop", "By these, stop today at", cli.Temperature(o.at), "give or take "+p.In(cli.TempDiff(k2*o.by)), "in strength "+(k2*o.cost).Text(2))
		part.If(o.floored).Remark("The stops agree better than that: they may by chance, and no stop is known closer than your thermometer is read, as -probe-by says.")
		if p.thermometer.learned != nil {
			part.Remark("They count in the stop above and in all that the thermometer says now, instead of -inverted and -over: probe, depth and the sugar of your sap are in the offset. It is taken as true of weaker liquid too.")
		} else {
			part.Remark("The stop above and all that the thermometer says now are reckoned without them, since the reckoned stop is known better: give or take " + (k2 * p.thermometer.parts.Total).Text(2) + ".")
		}
	case p.thermometer == nil:
		part.Remark("Say where water boils today, and the page tells your own stop.")
	default:
		part.Remark("No stop for today is given: the past stops count from " + from + ", and today's boiling point does not. The error of the thermometer is in the one and not in the other; record both alike.")
	}
}
