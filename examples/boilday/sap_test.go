package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// Sap without a reading has the strength of the record, and none is invented for a
// folder. Sap is as warm as its cup. By hand, with a stem marked at 68 F: the readings
// are true, of 1.8, 1.6 and 1.5 the middle is 1.6, and 86/1.6 gal make a gallon of
// syrup (rule of 86). Sap thrown out waits for no fire.
func TestSapOfTheDay(t *testing.T) {
	b := clitest.Build(t)
	const settings = "gallons: US\nsap hydrometer: marked at 68 F\n"
	const days = "date,sap_gal,sugar_brix,boiled_gal,thrown_gal\n2034-03-20,40,1.8,40,\n2034-03-22,40,1.6,40,\n2034-03-24,40,1.5,,25\n"
	dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": settings, "days.csv": days})
	bare := clitest.Folder(t, map[string]string{"sugarhouse.txt": settings})
	gone := clitest.Folder(t, map[string]string{"sugarhouse.txt": settings, "days.csv": days + "2034-03-25,,,,15\n"})
	for _, c := range []struct{ args, want, not string }{
		{"-dir|" + dir + "|80 gal", "Learned: 1.60 Brix from 3 readings", "read 2.1"},
		{"-dir|" + dir + "|80 gal -full", "Not read today 1.60 Brix (learned from 3 readings)", "44.0 F"},
		{"-dir|" + dir + "|-season|2035|80 gal -full", "Not read today 1.60 Brix (learned from 3 readings of 2034)", "44.0 F"},
		{"-dir|" + dir + "|80 gal 2.1 at 41 F", "read 2.1 Brix", "1.60"},
		{"-dir|" + dir, "Told: 15 US gal of Mar 24", "40 US gal"},
		{"80 US gal", "Assumed: read 2.1 Brix, at 44 F", "Learned"},
		// By hand, of a stem marked at 38 F: sap of 2.1 Brix is 0.99996 + 2.1 x 0.00398 =
		// 1.00832 g/mL there, and glass that grows 0.0003 by 60 F floats as deep in 1.00802,
		// which is (1.00802 - 0.99904)/0.00388 = 2.31 Brix (water by CIPM).
		{"40 US gal 2.1 at 60 F", "read 2.1 Brix (truly 2.3", ""},
		{"40 US gal 2.1 at 60 F", "Sap over 50 F spoils fast", ""},
		{"40 US gal 2.1 at 60 F -sap-temp|38 F", "truly 2.3", "spoils fast"},
		{"40 US gal 2.1 at 38 F", "read 2.1 Brix, at 38 F", "truly"},
	} {
		args := strings.FieldsFunc(strings.ReplaceAll(c.args, " -", "|-"), func(r rune) bool { return r == '|' })
		status, out, errs := b.Run(t, "", args...)
		flat := strings.Join(strings.Fields(out), " ")
		if status != 0 || !strings.Contains(flat, c.want) || c.not != "" && strings.Contains(flat, c.not) {
			t.Errorf("%s: want %q without %q\n%s%s", c.args, c.want, c.not, out, errs)
		}
	}
	for _, c := range []struct{ dir, words, want string }{
		{bare, "80 gal", "how sweet is the sap? No reading stands in "},
		{gone, "", "no sap waits by "},
	} {
		args := append([]string{"-dir", c.dir}, strings.Fields(c.words)...)
		if status, _, errs := b.Run(t, "", args...); status != 2 || !strings.Contains(errs, c.want) || strings.Count(errs, "\n") != 1 {
			t.Errorf("%s: %d %s", c.words, status, errs)
		}
	}
}
