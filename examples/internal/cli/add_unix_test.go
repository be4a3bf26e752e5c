//go:build unix

package cli

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"example.org/sapreckoner/examples/internal/folder"
)

// adder is what the child of the tests below does.
const adder = "ADDER"

// TestAdder is that child.
func TestAdder(t *testing.T) {
	how, dir, _ := strings.Cut(os.Getenv(adder), " ")
	switch how {
	case "":
		t.Skip("only as a child")
	case "full":
		limit := syscall.Rlimit{Cur: 1 << 12, Max: 1 << 12}
		if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &limit); err != nil {
			t.Fatal(err)
		}
		status, out, errs := runIn(dir, gatherer(marchTenth, nil), "-write")
		fmt.Println(status, out, errs)
	case "on":
		fmt.Println("writing")
		for day := time.Date(2034, 1, 1, 0, 0, 0, 0, time.UTC); ; day = day.AddDate(0, 0, 1) {
			row := folder.Row{{Column: "date", Text: day.Format(time.DateOnly)}, {Column: "note", Text: "a day of the spring"}}
			if day.Year() > 2034 {
				day = day.AddDate(-1, 0, 0)
			}
			if status, _, errs := runIn(dir, gatherer([]folder.Row{row}, nil), "-write"); status != OK {
				t.Fatal(errs)
			}
		}
	}
}

// No room leaves the file and the copy of yesterday as they were, and is told.
func TestAddWithoutRoom(t *testing.T) {
	long := "# " + strings.Repeat("x", 8<<10) + "\n" + daysBefore
	for _, copied := range []bool{false, true} {
		dir, path := newFolder(t, long)
		if copied {
			put(t, path+Before, "of today", 0o600)
		}
		out, err := childOf(t, "TestAdder", adder, "full", dir).CombinedOutput()
		if err != nil || !strings.Contains(string(out), "-write: "+path+": ") || !strings.Contains(string(out), "file too large") || !strings.HasPrefix(string(out), "2 ") {
			t.Errorf("%v\n%s", err, out)
		}
		holds(t, path, long)
		if copied {
			holds(t, path+Before, "of today")
		} else if _, err := os.Stat(path + Before); err == nil {
			t.Error("a part of a copy")
		}
	}
}

// A run that is killed at any moment, or interrupted, leaves a whole file.
func TestAddKilled(t *testing.T) {
	for i, s := range []syscall.Signal{syscall.SIGKILL, syscall.SIGTERM, syscall.SIGKILL, syscall.SIGINT, syscall.SIGKILL, syscall.SIGHUP} {
		if signal.Ignored(s) {
			continue // as under nohup, where the child ignores it, too
		}
		const before = "date,note\n2033-12-31,before\n"
		dir, path := newFolder(t, before)
		cmd := childOf(t, "TestAdder", adder, "on", dir)
		out, err := cmd.StdoutPipe()
		if err != nil {
			t.Fatal(err)
		}
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		if _, err := out.Read(make([]byte, 8)); err != nil {
			t.Error(err)
		}
		time.Sleep(time.Duration(5+rand.IntN(60)) * time.Millisecond)
		if err := cmd.Process.Signal(s); err != nil {
			t.Fatal(err)
		}
		_ = cmd.Wait()
		got, err := os.ReadFile(path)
		if err != nil || !bytes.HasPrefix(got, []byte(before)) {
			t.Fatalf("%v\n%s", err, got)
		}
		for n, line := range strings.SplitAfter(strings.TrimPrefix(string(got), before), "\n") {
			want := time.Date(2034, 1, 1+n, 0, 0, 0, 0, time.UTC).Format(time.DateOnly) + ",a day of the spring\n"
			if line != want && line != "" {
				t.Errorf("line %d: %q", n, line)
			}
		}
		if kept, err := os.ReadFile(path + Before); err == nil && string(kept) != before {
			t.Errorf("kept %q", kept)
		}
		if parts, err := filepath.Glob(filepath.Join(dir, ".unfinished-*")); s != syscall.SIGKILL && (err != nil || len(parts) > 0) {
			t.Errorf("%d: left %v, %v", i, parts, err)
		}
	}
}

// A link in the folder stays a link.
func TestAddThroughALink(t *testing.T) {
	dir, path := newFolder(t, daysBefore)
	far := filepath.Join(t.TempDir(), "far.csv")
	if err := os.Rename(path, far); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(far, path); err != nil {
		t.Skip(err)
	}
	if status, _, errs := runIn(dir, gatherer(marchTenth, nil), "-write"); status != OK {
		t.Error(errs)
	}
	holds(t, far, daysAfter)
	holds(t, path+Before, daysBefore)
	if info, err := os.Lstat(path); err != nil || info.Mode()&os.ModeSymlink == 0 {
		t.Errorf("the link is gone: %v, %v", info, err)
	}
}
