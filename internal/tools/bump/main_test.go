package main

import (
	"bytes"
	"go/token"
	"io"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/internal/tools/module/moduletest"
)

func TestBump(t *testing.T) {
	const none = "no other number"
	for _, c := range []struct {
		text            string
		tok             token.Token
		last, sign, ten string
	}{
		{"0", token.INT, "1", none, none},
		{"7", token.INT, "8", "(-7)", "70"},
		{"9", token.INT, "8", "(-9)", "90"},
		{"1_000", token.INT, "1_001", "(-1_000)", "1_0000"},
		{"0x1f", token.INT, "0x1e", "(-0x1f)", "0x1f0"},
		{"0b11", token.INT, "0b10", "(-0b11)", "0b110"},
		{"0o17", token.INT, "0o16", "(-0o17)", "0o170"},
		{"0.5", token.FLOAT, "0.6", "(-0.5)", "0.5e1"},
		{"0.0", token.FLOAT, "0.1", none, none},
		{"1.60", token.FLOAT, "1.61", "(-1.60)", "1.60e1"},
		{"1e-9", token.FLOAT, "2e-9", "(-1e-9)", "1e-8"},
		{"7.9905127e-3", token.FLOAT, "7.9905128e-3", "(-7.9905127e-3)", "7.9905127e-2"},
		{"0.12020824702470e5", token.FLOAT, "0.12020824702471e5", "(-0.12020824702470e5)", "0.12020824702470e6"},
		{"1e9", token.FLOAT, "2e9", "(-1e9)", "1e10"},
		{"0x1p-50", token.FLOAT, "0x2p-50", "(-0x1p-50)", "0x1p-49"},
	} {
		for k, want := range []string{c.last, c.sign, c.ten} {
			got, ok := bump(c.text, c.tok, kind(k))
			if !ok {
				got = none
			}
			if got != want {
				t.Errorf("bump(%s, %s) = %s, want %s", c.text, kindNames[k], got, want)
			}
		}
	}
}

func TestSurvivors(t *testing.T) {
	dir, want := moduletest.Unpack(t, "testdata/shed.txtar")
	var out bytes.Buffer
	survived, err := run([]string{"-dir", dir, "-known", "known.txt"}, &out, io.Discard)
	if err != nil {
		t.Fatal(err)
	}
	list, rest, _ := strings.Cut(out.String(), "\n\n")
	if !survived || list+"\n" != want {
		t.Errorf("bump prints\n%s\nwant\n%s", list, want)
	}
	for _, line := range []string{", 11 survived, 3 known, 3 do not compile\n", "fits no literal: pans/pans.go: for range 13 {: 13 -> *\n"} {
		if !strings.Contains(rest, line) {
			t.Errorf("after the list bump prints\n%s\nwithout %q", rest, line)
		}
	}
}

// What the tests of the mill hold and what they do not was found by reading them.
func TestSteps(t *testing.T) {
	dir, want := moduletest.Unpack(t, "testdata/mill.txtar")
	var out bytes.Buffer
	survived, err := run([]string{"-dir", dir, "-known", "known.txt", "-bumps", "delete,swallow,swap,early"}, &out, io.Discard)
	if err != nil {
		t.Fatal(err)
	}
	list, rest, _ := strings.Cut(out.String(), "\n\n")
	if !survived || list+"\n" != want {
		t.Errorf("bump prints\n%s\nwant\n%s", list, want)
	}
	if !strings.Contains(rest, ", 7 survived, 1 known, 0 do not compile\n") {
		t.Errorf("after the list bump prints\n%s", rest)
	}
}

// The same mill by its operators: nobody asks at a boundary, nor for the way out
// behind b, and a part and a multiple of one are the same.
func TestOperators(t *testing.T) {
	dir, _ := moduletest.Unpack(t, "testdata/mill.txtar")
	var out bytes.Buffer
	_, err := run([]string{"-dir", dir, "-known", "", "-bumps", "bound,turn,arith,logic"}, &out, io.Discard)
	const want = `mill.go:10:5 x < 0 -> bound
mill.go:23:36 a > 0 -> turn
mill.go:23:36 a > 0 -> bound
mill.go:28:2 left *= 1 -> arith
mill.go:30:7 left > 10 -> bound

11 changes: 6 noticed, 5 survived, 0 known, 0 do not compile
`
	if err != nil || out.String() != want {
		t.Errorf("bump prints\n%s\nwant\n%s%v", out.String(), want, err)
	}
}

// Without the package above, nothing holds what only its tests ask for.
func TestOptions(t *testing.T) {
	dir, _ := moduletest.Unpack(t, "testdata/shed.txtar")
	for _, c := range []struct {
		args []string
		want string
	}{
		{[]string{"-importers=false", "-bumps", "last", "./pans"}, "pans/pans.go:36:39 2 -> 3\n"},
		{[]string{"-file", "^rig/"}, "rig/rig.go:5:38 200 -> 201\n\n3 changes: 0 noticed, 1 survived, 0 known, 2 do not compile\n"},
		{[]string{"-importers=false", "-bumps", "last", "-file", "^pans/pans.go:36:"}, "pans/pans.go:36:39 2 -> 3\n\n"},
		{[]string{"-sample", "1", "-bumps", "last"}, "1 changes: "},
	} {
		var out bytes.Buffer
		args := append([]string{"-dir", dir, "-known", ""}, c.args...)
		if _, err := run(args, &out, io.Discard); err != nil || !strings.Contains(out.String(), c.want) {
			t.Errorf("bump %v: %v, prints\n%s\nwithout %q", c.args, err, out.String(), c.want)
		}
	}
}

func TestRefused(t *testing.T) {
	dir, _ := moduletest.Unpack(t, "testdata/shed.txtar")
	write := func(name, text string) {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	write("short.txt", "pans/pans.go\n7 -> 8\n")
	write("nth.txt", "pans/pans.go\nfor range 12 {\n12#0 -> 13\nNot from 1.\n")
	write("arrow.txt", "pans/pans.go\nfor range 12 {\n12\nNo arrow.\n")
	for _, args := range [][]string{
		{"-unknown"},
		{"-jobs", "0"},
		{"-bumps", "first"},
		{"-file", "("},
		{"-known", "missing.txt"},
		{"-known", "short.txt"},
		{"-known", "arrow.txt"},
		{"-known", "nth.txt"},
		{"-known", "", "./nowhere"},
		{"-known", "", "-file", "^nowhere"},
	} {
		if _, err := run(append([]string{"-dir", dir}, args...), io.Discard, io.Discard); err == nil {
			t.Errorf("bump %v: no error", args)
		}
	}
	// A package whose tests fail as it is says so.
	write("pans/fail_test.go", "package pans\n\nimport \"testing\"\n\nfunc TestFails(t *testing.T) { t.Fail() }\n")
	if _, err := run([]string{"-dir", dir, "-known", "", "./pans"}, io.Discard, io.Discard); err == nil || !strings.Contains(err.Error(), "before any change") {
		t.Errorf("failing tests: %v", err)
	}
}

// Of literals that read alike in a line, one can be named.
func TestNth(t *testing.T) {
	sites := []*site{
		{file: "a.go", line: 3, source: "x, y = 0, 0", text: "0", tok: token.INT},
		{file: "a.go", line: 3, source: "x, y = 0, 0", text: "0", tok: token.INT},
		{file: "b.go", line: 3, source: "x, y = 0, 0", text: "0", tok: token.INT},
	}
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "known.txt"), []byte("a.go\nx, y = 0, 0\n0#2 -> 1\nThe second.\n\na.go\nx, y = 0, 0\n0#3 -> 1\nThere is none.\n"), 0o666); err != nil {
		t.Fatal(err)
	}
	list, err := readKnown(options{dir: dir, known: "known.txt"})
	if err != nil {
		t.Fatal(err)
	}
	stale := list.apply(sites)
	if sites[0].known[last] || !sites[1].known[last] || sites[2].known[last] || len(stale) != 1 || !strings.HasSuffix(stale[0], "0#3 -> 1") {
		t.Errorf("%v, %v, %v; stale %q", sites[0].known, sites[1].known, sites[2].known, stale)
	}
}

func TestDraw(t *testing.T) {
	sites := make([]*site, 100)
	for i := range sites {
		sites[i] = &site{offset: i}
	}
	a, b, c := draw(sites, 10, 1), draw(sites, 10, 1), draw(sites, 10, 2)
	same := true
	for i := range 10 {
		if a[i] != b[i] {
			t.Error("one seed, two draws")
		}
		same = same && a[i] == c[i]
		if i > 0 && a[i].offset <= a[i-1].offset {
			t.Error("not in order")
		}
	}
	if same || len(a) != 10 || len(draw(sites, math.MaxInt, 1)) != 100 {
		t.Error("not a draw of 10")
	}
}
