package season_test

import (
	"testing"
	"time"

	"example.org/sapreckoner/internal/proving/sweep"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
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
	vacuum := must[season.Method](t)(season.WithVacuum(20 * units.InchMercury))
	model := must[season.SapModel](t)(season.NewSapModel(vacuum, 20))
	day := func(n int) season.Day {
		return season.Day{Date: time.Date(2024, 3, n, 0, 0, 0, 0, time.UTC), Min: units.Celsius(-5), Max: units.Celsius(6)}
	}
	days := []season.Day{day(1), day(2), day(3)}
	weather := must[season.Weather](t)(season.NewWeather(days))
	place := tapping.Position{At: units.Degree * 90, Height: 3 * units.Foot}
	old := tapping.OldHole{Position: place, Year: 2023, Hole: hole}
	tree := tapping.Tree{Label: "a", Stems: []tapping.Trunk{trunk}}
	pail := season.Pail{Label: "a", Taps: 1, Size: 4 * units.USGallon, Holds: units.USGallon}
	gathering := season.Gathering{Date: days[2].Date, Since: days[0].Date, PerTap: units.USGallon}
	use, gears := pailsAndPump(t)
	return sweep.Package{
		Contract: true,
		Funcs: []any{
			season.BloomRule, season.NewDegreeDayRule, season.Criteria, season.FahrenheitDegreeDays, season.FivePercentAnInch, season.FreezeThawEvent, season.GrowingDegreeDays,
			season.History, season.NewTapTiming, season.HouleProbability, season.LookAhead, season.NaturalVacuum, season.NewCriterion, season.NewSapModel,
			season.NewWeather, season.PailRound, season.ProducingWeeks, season.ReadWeather, season.SapFlowDay, season.SapSugar, season.Seasons,
			season.Sensitivity, season.SilverMapleBloom, season.SugarFigures, season.VacuumGain, season.VigorousRun, season.WithVacuum, season.DegreeDayMethods, season.NewSapRecord, season.CompareGear, season.SapByDepth, season.CleaningFigures, season.LookForEnd, season.RedMapleBloom, season.EndKinds, season.EndStates, season.GoodRun, season.LargestRun, season.UsualHours, season.Hemispheres, season.Parts, season.ParseDegreeDays,
		},
		Values: []any{
			units.Inch, 12 * units.Inch, 40 * units.Inch, units.Inch / 10, units.SquareInch, units.Acre, units.Celsius(5), 20 * units.InchMercury,
			4 * units.USGallon, units.Percents(90), units.Percents(40), units.TempDiff(1), 2 * units.DegreeBrix, units.Degree, 24 * time.Hour, 1.0, 20.0,
			1, 2024, season.DegreeDays(10), season.BloomRule(), season.SingleSine, timing(t, weather, 35), season.TapNow, season.TapWindow{},
			tapping.DefaultGuideline(), season.SapFlowDay(), tapping.DefaultDistances(), trunk, hole, reach, planner, band, vacuum, model, days, days[0],
			weather, place, old, []tapping.OldHole{old}, tree, []tapping.Tree{tree}, pail,
			season.Figure[units.Volume]{Span: units.Span[units.Volume]{Low: units.USGallon, High: 2 * units.USGallon}},
			season.Rule{Criterion: season.SapFlowDay()}, tapping.DefaultGuideline().Info(), tapping.Step{From: 10, To: 20, Taps: 1},
			tapping.HoleLimits()[0], tapping.Stain{OldHole: old}, season.CalendarDay{Month: 3, Day: 1}, tapping.SugarMaple, tapping.Healthy, season.North,
			season.WholeSeason, tapping.NotCompared, season.Lasts, tapping.Advice{}, season.Gap{From: time.Unix(0, 0), To: time.Unix(1e6, 0)},
			tapping.StandCount{BasalArea: units.SquareFoot, Trees: 1, Trunks: 1}, &tapping.NotCoveredError{}, &season.CriterionError{}, &season.NoFigureError{}, season.Criterion{}, season.Weather{}, []byte("a"), units.Metric,
			season.Method{}, season.SapModel{}, season.Season{}, season.Window{}, season.Spread{}, season.Outlook{}, season.Week{}, season.SapDay{},
			season.PailOutlook{}, season.TapCall{}, season.SugarFigures()[0], []season.Pail{pail},
			gravityRecord(t, weather, gathering), gathering, []season.Gathering{gathering}, season.LikelyDay{}, use, gears, gears[0], season.GearSeason{}, season.CleaningFigures()[0], season.EndQuestion{Rule: season.Rule{Criterion: season.SapFlowDay()}}, season.SugarReading{Date: days[0].Date, Sugar: 2}, season.EndSign{}, season.EndOutlook{}, season.HoleAge, season.EndNear, days[1].Date, season.UsualHours(),
			&records.RowError{Err: tapping.ErrNotCovered},
		},
		Except: map[string]string{
			"Span.Middle: NaN":         "a pail is judged by the ends",
			"NewDegreeDayRule: finite": "an upper limit may be none",
			"GrowingDegreeDays: NaN":   "it adds nothing, as documented",
			"NewCriterion: finite":     "it is open below and above",
			"NewTapTiming: finite":     "the same, of its criterion",
			"NewSapRecord: finite":     "the same, and a guess that cannot be has no weight",
		},
	}
}

func TestSweep(t *testing.T) { sweep.Run(t, swept(t)) }

func TestEdges(t *testing.T) { sweep.Edges(t, swept(t)) }

func FuzzJSON(f *testing.F) { sweep.Fuzz(f, swept(f)) }
