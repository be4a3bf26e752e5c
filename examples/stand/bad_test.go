package main

import (
	"strings"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

func badFlags() (cases []clitest.Bad) {
	for _, c := range []struct{ args, want string }{
		{"-tree-file|", "-tree-file: name the file, or leave this out"},
		{"-dir|testdata/bare", "-tree-file: no trees: list them in trees.csv"},
		{"-dir|testdata/nowhere", "-dir: testdata/nowhere: no such file"},
		{"-tree-file|testdata/none.csv", "-tree-file: testdata/none.csv: no such file"},
		{"-tree-file|testdata", "testdata: "},
		{"-tree-file|testdata/pasture/trees.csv|-hole-file|", "-hole-file: name the file, or leave this out"},
		{"-tree-file|testdata/pasture/trees.csv|-hole-file|none.csv", "-hole-file: none.csv: no such file"},
		{"-tree-file|-|-hole-file|-", "-hole-file: -tree-file reads standard input already"},
		{"-season|-1", `-season: "-1" is not a whole number from 0`},
		{"-season|33", "-season: 33: write the year with its four digits"},
		{"-years|0", "-years: "},
		{"-years|101", "-years: "},
		{"-sap-worth|much", "-sap-worth: "},
		{"-hour-worth|-1", "-hour-worth: "},
		{"-gear-file|", "-gear-file: name the file, or leave this out"},
		{"-gear-file|-|-tree-file|-", "-gear-file: -tree-file reads standard input already"},
		{"-ahead|", "-ahead: name a tree of the list"},
		{"-ahead|nowhere|-full", "-ahead: no tree \"nowhere\" in the list"},
		{"-growth|2 in", "-growth: length 2 in (5.08 cm) is outside 0 to 1 in (0 to 2.54 cm)"},
		{"-growth|NaN in", "-growth: "},
		{"-growth|0.1", `-growth: "0.1": no unit`},
		{"-area|0 ac", "-area: ground 0 ac is outside"},
		{"-area|1e30 ha", "-area: ground"},
		{"-area|4", `-area: "4": no unit`},
		{"-class|0 in", "-class: length 0 in (0 cm) is outside"},
		{"-guideline|none", `-guideline: "none" is not known: use one of NAMSPM-conservative`},
		{"-slow|maybe", `-slow: "maybe" is not known: use one of rest, tap`},
		{"-bit|1 in", "-bit: bit 1 in (2.54 cm) is outside"},
		{"-depth|3 in", "-depth: length 3 in (7.62 cm) is outside 0.5 to 2 in (1.27 to 5.08 cm)"},
		{"-depth|2.01 in", "never more than 2"},
		{"-bark|5 in", "-bark: bark 5 in (12.7 cm) is outside"},
		{"-low|0 in", "-low: length 0 in (0 cm) is outside"},
		{"-low|50 in", "-high: length 54 in (137.2 cm) is outside 56 to 144 in (142.3 to 365.7 cm)"},
		{"-high|20 ft", "-high: length 240 in (609.6 cm) is outside"},
		{"-side|0 in", "-side: length 0 in (0 cm) is outside"},
		{"-up|60 in", "-up: length 60 in (152.4 cm) is outside"},
		{"-open|1 in", "-open: length 1 in (2.54 cm) is outside 2 to 48 in (5.08 to 121.9 cm): no less than -side"},
		{"-column|1 in", "-column: length 1 in (2.54 cm) is outside 6 to 120 in (15.24 to 304.8 cm): no less than -up"},
		{"-step|0 in", "-step: length 0 in (0 cm) is outside"},
		{"-map|P7", "-map: a drawing needs both"},
		{"-svg|x.svg", "-map: a drawing needs both"},
		{"-map||-svg|", "-svg: name the file to write"},
		{"-map|P99|-svg|-", `-map: no tree "P99" in the list`},
		{"-map|G9|-svg|-", "-map: tree G9 has 2 stems: write G9/1 to G9/2"},
		{"-dir|testdata/pasture|-map|P7|-svg|-|-json", "-json: -svg - takes the place of the page"},
		{"-print|", "-print: name the file"},
		{"-print|-|-json", "-json: -print - takes the place of the page"},
		{"-print|-|-map|G7|-svg|-", "-svg: -print - is on standard output already"},
		{"-print|testdata/nowhere/x.html", "-print: "},
		{"-map|G7|-svg|testdata/nowhere/x.svg", "-svg: "},
		{"stray", `no tree "stray" in the list`}, {"G9", "tree G9 has 2 stems: write G9/1 to G9/2"}, {"G7|-write", "-write: the holes of all trees are added together: leave out G7"},
		{"-nosuch", "no such flag"},
	} {
		cases = append(cases, clitest.Bad{Args: strings.Split(c.args, "|"), Want: c.want})
	}
	return cases
}

func badTrees() (cases []clitest.Bad) {
	const head = "tree,girth_in,dbh_cm,species,vigor,growth_in\n"
	const good = "a,60,,sugar maple,healthy,0.05\n"
	for _, c := range []struct{ file, want string }{
		{"", "-: the file is empty"},
		{head, "-:1: nothing below the header"},
		{"tree,girth_in,species\n", "-:1: no column vigor: "},
		{"tree,girth_in,vigour,species\n", "-:1: no column vigor: "},
		{"tree,girth_in,vigor\n", "-:1: no column species: "},
		{"girth_in,species,vigor\n", "-:1: no column for tree"},
		{"tree,girth,species,vigor\n", "-:1: column girth: no unit that is known"},
		{"tree,girth_in,girth_cm,species,vigor\n", "-:1: column girth_cm: a second column"},
		{head + good + "b,60,50,sugar maple,healthy,\n", "-:3: column girth_in: give either the girth or the diameter"},
		{head + "b,,,sugar maple,healthy,\n", "-:2: column girth_in: give either"},
		{head + "b,-60,,sugar maple,healthy,\n", "-:2: column girth_in: girth -60 in (-152.4 cm) is outside"},
		{head + "b,1e9,,sugar maple,healthy,\n", "-:2: column girth_in: girth"},
		{head + "b,1,,sugar maple,healthy,\n", "-:2: column girth_in: less than 1 in through"},
		{head + "b,,600,sugar maple,healthy,\n", "-:2: column dbh_cm: diameter"},
		{head + "b,,0,sugar maple,healthy,\n", "-:2: column dbh_cm: less than 1 in through"},
		{head + "b,sixty,,sugar maple,healthy,\n", `-:2: column girth_in: "sixty" is not a plain number`},
		{head + "b,NaN,,sugar maple,healthy,\n", `-:2: column girth_in: "NaN" is not a plain number`},
		{head + "b,60,,gum,healthy,\n", `-:2: column species: "gum": not one of the names: write one of maple`},
		{head + "b,60,,sugar maple,fine,\n", `-:2: column vigor: "fine": not one of the names`},
		{head + "b,60,,sugar maple,healthy,3\n", "-:2: column growth_in: growth of the radius"},
		{"tree,girth_in,species,vigor,first_girth_in,years_since\nb,60,sugar maple,healthy,58,\n", "-:2: column years_since: an earlier girth goes with the years since"},
		{"tree,girth_in,species,vigor,first_girth_in,years_since\nb,60,sugar maple,healthy,,5\n", "-:2: column years_since: an earlier girth goes with the years since"},
		{"tree,girth_in,species,vigor,first_girth_in,years_since\nb,60,sugar maple,healthy,58,2.5\n", "-:2: column years_since: whole years between the two girths, 1 to 200"},
		{"tree,girth_in,species,vigor,first_girth_in,years_since\nb,60,sugar maple,healthy,62,5\n", "-:2: column first_girth_in: second girth 60 in (152.4 cm) is outside 62 to"},
		{head + "b,60,,sugar maple,healthy,-0.1\n", "-:2: column growth_in: growth of the radius"},
		{head + ",60,,sugar maple,healthy,\n", "-:2: column tree: empty"},
		{head + "P9/2,60,,sugar maple,healthy,\n", "-:2: column tree: a label has no slash"},
		{head + "a\x07,60,,sugar maple,healthy,\n", "-:2: column tree: \"a\\a\" has a character that cannot be printed"},
		{head + strings.Repeat("a", 41) + ",60,,sugar maple,healthy,\n", "-:2: column tree: a label of more than 40"},
		{head + good + "b,60,,sugar maple,healthy,\n" + good, "-:4: column tree: a stands further up"},
		{head + strings.Repeat(good, 21), "-:22: column tree: more than 20 stems"},
		{head + "b,60\n", "-:2: 2 cells where the header names 6 columns"},
		{head + "b,60,,\"sugar maple,healthy,\n", "-:2: "},
		{head + "b,60,,\xff,healthy,\n", "-:2: column species: not text in UTF-8"},
	} {
		cases = append(cases, clitest.Bad{Args: []string{"-tree-file", "-"}, Stdin: c.file, Want: c.want})
	}
	return append(cases, clitest.Bad{Args: []string{"-tree-file", "-", "-map", "a", "-svg", "-"}, Stdin: "tree,dbh_in,species,vigor\na,2,sugar maple,healthy\n", Want: "-map: diameter 2 in (5.08 cm) is outside 3 to"})
}

func badHoles() (cases []clitest.Bad) {
	const head = "tree,year,bearing_deg,along_in,height_in,bit_in,depth_in\n"
	const good = "P1,2033,90,,40,0.3125,1.5\n"
	for _, c := range []struct{ file, want string }{
		{"", "-: the file is empty"},
		{head, "-:1: nothing below the header"},
		{"tree,bearing_deg,height_in\n", "-:1: no column for year"},
		{"tree,year,bearing,height_in\n", "-:1: column bearing: no unit that is known"},
		{head + good + "P77,2033,90,,40,,\n", `-:3: column tree: no tree "P77" in the list`},
		{head + "P9,2033,90,,40,,\n", "-:2: column tree: tree P9 has 2 stems: write P9/1 to P9/2"},
		{head + "P1,9999,90,,40,,\n", "-:2: column year: write the year with four digits"},
		{head + "P1,33,90,,40,,\n", "-:2: column year: write the year with four digits, from 1700 on"},
		{head + "P1,2030.5,90,,40,,\n", "-:2: column year: write the year"},
		{head + "P1,1e300,90,,40,,\n", "-:2: column year: write the year"},
		{head + "P1,2033,90,12,40,,\n", "-:2: column bearing_deg: give either"},
		{head + "P1,2033,,,40,,\n", "-:2: column bearing_deg: give either"},
		{head + "P1,2033,361,,40,,\n", "-:2: column bearing_deg: from 0 to 360 deg"},
		{head + "P1,2033,-1,,40,,\n", "-:2: column bearing_deg: from 0 to 360 deg"},
		{head + "P1,2033,,42,40,,\n", "-:2: column along_in: along 42 in (106.7 cm) is outside 0 to 41.5 in (0 to 105.4 cm)"},
		{head + "P1,2033,90,,400,,\n", "-:2: column height_in: from 0 to 20 ft"},
		{head + "P1,2033,90,,,,\n", "-:2: column height_in: "},
		{head + "P1,2033,90,,40,5,\n", "-:2: column bit_in: bit 5 in (12.7 cm) is outside"},
		{head + "P1,2033,90,,40,,40\n", "-:2: column depth_in: depth 40 in (101.6 cm) is outside"},
		{head + good + "P1,2033,x,,40,,\n", `-:3: column bearing_deg: "x" is not a plain number`},
	} {
		cases = append(cases, clitest.Bad{Args: []string{"-season", "2034", "-tree-file", "testdata/pasture/trees.csv", "-hole-file", "-"}, Stdin: c.file, Want: c.want})
	}
	return cases
}
