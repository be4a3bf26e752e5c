package limit

import (
	"strconv"

	"example.org/sapreckoner/units"
)

// Number is [Within] for a pure number.
func Number(fn, arg string, x, low, high float64, hint string) error {
	return Within(fn, arg, x, low, high, 1, "", hint)
}

// Count is [Within] for a whole number.
func Count(fn, arg string, n, low, high int, hint string) error {
	return Number(fn, arg, float64(n), float64(low), float64(high), hint)
}

// In is [Within] for a number that is told in the unit it is given in.
func In(fn, arg string, x, low, high float64, unit, hint string) error {
	return Within(fn, arg, x, low, high, 1, unit, hint)
}

// InAs is [In] with the argument in words besides.
func InAs(fn, arg, what string, x, low, high float64, unit, hint string) error {
	return WithinAs(fn, arg, what, x, low, high, 1, unit, hint)
}

// Liters is [Within] for a container, a lot or a tank, told in liters.
func Liters(fn, arg string, v, low, high units.Volume, hint string) error {
	return Within(fn, arg, v, low, high, units.Liter, "L", hint)
}

// InItem is [InAs] for a field of an entry of a list, which is told by its number
// from 1 on. The names are made only when they are needed.
func InItem(fn, list string, i int, field, what string, x, low, high float64, unit, hint string) error {
	if x >= low && x <= high {
		return nil
	}
	return InAs(fn, Item(list, i, field), Entry(i, what), x, low, high, unit, hint)
}

// Entry words an entry of a list for a person: Entry(3, "weight") is "entry 4:
// weight".
func Entry(i int, what string) string { return "entry " + strconv.Itoa(i+1) + ": " + what }

// Item names an entry of a list: Item("among", 3, "Weight") is "among[3].Weight".
// If i is negative it is one thing and no list: "among.Weight".
func Item(list string, i int, field string) string {
	s := list
	if i >= 0 {
		s += "[" + strconv.Itoa(i) + "]"
	}
	if field != "" {
		s += "." + field
	}
	return s
}

// MaxEntries bounds the lists of contributors, deliveries and the like.
const MaxEntries = 100_000

// Entries checks the length of a list.
func Entries(fn, arg string, n int) error {
	return In(fn, arg, float64(n), 1, MaxEntries, "", "give at least one entry")
}
