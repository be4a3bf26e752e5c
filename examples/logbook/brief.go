package main

import (
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// brief puts the staircase of the sugar first: what is left of it step by step.
func (p page) brief() {
	b := &p.Brief
	b.Verdict = p.verdict()
	sweet := func(m units.Mass) string { return p.In(gauged(cli.Mass(m))) + " of sugar" }
	b.Answer("gathered", "Gathered", cli.Gallons(p.Sap, cli.Nearest), sweet(p.gathered()))
	if p.boiled.rows > 0 {
		lot, err := p.boiled.lot()
		if err == nil { // its parts were lots
			b.Answer("boiled", "Boiled", cli.Gallons(lot.Volume(), cli.Nearest), sweet(p.boiled.sugar), p.step(p.gathered()-p.boiled.sugar, "not boiled"))
		}
	}
	if p.Syrup > 0 {
		notes := []string{sweet(p.SugarOut)}
		if p.boiled.rows > 0 {
			notes = append(notes, p.step(p.boiled.sugar-p.SugarOut-p.Kept, "lost at the fire"))
		}
		if p.Kept > 0 {
			notes = append(notes, p.In(gauged(cli.Mass(p.Kept)))+" held")
		}
		b.Answer("drawn", "Drawn", cli.Quarts(p.Syrup, cli.Nearest), notes...)
	}
	volume, count := p.bottled()
	if count > 0 {
		b.Answer("bottled", "Bottled", cli.Quarts(volume, cli.Nearest), sweet(p.inBottles()), plural(count, "container"))
	}
	if p.Syrup > 0 {
		b.Answer("stock", "In stock or filters", cli.Quarts(p.Syrup-volume, cli.Nearest), sweet(p.SugarOut-p.inBottles()), "drawn, not bottled")
	}
	best := p.best()
	lot, err := p.days[best].sap.lot()
	if err == nil { // as above
		on := "best day " + p.date(best).Format("Jan 2") + ", " + p.In(cli.Gallons(lot.Volume(), cli.Nearest)) + " of sap"
		if cords := p.toTheCord(); cords > 0 {
			b.Answer("to_the_cord", "Syrup to the cord", cli.Gallons(cords, cli.Nearest), on)
		} else {
			b.Answer("best_day", "Best day", cli.Words(on))
		}
	}
	p.known(b)
	if p.again.rows > 0 {
		b.Further = append(b.Further, fmt.Sprintf("Look again at %s: -full lists them.", plural(p.again.rows, "row")))
	}
	b.Further = append(b.Further, "-full: by day, tank, boil and batch.", "packday: what to bottle.")
	b.Cautions = []string{"This counts sugar and tells nothing of safety: moldy syrup is not for eating, whatever the book says."}
}

// step is what is missing after a step, or what there is too much.
func (p page) step(lost units.Mass, word string) string {
	if lost < 0 {
		return p.In(gauged(cli.Mass(-lost))) + " more than came in: look again"
	}
	return p.In(gauged(cli.Mass(lost))) + " " + word
}

// verdict is where the sugar went.
func (p page) verdict() string {
	in := cli.Mass(p.SugarIn)
	went := cli.AddUp(sugarDigits, in, cli.Mass(p.SugarOut), cli.Mass(p.Kept), cli.Mass(p.Lost))
	came := p.In(cli.Total(sugarDigits, in)) + " of sugar"
	open := p.In(cli.Rough(cli.Mass(p.Uncertainty)))
	switch {
	case p.Syrup == 0:
		return came + " came in with the sap, and no syrup is written down yet."
	case p.Impossible:
		return "More sugar came out than went in, by more than the " + open + " that your instruments leave open: a reading or a row is wrong or missing."
	}
	kept := "Of " + came + " " + p.In(went[0]) + " is syrup and "
	if p.Kept > 0 {
		kept = "Of " + came + " " + p.In(went[0]) + " is syrup, " + p.In(went[1]) + " is held and "
	}
	if math.Abs(float64(p.Lost)) <= float64(p.Uncertainty) {
		return kept + p.In(went[2]) + " is missing: your instruments leave " + open + " open, so that there may be no loss."
	}
	return kept + p.In(went[2]) + " is lost, give or take " + open + "."
}

// inBottles is the sugar in what the labels say, by the strength of each batch.
func (b *book) inBottles() (all units.Mass) {
	for _, l := range b.lots {
		lot, err := l.drawn.lot()
		if err != nil || lot.Empty() {
			lot, err = held(units.Liter, b.given.target)
		}
		if err == nil { // what is read was checked
			all += lot.Sugar() * units.Mass(l.volume/lot.Volume())
		}
	}
	return all
}

// known tells where the numbers come from.
func (p page) known(b *cli.Brief) {
	first, last := p.span()
	b.Told(fmt.Sprintf("%s to %s", p.date(first).Format("Jan 2"), p.date(last).Format(time.DateOnly)))
	if !p.byBatches() && p.Syrup > 0 {
		b.Assumed("syrup of the days at " + p.given.target.Text(1))
	}
	if p.unread > 0 {
		b.Assumed(plural(p.unread, "gathering") + " at " + p.mean.Text(1))
	}
	if len(p.learns) > 0 {
		if e, err := p.learned(); err == nil {
			b.Learned(e.Middle().Text(0) + " of the heat, of " + plural(e.Boils, "boil"))
		}
	}
}
