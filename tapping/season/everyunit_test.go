package season_test

import (
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// The documented limits of trunks, holes, places, pails and weather, each in
// every unit that a user can write.
func TestLimitsInEveryUnit(t *testing.T) {
	num := limittest.Number
	length := func(name, low, high string, call func(units.Length) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseLength, call)
	}
	volume := func(name, low, high string, call func(units.Volume) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseVolume, call)
	}
	const inch, foot = units.Inch, units.Foot
	hole, err := tapping.NewHole(5./16*inch, 1.5*inch, 0)
	if err != nil {
		t.Fatal(err)
	}
	reach, err := tapping.ReachByHand(2*foot, 5*foot)
	if err != nil {
		t.Fatal(err)
	}
	band, err := tapping.NewTappingBand(10*inch, 30*inch, hole, 1)
	if err != nil {
		t.Fatal(err)
	}

	length("NewHole, bit", "3 mm", "20 mm", func(l units.Length) error { return num(tapping.NewHole(l, inch, 0)) })
	length("NewHole, depth", "5 mm", "4 in", func(l units.Length) error { return num(tapping.NewHole(inch/4, l, 0)) })
	length("NewHole, bark", "", "4 in", func(l units.Length) error { return num(tapping.NewHole(inch/4, inch, l)) })
	length("NewTrunk", "", "5 m", func(l units.Length) error { return num(tapping.NewTrunk(l, tapping.SugarMaple, tapping.Healthy)) })
	length("GirthFromDiameter", "", "5 m", func(l units.Length) error { return num(tapping.GirthFromDiameter(l)) })
	length("BasalAreaGrowth", "", "1 in", func(l units.Length) error { return num(tapping.BasalAreaGrowth(10*inch, l)) })
	length("CountStand", "1 cm", "1 m", func(l units.Length) error {
		trunk, _ := tapping.NewTrunk(12*inch, tapping.SugarMaple, tapping.Healthy)
		return num(tapping.CountStand([]tapping.Tree{{Stems: []tapping.Trunk{trunk}}}, tapping.DefaultGuideline(), l))
	})
	length("NewTappingBand, diameter", "3 in", "5 m", func(l units.Length) error {
		b, err := tapping.NewTappingBand(l, 30*inch, hole, 1)
		if err != nil {
			return err
		}
		return num(b.Steady(inch / 20))
	})
	length("NewTappingBand, height", "1 in", "20 ft", func(l units.Length) error {
		b, err := tapping.NewTappingBand(10*inch, l, hole, 1)
		if err != nil {
			return err
		}
		return num(b.Steady(inch / 20))
	})
	length("Conductive", "", "1 in", func(l units.Length) error { return num(band.Conductive(l, 10, 0)) })
	length("YearsToRecover", "0.001 in", "1 in", func(l units.Length) error { return num(band.YearsToRecover(l, 10, 90*units.Percent)) })
	length("ReachByHand, low", "", "19.9166666666666666667 ft", func(l units.Length) error { return num(tapping.ReachByHand(l, 20*foot)) })
	length("ReachByHand, high", "3 ft", "20 ft", func(l units.Length) error { return num(tapping.ReachByHand(35*inch, l)) })
	length("ReachByDropline", "1 in", "20 ft", func(l units.Length) error { return num(tapping.ReachByDropline(tapping.Position{}, l)) })
	length("ReachByDropline, fitting", "", "17 ft", func(l units.Length) error {
		return num(tapping.ReachByDropline(tapping.Position{Height: l}, 3*foot))
	})
	length("PositionAlong, along", "", "60 in", func(l units.Length) error { return num(tapping.PositionAlong(l, 60*inch, foot)) })
	length("PositionAlong, girth", "1 in", "", func(l units.Length) error { return num(tapping.PositionAlong(0, l, foot)) })
	length("PositionAlong, height", "", "20 ft", func(l units.Length) error { return num(tapping.PositionAlong(0, 60*inch, l)) })

	plan := func(p tapping.Planner, err error) error {
		if err != nil {
			return err
		}
		_, err = p.Next(nil, 2026, 1)
		return err
	}
	keep := tapping.DefaultDistances()
	length("NewPlanner, diameter", "3 in", "5 m", func(l units.Length) error {
		return plan(tapping.NewPlanner(l, 2026, inch/20, reach, hole, keep))
	})
	length("NewPlanner, growth", "", "1 in", func(l units.Length) error {
		return plan(tapping.NewPlanner(10*inch, 2026, l, reach, hole, keep))
	})
	length("NewPlanner, Side", "0.1 in", "2 in", func(l units.Length) error {
		keep := keep
		keep.Side, keep.Open = l, 2*inch
		_, err := tapping.NewPlanner(10*inch, 2026, inch/20, reach, hole, keep)
		return err
	})
	length("NewPlanner, Step", "0.1 in", "20 ft", func(l units.Length) error {
		keep := keep
		keep.Step = l
		_, err := tapping.NewPlanner(10*inch, 2026, inch/20, reach, hole, keep)
		return err
	})
	limittest.InEveryUnit(t, "angle", "-360 deg", "360 deg", units.ParseAngle, func(a units.Angle) error {
		return num(tapping.ReachByDropline(tapping.Position{At: a}, foot))
	})
	limittest.InEveryUnit(t, "TapsPer", "1 m2", "1e6 ha", units.ParseArea, func(a units.Area) error {
		return num(tapping.StandCount{}.TapsPer(units.Acre, a))
	})
	limittest.InEveryUnit(t, "WithVacuum", "", "28 inHg", units.ParsePressure, func(p units.Pressure) error { return num(season.WithVacuum(p)) })
	limittest.InEveryUnit(t, "VacuumGain", "", "28 inHg", units.ParsePressure, func(p units.Pressure) error { return num(season.VacuumGain(p)) })
	length("NaturalVacuum", "", "1000 ft", func(l units.Length) error { return num(season.NaturalVacuum(l)) })

	quart := season.Figure[units.Volume]{Span: units.Span[units.Volume]{Low: units.USQuart, High: units.USQuart}}
	pails := func(p season.Pail, sap season.Figure[units.Volume]) error {
		return num(season.PailRound([]season.Pail{p}, sap, 8*time.Hour, 8*time.Hour))
	}
	volume("Pail.Size", "0.001 US gal", "100 US gal", func(v units.Volume) error { return pails(season.Pail{Size: v, Taps: 1}, quart) })
	volume("Pail.Holds", "", "4 US gal", func(v units.Volume) error {
		return pails(season.Pail{Size: 4 * units.USGallon, Holds: v, Taps: 1}, quart)
	})
	volume("sap, high", "1 US qt", "100 US gal", func(v units.Volume) error {
		return pails(season.Pail{Size: 4 * units.USGallon, Taps: 1}, season.Figure[units.Volume]{Span: units.Span[units.Volume]{Low: units.USQuart, High: v}})
	})

	temp := func(name, low, high string, call func(units.Temperature) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseTemperature, call)
	}
	temp("NewCriterion", "-95 C", "60 C", func(at units.Temperature) error { return num(season.NewCriterion("own", at, units.Celsius(5))) })
	temp("NewDegreeDayRule, base", "-95 C", "60 C", func(at units.Temperature) error {
		return num(season.NewDegreeDayRule(season.DailyMean, at, units.Celsius(math.Inf(1))))
	})
	temp("NewDegreeDayRule, upper", "50 F", "", func(at units.Temperature) error {
		return num(season.NewDegreeDayRule(season.DailyMean, units.Celsius(10), at))
	})
	date := time.Date(2026, 3, 1, 0, 0, 0, 0, time.UTC)
	temp("Day.Min", "-95 C", "10 C", func(at units.Temperature) error {
		return num(season.NewWeather([]season.Day{{Date: date, Min: at, Max: units.Celsius(10)}}))
	})
	temp("Day.Max", "-5 C", "60 C", func(at units.Temperature) error {
		return num(season.NewWeather([]season.Day{{Date: date, Min: units.Celsius(-5), Max: at}}))
	})
	weather, err := season.NewWeather([]season.Day{{Date: date, Min: units.Celsius(-5), Max: units.Celsius(5)}})
	if err != nil {
		t.Fatal(err)
	}
	limittest.InEveryUnit(t, "Weather.Shift", "-10 C deg", "10 C deg", units.ParseTempDiff, func(d units.TempDiff) error {
		_, err := weather.Shift(d)
		return err
	})
	limittest.InEveryUnit(t, "GrowthNeeded", "", "100 %", units.ParseShare, func(s units.Share) error {
		_, err := band.YearsToRecover(inch/20, 0, s)
		return err
	})
}

// A limit that is passed by less than a hair is the limit: what it answers must
// not jump. Expected by hand: a full pail without sap lasts; wood that nobody
// tapped is whole now; an answer is a target that can be had.
func TestHairBeyondTheLimit(t *testing.T) {
	const inch = units.Inch
	const more = 1 + 5e-12
	full := season.Pail{Size: 4 * units.USGallon, Holds: 4 * units.USGallon * more, Taps: 1}
	none := season.Figure[units.Volume]{}
	out, err := season.PailRound([]season.Pail{full}, none, time.Hour, 2*time.Hour)
	if err != nil {
		t.Fatal(err)
	}
	if o := out[0]; o.Overflow != season.Lasts || o.FullAfter != 2*time.Hour || o.Spilled.High > 0 {
		t.Errorf("a full pail and no sap: %+v", o)
	}
	hole, _ := tapping.NewHole(5./16*inch, 1.5*inch, 0)
	band, err := tapping.NewTappingBand(10*inch, 30*inch, hole, 1)
	if err != nil {
		t.Fatal(err)
	}
	if n, err := band.YearsToRecover(inch/20, 0, units.Whole*more); n != 0 || err != nil {
		t.Errorf("wood that nobody tapped is whole after %d years, %v", n, err)
	}
	for k := range 20 {
		share, err := band.Conductive(inch/20, 10, k)
		if err != nil {
			t.Fatal(err)
		}
		if n, err := band.YearsToRecover(inch/20, 10, share*more); err != nil || n > k {
			t.Errorf("what %d years of rest give takes %d, %v", k, n, err)
		}
	}
}
