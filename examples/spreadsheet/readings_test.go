package main

import (
	"bytes"
	"io"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
)

// The same sap in other units, columns in another order, and what spreadsheet
// programs do to a CSV file.
func TestOtherFiles(t *testing.T) {
	want := table(t, opened(t, written(t, header+"2026-03-09,North lane,100,2.2,41\n", "-in", "-")), "Deliveries", false)
	for name, text := range map[string]string{
		"liters and Celsius": "date,producer,volume_l,reading_brix,cup_c\n2026-03-09,North lane,378.5411784,2.2,5\n",
		"imperial gallons":   "date,producer,volume_imp_gal,reading_brix,cup_f\n2026-03-09,North lane,83.267418,2.2,41\n",
		"order and extra":    "cup_f,slip,reading_brix,producer,date,volume_us_gal\n41,7,2.2,North lane,2026-03-09,100\n",
		"remarks":            "# Creek side\ndate,producer,volume_us_gal,reading_brix,cup_f\n#2026-03-08,not counted,1,2,40\n2026-03-09,North lane,100,2.2,41\n# the end\n",
		"capitals":           "Date,Producer,Volume_US_gal,Reading_Brix,Cup_F\n2026-03-09,North lane,100,2.2,41\n",
		"mark and CRLF":      "\ufeffdate,producer,volume_us_gal,reading_brix,cup_f\r\n2026-03-09,\"North lane\", 100 ,2.20,41\r\n",
	} {
		got := table(t, opened(t, written(t, text, "-in", "-")), "Deliveries", false)
		if name == "liters and Celsius" {
			if got[0][4] != "Cup, C" || got[1][4] != "5.0" {
				t.Errorf("%s: %s %s", name, got[0][4], got[1][4])
			}
			got[0][4], got[1][4] = want[0][4], want[1][4]
		}
		same(t, name, got, want)
	}
}

func FuzzReadings(f *testing.F) {
	f.Add(demo)
	f.Add([]byte(header + "2026-03-09,North lane,61.5,2.2,38\n"))
	f.Add([]byte("cup_c,reading_brix,producer,date,volume_l\n5,-0,\"a\"\"b\",2026-02-29,1e9\n"))
	f.Fuzz(func(t *testing.T, text []byte) {
		readings, err := readAll(bytes.NewReader(text))
		if err != nil {
			if !strings.HasPrefix(err.Error(), "f:") {
				t.Errorf("%v: no file and line", err)
			}
			return
		}
		for _, r := range readings {
			if r.producer == "" || r.gallons < minGallons || r.gallons > maxGallons || r.date.Year() < minYear || r.line < 2 {
				t.Errorf("accepted %+v", r)
			}
		}
	})
}

// readAll reads all rows of a file called f.
func readAll(in io.Reader) (all []reading, err error) {
	f := &file{name: "f"}
	if err := f.begin(in); err != nil {
		return nil, err
	}
	for {
		var r reading
		err := f.next(&r)
		if err == io.EOF {
			return all, nil
		}
		if err != nil {
			return nil, err
		}
		all = append(all, r)
	}
}

// Money is reckoned with the digits that were written. A float64 holds the first
// volume as 8000001.005, which rounds up.
func TestDigitsAreExact(t *testing.T) {
	all, err := readAll(strings.NewReader(header + "2026-03-09,North lane,8000001.004999999,2.2,38\n2026-03-09,North lane,8000001.005,2.2,38\n"))
	if err != nil {
		t.Fatal(err)
	}
	if got := all[0].gallons.String() + " " + all[1].gallons.String(); got != "8000001 8000001.01" {
		t.Error(got)
	}
}

// endless repeats a text.
type endless string

func (e endless) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = e[i%len(e)]
	}
	return len(p), nil
}

// A line that never ends is refused, and not held.
func TestEndlessLine(t *testing.T) {
	for name, in := range map[string]io.Reader{
		"header":       endless("y"),
		"line":         io.MultiReader(strings.NewReader(header), endless("x")),
		"quoted cell":  io.MultiReader(strings.NewReader(header+`"`), endless("x\n")),
		"many columns": io.MultiReader(strings.NewReader(header), endless(",")),
		"empty lines":  io.MultiReader(strings.NewReader(header), endless("\n")),
	} {
		_, err := readAll(in)
		if err == nil || !strings.Contains(err.Error(), "64 KiB") {
			t.Errorf("%s: %v", name, err)
		}
	}
}

func TestFolderIsNoFile(t *testing.T) {
	_, _, err := openFile(&cli.Env{}, t.TempDir())
	if err == nil || !strings.Contains(err.Error(), "-in: ") || !strings.Contains(err.Error(), "is a directory") {
		t.Error(err)
	}
}
