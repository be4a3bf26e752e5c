package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// house makes a folder of one's own.
func house(t *testing.T, files map[string]string) string {
	t.Helper()
	dir := t.TempDir()
	for name, text := range files {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

// What the settings say of the instruments is counted: a thermometer that shows 0.4 F
// too much stops so much higher, and a hydrometer that reads 0.3 Brix too little so
// much lower, and what it reads is so much more; of a cup of 204 F it shows 204.4. A thermometer that told where water
// boils is off there, too.
func TestInstrumentsThatAreOff(t *testing.T) {
	b := clitest.Build(t)
	const place = "gallons: US\nelevation: 1150 ft\n"
	plain := house(t, map[string]string{"sugarhouse.txt": place})
	off := house(t, map[string]string{"sugarhouse.txt": place + "thermometer off: 0.4 F deg high\nhydrometer off: 0.3 Brix low\nscale: Baume\nfire: under a roof\n"})
	right, wrong := run(t, b, "-dir", plain), run(t, b, "-dir", off)
	near(t, "stop", wrong.Stop.Syrup-right.Stop.Syrup, 0.4, 1e-6)
	near(t, "hydrometer", wrong.Stop.Reads-right.Stop.Reads, -0.3, 1e-6)
	strength := func(dir, reading, cup string) float64 {
		return run(t, b, "-dir", dir, "-reading", reading, "-cup", cup).Now.Instruments[0].Strength
	}
	near(t, "strength", strength(off, "58.7 Brix", "204.4 F"), strength(plain, "59 Brix", "204 F"), 1e-6)
	shown := func(dir, shows string) float64 {
		return run(t, b, "-dir", dir, "-shows", shows).Now.Instruments[0].Strength
	}
	near(t, "shown", shown(off, "216.4 F"), shown(plain, "216 F"), 1e-6)
	near(t, "in boiling water", run(t, b, "-dir", off, "-water-boils", "209.9 F").Stop.Syrup, run(t, b, "-dir", plain, "-water-boils", "209.9 F").Stop.Syrup, 1e-6)

	page, read := b.Brief(t, "", "-dir", off, "31.5", "at", "204", "F")
	if !strings.HasSuffix(read.Answers[0].Text, " Be") || !strings.HasPrefix(read.Cautions[0], "Carbon monoxide") {
		t.Errorf("by the settings:\n%s", page)
	}
}

// Stops, rate and place of the invented sugarhouse are nobody's own: beside a reading
// of one's own they are not counted, and beside a folder neither.
func TestNothingInventedIsCounted(t *testing.T) {
	b := clitest.Build(t)
	for _, args := range [][]string{{"59", "at", "204", "F"}, {"-water-boils", "209 F"}, {"-dir", house(t, map[string]string{"sugarhouse.txt": "gallons: US\n"})}} {
		page, read := b.Brief(t, "", args...)
		if strings.Contains(page, "invented") || len(read.Known["learned"].([]any)) > 0 {
			t.Errorf("%q:\n%s", args, page)
		}
	}
}

// A mistake in the past stops does not keep the page from the pot: it is told.
func TestStopsLeftAside(t *testing.T) {
	b := clitest.Build(t)
	dir := house(t, map[string]string{"sugarhouse.txt": "gallons: US\n", "stops.csv": "day,water_boils_f,stop_f,cup_brix\n2034-03-01,209.4,201,66.7\n"})
	args := []string{"-dir", dir, "59 at 204 F, water 209.6 F"}
	page, _ := b.Brief(t, "", args...)
	_, full, _ := b.Run(t, "", append([]string{"-full"}, args...)...)
	if !strings.Contains(page, "stops.csv is left aside for a mistake.") || !strings.Contains(full, "stops.csv:2: column stop_f: ") {
		t.Errorf("%s\n%s", page, full)
	}
	if status, _, errs := b.Run(t, "", "-water-boils", "209.6 F", "-stops", filepath.Join(dir, "stops.csv")); status != 2 || !strings.Contains(errs, ":2: column stop_f: ") {
		t.Errorf("%d %s", status, errs)
	}
}

// A stop is shown, and added only where it is asked for, once it is one: here 59.5 in a
// cup at 204 F, 66.97 Brix by the page.
func TestStopIsAdded(t *testing.T) {
	b := clitest.Build(t)
	dir := house(t, map[string]string{"sugarhouse.txt": "gallons: US\nscale: Brix\n", "stops.csv": "day,water_boils_f,stop_f,cup_brix\n2034-03-01,209.4,217.1,66.7\n"})
	stops := func() string {
		text, err := os.ReadFile(filepath.Join(dir, "stops.csv"))
		if err != nil {
			t.Fatal(err)
		}
		return string(text)
	}
	before := stops()
	stop := []string{"-dir", dir, "-day", "2034-03-11", "-water-boils", "209.9 F", "59.5", "at", "204", "F", "217.6", "F"}
	if page, _ := b.Brief(t, "", stop...); !strings.Contains(strings.Join(strings.Fields(page), " "), "-write adds 1 line to stops.csv") || stops() != before {
		t.Errorf("shown:\n%s\n%s", page, stops())
	}
	status, out, errs := b.Run(t, "", append([]string{"-write"}, stop...)...)
	if want := before + "2034-03-11,209.9,217.6,67\n"; status != 0 || stops() != want || !strings.Contains(out, "Added 1 line to") {
		t.Errorf("%d %s%s\n%s", status, out, errs, stops())
	}
	for _, c := range []struct{ args, want string }{
		{"58 at 204 F 217.0 F|-water-boils|209.9 F", "there is nothing to add: a stop is syrup by the hydrometer"}, // not yet syrup
		// Under boiling water, which makes the file one that is left aside, and 2 F over it: no syrup boils there.
		{"59.5 at 204 F 205 F|-water-boils|209.9 F", "there is nothing to add"},
		{"59.5 at 204 F 212 F|-water-boils|209.9 F", "there is nothing to add"},
		{"59.5 at 204 F|-water-boils|209.9 F", "there is nothing to add"},       // no thermometer
		{"59.5 at 204 F 217.6 F|-elevation|1150 ft", "there is nothing to add"}, // nobody measured the air
		{"59.5 at 204 F 217.6 F|-water-boils|209.9 F|-day|soon", "-day: write a date as 2034-03-11"},
	} {
		if status, _, errs := b.Run(t, "", append([]string{"-dir", dir, "-write"}, strings.Split(c.args, "|")...)...); status != 2 || !strings.Contains(errs, c.want) {
			t.Errorf("%s: %d %s", c.args, status, errs)
		}
	}
}
