package finish_test

import (
	"testing"
	"time"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/proving/sweep"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func swept(t testing.TB) sweep.Package {
	const p = units.Atmosphere
	syrup, err := sugar.NewLot(3*units.USGallon, 66, units.Celsius(60))
	if err != nil {
		t.Fatal(err)
	}
	watch := finish.Watch{Target: 66.9, Water: units.Celsius(99.5), WaterBy: 0.1, ProbeBy: 0.1}
	readings := []finish.WatchReading{{At: time.Minute, Shown: units.Celsius(103)}, {At: 2 * time.Minute, Shown: units.Celsius(103.4)}}
	stop := finish.PastStop{When: time.Unix(1e9, 0).UTC(), Pressure: p, Stop: units.Fahrenheit(219.2), Cup: 66.5}
	return sweep.Package{
		Contract: true,
		Funcs: []any{
			finish.ProductFigures, finish.ProductMoisture, finish.ProductWeight,
			finish.CoalsTime, finish.ConfectionFinishes, finish.DepthCost, finish.Grainings, finish.ErrorCost, finish.FixedRise, finish.LearnOffset, finish.SyrupFinishes,
		},
		Values: []any{
			p, 0.98 * p, 66 * units.DegreeBrix, 80 * units.DegreeBrix, 2 * units.DegreeBrix, units.TempDiff(0.1), units.TempDiff(4),
			units.Inch, 10 * units.Kilogram, 8 * units.Kilogram, 18 * units.Kilogram, units.Percents(20), 100 * units.Kilojoule, time.Minute, time.Hour, syrup, 2, []byte("a"),
			finish.SyrupFinishes()[0], finish.ProductFigures()[0], finish.Grainings()[0], stop, []finish.PastStop{stop, stop}, finish.Spike, finish.OddReading{What: finish.Dip},
			finish.Batch{Mass: 20 * units.Kilogram, Brix: 60, Evaporation: 0.002},
			finish.HydrometerStop{Target: 66.9, Instrument: density.Hydrometer{GraduatedAt: units.Celsius(20)}, Cup: units.Celsius(90), CupBy: 1, ReadingBy: 0.2, ScaleBy: 0.2},
			finish.ThermometerStop{Target: 66.9, Pressure: p, ProbeBy: 0.2, BarometerBy: 100, DepthBy: units.Inch, InvertedBy: 1},
			finish.HydrometerParts{Total: 0.3}, finish.ThermometerParts{Total: 0.5},
			finish.Offset{Mean: 0.1, Spread: 0.1, Stops: 3},
			finish.PotReading{Gross: 10 * units.Kilogram, Tare: units.Kilogram, Brix: 60, ScaleBy: 0.01, BrixBy: 0.3},
			finish.PotTarget{Gross: 9 * units.Kilogram, Off: units.Kilogram, GrossBy: 0.1, BrixBy: 0.3},
			watch, readings, readings[0], readings[1], finish.Outlook{Now: 60, NowBy: 0.4, Used: 2, Odd: []finish.OddReading{{Index: 1, What: finish.Spike}}},
			sugar.Solute{Inverted: 3},
		},
		Except: map[string]string{
			"LearnOffset: finite": "the same of a single stop",
			"Offset.Stop: finite": "the same",
			"Offset.Late: NaN":    "it is not taken unless the offset drifts",
			"Finish.Printed: NaN": "it is told, not reckoned with",
			"Watch.Outlook: half": "what is odd about the readings is told all the same",
		},
	}
}

func TestSweep(t *testing.T) { sweep.Run(t, swept(t)) }

func TestEdges(t *testing.T) { sweep.Edges(t, swept(t)) }

func FuzzJSON(f *testing.F) { sweep.Fuzz(f, swept(f)) }
