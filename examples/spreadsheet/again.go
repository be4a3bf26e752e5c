package main

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/yield/lookagain"
)

// look gives a delivery to the list of what may have to be looked at again.
func (a *account) look(r *row) {
	var text [128]byte
	whole := append(text[:0], r.day...)
	whole = append(r.gallons.append(append(whole, ','), 0), ',')
	whole = append(append(append(whole, r.words...), ','), r.producer...)
	a.again.Add(lookagain.Row{
		File: a.name, Line: r.line, Day: r.date, Name: r.producer,
		Strength: r.strength.float(), Volume: r.gallons.float(), Whole: string(whole),
	})
}

// lines are lines of the file, from one to another.
type lines struct{ from, to int }

func (l lines) has(line int) bool { return line >= l.from && line <= l.to }

// readAccept reads lines such as 12,17,40-45.
func readAccept(text string) (all []lines, err error) {
	if text == "" {
		return nil, nil
	}
	for _, part := range strings.Split(text, ",") {
		from, to, span := strings.Cut(strings.TrimSpace(part), "-")
		if !span {
			to = from
		}
		var l lines
		var err2 error
		l.from, err = strconv.Atoi(from)
		l.to, err2 = strconv.Atoi(to)
		if err != nil || err2 != nil || l.from < 2 || l.to < l.from {
			return nil, fmt.Errorf("%q is no line of the file: write lines as 12,17,40-45", clip.Text(part))
		}
		all = append(all, l)
	}
	return all, nil
}

// String writes lines as readAccept reads them.
func (l lines) String() string {
	if l.from == l.to {
		return strconv.Itoa(l.from)
	}
	return strconv.Itoa(l.from) + "-" + strconv.Itoa(l.to)
}

// acceptable lists the lines of findings, which are in order, as -accept has them.
func acceptable(findings []lookagain.Finding) string {
	var all []lines
	for _, f := range findings {
		if k := len(all) - 1; k >= 0 && f.Line <= all[k].to+1 {
			all[k].to = f.Line
			continue
		}
		all = append(all, lines{f.Line, f.Line})
	}
	var b strings.Builder
	for i, l := range all {
		if i > 0 {
			b.WriteByte(',')
		}
		b.WriteString(l.String())
	}
	return b.String()
}

// lookError holds a payment up until its rows were looked at. It joins an error
// for each, and what to do.
func lookError(findings []lookagain.Finding) error {
	all := []error{errors.New("nothing is paid yet: look again at these lines of the file")}
	for _, f := range findings {
		all = append(all, fmt.Errorf("%s:%d: %s", f.File, f.Line, f.Text))
	}
	return errors.Join(append(all, errors.New("mend what is wrong in the file; accept what is right by its line; if that is all of it: -accept "+acceptable(findings)))...)
}

// accept returns an error unless every finding was accepted by its line, and
// every line accepted has a finding: the list may belong to an older file.
func (a *account) accept() error {
	var open []lookagain.Finding
	used := make([]bool, len(a.accepts))
	for _, f := range a.again.Findings() {
		k := slices.IndexFunc(a.accepts, func(l lines) bool { return l.has(f.Line) })
		if k < 0 {
			open = append(open, f)
			continue
		}
		used[k] = true
		a.accepted = append(a.accepted, f)
	}
	if len(open) > 0 {
		return lookError(open)
	}
	if k := slices.Index(used, false); k >= 0 {
		return cli.For("accept", errors.New("nothing is to be accepted in line "+strconv.Itoa(a.accepts[k].from)+": lines may have moved since; run without -accept and look again"))
	}
	return nil
}

// again are the lines of the sheet of what was looked at again.
func again(a *account) [][]any {
	rows := [][]any{{"Line", "Why", "Finding"}}
	for _, f := range a.accepted {
		rows = append(rows, []any{f.Line, f.Kind.String() + ": accepted", f.Text})
	}
	if len(a.accepted) == 0 {
		rows = append(rows, []any{"", "", "Nothing was found. That proves nothing: a slip within what is usual is not seen."})
	}
	return rows
}
