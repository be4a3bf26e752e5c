package boil_test

import (
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/sweep"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestSweep(t *testing.T) {
	const p = units.Atmosphere
	sap, err := sugar.NewLot(100*units.USGallon, 2, units.Celsius(4))
	if err != nil {
		t.Fatal(err)
	}
	demand, err := boil.Heat(sap, 66, p)
	if err != nil {
		t.Fatal(err)
	}
	rig := boil.Rig{
		Compartments: []boil.Compartment{
			{Area: 6 * units.SquareFoot, Depth: 2 * units.Inch, SafeDepth: units.Inch, Fire: 60},
			{Area: 3 * units.SquareFoot, Depth: 1.5 * units.Inch, SafeDepth: units.Inch, Fire: 40},
		},
		Heat: 40 * units.Kilowatt, Feed: boil.FloatFeed,
		Draw: boil.DrawOff{At: 66.5, Until: 65.5, Rate: 6 * units.LiterPerMinute},
	}
	held, err := rig.Fill(2, units.Celsius(20), p)
	if err != nil {
		t.Fatal(err)
	}
	gathered := boil.Sap{Volume: 40 * units.USGallon, Brix: 2, Temperature: units.Celsius(4)}
	day := boil.Day{Start: held, Sap: []boil.Sap{gathered}, Out: 3 * time.Hour, Pressure: p}
	sweep.Run(t, sweep.Package{
		Funcs: []any{
			boil.AltimeterSetting, boil.BrixFromRise, boil.BrixFromRiseOf, boil.Compare, boil.Down, boil.DownToVolume, boil.Halving, boil.Heat,
			boil.LatentHeat, boil.LevelRate, boil.PanRate, boil.PlugFlow, boil.PressureAt, boil.PressureAtDepth, boil.PressureFromWater, boil.Rise,
			boil.RiseOf, boil.RiseDoubt, boil.Spoiling, boil.StationPressure, boil.SyrupPoint, boil.SyrupPointOf, boil.Transit, boil.Water,
			boil.WeatherAt,
		},
		Values: []any{
			p, 0.98 * p, 66 * units.DegreeBrix, 2 * units.DegreeBrix, units.TempDiff(4), units.Celsius(60), units.Celsius(40), units.Celsius(10),
			300 * units.Meter, units.Inch, units.Density(1200), 5 * units.USGallon, 10 * units.Kilogram, units.Percents(50), units.Percents(20),
			12 * units.SquareFoot, 50 * units.Kilowatt, units.Flux(1e-5), units.MassRate(0.02), 100 * units.Megajoule, time.Hour, sap, demand, rig,
			gathered, day, held, boil.UsualWeather, boil.Weather{}, boil.FlatPan, boil.FloatFeed, boil.Lit, boil.GrowthFast,
			boil.LevelReading{At: time.Hour, Level: 2 * units.Inch, Added: units.USGallon},
			boil.Backlog{Storage: 200 * units.USGallon, Heat: 50 * units.Kilowatt, Hours: 4 * time.Hour, Keep: 72 * time.Hour, At: p, Syrup: 66},
			boil.Gathering{Volume: 50 * units.USGallon, Brix: 2, Temperature: units.Celsius(2)}, units.Span[units.MassRate]{Low: 1, Middle: 2, High: 3},
			boil.Comparison{}, boil.Drawn{}, boil.Liquid{Sugar: 1, Water: 2, Temperature: units.Celsius(50)},
			boil.Night{Air: units.Celsius(-5), Halving: 2 * time.Hour, Length: 10 * time.Hour}, &boil.Chased{}, &boil.Outcome{}, boil.Moment{},
			boil.Probe{Pressure: p, Over: 2 * units.Inch, Sugar: sugar.Solute{Inverted: 2}},
			boil.Standing{Gathering: boil.Gathering{Volume: 30 * units.USGallon, Brix: 2, Temperature: units.Celsius(3)}, Age: 20 * time.Hour},
			sugar.Solute{Inverted: 3},
		},
		Except: map[string]string{
			"HeatDemand.From: NaN":    "it is told, not reckoned with",
			"HeatDemand.To: NaN":      "the same, save for the density of the syrup",
			"Rig.Pail: NaN":           "a float feed pours no pails",
			"Rig.HeatFor: NaN":        "the heat is what it finds",
			"LevelRate: finite":       "two readings do not scatter",
			"Drawn.VolumeAt: name":    "it is that of its liquid",
			"Liquid.Temperature: NaN": "the volume is asked for at another",
		},
		Few: map[string]int{"Rig.Trace": 0, "Rig.Run": 300, "Rig.Chase": 300, "Compare": 100, "Rig.HeatFor": 300},
	})
}
