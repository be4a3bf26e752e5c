package lookagain

import (
	"cmp"
	"hash/maphash"
	"slices"
	"strconv"
	"time"

	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/internal/base/enum"
)

// A Kind says why a row is to be seen again.
type Kind uint8

const (
	Twice       Kind = iota + 1 // the same as an earlier row
	Far                         // a strength, volume or price far from the usual
	OutOfSeason                 // a day far from the others
	AlikeName                   // a name that hardly differs from another
	HiddenSign                  // a name with a sign that is not seen or misleads
	PackedEarly                 // packed on a day before it was drawn
	NotCompared                 // a name, and more, that were not compared by the letter
)

var kinds = [...]string{
	Twice: "the same row twice", Far: "far from the usual", OutOfSeason: "out of season",
	AlikeName: "a name like another", HiddenSign: "a hidden sign in a name", PackedEarly: "packed before drawn",
	NotCompared: "names that were not compared",
}

var kindNames = enum.Names[Kind]{Type: "lookagain.Kind", Zero: true, Of: kinds[:]}

// Kinds lists the kinds.
func Kinds() []Kind { return kindNames.List() }

// MarshalText returns what String returns, and nothing for none.
func (k Kind) MarshalText() ([]byte, error) { return kindNames.Marshal(k) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (k *Kind) UnmarshalText(text []byte) error { return kindNames.Unmarshal(k, text) }

// String tells the kind in words.
func (k Kind) String() string {
	if k == 0 || int(k) >= len(kinds) {
		return "unknown"
	}
	return kinds[k]
}

// A Row is one line of a file. Values are in units that are the same in all rows
// of a [List]; NaN, infinities and what is not above zero were not given.
type Row struct {
	File     string
	Line     int
	Whole    string    // what makes two rows the same, such as all cells; empty is never the same
	Day      time.Time // zero if there is none
	Name     string    // seller, source or lot; empty if it has none
	Strength float64
	Volume   float64
	Price    float64
	Drawn    bool // the row draws the lot of that name
	Packed   bool // the row packs it
}

// A Finding is a row to see again. Its text is one line, in which names are quoted
// and signs that cannot be seen are written out, so that it is safe on a page.
type Finding struct {
	File string
	Line int
	Kind Kind
	Text string // ends without a full stop
}

// The values of a row that are held against the usual.
const (
	strength = iota
	volume
	price
	measures
)

// row is a Row as it is kept.
type row struct {
	value        [measures]float64
	whole        uint64 // odd hash; 0 if there is nothing to compare
	line         int32
	name         int32
	day          int32 // from 1970
	file         uint16
	dated        bool
	drawn, early bool
}

// A Liquid is what strengths are of.
type Liquid uint8

const (
	Sap   Liquid = iota // held against the other rows
	Syrup               // held against what syrup has, 66 to 69 Brix
)

var liquids = enum.Names[Liquid]{Type: "lookagain.Liquid", Of: []string{Sap: "sap", Syrup: "syrup"}}

// String returns the name of the liquid.
func (l Liquid) String() string { return liquids.String(l) }

// MarshalText returns the name of the liquid.
func (l Liquid) MarshalText() ([]byte, error) { return liquids.Marshal(l) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (l *Liquid) UnmarshalText(text []byte) error { return liquids.Unmarshal(l, text) }

// A List holds rows. The zero List is empty and takes any number; it is not for
// concurrent use.
type List struct {
	// Most bounds how many rows are kept, zero for no bound. [List.Skipped]
	// tells how many are passed over.
	Most int
	// Of says which liquid has the strengths, sap if nothing is said.
	Of Liquid
	// Units are what findings print behind a number, such as US gal.
	VolumeUnit, PriceUnit string

	rows    []row
	skipped int
	files   []string
	names   []string
	byName  map[string]int32
}

// seed is that of the hashes by which rows are the same.
var seed = maphash.MakeSeed()

// Add adds a row.
func (l *List) Add(r Row) {
	if !l.Looks() {
		return
	}
	k := row{value: [measures]float64{r.Strength, r.Volume, r.Price}, line: int32(r.Line), name: l.nameOf(r.Name),
		file: l.fileOf(r.File), drawn: r.Drawn, early: r.Packed}
	if !r.Day.IsZero() {
		k.dated = true
		k.day = int32(floorDiv(r.Day.Unix(), 24*60*60))
	}
	if r.Whole != "" {
		k.whole = maphash.String(seed, r.Whole) | 1
	}
	if len(l.rows) == cap(l.rows) { // doubled: by less, long lists are copied many times
		l.rows = slices.Grow(l.rows, max(64, len(l.rows)))
	}
	l.rows = append(l.rows, k)
}

// Looks reports whether [List.Add] still takes a row, so that a caller need not
// make one that is passed over; such a row is counted as skipped.
func (l *List) Looks() bool {
	if l.Most > 0 && len(l.rows) >= l.Most {
		l.skipped++
		return false
	}
	return true
}

// Skipped returns how many rows were passed over because of Most.
func (l *List) Skipped() int { return l.skipped }

func floorDiv(a, b int64) int64 {
	if a < 0 {
		a -= b - 1
	}
	return a / b
}

// nameOf keeps a name once.
func (l *List) nameOf(name string) int32 {
	if i, ok := l.byName[name]; ok {
		return i
	}
	if l.byName == nil {
		l.byName = map[string]int32{}
	}
	i := int32(len(l.names))
	l.names = append(l.names, name)
	l.byName[name] = i
	return i
}

func (l *List) fileOf(file string) uint16 {
	i := slices.Index(l.files, file)
	if i < 0 {
		i = len(l.files)
		l.files = append(l.files, file)
	}
	return uint16(i)
}

// Findings returns what is to be seen again, in the order of files and lines.
// Rows alone are wrong or right: an empty answer is no proof.
func (l *List) Findings() []Finding {
	var all []Finding
	add := func(i int, k Kind, text string) {
		r := &l.rows[i]
		all = append(all, Finding{l.files[r.file], int(r.line), k, text})
	}
	l.twice(add)
	l.far(add)
	l.season(add)
	l.hidden(add)
	l.alike(add)
	l.packed(add)
	order := map[string]int{}
	for i, f := range l.files {
		order[f] = i
	}
	slices.SortStableFunc(all, func(a, b Finding) int {
		return cmp.Or(cmp.Compare(order[a.File], order[b.File]), cmp.Compare(a.Line, b.Line), cmp.Compare(a.Kind, b.Kind))
	})
	return all
}

// An adder takes a finding on the row of an index.
type adder func(i int, k Kind, text string)

// twice finds rows that are the same as an earlier one of the same file.
func (l *List) twice(add adder) {
	var all []uint64
	for i := range l.rows {
		if l.rows[i].whole != 0 {
			all = append(all, l.rows[i].whole)
		}
	}
	slices.Sort(all)
	again := map[uint64]bool{} // few, where all rows are many
	for k := 1; k < len(all); k++ {
		if all[k] == all[k-1] {
			again[all[k]] = true
		}
	}
	if len(again) == 0 {
		return
	}
	type key struct {
		file  uint16
		whole uint64
	}
	first := map[key]int32{} // its line
	for i := range l.rows {
		r := &l.rows[i]
		if !again[r.whole] {
			continue
		}
		at := key{r.file, r.whole}
		if line, known := first[at]; known {
			add(i, Twice, "the same row as line "+strconv.Itoa(int(line))+": it counts twice")
		} else {
			first[at] = r.line
		}
	}
}

// packed finds lots that were packed on a day before the first draw.
func (l *List) packed(add adder) {
	drawn := map[int32]int{} // first draw by name
	for i := range l.rows {
		r := &l.rows[i]
		if !r.drawn || !r.dated {
			continue
		}
		if f, known := drawn[r.name]; !known || r.day < l.rows[f].day {
			drawn[r.name] = i
		}
	}
	for i := range l.rows {
		r := &l.rows[i]
		if !r.early || !r.dated {
			continue
		}
		if f, known := drawn[r.name]; known && r.day < l.rows[f].day {
			d := &l.rows[f]
			add(i, PackedEarly, "lot "+quoted(l.names[r.name])+" was packed on "+day(r.day)+", before it was drawn: "+day(d.day)+", "+clip.Text(l.files[d.file])+":"+strconv.Itoa(int(d.line)))
		}
	}
}

func day(n int32) string { return time.Unix(int64(n)*24*60*60, 0).UTC().Format(time.DateOnly) }

// quoted quotes a name, cut if it is long. What cannot be seen is written out.
func quoted(name string) string { return strconv.Quote(clip.Text(name)) }
