package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

func badFlags() (cases []clitest.Bad) {
	for _, c := range []struct{ args, want string }{
		{"-dir|testdata/nowhere", "-dir: testdata/nowhere: no such file"},
		{"-dir|", "-dir: name the folder"},
		{"-svg|", "-svg: name the file"},
		{"-svg|testdata/nowhere/x.svg", "-svg: "},
		{"-svg|-|-json", "-json: -svg - prints the chart instead"},
		{"-taps|-1", `-taps: "-1" is not a whole number from 0`},
		{"-taps|many", "-taps: "},
		{"-held-after|3 gal", `write "US gal" or "imp gal"`},
		{"-held-after|-3 US gal", "-held-after: volume"},
		{"-held-before|1e9 m3", "-held-before: volume"},
		{"-held-before|1.1e6 L", "-held-before: volume 290600 US gal (1100000 L) is outside 0 to 264100 US gal"},
		{"-held-after-brix|90 Brix", "-held-after-brix: sugar content 90"},
		{"-held-before-brix|-1 Brix", "-held-before-brix: sugar content -1"},
		{"-sap-hydrometer|0 C", "-sap-hydrometer: graduation 32 F (0 C) is outside"},
		{"-hydrometer|100 C", "-hydrometer: graduation 212 F (100 C) is outside"},
		{"-sap-gauge|0 %", "-sap-gauge: limits 0 % is outside"},
		{"-syrup-gauge|60 %", "-syrup-gauge: limits 60 % is outside"},
		{"-held-gauge|-1 %", "-held-gauge: limits -1 % is outside"},
		{"-sap-limit|0 Brix", "-sap-limit: limits 0 Brix is outside"},
		{"-syrup-limit|9 Brix", "-syrup-limit: limits 9 Brix is outside"},
		{"-held-limit|NaN Brix", "-held-limit: "},
		{"-elevation|9000 m", "-elevation: elevation 29530 ft (9000 m) is outside"},
		{"-target|90 Brix", "-target: target 90 Brix is outside"},
		{"-moisture|900 %", "-moisture: moisture on the dry basis 900 % is outside 0 to 233 %"},
		{"-moisture|-1 %", "-moisture: "},
		{"stray", `"stray": there are flags only`},
		{"-nosuch", "no such flag"},
	} {
		cases = append(cases, clitest.Bad{Args: strings.Split(c.args, "|"), Want: c.want})
	}
	return cases
}

// badFiles are files that are useless as a whole.
func badFiles(t *testing.T) (cases []clitest.Bad) {
	for _, c := range []struct{ name, content, want string }{
		{"gatherings.csv", "", "gatherings.csv: the file is empty"},
		{"gatherings.csv", "time,source,volume_gal,reading_brix,read_at_f\n", "gatherings.csv:1: column volume_gal: no unit that is known"},
		{"gatherings.csv", "time,source,volume_l,read_at_f\n", "gatherings.csv:1: no column for reading"},
		{"gatherings.csv", "time,volume_l,volume_us_gal,reading_brix,read_at_f\n", "gatherings.csv:1: column volume_us_gal: a second column"},
		{"gatherings.csv", "time,volume_l,reading_brix,read_at_f\n", "gatherings.csv: no gathering that counts"},
		{"gatherings.csv", someSap + "\"2034-03-03,hill,150,2,5\n", "gatherings.csv:4: "},
		{"boils.csv", "lit,fired_h,sap_l,reading_brix,read_at_c,kind\n", "boils.csv:1: neither a column for burned nor for weighed"},
		{"draws.csv", "time,lot,reading_brix,cup_c\n", "draws.csv:1: neither a column for volume nor for weight"},
		{"packing.csv", "day,lot,size,count\n", "packing.csv:1: column size: no unit that is known"},
		{"fuel.csv", "day,kind\n", "fuel.csv:1: neither a column for laid nor for weighed"},
		{"fuel.csv", "\x00\x00\n", "fuel.csv:1: not text in UTF-8"},
	} {
		files := map[string]string{"gatherings.csv": someSap}
		files[c.name] = c.content
		cases = append(cases, clitest.Bad{Args: []string{"-dir", write(t, files)}, Want: c.want})
	}
	dir := write(t, nil)
	if err := os.Mkdir(filepath.Join(dir, "gatherings.csv"), 0o755); err != nil {
		t.Fatal(err)
	}
	return append(cases, clitest.Bad{Args: []string{"-dir", dir}, Want: "logbook: " + filepath.Join(dir, "gatherings.csv") + ": "})
}
