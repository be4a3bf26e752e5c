package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// The first page stays small, whatever the evening, and says what to do.
func briefs(t *testing.T, b clitest.Binary) {
	const (
		pot  = "-tare|6 lb|-gross|30 lb|-pot-brix|40 Brix|"
		head = "after_min,shown_f\n"
	)
	for _, c := range []struct{ args, stdin, want, not string }{
		{"", "", "Not yet: ", "Take it off"},
		// As of a stem at 60 F in a cup at 204 F: words and flags say the same.
		{"54 at 205 F", "", "Not yet: 61.8 Brix by the hydrometer", ""},
		{"54|at|205|F", "", "Told: hydrometer, cup at 205 F.", ""},
		{"59.5 at 204 F, water 209.6 F", "", "Thermometer stop 217.1 F", ""},
		// The mark of the trade, 59.00 at 211 F (table hydrometer-worked), is not rounded up.
		{"59 at 211 F", "", "Hot cup reads 59.0 Brix", "59.1"},
		{"59 at 211 F", "", "It is syrup, 66.9 Brix by the hydrometer: take it off the fire now.", "crystals"},
		{"32 Be at 211 F", "", "It is syrup, 66.9 Brix by the hydrometer", "Not yet"}, // as the page says: 145 - 145/1.28320 (NBS C440) is 32.00
		// At 60 F, where the scale is true, the cup reads the target; it was not poured just now.
		{"67 at 60 F", "", "It is syrup, 67.0 Brix by the hydrometer: take it off the fire if it is still on it.", "fire now"},
		{"64 at 60 F", "", " Cup reads 66.9 Brix (60 F in the cup;", "Hot cup"},
		{"69 at 60 F", "", "Take it off the fire if it is still on it: 69.0 Brix by the hydrometer may be too far.", "fire now"},
		{"70 at 60 F, water 212 F|-make|cream", "", "Take it off the fire if it is still on it and is to be syrup: it is 70.0 Brix", "fire now"},
		// 3 F over water is near 40 Brix, and 20 F near 85: neither is compared, and both are heard.
		{"59.5 at 204 F 215 F, water 212 F", "", "not every instrument says syrup, and the hydrometer says 67.0 Brix.", "small pours"},
		{"54 at 205 F 232 F, water 212 F", "", "Take it off the fire now, then read again: not every instrument says syrup", "small pours"},
		{"54 at 205 F 232 F, water 212 F", "", "Told: hydrometer, thermometer", ""},
		// 61 at 205 F is 1.64 over the 59.36 that 66.9 reads there: near 68.5, in the rule and past 68.
		{"61 at 205 F", "", "68.5 Brix is thick: crystals are likely in the jar.", "thin it"},
		{"2.1 at 60 F", "", "That is sap, 2.1 Brix by the hydrometer, and far from 66.9 Brix: boilday plans its boil.", "Not yet"},
		{"200 F|-water-boils|209.9 F", "", "Not yet: 200.0 F is under boiling water (209.9 F): still far off.", "Nothing is read"},
		// 99.2 C and 104 C as they were typed; a flag has the last word.
		{"104 C, water 99.2 C", "", "water boils at 99.2 C", " F"},
		{"104 C, water 99.2 C|-metric=false", "", "water boils at 210.6 F", " C"},
		{"104 C, water 210.6 F", "", "water boils at 210.6 F", " C"},
		{"217.5 F|-water-boils|209.6 F", "", "by the thermometer", ""},
		// By the page itself that is known to 1.4 Brix, and the rule begins 0.9 under 66.9: a
		// thermometer alone does not tell it from thin.
		{"217.5 F|-water-boils|209.6 F", "", "by the thermometer: take it off the fire now, and read it by the hydrometer.", "fire now. "},
		// As the test by hand has it, 22.54 lb are 22 lb 8.6 oz.
		{strings.Join(everything, "|"), "", "Pot off at 22 lb 8 oz", ""},
		{strings.Join(everything, "|"), "", "For cream 227.5 to 233.4 F (sources differ)", ""},
		// 35.2 lb of 38.5 Brix are 20.257 of 66.9, and 26.457 lb or 12.0007 kg with the pot.
		{"-water-boils|209.6 F|-readings|testdata/readings.csv|-coals|30m|-stops|testdata/stops.csv", "", "No more wood: 62.6 Brix by the thermometer, and its coals alone take it past syrup.", "Not yet"},
		{"-metric", "", "12.00 kg (pot and syrup)", "lb"},
		{"-target|62 Brix", "", "62.0 Brix is thin", "Thermometer stop"},
		{"-reading|54 Brix|-cup|205 F", "", "Not yet: 61.8 Brix by the hydrometer", ""},
		{"-water-boils|209.6 F|-shows|230 F", "", "read it by the hydrometer before you thin it", ""},
		{"-water-boils|209.6 F|-shows|219 F|-make|cream", "", "now if it is to be syrup", "thin it"},
		{"-refractometer|69.3 Brix|-compensated", "", "Too far, 69.3 Brix by the refractometer: take it off the fire now, and thin it there. ", ""},
		{"-refractometer|69.3 Brix|-compensated", "", "Thin it off the fire: hot water or sap in small pours, stand back", ""},
		{"-refractometer|69.1 Brix|-compensated", "", "may be too far. Read again before you thin it.", "small pours"},
		{"-refractometer|67.0 Brix|-compensated", "", "It is syrup, 67.0 Brix by the refractometer: take it off the fire now.", "thin it"},
		{"-refractometer|62 Brix|-compensated|-reading|57 Brix|-cup|211 F", "", "Read again: hydrometer and refractometer are", "small pours"},
		{"-refractometer|71 Brix|-compensated|-reading|58 Brix|-cup|211 F", "", "Take it off the fire now, and read again", "small pours"},
		// 24 lb of 40 Brix are 14.35 lb of 66.9, and 20 lb 5.6 oz with the pot.
		{pot + "-boils-off|800 lb/h|-coals|10m", "", "Pot off at 20 lb 5 oz", ""},
		{pot + "-boils-off|800 lb/h|-coals|10m", "", "none (its coals burn it", ""},
		{pot + "-boils-off|8 lb/h|-coals|59m|-target|60 Brix|-water-boils|212 F|-shows|214 F", "", "Coals too hot: shut ash door, not flue damper; rake none.", ""},
		{"-water-boils|212 F|-readings|-", head + "0,217\n1,217\n2,217\n", "it does not climb. It wants more fire.", "Left"},
		{"-water-boils|212 F|-readings|-", head + "0,214\n2,214.2\n4,214.4\n", "Told: thermometer, water boils", ""}, // under 50 Brix
		{"-water-boils|212 F|-readings|-", head + "0,180\n5,200\n", "Nothing is read yet", "Left"},
		{"-water-boils|212 F|-readings|-", head + "0,216\n2,216.2\n4,216.4\n6,216.6\n8,221\n", "Read again at once", ""},
		{"-water-boils|212 F|-readings|-|-coals|2m", "time,shown_f\n20:00,216\n20:02,216.3\n20:04,216.6\n20:06,217\n", "Last wood in 5 min", ""}, // 5.6
	} {
		page, _ := b.Brief(t, c.stdin, strings.FieldsFunc(c.args, func(r rune) bool { return r == '|' })...)
		flat := strings.Join(strings.Fields(page), " ") + " "
		if !strings.Contains(flat, c.want) || c.not != "" && strings.Contains(flat, c.not) {
			t.Errorf("%s: want %q without %q\n%s", c.args, c.want, c.not, page)
		}
	}
}
