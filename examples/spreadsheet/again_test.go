package main

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/yield/lookagain"
)

// Invented deliveries with what a hurried hand writes: line 4 is line 3 again,
// line 5 says 23 for 2.3, line 7 says 2062 gal for 206.2, line 8 has a name of
// small letters, line 9 one with a sign that is not seen, line 10 another year.
const hurried = header + `2031-03-09,Abbott,206,2.2,38
2031-03-10,Abbott,180,2.1,38
2031-03-10,Abbott,180,2.1,38
2031-03-11,Abbott,190,23,38
2031-03-12,Abbott,210,2.4,38
2031-03-13,Abbott,2062,2.3,38
2031-03-14,abbott,200,2.2,38
2031-03-15,Abb` + "\u200b" + `ott,195,2.2,38
2030-03-16,Abbott,185,2.3,38
`

// Nothing is paid, and nothing written, until each line was mended or accepted.
func TestLookAgain(t *testing.T) {
	out := filepath.Join(t.TempDir(), "payments.xlsx")
	status, _, errs := call(t, hurried, "-in", "-", "-out", out)
	if status != cli.BadInput {
		t.Errorf("status %d", status)
	}
	if left, _ := filepath.Glob(filepath.Join(filepath.Dir(out), "*")); len(left) > 0 {
		t.Errorf("left %v", left)
	}
	for line, want := range map[int]string{4: "the same row as line 3", 5: "strength 23 Brix is far", 7: "volume 2062 US gal is far", 8: "only in capitals",
		9: `"Abb\u200bott" has a sign`, 10: "360 days"} {
		if !strings.Contains(errs, fmt.Sprintf("spreadsheet: standard input:%d: ", line)) || !strings.Contains(errs, want) {
			t.Errorf("line %d: no %q in\n%s", line, want, errs)
		}
	}
	if strings.Contains(errs, "input:2:") || strings.Contains(errs, "input:3:") || strings.Contains(errs, "input:6:") || strings.Contains(errs, "\u200b") {
		t.Errorf("says too much:\n%s", errs)
	}
	if !strings.Contains(errs, "-accept 4-5,7-10\n") {
		t.Errorf("no way out in\n%s", errs)
	}

	if status, _, errs := call(t, hurried, "-in", "-", "-accept", "4,5,7-8,9"); status != cli.BadInput || !strings.Contains(errs, "input:10:") || strings.Contains(errs, "input:4:") {
		t.Errorf("one is open: status %d, %s", status, errs)
	}
	if status, _, errs := call(t, hurried, "-in", "-", "-accept", "3,4,5,7-10"); status != cli.BadInput || !strings.Contains(errs, "-accept: nothing is to be accepted in line 3") {
		t.Errorf("one too many: status %d, %s", status, errs)
	}
	for _, bad := range []string{"x", "1", "5-4", "4,,5", "-4", "4-", "99999999999999999999"} {
		if status, _, errs := call(t, hurried, "-in", "-", "-accept", bad); status != cli.BadInput || !strings.Contains(errs, "-accept: ") || !strings.Contains(errs, "write lines as") {
			t.Errorf("%s: status %d, %s", bad, status, errs)
		}
	}
	sheet := table(t, opened(t, written(t, hurried, "-in", "-", "-accept", "4, 5,7-10")), "Look again", false)
	if len(sheet) != 8 || sheet[1][0] != "4" || sheet[1][1] != "the same row twice: accepted" { // a header and 7 findings: line 9 has two
		t.Errorf("%q", sheet)
	}
}

// What is suggested is whole, however long, and is taken: of 240 rows each second
// one has a volume of its own, and the others come twice.
func TestAcceptIsWhole(t *testing.T) {
	var b strings.Builder
	b.WriteString(header)
	for i := range 120 {
		fmt.Fprintf(&b, "2031-03-10,Brook,%d,2.1,38\n2031-03-10,Brook,100,2.1,38\n", 101+i)
	}
	_, _, errs := call(t, b.String(), "-in", "-")
	_, accept, _ := strings.Cut(strings.TrimSpace(errs), "-accept ")
	if got := strings.Count(accept, ","); got != 118 || !strings.HasPrefix(accept, "5,7,9,") || !strings.HasSuffix(accept, ",239,241") {
		t.Errorf("%d: %s", got, accept)
	}
	if sheet := table(t, opened(t, written(t, b.String(), "-in", "-", "-accept", accept)), "Look again", false); len(sheet) != 1+119 {
		t.Errorf("%d lines", len(sheet))
	}
}

// Lines that follow each other are one range, and a line has more than one finding.
func TestAcceptable(t *testing.T) {
	var findings []lookagain.Finding
	for _, line := range []int{4, 5, 5, 6, 8, 10, 10, 12, 13} {
		findings = append(findings, lookagain.Finding{Line: line})
	}
	if got := acceptable(findings); got != "4-6,8,10,12-13" {
		t.Error(got)
	}
}

// What stands in a file stays text in messages and on the sheet.
func TestLookAgainInert(t *testing.T) {
	rows := header + "2031-03-09,\"=HYPERLINK(\"\"x\"\")\",20,2.2,38\n2031-03-10,\"=Hyperlink(\"\"x\"\")\",21,2.2,38\n2031-03-10,\"@a\u202eb\",22,2.2,38\n"
	_, _, errs := call(t, rows, "-in", "-")
	for _, c := range errs {
		if c != '\n' && (c < ' ' || c > '~') {
			t.Errorf("%q in %q", c, errs)
		}
	}
	f := opened(t, written(t, rows, "-in", "-", "-accept", "3,4"))
	for y, r := range table(t, f, "Look again", true) {
		if formula, err := f.GetCellFormula("Look again", fmt.Sprintf("C%d", y+1)); err != nil || formula != "" || strings.HasPrefix(r[2], "=") {
			t.Errorf("row %d: formula %q, %v", y+1, formula, err)
		}
	}
}
