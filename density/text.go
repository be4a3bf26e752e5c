package density

import "example.org/sapreckoner/internal/base/measure"

// The text of the numbers that name their convention names it too. A bare "36
// Be" or "1.325 SG" is read where the type says which one is meant.

var gravities = measure.Of[SG2020]{Parse: "density.ParseSG2020", Units: []measure.Symbol{
	{Size: 1, Text: "SG20/20", Also: []string{"SG"}},
}}

// ParseSG2020 reads an apparent specific gravity such as "1.32543 SG20/20". The unit is mandatory.
func ParseSG2020(s string) (SG2020, error) { return gravities.Read(s) }

// String prints the gravity with 12 significant digits.
func (sg SG2020) String() string { return gravities.String(sg) }

// Text prints the gravity with the given number of decimals.
func (sg SG2020) Text(decimals int) string { return gravities.Text(sg, decimals) }

// MarshalText prints the gravity without loss. NaN and infinity are errors.
func (sg SG2020) MarshalText() ([]byte, error) { return gravities.Marshal(sg) }

// UnmarshalText reads what [ParseSG2020] reads.
func (sg *SG2020) UnmarshalText(text []byte) error { return gravities.Unmarshal(sg, text) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (sg SG2020) MarshalJSON() ([]byte, error) { return gravities.ToJSON(sg) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (sg *SG2020) UnmarshalJSON(text []byte) error { return gravities.FromJSON(sg, text) }

var trueGravities = measure.Of[TrueSG2020]{Parse: "density.ParseTrueSG2020", Units: []measure.Symbol{
	{Size: 1, Text: "true SG20/20", Also: []string{"true SG"}},
}}

// ParseTrueSG2020 reads a true specific gravity such as "1.32504 true SG20/20". The unit is mandatory.
func ParseTrueSG2020(s string) (TrueSG2020, error) { return trueGravities.Read(s) }

// String prints the gravity with 12 significant digits.
func (sg TrueSG2020) String() string { return trueGravities.String(sg) }

// Text prints the gravity with the given number of decimals.
func (sg TrueSG2020) Text(decimals int) string { return trueGravities.Text(sg, decimals) }

// MarshalText prints the gravity without loss. NaN and infinity are errors.
func (sg TrueSG2020) MarshalText() ([]byte, error) { return trueGravities.Marshal(sg) }

// UnmarshalText reads what [ParseTrueSG2020] reads.
func (sg *TrueSG2020) UnmarshalText(text []byte) error { return trueGravities.Unmarshal(sg, text) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (sg TrueSG2020) MarshalJSON() ([]byte, error) { return trueGravities.ToJSON(sg) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (sg *TrueSG2020) UnmarshalJSON(text []byte) error { return trueGravities.FromJSON(sg, text) }

var baumes = measure.Of[Baume145]{Parse: "density.ParseBaume145", Units: []measure.Symbol{
	{Size: 1, Text: "Be145", Also: []string{"Be 145", "Be", "Baume"}},
}}

// ParseBaume145 reads degrees Baume such as "36.06 Be145". The unit is mandatory.
func ParseBaume145(s string) (Baume145, error) { return baumes.Read(s) }

// String prints the degrees with 12 significant digits.
func (b Baume145) String() string { return baumes.String(b) }

// Text prints the degrees with the given number of decimals.
func (b Baume145) Text(decimals int) string { return baumes.Text(b, decimals) }

// MarshalText prints the degrees without loss. NaN and infinity are errors.
func (b Baume145) MarshalText() ([]byte, error) { return baumes.Marshal(b) }

// UnmarshalText reads what [ParseBaume145] reads.
func (b *Baume145) UnmarshalText(text []byte) error { return baumes.Unmarshal(b, text) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (b Baume145) MarshalJSON() ([]byte, error) { return baumes.ToJSON(b) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (b *Baume145) UnmarshalJSON(text []byte) error { return baumes.FromJSON(b, text) }

var indices = measure.Of[ND20]{Parse: "density.ParseND20", Units: []measure.Symbol{
	{Size: 1, Text: "nD20", Also: []string{"nD"}},
}}

// ParseND20 reads a refractive index such as "1.45822 nD20". The unit is mandatory.
func ParseND20(s string) (ND20, error) { return indices.Read(s) }

// String prints the index with 12 significant digits.
func (n ND20) String() string { return indices.String(n) }

// Text prints the index with the given number of decimals.
func (n ND20) Text(decimals int) string { return indices.Text(n, decimals) }

// MarshalText prints the index without loss. NaN and infinity are errors.
func (n ND20) MarshalText() ([]byte, error) { return indices.Marshal(n) }

// UnmarshalText reads what [ParseND20] reads.
func (n *ND20) UnmarshalText(text []byte) error { return indices.Unmarshal(n, text) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (n ND20) MarshalJSON() ([]byte, error) { return indices.ToJSON(n) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (n *ND20) UnmarshalJSON(text []byte) error { return indices.FromJSON(n, text) }
