package main

import (
	"fmt"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// weighed makes a file of jars of 500 mL that weigh 300 g empty and hold so many mL:
// a mL of 66.9 Brix weighs 1.32718 g in air (11.0759 lb a US gallon, the check value of
// density.InAir).
func weighed(t *testing.T, lot int, contents ...float64) (dir, file string) {
	t.Helper()
	var b strings.Builder
	b.WriteString("container,lot,gross_g\n")
	for _, ml := range contents {
		fmt.Fprintf(&b, "half liter,%d,%.4f\n", lot, 300+1.32718*ml)
	}
	dir = clitest.Folder(t, map[string]string{"jars.csv": "container,label_ml,empty_g\nhalf liter,500,300\nbare,250,\n", "weighed.csv": b.String()})
	return dir, dir + "/weighed.csv"
}

// The lots are those of the library's hand calculation: half at 498 and half at 500 pass
// in a lot of 40 by the benefit of the doubt, and fail if all ten were weighed; two that
// are short by more than 15 mL fail ten. The average rule knows no doubt.
func weighs(t *testing.T, b clitest.Binary) {
	mixed := []float64{498.01, 500.01, 498.01, 500.01, 498.01, 500.01, 498.01, 500.01, 498.01, 500.01}
	full := []float64{501, 501, 501, 501, 501, 501, 501, 501, 501, 501}
	short := []float64{510, 510, 510, 510, 510, 510, 510, 510, 484.5, 484}
	for name, tt := range map[string]struct {
		lot      int
		contents []float64
		args     string
		want     string
	}{
		"full":       {40, full, "-place Canada", "passes by Canada's rule (SOR/2018-108, s. 200)."},
		"doubt":      {40, mixed, "-place Canada", "by the benefit of the doubt alone: fill a little more."},
		"all":        {10, mixed, "-place Canada", "Do not sell it yet, by Canada's rule (SOR/2018-108, s. 200): half liter: the average is short."},
		"two short":  {40, short, "-place Canada", "half liter: too many are short."},
		"average":    {40, mixed, "", "Do not sell it yet, by the average rule of the United States: half liter: the average is short."},
		"no table":   {40, short, "", "passes by the average rule of the United States."},
		"allowance":  {40, short, "-allowance 15mL", "half liter: 2 short by more than you allow."},
		"allowed it": {40, short, "-allowance 16.5mL", "passes by the average rule"},
	} {
		dir, file := weighed(t, tt.lot, tt.contents...)
		status, out, errs := b.Run(t, "", append([]string{"-dir", dir, "-weigh", file}, strings.Fields(tt.args)...)...)
		if status != 0 || !strings.Contains(strings.Join(strings.Fields(out), " "), tt.want) {
			t.Errorf("%s: status %d, no %q in %s%s", name, status, tt.want, errs, out)
		}
	}
	// 500 mL weigh 663.59 g and with the jar 963.59, 33.99 oz; half a percent more is 966.91.
	dir, file := weighed(t, 40, full...)
	_, out, _ := b.Run(t, "", "-dir", dir, "-weigh", file, "-place", "Canada", "-full")
	if words := strings.Join(strings.Fields(out), " "); !strings.Contains(words, "half liter 500 mL (17.5 fl oz) 34.00 oz 964 g 34.15 oz 967 g") {
		t.Errorf("%s", out)
	}
	b.Brief(t, "", "-dir", dir, "-weigh", file, "-place", "Canada")
	b.Brief(t, "", "-dir", dir, "-weigh", file, "-metric")
	few := clitest.Folder(t, map[string]string{"jars.csv": "container,label_ml,empty_g\nhalf liter,500,300\nbare,250,\n",
		"few.csv": "container,lot,gross_g\nhalf liter,40,964\n", "lots.csv": "container,lot,gross_g\nhalf liter,40,964\nhalf liter,41,964\n",
		"empty.csv": "container,lot,gross_g\nhalf liter,40,300\n", "bare.csv": "container,lot,gross_g\nbare,40,600\n", "none.csv": "container,lot,gross_g\n", "who.csv": "container,lot,gross_g\ndrum,40,600\n"})
	for _, tt := range []struct{ file, want string }{
		{"few.csv", "half liter: 1 jar weighed of 40: the rule of Canada samples 10, taken at random"}, {"lots.csv", "lots.csv:3: column lot: 40 jars of half liter above, 41 here"},
		{"empty.csv", "column gross_g: no more than the empty half liter"}, {"bare.csv", "bare has no empty weight in jars.csv"}, {"none.csv", "no jar below the header"}, {"who.csv", `no "drum" in jars.csv`},
	} {
		status, out, errs := b.Run(t, "", "-dir", few, "-weigh", few+"/"+tt.file, "-place", "Canada")
		if status != cli.BadInput || out != "" || !strings.Contains(errs, tt.want) {
			t.Errorf("%s: status %d, %s%s", tt.file, status, errs, out)
		}
	}
}

// reaches blends by hand: a gallon each at 46 and 82 percent is 61.4 together (half of
// both absorbances), Amber without a drop left. Ten gallons at 46 take one of 82 to 50.5
// with 52 percent poured (the check value of LightShare); to 50.0 it is a little more.
func reaches(t *testing.T, b clitest.Binary) {
	batches := func(gallons string) string {
		return clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\n",
			"batches.csv": "batch,date,volume_gal,reading_brix,cup_f,temp_f,light_pct\nA,2034-03-01," + gallons + ",66.9,60,60,46\nB,2034-03-02,1,66.9,60,60,82\n"})
	}
	for _, tt := range []struct{ dir, aim, want string }{
		{batches("1"), "Amber", "Light 61.4 % (by the absorbances of the cans) Left over 0 lb"},
		{batches("10"), "amber", "Light 50.0 %"},
		{batches("1"), "Golden", "Light 75.0 %"},
		{batches("1"), "Very Dark", "No blend of these reaches Very Dark: every can is too light"},
		{batches("1"), "Amber, 67.5 to 68 Brix", "No blend of these reaches Amber, 67.5 to 68 Brix: every can is too thin"},
	} {
		status, out, errs := b.Run(t, "", "-dir", tt.dir, "-reach", tt.aim)
		if status != 0 || !strings.Contains(strings.Join(strings.Fields(out), " "), tt.want) {
			t.Errorf("%s: status %d, no %q in %s%s", tt.aim, status, tt.want, errs, out)
		}
	}
	// A drum by its scale: 61.0759 - 50 lb in air are a gallon of 66.9 Brix at 68 F, which
	// has 11.0843 lb (the check value of yield.Weighed). By absorbance one gallon of each
	// of 46 and 82 percent is of 61.4.
	drum := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\nsyrup hydrometer: marked at 68 F\n",
		"batches.csv": "batch,date,volume_gal,gross_lb,tare_lb,reading_brix,cup_f,temp_f,light_pct\nA,2034-03-01,,61.0759,50,66.9,68,68,46\nB,2034-03-02,1,,,66.9,68,68,82\n"})
	status, out, errs := b.Run(t, "", "-dir", drum, "-reach", "Amber")
	if flat := strings.Join(strings.Fields(out), " "); status != 0 || !strings.Contains(flat, "Light 61.4 %") || !strings.Contains(flat, "A 100 % 1 US gal 11.1 lb") {
		t.Errorf("a drum: status %d, %s%s", status, errs, out)
	}
	b.Brief(t, "", "-reach", "Dark, 66.5 to 67.5 Brix")
	for _, tt := range []struct{ args, want string }{
		{"-reach Ambr", `-reach: "Ambr": write a class (Golden, Amber, Dark, Very Dark)`}, {"-reach Amber -write", "-write: nothing is packed"},
		{"-reach Amber -weight 33lb", "-reach: it blends batches of the folder"}, {"-reach Amber -weigh x.csv", "give one of them"},
	} {
		if status, out, errs := b.Run(t, "", strings.Fields(tt.args)...); status != cli.BadInput || out != "" || !strings.Contains(errs, tt.want) {
			t.Errorf("%s: status %d, %s%s", tt.args, status, errs, out)
		}
	}
}
