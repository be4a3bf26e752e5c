package units

// Share is a part of a whole, in percent: an efficiency, a loss, the inverted
// share of the sugar. Text is always in percent.
type Share float64

// Units of share.
const (
	Percent Share = 1
	Whole   Share = 100
)

// Percents returns a share of n percent.
func Percents(n float64) Share { return Share(n) }

// Percents returns the share in percent.
func (s Share) Percents() float64 { return float64(s) }

// Fraction returns the share as a part of one, 0 to 1.
func (s Share) Fraction() float64 { return float64(s) / 100 }

// FractionShare returns the share that a part of one is: FractionShare(0.65) is
// 65 percent.
func FractionShare(x float64) Share { return Share(x * 100) }

var shares = table{parse: "units.ParseShare", units: []unit{
	{float64(Percent), "%", []string{"percent"}},
}}

// ParseShare reads a share such as "65 %". The unit is mandatory.
func ParseShare(s string) (Share, error) { return parse[Share](s, &shares) }

// String prints the share in % with 12 significant digits.
func (s Share) String() string { return str(s, &shares) }

// Text prints the share with the given number of decimals: Text(1) gives "65.0 %".
func (s Share) Text(decimals int) string { return text(s, Percent, decimals, &shares) }

// MarshalText prints the share in % without loss. NaN and infinity are errors.
func (s Share) MarshalText() ([]byte, error) { return marshal(s, &shares) }

// UnmarshalText reads what [ParseShare] reads.
func (s *Share) UnmarshalText(text []byte) error { return unmarshal(s, text, &shares) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (s Share) MarshalJSON() ([]byte, error) { return marshalJSON(s, &shares) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (s *Share) UnmarshalJSON(text []byte) error { return unmarshalJSON(s, text, &shares) }
