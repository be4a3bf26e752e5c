package tapping

import (
	"errors"
	"fmt"
	"io"

	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// ReadStand reads the trees of a stand from a CSV table whose header carries
// the unit:
//
//	tree,girth_in,species,vigor,note
//	A1,42.5,sugar maple,healthy,
//	A2,38,sugar maple,healthy,forked at the knee
//	A2,57,sugar maple,slow,
//
// One of dbh and girth is needed, with its unit: in, cm, ft, m or mm. Tree is a label:
// rows of the same label that follow each other are the stems of one tree, a
// row without one is a tree of its own, and a label that comes back later is
// an error. Species and vigor may be left out or empty; see
// [Species.UnmarshalText] and [Vigor.UnmarshalText]. A column note is passed
// over, and any other is refused, so that a misspelled vigor is not lost.
//
// It reads row by row, rows of up to 64 KiB. Errors are [*records.RowError].
func ReadStand(r io.Reader) ([]Tree, error) {
	var s standRows
	t, err := records.Open("", r)
	switch {
	case err == io.EOF:
		err = &records.RowError{Err: errors.New("the table is empty: the first line names its columns, " + standHeader)}
	case err == nil:
		err = s.read(t)
	}
	if err != nil {
		return nil, records.Row(err)
	}
	return s.trees, nil
}

const standHeader = "tree, one of dbh_in and girth_in (or another unit of length), species, vigor, note"

// standRows gathers the stems of a table into trees.
type standRows struct {
	trees []Tree
	first map[string]int // line on which a labeled tree begins

	girth                 bool
	size                  units.Length
	label, species, vigor string
}

func (s *standRows) read(t *records.Reader) error {
	if err := s.bind(t); err != nil {
		return err
	}
	s.first = map[string]int{}
	for {
		switch err := t.Next(); {
		case err == io.EOF:
			return nil
		case err != nil:
			return err
		}
		trunk, column, err := s.trunk()
		if err != nil {
			return t.Fail(column, err)
		}
		if n := len(s.trees); s.label != "" && n > 0 && s.trees[n-1].Label == s.label {
			s.trees[n-1].Stems = append(s.trees[n-1].Stems, trunk)
			continue
		}
		if s.label != "" {
			if first, again := s.first[s.label]; again {
				return t.Fail("tree", fmt.Errorf("tree %q stands on line %d: %w: stems of one tree follow each other", clip.Text(s.label), first, records.ErrDuplicate))
			}
			s.first[s.label] = t.Line()
		}
		s.trees = append(s.trees, Tree{s.label, []Trunk{trunk}})
	}
}

func (s *standRows) bind(t *records.Reader) error {
	size := "dbh"
	if s.girth = t.Names("girth"); s.girth {
		size = "girth"
	}
	err := t.Bind(
		records.Length(size, &s.size),
		records.Text("tree", &s.label).Optional(),
		records.Text("species", &s.species).Optional(),
		records.Text("vigor", &s.vigor).Optional(),
	)
	if err != nil {
		return err
	}
	for _, name := range t.Unasked() {
		if name != "note" {
			return t.Fail(name, errors.New("want "+standHeader))
		}
	}
	return nil
}

// trunk returns the stem of the present row, or an error and its column.
func (s *standRows) trunk() (trunk Trunk, column string, err error) {
	column, dbh := "dbh", s.size
	if s.girth {
		column = "girth"
		if dbh, err = DiameterFromGirth(dbh); err != nil {
			return Trunk{}, column, err
		}
	}
	species, err := speciesNamed("tapping.ReadStand", s.species)
	if err != nil {
		return Trunk{}, "species", err
	}
	var vigor Vigor
	if err := vigor.UnmarshalText([]byte(s.vigor)); err != nil {
		return Trunk{}, "vigor", err
	}
	trunk, err = NewTrunk(dbh, species, vigor)
	return trunk, column, units.Under("tapping.ReadStand", err)
}
