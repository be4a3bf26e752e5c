package main

import (
	"encoding/json"
	"strings"
	"testing"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/examples/internal/cli/clitest"
	"example.org/sapreckoner/sugar"
)

func TestPotwatch(t *testing.T) {
	b := clitest.Build(t)
	t.Run("pages", func(t *testing.T) { pages(t, b) })
	t.Run("by the published table", func(t *testing.T) { byTable(t, b) })
	t.Run("demo by hand", func(t *testing.T) { byHand(t, b) })
	t.Run("candy by hand", func(t *testing.T) { candy(t, b) })
	t.Run("briefs", func(t *testing.T) { briefs(t, b) })
	t.Run("instruments", func(t *testing.T) { instruments(t, b) })
	t.Run("words", func(t *testing.T) { words(t, b) })
	b.Refuses(t, "potwatch", badFlags())
	b.Refuses(t, "potwatch", badFiles())
	b.Refuses(t, "potwatch", badChecks())
}

func pages(t *testing.T, b clitest.Binary) {
	b.Golden(t, "demo.txt")
	b.Golden(t, "full.txt", "-full")
	b.Golden(t, "evening.txt", append([]string{"-full"}, everything...)...)
	b.Golden(t, "demo-metric.txt", "-full", "-metric")
	b.Golden(t, "demo.json", "-json")
	b.Golden(t, "cup.txt", "-full", "-reading", "54 Brix", "-cup", "205 F")
	b.Golden(t, "sugar.txt", "-full", "-elevation", "1150 ft", "-make", "granulated sugar", "-metric")
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
		Sucrose  float64 `json:"sucrose_f"`
		Surface  float64 `json:"surface_f"`
		Reckoned float64 `json:"reckoned_f"`
		Parts    []part  `json:"parts"`
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
	var page struct {
		Parts sheet `json:"parts"`
	}
	if err := json.Unmarshal([]byte(out), &page); err != nil {
		t.Fatal(err)
	}
	return page.Parts
}

// Every product, weight and syrup of the packages has its word here.
func TestKinds(t *testing.T) {
	finishes, figures, syrups := map[string]bool{}, map[string]bool{}, map[sugar.Confection]bool{}
	for _, k := range kinds {
		finishes[k.finish], figures[k.figure], syrups[k.syrup] = true, true, true
	}
	known := map[string]bool{}
	for _, f := range finish.ConfectionFinishes() {
		if known[f.Product] = true; !finishes[f.Product] {
			t.Errorf("no word for %s", f.Product)
		}
	}
	if len(known) != len(kinds) {
		t.Errorf("%d products and %d words", len(known), len(kinds))
	}
	for _, f := range finish.ProductFigures() {
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
		// 24 lb of 40 Brix hold 9.6 lb of sugar. At a 32 F rise 7.41 lb of it are 8.45 lb of
		// candy, and so these 10.95, and 16.95 with the pot.
		{pot + "-water-boils|211.95 F|-make|molded candy", "", "to 16.95 lb", ""},
		{pot + "-water-boils|211.95 F|-make|molded candy", "", "Cool it, still, to 200.0 to 210.0 F", ""},
		{"-water-boils|211.95 F|-make|fondant", "", "no source at hand tells", "Take the pot off at, a"},
		{"", "", "An invented pot of an invented sugarhouse", "For cream"},
		{"-target|66 Brix", "", `Not given, and so taken as: -hydrometer "60 F".`, "invented"},
		{"-target|66 Brix", "", "where the thermometer stops today: -water-boils", "By thermometer"},
		{"-elevation|1150 ft", "", "most of the thermometer's is the barometer", ""},
		{"-elevation|1150 ft|-barometer-by|0 inHg", "", "most of the thermometer's is the probe", ""},
		{"-elevation|1150 ft", "", "The thermometer is taken as true", ""},
		// At 6,000 ft water boils at 201 F and syrup over 7 F above it.
		{"-elevation|6000 ft", "", "in the cup at 206.0 F, as is usual: measure yours and give -cup", "211"},
		{"-elevation|1150 ft", "", "in the cup at 211.0 F, as is usual", "206"},
		{"-elevation|1150 ft|-cup|209 F", "", "in the cup at 209.0 F; above 194 F", "usual"},
		{"-water-boils|209 F", "", "by your thermometer in boiling water", "taken as true"},
		// The formula alone leaves 0.18 F, twice of it 0.36 F and 0.87 Brix: no probe
		// makes up for that, but a coarse stem does.
		{"-water-boils|209 F|-probe-by|0.04 F deg|-depth-by|0 in|-barometer-by|0 inHg", "", "Trust the hydrometer (give or take 0.40 Brix against 0.87 Brix; most of the thermometer's is the formula", ""},
		{"-water-boils|209 F|-probe-by|0.04 F deg|-depth-by|0 in|-barometer-by|0 inHg|-division|4 Brix", "", "Trust the thermometer (give or take 0.87 Brix against", ""},
		{"-water-boils|209 F|-division|4 Brix", "", "most of the hydrometer's is the eye at the stem", ""},
		{"-floats-at|hot|-hot-mark|211 F|-cup|211 F|-target|66 Brix", "", "hydrometer the hot mark 66.0 Brix", ""},
		// A hot mark in a cup that has cooled to 180 F: 65.1 (density.Mark.Brix).
		{"-floats-at|hot|-hot-mark|211 F|-cup|180 F", "", "hydrometer the hot mark 65.1 Brix", ""},
		{"-refractometer|66.9 Brix|-prism|30 C", "", "refractometer 66.9 Brix 67.7 Brix", "agree"},
		{"-refractometer|66.9 Brix|-compensated", "", "refractometer 66.9 Brix 66.9 Brix", ""},
		{"-refractometer|63 Brix|-compensated|-reading|59 Brix|-cup|211 F", "", "hydrometer, refractometer no", "yes"},
		{"-water-boils|212 F|-shows|214 F", "", "no strength worth comparing under 50 Brix", "Take it off"},
		{"-water-boils|212 F|-shows|219.56 F", "", "thermometer 219.6 F 66.9 Brix", "How it climbs"},
		// Past syrup is said first; the thermometer cannot tell how sure 82 Brix is.
		{"-water-boils|209.6 F|-shows|230 F", "", "The moment it is syrup ====================== Take it off ----------- - By the thermometer it is too far, 82.", "no strength worth"},
		{"-water-boils|209.6 F|-shows|219 F", "", "too far, 70.9 Brix, where 68.9 Brix is the most: take it off the fire now, read it by the hydrometer, and thin it if", "Not every instrument"},
		{"-water-boils|209.6 F|-shows|219 F|-make|cream", "", "take it off the fire now if it is to be syrup; for cream see its points", "thin it"},
		{"67 at 60 F", "", "By the hydrometer it is syrup, 67.0 Brix: take it off the fire if it is still on it.", "fire now"},
		{"70 at 60 F", "", "where 68.9 Brix is the most: take it off the fire if it is still on it, and thin it.", "fire now"},
		{"59.5 at 204 F 215 F, water 212 F", "", "Not every instrument says so", "thin it"},
		{"-water-boils|212 F|-shows|219.56 F", "", "By the thermometer it is syrup, 66.9 Brix: take it off", "past syrup"},
		{"-refractometer|66.9 Brix|-compensated|-reading|58.8 Brix|-cup|211 F", "", "Not every instrument says so", "disagree"},
		// By hand: 66.9 to 68.9 Brix is what the rule allows; half of 0.2 of division
		// over the root of 3, 0.15 of scale and 0.003 make 0.16, twice of it 0.32.
		{"-refractometer|67.0 Brix|-compensated", "", "refractometer 67.0 Brix 67.0 Brix 0.32 Brix", "0.16"},
		{"-refractometer|67.0 Brix|-compensated", "", "Give or take holds 19 times of 20 (k = 2), on all of this page.", "two times of three"},
		{"-refractometer|67.0 Brix|-compensated", "", "it is syrup, 67.0 Brix: take it off the fire now.", "thin it"},
		{"-refractometer|68.4 Brix|-compensated", "", "It is within the rule, but from 68 Brix on crystals are likely", "thin it"},
		{"-refractometer|69.1 Brix|-compensated", "", "cannot tell whether that is too far: read again before it is thinned", "hot water"},
		{"-refractometer|69.3 Brix|-compensated", "", "take it off the fire now, and thin it. - Off the fire first. Thin it there with hot water or hot sap, in small pours", "read again before"},
		// Instruments apart are never averaged, and never thinned by: 62 and 65.0.
		{"-refractometer|62 Brix|-compensated|-reading|57 Brix|-cup|211 F", "", "Brix apart, more than chance explains: go by neither, thin nothing", "Take it off"},
		{"-refractometer|62 Brix|-compensated|-reading|57 Brix|-cup|211 F", "", "hydrometer, refractometer no - -", "yes"},
		{"-refractometer|71 Brix|-compensated|-reading|58 Brix|-cup|211 F", "", "Read again, the hydrometer first", "and thin it"},
		{"-water-boils|213.5 F|-elevation|1000 ft", "", "3.4 F deg more, which no weather explains", "they agree"},
		{"-water-boils|209.6 F|-elevation|1150 ft", "", "they agree", "write"},
		// Two inches of syrup: 0.39 F at the stop, 1 Brix of what it shows.
		{"-water-boils|205 F|-shows|212 F|-over|2 in", "", "Thermometer stops at 212.8 F (100.4 C; 7.77 F deg above water; under 2 in", ""},
		{"-water-boils|205 F|-shows|212 F|-over|2 in", "", "thermometer 212.0 F 64.9 Brix", "Take it off"},
		{"-water-boils|205 F|-shows|212 F", "", "thermometer 212.0 F 65.9 Brix", "Take it off"},
		{"-water-boils|205 F|-readings|-|-over|2 in", head + "0,211.6\n1,211.8\n2,212\n", "line of 3 64.9 Brix", ""},
		{readings, head + "0,180\n5,200\n9,211\n10,212\n20,217\n21,217.4\n22,217.9\n", "Passed over 4 (readings too cold for 30 Brix", "setback:"},
		{readings, head + "0,217\n1,217.4\n2,212\n3,212.1\n4,217\n5,217.4\n", "Passed over 4", "setback:"},
		{readings, head + "0,217\n1,217.4\n2,205\n3,218.3\n", "2.0 min 205.0 F dip", "Passed over"},
		{readings, head + "0,180\n5,200\n", "No reading is left to go by", "Strength then"},
		{readings, head + "0,216\n2,216.2\n4,216.4\n6,216.6\n8,221\n", "Read it again at once", "Past 66.9"},
		{readings, head + "0,216\n2,216.2\n4,216.4\n6,216.6\n8,221\n", "8.0 min 221.0 F so far a spike", "setback:"},
		{readings, head + "0,216\n2,216.2\n4,216.4\n6,216.6\n8,218.2\n", "so far a spike", "Read it again at once"},
		{readings + "|-coals|2m", "time,shown_f\n20:00,216\n20:02,216.3\n20:04,216.6\n20:06,217\n", "Stop firing at 63.9 Brix (the thermometer at 218.5 F; the coals bring it the rest of the way) Last wood in 5.6 min (at 20:12)", "beyond the target"},
		// From 63.9 to 66.8 Brix of 66.9: 1/63.9 - 1/66.9 is 31.4 times 1/66.8 - 1/66.9,
		// 4.97 halvings of 2 min after 5.64 min.
		{readings + "|-coals|2m", "time,shown_f\n20:00,216\n20:02,216.3\n20:04,216.6\n20:06,217\n", "Syrup, but for 0.1 Brix, in 15.6 min (at 20:22; over coals alone; read it before then", ""},
		{readings + "|-coals|8m", "time,shown_f\n20:00,216\n20:02,216.3\n20:04,216.6\n20:06,217\n", "beyond the target: take the pot off when it is syrup, or pour in sap; shut the ash door but leave the flue damper open", "Stop firing"},
		{readings, "time,shown_f\n20:00,216\n20:02,216.3\n20:04,216.6\n20:06,217\n", "do not leave the pot meanwhile", "Be there"},
		{"-target|62 Brix", "", "below 66 Brix it ferments or molds in the jar", "crystals"},
		{"-target|70 Brix", "", "from 68 Brix on crystals are likely in the jar", "is thin"},
		{readings, "time;shown_f\n19:40;217,5\n", "One reading does not make a line", "Strength then"},
		{readings, head + "0,217\n", "One reading does not make a line", "Strength then"},
		{readings, head + "0,217\n1,214\n", "1.0 min 214.0 F so far a dip", "Strength then"},
		{readings, head + "0,217\n1,217.4\n2,217.9\n3,214\n", "3.0 min 214.0 F so far a dip", "setback:"},
		{readings, head + "0,217\n1,217.4\n2,217.9\n3,214\n", "from 2.0 min, at an even fire", "One reading"},
		{readings, head + "0,217\n1,217.4\n2,217.9\n3,214\n4,214.3\n", "3.0 min 214.0 F setback", "so far"},
		{readings, head + "0,217\n1,217.4\n2,214\n3,218.3\n", "2.0 min 214.0 F dip", "setback:"},
		{readings, head + "0,217\n1,217.4\n2,221\n3,218.3\n", "2.0 min 221.0 F spike", "setback:"},
		{readings, head + "0,217\n1,217\n2,217\n", "It does not climb", "Time left"},
		{readings, head + "0,218.8\n1,219.2\n2,219.7\n3,220.3\n", "Past 66.9 Brix since", "Time left"},
		{readings, "time,shown_f\n23:56,217.4\n23:58:30,217.9\n00:01,218.5\n", "00:01 the next day", "setback:"},
		{stops, past + "2026-03-01,212,220.0,66.9\n", "how sure one stop is, nobody knows", "NaN"},
		{stops, past + "2026-03-01,212,220.0,66.9\n2026-03-01,212,220.0,66.9\n", "Rows that stand twice 1", "0.00"},
		// 0.4 F of the probe at two stops and at the next: 0.4 times the root of 1.5.
		{stops, past + "2026-03-01,212,220.0,66.9\n2026-03-02,212,220.0,66.9\n", "give or take 0.49 F deg", "in strength 0.0"},
		// Two stops alike are known better than the formula; two that are 0.6 F apart
		// are not.
		{stops, past + "2026-03-01,212,220.0,66.9\n2026-03-02,212,220.0,66.9\n", "as your past stops say", "which is known less well"},
		{stops, past + "2026-03-01,212,220.0,66.9\n2026-03-02,212,220.6,66.9\n", "your past stops say 220.3 F, which is known less well", "as your past stops say"},
		{stops, past + steady, "Thermometer stops at 220.1 F (104.5 C; 8.05 F deg above water; as your past stops say", ""},
		{stops + "|-shows|218 F", past + steady, "The thermometer counts less 0.49 F deg", "Take it off"},
		{stops, past + steady, "it takes six stops to tell", ""},
		{stops, past + steady + "2026-03-05,212,221.0,66.9\n2026-03-06,212,221.1,66.9\n", "yes (the last third showed 1.49 F deg", ""},
		{"-pressure|1 atm|-stops|-", past + steady, "No stop for today is given: the past stops count from water", "stop today at"},
		{"-pressure|1 atm|-stops|-", strings.NewReplacer("water_boils_f", "pressure_hpa", ",212,", ",1013.25,").Replace(past + steady), "By these, stop today at 220.1 F", ""},
		{"-stops|-", past + steady, "Say where water boils today, and the page tells your own stop", ""},
		{pot + "-gross-now|19 lb", "", "Boiled off too much", "Still to boil off"},
		{pot + "-boils-off|8 lb/h", "", "when to stop firing: -coals", "Stop firing"},
		{readings + "|-coals|30m", "time,shown_f\n20:00,216\n20:02,216.3\n20:04,216.6\n20:06,217\n", "it goes to burnt sugar (beyond the target", "Stop firing"},
		{pot + "-boils-off|800 lb/h|-coals|10m", "", "it goes to burnt sugar (beyond the target", "Stop firing"},
		{pot + "-boils-off|8 lb/h|-coals|59m", "", "beyond the target: take the pot off when it is syrup, or pour in sap; shut the ash door but leave the flue damper open", "Stop firing"},
		{pot + "-boils-off|8 lb/h|-coals|3m|-water-boils|212 F", "", "Stop firing at 64.", "beyond the target"},
		{"-water-boils|212 F|-make|fudge", "", "No published weight is at hand.", "The sources disagree"},
	} {
		_, out, errs := b.Run(t, c.stdin, strings.FieldsFunc("-full|"+c.args, func(r rune) bool { return r == '|' })...)
		flat := strings.Join(strings.Fields(out), " ")
		if !strings.Contains(flat, c.want) || c.not != "" && strings.Contains(flat, c.not) {
			t.Errorf("%s: want %q and not %q\n%s%s", c.args, c.want, c.not, errs, out)
		}
	}
}
