// Package clitest tests the example programs as a person runs them: built, with
// arguments, looking at what they print and how they end.
package clitest

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// Update says that golden files are to be written anew.
var Update = flag.Bool("update", false, "write the golden files anew")

// A Binary is a program that can be started.
type Binary struct {
	path string
	self bool // it is the test binary
}

// asProgram is set where a test binary is to be the program that it tests.
const asProgram = "SAPRECKONER_AS_PROGRAM"

// emulator names what starts a binary of another machine, where the tests themselves
// run in it.
const emulator = "SAPRECKONER_EMULATOR"

// Main runs the tests of a program, given its main. The test binary is that program,
// too, in a process of its own: nothing is built a second time, and under the race
// detector or for another machine the program is what the tests are.
func Main(m *testing.M, program func()) {
	if os.Getenv(asProgram) == "" {
		os.Exit(m.Run())
	}
	program()
	os.Exit(0)
}

// Build is the program whose tests run through [Main], as go test built it.
func Build(t testing.TB) Binary {
	t.Helper()
	path, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	return Binary{path, true}
}

// Programs builds the programs of folders, all at once.
func Programs(t *testing.T, folders ...string) (all []Binary) {
	t.Helper()
	dir, end := t.TempDir(), ""
	if runtime.GOOS == "windows" {
		end = ".exe"
	}
	for _, folder := range folders {
		path, err := filepath.Abs(folder)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, Binary{path: filepath.Join(dir, filepath.Base(path)+end)})
	}
	if out, err := exec.Command("go", append([]string{"build", "-o", dir + string(filepath.Separator)}, folders...)...).CombinedOutput(); err != nil {
		t.Fatalf("go build: %v\n%s", err, out)
	}
	watch(t, folders)
	return all
}

// watch looks at every source of the programs. go test repeats an earlier result
// while the test program and the files it looked at are the same, and of a
// program that is built beside it, nothing need be in it.
func watch(t *testing.T, folders []string) {
	t.Helper()
	const sources = `{{if not .Standard}}{{$dir := .Dir}}{{range .GoFiles}}{{$dir}}/{{.}}{{"\n"}}{{end}}{{range .EmbedFiles}}{{$dir}}/{{.}}{{"\n"}}{{end}}{{end}}`
	out, err := exec.Command("go", append([]string{"list", "-deps", "-f", sources}, folders...)...).Output()
	if err != nil {
		t.Fatalf("go list: %v", err)
	}
	for name := range strings.Lines(string(out)) {
		if _, err := os.Stat(strings.TrimSuffix(name, "\n")); err != nil {
			t.Fatal(err)
		}
	}
}

// Command is the program in a process to come.
func (b Binary) Command(args ...string) *exec.Cmd {
	cmd := exec.Command(b.path, args...)
	if b.self {
		if by := os.Getenv(emulator); by != "" {
			cmd = exec.Command(by, append([]string{b.path}, args...)...)
		}
		// The race detector would wait a second at the end of each for goroutines to race.
		cmd.Env = append(os.Environ(), "GORACE=atexit_sleep_ms=0 "+os.Getenv("GORACE"), asProgram+"=1")
	}
	return cmd
}

// Run runs the program and returns its exit status and output.
func (b Binary) Run(t *testing.T, stdin string, args ...string) (status int, out, errs string) {
	t.Helper()
	var o, e bytes.Buffer
	cmd := b.Command(args...)
	cmd.Stdin, cmd.Stdout, cmd.Stderr = strings.NewReader(stdin), &o, &e
	err := cmd.Run()
	var exit *exec.ExitError
	if err != nil && !errors.As(err, &exit) {
		t.Fatal(err)
	}
	return cmd.ProcessState.ExitCode(), o.String(), e.String()
}

// Golden compares what the program prints with a file in testdata.
func (b Binary) Golden(t *testing.T, file string, args ...string) {
	t.Helper()
	status, out, errs := b.Run(t, "", args...)
	if status != 0 || errs != "" {
		t.Fatalf("%v: status %d, %s", args, status, errs)
	}
	if err := Compare(file, out); err != nil {
		t.Errorf("%v: %v", args, err)
	}
}

// Compare compares text with a file in testdata.
func Compare(file, got string) error {
	path := filepath.Join("testdata", file)
	if *Update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			return err
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		return err
	}
	if diff := cmp.Diff(string(want), got); diff != "" {
		return fmt.Errorf("differs from %s (-update writes it anew), -want +got:\n%s", path, diff)
	}
	return nil
}

// Bad is one case of bad input.
type Bad struct {
	Args  []string
	Stdin string
	Want  string // what the one line on standard error must hold
}

// Refuses runs each case and wants exit status 2, nothing on standard output
// and one line on standard error that begins with the program's name.
func (b Binary) Refuses(t *testing.T, program string, cases []Bad) {
	t.Helper()
	for _, c := range cases {
		t.Run(strings.Join(c.Args, " "), func(t *testing.T) {
			status, out, errs := b.Run(t, c.Stdin, c.Args...)
			if status != 2 || out != "" {
				t.Errorf("status %d, %d bytes on standard output", status, len(out))
			}
			if !strings.HasPrefix(errs, program+": ") || strings.Count(errs, "\n") != 1 || !strings.HasSuffix(errs, "\n") {
				t.Errorf("not one line of %s: %q", program, errs)
			}
			if !strings.Contains(errs, c.Want) {
				t.Errorf("%q does not say %q", errs, c.Want)
			}
		})
	}
}
