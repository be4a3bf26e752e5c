package packing_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// lotOf makes a lot or fails the test.
func lotOf(t testing.TB, v units.Volume, b units.Brix, at units.Temperature) sugar.Lot {
	t.Helper()
	l, err := sugar.NewLot(v, b, at)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func jar(label units.Volume) packing.Container { return packing.Container{Label: label} }

func TestFillLimits(t *testing.T) {
	c := packing.Container{Label: units.USPint, Brimful: units.Milliliters(500)}
	f, err := c.Fill(66.9, units.Fahrenheit(185), 0)
	if over := float64(f.Hot/f.Content) - 1; !(math.Abs(f.Overfill.Fraction()-over) <= 1e-12) || !(over > 0.02 && over < 0.05) {
		t.Errorf("overfilled by %v, want %v", f.Overfill, over)
	}
	if err != nil || !(math.Abs(float64(c.Brimful-f.Hot-f.Headspace)) < 1e-15) || !(f.CooledHead > f.Headspace) {
		t.Errorf("%+v, %v", f, err)
	}
	if f, err := jar(units.USPint).Fill(66.9, units.Fahrenheit(185), 0); err != nil || !math.IsNaN(float64(f.Headspace)) || !math.IsNaN(float64(f.CooledHead)) {
		t.Errorf("a brim not known: %+v, %v", f, err)
	}
	for _, ok := range []packing.Container{jar(units.Milliliter), jar(units.Liters(250)), {Label: units.Liters(200), Brimful: units.Liters(500)}} {
		if _, err := ok.Fill(0, units.Celsius(0), 10); err != nil {
			t.Error(err)
		}
	}
	for name, bad := range map[string]packing.Container{
		"no label":         {},
		"label NaN":        jar(units.Volume(notNum)),
		"label infinite":   jar(units.Volume(inf)),
		"label negative":   jar(-units.USPint),
		"label too small":  jar(units.Milliliters(0.99)),
		"label too large":  jar(units.Liters(250.1)),
		"brim below label": {Label: units.USPint, Brimful: units.USPint},
		"brim NaN":         {Label: units.USPint, Brimful: units.Volume(notNum)},
		"brim negative":    {Label: units.USPint, Brimful: -1},
		"brim too large":   {Label: units.USPint, Brimful: units.Liters(500.001)},
		"brim infinite":    {Label: units.USPint, Brimful: units.Volume(inf)},
	} {
		if f, err := bad.Fill(66.9, units.Fahrenheit(185), 0); !errors.Is(err, units.ErrRange) || f != (packing.Filling{}) {
			t.Errorf("%s: %+v, %v", name, f, err)
		}
	}
	for _, margin := range []float64{-0.1, 10.1, notNum, inf, -inf} {
		if f, err := c.Fill(66.9, units.Fahrenheit(185), units.Share(margin)); !errors.Is(err, units.ErrRange) || f != (packing.Filling{}) {
			t.Errorf("margin %v: %+v, %v", margin, f, err)
		}
	}
	if _, err := c.Fill(86, units.Fahrenheit(185), 0); !errors.Is(err, units.ErrRange) {
		t.Errorf("86 Brix: %v", err)
	}
	if _, err := c.Fill(66, units.Fahrenheit(300), 0); !errors.Is(err, units.ErrRange) {
		t.Errorf("300 F: %v", err)
	}
}

func TestPlansAddUp(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 9))
	labels := []units.Volume{units.Liters(208), units.USGallons(5), units.USGallon, units.USQuart, units.USPint, units.Liters(0.25)}
	for range 100 {
		lot := lotOf(t, units.Liters(math.Pow(10, -1+3.5*rng.Float64())), units.Brix(60+9*rng.Float64()), units.Fahrenheit(60+140*rng.Float64()))
		var supplies []packing.Supply
		var mix []packing.Mix
		for range 1 + rng.IntN(4) {
			c := jar(labels[rng.IntN(len(labels))])
			supplies = append(supplies, packing.Supply{Container: c, OnHand: rng.IntN(60)})
			mix = append(mix, packing.Mix{Container: c, Parts: 1 + rng.IntN(5)})
		}
		margin := units.Share(rng.Float64())
		few, err1 := packing.FewestContainers(lot, margin, supplies...)
		mixed, err2 := packing.InMix(lot, margin, mix...)
		if err1 != nil || err2 != nil {
			t.Fatal(err1, err2)
		}
		at68, _ := lot.VolumeAt(units.Celsius(20))
		for name, p := range map[string]packing.PackPlan{"few": few, "mixed": mixed} {
			packed, least := 0.0, inf
			for i, l := range p.Lines {
				packed += float64(l.Count) * float64(l.Filling.Content)
				if name == "few" && l.Count < supplies[i].OnHand || name == "mixed" {
					least = math.Min(least, float64(l.Filling.Content))
				}
				if l.Count < 0 || name == "few" && l.Count > supplies[i].OnHand || name == "mixed" && l.Count < p.Sets*mix[i].Parts {
					t.Errorf("%s: line %d has %d", name, i, l.Count)
				}
			}
			if !(math.Abs(packed-float64(p.Packed)) <= 1e-9) || !(math.Abs(float64((p.Packed+p.Left)/at68)-1) <= 1e-12) {
				t.Errorf("%s: %v packed, %v left of %v", name, p.Packed, p.Left, at68)
			}
			if !(math.Abs(float64(p.LeftMass/lot.Mass())-float64(p.Left/at68)) <= 1e-12) {
				t.Errorf("%s: %v left", name, p.LeftMass)
			}
			if !(p.Left >= 0) || !(float64(p.Left) <= least) {
				t.Errorf("%s: %v left, enough for another container of %v", name, p.Left, least)
			}
		}
	}
}

// 50.25 mL rounded up to a tenth of a milliliter, 463 times, would hide one
// container more.
func TestPlanLeavesNoContainer(t *testing.T) {
	lot := lotOf(t, units.Milliliters(23319), 66.9, units.Celsius(20))
	nips := packing.Supply{Container: jar(units.Milliliters(50)), OnHand: packing.Plenty}
	if p, err := packing.FewestContainers(lot, 0.5, nips); err != nil || p.Lines[0].Count != 464 {
		t.Errorf("%+v, %v: 464 x 50.25 mL are 23316 mL", p, err)
	}
	nips.OnHand = 463
	if p, err := packing.FewestContainers(lot, 0.5, nips); err != nil || p.Lines[0].Count != 463 {
		t.Errorf("%+v, %v: there are no more", p, err)
	}
	if p, err := packing.InMix(lot, 0.5, packing.Mix{Container: nips.Container, Parts: 100}); err != nil || p.Sets != 4 || p.Lines[0].Count != 464 {
		t.Errorf("%+v, %v: 4 sets of 100 and 64", p, err)
	}
}

func TestPlanLimits(t *testing.T) {
	lot := lotOf(t, units.USGallon, 66.9, units.Celsius(20))
	pint := jar(units.USPint)
	for name, supplies := range map[string][]packing.Supply{
		"none":            nil,
		"too many":        make([]packing.Supply, 33),
		"no label":        {{OnHand: 1}},
		"on hand below 0": {{Container: pint, OnHand: -1}},
		"beyond plenty":   {{Container: pint, OnHand: packing.Plenty + 1}},
	} {
		if p, err := packing.FewestContainers(lot, 0, supplies...); !errors.Is(err, units.ErrRange) || p.Lines != nil {
			t.Errorf("%s: %v, %v", name, p, err)
		}
	}
	for name, mix := range map[string][]packing.Mix{
		"none":      nil,
		"no parts":  {{Container: pint}},
		"too many":  {{Container: pint, Parts: 1001}},
		"below 0":   {{Container: pint, Parts: -1}},
		"no label":  {{Parts: 1}},
		"NaN label": {{Container: jar(units.Volume(notNum)), Parts: 1}},
	} {
		if p, err := packing.InMix(lot, 0, mix...); !errors.Is(err, units.ErrRange) || p.Lines != nil {
			t.Errorf("%s: %v, %v", name, p, err)
		}
	}
	s := packing.Supply{Container: pint, OnHand: packing.Plenty}
	kinds := make([]packing.Supply, 33)
	for i := range kinds {
		kinds[i] = s
	}
	if p, err := packing.FewestContainers(lot, 0, kinds[:32]...); err != nil || len(p.Lines) != 32 {
		t.Errorf("32 kinds: %v", err)
	}
	if p, err := packing.FewestContainers(lot, 0, kinds...); !errors.Is(err, units.ErrRange) || p.Lines != nil {
		t.Errorf("33 kinds: %v", err)
	}
	if _, err := packing.FewestContainers(sugar.Lot{}, 0, s); !errors.Is(err, units.ErrRange) {
		t.Errorf("nothing to pack: %v", err)
	}
	if _, err := packing.FewestContainers(lotOf(t, 200.1, 66.9, units.Celsius(20)), 0, s); !errors.Is(err, units.ErrRange) {
		t.Errorf("a lake: %v", err)
	}
	if p, err := packing.FewestContainers(lotOf(t, units.USCup, 66.9, units.Celsius(20)), 0, s); err != nil || p.Lines[0].Count != 0 {
		t.Errorf("less than a container: %v, %v", p, err)
	}
	if p, err := packing.FewestContainers(lotOf(t, 199.9, 66.9, units.Celsius(20)), 0, packing.Supply{Container: jar(units.Liters(250)), OnHand: packing.Plenty}); err != nil || p.Lines[0].Count != 799 {
		t.Errorf("the most: %v, %v", p, err)
	}
}

func TestCheckNet(t *testing.T) {
	pint, err := jar(units.USPint).Fill(66.9, units.Celsius(20), 0)
	if err != nil {
		t.Fatal(err)
	}
	w := pint.NetWeight
	for name, tt := range map[string]struct {
		net    []units.Mass
		short  int
		passes bool
	}{
		"all at the label":            {[]units.Mass{w * (1 + 1e-12), w * (1 + 1e-12)}, 0, true},
		"one light, average full":     {[]units.Mass{w * 1.02, w * 0.99, w}, 0, true},
		"average short":               {[]units.Mass{w * 0.999, w}, 0, false},
		"one short beyond allowance":  {[]units.Mass{w * 1.1, w * 0.95, w * 1.1}, 1, true},
		"two short beyond allowance":  {[]units.Mass{w * 1.2, w * 0.95, w * 0.95}, 2, false},
		"empty container in a sample": {[]units.Mass{w * 2.1, 0}, 1, true},
	} {
		got, err := packing.CheckNet(units.USPint, 66.9, units.USPint*0.03, 1, tt.net)
		if err != nil || got.Short != tt.short || got.Passes != tt.passes {
			t.Errorf("%s: %+v, %v", name, got, err)
		}
	}
	one := []units.Mass{w}
	for name, try := range map[string]func() (packing.NetCheck, error){
		"label":          func() (packing.NetCheck, error) { return packing.CheckNet(0, 66.9, 0, 0, one) },
		"allowance":      func() (packing.NetCheck, error) { return packing.CheckNet(units.USPint, 66.9, -1e-9, 0, one) },
		"allowance high": func() (packing.NetCheck, error) { return packing.CheckNet(units.USPint, 66.9, units.USQuart, 0, one) },
		"allowance NaN": func() (packing.NetCheck, error) {
			return packing.CheckNet(units.USPint, 66.9, units.Volume(notNum), 0, one)
		},
		"no sample": func() (packing.NetCheck, error) { return packing.CheckNet(units.USPint, 66.9, 0, 0, nil) },
		"short":     func() (packing.NetCheck, error) { return packing.CheckNet(units.USPint, 66.9, 0, 2, one) },
		"brix":      func() (packing.NetCheck, error) { return packing.CheckNet(units.USPint, 86, 0, 0, one) },
		"weight": func() (packing.NetCheck, error) {
			return packing.CheckNet(units.USPint, 66.9, 0, 0, []units.Mass{w, -1})
		},
		"weight NaN": func() (packing.NetCheck, error) {
			return packing.CheckNet(units.USPint, 66.9, 0, 0, []units.Mass{units.Mass(notNum)})
		},
		"weight inf": func() (packing.NetCheck, error) {
			return packing.CheckNet(units.USPint, 66.9, 0, 0, []units.Mass{units.Mass(inf)})
		},
	} {
		if got, err := try(); !errors.Is(err, units.ErrRange) || got != (packing.NetCheck{}) {
			t.Errorf("%s: %+v, %v", name, got, err)
		}
	}
}

func TestFillAllocatesNothing(t *testing.T) {
	c := packing.Container{Label: units.USPint, Brimful: units.Milliliters(500)}
	if n := testing.AllocsPerRun(100, func() { _, _ = c.Fill(66.9, units.Fahrenheit(185), 0.5) }); n > 0 {
		t.Errorf("%v allocations", n)
	}
}

func BenchmarkFill(b *testing.B) {
	b.ReportAllocs()
	c := packing.Container{Label: units.USPint, Brimful: units.Milliliters(500)}
	for b.Loop() {
		_, _ = c.Fill(66.9, units.Fahrenheit(185), 0.5)
	}
}

func BenchmarkFewestContainers(b *testing.B) {
	b.ReportAllocs()
	lot := lotOf(b, units.USGallons(11.3), 66.9, units.Fahrenheit(185))
	for b.Loop() {
		_, _ = packing.FewestContainers(lot, 0.5,
			packing.Supply{Container: jar(units.USQuart), OnHand: 30},
			packing.Supply{Container: jar(units.USPint), OnHand: 40},
			packing.Supply{Container: jar(8 * units.USFluidOunce), OnHand: 48})
	}
}
