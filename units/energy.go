package units

import "time"

// Energy is heat or work, in joules.
type Energy float64

// Units of energy. Btu in text means the International Table Btu, defined by
// 1 Btu/lb = 2326 J/kg; the other Btus differ by up to half a percent (NIST SP
// 811, App. B). Therm in text means the US therm of 100,000 Btu at 59 F. The
// therm (EC) is defined with a Btu rounded to 1055.06 J.
const (
	Joule                 Energy = 1
	Kilojoule             Energy = 1e3
	Megajoule             Energy = 1e6
	Gigajoule             Energy = 1e9
	KilowattHour          Energy = 3.6e6
	BtuIT                 Energy = btuIT
	MillionBtuIT          Energy = 1e6 * btuIT
	BtuThermochemical     Energy = 4.184 * pound * 1000 / 1.8
	Btu39F                Energy = 1059.67
	Btu59F                Energy = 1054.8
	Btu60F                Energy = 1054.68
	BtuMean               Energy = 1055.87
	ThermUS               Energy = 1.054804e8
	ThermEC               Energy = 1.05506e8
	CalorieIT             Energy = 4.1868
	CalorieThermochemical Energy = 4.184

	btuIT = 2326 * pound
)

// Joules returns an energy of n joules.
func Joules(n float64) Energy { return Energy(n) }

// Megajoules returns an energy of n megajoules.
func Megajoules(n float64) Energy { return Energy(n) * Megajoule }

// KilowattHours returns an energy of n kilowatt hours.
func KilowattHours(n float64) Energy { return Energy(n) * KilowattHour }

// BtusIT returns an energy of n International Table Btu.
func BtusIT(n float64) Energy { return Energy(n) * BtuIT }

// MillionBtusIT returns an energy of n million International Table Btu.
func MillionBtusIT(n float64) Energy { return Energy(n) * MillionBtuIT }

// ThermsUS returns an energy of n US therms.
func ThermsUS(n float64) Energy { return Energy(n) * ThermUS }

// Joules returns the energy in joules.
func (e Energy) Joules() float64 { return float64(e) }

// Megajoules returns the energy in megajoules.
func (e Energy) Megajoules() float64 { return float64(e / Megajoule) }

// KilowattHours returns the energy in kilowatt hours.
func (e Energy) KilowattHours() float64 { return float64(e / KilowattHour) }

// BtusIT returns the energy in International Table Btu.
func (e Energy) BtusIT() float64 { return float64(e / BtuIT) }

// MillionBtusIT returns the energy in million International Table Btu.
func (e Energy) MillionBtusIT() float64 { return float64(e / MillionBtuIT) }

// ThermsUS returns the energy in US therms.
func (e Energy) ThermsUS() float64 { return float64(e / ThermUS) }

// In returns the energy in any unit: e.In(ThermEC).
func (e Energy) In(unit Energy) float64 { return float64(e / unit) }

// Per returns the power that delivers the energy in time t.
func (e Energy) Per(t time.Duration) Power { return Power(float64(e) / t.Seconds()) }

// Divide returns the mass that the energy can act on at by joules a kilogram,
// such as the water that a heat boils off.
func (e Energy) Divide(by SpecificEnergy) Mass { return Mass(float64(e) / float64(by)) }

var energies = table{parse: "units.ParseEnergy", display: 2, units: []unit{
	{float64(Joule), "J", nil},
	{float64(Kilojoule), "kJ", nil},
	{float64(Megajoule), "MJ", nil},
	{float64(Gigajoule), "GJ", nil},
	{float64(KilowattHour), "kWh", nil},
	{float64(BtuIT), "Btu", []string{"Btu_IT"}},
	{float64(MillionBtuIT), "MMBtu", []string{"million Btu"}},
	{float64(ThermUS), "therm", []string{"therms"}},
	{float64(CalorieIT), "cal_IT", nil},
	{float64(CalorieThermochemical), "cal_th", nil},
	{float64(BtuThermochemical), "Btu_th", nil},
	{float64(Btu39F), "Btu_39F", nil},
	{float64(Btu59F), "Btu_59F", nil},
	{float64(Btu60F), "Btu_60F", nil},
	{float64(BtuMean), "Btu_mean", nil},
	{float64(ThermEC), "therm_EC", nil},
}, refused: map[string]string{
	"cal":  `"cal_IT" or "cal_th"`,
	"kcal": `the energy in kJ`,
}}

// ParseEnergy reads an energy such as "400000 Btu" or "120 kWh". The unit is mandatory.
func ParseEnergy(s string) (Energy, error) { return parse[Energy](s, &energies) }

// String prints the energy in MJ with 12 significant digits.
func (e Energy) String() string { return str(e, &energies) }

// Text prints the energy in the given unit with the given number of decimals.
// A unit that has no symbol here prints in J.
func (e Energy) Text(unit Energy, decimals int) string {
	return text(e, unit, decimals, &energies)
}

// TextIn prints it to so many significant digits in the units that a person reads in a system.
func (e Energy) TextIn(in System, digits int) string {
	return telling(in, energyPairs, digits).one(float64(e))
}

// MarshalText prints the energy in J without loss. NaN and infinity are errors.
func (e Energy) MarshalText() ([]byte, error) { return marshal(e, &energies) }

// UnmarshalText reads what [ParseEnergy] reads.
func (e *Energy) UnmarshalText(text []byte) error { return unmarshal(e, text, &energies) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (e Energy) MarshalJSON() ([]byte, error) { return marshalJSON(e, &energies) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (e *Energy) UnmarshalJSON(text []byte) error { return unmarshalJSON(e, text, &energies) }
