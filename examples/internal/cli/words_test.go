package cli_test

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// ladle tells what it heard.
func ladle() cli.Program {
	return cli.Program{Name: "ladle", Does: "Dips.", Setup: func(f *cli.Flags) func(*cli.Env) error {
		var sap units.Volume
		full := false
		f.Quantity(&sap, "sap", "", "sap")
		f.Bool(&full, "full", "more")
		var heard string
		f.Words("40 US gal 2.1 at 41 F", func(s *cli.Spoken) error {
			if s.Amount != "" {
				if err := s.Say("sap", s.Amount); err != nil {
					return err
				}
			}
			heard = fmt.Sprintf("%v %v %v", s.Reading.Value, s.Reading.Baume, s.Reading.IsRead)
			if s.HasAt {
				heard += " at " + s.At.Text(units.ScaleFahrenheit, 1)
			}
			if s.HasWater {
				heard += " water " + s.Water.Text(units.ScaleFahrenheit, 1)
			}
			if s.HasShow {
				heard += " shows " + s.Shows.Text(units.ScaleFahrenheit, 1)
			}
			return nil
		})
		return func(e *cli.Env) error {
			fmt.Fprintf(e.Out, "%s; %s; %v", sap.Text(units.USGallon, 1), heard, full)
			return nil
		}
	}}
}

func TestWords(t *testing.T) {
	us := house(t, "gallons: imperial\nscale: Baume\nunits: metric\n")
	for _, c := range []struct{ args, want string }{
		{"", "0.0 US gal; ; false"},
		{"40 US gal 2.1 at 41 F", "40.0 US gal; 2.1 false true at 41.0 F; false"},
		{"-full 40 US gal 2.1", "40.0 US gal; 2.1 false true; true"},
		{"40 US gal 2.1 -full", "40.0 US gal; 2.1 false true; true"},
		{"50 1/2 US gal", "50.5 US gal; 0 false false; false"},
		{"59.5 Brix at 204", "0.0 US gal; 59.5 false true at 204.0 F; false"},
		{"59.5at 95 C", "0.0 US gal; 59.5 false true at 203.0 F; false"},
		{"31,5 Be at 95,5 C, water 98,5 C", "0.0 US gal; 31.5 true true at 203.9 F water 209.3 F; false"}, // 95.5 x 1.8 + 32, 98.5 x 1.8 + 32
		{"31.5 Be at 204F", "0.0 US gal; 31.5 true true at 204.0 F; false"},
		{"59.5 at 204 F, water 209.6", "0.0 US gal; 59.5 false true at 204.0 F water 209.6 F; false"},
		{"Water 209.6 F 217.5 F", "0.0 US gal; 0 false false water 209.6 F shows 217.5 F; false"},
		{"217.5 °F", "0.0 US gal; 0 false false shows 217.5 F; false"},
		// 10 imp gal are 45.46 L and 12.01 US gal; 95 is in C.
		{"-dir " + us + " 10 gal 31.5 at 95", "12.0 US gal; 31.5 true true at 203.0 F; false"},
		// What -set says counts without a folder too.
		{"-set scale:Baume 31.5 at 204 F", "0.0 US gal; 31.5 true true at 204.0 F; false"},
		{"-set scale:Brix 31.5 at 204 F", "0.0 US gal; 31.5 false true at 204.0 F; false"},
		{"-set gallons:imperial 10 gal", "12.0 US gal; 0 false false; false"},
		{"-dir " + us + " 2.1", "0.0 US gal; 2.1 false true; false"}, // sap, whatever the scale of syrup
		{"-dir " + us + " 59.5 Brix", "0.0 US gal; 59.5 false true; false"},
	} {
		var out, errs bytes.Buffer
		if ladle().Main(strings.Fields(c.args), strings.NewReader(""), &out, &errs); out.String() != c.want {
			t.Errorf("%s: %q, want %q, %s", c.args, out.String(), c.want, errs.String())
		}
	}
	for _, c := range []struct{ args, want string }{
		{"40 gal", `"40 gal": which gallon? Write 40 US gal (or imp gal), or begin a folder that says "gallons: US"`},
		{"50 1/2 gal", "Write 50 1/2 US gal"},
		{"1,250 US gal", "a number is missing"}, // a thousand gallons, or one and a quarter?
		{"31.5 at 204 F", "31.5 may be Brix or Baume"},
		{"20 at 204 F", "may be Brix or Baume"},
		{"45 at 204 F", "may be Brix or Baume"},
		{"2.1 at 41", "at 41: write 41 F or 41 C"},
		{"-dir " + us + " 59.5 at 95", "no reading of syrup on a Baume scale"},
		{"soon", `"soon": a number is missing; write it as 40 US gal 2.1 at 41 F`},
		{"2.1 at", "a number is missing"},
		{"water 2 Brix", "it is not plain what 2 Brix is"},
		{"water 98", "at 98: write 98 F or 98 C"},
		{"2.1 2.2", "it is not plain what 2.2 is"},
		{"218.6", "218.6: no hydrometer reads so much: if a thermometer shows it, write 218.6 F\n"},
		{"104", "if a thermometer shows it, write 104 F or 104 C"},
		{"2.1 furlongs", `"2.1 furlongs": unknown unit "furlongs"; write it as 40 US gal 2.1 at 41 F`},
		{"-sap 3.L 40 US gal", "-sap: "},
		{"40 US gal -sap 3.L", "-sap: "},
		{"2.1 -nosuch", "no such flag"},
	} {
		var out, errs bytes.Buffer
		args := strings.Fields(c.args)
		for i := range args {
			args[i] = strings.ReplaceAll(args[i], "3.L", "3 L")
		}
		if status := ladle().Main(args, strings.NewReader(""), &out, &errs); status != cli.BadInput || !strings.Contains(errs.String(), c.want) || strings.Count(errs.String(), "\n") != 1 {
			t.Errorf("%s: %d, %q, want %q", c.args, status, errs.String(), c.want)
		}
	}
}

// house makes a folder with settings.
func house(t *testing.T, settings string) string {
	t.Helper()
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "sugarhouse.txt"), []byte(settings), 0o644); err != nil {
		t.Fatal(err)
	}
	return dir
}

// Whatever stands behind the program's name is understood or refused in a line.
func FuzzWords(f *testing.F) {
	for _, s := range []string{"59.5 at 204 F", "40 gal 2.1", "1/2 at at", "- -1 1/0", "at", "1e9 Be", "5 1/2 1/2"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, words string) {
		var out, errs bytes.Buffer
		status := ladle().Main(strings.Fields(words), strings.NewReader(""), &out, &errs)
		if n := strings.Count(errs.String(), "\n"); (status == cli.OK) != (n == 0) || n > 1 {
			t.Errorf("%q: %d, %q", words, status, errs.String())
		}
	})
}
