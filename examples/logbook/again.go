package main

import (
	"fmt"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/yield/lookagain"
)

// What is looked at again: so many rows of a file, which bounds memory, and so
// many findings on the page.
const (
	mostLooked = 100_000
	shownAgain = 20
)

// found is what to look at again, the first of it in words.
type found struct {
	rows  int
	first []string
}

func (f *found) add(words string) {
	f.rows++
	if len(f.first) < shownAgain {
		f.first = append(f.first, words)
	}
}

// look takes the findings of a list. Rows are not kept beyond that.
func (b *book) look(l *lookagain.List) {
	for _, f := range l.Findings() {
		b.again.add(fmt.Sprintf("%s:%d: %s", f.File, f.Line, f.Text))
	}
	b.unseen += l.Skipped()
}

// whole is what makes two rows the same: all that was read of them.
func whole(cells ...any) string { return fmt.Sprintln(cells...) }

// againPart tells the rows that count and are worth a second look.
func (p page) againPart(part *cli.Part) {
	part.Row("findings", "To look at again", cli.Count(p.again.rows, ""), "these rows are in the count")
	part.Item(p.again.first...)
	part.If(p.again.rows > len(p.again.first)).Remark(fmt.Sprintf("These are the first %d: mend them, and run again.", len(p.again.first)))
	part.If(p.unseen > 0).Remark(fmt.Sprintf("Not looked at: %d rows beyond the first %d of a file.", p.unseen, mostLooked))
}
