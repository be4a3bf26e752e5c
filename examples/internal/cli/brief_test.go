package cli_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// yoke is a program with a brief of so many cautions.
func yoke(cautions int) cli.Program {
	return cli.Program{Name: "yoke", Does: "Carries pails.", Setup: func(f *cli.Flags) func(*cli.Env) error {
		var sap units.Volume
		metric := false
		f.Group("Sap")
		f.Quantity(&sap, "sap", "2.1 US gal", "sap in the pails")
		f.Page(&metric)
		f.More()
		f.Group("Wood")
		wood := ""
		f.String(&wood, "wood", "ash", "what it is cut from")
		return func(e *cli.Env) error {
			s := &cli.Sheet{Title: "A yoke", Metric: metric}
			b := &s.Brief
			b.Verdict = "Carry it."
			b.Answer("sap", "In the pails", cli.Quarts(sap, cli.Up), "both of them")
			b.List([]cli.Column{{Key: "tree", Head: "tree"}, {Key: "sap", Head: "sap"}}, [][]cli.Value{{cli.Words("north"), cli.Volume(sap)}})
			b.From(f, "sap", "sap", "wood", "of ash")
			b.Learned("a step from 5 days")
			for i := range cautions {
				b.Cautions = append(b.Cautions, fmt.Sprintf("Mind stone %d.", i))
			}
			b.Further = append(b.Further, "-full tells why.")
			s.Part("load", "The load").Row("sap", "Sap", cli.Volume(sap))
			return s.Show(e)
		}
	}}
}

func carry(t *testing.T, p cli.Program, args ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	if status := p.Main(args, strings.NewReader(""), &out, &errs); status != cli.OK {
		t.Fatal(errs.String())
	}
	return out.String()
}

// 2.1 US gal are 8.4 qt and 7.949 L.
func TestBriefPage(t *testing.T) {
	const brief = `Carry it.

In the pails        8 1/2 US qt (both of them)

tree            sap
north  2.100 US gal

Told: sap. Learned: a step from 5 days. Assumed: of ash.

- Mind stone 0.

-full tells why.
`
	if got := carry(t, yoke(1), "-sap", "2.1 US gal"); got != brief {
		t.Errorf("got\n%s\nwant\n%s", got, brief)
	}
	full := brief + "\nA yoke\n======\n\nThe load\n--------\nSap                           2.100 US gal (7.949 L)\n"
	if got := carry(t, yoke(1), "-sap", "2.1 US gal", "-full"); got != full {
		t.Errorf("got\n%s\nwant\n%s", got, full)
	}
}

// Where it would be too long the blank lines go, from the last on: 1 + 1 + 1 + 17 + 1
// lines beside the list and four blank ones are 25.
func TestBriefGivesUpBlankLines(t *testing.T) {
	for cautions, want := range map[int]string{16: "Mind stone 15.\n\n-full", 17: "Mind stone 16.\n-full", 18: "ash.\n- Mind"} {
		if got := carry(t, yoke(cautions)); !strings.Contains(got, want) {
			t.Errorf("%d cautions: no %q in\n%s", cautions, want, got)
		}
	}
}

func TestBriefJSON(t *testing.T) {
	const want = `{"program":"yoke","verdict":"Carry it.","answers":[{"key":"sap","label":"In the pails","text":"8 L",` +
		`"us":{"value":8.5,"unit":"us_qt"},"metric":{"value":8,"unit":"l"},"note":"both of them"}],"list":[{"tree":"north","sap_l":7.94936475}],` +
		`"known":{"house":"","told":[],"learned":["a step from 5 days"],"assumed":["sap","of ash"]},"cautions":["Mind stone 0."],` +
		`"further":["-full tells why."],"parts":{"load":{"sap_l":7.94936475,"sap_us_gal":2.1}}}`
	var got bytes.Buffer
	if err := json.Compact(&got, []byte(carry(t, yoke(1), "-json", "-metric"))); err != nil || got.String() != want {
		t.Errorf("%v, got\n%s\nwant\n%s", err, got.String(), want)
	}
}

// -h tells few flags and names the others; with -full it explains all.
func TestHelpInTwoParts(t *testing.T) {
	short, long := carry(t, yoke(1), "-h"), carry(t, yoke(1), "-h", "-full")
	if !strings.Contains(short, "- Wood: -wood ash\n") || strings.Contains(short, "cut from") || !strings.Contains(short, "sap in the pails") {
		t.Errorf("short:\n%s", short)
	}
	if !strings.Contains(long, "  -wood ash\n      what it is cut from\n") || strings.Contains(long, "More flags") {
		t.Errorf("long:\n%s", long)
	}
}

// A caution of carbon monoxide stands first where the fire is under a roof.
func TestWarn(t *testing.T) {
	var in, out cli.Brief
	in.Warn(true, "Scalds.")
	out.Warn(false, "Scalds.")
	if len(in.Cautions) != 2 || !strings.HasPrefix(in.Cautions[0], "Carbon monoxide") {
		t.Errorf("under a roof: %q", in.Cautions)
	}
	if len(out.Cautions) != 2 || out.Cautions[1] != cli.Outdoors {
		t.Errorf("who knows: %q", out.Cautions)
	}
}
