package yield_test

import (
	"math"
	"testing"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/internal/proving/sweep"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

func swept(t testing.TB) sweep.Package {
	t.Helper()
	lot, err := sugar.NewLot(10*units.USGallon, 66.9, units.Celsius(88))
	if err != nil {
		t.Fatal(err)
	}
	sap, err := sugar.NewLot(500*units.USGallon, 2, units.Celsius(4))
	if err != nil {
		t.Fatal(err)
	}
	tank, err := yield.LyingCylinder(units.Meter, 2*units.Meter)
	if err != nil {
		t.Fatal(err)
	}
	measured := yield.Measured{Volume: 1, Brix: 0.2}
	day := time.Date(2024, 3, 10, 0, 0, 0, 0, time.UTC)
	boils := []yield.Boil{{ID: "b1", Day: day}}
	lots := []yield.BulkLot{{ID: "l1", Parts: []yield.Part{{From: "b1", Mass: units.Kilogram}}}}
	packings := []yield.Packing{{ID: "p1", Lot: "l1", Day: day}}
	books, err := yield.NewBooks(boils, lots, packings)
	if err != nil {
		t.Fatal(err)
	}
	season := yield.Season{
		Taps: 100, Days: 20, Sap: []sugar.Lot{sap}, Syrup: []sugar.Lot{lot},
		HeldBefore: []sugar.Lot{sap}, SapMeasured: measured, SyrupMeasured: measured, HeldMeasured: measured,
	}
	return sweep.Package{
		Contract: true,
		Funcs: []any{
			yield.BrixFromRatio, yield.ForecastFromGravity, yield.ForecastFromPast, yield.ForecastFromState, yield.HalfEllipseTrough, yield.LyingCylinder,
			yield.LyingEllipse, yield.NewBooks, yield.Pail, yield.Ratio, yield.RectangularTank, yield.Repacked, yield.RuleOf86, yield.UprightCylinder, yield.KeepCellar, yield.MoveKinds, yield.Weighed, yield.States, yield.Rules,
		},
		Values: []any{
			2 * units.DegreeBrix, 66.9 * units.DegreeBrix, units.Celsius(88), units.Celsius(20), 100 * units.Meter / 100, 10 * units.Kilogram,
			2 * units.Kilogram, 300 * units.Gram, 30 * units.Liter, units.USGallon, units.Percents(1), units.Percents(10), units.Density(2), time.Hour,
			40.0, 100, 1, 2020, int32(2), decimal.New(12, 0), decimal.New(1, -2), lot, sap, tank, season, books, boils, lots, packings, boils[0], lots[0],
			packings[0], measured, yield.PastSeason{Year: 2020, Taps: 100, Syrup: 20 * units.USGallon}, yield.Vermont, yield.Jones1946, yield.OwnSeasons,
			&yield.TraceError{}, &yield.TraceError{ID: "a", Ref: "b", Err: yield.ErrCircular}, yield.Tank{}, yield.Account{Ratio: math.NaN(), Exact: math.NaN()}, yield.Forecast{}, yield.Repacking{}, yield.Trace{},
			yield.Origin{}, yield.Part{}, yield.DipstickMark{}, []yield.PastSeason{{Year: 2020, Taps: 100, Syrup: 20 * units.USGallon}}, []byte("a"), units.Metric, []yield.DipstickMark{{}}, 43.0,
			day, yield.Drawn, yield.Move{Kind: yield.Drawn, Day: day, Into: "a", Mass: units.Kilogram, Brix: 66}, []yield.Move{{Kind: yield.Drawn, Day: day, Into: "a", Mass: units.Kilogram, Brix: 66}}, yield.Stage{}, yield.Held{}, yield.Run{}, yield.Cellar{}, yield.Recalled{}, "b1",
		},
		Except: map[string]string{
			"Season.Account: finite":        "NaN is what was not counted, or of what there is none",
			"Tank.Dipstick: half":           "what was in the list stays in it",
			"Tank.DipstickByVolume: half":   "the same",
			"Tank.Dipstick: finite":         "the same",
			"Tank.DipstickByVolume: finite": "the same",
		},
		Bad: []any{
			decimal.New(-1, 0), decimal.New(1, 1<<30), decimal.New(1, -1<<30), decimal.New(1, 15),
		},
	}
}

func TestSweep(t *testing.T) { sweep.Run(t, swept(t)) }

func TestEdges(t *testing.T) { sweep.Edges(t, swept(t)) }

func FuzzJSON(f *testing.F) { sweep.Fuzz(f, swept(f)) }
