package boil_test

import (
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/proving/sweep"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func swept(t testing.TB) sweep.Package {
	const p = units.Atmosphere
	sap, err := sugar.NewLot(100*units.USGallon, 2, units.Celsius(4))
	if err != nil {
		t.Fatal(err)
	}
	demand, err := boil.Heat(sap, 66, p)
	if err != nil {
		t.Fatal(err)
	}
	return sweep.Package{
		Contract: true,
		Funcs: []any{
			boil.AltimeterSetting, boil.BrixFromRise, boil.BrixFromRiseOf, boil.Down, boil.DownToVolume, boil.Heat, boil.LatentHeat, boil.LevelRate,
			boil.PanKinds, boil.PanRate, boil.PressureAt, boil.PressureAtDepth, boil.PressureFromWater, boil.Rise, boil.RiseOf, boil.RiseDoubt, boil.StationPressure,
			boil.Suspects, boil.SyrupPoint, boil.SyrupPointOf, boil.Water, boil.WeatherAt,
		},
		Values: []any{
			p, 0.98 * p, 66 * units.DegreeBrix, 2 * units.DegreeBrix, units.TempDiff(4), units.Celsius(60), units.Celsius(40), units.Celsius(10),
			300 * units.Meter, units.Inch, units.Density(1200), 5 * units.USGallon, 10 * units.Kilogram, units.Percents(50), units.Percents(20),
			12 * units.SquareFoot, 50 * units.Kilowatt, units.Flux(1e-5), units.MassRate(0.02), 100 * units.Megajoule, time.Hour, sap, demand,
			boil.UsualWeather, boil.Weather{}, boil.FlatPan, boil.LevelReading{At: time.Hour, Level: 2 * units.Inch, Added: units.USGallon},
			units.Span[units.MassRate]{Low: 1, Middle: 2, High: 3}, boil.Probe{Pressure: p, Over: 2 * units.Inch, Sugar: sugar.Solute{Inverted: 2}},
			sugar.Solute{Inverted: 3}, units.Celsius(98), units.Celsius(0.5), boil.SuspectScale, boil.ThermometerCheck{Suspect: boil.SuspectScale}, units.Celsius(105), boil.MeasuredRate{Warm: 0.01, WarmBy: 0.0003, ColdStart: 3, Readings: 4},
			[]boil.LevelReading{{At: time.Hour, Level: 2 * units.Inch}, {At: 2 * time.Hour, Level: units.Inch, Added: units.USGallon}},
		},
		Except: map[string]string{
			"HeatDemand.From: NaN": "it is told, not reckoned with",
			"HeatDemand.To: NaN":   "the same, save for the density of the syrup",
			"Probe.CheckedIn: NaN": "it is held against plain water",
			"LevelRate: finite":    "two readings do not scatter",
		},
	}
}

func TestSweep(t *testing.T) { sweep.Run(t, swept(t)) }

func TestEdges(t *testing.T) { sweep.Edges(t, swept(t)) }

func FuzzJSON(f *testing.F) { sweep.Fuzz(f, swept(f)) }
