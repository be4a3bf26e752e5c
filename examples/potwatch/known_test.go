package main

import (
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

func near(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: %v, want %v within %v", what, got, want, within)
	}
}

// published is the boiling rise of sucrose at 1 atm in kelvin, from 65 Brix on:
// the table in GNU units 2.22, after Starzak and Peacock (1997).
var published = [...]float64{3.7944, 4.0012, 4.2227, 4.4603, 4.7156}

// rise reads the table between its rows, by second differences.
func rise(brix float64) float64 {
	i := min(int(brix-65), len(published)-3)
	x := brix - 65 - float64(i)
	a, b, c := published[i], published[i+1], published[i+2]
	return a + x*(b-a) + x*(x-1)/2*(c-2*b+a)
}

// boils is where sucrose syrup boils, in F, when water boils at water. By the
// equation of Clausius and Clapeyron a rise goes with the square of the absolute
// temperature over the latent heat: 2256.5 kJ/kg at 100 C, and 2.65 more for
// every kelvin under that (steam tables, from memory).
func boils(brix, water float64) float64 {
	c := (water - 32) / 1.8
	k := (c + 273.15) / 373.15
	return water + 1.8*rise(brix)*k*k*2256.5/(2256.5+2.65*(100-c))
}

// Under 1 atm water boils at 99.974 C (IAPWS), and syrup as far above as the
// table says. Two formulations for water differ by 0.0007 K.
func byTable(t *testing.T, b clitest.Binary) {
	for brix, args := range map[float64]string{65: "65 Brix", 66: "66 Brix", 67: "67 Brix", 68: "68 Brix"} {
		s := run(t, b, "-pressure", "1 atm", "-target", args)
		near(t, args, (s.Stop.Syrup-32)/1.8, 99.974+published[int(brix)-65], 0.0015)
	}
}

// everything is an invented evening by every instrument.
var everything = []string{
	"-inverted", "2 %", "-water-boils", "209.6 F", "-elevation", "1150 ft", "-over", "1/2 in",
	"-readings", "testdata/readings.csv", "-stops", "testdata/stops.csv",
	"-cup", "209 F", "-reading", "54.5 Brix", "-hot-mark", "211 F", "-cold-mark", "60 F",
	"-refractometer", "62.3 Brix", "-compensated",
	"-tare", "6.2 lb", "-gross", "34.6 lb", "-pot-brix", "38.5 Brix", "-gross-now", "23.7 lb",
	"-boils-off", "8 lb/h", "-coals", "2m", "-make", "cream",
}

// That evening, reckoned again without the library.
func byHand(t *testing.T, b clitest.Binary) {
	s := run(t, b, everything...)
	// What is left of the activity of water is that it moves with temperature:
	// 0.012 F over the 1.3 K below 100 C.
	near(t, "sucrose", s.Thermometer.Sucrose, boils(66.9, 209.6), 0.02)
	// 5 percent inverted raise the point as much as 1 Brix does (the stop at 65.9
	// instead of 66.9), so 2 percent as much as 0.4.
	near(t, "surface", s.Thermometer.Surface, boils(67.3, 209.6), 0.03)
	// Half an inch of syrup of 1.27 presses as 0.93 mm of mercury does on top of
	// 725.2. A share of pressure moves the boiling point by R T^2/(L M) of it, 28.3
	// K for water near 99 C (Clausius and Clapeyron).
	const depth = 0.5 * 25.4 * 1.27 / 13.595 / 725.2 * 28.3 * 1.8 // F
	near(t, "reckoned", s.Thermometer.Reckoned, boils(67.3, 209.6)+depth, 0.03)

	// All together is the root of the sum of squares.
	for _, parts := range [][]part{run(t, b, "-water-boils", "209.6 F", "-inverted", "2 %").Thermometer.Parts, s.Hydrometer.Parts} {
		sum, last := 0.0, len(parts)-1
		for _, p := range parts[:last] {
			sum += p.GiveOrTake * p.GiveOrTake
		}
		if last != 5 || parts[last].What != "all together" {
			t.Fatalf("%v", parts)
		}
		near(t, "all together", parts[last].GiveOrTake, math.Sqrt(sum), 1e-7)
	}

	// 28.4 lb of 38.5 Brix hold 10.934 lb of sugar.
	const solids = 28.4 * 0.385
	near(t, "pot", s.Scale.Stop, 6.2+solids/0.669, 1e-6)
	near(t, "off", s.Scale.Off, 28.4-solids/0.669, 1e-6)
	near(t, "left", s.Scale.Left, 23.7-6.2-solids/0.669, 1e-6)
	near(t, "minutes", s.Scale.Minutes, (23.7-6.2-solids/0.669)/8*60, 1e-6)
	// The coals still boil off 8 lb/h x 2 min/ln 2.
	coals := 8.0 / 60 * 2 / math.Ln2
	near(t, "last firing", s.Scale.LastFiring, 100*solids/(solids/0.669+coals), 1e-6)
	near(t, "coasts", s.Scale.Coasts, 100*solids/(23.7-6.2-coals), 1e-6)

	// Seven stops against the table: water boiled at, stop, cup.
	var mean, squares float64
	stops := [...][3]float64{{210.1, 218.0, 67.1}, {209.4, 217.0, 66.4}, {208.8, 216.7, 67.1}, {210.6, 218.2, 66.7},
		{209.9, 217.9, 67.1}, {209.2, 216.8, 66.4}, {209.7, 217.5, 66.7}}
	var offs [len(stops)]float64
	for i, p := range stops {
		offs[i] = p[1] - boils(p[2], p[0])
		mean += offs[i] / float64(len(stops))
	}
	for _, o := range offs {
		squares += (o - mean) * (o - mean)
	}
	near(t, "offset", s.Own.Offset, mean, 0.02)
	near(t, "spread", s.Own.Spread, math.Sqrt(squares/float64(len(stops)-1)), 0.005)
	near(t, "own stop", s.Own.Stop, boils(66.9, 209.6)+mean, 0.02)
	// The past stops tell the stop better than the parts do, and so they count.
	near(t, "stop", s.Stop.Syrup, boils(66.9, 209.6)+mean, 0.02)

	// The readings were made from 19.36 lb of 56.5 Brix that lose 8 lb/h, with
	// the offset of the past stops, rounded to 0.1 F: after 14 min 17.493 lb are left of 16.350 at 66.9 Brix, 8.57 min.
	net := 19.36 - 8*14.0/60
	syrup := 19.36 * 56.5 / 66.9
	near(t, "time left", s.Watch.Left, (net-syrup)/8*60, 1)
	near(t, "climb", s.Watch.PerMinute, 100*0.565*19.36/net*8/60/net, 0.05)

	together := map[string][2]float64{}
	for _, i := range s.Now.Instruments {
		together[i.Instrument] = [2]float64{i.Strength, i.GiveOrTake}
		near(t, i.Instrument, i.Strength, 62.5, 0.3)
	}
	// Three pairs, each the mean weighted by the inverse squares.
	if len(s.Now.Pairs) != 3 || len(s.Now.Instruments) != 4 {
		t.Errorf("%d pairs of %d instruments", len(s.Now.Pairs), len(s.Now.Instruments))
	}
	for _, p := range s.Now.Pairs {
		one, two, _ := strings.Cut(p.Pair, ", ")
		x, y := together[one], together[two]
		wx, wy := 1/(x[1]*x[1]), 1/(y[1]*y[1])
		near(t, p.Pair, p.Together, (x[0]*wx+y[0]*wy)/(wx+wy), 1e-6)
		near(t, p.Pair, p.GiveOrTake, 1/math.Sqrt(wx+wy), 1e-6)
		if p.Agree != "yes" {
			t.Errorf("%s: %s", p.Pair, p.Agree)
		}
	}
}

// Cream by the Ontario sheet is done 18 to 20 F above water; a US gallon of 66.9
// Brix weighs 11.08 lb in air at 68 F and holds 7.41 lb of solids. Producers'
// manuals have 7.5 to 8 lb of cream.
func candy(t *testing.T, b clitest.Binary) {
	s := run(t, b, "-pressure", "1 atm", "-make", "cream")
	p := s.Product.Points[0]
	near(t, "low", p.Today[0], 211.95+18, 0.01)
	near(t, "high", p.Today[1], 211.95+20, 0.01)
	for i := range 2 {
		near(t, "solids", p.Most[i]*(1-p.Water[i]/100), 7.41, 0.01)
	}
	near(t, "published", s.Product.Published[0], 7.5, 1e-9)
	near(t, "published", s.Product.Published[1], 8, 1e-9)
	// The same strength lies lower on a hill, and its rise is smaller.
	hill := run(t, b, "-water-boils", "202 F", "-make", "cream").Product.Points[0].Today[0]
	if !(hill < 202+18 && hill > 202+17) {
		t.Errorf("on a hill %v F", hill)
	}
}
