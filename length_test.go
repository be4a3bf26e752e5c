package sapreckoner_test

import (
	"bytes"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"testing"
)

// generated is the line that tells a file which a program wrote (go help generate).
var generated = regexp.MustCompile(`(?m)^// Code generated .* DO NOT EDIT\.$`)

// A file holds one concept, in 300 lines at most, those of the modules of their own
// as well. What a program wrote, and data of tests, may be longer.
func TestFileLength(t *testing.T) {
	const most = 300
	files := 0
	err := filepath.WalkDir(".", func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() {
			if name := d.Name(); name == ".git" || name == "testdata" || name == "vendor" {
				return filepath.SkipDir
			}
			return nil
		}
		if filepath.Ext(path) != ".go" {
			return nil
		}
		text, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		files++
		if n := bytes.Count(text, []byte("\n")); n > most && !generated.Match(text) {
			t.Errorf("%s has %d lines: part it by concept, so that none has more than %d", path, n, most)
		}
		return nil
	})
	if err != nil || files < 500 {
		t.Errorf("%d files were seen, %v", files, err)
	}
}
