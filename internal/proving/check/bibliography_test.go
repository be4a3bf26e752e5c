package check

import (
	"strings"
	"testing"
)

// Every table cites its sources by key, and what was computed says on what basis.
func TestTablesCite(t *testing.T) {
	for _, id := range IDs() {
		table, err := Load(id)
		if err != nil {
			t.Fatal(err)
		}
		if !table.Keyed {
			t.Errorf("%s.csv: no line \"# key: ...\" after the source; bibliography.json has the keys, none says that there is no source", id)
		}
		if strings.HasPrefix(table.Obtained, "computed") && table.Basis == "" {
			t.Errorf("%s.csv: no line \"# note: basis: ...\"", id)
		}
	}
}

func TestParseKeys(t *testing.T) {
	if keys, err := parseKeys("kell-1975, iapws-if97"); err != nil || len(keys) != 2 {
		t.Errorf("%q, %v", keys, err)
	}
	if keys, err := parseKeys("none"); err != nil || keys != nil {
		t.Errorf("none: %q, %v", keys, err)
	}
	for _, bad := range []string{"kell-1976", "kell-1975, kell-1975", "kell-1975,", "none, kell-1975"} {
		if _, err := parseKeys(bad); err == nil {
			t.Errorf("%q is taken", bad)
		}
	}
}

// A paper reads as in a list of references.
func TestReferenceString(t *testing.T) {
	list, err := References()
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range list {
		if r.ID == "kell-1975" {
			if got := r.String(); !strings.HasPrefix(got, "Kell, G. S. Density") || !strings.HasSuffix(got, "Journal of Chemical and Engineering Data 20. 97-105. 1975.") {
				t.Error(got)
			}
		}
	}
}
