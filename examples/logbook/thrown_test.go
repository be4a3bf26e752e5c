package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// Sap that was thrown out is told as such, and no boil is said to take more than came
// before it where no gauge tells closer. By hand: 100 gal of 2 Brix, 1.006 g/mL, hold
// 100*8.3454*1.006*0.02 = 16.79 lb of sugar; 30 gal thrown out are 5.04 of it.
func thrown(t *testing.T, b clitest.Binary) {
	const head = "date,sap_gal,sugar_brix,boiled_gal,thrown_gal,lit,out\n2034-03-01,100,2.0,,,,\n"
	for _, c := range []struct{ days, brief, not, full string }{
		{"2034-03-02,,,70,30,8:00,15:00\n", "5.0 lb thrown out", "all of it", "Sap thrown out"},
		{"2034-03-02,,,70,,8:00,15:00\n2034-03-03,,,,30,,\n", "5.0 lb thrown out", "look again", "Sap thrown out"},
		{"2034-03-02,,,101,,8:00,15:00\n", "all of it", "more than came", "all was boiled: no gauge tells closer"},
		// A fifth more than stood: the row is named.
		{"2034-03-02,,,60,,8:00,15:00\n2034-03-03,,,60,,8:00,15:00\n", "more than came before, most of it in row 4 of days.csv: look again", "all of it", "days.csv:4: column boiled: only 40 US gal stood then"},
	} {
		dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\nsap hydrometer: marked at 68 F\n", "days.csv": head + c.days})
		page, _ := b.Brief(t, "", "-dir", dir)
		status, full, errs := b.Run(t, "", "-dir", dir, "-full")
		flat, all := strings.Join(strings.Fields(page), " "), strings.Join(strings.Fields(full), " ")
		if status != 0 || !strings.Contains(flat, c.brief) || strings.Contains(flat, c.not) || !strings.Contains(all, c.full) {
			t.Errorf("%s%s\n%s\n%s", c.days, page, full, errs)
		}
	}
}

// Sap that nobody boiled and that is over a week old is in no step of what waits, and the
// page asks after it: 20 gal of the 1st on the 12th. The steps still add up: of 100 gal 60
// were boiled, 20 wait and 20 spoiled or stand; of a strength all through, the sugar goes
// the same way, 16.8 lb by 60, 20 and 20 percent.
func TestOldSap(t *testing.T) {
	b := clitest.Build(t)
	dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\nsap hydrometer: marked at 68 F\n",
		"days.csv": "date,sap_gal,sugar_brix,boiled_gal\n2034-03-01,20,2.0,\n2034-03-10,60,2.0,60\n2034-03-12,20,2.0,\n"})
	page, _ := b.Brief(t, "", "-dir", dir)
	flat := strings.Join(strings.Fields(page), " ")
	for _, want := range []string{"Not counted: 20 US gal of sap over a week old.", "sugar 16.8 lb", "sugar 10.1 lb; 6.7 lb stands or spoiled"} {
		if !strings.Contains(flat, want) {
			t.Errorf("no %q: %s", want, page)
		}
	}
	var sheet struct {
		Balance struct {
			In   float64 `json:"sugar_in_lb"`
			Kept float64 `json:"kept_lb"`
		} `json:"balance"`
	}
	if parts(t, b, &sheet, "-dir", dir); !near(sheet.Balance.Kept, sheet.Balance.In/5, 1e-3) {
		t.Errorf("%+v", sheet)
	}
}

// The logbook reads a refractometer as one. Of a prism of 10 C 0.52 Brix is taken off (the
// international table of 1936, good to 0.03): 2.52 are 2.00, and 378.5 L of 1.008 kg/L hold
// 7.63 kg or 16.8 lb; where the instrument compensates, of 1.010 kg/L, 21.2. As a hydrometer's, marked at
// 38 F and read at 50 F, it would be 22.
func TestRefractometer(t *testing.T) {
	b := clitest.Build(t)
	for settings, want := range map[string]float64{"sap refractometer: plain\n": 16.82, "sap refractometer: compensated\n": 21.24} {
		dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\n" + settings, "days.csv": "date,sap_gal,sugar_brix,read_at_f\n2034-03-01,100,2.52,50\n"})
		var sheet struct {
			Balance struct {
				In float64 `json:"sugar_in_lb"`
			} `json:"balance"`
		}
		if parts(t, b, &sheet, "-dir", dir); !near(sheet.Balance.In, want, want*0.03/2) {
			t.Errorf("%s: %v lb, want %v", settings, sheet.Balance.In, want)
		}
		if page, _ := b.Brief(t, "", "-dir", dir); strings.Contains(page, "marked at 38") {
			t.Error(page)
		}
	}
}
