package folder

import (
	"math"
	"strings"
	"testing"
	"testing/fstest"

	"example.org/sapreckoner/units"
)

// A number without a unit is told the unit of its own kind: of a volume the
// gallons that the settings name, of a temperature a degree.
func TestUnitOfItsOwnKind(t *testing.T) {
	for settings, c := range map[string]struct{ column, want string }{
		"gallons: US":       {"read_at", "days.csv:2: column read_at: 44 has no unit: write it as 41 F, or name the column read_at_f"},
		"gallons: imperial": {"sap", "days.csv:2: column sap: 44 has no unit: write it as 60 gal, or name the column sap_gal"},
	} {
		_, err := Open(fstest.MapFS{SettingsFile: {Data: []byte(settings + "\n")}, DaysFile: {Data: []byte("date," + c.column + "\n2034-03-10,44\n")}}, "", 0)
		if err == nil || err.Error() != c.want {
			t.Errorf("%s: %v, want %s", settings, err, c.want)
		}
	}
}

// Where no gallon is named, the column names it.
func TestUnitOfNoGallon(t *testing.T) {
	_, err := Open(fstest.MapFS{DaysFile: {Data: []byte("date,sap\n2034-03-10,44\n")}}, "", 0)
	if err == nil || !strings.HasSuffix(err.Error(), ", or name the column sap_us_gal") {
		t.Error(err)
	}
}

// What lies outside its range is told with it, in the unit of the trade, and the
// way out behind it.
func TestSettingsOutOfRange(t *testing.T) {
	for line, want := range map[string]string{
		"pan: 0.05 ft2":       "area 0.05 ft2 is outside 0.1 to 10000 ft2: width times length of the liquid",
		"pan: 200000 ft2":     "area 200000 ft2 is outside 0.1 to 10000 ft2: width times length of the liquid",
		"elevation: 20000 ft": "elevation 20000 ft is outside -500 to 15000 ft: the pan above the sea, from a map",
	} {
		if _, err := open("gallons: US\n" + line + "\n"); err == nil || !strings.HasSuffix(err.Error(), ": "+want) {
			t.Errorf("%s: %v, want %s", line, err, want)
		}
	}
	if h := must(t, "gallons: US\nelevation: 1000 ft\n"); !(math.Abs(float64(h.Settings.Elevation-1000*units.Foot)) < 1e-9) {
		t.Errorf("1000 ft are %v", h.Settings.Elevation)
	}
}

// A program that reads a setting itself is named with it, without a flag: the
// logbook counts the taps that sapweek gets by its flag.
func TestReadByAProgram(t *testing.T) {
	h, read, flag := must(t, "gallons: US\ntaps: 60\n"), false, false
	for _, l := range h.Settings.Lines() {
		for _, f := range l.Fills {
			read = read || l.Name == "taps" && f.Program == "logbook" && f.Flag == "" && f.Text == "60"
			flag = flag || l.Name == "taps" && f.Program == "sapweek" && f.Flag == "taps" && f.Text == "60"
		}
	}
	if !read || !flag {
		t.Errorf("%+v", h.Settings.Lines())
	}
}

// A day that is told by its name is refused before anything is added.
func TestAppendNoDate(t *testing.T) {
	got, err := adding(t, forAdding, DaysFile, "date,sap_gal\n2034-03-09,1\n", Row{{"date", "March 10"}, {"sap", "1 US gal"}})
	if err == nil || got != "" || !strings.Contains(err.Error(), `days.csv: column date: "March 10" is not a date such as 2034-03-10`) {
		t.Errorf("%q, %v", got, err)
	}
}
