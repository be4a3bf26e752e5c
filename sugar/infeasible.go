package sugar

import "errors"

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
	s := e.Func + ": infeasible: " + e.Why
	if e.Hint != "" {
		s += ": " + e.Hint
	}
	return s
}

// Unwrap returns [ErrInfeasible].
func (e *InfeasibleError) Unwrap() error { return ErrInfeasible }

// nothing is the error of an operation on an empty lot.
func nothing(fn string) error {
	return &InfeasibleError{Func: fn, Why: "the lot is empty", Hint: "make it with sugar.NewLot"}
}
