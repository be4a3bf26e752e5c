package main

import (
	"io"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/cli/clitest"
)

func TestMain(m *testing.M) { clitest.Main(m, main) }

// call runs the program.
func call(t *testing.T, stdin string, args ...string) (status int, out []byte, errs string) {
	t.Helper()
	status, text, errs := clitest.Build(t).Run(t, stdin, args...)
	return status, []byte(text), errs
}

// written runs the program on readings and returns the spreadsheet.
func written(t *testing.T, stdin string, args ...string) []byte {
	t.Helper()
	status, out, errs := call(t, stdin, args...)
	if status != 0 || errs != "" {
		t.Fatalf("%v: status %d, %s", args, status, errs)
	}
	return out
}

const header = "date,producer,volume_us_gal,reading_brix,cup_f\n"

func TestBadInput(t *testing.T) {
	const good = "2026-03-09,North lane,61.5,2.2,38\n"
	missing := filepath.Join(t.TempDir(), "missing.csv")
	for _, c := range []struct {
		name, stdin string
		args        []string
		want        string
	}{
		{"flag", "", []string{"-minimun", "2 Brix"}, "no such flag (-h lists them): -minimun"},
		{"left over", "", []string{"-minimum", "2", "Brix"}, `"Brix": there are flags only`},
		{"no unit", "", []string{"-minimum", "2"}, `-minimum: "2": no unit`},
		{"graduation low", "", []string{"-sap-hydrometer", "0.9 C"}, `-sap-hydrometer: "0.9 C" is out of range: it must be 33.8 to 104 F, 1 to 40 C`},
		{"graduation high", "", []string{"-sap-hydrometer", "40.1 C"}, `-sap-hydrometer: "40.1 C" is out of range`},
		{"no division", "", []string{"-division", "0 Brix"}, `-division: "0 Brix" is out of range: it must be above 0, to 5 Brix`},
		{"division high", "", []string{"-division", "5.01 Brix"}, "-division: "},
		{"no calibration", "", []string{"-calibration", "0 Brix"}, "-calibration: "},
		{"calibration high", "", []string{"-calibration", "5.01 Brix"}, "-calibration: "},
		{"thermometer", "", []string{"-thermometer", "2 F"}, `-thermometer: "2 F": ambiguous unit: write a difference as`},
		{"no thermometer", "", []string{"-thermometer", "0 C deg"}, "-thermometer: "},
		{"thermometer high", "", []string{"-thermometer", "10.1 C deg"}, `-thermometer: "10.1 C deg" is out of range: it must be above 0, to 18 F deg or 10 C deg`},
		{"no minimum", "", []string{"-minimum", "0 Brix"}, "-minimum: "},
		{"minimum low", "", []string{"-minimum", "0.49 Brix"}, `-minimum: "0.49 Brix" is out of range: it must be 0.5 to 30 Brix`},
		{"minimum high", "", []string{"-minimum", "30.1 Brix"}, "-minimum: "},
		{"syrup low", "", []string{"-syrup", "59.9 Brix"}, `-syrup: "59.9 Brix" is out of range: it must be 60 to 70 Brix`},
		{"syrup high", "", []string{"-syrup", "70.1 Brix"}, "-syrup: "},
		{"price", "", []string{"-syrup-price", "2.50"}, `-syrup-price: "2.50" has no unit`},
		{"price words", "", []string{"-syrup-price", "two/lb"}, `-syrup-price: "two" is not a plain number`},
		{"price low", "", []string{"-syrup-price", "-1/lb"}, `-syrup-price: "-1/lb" is out of range: it must be 0 or more`},
		{"share", "", []string{"-share", "0.5"}, `-share: "0.5" has no unit: write it as 50 %`},
		{"share high", "", []string{"-share", "100.1 %"}, `-share: "100.1 %" is out of range: it must be 0 to 100 %`},
		{"out name", "", []string{"-out", "payments.pdf"}, "-out: name it with .xlsx"},
		{"period", "", []string{"-period", "2026-03-01 - 2026-03-15"}, `-period: "2026-03-01 - 2026-03-15" is no period: write it as 2026-03-01 to 2026-03-15`},
		{"period backwards", "", []string{"-period", "2026-03-15 to 2026-03-01"}, "-period: it ends before it begins"},
		{"currency", "", []string{"-syrup-price", "2.50 US<b>/lb"}, `-syrup-price: "US<b>" is no currency`},
		{"paid missing", "", []string{"-paid", missing}, "-paid: " + missing + ": "},
		{"out folder", "", []string{"-out", filepath.Join(missing, "payments.xlsx")}, "payments.xlsx: "},
		{"in missing", "", []string{"-in", missing}, "-in: " + missing + ": "},
		{"empty", "", []string{"-in", "-"}, "standard input: the file is empty: the first line names the columns, such as date,producer,volume_us_gal,reading_brix,cup_f"},
		{"only header", header, []string{"-in", "-"}, "standard input:2: no deliveries"},
		{"semicolons", "date;producer\n", []string{"-in", "-"}, "standard input:1: no column for volume: name it volume_us_gal"},
		{"no unit in header", "date,producer,volume,reading_brix,cup_f\n", []string{"-in", "-"}, "standard input:1: column volume: no unit that is known: name the column volume_us_gal or volume_imp_gal or volume_l"},
		{"no date", "day,producer,volume_l,reading_brix,cup_f\n", []string{"-in", "-"}, "standard input:1: no column for date: name it date"},
		{"no cup", "date,producer,volume_l,reading_brix\n", []string{"-in", "-"}, "standard input:1: no column for cup: name it cup_f or cup_c"},
		{"two columns", "date,producer,volume_us_gal,volume_l,reading_brix,cup_f\n", []string{"-in", "-"}, "standard input:1: column volume_l: a second column for volume, beside volume_us_gal"},
		{"columns", header + good + "2026-03-09,North lane\n", []string{"-in", "-"}, "standard input:3: 2 cells where the header names 5 columns"},
		{"quote", header + "2026-03-09,\"North lane,61.5,2.2,38\n", []string{"-in", "-"}, "look for a quote that is not closed"},
		{"not UTF-8", header + "2026-03-09,\xff,61.5,2.2,38\n", []string{"-in", "-"}, "standard input:2: column producer: not text in UTF-8"},
		{"date", header + good + "9.3.2026,North lane,61.5,2.2,38\n", []string{"-in", "-"}, `standard input:3: column date: "9.3.2026" is not a day`},
		{"early year", header + "1999-12-31,North lane,61.5,2.2,38\n", []string{"-in", "-"}, "column date: "},
		{"late year", header + "2100-01-01,North lane,61.5,2.2,38\n", []string{"-in", "-"}, "column date: "},
		{"no producer", header + "2026-03-09, ,61.5,2.2,38\n", []string{"-in", "-"}, "standard input:2: column producer: it is empty"},
		{"long producer", header + "2026-03-09," + strings.Repeat("a", 81) + ",61.5,2.2,38\n", []string{"-in", "-"}, "standard input:2: column producer: 81 letters"},
		{"line break", header + "2026-03-09,\"North\nlane\",61.5,2.2,38\n", []string{"-in", "-"}, "standard input:2: column producer: it has a line break"},
		{"comma", header + "2026-03-09,North lane,\"61,5\",2.2,38\n", []string{"-in", "-"}, `standard input:2: column volume_us_gal: "61,5" is not a plain number`},
		{"no volume", header + "2026-03-09,North lane,0.004,2.2,38\n", []string{"-in", "-"}, "standard input:2: column volume_us_gal: 0 US gal is outside 0.01 to"},
		{"volume high", header + "2026-03-09,North lane,10000000.01,2.2,38\n", []string{"-in", "-"}, "column volume_us_gal: 10000000.01 US gal is outside"},
		{"NaN", header + "2026-03-09,North lane,61.5,NaN,38\n", []string{"-in", "-"}, `column reading_brix: "NaN" is not a plain number`},
		{"exponent", header + "2026-03-09,North lane,61.5,2e999999999,38\n", []string{"-in", "-"}, `column reading_brix: "2e999999999" is not`},
		{"reading", header + "2026-03-09,North lane,61.5,-2,38\n", []string{"-in", "-"}, "standard input:2: column reading_brix: reading -2 Brix is outside -1 to 85 Brix"},
		{"water", header + "2026-03-09,North lane,61.5,0,38\n", []string{"-in", "-"}, "standard input:2: column reading_brix: corrected strength 0 Brix is outside 0.1 to 30 Brix: that is not sap"},
		{"syrup", header + "2026-03-09,North lane,61.5,31,38\n", []string{"-in", "-"}, "column reading_brix: corrected strength 31 Brix is outside 0.1 to 30 Brix"},
		{"ice", header + "2026-03-09,North lane,61.5,2.2,30\n", []string{"-in", "-"}, "standard input:2: column cup_f: 30 F is outside 32 F to 140 F: no cup of sap is so cold"},
		{"hot", header + "2026-03-09,North lane,61.5,2.2,141\n", []string{"-in", "-"}, "standard input:2: column cup_f: 141 F is outside 32 F to 140 F"},
		{"digits", header + "2026-03-09,North lane,9999999.99,29,60\n", []string{"-in", "-", "-syrup-price", "999999999.99/lb", "-share", "100 %"}, "has more than the 15 digits that a sheet keeps"},
	} {
		t.Run(c.name, func(t *testing.T) {
			status, out, errs := call(t, c.stdin, c.args...)
			if status != cli.BadInput || len(out) != 0 {
				t.Errorf("status %d, %d bytes on standard output", status, len(out))
			}
			if !strings.HasPrefix(errs, program+": ") || strings.Count(errs, "\n") != 1 || !strings.HasSuffix(errs, "\n") {
				t.Errorf("not one line: %q", errs)
			}
			if !strings.Contains(errs, c.want) {
				t.Errorf("%q does not say %q", errs, c.want)
			}
			if strings.Contains(errs, "yield.") || strings.Contains(errs, "density.") || strings.Contains(errs, "units.") {
				t.Errorf("%q names a function of Go", errs)
			}
		})
	}
}

// The ends of what the help allows are allowed.
func TestEndsOfRanges(t *testing.T) {
	for _, args := range [][]string{
		{"-sap-hydrometer", "1 C"}, {"-sap-hydrometer", "40 C"}, {"-division", "5 Brix"}, {"-calibration", "5 Brix"},
		{"-thermometer", "10 C deg"}, {"-minimum", "0.5 Brix"}, {"-minimum", "30 Brix"}, {"-syrup", "60 Brix"},
		{"-syrup", "70 Brix"}, {"-syrup-price", "0/lb"}, {"-share", "0 %"}, {"-share", "100 %"},
	} {
		written(t, header+"2026-03-09,North lane,61.5,20,60\n", append(args, "-in", "-", "-accept", "2")...)
	}
}

// A sheet has little more than a million lines. Readings are streamed, so that the
// test needs no room for them.
func TestTooManyDeliveries(t *testing.T) {
	if testing.Short() {
		t.Skip("reads a million rows")
	}
	row := "2026-03-09,North lane,61.5,2.2,38\n"
	f := &file{name: "f"}
	rows := io.MultiReader(strings.NewReader(header), strings.NewReader(strings.Repeat(row, maxDeliveries+1)))
	if err := f.begin(rows); err != nil {
		t.Fatal(err)
	}
	for range maxDeliveries {
		if err := f.next(new(reading)); err != nil {
			t.Fatal(err)
		}
	}
	if err := f.next(new(reading)); err == nil || !strings.HasPrefix(err.Error(), "f:1000002: more than 1000000 deliveries") {
		t.Errorf("one more: %v", err)
	}
}

// What the flags and files do is in the help, and every flag is.
func TestHelp(t *testing.T) {
	text := string(written(t, "", "-h"))
	for _, o := range options {
		if !strings.Contains(text, "  -"+o.name) || !strings.Contains(strings.Join(strings.Fields(text), " "), o.says) {
			t.Errorf("the help lacks -%s", o.name)
		}
	}
	for _, column := range []string{"date", "producer", "volume_us_gal", "volume_imp_gal", "volume_l", "reading_brix", "cup_f", "cup_c"} {
		if !strings.Contains(text, column) {
			t.Errorf("the help lacks the column %s", column)
		}
	}
	for _, line := range strings.Split(text, "\n") {
		if len(line) > 78 {
			t.Errorf("a long line: %s", line)
		}
	}
}
