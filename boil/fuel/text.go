package fuel

import "example.org/sapreckoner/internal/base/measure"

// The text of a moisture names its basis. A bare "20 %" is refused: on the other
// basis it is 25.

var wetMoistures = measure.Of[WetMoisture]{Parse: "fuel.ParseWetMoisture", Units: []measure.Symbol{
	{Size: 1, Text: "% wet basis", Also: []string{"% wet"}},
}}

// ParseWetMoisture reads a moisture such as "20 % wet basis". The basis is mandatory.
func ParseWetMoisture(s string) (WetMoisture, error) { return wetMoistures.Read(s) }

// String prints the moisture with 12 significant digits.
func (m WetMoisture) String() string { return wetMoistures.String(m) }

// Text prints the moisture with the given number of decimals.
func (m WetMoisture) Text(decimals int) string { return wetMoistures.Text(m, decimals) }

// MarshalText prints the moisture without loss. NaN and infinity are errors.
func (m WetMoisture) MarshalText() ([]byte, error) { return wetMoistures.Marshal(m) }

// UnmarshalText reads what [ParseWetMoisture] reads.
func (m *WetMoisture) UnmarshalText(text []byte) error { return wetMoistures.Unmarshal(m, text) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (m WetMoisture) MarshalJSON() ([]byte, error) { return wetMoistures.ToJSON(m) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (m *WetMoisture) UnmarshalJSON(text []byte) error { return wetMoistures.FromJSON(m, text) }

var dryMoistures = measure.Of[DryMoisture]{Parse: "fuel.ParseDryMoisture", Units: []measure.Symbol{
	{Size: 1, Text: "% dry basis", Also: []string{"% dry"}},
}}

// ParseDryMoisture reads a moisture such as "25 % dry basis". The basis is mandatory.
func ParseDryMoisture(s string) (DryMoisture, error) { return dryMoistures.Read(s) }

// String prints the moisture with 12 significant digits.
func (m DryMoisture) String() string { return dryMoistures.String(m) }

// Text prints the moisture with the given number of decimals.
func (m DryMoisture) Text(decimals int) string { return dryMoistures.Text(m, decimals) }

// MarshalText prints the moisture without loss. NaN and infinity are errors.
func (m DryMoisture) MarshalText() ([]byte, error) { return dryMoistures.Marshal(m) }

// UnmarshalText reads what [ParseDryMoisture] reads.
func (m *DryMoisture) UnmarshalText(text []byte) error { return dryMoistures.Unmarshal(m, text) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (m DryMoisture) MarshalJSON() ([]byte, error) { return dryMoistures.ToJSON(m) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (m *DryMoisture) UnmarshalJSON(text []byte) error { return dryMoistures.FromJSON(m, text) }
