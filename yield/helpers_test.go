package yield_test

import (
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

func glass(label units.Volume, m units.Mass) packing.Container {
	return packing.Container{Label: label, Mass: m}
}

func jar(label units.Volume) packing.Container { return packing.Container{Label: label} }

// lotOf makes a lot or fails the test.
func lotOf(t testing.TB, v units.Volume, b units.Brix, at units.Temperature) sugar.Lot {
	t.Helper()
	l, err := sugar.NewLot(v, b, at)
	if err != nil {
		t.Fatal(err)
	}
	return l
}
