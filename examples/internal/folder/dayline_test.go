package folder

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"
	"time"
)

// told words a row.
func (r Row) told() string {
	var all []string
	for _, c := range r {
		all = append(all, c.Column+"="+c.Text)
	}
	return strings.Join(all, " ")
}

var firstOfApril = time.Date(2034, 4, 1, 20, 0, 0, 0, time.UTC)

// A day is understood however it is said.
func TestDayLine(t *testing.T) {
	h, err := house(DaysFile, "date,sap_gal\n2034-03-01,1\n")
	if err != nil {
		t.Fatal(err)
	}
	const all = "date=2034-03-10 sap=40 gal sugar=2.1 lit=2 pm out=8 pm wood=6 barrows"
	for line, want := range map[string]string{
		"3/10 40 gal 2.1 lit 2pm out 8pm wood 6":                                                all,
		"3/10, 40gal, 2.1, lit 2 pm, out 8 pm, 6 barrows":                                       strings.Replace(all, "wood=6", "wood=6", 1),
		"2034-3-10 40 gal 2.1 lit at 2pm out at 8pm wood 6":                                     all,
		"3/10/2034 sap 40 gal sugar 2.1 Lit 2pm OUT 8pm wood 6 note Windy, 2 in of snow;  cold": all + " note=Windy, 2 in of snow;  cold",
		"3/31 big 12 1/2 in 2.1% at 41F":                                                        "date=2034-03-31 tank=big dip=12 1/2 in sugar=2.1 Brix read_at=41 F",
		"3/31 dip 12,5 2,1 at 5,5C":                                                             "date=2034-03-31 dip=12.5 in sugar=2.1 read_at=5.5 C",
		"3/31 dip 12 at 41":                                                                     "date=2034-03-31 dip=12 in read_at=41 F",
		"3/31 tank kettle 7 1/2 gal":                                                            "date=2034-03-31 tank=kettle sap=7 1/2 gal",
		"3/31 big thrown 12 gal":                                                                "date=2034-03-31 tank=big thrown=12 gal",
		"3/31 boiled 36.5 gal syrup 3 qt 1/4 cord":                                              "date=2034-03-31 boiled=36.5 gal syrup=3 qt wood=1/4 cord",
		"today 20 L lit 14:30 out 20.15":                                                        "date=2034-04-01 sap=20 L lit=14:30 out=20.15",
		"yesterday":                                                                             "date=2034-03-31",
		"4/2 1 gal":                                                                             "date=2033-04-02 sap=1 gal", // not after today
		"13/3 1 gal":                                                                            "date=2034-03-13 sap=1 gal", // no month has that number
	} {
		row, err := h.DayLine(line, firstOfApril)
		if got := row.told(); err != nil || got != want {
			t.Errorf("%s: %v\n%s, want\n%s", line, err, got, want)
		}
	}
}

// What is not plain is asked back with an example, and nothing of it is taken.
func TestDayLineRefuses(t *testing.T) {
	h, err := house()
	if err != nil {
		t.Fatal(err)
	}
	for line, want := range map[string]string{
		"":                       "type the day, as 3/10 40 gal",
		"40 gal 2.1":             `"40" is not a date such as 2034-03-10`,
		"2/30 40 gal":            `"2/30": there is no such day`,
		"14/14 40 gal":           "14/14",
		"3/10/34 40 gal":         "the year 34? write all of it, as 2034",
		"3/10 sap 40":            "sap 40 of what? write its unit, as 40 gal; a day is typed as",
		"3/10 40 gal 30 gal":     `sap is told twice, or say what "30 gal" is`,
		"3/10 1,200 gal":         `"1,200" is not understood`,
		"3/10 2.1 40":            `sugar is told twice`,
		"3/10 2.1 at 41 F windy": `"41 F windy" is not understood: a remark stands behind the word note`,
		"3/10 2pm":               `say what "2 pm" is`,
		"3/10 lit":               "nothing stands behind lit",
		"3/10 much sap":          `"much" is not understood`,
		"3/10 40 furlongs":       `say what "40 furlongs" is`,
		"3/10 sap \x1b[2J":       "is not understood",
		"3/10 lit out 8pm":       "is not understood",
		strings.Repeat("9", 500): "is not a date",
	} {
		row, err := h.DayLine(line, firstOfApril)
		if err == nil || !strings.Contains(err.Error(), want) || row != nil || len(err.Error()) > 400 {
			t.Errorf("%q: %v, %v, want %s", line, row, err, want)
		}
	}
	// Without the country of the gallon nobody knows which comes first, nor what a bare
	// figure is.
	bare, err := Open(fstest.MapFS{SettingsFile: {Data: []byte("taps: 3")}}, "", 0)
	if err != nil {
		t.Fatal(err)
	}
	for line, want := range map[string]string{"3/10 40 L": "month or day first?", "2034-03-10 wood 6": "wood 6 of what?", "2034-03-10 dip 6": "dip 6 of what?", "2034-03-10 at 41": "read_at 41 of what?"} {
		if row, err := bare.DayLine(line, firstOfApril); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v, %v", line, row, err)
		}
	}
	// Where the file settles it the day comes first.
	if h, err = house(DaysFile, "date\n1/3/2034\n13/3/2034\n"); err != nil {
		t.Fatal(err)
	}
	if row, err := h.DayLine("3/4 1 gal", firstOfApril); err != nil || row.told() != "date=2033-04-03 sap=1 gal" {
		t.Errorf("%v, %v", row, err)
	}
}

// Whatever is typed, it is refused in one short line or makes a row that can be
// added or is refused.
func FuzzDayLine(f *testing.F) {
	f.Add(DayLine)
	f.Add("yesterday big 12 1/2 in 2.1% boiled 36 gal syrup 3 qt")
	f.Add("3/13/2034 40½gal, sugar 31 be tank big note a, \"b\"")
	h, err := house(DaysFile, "date,tank,sap_gal,dip_in,sugar_brix,read_at_f,boiled_gal,lit,out,syrup_gal,wood,note\n2034-03-01,,1,,,,,,,,,\n")
	if err != nil {
		f.Fatal(err)
	}
	f.Fuzz(func(t *testing.T, line string) {
		row, err := h.DayLine(line, firstOfApril)
		if err == nil {
			var adds []Addition
			if adds, err = h.Append(Rows{DaysFile, []Row{row}}); err == nil && len(adds[0].Lines)+adds[0].There != 1 {
				t.Errorf("%q: %+v", line, adds)
			}
		}
		if err != nil {
			short(t, err)
			if n := len(fmt.Sprint(err)); n > 1500 {
				t.Errorf("%d bytes", n)
			}
		}
	})
}

// Where the days of a record stand first, 3/30 is told what it is read as.
func TestDayLineOtherOrder(t *testing.T) {
	h, err := house(DaysFile, "date\n14/3/2034\n")
	if err != nil {
		t.Fatal(err)
	}
	if row, err := h.DayLine("30/3 40 gal", firstOfApril); err != nil || row[0].Text != "2034-03-30" {
		t.Errorf("%v, %v", row, err)
	}
	const want = `"3/30": the other dates have the day first, and there is no month 30: write it as 2034-03-10`
	if _, err := h.DayLine("3/30 40 gal", firstOfApril); err == nil || !strings.HasPrefix(err.Error(), want) {
		t.Error(err)
	}
}
