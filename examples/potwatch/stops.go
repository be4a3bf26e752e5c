package main

import (
	"errors"
	"fmt"
	"io"
	"math"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/cli"
	"example.org/sapreckoner/internal/records"
	"example.org/sapreckoner/units"
)

// own is what the thermometer has shown at past stops.
type own struct {
	boil.Offset
	byWater bool // the stops count from water boiled with the same thermometer

	// The stop of today, if today counts from the same.
	stops bool
	at    units.Temperature
	by    units.TempDiff // NaN of one stop
	cost  units.Brix     // what by is worth in strength
}

// stops reads the past stops and learns from them.
func (p *evening) stops(e *cli.Env) (*own, error) {
	s := p.given
	file, err := p.open(e, "stops", s.stops, demoStops)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	o := new(own)
	past, err := o.read(s.stops, file)
	if err != nil {
		return nil, err
	}
	if o.Offset, err = boil.LearnOffset(past...); err != nil {
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
	if o.cost = units.Brix(math.NaN()); o.Stops > 1 {
		o.cost, err = boil.ErrorCost(s.target, t.pressure, o.by)
	}
	return o, cli.For("stops", err)
}

func (o *own) read(path string, file io.Reader) ([]boil.PastStop, error) {
	var (
		stop  boil.PastStop
		water units.Temperature
		past  []boil.PastStop
	)
	r, err := records.Open(path, file)
	if err == io.EOF {
		err = fmt.Errorf("%s: the file is empty: the first line names the columns, such as day,water_boils_f,stop_f,cup_brix", path)
	}
	if err != nil {
		return nil, err
	}
	from := records.Pressure("pressure", &stop.Pressure)
	column := "pressure"
	o.byWater = r.Names("water_boils")
	switch {
	case !o.byWater && !r.Names("pressure"):
		return nil, r.Fail("", errors.New("no column for the air of that day: name it water_boils_f, water_boils_c, pressure_inhg, pressure_hpa or pressure_kpa"))
	case o.byWater:
		if r.Names("pressure") {
			return nil, r.Fail("", errors.New("water_boils and pressure say the same: leave one of the columns out"))
		}
		from, column = records.Temperature("water_boils", &water), "water_boils"
	}
	err = r.Bind(records.Time("day", &stop.When, time.DateOnly), from, records.Temperature("stop", &stop.Stop), records.Brix("cup", &stop.Cup))
	if err != nil {
		return nil, err
	}
	err = rows(r, path, mostStops, func() error {
		if o.byWater {
			var err error
			if stop.Pressure, err = boil.PressureFromWater(water); err != nil {
				return r.Fail(column, err)
			}
		}
		// One by one, so that what is wrong has a line and a column.
		if _, err := boil.LearnOffset(stop); err != nil {
			return r.Fail(of(err, "stop", "cup", "cup", "pressure", column), err)
		}
		past = append(past, stop)
		return nil
	})
	return past, err
}
