package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// The holes of a plan come to the end of the record as the record is written, once,
// and the old record is kept.
func added(t *testing.T, b clitest.Binary) {
	const (
		settings = "gallons: US\n"
		trees    = "tree,girth_in,species,vigor,growth_in\na,60,sugar maple,healthy,0.05\nb,40,sugar maple,healthy,0.05\n"
	)
	for name, c := range map[string]struct {
		holes string
		// The old holes of a stand at 90 and 270 deg, the new ones 3 in further round (the
		// step): 60 in x 90/360 + 3 = 18, and 48 of the other; 18 degrees more.
		want []string
	}{
		"tape":      {"tree,year,along_in,height_in\na,2033,15,40\na,2033,45,46\n", []string{"a,2034,18,", "a,2034,48,"}},
		"bearing":   {"tree,year,bearing_deg,height_in,note\na,2033,90,40,\na,2033,270,46,\n", []string{"a,2034,108,", "a,2034,288,"}},
		"semicolon": {"tree;year;along_cm;height_cm\na;2033;38,1;101,6\na;2033;114,3;116,8\n", []string{"a;2034;45,72;", "a;2034;121,92;"}}, // 18 and 48 in
	} {
		t.Run(name, func(t *testing.T) {
			dir := t.TempDir()
			for file, text := range map[string]string{"sugarhouse.txt": settings, "trees.csv": trees, "holes.csv": c.holes} {
				if err := os.WriteFile(filepath.Join(dir, file), []byte(text), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			record := func() string {
				text, err := os.ReadFile(filepath.Join(dir, "holes.csv"))
				if err != nil {
					t.Fatal(err)
				}
				return string(text)
			}
			run := func(want string, status int, args ...string) {
				t.Helper()
				got, out, errs := b.Run(t, "", append([]string{"-dir", dir}, args...)...)
				if got != status || !strings.Contains(strings.Join(strings.Fields(out+errs), " "), want) {
					t.Errorf("%v: status %d, no %q in\n%s%s", args, got, want, out, errs)
				}
			}
			run("-write adds 2 lines to holes.csv", 0)
			run("-write: the plan is for 2034, and this is", 2, "-write")
			if record() != c.holes {
				t.Error("it was written without being asked")
			}
			run("Added 2 lines to holes.csv.", 0, "-write", "-season", "2034")
			after := record()
			if !strings.HasPrefix(after, c.holes) || strings.Count(after, "\n") != 5 {
				t.Errorf("not two lines more:\n%s", after)
			}
			for _, want := range c.want {
				if !strings.Contains(after, want) {
					t.Errorf("no %s in\n%s", want, after)
				}
			}
			if old, err := os.ReadFile(filepath.Join(dir, "holes.csv.before")); err != nil || string(old) != c.holes {
				t.Errorf("the record as it was is not kept: %v", err)
			}
			run("nobody knows yet where you choose the 1 place by the scars: once drilled, write down in", 2, "-write", "-season", "2034") // of b
			run("Drill 1 hole in 1 of 2 trunks in 2034.", 0, "-season", "2034")                                                            // b, which has no record
			run("In the record 2", 0, "-season", "2034")
			if record() != after {
				t.Error("holes were added twice")
			}
			run("leave out -tree-file and -hole-file", 2, "-write", "-tree-file", filepath.Join(dir, "trees.csv"))
		})
	}
	// Where no hole was written down nobody but the one who drills knows the place.
	bare := t.TempDir()
	for file, text := range map[string]string{"sugarhouse.txt": settings, "trees.csv": trees, "holes.csv": "tree,year,along_in,height_in\n"} {
		if err := os.WriteFile(filepath.Join(bare, file), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if status, _, errs := b.Run(t, "", "-dir", bare, "-write"); status != 2 || !strings.Contains(errs, "once drilled, write down in "+filepath.Join(bare, "holes.csv")) {
		t.Errorf("status %d, %s", status, errs)
	}
	status, _, errs := b.Run(t, "", "-write")
	if status != 2 || !strings.Contains(errs, "the invented one takes no lines") {
		t.Errorf("status %d, %s", status, errs)
	}
}
