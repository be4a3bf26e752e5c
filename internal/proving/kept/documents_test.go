package kept_test

import (
	"math"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/lookagain"
	"example.org/sapreckoner/yield/money"
	"example.org/sapreckoner/yield/packing"
)

// current is the version whose folder this one must write to the letter. Once it
// is out its folder is closed: a version that writes anything in another way, or
// anything new, starts a folder of its own with all of the documents.
const current = "v0.2.0"

var nan = math.NaN()

// documents lists a value of every type that encodes. The words tell two values
// of a type apart. Numbers end in binary, so that no machine rounds them.
var documents = []document{
	// units
	keep("", units.Celsius(20.25)),
	keep("not known", units.Celsius(nan)),
	keep("", units.CelsiusDegrees(3.5)),
	keep("", 1.5*units.Meter),
	keep("", 1.5*units.SquareMeter),
	keep("", 0.0625*units.CubicMeter),
	keep("not known", units.Volume(nan)),
	keep("", 12.5*units.Kilogram),
	keep("", 1325.5*units.KilogramPerCubicMeter),
	keep("", 101325*units.Pascal),
	keep("", 2500*units.Joule),
	keep("", 1500*units.Watt),
	keep("", 0.5*units.KilogramPerSecond),
	keep("", 0.25*units.CubicMeterPerSecond),
	keep("", units.Flux(0.25)),
	keep("", units.SpecificEnergy(2256500)),
	keep("", units.SpecificHeat(4186.75)),
	keep("", units.Viscosity(0.125)),
	keep("", units.Angle(0.5)),
	keep("", units.Brix(66.5)),
	keep("not known", units.Brix(nan)),
	keep("", units.Share(12.5)),
	keep("", units.Metric),
	keep("", units.RangeError{Func: "boil.SyrupPoint", Arg: "pressure", What: "pressure at the pan", Value: 10, Low: 20, High: 120, Unit: "kPa", Hint: "see the barometer"}),
	keep("not known, no upper end", units.RangeError{Arg: "draw", Value: nan, Low: 0, High: math.Inf(1)}),

	keep("", units.ScaleFahrenheit),
	keep("", units.ParseError{Func: "units.ParseVolume", Input: "60 gal", Hint: "write US gal or imp gal", Err: units.ErrAmbiguous}),

	// density
	keep("", density.ICUMSA),
	keep("", density.SG2020(1.25)),
	keep("", density.TrueSG2020(1.25)),
	keep("", density.Baume145(36.5)),
	keep("", density.ND20(1.4375)),

	// sugar
	keep("", halfSugar()),
	keep("", sugar.ReadAgain),
	keep("", sugar.Golden),
	keep("", sugar.MapleCream),
	keep("", sugar.Vermont),
	keep("", sugar.Inside),
	keep("", sugar.Vavrinecz),
	keep("", sugar.CrystalsPossible),
	keep("", sugar.Absorbance(0.375)),
	keep("", sugar.Glucose(0.5)),

	// boil
	keep("", boil.FluePan),
	keep("", boil.RareWeather),
	keep("", boil.SuspectScale),
	keep("", finish.Spike),
	keep("", fuel.Gross),
	keep("none", fuel.Basis(0)),
	keep("", fuel.LooseShort),
	keep("", fuel.WetMoisture(20.25)),
	keep("", fuel.DryMoisture(25.5)),
	keep("", pan.PailFeed),
	keep("", pan.EventDrawOpens),
	keep("", pan.GrowthBetween),

	// tapping
	keep("", tapping.SugarMaple),
	keep("", tapping.Slow),
	keep("", tapping.OverLimit),
	keep("", made(tapping.NewTrunk(0.5*units.Meter, tapping.SugarMaple, tapping.Healthy))),
	keep("", eightMillimeters),
	keep("by hand", made(tapping.ReachByHand(0.5*units.Meter, 1.5*units.Meter))),
	keep("by dropline", made(tapping.ReachByDropline(tapping.Position{At: 0.5, Height: units.Meter}, 0.75*units.Meter))),
	keep("", made(tapping.NewTappingBand(0.25*units.Meter, 1.5*units.Meter, eightMillimeters, 1))),
	keep("", tapping.Step{From: 12, To: 18, Taps: 1}),
	keep("without an end", tapping.Step{From: 18, To: math.Inf(1), After: true, Taps: 2}),
	keep("", made(tapping.NewGuideline(tapping.GuidelineInfo{
		ID: "house", Kind: "advice", Height: 1.5 * units.Meter, Unit: 0.25 * units.Meter, Steps: []tapping.Step{{From: 2, To: 3, Before: true, Taps: 1}},
	}))),
	keep("published", tapping.DefaultGuideline()),

	keep("", tapping.NotCoveredError{Guideline: "house", DBH: 0.25 * units.Meter, Hint: "ask another"}),

	// tapping/season
	keep("", season.SingleSine),
	keep("", season.South),
	keep("", season.SeasonEnd),
	keep("", season.MayOverflow),
	keep("", season.TapWait),
	keep("", season.SugarFall),
	keep("", season.EndNear),
	keep("", season.DegreeDays(12.5)),
	keep("", made(season.NewCriterion("house", units.Celsius(-1.5), units.Celsius(2.5)))),
	keep("published", season.VigorousRun()),
	keep("", season.BloomRule()),
	keep("without a limit", made(season.NewDegreeDayRule(season.DailyMean, units.Celsius(5), units.Celsius(math.Inf(1))))),
	keep("", made(season.WithVacuum(50000*units.Pascal))),
	keep("", made(season.NewWeather([]season.Day{
		{Date: time.Date(2026, 3, 1, 0, 0, 0, 0, time.UTC), Min: units.Celsius(-6.5), Max: units.Celsius(4.5)},
		{Date: time.Date(2026, 3, 4, 0, 0, 0, 0, time.UTC), Min: units.Celsius(-1.5), Max: units.Celsius(7.25)},
	}))),

	// units/records
	keep("", records.Error{File: "sap.csv", Line: 3, Column: "date", Err: records.ErrOrder}),
	keep("", records.RowError{Line: 3, Column: "tmin_c", Err: &units.RangeError{Func: "season.Day", Arg: "Day.Min", What: "minimum", Value: -9999, Low: -95, High: 60, Unit: "C"}}),

	// yield
	keep("", yield.OwnSeasons),
	keep("", yield.Vermont),
	keep("", yield.Revised66Less),
	keep("", yield.TraceError{Func: "yield.NewBooks", ID: "drum 1", Ref: "march 9", Err: yield.ErrUnknownID}),
	keep("rectangular", made(yield.RectangularTank(1.5*units.Meter, 0.75*units.Meter, 0.5*units.Meter))),
	keep("upright cylinder", made(yield.UprightCylinder(0.75*units.Meter, 1.5*units.Meter))),
	keep("lying cylinder", made(yield.LyingCylinder(0.75*units.Meter, 1.5*units.Meter))),
	keep("lying ellipse", made(yield.LyingEllipse(1.5*units.Meter, 0.75*units.Meter, 2*units.Meter))),
	keep("trough", made(yield.HalfEllipseTrough(1.5*units.Meter, 0.75*units.Meter, 2*units.Meter))),
	keep("pail", made(yield.Pail(0.375*units.Meter, 0.25*units.Meter, 0.5*units.Meter))),
	keep("", yield.Account{
		SugarIn: 64, SugarOut: 48, Kept: 8, SugarInLimits: 4, SugarOutLimits: 1.5, KeptLimits: 0.5, Lost: 8, LostShare: 12.5, Uncertainty: 4.5,
		Impossible: true, Sap: 4, Syrup: 0.0625, SapBrix: 2.5, SyrupBrix: 66.5, Ratio: 43.5, Exact: 40.5, SapPerTap: 0.5, SyrupPerTap: 0.25, SugarPerTap: 0.75, SapPerTapDay: 0.125,
	}),
	keep("", yield.Poured),
	keep("not counted", yield.Account{Ratio: nan, Exact: nan, SapPerTap: units.Volume(nan), SyrupBrix: units.Brix(nan)}),

	// yield/packing, yield/money, yield/lookagain
	keep("", money.DecimalError{Func: "money.Divide", Arg: "among[0].Weight", What: "entry 1: weight", Value: "-1", Reason: "what one brings is not negative"}),
	keep("", packing.RightToFill),
	keep("", money.Deducted),
	keep("", lookagain.OutOfSeason),
	keep("", lookagain.Syrup),
	keep("", lookagain.Row{
		File: "sap.csv", Line: 3, Whole: "a,b", Day: time.Date(2026, 3, 1, 0, 0, 0, 0, time.UTC), Name: "Orchard", Strength: 2.5, Volume: nan, Price: nan, Drawn: true, Packed: true,
	}),
}

var eightMillimeters = made(tapping.NewHole(0.0078125*units.Meter, 0.0390625*units.Meter, 0.015625*units.Meter))

// made is a value that its constructor takes.
func made[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

// refusals lists the types that have MarshalJSON or MarshalText to say that they
// do not encode.
var refusals = map[string]bool{
	"units.Setting": true, "units/records.Reader": true, "units/records.Col": true, "boil/pan.Moment": true, "tapping.Planner": true,
	"tapping/season.SapModel": true, "tapping/season.SapRecord": true, "tapping/season.TapTiming": true, "yield.Books": true, "yield/lookagain.List": true,
}

// halfSugar is a lot of 16 kg, half of which is sugar.
func halfSugar() sugar.Lot {
	return made(sugar.NewLotByMass(16*units.Kilogram, 50, units.Celsius(20.25)))
}
