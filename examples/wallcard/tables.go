package main

import (
	_ "embed"
	"math"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// boiling fills in the boiling points by the barometer.
func (c *card) boiling(in *flags, s system, p place) error {
	water, err := boil.Water(p.station)
	if err != nil {
		return err
	}
	syrup, err := boil.SyrupPoint(in.target, p.station)
	if err != nil {
		return err
	}
	rise := syrup.Sub(water)
	over, err := boil.BrixFromRise(rise+slip, p.station)
	if err != nil {
		return err
	}
	c.Water, c.Syrup, c.Rise = s.both(water, 1), s.both(syrup, 1), s.rise(rise)
	c.Slip, c.SlipBrix = s.rise(slip), strength(over-in.target)

	deg := s.degrees()
	unit := s.pair("inHg", "hPa")
	c.Boiling = table{ID: "boiling", Caption: "Boiling points by the barometer at the pan",
		Head: []string{unit[0], unit[1], "Water " + deg[0], deg[1], "Syrup " + deg[0], deg[1]}}
	waterLine, syrupLine := curve{label: "water"}, curve{label: "syrup"}
	middle := math.Round(float64(p.station / s.band))
	for i := -bandSteps; i <= bandSteps; i++ {
		at := units.Pressure(middle+float64(i)) * s.band
		w, err := boil.Water(at)
		if err != nil {
			return err
		}
		y, err := boil.SyrupPoint(in.target, at)
		if err != nil {
			return err
		}
		cells := s.pair(number(at.InchesMercury(), 1), number(at.Hectopascals(), 0))
		cells = append(cells, s.temperatures(w, false)...)
		cells = append(cells, s.temperatures(y, false)...)
		c.Boiling.Rows = append(c.Boiling.Rows, row{cells, i == 0})
		x := s.first(at.InchesMercury(), at.Hectopascals())
		waterLine.add(x, s.first(w.Fahrenheit(), w.Celsius()))
		syrupLine.add(x, s.first(y.Fahrenheit(), y.Celsius()))
	}
	c.BoilingPlot, err = chart{
		id: "boiling-plot", title: "Boiling points against the barometer",
		x: "barometer, " + unit[0], y: deg[0], curves: []curve{syrupLine, waterLine},
		xStep: s.first(0.4, 10), yStep: s.first(4, 2), xDecimals: int(s.first(1, 0)),
	}.svg()
	return err
}

// cup fills in what the hydrometer reads in finished syrup.
func (c *card) cup(in *flags, s system, _ place) error {
	h := density.Hydrometer{GraduatedAt: in.syrupGraduation}
	deg := s.degrees()
	c.Cup = table{ID: "cup", Caption: "Hydrometer in a cup of finished syrup",
		Head: []string{"Cup " + deg[0], deg[1], "Brix", "Baumé"}}
	rows := make([]density.CupRow, len(s.cups))
	for i, at := range s.cups {
		rows[i].At = at
	}
	if err := h.FillCupTable(in.target, rows); err != nil {
		return err
	}
	line := curve{}
	for _, r := range rows {
		cells := s.temperatures(r.At, true)
		if r.Extrapolated {
			cells[0] += "*"
			c.Starred = true
		}
		c.Cup.Rows = append(c.Cup.Rows, row{Cells: append(cells, number(float64(r.Brix), 1), number(float64(r.Baume), 1))})
		line.add(s.first(r.At.Fahrenheit(), r.At.Celsius()), float64(r.Brix))
	}
	c.HotCup, c.HotReads = s.whole(rows[0].At), []string{strength(rows[0].Brix), degreesBaume(rows[0].Baume)}
	var err error
	c.CupPlot, err = chart{
		id: "cup-plot", title: "Hydrometer reading of finished syrup against the temperature of the cup",
		x: "cup, " + deg[0], y: "Brix", curves: []curve{line}, xStep: s.first(30, 20), yStep: 2,
	}.svg()
	return err
}

// ratio fills in the sap that a gallon of syrup takes.
func (c *card) ratio(in *flags, _ system, _ place) error {
	c.Ratio = table{ID: "ratio", Caption: "Gallons of sap to one of syrup, or L to L",
		Head: []string{"Sap Brix", "Exact", "Rule of 86", "is off by"}}
	for _, sap := range sapStrengths {
		exact, err := yield.Ratio(sap, in.target)
		if err != nil {
			return err
		}
		rule, err := yield.RuleOf86(sap)
		if err != nil {
			return err
		}
		c.Ratio.Rows = append(c.Ratio.Rows, row{Cells: []string{
			number(float64(sap), 1), number(exact, 1), number(rule, 1), signed(100*(rule/exact-1), 1) + " %"}})
	}
	return nil
}

// sap fills in the corrections of the sap hydrometer.
func (c *card) sap(in *flags, s system, _ place) error {
	h := density.Hydrometer{GraduatedAt: in.sapGraduation}
	deg := s.degrees()
	c.Sap = table{ID: "sap", Caption: "Sap reading: add",
		Head: []string{"Sap " + deg[0], deg[1], "Brix"}}
	for _, at := range s.saps {
		b, err := h.Brix(correctedReading, at)
		if err != nil {
			return err
		}
		c.Sap.Rows = append(c.Sap.Rows, row{Cells: append(s.temperatures(at, true), signed(float64(b-correctedReading), 2))})
	}
	return nil
}

// packing fills in how much more to fill hot, for the volume on the label.
func (c *card) packing(in *flags, s system, _ place) error {
	deg := s.degrees()
	per := s.pair("fl oz to US qt", "mL to L")
	c.Fill = table{ID: "fill", Caption: "Hot filling: add",
		Head: []string{"Syrup " + deg[0], deg[1], per[0], per[1]}}
	for _, at := range s.fills {
		quart, err := density.HotVolume(units.USQuart, in.target, at)
		if err != nil {
			return err
		}
		liter, err := density.HotVolume(units.Liter, in.target, at)
		if err != nil {
			return err
		}
		more := s.pair(number((quart-units.USQuart).USFluidOunces(), 2), number((liter-units.Liter).Milliliters(), 0))
		c.Fill.Rows = append(c.Fill.Rows, row{Cells: append(s.temperatures(at, true), more...)})
	}
	return nil
}
