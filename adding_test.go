package sapreckoner_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// TestAdding applies the diff of docs/adding.md to a copy of the tree, and what it
// adds passes there.
func TestAdding(t *testing.T) {
	if testing.Short() {
		t.Skip("builds a package in a copy of the tree")
	}
	if _, err := exec.LookPath("git"); err != nil {
		t.Skip("no git to apply the diff with")
	}
	text, err := os.ReadFile("docs/adding.md")
	if err != nil {
		t.Fatal(err)
	}
	diff := ""
	for _, m := range docFence.FindAllStringSubmatch(string(text), -1) {
		if m[1] == "diff" {
			diff = m[2]
		}
	}
	dir := t.TempDir()
	for _, part := range []string{"go.mod", "go.sum", "units", "density", "sugar", "boil", "yield", "tapping", "internal/base", "internal/proving"} {
		if info, err := os.Stat(part); err != nil {
			t.Fatal(err)
		} else if info.IsDir() {
			err = os.CopyFS(filepath.Join(dir, part), os.DirFS(part))
			if err != nil {
				t.Fatal(err)
			}
			continue
		}
		file, err := os.ReadFile(part)
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, part), file, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	apply := exec.Command("git", "apply", "-")
	apply.Dir = dir
	// Not the repository around the temporary folder, if there is one.
	apply.Env = append(os.Environ(), "GIT_CEILING_DIRECTORIES="+filepath.Dir(dir))
	apply.Stdin = strings.NewReader(diff)
	if out, err := apply.CombinedOutput(); err != nil {
		t.Fatalf("the diff does not apply: %v: %s", err, out)
	}
	test := exec.Command("go", "test", "-v", "-run", "SugarPerVolume|Published/sugar-per-volume|Sweep", "./density")
	test.Dir = dir
	out, err := test.CombinedOutput()
	if err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	for _, want := range []string{"--- PASS: ExampleSugarPerVolume", "--- PASS: TestSugarPerVolumeLimits", "--- PASS: TestPublished/sugar-per-volume-worked/brix=66_t_C=20"} {
		if !strings.Contains(string(out), want) {
			t.Errorf("it does not say %q:\n%s", want, out)
		}
	}
}
