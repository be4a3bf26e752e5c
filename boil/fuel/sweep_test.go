package fuel_test

import (
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/internal/proving/sweep"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func swept(t testing.TB) sweep.Package {
	sap, err := sugar.NewLot(100*units.USGallon, 2, units.Celsius(4))
	if err != nil {
		t.Fatal(err)
	}
	demand, err := boil.Heat(sap, 66, units.Atmosphere)
	if err != nil {
		t.Fatal(err)
	}
	wood := fuel.FirewoodKentucky()[0]
	return sweep.Package{
		Contract: true,
		Funcs: []any{
			fuel.Bases, fuel.BuiltEvaporator, fuel.Effects, fuel.Electricity, fuel.FaceCord, fuel.FixedHeat, fuel.FirewoodKentucky, fuel.FirewoodMissouri, fuel.ByEnergy, fuel.ByMass,
			fuel.ByVolume, fuel.FullCord, fuel.GenericCordwood, fuel.HeatRate, fuel.HeatingOil, fuel.HomeBuiltPan, fuel.LearnEfficiency, fuel.OnNetWood, fuel.NaturalGas,
			fuel.NaturalGasTherms, fuel.NetWood, fuel.ParseDryMoisture, fuel.ParseWetMoisture, fuel.Pellets, fuel.Piles, fuel.PowerFor, fuel.Propane, fuel.WoodHeat,
		},
		Values: []any{
			units.Percents(50), units.Percents(20), 300 * units.Millimeter, 5 * units.USGallon, 10 * units.Kilogram, 100 * units.Megajoule,
			50 * units.Kilowatt, units.MassRate(0.02), sap, demand, 2, []byte("a"),
			wood, wood.Cord(), fuel.Propane(), fuel.Pellets(), fuel.Electricity(), fuel.Stacked, fuel.Gross, fuel.WetMoisture(20), fuel.DryMoisture(25),
			fuel.BuiltEvaporator(), fuel.Efficiency{Low: 40, High: 60, Basis: fuel.Net}, fuel.Effects()[0], fuel.Heat{Energy: units.Gigajoule, Basis: fuel.Gross},
			fuel.Firing{Burned: fuel.Heat{Energy: units.Gigajoule, Basis: fuel.Gross}, Into: 400 * units.Megajoule},
			fuel.Learned{Efficiency: fuel.BuiltEvaporator(), Boils: 2, Spread: 3}, &fuel.BasisError{},
		},
		Except: map[string]string{
			"HeatDemand.From: NaN":    "it is told, not reckoned with",
			"HeatDemand.To: NaN":      "the same",
			"LearnEfficiency: finite": "NaN is the spread of a single boil",
			"Firewood.Heat: NaN":      "a weight has no use for the heat",
			"Firewood.OtherHeat: NaN": "nor for this",
			"Firewood.Green: NaN":     "nor for the moisture of another state",
			"Effect.Apply: NaN":       "what does not warm the sap has no use for the demand",
		},
	}
}

func TestSweep(t *testing.T) { sweep.Run(t, swept(t)) }

func TestEdges(t *testing.T) { sweep.Edges(t, swept(t)) }

func FuzzJSON(f *testing.F) { sweep.Fuzz(f, swept(f)) }
