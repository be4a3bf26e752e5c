package density_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

const draws = 2000

// Every inverse undoes its forward formula.
func TestInversePairs(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 66))
	between := func(low, high float64) float64 { return low + (high-low)*rng.Float64() }
	pairs := []struct {
		name   string
		most   float64 // Brix
		within float64 // Brix
		there  func(b units.Brix, t units.Temperature) (float64, error)
		back   func(x float64, t units.Temperature) (units.Brix, error)
	}{
		{"Solution", 85, 1e-11,
			func(b units.Brix, t units.Temperature) (float64, error) { return of(density.Solution(b, t)) },
			func(x float64, t units.Temperature) (units.Brix, error) { return density.BrixFromDensity(kg(x), t) }},
		{"SG2020", 85, 1e-11,
			func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.SG2020FromBrix(b)) },
			func(x float64, _ units.Temperature) (units.Brix, error) { return density.BrixFromSG2020(sg(x)) }},
		{"TrueSG2020", 85, 1e-11,
			func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.TrueSG2020FromBrix(b)) },
			func(x float64, _ units.Temperature) (units.Brix, error) { return density.BrixFromTrueSG2020(tg(x)) }},
		{"Baume", 85, 1e-11,
			func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.BaumeFromBrix(b)) },
			func(x float64, _ units.Temperature) (units.Brix, error) { return density.BrixFromBaume(be(x)) }},
		{"NBSC440 SG2020", 95, 1e-11,
			func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.NBSC440.SG2020(b)) },
			func(x float64, _ units.Temperature) (units.Brix, error) { return density.NBSC440.Brix(sg(x)) }},
		{"NBSC440 Baume", 95, 1e-11,
			func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.NBSC440.Baume(b)) },
			func(x float64, _ units.Temperature) (units.Brix, error) { return density.NBSC440.BrixFromBaume(be(x)) }},
		{"Convert", 84.9, 1e-11,
			func(b units.Brix, _ units.Temperature) (float64, error) {
				return of(density.NBSC440.Convert(b, density.ICUMSA))
			},
			func(x float64, _ units.Temperature) (units.Brix, error) {
				return density.ICUMSA.Convert(bx(x), density.NBSC440)
			}},
		{"RefractiveIndex", 85, 1e-11,
			func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.RefractiveIndex(b)) },
			func(x float64, _ units.Temperature) (units.Brix, error) {
				return density.BrixFromRefractiveIndex(nd(x))
			}},
		{"Flask", 85, 1e-11,
			func(b units.Brix, t units.Temperature) (float64, error) { return of(flask.Net(b, t)) },
			func(x float64, t units.Temperature) (units.Brix, error) { return flask.Brix(units.Mass(x), t) }},
	}
	for _, p := range pairs {
		t.Run(p.name, func(t *testing.T) {
			for i := range draws {
				b, at := bx(between(0, p.most)), c(between(0, 110))
				switch i { // the ends of the range first
				case 0:
					b = 0
				case 1:
					b = bx(p.most)
				}
				x, err := p.there(b, at)
				if err != nil {
					t.Fatal(err)
				}
				got, err := p.back(x, at)
				if err != nil || !(math.Abs(float64(got-b)) <= p.within) {
					t.Fatalf("%v at %v comes back as %v, %v", b, at, got, err)
				}
			}
		})
	}
}

// What an instrument reads leads back to what it floats or shines in, for any
// graduation, glass, scale and error of the instrument.
func TestInstrumentsUndo(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 68))
	between := func(low, high float64) float64 { return low + (high-low)*rng.Float64() }
	for range draws {
		h := density.Hydrometer{
			GraduatedAt: c(between(1, 40)),
			Scale:       density.Scale(rng.IntN(2)),
			ReadsHigh:   bx(between(-1, 1)),
			Glass:       between(0, 100e-6),
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

// More sugar is denser, bends light more and floats every instrument higher.
func TestMonotoneInBrix(t *testing.T) {
	forward := map[string]func(b units.Brix, t units.Temperature) (float64, error){
		"Solution":        func(b units.Brix, t units.Temperature) (float64, error) { return of(density.Solution(b, t)) },
		"Reading":         func(b units.Brix, t units.Temperature) (float64, error) { return of(stem.Reading(b, t)) },
		"NBSC440 Reading": func(b units.Brix, t units.Temperature) (float64, error) { return of(nbsStem.Reading(b, t)) },
		"NBSC440":         func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.NBSC440.SG2020(b)) },
		"RefractiveIndex": func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.RefractiveIndex(b)) },
		"prism": func(b units.Brix, t units.Temperature) (float64, error) {
			return of(prism.Reading(b, c(10+t.Celsius()/5.5)))
		},
	}
	for name, f := range forward {
		for at := 0.0; at <= 110; at += 10 {
			last, ends := math.Inf(-1), 0
			for i := range 801 {
				x, err := f(bx(2+float64(i)/10), c(at))
				if err != nil {
					ends++ // off the stem
					continue
				}
				if !(x > last) {
					t.Fatalf("%s at %v C: %v after %v at %v Brix", name, at, x, last, 2+float64(i)/10)
				}
				last = x
			}
			if ends > 400 {
				t.Errorf("%s at %v C: %d of 801 strengths are off the scale", name, at, ends)
			}
		}
	}
}

// Above the density maximum a warmer liquid is lighter, and a stem sinks.
func TestMonotoneInTemperature(t *testing.T) {
	for b := 0.0; b <= 85; b += 2.5 {
		last := math.Inf(1)
		for at := 4.0; at <= 110; at += 0.5 {
			d, err := density.Solution(bx(b), c(at))
			if err != nil || !(float64(d) < last) {
				t.Fatalf("%v Brix at %v C: %v after %v, %v", b, at, d, last, err)
			}
			last = float64(d)
		}
	}
}

// No mass is lost in warming, cooling or filling.
func TestMassIsKept(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 70))
	for range draws {
		v, b := m3(rng.Float64()), bx(85*rng.Float64())
		from, to := c(110*rng.Float64()), c(110*rng.Float64())
		moved, err := density.VolumeAt(v, b, from, to)
		if err != nil {
			t.Fatal(err)
		}
		m0, m1 := must(of(density.Mass(v, b, from))), must(of(density.Mass(moved, b, to)))
		if !(math.Abs(m1-m0) <= 1e-12*m0) {
			t.Fatalf("%v of %v from %v to %v: %v becomes %v kg", v, b, from, to, m0, m1)
		}
		share := must(of(density.Contraction(b, from, to)))
		if !(math.Abs(float64(v-moved)-share/100*float64(v)) <= 1e-12*float64(v)) {
			t.Fatalf("contraction %v of %v to %v", share, v, moved)
		}
		fill := must(of(density.Overfill(v, b, from)))
		if m := must(of(density.Mass(m3(fill), b, from))); !(math.Abs(m-must(of(density.Mass(v, b, c20)))) <= 1e-12*m) {
			t.Fatalf("overfill of %v at %v holds %v kg", v, from, m)
		}
	}
}

func TestAirUndone(t *testing.T) {
	for d := 900.0; d < 1500; d += 0.7 {
		if got := density.FromAir(density.InAir(kg(d))); !(math.Abs(float64(got)-d) <= 1e-12*d) {
			t.Fatalf("%v comes back as %v", d, got)
		}
	}
}

// At the temperature of graduation a stem reads the truth, and a prism at 20 C.
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

// A mark means what it stands for at its own temperature, and agrees elsewhere
// with the stem that it stands on.
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

// A check finds the error of the instrument, and the corrected instrument reads
// true where it was checked.
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

// A cup table stops at the row it cannot fill and leaves it alone.
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

// The caveats turn where they say they do.
func TestCaveats(t *testing.T) {
	tests := []struct {
		b, at float64
		want  density.Caveats
	}{
		{66.9, 90, density.Caveats{}},
		{66.9, 90.1, density.Caveats{Extrapolated: true}},
		{66.9, 21.2, density.Caveats{Supersaturated: true}},
		{66.9, 21.4, density.Caveats{}},
		{2, 4, density.Caveats{DensityMaximum: true}},
		{0, 7.9, density.Caveats{DensityMaximum: true}},
		{0, 7.95, density.Caveats{DensityMaximum: true}},
		{0, 8, density.Caveats{}},
		{40, 1, density.Caveats{}},
		{math.NaN(), math.NaN(), density.Caveats{}},
	}
	for _, tt := range tests {
		if got := density.CaveatsOf(bx(tt.b), c(tt.at)); got != tt.want {
			t.Errorf("%v Brix at %v C: %+v, want %+v", tt.b, tt.at, got, tt.want)
		}
	}
	m, err := stem.Measure(59, units.Fahrenheit(209), doubt)
	if err != nil || !m.Extrapolated {
		t.Errorf("a hot cup: %+v, %v", m, err)
	}
}

// Two temperatures share a thin sap's density, and at either of them the
// strength is found.
func TestNearDensityMaximum(t *testing.T) {
	for _, at := range []float64{1, 2, 6, 7} {
		d, err := density.Solution(2, c(at))
		if err != nil {
			t.Fatal(err)
		}
		if got, err := density.BrixFromDensity(d, c(at)); err != nil || !(math.Abs(float64(got)-2) <= 1e-11) {
			t.Errorf("at %v C: %v, %v", at, got, err)
		}
	}
	d1, d7 := must(of(density.Solution(2, c(1)))), must(of(density.Solution(2, c(7))))
	d4 := must(of(density.Solution(2, c(4))))
	if !(d4 > d1 && d4 > d7) {
		t.Errorf("no maximum between 1 and 7 C: %v, %v, %v", d1, d4, d7)
	}
}

func TestScaleNames(t *testing.T) {
	for s, want := range map[density.Scale]string{density.ICUMSA: "ICUMSA", density.NBSC440: "NBS C440", 9: "unknown scale"} {
		if got := s.String(); got != want {
			t.Errorf("scale %d is %q, want %q", s, got, want)
		}
	}
}

// The curve between the rows of Table 114 rises everywhere, passes through
// every row and stays near the straight line.
func TestTable114Curve(t *testing.T) {
	row := func(i int) float64 { return must(of(density.NBSC440.SG2020(bx(float64(i))))) }
	for i := range 95 {
		low, high := row(i), row(i+1)
		last := low
		for k := 1; k <= 20; k++ {
			x := float64(k) / 20
			got := must(of(density.NBSC440.SG2020(bx(float64(i) + x))))
			if !(got > last) {
				t.Fatalf("falls at %v", float64(i)+x)
			}
			if line := low + x*(high-low); !(math.Abs(got-line) <= 1e-5) {
				t.Errorf("%v: %v is %.2g from the line", float64(i)+x, got, got-line)
			}
			last = got
		}
	}
}

// No good answer costs an allocation.
func TestNoAllocation(t *testing.T) {
	rows := make([]density.CupRow, 8)
	for i := range rows {
		rows[i].At = units.Fahrenheit(60 + 20*float64(i))
	}
	a, err := stem.Measure(60, c20, doubt)
	if err != nil {
		t.Fatal(err)
	}
	calls := []func() error{
		func() error { _, err := density.Solution(66.9, c20); return err },
		func() error { _, err := density.BrixFromDensity(1300, c20); return err },
		func() error { _, err := density.NBSC440.Convert(66, density.ICUMSA); return err },
		func() error { _, err := nbsStem.Brix(60, c(80)); return err },
		func() error { _, err := nbsStem.Reading(66.9, c(80)); return err },
		func() error { _, err := stem.Baume(66.9, c(80)); return err },
		func() error { return stem.FillCupTable(66.9, rows) },
		func() error { _, err := hot.Brix(c(80)); return err },
		func() error { _, err := prism.Brix(66, c(25)); return err },
		func() error { _, err := prism.Reading(66, c(25)); return err },
		func() error { _, err := flask.Brix(0.6, c20); return err },
		func() error { _, err := density.Overfill(1, 66.9, c(85)); return err },
		func() error { _, err := stem.Measure(60, c(80), doubt); return err },
		func() error { _, err := prism.Measure(60, c(25), doubt); return err },
		func() error { _, err := flask.Measure(0.6, c(25), weighing); return err },
		func() error { _, err := density.Combine(a, a); return err },
	}
	for i, call := range calls {
		if err := call(); err != nil {
			t.Fatalf("call %d: %v", i, err)
		}
		if n := testing.AllocsPerRun(100, func() { _ = call() }); n != 0 {
			t.Errorf("call %d allocates %v times", i, n)
		}
	}
}
