package main

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// A system is the units of the card: the first in round steps, the other beside
// it.
type system struct {
	metric bool
	band   units.Pressure      // step of the barometer
	cups   []units.Temperature // rows of the hydrometer table, hottest first
	saps   []units.Temperature // rows of the sap table
	fills  []units.Temperature // rows of the packing table, 180 F and above
}

func newSystem(metric bool) system {
	if metric {
		return system{true, 5 * units.Hectopascal,
			scale(units.Celsius, 100, 98, 95, 92, 90, 85, 80, 70, 60, 50, 40, 30, 20),
			scale(units.Celsius, 0, 4, 8, 12, 16, 20),
			scale(units.Celsius, 83, 84, 85, 86, 87)}
	}
	return system{false, 0.2 * units.InchMercury,
		scale(units.Fahrenheit, 210, 205, 200, 195, 190, 180, 170, 160, 140, 120, 100, 80, 60),
		scale(units.Fahrenheit, 32, 40, 45, 50, 55, 60, 70),
		scale(units.Fahrenheit, 180, 183, 185, 187, 190)}
}

// below leaves out the rows that no syrup reaches which boils at the given
// temperature: poured, it is at once a little cooler than in the pan.
func (s system) below(boils units.Temperature) system {
	hottest := boils.Add(-units.CelsiusDegree)
	beyond := func(t units.Temperature) bool { return t.Compare(hottest) > 0 }
	s.cups, s.fills = slices.DeleteFunc(s.cups, beyond), slices.DeleteFunc(s.fills, beyond)
	return s
}

func scale(in func(float64) units.Temperature, rows ...float64) []units.Temperature {
	t := make([]units.Temperature, len(rows))
	for i, x := range rows {
		t[i] = in(x)
	}
	return t
}

// pair puts the unit of the system first.
func (s system) pair(us, metric string) []string {
	if s.metric {
		return []string{metric, us}
	}
	return []string{us, metric}
}

func (s system) beside(us, metric string) string {
	p := s.pair(us, metric)
	return p[0] + " (" + p[1] + ")"
}

// first chooses the figure that the axis of a plot shows.
func (s system) first(us, metric float64) float64 {
	if s.metric {
		return metric
	}
	return us
}

func (s system) degrees() []string { return s.pair("°F", "°C") }

func (s system) both(t units.Temperature, decimals int) []string {
	return s.pair(number(t.Fahrenheit(), decimals)+" °F", number(t.Celsius(), decimals)+" °C")
}

func (s system) temperature(t units.Temperature) string {
	p := s.both(t, 1)
	return p[0] + " (" + p[1] + ")"
}

// whole is for temperatures that are given in whole degrees.
func (s system) whole(t units.Temperature) string {
	p := s.both(t, 0)
	return p[0] + " (" + p[1] + ")"
}

// atLeast rounds up what must be reached: 82.2 °C is 83 °C.
func (s system) atLeast(t units.Temperature) string {
	const hair = 1e-6 // 180 °F is not 181
	up := func(x float64) string { return number(math.Ceil(x-hair), 0) }
	return s.beside(up(t.Fahrenheit())+" °F", up(t.Celsius())+" °C")
}

func (s system) rise(d units.TempDiff) string {
	return s.beside(number(d.FahrenheitDegrees(), 1)+" °F", number(d.CelsiusDegrees(), 1)+" °C")
}

func (s system) pressure(p units.Pressure) string {
	return s.beside(number(p.InchesMercury(), 2)+" inHg", number(p.Hectopascals(), 0)+" hPa")
}

func (s system) length(l units.Length) string {
	return s.beside(number(l.Feet(), 0)+" ft", number(l.Meters(), 0)+" m")
}

// temperatures are the cells of t; round has no decimals in the first of them.
func (s system) temperatures(t units.Temperature, round bool) []string {
	first, second := 1, 1
	if round {
		first = 0
	}
	if s.metric {
		first, second = second, first
	}
	return s.pair(number(t.Fahrenheit(), first), number(t.Celsius(), second))
}

// number prints x with a true minus sign, and zero without one.
func number(x float64, decimals int) string {
	s := strconv.FormatFloat(x, 'f', decimals, 64)
	if digits, negative := strings.CutPrefix(s, "-"); negative {
		if strings.Trim(digits, "0.") == "" {
			return digits
		}
		return "−" + digits
	}
	return s
}

// signed prints x with its sign, and zero without one.
func signed(x float64, decimals int) string {
	s := number(x, decimals)
	if x > 0 && strings.Trim(s, "0.") != "" {
		return "+" + s
	}
	return s
}

func strength(b units.Brix) string { return number(float64(b), 1) + " Brix" }

func degreesBaume(b density.Baume145) string { return number(float64(b), 1) + " Baumé" }
