package main

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
)

// checks is what the instruments showed in what is known.
type checks struct {
	boiling, ice units.Temperature
	brix         units.Brix
	reads        cli.Reading
	at           units.Temperature
}

// The flags of the checks: any of them makes a page of its own.
const (
	checkBoiling = "check-boiling"
	checkIce     = "check-ice"
	checkBrix    = "check-brix"
	checkReads   = "check-reads"
	checkAt      = "check-at"
)

func (c *checks) declare(f *cli.Flags) {
	f.Group("Are the instruments right? (a page of its own, without a pot)")
	f.Quantity(&c.boiling, checkBoiling, "", "what the thermometer shows in water that boils hard; give -pressure or -altimeter and -elevation, not -water-boils")
	f.Quantity(&c.ice, checkIce, "", "what it shows in crushed ice and water, stirred")
	f.Quantity(&c.brix, checkBrix, "", "a solution of white sugar to hold the hydrometer against, as 66.9 Brix, 2 Brix for sap, 0 Brix for plain water: the page tells how to make it and what it must read")
	f.Reading(&c.reads, checkReads, "what the hydrometer reads in it, as 67.3 Brix or 36.0 Be")
	f.Quantity(&c.at, checkAt, "68 F", "temperature of that solution")
}

// asked tells whether the page of the checks is wanted.
func asked(f *cli.Flags) bool {
	return slices.ContainsFunc([]string{checkBoiling, checkIce, checkBrix, checkReads, checkAt}, f.Given)
}

// showChecks lays out what the checks tell.
func (s *setup) showChecks(e *cli.Env, f *cli.Flags) error {
	for _, pair := range [][2]string{{checkIce, checkBoiling}, {checkReads, checkBrix}, {checkAt, checkBrix}} {
		if f.Given(pair[0]) && !f.Given(pair[1]) {
			return cli.For(pair[0], errors.New("give -"+pair[1]+" too"))
		}
	}
	p := &checkPage{setup: s, flags: f, Sheet: &cli.Sheet{Title: "Are the instruments right?", Metric: s.metric}}
	if f.Given(checkBoiling) {
		if err := p.thermometer(); err != nil {
			return err
		}
	}
	if f.Given(checkBrix) {
		if err := p.hydrometer(); err != nil {
			return err
		}
	}
	if !f.Given(checkBoiling) {
		p.Brief.Cautions = append(p.Brief.Cautions, "Let the solution cool before the glass goes in: hot syrup burns, and glass cracks.")
	} else {
		p.Brief.Warn(f.House().Settings.Roof, cli.ScaldWater(p.Degrees(s.checks.boiling)))
	}
	if err := p.Set(e, p.lines...); err != nil {
		return err
	}
	p.Brief.Further = append(p.Brief.Further, "-full tells more. An instrument that changes from check to check is worn out.")
	return p.Show(e)
}

type checkPage struct {
	*setup
	flags *cli.Flags
	*cli.Sheet
	lines []folder.Line // for the settings
}

// sets tells the line of the settings that a check makes: by how much an instrument is
// off or, where the settings have it off already, that it is not any more.
func (p *checkPage) sets(name, off string, agrees bool) {
	if _, was := p.flags.House().Settings.Set(name); agrees && (!was || p.flags.Dir() == "") {
		return
	}
	p.lines = append(p.lines, folder.Line{Name: name, Value: off})
	p.Brief.Answer("write", "Settings", cli.Words(name+": "+off), "a line of "+folder.SettingsFile)
}

// verdict adds a sentence.
func (p *checkPage) verdict(s string) {
	if p.Brief.Verdict != "" {
		s = p.Brief.Verdict + " " + s
	}
	p.Brief.Verdict = s
}

// thermometer holds it against boiling water and ice.
func (p *checkPage) thermometer() error {
	if !placed(p.flags) {
		return cli.For(checkBoiling, errors.New("say where water should boil: give -pressure and -elevation, or -elevation alone"))
	}
	pressure, by, err := p.place.Pressure()
	switch {
	case err != nil:
		return err
	case by == cli.ByWaterBoils:
		return cli.For(by, errors.New("that is what is checked here: give -pressure and -elevation, or -elevation alone"))
	case !p.flags.Given(cli.ByElevation):
		return cli.For(cli.ByElevation, errors.New("give it beside -pressure: it tells which of thermometer and barometer is off"))
	}
	iced := p.flags.Given(checkIce)
	if !iced {
		p.checks.ice = units.Celsius(0)
	}
	c, err := boil.Probe{Pressure: pressure}.CheckedIn(p.checks.boiling, p.checks.ice, p.place.Elevation)
	if err != nil {
		return cli.ForArg(err, checkBoiling, "ice", checkIce, "elevation", cli.ByElevation, "Probe.Pressure", by)
	}
	off := p.off(c.Boil)
	part := p.Part("thermometer", "Thermometer")
	part.Row("should", "It should show", cli.Temperature(p.checks.boiling.Add(-c.Boil)), cli.KnownBy[by])
	part.Row("boil", "At the boil it is off by", cli.TempDiff(c.Boil), off)
	if iced {
		part.Row("ice", "In ice it is off by", cli.TempDiff(c.Ice), p.off(c.Ice))
	}
	part.Row("barometer", "That pressure at this elevation", cli.Words(c.Barometer.Fit.String()))
	part.Row("water", "That of the boiling water", cli.Words(c.Water.Fit.String()))
	part.Remark("Half a degree counts as the same reading. Read with the probe as deep as in the pot, in water that boils hard, and in crushed ice that stands in its water.")
	p.Brief.Answer("boil", "At the boil", cli.Words(off))
	write, agrees := true, false
	switch c.Suspect {
	case boil.SuspectNothing:
		agrees = true
		p.verdict("The thermometer agrees with the pressure within half a degree.")
	case boil.SuspectThermometer:
		p.verdict("The thermometer is off: it shows " + off + " at the boil and as much in ice.")
	case boil.SuspectScale:
		p.verdict("The thermometer is off at the boil: it shows " + off + ".")
	case boil.SuspectPressure:
		write = false
		p.verdict("The thermometer is not what is off: the barometer or the elevation is. Is it set to sea level?")
	default:
		write = false
		const same = units.FahrenheitDegree / 2 // as Probe.CheckedIn counts it
		if max(c.Boil, -c.Boil) <= same {
			p.verdict("The thermometer agrees with the pressure at the boil, and shows " + p.off(c.Ice) + " in ice: read it there again, in crushed ice and water, stirred. For syrup the boil counts.")
			break
		}
		if by == cli.ByElevation {
			p.verdict("The thermometer shows " + off + " for average weather, which may be the weather: give the barometer too.")
			break
		}
		p.verdict("Thermometer and barometer differ, " + off + ", and weather would explain it: look at the barometer, and boil water again another day.")
	}
	if !iced {
		write = false
		p.Brief.Further = append(p.Brief.Further, "Without -check-ice nobody knows which of the two is off.")
	}
	if write {
		p.sets("thermometer off", off, agrees)
	}
	p.Brief.Told("boiling water " + p.In(cli.Temperature(p.checks.boiling)))
	return nil
}

// off words by how much a thermometer is off, as the settings take it.
func (p *checkPage) off(d units.TempDiff) string {
	x, unit := d.FahrenheitDegrees(), " F deg"
	if p.metric {
		x, unit = d.CelsiusDegrees(), " C deg"
	}
	return highOrLow(x, 1, unit)
}

// highOrLow words an error without its sign.
func highOrLow(x float64, decimals int, unit string) string {
	which := " high"
	if x < 0 {
		which = " low"
	}
	return fmt.Sprintf("%.*f%s", decimals, math.Abs(x), unit) + which
}

// batch is how much of a solution is made.
const batch = units.Kilogram

// hydrometer tells how to make a solution, what it must read there and what it
// reads too much.
func (p *checkPage) hydrometer() error {
	make, err := density.NewCheckSolution(batch, p.checks.brix)
	if err != nil {
		return cli.For(checkBrix, err)
	}
	h := density.Hydrometer{GraduatedAt: p.stem}
	const sap, syrup = 20, 50 // Brix: thinner is for the hydrometer of sap, stronger for that of syrup
	if at := p.flags.House().Settings.SapHydrometer; p.checks.brix < sap && !p.checks.reads.Baume && p.flags.Source("hydrometer").Kind != cli.Told && at.Celsius() > 0 {
		h.GraduatedAt = at
	}
	should, err := h.Reading(p.checks.brix, p.checks.at)
	if err != nil {
		return cli.ForArg(err, checkAt, "brix", checkBrix)
	}
	part := p.Part("hydrometer", "Hydrometer")
	graduated := "marked at " + p.Degrees(h.GraduatedAt)
	weigh := make.Sugar.Text(units.Gram, 0) + " sugar, " + make.Water.Text(units.Gram, 0) + " water"
	if p.checks.brix == 0 {
		weigh = "plain water"
	} else {
		lost, err := make.Brix(5 * units.Gram)
		if err != nil {
			return cli.For(checkBrix, err)
		}
		part.Remark(fmt.Sprintf("Dissolve the white sugar in warm water, covered; let it cool, and make it up with water to 1,000 g again. 5 g that steam off are %.2f Brix.", float64(lost-p.checks.brix)))
	}
	part.Row("weigh", "Weigh out", cli.Words(weigh))
	part.Row("should", "It must read", cli.Brix(should, 2), "at "+p.In(cli.Temperature(p.checks.at)), graduated)
	p.Brief.Answer("weigh", "Weigh out", cli.Words(weigh))
	shown := cli.Brix(should, 1)
	baume, err := density.BaumeFromBrix(should)
	if onBaume := p.checks.reads.Baume || p.flags.House().Settings.Scale == folder.BaumeScale; onBaume && err == nil {
		shown = cli.TenthBaume(baume, cli.Nearest)
	}
	p.Brief.Answer("should", "It must read", shown, "at "+p.Degrees(p.checks.at), graduated)
	if !p.flags.Given(checkReads) {
		p.verdict("Make the solution and read the hydrometer in it; then give -check-reads.")
		return nil
	}
	reads, err := p.checks.reads.Brix(h, p.checks.at)
	if err != nil {
		return cli.For(checkReads, err)
	}
	is, err := h.CheckedIn(p.checks.brix, p.checks.at, reads)
	if err != nil {
		return cli.For(checkReads, err)
	}
	off := highOrLow(float64(is.ReadsHigh), 1, " Brix")
	part.Row("off", "It is off by", cli.Brix(is.ReadsHigh, 2), off)
	same := 0.05 // half of a tenth, that of a Baume scale in Brix
	if p.checks.reads.Baume {
		same = 0.1
	}
	if math.Abs(float64(is.ReadsHigh)) < same {
		p.verdict("The hydrometer is right.")
		if p.checks.brix >= syrup {
			p.sets("hydrometer off", off, true)
		}
		return nil
	}
	p.verdict("The hydrometer reads " + off + ".")
	if p.checks.brix >= syrup {
		p.sets("hydrometer off", off, false)
	} else {
		p.Brief.Further = append(p.Brief.Further, "Count that in every reading of sap: off near 66 Brix may differ.")
	}
	return nil
}
