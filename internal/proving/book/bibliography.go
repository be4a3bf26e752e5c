package book

import (
	"fmt"
	"slices"
	"strings"

	"example.org/sapreckoner/internal/proving/check"
)

// bibliography writes the page of the sources by key.
func bibliography(root string) (map[string]string, error) {
	list, err := check.References()
	if err != nil {
		return nil, err
	}
	tables, err := tablesByKey()
	if err != nil {
		return nil, err
	}
	cited, err := Cited(root)
	if err != nil {
		return nil, err
	}
	var b strings.Builder
	b.WriteString("# Bibliography\n\n" + made)
	b.WriteString("Keys are those of the tables' headers (`# key:`) and of the doc comments (`Cites kell-1975.`). One file is the source of this page, in the form\n" +
		"that citation programs read (CSL JSON): [bibliography.json](../internal/proving/check/bibliography.json). Each entry says how it was obtained: read is\n" +
		"seen in a public copy, from memory is recalled and not seen again. Initials and titles were not all seen in print.\n")
	for _, r := range list {
		fmt.Fprintf(&b, "\n### %s\n\n%s\n\n- Obtained: %s.\n", r.ID, r, r.Note)
		if t := tables[r.ID]; len(t) > 0 {
			fmt.Fprintf(&b, "- Tables: %s.\n", strings.Join(t, ", "))
		}
		if c := cited[r.ID]; len(c) > 0 {
			fmt.Fprintf(&b, "- Cited by: %s.\n", strings.Join(c, ", "))
		}
	}
	return map[string]string{"docs/bibliography.md": b.String()}, nil
}

// tablesByKey lists the tables that cite each key.
func tablesByKey() (map[string][]string, error) {
	by := map[string][]string{}
	for _, id := range check.IDs() {
		t, err := check.Load(id)
		if err != nil {
			return nil, err
		}
		for _, key := range t.Keys {
			by[key] = append(by[key], id)
		}
	}
	return by, nil
}

// Miscited compares the keys of tables and doc comments with the bibliography: it
// lists those that are cited and unknown, and those that nothing cites.
func Miscited(root string) (unknown, unused []string, err error) {
	list, err := check.References()
	if err != nil {
		return nil, nil, err
	}
	tables, err := tablesByKey()
	if err != nil {
		return nil, nil, err
	}
	cited, err := Cited(root)
	if err != nil {
		return nil, nil, err
	}
	for key, by := range cited {
		if !slices.ContainsFunc(list, func(r check.Reference) bool { return r.ID == key }) {
			unknown = append(unknown, key+", cited by "+strings.Join(by, ", "))
		}
	}
	slices.Sort(unknown)
	for _, r := range list {
		if len(tables[r.ID]) == 0 && len(cited[r.ID]) == 0 {
			unused = append(unused, r.ID)
		}
	}
	return unknown, unused, nil
}
