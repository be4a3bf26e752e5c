package main

import (
	"errors"
	"fmt"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// alone shows what stands in the pan where the record has no sap for it, and what to
// do with it: such sweet spoils as sap does. It reports whether there is any.
func (s *setup) alone(e *cli.Env, f *cli.Flags) (shown bool, err error) {
	if s.sapFile != "" || f.Given("sap") || f.Dir() == "" || len(s.fresh(f.House())) > 0 {
		return false, nil
	}
	if err := s.check(f); err != nil {
		return false, err
	}
	p := &plan{given: s, flags: f}
	if p.sweet, err = s.standing(f); err != nil || p.sweet.Empty() {
		return false, err
	}
	if f.Writes() {
		return false, cli.For("write", errors.New("no sap waits, so there is no day to add: write down yourself what becomes of the sweet in the pan"))
	}
	if p.pressure, p.from, err = s.place.Pressure(); err != nil {
		return false, err
	}
	if err := p.points(s, f); err != nil {
		return false, err
	}
	// All goes through one pot: as syrup it would lie too low in the pan.
	p.sap, p.takeoff, p.small = p.sweet.Lot, p.sweet.Lot, p.sweet.Brix() < s.target
	if p.small {
		p.firing.alone = true
		if err := p.finishInPot(s); err != nil {
			return false, err
		}
	}
	if p.syrup, err = sugar.NewLotByMass(min(s.target.Of(p.sap.Sugar()), p.sap.Mass()), max(s.target, p.sap.Brix()), label); err != nil {
		return false, err
	}
	page := page{p, &cli.Sheet{Title: "What stands in the pan", Metric: s.metric}}
	page.standing()
	return true, page.Show(e)
}

// standing fills the page.
func (p page) standing() {
	b := &p.Brief
	cold := p.AtMost(units.Fahrenheit(40))
	b.Verdict = "No sap waits, but sweet stands in the pan: boil it down in a pot today, or drain it and keep it below " + cold + " for the next fire."
	day := p.given.today(p.flags.House())
	if p.small && (folder.Gathering{Day: folder.Day{Date: p.sweet.since}}).Old(day) {
		b.Verdict = "No sap waits, but sweet has stood in the pan for over a week. Sour, cloudy or ropy: drain it untasted. Only if it is clear and smells fresh boil it down in a pot today."
	}
	if !p.small {
		b.Verdict = "No sap waits, but syrup stands in the pan: drain it today, and read it."
	}
	if n := p.sweet.syrup(p.given.target); p.small && n > 0 {
		b.Answer("draw", "Draw first", cli.Words(fmt.Sprintf("no. %d", n)), "it is syrup: read it, and keep it from the sweet")
	}
	b.Answer("sweet", "In the pan", cli.Gallons(p.sap.Volume(), cli.Nearest), p.sap.Brix().Text(1)+", since "+stands(p.sweet.since))
	if p.small {
		inPot := p.pot.heating + p.pot.boiling
		b.Answer("syrup", "It makes", cli.Quarts(p.syrup.Volume(), cli.Down), "if all of it drains")
		b.Answer("takes", "In a pot", cli.Hours(inPot.Round(10*time.Minute)), "at "+p.In(cli.Rough(cli.Flow(p.given.pot)))+" of water")
		p.takeOffAnswer(b)
	}
	b.Told("sweet of " + stands(p.sweet.since))
	b.From(p.flags, p.from, p.given.place.Words(p.Sheet, p.waterBoils))
	b.If(p.small).From(p.flags, "pot-rate", "the pot's rate")
	b.Cautions = []string{
		"Light no fire under a pan that is less than " + p.In(cli.Eighths(p.given.safe, cli.Up)) + " deep: it scorches.",
		"Sweet spoils like milk, cold too within days: what is cloudy, ropy or sour goes out untasted.",
		cli.Scald("Syrup", p.Degrees(p.syrupBoils)),
		"Never leave the pot: it foams over and scorches in minutes.",
	}
	if n := p.sweet.night; n.ice {
		b.Cautions = append([]string{"Air down to " + p.Degrees(n.air) + " since: ice may lie in it. Melt it with warm sap or water, never by a fire under it."}, b.Cautions...)
	}
	b.Warn(p.roof())
	p.askOld(b)
	b.Further = append(b.Further, "Is it gone? Write the day into pan.csv with depth and strength 0. Is there sap? Write it down, or say it behind the name.")
	part := p.Part("sweet", "Sweet in the pan")
	p.sweetRow(part)
	part.Row("sugar", "Sugar in it", cli.Mass(p.sap.Sugar()))
	part.Row("off", "Water to boil off", cli.Mass(max(0, p.sap.Mass()-p.given.target.Of(p.sap.Sugar()))))
	p.Part("care", "Take care").Item(b.Cautions...)
}
