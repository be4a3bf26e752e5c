package folder

import (
	"strings"
	"testing"
	"testing/fstest"
)

// started writes a new folder whose settings are begun with those lines.
func started(t *testing.T, set ...string) fstest.MapFS {
	t.Helper()
	h, err := Open(nil, "", 0, set...)
	if err != nil {
		t.Fatal(err)
	}
	all, err := Begin(&h.Settings)
	if err != nil {
		t.Fatal(err)
	}
	files := fstest.MapFS{}
	for _, s := range all {
		files[s.Name] = &fstest.MapFile{Data: []byte(s.Text)}
	}
	return files
}

// A new folder can be read as it is, and has the settings that were said. Each line
// that is set as it stands there, without the # in front, can be read too.
func TestBegin(t *testing.T) {
	for _, set := range [][]string{{"gallons: US"}, {"gallons: imperial", "elevation: 300 m", "wheelbarrow: 1/25 cord"}, {"units: metric", "tank: big, 400 L, 4 L a cm"}} {
		files := started(t, set...)
		h, err := Open(files, "", 0)
		if err != nil {
			t.Fatalf("%q: %v", set, err)
		}
		if len(h.Settings.Lines()) != len(set) || len(h.FileFills()) != 0 || len(h.Unread()) != 0 || h.Season() != 0 || len(files) != 7 {
			t.Errorf("%q: %+v", set, h)
		}
		text := string(files[SettingsFile].Data)
		tried := 0
		for _, line := range strings.Split(text, "\n") {
			name, ok := strings.CutPrefix(line, "# ")
			if ok && known(strings.SplitN(name, ":", 2)[0]) != nil {
				tried++
				// A line of -set keeps two that say the same apart.
				if _, err := Open(files, "", 0, strings.TrimSpace(withoutRemark(name))); err != nil {
					t.Errorf("%q: %s: %v", set, line, err)
				}
			}
			if len(line) > 130 {
				t.Errorf("%d characters: %s", len(line), line)
			}
		}
		if tried+len(set) < len(table) {
			t.Errorf("%q: %d of %d settings are there", set, tried+len(set), len(table))
		}
	}
	if h, err := Open(nil, "", 0, "elevation: 900 ft"); err != nil {
		t.Error(err)
	} else if _, err := Begin(&h.Settings); err == nil || !strings.Contains(err.Error(), `-set "gallons: imperial"`) {
		t.Errorf("%v", err)
	}
}

// The columns of a metric folder are metric, those of another are not.
func TestBeginUnits(t *testing.T) {
	for set, want := range map[string][2]string{
		"gallons: US":   {"sap_gal,dip_in,sugar_brix,read_at_f", "girth_in"},
		"units: metric": {"sap_l,dip_cm,sugar_brix,read_at_c", "girth_cm"},
	} {
		files := started(t, set)
		if days, trees := string(files[DaysFile].Data), string(files[TreesFile].Data); !strings.Contains(days, want[0]) || !strings.Contains(trees, want[1]) {
			t.Errorf("%s:\n%s\n%s", set, days, trees)
		}
	}
}
