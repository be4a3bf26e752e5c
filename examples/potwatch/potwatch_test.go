package main

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/cli/clitest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/yield"
)

func TestPotwatch(t *testing.T) {
	b := clitest.Build(t)
	t.Run("pages", func(t *testing.T) { pages(t, b) })
	t.Run("by the published table", func(t *testing.T) { byTable(t, b) })
	t.Run("demo by hand", func(t *testing.T) { byHand(t, b) })
	t.Run("candy by hand", func(t *testing.T) { candy(t, b) })
	t.Run("words", func(t *testing.T) { words(t, b) })
	b.Refuses(t, "potwatch", badFlags())
	b.Refuses(t, "potwatch", badFiles())
}

func pages(t *testing.T, b clitest.Binary) {
	b.Golden(t, "demo.txt")
	b.Golden(t, "demo-metric.txt", "-metric")
	b.Golden(t, "demo.json", "-json")
	b.Golden(t, "cup.txt", "-reading", "54 Brix", "-cup", "205 F")
	b.Golden(t, "sugar.txt", "-elevation", "1150 ft", "-make", "granulated sugar", "-metric")
	b.Golden(t, "help.txt", "-h")
}

// sheet is what the tests read of the JSON.
type sheet struct {
	Stop struct {
		Water float64 `json:"water_f"`
		Syrup float64 `json:"syrup_f"`
		Reads float64 `json:"reads_brix"`
	} `json:"stop"`
	Thermometer struct {
		Sucrose float64 `json:"sucrose_f"`
		Parts   []part  `json:"parts"`
	} `json:"thermometer"`
	Hydrometer struct {
		Parts []part `json:"parts"`
	} `json:"hydrometer"`
	Now struct {
		Instruments []struct {
			Instrument string  `json:"instrument"`
			Strength   float64 `json:"strength_brix"`
			GiveOrTake float64 `json:"give_or_take_brix"`
		} `json:"instruments"`
		Pairs []struct {
			Pair       string  `json:"pair"`
			Agree      string  `json:"agree"`
			Together   float64 `json:"together_brix"`
			GiveOrTake float64 `json:"give_or_take_brix"`
		} `json:"pairs"`
	} `json:"now"`
	Watch struct {
		PerMinute float64 `json:"climbs_per_min_brix"`
		Left      float64 `json:"left_min"`
	} `json:"watch"`
	Scale struct {
		Stop       float64 `json:"stop_lb"`
		Off        float64 `json:"off_lb"`
		Left       float64 `json:"left_lb"`
		Minutes    float64 `json:"left_min"`
		LastFiring float64 `json:"last_firing_brix"`
		Coasts     float64 `json:"coasts_brix"`
	} `json:"scale"`
	Own struct {
		Offset float64 `json:"offset_f_deg"`
		Spread float64 `json:"spread_f_deg"`
		Stop   float64 `json:"stop_f"`
	} `json:"own"`
	Product struct {
		Points []struct {
			Today [2]float64 `json:"today_f"`
			Water [2]float64 `json:"water_pct"`
			Most  [2]float64 `json:"at_most_lb"`
		} `json:"points"`
		Published [2]float64 `json:"published_a_lb"`
	} `json:"product"`
}

type part struct {
	What       string  `json:"what"`
	GiveOrTake float64 `json:"give_or_take_brix"`
}

func run(t *testing.T, b clitest.Binary, args ...string) (s sheet) {
	t.Helper()
	status, out, errs := b.Run(t, "", append([]string{"-json"}, args...)...)
	if status != 0 || errs != "" {
		t.Fatalf("status %d, %s", status, errs)
	}
	if err := json.Unmarshal([]byte(out), &s); err != nil {
		t.Fatal(err)
	}
	return s
}

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

// The demo, reckoned again without the library.
func byHand(t *testing.T, b clitest.Binary) {
	s := run(t, b)
	// What is left of the activity of water is that it moves with temperature:
	// 0.012 F over the 1.3 K below 100 C.
	near(t, "sucrose", s.Thermometer.Sucrose, boils(66.9, 209.6), 0.02)
	// 5 percent inverted raise the point as much as 1 Brix does (the stop at 65.9
	// instead of 66.9), so 2 percent as much as 0.4.
	near(t, "stop", s.Stop.Syrup, boils(67.3, 209.6), 0.03)

	// All together is the root of the sum of squares.
	for _, parts := range [][]part{s.Thermometer.Parts, s.Hydrometer.Parts} {
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

	// The readings were made from 19.36 lb of 56.5 Brix that lose 8 lb/h, rounded
	// to 0.1 F: after 14 min 17.493 lb are left of 16.350 at 66.9 Brix, 8.57 min.
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

// Every product, weight and syrup of the packages has its word here.
func TestKinds(t *testing.T) {
	finishes, figures, syrups := map[string]bool{}, map[string]bool{}, map[sugar.Confection]bool{}
	for _, k := range kinds {
		finishes[k.finish], figures[k.figure], syrups[k.syrup] = true, true, true
	}
	known := map[string]bool{}
	for _, f := range boil.ConfectionFinishes() {
		if known[f.Product] = true; !finishes[f.Product] {
			t.Errorf("no word for %s", f.Product)
		}
	}
	if len(known) != len(kinds) {
		t.Errorf("%d products and %d words", len(known), len(kinds))
	}
	for _, f := range yield.ProductFigures() {
		if !figures[f.Product] {
			t.Errorf("no word for the weight of %s", f.Product)
		}
	}
	if !syrups[sugar.MoldedSugar] || !syrups[sugar.MapleCream] {
		t.Error("a syrup is not told")
	}
}

// What a page says at some times and not at others.
func words(t *testing.T, b clitest.Binary) {
	const (
		readings = "-water-boils|212 F|-readings|-"
		stops    = "-water-boils|212 F|-stops|-"
		pot      = "-tare|6 lb|-gross|30 lb|-pot-brix|40 Brix|"
		head     = "after_min,shown_f\n"
		past     = "day,water_boils_f,stop_f,cup_brix\n"
		steady   = "2026-03-01,212,220.0,66.9\n2026-03-02,212,220.1,66.9\n2026-03-03,212,220.0,66.9\n2026-03-04,212,220.1,66.9\n"
	)
	for _, c := range []struct{ args, stdin, want, not string }{
		{"", "", "An invented pot on an invented evening", "Not on this page"},
		{"-target|66 Brix", "", `Not given, and so taken as: -hydrometer "60 F", -cup "211 F".`, "invented"},
		{"-target|66 Brix", "", "where the thermometer stops today: -water-boils", "By thermometer"},
		{"-elevation|1150 ft", "", "most of the thermometer's is the barometer", ""},
		{"-elevation|1150 ft|-barometer-by|0 inHg", "", "most of the thermometer's is the probe", ""},
		{"-elevation|1150 ft", "", "The thermometer is taken as true", ""},
		{"-water-boils|209 F", "", "by your thermometer in boiling water", "taken as true"},
		{"-water-boils|209 F|-probe-by|0.02 F deg|-depth-by|0 in|-barometer-by|0 inHg", "", "Trust the thermometer (give or take 0.1", ""},
		{"-water-boils|209 F|-division|4 Brix", "", "most of the hydrometer's is the eye at the stem", ""},
		{"-floats-at|hot|-hot-mark|211 F|-cup|211 F|-target|66 Brix", "", "hydrometer the hot mark 66.0 Brix", ""},
		// A hot mark in a cup that has cooled to 180 F: 65.1 (density.Mark.Brix).
		{"-floats-at|hot|-hot-mark|211 F|-cup|180 F", "", "hydrometer the hot mark 65.1 Brix", ""},
		{"-refractometer|66.9 Brix|-prism|30 C", "", "refractometer 66.9 Brix 67.7 Brix", "agree"},
		{"-refractometer|66.9 Brix|-compensated", "", "refractometer 66.9 Brix 66.9 Brix", ""},
		{"-refractometer|63 Brix|-compensated|-reading|59 Brix|-cup|211 F", "", "hydrometer, refractometer no", "yes"},
		{"-water-boils|212 F|-shows|214 F", "", "no strength worth comparing outside 50 to 80 Brix", ""},
		{"-water-boils|212 F|-shows|219.56 F", "", "thermometer 219.6 F 66.9 Brix", "How it climbs"},
		{readings, head + "0,217\n1,217.4\n2,217.9\n3,214\n", "One reading does not make a line", "Strength now"},
		{readings, head + "0,217\n1,217.4\n2,217.9\n3,214\n", "3.0 min 214.0 F setback", ""},
		{readings, head + "0,217\n1,217.4\n2,214\n3,218.3\n", "2.0 min 214.0 F dip", "setback:"},
		{readings, head + "0,217\n1,217.4\n2,221\n3,218.3\n", "2.0 min 221.0 F spike", "setback:"},
		{readings, head + "0,217\n1,217\n2,217\n", "It does not climb", "Time left"},
		{readings, head + "0,218.8\n1,219.2\n2,219.7\n3,220.3\n", "Past 66.9 Brix since", "Time left"},
		{readings, "time,shown_f\n23:56,217.4\n23:58:30,217.9\n00:01,218.5\n", "00:01 the next day", "setback:"},
		{stops, past + "2026-03-01,212,220.0,66.9\n", "how sure one stop is, nobody knows", "NaN"},
		{stops, past + steady, "it takes six stops to tell", ""},
		{stops, past + steady + "2026-03-05,212,221.0,66.9\n2026-03-06,212,221.1,66.9\n", "yes (the last third showed 1.49 F deg", ""},
		{"-pressure|1 atm|-stops|-", past + steady, "No stop for today is given: the past stops count from water", "stop today at"},
		{"-pressure|1 atm|-stops|-", strings.NewReplacer("water_boils_f", "pressure_hpa", ",212,", ",1013.25,").Replace(past + steady), "By these, stop today at 220.1 F", ""},
		{"-stops|-", past + steady, "Say where water boils today, and the page tells your own stop", ""},
		{pot + "-gross-now|19 lb", "", "Boiled off too much", "Still to boil off"},
		{pot + "-boils-off|8 lb/h", "", "when to stop firing: -coals", "Stop firing"},
		{pot + "-boils-off|8 lb/h|-coals|59m", "", "beyond the target: draw the fire", "Stop firing"},
		{pot + "-boils-off|8 lb/h|-coals|3m|-water-boils|212 F", "", "Stop firing at 64.", "beyond the target"},
		{"-water-boils|212 F|-make|fudge", "", "No published weight is at hand.", "The sources disagree"},
	} {
		_, out, errs := b.Run(t, c.stdin, strings.FieldsFunc(c.args, func(r rune) bool { return r == '|' })...)
		flat := strings.Join(strings.Fields(out), " ")
		if !strings.Contains(flat, c.want) || c.not != "" && strings.Contains(flat, c.not) {
			t.Errorf("%s: want %q and not %q\n%s%s", c.args, c.want, c.not, errs, out)
		}
	}
}
