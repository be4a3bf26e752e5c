package units

// SpecificEnergy is energy per mass, in joules per kilogram: a latent heat, the
// heat value of a fuel.
type SpecificEnergy float64

// Units of specific energy. 1 Btu(IT)/lb is 2326 J/kg exactly (NIST SP 811,
// App. B).
const (
	JoulePerKilogram     SpecificEnergy = 1
	KilojoulePerKilogram SpecificEnergy = 1000
	MegajoulePerKilogram SpecificEnergy = 1e6
	BtuITPerPound        SpecificEnergy = 2326
)

// JoulesPerKilogram returns a specific energy of n joules per kilogram.
func JoulesPerKilogram(n float64) SpecificEnergy { return SpecificEnergy(n) }

// KilojoulesPerKilogram returns a specific energy of n kilojoules per kilogram.
func KilojoulesPerKilogram(n float64) SpecificEnergy { return SpecificEnergy(n) * KilojoulePerKilogram }

// BtusITPerPound returns a specific energy of n International Table Btu per pound.
func BtusITPerPound(n float64) SpecificEnergy { return SpecificEnergy(n) * BtuITPerPound }

// JoulesPerKilogram returns the specific energy in joules per kilogram.
func (e SpecificEnergy) JoulesPerKilogram() float64 { return float64(e) }

// KilojoulesPerKilogram returns the specific energy in kilojoules per kilogram.
func (e SpecificEnergy) KilojoulesPerKilogram() float64 { return float64(e / KilojoulePerKilogram) }

// BtusITPerPound returns the specific energy in International Table Btu per pound.
func (e SpecificEnergy) BtusITPerPound() float64 { return float64(e / BtuITPerPound) }

// In returns the specific energy in any unit: e.In(BtuITPerPound).
func (e SpecificEnergy) In(unit SpecificEnergy) float64 { return float64(e / unit) }

// Energy returns the energy of a mass m.
func (e SpecificEnergy) Energy(m Mass) Energy { return Energy(float64(e) * float64(m)) }

var specificEnergies = table{parse: "units.ParseSpecificEnergy", display: 1, units: []unit{
	{float64(JoulePerKilogram), "J/kg", nil},
	{float64(KilojoulePerKilogram), "kJ/kg", nil},
	{float64(MegajoulePerKilogram), "MJ/kg", nil},
	{float64(BtuITPerPound), "Btu/lb", nil},
}}

// ParseSpecificEnergy reads a specific energy such as "8600 Btu/lb" or "2257 kJ/kg". The unit is mandatory.
func ParseSpecificEnergy(s string) (SpecificEnergy, error) {
	return parse[SpecificEnergy](s, &specificEnergies)
}

// String prints the specific energy in kJ/kg with 12 significant digits.
func (e SpecificEnergy) String() string { return str(e, &specificEnergies) }

// Text prints the specific energy in the given unit with the given number of decimals.
// A unit that has no symbol here prints in J/kg.
func (e SpecificEnergy) Text(unit SpecificEnergy, decimals int) string {
	return text(e, unit, decimals, &specificEnergies)
}

// MarshalText prints the specific energy in J/kg without loss. NaN and infinity are errors.
func (e SpecificEnergy) MarshalText() ([]byte, error) { return marshal(e, &specificEnergies) }

// UnmarshalText reads what [ParseSpecificEnergy] reads.
func (e *SpecificEnergy) UnmarshalText(text []byte) error {
	return unmarshal(e, text, &specificEnergies)
}

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (e SpecificEnergy) MarshalJSON() ([]byte, error) { return marshalJSON(e, &specificEnergies) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (e *SpecificEnergy) UnmarshalJSON(text []byte) error {
	return unmarshalJSON(e, text, &specificEnergies)
}
