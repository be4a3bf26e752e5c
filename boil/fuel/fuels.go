package fuel

import "example.org/sapreckoner/units"

// Sources of the heats of fuels.
const (
	sourceDOE    = "US DOE representative unit costs, Federal Register 2007-03-21"
	sourceEIA    = "US EIA"
	sourceForest = "USDA Forest Products Laboratory fuel value bulletin, 5th ed."
)

// HeatingOil returns No. 2 heating oil: 138,690 Btu gross for a US gallon (US
// DOE, Federal Register 2007-03-21). US EIA has 138,500, from memory.
func HeatingOil() Fuel[units.Volume] { return ByVolume()[0] }

// Propane returns liquid propane: 91,333 Btu gross for a US gallon (US DOE,
// Federal Register 2007-03-21). US EIA has 91,452, from memory. A cylinder sold
// as 20 lb holds about 4.7 US gallons (from memory). Burn it outdoors, or where
// the burner's own rules allow: an unvented burner indoors makes carbon
// monoxide.
//
// Cites doe-fuel-costs-2007, eia.
func Propane() Fuel[units.Volume] { return ByVolume()[2] }

// NaturalGas returns natural gas by volume: 1,028 Btu gross for a cubic foot (US
// EIA, average of 2007). See [NaturalGasTherms] for a bill in therms.
func NaturalGas() Fuel[units.Volume] { return ByVolume()[4] }

// NaturalGasTherms returns natural gas by the heat on the bill, which is gross
// by custom: the US therm, 100,000 Btu at 59 F by definition, [units.ThermUS].
func NaturalGasTherms() Fuel[units.Energy] { return ByEnergy()[0] }

// Electricity returns electricity: 3,412 Btu for a kilowatt hour, by
// definition. An element under the surface loses only what the pan and the
// liquid lose.
func Electricity() Fuel[units.Energy] { return ByEnergy()[1] }

// Pellets returns wood pellets: 16.4 million Btu gross for a short ton (USDA
// Forest Products Laboratory, from memory).
//
// Cites fpl-fuel-value.
func Pellets() Fuel[units.Mass] { return ByMass()[0] }

// GenericCordwood returns a cord of whatever wood: 20 million Btu gross (an
// estimate of US EIA, from memory). [Firewood] knows the species.
func GenericCordwood() Fuel[units.Volume] { return ByVolume()[5] }

// ByVolume returns the published heats of fuels sold by volume, with their
// different bases and sources.
func ByVolume() []Fuel[units.Volume] {
	const gal, foot, cord = units.USGallon, units.CubicFoot, units.Cord
	return []Fuel[units.Volume]{
		{"No. 2 heating oil", 138690 * units.BtuIT, gal, Gross, "read", sourceDOE},
		{"No. 2 heating oil", 138500 * units.BtuIT, gal, Gross, "memory", sourceEIA},
		{"propane", 91333 * units.BtuIT, gal, Gross, "read", sourceDOE},
		{"propane", 91452 * units.BtuIT, gal, Gross, "memory", sourceEIA},
		{"natural gas", 1028 * units.BtuIT, foot, Gross, "read", "US EIA 2007 average"},
		{"cordwood, generic", 20 * units.MillionBtuIT, cord, Gross, "memory", "US EIA estimate"},
		{"propane", 71000 * units.BtuIT, gal, Delivered, "read", sourceForest},
		{"No. 2 heating oil", 115000 * units.BtuIT, gal, Delivered, "read", sourceForest},
		{"seasoned firewood", 15.3 * units.MillionBtuIT, cord, Delivered, "read", sourceForest},
	}
}

// ByMass returns the published heats of fuels sold by mass.
func ByMass() []Fuel[units.Mass] {
	return []Fuel[units.Mass]{
		{"wood pellets", 16.4 * units.MillionBtuIT, units.ShortTon, Gross, "memory", "USDA Forest Products Laboratory"},
		{"wood pellets, premium", 13.6 * units.MillionBtuIT, units.ShortTon, Delivered, "read", sourceForest},
	}
}

// ByEnergy returns the heats of fuels sold by energy, which are what they
// say by definition.
func ByEnergy() []Fuel[units.Energy] {
	return []Fuel[units.Energy]{
		{"natural gas", units.ThermUS, units.ThermUS, Gross, "computed", "definition"},
		{"electricity", units.KilowattHour, units.KilowattHour, Gross, "computed", "definition"},
	}
}
