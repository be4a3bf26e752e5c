package main

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/packing"
)

var label = units.Celsius(20)

// onClock is a time of the day as the page shows it.
func onClock(d time.Duration) string {
	text := fmt.Sprintf("%02d:%02d", int(d.Hours())%24, int(d.Minutes())%60)
	if d >= 24*time.Hour {
		text += " tomorrow"
	}
	return text
}

// heat is what gets into the liquid of a pan that boils off so much water.
func heat(rate units.VolumeRate, sap sugar.Lot, p units.Pressure) units.Power {
	demand := must(boil.Heat(sap, 66.9, p))
	return must(fuel.PowerFor(must(density.Water(label)).MassRate(rate), fuel.Delivered, demand, fuel.Efficiency{})).Middle
}

func TestTonightNumbers(t *testing.T) {
	p := opened(t, 390, 844)
	compare(t, p, "tonight", func(r *rand.Rand, in units.System) (fields, map[string]want) {
		sapText, sap := gallons(r, in, 18, 90)
		readsText, reads := strength(r, 1.5, 3.5)
		coldText, cold := degrees(r, in, 33, 60)
		lit := time.Duration(6*60+r.IntN(8*60)) * time.Minute
		area := units.SquareFoot * units.Area(6+r.IntN(7))
		rate := units.USGallonPerHour * units.VolumeRate(6+r.IntN(8))
		f := fields{"how": "volume", "volume": sapText, "instrument": "hydrometer", "reads": readsText, "cold": coldText, "lit": onClock(lit),
			"pan": fmt.Sprintf("%.0f ft2", area.SquareFeet()), "rate": fmt.Sprintf("%.0f US gal/h", rate.USGallonsPerHour()), "elevation": "1150 ft", "coals": "8 min"}
		doubt := density.Doubt{Division: 0.2, Thermometer: 2 * units.FahrenheitDegree, Calibration: 0.2}
		m := must(density.Hydrometer{GraduatedAt: units.Fahrenheit(38)}.Measure(reads, cold, doubt))
		lot := must(sugar.NewLot(sap, m.Brix, label))
		syrup := must(sugar.NewLotByMass(units.Brix(66.9).Of(lot.Sugar()), 66.9, label))
		w := map[string]want{"sap": {
			"true":  m.Brix.Text(2) + "|" + m.Uncertainty.Text(2),
			"syrup": with(syrup.Volume().TextIn(in, 3), syrup.Volume()*units.Volume(float64(m.Uncertainty)/float64(m.Brix)), in, 2),
			"rule":  (sap / units.Volume(must(yield.RuleOf86(m.Brix)))).TextIn(in, 3), "off": (lot.Mass() - syrup.Mass()).TextIn(in, 3)}, "fire": {}}
		pressure := must(boil.PressureAt(1150 * units.Foot))
		rig := pan.Rig{Heat: heat(rate, must(sugar.NewLot(sap, m.Brix, units.Fahrenheit(38))), pressure), Coals: 8 * time.Minute, Draw: pan.DrawOff{At: 66.9},
			Compartments: []pan.Compartment{{Area: area, Depth: 2 * units.Inch, SafeDepth: units.Inch}}}
		o := must(rig.Run(pan.Day{Pressure: pressure, Out: 72 * time.Hour, Sap: []pan.Sap{{Volume: sap, Brix: m.Brix, Temperature: units.Fahrenheit(38)}}}))
		if o.ToCome > 0 || len(o.Draws) > 0 {
			return f, w
		}
		boils := must(boil.SyrupPoint(o.Held[0].Brix(), pressure))
		// The pot loses 1 US gal of water an hour where nobody says more.
		hold := o.Held[0]
		pot := must(finish.Batch{Mass: hold.Mass(), Brix: hold.Brix(), Evaporation: must(density.Water(label)).MassRate(units.USGallonPerHour)}.Time(66.9))
		w["fire"] = want{"pot": fmt.Sprintf("%.1f h", pot.Hours()), "done": onClock(lit + o.Ended), "wood": onClock(lit + o.LastWood), "off": boils.TextIn(in, 1), "hot": must(o.Held[0].VolumeAt(boils)).TextIn(in, 3)}
		return f, w
	})
}

// Done by a time: what the page says is done by then is, within a quarter of an
// hour, whatever pan and rate.
func TestDoneBy(t *testing.T) {
	p := opened(t, 390, 844)
	p.screen("tonight")
	r := rand.New(rand.NewPCG(11, 12))
	told := 0
	for range 20 {
		typed := fields{"volume": fmt.Sprint(60 + r.IntN(200)), "reads": "2.1", "cold": "40", "lit": "15:00", "by": "22:00",
			"pan": fmt.Sprintf("%d ft2", 6+r.IntN(8)), "rate": fmt.Sprintf("%d US gal/h", 6+r.IntN(9)), "coals": fmt.Sprintf("%d min", r.IntN(12))}
		less, ok := strings.CutSuffix(p.ask("fire", typed).Rows["by"], " US gal")
		if !ok {
			continue
		}
		told++
		typed["volume"] = less
		if got := p.ask("fire", typed); got.Rows["done"] > "22:00" || got.Rows["done"] < "21:45" {
			t.Errorf("%v: done at %s", typed, got.Rows["done"])
		}
	}
	if told < 15 {
		t.Errorf("told %d times of 20", told)
	}
	typed := fields{"reads": "2.1", "cold": "40", "by": "22:00", "pan": "8 ft2", "rate": "8 US gal/h", "coals": "8 min"}
	// What is left of the day is when to light.
	typed["volume"], typed["lit"] = "30", "08:00"
	got := p.ask("fire", typed)
	at, _ := strings.CutPrefix(got.Rows["by"], "light it by ")
	typed["lit"] = at
	if got = p.ask("fire", typed); got.Rows["done"] != "22:00" && got.Rows["done"] != "21:59" {
		t.Errorf("lit at %s it is done at %s", at, got.Rows["done"])
	}
	if !strings.Contains(got.Text, "Never boil in a closed room") || !strings.Contains(got.Text, "Stay with the pan") {
		t.Error("no caution")
	}
	// Where nobody told the elevation, the heat counts from boiling water.
	if !strings.HasSuffix(got.Rows["off"], " F deg above boiling water") {
		t.Errorf("take off at %s", got.Rows["off"])
	}
	// Sap of 21 Brix for 2.1 is asked back, and concentrate is typed with its unit.
	typed["reads"] = "21"
	if got = p.ask("fire", typed); len(got.Rows) > 0 || got.Errors["reads"] != "sap of 21.0 Brix? it is 1 to 4: is a point lost? Type 21.0 Brix if it is so" {
		t.Errorf("%+v", got)
	}
	typed["reads"] = "21.0 Brix"
	if got = p.ask("fire", typed); len(got.Rows) == 0 {
		t.Errorf("concentrate: %+v", got)
	}
	typed["reads"] = "2.1"
	// A pan that its sap does not cover is not lit: 3 US gal over 8 ft2 are 0.6 in.
	typed["volume"] = "3"
	if got = p.ask("fire", typed); got.Level != "stop" || len(got.Rows) > 0 || !strings.Contains(got.Verdict, "0.6 in") {
		t.Errorf("%+v", got)
	}
	p.fine()
}

func TestTomorrowNumbers(t *testing.T) {
	p := opened(t, 1280, 800)
	compare(t, p, "tomorrow", func(r *rand.Rand, in units.System) (fields, map[string]want) {
		lowText, low := degrees(r, in, 10, 40)
		highText, high := degrees(r, in, 40, 60)
		taps := 20 + r.IntN(100)
		waitingText, waiting := gallons(r, in, 1, 100)
		f := fields{"low1": lowText, "high1": highText, "low2": "", "high2": "", "taps": fmt.Sprint(taps), "waiting": waitingText, "age": "10", "storage": "120 US gal", "rate": "8 US gal/h", "tempered": "42 F"}
		day := season.Day{Min: low, Max: high, Date: time.Date(2034, 3, 10, 0, 0, 0, 0, time.UTC)}
		model := must(season.NewSapModel(must(season.WithVacuum(0)), 30))
		tap := model.Day(day, season.SapFlowDay())
		verdict := "Tomorrow it hardly runs, as far as weather tells."
		if season.SapFlowDay().Met(day) {
			verdict = "Tomorrow it runs, as far as weather tells."
			best := model.Day(season.Day{Min: units.Celsius(-5), Max: units.Celsius(5)}, season.SapFlowDay()).High
			tap.High = max(best, packing.PeakFromMemory)
		}
		all := tap.Times(float64(taps))
		pressure := must(boil.PressureAt(0))
		power := heat(8*units.USGallonPerHour, must(sugar.NewLot(units.USGallon, 2, units.Fahrenheit(42))), pressure)
		come := pan.Gathering{Volume: all.High, Brix: 2, Temperature: units.Fahrenheit(42)}
		stands := pan.Standing{Gathering: come, Age: 10 * time.Hour}
		stands.Volume = waiting
		// At 42 F bacteria grow neither slowly nor fast: the sap waits a day.
		plan := must(pan.Backlog{Storage: 120 * units.USGallon, Hours: 5 * time.Hour, Warmup: 30 * time.Minute, Heat: power, Syrup: 66.9, At: pressure, Keep: 24 * time.Hour}.
			PlanFrom([]pan.Standing{stands}, come))
		e := plan.Evenings[0]
		return f, map[string]want{"days": {"least": all.Low.TextIn(in, 2), "most": all.High.TextIn(in, 2), "verdict": verdict},
			"walk": {"first": waiting.TextIn(in, 3), "hours": fmt.Sprintf("%.1f h", e.Hours.Hours()), "left": e.Waiting.TextIn(in, 2)}}
	})
}

// The wall card's numbers, cell by cell.
func TestCardNumbers(t *testing.T) {
	p := opened(t, 390, 844)
	r := rand.New(rand.NewPCG(7, 8))
	cells := 0
	for i := range 20 {
		in := []units.System{units.US, units.Metric}[i%2]
		p.metric(in == units.Metric)
		p.empty()
		p.screen("card")
		text, water := degrees(r, in, 200, 213)
		p.ask("card", fields{"water": text, "target": "66.9"})
		rows := eval[map[string][][]string](p, `Object.fromEntries([...document.querySelectorAll("[data-table]")].map((t) => [t.dataset.table, [...t.tBodies[0].rows].map((r) => [...r.cells].map((c) => c.textContent))]))`)
		pressure := must(boil.PressureFromWater(water))
		for _, row := range rows["boiling"] {
			at := must(units.ParsePressure(row[0]))
			if want := []string{must(boil.Water(at)).TextIn(in, 1), must(boil.SyrupPoint(66.9, at)).TextIn(in, 1)}; row[1] != want[0] || row[2] != want[1] {
				t.Errorf("%v, want %v", row, want)
			}
			cells += 2
		}
		// The middle row is the nearest to the place, within half of a step.
		if d := must(units.ParsePressure(rows["boiling"][5][0])) - pressure; d > 0.1*units.InchMercury || d < -0.1*units.InchMercury {
			t.Errorf("the middle row is %v off", d)
		}
		for _, row := range rows["cups"] {
			at := must(units.ParseTemperature(row[0]))
			h := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
			if want := []string{fmt.Sprintf("%.1f", float64(must(h.Reading(66.9, at)))), fmt.Sprintf("%.1f", float64(must(h.Baume(66.9, at))))}; row[1] != want[0] || row[2] != want[1] {
				t.Errorf("%v, want %v", row, want)
			}
			cells += 2
		}
		for _, row := range rows["ratio"] {
			sap := must(units.ParseBrix(row[0] + " Brix"))
			if want := fmt.Sprintf("%.1f", must(yield.Ratio(sap, 66.9))); row[1] != want {
				t.Errorf("%v, want %v", row, want)
			}
			cells++
		}
		for _, row := range rows["fill"] {
			at, per, want := must(units.ParseTemperature(row[0])), units.USQuart, ""
			if in == units.Metric {
				per = units.Liter
			}
			more := must(density.HotVolume(per, 66.9, at)) - per
			if want = more.Text(units.USFluidOunce, 2); in == units.Metric {
				want = more.Text(units.Milliliter, 0)
			}
			if row[1] != want {
				t.Errorf("%v, want %v", row, want)
			}
			cells++
		}
	}
	p.fine()
	t.Logf("%d cells", cells)
}
