package tapping_test

import (
	"testing"
	"time"

	"example.org/sapreckoner/internal/proving/sweep"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

func swept(t testing.TB) sweep.Package {
	t.Helper()
	trunk := must[tapping.Trunk](t)(tapping.NewTrunk(20*units.Inch, tapping.SugarMaple, tapping.Healthy))
	hole := must[tapping.Hole](t)(tapping.NewHole(units.Inch*5/16, 1.5*units.Inch, units.Inch/2))
	reach := must[tapping.Reach](t)(tapping.ReachByHand(units.Foot, 5*units.Foot))
	planner := must[tapping.Planner](t)(tapping.NewPlanner(12*units.Inch, 2024, units.Inch/10, reach, hole, tapping.DefaultDistances()))
	band := must[tapping.TappingBand](t)(tapping.NewTappingBand(12*units.Inch, 5*units.Foot, hole, 1))
	place := tapping.Position{At: units.Degree * 90, Height: 3 * units.Foot}
	old := tapping.OldHole{Position: place, Year: 2023, Hole: hole}
	tree := tapping.Tree{Label: "a", Stems: []tapping.Trunk{trunk}}
	dropline := must[tapping.Reach](t)(tapping.ReachByDropline(place, 3*units.Foot))
	ahead := tapping.AheadPlan{Guideline: tapping.DefaultGuideline(), Growth: units.Inch / 10, Years: 20, Hole: hole, Band: 4 * units.Foot}
	return sweep.Package{
		Contract: true,
		Funcs: []any{
			tapping.BasalAreaGrowth, tapping.ColdestDrilling, tapping.CountStand, tapping.DefaultDistances, tapping.DefaultGuideline,
			tapping.DepthAdvised, tapping.DiameterFromGirth, tapping.GirthFromDiameter, tapping.GuidelineByID, tapping.Guidelines, tapping.HoleLife,
			tapping.LifeFigures, tapping.HoleLimits, tapping.NewGuideline, tapping.NewHole, tapping.NewPlanner, tapping.NewTappingBand, tapping.NewTrunk,
			tapping.PositionAlong, tapping.RadialGrowth, tapping.ReachByDropline, tapping.ReachByHand, tapping.ReadStand, tapping.SpeciesNamed,
			tapping.Spouts, tapping.TooColdToDrill, tapping.AllSpecies, tapping.Vigors,
			tapping.UsualGrowth, tapping.LeastGrowth, tapping.GrowthFromGirths,
		},
		Values: []any{
			units.Inch, 12 * units.Inch, 40 * units.Inch, units.Inch / 10, units.Inch / 3, units.Inch * 3 / 2, units.SquareInch, units.Acre, units.Celsius(5), 20 * units.InchMercury,
			4 * units.USGallon, units.Percents(90), units.Percents(40), units.TempDiff(1), 2 * units.DegreeBrix, units.Degree, 24 * time.Hour, 1.0, 20.0,
			1, 2024, tapping.DefaultGuideline(), tapping.DefaultDistances(), trunk, hole, reach, dropline, planner, band, place, tapping.Position{At: units.Degree * 200, Height: 3 * units.Foot}, old, []tapping.OldHole{old}, tree,
			[]tapping.Tree{tree}, tapping.DefaultGuideline().Info(), tapping.Step{From: 10, To: 20, Taps: 1}, tapping.HoleLimits()[0],
			tapping.Stain{OldHole: old}, tapping.SugarMaple, tapping.Healthy, tapping.NotCompared, tapping.Advice{},
			tapping.StandCount{BasalArea: units.SquareFoot, Trees: 1, Trunks: 1}, &tapping.NotCoveredError{}, &tapping.NotCoveredError{Guideline: "a", DBH: units.Foot, Hint: "so"}, &tapping.GuidelineError{}, tapping.Answer{}, tapping.Guideline{}, tapping.Hole{}, tapping.Reach{}, tapping.Trunk{}, tapping.TappingBand{}, []byte("a"),
			tapping.Spouts()[0], tapping.LifeFigures()[0], tapping.GuidelineTotal{}, tapping.Plan{}, tapping.StandClass{}, units.Metric,
			ahead, must[tapping.TrunkAhead](t)(trunk.Ahead(ahead)), tapping.GrowthRead{PerYear: units.Inch / 10, Doubt: units.Inch / 50},
			&records.RowError{Err: tapping.ErrNotCovered},
		},
		Except: map[string]string{
			"CountStand: finite":   "the last step of a guideline has no end",
			"NewGuideline: finite": "the same",
		},
		Few: map[string]int{"Planner.Plan": 300},
	}
}

func TestSweep(t *testing.T) { sweep.Run(t, swept(t)) }

func TestEdges(t *testing.T) { sweep.Edges(t, swept(t)) }

func FuzzJSON(f *testing.F) { sweep.Fuzz(f, swept(f)) }
