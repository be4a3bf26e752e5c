package kept_test

import (
	"math"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
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
}

// refusals lists the types that have MarshalJSON or MarshalText to say that they
// do not encode.
var refusals = map[string]bool{"units.Setting": true, "boil/pan.Moment": true}

// halfSugar is a lot of 16 kg, half of which is sugar.
func halfSugar() sugar.Lot {
	lot, err := sugar.NewLotByMass(16*units.Kilogram, 50, units.Celsius(20.25))
	if err != nil {
		panic(err)
	}
	return lot
}
