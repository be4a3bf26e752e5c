package clitest

import (
	"strings"
	"testing"
)

func TestOversize(t *testing.T) {
	line := strings.Repeat("x", 60) + "\n"
	for _, c := range []struct {
		page string
		rows int
		want int
	}{
		{strings.Repeat(line, 24), 0, 0},
		{strings.Repeat(line, 25), 0, 1},
		{strings.Repeat(line, 29), 3, 0}, // three rows, their head and a blank line
		{strings.Repeat(line, 30), 3, 1},
		{"x" + line, 0, 1},
		{"x" + line + line, 1, 0},
		{strings.Repeat("x", 20) + line, 1, 1},
	} {
		if got := oversize(c.page, c.rows); len(got) != c.want {
			t.Errorf("%d lines with %d rows: %v", strings.Count(c.page, "\n"), c.rows, got)
		}
	}
}
