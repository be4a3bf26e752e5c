package density_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

func TestInstrumentsUndo(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 68))
	between := func(low, high float64) float64 { return low + (high-low)*rng.Float64() }
	for range draws {
		h := density.Hydrometer{
			GraduatedAt: c(between(1, 40)),
			Scale:       density.Scale(rng.IntN(2)),
			ReadsHigh:   bx(between(-1, 1)),
			Expansion:   between(0, 100e-6),
		}
		b, at := bx(between(20, 75)), c(between(0, 110))
		reading, err := h.Reading(b, at)
		if err != nil {
			t.Fatalf("%+v: %v", h, err)
		}
		if got, err := h.Brix(reading, at); err != nil || !(math.Abs(float64(got-b)) <= 1e-10) {
			t.Fatalf("%+v: %v at %v reads %v and comes back as %v, %v", h, b, at, reading, got, err)
		}
		onBaume, err := h.Baume(b, at)
		if err != nil {
			t.Fatalf("%+v: %v", h, err)
		}
		if got, err := h.BrixFromBaume(onBaume, at); err != nil || !(math.Abs(float64(got-b)) <= 1e-10) {
			t.Fatalf("%+v: %v at %v reads %v Be and comes back as %v, %v", h, b, at, onBaume, got, err)
		}
		row := []density.CupRow{{At: at}}
		if err := h.FillCupTable(b, row); err != nil ||
			!(math.Abs(float64(row[0].Brix-reading)) <= 1e-12) || !(math.Abs(float64(row[0].Baume-onBaume)) <= 1e-12) {
			t.Fatalf("cup table: %+v, %v; want %v and %v", row, err, reading, onBaume)
		}

		r := density.Refractometer{Compensated: rng.IntN(2) == 0, ReadsHigh: bx(between(-1, 1))}
		prismAt := c(between(10, 30))
		if reading, err = r.Reading(b, prismAt); err != nil {
			t.Fatal(err)
		}
		if got, err := r.Brix(reading, prismAt); err != nil || !(math.Abs(float64(got-b)) <= 1e-10) {
			t.Fatalf("%+v: %v at %v reads %v and comes back as %v, %v", r, b, prismAt, reading, got, err)
		}
	}
}

func TestTrueAtHome(t *testing.T) {
	for b := -1.0; b <= 85; b += 0.5 {
		if got, err := stem.Reading(bx(b), f60); err != nil || !(math.Abs(float64(got)-b) <= 1e-11) {
			t.Fatalf("stem in %v: %v, %v", b, got, err)
		}
		if got, err := prism.Reading(bx(b), c20); err != nil || !(math.Abs(float64(got)-b) <= 1e-11) {
			t.Fatalf("prism in %v: %v, %v", b, got, err)
		}
	}
}

func TestMarks(t *testing.T) {
	stands, err := hot.On(stem)
	if err != nil {
		t.Fatal(err)
	}
	for f := 60.0; f <= 220; f += 5 {
		cup := units.Fahrenheit(f)
		mark, err := hot.Brix(cup)
		if err != nil {
			t.Fatal(err)
		}
		// Two growths of glass are applied one after the other here and at once
		// there: they differ by their product, under 1e-5.
		scale, err := stem.Brix(stands, cup)
		if err != nil || !(math.Abs(float64(mark-scale)) <= 0.003) {
			t.Errorf("hot mark in a cup at %v F: %v, on the scale %v, %v", f, mark, scale, err)
		}
		if f > 210 && f < 212 && !(math.Abs(float64(mark)-66.9) <= 0.05) {
			t.Errorf("hot mark at home is %v", mark)
		}
	}
	home, err := hot.Brix(hot.At)
	if err != nil || !(math.Abs(float64(home)-66.9) <= 1e-11) {
		t.Errorf("hot mark at its own temperature: %v, %v", home, err)
	}
}

func TestCheckedIn(t *testing.T) {
	for _, scale := range []density.Scale{density.ICUMSA, density.NBSC440} {
		h := density.Hydrometer{GraduatedAt: f60, Scale: scale, ReadsHigh: 3} // what it had before does not count
		for _, b := range []float64{0, 30, 66} {
			reading := must(of(density.Hydrometer{GraduatedAt: f60, Scale: scale}.Reading(bx(b), c20)))
			got, err := h.CheckedIn(bx(b), c20, bx(reading-0.4))
			if err != nil || !(math.Abs(float64(got.ReadsHigh)+0.4) <= 1e-12) {
				t.Errorf("%v in %v Brix: %+v, %v", scale, b, got, err)
			}
			if back, err := got.Brix(bx(reading-0.4), c20); err != nil || !(math.Abs(float64(back)-b) <= 1e-10) {
				t.Errorf("%v checked in %v Brix reads %v, %v", scale, b, back, err)
			}
		}
	}
	reading := must(of(prism.Reading(30, c(25))))
	r, err := prism.CheckedIn(30, c(25), bx(reading+0.3))
	if err != nil || !(math.Abs(float64(r.ReadsHigh)-0.3) <= 1e-12) {
		t.Errorf("prism: %+v, %v", r, err)
	}
}

func TestCupTableStops(t *testing.T) {
	rows := []density.CupRow{{At: c(20)}, {At: c(120), Brix: 1}, {At: c(30), Brix: 2}}
	if err := stem.FillCupTable(66.9, rows); err == nil {
		t.Fatal("120 C is filled")
	}
	if rows[0].Brix == 0 || rows[1].Brix != 1 || rows[2].Brix != 2 {
		t.Errorf("rows are %+v", rows)
	}
	if err := stem.FillCupTable(66.9, nil); err != nil {
		t.Errorf("an empty table: %v", err)
	}
}
