package cli_test

import (
	"bytes"
	"fmt"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// kettle has a flag of each kind whose limits matter, in no group.
func kettle(sapDefault, restDefault string) cli.Program {
	return cli.Program{
		Name: "kettle", Does: "Tells of a kettle.", Calls: []string{"kettle"}, Reads: "One file.\n- a point",
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			var (
				sap  units.Volume
				rest time.Duration
				n    int
			)
			f.Quantity(&sap, "sap", sapDefault, "sap in the kettle")
			f.Duration(&rest, "rest", restDefault, "how long it rests")
			f.Count(&n, "cups", 3, 2, 5, "cups")
			return func(e *cli.Env) error {
				_, err := fmt.Fprintf(e.Out, "%s, %v, %d cups; other than cups %v; kept %s\n",
					sap.Text(units.USGallon, 1), rest, n, f.Other("cups"), f.Kept("sap", "cups"))
				return err
			}
		},
	}
}

func TestFlagLimits(t *testing.T) {
	const kept = "; other than cups false; kept -sap \"2 US gal\"\n"
	for _, c := range []struct{ args, out, errs string }{
		{"", "2.0 US gal, 8m0s, 3 cups; other than cups false; kept -sap \"2 US gal\", -cups 3\n", ""},
		{"-cups|2", "2.0 US gal, 8m0s, 2 cups" + kept, ""},
		{"-cups|5", "2.0 US gal, 8m0s, 5 cups" + kept, ""},
		{"-cups|1", "", `kettle: -cups: "1" is not a whole number from 2 to 5` + "\n"},
		{"-cups|6", "", `kettle: -cups: "6" is not a whole number from 2 to 5` + "\n"},
		{"-rest|0s", "2.0 US gal, 0s, 3 cups; other than cups true; kept -sap \"2 US gal\", -cups 3\n", ""},
		{"-rest|168h", "2.0 US gal, 168h0m0s, 3 cups; other than cups true; kept -sap \"2 US gal\", -cups 3\n", ""},
		{"-rest|168h0m1s", "", `kettle: -rest: "168h0m1s" is not a stretch of time such as 8m or 1h30m, up to a week` + "\n"},
		{"-rest|-1s", "", `kettle: -rest: "-1s" is not a stretch of time such as 8m or 1h30m, up to a week` + "\n"},
		{"-rest|soon", "", `kettle: -rest: "soon" is not a stretch of time such as 8m or 1h30m, up to a week` + "\n"},
		{"-rest|1h|-cups|4", "2.0 US gal, 1h0m0s, 4 cups; other than cups true; kept -sap \"2 US gal\"\n", ""},
		{"-cups|4|-sap|3 US gal", "3.0 US gal, 8m0s, 4 cups; other than cups true; kept \n", ""},
		{"-cups|" + strings.Repeat("9", 48), "", `kettle: -cups: "` + strings.Repeat("9", 48) + `" is not a whole number from 2 to 5` + "\n"},
		{"-cups|" + strings.Repeat("9", 49), "", `kettle: -cups: "` + strings.Repeat("9", 48) + `..." is not a whole number from 2 to 5` + "\n"},
	} {
		var args []string
		if c.args != "" {
			args = strings.Split(c.args, "|")
		}
		var out, errs bytes.Buffer
		status := kettle("2 US gal", "8m").Main(args, strings.NewReader(""), &out, &errs)
		if out.String() != c.out || errs.String() != c.errs || (status == cli.OK) != (c.errs == "") {
			t.Errorf("%s: status %d, %q, %q\nwant %q, %q", c.args, status, out.String(), errs.String(), c.out, c.errs)
		}
	}
}

// A demo that is a call counts as one that stands on the command line, and one
// that cannot be read is told.
func TestInvent(t *testing.T) {
	for _, c := range []struct {
		call      []string
		out, errs string
	}{
		{[]string{"sap", "5 US gal", "rest", "1h"}, "5.0 US gal true 1h0m0s", ""},
		{[]string{"sap", "5 gal"}, "", "tub: -sap: \"5 gal\": ambiguous unit"},
		{[]string{"lid", "on"}, "", "tub: -lid: no such flag"},
	} {
		tub := cli.Program{Name: "tub", Setup: func(f *cli.Flags) func(*cli.Env) error {
			var (
				sap  units.Volume
				rest time.Duration
			)
			f.Quantity(&sap, "sap", "", "sap in the tub")
			f.Duration(&rest, "rest", "0s", "how long it rests")
			return func(e *cli.Env) error {
				if err := f.Invent(c.call...); err != nil {
					return err
				}
				_, err := fmt.Fprint(e.Out, sap.Text(units.USGallon, 1), " ", f.Given("sap"), " ", rest)
				return err
			}
		}}
		var out, errs bytes.Buffer
		status := tub.Main(nil, strings.NewReader(""), &out, &errs)
		if out.String() != c.out || !strings.HasPrefix(errs.String(), c.errs) || (status == cli.OK) != (c.errs == "") {
			t.Errorf("%v: status %d, %q, %q", c.call, status, out.String(), errs.String())
		}
	}
}

// A default that cannot be read is told at every run, not swallowed.
func TestBadDefault(t *testing.T) {
	for want, p := range map[string]cli.Program{
		"kettle: -sap: ":  kettle("2 gal", "8m"),
		"kettle: -rest: ": kettle("2 US gal", "8"),
	} {
		var out, errs bytes.Buffer
		if status := p.Main(nil, strings.NewReader(""), &out, &errs); status == cli.OK || !strings.HasPrefix(errs.String(), want) {
			t.Errorf("status %d, %q, want %q", status, errs.String(), want)
		}
	}
}

// Flags in no group stand under one heading, and only a program that reads
// files tells of them.
func TestHelpHeadings(t *testing.T) {
	help := func(p cli.Program) string {
		var out, errs bytes.Buffer
		if status := p.Main([]string{"-h"}, strings.NewReader(""), &out, &errs); status != cli.OK {
			t.Fatalf("status %d, %q", status, errs.String())
		}
		return out.String()
	}
	p := kettle("2 US gal", "8m")
	page := help(p)
	for _, want := range []string{"Flags\n-----\n", "Files\n-----\nOne file.\n- a point\n"} {
		if strings.Count(page, want) != 1 {
			t.Errorf("%q is not there once:\n%s", want, page)
		}
	}
	p.Reads = ""
	if page := help(p); strings.Contains(page, "Files") {
		t.Errorf("it reads nothing:\n%s", page)
	}
}

// A file that is not there is named once, and - is standard input.
func TestOpen(t *testing.T) {
	e := &cli.Env{In: strings.NewReader("from the pipe")}
	r, err := e.Open("log", "-")
	if err != nil {
		t.Fatal(err)
	}
	var text bytes.Buffer
	if _, err := text.ReadFrom(r); err != nil || text.String() != "from the pipe" {
		t.Errorf("read %q, %v", text.String(), err)
	}
	missing := t.TempDir() + "/day.csv"
	if _, err := e.Open("log", missing); err == nil || strings.Count(err.Error(), "day.csv") != 1 || !strings.HasPrefix(err.Error(), "-log: ") {
		t.Errorf("a missing file: %v", err)
	}
	folder := t.TempDir()
	if _, err := e.Open("log", folder); err == nil || err.Error() != "-log: "+folder+": is a directory" {
		t.Errorf("a folder: %v", err)
	}
}
