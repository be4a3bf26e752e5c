package main

import (
	"io"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
)

// endless repeats a text.
type endless string

func (e endless) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = e[i%len(e)]
	}
	return len(p), nil
}

// A line that never ends is refused, and not held.
func TestEndlessLine(t *testing.T) {
	for name, in := range map[string]io.Reader{
		"header":       endless("y"),
		"line":         io.MultiReader(strings.NewReader(header), endless("x")),
		"quoted cell":  io.MultiReader(strings.NewReader(header+`"`), endless("x\n")),
		"many columns": io.MultiReader(strings.NewReader(header), endless(",")),
		"empty lines":  io.MultiReader(strings.NewReader(header), endless("\n")),
	} {
		_, err := readAll(in)
		if err == nil || !strings.Contains(err.Error(), "64 KiB") {
			t.Errorf("%s: %v", name, err)
		}
	}
}

func TestFolderIsNoFile(t *testing.T) {
	_, _, err := openFile(&cli.Env{}, t.TempDir())
	if err == nil || !strings.Contains(err.Error(), "-in: ") || !strings.Contains(err.Error(), "is a directory") {
		t.Error(err)
	}
}
