package main

import (
	"bytes"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
	"example.org/sapreckoner/examples/internal/folder"
)

// pageOf is the whole page of a folder with some batches.
func pageOf(t *testing.T, batches string, args ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	dir := clitest.Folder(t, map[string]string{folder.BatchesFile: batches})
	if status := program().Main(append([]string{"-dir", dir}, args...), nil, &out, &errs); status != 0 {
		t.Fatalf("status %d: %s", status, errs.String())
	}
	return strings.Join(strings.Fields(out.String()), " ")
}

// A batch that is given twice is poured twice on the page: it is told.
func TestLookAgain(t *testing.T) {
	const batches = "batch,date,volume_l,reading_brix,cup_f\nhill side,2034-03-05,10,66.1,60\nHill side,2034-03-05,11,66.1,60\nhill side,2034-03-05,10,66.1,60\n"
	for _, form := range []string{"-json", "-full"} {
		page := pageOf(t, batches, form)
		for _, want := range []string{"Look again, batches.csv:4: the same row as line 2", "differs only in capitals"} {
			if !strings.Contains(page, want) {
				t.Errorf("no %q in %s", want, page)
			}
		}
		if strings.Count(page, "Look again,") != 2 {
			t.Error(page)
		}
	}
	if page := pageOf(t, batches); !strings.Contains(page, "Look again at 2 rows: -full lists them.") {
		t.Error(page)
	}
}

// Batches are held against syrup, not sap: 66.1 and 64 Brix are nothing to look at,
// 56.1 is.
func TestCansAreSyrup(t *testing.T) {
	for second, want := range map[string]int{"64": 0, "56.1": 1} {
		page := pageOf(t, "batch,date,volume_l,reading_brix,cup_f\nhill side,2034-03-05,10,66.1,60\nnight boil,2034-03-06,11,"+second+",60\n", "-full")
		if strings.Count(page, "Look again, ") != want || strings.Contains(page, "than sap has") {
			t.Error(page)
		}
	}
}
