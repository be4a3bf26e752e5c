package main

import (
	"bytes"
	"strings"
	"testing"
)

// A can that is given twice is poured twice on the page: it is told.
func TestLookAgain(t *testing.T) {
	const cans = "can,volume_l,reading_brix,read_at_f\nhill side,10,66.1,60\nHill side,11,66.1,60\nhill side,10,66.1,60\n"
	for _, json := range []string{"-json", "-metric"} {
		var out, errs bytes.Buffer
		if status := program().Main([]string{"-can-file", "-", json}, strings.NewReader(cans), &out, &errs); status != 0 {
			t.Fatalf("status %d: %s", status, errs.String())
		}
		page := strings.Join(strings.Fields(out.String()), " ")
		for _, want := range []string{"Look again, -:4: the same row as line 2", "differs only in capitals"} {
			if !strings.Contains(page, want) {
				t.Errorf("no %q in %s", want, page)
			}
		}
		if strings.Count(page, "Look again") != 2 {
			t.Error(page)
		}
	}
}

// Cans are held against syrup, not sap: 66.1 and 64 Brix are nothing to
// look at, 56.1 is.
func TestCansAreSyrup(t *testing.T) {
	for second, want := range map[string]int{"64": 0, "56.1": 1} {
		var out, errs bytes.Buffer
		cans := "can,volume_l,reading_brix,read_at_f\nhill side,10,66.1,60\nnight boil,11," + second + ",60\n"
		if status := program().Main([]string{"-can-file", "-"}, strings.NewReader(cans), &out, &errs); status != 0 {
			t.Fatalf("status %d: %s", status, errs.String())
		}
		if page := out.String(); strings.Count(page, "Look again") != want || strings.Contains(page, "than sap has") {
			t.Error(page)
		}
	}
}
