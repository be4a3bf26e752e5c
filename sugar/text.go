package sugar

import "example.org/sapreckoner/internal/base/measure"

var absorbances = measure.Of[Absorbance]{Parse: "sugar.ParseAbsorbance", Units: []measure.Symbol{
	{Size: 1, Text: "A", Also: []string{"absorbance"}},
}}

// ParseAbsorbance reads an absorbance such as "0.301 A". The unit is mandatory.
func ParseAbsorbance(s string) (Absorbance, error) { return absorbances.Read(s) }

// String prints the absorbance with 12 significant digits.
func (a Absorbance) String() string { return absorbances.String(a) }

// Text prints the absorbance with the given number of decimals.
func (a Absorbance) Text(decimals int) string { return absorbances.Text(a, decimals) }

// MarshalText prints the absorbance without loss. NaN and infinity are errors.
func (a Absorbance) MarshalText() ([]byte, error) { return absorbances.Marshal(a) }

// UnmarshalText reads what [ParseAbsorbance] reads.
func (a *Absorbance) UnmarshalText(text []byte) error { return absorbances.Unmarshal(a, text) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (a Absorbance) MarshalJSON() ([]byte, error) { return absorbances.ToJSON(a) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (a *Absorbance) UnmarshalJSON(text []byte) error { return absorbances.FromJSON(a, text) }

var glucoses = measure.Of[Glucose]{Parse: "sugar.ParseGlucose", Units: []measure.Symbol{
	{Size: float64(MilligramPerDeciliter), Text: "mg/dL"},
	{Size: float64(MillimolePerLiter), Text: "mmol/L"},
}}

// ParseGlucose reads a concentration of glucose such as "100 mg/dL". The unit is mandatory.
func ParseGlucose(s string) (Glucose, error) { return glucoses.Read(s) }

// String prints the concentration in mg/dL with 12 significant digits.
func (g Glucose) String() string { return glucoses.String(g) }

// Text prints the concentration in mg/dL with the given number of decimals.
func (g Glucose) Text(decimals int) string { return glucoses.Text(g, decimals) }

// MarshalText prints the concentration in mg/dL without loss. NaN and infinity are errors.
func (g Glucose) MarshalText() ([]byte, error) { return glucoses.Marshal(g) }

// UnmarshalText reads what [ParseGlucose] reads.
func (g *Glucose) UnmarshalText(text []byte) error { return glucoses.Unmarshal(g, text) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (g Glucose) MarshalJSON() ([]byte, error) { return glucoses.ToJSON(g) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (g *Glucose) UnmarshalJSON(text []byte) error { return glucoses.FromJSON(g, text) }
