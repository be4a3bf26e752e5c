package pan

import (
	"errors"
	"math"
	"strconv"
	"testing"
	"time"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestOvernight(t *testing.T) {
	c := Contents{
		{Water: 49, Sugar: 1, Temperature: units.Fahrenheit(212)},
		{Water: 34, Sugar: 66, Temperature: units.Fahrenheit(212)},
		{},
	}
	// Two halvings from 212 F toward 32 F are 77 F.
	m, err := c.Overnight(Night{Length: 4 * time.Hour, Air: units.Fahrenheit(32), Halving: 2 * time.Hour})
	if err != nil {
		t.Fatal(err)
	}
	if got := m.Contents[0].Temperature.Fahrenheit(); math.Abs(got-77) > 1e-9 || m.Ice[0].Forms {
		t.Errorf("%v F, ice %v", got, m.Ice[0])
	}

	n := Night{Length: 14 * time.Hour, Air: units.Celsius(-10), Halving: 90 * time.Minute}
	m, err = c.Overnight(n)
	if err != nil {
		t.Fatal(err)
	}
	point, err := sugar.FreezingPoint(2)
	if err != nil {
		t.Fatal(err)
	}
	if !m.Ice[0].Forms || !m.Contents[0].Temperature.Equal(point) {
		t.Errorf("sap: %+v at %v", m.Ice[0], m.Contents[0].Temperature)
	}
	if m.Ice[1].Forms || m.Ice[2].Forms {
		t.Errorf("syrup or nothing froze: %+v", m.Ice)
	}
	// Just before the ice there is none, and just after there is.
	for _, d := range []time.Duration{-time.Second, time.Second} {
		n.Length = m.Ice[0].After + d
		at, err := c.Overnight(n)
		if err != nil || at.Ice[0].Forms != (d > 0) {
			t.Errorf("ice after %v: %v, %v", n.Length, at.Ice[0], err)
		}
	}
	if m.Contents.Sugar() != c.Sugar() || m.Contents.Mass() != c.Mass() {
		t.Error("the night took something")
	}
	// Frozen sap is refused under a fire.
	r := partitioned()
	r.Compartments = r.Compartments[:1]
	d := longDay()
	d.Start = m.Contents[:1]
	if _, err := r.Run(d); !errors.Is(err, units.ErrRange) {
		t.Errorf("a fire under ice: %v", err)
	}
}

// Half a liter freezes as well, and from close by in less than a halving: from 1
// C toward -10 C it has 11 degrees to go and 10 and what its sugar keeps it liquid
// by left.
func TestIceSoon(t *testing.T) {
	c := Contents{{Sugar: 0.01 * units.Kilogram, Water: 0.49 * units.Kilogram, Temperature: units.Celsius(1)}}
	m, err := c.Overnight(Night{Length: time.Hour, Air: units.Celsius(-10), Halving: time.Hour})
	point, err2 := sugar.FreezingPoint(2)
	if err != nil || err2 != nil || !m.Ice[0].Forms {
		t.Fatalf("%+v, %v, %v", m.Ice, err, err2)
	}
	if want := math.Log2(11 / (10 + point.Celsius())); !near(m.Ice[0].After.Hours(), want, 1e-9) || want > 0.2 {
		t.Errorf("ice after %v, want %v h", m.Ice[0].After, want)
	}
}

func TestOvernightLimits(t *testing.T) {
	for _, n := range []Night{
		{},
		{Length: -1, Halving: time.Hour},
		{Length: 61 * 24 * time.Hour, Halving: time.Hour},
		{Halving: time.Hour, Air: units.Celsius(-61)},
		{Halving: time.Hour, Air: units.Celsius(math.NaN())},
		{Halving: time.Hour, Air: units.Celsius(60.01)},
		{Halving: time.Second - 1},
		{Halving: 1e8*time.Second + time.Second},
	} {
		if _, err := (Contents{{Water: 1}}).Overnight(n); !errors.Is(err, units.ErrRange) {
			t.Errorf("%+v: %v", n, err)
		}
	}
	for _, n := range []Night{
		{Length: 60 * 24 * time.Hour, Halving: time.Second},
		{Halving: 1e8 * time.Second, Air: units.Celsius(60)},
		{Halving: time.Hour, Air: units.Celsius(-60)},
	} {
		if _, err := (Contents{{Water: 1}}).Overnight(n); err != nil {
			t.Errorf("%+v: %v", n, err)
		}
	}
	if _, err := (Contents{{Water: -1}}).Overnight(Night{Halving: time.Hour}); !errors.Is(err, units.ErrRange) {
		t.Error(err)
	}
	if m, err := (Contents)(nil).Overnight(Night{Halving: time.Hour}); err != nil || len(m.Contents) != 0 {
		t.Errorf("%+v, %v", m, err)
	}
}

// A pan as cold as the air leaves no room for a second reading, and the error
// must not tell a range that ends before it begins.
func TestHalvingCold(t *testing.T) {
	for from := 10.0; from < 10.4; from += 0.05 {
		_, err := Halving(units.Celsius(from), units.Celsius(10.05), units.Celsius(10), time.Hour)
		var e *units.RangeError
		if !errors.As(err, &e) || e.Low > e.High {
			t.Errorf("from %v C: %v", from, err)
		}
	}
}

func TestHalving(t *testing.T) {
	got, err := Halving(units.Fahrenheit(212), units.Fahrenheit(122), units.Fahrenheit(32), time.Hour)
	if err != nil || (got-time.Hour).Abs() > time.Microsecond {
		t.Errorf("%v, %v", got, err)
	}
	// To a quarter of the way in two halvings: 180 F over the air, and 45.
	got, err = Halving(units.Fahrenheit(212), units.Fahrenheit(77), units.Fahrenheit(32), 3*time.Hour)
	if err != nil || (got-90*time.Minute).Abs() > time.Microsecond {
		t.Errorf("two halvings in three hours: %v, %v", got, err)
	}
	for _, tc := range [][3]float64{{50, 60, 0}, {50, 0, 0}, {-1, -2, 0}, {111, 50, 0}, {100, 50, -61}, {math.NaN(), 50, 0}, {90, math.NaN(), 0}, {90, 50, math.NaN()}} {
		if _, err := Halving(units.Celsius(tc[0]), units.Celsius(tc[1]), units.Celsius(tc[2]), time.Hour); !errors.Is(err, units.ErrRange) {
			t.Errorf("%v: %v", tc, err)
		}
	}
	// A tenth of a degree between the readings, and another above the air.
	if h, err := Halving(units.Celsius(0.2), units.Celsius(0.1), units.Celsius(0), time.Hour); err != nil || (h-time.Hour).Abs() > time.Microsecond {
		t.Errorf("the least that can be read: %v, %v", h, err)
	}
	if h, err := Halving(units.Celsius(0.19), units.Celsius(0.1), units.Celsius(0), time.Hour); !errors.Is(err, units.ErrRange) || h != 0 {
		t.Errorf("less than can be read: %v, %v", h, err)
	}
	for _, d := range []time.Duration{0, -1, 59 * time.Second, 1e6*time.Second + time.Second} {
		if h, err := Halving(units.Celsius(90), units.Celsius(50), units.Celsius(0), d); !errors.Is(err, units.ErrRange) || h != 0 {
			t.Errorf("%v: %v, %v", d, h, err)
		}
	}
	for _, d := range []time.Duration{60 * time.Second, 1e6 * time.Second} {
		if _, err := Halving(units.Celsius(90), units.Celsius(50), units.Celsius(0), d); err != nil {
			t.Errorf("%v: %v", d, err)
		}
	}
	// A tenth of a degree from the air and from each other, and not less.
	for _, tc := range []struct {
		from, to, air float64
		ok            bool
	}{{50, 20.11, 20, true}, {50, 20.09, 20, false}, {50, 49.89, 20, true}, {50, 49.91, 20, false}, {20, 10, 25, false}, {50, 40, 61, false}} {
		if h, err := Halving(units.Celsius(tc.from), units.Celsius(tc.to), units.Celsius(tc.air), time.Hour); tc.ok != (err == nil) || !tc.ok && h != 0 {
			t.Errorf("%+v: %v, %v", tc, h, err)
		}
	}
}

func TestChase(t *testing.T) {
	r := partitioned()
	held := mustRun(t, r, longDay()).Held
	p := longDay().Pressure
	before, behind := units.Share(0), 1.0
	for _, gallons := range []float64{0, 10, 20, 40, 80} {
		c, err := r.Chase(held, units.USGallons(gallons), units.Fahrenheit(50), p)
		if err != nil {
			t.Fatal(err)
		}
		if c.End != EventLow || c.Recovered < before || c.Recovered >= 100 {
			t.Errorf("%v gal: %v, recovered %v after %v", gallons, c.End, c.Recovered, before)
		}
		before = c.Recovered
		// The more water follows, the less sugar stays behind the last compartment.
		rest := float64((c.Held.Sugar() - c.Held[len(c.Held)-1].Sugar) / held.Sugar())
		if !(rest < behind) {
			t.Errorf("%v gal leave %v of the sugar behind, fewer left %v", gallons, rest, behind)
		}
		behind = rest
		if got := float64(c.Syrup.Sugar + c.Held.Sugar()); !near(got, float64(held.Sugar()), 1e-9) {
			t.Errorf("%v gal: sugar %v, held %v", gallons, got, held.Sugar())
		}
	}
	water, err := r.Fill(0, units.Fahrenheit(50), p)
	if err != nil {
		t.Fatal(err)
	}
	for _, held := range []Contents{nil, water, held[:2]} {
		if _, err := r.Chase(held, 1, units.Fahrenheit(50), p); !errors.Is(err, units.ErrRange) {
			t.Errorf("%v: %v", held, err)
		}
	}
	var e *units.RangeError
	if _, err := r.Chase(water, 1, units.Fahrenheit(50), p); !errors.As(err, &e) || e.Value != 0 || e.Low != 0 {
		t.Errorf("water alone: %v", err)
	}
	// A hundred grams of sugar are worth a chase.
	water[0].Sugar = 0.1 * units.Kilogram
	if _, err := r.Chase(water, 1, units.Fahrenheit(50), p); err != nil {
		t.Error(err)
	}
	r.Draw = DrawOff{}
	if _, err := r.Chase(held, 1, units.Fahrenheit(50), p); !errors.Is(err, units.ErrRange) {
		t.Error(err)
	}
}

func TestCompare(t *testing.T) {
	d := longDay()
	d.Sap[0].Volume = 200 * units.USGallon
	d.Out = 24 * time.Hour
	now, then := partitioned(), partitioned()
	then.Heat *= 1.25
	c, err := Compare(d, now, then)
	if err != nil {
		t.Fatal(err)
	}
	// A fire a quarter larger does the same in four fifths of the time.
	if got := float64(c.Then.Burned) / float64(c.Now.Burned); !near(got, 0.8, 1e-6) {
		t.Errorf("burned %v of the time", got)
	}
	if c.TimeSaved() != c.Now.Burned-c.Then.Burned || !near(1+float64(c.HeatSaved()/c.Now.Heat), 1, 1e-6) || math.Abs(float64(c.SugarGained())) > 1e-6 || c.BacklogCut() != 0 {
		t.Errorf("%v, %v, %v, %v", c.TimeSaved(), c.HeatSaved(), c.SugarGained(), c.BacklogCut())
	}
	for _, bad := range [][2]Rig{{{}, now}, {now, {}}} {
		if _, err := Compare(d, bad[0], bad[1]); !errors.Is(err, units.ErrRange) {
			t.Error(err)
		}
	}
}

// BenchmarkSeason boils through forty days with nights between them.
func BenchmarkSeason(b *testing.B) {
	b.ReportAllocs()
	r := partitioned()
	night := Night{Length: 12 * time.Hour, Air: units.Celsius(2), Halving: 2 * time.Hour}
	for b.Loop() {
		var held Contents
		for range 40 {
			d := longDay()
			d.Start = held
			o, err := r.Run(d)
			if err != nil {
				b.Fatal(err)
			}
			m, err := o.Held.Overnight(night)
			if err != nil {
				b.Fatal(err)
			}
			held = m.Contents
		}
	}
}

// BenchmarkCompartments makes a pan longer and longer over the same fire: the
// cost grows with the compartments. Dividing one pan into ever smaller parts
// costs more, as the liquid spends less time in each and the steps get shorter,
// until implicit ones take over.
func BenchmarkCompartments(b *testing.B) {
	for _, bm := range []struct {
		name  string
		total units.Area // shared by the compartments, or each has 4 ft2
	}{{"longer", 0}, {"divided", 24 * units.SquareFoot}} {
		for _, n := range []int{5, 10, 20, 40} {
			b.Run(bm.name+"/"+strconv.Itoa(n), func(b *testing.B) {
				b.ReportAllocs()
				r := partitioned()
				r.Compartments = nil
				area := 4 * units.SquareFoot
				if bm.total > 0 {
					area = bm.total / units.Area(n)
				}
				for range n {
					r.Compartments = append(r.Compartments, Compartment{Area: area, Depth: 2 * units.Inch, SafeDepth: 1 * units.Inch})
				}
				d := longDay()
				for b.Loop() {
					if _, err := r.Run(d); err != nil {
						b.Fatal(err)
					}
				}
			})
		}
	}
}
