package yield

import (
	"strconv"
	"strings"
	"time"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// A MoveKind is what happened to syrup between the fire and the jar. The zero
// value is none and refused.
type MoveKind uint8

// The kinds of moves.
const (
	Drawn   MoveKind = iota + 1 // from the fire into a vessel of its own
	Poured                      // from one vessel into another, which may be empty
	Bottled                     // from a vessel into jars
	Thrown                      // out: moldy, scorched or spilled
)

var moveNames = enum.Names[MoveKind]{Type: "yield.MoveKind", Zero: true,
	Of: []string{Drawn: "drawn", Poured: "poured", Bottled: "bottled", Thrown: "thrown"}}

// String returns the name of the kind, such as "poured".
func (k MoveKind) String() string { return moveNames.String(k) }

// MoveKinds lists the kinds.
func MoveKinds() []MoveKind { return moveNames.List() }

// MarshalText returns what String returns, and nothing for none.
func (k MoveKind) MarshalText() ([]byte, error) { return moveNames.Marshal(k) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (k *MoveKind) UnmarshalText(text []byte) error { return moveNames.Unmarshal(k, text) }

// A Move is one thing that happened to syrup.
type Move struct {
	Kind MoveKind
	Day  time.Time
	From string     // vessel; empty for Drawn
	Into string     // vessel, or the name of the run of jars; empty for Thrown
	Mass units.Mass // 1 mg to 1e9 kg
	Brix units.Brix // of Drawn only: 0 to 85
}

// A Stage is an amount of syrup and the sugar in it.
type Stage struct{ Syrup, Sugar units.Mass }

func (s *Stage) add(mass, sugar units.Mass) { s.Syrup, s.Sugar = s.Syrup+mass, s.Sugar+sugar }

// A Held is what stands in a vessel at the end.
type Held struct {
	Vessel string
	Lot    string // what it holds, by its name in the books
	Stage  Stage
	Over   Stage // taken out beyond what was in it: a wrong measure, or a batch not written down
}

// A Run is a run of jars as it was filled.
type Run struct {
	Packing Packing
	Stage   Stage
}

// A Cellar is what became of the syrup of a season. What was drawn, and what was
// taken out over it, is what was bottled, thrown out and is held:
//
//	Drawn + Over = Bottled + Thrown + Left
type Cellar struct {
	Held                               []Held // in the order in which vessels first appear
	Runs                               []Run  // in the order of the moves
	Drawn, Over, Bottled, Thrown, Left Stage
}

// KeepCellar follows syrup through a cellar, move by move in their order, and
// returns what is left and the books that trace it. A vessel is stirred when
// something is poured into it: jars filled before hold nothing of that, and all
// filled after hold their share. Boils have the names of the vessels that they
// were drawn into; a lot has that of its vessel, with "as drawn" or "blended 1" where
// that is a boil's.
//
// A vessel that is drawn into must be new, one that is taken from must hold, or
// have held, something, and runs of jars have a name of their own. Otherwise the
// answer is zero and a [*TraceError], or a [*units.RangeError] for a number
// outside its range. Range: 1 to 100,000 moves.
func KeepCellar(moves []Move) (Cellar, *Books, error) {
	const fn = "yield.KeepCellar"
	if err := limit.Entries(fn, "moves", len(moves)); err != nil {
		return Cellar{}, nil, err
	}
	k := keeper{vessels: map[string]*vessel{}, taken: make(map[string]bool, len(moves))}
	for _, m := range moves {
		k.taken[m.Into] = true
	}
	for i, m := range moves {
		if err := k.move(fn, i, m); err != nil {
			return Cellar{}, nil, err
		}
	}
	for _, name := range k.order {
		v := k.vessels[name]
		k.Held = append(k.Held, Held{name, v.lot, v.Stage, v.over})
		k.Left.add(v.Syrup, v.Sugar)
		k.Over.add(v.over.Syrup, v.over.Sugar)
	}
	books, err := NewBooks(k.boils, k.lots, k.packings)
	if err != nil {
		return Cellar{}, nil, units.Under(fn, err)
	}
	return k.Cellar, books, nil
}

// A vessel is what it holds now.
type vessel struct {
	Stage
	over Stage
	lot  string
	part float64 // of sugar in what it holds, or held last
	turn int     // times that something was poured into it
}

// A keeper follows the moves.
type keeper struct {
	Cellar
	vessels  map[string]*vessel
	order    []string
	taken    map[string]bool // names that the caller gave
	boils    []Boil
	lots     []BulkLot
	packings []Packing
}

func (k *keeper) move(fn string, i int, m Move) error {
	if err := limit.InItem(fn, "moves", i, "Kind", "kind of move", float64(m.Kind), float64(Drawn), float64(Thrown), "", "say what happened: drawn, poured, bottled or thrown"); err != nil {
		return err
	}
	if err := limit.InItem(fn, "moves", i, "Mass", "mass", m.Mass.Kilograms(), leastMass, mostMass, "kg", "what was moved"); err != nil {
		return err
	}
	if m.Kind == Drawn {
		return k.draw(fn, i, m)
	}
	from, known := k.vessels[m.From]
	if !known {
		return &TraceError{Func: fn, ID: m.From, Ref: m.Into, Err: ErrUnknownID}
	}
	sugar := from.take(m.Mass)
	switch m.Kind {
	case Poured:
		return k.pour(fn, m, from, sugar)
	case Bottled:
		p := Packing{ID: m.Into, Lot: from.lot, Day: m.Day}
		k.packings = append(k.packings, p)
		k.Runs = append(k.Runs, Run{p, Stage{m.Mass, sugar}})
		k.Bottled.add(m.Mass, sugar)
	default:
		k.Thrown.add(m.Mass, sugar)
	}
	return nil
}

func (k *keeper) draw(fn string, i int, m Move) error {
	if err := limit.InItem(fn, "moves", i, "Brix", "strength", float64(m.Brix), 0, 85, "Brix", "of the syrup as it was drawn"); err != nil {
		return err
	}
	if _, known := k.vessels[m.Into]; known {
		return &TraceError{Func: fn, ID: m.Into, Err: ErrDuplicateID}
	}
	v := k.vessel(m.Into)
	v.lot, v.part = k.free(m.Into+" as drawn", ""), m.Brix.Fraction()
	v.add(m.Mass, m.Brix.Sugar(m.Mass))
	k.boils = append(k.boils, Boil{ID: m.Into, Day: m.Day})
	k.lots = append(k.lots, BulkLot{ID: v.lot, Parts: []Part{{From: m.Into, Mass: m.Mass}}})
	k.Drawn.add(m.Mass, m.Brix.Sugar(m.Mass))
	return nil
}

// pour puts what was taken into a vessel, which then holds a new lot.
func (k *keeper) pour(fn string, m Move, from *vessel, sugar units.Mass) error {
	switch {
	case m.Into == m.From:
		return &TraceError{Func: fn, ID: m.Into, Err: ErrCircular}
	case m.Into == "":
		return &TraceError{Func: fn, ID: m.Into, Ref: m.From, Err: ErrNoName}
	}
	into := k.vessels[m.Into]
	if into == nil {
		into = k.vessel(m.Into)
	}
	l := BulkLot{ID: k.name(m.Into, into), Parts: []Part{{From: from.lot, Mass: m.Mass}}}
	if into.Syrup >= leastMass { // a crumb that is left is no part
		l.Parts = append([]Part{{From: into.lot, Mass: into.Syrup}}, l.Parts...)
	}
	k.lots = append(k.lots, l)
	into.lot = l.ID
	into.add(m.Mass, sugar)
	into.part = float64(into.Sugar / into.Syrup)
	return nil
}

// vessel adds an empty one.
func (k *keeper) vessel(name string) *vessel {
	v := &vessel{}
	k.vessels[name] = v
	k.order = append(k.order, name)
	return v
}

// name finds a name for what a vessel holds from now on: its own for the first lot
// of one that nothing was drawn into.
func (k *keeper) name(vessel string, v *vessel) string {
	if v.lot == "" {
		return vessel
	}
	v.turn++
	return k.free(vessel+" blended", strconv.Itoa(v.turn))
}

// free makes a name that nothing else has, from a name and a number behind it.
func (k *keeper) free(name, number string) string {
	for id := strings.TrimSpace(name + " " + number); ; id += "'" {
		if !k.taken[id] {
			k.taken[id] = true
			return id
		}
	}
}

// take takes a mass out and returns the sugar in it.
func (v *vessel) take(mass units.Mass) units.Mass {
	sugar := units.Mass(v.part) * mass
	if more := mass - v.Syrup; more > 0 {
		v.over.add(more, units.Mass(v.part)*more)
		v.Stage = Stage{}
		return sugar
	}
	v.Syrup, v.Sugar = v.Syrup-mass, max(v.Sugar-sugar, 0) // not below it by rounding
	return sugar
}
