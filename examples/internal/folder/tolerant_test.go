package folder

import (
	"io"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"example.org/sapreckoner/units"
)

// house opens a folder of US gallons, one big tank and barrows, with these files:
// a name and a text in turn.
func house(files ...string) (*House, error) {
	fsys := fstest.MapFS{SettingsFile: {Data: []byte("gallons: US\ntank: big, 120 gallons, 2.5 gallons an inch\nbarrow: 1/25 cord\n")}}
	for i := 0; i < len(files); i += 2 {
		fsys[files[i]] = &fstest.MapFile{Data: []byte(files[i+1])}
	}
	return Open(fsys, "", 0)
}

// A file is read the same however a person or a spreadsheet wrote it.
func TestWaysToWrite(t *testing.T) {
	const head = "date,sap_gal,sugar_brix,read_at_f,boiled_gal,lit,out,syrup_gal,wood\n"
	for name, file := range map[string]string{
		"as printed":        head + "2034-03-10,40.5,2.25,44,36.75,14:00,20:30,0.9375,6.5\n",
		"semicolons":        "\ufeff" + strings.ReplaceAll(head, ",", ";") + "2034-03-10;40,5;2,25;44;36,75;14:00;20:30;0,9375;6,5\r\n",
		"tabs":              strings.ReplaceAll(head, ",", "\t") + "2034-03-10\t40.5\t2.25\t44\t36.75\t14:00\t20:30\t0.9375\t6.5\n",
		"fractions":         head + "2034-3-10,40 1/2,2 1/4,44,36 3/4,2pm,8:30 pm,15/16,6 1/2\n",
		"one character":     head + "2034-3-10,40½,2¼,44,36¾,2 p.m.,8.30pm,15/16,6½\n",
		"units in cells":    head + "2034-3-10,162 qt,2.25 Brix,44 F,147 qt,14:00,20:30,7 1/2 pints,0.26 cord\n",
		"the measure":       head + "2034-3-10,40.5 gallons,2.25,44 F,36.75,14:00,20:30,120 fl oz,6 1/2 barrows\n",
		"other headers":     "Date , SAP_us_qt,sugar_Brix,read_at_C,boiled_qt,lit,out,syrup_fl_oz,wood_cord\n2034-3-10,162,2.25,44 F,147,14:00,20:30,120,0.26\n",
		"no units in them":  "date,sap,sugar_brix,read_at,boiled,lit,out,syrup,wood\n2034-3-10,40.5 gal,2.25,44 F,36.75 gal,14:00,20:30,120 fl oz,6.5\n",
		"month first":       head + "3/10/2034,40.5,2.25,44,36.75,14:00,20:30,0.9375,6.5\n3/13/2034,,,,,,,,\n",
		"day first":         head + "10/3/2034,40.5,2.25,44,36.75,14:00,20:30,0.9375,6.5\n13/3/2034,,,,,,,,\n",
		"dots":              head + "10.3.2034,40.5,2.25,44,36.75,14:00,20:30,0.9375,6.5\n",
		"remarks and gaps":  "# mine\n\n" + head + "# a,b\n,,,,,,,,\n2034-03-10,40.5,2.25,44,36.75,14:00,20:30,0.9375,6.5\n\n",
		"columns of my own": "mood," + strings.Replace(head, "\n", ",sky\n", 1) + "\"good, I think\",2034-03-10,40.5,2.25,44,36.75,14:00,20:30,0.9375,6.5,7/8 cloud\n",
	} {
		t.Run(name, func(t *testing.T) {
			h, err := house(DaysFile, file)
			if err != nil {
				t.Fatal(err)
			}
			d := h.Days[0]
			at := time.Date(2034, 3, 10, 0, 0, 0, 0, time.UTC)
			if !d.Date.Equal(at) || !near(d.Sap, 40.5*units.USGallon) || !near(d.Sugar, 2.25) || !d.ReadAt.Equal(units.Fahrenheit(44)) ||
				!near(d.Boiled, 36.75*units.USGallon) || !d.Lit.Equal(at.Add(14*time.Hour)) || !d.Out.Equal(at.Add(20*time.Hour+30*time.Minute)) ||
				!near(d.Syrup, 0.9375*units.USGallon) || !near(d.Wood, 0.26*units.Cord) {
				t.Errorf("%+v", d)
			}
		})
	}
}

// Only the date is needed, M is a missing figure, and a fire may burn past
// midnight.
func TestDaySparse(t *testing.T) {
	h, err := house(DaysFile, "date,sap_gal,sugar_brix,lit,out\n2034-03-10,,,,\n2034-03-11,M,M,7pm,1:30am\n")
	if err != nil {
		t.Fatal(err)
	}
	if d := h.Days[0]; given(d.Sap) || given(d.Sugar) || given(d.Wood) || d.Fired() != 0 || !d.Lit.IsZero() {
		t.Errorf("%+v", d)
	}
	if d := h.Days[1]; given(d.Sap) || d.Fired() != 6*time.Hour+30*time.Minute {
		t.Errorf("%+v", d)
	}
}

// A row may end behind its last figure: what the header names further is not told.
func TestShortRows(t *testing.T) {
	h, err := house(DaysFile, "date,sap_gal,sugar_brix,note\n2034-03-10\n2034-03-11,40\n2034-03-12,41,2.1,cold\n")
	if err != nil || len(h.Days) != 3 || given(h.Days[0].Sap) || !near(h.Days[1].Sap, 40*units.USGallon) || given(h.Days[1].Sugar) || h.Days[2].Note != "cold" {
		t.Errorf("%v, %+v", err, h)
	}
	f, ok := h.File(DaysFile)
	if !ok {
		t.Fatal("no file")
	}
	defer f.Close()
	if got, err := io.ReadAll(f); err != nil || !strings.HasPrefix(string(got), "date,sap_us_gal,sugar_brix,note\n2034-03-10,,,\n2034-03-11,40,,\n") {
		t.Errorf("%v\n%s", err, got)
	}
}

// Baume is the Brix of the same stem: 36.06 Be is 66.90 Brix (the check value of
// package density, computed).
func TestBaume(t *testing.T) {
	for _, cell := range []string{"36.06 Be", "36.06 Baume", "36.06 °Bé", "36.06 deg be"} {
		h, err := house(BatchesFile, "batch,date,volume_gal,reading_brix\n1,2034-03-10,1,"+cell+"\n")
		if err != nil || !(h.Batches[0].Reading > 66.89 && h.Batches[0].Reading < 66.91) {
			t.Errorf("%q: %v, %v", cell, h, err)
		}
	}
	h, err := house(BatchesFile, "batch,date,volume_gal,reading_be\n1,2034-03-10,1,36.06\n")
	if err != nil || !(h.Batches[0].Reading > 66.89 && h.Batches[0].Reading < 66.91) {
		t.Errorf("reading_be: %v, %v", h, err)
	}
}

// What a program reads itself comes as plain numbers at the same lines.
func TestFile(t *testing.T) {
	h, err := house(HolesFile, "# two\ntree;year;bearing_deg;height_in;bit_in\nG1;2034;90;3,5 ft;7/16\n\n\"a\nb\";2034;;42;5/16\n# end\nG2;2034;1;40;M\n")
	if err != nil {
		t.Fatal(err)
	}
	f, ok := h.File(HolesFile)
	if !ok {
		t.Fatal("no file")
	}
	defer f.Close()
	got, err := io.ReadAll(f)
	want := "#\ntree,year,bearing_deg,height_in,bit_in\nG1,2034,90,42,0.4375\n#\n\"a\nb\",2034,,42,0.3125\n#\nG2,2034,1,40,\n"
	if err != nil || string(got) != want {
		t.Errorf("%v\n%s", err, got)
	}
	if _, ok := h.File(TreesFile); ok {
		t.Error("a file that is not there")
	}
}
