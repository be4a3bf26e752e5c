package season

import "example.org/sapreckoner/internal/base/measure"

var degreeDays = measure.Of[DegreeDays]{Parse: "season.ParseDegreeDays", Units: []measure.Symbol{
	{Size: 1, Text: "C degree-days"},
	{Size: 1 / 1.8, Text: "F degree-days"},
}}

// ParseDegreeDays reads degree-days such as "34 F degree-days". The unit is
// mandatory.
func ParseDegreeDays(s string) (DegreeDays, error) { return degreeDays.Read(s) }

// String prints Celsius degree-days with 12 significant digits.
func (d DegreeDays) String() string { return degreeDays.String(d) }

// Text prints Celsius degree-days with the given number of decimals.
func (d DegreeDays) Text(decimals int) string { return degreeDays.Text(d, decimals) }

// MarshalText prints Celsius degree-days without loss. NaN and infinity are
// errors.
func (d DegreeDays) MarshalText() ([]byte, error) { return degreeDays.Marshal(d) }

// UnmarshalText reads what [ParseDegreeDays] reads.
func (d *DegreeDays) UnmarshalText(text []byte) error { return degreeDays.Unmarshal(d, text) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (d DegreeDays) MarshalJSON() ([]byte, error) { return degreeDays.ToJSON(d) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (d *DegreeDays) UnmarshalJSON(text []byte) error { return degreeDays.FromJSON(d, text) }
