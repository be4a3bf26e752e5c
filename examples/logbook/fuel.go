package main

import "strings"

// liquid reports whether the fuel is measured as a liquid.
func (s *setup) liquid() bool { return s.Fuel == "oil" || s.Fuel == "propane" }

// fuelName is the fuel in words.
func (s *setup) fuelName() string {
	if s.liquid() {
		return s.Fuel
	}
	return strings.ToLower(s.Wood) + ", " + s.Moisture.Text(0) + " moisture"
}
