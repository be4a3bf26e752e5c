package clitest

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
)

// A Page is what a program writes with -json: see package cli.
type Page struct {
	Program string `json:"program"`
	Verdict string `json:"verdict"`
	Answers []struct {
		Key    string `json:"key"`
		Label  string `json:"label"`
		Text   string `json:"text"`
		US     Number `json:"us"`
		Metric Number `json:"metric"`
		Note   string `json:"note"`
	} `json:"answers"`
	List     []map[string]any           `json:"list"`
	Known    map[string]any             `json:"known"`
	Cautions []string                   `json:"cautions"`
	Further  []string                   `json:"further"`
	Parts    map[string]json.RawMessage `json:"parts"`
}

// A Number is an answer in one system of units.
type Number struct {
	Value any    `json:"value"`
	Unit  string `json:"unit"`
}

// Brief runs the program as a person does, holds the first page to the size of a
// brief, -full and -json to the same answers, and returns page and JSON.
func (b Binary) Brief(t *testing.T, stdin string, args ...string) (page string, read Page) {
	t.Helper()
	run := func(more ...string) string {
		status, out, errs := b.Run(t, stdin, append(more, args...)...)
		if status != cli.OK {
			t.Fatalf("%q: status %d, %s", args, status, errs)
		}
		return out
	}
	page = run()
	if err := json.Unmarshal([]byte(run("-json")), &read); err != nil {
		t.Fatalf("%q: %v", args, err)
	}
	for _, err := range oversize(page, len(read.List)) {
		t.Errorf("%q: %v\n%s", args, err, page)
	}
	if full := run("-full"); !strings.HasPrefix(full, page) || len(full) < len(page)+len(read.Parts) {
		t.Errorf("%q: -full does not begin with the first page and go on:\n%s", args, full)
	}
	flat := strings.Join(strings.Fields(page), " ")
	says := append([]string{read.Verdict}, read.Cautions...)
	for _, a := range read.Answers {
		says = append(says, a.Label+" "+a.Text)
	}
	for _, s := range append(says, read.Further...) {
		if !strings.Contains(flat, strings.Join(strings.Fields(s), " ")) {
			t.Errorf("%q: the page does not say %q:\n%s", args, s, page)
		}
	}
	if n := len(read.Answers); n > cli.BriefAnswers || !strings.HasSuffix(read.Verdict, ".") || len(read.Cautions) == 0 || len(read.Parts) == 0 {
		t.Errorf("%q: %d answers, verdict %q, %d cautions, %d parts", args, n, read.Verdict, len(read.Cautions), len(read.Parts))
	}
	return page, read
}

// oversize tells where a page is longer or wider than a brief whose list has so many
// rows. The list goes by the width of a full page.
func oversize(page string, rows int) (all []error) {
	const listColumns = 78
	lines := strings.Split(strings.TrimSuffix(page, "\n"), "\n")
	if rows > 0 {
		rows += 2 // its head, and the line before
	}
	if n := len(lines) - rows; n > cli.BriefLines {
		all = append(all, fmt.Errorf("%d lines beside the list, want %d at the most", n, cli.BriefLines))
	}
	wide := 0
	for _, line := range lines {
		n := len([]rune(line))
		if n > listColumns {
			all = append(all, fmt.Errorf("%d columns: %s", n, line))
		} else if n > cli.BriefColumns {
			wide++
		}
	}
	if wide > rows {
		all = append(all, fmt.Errorf("%d lines of more than %d columns", wide, cli.BriefColumns))
	}
	return all
}
