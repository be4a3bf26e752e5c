package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

func badFlags() (cases []clitest.Bad) {
	for _, c := range []struct{ args, want string }{
		{"-dir|testdata/nowhere", "-dir: testdata/nowhere: no such file"},
		{"-dir|", "-dir: name the folder"},
		{"-season|1999", "days.csv: no sap of 1999"},
		{"-svg|", "-svg: name the file"},
		{"-svg|testdata/nowhere/x.svg", "-svg: "},
		{"-svg|-|-json", "-json: -svg - takes the place of the page"},
		{"-held-after|3 gal", `write "US gal" or "imp gal"`},
		{"-held-after|-3 US gal", "-held-after: volume"},
		{"-held-before|1e9 m3", "-held-before: volume"},
		{"-held-before|1.1e6 L", "-held-before: volume 290600 US gal (1100000 L) is outside 0 to 264100 US gal"},
		{"-held-after-brix|90 Brix", "-held-after-brix: sugar content 90"},
		{"-held-before-brix|-1 Brix", "-held-before-brix: sugar content -1"},
		{"-sap-gauge|0 %", "-sap-gauge: limits 0 % is outside"},
		{"-syrup-gauge|60 %", "-syrup-gauge: limits 60 % is outside"},
		{"-held-gauge|-1 %", "-held-gauge: limits -1 % is outside"},
		{"-sap-limit|0 Brix", "-sap-limit: limits 0 Brix is outside"},
		{"-syrup-limit|9 Brix", "-syrup-limit: limits 9 Brix is outside"},
		{"-held-limit|NaN Brix", "-held-limit: "},
		{"-set|elevation: 9000 m", "-set: elevation: elevation 29530 ft (9000 m) is outside"},
		{"-set|target: 90 Brix", "-set: target: target 90 Brix is outside"},
		{"-set|fuel: straw", `-set: fuel: "straw" is not known`},
		{"-set|fuel: wood, 900 %", "-set: fuel: moisture 900 % is outside 0 to 200 %"},
		{"-laid-in|-1 cord", "-laid-in: volume"},
		{"stray", `"stray": there are flags only`},
		{"-nosuch", "no such flag"},
	} {
		cases = append(cases, clitest.Bad{Args: strings.Split(c.args, "|"), Want: c.want})
	}
	return cases
}

// badFiles are rows that the folder takes and a balance does not. What is no number,
// no date or no name is refused by package folder, and tested there.
func badFiles(t *testing.T) (cases []clitest.Bad) {
	const batch = "batch,date,volume_gal,weight_lb,reading_brix,cup_f,temp_f\n"
	for _, c := range []struct{ name, content, want string }{
		{"days.csv", "date,sap_gal\n", "days.csv: no day with sap yet: write one down"},
		{"days.csv", "date,sap_gal,sugar_brix,read_at_f\n2034-03-01,40,0.1,38\n", "days.csv:2: column sugar: true strength"},
		{"days.csv", "date,sap_gal,sugar_brix,read_at_f\n2034-03-01,40,2,400 F\n", "days.csv:2: column read_at: temperature 400 F (204.4 C) is outside"},
		{"days.csv", "date,sap_gal,sugar_brix,read_at_f\n2034-03-01,0.0001,2,38\n", "days.csv:2: column sap: volume"},
		{"batches.csv", batch + "A,2034-03-02,1,,12,60,\n", "batches.csv:2: column reading: true strength"},
		{"batches.csv", batch + "A,2034-03-02,1,,66.9,400,\n", "batches.csv:2: column cup: temperature 400 F (204.4 C) is outside"},
		{"batches.csv", batch + "A,2034-03-02,,0.0001,66.9,60,\n", "batches.csv:2: column weight: weight"},
		{"batches.csv", batch + "A,2034-03-02,1,,66.9,60,400\n", "batches.csv:2: column temp: "},
		{"pan.csv", "date,compartment,depth_in,brix\n2034-03-02,2,1,9\n", "pan.csv:2: column compartment: the settings tell no area of it"},
	} {
		files := map[string]string{"days.csv": someSap}
		files[c.name] = c.content
		cases = append(cases, clitest.Bad{Args: []string{"-dir", clitest.Folder(t, files)}, Want: c.want})
	}
	return cases
}
