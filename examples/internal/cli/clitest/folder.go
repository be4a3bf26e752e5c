package clitest

import (
	"maps"
	"os"
	"path/filepath"
	"testing"
)

// Folder writes the files of a sugarhouse into a new folder, with US gallons unless
// its settings are among them.
func Folder(t testing.TB, files map[string]string) (dir string) {
	t.Helper()
	dir = t.TempDir()
	all := map[string]string{"sugarhouse.txt": "gallons: US\n"}
	maps.Copy(all, files)
	for name, content := range all {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(content), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}
