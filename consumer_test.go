package sapreckoner_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// readmeProgram finds the program in README.md and what it prints.
var readmeProgram = regexp.MustCompile("(?s)```go\n(package main.*?)```\n\n```\n(.*?)```")

// A user depends on the module by replace or by vendoring. Both ways, the
// program that README.md shows compiles and prints what README.md says.
func TestConsumer(t *testing.T) {
	if testing.Short() {
		t.Skip("builds a program twice")
	}
	readme, err := os.ReadFile("README.md")
	if err != nil {
		t.Fatal(err)
	}
	m := readmeProgram.FindSubmatch(readme)
	if m == nil {
		t.Fatal("README.md shows no program followed by its output")
	}
	dir := consumer(t, string(m[1]))
	if got := goRun(t, dir, "run", "."); got != string(m[2]) {
		t.Errorf("by replace it prints\n%s\nREADME.md says\n%s", got, m[2])
	}
	goRun(t, dir, "mod", "vendor")
	if got := goRun(t, dir, "run", "-mod=vendor", "."); got != string(m[2]) {
		t.Errorf("vendored it prints\n%s\nREADME.md says\n%s", got, m[2])
	}
}

// A program that imports density vendors this module and nothing else.
func TestConsumerOfDensityVendorsNothingElse(t *testing.T) {
	if testing.Short() {
		t.Skip("builds a program")
	}
	dir := consumer(t, `package main

import (
	"fmt"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

func main() { fmt.Println(density.Water(units.Celsius(20))) }
`)
	vendorsThisModuleAlone(t, dir)
	if got := goRun(t, dir, "run", "-mod=vendor", "."); !strings.HasPrefix(got, "998.203") {
		t.Errorf("water at 20 C: %s", got)
	}
}

// The consumers in examples/consumers are a module of their own: they see what a
// stranger sees. They pass their tests by replace and vendored, bring no other
// module, and the column script does its work from the vendored copy.
func TestConsumersOfTheTree(t *testing.T) {
	if testing.Short() {
		t.Skip("builds three programs twice")
	}
	dir := t.TempDir()
	if err := os.CopyFS(dir, os.DirFS("examples/consumers")); err != nil {
		t.Fatal(err)
	}
	root, err := filepath.Abs(".")
	if err != nil {
		t.Fatal(err)
	}
	goRun(t, dir, "mod", "edit", "-replace=example.org/sapreckoner="+root)
	goRun(t, dir, "test", "./...")
	vendorsThisModuleAlone(t, dir)
	goRun(t, dir, "test", "-mod=vendor", "./...")

	script := filepath.Join(dir, "column.exe")
	goRun(t, dir, "build", "-mod=vendor", "-o", script, "./column")
	readings, err := os.Open("examples/consumers/column/testdata/readings.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer readings.Close()
	cmd := exec.Command(script, "-scale", "60 F")
	cmd.Stdin = readings
	got, err := cmd.Output()
	if err != nil {
		t.Fatal(err)
	}
	want, err := os.ReadFile("examples/consumers/column/testdata/true.csv")
	if err != nil {
		t.Fatal(err)
	}
	if string(got) != string(want) {
		t.Errorf("the vendored script writes\n%s\nwant\n%s", got, want)
	}
}

// vendorsThisModuleAlone vendors what the module in dir imports.
func vendorsThisModuleAlone(t *testing.T, dir string) {
	t.Helper()
	goRun(t, dir, "mod", "vendor")
	list, err := os.ReadFile(filepath.Join(dir, "vendor", "modules.txt"))
	if err != nil {
		t.Fatal(err)
	}
	for _, line := range strings.Split(string(list), "\n") {
		if strings.HasPrefix(line, "# ") && !strings.HasPrefix(line, "# example.org/sapreckoner ") {
			t.Errorf("vendors %s", line)
		}
	}
	hosts, err := os.ReadDir(filepath.Join(dir, "vendor"))
	if err != nil {
		t.Fatal(err)
	}
	for _, h := range hosts {
		if h.IsDir() && h.Name() != "example.org" {
			t.Errorf("vendors code of %s", h.Name())
		}
	}
}

// consumer makes a module with the given program in a temporary folder.
func consumer(t *testing.T, program string) string {
	t.Helper()
	root, err := filepath.Abs(".")
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	sum, err := os.ReadFile("go.sum")
	if err != nil {
		t.Fatal(err)
	}
	for name, text := range map[string]string{
		"go.mod":  "module example.org/consumer\n\ngo 1.25\n",
		"go.sum":  string(sum), // the hashes are known: no checksum database is asked
		"main.go": program,
	} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	goRun(t, dir, "mod", "edit", "-require=example.org/sapreckoner@v0.0.0", "-replace=example.org/sapreckoner="+root)
	goRun(t, dir, "mod", "tidy")
	return dir
}

func goRun(t *testing.T, dir string, args ...string) string {
	t.Helper()
	cmd := exec.Command("go", args...)
	cmd.Dir = dir
	cmd.Env = append(os.Environ(), "GOFLAGS=", "GOWORK=off")
	var errs strings.Builder
	cmd.Stderr = &errs
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("go %s: %v\n%s", strings.Join(args, " "), err, errs.String())
	}
	return string(out)
}
