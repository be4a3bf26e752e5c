package proof

import (
	"fmt"
	"math"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Boil returns the claims of package boil.
func Boil() []check.Claim {
	return []check.Claim{
		{Table: "iapws-if97-region4", Column: "n", Func: "boil.Water",
			Got: func(r check.Row) (float64, error) { return coef.Region4()[int(r.Float("i"))-1], nil }},
		{Table: "iapws-sr1-86", Column: "coefficient", Func: "boil.LatentHeat", Got: saturationTerm},
		{Table: "iapws-if97-check", Column: "value", Func: "boil.PressureFromWater", Select: when("quantity", "saturation pressure"),
			Got: func(r check.Row) (float64, error) {
				p, err := boil.PressureFromWater(units.Kelvin(r.Float("T_K")))
				return p.In(units.Megapascal), err
			}},
		{Table: "iapws-if97-check", Column: "value", Func: "boil.Water", Select: when("quantity", "saturation temperature"),
			Got: func(r check.Row) (float64, error) {
				t, err := boil.Water(units.Pressure(r.Float("p_MPa")) * units.Megapascal)
				return t.Kelvin(), err
			}},
		{Table: "iapws-95-saturation", Column: "T_K", Func: "boil.Water",
			Got: func(r check.Row) (float64, error) {
				t, err := boil.Water(units.Pressure(r.Float("p_MPa")) * units.Megapascal)
				return t.Kelvin(), err
			}},
		{Table: "syrup-point-published", Column: "boils_C", Func: "boil.SyrupPoint",
			Got: func(r check.Row) (float64, error) {
				t, err := boil.SyrupPoint(brix(r), units.Atmosphere)
				return t.Celsius(), err
			}},
		{Table: "syrup-point-published", Column: "boils_F", Func: "boil.SyrupPoint",
			Got: func(r check.Row) (float64, error) {
				t, err := boil.SyrupPoint(brix(r), units.Atmosphere)
				return t.Fahrenheit(), err
			}},
		{Table: "pan-rate-published", Column: "value", Func: "boil.PanRate", Got: panRate},
		{Table: "us-standard-atmosphere", Column: "psia", Func: "boil.PressureAt",
			Got: func(r check.Row) (float64, error) {
				p, err := boil.PressureAt(units.Feet(r.Float("altitude_ft")))
				return p.PoundsPerSquareInch(), err
			}},
		{Table: "altimeter-examples", Column: "station_Pa", Func: "boil.StationPressure", Got: station},
		{Table: "altimeter-examples", Column: "form_Pa", Func: "boil.StationPressure", Got: station},
		{Table: "water-boiling-elevation", Column: "boiling_F", Func: "boil.Water",
			Got: func(r check.Row) (float64, error) {
				p, err := boil.PressureAt(units.Feet(r.Float("elevation_ft")))
				if err != nil {
					return math.NaN(), err
				}
				t, err := boil.Water(p)
				return t.Fahrenheit(), err
			}},
		{Table: "sucrose-boiling-rise-1atm", Column: "rise_K", Func: "closed form of the rise",
			Got: func(r check.Row) (float64, error) {
				return ClosedRise(units.Brix(r.Float("brix")), units.Celsius(100)).CelsiusDegrees(), nil
			}},
		{Table: "boiling-rise-exact", Column: "rise_K", Func: "boil.Rise",
			Got: func(r check.Row) (float64, error) {
				d, err := boil.Rise(units.Brix(r.Float("brix")), units.Kilopascals(r.Float("p_kPa")))
				return d.CelsiusDegrees(), err
			}},
		{Table: "syrup-finish-rise", Column: "rise_F", Func: "boil.Rise",
			Got: func(r check.Row) (float64, error) {
				d, err := boil.Rise(units.Brix(r.Float("brix")), units.Atmosphere)
				return d.FahrenheitDegrees(), err
			}},
		{Table: "rise-inverted", Column: "brix", Func: "boil.BrixFromRiseOf",
			Select: func(r check.Row) bool { return r.Float("inverted") < 100 },
			Got: func(r check.Row) (float64, error) {
				s := sugar.Solute{Inverted: units.Percents(r.Float("inverted"))}
				b, err := boil.BrixFromRiseOf(s, units.FahrenheitDegrees(r.Float("rise_F")), units.Atmosphere)
				return float64(b), err
			}},
		// boil refuses such a sap; this figure is its reason.
		{Table: "rise-inverted", Column: "brix", Func: "sugar.Solute.BrixFromWaterActivity",
			Select: func(r check.Row) bool { return r.Float("inverted") >= 100 }, Got: stopOfHexoses},
		{Table: "syrup-point-worked", Column: "value", Func: "boil.Water", Select: when("quantity", "boiling point of water"),
			Got: func(r check.Row) (float64, error) {
				t, err := boil.Water(units.Kilopascals(r.Float("p_kPa")))
				return t.Celsius(), err
			}},
		{Table: "syrup-point-worked", Column: "value", Func: "boil.Water", Select: when("quantity", "boiling point of water in F"),
			Got: func(r check.Row) (float64, error) {
				t, err := boil.Water(units.Kilopascals(r.Float("p_kPa")))
				return t.Fahrenheit(), err
			}},
		{Table: "syrup-point-worked", Column: "value", Func: "boil.SyrupPoint", Select: when("quantity", "boiling point of syrup"),
			Got: func(r check.Row) (float64, error) {
				t, err := boil.SyrupPoint(units.Brix(r.Float("brix")), units.Kilopascals(r.Float("p_kPa")))
				return t.Celsius(), err
			}},
		{Table: "syrup-point-worked", Column: "value", Func: "boil.Rise", Select: when("quantity", "rise"),
			Got: func(r check.Row) (float64, error) {
				d, err := boil.Rise(units.Brix(r.Float("brix")), units.Kilopascals(r.Float("p_kPa")))
				return d.FahrenheitDegrees(), err
			}},
		{Table: "syrup-point-worked", Column: "value", Func: "boil.BrixFromRise", Select: when("quantity", "overshoot of a fixed rise of 7.2 F"),
			Got: func(r check.Row) (float64, error) {
				// The figure in words is the exact rise at 1 atm, 7.201 F.
				fixed, err := boil.Rise(units.Brix(r.Float("brix")), units.Atmosphere)
				if err != nil {
					return math.NaN(), err
				}
				b, err := boil.BrixFromRise(fixed, units.Kilopascals(r.Float("p_kPa")))
				return float64(b) - r.Float("brix"), err
			}},
		{Table: "boiling-errors-worked", Column: "value", Func: "boil.SyrupPoint and others", Got: boilingError},
		{Table: "boiling-errors-worked", Column: "value", Func: "boil.Probe.Shows", Select: when("quantity", "boiling point under syrup"),
			Got: func(r check.Row) (float64, error) {
				at, err := boil.Probe{Pressure: units.Atmosphere}.Shows(66)
				if err != nil {
					return math.NaN(), err
				}
				deep, err := boil.Probe{Pressure: units.Atmosphere, Over: units.Inches(r.Float("change"))}.Shows(66)
				return deep.Sub(at).FahrenheitDegrees(), err
			}},
		{Table: "latent-heat", Column: "value", Func: "boil.LatentHeat", Got: latent},
	}
}

// panRate is the middle of the span for a flue pan.
func panRate(r check.Row) (float64, error) {
	rate, err := boil.PanRate(boil.FluePan, units.Feet(r.Float("width_ft")).Times(units.Feet(r.Float("length_ft"))))
	gallons := rate.Middle.USGallonsPerHour()
	if r.Text("unit") == "barrels/h" {
		return gallons / 31.5, err
	}
	return gallons, err
}

func station(r check.Row) (float64, error) {
	p, err := boil.StationPressure(units.InchesMercury(r.Float("altimeter_inHg")), units.Feet(r.Float("elevation_ft")))
	return p.Pascals(), err
}

// saturationTerm finds a coefficient by its exponent.
func saturationTerm(r check.Row) (float64, error) {
	series, err := listed(map[string][6]coef.Power{
		"a": coef.VaporPressure(), "b": coef.LiquidDensity(), "c": coef.VaporDensity(),
	}, r.Text("series"))
	for _, p := range series {
		if float64(p.Sixths)*r.Float("under") == 6*r.Float("over") {
			return p.C, err
		}
	}
	return math.NaN(), fmt.Errorf("no term with the exponent %s", r.Text("exponent"))
}

// ClosedRise returns the boiling point rise of b Brix of sucrose where water
// boils at t, in the closed form of Starzak and Peacock 1997, which takes the
// vapor pressure of water by Antoine. The package boil solves the exact form;
// this one stands here as a second opinion.
func ClosedRise(b units.Brix, water units.Temperature) units.TempDiff {
	const r = 8.314472 // J/(mol K), as in the published table
	sucrose := float64(b) / coef.MolarSucrose
	x := sucrose / (sucrose + (100-float64(b))/coef.MolarWater)
	c := water.Celsius() + coef.AntoineC
	excess := coef.ActivityQ / (r * coef.AntoineB) * x * x * (1 + coef.ActivityA*x + coef.ActivityB*x*x)
	num := 1 - excess*c/water.Kelvin()
	den := 1 + c/coef.AntoineB*math.Log(1-x)
	return units.CelsiusDegrees((num/den - 1) * c)
}

// stopOfHexoses returns where a sap of inverted sugar alone has a given rise.
func stopOfHexoses(r check.Row) (float64, error) {
	water, err := boil.Water(units.Atmosphere)
	if err != nil {
		return math.NaN(), err
	}
	at := water.Add(units.FahrenheitDegrees(r.Float("rise_F")))
	pure, err := boil.PressureFromWater(at)
	if err != nil {
		return math.NaN(), err
	}
	s := sugar.Solute{Inverted: units.Percents(r.Float("inverted"))}
	b, err := s.BrixFromWaterActivity(float64(units.Atmosphere/pure), at)
	return float64(b), err
}

// boilingError computes the rows of boiling-errors-worked, about 66 Brix at 1
// atm.
func boilingError(r check.Row) (float64, error) {
	const b = 66.0
	base, err := boil.SyrupPoint(b, units.Atmosphere)
	if err != nil {
		return math.NaN(), err
	}
	// strengthOf says by how much syrup misses 66 Brix if the thermometer is off
	// by d.
	strengthOf := func(d units.TempDiff) (float64, error) {
		rise, err := boil.Rise(b, units.Atmosphere)
		if err != nil {
			return math.NaN(), err
		}
		up, err := boil.BrixFromRise(rise+d, units.Atmosphere)
		return float64(up) - b, err
	}
	change := r.Float("change")
	switch r.Text("quantity") {
	case "boiling point of water":
		half := units.InchesMercury(change / 2)
		low, err := boil.Water(units.Atmosphere - half)
		if err != nil {
			return math.NaN(), err
		}
		high, err := boil.Water(units.Atmosphere + half)
		return high.Sub(low).FahrenheitDegrees(), err
	case "strength at the stop":
		if r.Text("of") == "F" {
			return strengthOf(units.FahrenheitDegrees(change))
		}
		t, err := boil.SyrupPoint(b, units.Atmosphere+units.InchesMercury(change))
		if err != nil {
			return math.NaN(), err
		}
		return strengthOf(t.Sub(base))
	case "boiling point under syrup", "strength under syrup":
		d, err := density.Solution(b, base)
		if err != nil {
			return math.NaN(), err
		}
		p, err := boil.PressureAtDepth(units.Atmosphere, units.Inches(change), d)
		if err != nil {
			return math.NaN(), err
		}
		t, err := boil.SyrupPoint(b, p)
		if err != nil {
			return math.NaN(), err
		}
		if r.Text("quantity") == "boiling point under syrup" {
			return t.Sub(base).FahrenheitDegrees(), nil
		}
		return strengthOf(t.Sub(base))
	}
	return math.NaN(), fmt.Errorf("unknown quantity %q", r.Text("quantity"))
}

func latent(r check.Row) (float64, error) {
	t, err := boil.Water(units.Kilopascals(r.Float("p_kPa")))
	if err != nil {
		return math.NaN(), err
	}
	h, err := boil.LatentHeat(t)
	if err != nil {
		return math.NaN(), err
	}
	switch unit := r.Text("unit"); unit {
	case "kJ/kg":
		return h.KilojoulesPerKilogram(), nil
	case "Btu(IT)/lb":
		return h.BtusITPerPound(), nil
	case "Btu(IT)": // of a US gallon of water at 60 F
		d, err := density.Water(units.Fahrenheit(60))
		return h.Energy(d.Mass(units.USGallon)).BtusIT(), err
	default:
		return math.NaN(), fmt.Errorf("unknown unit %q", unit)
	}
}
