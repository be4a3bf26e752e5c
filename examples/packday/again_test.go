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

// Batches are held against syrup, not sap: 66.1 and 64 Brix are nothing to look at,
// 56.1 is.
func TestCansAreSyrup(t *testing.T) {
	for second, want := range map[string]int{"64": 0, "56.1": 1} {
		page := pageOf(t, "batch,date,volume_l,reading_brix,cup_f\nhill side,2034-03-05,10,66.1,60\nnight boil,2034-03-06,11,"+second+",60\n", "-full")
		if strings.Count(page, "batches.csv:3: strength") != want || strings.Contains(page, "than sap has") || strings.Contains(page, "Look again at 1 row:") != (want > 0) {
			t.Error(page)
		}
	}
}
