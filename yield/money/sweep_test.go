package money_test

import (
	"testing"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/internal/proving/sweep"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/money"
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
	hours, err := money.ByHours("a", 3*time.Hour)
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
	offer := money.Offer{
		Share: decimal.New(5, -1), SyrupPerPound: decimal.New(4, 0), PoundsPerUSGallon: decimal.New(11, 0), MinBrix: 1,
		Cent: decimal.New(1, -2), PriceStep: decimal.New(1, -3), Rule: yield.Revised66,
	}
	exact := offer
	exact.Rule, exact.PoundsPerUSGallon, exact.Syrup = 0, decimal.Zero, 66.9
	posting := money.Posting{Day: day, Payee: "a", Kind: money.Earned, Category: "sap", Amount: decimal.New(1234, -2)}
	half := money.Measure{Part: decimal.New(5, -1), Among: []money.Contribution{hours}}
	wood := []money.Cost{{Item: "wood", Amount: decimal.New(100, 0)}}
	venture := money.Venture{Costs: wood, USGallons: decimal.New(12, 0), Hours: decimal.New(40, 0), Wage: decimal.New(15, 0), Price: decimal.New(60, 0), Step: decimal.New(1, -2)}
	delivery := money.Delivery{Seller: "a", Slip: "1", USGallons: decimal.New(100, 0), Sap: 2}
	return sweep.Package{
		Contract: true,
		Funcs: []any{
			money.ByHours, money.BySugar, money.ByTaps, money.CostPerUSGallon, money.Divide, money.DivideJars, money.DivideJarsAfter,
			money.Ledger, money.PostingKinds, money.PublishedCosts, money.Settle, money.StraightLine, money.Together,
		},
		Values: []any{
			2 * units.DegreeBrix, 66.9 * units.DegreeBrix, units.Celsius(88), units.Celsius(20), 100 * units.Meter / 100, 10 * units.Kilogram,
			2 * units.Kilogram, 300 * units.Gram, 30 * units.Liter, units.USGallon, units.Percents(1), units.Percents(10), units.Density(2), time.Hour,
			40.0, 100, 1, 2020, int32(2), decimal.New(12, 0), decimal.New(1, -2), lot, sap, tank, hours, season, offer, exact, delivery, books, boils, lots,
			packings, boils[0], lots[0], packings[0], measured, money.Jars{Label: 250 * units.Milliliter, Count: 7},
			money.Cost{Item: "wood", Amount: decimal.New(100, 0)}, yield.PastSeason{Year: 2020, Taps: 100, Syrup: 20 * units.USGallon}, yield.Vermont,
			yield.Jones1946, yield.OwnSeasons, &money.DecimalError{}, &money.DecimalError{Arg: "whole", Value: "-1", Reason: "so"}, &yield.TraceError{}, money.Basket{}, money.Line{}, money.Payment{}, money.Portion{}, money.Price{}, money.Statement{}, []byte("a"),
			[]money.Jars{{Label: 250 * units.Milliliter, Count: 7}}, []money.Delivery{delivery}, []money.Contribution{hours}, wood,
			day, money.Carried, posting, []money.Posting{posting}, money.Balance{}, money.Settlement{}, money.LedgerLine{}, half, []money.Measure{half}, venture, money.Result{},
			money.PublishedCost{}, []units.Volume{units.USPint},
		},
		Except: map[string]string{
			"Offer.Prices: finite": "the same",
			"Offer.Prices: half":   "the same",
		},
		Bad: []any{
			decimal.New(-1, 0), decimal.New(1, 1<<30), decimal.New(1, -1<<30), decimal.New(1, 15),
		},
	}
}

func TestSweep(t *testing.T) { sweep.Run(t, swept(t)) }

func TestEdges(t *testing.T) { sweep.Edges(t, swept(t)) }
