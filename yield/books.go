package yield

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"time"

	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Reasons why records do not hang together. Every [*TraceError] unwraps to one
// of them.
var (
	ErrUnknownID   = errors.New("no such record")
	ErrDuplicateID = errors.New("two records with one name")
	ErrNoName      = errors.New("a record without a name")
	ErrCircular    = errors.New("a lot made of itself")
	ErrNothing     = errors.New("a lot made of nothing")
)

// A TraceError says which record cannot be traced and why.
type TraceError struct {
	Func string // the function called, such as "yield.NewBooks"
	ID   string // the record
	Ref  string // what it refers to, if that is at fault
	Err  error
}

// Error tells the function, the record and the reason.
func (e *TraceError) Error() string {
	return e.Func + ": " + e.Text(units.Both)
}

// Text tells the record and the reason to a person.
func (e *TraceError) Text(units.System) string {
	s := fmt.Sprintf("%q: %v", clip.Text(e.ID), e.Err)
	if e.Ref != "" {
		s += fmt.Sprintf(": %q", clip.Text(e.Ref))
	}
	return s
}

// Unwrap returns the reason.
func (e *TraceError) Unwrap() error { return e.Err }

// A Boil is syrup drawn off on one day from one fire.
type Boil struct {
	ID  string
	Day time.Time
}

// A Part is what went into a lot from a boil or from another lot.
type Part struct {
	From string     // ID of a boil or of a lot
	Mass units.Mass // 1 mg to 1e9 kg
}

// A BulkLot is syrup held together: a drum, or what was blended to be packed.
type BulkLot struct {
	ID    string
	Parts []Part
}

// A Packing is a run of containers filled from one lot, on the day or after
// months in bulk.
type Packing struct {
	ID  string
	Lot string
	Day time.Time
}

// Books tie every jar to the lot, the boils and the days that it comes from. They
// are made by [NewBooks] and never change; the zero Books know nothing.
//
// # Syrup held in bulk
//
// Fill drums hot and full, note the Brix and the color. To repack, heat the
// syrup again to packing temperature: it darkens, and niter may fall out that was
// not there before, so that it must be filtered again; read the Brix again, as
// some water is lost. Look and smell first: moldy syrup may hold toxins that
// heat does not destroy, and is thrown away. Drums of galvanized steel, or with
// lead in a seam, are not for food. Cool filled jars apart from each other.
type Books struct {
	boils    map[string]Boil
	lots     map[string]BulkLot
	packings map[string]Packing
	order    []string // IDs of packings as given
}

// NewBooks ties boils, lots and packings together. Boils and lots share one list of
// names, packings have their own.
//
// Every name must be there once, every part and every packing must name a
// record that exists, a lot must be made of something, and no lot of itself,
// directly or through others. Otherwise the answer is nil and a [*TraceError],
// or a [*units.RangeError] for a mass outside 1 mg to 1e9 kg.
func NewBooks(boils []Boil, lots []BulkLot, packings []Packing) (*Books, error) {
	const fn = "yield.NewBooks"
	b := &Books{
		boils:    make(map[string]Boil, len(boils)),
		lots:     make(map[string]BulkLot, len(lots)),
		packings: make(map[string]Packing, len(packings)),
	}
	for _, r := range boils {
		if err := b.free(fn, r.ID); err != nil {
			return nil, err
		}
		b.boils[r.ID] = r
	}
	for _, r := range lots {
		if err := b.free(fn, r.ID); err != nil {
			return nil, err
		}
		if len(r.Parts) == 0 {
			return nil, &TraceError{Func: fn, ID: r.ID, Err: ErrNothing}
		}
		r.Parts = slices.Clone(r.Parts) // the caller may change his
		b.lots[r.ID] = r
	}
	if err := b.checkParts(fn, lots); err != nil {
		return nil, err
	}
	for _, r := range packings {
		if r.ID == "" {
			return nil, &TraceError{Func: fn, ID: r.ID, Ref: r.Lot, Err: ErrNoName}
		}
		if _, taken := b.packings[r.ID]; taken {
			return nil, &TraceError{Func: fn, ID: r.ID, Err: ErrDuplicateID}
		}
		if _, known := b.lots[r.Lot]; !known {
			return nil, &TraceError{Func: fn, ID: r.ID, Ref: r.Lot, Err: ErrUnknownID}
		}
		b.packings[r.ID] = r
		b.order = append(b.order, r.ID)
	}
	return b, nil
}

// free checks the name of a boil or a lot.
func (b *Books) free(fn, id string) error {
	if id == "" {
		return &TraceError{Func: fn, ID: id, Err: ErrNoName}
	}
	if b.holds(id) {
		return &TraceError{Func: fn, ID: id, Err: ErrDuplicateID}
	}
	return nil
}

// checkParts checks that parts exist, have a mass, and do not lead in a circle.
func (b *Books) checkParts(fn string, lots []BulkLot) error {
	for k, l := range lots {
		for i, p := range l.Parts {
			if !b.holds(p.From) {
				return &TraceError{Func: fn, ID: l.ID, Ref: p.From, Err: ErrUnknownID}
			}
			if m := p.Mass.Kilograms(); !(m >= leastMass && m <= mostMass) { // the name is made only when it is needed
				if err := limit.InAs(fn, limit.Item("lots", k, limit.Item("Parts", i, "Mass")), "part "+strconv.Itoa(i+1)+" of "+strconv.Quote(clip.Text(l.ID)), m, leastMass, mostMass, "kg", "what went into the lot"); err != nil {
					return err
				}
			}
		}
	}
	return b.checkCircles(fn, lots)
}

// checkCircles takes away, again and again, lots that hang on nothing left. What
// cannot be taken away hangs in a circle.
func (b *Books) checkCircles(fn string, lots []BulkLot) error {
	waits := make(map[string]int, len(lots)) // parts that are lots not yet taken away
	uses := make(map[string][]string)        // lots made of a lot, once for each part
	ready := make([]string, 0, len(lots))
	for _, l := range lots {
		for _, p := range l.Parts {
			if _, lot := b.lots[p.From]; lot {
				waits[l.ID]++
				uses[p.From] = append(uses[p.From], l.ID)
			}
		}
		if waits[l.ID] == 0 {
			ready = append(ready, l.ID)
		}
	}
	taken := 0
	for ; taken < len(ready); taken++ {
		for _, user := range uses[ready[taken]] {
			if waits[user]--; waits[user] == 0 {
				ready = append(ready, user)
			}
		}
	}
	for _, l := range lots {
		if waits[l.ID] > 0 {
			return &TraceError{Func: fn, ID: l.ID, Err: ErrCircular}
		}
	}
	return nil
}
