package yield_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/internal/check"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// The boundaries as printed, in Fahrenheit and as Celsius of the same.
func TestPackingHeatBoundaries(t *testing.T) {
	for f, want := range map[float64]yield.PackingHeat{
		100: yield.TooCool, 179.99: yield.TooCool,
		180: yield.EnoughToCap, 184.99: yield.EnoughToCap,
		185: yield.RightToFill, 190: yield.RightToFill,
		190.01: yield.HotterThanRead, 200: yield.HotterThanRead,
	} {
		for _, at := range []units.Temperature{units.Fahrenheit(f), units.Celsius((f - 32) * 5 / 9), units.Celsius((f - 32) / 1.8)} {
			if got, err := yield.PackingHeatOf(at); err != nil || got != want {
				t.Errorf("%v F: %v, %v; want %v", f, got, err, want)
			}
		}
	}
	for _, c := range []float64{0, 110} {
		if _, err := yield.PackingHeatOf(units.Celsius(c)); err != nil {
			t.Error(err)
		}
	}
	for _, c := range []float64{-0.1, 110.1, notNum, inf, -inf} {
		if got, err := yield.PackingHeatOf(units.Celsius(c)); !errors.Is(err, units.ErrRange) || got != 0 {
			t.Errorf("%v C: %v, %v", c, got, err)
		}
	}
	if yield.PackingHeat(0).String() != "no temperature" || yield.PackingHeat(9).String() != "no temperature" {
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
		var low, high yield.PackingHeat
		switch r.Text("item") {
		case "pack at":
			low, high = yield.RightToFill, 0
		case "at the filler":
			low, high = yield.RightToFill, yield.RightToFill
		case "at capping":
			low, high = yield.EnoughToCap, 0
		case "common practice at bottling":
			low, high = yield.HotterThanRead, 0
		default:
			continue
		}
		seen++
		if got, err := yield.PackingHeatOf(units.Fahrenheit(r.Float("low"))); err != nil || got != low {
			t.Errorf("%s, low: %v, %v", r.Name(), got, err)
		}
		if high != 0 {
			if got, err := yield.PackingHeatOf(units.Fahrenheit(r.Float("high"))); err != nil || got != high {
				t.Errorf("%s, high: %v, %v", r.Name(), got, err)
			}
		}
	}
	if seen != 4 {
		t.Errorf("%d rows of 4 found", seen)
	}
}

func glass(label units.Volume, m units.Mass) yield.Container {
	return yield.Container{Label: label, Mass: m}
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
		gained := yield.GlassHeat.Energy(c.Mass, meet.Sub(wall)).Joules()
		if !(math.Abs(lost-gained) <= 1e-6*(1+gained)) {
			t.Errorf("%v J lost, %v gained", lost, gained)
		}
		back, err := c.FillAt(b, meet, wall)
		if err != nil || !(math.Abs(float64(back.Sub(hot))) < 1e-7) {
			t.Errorf("FillAt %v, %v; want %v", back, err, hot)
		}
	}
}

func TestAfterFillingLimits(t *testing.T) {
	good := glass(units.USPint, units.Grams(300))
	hot, cold := units.Celsius(85), units.Celsius(20)
	refuse := func(name string, c yield.Container, b units.Brix, syrup, wall units.Temperature) {
		t.Helper()
		got, err := c.AfterFilling(b, syrup, wall)
		refused(t, name, "yield.Container.AfterFilling", got.Celsius(), err)
		got, err = c.FillAt(b, syrup, wall)
		refused(t, name, "yield.Container.FillAt", got.Celsius(), err)
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
	refused(t, "thick bottle", "yield.Container.FillAt", got.Celsius(), err)
}

func TestFilterLimits(t *testing.T) {
	for _, x := range []float64{-1, 1e6 + 1, notNum, inf} {
		if n, err := yield.FiltersFor(units.Volume(x), yield.GravityFilter); !errors.Is(err, units.ErrRange) || n != 0 {
			t.Errorf("FiltersFor(%v) = %v, %v", x, n, err)
		}
		m, err := yield.FilterAid(units.Volume(x), 1)
		refused(t, "FilterAid", "yield.FilterAid", float64(m), err)
	}
	for _, x := range []float64{0, 0.09, 1000.1, -1, notNum, inf} {
		if n, err := yield.FiltersFor(1, units.USGallons(x)); !errors.Is(err, units.ErrRange) || n != 0 {
			t.Errorf("FiltersFor(1, %v) = %v, %v", x, n, err)
		}
	}
	for v, want := range map[float64]int{0: 0, 0.1: 1, 3: 1, 3.01: 2, 6: 2, 9: 3} {
		if n, err := yield.FiltersFor(units.USGallons(v), yield.GravityFilter); err != nil || n != want {
			t.Errorf("FiltersFor(%v) = %v, %v; want %v", v, n, err, want)
		}
	}
	for _, x := range []float64{-1, 200.1, notNum, inf} {
		m, err := yield.FilterAid(1, units.Density(x))
		refused(t, "FilterAid", "yield.FilterAid", float64(m), err)
	}
	// More filters than can be counted are none.
	if n, err := yield.FiltersFor(1e6, units.USGallons(0.1)); !errors.Is(err, units.ErrRange) || n != 0 {
		t.Errorf("%d filters, %v", n, err)
	}
	// The longest time measured, and the longest told, a million hours.
	hot, warm := units.Celsius(80), units.Celsius(60)
	if _, err := yield.FilterTime(1000*time.Hour, 66, hot, hot); err != nil {
		t.Error(err)
	}
	if d, err := yield.FilterTime(1000*time.Hour+time.Second, 66, hot, hot); !errors.Is(err, units.ErrRange) || d != 0 {
		t.Errorf("a second more than 1000 h: %v, %v", d, err)
	}
	thin, err1 := sugar.Viscosity(80, units.Celsius(110))
	thick, err2 := sugar.Viscosity(80, units.Celsius(0))
	if err1 != nil || err2 != nil || thick < 2000*thin {
		t.Fatal(thin, thick, err1, err2)
	}
	least := float64(1e6*time.Hour) * float64(thin/thick)
	for share, ok := range map[float64]bool{1 - 1e-6: true, 1 + 1e-6: false} {
		d, err := yield.FilterTime(time.Duration(least*share), 80, units.Celsius(110), units.Celsius(0))
		if ok != (err == nil) || ok && !(math.Abs(d.Hours()/1e6-share) < 1e-9) {
			t.Errorf("%v of a million hours: %v, %v", share, d, err)
		}
	}
	for name, try := range map[string]func() (time.Duration, error){
		"negative": func() (time.Duration, error) { return yield.FilterTime(-1, 66, hot, warm) },
		"too long": func() (time.Duration, error) { return yield.FilterTime(1001*time.Hour, 66, hot, warm) },
		"brix":     func() (time.Duration, error) { return yield.FilterTime(time.Hour, 86, hot, warm) },
		"NaN":      func() (time.Duration, error) { return yield.FilterTime(time.Hour, units.Brix(notNum), hot, warm) },
		"at":       func() (time.Duration, error) { return yield.FilterTime(time.Hour, 66, units.Celsius(111), warm) },
		"now":      func() (time.Duration, error) { return yield.FilterTime(time.Hour, 66, hot, units.Celsius(-1)) },
		"pitch": func() (time.Duration, error) {
			return yield.FilterTime(1000*time.Hour, 85, units.Celsius(110), units.Celsius(0))
		},
	} {
		if d, err := try(); !errors.Is(err, units.ErrRange) || d != 0 {
			t.Errorf("%s: %v, %v", name, d, err)
		}
	}
	rng := rand.New(rand.NewPCG(4, 4))
	for range 200 {
		b, at, now := units.Brix(60+10*rng.Float64()), units.Celsius(50+50*rng.Float64()), units.Celsius(50+50*rng.Float64())
		there, err1 := yield.FilterTime(time.Hour, b, at, now)
		back, err2 := yield.FilterTime(there, b, now, at)
		if err1 != nil || err2 != nil || !((back - time.Hour).Abs() < time.Microsecond) || (at.Compare(now) > 0) != (there > time.Hour) {
			t.Errorf("%v from %v to %v: %v and back %v, %v, %v", b, at, now, there, back, err1, err2)
		}
	}
}

func TestCakeLossLimits(t *testing.T) {
	at := units.Celsius(80)
	got, err := yield.CakeLoss(5, 2, 1, 66.9, at)
	if err != nil || !(math.Abs(got.Mass().Kilograms()-2) < 1e-12) {
		t.Errorf("%v, %v", got.Mass(), err)
	}
	for _, bad := range [][3]float64{{-1, 0, 0}, {1e6 + 1, 0, 0}, {5, 5.1, 0}, {5, -1, 0}, {5, 3, 2.1}, {5, 3, -1}, {notNum, 0, 0}, {5, notNum, 0}, {5, 1, notNum}, {inf, 0, 0}} {
		if got, err := yield.CakeLoss(units.Mass(bad[0]), units.Mass(bad[1]), units.Mass(bad[2]), 66.9, at); !errors.Is(err, units.ErrRange) || !got.Empty() {
			t.Errorf("%v: %v, %v", bad, got, err)
		}
	}
	if got, err := yield.CakeLoss(5, 2, 1, 86, at); !errors.Is(err, units.ErrRange) || !got.Empty() {
		t.Errorf("86 Brix: %v, %v", got, err)
	}
}

func TestProducts(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 41))
	for range 500 {
		lot := lotOf(t, units.USGallons(0.1+5*rng.Float64()), units.Brix(60+10*rng.Float64()), units.Celsius(20))
		moisture := units.Share(35 * rng.Float64())
		w, err := yield.ProductWeight(lot, moisture)
		back, err2 := yield.ProductMoisture(lot, w)
		if err != nil || err2 != nil || !(math.Abs(float64(back-moisture)) < 1e-10) {
			t.Errorf("%v %v, %v, %v, %v", moisture, w, back, err, err2)
		}
	}
	lot := lotOf(t, units.USGallon, 66.9, units.Celsius(20))
	for _, x := range []float64{-0.1, 35.1, notNum, inf, -inf} {
		w, err := yield.ProductWeight(lot, units.Share(x))
		refused(t, "ProductWeight", "yield.ProductWeight", float64(w), err)
	}
	for _, lb := range []float64{7.40, 11.5, 0, -1, notNum, inf} {
		m, err := yield.ProductMoisture(lot, units.Pounds(lb))
		refused(t, "ProductMoisture", "yield.ProductMoisture", float64(m), err)
	}
	for _, none := range []sugar.Lot{{}, lotOf(t, 1, 0, units.Celsius(20))} {
		w, err := yield.ProductWeight(none, 5)
		refused(t, "no sugar", "yield.ProductWeight", float64(w), err)
		m, err := yield.ProductMoisture(none, 5)
		refused(t, "no sugar", "yield.ProductMoisture", float64(m), err)
	}
}

// The published yields are those of the table, and none is above the ceiling of
// the wettest product that practice makes.
func TestProductFigures(t *testing.T) {
	table, err := check.Load("confection-yields")
	if err != nil {
		t.Fatal(err)
	}
	ceiling, err := yield.ProductWeight(lotOf(t, units.USGallon, 66.9, units.Celsius(20)), 16) // as wet as cream at 23 F
	if err != nil {
		t.Fatal(err)
	}
	figures := yield.ProductFigures()
	if len(figures) != len(table.Rows) {
		t.Fatalf("%d products, the table has %d", len(figures), len(table.Rows))
	}
	for i, r := range table.Rows {
		f := figures[i]
		if f.Product != r.Text("product") || f.Obtained != r.Text("obtained") || f.Source != r.Text("source") ||
			!(math.Abs(f.Low.Pounds()-r.Float("low")) < 1e-9) || !(math.Abs(f.High.Pounds()-r.Float("high")) < 1e-9) {
			t.Errorf("%+v; the table has %v to %v of %s, %s, %s", f, r.Float("low"), r.Float("high"), r.Text("product"), r.Text("obtained"), r.Text("source"))
		}
		if f.High > ceiling {
			t.Errorf("%s: %v is above the ceiling %v", f.Product, f.High, ceiling)
		}
	}
}

func BenchmarkAfterFilling(b *testing.B) {
	b.ReportAllocs()
	c := glass(units.USPint, units.Grams(300))
	for b.Loop() {
		_, _ = c.AfterFilling(66.9, units.Celsius(85), units.Celsius(20))
	}
}
