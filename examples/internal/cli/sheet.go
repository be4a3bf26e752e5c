package cli

import (
	"encoding/json"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.org/sapreckoner/units"
)

// A Sheet is what a program answers: a brief, then parts with rows and tables, and
// cautions. It prints as a page, in one system of units with the other beside it in
// the parts, or as JSON with the same content.
type Sheet struct {
	Title  string
	Metric bool  // metric first
	Brief  Brief // the first page
	parts  []*Part
}

// A Part is a headed part of a sheet.
type Part struct {
	key, title string
	items      []item
}

// item is one thing of a part: a row, a table, a remark or a caution.
type item struct {
	key, label string
	value      Value
	notes      []string
	table      *table
	remark     string
	list       bool
}

type table struct {
	cols []Column
	rows [][]Value
}

// A Column heads a column of a table.
type Column struct{ Key, Head string }

// Part begins a part. The key names it in JSON.
func (s *Sheet) Part(key, title string) *Part {
	p := &Part{key: key, title: title}
	s.parts = append(s.parts, p)
	return p
}

// PartIf is [Sheet.Part] laid out by a function, where there is something to tell.
func (s *Sheet) PartIf(told bool, key, title string, lay func(*Part)) {
	if told {
		lay(s.Part(key, title))
	}
}

// If is the part where that is to be told, and else one that nobody sees. What is told is
// worded in either case.
func (p *Part) If(told bool) *Part {
	if told {
		return p
	}
	return new(Part)
}

// Row adds a labeled value; notes follow it in brackets, but for empty ones.
func (p *Part) Row(key, label string, v Value, notes ...string) {
	p.items = append(p.items, item{key: key, label: label, value: v, notes: worded(notes)})
}

// When is words where that is to be told, and else empty, which is not shown.
func When(told bool, words string) string {
	if told {
		return words
	}
	return ""
}

// worded are those of the words that are not empty.
func worded(words []string) []string {
	return slices.DeleteFunc(slices.Clone(words), func(s string) bool { return s == "" })
}

// Table adds a table. Each row has one value a column.
func (p *Part) Table(key string, cols []Column, rows [][]Value) {
	p.items = append(p.items, item{key: key, table: &table{cols, rows}})
}

// Remark adds paragraphs, but for empty ones.
func (p *Part) Remark(all ...string) { p.remarks(false, all) }

// Item adds points of a list, but for empty ones.
func (p *Part) Item(all ...string) { p.remarks(true, all) }

func (p *Part) remarks(list bool, all []string) {
	for _, s := range worded(all) {
		p.items = append(p.items, item{remark: s, list: list})
	}
}

// Print writes the sheet as a page.
func (s *Sheet) Print(e *Env) {
	p := NewPage(e.Out)
	p.Title(s.Title)
	for _, part := range s.parts {
		p.Heading(part.title)
		for _, it := range part.items {
			switch {
			case it.table != nil:
				s.printTable(p, it.table)
			case it.list:
				p.Item(it.remark)
			case it.remark != "":
				p.Text(it.remark)
			default:
				first, second := s.views(it.value)
				notes := it.notes
				if second.text != first.text {
					notes = append([]string{second.text}, notes...)
				}
				p.Row(it.label, first.text, notes...)
			}
		}
	}
}

func (s *Sheet) printTable(p *Page, t *table) {
	head := make([]string, len(t.cols))
	for i, c := range t.cols {
		head[i] = c.Head
	}
	// Columns of words are set left; one number makes a column of numbers.
	var words []int
	for j := range t.cols {
		text := func(row []Value) bool { _, ok := row[j].us.json.(string); return ok || row[j].us.json == nil }
		if !slices.ContainsFunc(t.rows, func(row []Value) bool { return !text(row) }) {
			words = append(words, j)
		}
	}
	rows := make([][]string, len(t.rows))
	for i, row := range t.rows {
		for _, v := range row {
			first, _ := s.views(v)
			rows[i] = append(rows[i], first.text)
		}
	}
	p.Table(head, rows, words...)
}

func (s *Sheet) views(v Value) (first, second view) {
	if s.Metric {
		return v.metric, v.us
	}
	return v.us, v.metric
}

// jsonParts gives the parts, the units in the keys. A range is a list of its two
// ends.
func (s *Sheet) jsonParts() object {
	var doc object
	for _, part := range s.parts {
		var o object
		var remarks []string
		for _, it := range part.items {
			switch {
			case it.table != nil:
				o = append(o, member{it.key, s.jsonTable(it.table)})
			case it.remark != "":
				remarks = append(remarks, it.remark)
			default:
				first, second := s.views(it.value)
				o = append(o, member{join(it.key, first.suffix), first.json})
				if second.suffix != first.suffix {
					o = append(o, member{join(it.key, second.suffix), second.json})
				}
				if len(it.notes) > 0 {
					o = append(o, member{it.key + "_note", strings.Join(it.notes, "; ")})
				}
			}
		}
		if len(remarks) > 0 {
			o = append(o, member{"remarks", remarks})
		}
		doc = append(doc, member{part.key, o})
	}
	return doc
}

func (s *Sheet) jsonTable(t *table) []object {
	rows := make([]object, len(t.rows))
	for i, row := range t.rows {
		for j, v := range row {
			first, _ := s.views(v)
			rows[i] = append(rows[i], member{join(t.cols[j].Key, first.suffix), first.json})
		}
	}
	return rows
}

func join(key, suffix string) string {
	if suffix == "" || key == suffix {
		return key
	}
	return key + "_" + suffix
}

// object is a JSON object that keeps the order of a page.
type object []member

type member struct {
	key   string
	value any
}

// MarshalJSON writes the members in order.
func (o object) MarshalJSON() ([]byte, error) { return o.append(nil) }

// append appends the object to b. Tables are appended in place: to marshal each
// row by itself would copy and check a long one several times.
func (o object) append(b []byte) (_ []byte, err error) {
	b = append(b, '{')
	for i, m := range o {
		if i > 0 {
			b = append(b, ',')
		}
		b = append(strconv.AppendQuote(b, m.key), ':')
		switch v := m.value.(type) {
		case object:
			b, err = v.append(b)
		case []object:
			b = append(b, '[')
			for k, row := range v {
				if k > 0 {
					b = append(b, ',')
				}
				if b, err = row.append(b); err != nil {
					break
				}
			}
			b = append(b, ']')
		case [2]any:
			if b, err = appendValue(append(b, '['), v[0]); err == nil {
				b, err = appendValue(append(b, ','), v[1])
			}
			b = append(b, ']')
		default:
			b, err = appendValue(b, v)
		}
		if err != nil {
			return nil, fmt.Errorf("%s: %w", m.key, err)
		}
	}
	return append(b, '}'), nil
}

// appendValue appends a number without the digits that differ from one
// processor to another, or anything else as it is.
func appendValue(b []byte, v any) ([]byte, error) {
	if x, ok := v.(float64); ok {
		const digits = 9
		r, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', digits, 64), 64)
		if err != nil {
			return b, err
		}
		v = r
	}
	value, err := json.Marshal(v)
	return append(b, value...), err
}

// In words a value in the sheet's first system of units, for notes and remarks.
func (s *Sheet) In(v Value) string {
	first, _ := s.views(v)
	return first.text
}

// Degrees prints a temperature that a label names, to the degree, in the
// sheet's first system of units.
func (s *Sheet) Degrees(t units.Temperature) string {
	if s.Metric {
		return t.Text(units.ScaleCelsius, 0)
	}
	return t.Text(units.ScaleFahrenheit, 0)
}

// AtMost words a temperature that is not to be passed, in whole degrees: rounded down,
// so that who keeps to the page keeps to the limit. 190 F, 87.8 C, is 87 C.
func (s *Sheet) AtMost(t units.Temperature) string { return s.In(WholeDegree(t, 1, Down)) }

// AtLeast words a temperature that is to be reached, in whole degrees: rounded up. 180 F,
// 82.2 C, is 83 C.
func (s *Sheet) AtLeast(t units.Temperature) string { return s.In(WholeDegree(t, 1, Up)) }
