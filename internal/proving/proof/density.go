package proof

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/units"
)

// Density returns the claims of package density.
func Density() []check.Claim {
	claims := coefficients()
	claims = append(claims, gravities()...)
	claims = append(claims, hydrometers()...)
	claims = append(claims, refractometers()...)
	return append(claims, volumes()...)
}

func coefficients() []check.Claim {
	return []check.Claim{
		{Table: "kell-1975-water", Column: "value", Func: "density.Water", Got: func(r check.Row) (float64, error) {
			return coef.Kell()[r.Text("name")], nil
		}},
		{Table: "icumsa-density-coefficients", Column: "c", Func: "density.Solution", Got: func(r check.Row) (float64, error) {
			return coef.Sucrose()[int(r.Float("k"))][int(r.Float("i"))-1], nil
		}},
		{Table: "refractive-index-fit", Column: "c", Func: "density.RefractiveIndex", Got: func(r check.Row) (float64, error) {
			return coef.ND20()[int(r.Float("i"))], nil
		}},
		{Table: "iapws-water-refraction", Column: "value", Func: "density.Refractometer", Got: func(r check.Row) (float64, error) {
			return listed(coef.WaterRefraction(), r.Text("name"))
		}},
		{Table: "hydrometer-constants", Column: "value", Func: "density.GlassExpansion", Got: func(check.Row) (float64, error) {
			return density.GlassExpansion, nil
		}},
		{Table: "water-density-published", Column: "value", Func: "density.Water", Got: waterPrinted},
		{Table: "solution-density-worked", Column: "value", Func: "density.Solution", Got: worked},
	}
}

// waterPrinted gives the density of water in what the row prints it in.
func waterPrinted(r check.Row) (float64, error) {
	at := celsius(r)
	if r.Text("t_F") != "" {
		at = units.Fahrenheit(r.Float("t_F"))
	}
	d, err := density.Water(at)
	if err != nil {
		return math.NaN(), err
	}
	switch r.Text("quantity") {
	case "over water at its densest":
		densest, err := density.Water(units.Celsius(4))
		return float64(d / densest), err
	case "liters of a kilogram at its densest":
		return 1000 / d.KilogramsPerCubicMeter(), nil
	default:
		return d.KilogramsPerCubicMeter() / 1000, nil
	}
}

// worked gives densities, and slopes by the difference over a hundredth.
func worked(r check.Row) (float64, error) {
	const h = 0.01
	b, t := brix(r), celsius(r)
	b0, b1, t0, t1 := b, b, t, t
	switch r.Text("quantity") {
	case "density":
		d, err := density.Solution(b, t)
		return float64(d), err
	case "slope with Brix":
		b0, b1 = b-h/2, b+h/2
	case "slope with temperature":
		t0, t1 = t.Add(-h/2), t.Add(h/2)
	}
	low, err := density.Solution(b0, t0)
	if err != nil {
		return 0, err
	}
	high, err := density.Solution(b1, t1)
	return float64(high-low) / h, err
}

func gravities() []check.Claim {
	return []check.Claim{
		{Table: "nbs-c440-table114", Column: "apparent_sg_20_20", Func: "density.Scale.SG2020", Got: func(r check.Row) (float64, error) {
			sg, err := density.NBSC440.SG2020(brix(r))
			return float64(sg), err
		}},
		{Table: "nbs-c440-table114", Column: "apparent_sg_20_20_icumsa", Func: "density.SG2020FromBrix", Got: func(r check.Row) (float64, error) {
			sg, err := density.SG2020FromBrix(brix(r))
			return float64(sg), err
		}},
		{Table: "plato-d20-4", Column: "d20_4", Func: "density.Scale.SG2020", Got: func(r check.Row) (float64, error) {
			sg, err := density.NBSC440.SG2020(brix(r))
			return trueRatio(float64(sg)), err
		}},
		{Table: "plato-d20-4", Column: "d20_4_icumsa", Func: "density.Solution", Got: func(r check.Row) (float64, error) {
			d, err := density.Solution(brix(r), units.Celsius(20))
			if err != nil {
				return 0, err
			}
			w, err := density.Water(units.Celsius(4))
			return float64(d / w), err
		}},
		{Table: "baume-worked", Column: "baume", Func: "density.Scale.Baume", Got: func(r check.Row) (float64, error) {
			be, err := scale(r).Baume(brix(r))
			return float64(be), err
		}},
		{Table: "syrup-density-published", Column: "baume", Func: "density.Scale.Baume", Got: func(r check.Row) (float64, error) {
			be, err := density.NBSC440.Baume(brix(r))
			return float64(be), err
		}},
		{Table: "syrup-density-published", Column: "lb_per_gallon", Func: "density.WeightInAir", Got: func(r check.Row) (float64, error) {
			m, err := density.WeightInAir(units.USGallon, brix(r), units.Fahrenheit(68))
			return m.Pounds(), err
		}},
		{Table: "brix-scales-worked", Column: "value", Func: "density.Scale", Got: scales},
		{Table: "gallon-weight-brix", Column: "brix", Func: "density.Scale.Brix", Got: func(r check.Row) (float64, error) {
			w, err := density.Water(units.Fahrenheit(68))
			if err != nil {
				return 0, err
			}
			b, err := density.NBSC440.Brix(density.SG2020(units.PoundsPerUSGallon(r.Float("lb_per_gallon")) / density.InAir(w)))
			return float64(b), err
		}},
	}
}

func scale(r check.Row) density.Scale {
	if r.Text("scale") == density.NBSC440.String() {
		return density.NBSC440
	}
	return density.ICUMSA
}

// trueRatio turns an apparent specific gravity 20/20 C into a true one 20/4 C
// with the water of Plato: 0.998234 at 20 C, as the table's first row says.
func trueRatio(sg float64) float64 {
	const water, air = 0.998234, 0.0012
	return air + sg*(water-air)
}

func scales(r check.Row) (float64, error) {
	b := brix(r)
	if r.Text("unit") == "%" {
		nbs, err := density.ICUMSA.Convert(b, density.NBSC440)
		return float64(nbs - b), err
	}
	icumsa, err := density.ICUMSA.SG2020(b)
	if err != nil {
		return 0, err
	}
	nbs, err := density.NBSC440.SG2020(b)
	return float64(icumsa - nbs), err
}

func hydrometers() []check.Claim {
	return []check.Claim{
		{Table: "nbs-hydrometer-correction-20C", Column: "correction", Func: "density.Hydrometer.Brix", Got: func(r check.Row) (float64, error) {
			b, err := density.Hydrometer{GraduatedAt: units.Celsius(20)}.Brix(brix(r), celsius(r))
			return float64(b - brix(r)), err
		}},
		{Table: "hydrometer-worked", Column: "value", Func: "density.Hydrometer", Got: func(r check.Row) (float64, error) {
			on := units.Celsius
			if r.Text("scale") == "F" {
				on = units.Fahrenheit
			}
			h := density.Hydrometer{GraduatedAt: on(r.Float("graduated")), Expansion: r.Float("gamma")}
			turn := h.Brix
			if r.Text("quantity") == "reading from truth" {
				turn = h.Reading
			}
			b, err := turn(brix(r), on(r.Float("at")))
			return float64(b), err
		}},
		{Table: "hydrometer-traps-worked", Column: "value", Func: "density.Hydrometer", Got: traps},
	}
}

// traps works out what a wrong assumption costs.
func traps(r check.Row) (float64, error) {
	f60, f68 := units.Fahrenheit(60), units.Fahrenheit(68)
	b := brix(r)
	switch r.Text("quantity") {
	case "60 F scale taken for a 68 F scale":
		reading, err := density.Hydrometer{GraduatedAt: f60}.Reading(b, f68)
		return math.Abs(float64(reading - b)), err
	case "36 Be read as SG 60/60 F and not 20/20 C":
		w, err := density.Water(f60)
		if err != nil {
			return 0, err
		}
		wrong, err := density.BrixFromDensity(w*145/(145-36), f60)
		return math.Abs(float64(wrong - b)), err
	default: // 370e-6 of density
		d, err := density.Solution(b, f68)
		if err != nil {
			return 0, err
		}
		off, err := density.BrixFromDensity(d*(1+370e-6), f68)
		return float64(off - b), err
	}
}

func refractometers() []check.Claim {
	return []check.Claim{
		{Table: "icumsa-1974-nd20", Column: "nD20", Func: "density.RefractiveIndex", Got: func(r check.Row) (float64, error) {
			n, err := density.RefractiveIndex(brix(r))
			return float64(n), err
		}},
		{Table: "refractometer-correction-1936", Column: "correction", Func: "density.Refractometer.Brix", Got: func(r check.Row) (float64, error) {
			b, err := density.Refractometer{}.Brix(brix(r), celsius(r))
			return float64(b - brix(r)), err
		}},
		{Table: "refractometer-temperature-worked", Column: "correction", Func: "density.Refractometer.Reading", Got: func(r check.Row) (float64, error) {
			reading, err := density.Refractometer{}.Reading(brix(r), celsius(r))
			return float64(brix(r) - reading), err
		}},
	}
}

func volumes() []check.Claim {
	c20 := units.Celsius(20)
	pounds := func(r check.Row, weigh func(units.Volume, units.Brix, units.Temperature) (units.Mass, error)) (float64, error) {
		m, err := weigh(units.USGallon, brix(r), c20)
		return m.Pounds(), err
	}
	return []check.Claim{
		{Table: "cup-weights-published", Column: "grams", Func: "density.Mass", Got: func(r check.Row) (float64, error) {
			measure := units.USCup
			if r.Text("measure") == "tablespoon" {
				measure = units.USFluidOunce / 2
			}
			m, err := density.Mass(measure, brix(r), c20)
			return m.Grams(), err
		}},
		{Table: "weight-per-gallon", Column: "in_vacuo_icumsa", Func: "density.Mass", Got: func(r check.Row) (float64, error) {
			return pounds(r, density.Mass)
		}},
		{Table: "weight-per-gallon", Column: "in_air_icumsa", Func: "density.WeightInAir", Got: func(r check.Row) (float64, error) {
			return pounds(r, density.WeightInAir)
		}},
		{Table: "weight-per-gallon", Column: "in_air_nbs_c440", Func: "density.Scale.Convert", Got: func(r check.Row) (float64, error) {
			b, err := density.NBSC440.Convert(brix(r), density.ICUMSA)
			if err != nil {
				return 0, err
			}
			m, err := density.WeightInAir(units.USGallon, b, c20)
			return m.Pounds(), err
		}},
		{Table: "weight-per-gallon", Column: "lb_sugar_in_air", Func: "density.WeightInAir", Got: func(r check.Row) (float64, error) {
			m, err := density.WeightInAir(units.USGallon, brix(r), c20)
			return brix(r).Sugar(m).Pounds(), err
		}},
		{Table: "hot-cold-volume-worked", Column: "shrink", Func: "density.Contraction", Got: func(r check.Row) (float64, error) {
			s, err := density.Contraction(brix(r), units.Fahrenheit(r.Float("hot_F")), units.Fahrenheit(68))
			return s.Percents(), err
		}},
	}
}
