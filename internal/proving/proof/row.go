package proof

import (
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/units"
)

// What many tables have in common: columns brix and t_C, and a column that says
// which quantity a row is about.

func brix(r check.Row) units.Brix { return units.Brix(r.Float("brix")) }

func celsius(r check.Row) units.Temperature { return units.Celsius(r.Float("t_C")) }

// when selects the rows in which the column holds the word.
func when(column, word string) func(check.Row) bool {
	return func(r check.Row) bool { return r.Text(column) == word }
}
