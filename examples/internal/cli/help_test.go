package cli_test

import (
	"bytes"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
)

// trough is a program of words alone.
func trough(calls ...string) cli.Program {
	return cli.Program{
		Name: "trough", Does: "Stands there.", Calls: calls,
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			var wood string
			f.String(&wood, "wood", "", "what it is cut from")
			return func(*cli.Env) error { return nil }
		},
	}
}

// A long call is broken where a shell reads on, and says the same.
func TestHelpBreaksCalls(t *testing.T) {
	const call = `go run ./examples/trough -wood "an ash that came down" -wood "a linden from the lane" -wood "what is left of the old barn" > trough.txt`
	var out, errs bytes.Buffer
	if status := trough("trough", call).Main([]string{"-h"}, strings.NewReader(""), &out, &errs); status != cli.OK {
		t.Fatal(errs.String())
	}
	for _, line := range strings.Split(out.String(), "\n") {
		if len(line) > 78 {
			t.Errorf("%d characters: %s", len(line), line)
		}
	}
	_, calls, _ := strings.Cut(out.String(), "Calls\n-----\n")
	calls, _, _ = strings.Cut(calls, "\n\n")
	joined := strings.Join(strings.Fields(strings.ReplaceAll(calls, "\\\n", " ")), " ")
	if joined != "trough "+call {
		t.Errorf("the calls read as\n%s", joined)
	}
	if n := strings.Count(calls, "\\\n"); n != 2 {
		t.Errorf("%d breaks in\n%s", n, calls)
	}
}

// A stray argument is refused with a flag of the program itself, if one takes a
// value that wants quotes.
func TestStrayArgument(t *testing.T) {
	var out, errs bytes.Buffer
	trough().Main([]string{"x"}, strings.NewReader(""), &out, &errs)
	if got := errs.String(); got != "trough: \"x\": there are flags only\n" {
		t.Errorf("%q", got)
	}
	errs.Reset()
	pail().Main([]string{"x"}, strings.NewReader(""), &out, &errs)
	if got := errs.String(); got != "pail: \"x\": there are flags only; put values with a space in quotes, as in -sap \"2 US gal\"\n" {
		t.Errorf("%q", got)
	}
}
