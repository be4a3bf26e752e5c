package main

import (
	"bytes"
	"io"
	"os"
	"path/filepath"
	"testing"

	"example.org/sapreckoner/internal/tools/module/moduletest"
)

func TestAPI(t *testing.T) {
	dir, want := moduletest.Unpack(t, "testdata/api.txtar")
	for _, patterns := range [][]string{nil, {"./paint"}, {"./...", "./paint"}} {
		var out bytes.Buffer
		if err := run(append([]string{"-dir", dir}, patterns...), &out, io.Discard); err != nil {
			t.Fatal(err)
		}
		if got := out.String(); got != want {
			t.Errorf("apitext %v prints\n%s\nwant\n%s", patterns, got, want)
		}
	}
}

func TestNoLibrary(t *testing.T) {
	dir, _ := moduletest.Unpack(t, "testdata/api.txtar")
	var out bytes.Buffer
	if err := run([]string{"-dir", dir, "./program"}, &out, io.Discard); err != nil || out.Len() > 0 {
		t.Errorf("a program has the API %q, error %v", out.String(), err)
	}
}

func TestRefused(t *testing.T) {
	dir, _ := moduletest.Unpack(t, "testdata/api.txtar")
	if err := os.WriteFile(filepath.Join(dir, "paint", "broken.go"), []byte("package paint\n\nvar X Missing\n"), 0o666); err != nil {
		t.Fatal(err)
	}
	for _, args := range [][]string{
		{"-dir", dir},
		{"-dir", dir, "./nowhere"},
		{"-dir", filepath.Join(dir, "nowhere")},
		{"-unknown"},
	} {
		var out bytes.Buffer
		if err := run(args, &out, io.Discard); err == nil || out.Len() > 0 {
			t.Errorf("apitext %v: error %v, output %q", args, err, out.String())
		}
	}
}
