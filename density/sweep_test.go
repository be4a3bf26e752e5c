package density_test

import (
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/proving/sweep"
	"example.org/sapreckoner/units"
)

func swept() sweep.Package {
	glass := density.Hydrometer{GraduatedAt: units.Celsius(20)}
	return sweep.Package{
		Contract: true,
		Funcs: []any{
			density.BaumeFromBrix, density.BrixFromBaume, density.BrixFromDensity, density.BrixFromRefractiveIndex, density.BrixFromSG2020,
			density.BrixFromTrueSG2020, density.CaveatsOf, density.Combine, density.Contraction, density.Extrapolated, density.FromAir,
			density.HotVolume, density.InAir, density.Mass, density.NewCheckSolution, density.ParseBaume145, density.ParseND20, density.ParseSG2020, density.ParseTrueSG2020, density.RefractiveIndex, density.Scales, density.SG2020FromBrix, density.Solution,
			density.TrueSG2020FromBrix, density.VolumeAt, density.Water, density.WeightInAir,
		},
		Values: []any{
			units.Celsius(25), 66 * units.DegreeBrix, units.Density(1320), 3 * units.USGallon, 132 * units.Gram, units.TempDiff(0.5),
			density.Baume145(35.6), density.SG2020(1.32), density.TrueSG2020(1.32), density.ND20(1.45), density.ICUMSA,
			glass, density.Refractometer{}, density.Mark{For: 66.9, At: units.Celsius(99)},
			density.Flask{Volume: 100 * units.Milliliter, CalibratedAt: units.Celsius(20)},
			density.Measurement{Brix: 66, Uncertainty: 0.3}, &density.DisagreeError{}, density.Caveats{Supersaturated: true}, density.Combination{Brix: 66, Uncertainty: 0.2}, density.Parts{Model: 0.1}, []byte("a"), 2,
			density.CheckSolution{Sugar: 0.669, Water: 0.331}, 5 * units.Gram,
			density.CupRow{At: units.Celsius(90)},
			density.Doubt{Calibration: 0.1, Division: 0.1, Thermometer: 0.5}, density.FlaskDoubt{Volume: units.Milliliter, Division: units.Gram, Calibration: units.Gram, Thermometer: 0.5},
		},
		Except: map[string]string{
			"Measurement.Parts: NaN":       "the parts of an uncertainty are told, not reckoned with",
			"Hydrometer.CheckedIn: NaN":    "what the instrument read too much is what it finds anew",
			"Refractometer.CheckedIn: NaN": "the same",
			"Hydrometer.FillCupTable: NaN": "it writes over the readings of the rows, and of no rows nothing is asked",
		},
	}
}

func TestSweep(t *testing.T) { sweep.Run(t, swept()) }

func TestEdges(t *testing.T) { sweep.Edges(t, swept()) }

func FuzzJSON(f *testing.F) { sweep.Fuzz(f, swept()) }
