package main

import (
	"cmp"
	"errors"
	"math"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// atTheMark is less than any hydrometer tells.
const atTheMark = 0.05

// blend pours the cans together.
func (d *day) blend() (err error) {
	lots := make([]sugar.Lot, len(d.cans))
	tinted := make([]sugar.Tinted, len(d.cans))
	d.pool.light = 0
	for i, c := range d.cans {
		lots[i] = c.lot
		v, err := c.lot.VolumeAt(label)
		if err != nil {
			return err
		}
		tinted[i] = sugar.Tinted{Volume: v, Transmission: c.light}
		d.pool.light += c.light // NaN if any is
	}
	if d.pool.lot, err = sugar.Blend(lots...); err != nil {
		return err
	}
	if !math.IsNaN(float64(d.pool.light)) {
		if d.pool.light, err = sugar.BlendTransmission(tinted...); err != nil {
			return err
		}
	}
	volume, err := d.pool.lot.VolumeAt(label)
	if err != nil {
		return err
	}
	if err := limit.Within("", "all syrup", volume, 1*units.USFluidOunce, most, units.USGallon, "US gal", "check the unit, or pack on several days"); err != nil {
		return d.wrong("volume", err)
	}

	// One stem and one thermometer read all cans: their errors are the same in
	// each, and only the steps of the readings fall by chance.
	var common, chance float64
	for _, c := range d.cans {
		part := float64(c.lot.Mass() / d.pool.lot.Mass())
		step := float64(c.true.Parts.Division)
		all := float64(c.true.Uncertainty) / 2
		common += part * math.Sqrt(max(all*all-step*step, 0))
		chance += part * part * step * step
	}
	d.pool.doubt = units.Brix(2 * math.Sqrt(common*common+chance))
	d.pool.verdict, err = d.standard.Judge(d.pool.lot.Brix(), d.pool.doubt)
	return err
}

// wrong names where the cans come from: their file, or the given flag.
func (d *day) wrong(flag string, err error) error {
	if err != nil && d.batches {
		return d.inFile(folder.BatchesFile, err)
	}
	return cli.For(flag, err)
}

// toMark boils the pool on, or thins it, and heats it for the filter.
func (d *day) toMark() error {
	s, pool := d.given, d.pool.lot
	pressure, from, err := s.pan.Pressure()
	if err != nil {
		return err
	}
	d.from = from
	if d.water, err = boil.Water(pressure); err != nil {
		return cli.For(from, err)
	}
	if d.boils, err = boil.SyrupPoint(s.target, pressure); err != nil {
		return cli.For(from, err)
	}
	result := pool
	d.mark.light = d.pool.light
	if d.do, err = d.remedy(); err != nil {
		return err
	}
	switch d.do {
	case sugar.BoilOn:
		boiled, err := sugar.Concentrate(pool, s.target)
		if err != nil {
			return err
		}
		demand, err := boil.Heat(pool, s.target, pressure)
		if err != nil {
			return d.wrong("temp", err)
		}
		result, d.off, d.heat = boiled.Concentrate, boiled.Removed.Mass(), demand.Total()
	case sugar.ThinDown:
		if !(s.thinner < s.target-1) {
			return cli.For("thin-with", errors.New("it must be at least 1 Brix thinner than the target: take water, sap or a lighter syrup"))
		}
		thinned, err := sugar.Thin(pool, s.thinner, s.thinTemp, s.target)
		if err != nil {
			return cli.For("thin-with", err)
		}
		result, d.added = thinned.Result, thinned.Added
	}
	if d.off == 0 {
		if d.heat, err = warming(result, s.filterAt); err != nil {
			return cli.For("filter-at", err)
		}
	}
	if d.mark.lot, err = result.At(s.filterAt); err != nil {
		return cli.For("filter-at", err)
	}
	return d.tint()
}

// remedy tells whether to mend the pool: as the rule and the reading say, or to a
// target that was asked for. One that the rule forbids counts alone.
func (d *day) remedy() (sugar.Remedy, error) {
	b, by, target := d.pool.lot.Brix(), d.pool.doubt, d.given.target
	if !d.own {
		a, err := d.standard.Advise(b, by, 0)
		return a.Do, err
	}
	a, err := d.standard.Advise(b, by, target)
	switch {
	case !errors.Is(err, sugar.ErrInfeasible):
		return a.Do, err
	case b < target-by:
		return sugar.BoilOn, nil
	case b > target+by:
		return sugar.ThinDown, nil
	}
	return sugar.Leave, nil
}

// warming is the heat that brings a lot to a temperature; none if it is hotter.
func warming(l sugar.Lot, to units.Temperature) (units.Energy, error) {
	from, err := sugar.Enthalpy(l.Brix(), l.Temperature())
	if err != nil {
		return 0, err
	}
	up, err := sugar.Enthalpy(l.Brix(), to)
	if err != nil {
		return 0, err
	}
	return units.Joules(max(0, (up-from).JoulesPerKilogram()*l.Mass().Kilograms())), nil
}

// tint finds the color at the mark. Coloring matter keeps with the sugar; a
// thinning syrup of its own color blends by volume.
func (d *day) tint() (err error) {
	if math.IsNaN(float64(d.pool.light)) {
		return nil
	}
	if math.IsNaN(float64(d.given.thinLight)) || d.added.Empty() {
		d.mark.light, err = sugar.TransmissionAtBrix(d.pool.light, d.pool.lot.Brix(), d.mark.lot.Brix())
		return err
	}
	pool, err := d.pool.lot.VolumeAt(label)
	if err != nil {
		return err
	}
	added, err := d.added.VolumeAt(label)
	if err != nil {
		return err
	}
	d.mark.light, err = sugar.BlendTransmission(sugar.Tinted{Volume: pool, Transmission: d.pool.light}, sugar.Tinted{Volume: added, Transmission: d.given.thinLight})
	return err
}

// inCup checks the temperature in the cup, or takes the usual one: syrup that is
// only warmed is no hotter than it runs through the filter.
func (d *day) inCup() error {
	s := d.given
	if s.told {
		return cmp.Or(cli.WithinTemperature("cup", "temperature", s.cup, 0, 110, "the syrup in the cup"),
			(&cli.Sheet{Metric: s.metric}).Cup("cup", s.cup, d.boils, s.doubt.Thermometer))
	}
	hottest := d.boils
	if d.do != sugar.BoilOn && d.do != sugar.ThinDown && s.filterAt.Compare(hottest) < 0 {
		hottest = s.filterAt
	}
	s.cup = cli.UsualCup(hottest, s.metric)
	return nil
}

// atMark finds what the hydrometer must read and what the rule says to that.
func (d *day) atMark() (err error) {
	s := d.given
	if err := d.inCup(); err != nil {
		return err
	}
	cup := s.cup
	if s.told {
		cup = cup.Add(-s.miss.Thermometer)
	}
	reads, err := s.hydrometer().Reading(d.mark.lot.Brix(), cup)
	if err != nil {
		return cli.For("cup", err)
	}
	read, err := s.hydrometer().Measure(reads, cup, s.doubt)
	if err != nil {
		return cli.For("cup", err)
	}
	d.reads = reads + s.miss.Hydrometer
	d.mark.doubt = read.Uncertainty
	d.mark.verdict, err = d.standard.Judge(d.mark.lot.Brix(), read.Uncertainty)
	return err
}
