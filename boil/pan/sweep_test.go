package pan_test

import (
	"testing"
	"time"

	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/internal/proving/sweep"
	"example.org/sapreckoner/units"
)

func swept(t testing.TB) sweep.Package {
	const p = units.Atmosphere
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
	return sweep.Package{
		Contract: true,
		Funcs: []any{
			pan.Compare, pan.Feeds, pan.Halving, pan.PlugFlow, pan.Spoiling, pan.Transit,
		},
		Values: []any{
			p, 0.98 * p, 66 * units.DegreeBrix, 2 * units.DegreeBrix, units.Celsius(60), units.Celsius(40), units.Celsius(10),
			units.Inch, 5 * units.USGallon, 10 * units.Kilogram, units.Percents(50), units.Percents(20), units.Flux(1e-5), units.MassRate(0.002), time.Hour, 2, []byte("a"),
			rig, rig.Compartments[0], rig.Draw, gathered, day, held, pan.FloatFeed, pan.EventLit, pan.GrowthFast,
			pan.Backlog{Storage: 200 * units.USGallon, Heat: 50 * units.Kilowatt, Hours: 4 * time.Hour, Keep: 72 * time.Hour, At: p, Syrup: 66},
			pan.Gathering{Volume: 50 * units.USGallon, Brix: 2, Temperature: units.Celsius(2)},
			pan.Standing{Gathering: pan.Gathering{Volume: 30 * units.USGallon, Brix: 2, Temperature: units.Celsius(3)}, Age: 20 * time.Hour},
			[]pan.Standing{{Gathering: pan.Gathering{Volume: 30 * units.USGallon, Brix: 2, Temperature: units.Celsius(3)}, Age: 20 * time.Hour}},
			[]pan.Gathering{{Volume: 50 * units.USGallon, Brix: 2, Temperature: units.Celsius(2)}},
			pan.Plan{Peak: units.Liter}, pan.Evening{Boiled: units.Liter}, pan.Steady{Feed: 0.01, Brix: []units.Brix{10, 66}},
			pan.Comparison{}, pan.Drawn{}, pan.Liquid{Sugar: 1, Water: 2, Temperature: units.Celsius(50)},
			pan.Night{Air: units.Celsius(-5), Halving: 2 * time.Hour, Length: 10 * time.Hour}, pan.Morning{}, pan.Ice{Point: units.Celsius(-1), Forms: true},
			&pan.Chased{}, &pan.Outcome{}, pan.Moment{}, pan.Stopped{}, pan.Fit{},
			20 * time.Hour, pan.Level{Depth: units.Inch}, []pan.Level{{Depth: units.Inch, Brix: 5, Temperature: units.Celsius(50)}, {Depth: units.Inch, Brix: 25, Temperature: units.Celsius(60)}},
			pan.Budget{Done: 5 * time.Hour, Heat: 100 * units.Megajoule},
		},
		Except: map[string]string{
			"Rig.Pail: NaN":           "a float feed pours no pails",
			"Rig.HeatFor: NaN":        "the heat is what it finds",
			"Drawn.VolumeAt: name":    "it is that of its liquid",
			"Liquid.Temperature: NaN": "the volume is asked for at another",
		},
		Few: map[string]int{"Rig.Trace": 0, "Rig.Run": 300, "Rig.Chase": 300, "Backlog.Fewest": 100, "Rig.Fits": 20, "Rig.LightBy": 50, "Rig.FeedStopped": 300, "Compare": 100, "Rig.HeatFor": 300},
	}
}

func TestSweep(t *testing.T) { sweep.Run(t, swept(t)) }

func TestEdges(t *testing.T) { sweep.Edges(t, swept(t)) }

func FuzzJSON(f *testing.F) { sweep.Fuzz(f, swept(f)) }
