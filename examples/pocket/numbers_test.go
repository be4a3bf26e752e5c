package main

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// tries is how many random fillings each screen is asked.
const tries = 200

// want is what an answer must show: by key the figures, each called from the
// library here, not from the page's own package.
type want map[string]string

// compare fills a screen again and again, in both systems of units, and holds the
// figures against the library's, digit by digit.
func compare(t *testing.T, p *phone, screen string, draw func(r *rand.Rand, in units.System) (fields, map[string]want)) {
	t.Helper()
	r := rand.New(rand.NewPCG(21, 2034))
	figures := 0
	for _, in := range []units.System{units.US, units.Metric} {
		p.metric(in == units.Metric)
		p.empty()
		p.screen(screen)
		var typed []fields
		var wanted []map[string]want
		asked := map[string]bool{}
		for range tries / 2 {
			f, w := draw(r, in)
			typed, wanted = append(typed, f), append(wanted, w)
			for q := range w {
				asked[q] = true
			}
		}
		var questions []string
		for q := range asked {
			questions = append(questions, q)
		}
		for i, got := range p.askAll(typed, questions...) {
			for q, rows := range wanted[i] {
				for key, text := range rows {
					shown := got[q].Rows[key]
					if key == "verdict" {
						shown = got[q].Verdict
					}
					if shown != text {
						t.Fatalf("%v: %s shows %s as %q, the library says %q (%v)", typed[i], q, key, shown, text, got[q].Errors)
					}
					figures++
				}
			}
		}
	}
	p.metric(false)
	p.fine()
	t.Logf("%d figures of %d fillings", figures, tries)
}

// must is the answer of a call that cannot fail here.
func must[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

// Numbers as they are typed, with the unit of the button.
func degrees(r *rand.Rand, in units.System, low, high float64) (string, units.Temperature) { // F
	x, unit := low+r.Float64()*(high-low), " F"
	if in == units.Metric {
		x, unit = (x-32)/1.8, " C"
	}
	text := fmt.Sprintf("%.1f", x)
	return text, must(units.ParseTemperature(text + unit))
}

func strength(r *rand.Rand, low, high float64) (string, units.Brix) {
	text := fmt.Sprintf("%.1f", low+r.Float64()*(high-low))
	return text, must(units.ParseBrix(text + " Brix"))
}

func gallons(r *rand.Rand, in units.System, low, high float64) (string, units.Volume) {
	x, unit := low+r.Float64()*(high-low), " US gal"
	if in == units.Metric {
		x, unit = x*3.785, " L"
	}
	text := fmt.Sprintf("%.1f", x)
	return text, must(units.ParseVolume(text + unit))
}

func with[Q interface {
	TextIn(units.System, int) string
}](text string, by Q, in units.System, digits int) string {
	return text + "|" + by.TextIn(in, digits)
}

// down is a heat to stop at: the tenth below.
func down(t units.Temperature, in units.System) string {
	x, unit := t.Fahrenheit(), "F"
	if in == units.Metric {
		x, unit = t.Celsius(), "C"
	}
	return fmt.Sprintf("%.1f %s", math.Floor(x*10)/10, unit)
}

// k2 widens a standard uncertainty to 19 times of 20.
const k2 = 2

func TestSyrupNumbers(t *testing.T) {
	p := opened(t, 390, 844)
	compare(t, p, "syrup", func(r *rand.Rand, in units.System) (fields, map[string]want) {
		waterText, water := degrees(r, in, 195, 213)
		targetText, target := strength(r, 66, 68.9)
		cupText, cup := degrees(r, in, 60, 205)
		readsText, reads := strength(r, 54, 72)
		pressure := must(boil.PressureFromWater(water))
		syrup := must(boil.SyrupPoint(target, pressure))
		parts := must(finish.ThermometerStop{Target: target, Pressure: pressure, ProbeBy: 0.2 * units.FahrenheitDegree,
			DepthBy: units.Inch / 4, BarometerBy: 0.05 * units.InchMercury}.Parts())
		h := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
		m := must(h.Measure(reads, cup, density.Doubt{Division: 0.5, Thermometer: 2 * units.FahrenheitDegree, Calibration: 0.2}))
		rule := must(sugar.UnitedStates.Standard())
		verdict := map[sugar.Remedy]string{sugar.Leave: "It is syrup: take it off the fire now.", sugar.BoilOn: "Not yet syrup: boil on, and read again.",
			sugar.ThinDown: "Too far: take it off the fire now.", sugar.ReadAgain: "Too close to tell: read again."}[must(rule.Advise(m.Brix, m.Uncertainty, 0)).Do]
		if verdict == "It is syrup: take it off the fire now." && m.Brix < target-0.05 {
			verdict = fmt.Sprintf("Syrup by the rule, and not yet your %.1f Brix: boil on a little, and read again.", float64(target))
		}
		return fields{"by": "water", "water": waterText, "target": targetText, "cup": cupText, "reads": readsText}, map[string]want{
			"stop": {"stop": down(syrup, in) + "|" + (k2 * parts.Total).Text(1), "water": water.TextIn(in, 1), "rise": syrup.Sub(water).TextIn(in, 3)},
			"cup":  {"must": must(h.Reading(target, cup)).Text(1), "true": m.Brix.Text(1) + "|" + m.Uncertainty.Text(1), "verdict": verdict},
		}
	})
	// By the barometer at the pan, by a report, and by the elevation alone.
	compare(t, p, "syrup", func(r *rand.Rand, in units.System) (fields, map[string]want) {
		unit, decimals := " inHg", 2
		if in == units.Metric {
			unit, decimals = " hPa", 0
		}
		high := 200 + 1500*r.Float64()
		elevation := fmt.Sprintf("%.0f ft", high)
		height := must(units.ParseLength(elevation))
		usual := must(boil.WeatherAt(must(boil.PressureAt(height)), height)).Usual
		p := usual.Low + (usual.High-usual.Low)*units.Pressure(r.Float64())
		f := fields{"elevation": elevation, "target": "66.9"}
		var pressure units.Pressure
		number := func(p units.Pressure) string {
			if in == units.Metric {
				return fmt.Sprintf("%.*f", decimals, p.Hectopascals())
			}
			return fmt.Sprintf("%.*f", decimals, p.InchesMercury())
		}
		switch r.IntN(3) {
		case 0:
			f["by"], f["station"] = "station", number(p)
			pressure = must(units.ParsePressure(number(p) + unit))
		case 1:
			text := number(must(boil.AltimeterSetting(p, height)))
			f["by"], f["report"] = "report", text
			pressure = must(boil.StationPressure(must(units.ParsePressure(text+unit)), height))
		default:
			f["by"] = "height"
			pressure = must(boil.PressureAt(height))
		}
		return f, map[string]want{"stop": {"water": must(boil.Water(pressure)).TextIn(in, 1), "verdict": "Stop at " + down(must(boil.SyrupPoint(66.9, pressure)), in)}}
	})
}

func TestMendNumbers(t *testing.T) {
	p := opened(t, 1280, 800)
	compare(t, p, "mend", func(r *rand.Rand, in units.System) (fields, map[string]want) {
		amountText, amount := gallons(r, in, 1, 12)
		readsText, reads := strength(r, 61, 73)
		cupText, cup := degrees(r, in, 50, 120)
		otherText, other := gallons(r, in, 1, 4)
		trueText, true2 := strength(r, 60, 70)
		pourText, pour := degrees(r, in, 181, 189.5)
		h := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
		m := must(h.Measure(reads, cup, density.Doubt{Division: 0.5, Thermometer: 2 * units.FahrenheitDegree, Calibration: 0.2}))
		lot := must(sugar.NewLot(amount, m.Brix, units.Fahrenheit(68)))
		rows := want{"true": m.Brix.Text(1) + "|" + m.Uncertainty.Text(1)}
		small, ounces := func(v units.Volume) string { return v.Text(units.USFluidOunce, 1) }, func(m units.Mass) string { return m.Text(units.Ounce, 1) }
		if in == units.Metric {
			small, ounces = func(v units.Volume) string { return v.Text(units.Milliliter, 0) }, func(m units.Mass) string { return m.Text(units.Gram, 0) }
		}
		switch must(must(sugar.UnitedStates.Standard()).Advise(m.Brix, m.Uncertainty, 0)).Do {
		case sugar.ThinDown:
			thin := must(sugar.Thin(lot, 0, units.Celsius(20), 66.9))
			by := thin.Added.WeightInAir() * units.Mass(m.Uncertainty/(m.Brix-66.9))
			rows["add"], rows["makes"] = ounces(thin.Added.WeightInAir())+"|"+ounces(by), thin.Result.Volume().TextIn(in, 3)
		case sugar.BoilOn:
			off := must(sugar.Concentrate(lot, 66.9))
			by := off.Removed.WeightInAir() * units.Mass(m.Uncertainty/(66.9-m.Brix))
			rows["off"], rows["makes"] = with(off.Removed.WeightInAir().TextIn(in, 2), by, in, 2), off.Concentrate.Volume().TextIn(in, 3)
		}
		both := must(sugar.Blend(lot, must(sugar.NewLot(other, true2, units.Fahrenheit(68)))))
		quart := packing.Container{Label: units.USQuart, Mass: 400 * units.Gram, Brimful: 34.5 * units.USFluidOunce}
		fill := must(quart.Fill(m.Brix, pour, 0.5))
		return fields{"amount": amountText, "reads": readsText, "cup": cupText, "amount2": otherText, "true2": trueText,
				"jar": "1 US qt", "glass": "400 g", "brim": "34.5 US fl oz", "pour": pourText}, map[string]want{
				"mend":  rows,
				"blend": {"blend": both.Brix().Text(2), "blended": both.Volume().TextIn(in, 3)},
				"jars": {"hot": small(fill.Hot), "weight": ounces(fill.NetWeight), "line": small(fill.Headspace),
					"jars": fmt.Sprint(int(lot.Mass() / fill.NetMass)), "heat": must(quart.AfterFilling(m.Brix, pour, units.Fahrenheit(68))).TextIn(in, 1)},
			}
	})
}

func TestTreeNumbers(t *testing.T) {
	p := opened(t, 1280, 800)
	compare(t, p, "tree", func(r *rand.Rand, in units.System) (fields, map[string]want) {
		x, unit, text := 20+90*r.Float64(), " in", ""
		if in == units.Metric {
			x, unit = x*2.54, " cm"
		}
		text = fmt.Sprintf("%.1f", x)
		d := must(tapping.DiameterFromGirth(must(units.ParseLength(text + unit))))
		species := []tapping.Species{tapping.SugarMaple, tapping.RedMaple, tapping.SilverMaple}[r.IntN(3)]
		trunk := must(tapping.NewTrunk(d, species, tapping.Healthy))
		advice := trunk.Advise(tapping.DefaultGuideline())
		low, high := advice.Range()
		diameter := d.Text(units.Inch, 1)
		if in == units.Metric {
			diameter = d.Text(units.Centimeter, 1)
		}
		return fields{"girth": text, "species": species.String(), "vigor": "healthy"}, map[string]want{
			"taps": {"diameter": diameter, "taps": fmt.Sprint(advice.Taps), "others": fmt.Sprintf("%d to %d", low, high)}}
	})
}
