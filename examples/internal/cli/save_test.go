package cli

import (
	"bytes"
	"errors"
	"io"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
)

// by is what a program of that name is given.
func by(program string) *Env { return &Env{program: program, Out: new(bytes.Buffer)} }

// drawn is what that program draws into a file.
func drawn(program, svg string) string {
	return "<!-- Drawn by " + program + ", which may replace this file. -->\n" + svg
}

// holds wants one file in a folder, with that content.
func holds(t *testing.T, path, want string) {
	t.Helper()
	if got, err := os.ReadFile(path); err != nil || string(got) != want {
		t.Errorf("it holds %.60q, not %.60q: %v", got, want, err)
	}
	if left, err := filepath.Glob(filepath.Join(filepath.Dir(path), ".unfinished-*")); err != nil || len(left) > 0 {
		t.Errorf("left %v, %v", left, err)
	}
}

func put(t *testing.T, path, content string, mode os.FileMode) {
	t.Helper()
	if err := os.WriteFile(path, []byte(content), mode); err != nil {
		t.Fatal(err)
	}
	if err := os.Chmod(path, mode); err != nil { // whatever the umask
		t.Fatal(err)
	}
}

func TestDraw(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "a.svg")
	for _, content := range []string{"first", "second"} {
		if err := by("p").Draw("svg", path, []byte(content)); err != nil {
			t.Fatal(err)
		}
		holds(t, path, drawn("p", content))
	}
	e := by("p")
	if err := e.Draw("svg", "-", []byte("third")); err != nil || e.Out.String() != drawn("p", "third") {
		t.Errorf("printed %q, %v", e.Out, err)
	}
	// A folder of that name is in the way: nothing is left behind.
	if err := by("p").Draw("svg", dir, nil); err == nil || !strings.HasPrefix(err.Error(), "-svg: ") {
		t.Errorf("got %v", err)
	}
	nowhere := filepath.Join(dir, "nowhere", "a.svg")
	if err := by("p").Draw("svg", nowhere, nil); err == nil || !strings.HasPrefix(err.Error(), "-svg: "+nowhere+": ") {
		t.Errorf("got %v", err)
	}
	// Neither a folder nor a file can be made below a file, whoever asks.
	below := filepath.Join(path, "a.svg")
	if err := by("p").Draw("svg", below, nil); err == nil || !strings.HasPrefix(err.Error(), "-svg: "+below+": ") {
		t.Errorf("got %v", err)
	}
	holds(t, path, drawn("p", "second"))
}

// What somebody else made is not replaced: neither a record nor a picture, nor
// what another program drew, nor an empty file.
func TestSaveRefusesWhatIsNotItsOwn(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.svg")
	for _, old := range []string{"time,source,volume_us_gal\n", "<svg></svg>\n", drawn("other", "<svg/>"), " " + drawn("p", "<svg/>"), "", "<!-- Drawn by p"} {
		put(t, path, old, 0o644)
		err := by("p").Draw("svg", path, []byte("new"))
		if err == nil || !strings.Contains(err.Error(), "-svg: "+path+": it is there already and p did not make it") || !strings.Contains(err.Error(), "name another file") {
			t.Errorf("%q: %v", old, err)
		}
		holds(t, path, old)
	}
}

// What the run reads is not replaced, by whatever name, even if the program had
// made it.
func TestSaveRefusesInputs(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "trees.csv")
	old := drawn("p", "1,2\n")
	put(t, path, old, 0o644)
	e := by("p")
	in, err := e.Open("tree-file", path)
	if err != nil {
		t.Fatal(err)
	}
	defer in.Close()
	names := []string{path, filepath.Join(dir, ".", "x", "..", "trees.csv")}
	hard, soft := filepath.Join(dir, "hard.svg"), filepath.Join(dir, "soft.svg")
	if err := os.Link(path, hard); err == nil {
		names = append(names, hard)
	}
	if err := os.Symlink("trees.csv", soft); err == nil {
		names = append(names, soft)
	}
	if len(names) < 4 && runtime.GOOS == "linux" {
		t.Error("no links")
	}
	for _, name := range names {
		if err := e.Draw("svg", name, []byte("new")); err == nil || !strings.Contains(err.Error(), "it is what this run reads") {
			t.Errorf("%s: %v", name, err)
		}
		holds(t, path, old)
	}
	// The same on standard input.
	e = by("p")
	stdin, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer stdin.Close()
	e.In = stdin
	if _, err := e.Open("tree-file", "-"); err != nil {
		t.Fatal(err)
	}
	if err := e.Draw("svg", path, []byte("new")); err == nil || !strings.Contains(err.Error(), "it is what this run reads") {
		t.Error(err)
	}
	holds(t, path, old)
}

// What fails midway leaves the old file whole, and tells its own reason.
func TestSaveFailsWhole(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.svg")
	broken := errors.New("broken")
	always := func(io.ReaderAt, int64) bool { return true }
	half := func(w io.Writer) error {
		_, _ = w.Write(make([]byte, 1<<16))
		return broken
	}
	if err := by("p").Save("svg", path, always, half); !errors.Is(err, broken) {
		t.Error(err)
	}
	if _, err := os.Lstat(path); err == nil {
		t.Error("half a file is there")
	}
	put(t, path, "old", 0o600)
	if err := by("p").Save("svg", path, always, half); !errors.Is(err, broken) {
		t.Error(err)
	}
	holds(t, path, "old")
	if runtime.GOOS != "windows" && runtime.GOOS != "js" {
		put(t, path, "old", 0o400)
		if err := by("p").Save("svg", path, always, half); err == nil || !strings.Contains(err.Error(), "protected from writing") {
			t.Error(err)
		}
		holds(t, path, "old")
	}
}
