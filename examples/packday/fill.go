package main

import (
	"errors"
	"math"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
	"example.org/sapreckoner/yield/packing"
)

// cooled is syrup that stood too long before the filter.
var cooled = units.Fahrenheit(140)

// filter takes away what the filters keep.
func (d *day) filter() (err error) {
	s, l := d.given, d.mark.lot
	if d.thick, err = sugar.Viscosity(l.Brix(), s.filterAt); err != nil {
		return cli.For("filter-at", err)
	}
	if d.thickCold, err = sugar.Viscosity(l.Brix(), cooled); err != nil {
		return err
	}
	cool, err := l.VolumeAt(label)
	if err != nil {
		return err
	}
	d.filters = 1
	if math.IsNaN(float64(s.dose)) {
		if d.filters, err = packing.FiltersFor(l.Volume(), s.each); err != nil {
			return cli.For("filter-each", err)
		}
	} else if d.aid, err = packing.FilterAid(cool, s.dose); err != nil {
		return cli.For("aid-dose", err)
	}
	keeps := s.keeps * units.Volume(d.filters)
	if !(keeps < cool) {
		return cli.For("filter-keeps", errors.New("the filters would keep all of the syrup: check the unit"))
	}
	if d.kept, err = sugar.NewLot(keeps, l.Brix(), label); err != nil {
		return cli.For("filter-keeps", err)
	}
	d.pack, err = sugar.NewLotByMass(l.Mass()-d.kept.Mass(), l.Brix(), s.packAt)
	return cli.For("pack-at", err)
}

// fill plans the containers.
func (d *day) fill(supplies []packing.Supply) (err error) {
	s := d.given
	for _, supply := range supplies {
		if _, err := supply.Container.Fill(d.pack.Brix(), s.packAt, s.margin); err != nil {
			return d.ofJars(named(supply.Container.Name, err))
		}
	}
	if d.plan, err = packing.FewestContainers(d.pack, s.margin, supplies...); err != nil {
		return d.ofJars(err)
	}
	d.leftSugar = d.pack.Brix().Sugar(d.plan.LeftMass)
	for i, line := range d.plan.Lines {
		d.short = d.short || line.Count == supplies[i].OnHand && line.Filling.Content < d.plan.Left
		d.packed += units.Mass(line.Count) * line.Filling.NetMass
		seal, err := d.seal(line.Container)
		if err != nil {
			return d.ofJars(named(line.Container.Name, err))
		}
		if seal.known() && line.Count > 0 && (d.coldest < 0 || seal.warmed.Compare(d.seals[d.coldest].warmed) < 0) {
			d.coldest = i
		}
		d.seals = append(d.seals, seal)
	}
	return nil
}

// ofJars names where the containers come from.
func (d *day) ofJars(err error) error {
	if d.given.jarsFrom != "" {
		return d.inFile(d.given.jarsFrom, err)
	}
	return cli.For("containers", err)
}

// share divides the filled containers.
func (d *day) share() (err error) {
	if len(d.helpers) == 0 {
		return nil
	}
	var jars []money.Jars
	for _, line := range d.plan.Lines {
		jars = append(jars, money.Jars{Label: line.Container.Label, Count: line.Count})
	}
	d.baskets, err = money.DivideJarsAfter(jars, d.helpers, d.taken)
	return d.inFile(folder.PeopleFile, err)
}

// A seal is whether a container is still hot enough to seal, and how warm its
// empties must be if it is not.
type seal struct {
	warmed units.Temperature // the syrup once the container has warmed; NaN if the empty weight is not known
	warm   units.Temperature // the empties, to stand at the least heat; NaN if they are warm enough, or if that alone does not do
}

func (s seal) known() bool { return !math.IsNaN(s.warmed.Celsius()) }

// cold reports whether the container may not seal as it is filled. A hair of
// rounding must not fail 180 F.
func (s seal) cold() bool { return s.warmed.Celsius() < packing.CappingLeast().Celsius()-1e-9 }

// seal weighs the heat of the syrup against that of a container.
func (d *day) seal(c packing.Container) (s seal, err error) {
	unknown := units.Celsius(math.NaN())
	s = seal{unknown, unknown}
	if c.Mass <= 0 {
		return s, nil
	}
	if s.warmed, err = c.AfterFilling(d.pack.Brix(), d.given.packAt, d.given.wall); err != nil {
		return s, err
	}
	if s.cold() {
		if s.warm, err = c.WarmTo(d.pack.Brix(), d.given.packAt, packing.CappingLeast()); err != nil {
			s.warm = unknown // the syrup itself is too cool
		}
	}
	return s, nil
}
