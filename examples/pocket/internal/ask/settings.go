package ask

import (
	"slices"
	"time"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// settings are the lines of the settings file that the phone uses, each with an
// example. A field that names one takes it where nothing is typed.
var settings = []Input{
	{Key: "name", Label: "Name", Start: "Hollow Road sugarhouse", Range: words()},
	{Key: "gallons", Label: "A bare gallon is", Range: choice("", "not said", "US", "a US gallon", "imperial", "an imperial gallon")},
	{Key: "units", Label: "Units", Range: choice("", "not said", "US", "US", "metric", "metric")},
	{Key: "elevation", Label: "Elevation of the pan", Start: "1150 ft", Range: heights(-1640*units.Foot, 16400*units.Foot)},
	{Key: "pan", Label: "Pan", Help: "width and length of the liquid", Start: "2 x 4 ft", Range: areas(0.1*units.SquareFoot, 1e4*units.SquareFoot)},
	{Key: "boils off", Label: "It boils off", Help: "water in an hour, measured on your own pan", Start: "8 US gal/h", Range: rates(0.05*units.USGallonPerHour, 1e5*units.USGallonPerHour)},
	{Key: "depth", Label: "Depth kept in the pan", Start: "2 in", Range: lengths(units.Inch/4, 40*units.Inch)},
	{Key: "safe depth", Label: "Least depth that does not scorch", Start: "1 in", Range: lengths(units.Inch/8, 40*units.Inch)},
	{Key: "coals", Label: "Coals", Help: "time in which the boil falls to half once no more wood goes on", Start: "8 minutes", Range: hours(0, 12*time.Hour)},
	{Key: "pot boils off", Label: "The pot boils off", Help: "water in an hour, of the pot in which a small batch is finished", Start: "1 US gal/h", Range: rates(0.05*units.USGallonPerHour, 1e5*units.USGallonPerHour)},
	{Key: "fire", Label: "The fire stands", Range: choice("", "not said", "under a roof", "under a roof", "outdoors", "outdoors")},
	{Key: "evening", Label: "An evening's fire", Start: "5 hours", Range: hours(time.Hour, 24*time.Hour)},
	{Key: "taps", Label: "Taps", Start: "60", Range: counts(1, 1e6)},
	{Key: "collected by", Label: "Collected by", Start: "pails", Range: choice("pails", "pails", "tubing", "tubing", "pump", "a pump")},
	{Key: "pail", Label: "A pail holds", Start: "2 US gal, 2 taps", Range: volumes(0.1*units.USGallon, 100*units.USGallon)},
	{Key: "tank", Label: "All tanks hold", Help: "its name, what it holds, what an inch of the stick is; more tanks are lines of the file", Start: "big, 120 US gal, 2.5 US gal an inch", Range: volumes(units.USGallon, 1e6*units.USGallon)},
	{Key: "sap waits at", Label: "Heat of the waiting sap", Start: "42 F", Range: temperatures(units.Celsius(0), units.Celsius(40))},
	{Key: "barrow", Label: "A load of wood", Start: "1/25 cord", Range: words()},
	{Key: "sap hydrometer", Label: "Sap hydrometer marked at", Start: "38 F", Range: graduations()},
	{Key: "syrup hydrometer", Label: "Syrup hydrometer marked at", Start: "60 F", Range: graduations()},
	{Key: "hydrometer off", Label: "Syrup hydrometer reads too much", Help: "as a check found it, high or low", Start: "0.3 Brix low", Range: strengths(-5, 5)},
	{Key: "thermometer off", Label: "Thermometer shows too much", Help: "as a check found it, high or low", Start: "0.4 F deg high", Range: differences(-20*units.FahrenheitDegree, 20*units.FahrenheitDegree)},
	{Key: "target", Label: "Strength to finish at", Start: "66.9 Brix", Range: strengths(60, 74)},
	{Key: "place", Label: "Rules of", Start: "Vermont", Range: places()},
	{Key: "fill at", Label: "Heat of the syrup as it is poured", Start: "187 F", Range: temperatures(units.Celsius(0), packing.PourMost())},
	{Key: "guideline", Label: "Tapping guideline", Start: tapping.DefaultGuideline().ID(), Range: guidelines()},
	{Key: "bit", Label: "Bit", Start: "5/16 in", Range: lengths(3*units.Millimeter, 20*units.Millimeter)},
	{Key: "hole depth", Label: "Depth of a hole", Help: "into the wood, without bark", Start: "1.5 in", Range: lengths(5*units.Millimeter, 4*units.Inch)},
}

func graduations() Range { return temperatures(units.Celsius(1), units.Celsius(40)) }

func places() Range {
	var r []string
	for _, j := range sugar.Jurisdictions() {
		r = append(r, j.String(), j.String())
	}
	return choice(r...)
}

func guidelines() Range {
	var r []string
	for _, g := range tapping.Guidelines() {
		r = append(r, g.ID(), g.ID())
	}
	return choice(r...)
}

// setting makes a field that takes a line of the settings where nothing is typed.
// A name that is not in the table is a line without a range; a test finds it.
func setting(name, key, start string) Input {
	in := Input{Label: name, Range: words()}
	if i := slices.IndexFunc(settings, func(s Input) bool { return s.Key == name }); i >= 0 {
		in = settings[i]
	}
	in.Key, in.Setting, in.Start, in.More = key, name, start, true
	return in
}
