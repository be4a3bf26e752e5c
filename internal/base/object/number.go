package object

import (
	"encoding/json"
	"math"
)

// Number is a plain number that may be unknown or without end: NaN is null, and
// infinity the text "+Inf" or "-Inf", as in the JSON of a range error.
type Number float64

// MarshalJSON prints it.
func (n Number) MarshalJSON() ([]byte, error) {
	switch x := float64(n); {
	case math.IsNaN(x):
		return []byte("null"), nil
	case math.IsInf(x, 1):
		return []byte(`"+Inf"`), nil
	case math.IsInf(x, -1):
		return []byte(`"-Inf"`), nil
	default:
		return json.Marshal(x)
	}
}

// UnmarshalJSON reads what MarshalJSON prints.
func (n *Number) UnmarshalJSON(b []byte) error {
	switch string(b) {
	case "null":
		*n = Number(math.NaN())
	case `"+Inf"`:
		*n = Number(math.Inf(1))
	case `"-Inf"`:
		*n = Number(math.Inf(-1))
	default:
		var x float64
		if err := json.Unmarshal(b, &x); err != nil {
			return err
		}
		*n = Number(x)
	}
	return nil
}
