package main

import (
	"fmt"
	"io"
	"math"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// own is what the thermometer has shown at past stops.
type own struct {
	finish.Offset
	byWater bool // the stops count from water boiled with the same thermometer
	rows    []pastRow
	twice   int // rows that stand twice

	// The stop of today, if today counts from the same.
	stops   bool
	at      units.Temperature
	off     units.TempDiff // above sucrose syrup
	by      units.TempDiff // NaN of one stop
	floored bool           // by is that of a reading: the stops agree better
	cost    units.Brix     // what by is worth in strength
}

// pastRow is a row of the file.
type pastRow struct {
	line int
	stop finish.PastStop
	off  units.TempDiff // of this stop alone
}

// stops reads the past stops and learns from them.
func (p *evening) stops(e *cli.Env) (*own, error) {
	s := p.given
	file, err := e.Open("stops", s.stops)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	o := new(own)
	if err := o.read(s.stops, file); err != nil {
		return nil, err
	}
	var past []finish.PastStop
	for _, r := range o.rows {
		past = append(past, r.stop)
	}
	if o.Offset, err = finish.LearnOffset(past...); err != nil {
		return nil, cli.For("stops", err)
	}
	t := p.thermometer
	if t == nil || o.byWater != (t.from == cli.ByWaterBoils) {
		return o, nil
	}
	o.stops = true
	if o.at, o.by, err = o.Stop(s.target, t.pressure); err != nil {
		return nil, cli.For("stops", err)
	}
	o.off = o.at.Sub(t.sucrose)
	if o.cost = units.Brix(math.NaN()); o.Stops == 1 {
		return o, nil
	}
	// From here on the library prices no error of a thermometer.
	const apart = 5 * units.CelsiusDegree
	if o.by > apart {
		return nil, o.odd(s.stops)
	}
	// Few stops agree by chance: nobody stops closer than the thermometer is read,
	// at the stops that are past and at the next.
	read := max(s.probeBy, standard(units.FahrenheitDegree/20))
	if least := read * units.TempDiff(math.Sqrt(1+1/float64(o.Stops))); o.by < least {
		o.by, o.floored = least, true
	}
	if o.cost, err = finish.ErrorCost(s.target, t.pressure, o.by); err != nil {
		return nil, cli.For("stops", err)
	}
	if o.cost < t.parts.Total {
		t.learned, t.syrup = o, o.at
	}
	return o, nil
}

// odd tells of stops that lie so far apart that they tell nothing, and which of
// them is farthest off.
func (o *own) odd(path string) error {
	worst := o.rows[0]
	for _, r := range o.rows {
		if math.Abs(float64(r.off-o.Mean)) > math.Abs(float64(worst.off-o.Mean)) {
			worst = r
		}
	}
	return &records.Error{File: path, Line: worst.line, Err: fmt.Errorf("the stops lie too far apart to tell anything: this one by %s from sucrose syrup of its cup, all of them by %s: look for a wrong figure",
		worst.off.Text(units.FahrenheitDegree, 1), o.Mean.Text(units.FahrenheitDegree, 1))}
}

func (o *own) read(path string, file io.Reader) error {
	var (
		stop  finish.PastStop
		water units.Temperature
	)
	r, byWater, err := either(path, file, "day,water_boils_f,stop_f,cup_brix", "water_boils", "pressure",
		"no column for the air of that day: name it water_boils_f, water_boils_c, pressure_inhg, pressure_hpa or pressure_kpa")
	if err != nil {
		return err
	}
	from, column := records.Pressure("pressure", &stop.Pressure), "pressure"
	if o.byWater = byWater; byWater {
		from, column = records.Temperature("water_boils", &water), "water_boils"
	}
	err = r.Bind(records.Time("day", &stop.When, time.DateOnly), from, records.Temperature("stop", &stop.Stop), records.Brix("cup", &stop.Cup))
	if err != nil {
		return err
	}
	seen := make(map[finish.PastStop]bool)
	return cli.Rows(r, mostStops, "", func() error {
		if o.byWater {
			var err error
			if stop.Pressure, err = boil.PressureFromWater(water); err != nil {
				return r.Fail(column, err)
			}
		}
		// One by one, so that what is wrong has a line and a column.
		alone, err := finish.LearnOffset(stop)
		if err != nil {
			return r.Fail(cli.FlagOf(err, "stop", "stops[0].Cup", "cup", "stops[0].Pressure", column), err)
		}
		boils, err := boil.Water(stop.Pressure)
		if err != nil {
			return r.Fail(column, err)
		}
		if under := boils.Sub(stop.Stop); under >= 0 {
			return r.Fail("stop", fmt.Errorf("%s is no hotter than boiling water that day, %s, and %s under syrup of that cup: check the figures",
				stop.Stop.Text(units.ScaleFahrenheit, 1), boils.Text(units.ScaleFahrenheit, 1), (-alone.Mean).Text(units.FahrenheitDegree, 1)))
		}
		if seen[stop] {
			o.twice++
			return nil
		}
		seen[stop] = true
		o.rows = append(o.rows, pastRow{r.Line(), stop, alone.Mean})
		return nil
	})
}

// tenths are what a thermometer is read to, and thousandths a barometer.
const (
	tenths      = 1
	thousandths = 3
)

// stopRow is this stop for the record, once it is one: syrup by the hydrometer, what
// the thermometer showed with it, and the air of the day. Who writes it down must have
// read both, and what the thermometer showed must be near syrup: a pot that has cooled
// meanwhile teaches nothing.
func (p page) stopRow() folder.Rows {
	rows := folder.Rows{File: folder.StopsFile}
	day, t := p.given.day, p.thermometer
	if p.heated == nil || !p.flags.Given("shows") || len(p.apart) > 0 {
		return rows
	}
	if day.IsZero() {
		day = time.Now()
	}
	air := folder.Cell{Column: "water_boils", Text: p.given.place.WaterBoils.Text(units.ScaleFahrenheit, tenths)}
	switch t.from {
	case cli.ByWaterBoils:
	case cli.ByStation, cli.ByAltimeter:
		air = folder.Cell{Column: "pressure", Text: t.pressure.Text(units.InchMercury, thousandths)}
	default:
		return rows // nobody measured it
	}
	for _, i := range p.all {
		if i.name == "hydrometer" && i.Brix >= p.given.target-aside {
			rows.Rows = []folder.Row{{{Column: "day", Text: day.Format(time.DateOnly)}, air,
				{Column: "stop", Text: p.given.shows.Text(units.ScaleFahrenheit, tenths)}, {Column: "cup", Text: i.Brix.Text(1)}}}
		}
	}
	return rows
}

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
