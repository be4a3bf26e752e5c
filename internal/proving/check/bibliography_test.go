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

// A row cites by its own cell, else by the first key of its table, and by no key
// that the table has not.
func TestRowKey(t *testing.T) {
	const text = `# id: keyed
# title: A liquid of two books
# source: see the column key
# key: kell-1975, iapws-if97
# obtained: read
# kind: figures
# column t_C: input C
# column density: want kg/m3
# column key: text -
# tolerance density: half-digit: half a unit in the last printed digit
t_C,density,key
4,1000,iapws-if97
20,998,
`
	table, err := parse("keyed", text)
	if err != nil {
		t.Fatal(err)
	}
	if a, b := table.Rows[0].Key(), table.Rows[1].Key(); a != "iapws-if97" || b != "kell-1975" {
		t.Errorf("cited as %q and %q", a, b)
	}
	if got := (Row{}).Key(); got != "" {
		t.Errorf("no row cites %q", got)
	}
	if args := table.Rows[0].arguments(); len(args) != 1 || args[0].Name != "t_C" {
		t.Errorf("the key is an argument: %v", args)
	}
	if _, err := parse("keyed", strings.Replace(text, "1000,iapws-if97", "1000,plato-1900", 1)); err == nil || !strings.Contains(err.Error(), "is no key of the table") {
		t.Errorf("a key that the table has not: %v", err)
	}
}
