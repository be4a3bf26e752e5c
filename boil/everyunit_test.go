package boil_test

import (
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// The documented limits of the functions that take a quantity with units, each
// in every unit that a user can write.
func TestLimitsInEveryUnit(t *testing.T) {
	errOf := limittest.Number
	c20 := units.Celsius(20)
	temp := func(name, low, high string, call func(units.Temperature) error) {
		limittest.InEveryUnit(t, name, low, high, units.ParseTemperature, call)
	}
	temp("Hydrometer.GraduatedAt", "1 C", "40 C", func(at units.Temperature) error {
		return errOf(density.Hydrometer{GraduatedAt: at}.Brix(60, c20))
	})
	temp("Solution", "0 C", "110 C", func(at units.Temperature) error { return errOf(density.Solution(66, at)) })
	temp("Refractometer", "10 C", "30 C", func(at units.Temperature) error { return errOf(density.Refractometer{}.Brix(60, at)) })
	temp("Flask", "1 C", "40 C", func(at units.Temperature) error {
		return errOf(density.Flask{Volume: units.Liter, CalibratedAt: at}.Brix(1.2*units.Kilogram, c20))
	})
	temp("NewLot", "0 C", "110 C", func(at units.Temperature) error { return errOf(sugar.NewLot(units.Liter, 66, at)) })
	temp("WaterActivity", "-20 C", "140 C", func(at units.Temperature) error { return errOf(sugar.WaterActivity(66, at)) })
	temp("Enthalpy", "0 C", "120 C", func(at units.Temperature) error { return errOf(sugar.Enthalpy(66, at)) })
	temp("Saturation", "0 C", "110 C", func(at units.Temperature) error { return errOf(sugar.Charles.Saturation(at)) })
	temp("Viscosity", "0 C", "110 C", func(at units.Temperature) error { return errOf(sugar.Viscosity(66, at)) })
	temp("FreezeTo", "-10 C", "0 C", func(at units.Temperature) error {
		sap, _ := sugar.NewLot(units.Liter, 2, units.Celsius(1))
		return errOf(sugar.FreezeTo(sap, at, sugar.CleanIce))
	})
	temp("BrixFromFreezingPoint", "", "0 C", func(at units.Temperature) error { return errOf(sugar.BrixFromFreezingPoint(at)) })
	temp("LatentHeat", "0 C", "140 C", func(at units.Temperature) error { return errOf(boil.LatentHeat(at)) })
	temp("Overnight", "-60 C", "60 C", func(at units.Temperature) error {
		return errOf(pan.Contents{{Sugar: 1, Water: 9, Temperature: units.Celsius(90)}}.Overnight(pan.Night{Air: at, Halving: 3600e9}))
	})
	limittest.InEveryUnit(t, "NewLot, volume", "", "1e6 m3", units.ParseVolume, func(v units.Volume) error { return errOf(sugar.NewLot(v, 2, c20)) })
	limittest.InEveryUnit(t, "NewLotByMass", "", "1e9 kg", units.ParseMass, func(m units.Mass) error { return errOf(sugar.NewLotByMass(m, 2, c20)) })
	limittest.InEveryUnit(t, "AdditionBrix", "1e-6 kg", "", units.ParseMass, func(m units.Mass) error {
		l, _ := sugar.NewLotByMass(1, 60, c20)
		return errOf(sugar.AdditionBrix(l, m, 60))
	})
	limittest.InEveryUnit(t, "TransmissionAtPath", "1e-4 m", "1 m", units.ParseLength, func(d units.Length) error {
		return errOf(sugar.TransmissionAtPath(50, units.Centimeter, d))
	})
	limittest.InEveryUnit(t, "Membrane.Limit", "0.1 bar", "", units.ParsePressure, func(p units.Pressure) error {
		return errOf(sugar.Membrane{Pump: p}.Limit(c20))
	})
	limittest.InEveryUnit(t, "Membrane.Time", "1e-8 m3/s", "1 m3/s", units.ParseVolumeRate, func(q units.VolumeRate) error {
		return errOf(sugar.Membrane{Flow: q}.Time(units.Milliliter, 100))
	})
	limittest.InEveryUnit(t, "Water", "", "3000 kPa", units.ParsePressure, func(p units.Pressure) error { return errOf(boil.Water(p)) })
	limittest.InEveryUnit(t, "Rise", "20 kPa", "120 kPa", units.ParsePressure, func(p units.Pressure) error { return errOf(boil.Rise(66, p)) })
	limittest.InEveryUnit(t, "PressureAt", "-500 m", "5000 m", units.ParseLength, func(z units.Length) error { return errOf(boil.PressureAt(z)) })
	limittest.InEveryUnit(t, "StationPressure", "25 inHg", "32.5 inHg", units.ParsePressure, func(p units.Pressure) error {
		return errOf(boil.StationPressure(p, 300))
	})
	limittest.InEveryUnit(t, "FaceCord", "0.15 m", "2.5 m", units.ParseLength, func(l units.Length) error { return errOf(fuel.FaceCord(l)) })
	limittest.InEveryUnit(t, "PanRate", "", "1000 m2", units.ParseArea, func(a units.Area) error { return errOf(boil.PanRate(boil.FlatPan, a)) })
	limittest.InEveryUnit(t, "HeatRate", "", "1e9 W", units.ParsePower, func(w units.Power) error {
		return errOf(fuel.HeatRate(w, fuel.Delivered, boil.HeatDemand{Sugar: 1, Water: 10, Latent: 2e7, From: 2, To: 66}, fuel.Efficiency{}))
	})
	limittest.InEveryUnit(t, "WoodHeat", "", "70 %", units.ParseShare, func(m units.Share) error { return errOf(fuel.WoodHeat(fuel.WetMoisture(m))) })
	limittest.InEveryUnit(t, "Concentrate", "", "85 Brix", units.ParseBrix, func(b units.Brix) error {
		sap, _ := sugar.NewLot(units.Liter, 2, c20)
		return errOf(sugar.Concentrate(sap, b))
	})
}
