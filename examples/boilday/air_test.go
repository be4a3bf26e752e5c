package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// The air of the night over sweet in the pan comes from weather.csv where it stands, or
// is told. By hand: 25 F freezes what freezes at 31.5 F (5.1 Brix: 5.1/94.9/0.3423 = 0.157
// mol/kg, times 1.86 K). From 212 F that takes log2(187/6.5) = 4.8 halvings, 9.7 h of 2 h
// each. An empty cell is no low.
func TestNightAir(t *testing.T) {
	b := clitest.Build(t)
	files := map[string]string{"sugarhouse.txt": "gallons: US\nelevation: 1150 ft\ncompartments: 2 x 3 ft, 2 x 1 ft\n",
		"days.csv": "date,sap_gal,sugar_brix,read_at_f,boiled_gal\n2034-03-10,90,2.1,40,90\n2034-03-12,80,2.1,40,\n",
		"pan.csv":  "date,compartment,depth_in,brix\n2034-03-10,1,1.5,5.1\n2034-03-10,2,1.5,25\n"}
	const weather = "date,tmin_f,tmax_f\n2034-03-10,5,39\n2034-03-11,25,39\n"
	for _, c := range []struct{ weather, args, want, not string }{
		{weather + "2034-03-12,28,41\n", "", "air down to 25 F: expect ice; no fire under ice.", "Tonight"},
		{weather + "2034-03-12,28,41\n", "", "nights to 25 F", "5 F freezes"}, // that of its own morning was before the fire
		{weather + "2034-03-12,28,41\n", "-full", "Coldest air 25.0 F (-3.9 C; by weather.csv; ice forms", "of 1 of 2"},
		{weather + "2034-03-12,28,41\n", "-full", "First ice after the fire 9 h 30 min", ""},
		{weather + "2034-03-12,,41\n", "-full", "Coldest air 25.0 F (-3.9 C; by weather.csv, of 1 of 2 nights", ""},
		{weather + "2034-03-12,28,41\n2034-03-13,20,30\n", "", "Tonight's 20 F freezes the pan: leave it deep, cover it", ""},
		{weather, "-night|38 F", "look for ice first; no fire under ice.", "freezes"},
		{weather, "-night|38 F|-full", "Coldest air 38.0 F (3.3 C; as told; no ice by that: look all the same)", "First ice"},
		{"", "", "look for ice first; no fire under ice.", "nights to"},
		{"", "-full", "Give -night, the coldest that the air gets", "Coldest air"},
		{"date,tmin_f\n2034-03-11,x\n", "", "look for ice first; no fire under ice.", "nights to"}, // the check of the folder tells it
	} {
		if files["weather.csv"] = c.weather; c.weather == "" {
			delete(files, "weather.csv")
		}
		args := append([]string{"-dir", clitest.Folder(t, files)}, strings.FieldsFunc(c.args, func(r rune) bool { return r == '|' })...)
		_, page, errs := b.Run(t, "", args...)
		flat := strings.Join(strings.Fields(page), " ")
		if !strings.Contains(flat, c.want) || c.not != "" && strings.Contains(flat, c.not) {
			t.Errorf("%s: want %q without %q\n%s%s", c.args, c.want, c.not, page, errs)
		}
	}
	// Where no sap waits the sweet freezes as well.
	files["days.csv"], files["weather.csv"] = "date,sap_gal,boiled_gal\n2034-03-10,90,90\n", weather
	if page, _ := b.Brief(t, "", "-dir", clitest.Folder(t, files)); !strings.Contains(page, "Air down to 25 F since: ice may lie in it.") {
		t.Error(page)
	}
	for args, want := range map[string]string{
		"-night|20 F": "no sweet stands in the pan",
		"-compartments|8 ft2, 4 ft2|-night|-100 C": "-night: temperature of the air",
	} {
		if status, _, errs := b.Run(t, "", strings.Split(args, "|")...); status != 2 || !strings.Contains(errs, want) {
			t.Errorf("%s: %d %s", args, status, errs)
		}
	}
}
