package boil_test

import (
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// The documented limits of the fields of rigs, days, backlogs, pots, batches and
// flasks, each in every unit that a user can write.
func TestFieldsInEveryUnit(t *testing.T) {
	num := limittest.Number
	length := func(name, low, high string, call func(units.Length) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseLength, call)
	}
	volume := func(name, low, high string, call func(units.Volume) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseVolume, call)
	}
	mass := func(name, low, high string, call func(units.Mass) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseMass, call)
	}
	temp := func(name, low, high string, call func(units.Temperature) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseTemperature, call)
	}
	diff := func(name, low, high string, call func(units.TempDiff) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseTempDiff, call)
	}
	brix := func(name, low, high string, call func(units.Brix) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseBrix, call)
	}
	share := func(name, low, high string, call func(units.Share) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseShare, call)
	}
	pressure := func(name, low, high string, call func(units.Pressure) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParsePressure, call)
	}
	power := func(name, low, high string, call func(units.Power) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParsePower, call)
	}

	day := func() pan.Day {
		return pan.Day{Pressure: units.Atmosphere, Out: time.Hour, Sap: []pan.Sap{{Volume: 40 * units.USGallon, Brix: 2, Temperature: units.Celsius(4)}}}
	}
	run := func(rig pan.Rig, d pan.Day) error {
		_, err := rig.Run(d)
		return err
	}
	// A compartment that the fire does not boil away in ten seconds.
	vessel := func(c pan.Compartment, heat units.Power) error {
		return run(pan.Rig{Compartments: []pan.Compartment{c}, Heat: heat}, day())
	}
	foot, inch := units.SquareFoot, units.Inch
	power("Rig.Heat", "1 W", "1e8 W", func(w units.Power) error {
		return vessel(pan.Compartment{Area: 100 * units.SquareMeter, Depth: units.Meter, SafeDepth: inch}, w)
	})
	limittest.InEveryUnit(t, "Compartment.Area", "1e-4 m2", "1e4 m2", units.ParseArea, func(a units.Area) error {
		return vessel(pan.Compartment{Area: a, Depth: 2 * inch, SafeDepth: inch}, 100*units.Watt)
	})
	length("Compartment.Depth", "1 mm", "10 m", func(l units.Length) error {
		return vessel(pan.Compartment{Area: 10 * foot, Depth: l, SafeDepth: units.Millimeter / 2}, units.Kilowatt)
	})
	length("Compartment.SafeDepth", "0.1 mm", "1.98 in", func(l units.Length) error {
		return vessel(pan.Compartment{Area: 10 * foot, Depth: 2 * inch, SafeDepth: l}, units.Kilowatt)
	})
	share("Compartment.Fire", "", "100 %", func(s units.Share) error {
		return vessel(pan.Compartment{Area: 10 * foot, Depth: 2 * inch, SafeDepth: inch, Fire: s}, units.Kilowatt)
	})
	temp("Rig.PreheatTo", "0 C", "100 C", func(at units.Temperature) error {
		rig := kettle()
		rig.PreheatTo = at
		return run(rig, day())
	})
	volume("Rig.Pail", "", "24 in3", func(v units.Volume) error { // an inch over 24 in2
		return run(pan.Rig{
			Compartments: []pan.Compartment{{Area: 24 * units.SquareInch, Depth: 2 * inch, SafeDepth: inch}, {Area: foot, Depth: 2 * inch, SafeDepth: inch}},
			Heat:         units.Kilowatt, Feed: pan.PailFeed, Pail: v,
		}, day())
	})
	brix("DrawOff.At", "1 Brix", "74 Brix", func(b units.Brix) error {
		rig := kettle()
		rig.Draw.At = b
		return run(rig, day())
	})
	brix("DrawOff.Until", "", "65.95 Brix", func(b units.Brix) error {
		rig := kettle()
		rig.Draw.Until = b
		return run(rig, day())
	})
	pressure("Day.Pressure", "50 kPa", "110 kPa", func(p units.Pressure) error {
		d := day()
		d.Pressure = p
		return run(kettle(), d)
	})
	volume("Sap.Volume", "", "1e6 m3", func(v units.Volume) error {
		d := day()
		d.Sap[0].Volume = v
		return run(kettle(), d)
	})
	temp("Sap.Temperature", "0 C", "100 C", func(at units.Temperature) error {
		d := day()
		d.Sap[0].Temperature = at
		return run(kettle(), d)
	})
	brix("Sap.Brix", "", "75 Brix", func(b units.Brix) error {
		d := day()
		d.Sap[0].Brix = b
		return run(kettle(), d)
	})

	plan := func(b pan.Backlog, g pan.Gathering) error {
		_, err := b.Plan(g)
		return err
	}
	backlog := pan.Backlog{Storage: 300 * units.USGallon, Hours: 8 * time.Hour, Heat: 40 * units.Kilowatt, Syrup: 66.9, At: units.Atmosphere}
	gathering := pan.Gathering{Volume: 100 * units.USGallon, Brix: 2, Temperature: units.Celsius(4)}
	volume("Backlog.Storage", "", "1e6 m3", func(v units.Volume) error { b := backlog; b.Storage = v; return plan(b, gathering) })
	power("Backlog.Heat", "1 W", "1e8 W", func(w units.Power) error { b := backlog; b.Heat = w; return plan(b, gathering) })
	brix("Backlog.Syrup", "", "74 Brix", func(s units.Brix) error { b := backlog; b.Syrup = s; return plan(b, gathering) })
	volume("Gathering.Volume", "", "1e6 m3", func(v units.Volume) error { g := gathering; g.Volume = v; return plan(backlog, g) })
	temp("Gathering.Temperature", "0 C", "100 C", func(at units.Temperature) error { g := gathering; g.Temperature = at; return plan(backlog, g) })
	brix("Gathering.Brix", "", "66.85 Brix", func(s units.Brix) error { g := gathering; g.Brix = s; return plan(backlog, g) })

	pot := finish.PotReading{Gross: 25 * units.Pound, Tare: 5 * units.Pound, Brix: 33.45}
	mass("PotReading.Gross", "", "1e5 kg", func(m units.Mass) error { p := pot; p.Gross = m; return num(p.Target(66.9)) })
	mass("PotReading.ScaleBy", "", "1e5 kg", func(m units.Mass) error { p := pot; p.ScaleBy = m; return num(p.Target(66.9)) })
	brix("PotReading.Brix", "5 Brix", "80 Brix", func(b units.Brix) error { p := pot; p.Brix = b; return num(p.Target(100)) })
	brix("PotReading.BrixBy", "", "10 Brix", func(b units.Brix) error { p := pot; p.BrixBy = b; return num(p.Target(66.9)) })
	brix("PotReading.Target", "33.45 Brix", "100 Brix", func(b units.Brix) error { return num(pot.Target(b)) })
	mass("PotReading.At", "11.69 lb", "25 lb", func(m units.Mass) error { return num(pot.At(m)) })

	watch := func(w finish.Watch, shown ...float64) error {
		var rs []finish.WatchReading
		for i, f := range shown {
			rs = append(rs, finish.WatchReading{At: time.Duration(i) * time.Minute, Shown: units.Fahrenheit(f)})
		}
		return num(w.Outlook(rs...))
	}
	own := finish.Watch{Target: 66.9, Water: units.Celsius(100), ProbeBy: units.FahrenheitDegree / 3}
	diff("Watch.ProbeBy", "0.001 C deg", "5 C deg", func(d units.TempDiff) error { w := own; w.ProbeBy = d; return watch(w, 217, 217.5, 218.1) })
	diff("Watch.WaterBy", "", "5 C deg", func(d units.TempDiff) error { w := own; w.WaterBy = d; return watch(w, 230, 230.5, 231.1) })
	brix("Watch.Target", "30 Brix", "92 Brix", func(b units.Brix) error { w := own; w.Target = b; return watch(w, 217, 217.5, 218.1) })

	batch := finish.Batch{Mass: 10 * units.Kilogram, Brix: 60, Evaporation: 10 * units.KilogramPerHour}
	mass("Batch.Mass", "1 g", "1e6 kg", func(m units.Mass) error { b := batch; b.Mass = m; return num(b.Time(66.9)) })
	brix("Batch.Brix", "0.1 Brix", "92 Brix", func(s units.Brix) error { b := batch; b.Brix = s; return num(b.Time(92)) })
	limittest.InEveryUnit(t, "Batch.Evaporation", "1e-9 kg/s", "1000 kg/s", units.ParseMassRate, func(r units.MassRate) error {
		b := batch
		b.Evaporation = r
		return num(b.PerMinute())
	})
	brix("Batch.Time", "60 Brix", "92 Brix", func(s units.Brix) error { return num(batch.Time(s)) })
	limittest.InEveryUnit(t, "CoastOn", "", "1e12 J", units.ParseEnergy, func(e units.Energy) error {
		b := batch
		b.Mass, b.Brix = 1e6*units.Kilogram, 1
		return num(b.CoastOn(e, units.Atmosphere))
	})
	pressure("CoastOn, pressure", "20 kPa", "120 kPa", func(p units.Pressure) error { return num(batch.CoastOn(units.Kilojoule, p)) })

	contents := func(l pan.Contents) error {
		return num(l.Overnight(pan.Night{Air: units.Celsius(0), Halving: time.Hour, Length: time.Hour}))
	}
	mass("Liquid", "", "1e8 kg", func(m units.Mass) error {
		return contents(pan.Contents{{Water: m, Temperature: units.Celsius(50)}})
	})
	temp("Liquid.Temperature", "0 C", "110 C", func(at units.Temperature) error {
		return contents(pan.Contents{{Sugar: 1, Water: 9, Temperature: at}})
	})
	level := func(area units.Area, l units.Length, v units.Volume) error {
		_, err := boil.LevelRate(area, 0, boil.LevelReading{Level: units.Meter}, boil.LevelReading{At: time.Hour, Level: l, Added: v})
		return err
	}
	length("LevelReading.Level", "", "2 m", func(l units.Length) error { return level(foot, l, 1000*units.CubicMeter) })
	volume("LevelReading.Added", "", "1000 m3", func(v units.Volume) error { return level(foot, units.Meter, v) })
	length("PressureAtDepth", "", "2 m", func(l units.Length) error {
		return num(boil.PressureAtDepth(units.Atmosphere, l, 1000*units.KilogramPerCubicMeter))
	})
	limittest.InEveryUnit(t, "PressureAtDepth, density", "900 kg/m3", "1500 kg/m3", units.ParseDensity, func(d units.Density) error {
		return num(boil.PressureAtDepth(units.Atmosphere, inch, d))
	})
	length("DepthCost", "-0.5 m", "0.5 m", func(l units.Length) error { return num(finish.DepthCost(66.9, units.Atmosphere, l)) })
	diff("ErrorCost", "-5 C deg", "5 C deg", func(d units.TempDiff) error { return num(finish.ErrorCost(80, units.Atmosphere, d)) })
	brix("ErrorCost, strength", "50 Brix", "80 Brix", func(b units.Brix) error { return num(finish.ErrorCost(b, units.Atmosphere, 0)) })
	volume("FullCord", "", "1e6 m3", func(v units.Volume) error { return num(fuel.FullCord(v, fuel.Stacked)) })
	share("PlugFlow", "", "100 %", func(s units.Share) error { return num(pan.PlugFlow(2, 66.9, s)) })
	brix("PlugFlow, syrup", "2 Brix", "92 Brix", func(b units.Brix) error { return num(pan.PlugFlow(2, b, 50*units.Percent)) })
	share("Solute.Inverted", "", "20 %", func(s units.Share) error { return num(boil.RiseOf(sugar.Solute{Inverted: s}, 66.9, units.Atmosphere)) })
	share("Learned efficiency", "1 %", "100 %", func(s units.Share) error {
		demand := boil.HeatDemand{Sugar: 1, Water: 10, Latent: 2e7, From: 2, To: 66}
		return num(fuel.HeatRate(units.Kilowatt, fuel.Gross, demand, fuel.Efficiency{Low: s, High: s, Basis: fuel.Gross}))
	})
	mass("batch on a thermometer", "1 g", "", func(m units.Mass) error { b := batch; b.Mass = m; return num(b.Coast(time.Microsecond)) })

	volume("Flask.Volume", "0.001 mL", "1e6 m3", func(v units.Volume) error {
		return num(density.Flask{Volume: v, CalibratedAt: units.Celsius(20)}.Net(66.9, units.Celsius(20)))
	})
	volume("HotVolume", "", "1e6 m3", func(v units.Volume) error { return num(density.HotVolume(v, 66.9, units.Celsius(85))) })
}
