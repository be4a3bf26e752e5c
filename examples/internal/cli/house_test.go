package cli_test

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// arch is a program whose flags are those of a day at the pan. It prints what was
// asked of it, a name a line.
func arch(demo fs.FS, page func(*cli.Flags, *cli.Env) error) cli.Program {
	return cli.Program{
		Name: "boilday", Does: "Boils.", Demo: demo,
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			var (
				area   units.Area
				rate   units.VolumeRate
				flux   units.Flux
				height units.Length
				metric bool
				fuel   string
			)
			f.Quantity(&area, "pan-area", "12 ft2", "area")
			f.String(&fuel, "compartments", "", "areas of compartments")
			f.Quantity(&rate, "boil-rate", "", "rate")
			f.Quantity(&flux, "pan-rate", "1 US gal/ft2/h", "rate by area")
			f.Quantity(&height, "elevation", "0 ft", "elevation")
			f.String(&fuel, "fuel", "wood", "what burns")
			f.String(&fuel, "coals", "8m", "coals")
			f.String(&fuel, "out", "22:00", "out")
			f.Bool(&metric, "metric", "metric units first")
			return func(e *cli.Env) error { return page(f, e) }
		},
	}
}

// folder writes files into a folder of its own.
func folder(t *testing.T, files map[string]string) string {
	t.Helper()
	dir := t.TempDir()
	for name, text := range files {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

// answer runs a program and returns what it printed and what it refused.
func answer(p cli.Program, args ...string) (out, errs string) {
	var o, e bytes.Buffer
	p.Main(args, strings.NewReader(""), &o, &e)
	return o.String(), e.String()
}

// told prints where the named flags come from.
func told(names ...string) func(*cli.Flags, *cli.Env) error {
	return func(f *cli.Flags, e *cli.Env) error {
		for _, name := range names {
			s := f.Source(name)
			fmt.Fprintf(e.Out, "%s %s%s:%d %s\n", name, []string{"assumed", "invented", "learned", "folder", "told"}[s.Kind], s.Setting, s.Line, s.Text)
		}
		return nil
	}
}

// A flag beats the folder, also one that says the same otherwise; a line of -set
// beats the file; and a rate that was measured on one pan is not taken for another.
func TestWhatBeatsWhat(t *testing.T) {
	dir := folder(t, map[string]string{"sugarhouse.txt": "gallons: US\npan: 2 x 4 ft\nboils off: 8 gallons an hour\ncoals: 6 minutes\nfire out: 21:00\nelevation: 1450 ft\nunits: metric\n"})
	for _, c := range []struct{ args, want string }{
		{"", "pan-area folderpan:2 8 ft2|boil-rate folderboils off:3 8 US gal/h|pan-rate assumed:0|coals foldercoals:4 6m0s|out assumed:0|elevation folderelevation:6 1450 ft|metric folderunits:7 true"},
		{"-pan-rate|1.2 US gal/ft2/h", "boil-rate assumed|pan-rate told|pan-area folder"},
		{"-boil-rate|9 US gal/h", "boil-rate told:0 |pan-area folder"},
		{"-pan-area|6 ft2", "pan-area told|boil-rate assumed|coals folder"},
		{"-compartments|6 ft2, 2 ft2", "pan-area assumed|boil-rate assumed|compartments told|out folderfire out:5 21:00"},
		{"-set|pan: 2 x 3 ft", "pan-area toldpan:0 6 ft2|boil-rate assumed"},
		{"-set|pan: 2 x 3 ft|-set|boils off: 5 gal/h", "pan-area toldpan:0 6 ft2|boil-rate toldboils off:0 5 US gal/h"},
		{"-set|compartments: 2 x 3 ft, 1 x 2 ft", "pan-area assumed|compartments toldcompartments:0 6 ft2, 2 ft2|out folder"},
		{"-set|pan: 2 x 3 ft|-pan-area|5 ft2", "pan-area told:0 |boil-rate assumed"},
		{"-fuel|propane", "fuel told|coals assumed|boil-rate folder"},
		{"-metric=false", "metric told:0 "},
	} {
		var args []string
		if c.args != "" {
			args = strings.Split(c.args, "|")
		}
		out, errs := answer(arch(nil, told("pan-area", "compartments", "boil-rate", "pan-rate", "fuel", "coals", "out", "elevation", "metric")), append(args, "-dir", dir)...)
		if errs != "" {
			t.Errorf("%s: %s", c.args, errs)
		}
		for _, want := range strings.Split(c.want, "|") {
			if !strings.Contains("\n"+out, "\n"+want) {
				t.Errorf("%s: no %q in\n%s", c.args, want, out)
			}
		}
	}
}

// What the record taught fills what neither the command line nor the settings say.
func TestLearnedFills(t *testing.T) {
	const days = "date,sap_gal,boiled_gal,lit,out\n2034-03-01,20,10,17:00,18:00\n2034-03-02,30,20,17:00,19:00\n2034-03-04,40,33,16:00,19:00\n"
	taught := folder(t, map[string]string{"sugarhouse.txt": "gallons: US\npan: 2 x 4 ft\n", "days.csv": days})
	said := folder(t, map[string]string{"sugarhouse.txt": "gallons: US\nboils off: 8 gal/h\n", "days.csv": days})
	for _, c := range []struct {
		args []string
		want string
	}{
		{[]string{"-dir", taught}, "boil-rate learnedboils off:0 9.7 US gal/h\npan-area folderpan:2 8 ft2\n"},
		{[]string{"-dir", said}, "boil-rate folderboils off:2 8 US gal/h\npan-area assumed:0 \n"},
		{[]string{"-dir", taught, "-pan-rate", "1 US gal/ft2/h"}, "boil-rate assumed:0 \npan-area folderpan:2 8 ft2\n"},
		{[]string{"-dir", taught, "-set", "pan: 2 x 6 ft"}, "boil-rate assumed:0 \npan-area toldpan:0 12 ft2\n"},
	} {
		if out, errs := answer(arch(nil, told("boil-rate", "pan-area")), c.args...); out != c.want || errs != "" {
			t.Errorf("%q: %q, want %q; %s", c.args, out, c.want, errs)
		}
	}
	from := func(f *cli.Flags, e *cli.Env) error {
		fmt.Fprint(e.Out, f.Source("boil-rate").From)
		return nil
	}
	if out, errs := answer(arch(nil, from), "-dir", taught); out != "3 boils" {
		t.Errorf("%q, %s", out, errs)
	}
	refuse := func(*cli.Flags, *cli.Env) error { return cli.For("boil-rate", errors.New("too slow")) }
	if _, errs := answer(arch(nil, refuse), "-dir", taught); errs != "boilday: boils off, learned from 3 boils: too slow; overrule it with -boil-rate\n" {
		t.Error(errs)
	}
}

// What is wrong with a value that stands in the folder is told with file and line,
// whoever finds it; what stands on the command line with the flag.
func TestBlame(t *testing.T) {
	refuse := func(f *cli.Flags, _ *cli.Env) error {
		return errors.Join(
			cli.For("elevation", errors.New("no weather does that")),
			cli.For("pan-area", errors.New("too small")),
			cli.For("pan-rate", errors.New("too slow")),
			fmt.Errorf("at noon: %w", cli.For("coals", errors.New("too long"))))
	}
	dir := folder(t, map[string]string{"sugarhouse.txt": "# invented\nelevation: 1450 ft\n\ncoals: 6 min\n"})
	file := filepath.Join(dir, "sugarhouse.txt")
	_, errs := answer(arch(nil, refuse), "-dir", dir, "-set", "pan: 2 x 3 ft", "-pan-rate", "1 US gal/ft2/h")
	want := "boilday: " + file + ":2: elevation: no weather does that\n" +
		"boilday: -set: pan: too small\n" +
		"boilday: -pan-rate: too slow\n" +
		"boilday: at noon: " + file + ":4: coals: too long\n"
	if errs != want {
		t.Errorf("%s\nwant\n%s", errs, want)
	}
	if _, errs := answer(arch(nil, refuse), "-dir", dir, "-elevation", "900 ft"); !strings.Contains(errs, "boilday: -elevation: no weather") {
		t.Error(errs)
	}
}

// What no program can use is told before anything is reckoned, one line a mistake.
func TestFolderRefused(t *testing.T) {
	file := filepath.Join(folder(t, map[string]string{"sugarhouse.txt": "taps: 60"}), "sugarhouse.txt")
	bad := folder(t, map[string]string{"sugarhouse.txt": "taps: none\n\npan: 2 x\n"})
	for _, c := range []struct {
		args []string
		want string
	}{
		{[]string{"-dir", ""}, "boilday: -dir: name the folder of your sugarhouse\n"},
		{[]string{"-dir", file}, "boilday: -dir: " + file + ": is a file: name the folder that it lies in\n"},
		{[]string{"-dir", file + ".d"}, "boilday: -dir: " + file + ".d: no such file or directory\n"},
		{[]string{"-dir", t.TempDir()}, "no sugarhouse"},
		{[]string{"-dir", bad}, "sugarhouse.txt:3: pan: \"2 x\": write width"},
		{[]string{"-dir", bad, "-set", "taps: 60", "-set", "pan: 2 x 4"}, "boilday: -set: pan: "},
		{[]string{"-set", "pan 2 x 4 ft"}, "boilday: -set: \"pan 2 x 4 ft\" is no setting"},
		{[]string{"-season", "33", "-dir", filepath.Dir(file)}, "boilday: -season: 33: write the year with its four digits\n"},
		{[]string{"-season", "1899", "-dir", filepath.Dir(file)}, "boilday: -season: 1899: write the year with its four digits\n"},
		{[]string{"-season", "1900"}, "boilday: -season: there is no record to take it from: give -dir too\n"},
		{[]string{"-season", "2034"}, "boilday: -season: there is no record to take it from: give -dir too\n"},
	} {
		out, errs := answer(arch(nil, told("fuel")), c.args...)
		if out != "" || !strings.Contains(errs, c.want) || !strings.HasPrefix(errs, "boilday: ") {
			t.Errorf("%q: %q, %q, want %q", c.args, out, errs, c.want)
		}
	}
}

// The current folder is the sugarhouse if it has settings, and not else.
func TestCurrentFolder(t *testing.T) {
	t.Chdir(folder(t, map[string]string{"sugarhouse.txt": "pan: 2 x 4"}))
	if _, errs := answer(arch(nil, told("pan-area"))); !strings.HasPrefix(errs, "boilday: sugarhouse.txt:1: pan: ") {
		t.Error(errs)
	}
	t.Chdir(folder(t, map[string]string{"days.csv": "date\n"}))
	if out, errs := answer(arch(nil, told("pan-area"))); out != "pan-area assumed:0 \n" || errs != "" {
		t.Error(out, errs)
	}
}

// A file of the folder comes through the flag that names it, and nothing writes
// over what the run read there.
func TestFileOfFolder(t *testing.T) {
	dir := folder(t, map[string]string{"sugarhouse.txt": "taps: 3", "stops.csv": "day,stop_f\n2034-03-10,217.4\n", "other.csv": "mine\n"})
	watch := cli.Program{Name: "potwatch", Setup: func(f *cli.Flags) func(*cli.Env) error {
		var stops string
		f.String(&stops, "stops", "", "stops")
		return func(e *cli.Env) error {
			file, err := e.Open("stops", stops)
			if err != nil {
				return err
			}
			defer file.Close()
			text, err := io.ReadAll(file)
			if string(text) != "day,stop_f\n2034-03-10,217.4\n" || f.Source("stops").File != "stops.csv" {
				return fmt.Errorf("%q of %+v, %w", text, f.Source("stops"), err)
			}
			return e.Save("svg", filepath.Join(dir, "sugarhouse.txt"), func(io.ReaderAt, int64) bool { return true }, func(w io.Writer) error {
				_, err := io.WriteString(w, "<svg/>")
				return err
			})
		}
	}}
	out, errs := answer(watch, "-dir", dir)
	if out != "" || !strings.HasPrefix(errs, "potwatch: -svg: "+filepath.Join(dir, "sugarhouse.txt")+": ") {
		t.Errorf("%q, %q", out, errs)
	}
	if text, err := os.ReadFile(filepath.Join(dir, "sugarhouse.txt")); err != nil || string(text) != "taps: 3" {
		t.Errorf("%q, %v", text, err)
	}
}

// A demo is one as long as neither flags nor a folder say otherwise, and what it is
// made of is told.
func TestInventedHouse(t *testing.T) {
	demo := fstest.MapFS{"sugarhouse.txt": {Data: []byte("gallons: US\npan: 2 x 4 ft\nboils off: 8 gal/h\n")}}
	page := func(f *cli.Flags, e *cli.Env) error {
		_, err := fmt.Fprintf(e.Out, "other %v; kept %s; dir %q; given %v", f.Other(), f.Kept("pan-area", "boil-rate", "pan-rate"), f.Dir(), f.Given("pan-area"))
		return err
	}
	for _, c := range []struct{ args, want string }{
		{"", `other false; kept -pan-area "8 ft2", -boil-rate "8 US gal/h", -pan-rate "1 US gal/ft2/h"; dir ""; given true`},
		{"-pan-rate|2 US gal/ft2/h", `other true; kept -pan-area "8 ft2"; dir ""; given true`},
		{"-pan-area|5 ft2", `other true; kept -pan-rate "1 US gal/ft2/h"; dir ""; given true`},
	} {
		var args []string
		if c.args != "" {
			args = strings.Split(c.args, "|")
		}
		if out, errs := answer(arch(demo, page), args...); out != c.want || errs != "" {
			t.Errorf("%s: %q, want %q; %s", c.args, out, c.want, errs)
		}
	}
	dir := folder(t, map[string]string{"sugarhouse.txt": "taps: 3"})
	if out, errs := answer(arch(demo, page), "-dir", dir); !strings.HasPrefix(out, "other true; kept -pan-area \"12 ft2\"") {
		t.Errorf("%q, %s", out, errs)
	}
}
