package main

import (
	"encoding/json"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

func TestBoilday(t *testing.T) {
	b := clitest.Build(t)
	t.Run("pages", func(t *testing.T) { pages(t, b) })
	t.Run("briefs", func(t *testing.T) { briefs(t, b) })
	t.Run("deadlines", func(t *testing.T) { deadlines(t, b) })
	t.Run("JSON", func(t *testing.T) { sameNumbers(t, b) })
	t.Run("narrow", func(t *testing.T) { narrow(t, b) })
	t.Run("refractometer", func(t *testing.T) { refraction(t, b) })
	t.Run("standard input", func(t *testing.T) { standardInput(t, b) })
	t.Run("wood", func(t *testing.T) { wood(t, b) })
	t.Run("words", func(t *testing.T) { words(t, b) })
	b.Refuses(t, "boilday", badInput())
}

func pages(t *testing.T, b clitest.Binary) {
	b.Golden(t, "demo.txt")
	b.Golden(t, "full.txt", "-full")
	b.Golden(t, "demo-metric.txt", "-full", "-metric")
	b.Golden(t, "demo.json", "-json")
	b.Golden(t, "gatherings.txt", "-full", "-sap-file", "testdata/gatherings.csv", "-water-boils", "209.3 F", "-boil-rate", "22 US gal/h", "-pan-area", "8 ft2")
	b.Golden(t, "batches.txt", "-full", "-sap", "1500 US gal", "-boil-rate", "120 US gal/h", "-altimeter", "29.85 inHg", "-elevation", "1700 ft")
	b.Golden(t, "compartments.txt", "-full", "-compartments", "6 ft2, 3 ft2, 3 ft2", "-depth", "1.5 in", "-sap", "260 US gal", "-boil-rate", "26 US gal/h", "-draw-to", "63 Brix")
	b.Golden(t, "membrane.txt", "-full", "-membrane-to", "8 Brix", "-membrane-flow", "60 US gal/h", "-membrane-pump", "15 bar", "-bottle", "1 US pt")
	b.Golden(t, "fuel.txt", "-full", "-fuel", "propane", "-efficiency", "55 %")
	b.Golden(t, "help.txt", "-h")
}

// What a page says on some days and not on others.
func words(t *testing.T, b clitest.Binary) {
	const dated = "time,volume_us_gal,reading_brix,read_at_f\n2026-03-10 17:00,100,2.0,40\n2026-03-11 13:00,100,2.2,41\n"
	for _, c := range []struct{ args, stdin, want, not string }{
		{"", "", "An invented sugarhouse", "Not given"},
		{"-sap|60 US gal", "", "-reading \"2.1 Brix\"", "-sap \"90"},
		{"-water-boils|210 F", "", "-pan-area \"12 ft2\"", `-elevation "1150 ft"`},
		{"-sap-file|-", dated, "last of it comes at 13:00", "more than a day"},
		{"-sap-file|-|-start|14:00", dated, "", "last of it comes"},
		{"-sap-file|-|-compartments|8 ft2, 4 ft2|-boil-rate|20 US gal/h", dated, "13:00 sap in", ""},
		{"-sap|4000 US gal", "", "That is more than a day and a night", ""},
		{"-compartments|6 ft2, 2 ft2|-boil-rate|14 US gal/h|-depth|1 in|-safe-depth|0.5 in|-sap|200 US gal", "", "; 1 draw)", ""},
		{"-bottle|2 US gal|-sap|300 US gal", "", "3 of 2 US gal", ""},
		{"-bottle|1 US pt|-compartments|8 ft2, 4 ft2", "", "no syrup today", "Left over"},
		{"-bottle|500 mL|-metric", "", "label's volume at 20 C", "68 F"},

		// The cup is never hotter than the syrup: 211 F as is usual, or less.
		{"-elevation|1800 m", "", "in the cup at 206.0 F", "211"},
		{"-elevation|1800 m|-metric", "", "in the cup at 96.0 C", "211"},
		{"-elevation|0 ft", "", "in the cup at 211.0 F", ""},
		{"-cup|200 F|-elevation|1800 m", "", "in the cup at 200.0 F", "206"},

		// Sap that does not cover the pan is boiled in a pot. 7 US gal over 12 ft2
		// stand 7 x 231/(144 x 12) = 0.94 in deep.
		{"-sap|7 US gal", "", "would lie 0.94 in deep in this pan, under the least safe depth of 1 in", "At the pan"},
		{"-sap|7 US gal|-compartments|8 ft2, 4 ft2", "", "boil it in a pot", "At the pan"},
		{"-sap|7 US gal", "", "-pot-rate \"1 US gal/h\"", ""},
		// 58.9 lb from 38 F to 209.9 F at about 0.99 Btu/(lb F) over a burner that
		// boils off 8.33 lb an hour, at 972 Btu each, take 1.24 h, and 57.05 lb of
		// water 6.85 h.
		{"-sap|7 US gal", "", "It is syrup 16:05 (8 h 05 min in the pot)", ""},
		{"-sap|7 US gal", "", "5 Brix (faster than a reading follows", "stay with it"},
		{"-sap|90 US gal", "", "0.42 Brix (stay with it)", "faster"},
		{"-sap|7 US gal|-pot-rate|2 US gal/h", "", "The pot boils off 2 US gal/h", "-pot-rate \"1"},
		{"-sap|1500 US gal|-boil-rate|120 US gal/h", "", "It is syrup", "a pot"},

		// 12 US gal/h of 8.322 lb at 20 C take (8.322 x 12) x 1.18 = 118 lb/h of
		// steam once no cold sap comes, and 480 s/ln 2 of it are 22.7 lb.
		{"-pan-rate|1 US gal/ft2/h", "", "the coals still boil off 23 lb", "DO NOT"},
		{"-coals|0s", "", "It boils", "Last wood"},
		// 118 x 3/ln 2 = 511 lb. All but the 61 lb of the full pan over its safe depth make
		// room for sap still to come, so that the last of it goes in log2(511/61) = 3.07
		// half-lives, 9 h 12 min, after the last wood at 10:01.
		{"-coals|3h|-pan-rate|1 US gal/ft2/h", "", "the coals still boil off 520 lb", "DO NOT"},
		{"-coals|3h|-pan-rate|1 US gal/ft2/h", "", "Last sap in the pan 19:1", ""},
		// 65.9 lb of 24.2 Brix are 0.27 more at 24.1, and 520 lb halve to that 10.9 times.
		{"-coals|3h|-pan-rate|1 US gal/ft2/h", "", "SUCH COALS SUIT NO FLAT PAN boiled down at one go: from the last wood they take 32 h 36 min", "DO NOT LIGHT"},
		{"-coals|15m", "", "Last wood on the fire", "SUIT NO"},
		// Without coals 733.5 less 39.5 lb for the pot and 3 that stay, at 12 x 8.33 lb/h, take 6.91 h.
		{"-fuel|propane|-pan-rate|1 US gal/ft2/h", "", "Take it off the pan 15:08 (after 7 h 08 min)", "coals"},
		{"-coals|6h", "", "DO NOT LIGHT THIS FIRE", "Last wood"},
		// They lower 12 ft2 by 1021 lb/(59.6 lb/ft3 x 12 ft2) = 17.1 in, to 1 in.
		{"-coals|6h|-pan-rate|1 US gal/ft2/h", "", "stand 18.25 in deep at the last stick", ""},
		// 8 gal/h make 8 x 8.322 x 1.18 x 480/3600/ln 2 = 15.1 lb behind the last wood,
		// which lower the 4 ft2 of no. 1 by 0.76 in, to 1 in.
		{"-coals|8m|-compartments|4 ft2, 4 ft2", "", "(no. 1 must then stand 2 in deep", "low level"},
		{"-sap-file|-|-compartments|4 ft2, 4 ft2|-coals|8m", "time,volume_us_gal,reading_brix,read_at_f\n08:00,40,2.0,40\n17:00,40,2.2,41\n", "The coals of a banked fire still boil off 16 lb, which the timeline leaves out: put on the last wood before that while no. 1 stands 2 in deep", ""},
		{"-coals|0s|-compartments|4 ft2, 4 ft2", "", "low level, no. 1", "Last wood"},
		{"-coals|12h|-compartments|8 ft2, 4 ft2", "", "DO NOT LIGHT THIS FIRE", "Last wood on the fire"},
		{"-coals|3h", "", "flue damper open", "draw the fire"},
		{"", "", "The clock starts with a hot arch", ""},
		{"-compartments|8 ft2, 4 ft2", "", "The clock starts with a hot arch", "valve opens"},
		{"-compartments|6 ft2, 3 ft2, 3 ft2|-depth|1.5 in|-sap|260 US gal|-boil-rate|26 US gal/h|-draw-to|63 Brix", "", "less than 66 Brix in the mean may not be sold", ""},
		{"-compartments|6 ft2, 3 ft2, 3 ft2|-depth|1.5 in|-sap|260 US gal|-boil-rate|26 US gal/h|-draw-to|66 Brix", "", "valve opens shuts qt mean Brix total qt", "in the mean may not"},
		// An inch of 12 ft2 is 7.48 gal hot, 7.2 cold; at 12 gal/h of cold sap, 14.2
		// without, they are gone in 30 minutes, and coals of 8 give as much as 11.5.
		{"-pan-rate|1 US gal/ft2/h", "", "If the sap stops 30 min (from full to the safe depth", ""},
		{"-pan-rate|1 US gal/ft2/h", "", "no more wood after 18 min", ""},
		{"-coals|6h|-pan-rate|1 US gal/ft2/h", "", "DO NOT LIGHT THIS FIRE", "If the sap stops"},
		{"-sap|7 US gal", "", "", "If the sap stops"},
		{"-depth|1.5 in|-compartments|6 ft2, 3 ft2, 3 ft2|-sap|260 US gal|-boil-rate|26 US gal/h", "", "the coals alone do it: no more wood", ""},

		// 90 gal of 8.40 lb at 2.1 Brix are 756 lb; 150 lb of pure ice leave 2.1 x 756/606 =
		// 2.62 Brix, and 150 of the 732 lb to boil off are 20.5 percent; at 100 lb an
		// hour 1 h 30 min.
		{"-sap|90 US gal|-ice|150 lb|-boil-rate|12 US gal/h", "", "of 2.62 Brix", ""},
		{"-sap|90 US gal|-ice|150 lb|-boil-rate|12 US gal/h", "", "Hours at the fire saved 1 h 30 min Fuel saved 20 %", ""},
		{"-sap|90 US gal|-ice|150 lb", "", "The ice is taken as pure water, and it is not", "thrown away with it"},
		// 150 lb of 0.4 Brix hold 0.6 lb of sugar.
		{"-sap|90 US gal|-ice|150 lb|-ice-reads|0.4 Brix", "", "Sugar thrown away with it 0.6000 lb", "taken as pure"},
		{"-sap|300 US gal|-membrane-to|4 Brix|-membrane-flow|10 US gal/h", "", "Beside the fire it does not keep up", ""},
		{"-sap|90 US gal|-membrane-to|8 Brix|-membrane-flow|60 US gal/h", "", "Beside the fire it keeps up", ""},
		// By Vukov's law an hour at 210 F and pH 7 inverts about 0.027 percent, and at pH 5.5
		// 32 times that.
		{"", "", "Heat splits of the sugar 0.38 to 11 % (at most, at pH 7 to pH 5.5", ""},
		// Of 2 to 3 Brix by 0.06 C each (CRC Handbook, from memory), in F.
		{"-compartments|6 ft2, 3 ft2, 3 ft2|-depth|2 in|-sap|260 US gal|-boil-rate|26 US gal/h", "", "Ice forms below 31.5 F", "chased"},
		{"-compartments|6 ft2, 3 ft2, 3 ft2|-depth|2 in|-sap|260 US gal|-boil-rate|26 US gal/h|-chase|15 US gal", "", "Of the sweet is saved 95 %", "Ice forms"},
		{"-sap|90 US gal|-wood-left|0.15 cord", "", "more than that wood boils: keep it cold", "does not fit"},
		{"-sap|90 US gal|-wood-left|3 cord", "", "It burns", "for another day"},
		{"-sap|90 US gal|-start|18:00|-done-by|22:00", "", "does not fit until 22:00: keep it cold, and boil it first", "that wood"},
		{"-moisture|50 %", "", "wood wetter than 20 % also weakens the fire", ""},
		{"-moisture|20 %", "", "Of wood, by weight", "weakens"},

		// A kettle whose sap is out below syrup is finished in the pot, too.
		{"-compartments|8 ft2", "", "none today (the sap is out at", "growing sweeter"},
		{"-compartments|8 ft2", "", "finish in a pot", ""},
		{"-compartments|8 ft2|-bottle|1 US pt", "", "Bottles to have clean 16 of", "no syrup today"},
		{"-compartments|8 ft2, 4 ft2", "", "the sap is out, and the last compartment is at", "a pot"},
		{"-compartments|8 ft2, 4 ft2|-out|12:00", "", "still growing sweeter", "the sap is out"},

		// 12 ft2 hold 1.25 ft3 of 7.481 US gal to 1 1/4 in, which stood there overnight; with
		// 79.6 lb of 5.1 Brix that is 4.06 lb of sugar beside 5.56, 14.4 lb of syrup.
		{"-dir|../sugarhouse|-day|2034-03-05", "", "Sweet in the pan 9.351 US gal (35.40 L; 5.1 Brix, since Mar 4", "-sap"},
		{"-dir|../sugarhouse|-day|2034-03-05", "", "On a scale it weighs 14.3", ""},
		{"-dir|../sugarhouse|-day|2034-03-05|-set|compartments: 2 x 4 ft, 2 x 2 ft", "", "08:00 fire lit 4.1 2.2", ""},
		{"-dir|../sugarhouse|-day|2034-03-11", "", "Sugar in it", "Sweet in the pan"},

		// Syrup that does not keep.
		{"-target|61 Brix", "", "below 66 Brix it ferments", "crystals"},
		{"-target|70 Brix", "", "from 68 Brix on crystals are likely", "ferments"},
		{"", "", "never meets bleach", "ferments"},
		{"", "", "chlorine gas", "crystals"},
		{"", "", "where it passes wall and roof", ""},
		{"", "", "local fire code", ""},
		{"-bottle|1 US pt|-pack|190 F", "", "Bottles", "No source"},

		// 10.8034 kg of 66.9 Brix weigh 0.076 percent less in air (1.2 kg/m3).
		{"-metric|-sap|90 US gal", "", "On a scale it weighs 10.80 kg (23.80 lb)", ""},
		{"-efficiency|25 %", "", "It burns 0.14 cord (0.50 m3;", "0.14 to"},
		{"-efficiency|25 %", "", "540 lb (250 kg;", " to 5"},
		{"-metric", "", "0.1 C deg on the thermometer", " F deg on"},
		{"-metric", "", "Sap near 99 C and syrup near 103 C", "212 F"},
		{"-metric|-sap|90 US gal", "", "hold it below 4 C, shaded", "40 F"},

		{"-refractometer|plain|-reading|2 Brix|-read-at|25 C", "", "Refractometer reads 2.0 Brix (drop and prism at 77.0 F)", "Hydrometer reads"},
		{"-refractometer|compensated|-reading|2 Brix", "", "Refractometer reads 2.0 Brix (it allows for its temperature itself) Sap 90 US gal (340.7 L) True strength 2.00 Brix", "-read-at"},
		// 0.2 to the step and 0.2 of the scale: 2 sqrt((0.1/sqrt 3)^2 + 0.1^2) = 0.23.
		{"-refractometer|compensated|-reading|2 Brix", "", "Give or take 0.2 Brix (steps and scale of the instrument, temperature, formula; 12 % of the syrup to expect) Give or take holds 19 times of 20 (k = 2)", ""},
		{"-refractometer|compensated|-reading|2 Brix|-sap-calibration|1 Brix", "", "Give or take 1.0 Brix", ""},
		{"-refractometer|compensated|-sap-file|-", "time,volume_us_gal,reading_brix\n10:00,50,2.0\n11:00,50,3.0\n", "", "in the cup at 44"},
		{"-refractometer|plain|-sap-file|-", "time,volume_us_gal,reading_brix,read_at_f\n10:00,50,2.0,68\n11:00,50,3.0,68\n", "prism at", ""},
	} {
		_, out, errs := b.Run(t, c.stdin, strings.FieldsFunc("-full|"+c.args, func(r rune) bool { return r == '|' })...)
		flat := strings.Join(strings.Fields(out), " ")
		if !strings.Contains(flat, strings.Join(strings.Fields(c.want), " ")) || c.not != "" && strings.Contains(flat, c.not) {
			t.Errorf("%s: want %q and not %q\n%s%s", c.args, c.want, c.not, errs, out)
		}
	}
}

// A timeline fits a terminal.
func narrow(t *testing.T, b clitest.Binary) {
	_, out, errs := b.Run(t, "", "-full", "-compartments", "8 ft2, 4 ft2, 4 ft2, 3 ft2, 2 ft2", "-sap", "300 US gal", "-boil-rate", "30 US gal/h")
	if !strings.Contains(out, "no. 5") {
		t.Fatal(errs)
	}
	for _, line := range strings.Split(out, "\n") {
		if len(line) > 78 {
			t.Errorf("%d characters: %s", len(line), line)
		}
	}
}

// The page and the JSON hold the same numbers.
func sameNumbers(t *testing.T, b clitest.Binary) {
	status, out, errs := b.Run(t, "", "-json")
	if status != 0 {
		t.Fatal(errs)
	}
	var page struct {
		Parts struct {
			Syrup struct {
				Gallons float64 `json:"volume_us_gal"`
				Liters  float64 `json:"volume_l"`
			} `json:"syrup"`
		} `json:"parts"`
	}
	if err := json.Unmarshal([]byte(out), &page); err != nil {
		t.Fatal(err)
	}
	if r := page.Parts.Syrup.Liters / page.Parts.Syrup.Gallons; r < 3.785411 || r > 3.785413 {
		t.Errorf("%v US gal are %v L", page.Parts.Syrup.Gallons, page.Parts.Syrup.Liters)
	}
}

// A plain refractometer is corrected as the table of 1936 says, +0.35 for 5 Brix
// at 25 C (from memory), within the model's three times 0.008 Brix and half a
// digit of the table; a compensated one is not.
func refraction(t *testing.T, b clitest.Binary) {
	for _, c := range []struct {
		want, within float64
		args         []string
	}{
		{5.35, 0.024 + 0.005, []string{"-refractometer", "plain", "-read-at", "25 C"}},
		{5, 1e-9, []string{"-refractometer", "compensated"}},
	} {
		status, out, errs := b.Run(t, "", append(c.args, "-json", "-reading", "5 Brix")...)
		if status != 0 {
			t.Fatal(errs)
		}
		var page struct {
			Parts struct{ Sap struct{ Brix float64 } }
		}
		if err := json.Unmarshal([]byte(out), &page); err != nil {
			t.Fatal(err)
		}
		if off := page.Parts.Sap.Brix - c.want; !(off >= -c.within && off <= c.within) {
			t.Errorf("%v: %v Brix, want %v", c.args, page.Parts.Sap.Brix, c.want)
		}
	}
}

// A gatherings file may come on standard input.
func standardInput(t *testing.T, b clitest.Binary) {
	status, out, errs := b.Run(t, "time,volume_l,reading_brix,read_at_c\n10:00,200,2.0,5\n", "-full", "-sap-file", "-")
	if status != 0 || !strings.Contains(out, "52.83 US gal (200 L)") {
		t.Errorf("status %d, %s\n%s", status, errs, out)
	}
}
