package main

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
	"example.org/sapreckoner/examples/internal/cli/clitest/browser"
)

// hostile are labels that would do something if a page did not keep them inert.
var hostile = []string{`<script>document.title="x"<`, `<img src=x onerror="document.title=1">`, `"><svg onload=document.title=2>`, `{{.Title}}`, `&amp;&lt;`, `--><b>`}

// hostileTrees lists a tree of each label.
func hostileTrees(t *testing.T) string {
	t.Helper()
	var b strings.Builder
	w := csv.NewWriter(&b)
	rows := [][]string{{"tree", "girth_in", "species", "vigor"}}
	for _, label := range hostile {
		rows = append(rows, []string{label, "60", "sugar maple", "healthy"})
	}
	if err := w.WriteAll(rows); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// The drill sheet has every trunk of the walk, and nothing from elsewhere.
func paper(t *testing.T, b clitest.Binary) {
	status, page, errs := b.Run(t, "", pasture("-print", "-")...)
	if status != 0 {
		t.Fatal(errs)
	}
	for _, bad := range []string{"<script", "http:", "https:", "url(", "@import", "src=", "href=", "<link", "NaN", "<no value>"} {
		if strings.Contains(page, bad) {
			t.Errorf("%q is in the sheet", bad)
		}
	}
	// P9 has two stems, and so 16 rows of trunks; 13 holes have places.
	if n := strings.Count(page, "<tbody"); n != 16 || strings.Count(page, `class="tick"`) != 13 {
		t.Errorf("%d trunks, %d holes to tick", n, strings.Count(page, `class="tick"`))
	}
	path := filepath.Join(t.TempDir(), "sheet.html")
	_, brief, _ := b.Run(t, "", pasture()...)
	if status, out, errs := b.Run(t, "", pasture("-print", path)...); status != 0 || out != brief {
		t.Errorf("status %d, %s; the page differs from that without a sheet", status, errs)
	}
	if written, err := os.ReadFile(path); err != nil || string(written) != page {
		t.Errorf("the file differs from what is printed: %v", err)
	}
	_, odd, _ := b.Run(t, hostileTrees(t), "-tree-file", "-", "-print", "-")
	if strings.Contains(odd, "<script") || strings.Contains(odd, "<img") || strings.Contains(odd, "<b>") || strings.Count(odd, "<svg") > 0 {
		t.Errorf("a label is not inert:\n%s", odd)
	}
}

// In a browser labels are words, whatever they hold, and the whole stand comes on
// one print: the pasture on one sheet, every trunk of the larger stand with all its
// holes.
func TestPrintInBrowser(t *testing.T) {
	browser.Need(t)
	b := clitest.Build(t)
	_, odd, _ := b.Run(t, hostileTrees(t), "-tree-file", "-", "-print", "-")
	if title := regexp.MustCompile(`<title>.*?</title>`).FindString(browser.Open(t, odd, "--dump-dom")); title != "<title>Tap plan</title>" {
		t.Errorf("a label ran: %s", title)
	}
	printed := func(page string) (text, info string) {
		pdf := browser.Print(t, page)
		return browser.Output(t, "pdftotext", "-layout", pdf, "-"), browser.Output(t, "pdfinfo", pdf)
	}
	text, _ := printed(odd)
	for _, label := range hostile {
		if !strings.Contains(strings.Join(strings.Fields(text), ""), strings.ReplaceAll(label, " ", "")) {
			t.Errorf("%q is not on the paper:\n%s", label, text)
		}
	}
	_, page, _ := b.Run(t, "", pasture("-print", "-")...)
	if _, info := printed(page); !regexp.MustCompile(`(?m)^Pages:\s+1$`).MatchString(info) {
		t.Errorf("not one sheet:\n%s", info)
	}
	_, page, _ = b.Run(t, "", "-print", "-")
	_, read := b.Brief(t, "")
	text, _ = printed(page)
	flat := strings.Join(strings.Fields(text), " ")
	for _, row := range read.List {
		if name := row["tree"].(string); !strings.Contains(flat, name+" ") {
			t.Errorf("%s is not on the paper", name)
		}
	}
	if n := strings.Count(flat, " deg "); n != 60 {
		t.Errorf("%d holes on the paper, want 60 beside two to choose", n)
	}
}
