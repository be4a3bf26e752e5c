package units

// Brix is the sugar in a solution, in percent by mass: 66.9 Brix is 66.9 g of
// sugar in 100 g of syrup. For sap and syrup, which are sucrose for the most
// part, an instrument on a sucrose scale reads it within its uncertainty.
type Brix float64

// DegreeBrix is one percent of sugar by mass.
const DegreeBrix Brix = 1

// Fraction returns sugar per mass of solution, 0 to 1.
func (b Brix) Fraction() float64 { return float64(b) / 100 }

// Sugar returns the sugar in a mass m of solution.
func (b Brix) Sugar(m Mass) Mass { return Mass(float64(m) * b.Fraction()) }

// Of returns the mass of solution of this strength that holds the given sugar.
// At 0 Brix no mass does and the answer is infinite.
func (b Brix) Of(sugar Mass) Mass { return Mass(float64(sugar) / b.Fraction()) }

var brixes = table{parse: "units.ParseBrix", units: []unit{
	{float64(DegreeBrix), "Brix", []string{"Bx", "deg Brix", "deg Bx"}},
}, refused: map[string]string{
	"%": `"66.9 Brix"; a bare percent could be by volume`,
}}

// ParseBrix reads a sugar content such as "66.9 Brix". The unit is mandatory.
func ParseBrix(s string) (Brix, error) { return parse[Brix](s, &brixes) }

// String prints the sugar content in Brix with 12 significant digits.
func (b Brix) String() string { return str(b, &brixes) }

// Text prints the sugar content with the given number of decimals: Text(1) gives "66.9 Brix".
func (b Brix) Text(decimals int) string { return text(b, DegreeBrix, decimals, &brixes) }

// MarshalText prints the sugar content in Brix without loss. NaN and infinity are errors.
func (b Brix) MarshalText() ([]byte, error) { return marshal(b, &brixes) }

// UnmarshalText reads what [ParseBrix] reads.
func (b *Brix) UnmarshalText(text []byte) error { return unmarshal(b, text, &brixes) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (b Brix) MarshalJSON() ([]byte, error) { return marshalJSON(b, &brixes) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (b *Brix) UnmarshalJSON(text []byte) error { return unmarshalJSON(b, text, &brixes) }
