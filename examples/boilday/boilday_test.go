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

// The first page stays small, whatever the day, and says what to do.
func briefs(t *testing.T, b clitest.Binary) {
	const dated = "time,volume_us_gal,reading_brix,read_at_f\n2026-03-10 17:00,100,2.0,40\n2026-03-11 13:00,100,2.2,41\n"
	for _, c := range []struct{ args, stdin, want string }{
		{"", "", "Light at 08:00: 88 US gal of sap make"}, // as sugarhouse/days.csv has it for its 11 March
		{"40|US|gal|2.1", "", "40 US gal of sap make"},
		{"40 US gal 2.3 Brix at 41 F", "", "Told: sap 40 US gal, read 2.3 Brix, at 41 F"},
		{"-metric|-sap|90 US gal", "", "341 L of sap"}, // 90 x 3.785 = 340.7
		{"-sap-file|-", dated, "The last sap comes at 13:00"},
		{"-dir|../sugarhouse|-day|2034-03-05", "", "Told: 30 US gal of Mar 5, at 1150 ft. Learned: boils off 9.2 US gal/h from 12 boils, efficiency 26 % from 12 boils. Assumed: coals 8 min."},
		{"-dir|../sugarhouse|-day|2034-03-05|-set|fire: under a roof", "", "- Carbon monoxide kills unnoticed under a roof"},
		{"-dir|../sugarhouse|-day|2034-03-13|-set|fire: under a roof|-metric|-target|61 Brix|-coals|3h", "", "61.0 Brix is thin"},
		{"-dir|../sugarhouse|40 gal 2.1", "", "40 US gal of sap make"},
		{"-coals|3h", "", "Such coals suit no flat pan"},
		{"-coals|3h|-target|61 Brix|-sap-temp|55 F", "", "61.0 Brix is thin"},
		// They lower 12 ft2 by 17.1 in, to 1 in: see words.
		{"-coals|6h|-pan-rate|1 US gal/ft2/h", "", "18 1/4 in (at the last stick, or sap to"},
		{"-coals|12h|-compartments|8 ft2, 4 ft2", "", "Do not light this fire as it is"},
		{"-sap|7 US gal", "", "Too little for this pan: boil it in a pot from the start"},
		{"-sap|4000 US gal", "", "Too much for this pan in a day"},
		{"-compartments|6 ft2, 3 ft2, 3 ft2|-depth|1.5 in|-sap|260 US gal|-boil-rate|26 US gal/h|-draw-to|63 Brix", "", "Draws under 66 Brix in the mean ferment"},
		{"-compartments|8 ft2", "", "and end in a pot"},
		{"-compartments|8 ft2, 4 ft2|-out|12:00", "", "No syrup is drawn today: the pans are still growing sweeter."},
		{"-fuel|propane|-efficiency|55 %", "", "Told: efficiency 55 %."},
		{"-water-boils|210 F", "", "Told: water boils at 210.0 F"},
		// 22 US gal/h of sap take 4 h 15 min to the last of 102 US gal, which comes at 15:45.
		{"-sap-file|testdata/gatherings.csv|-water-boils|209.3 F|-boil-rate|22 US gal/h|-pan-area|8 ft2", "", "Light at 11:30"},
		{"-sap-file|testdata/gatherings.csv|-water-boils|209.3 F|-boil-rate|22 US gal/h|-pan-area|8 ft2|-start|09:00", "", "Light at 09:00"},
	} {
		page, _ := b.Brief(t, c.stdin, strings.FieldsFunc(c.args, func(r rune) bool { return r == '|' })...)
		if !strings.Contains(strings.Join(strings.Fields(page), " "), c.want) {
			t.Errorf("%s: want %q\n%s", c.args, c.want, page)
		}
	}
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
		{"-moisture|50 %", "", "wood wetter than 20 % also weakens the fire", ""},
		{"-moisture|20 %", "", "Of wood, by weight", "weakens"},

		// A kettle whose sap is out below syrup is finished in the pot, too.
		{"-compartments|8 ft2", "", "none today (the sap is out at", "growing sweeter"},
		{"-compartments|8 ft2", "", "finish in a pot", ""},
		{"-compartments|8 ft2|-bottle|1 US pt", "", "Bottles to have clean 16 of", "no syrup today"},
		{"-compartments|8 ft2, 4 ft2", "", "the sap is out, and the last compartment is at", "a pot"},
		{"-compartments|8 ft2, 4 ft2|-out|12:00", "", "still growing sweeter", "the sap is out"},

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

func badInput() (cases []clitest.Bad) {
	const head = "time,source,volume_us_gal,reading_brix,read_at_f\n"
	for _, c := range []struct{ args, want string }{
		{"-sap|60 gal", `-sap: "60 gal": ambiguous unit: write "US gal" or "imp gal"`},
		{"-sap|60", "-sap"},
		{"-sap|-1 L", "-sap: sap -0.2642 US gal (-1 L) is outside"},
		{"-sap|NaN L", "-sap"},
		{"-sap|1e9 US gal", "check its unit"},
		{"-sap-temp|200 C", "-sap-temp: temperature 392 F (200 C) is outside"},
		{"-reading|90 Brix", "-reading: reading 90 Brix is outside"},
		{"-reading|0.1 Brix", "-reading: sap"},
		{"-read-at|250 F", "-read-at: temperature 250 F (121.1 C) is outside"},
		{"-bottle|1 US qt|-pack|20 F", "-pack: temperature 20 F (-6.7 C) is outside"},
		{"-sap-hydrometer|100 C", "-sap-hydrometer: graduation 212 F (100 C) is outside"},
		{"-hydrometer|0 C", "-hydrometer: graduation 32 F (0 C) is outside"},
		{"-cup|300 F", "-cup: temperature 300 F (148.9 C) is outside"},
		{"-coals|x", "-coals: \"x\" is not a stretch of time"},
		{"-start|25:99", "-start: write a time of the day as 08:00"},
		{"-target|90 Brix", "-target: target 90 Brix is outside 60 to 74"},
		{"-target|59 Brix", "-target: target 59 Brix is outside 60 to 74"},
		{"-target|60 Brix|-reading|61 Brix", "-reading: sap"},
		{"-elevation|9000 m", "-elevation: elevation 29530 ft (9000 m) is outside"},
		{"-pressure|5 kPa", "-pressure: station pressure "},
		{"-water-boils|300 F", "-water-boils: "},
		{"-altimeter|30 inHg", "-altimeter: give -elevation too"},
		{"-altimeter|30 inHg|-elevation|9000 m", "-elevation: elevation 29530 ft (9000 m) is outside"},
		{"-pressure|1 atm|-elevation|5000 ft", "-pressure: station pressure 29.92 inHg (101.3 kPa) is outside"},
		{"-pot-rate|0 L/h", "-pot-rate: rate 0 US gal/h (0 L/h) is outside"},
		{"-cup|211 F|-elevation|1800 m", "-cup: syrup boils at 208.5 F today and is no hotter in the cup"},
		{"-water-boils|220 F", "-water-boils: boiling point of water"},
		{"-water-boils|220 F", "check the thermometer"},
		{"-refractometer|digital", `-refractometer: "digital" is not known: use one of plain, compensated`},
		{"-refractometer|plain", "-read-at: prism temperature"}, // the demo's 44 F
		{"-refractometer|plain|-sap-hydrometer|60 F", "-sap-hydrometer: the sap is read by one instrument"},
		{"-refractometer|compensated|-read-at|60 F", "-read-at: a compensated refractometer allows for its temperature itself"},
		{"-refractometer|compensated|-reading|60 Brix", "-reading: sap"},
		{"-sap-division|0 Brix", "-sap-division: "},
		{"-sap-calibration|9 Brix", "-sap-calibration: "},
		{"-safe-depth|0.1 in", "nobody boils below an eighth"},
		{"-compartments|8 ft2|-depth|1 in", "-depth: the safe depth is 1 in: keep the pan deeper"},
		{"-compartments|8 ft2|-safe-depth|2 in", "-safe-depth: it does not lie below the depth that is kept, 2 in"},
		{"-depth|0.5 in", "-depth: the safe depth is 1 in: keep the pan deeper, or give -safe-depth too"},
		{"-pan-rate|0 US gal/ft2/h", "-pan-rate: rate 0 US gal/ft2/h (0 L/m2/h) is outside"},
		{"-boil-rate|12 gal/h", `write "US gal/h" or "imp gal/h"`},
		{"-safe-depth|3 in", "-safe-depth: it does not lie below the depth that is kept, 2 in"},
		{"-heel|2 in", "-heel: heel 2 in (5.08 cm) is outside"}, {"-heel|1 in", "-heel: as much stays behind as the pan then holds"}, {"-heel|2.54 cm", "-heel: as much"}, {"-heel|1 in|-compartments|12 ft2", "-heel: as much"},
		{"-sap-file|testdata/none.csv", "-sap-file: testdata/none.csv: no such file"},
		{"-sap-file|x.csv|-sap|3 L", "says the same as"},
		{"-compartments|6 ft2,x", "-compartments"},
		{"-compartments|6 ft2|-pan-area|6 ft2", "says the same as"},
		{"-compartments|6 ft2|-draw-to|5 Brix", "-draw-to: strength at which the draw ends"},
		{"-moisture|200 %", "-moisture: moisture 200 % is outside"},
		{"-coals|5m|-fuel|oil", "-coals: a burner leaves none"},
		{"-coals|13h", "-coals: a fire that holds for more than 12 hours"},
		{"-compartments|6 ft2|-draw-to|70 Brix", "-draw-to: strength at which the draw ends"},
		{"-out|21:00", "-out: this belongs to a pan of several compartments"},
		{"-membrane-to|40 Brix|-membrane-pump|10 bar", "-membrane-to: the osmotic pressure of 40 Brix"},
		{"-membrane-to|1 Brix", "-membrane-to: strength 1 Brix is outside"},
		{"-membrane-flow|5 US gal/h", "-membrane-to: say how far"},
		{"-bottle|0 L", "-bottle: "},
		{"-bottle|1 L|-pack|300 F", "-pack: no source read fills hotter"},
		{"-bottle|1 L|-pack|190.1 F", "-pack: no source read fills hotter than 190 F (87.8 C)"},
		{"-division|0 Brix", "-division: "},
		{"-calibration|9 Brix", "-calibration: "},
		{"-thermometer|50 C deg", "-thermometer: "},
		{"-efficiency|130 %", "-efficiency: efficiency 130 % is outside"},
		{"-efficiency|0 %", "-efficiency: efficiency 0 % is outside"},
		{"-moisture|300 %", "-moisture: "},
		{"-wood|fir", "-wood: \"fir\" is not known"},
		{"stray", `"stray": a number is missing; write it as 40 US gal 2.1 at 41 F`}, {"-nosuch", "no such flag"},
	} {
		cases = append(cases, clitest.Bad{Args: strings.Split(c.args, "|"), Want: c.want})
	}
	for _, c := range []struct{ file, want string }{
		{"", "-: the file is empty"},
		{head + strings.Repeat("10:00,lane,6,2.0,41\n", 1001), "-: more than 1000 gatherings"},
		{head + strings.Repeat("10:00,lane,60000,2.0,41\n", 2), "-sap-file: all sap 120000 US gal (454200 L) is outside"},
		{head + "10:00,\x1b[31m,60,2.0,41\n", "-:2: column source: \"\\x1b[31m\" has a character that cannot be printed"},
		{head, "-: no gathering below the header"},
		{head + "10:00,lane,60,2.0\n", "-:2: 4 cells where the header names 5 columns"},
		{head + "10:00,lane,60,2.0,41\n10:30,lane,sixty,2.0,41\n", `-:3: column volume_us_gal: "sixty" is not a plain number`},
		{head + "10:00,lane,-60,2.0,41\n", "-:2: column volume_us_gal: a gathering holds more than nothing"},
		{head + "10:00,lane,60,66,41\n", "-:2: column reading_brix: sap"},
		{head + "10:00,lane,60,2.0,412\n", "-:2: column reading_brix: temperature"},
		{head + "noon,lane,60,2.0,41\n", `-:2: column time: "noon" is not a time such as 15:04`},
		{"time,volume_gal,reading_brix,read_at_f\n", "-:1: column volume_gal: no unit that is known"},
	} {
		cases = append(cases, clitest.Bad{Args: []string{"-sap-file", "-"}, Stdin: c.file, Want: c.want})
	}
	return cases
}
