package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// The first page stays small, whatever the day, and says what to do.
func briefs(t *testing.T, b clitest.Binary) {
	const dated = "time,volume_us_gal,reading_brix,read_at_f\n2026-03-10 17:00,100,2.0,40\n2026-03-11 13:00,100,2.2,41\n"
	for _, c := range []struct{ args, stdin, want string }{
		{"", "", "Light at 08:00: 88 US gal of sap make"}, // as sugarhouse/days.csv has it for its 11 March
		{"40|US|gal|2.1", "", "40 US gal of sap make"},
		{"40 US gal 2.3 Brix at 41 F", "", "Told: sap 40 US gal, read 2.3 Brix, at 41 F"},
		{"-metric|-sap|90 US gal", "", "341 L of sap"}, // 90 x 3.785 = 340.7
		{"-sap-file|-", dated, "The last sap comes at 13:00"},
		{"-dir|../sugarhouse|-day|2034-03-05", "", "Told: 30 US gal of Mar 5, sweet in the pan, nights to 25 F, at 1150 ft. Learned: boils off 9.2 US gal/h from 12 boils, efficiency 26 % from 12 boils. Assumed: coals 8 min."},
		{"-dir|../sugarhouse|-day|2034-03-05|-set|fire: under a roof", "", "- Carbon monoxide kills unnoticed under a roof"},
		{"-dir|../sugarhouse|-day|2034-03-13|-set|fire: under a roof|-metric|-target|61 Brix|-coals|3h", "", "61.0 Brix is thin"},
		{"-dir|../sugarhouse|40 gal 2.1", "", "40 US gal of sap make"},
		{"-dir|../sugarhouse|40 gal 2.1", "", "Not counted is the sweet in the pan since Mar 26: look for ice first; no fire under ice."}, // as its pan.csv has it
		// By the rule of 86 a gallon of 2.1 Brix makes 4/41 = 0.1 qt.
		{"1 US gal 2.1 at 41 F", "", "It makes less than 1/4 US qt of syrup."},
		// By hand: 90 x 1.0083 x (1 - 2.1/8) = 66.9 gal of water are 67 min at 60 by the hour and 55 F.
		{"90 US gal 2.1 at 38 F|-sap-temp|55 F|-membrane-to|8 Brix|-membrane-flow|60 US gal/h", "", "Membrane on by 06:50: concentrate spoils within hours."},
		{"90 US gal 2.1 at 41 F|-membrane-to|8 Brix", "", "Membrane before the fire: concentrate spoils within hours."},
		{"90 US gal 2.1 at 41 F|-membrane-to|8 Brix|-ice|60 lb", "", "ice 60 lb, membrane to 8.0 Brix."},
		{"-coals|3h", "", "Such coals suit no flat pan"},
		{"-coals|3h|-target|61 Brix|-sap-temp|55 F", "", "61.0 Brix is thin"},
		// They lower 12 ft2 by 17.1 in, to 1 in: see words.
		{"-coals|6h|-pan-rate|1 US gal/ft2/h", "", "18 1/4 in (at the last stick, or sap to"},
		{"-coals|12h|-compartments|8 ft2, 4 ft2", "", "Do not light this fire as it is"},
		{"-sap|7 US gal", "", "Too little for this pan: boil it in a pot from the start"},
		// 10 US gal on 12 ft2 lie 1.3 in deep: no fire is lit under so little.
		{"-sap|10 US gal|-compartments|6 ft2, 6 ft2", "", "Too little for this pan: boil it in a pot from the start"},
		{"-sap|14 US gal|-compartments|6 ft2, 6 ft2", "", "No syrup is drawn today: the sap is out"},
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
