package main

import (
	"bytes"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/xuri/excelize/v2"
)

// Rows of headers stay in sight and columns are wide enough; nothing is a formula but beside the figures of statements;
// the only time is that of the data.
func TestLayout(t *testing.T) {
	f := opened(t, written(t, ""))
	for _, sheet := range f.GetSheetList() {
		if p, err := f.GetPanes(sheet); err != nil || !p.Freeze || p.YSplit != 1 || p.XSplit != 0 {
			t.Errorf("%s: panes %+v, %v", sheet, p, err)
		}
		for y, row := range table(t, f, sheet, false) {
			for x, text := range row {
				at, err := excelize.CoordinatesToCellName(x+1, y+1)
				if err != nil {
					t.Fatal(err)
				}
				if formula, err := f.GetCellFormula(sheet, at); err != nil || (formula != "") != (sheet == "Statements" && x == 2 && y > 0) {
					t.Errorf("%s!%s holds the formula %q, %v", sheet, at, formula, err)
				}
				name, _ := excelize.ColumnNumberToName(x + 1)
				width, err := f.GetColWidth(sheet, name)
				// A line of text takes 15 points, and text with spaces at least so many lines.
				height, errHeight := f.GetRowHeight(sheet, y+1)
				if lines := math.Ceil(float64(len(text)) / width); sheet != "Deliveries" && (errHeight != nil || height < 15*lines) {
					t.Errorf("%s!%s: %d letters in a row %v high, %v", sheet, at, len(text), height, errHeight)
				}
				if sheet == "Deliveries" && y > 0 && text != "These deliveries and producers are invented." && (err != nil || width < float64(len(text))) {
					t.Errorf("%s!%s: %q in a column of width %v, %v", sheet, at, text, width, err)
				}
			}
		}
	}
	props, err := f.GetDocProps()
	if err != nil || props.Created != "2026-03-15T00:00:00Z" || props.Modified != props.Created || props.Creator != program {
		t.Errorf("properties %+v, %v", props, err)
	}
}

// Two runs give the same bytes, whatever the clock, the zone and the way to the
// file.
func TestSameBytes(t *testing.T) {
	first := written(t, "")
	in := filepath.Join(t.TempDir(), "demo.csv")
	if err := os.WriteFile(in, demo, 0o644); err != nil {
		t.Fatal(err)
	}
	byName := written(t, "", "-in", in)
	if !bytes.Equal(byName, written(t, string(demo), "-in", "-")) {
		t.Error("a file and standard input differ")
	}
	// In a folder the producers are sellers, and gallons are what its settings say.
	dir := t.TempDir()
	for name, text := range map[string]string{
		"sugarhouse.txt": "gallons: US\n",
		"bought.csv":     strings.Replace(strings.Replace(string(demo), "producer", "seller", 1), "us_gal", "gal", 1),
	} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if !bytes.Equal(byName, written(t, "", "-dir", dir)) {
		t.Error("a file and that of a folder differ")
	}
	// Nobody's folder gets the payments of invented sellers.
	var out, errs bytes.Buffer
	if err := os.Remove(filepath.Join(dir, "bought.csv")); err != nil {
		t.Fatal(err)
	}
	if status := sheets().Main([]string{"-dir", dir}, strings.NewReader(""), &out, &errs); status != 2 || out.Len() > 0 || !strings.Contains(errs.String(), "bought.csv is not there: list the deliveries in it, or give -in") {
		t.Errorf("status %d, %d bytes, %s", status, out.Len(), errs.String())
	}
	t.Setenv("TZ", "Pacific/Auckland")
	time.Sleep(1100 * time.Millisecond) // a second further by the clock
	if !bytes.Equal(first, written(t, "")) {
		t.Error("a second run differs")
	}
}

// A name that looks like a formula is a name.
func TestNamesAreText(t *testing.T) {
	for _, name := range []string{"=1+1", "+lane", "@lane", "0012", "<b>&", "Ränder", "=HYPERLINK(\"x\")"} {
		cell := `"` + strings.ReplaceAll(name, `"`, `""`) + `"`
		f := opened(t, written(t, header+"2026-03-09,"+cell+",61.5,2.2,38\n", "-in", "-"))
		for sheet, at := range map[string]string{"Deliveries": "B2", "Producers": "A2"} {
			got, err := f.GetCellValue(sheet, at)
			formula, _ := f.GetCellFormula(sheet, at)
			kind, _ := f.GetCellType(sheet, at)
			if err != nil || got != name || formula != "" || kind != excelize.CellTypeInlineString && kind != excelize.CellTypeSharedString {
				t.Errorf("%s: %s holds %q, formula %q, type %v, %v", name, sheet, got, formula, kind, err)
			}
		}
	}
}
