package packing_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// The boundaries as printed, in Fahrenheit and as Celsius of the same.
func TestPackingHeatBoundaries(t *testing.T) {
	for f, want := range map[float64]packing.PackingHeat{
		100: packing.TooCool, 179.99: packing.TooCool,
		180: packing.EnoughToCap, 184.99: packing.EnoughToCap,
		185: packing.RightToFill, 190: packing.RightToFill,
		190.01: packing.HotterThanRead, 200: packing.HotterThanRead,
	} {
		for _, at := range []units.Temperature{units.Fahrenheit(f), units.Celsius((f - 32) * 5 / 9), units.Celsius((f - 32) / 1.8)} {
			if got, err := packing.PackingHeatOf(at); err != nil || got != want {
				t.Errorf("%v F: %v, %v; want %v", f, got, err, want)
			}
		}
	}
	for _, c := range []float64{0, 110} {
		if _, err := packing.PackingHeatOf(units.Celsius(c)); err != nil {
			t.Error(err)
		}
	}
	for _, c := range []float64{-0.1, 110.1, notNum, inf, -inf} {
		if got, err := packing.PackingHeatOf(units.Celsius(c)); !errors.Is(err, units.ErrRange) || got != 0 {
			t.Errorf("%v C: %v, %v", c, got, err)
		}
	}
	if packing.PackingHeat(0).String() != "no temperature" || packing.PackingHeat(9).String() != "no temperature" {
		t.Error("what is no packing heat has advice")
	}
}

// The boundaries are those of the published table.
func TestPackingHeatMatchesTheTable(t *testing.T) {
	table, err := check.Load("hot-pack")
	if err != nil {
		t.Fatal(err)
	}
	seen := 0
	for _, r := range table.Rows {
		var low, high packing.PackingHeat
		switch r.Text("item") {
		case "pack at":
			low, high = packing.RightToFill, 0
		case "at the filler":
			low, high = packing.RightToFill, packing.RightToFill
		case "at capping":
			low, high = packing.EnoughToCap, 0
		case "common practice at bottling":
			low, high = packing.HotterThanRead, 0
		default:
			continue
		}
		seen++
		if got, err := packing.PackingHeatOf(units.Fahrenheit(r.Float("low"))); err != nil || got != low {
			t.Errorf("%s, low: %v, %v", r.Name(), got, err)
		}
		if high != 0 {
			if got, err := packing.PackingHeatOf(units.Fahrenheit(r.Float("high"))); err != nil || got != high {
				t.Errorf("%s, high: %v, %v", r.Name(), got, err)
			}
		}
	}
	if seen != 4 {
		t.Errorf("%d rows of 4 found", seen)
	}
}

func glass(label units.Volume, m units.Mass) packing.Container {
	return packing.Container{Label: label, Mass: m}
}

func TestAfterFilling(t *testing.T) {
	rng := rand.New(rand.NewPCG(180, 185))
	for range 1000 {
		c := glass(units.Milliliters(20+1000*rng.Float64()), units.Grams(5+500*rng.Float64()))
		b := units.Brix(60 + 20*rng.Float64())
		wall, hot := units.Celsius(40*rng.Float64()), units.Celsius(60+40*rng.Float64())
		meet, err := c.AfterFilling(b, hot, wall)
		if err != nil {
			t.Fatal(err)
		}
		if meet.Compare(wall) < 0 || meet.Compare(hot) > 0 {
			t.Errorf("%v in %v meet at %v", hot, wall, meet)
		}
		// What the syrup loses the glass gains.
		fill, _ := c.Fill(b, units.Celsius(20), 0)
		before, _ := sugar.Enthalpy(b, hot)
		after, _ := sugar.Enthalpy(b, meet)
		lost := (before - after).Energy(fill.NetMass).Joules()
		gained := packing.GlassHeat.Energy(c.Mass, meet.Sub(wall)).Joules()
		if !(math.Abs(lost-gained) <= 1e-6*(1+gained)) {
			t.Errorf("%v J lost, %v gained", lost, gained)
		}
		back, err := c.FillAt(b, meet, wall)
		if err != nil || !(math.Abs(float64(back.Sub(hot))) < 1e-7) {
			t.Errorf("FillAt %v, %v; want %v", back, err, hot)
		}
		warm, err := c.WarmTo(b, hot, meet)
		if err != nil || !(math.Abs(float64(warm.Sub(wall))) < 1e-6) {
			t.Errorf("WarmTo %v, %v; want %v", warm, err, wall)
		}
	}
}

func TestAfterFillingLimits(t *testing.T) {
	good := glass(units.USPint, units.Grams(300))
	hot, cold := units.Celsius(85), units.Celsius(20)
	refuse := func(name string, c packing.Container, b units.Brix, syrup, wall units.Temperature) {
		t.Helper()
		got, err := c.AfterFilling(b, syrup, wall)
		refused(t, name, "packing.Container.AfterFilling", got.Celsius(), err)
		got, err = c.FillAt(b, syrup, wall)
		refused(t, name, "packing.Container.FillAt", got.Celsius(), err)
		got, err = c.WarmTo(b, syrup, wall)
		refused(t, name, "packing.Container.WarmTo", got.Celsius(), err)
	}
	for _, x := range []float64{-0.1, 110.1, notNum, inf, -inf} {
		refuse("syrup", good, 66.9, units.Celsius(x), cold)
		refuse("wall", good, 66.9, hot, units.Celsius(x))
	}
	for _, x := range []float64{-0.1, 85.1, notNum, inf, -inf} {
		refuse("brix", good, units.Brix(x), hot, cold)
	}
	for _, x := range []float64{0, 0.0009, 100.1, -1, notNum, inf} {
		refuse("mass", glass(units.USPint, units.Mass(x)), 66.9, hot, cold)
	}
	for _, x := range []float64{0.09, 5.1, -1, notNum, inf} {
		c := good
		c.SpecificHeat = units.KilojoulesPerKilogramKelvin(x)
		refuse("specific heat", c, 66.9, hot, cold)
	}
	refuse("no label", glass(0, units.Grams(300)), 66.9, hot, cold)
	if got, err := good.AfterFilling(66.9, units.Celsius(110), units.Celsius(0)); err != nil {
		t.Errorf("%v, %v", got, err)
	}
	// A thick little bottle at the frost would need syrup hotter than it gets.
	// An answer between 110 C and where the enthalpy ends is no temperature of packing.
	heavy := glass(units.USPint, units.Grams(200))
	over, err := heavy.FillAt(66.9, units.Celsius(105), units.Celsius(20))
	if e := (*units.RangeError)(nil); !errors.As(err, &e) || e.Arg != "answer" || e.Low != 0 || e.High != 110 || !(over.Celsius() > 110) {
		t.Errorf("%v, %v", over, err)
	}
	got, err := glass(units.Milliliters(50), units.Grams(150)).FillAt(66.9, units.Fahrenheit(180), units.Celsius(0))
	refused(t, "thick bottle", "packing.Container.FillAt", got.Celsius(), err)
}

func TestWarmTo(t *testing.T) {
	quart := glass(units.USQuart, units.Grams(440))
	// No warm glass heats syrup that is poured below the heat that is asked for.
	got, err := quart.WarmTo(66.9, units.Fahrenheit(179), units.Fahrenheit(180))
	refused(t, "too cool", "packing.Container.WarmTo", got.Celsius(), err)
	if got, err := quart.WarmTo(66.9, units.Fahrenheit(180), units.Fahrenheit(180)); err != nil || got.Compare(units.Fahrenheit(180)) != 0 {
		t.Errorf("nothing to lose: %v, %v", got, err)
	}
	// From 190 to 100 F the syrup gives 90/1.8 x 1.257 kg x 2.8 kJ, far more than
	// 0.37 kJ/K of glass take from the frost to 100 F, 14 kJ.
	if got, err := quart.WarmTo(66.9, units.Fahrenheit(190), units.Fahrenheit(100)); err != nil || got.Celsius() != 0 {
		t.Errorf("any empties: %v, %v", got, err)
	}
}

func BenchmarkAfterFilling(b *testing.B) {
	b.ReportAllocs()
	c := glass(units.USPint, units.Grams(300))
	for b.Loop() {
		_, _ = c.AfterFilling(66.9, units.Celsius(85), units.Celsius(20))
	}
}
