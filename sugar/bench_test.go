package sugar_test

import (
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func BenchmarkNewLot(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := sugar.NewLot(units.USGallon, 66.9, units.Celsius(20)); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkBlend(b *testing.B) {
	syrup, err := sugar.NewLot(units.USGallon, 66.9, units.Celsius(90))
	if err != nil {
		b.Fatal(err)
	}
	sap, err := sugar.NewLot(units.USGallon, 2, units.Celsius(5))
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := sugar.Blend(syrup, sap); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkThin(b *testing.B) {
	syrup, err := sugar.NewLot(units.USGallon, 68.9, units.Celsius(20))
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := sugar.Thin(syrup, 0, units.Celsius(20), 66.9); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkMembraneConcentrate(b *testing.B) {
	sap, err := sugar.NewLot(units.USGallon, 2, units.Celsius(13))
	if err != nil {
		b.Fatal(err)
	}
	m := sugar.Membrane{Pump: 30 * units.Bar, Passage: 1}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := m.Concentrate(sap, 8); err != nil {
			b.Fatal(err)
		}
	}
}
