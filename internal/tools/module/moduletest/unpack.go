// Package moduletest gives the tests of the tools modules to work on.
package moduletest

import (
	"os"
	"path/filepath"
	"testing"

	"golang.org/x/tools/txtar"
)

// Unpack writes the files of a txtar archive to a temporary folder and returns
// the folder and the text of the one file named want, which it does not write.
func Unpack(t *testing.T, name string) (dir, want string) {
	t.Helper()
	archive, err := txtar.ParseFile(name)
	if err != nil {
		t.Fatal(err)
	}
	dir = t.TempDir()
	for _, f := range archive.Files {
		if f.Name == "want" {
			want = string(f.Data)
			continue
		}
		path := filepath.Join(dir, f.Name)
		if err := os.MkdirAll(filepath.Dir(path), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, f.Data, 0o666); err != nil {
			t.Fatal(err)
		}
	}
	return dir, want
}
