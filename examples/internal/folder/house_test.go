package folder

import (
	"strings"
	"testing"
	"testing/fstest"

	"example.org/sapreckoner/units"
)

// open opens a folder that has these settings.
func open(text string, set ...string) (*House, error) {
	return Open(fstest.MapFS{SettingsFile: {Data: []byte(text)}}, "here", 0, set...)
}

func TestTry(t *testing.T) {
	h, err := open("gallons: US\npan: 2 x 4 ft\n")
	t.Logf("%+v %v", h, err)
	var all strings.Builder
	for i := range table {
		all.WriteString(table[i].Name + ": " + table[i].Example + "\n")
	}
	h, err = open(strings.ReplaceAll(strings.ReplaceAll(all.String(), "compartments", "# "), "sap refractometer", "#"))
	if err != nil {
		t.Fatal(err)
	}
	for _, l := range h.Settings.lines {
		t.Log(l)
	}
	_ = units.Inch
	_, err = open("elevation: 1150\npan: 2 x\nboils off: 8 gallons an hour\ntapps: 60\npan: 1 x 2 ft\nelevation: 12 ft\nwhat\n\u202e: 3\nthermometer off: 0.4 F\ndepth: NaN in\n")
	t.Log("\n", err)
}
