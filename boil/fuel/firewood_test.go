package fuel_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/units"
)

func TestMoistureBases(t *testing.T) {
	for _, m := range []fuel.WetMoisture{0, 5, 20, 50, 70} {
		if back := m.Dry().Wet(); !near(float64(back), float64(m), 1e-12) {
			t.Errorf("%v wet is %v", m, back)
		}
	}
	if d := fuel.WetMoisture(20).Dry(); !near(float64(d), 25, 1e-12) {
		t.Errorf("20 percent wet basis is %v dry", d)
	}
}

func TestWoodHeat(t *testing.T) {
	limittest.Edges(t, "fuel.WoodHeat", "moisture, wet basis", 0, 70, 20, func(x float64) (float64, error) {
		h, err := fuel.WoodHeat(fuel.WetMoisture(x))
		return float64(h), err
	})
	limittest.Edges(t, "fuel.NetWood", "moisture, wet basis", 0, 70, 20, func(x float64) (float64, error) {
		f, err := fuel.NetWood(fuel.WetMoisture(x))
		if err != nil {
			return math.NaN(), err
		}
		return float64(f.Heat), nil
	})
	last := units.SpecificEnergy(math.Inf(1))
	for m := fuel.WetMoisture(0); m <= 70; m++ {
		h, err := fuel.WoodHeat(m)
		if err != nil || h >= last || h <= 0 {
			t.Errorf("%v percent: %v after %v, %v", m, h, last, err)
		}
		last = h
	}
}

// The tables stand where they are said to: Kentucky near 8,230 and 8,620 Btu a
// pound, Missouri near 7,000, the moisture's evaporation being all that lies
// between it and 8,600.
func TestFirewoodBases(t *testing.T) {
	conifers := map[string]bool{"Virginia pine": true, "Red-cedar": true, "Hemlock": true, "White pine": true}
	for _, w := range fuel.FirewoodKentucky() {
		perPound := w.Heat.BtusIT() / w.OvenDry().Pounds()
		want, tol := 8230.0, 45.0
		if conifers[w.Species] {
			want = 8620
		}
		if off := !near(perPound, want, tol); off != (w.Note != "") {
			t.Errorf("%s: %.0f Btu/lb, note %q", w.Species, perPound, w.Note)
		}
		if w.Basis != fuel.Gross {
			t.Errorf("%s is on %v", w.Species, w.Basis)
		}
	}
	steam, err := boil.LatentHeat(units.Celsius(100))
	if err != nil {
		t.Fatal(err)
	}
	for _, w := range fuel.FirewoodMissouri() {
		wood, err := w.CordWeight(20)
		if err != nil {
			t.Fatal(err)
		}
		less := 8600*w.OvenDry().Pounds() - steam.BtusITPerPound()*(wood-w.OvenDry()).Pounds()
		if !near(w.Heat.BtusIT()/less, 1, 0.003) || w.Basis != fuel.LessMoisture {
			t.Errorf("%s: %v on %v, reckoned %.3g Btu", w.Species, w.Heat, w.Basis, less)
		}
	}
}

// What a table leaves out is 0, and only that.
func TestFirewoodLeftOut(t *testing.T) {
	for _, c := range []struct {
		table, column string
		woods         []fuel.Firewood
		figure        func(fuel.Firewood) float64
	}{
		{"cordwood-kentucky", "living_tree_mc_pct", fuel.FirewoodKentucky(), func(w fuel.Firewood) float64 { return float64(w.Green) }},
		{"cordwood-missouri", "kansas_MMBtu_per_cord", fuel.FirewoodMissouri(), func(w fuel.Firewood) float64 { return float64(w.OtherHeat) }},
	} {
		table, err := check.Load(c.table)
		if err != nil || len(table.Rows) != len(c.woods) {
			t.Fatalf("%s: %d species, want %d, %v", c.table, len(c.woods), len(table.Rows), err)
		}
		for i, row := range table.Rows {
			if w := c.woods[i]; w.Species != row.Text("species") || (c.figure(w) == 0) != math.IsNaN(row.Float(c.column)) {
				t.Errorf("%s, line %d: %s with %v", c.table, row.Line(), w.Species, c.figure(w))
			}
		}
	}
	for _, w := range fuel.FirewoodKentucky() {
		if w.WeighedAt != 0 {
			t.Errorf("%s was weighed at %v percent, oven-dry is 0", w.Species, w.WeighedAt)
		}
	}
}

func TestFirewoodLimits(t *testing.T) {
	w := fuel.FirewoodMissouri()[10]
	if w.Species != "Maple (sugar)" {
		t.Fatalf("row 10 is %s", w.Species)
	}
	limittest.Edges(t, "fuel.Firewood.CordWeight", "weight of a cord", 300, 4000, 1500, func(x float64) (float64, error) {
		m, err := fuel.Firewood{Weight: units.Mass(x)}.CordWeight(25)
		return float64(m), err
	})
	limittest.Edges(t, "fuel.Firewood.CordWeight", "moisture, dry basis", 0, 200, 25, func(x float64) (float64, error) {
		m, err := w.CordWeight(fuel.DryMoisture(x))
		return float64(m), err
	})
	limittest.Edges(t, "fuel.Firewood.Net", "moisture, dry basis", 0, 200, 25, func(x float64) (float64, error) {
		f, err := w.Net(fuel.DryMoisture(x))
		if err != nil {
			return math.NaN(), err
		}
		return float64(f.Heat), nil
	})
	_, err := fuel.Firewood{}.CordWeight(20)
	wantRange(t, "no species", err)
	_, err = fuel.Firewood{}.Cord().Of(units.Cord)
	wantBasis(t, "no species", err)
}

func TestCords(t *testing.T) {
	face, err := fuel.FaceCord(16 * units.Inch)
	if err != nil || !near(float64(face/units.FaceCord16), 1, 1e-12) || !near(face.Cords(), 1.0/3, 1e-12) {
		t.Errorf("a face of 16 in sticks is %v cords, %v", face.Cords(), err)
	}
	for pile, cubic := range map[fuel.Pile]float64{fuel.Stacked: 128, fuel.LooseShort: 180, fuel.LooseLong: 195} {
		v, err := fuel.FullCord(units.CubicFeet(cubic), pile)
		if err != nil || !near(v.Cords(), 1, 1e-12) {
			t.Errorf("pile %d: %v cords, %v", pile, v.Cords(), err)
		}
	}
	limittest.Edges(t, "fuel.FullCord", "volume of the pile", 0, 1e6, 3, func(x float64) (float64, error) {
		v, err := fuel.FullCord(units.CubicMeters(x), fuel.Stacked)
		return float64(v), err
	})
	limittest.Edges(t, "fuel.FaceCord", "length of the sticks", 0.15, 2.5, 0.4, func(x float64) (float64, error) {
		v, err := fuel.FaceCord(units.Meters(x))
		return float64(v), err
	})
	for _, pile := range []fuel.Pile{0, fuel.LooseLong + 1} {
		v, err := fuel.FullCord(1, pile)
		limittest.Refuses(t, "fuel.FullCord", "pile", float64(v), err)
		if s := pile.String(); s != "no pile" {
			t.Errorf("pile %d is called %q", pile, s)
		}
	}
}
