package records_test

import (
	"bufio"
	"io"
	"math"
	"strings"
	"testing"
	"testing/iotest"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// What separates the cells is what the header has most of, outside quotes and
// behind remarks and empty lines, however the bytes come.
func TestSeparator(t *testing.T) {
	remarks := strings.Repeat("# a note; with; semicolons\n\n", 60) // longer than the first look
	for header, want := range map[string]rune{
		"time,sap_l,reading_brix":            ',',
		"time;sap_l;reading_brix":            ';',
		"time\tsap_l\treading_brix":          '\t',
		"time,sap_l,\"a; b; c; d\"":          ',',
		"time;sap_l;note, and more":          ';',
		"time":                               ',',
		"\ufefftime;sap_l":                   ';',
		"# a, remark, in, front\ntime;sap_l": ';',
		"\r\n\r\ntime;sap_l\r":               ';',
		remarks + "time\tsap_l":              '\t',
	} {
		for name, in := range map[string]io.Reader{
			"whole": strings.NewReader(header + "\n"), "without an end": strings.NewReader(header),
			"byte by byte": iotest.OneByteReader(strings.NewReader(header + "\n1"))} {
			r, err := records.Open("day.csv", in)
			if err != nil || r.Comma() != want {
				t.Errorf("%q, %s: %v, want %q", header[max(0, len(header)-40):], name, err, want)
			}
		}
	}
	if _, err := records.Open("day.csv", bufio.NewReader(strings.NewReader(strings.Repeat("#\n", 50_000)))); err != io.EOF {
		t.Errorf("a file of remarks: %v", err)
	}
}

// Among semicolons and tabs 61,5 is a number with a decimal comma, and a cell
// between two tabs is empty. Among commas it is none, and a thousand is none
// anywhere.
func TestDecimalComma(t *testing.T) {
	read := func(file string) (units.Volume, float64, error) {
		var sap units.Volume
		var parts float64
		r, err := records.New("day.csv", strings.NewReader(file), records.Volume("sap", &sap).Optional(), records.Number("parts", &parts))
		if err == nil {
			err = r.Next()
		}
		return sap, parts, err
	}
	for _, file := range []string{"sap_l;parts\n61,5;-0,25\n", "sap_l\tparts\n61,5\t-0,25\n", "sap_l;parts\n61.5;-.25\n"} {
		sap, parts, err := read(file)
		if err != nil || math.Abs(sap.Liters()-61.5) > 1e-12 || math.Abs(parts+0.25) > 1e-15 {
			t.Errorf("%q: %v, %v, %v", file, sap, parts, err)
		}
	}
	// Countries differ on 1,200: among semicolons it is 1.2, among tabs it is asked back.
	if sap, _, err := read("sap_l;parts\n1,200;1\n"); err != nil || math.Abs(sap.Liters()-1.2) > 1e-12 {
		t.Errorf("1,200 among semicolons: %v, %v", sap, err)
	}
	for _, cell := range []string{"1,200", "-1,200", "150,000"} {
		_, _, err := read("sap_l\tparts\n" + cell + "\t1\n")
		if err == nil || !strings.Contains(err.Error(), "day.csv:2: column sap_l: "+cell+" may be "+strings.Replace(cell, ",", "", 1)+" or "+strings.Replace(cell, ",", ".", 1)+":") {
			t.Errorf("%s among tabs: %v", cell, err)
		}
	}
	for _, cell := range []string{"1200", "1,20", "1,2000", "1234,567", "61,5"} {
		if _, _, err := read("sap_l\tparts\n" + cell + "\t1\n"); err != nil {
			t.Errorf("%s among tabs: %v", cell, err)
		}
	}
	if _, parts, err := read("sap_l\tparts\n0,125\t0,125\n"); err != nil || math.Abs(parts-0.125) > 1e-15 {
		t.Errorf("0,125 among tabs: %v, %v", parts, err)
	}
	if sap, parts, err := read("sap_l\tparts\n\t3\n"); err != nil || !math.IsNaN(float64(sap)) || math.Abs(parts-3) > 1e-15 {
		t.Errorf("an empty cell: %v, %v, %v", sap, parts, err)
	}
	for _, file := range []string{"sap_l,parts\n\"61,5\",1\n", "sap_l;parts\n1,200,5;1\n", "sap_l;parts\n1.200,5;1\n", "sap_l;parts\n,;1\n"} {
		if sap, _, err := read(file); err == nil || !strings.Contains(err.Error(), "day.csv:2: column sap_l: ") {
			t.Errorf("%q: %v, %v", file, sap, err)
		}
	}
}
