package main

import (
	"bytes"
	"strings"
	"testing"
)

// Names of the trade and Latin ones are read; other trees are left alone under
// their own name; every cell that is wrong is told at once, with its line.
func TestNamesOfTrees(t *testing.T) {
	const head = "tree,girth_in,species,vigor\n"
	var out, errs bytes.Buffer
	trees := head + "a,60,hard maple,healthy\nb,50,Acer rubrum,healthy\nc,60,white ash,healthy\n"
	if status := program().Main([]string{"-full", "-tree-file", "-"}, strings.NewReader(trees), &out, &errs); status != 0 {
		t.Fatal(errs.String())
	}
	page := strings.Join(strings.Fields(out.String()), " ")
	for _, want := range []string{"a 60 in 19.10 in sugar maple healthy 2", "b 50 in 15.92 in red maple healthy 1", "c 19.10 in white ash no maple", "look for scars, then choose", "a 2 30 in"} {
		if !strings.Contains(page, want) {
			t.Errorf("no %q in\n%s", want, out.String())
		}
	}
	out.Reset()
	trees = head + "a,60,suger maple,healthy\nb,50,Acer rubrum,helthy\nc,60,oak,healthy\nd,x,hard maple,\n"
	if status := program().Main([]string{"-tree-file", "-"}, strings.NewReader(trees), &out, &errs); status == 0 || out.Len() > 0 {
		t.Error("wrong names were taken")
	}
	lines := strings.Split(strings.TrimSpace(errs.String()), "\n")
	for i, want := range []string{
		`stand: -:2: column species: "suger maple": not one of the names: did you mean "sugar maple"?`,
		`stand: -:3: column vigor: "helthy": not one of the names: did you mean "healthy"?`,
		`stand: -:5: column girth_in: "x" is not a plain number`,
	} {
		if len(lines) != 3 || !strings.HasPrefix(lines[i], want) {
			t.Errorf("%q, want %q", lines, want)
		}
	}
}
