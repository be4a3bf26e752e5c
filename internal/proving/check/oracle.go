package check

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"os/exec"
	"strconv"
	"strings"
	"testing"
)

// The oracles are named by path: another python earlier on the PATH would not
// see the system's modules.
const (
	GNUUnits = "/usr/bin/units"
	Python   = "/usr/bin/python3"
)

// oraclesVariable is the environment variable that makes a missing oracle a
// failure. The gate sets it to "required"; anyone else runs the tests without
// installing anything.
const oraclesVariable = "SAPRECKONER_ORACLES"

// Oracle runs another program, an independent second opinion, and returns the
// lines that it prints. Input goes to its standard input, so that one process
// answers many questions.
//
// A test whose oracle is not installed is skipped and says so, or fails if the
// environment variable SAPRECKONER_ORACLES is "required". A program that is
// there and fails is always a failure.
func Oracle(t testing.TB, input, program string, args ...string) []string {
	t.Helper()
	cmd := exec.Command(program, args...)
	cmd.Stdin = strings.NewReader(input)
	var out, complaint bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &complaint
	err := cmd.Run()
	switch {
	case err == nil:
		return strings.Split(strings.TrimRight(out.String(), "\n"), "\n")
	case missing(err, complaint.String()):
		if os.Getenv(oraclesVariable) == "required" {
			t.Fatalf("oracle %s is required and not installed: %v %s", program, err, complaint.String())
		}
		t.Skipf("oracle %s is not installed: %v", program, err)
	default:
		t.Fatalf("oracle %s: %v\n%s", program, err, complaint.String())
	}
	return nil
}

// Numbers asks an oracle that answers with one number a line, and fails the test
// unless it gives as many as are wanted.
func Numbers(t testing.TB, want int, input, program string, args ...string) []float64 {
	t.Helper()
	lines := Oracle(t, input, program, args...)
	if len(lines) != want {
		t.Fatalf("%s answers %d lines, want %d", program, len(lines), want)
	}
	out := make([]float64, want)
	for i, line := range lines {
		x, err := strconv.ParseFloat(strings.TrimSpace(line), 64)
		if err != nil {
			t.Fatalf("%s, line %d: %v", program, i+1, err)
		}
		out[i] = x
	}
	return out
}

// Compared logs how many figures a test held against which oracle, in the words
// by which the gate adds them up.
func Compared(t testing.TB, n int, oracle string) {
	t.Helper()
	t.Logf("%d comparisons with %s", n, oracle)
}

// missing tells an oracle that is not there, the program or a module that it
// loads, from one that fails.
func missing(err error, complaint string) bool {
	return errors.Is(err, exec.ErrNotFound) || errors.Is(err, fs.ErrNotExist) ||
		strings.Contains(complaint, "ModuleNotFoundError")
}
