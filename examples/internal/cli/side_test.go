package cli

import (
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// What is told to act on, rounded by hand.
func TestSides(t *testing.T) {
	in := func(x float64) units.Length { return units.Inches(x) }
	for _, c := range []struct {
		v          Value
		us, metric string
	}{
		// 1.13 in are 9.04 eighths and 2.870 cm.
		{Eighths(in(1.13), Up), "1 1/4 in", "2.9 cm"},
		{Eighths(in(1.13), Down), "1 1/8 in", "2.8 cm"},
		{Eighths(in(1.13), Nearest), "1 1/8 in", "2.9 cm"},
		{Eighths(in(0.1), Down), "0 in", "0.2 cm"},
		{Eighths(in(2), Up), "2 in", "5.1 cm"}, // 5.08
		{Eighths(in(math.NaN()), Up), "-", "-"},
		// 2.1 US gal are 8.4 qt and 7.949 L; 35.8 are 143.2 qt and 135.5 L.
		{Quarts(units.USGallons(2.1), Down), "8 1/4 US qt", "7 3/4 L"},
		{Quarts(units.USGallons(2.1), Up), "8 1/2 US qt", "8 L"},
		{Quarts(units.USGallons(35.8), Down), "143 US qt", "135 L"},
		{Gallons(units.USGallons(6.7), Down), "6 1/2 US gal", "25 L"}, // 25.36
		{Gallons(units.USGallons(1234), Up), "1240 US gal", "4680 L"}, // 4671
		// 22.54 lb are 22 lb 8.64 oz and 10.224 kg; 3.3 lb are 3 lb 4.8 oz and 1.4969 kg.
		{Weight(units.Pounds(22.54), Down), "22 lb 8 oz", "10.20 kg"},
		{Weight(units.Pounds(22.54), Up), "22 lb 9 oz", "10.25 kg"},
		{Weight(units.Pounds(3.3), Down), "3 lb 4 3/4 oz", "1.495 kg"},
		{Weight(units.Pounds(12.31), Down), "12 lb 4 1/2 oz", "5.58 kg"}, // 4.96 oz, 5.5837 kg
		{Weight(units.Pounds(0.5), Down), "8 oz", "0.225 kg"},            // 226.8 g
		{Weight(units.Pounds(180.4), Up), "181 lb", "82.0 kg"},           // 81.83 kg
		{Pounds(units.Pounds(80.02), Up), "81 lb", "37 kg"},              // 36.3
		{Weight(units.Pounds(23.999), Up), "24 lb", "10.90 kg"},
		// 0.34 cord are 1.02 face cords and 1.232 m3; 8.5 barrows of 1/25 cord.
		{Measure{}.Carried(0.34*units.Cord, Up), "1 1/4 face cords", "1.3 m3"},
		{Measure{}.Carried(1.2*units.Cord, Up), "4 face cords", "4.4 m3"}, // 3.6, 4.349
		{Measure{"barrow", units.Cord / 25}.Carried(0.34*units.Cord, Up), "8 1/2 barrows", "8 1/2 barrows"},
		{Measure{"barrow", units.Cord / 25}.Carried(0.47*units.Cord, Up), "12 barrows", "12 barrows"}, // 11.75
		{Measure{"barrow", units.Cord / 25}.Carried(units.Cord/25, Up), "1 barrow", "1 barrow"},
		{TenthDegree(units.Fahrenheit(217.38), Down), "217.3 F", "102.9 C"}, // 102.989
		{WholeDegree(units.Fahrenheit(113.3), 5, Up), "115 F", "50 C"},      // 45.2 C
		{WholeDegree(units.Fahrenheit(187.9), 1, Down), "187 F", "86 C"},    // 86.61 C
		{TenthBrix(59.01, Up), "59.1 Brix", "59.1 Brix"},
		{TenthBrix(59.1, Up), "59.1 Brix", "59.1 Brix"},
		{Minutes(8*time.Minute+50*time.Second, Down), "8 min", "8 min"},
		{Minutes(132*time.Minute+time.Second, Up), "2 h 13 min", "2 h 13 min"},
		{Feet(350.52), "1150 ft", "351 m"},
	} {
		if c.v.us.text != c.us || c.v.metric.text != c.metric {
			t.Errorf("%q and %q, want %q and %q", c.v.us.text, c.v.metric.text, c.us, c.metric)
		}
	}
}

// A clock is told to its safe side, and by the day.
func TestClockBy(t *testing.T) {
	start := time.Date(0, 1, 1, 8, 0, 0, 0, time.UTC)
	for _, c := range []struct {
		after time.Duration
		to    Side
		want  string
	}{
		{64*time.Minute + 59*time.Second, Down, "09:00"},
		{61 * time.Minute, Up, "09:05"},
		{60 * time.Minute, Up, "09:00"},
		{62*time.Minute + 30*time.Second, Nearest, "09:05"},
		{62 * time.Minute, Nearest, "09:00"},
		{15*time.Hour + 58*time.Minute, Up, "00:00 the next day"},
		{15*time.Hour + 58*time.Minute, Down, "23:55"},
	} {
		if got := ClockBy(start, start.Add(c.after), 5*time.Minute, c.to).us.text; got != c.want {
			t.Errorf("%v by side %d: %s, want %s", c.after, c.to, got, c.want)
		}
	}
}

// No helper ever rounds to the other side, and none by more than a step.
func TestSidesHold(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 17))
	for range 20_000 {
		x := math.Pow(10, r.Float64()*5-2)
		for i, at := range []func(Side) Value{
			func(to Side) Value { return Eighths(units.Inches(x), to) },
			func(to Side) Value { return Gallons(units.USGallons(x), to) },
			func(to Side) Value { return Quarts(units.USQuarts(x), to) },
			func(to Side) Value { return Weight(units.Pounds(x), to) },
			func(to Side) Value { return Measure{}.Carried(units.Volume(x)*FaceCord.Wood, to) },
			func(to Side) Value { return Measure{"sled", units.Cord}.Carried(units.Volume(x)*units.Cord, to) },
		} {
			down, up := at(Down).us.json.(float64), at(Up).us.json.(float64)
			if slack := 1e-6 * max(1, x); down > x+slack || up < x-slack || up-down > max(1.01, x/99) {
				t.Fatalf("helper %d: %v is told as %v and %v", i, x, down, up)
			}
		}
	}
}

// A limit that is worded keeps its side in every unit: who pours at the worded most pours
// no hotter than the limit, and who caps at the worded least caps no cooler. 190 F are
// 87.78 C, 180 F are 82.22 C, 185 F are 85 C.
func TestLimitsInWords(t *testing.T) {
	us, metric := &Sheet{}, &Sheet{Metric: true}
	for _, c := range []struct{ got, want string }{
		{us.AtMost(units.Fahrenheit(190)), "190 F"},
		{us.AtLeast(units.Fahrenheit(180)), "180 F"},
		{metric.AtMost(units.Fahrenheit(190)), "87 C"},
		{metric.AtLeast(units.Fahrenheit(180)), "83 C"},
		{metric.AtLeast(units.Fahrenheit(185)), "85 C"},
		{us.AtLeast(units.Celsius(-5)), "23 F"},
	} {
		if c.got != c.want {
			t.Errorf("%s, want %s", c.got, c.want)
		}
	}
	for f := -40.0; f < 260; f += 0.7 {
		limit := units.Fahrenheit(f)
		for _, s := range []*Sheet{us, metric} {
			if most, err := units.ParseTemperature(s.AtMost(limit)); err != nil || most.Celsius() > limit.Celsius()+1e-6 {
				t.Errorf("at most %v: %v, %v", limit, most, err)
			}
			if least, err := units.ParseTemperature(s.AtLeast(limit)); err != nil || least.Celsius() < limit.Celsius()-1e-6 {
				t.Errorf("at least %v: %v, %v", limit, least, err)
			}
		}
	}
}
