package enum

import (
	"iter"
	"strings"
)

// longest is the longest text that is compared: no name is longer, and the cost
// grows as the square.
const longest = 64

// Nearest returns the name that is the fewest slips of the finger away from the
// text: a letter more, less, other, or two changed about. A third of the letters
// may be wrong; beyond that there is none. Case does not count.
func Nearest(text string, names iter.Seq[string]) (name string, ok bool) {
	if text == "" || len(text) > longest {
		return "", false
	}
	t := []rune(strings.ToLower(text))
	least := len(t)/3 + 1
	for n := range names {
		if d := Slips(t, []rune(strings.ToLower(n))); d < least {
			name, least, ok = n, d, true
		}
	}
	return name, ok
}

// Slips counts the slips between two texts: the optimal string alignment
// distance.
func Slips(a, b []rune) int {
	before, row, next := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := 1; i <= len(a); i++ {
		next[0] = i
		for j := 1; j <= len(b); j++ {
			other := 1
			if a[i-1] == b[j-1] {
				other = 0
			}
			next[j] = min(row[j]+1, next[j-1]+1, row[j-1]+other)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				next[j] = min(next[j], before[j-2]+1)
			}
		}
		before, row, next = row, next, before
	}
	return row[len(b)]
}
