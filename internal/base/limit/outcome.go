package limit

import (
	"errors"

	"example.org/sapreckoner/units"
)

// Renamed returns err with its argument renamed, if it is one of the first of the
// pairs of names: a function that relies on another calls its arguments by other
// names.
func Renamed(fn string, err error, pairs ...string) error {
	if err == nil {
		return nil
	}
	var e *units.RangeError
	if errors.As(err, &e) {
		for i := 0; i+1 < len(pairs); i += 2 {
			if e.Arg == pairs[i] {
				return units.UnderArg(fn, pairs[i+1], err)
			}
		}
	}
	return err
}

// Outcome is a range error that is an ordinary outcome too: Err, which callers
// ask for by errors.Is.
type Outcome struct {
	*units.RangeError
	Err error
}

// Unwrap returns both.
func (e *Outcome) Unwrap() []error { return []error{e.Err, e.RangeError} }
