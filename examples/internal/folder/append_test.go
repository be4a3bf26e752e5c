package folder

import (
	"slices"
	"strings"
	"testing"
	"testing/fstest"
)

// adding is what adding a row makes of a file.
func adding(t *testing.T, settings, file, content string, row Row) (string, error) {
	t.Helper()
	files := fstest.MapFS{SettingsFile: {Data: []byte(settings)}, BatchesFile: {Data: []byte("batch,date,volume_l\n34-1,2034-03-09,10\n")}}
	if content != "" {
		files[file] = &fstest.MapFile{Data: []byte(content)}
	}
	h, err := Open(files, "", 0)
	if err != nil {
		t.Fatal(err)
	}
	adds, err := h.Append(Rows{file, []Row{row}})
	if err != nil {
		return "", err
	}
	return string(adds[0].New), nil
}

const forAdding = "gallons: US\nbarrow: 1/25 cord\ntank: big, 120 gallons, 2.5 gallons an inch\n"

// A row comes out in the columns of the header, in its units and in its way of
// writing. By hand: 10 US gal are 37.854 L and 8.3267 imperial gallons, 50 F is 10
// C, 0.24 cord are 6 barrows of 1/25, and 36.06 Be is 66.90 Brix.
func TestAppendAsWritten(t *testing.T) {
	day := Row{{"date", "2034-03-10"}, {"sap", "10 US gal"}, {"read_at", "50 F"}, {"lit", "2pm"}, {"wood", "0.24 cord"}, {"note", `windy, "cold"`}}
	const us = "date,sap_gal,read_at_f,lit,wood,note\n"
	for name, c := range map[string]struct{ old, want string }{
		"plain":            {us + "2034-03-09,1,,,,\n", us + "2034-03-09,1,,,,\n2034-03-10,10,50,14:00,6,\"windy, \"\"cold\"\"\"\n"},
		"no newline":       {us + "2034-03-09,1,,,,", us + "2034-03-09,1,,,,\n2034-03-10,10,50,14:00,6,\"windy, \"\"cold\"\"\"\n"},
		"only a header":    {strings.TrimSpace(us), us + "2034-03-10,10,50,14:00,6,\"windy, \"\"cold\"\"\"\n"},
		"CRLF":             {"date,sap_l,read_at_c,lit,wood_cord,note\r\n2034-03-09,1,,,,", "date,sap_l,read_at_c,lit,wood_cord,note\r\n2034-03-09,1,,,,\r\n2034-03-10,37.854,10,14:00,0.24,\"windy, \"\"cold\"\"\"\r\n"},
		"semicolons":       {"Date;Sap_L;Read_at_F;Lit;Wood;Note\n2034-03-09;1,5;;;;\n", "Date;Sap_L;Read_at_F;Lit;Wood;Note\n2034-03-09;1,5;;;;\n2034-03-10;37,854;50;14:00;6;\"windy, \"\"cold\"\"\"\n"},
		"points":           {"date;sap_l;read_at_f;lit;wood;note\n2034-03-09;1.5;;;;\n", "date;sap_l;read_at_f;lit;wood;note\n2034-03-09;1.5;;;;\n2034-03-10;37.854;50;14:00;6;\"windy, \"\"cold\"\"\"\n"},
		"tabs and a BOM":   {"\ufeffdate\tnote\tsap_imp_gal\tread_at_f\tlit\twood", "\ufeffdate\tnote\tsap_imp_gal\tread_at_f\tlit\twood\n2034-03-10\t\"windy, \"\"cold\"\"\"\t8.3267\t50\t14:00\t6\n"},
		"columns of mine":  {"mood,date,sap_gal,read_at_f,lit,wood,note,sky\n", "mood,date,sap_gal,read_at_f,lit,wood,note,sky\n,2034-03-10,10,50,14:00,6,\"windy, \"\"cold\"\"\",\n"},
		"slashes":          {"date,sap_gal,read_at_f,lit,wood,note\n3/9/2034,1,,,,\n2/28/2034,1,,,,", "date,sap_gal,read_at_f,lit,wood,note\n3/9/2034,1,,,,\n2/28/2034,1,,,,\n3/10/2034,10,50,14:00,6,\"windy, \"\"cold\"\"\"\n"},
		"no unit":          {"date,sap,read_at_f,lit,wood,note\n", "date,sap,read_at_f,lit,wood,note\n2034-03-10,10 US gal,50,14:00,6,\"windy, \"\"cold\"\"\"\n"},
		"a remark behind":  {us + "2034-03-09,1,,,,\n# end", us + "2034-03-09,1,,,,\n# end\n2034-03-10,10,50,14:00,6,\"windy, \"\"cold\"\"\"\n"},
		"a file not there": {"", "date,tank,sap_gal,dip_in,sugar_brix,read_at_f,boiled_gal,thrown_gal,lit,out,syrup_gal,wood,note\n2034-03-10,,10,,,50,,,14:00,,,6,\"windy, \"\"cold\"\"\"\n"},
	} {
		t.Run(name, func(t *testing.T) {
			if got, err := adding(t, forAdding, DaysFile, c.old, day); err != nil || got != c.want {
				t.Errorf("%v\n%q, want\n%q", err, got, c.want)
			}
		})
	}
	for header, want := range map[string]string{"reading_be": "66.9 Brix", "reading_brix": "66.9"} {
		got, err := adding(t, forAdding, BatchesFile, "batch,date,volume_gal,"+header+"\n", Row{{"batch", "#1"}, {"date", "2034-03-10"}, {"volume", "1 US gal"}, {"reading", "66.9 Brix"}})
		if err != nil || !strings.HasSuffix(got, "\n\"#1\",2034-03-10,1,"+want+"\n") {
			t.Errorf("%s: %v, %q", header, err, got)
		}
	}
}

// What the usual header lacks stands at its end in a new file, and is named where
// the file is there.
func TestAppendMoreColumns(t *testing.T) {
	row := Row{{"day", "2034-03-10"}, {"pressure", "29.4 inHg"}, {"stop", "218 F"}, {"cup", "66.9 Brix"}}
	if got, err := adding(t, forAdding, StopsFile, "", row); err != nil || got != "day,water_boils_f,stop_f,cup_brix,pressure_inhg\n2034-03-10,,218,66.9,29.4\n" {
		t.Errorf("%v\n%s", err, got)
	}
	if _, err := adding(t, forAdding, StopsFile, "day,water_boils_f,stop_f,cup_brix\n", row); err == nil || !strings.Contains(err.Error(), "no column for pressure (29.4 inHg): write pressure_inhg at the end of this line") {
		t.Error(err)
	}
}

// What cannot be added leaves nothing half: it is refused with the way out.
func TestAppendRefuses(t *testing.T) {
	const days = "date,sap_gal,sugar_brix\n2034-03-09,1,2\n"
	for name, c := range map[string]struct {
		file, old string
		row       Row
		want      string
	}{
		"no such column": {DaysFile, "# a\n" + days, Row{{"date", "2034-03-10"}, {"wood", "6"}}, "days.csv:2: no column for wood (6): write wood at the end of this line"},
		"no unit":        {DaysFile, days, Row{{"date", "2034-03-10"}, {"sap", "10 lb"}}, "days.csv: column sap_gal: "},
		"no number":      {DaysFile, days, Row{{"date", "2034-03-10"}, {"sap", "much"}}, "days.csv: column sap_gal: "},
		"a slip":         {DaysFile, days, Row{{"date", "2034-03-10"}, {"sugar", "21"}}, "is a point lost?"},
		"a far day":      {DaysFile, days, Row{{"date", "2043-03-10"}}, "days.csv:3: column date: a day of 2043 behind days of 2034?"},
		"no date":        {DaysFile, days, Row{{"sap", "10 US gal"}}, "days.csv:3: column date: no date"},
		"nothing":        {DaysFile, days, Row{{"sap", ""}}, "a row that tells nothing is not added"},
		"no such batch":  {BottledFile, "", Row{{"date", "2034-03-10"}, {"batch", "34-9"}, {"size", "1 qt"}, {"count", "3"}}, `bottled.csv:2: column batch: no batch "34-9"`},
		"escape":         {DaysFile, days + "", Row{{"date", "2034-03-10"}, {"note", "a\x1b[2J"}}, "days.csv"},
		"another file":   {"letters.csv", "", Row{{"date", "2034-03-10"}}, "letters.csv: no file of a sugarhouse"},
	} {
		if got, err := adding(t, forAdding, c.file, c.old, c.row); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v, %q", name, err, got)
		}
	}
	// What is meant all the same comes with its unit, and keeps it.
	got, err := adding(t, forAdding, DaysFile, days, Row{{"date", "2034-03-10"}, {"sugar", "21 Brix"}})
	if err != nil || !strings.HasSuffix(got, "2034-03-10,,21 Brix\n") {
		t.Errorf("%v, %q", err, got)
	}
}

// A row that stands there is not added twice, and rows of one call may rest on each
// other: jars of a batch that is added too.
func TestAppendTogether(t *testing.T) {
	h, err := Open(fstest.MapFS{DaysFile: {Data: []byte("date,sap_us_gal,note\n2034-03-10,40")}}, "", 0)
	if err == nil {
		adds, err := h.Append(Rows{DaysFile, []Row{{{"date", "2034-03-10"}, {"sap", "40 US gal"}}}},
			Rows{BatchesFile, []Row{{{"batch", "34-1"}, {"date", "2034-03-11"}, {"volume", "1 US gal"}}}},
			Rows{BottledFile, []Row{{{"date", "2034-03-11"}, {"batch", "34-1"}, {"size", "1 US qt"}, {"count", "3"}}}})
		if err != nil || adds[0].There != 1 || len(adds[0].Lines) != 0 ||
			!slices.Equal(adds[2].Lines, []string{"date,batch,size,count,note", "2034-03-11,34-1,1 US qt,3,"}) ||
			adds[1].Lines[0] != "batch,date,volume_us_gal,weight_lb,reading_brix,cup_f,temp_f,light_pct,note" {
			t.Errorf("%v, %+v", err, adds)
		}
		return
	}
	t.Error(err)
}
