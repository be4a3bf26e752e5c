package main

import (
	"bytes"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/internal/tools/module/moduletest"
)

func TestHouse(t *testing.T) {
	dir, want := moduletest.Unpack(t, "testdata/house.txtar")
	var out bytes.Buffer
	found, err := run([]string{"-dir", dir}, &out, io.Discard)
	if err != nil {
		t.Fatal(err)
	}
	if n := strings.Count(want, "\n"); found != n {
		t.Errorf("found %d, want %d", found, n)
	}
	got := strings.Split(out.String(), "\n")
	seen := make(map[string]bool)
	for _, line := range got {
		seen[line] = true
	}
	wanted := make(map[string]bool)
	for line := range strings.SplitSeq(want, "\n") {
		wanted[line] = true
		if !seen[line] {
			t.Errorf("missing: %s", line)
		}
	}
	for _, line := range got {
		if !wanted[line] {
			t.Errorf("unwanted: %s", line)
		}
	}
}

func TestRefused(t *testing.T) {
	dir, _ := moduletest.Unpack(t, "testdata/house.txtar")
	if err := os.WriteFile(filepath.Join(dir, "brush", "broken.go"), []byte("package brush\n\nvar X Missing\n"), 0o666); err != nil {
		t.Fatal(err)
	}
	for _, args := range [][]string{
		{"-dir", dir},
		{"-dir", filepath.Join(dir, "nowhere")},
		{"-dir", dir, "stray"},
		{"-unknown"},
	} {
		var out bytes.Buffer
		if _, err := run(args, &out, io.Discard); err == nil || out.Len() > 0 {
			t.Errorf("doclinks %v: error %v, output %q", args, err, out.String())
		}
	}
}
