package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// costs by hand. Of a gallon of syrup: jars at 10.00, and of a pan of 100.00 over 3
// years, bought in the fall of 2032, the second part, 33.33 (the first has the odd
// cent): 43.33, 5.42 a pint. What was bought in July 2034 is for the next season, and
// wood of 2033 is used up. Ten hours at 12 are 120: 163.33 with wages. At 80 a gallon
// 0.5416 cover 43.33, told as 0.55, and 36.67 are left, 3.67 an hour.
func costs(t *testing.T, b clitest.Binary) {
	files := map[string]string{"sugarhouse.txt": "gallons: US\n", "days.csv": "date,sap_gal,sugar_brix,read_at_f\n2034-03-01,43.4,2,38\n",
		"batches.csv": "batch,date,volume_gal,reading_brix,cup_f,temp_f\nA,2034-03-02,1,66.9,60,68\n", "people.csv": "name,worked_h\nMill lane,6\nThe twins,4\n",
		"costs.csv": "date,what,cost,years\n2032-10-01,pan,100,3\n2033-02-01,wood,40,\n2034-02-01,jars,10,1\n2034-07-01,press,500,10\n"}
	dir := clitest.Folder(t, files)
	status, out, errs := b.Run(t, "", "-dir", dir, "-cost", "-wage", "12/h", "-price", "80/US gal")
	words := strings.Join(strings.Fields(out), " ")
	for _, want := range []string{"A US gallon of 2034 cost 43.33 without wages and 163.33 with them.", "Without wages 43.33 (a US gallon, 5.42 a pint)", "With wages 163.33 (a US gallon, 20.42 a pint)",
		"Sell, US gal 0.55 (to cover the costs; 2.05 with wages)", "Left if all sold 36.67", "An hour earned 3.67 (10 hours)", "Costs in all 43.33 (2 things, for 1 US gal)", "pan 2032-10-01 100.00 3 33.33"} {
		if status != 0 || !strings.Contains(words, want) {
			t.Errorf("status %d, no %q in %s%s", status, want, errs, out)
		}
	}
	if strings.Contains(out, "press") || strings.Contains(out, "wood") {
		t.Errorf("costs of other seasons:\n%s", out)
	}
	// A quart at 20 is 80 a gallon.
	if status, out, errs = b.Run(t, "", "-dir", dir, "-cost", "-price", "20/US qt"); status != 0 || !strings.Contains(out, "36.67") || !strings.Contains(strings.Join(strings.Fields(out), " "), "no wages (give -wage)") {
		t.Errorf("status %d, %s%s", status, errs, out)
	}
	b.Brief(t, "", "-dir", dir, "-cost")
	b.Brief(t, "", "-cost", "-season", "2033", "-wage", "15/h")
	files["costs.csv"] = "date,what,cost,years\n2034-02-01,jars,10.005,1\n"
	odd := clitest.Folder(t, files)
	delete(files, "costs.csv")
	bare := clitest.Folder(t, files)
	for _, tt := range []struct {
		args []string
		want string
	}{
		{[]string{"-wage", "15/h"}, "-wage: it belongs to -cost"},
		{[]string{"-cost", "-wage", "15"}, `-wage: "15": write what an hour is counted at as 15/h`},
		{[]string{"-cost", "-wage", "-1/h"}, "-wage: "},
		{[]string{"-cost", "-price", "60/gal"}, `-price: "60/gal": write what syrup sells at as 60/US gal`},
		{[]string{"-cost", "-price", "1e9999/US gal"}, "-price: "},
		{[]string{"-cost", "-trace", "34-1"}, "give one of them"},
		{[]string{"-cost", "-svg", "x.svg"}, "-svg: it draws a season"},
		{[]string{"-cost", "-dir", odd}, "costs.csv:2: column cost: amount paid 10.005: it is not a multiple of 0.01"},
		{[]string{"-cost", "-dir", bare}, "costs.csv: nothing that season 2034 bears"},
	} {
		status, out, errs := b.Run(t, "", tt.args...)
		if status != cli.BadInput || out != "" || !strings.Contains(errs, tt.want) {
			t.Errorf("%v: status %d, %s%s", tt.args, status, errs, out)
		}
	}
}
