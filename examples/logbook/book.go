package main

import (
	"cmp"
	"errors"
	"fmt"
	"iter"
	"time"

	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield/lookagain"
)

// What a season may hold. Rows are counted and forgotten; these are kept, so
// they are bounded.
const (
	mostSources = 500
	mostLots    = 5_000
	mostSizes   = 100
	mostWrong   = 20 // mistakes that are told at once
)

// A total adds up lots: what boiling and pouring do not change.
type total struct {
	rows        int
	mass, sugar units.Mass
	unread      units.Volume // sap whose strength nobody read
}

func (t *total) add(l sugar.Lot) {
	t.rows++
	t.mass += l.Mass()
	t.sugar += l.Sugar()
}

// lot returns the total as one lot at the label temperature.
func (t *total) lot() (sugar.Lot, error) {
	if t.mass == 0 {
		return sugar.Lot{}, nil
	}
	return sugar.NewLotByMass(t.mass, units.Brix(100*float64(t.sugar)/float64(t.mass)), label)
}

// settle counts the sap whose strength nobody read at that of the others.
func (t *total) settle(mean units.Brix, at units.Temperature) error {
	l, err := sugar.NewLot(t.unread, mean, at)
	t.mass += l.Mass()
	t.sugar += l.Sugar()
	t.unread = 0
	return err
}

// label is the temperature at which a page counts volumes: 68 F.
var label = units.Celsius(20)

// day is what came in, was boiled and went out on a day.
type day struct {
	sap   total
	syrup total        // of the batches
	told  units.Volume // syrup by the days
	fire
}

// packed is what was drawn and bottled of a batch.
type packed struct {
	drawn  total
	unlike int          // rows that are hardly syrup
	moldy  bool         // thrown away: marked so, or such syrup was poured into it
	drum   bool         // weighed full and empty
	poured units.Volume // to it from other batches, less what went to others
	volume units.Volume // bottled, by the labels
}

// size is the containers of one size.
type size struct {
	label units.Volume
	count int
}

// A book is a season read from the folder.
type book struct {
	given *setup
	flags *cli.Flags
	house *folder.House
	year  int // of the season

	wrong  []error
	again  found          // rows that count, and are to be looked at again
	unseen int            // rows that were not
	syrups lookagain.List // of batches and bottles

	days    [367]day // by the day of the year
	sources map[string]*total
	mean    units.Brix // of the sap that was read
	unread  int        // rows of sap that was not
	boiled  total
	waits   units.Mass   // sugar of the sap that still waits for the fire
	tooOld  units.Volume // sap that nobody boiled, and that is too old to wait
	thrown  total        // sap out of the tanks
	water   units.Mass

	more     units.Volume // sap that a boil took beyond what stood, the most of any
	moreLine int          // of that boil
	fired    time.Duration
	wood     units.Volume
	boils    []firing
	sweet    []folder.Sweet // of the pan
	learns   []fuel.Firing

	lots  map[string]*packed
	sizes map[int64]*size
}

func newBook(s *setup, f *cli.Flags) *book {
	return &book{given: s, flags: f, house: f.House(), sources: map[string]*total{}, lots: map[string]*packed{}, sizes: map[int64]*size{},
		syrups: lookagain.List{Most: mostLooked, Of: lookagain.Syrup}}
}

// open reads the season of the folder.
func (b *book) open() error {
	h := b.house
	if b.year = h.Season(); !b.given.asked {
		b.year = b.lastYear() // though a winter's weather be of another
	}
	// Jars belong to the season of their syrup, whenever they were filled.
	of := map[string]bool{}
	for _, r := range h.Batches {
		of[r.Name] = r.Date.Year() == b.year
	}
	err := b.read(only(h.Days, func(d folder.Day) bool { return d.Date.Year() == b.year }),
		only(h.Batches, func(r folder.Batch) bool { return of[r.Name] }),
		only(h.Bottled, func(r folder.Jars) bool { return of[r.Batch] }),
		only(h.Blends, func(r folder.Blend) bool { return of[r.From] || of[r.Into] }))
	switch {
	case err != nil || b.gathered() > 0:
	case b.year == 0:
		err = fmt.Errorf("%s: no day with sap yet: write one down", h.Shown(folder.DaysFile))
	default:
		err = fmt.Errorf("%s: no sap of %d: ask for another -season", h.Shown(folder.DaysFile), b.year)
	}
	if !b.given.heldTold {
		b.sweet = h.Pan
	}
	return err
}

// only gives those rows of a file that are wanted.
func only[Row any](rows []Row, wanted func(Row) bool) iter.Seq[Row] {
	return func(yield func(Row) bool) {
		for _, r := range rows {
			if wanted(r) && !yield(r) {
				return
			}
		}
	}
}

// read counts the rows of the season.
func (b *book) read(days iter.Seq[folder.Day], batches iter.Seq[folder.Batch], bottles iter.Seq[folder.Jars], blends iter.Seq[folder.Blend]) error {
	b.readDays(days)
	each(b, batches, b.readBatch)
	each(b, bottles, b.readBottled)
	each(b, blends, b.readBlend)
	for name := range b.house.Moldy() {
		if l := b.lots[name]; l != nil {
			l.moldy = true
		}
	}
	if len(b.wrong) > 0 {
		return errors.Join(b.wrong...)
	}
	b.look(&b.syrups)
	b.syrups = lookagain.List{}
	return cmp.Or(b.settle(), b.fires())
}

// each reads rows until too many of them are wrong.
func each[Row any](b *book, rows iter.Seq[Row], read func(Row) error) {
	for row := range rows {
		if len(b.wrong) == mostWrong {
			return
		}
		if err := read(row); err != nil {
			b.wrong = append(b.wrong, err)
		}
	}
}

// fail tells what is wrong in a row.
func (b *book) fail(file string, line int, column string, err error) error {
	if err == nil {
		return nil
	}
	return failed(b.house, file, line, column, err)
}

// failed tells where in the folder something is wrong.
func failed(h *folder.House, file string, line int, column string, err error) error {
	return &records.Error{File: h.Shown(file), Line: line, Column: column, Err: err}
}
