// Package words reads and writes the words of an enumeration.
package words

import (
	"fmt"
	"strings"

	"example.org/sapreckoner/internal/base/clip"
)

// Names are the words of an enumeration, by value.
type Names []string

// Name returns the word of a value.
func (n Names) Name(i int) string {
	if i >= len(n) {
		return fmt.Sprintf("unknown (%d)", i)
	}
	return n[i]
}

// Marshal returns the word of a value as text, and refuses one without a word.
func (n Names) Marshal(what string, i int) ([]byte, error) {
	if i >= len(n) {
		return nil, fmt.Errorf("tapping: unknown %s %d", what, i)
	}
	return []byte(n[i]), nil
}

// Find reads a name in any case; an empty text is the zero value.
func (n Names) Find(what, text string) (int, error) {
	text = strings.TrimSpace(text)
	if text == "" {
		return 0, nil
	}
	for i, name := range n {
		if strings.EqualFold(text, name) {
			return i, nil
		}
	}
	if near := Nearest(strings.ToLower(text), n); near != "" {
		return 0, fmt.Errorf("%q is no %s known here: is it %s?", clip.Text(text), what, near)
	}
	return 0, fmt.Errorf("%q is no %s known here: want one of %s", clip.Text(text), what, strings.Join(n, ", "))
}

// Nearest returns the name that differs in the fewest letters, the first of the
// alphabet of several, where they are fewer than a third of the text's.
func Nearest(text string, known []string) (near string) {
	const longest = 40 // letters; no name is longer
	if len(text) > longest {
		return ""
	}
	least := (len(text) + 2) / 3
	for _, name := range known {
		n := changes(strings.ToLower(name), text)
		if n < least || n == least && near != "" && name < near {
			near, least = name, n
		}
	}
	return near
}

// changes counts the letters to add, drop or replace to make one text of
// another.
func changes(a, b string) int {
	row := make([]int, len(b)+1)
	for k := range row {
		row[k] = k
	}
	for i := range len(a) {
		before := row[0]
		row[0] = i + 1
		for k := range len(b) {
			cost := before
			if a[i] != b[k] {
				cost++
			}
			before = row[k+1]
			row[k+1] = min(cost, row[k]+1, row[k+1]+1)
		}
	}
	return row[len(b)]
}
