//go:build unix

package cli

import (
	"io/fs"
	"os"
	"path/filepath"
	"syscall"
	"testing"
)

// A pipe, as a device, is written to and never replaced by a file.
func TestSaveThroughPipe(t *testing.T) {
	path := filepath.Join(t.TempDir(), "pipe")
	if err := syscall.Mkfifo(path, 0o600); err != nil {
		t.Skip(err)
	}
	read := make(chan string, 1)
	go func() {
		got, err := os.ReadFile(path)
		if err != nil {
			t.Error(err)
		}
		read <- string(got)
	}()
	if err := Save("svg", path, []byte("through")); err != nil {
		t.Fatal(err)
	}
	info, err := os.Lstat(path)
	if err != nil || info.Mode()&fs.ModeNamedPipe == 0 {
		t.Fatalf("it is no pipe any more: %v, %v", info, err)
	}
	if got := <-read; got != "through" {
		t.Errorf("read %q", got)
	}
}

// A private file stays private, and a link stays a link.
func TestSaveKeepsModeAndLink(t *testing.T) {
	dir := t.TempDir()
	file, link := filepath.Join(dir, "a.svg"), filepath.Join(dir, "link.svg")
	if err := os.WriteFile(file, []byte("old"), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(file, link); err != nil {
		t.Skip(err)
	}
	if err := Save("svg", link, []byte("new")); err != nil {
		t.Fatal(err)
	}
	if got, err := os.ReadFile(file); err != nil || string(got) != "new" {
		t.Errorf("%q, %v", got, err)
	}
	if info, err := os.Lstat(link); err != nil || info.Mode()&fs.ModeSymlink == 0 {
		t.Errorf("the link is gone: %v, %v", info, err)
	}
	if info, err := os.Stat(file); err != nil || info.Mode().Perm() != 0o600 {
		t.Errorf("mode %v, %v", info.Mode(), err)
	}
}
