package cli

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestSave(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "a.svg")
	for _, content := range []string{"first", "second"} {
		if err := Save("svg", path, []byte(content)); err != nil {
			t.Fatal(err)
		}
		if got, err := os.ReadFile(path); err != nil || string(got) != content {
			t.Errorf("%q, %v", got, err)
		}
	}
	// A folder of that name is in the way: nothing is left behind.
	if err := Save("svg", dir, nil); err == nil || !strings.HasPrefix(err.Error(), "-svg: ") {
		t.Errorf("got %v", err)
	}
	nowhere := filepath.Join(dir, "nowhere", "a.svg")
	if err := Save("svg", nowhere, nil); err == nil || !strings.HasPrefix(err.Error(), "-svg: "+nowhere+": ") {
		t.Errorf("got %v", err)
	}
	for _, folder := range []string{dir, filepath.Dir(dir)} {
		if left, err := filepath.Glob(filepath.Join(folder, ".unfinished-*")); err != nil || len(left) > 0 {
			t.Errorf("left %v, %v", left, err)
		}
	}
}
