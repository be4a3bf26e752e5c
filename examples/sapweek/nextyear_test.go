package main

import (
	"io/fs"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
	"example.org/sapreckoner/examples/sugarhouse"
)

// The demo's springs are those before 2035, of which only the weather is known. Sugar is
// the middle of the 22 readings of 2034 in days.csv: in order the 11th is 1.9 Brix, in a
// cup at 46 F, and the 12th 2.0, at 44 F, each a hundredth or two below the truth on a
// stem for 38 F. The best day is March 4 of 2034 with 71 gal of 60 taps. Rate, sugar, best
// day and taps need no flag; taps not even a setting, and the best day no holes of 2034.
func TestNextYear(t *testing.T) {
	b := clitest.Build(t)
	files := map[string]string{}
	names, err := fs.Glob(sugarhouse.Files(), "*")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range names {
		if strings.HasSuffix(name, ".csv") || strings.HasSuffix(name, ".txt") {
			text, err := fs.ReadFile(sugarhouse.Files(), name)
			if err != nil {
				t.Fatal(err)
			}
			files[name] = string(text)
		}
	}
	for line := range strings.Lines(files["weather.csv"]) {
		if rest, ok := strings.CutPrefix(line, "2034-"); ok {
			files["weather.csv"] += "2035-" + rest
		}
	}
	without := func(name, part string) string {
		var left strings.Builder
		for line := range strings.Lines(files[name]) {
			if !strings.Contains(line, part) {
				left.WriteString(line)
			}
		}
		return left.String()
	}
	for _, tt := range []struct{ file, part, taps string }{
		{"", "", "Told: 60 taps"},
		{"holes.csv", ",2034,", "Told: 60 taps"},
		{"sugarhouse.txt", "taps: 60", "Learned: 60 taps from the holes of 2034"},
	} {
		own := map[string]string{}
		for name, text := range files {
			own[name] = text
		}
		if tt.file != "" {
			own[tt.file] = without(tt.file, tt.part)
		}
		status, out, errs := b.Run(t, "", "-dir", clitest.Folder(t, own), "-season", "2035", "-today", "2035-03-12")
		flat := strings.Join(strings.Fields(out), " ")
		for _, want := range []string{tt.taps, "boils off 9.2 US gal/h from 12 boils of 2034", "2.0 Brix from 22 readings of 2034", "a best day of 1.2 US gal a tap from 46 days"} {
			if status != 0 || !strings.Contains(flat, want) {
				t.Errorf("%s: no %q\n%s%s", tt.file, want, out, errs)
			}
		}
	}
}
