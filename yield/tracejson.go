package yield

import (
	"encoding/json"
	"errors"

	"example.org/sapreckoner/units"
)

// traceJSON is an error of the books as JSON holds it.
type traceJSON struct {
	ID     string `json:"id"`
	Ref    string `json:"ref,omitempty"`
	Reason string `json:"reason"`
	Text   string `json:"text"`
	Func   string `json:"func,omitempty"`
}

// MarshalJSON gives an object with id, ref, reason, text and func. Text is
// [TraceError.Text].
func (e *TraceError) MarshalJSON() ([]byte, error) {
	out := traceJSON{ID: e.ID, Ref: e.Ref, Text: e.Text(units.Both), Func: e.Func}
	if e.Err != nil {
		out.Reason = e.Err.Error()
	}
	return json.Marshal(out)
}

// UnmarshalJSON reads what MarshalJSON gives. A reason of this package is itself
// again.
func (e *TraceError) UnmarshalJSON(b []byte) error {
	var in traceJSON
	if err := json.Unmarshal(b, &in); err != nil {
		return err
	}
	*e = TraceError{Func: in.Func, ID: in.ID, Ref: in.Ref}
	for _, reason := range []error{ErrUnknownID, ErrDuplicateID, ErrNoName, ErrCircular, ErrNothing} {
		if reason.Error() == in.Reason {
			e.Err = reason
		}
	}
	if e.Err == nil && in.Reason != "" {
		e.Err = errors.New(in.Reason)
	}
	return nil
}
