package proof

import (
	"slices"
	"testing"

	"example.org/sapreckoner/internal/proving/check"
)

// Every line of words belongs to a claim, and to no other before it.
func TestWithHasItsClaim(t *testing.T) {
	claims := All()
	for _, w := range with {
		if !slices.ContainsFunc(claims, func(c check.Claim) bool { return c.Table == w.table && c.Column == w.column && c.With == w.words }) {
			t.Errorf("no claim takes %s, %s, %s: %s", w.table, w.column, w.fn, w.words)
		}
	}
}
