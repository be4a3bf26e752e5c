package proof

import (
	"math"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// BoilHeat returns the claims of package boil about heat.
func BoilHeat() []check.Claim {
	return []check.Claim{
		// boil.Heat follows the climb of the boiling point: 0.03 percent more.
		{Table: "evaporation-heat-worked", Column: "heat_Btu", Func: "boil.LatentHeat on the masses of boil.Heat", Got: plainBalance},
		{Table: "evaporation-published", Column: "heat_Btu", Func: "boil.LatentHeat on the masses of boil.Heat", Got: plainBalance},
		{Table: "evaporation-worked", Column: "value", Func: "boil.Heat", Select: when("quantity", "water boiled off"),
			Got: func(r check.Row) (float64, error) {
				h, err := gallonFrom40F(r)
				return h.Water.Pounds(), err
			}},
		{Table: "evaporation-worked", Column: "value", Func: "boil.Heat", Select: when("quantity", "sap"),
			Got: func(r check.Row) (float64, error) {
				h, err := gallonFrom40F(r)
				if err != nil {
					return math.NaN(), err
				}
				rho, err := density.Solution(h.From, units.Celsius(20))
				return h.From.Of(h.Sugar).Volume(rho).USGallons(), err
			}},
		{Table: "boiling-heat-worked", Column: "value", Func: "boil.HeatDemand.PreheaterCeiling", Select: when("quantity", "share of a plain preheater"),
			Got: func(r check.Row) (float64, error) {
				h, err := boilDown(2, 66, units.Fahrenheit(r.Float("given")))
				return h.PreheaterCeiling().Percents(), err
			}},
		{Table: "preheater-published", Column: "value", Func: "boil.HeatDemand.PreheaterCeiling",
			Got: func(r check.Row) (float64, error) {
				h, err := boilDown(2, 66, units.Fahrenheit(r.Float("sap_F")))
				return h.PreheaterCeiling().Percents(), err
			}},
		{Table: "boiling-heat-worked", Column: "value", Func: "units.Area.Volume", Select: when("quantity", "level drop"),
			Got: func(r check.Row) (float64, error) {
				return units.SquareFoot.Volume(units.Inches(r.Float("given"))).USGallons(), nil
			}},
	}
}

// plainBalance is the balance as it is printed: sap from 40 F warmed by one
// specific heat, and all water boiled at 99.974 C.
func plainBalance(r check.Row) (float64, error) {
	h, err := gallonFrom40F(r)
	if err != nil {
		return math.NaN(), err
	}
	at := units.Celsius(99.974)
	steam, err := boil.LatentHeat(at)
	warm := units.KilojoulesPerKilogramKelvin(4.145).Energy(h.From.Of(h.Sugar), at.Sub(units.Fahrenheit(40)))
	return (warm + steam.Energy(h.Water)).BtusIT(), err
}

// boilDown returns the demand of 100 kg of sap at 1 atm.
func boilDown(from, to units.Brix, at units.Temperature) (boil.HeatDemand, error) {
	lot, err := sugar.NewLotByMass(100, from, at)
	if err != nil {
		return boil.HeatDemand{}, err
	}
	return boil.Heat(lot, to, units.Atmosphere)
}

// gallonFrom40F returns the demand of the sap for a US gallon of syrup at 20 C.
func gallonFrom40F(r check.Row) (boil.HeatDemand, error) {
	from, to := units.Brix(r.Float("sap_brix")), units.Brix(r.Float("syrup_brix"))
	rho, err := density.Solution(to, units.Celsius(20))
	if err != nil {
		return boil.HeatDemand{}, err
	}
	lot, err := sugar.NewLotByMass(from.Of(to.Sugar(rho.Mass(units.USGallon))), from, units.Fahrenheit(40))
	if err != nil {
		return boil.HeatDemand{}, err
	}
	return boil.Heat(lot, to, units.Atmosphere)
}

// printed undoes the last bits of a conversion of units, which no table prints.
func printed(x float64) float64 { return math.Round(x*1e6) / 1e6 }
