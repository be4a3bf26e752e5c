package packing_test

import (
	"testing"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/internal/proving/sweep"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/money"
	"example.org/sapreckoner/yield/packing"
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
	jar := packing.Container{Name: "jar", Label: 250 * units.Milliliter}
	glass := packing.Container{Name: "glass", Label: 500 * units.Milliliter, Brimful: 560 * units.Milliliter, Mass: 300 * units.Gram}
	season := yield.Season{
		Taps: 100, Days: 20, Sap: []sugar.Lot{sap}, Syrup: []sugar.Lot{lot},
		HeldBefore: []sugar.Lot{sap}, SapMeasured: measured, SyrupMeasured: measured, HeldMeasured: measured,
	}
	offer := money.Offer{
		Share: decimal.New(5, -1), SyrupPerPound: decimal.New(4, 0), PoundsPerUSGallon: decimal.New(11, 0), MinBrix: 1,
		Cent: decimal.New(1, -2), PriceStep: decimal.New(1, -3), Rule: yield.Revised66,
	}
	delivery := money.Delivery{Seller: "a", Slip: "1", USGallons: decimal.New(100, 0), Sap: 2}
	return sweep.Package{
		Contract: true,
		Funcs: []any{
			packing.CakeLoss, packing.CanadianLotRule, packing.CanadianSample, packing.CanadianTolerance, packing.CappingLeast, packing.CheckCanadianLot, packing.CheckNet, packing.FewestContainers, packing.FilterAid, packing.FilterTime, packing.FiltersFor,
			packing.InMix, packing.LabelCanada, packing.LabelUS, packing.LayIn, packing.PackingHeatOf, packing.PeakPerTap, packing.PourLeast, packing.PourMost,
		},
		Values: []any{
			2 * units.DegreeBrix, 66.9 * units.DegreeBrix, units.Celsius(88), units.Celsius(20), 100 * units.Meter / 100, 10 * units.Kilogram,
			2 * units.Kilogram, 300 * units.Gram, 30 * units.Liter, units.USGallon, units.Percents(1), units.Percents(10), units.Density(2), time.Hour,
			40.0, 100, 1, 2020, int32(2), decimal.New(12, 0), decimal.New(1, -2), lot, sap, tank, hours, season, offer, delivery, glass, jar, books,
			boils, lots, packings, boils[0], lots[0], packings[0], measured, packing.Supply{Container: glass, OnHand: 100},
			packing.Mix{Container: glass, Parts: 1}, money.Jars{Label: 250 * units.Milliliter, Count: 7},
			money.Cost{Item: "wood", Amount: decimal.New(100, 0)}, yield.PastSeason{Year: 2020, Taps: 100, Syrup: 20 * units.USGallon}, packing.Habits{},
			yield.Vermont, yield.Jones1946, yield.OwnSeasons, packing.TooCool, &money.DecimalError{}, &yield.TraceError{}, packing.Filling{}, packing.NetCheck{}, packing.LotCheck{}, packing.LotRule{}, 2, []units.Mass{300 * units.Gram, 310 * units.Gram}, packing.PackLine{}, packing.PackPlan{}, packing.Stores{}, []byte("a"),
			[]packing.Supply{{Container: glass, OnHand: 100}}, []packing.Mix{{Container: glass, Parts: 1}}, []units.Mass{300 * units.Gram}, []units.Volume{units.USGallon},
		},
		Except: map[string]string{
			"Container.Fill: finite":      "NaN is the headspace under a brim that is not known",
			"FewestContainers: finite":    "the same",
			"InMix: finite":               "the same",
			"Container.Mass: NaN":         "it matters to the heat at capping alone",
			"Container.SpecificHeat: NaN": "the same",
			"LayIn: finite":               "NaN is the wood where no cord was measured",
		},
		Few: map[string]int{"FewestContainers": 600},
		Bad: []any{
			decimal.New(-1, 0), decimal.New(1, 1<<30), decimal.New(1, -1<<30), decimal.New(1, 15),
		},
	}
}

func TestSweep(t *testing.T) { sweep.Run(t, swept(t)) }

func FuzzJSON(f *testing.F) { sweep.Fuzz(f, swept(f)) }

func TestEdges(t *testing.T) { sweep.Edges(t, swept(t)) }
