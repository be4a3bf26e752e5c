//go:build unix

package clitest

import (
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"
)

// parts is how the name of a file begins that is not finished.
const parts = ".unfinished-"

// A Writing is a run that writes into a folder.
type Writing struct {
	Files map[string]string            // of the folder before the run
	Args  func(folder string) []string // of the run; the same files come of it each time
}

// WritesWhole ends the program at random moments while it writes, by each signal that
// a person, a system or a power switch may send, and gives it a disk that is full:
// each file is then as it was or as it was to be, never half, and the next run writes
// what is missing.
func (b Binary) WritesWhole(t *testing.T, w Writing) {
	t.Helper()
	dir := Folder(t, w.Files)
	before := contents(t, dir)
	begin := time.Now()
	if status, _, errs := b.Run(t, "", w.Args(dir)...); status != 0 {
		t.Fatalf("status %d: %s", status, errs)
	}
	took := time.Since(begin)
	after := contents(t, dir)
	if maps.Equal(before, after) {
		t.Fatal("the run writes nothing")
	}
	t.Run("interrupted", func(t *testing.T) { b.interrupted(t, w, before, after, took) })
	t.Run("full disk", func(t *testing.T) { b.fullDisk(t, w, before, after) })
}

// interrupted sends signals: half of them at any moment of the run, half as soon as
// anything stirs in the folder, or a moment later.
func (b Binary) interrupted(t *testing.T, w Writing, before, after map[string]string, took time.Duration) {
	signals := []syscall.Signal{syscall.SIGKILL, syscall.SIGINT, syscall.SIGTERM, syscall.SIGHUP}
	tries := 6 * len(signals)
	if testing.Short() {
		tries = 2 * len(signals)
	}
	old, whole, cut := 0, 0, 0
	for i := range tries {
		dir, temp, s := Folder(t, w.Files), t.TempDir(), signals[i%len(signals)]
		cmd := b.Command(w.Args(dir)...)
		cmd.Env = append(cmd.Environ(), "TMPDIR="+temp)
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		ended := make(chan error, 1)
		go func() { ended <- cmd.Wait() }()
		if i/len(signals)%2 == 0 {
			time.Sleep(time.Duration((float64(i) + rand.Float64()) / float64(tries) * 1.2 * float64(took)))
		} else {
			for still := sizes(t, dir); len(ended) == 0 && sizes(t, dir) == still; {
			}
			time.Sleep(time.Duration(rand.IntN(1+i*20)) * time.Microsecond)
		}
		_ = cmd.Process.Signal(s) // of one that has ended already there is nothing to end
		<-ended
		if cmd.ProcessState.ExitCode() != 0 {
			cut++
		}
		now := contents(t, dir)
		each(t, now, before, after)
		if maps.Equal(now, after) {
			whole++
		} else {
			old++
		}
		if left := append(unfinished(t, dir), unfinished(t, temp)...); s != syscall.SIGKILL && len(left) > 0 {
			t.Errorf("%v leaves %v", s, left)
		}
		if i%len(signals) != i/len(signals)%len(signals) || maps.Equal(now, after) {
			continue // some of the next runs tell enough
		}
		status, _, errs := b.Run(t, "", w.Args(dir)...)
		if then := contents(t, dir); status != 0 || !maps.Equal(then, after) {
			t.Errorf("the run after %v: status %d: %s, and not the files that were to be", s, status, errs)
		}
	}
	t.Logf("%d runs: %d cut short; files old %d times, new %d times", tries, cut, old, whole)
}

// fullDisk gives the run a disk of its own with little room or none, where the user
// may mount one, and else a bound on the size of files.
func (b Binary) fullDisk(t *testing.T, w Writing, before, after map[string]string) {
	largest := 0
	for _, text := range after {
		largest = max(largest, len(text))
	}
	for _, room := range []int{0, largest / 2} {
		dir, mounted := t.TempDir(), false
		if exec.Command("mount", "-t", "tmpfs", "-o", "size="+strconv.Itoa(8*largest+1<<20), "tmpfs", dir).Run() == nil {
			mounted = true
			t.Cleanup(func() { _ = exec.Command("umount", dir).Run() })
		}
		for name, text := range before {
			if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		cmd, full := b.Command(w.Args(dir)...), "file too large"
		if mounted {
			full = "no space left on device"
			fillUp(t, filepath.Join(dir, "ballast"), room)
		} else {
			// A shell counts blocks of 512 or of 1024 bytes.
			cmd.Args = append([]string{"sh", "-c", "ulimit -f " + strconv.Itoa(room/1024) + ` && exec "$0" "$@"`, cmd.Path}, cmd.Args[1:]...)
			cmd.Path = "/bin/sh"
		}
		out, err := cmd.CombinedOutput()
		var exit *exec.ExitError
		if !errors.As(err, &exit) || exit.ExitCode() != 2 || !strings.Contains(string(out), full) || strings.Count(string(out), "\n") != 1 {
			t.Errorf("%d bytes of room: %v: %s", room, err, out)
		}
		now := contents(t, dir)
		delete(now, "ballast")
		each(t, now, before, after)
		if maps.Equal(now, after) {
			t.Errorf("%d bytes of room were enough", room)
		}
		if left := unfinished(t, dir); len(left) > 0 {
			t.Errorf("it leaves %v", left)
		}
	}
}

// fillUp fills a disk but for the room that is left.
func fillUp(t *testing.T, path string, room int) {
	t.Helper()
	f, err := os.Create(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	for block := make([]byte, 4096); err == nil; {
		_, err = f.Write(block)
	}
	size, sizeErr := f.Seek(0, 1)
	if !errors.Is(err, syscall.ENOSPC) || sizeErr != nil {
		t.Fatal(err, sizeErr)
	}
	if err := f.Truncate(max(0, size-int64(room))); err != nil {
		t.Fatal(err)
	}
}

// each wants each file as it was or as it was to be.
func each(t *testing.T, now, before, after map[string]string) {
	t.Helper()
	names := slices.Concat(slices.Collect(maps.Keys(now)), slices.Collect(maps.Keys(before)), slices.Collect(maps.Keys(after)))
	slices.Sort(names)
	for _, name := range slices.Compact(names) {
		is, there := now[name]
		was, old := before[name]
		to, made := after[name]
		if there == old && is == was || there == made && is == to {
			continue
		}
		t.Errorf("%s has %d bytes (%v), neither the %d (%v) of before nor the %d (%v) of after", name, len(is), there, len(was), old, len(to), made)
	}
}

// contents reads the finished files of a folder.
func contents(t *testing.T, dir string) map[string]string {
	t.Helper()
	all := map[string]string{}
	err := fs.WalkDir(os.DirFS(dir), ".", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || strings.HasPrefix(d.Name(), parts) {
			return err
		}
		text, err := os.ReadFile(filepath.Join(dir, path))
		all[path] = string(text)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// sizes tells the files of a folder and how long they are.
func sizes(t *testing.T, dir string) string {
	t.Helper()
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	var all strings.Builder
	for _, e := range entries {
		if info, err := e.Info(); err == nil { // it may be gone again
			fmt.Fprintln(&all, e.Name(), info.Size())
		}
	}
	return all.String()
}

// unfinished lists what is not finished in a folder.
func unfinished(t *testing.T, dir string) (names []string) {
	t.Helper()
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if strings.HasPrefix(e.Name(), parts) {
			names = append(names, e.Name())
		}
	}
	return names
}
