package fuel

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// WetMoisture is moisture in percent of the wood as it lies, wet basis: what
// boiler makers and pellet bags mean. 100 lb of wood at 20 percent hold 20 lb of
// water.
type WetMoisture float64

// DryMoisture is moisture in percent of the oven-dry wood, dry basis: what
// foresters and pin meters mean. It passes 100 in green wood of some species.
type DryMoisture float64

// Dry returns the same moisture on the dry basis. Check value: 20 percent wet is
// 25 percent dry.
func (m WetMoisture) Dry() DryMoisture { return DryMoisture(100 * m / (100 - m)) }

// Wet returns the same moisture on the wet basis. Check value: 25 percent dry is
// 20 percent wet.
func (m DryMoisture) Wet() WetMoisture { return WetMoisture(100 * m / (100 + m)) }

// Heat of firewood at a moisture.
const (
	// The gross heat of oven-dry wood: Missouri Department of Conservation.
	ovenDryHeat = 8600 * units.BtuITPerPound
	// What evaporating water costs, and the water that burning dry wood makes:
	// from memory.
	waterCost     = 1050 * units.BtuITPerPound
	waterOfBurned = 0.54
)

// What the moisture may be: wood is seldom over two thirds water.
var (
	wetRange = limit.Range{Arg: "moisture", What: "moisture, wet basis", Low: 0, High: 70, Unit: "%",
		Below: "wood is no dryer than oven-dry",
		Above: "such wet wood does not burn: check whether the figure is on the dry basis"}
	dryRange = limit.Range{Arg: "moisture", What: "moisture, dry basis", Low: 0, High: 200, Unit: "%",
		Below: "wood is no dryer than oven-dry",
		Above: "no green wood is so wet: check the meter"}
	weighedRange = limit.Range{Arg: "Firewood.WeighedAt", What: "moisture of the published weight, dry basis", Low: dryRange.Low, High: dryRange.High, Unit: "%",
		Below: dryRange.Below, Above: dryRange.Above}
	cordRange = limit.Range{Arg: "Firewood.Weight", What: "weight of a cord", Low: 300, High: 4000, Unit: "kg",
		Below: "take the species from a table, or weigh a part of a cord",
		Above: "check pounds against kilograms"}
)

// WoodHeat returns the net heat of firewood of a moisture: less the evaporation
// of its own water and of the water that burning makes.
//
// Range: 0 to 70 percent. Uncertainty: 5 percent among species; resin gives
// conifers a few percent more.
//
// Source: 8600 (1-M) - 1050 (M + 0.54 (1-M)) Btu/lb; 8,600 from the Missouri
// Department of Conservation, the form of the net heat from memory. Check value:
// 8,033 Btu/lb at 0 and 6,216 at 20 percent (computed).
//
// Cites missouri-firewood.
func WoodHeat(moisture WetMoisture) (units.SpecificEnergy, error) {
	if err := wetRange.Check("fuel.WoodHeat", float64(moisture)); err != nil {
		return units.SpecificEnergy(math.NaN()), err
	}
	return woodHeat(moisture), nil
}

func woodHeat(m WetMoisture) units.SpecificEnergy {
	water := units.SpecificEnergy(m / 100)
	dry := 1 - water
	return ovenDryHeat*dry - waterCost*(water+waterOfBurned*dry)
}

// A Firewood is a species in a published table of cords. [FirewoodKentucky] and
// [FirewoodMissouri] have such tables; their figures stand on different bases
// and do not compare.
type Firewood struct {
	Species string
	// A cord weighs Weight at the moisture WeighedAt.
	Weight    units.Mass
	WeighedAt DryMoisture
	// Heat is that of a cord as published, on its Basis.
	Heat  units.Energy
	Basis Basis
	// OtherHeat is what a second source gives beside it; 0 if it gives none.
	OtherHeat units.Energy
	// Green is the moisture of the living tree; 0 if the table has none.
	Green DryMoisture
	// Note says what is odd about the row, if anything is.
	Note   string
	Source string
}

// Cord returns the fuel as the table has it: the published heat of a cord, on
// its basis.
func (w Firewood) Cord() Fuel[units.Volume] {
	return Fuel[units.Volume]{Name: w.Species, Heat: w.Heat, Per: units.Cord, Basis: w.Basis, Obtained: "read", Source: w.Source}
}

// OvenDry returns the mass of the wood in a cord without any water.
func (w Firewood) OvenDry() units.Mass {
	return units.Mass(float64(w.Weight) / (1 + float64(w.WeighedAt)/100))
}

// CordWeight returns what a cord weighs at a moisture.
//
// Range: cords of 300 to 4,000 kg as tabulated, 0 to 200 percent. Uncertainty: 15
// percent, of stacking and growth; the shrinkage of wood as it dries, which packs
// a dry cord a few percent denser, is left out.
//
// Check value: 3,577 lb for sugar maple at 20 percent in [FirewoodMissouri],
// where the table has it.
func (w Firewood) CordWeight(moisture DryMoisture) (units.Mass, error) {
	return w.cordWeight("fuel.Firewood.CordWeight", moisture)
}

func (w Firewood) cordWeight(fn string, m DryMoisture) (units.Mass, error) {
	nan := units.Mass(math.NaN())
	if err := cordRange.Check(fn, w.Weight.Kilograms()); err != nil {
		return nan, err
	}
	if err := weighedRange.Check(fn, float64(w.WeighedAt)); err != nil {
		return nan, err
	}
	if err := dryRange.Check(fn, float64(m)); err != nil {
		return nan, err
	}
	return w.OvenDry() * units.Mass(1+m/100), nil
}

// Net returns the fuel by the cord at the moisture of the wood on hand, as net
// heat: the mass of the cord times [WoodHeat].
//
// Range and uncertainty: as of those two, 0 to 200 percent.
//
// Check value: sugar maple of Missouri at 25 percent dry, 20 percent wet basis:
// 3,726 lb of 6,216 Btu/lb make 23.2 million Btu (computed).
func (w Firewood) Net(moisture DryMoisture) (Fuel[units.Volume], error) {
	mass, err := w.cordWeight("fuel.Firewood.Net", moisture)
	if err != nil {
		return Fuel[units.Volume]{}, err
	}
	return Fuel[units.Volume]{Name: w.Species, Heat: woodHeat(moisture.Wet()).Energy(mass), Per: units.Cord, Basis: Net,
		Obtained: "computed", Source: w.Source}, nil
}

// NetWood returns firewood by the pound at a moisture, as net heat: for the wood
// of a firing.
//
// Range and uncertainty as for [WoodHeat]. Check value: 6,216 Btu/lb at 20
// percent (computed).
func NetWood(moisture WetMoisture) (Fuel[units.Mass], error) {
	if err := wetRange.Check("fuel.NetWood", float64(moisture)); err != nil {
		return Fuel[units.Mass]{}, err
	}
	return Fuel[units.Mass]{Name: "firewood", Heat: woodHeat(moisture).Energy(units.Pound), Per: units.Pound, Basis: Net,
		Obtained: "memory", Source: "8600 (1-M) - 1050 (M + 0.54 (1-M)) Btu/lb"}, nil
}
