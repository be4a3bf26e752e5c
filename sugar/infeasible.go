package sugar

import (
	"errors"

	"example.org/sapreckoner/units"
)

// ErrInfeasible is what every [*InfeasibleError] unwraps to: each argument lies
// in its range, yet nothing that one could do gives what is asked.
var ErrInfeasible = errors.New("infeasible")

// InfeasibleError says what was asked, why it cannot be had, and the way out.
// It unwraps to [ErrInfeasible].
type InfeasibleError struct {
	Func string // the function called, such as "sugar.Thin"
	Why  string // why it cannot be done
	Hint string // the way out
}

// Error tells the function, the reason and the way out.
func (e *InfeasibleError) Error() string {
	return e.Func + ": infeasible: " + e.Text(units.Both)
}

// Text tells the reason and the way out to a person: without the function.
func (e *InfeasibleError) Text(units.System) string {
	if e.Hint == "" {
		return e.Why
	}
	return e.Why + ": " + e.Hint
}

// Unwrap returns [ErrInfeasible].
func (e *InfeasibleError) Unwrap() error { return ErrInfeasible }

// nothing is the error of an operation on an empty lot.
func nothing(fn string) error {
	return &InfeasibleError{Func: fn, Why: "the lot is empty", Hint: "give a volume or a mass above zero"}
}
