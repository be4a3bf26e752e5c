package main

import (
	"errors"
	"math"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield/money"
)

// helpers returns who shares the jars, and by what. There are none without a file.
func (s *setup) helpers(h *folder.House) (all []money.Contribution, by string, err error) {
	var (
		name        string
		worked      time.Duration
		taps, parts float64
		brought     units.Mass
	)
	cols := []records.Col{
		records.Text("name", &name), records.Hours("worked", &worked).Optional(), records.Number("taps", &taps).Optional(),
		records.Mass("sugar", &brought).Optional(), records.Number("parts", &parts).Optional(),
	}
	// An empty cell is nothing brought.
	orNone := func(x float64) float64 {
		if math.IsNaN(x) {
			return 0
		}
		return x
	}
	_, err = eachRow(h, folder.PeopleFile, mostHelpers, cols, func(r *records.Reader) error {
		given := 0
		for _, column := range []string{"worked", "taps", "sugar", "parts"} {
			if r.Has(column) {
				by = column
				given++
			}
		}
		if given != 1 {
			return r.Fail("", errors.New("the file must have one of the columns worked_h, taps, sugar_lb and parts, and no more"))
		}
		c, err := contribution(name, by, worked, orNone(taps), units.Mass(orNone(float64(brought))), orNone(parts))
		if err != nil {
			return r.Fail(by, err)
		}
		all = append(all, c)
		return nil
	})
	return all, by, err
}

// contribution returns what one brought, by the column that counts.
func contribution(name, by string, worked time.Duration, taps float64, brought units.Mass, parts float64) (money.Contribution, error) {
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
	}
	if !(parts >= 0 && parts <= mostParts) {
		return money.Contribution{}, errors.New("parts go from 0 to a million")
	}
	return money.Contribution{Name: name, Weight: decimal.NewFromFloat(parts)}, nil
}
