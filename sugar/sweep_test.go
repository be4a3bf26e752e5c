package sugar_test

import (
	"testing"
	"time"

	"example.org/sapreckoner/internal/proving/sweep"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func swept(t testing.TB) sweep.Package {
	sap, err := sugar.NewLot(100*units.USGallon, 2, units.Celsius(4))
	if err != nil {
		t.Fatal(err)
	}
	syrup, err := sugar.NewLot(3*units.USGallon, 66, units.Celsius(60))
	if err != nil {
		t.Fatal(err)
	}
	standard, err := sugar.Vermont.Standard()
	if err != nil {
		t.Fatal(err)
	}
	return sweep.Package{
		Contract: true,
		Funcs: []any{
			sugar.AbsorbanceOf, sugar.AdditionBrix, sugar.Blend, sugar.BlendTransmission, sugar.BrixFromFreezingPoint,
			sugar.BrixFromOsmoticPressure, sugar.BrixFromWaterActivity, sugar.ColorClassOf, sugar.Concentrate, sugar.Crystals,
			sugar.Enthalpy, sugar.FlowFactor, sugar.FreezeTo, sugar.FreezingPoint, sugar.IceToReach, sugar.Inversion, sugar.InvertedFromMeter,
			sugar.LightShare, sugar.MeterFromInverted, sugar.NewLot, sugar.NewLotByMass, sugar.OsmoticPressure, sugar.Recipe,
			sugar.ColorClasses, sugar.Confections, sugar.Jurisdictions, sugar.ParseAbsorbance, sugar.ParseGlucose,
			sugar.Solubilities, sugar.SpecificHeat, sugar.SquareParts, sugar.TakeIce, sugar.TemperatureFromEnthalpy, sugar.Thicken, sugar.Thin,
			sugar.TransmissionAtBrix, sugar.TransmissionAtPath, sugar.Viscosity, sugar.VolumeBalance, sugar.WaterActivity, sugar.WaterViscosity,
		},
		Values: []any{
			sap, syrup, standard, 66 * units.DegreeBrix, 2 * units.DegreeBrix, 8 * units.DegreeBrix, units.Celsius(20), units.Celsius(-2),
			5 * units.USGallon, 10 * units.Kilogram, units.Percents(60), 10 * units.Millimeter, 1.5 * units.Megapascal,
			units.SpecificEnergy(2e5), 0.9, 3, sugar.Absorbance(0.3), sugar.Golden, sugar.MapleCream, sugar.CrystalsLikely,
			50 * sugar.MilligramPerDeciliter, sugar.Vermont, sugar.Membrane{Pump: 3 * units.Megapascal, Flow: 1e-4, Passage: 1},
			sugar.Separation{Concentrate: syrup, Removed: sap}, sugar.Charles, sugar.Solute{Inverted: 5}, sugar.LogActivity{Mixing: -0.1, Kelvin: -15}, -0.1, sugar.Tinted{Volume: units.Liter, Transmission: 60},
			sugar.Inside, sugar.Leave, sugar.Advice{}, sugar.Addition{}, &sugar.InfeasibleError{Why: "so"},
			0.5 * units.DegreeBrix, 67 * units.DegreeBrix, units.Percents(2), units.Percents(20), units.Percents(70), units.Percents(80), 10.0, 6.5, time.Hour, sugar.Lot{}, []byte("a"),
			sugar.Can{Lot: syrup, Transmission: 60}, sugar.Aim{LeastLight: 50, MostLight: 74.9, LeastBrix: 60, MostBrix: 68}, sugar.Reached{},
		},
		Except: map[string]string{
			"Jurisdiction.Standard: finite": "NaN is the temperature of a rule that names none",
			"Standard.Judge: NaN":           "the same, and the strengths are compared as they are",
			"Membrane.Concentrate: NaN":     "it has no use for the flow",
			"Membrane.Limit: NaN":           "nor has this, nor for the passage",
			"Membrane.Passes: NaN":          "nor has this for the flow",
			"Membrane.Time: NaN":            "this has no use for the pump and the passage",
		},
	}
}

func TestSweep(t *testing.T) { sweep.Run(t, swept(t)) }

func TestEdges(t *testing.T) { sweep.Edges(t, swept(t)) }

func FuzzJSON(f *testing.F) { sweep.Fuzz(f, swept(f)) }
