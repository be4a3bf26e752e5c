package check

import (
	"errors"
	"fmt"
	"slices"
	"strings"
)

// byRow is the table's obtained line where a column tells it row by row.
const byRow = "by row"

// obtainedWords are the ways a figure may have been obtained.
var obtainedWords = []string{"read", "computed", "memory", "common practice"}

func knownObtained(s string) bool {
	return slices.ContainsFunc(obtainedWords, func(w string) bool {
		rest, ok := strings.CutPrefix(s, w)
		return ok && (rest == "" || strings.ContainsAny(rest[:1], " ,;:"))
	})
}

// headerOrder is the order in which the header lines stand.
var headerOrder = []string{"id", "title", "source", "key", "obtained", "kind", "column", "tolerance", "note"}

// parseHeader reads the lines that start with a number sign and returns the
// table they declare, still without rows, and the rest of the text.
func parseHeader(id, text string) (*Table, string, error) {
	t := &Table{}
	stage := 0
	for n := 1; strings.HasPrefix(text, "#"); n++ {
		line, rest, _ := strings.Cut(text, "\n")
		text = rest
		key, value, ok := strings.Cut(strings.TrimPrefix(line, "# "), ": ")
		value = strings.TrimSpace(value)
		if !ok || value == "" {
			return nil, "", fmt.Errorf("line %d: want \"# key: value\", have %q", n, line)
		}
		word, name, _ := strings.Cut(key, " ")
		at := slices.Index(headerOrder, word)
		switch {
		case at < 0:
			return nil, "", fmt.Errorf("line %d: unknown header line %q", n, word)
		case at < stage:
			return nil, "", fmt.Errorf("line %d: %q stands after %q; the order is %s", n, word, headerOrder[stage], strings.Join(headerOrder, ", "))
		}
		stage = at
		if err := t.headerLine(word, name, value); err != nil {
			return nil, "", fmt.Errorf("line %d: %w", n, err)
		}
	}
	if err := t.complete(id); err != nil {
		return nil, "", err
	}
	return t, text, nil
}

func (t *Table) headerLine(word, name, value string) error {
	switch word {
	case "column":
		return t.addColumn(name, value)
	case "tolerance":
		return t.addTolerance(name, value)
	case "key":
		if t.Keyed || name != "" {
			return fmt.Errorf("%q is given once and without a name", word)
		}
		keys, err := parseKeys(value)
		t.Keys, t.Keyed = keys, true
		return err
	case "note":
		if basis, ok := strings.CutPrefix(value, "basis: "); ok && t.Basis == "" {
			t.Basis = basis
			return nil
		}
		t.Notes = append(t.Notes, value)
		return nil
	}
	field := map[string]*string{
		"id": &t.ID, "title": &t.Title, "source": &t.Source, "obtained": &t.Obtained, "kind": &t.Kind,
	}[word]
	if name != "" || *field != "" {
		return fmt.Errorf("%q is given once and without a name", word)
	}
	*field = value
	return nil
}

func (t *Table) addColumn(name, value string) error {
	f := strings.Fields(value)
	switch {
	case name == "" || strings.Contains(name, " "):
		return fmt.Errorf("a column's name is one word, have %q", name)
	case t.index(name) >= 0:
		return fmt.Errorf("column %s is declared twice", name)
	case len(f) < 2:
		return fmt.Errorf("column %s: want a kind, a unit and words, have %q", name, value)
	case !slices.Contains([]string{Input, Want, Deviation, Text}, f[0]):
		return fmt.Errorf("column %s: unknown kind %q", name, f[0])
	}
	n := 2 // words of kind and unit
	for n < len(f) && (f[n-1] == "US" || f[n-1] == "1000") {
		n++
	}
	t.Columns = append(t.Columns, Column{Name: name, Kind: f[0], Unit: strings.Join(f[1:n], " "), Words: strings.Join(f[n:], " ")})
	return nil
}

func (t *Table) addTolerance(name, value string) error {
	i := t.index(name)
	if i < 0 || t.Columns[i].Kind != Want {
		return fmt.Errorf("tolerance of %q, which is not a want column", name)
	}
	c := &t.Columns[i]
	if c.Reason != "" {
		return fmt.Errorf("column %s has two tolerances", name)
	}
	expr, reason, ok := strings.Cut(value, ": ")
	if !ok || strings.TrimSpace(reason) == "" {
		return fmt.Errorf("tolerance of %s: no reason is given", name)
	}
	tol, err := ParseTolerance(expr)
	if err != nil {
		return fmt.Errorf("tolerance of %s: %w", name, err)
	}
	c.Tolerance, c.Reason = tol, strings.TrimSpace(reason)
	return nil
}

// complete refuses a header that leaves something out.
func (t *Table) complete(id string) error {
	for _, f := range []struct{ word, value string }{
		{"id", t.ID}, {"title", t.Title}, {"source", t.Source}, {"obtained", t.Obtained}, {"kind", t.Kind},
	} {
		if f.value == "" {
			return fmt.Errorf("the header has no line %q", f.word)
		}
	}
	if t.ID != id {
		return fmt.Errorf("id %q is not the name of the file", t.ID)
	}
	if t.Kind != Figures && t.Kind != Facts {
		return fmt.Errorf("kind %q is neither %s nor %s", t.Kind, Figures, Facts)
	}
	if len(t.Columns) == 0 {
		return errors.New("the header declares no column")
	}
	own, hasOwn := t.Column(obtainedColumn)
	hasOwn = hasOwn && own.Kind == Text
	if t.Obtained == byRow && !hasOwn {
		return fmt.Errorf("obtained is %q but there is no text column %q", byRow, obtainedColumn)
	}
	if t.Obtained != byRow && !knownObtained(t.Obtained) {
		return fmt.Errorf("obtained %q does not start with one of %s", t.Obtained, strings.Join(obtainedWords, ", "))
	}
	if err := t.completeUnits(); err != nil {
		return err
	}
	return t.completeColumns()
}

func (t *Table) completeColumns() error {
	wants := 0
	for _, c := range t.Columns {
		switch c.Kind {
		case Want:
			wants++
			if c.Reason == "" {
				return fmt.Errorf("column %s has no tolerance", c.Name)
			}
		case Input:
			if wants > 0 {
				return fmt.Errorf("column %s: inputs stand left of the figures, since they name the row", c.Name)
			}
		case Deviation:
			of, ok := strings.CutSuffix(c.Name, deviationSuffix)
			if w, found := t.Column(of); !ok || !found || w.Kind != Want {
				return fmt.Errorf("column %s: a deviation is named after a want column", c.Name)
			}
		}
	}
	if (wants > 0) != (t.Kind == Figures) {
		return fmt.Errorf("a table of %s with %d want columns", t.Kind, wants)
	}
	return nil
}
