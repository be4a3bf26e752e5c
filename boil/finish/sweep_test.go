package finish_test

import (
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/proving/sweep"
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
	rig := pan.Rig{
		Compartments: []pan.Compartment{
			{Area: 6 * units.SquareFoot, Depth: 2 * units.Inch, SafeDepth: units.Inch, Fire: 60},
			{Area: 3 * units.SquareFoot, Depth: 1.5 * units.Inch, SafeDepth: units.Inch, Fire: 40},
		},
		Heat: 40 * units.Kilowatt, Feed: pan.FloatFeed,
		Draw: pan.DrawOff{At: 66.5, Until: 65.5, Rate: 6 * units.LiterPerMinute},
	}
	held, err := rig.Fill(2, units.Celsius(20), p)
	if err != nil {
		t.Fatal(err)
	}
	gathered := pan.Sap{Volume: 40 * units.USGallon, Brix: 2, Temperature: units.Celsius(4)}
	day := pan.Day{Start: held, Sap: []pan.Sap{gathered}, Out: 3 * time.Hour, Pressure: p}
	wood := fuel.FirewoodKentucky()[0]
	sweep.Run(t, sweep.Package{
		Funcs: []any{
			finish.ProductFigures, finish.ProductMoisture, finish.ProductWeight,
			finish.ConfectionFinishes, finish.DepthCost, finish.ErrorCost, finish.LearnOffset, finish.SyrupFinishes,
		},
		Values: []any{
			p, 0.98 * p, 66 * units.DegreeBrix, 2 * units.DegreeBrix, units.TempDiff(4), units.Celsius(60), units.Celsius(40), units.Celsius(10),
			300 * units.Meter, units.Inch, units.Density(1200), 5 * units.USGallon, 10 * units.Kilogram, units.Percents(50), units.Percents(20),
			12 * units.SquareFoot, 50 * units.Kilowatt, units.Flux(1e-5), units.MassRate(0.02), 100 * units.Megajoule, time.Hour, sap, demand, rig,
			gathered, day, held, wood, wood.Cord(), fuel.Propane(), fuel.Pellets(), fuel.Electricity(), fuel.Stacked, boil.UsualWeather, boil.Weather{},
			boil.FlatPan, pan.FloatFeed, fuel.Gross, pan.EventLit, pan.GrowthFast, finish.Spike, fuel.WetMoisture(20), fuel.DryMoisture(25),
			fuel.BuiltEvaporator(), fuel.Effects()[0], finish.SyrupFinishes()[0], fuel.Heat{Energy: units.Gigajoule, Basis: fuel.Gross},
			fuel.Firing{Burned: fuel.Heat{Energy: units.Gigajoule, Basis: fuel.Gross}, Into: 400 * units.Megajoule},
			finish.PastStop{When: time.Unix(1e9, 0), Pressure: p, Stop: units.Fahrenheit(219.2), Cup: 66.5},
			boil.LevelReading{At: time.Hour, Level: 2 * units.Inch, Added: units.USGallon},
			pan.Backlog{Storage: 200 * units.USGallon, Heat: 50 * units.Kilowatt, Hours: 4 * time.Hour, Keep: 72 * time.Hour, At: p, Syrup: 66},
			pan.Gathering{Volume: 50 * units.USGallon, Brix: 2, Temperature: units.Celsius(2)}, units.Span[units.MassRate]{Low: 1, Middle: 2, High: 3},
			finish.Batch{Mass: 20 * units.Kilogram, Brix: 60, Evaporation: 0.002}, pan.Comparison{}, pan.Drawn{},
			pan.Liquid{Sugar: 1, Water: 2, Temperature: units.Celsius(50)},
			pan.Night{Air: units.Celsius(-5), Halving: 2 * time.Hour, Length: 10 * time.Hour},
			finish.HydrometerStop{Target: 66.9, Instrument: density.Hydrometer{GraduatedAt: units.Celsius(20)}, Cup: units.Celsius(90), CupBy: 1, ReadingBy: 0.2, ScaleBy: 0.2},
			finish.ThermometerStop{Target: 66.9, Pressure: p, ProbeBy: 0.2, BarometerBy: 100, DepthBy: units.Inch, InvertedBy: 1},
			fuel.Learned{Efficiency: fuel.BuiltEvaporator()}, &fuel.BasisError{}, &pan.Chased{}, &pan.Outcome{}, pan.Moment{},
			finish.Offset{Mean: 0.1, Spread: 0.1, Stops: 3},
			finish.PotReading{Gross: 10 * units.Kilogram, Tare: units.Kilogram, Brix: 60, ScaleBy: 0.01, BrixBy: 0.3},
			boil.Probe{Pressure: p, Over: 2 * units.Inch, Sugar: sugar.Solute{Inverted: 2}},
			pan.Standing{Gathering: pan.Gathering{Volume: 30 * units.USGallon, Brix: 2, Temperature: units.Celsius(3)}, Age: 20 * time.Hour},
			sugar.Solute{Inverted: 3}, finish.Watch{Target: 66.9, Water: units.Celsius(99.5), WaterBy: 0.1, ProbeBy: 0.1},
			finish.WatchReading{At: time.Minute, Shown: units.Celsius(103)}, finish.WatchReading{At: 2 * time.Minute, Shown: units.Celsius(103.4)},
		},
		Except: map[string]string{
			"LearnOffset: finite": "the same of a single stop",
			"Offset.Stop: finite": "the same",
			"Offset.Late: NaN":    "it is not taken unless the offset drifts",
			"Finish.Printed: NaN": "it is told, not reckoned with",
			"Watch.Outlook: half": "what is odd about the readings is told all the same",
		},
	})
}
