package cli

import (
	"fmt"
	"strings"

	"example.org/sapreckoner/units"
)

// A Brief is the first page of a program: what to do, and what not to forget. It
// is laid out in narrow lines, so that it fits a telephone and a card on the wall.
type Brief struct {
	Verdict  string   // one sentence, which ends in a full stop
	Cautions []string // those that matter now: scalding always, carbon monoxide first under a roof
	Further  []string // where to ask further, a sentence each
	House    string   // whose numbers these are if they are nobody's own: the demo

	answers []item
	list    *item
	known   Sources
}

// Limits of a brief, which [example.org/sapreckoner/examples/internal/cli/clitest]
// holds. The rows of a list do not count.
const (
	BriefLines   = 24
	BriefColumns = 60
	BriefAnswers = 6
)

// Sources are where the numbers of a page come from, in a few words each.
type Sources struct {
	Told    []string `json:"told"`    // on the command line or in the folder
	Learned []string `json:"learned"` // with how many it stands on: the rate of 5 boils
	Assumed []string `json:"assumed"` // with the value
}

// Answer adds one of the numbers to act on. The value is rounded to its safe side:
// see [Side].
func (b *Brief) Answer(key, label string, v Value, notes ...string) {
	b.answers = append(b.answers, item{key: key, label: label, value: v, notes: worded(notes)})
}

// List sets what has a row for each thing that the user brought: trees to drill,
// sellers to pay. A program has one at the most.
func (b *Brief) List(cols []Column, rows [][]Value) {
	b.list = &item{table: &table{cols, rows}}
}

// Told adds to what the user said.
func (b *Brief) Told(words ...string) { b.known.Told = append(b.known.Told, words...) }

// Learned adds to what the record taught.
func (b *Brief) Learned(words ...string) { b.known.Learned = append(b.known.Learned, words...) }

// Assumed adds to what nobody told.
func (b *Brief) Assumed(words ...string) { b.known.Assumed = append(b.known.Assumed, words...) }

// If is the brief where that is to be told, as [Part.If].
func (b *Brief) If(told bool) *Brief {
	if told {
		return b
	}
	return new(Brief)
}

// Caution adds a caution where it is needed, unless it is empty.
func (b *Brief) Caution(needed bool, caution string) {
	if needed && caution != "" {
		b.Cautions = append(b.Cautions, caution)
	}
}

// From adds things by the flags that fill them, a flag and its words in turn: told
// on the command line or in the folder, learned from the record, or else assumed, as
// what stands in an invented folder is.
func (b *Brief) From(f *Flags, pairs ...string) {
	for i := 0; i+1 < len(pairs); i += 2 {
		switch source, words := f.Source(pairs[i]), pairs[i+1]; source.Kind {
		case Told, InFolder:
			b.Told(words)
		case Learned:
			b.Learned(words + " from " + source.From)
		default:
			b.Assumed(words)
		}
	}
}

// String words what is known in one line.
func (k Sources) String() string {
	var all []string
	for _, part := range []struct {
		head string
		of   []string
	}{{"Told", k.Told}, {"Learned", k.Learned}, {"Assumed", k.Assumed}} {
		if len(part.of) > 0 {
			all = append(all, part.head+": "+strings.Join(part.of, ", ")+".")
		}
	}
	return strings.Join(all, " ")
}

// printBrief writes the first page. Blank lines between its blocks go, from the last
// on, where it would be too long.
func (s *Sheet) printBrief(e *Env) {
	const label = 20
	b := &s.Brief
	var blocks []string
	lines := -1
	block := func(lay func(*Page)) {
		var out strings.Builder
		lay(&Page{w: &out, label: label, width: BriefColumns})
		if out.Len() > 0 {
			blocks = append(blocks, out.String())
			lines += strings.Count(out.String(), "\n") + 1
		}
	}
	block(func(p *Page) { p.Text(b.Verdict) })
	block(func(p *Page) {
		for _, it := range b.answers {
			p.Row(it.label, s.In(it.value), it.notes...)
		}
	})
	if b.list != nil {
		block(func(p *Page) { s.printTable(p, b.list.table) })
		lines -= len(b.list.table.rows) + 2
	}
	block(func(p *Page) {
		if words := strings.TrimSpace(b.House + " " + b.known.String()); words != "" {
			p.Text(words)
		}
	})
	block(func(p *Page) {
		for _, c := range b.Cautions {
			p.Item(c)
		}
	})
	block(func(p *Page) {
		if len(b.Further) > 0 {
			p.Text(strings.Join(b.Further, " "))
		}
	})
	narrow := max(0, lines-BriefLines)
	for i, text := range blocks {
		if i > 0 && i < len(blocks)-narrow {
			e.Out.WriteString("\n")
		}
		e.Out.WriteString(text)
	}
}

// JSON writes the sheet in the shape that the package comment tells.
func (s *Sheet) JSON(e *Env) error {
	b := &s.Brief
	if b.Verdict == "" {
		return e.JSON(append(object{{"title", s.Title}}, s.jsonParts()...))
	}
	answers := make([]object, len(b.answers))
	for i, it := range b.answers {
		answers[i] = object{{"key", it.key}, {"label", it.label}, {"text", s.In(it.value)}, {"us", it.value.us.object()}, {"metric", it.value.metric.object()}}
		if len(it.notes) > 0 {
			answers[i] = append(answers[i], member{"note", strings.Join(it.notes, "; ")})
		}
	}
	list := []object{}
	if b.list != nil {
		list = s.jsonTable(b.list.table)
	}
	doc := object{{"program", e.program}, {"verdict", b.Verdict}, {"answers", answers}, {"list", list}}
	return e.JSON(append(doc, member{"known", b.known.object(b.House)}, member{"cautions", some(b.Cautions)},
		member{"further", some(b.Further)}, member{"parts", s.jsonParts()}))
}

// object is a value in one unit, which is named where there is one.
func (v view) object() object {
	o := object{{"value", v.json}}
	if v.suffix != "" {
		o = append(o, member{"unit", v.suffix})
	}
	return o
}

func (k Sources) object(house string) object {
	return object{{"house", house}, {"told", some(k.Told)}, {"learned", some(k.Learned)}, {"assumed", some(k.Assumed)}}
}

// some makes an empty list of none, which JSON would show as null.
func some(words []string) []string { return append([]string{}, words...) }

// Warn adds the cautions of a fire: that of carbon monoxide first where it stands
// under a roof, and last where it may.
func (b *Brief) Warn(underRoof bool, cautions ...string) {
	if underRoof {
		b.Cautions = append([]string{carbonMonoxide}, append(b.Cautions, cautions...)...)
		return
	}
	b.Cautions = append(append(b.Cautions, cautions...), Outdoors)
}

// carbonMonoxide is what kills unnoticed. Source: US CPSC.
const carbonMonoxide = "Carbon monoxide kills unnoticed under a roof: flue and vent open, an alarm that works; at a headache go out."

// Outdoors warns of carbon monoxide where nobody tells of a roof.
const Outdoors = "Boil outdoors, or with vent and carbon monoxide alarm."

// Scald warns of sap or syrup that boils, at a temperature as the page words it. Common
// practice.
func Scald(what, at string) string {
	return fmt.Sprintf("%s near %s burns deep and sticks: sleeves, gloves, children and pets away.", what, at)
}

// OldSap asks after sap that is older than any source lets it wait, which no program
// counts: see
// [example.org/sapreckoner/examples/internal/folder.LongestWait]. The flag counts it,
// where the program has one.
func (s *Sheet) OldSap(v units.Volume, flag string) string {
	words := "Not counted: " + s.In(Gallons(v, Up)) + " of sap over a week old. Sour, cloudy or ropy: pour it out untasted and write it down as thrown."
	if flag != "" {
		words += " Clear and fresh to the nose: " + flag + " counts it."
	}
	return words
}

// ScaldWater warns of boiling water, which does not stick.
func ScaldWater(at string) string {
	return fmt.Sprintf("Water near %s scalds, and so does its steam: sleeves, gloves, children and pets away.", at)
}
