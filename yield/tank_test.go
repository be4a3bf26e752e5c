package yield_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// shapes makes one tank of each shape from three sides.
var shapes = map[string]func(a, b, c units.Length) (yield.Tank, error){
	"rectangular":     yield.RectangularTank,
	"upright":         func(a, b, _ units.Length) (yield.Tank, error) { return yield.UprightCylinder(a, b) },
	"lying cylinder":  func(a, b, _ units.Length) (yield.Tank, error) { return yield.LyingCylinder(a, b) },
	"lying ellipse":   yield.LyingEllipse,
	"trough":          yield.HalfEllipseTrough,
	"pail":            yield.Pail,
	"pail, inverted":  func(a, b, c units.Length) (yield.Tank, error) { return yield.Pail(min(a, b), max(a, b), c) },
	"pail like a jar": func(a, _, c units.Length) (yield.Tank, error) { return yield.Pail(a, a, c) },
}

// takes is how many of the three sides each shape looks at.
var takes = map[string]int{"upright": 2, "lying cylinder": 2}

func TestTankLimits(t *testing.T) {
	for name, make := range shapes {
		for _, ok := range []units.Length{0.01, 1, 30} {
			if _, err := make(ok, ok, ok); err != nil {
				t.Errorf("%s of %v: %v", name, ok, err)
			}
		}
		n := takes[name]
		if n == 0 {
			n = 3
		}
		if name == "pail, inverted" || name == "pail like a jar" {
			continue // variants that look at fewer sides
		}
		for i := range n {
			for _, bad := range []float64{0.0099, 30.01, 0, -1, notNum, inf, -inf} {
				s := [3]units.Length{1, 1, 1}
				s[i] = units.Length(bad)
				if tank, err := make(s[0], s[1], s[2]); !errors.Is(err, units.ErrRange) || tank != (yield.Tank{}) {
					t.Errorf("%s with side %d of %v: %v, %v", name, i, bad, tank, err)
				}
			}
		}
	}
}

func TestZeroTankRefuses(t *testing.T) {
	var none yield.Tank
	v, err := none.Volume(0)
	refused(t, "Volume", "yield.Tank.Volume", float64(v), err)
	d, err := none.Depth(0)
	refused(t, "Depth", "yield.Tank.Depth", float64(d), err)
	if m, err := none.Dipstick(nil, 1); m != nil || !errors.Is(err, units.ErrRange) {
		t.Errorf("Dipstick: %v, %v", m, err)
	}
	if m, err := none.DipstickByVolume(nil, 1); m != nil || !errors.Is(err, units.ErrRange) {
		t.Errorf("DipstickByVolume: %v, %v", m, err)
	}
	if none.Height() > 0 || none.Capacity() > 0 {
		t.Error("a tank that was not made holds something")
	}
}

func TestTankRange(t *testing.T) {
	for name, make := range shapes {
		tank, err := make(1, 0.7, 0.4)
		if err != nil {
			t.Fatal(err)
		}
		if v, err := tank.Volume(0); err != nil || v > 0 || v < 0 {
			t.Errorf("%s, empty: %v, %v", name, v, err)
		}
		if v, err := tank.Volume(tank.Height()); err != nil || !(math.Abs(float64(v/tank.Capacity()-1)) < 1e-12) {
			t.Errorf("%s, full: %v, %v", name, v, err)
		}
		if d, err := tank.Depth(tank.Capacity()); err != nil || !(math.Abs(float64(d-tank.Height())) < 1e-12) {
			t.Errorf("%s, full: %v, %v", name, d, err)
		}
		if d, err := tank.Depth(0); err != nil || d > 0 || d < 0 {
			t.Errorf("%s, empty: %v, %v", name, d, err)
		}
		for _, bad := range []float64{-1e-9, float64(tank.Height()) * 1.001, notNum, inf, -inf} {
			v, err := tank.Volume(units.Length(bad))
			refused(t, name, "yield.Tank.Volume", float64(v), err)
		}
		for _, bad := range []float64{-1e-9, float64(tank.Capacity()) * 1.001, notNum, inf, -inf} {
			d, err := tank.Depth(units.Volume(bad))
			refused(t, name, "yield.Tank.Depth", float64(d), err)
		}
	}
}

// Full tanks by the textbook formula of each solid.
func TestCapacity(t *testing.T) {
	a, b, c := 1.3, 0.7, 0.4
	for name, want := range map[string]float64{
		"rectangular":    a * b * c,
		"upright":        math.Pi / 4 * a * a * b,
		"lying cylinder": math.Pi / 4 * a * a * b,
		"lying ellipse":  math.Pi / 4 * a * b * c,
		"trough":         math.Pi / 4 * a * b * c,
		"pail":           math.Pi / 12 * c * (a*a + a*b + b*b),
		"pail, inverted": math.Pi / 12 * c * (a*a + a*b + b*b),
	} {
		tank, err := shapes[name](units.Length(a), units.Length(b), units.Length(c))
		if err != nil || !(math.Abs(float64(tank.Capacity())/want-1) < 1e-12) {
			t.Errorf("%s: %v, %v; want %v", name, tank.Capacity(), err, want)
		}
	}
}

func TestTankProperties(t *testing.T) {
	rng := rand.New(rand.NewPCG(12, 4))
	draw := func() units.Length { return units.Length(0.01 * math.Pow(3000, rng.Float64())) }
	for name, make := range shapes {
		for range 500 {
			tank, err := make(draw(), draw(), draw())
			if err != nil {
				t.Fatal(name, err)
			}
			h := tank.Height() * units.Length(rng.Float64())
			v, err := tank.Volume(h)
			if err != nil || !(v >= 0 && v <= tank.Capacity()) {
				t.Errorf("%s at %v: %v, %v", name, h, v, err)
			}
			back, err := tank.Depth(v)
			if err != nil || !(math.Abs(float64(back-h)) <= 1e-9*float64(tank.Height())) {
				t.Errorf("%s: depth %v holds %v, which stands at %v, %v", name, h, v, back, err)
			}
			if more, _ := tank.Volume(h + (tank.Height()-h)/2); !(more >= v) {
				t.Errorf("%s: %v at %v and %v above it", name, v, h, more)
			}
		}
	}
}

// The volume is the integral of the surface, taken here in slices.
func TestVolumeIsTheSumOfSlices(t *testing.T) {
	ellipse := func(y, width, tall float64) float64 { return width * math.Sqrt(1-math.Pow(2*y/tall-1, 2)) }
	a, b, c := 1.3, 0.7, 0.4 // the sides of all shapes below
	for name, surface := range map[string]func(y float64) float64{
		"lying ellipse": func(y float64) float64 { return c * ellipse(y, a, b) },
		"trough":        func(y float64) float64 { return c * ellipse(y, a, 2*b) },
		"pail":          func(y float64) float64 { d := b + (a-b)*y/c; return math.Pi / 4 * d * d },
	} {
		tank, err := shapes[name](units.Length(a), units.Length(b), units.Length(c))
		if err != nil {
			t.Fatal(err)
		}
		const slices = 200000
		h := 0.6 * float64(tank.Height())
		sum := 0.0
		for i := range slices {
			sum += surface((float64(i)+0.5)*h/slices) * h / slices
		}
		if v, err := tank.Volume(units.Length(h)); err != nil || !(math.Abs(float64(v)/sum-1) < 1e-6) {
			t.Errorf("%s: %v, %v; slices add up to %v", name, v, err, sum)
		}
	}
}

func TestDipstick(t *testing.T) {
	for name, make := range shapes {
		tank, err := make(1.3, 0.7, 0.4)
		if err != nil {
			t.Fatal(err)
		}
		stick, err := tank.Dipstick(nil, tank.Height()/10)
		if err != nil || len(stick) != 10 {
			t.Errorf("%s: %d marks, %v", name, len(stick), err)
		}
		byVolume, err := tank.DipstickByVolume(nil, tank.Capacity()/7)
		if err != nil || len(byVolume) != 7 {
			t.Errorf("%s: %d marks, %v", name, len(byVolume), err)
		}
		for _, m := range append(stick, byVolume...) {
			if v, err := tank.Volume(min(m.Depth, tank.Height())); err != nil || !(math.Abs(float64(v/m.Volume-1)) < 1e-9) {
				t.Errorf("%s: mark %v, volume %v, %v", name, m, v, err)
			}
		}
		for _, bad := range []float64{0, -1, float64(tank.Height()) / 10001, float64(tank.Height()) * 1.001, notNum, inf, -inf} {
			if m, err := tank.Dipstick(stick[:0], units.Length(bad)); len(m) != 0 || !errors.Is(err, units.ErrRange) {
				t.Errorf("%s, step %v: %d marks, %v", name, bad, len(m), err)
			}
		}
		for _, bad := range []float64{0, -1, float64(tank.Capacity()) / 10001, float64(tank.Capacity()) * 1.001, notNum, inf, -inf} {
			if m, err := tank.DipstickByVolume(stick[:0], units.Volume(bad)); len(m) != 0 || !errors.Is(err, units.ErrRange) {
				t.Errorf("%s, step %v: %d marks, %v", name, bad, len(m), err)
			}
		}
	}
}

func TestTankAllocatesNothing(t *testing.T) {
	room := make([]yield.DipstickMark, 0, 100)
	if n := testing.AllocsPerRun(100, func() {
		tank, _ := yield.LyingCylinder(36*units.Inch, 60*units.Inch)
		v, _ := tank.Volume(9 * units.Inch)
		_, _ = tank.Depth(v)
		_, _ = tank.Dipstick(room, units.Inch)
		_, _ = tank.DipstickByVolume(room, 10*units.USGallon)
	}); n > 0 {
		t.Errorf("%v allocations", n)
	}
}

func FuzzTankDepth(f *testing.F) {
	f.Add(0.9144, 1.524, 0.5, 0.3)
	f.Add(30.0, 0.01, 30.0, 1.0)
	f.Add(0.01, 0.01, 0.01, 1e-300)
	f.Fuzz(func(t *testing.T, a, b, c, part float64) {
		for name, make := range shapes {
			tank, err := make(units.Length(a), units.Length(b), units.Length(c))
			if err != nil {
				continue
			}
			v := tank.Capacity() * units.Volume(part)
			h, err := tank.Depth(v)
			if err != nil {
				refused(t, name, "yield.Tank.Depth", float64(h), err)
				continue
			}
			back, err := tank.Volume(h)
			if err != nil || !(math.Abs(float64(back-v)) <= 1e-9*float64(tank.Capacity())) {
				t.Errorf("%s: %v stands at %v, which holds %v, %v", name, v, h, back, err)
			}
		}
	})
}

func BenchmarkTankVolume(b *testing.B) {
	b.ReportAllocs()
	tank, _ := yield.LyingCylinder(36*units.Inch, 60*units.Inch)
	for b.Loop() {
		_, _ = tank.Volume(9 * units.Inch)
	}
}

func BenchmarkTankDepth(b *testing.B) {
	b.ReportAllocs()
	tank, _ := yield.LyingCylinder(36*units.Inch, 60*units.Inch)
	for b.Loop() {
		_, _ = tank.Depth(50 * units.USGallon)
	}
}
