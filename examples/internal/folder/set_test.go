package folder

import (
	"slices"
	"strings"
	"testing"
	"testing/fstest"
)

// A value gives way and all else stays, to the byte; another line comes at the end, in
// the way that the file ends its lines.
func TestSetLines(t *testing.T) {
	const off, size = "thermometer off", "0.4 F deg high"
	for _, c := range []struct{ name, before, after, lines, instead string }{
		{"begun", "", off + ": 0.4 F deg high\n", off + ": 0.4 F deg high", ""},
		{"added", "taps: 60 # all out\n", "taps: 60 # all out\n" + off + ": 0.4 F deg high\n", off + ": 0.4 F deg high", ""},
		{"no end", "taps: 60", "taps: 60\n" + off + ": 0.4 F deg high\n", off + ": 0.4 F deg high", ""},
		{"a remark is no setting", "# thermometer off: 1 F deg low\n", "# thermometer off: 1 F deg low\n" + off + ": 0.4 F deg high\n", off + ": 0.4 F deg high", ""},
		{"replaced", "\ufeffThermometer_Off :1 F deg low\t# in 2033: by ice\r\ntaps: 60\r\n", "\ufeffThermometer_Off : 0.4 F deg high\t# in 2033: by ice\r\ntaps: 60\r\n",
			off + ": 0.4 F deg high", "Thermometer_Off :1 F deg low\t# in 2033: by ice"},
		{"last", "taps: 60\r\nthermometer off: 1 F deg low", "taps: 60\r\nthermometer off: 0.4 F deg high", off + ": 0.4 F deg high", "thermometer off: 1 F deg low"},
		{"there", "thermometer off: 0.4 F deg high # so it is", "thermometer off: 0.4 F deg high # so it is", "", ""},
	} {
		files := fstest.MapFS{"days.csv": {Data: []byte("date,sap_l\n")}}
		if c.before != "" {
			files[SettingsFile] = &fstest.MapFile{Data: []byte(c.before)}
		}
		h, err := Open(files, "house", 0)
		if err != nil {
			t.Fatal(c.name, err)
		}
		a, err := h.Set(Line{Name: off, Value: size})
		if err != nil || string(a.New) != c.after || strings.Join(a.Lines, "|") != c.lines || strings.Join(a.Instead, "|") != c.instead || string(a.Old) != c.before || a.There != 1-len(a.Lines) {
			t.Errorf("%s: %v %q", c.name, err, a)
		}
	}
	h, err := Open(fstest.MapFS{SettingsFile: {Data: []byte("taps: 60\n")}}, "house", 0)
	if err != nil {
		t.Fatal(err)
	}
	both, err := h.Set(Line{Name: off, Value: size}, Line{Name: "hydrometer off", Value: "0.3 Brix low"})
	if err != nil || !slices.Equal(both.Lines, []string{off + ": 0.4 F deg high", "hydrometer off: 0.3 Brix low"}) {
		t.Errorf("%v %q", err, both)
	}
	for _, bad := range []struct {
		Line
		want string
	}{
		{Line{Name: off, Value: "40 F deg high"}, "house/sugarhouse.txt:2: thermometer off: error"}, // 10 F deg at most
		{Line{Name: off, Value: "0.4 F deg high # so"}, "would not be read as it is meant"},
		{Line{Name: "colour", Value: "red"}, "no setting is called so"},
	} {
		if a, err := h.Set(bad.Line); err == nil || !strings.Contains(err.Error(), bad.want) || a.New != nil {
			t.Errorf("%+v: %v %q", bad.Line, err, a)
		}
	}
}
