package units

import "time"

// Power is a rate of heat or work, in watts.
type Power float64

// Units of power. The boiler horsepower is the measured value of NIST SP 811,
// App. B.
const (
	Watt             Power = 1
	Kilowatt         Power = 1000
	BtuITPerHour     Power = btuIT / 3600
	BoilerHorsepower Power = 9809.5
)

// Watts returns a power of n watts.
func Watts(n float64) Power { return Power(n) }

// Kilowatts returns a power of n kilowatts.
func Kilowatts(n float64) Power { return Power(n) * Kilowatt }

// BtusITPerHour returns a power of n International Table Btu per hour.
func BtusITPerHour(n float64) Power { return Power(n) * BtuITPerHour }

// Watts returns the power in watts.
func (p Power) Watts() float64 { return float64(p) }

// Kilowatts returns the power in kilowatts.
func (p Power) Kilowatts() float64 { return float64(p / Kilowatt) }

// BtusITPerHour returns the power in International Table Btu per hour.
func (p Power) BtusITPerHour() float64 { return float64(p / BtuITPerHour) }

// In returns the power in any unit: p.In(BoilerHorsepower).
func (p Power) In(unit Power) float64 { return float64(p / unit) }

// Over returns the energy delivered in time t.
func (p Power) Over(t time.Duration) Energy { return Energy(float64(p) * t.Seconds()) }

var powers = table{parse: "units.ParsePower", display: 1, units: []unit{
	{float64(Watt), "W", nil},
	{float64(Kilowatt), "kW", nil},
	{float64(BtuITPerHour), "Btu/h", []string{"Btu/hr"}},
	{float64(BoilerHorsepower), "boiler hp", nil},
}, refused: map[string]string{
	"hp": `"boiler hp", or the power in kW`,
}}

// ParsePower reads a power such as "90000 Btu/h" or "30 kW". The unit is mandatory.
func ParsePower(s string) (Power, error) { return parse[Power](s, &powers) }

// String prints the power in kW with 12 significant digits.
func (p Power) String() string { return str(p, &powers) }

// Text prints the power in the given unit with the given number of decimals.
// A unit that has no symbol here prints in W.
func (p Power) Text(unit Power, decimals int) string {
	return text(p, unit, decimals, &powers)
}

// TextIn prints it to so many significant digits in the units that a person reads in a system.
func (p Power) TextIn(in System, digits int) string {
	return telling(in, powerPairs, digits).one(float64(p))
}

// MarshalText prints the power in W without loss. NaN and infinity are errors.
func (p Power) MarshalText() ([]byte, error) { return marshal(p, &powers) }

// UnmarshalText reads what [ParsePower] reads.
func (p *Power) UnmarshalText(text []byte) error { return unmarshal(p, text, &powers) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (p Power) MarshalJSON() ([]byte, error) { return marshalJSON(p, &powers) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (p *Power) UnmarshalJSON(text []byte) error { return unmarshalJSON(p, text, &powers) }
