package yield_test

import (
	"errors"
	"testing"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/money"
	"example.org/sapreckoner/yield/packing"
)

func syrupLot(t *testing.T, v units.Volume) sugar.Lot {
	t.Helper()
	l, err := sugar.NewLot(v, 66.9, units.Celsius(20))
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// The documented limits of tanks, containers, lots, filters, products, stores
// and accounts, each in every unit that a user can write.
func TestLimitsInEveryUnit(t *testing.T) {
	num := limittest.Number
	c20 := units.Celsius(20)
	length := func(name, low, high string, call func(units.Length) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseLength, call)
	}
	volume := func(name, low, high string, call func(units.Volume) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseVolume, call)
	}
	mass := func(name, low, high string, call func(units.Mass) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseMass, call)
	}
	share := func(name, low, high string, call func(units.Share) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseShare, call)
	}
	temp := func(name, low, high string, call func(units.Temperature) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseTemperature, call)
	}
	brix := func(name, low, high string, call func(units.Brix) error) {
		t.Helper()
		limittest.InEveryUnit(t, name, low, high, units.ParseBrix, call)
	}
	full := func(tank yield.Tank, err error) error {
		if err != nil {
			return err
		}
		if err := num(tank.Volume(tank.Height())); err != nil {
			return err
		}
		return num(tank.Depth(tank.Capacity()))
	}
	const m = units.Meter
	length("RectangularTank", "1 cm", "30 m", func(l units.Length) error { return full(yield.RectangularTank(l, m, l)) })
	length("UprightCylinder", "1 cm", "30 m", func(l units.Length) error { return full(yield.UprightCylinder(l, l)) })
	length("LyingCylinder", "1 cm", "30 m", func(l units.Length) error { return full(yield.LyingCylinder(l, l)) })
	length("LyingEllipse", "1 cm", "30 m", func(l units.Length) error { return full(yield.LyingEllipse(m, l, l)) })
	length("HalfEllipseTrough", "1 cm", "30 m", func(l units.Length) error { return full(yield.HalfEllipseTrough(m, l, l)) })
	length("Pail", "1 cm", "30 m", func(l units.Length) error { return full(yield.Pail(l, m, l)) })
	box, err := yield.RectangularTank(48*units.Inch, 24*units.Inch, 10.16*units.Centimeter)
	if err != nil {
		t.Fatal(err)
	}
	lying, err := yield.LyingCylinder(36*units.Inch, 48*units.Inch)
	if err != nil {
		t.Fatal(err)
	}
	length("Tank.Volume", "", "4 in", func(l units.Length) error { return num(box.Volume(l)) })
	length("Tank.Volume, lying", "", "1 yd", func(l units.Length) error { return num(lying.Volume(l)) })
	length("Tank.Dipstick", "", "4 in", func(l units.Length) error { return num(box.Dipstick(nil, l)) })
	volume("Tank.Depth", "", "4608 in3", func(v units.Volume) error { return num(box.Depth(v)) })
	volume("Tank.DipstickByVolume", "", "4608 in3", func(v units.Volume) error { return num(box.DipstickByVolume(nil, v)) })

	volume("Container.Label", "1 mL", "250 L", func(v units.Volume) error {
		_, err := packing.Container{Label: v}.Fill(66.9, c20, 0)
		return err
	})
	volume("Container.Brimful", "1 US pt", "500 L", func(v units.Volume) error {
		f, err := packing.Container{Label: units.USPint, Brimful: v}.Fill(66.9, c20, 0)
		if err == nil && f.Headspace < 0 {
			return errors.New("less than no headspace")
		}
		return err
	})
	share("margin", "", "10 %", func(s units.Share) error {
		_, err := packing.Container{Label: units.USPint}.Fill(66.9, c20, s)
		return err
	})
	jar := func(at, wall units.Temperature, m units.Mass, c units.SpecificHeat) error {
		return num(packing.Container{Label: units.USQuart, Mass: m, SpecificHeat: c}.AfterFilling(66.9, at, wall))
	}
	temp("AfterFilling", "0 C", "110 C", func(at units.Temperature) error { return jar(at, c20, units.Pound, 0) })
	temp("AfterFilling, wall", "0 C", "110 C", func(at units.Temperature) error { return jar(units.Celsius(85), at, units.Pound, 0) })
	temp("WarmTo", "", "185 F", func(at units.Temperature) error {
		return num(packing.Container{Label: units.USQuart, Mass: units.Pound}.WarmTo(66.9, units.Celsius(85), at))
	})
	temp("PackingHeatOf", "0 C", "110 C", func(at units.Temperature) error { return num(packing.PackingHeatOf(at)) })
	mass("Container.Mass", "1 g", "100 kg", func(m units.Mass) error { return jar(units.Celsius(85), c20, m, 0) })
	limittest.InEveryUnit(t, "Container.SpecificHeat", "0.1 kJ/(kg K)", "5 kJ/(kg K)", units.ParseSpecificHeat, func(c units.SpecificHeat) error {
		return jar(units.Celsius(85), c20, units.Pound, c)
	})
	volume("CheckNet", "1 mL", "250 L", func(v units.Volume) error {
		return num(packing.CheckNet(v, 66.9, 0, 0, []units.Mass{units.Pound}))
	})
	mass("CheckNet, net", "", "1000 kg", func(m units.Mass) error {
		return num(packing.CheckNet(units.Liter, 66.9, 0, 0, []units.Mass{m}))
	})
	volume("FewestContainers, lot", "1 mL", "200 m3", func(v units.Volume) error {
		return num(packing.FewestContainers(syrupLot(t, v), 0, packing.Supply{Container: packing.Container{Label: units.Milliliter, Brimful: 2 * units.Milliliter}, OnHand: 3}))
	})

	volume("FiltersFor", "", "1e6 m3", func(v units.Volume) error { return num(packing.FiltersFor(v, packing.GravityFilter)) })
	volume("FiltersFor, perFilter", "0.1 US gal", "1000 US gal", func(v units.Volume) error { return num(packing.FiltersFor(units.Liter, v)) })
	limittest.InEveryUnit(t, "FilterAid", "", "200 kg/m3", units.ParseDensity, func(d units.Density) error { return num(packing.FilterAid(units.Liter, d)) })
	mass("CakeLoss", "", "1e6 kg", func(m units.Mass) error { return num(packing.CakeLoss(m, 0, 0, 66.9, c20)) })
	mass("CakeLoss, dry aid", "", "11 lb", func(m units.Mass) error { return num(packing.CakeLoss(11*units.Pound, m, 0, 66.9, c20)) })
	mass("CakeLoss, niter", "", "9 lb", func(m units.Mass) error {
		return num(packing.CakeLoss(11*units.Pound, 2*units.Pound, m, 66.9, c20))
	})
	share("ProductWeight", "", "35 %", func(s units.Share) error { return num(finish.ProductWeight(syrupLot(t, units.Liter), s)) })
	volume("LayIn, syrup", "", "1e6 m3", func(v units.Volume) error {
		return num(packing.LayIn(100, v, packing.Container{Label: 250 * units.Liter}, packing.Habits{SyrupPerCord: 20 * units.USGallon}))
	})
	habits := func(h packing.Habits) error {
		if h.SyrupPerCord == 0 {
			h.SyrupPerCord = 20 * units.USGallon
		}
		return num(packing.LayIn(100, 25*units.USGallon, packing.Container{Label: units.USQuart}, h))
	}
	volume("Habits.SyrupPerCord", "0.1 US gal", "100 US gal", func(v units.Volume) error { return habits(packing.Habits{SyrupPerCord: v}) })
	volume("Habits.PerFilter", "0.1 US gal", "1000 US gal", func(v units.Volume) error { return habits(packing.Habits{PerFilter: v}) })
	volume("Habits.PeakPerTap", "0.1 US gal", "20 US gal", func(v units.Volume) error { return habits(packing.Habits{PeakPerTap: v}) })
	share("Habits.Spare", "", "100 %", func(s units.Share) error { return habits(packing.Habits{Spare: s}) })
	volume("PeakPerTap", "", "1e6 m3", func(v units.Volume) error { return num(packing.PeakPerTap([]units.Volume{v}, 1)) })
	volume("PastSeason.PerTap", "", "1e6 m3", func(v units.Volume) error { return num(yield.PastSeason{Taps: 1, Syrup: v}.PerTap()) })
	mass("BySugar", "", "1e7 kg", func(m units.Mass) error { return num(money.BySugar("a", m)) })
	volume("Jars.Label", "1 mL", "10 m3", func(v units.Volume) error {
		who, err := money.ByTaps("a", 1)
		if err != nil {
			return err
		}
		return num(money.DivideJars([]money.Jars{{Label: v, Count: 1}}, []money.Contribution{who}))
	})
	mass("Books, part", "1e-6 kg", "1e9 kg", func(m units.Mass) error {
		_, err := yield.NewBooks([]yield.Boil{{ID: "b"}}, []yield.BulkLot{{ID: "l", Parts: []yield.Part{{From: "b", Mass: m}}}}, nil)
		return err
	})

	season := yield.Season{
		Sap: []sugar.Lot{syrupLot(t, 10*units.Liter)}, SapMeasured: yield.Measured{Volume: 2 * units.Percent, Brix: 0.1},
		HeldMeasured: yield.Measured{Volume: 2 * units.Percent, Brix: 0.1},
	}
	share("Measured.Volume", "0.01 %", "50 %", func(s units.Share) error {
		own := season
		own.SapMeasured.Volume = s
		_, err := own.Account()
		return err
	})
	brix("Measured.Brix", "0.01 Brix", "5 Brix", func(b units.Brix) error {
		own := season
		own.SapMeasured.Brix = b
		_, err := own.Account()
		return err
	})
	positive := func(v units.Volume, err error) error {
		if err == nil && v < 0 {
			return errors.New("less than no syrup")
		}
		return num(v, err)
	}
	share("Expect, loss", "", "100 %", func(s units.Share) error { return positive(season.Expect(s, 66.9)) })
	brix("Expect, syrup", "60 Brix", "85 Brix", func(b units.Brix) error { return positive(season.Expect(0, b)) })
	brix("Ratio, sap", "0.1 Brix", "66.9 Brix", func(b units.Brix) error { return num(yield.Ratio(b, 66.9)) })
	brix("Ratio, syrup", "0.1 Brix", "85 Brix", func(b units.Brix) error { return num(yield.Ratio(0.1, b)) })
	brix("RuleOf86", "0.5 Brix", "30 Brix", func(b units.Brix) error { return num(yield.RuleOf86(b)) })
}
