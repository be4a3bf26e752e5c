package cli

import (
	"bytes"
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode/utf8"
)

// width is the longest line of a page: it prints on paper and fits a terminal.
const width = 78

// A Page lays out plain text: a title, headings, rows of a label and its
// value, tables and wrapped text. The writer is a buffer, which does not fail.
type Page struct {
	w     io.Writer
	label int
	width int
}

// NewPage returns a page that is written to w.
func NewPage(w io.Writer) *Page { return &Page{w: w, label: 30, width: width} }

// Title prints the first line of the page, underlined.
func (p *Page) Title(s string) { fmt.Fprintf(p.w, "%s\n%s\n", s, strings.Repeat("=", length(s))) }

// Heading begins a part of the page.
func (p *Page) Heading(s string) { fmt.Fprintf(p.w, "\n%s\n%s\n", s, strings.Repeat("-", length(s))) }

// Line prints s as it stands.
func (p *Page) Line(s string) { fmt.Fprintln(p.w, s) }

// Row prints a label and its value; further values follow in brackets. A long
// value is wrapped below itself.
func (p *Page) Row(label, value string, more ...string) {
	if len(more) > 0 {
		value += " (" + strings.Join(more, "; ") + ")"
	}
	pad := strings.Repeat(" ", p.label)
	for i, line := range wrap(value, p.width-p.label) {
		if i == 0 {
			fmt.Fprintf(p.w, "%s%s\n", padRight(label+"  ", p.label), line)
		} else {
			fmt.Fprintf(p.w, "%s%s\n", pad, line)
		}
	}
}

// Text prints a paragraph, wrapped.
func (p *Page) Text(s string) { p.indented("", s) }

// Item prints one point of a list, wrapped.
func (p *Page) Item(s string) {
	for i, line := range wrap(s, p.width-2) {
		lead := "  "
		if i == 0 {
			lead = "- "
		}
		fmt.Fprintln(p.w, lead+line)
	}
}

func (p *Page) indented(lead, s string) {
	for _, line := range wrap(s, p.width-len(lead)) {
		fmt.Fprintln(p.w, lead+line)
	}
}

// Table prints rows below a head. Every column is as wide as its widest cell;
// the first is set left, and so are those that left names; the others are set
// right, as numbers are.
func (p *Page) Table(head []string, rows [][]string, left ...int) {
	wide := make([]int, len(head))
	for _, row := range append([][]string{head}, rows...) {
		for i, cell := range row {
			wide[i] = max(wide[i], length(cell))
		}
	}
	var b []byte
	pad := func(n int) {
		for range n {
			b = append(b, ' ')
		}
	}
	print := func(row []string) {
		b = b[:0]
		for i, cell := range row {
			if i > 0 {
				pad(2)
			}
			if i == 0 || slices.Contains(left, i) {
				b = append(b, cell...)
				pad(wide[i] - length(cell))
			} else {
				pad(wide[i] - length(cell))
				b = append(b, cell...)
			}
		}
		fmt.Fprintf(p.w, "%s\n", bytes.TrimRight(b, " "))
	}
	print(head)
	for _, row := range rows {
		print(row)
	}
}

func length(s string) int { return utf8.RuneCountInString(s) }

func padRight(s string, n int) string { return s + strings.Repeat(" ", max(0, n-length(s))) }

// wrap breaks s into lines of at most n runes at spaces.
func wrap(s string, n int) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(s) {
		switch {
		case line == "":
			line = word
		case length(line)+1+length(word) <= n:
			line += " " + word
		default:
			lines = append(lines, line)
			line = word
		}
	}
	return append(lines, line)
}
