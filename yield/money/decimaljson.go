package money

import (
	"encoding/json"

	"example.org/sapreckoner/units"
)

// decimalJSON is a decimal error as JSON holds it.
type decimalJSON struct {
	Arg    string `json:"arg"`
	Value  string `json:"value,omitempty"`
	Reason string `json:"reason"`
	Text   string `json:"text"`
	Func   string `json:"func,omitempty"`
	What   string `json:"what,omitempty"`
}

// MarshalJSON gives an object with arg, value, reason, text, func and what. Text
// is [DecimalError.Text].
func (e *DecimalError) MarshalJSON() ([]byte, error) {
	return json.Marshal(decimalJSON{e.Arg, e.Value, e.Reason, e.Text(units.Both), e.Func, e.What})
}

// UnmarshalJSON reads what MarshalJSON gives.
func (e *DecimalError) UnmarshalJSON(b []byte) error {
	var in decimalJSON
	if err := json.Unmarshal(b, &in); err != nil {
		return err
	}
	*e = DecimalError{Func: in.Func, Arg: in.Arg, What: in.What, Value: in.Value, Reason: in.Reason}
	return nil
}
