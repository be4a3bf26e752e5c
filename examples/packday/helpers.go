package main

import (
	"errors"
	"math"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield/money"
)

// measures are the columns of people.csv that may count, each an equal part.
var measures = []string{"worked", "taps", "sugar", "wood", "parts"}

// several is the measure where more than one counts.
const several = "several"

// helpersOf reads who shares the jars, and by what. There are none without a file.
func (d *day) helpersOf(h *folder.House) error {
	var (
		name           string
		worked         time.Duration
		taps, parts    float64
		brought        units.Mass
		cut, had       units.Volume
		by             []string
		among          [5][]money.Contribution // by the place of the measure
		counts, people = [5]bool{}, map[string]bool{}
	)
	cols := []records.Col{
		records.Text("name", &name), records.Hours("worked", &worked).Optional(), records.Number("taps", &taps).Optional(),
		records.Mass("sugar", &brought).Optional(), records.Volume("wood", &cut).Optional(), records.Number("parts", &parts).Optional(), records.Volume("taken", &had).Optional(),
	}
	_, err := eachRow(h, folder.PeopleFile, mostHelpers, cols, func(r *records.Reader) error {
		by = by[:0]
		for k, column := range measures {
			if counts[k] = r.Has(column); counts[k] {
				by = append(by, column)
			}
		}
		if len(by) == 0 {
			return r.Fail("", errors.New("the file must have one of the columns worked_h, taps, sugar_lb, wood_cord and parts; of several each counts an equal part"))
		}
		if people[name] && len(by) > 1 {
			return r.Fail("name", errors.New("it stands there already: one row for each where several columns count"))
		}
		people[name] = true
		taken := cli.Or(had, 0)
		if !(taken >= 0 && taken <= mostTaken) {
			return r.Fail("taken", errors.New("what one took already goes from 0 to 10,000 L"))
		}
		d.taken = append(d.taken, taken)
		d.took = d.took || taken > 0
		for k, column := range measures {
			if !counts[k] {
				continue
			}
			c, err := contribution(name, column, worked, cli.Or(taps, 0), cli.Or(brought, 0), cli.Or(cut, 0), cli.Or(parts, 0)) // an empty cell is nothing brought
			if err != nil {
				return r.Fail(column, err)
			}
			among[k] = append(among[k], c)
		}
		return nil
	})
	if err != nil || len(by) == 0 {
		return err
	}
	var all []money.Measure
	for k, c := range among {
		if counts[k] {
			all = append(all, money.Measure{Part: decimal.NewFromInt(1), Among: c})
		}
	}
	if len(all) == 1 {
		d.helpers, d.by = all[0].Among, by[0]
		return nil
	}
	d.by = several
	d.helpers, err = money.Together(all...)
	return d.inFile(folder.PeopleFile, err)
}

// mostTaken bounds what one took already.
const mostTaken = 10_000 * units.Liter

// contribution returns what one brought, by the column that counts.
func contribution(name, by string, worked time.Duration, taps float64, brought units.Mass, cut units.Volume, parts float64) (money.Contribution, error) {
	const mostParts = 1e6
	switch by {
	case "worked":
		return money.ByHours(name, worked)
	case "sugar":
		return money.BySugar(name, brought)
	case "taps":
		if !(taps >= 0 && taps <= mostParts && taps == math.Trunc(taps)) {
			return money.Contribution{}, errors.New("a whole number of taps, up to a million")
		}
		return money.ByTaps(name, int(taps))
	case "wood":
		parts = math.Round(1e6*float64(cut/units.Cord)) / 1e6
	}
	if !(parts >= 0 && parts <= mostParts) {
		return money.Contribution{}, errors.New("it goes from 0 to a million")
	}
	return money.Contribution{Name: name, Weight: decimal.NewFromFloat(parts)}, nil
}
