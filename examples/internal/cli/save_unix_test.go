//go:build unix

package cli

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"strings"
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
	if err := by("p").Draw("svg", path, []byte("through")); err != nil {
		t.Fatal(err)
	}
	info, err := os.Lstat(path)
	if err != nil || info.Mode()&fs.ModeNamedPipe == 0 {
		t.Fatalf("it is no pipe any more: %v, %v", info, err)
	}
	if got := <-read; got != drawn("p", "through") {
		t.Errorf("read %q", got)
	}
}

// A private file stays private, and a link stays a link, also one to a file that
// is not there yet.
func TestSaveKeepsModeAndLink(t *testing.T) {
	dir := t.TempDir()
	file, link := filepath.Join(dir, "a.svg"), filepath.Join(dir, "link.svg")
	if err := os.Symlink("a.svg", link); err != nil {
		t.Skip(err)
	}
	for _, mode := range []fs.FileMode{0o600, 0o640, 0o664} {
		put(t, file, drawn("p", "old"), mode)
		if err := by("p").Draw("svg", link, []byte("new")); err != nil {
			t.Fatal(err)
		}
		holds(t, file, drawn("p", "new"))
		if info, err := os.Stat(file); err != nil || info.Mode().Perm() != mode {
			t.Errorf("mode %v, not %v, %v", info.Mode(), mode, err)
		}
		if err := os.Remove(file); err != nil {
			t.Fatal(err)
		}
		if err := by("p").Draw("svg", link, []byte("first")); err != nil {
			t.Fatal(err)
		}
		holds(t, file, drawn("p", "first"))
		if info, err := os.Lstat(link); err != nil || info.Mode()&fs.ModeSymlink == 0 {
			t.Errorf("the link is gone: %v, %v", info, err)
		}
	}
	round := filepath.Join(dir, "round.svg")
	if err := os.Symlink("round.svg", round); err != nil {
		t.Fatal(err)
	}
	if err := by("p").Draw("svg", round, nil); err == nil || !strings.HasPrefix(err.Error(), "-svg: "+round+": ") {
		t.Error(err)
	}
}

// The umask is that of the whole process: it is set in a child only.
const saver = "SAVER"

// TestSaver is the child of the tests below: it saves a file in its own way.
func TestSaver(t *testing.T) {
	how, path, _ := strings.Cut(os.Getenv(saver), " ")
	always := func(io.ReaderAt, int64) bool { return true }
	switch how {
	case "":
		t.Skip("only as a child")
	case "umask":
		syscall.Umask(0o077)
		if err := by("p").Draw("svg", path, []byte("new")); err != nil {
			t.Error(err)
		}
	case "wait":
		_, remove, err := TempDir()
		if err != nil {
			t.Fatal(err)
		}
		defer remove()
		err = by("p").Save("svg", path, always, func(w io.Writer) error {
			_, _ = w.Write(make([]byte, 1<<16))
			fmt.Println("writing")
			select {} // until the signal
		})
		t.Error("it went on", err)
	case "full":
		limit := syscall.Rlimit{Cur: 1 << 12, Max: 1 << 12}
		if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &limit); err != nil {
			t.Fatal(err)
		}
		err := by("p").Draw("svg", path, make([]byte, 1<<16))
		fmt.Println("error:", err)
	}
}

// child runs TestSaver in a process of its own.
func child(t *testing.T, how, path string) *exec.Cmd {
	t.Helper()
	return childOf(t, "TestSaver", saver, how, path)
}

// childOf runs a test in a process of its own. A test that an emulator runs cannot
// start itself.
func childOf(t *testing.T, test, variable, how, path string) *exec.Cmd {
	t.Helper()
	if err := exec.Command(os.Args[0], "-test.run=^$").Run(); errors.Is(err, syscall.ENOEXEC) {
		t.Skip("this machine cannot start its own test: ", err)
	}
	cmd := exec.Command(os.Args[0], "-test.run=^"+test+"$")
	cmd.Env = append(os.Environ(), variable+"="+how+" "+path, "TMPDIR="+filepath.Dir(path))
	return cmd
}

// A new file is as private as its owner asks.
func TestSaveKeepsUmask(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.svg")
	if out, err := child(t, "umask", path).CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	holds(t, path, drawn("p", "new"))
	if info, err := os.Stat(path); err != nil || info.Mode().Perm() != 0o600 {
		t.Errorf("mode %v, %v", info.Mode(), err)
	}
}

// An interrupted run leaves the old file, and neither a part nor a folder.
func TestSaveInterrupted(t *testing.T) {
	for _, s := range []syscall.Signal{syscall.SIGINT, syscall.SIGTERM, syscall.SIGHUP} {
		if signal.Ignored(s) {
			continue // as under nohup, where the child ignores it, too
		}
		dir := t.TempDir()
		path := filepath.Join(dir, "a.svg")
		put(t, path, "old", 0o600)
		cmd := child(t, "wait", path)
		out, err := cmd.StdoutPipe()
		if err != nil {
			t.Fatal(err)
		}
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		line, err := bufio.NewReader(out).ReadString('\n')
		if err != nil || line != "writing\n" {
			t.Errorf("%q, %v", line, err)
		}
		if parts, err := filepath.Glob(filepath.Join(dir, ".unfinished-*")); err != nil || len(parts) != 2 {
			t.Errorf("%d parts and folders meanwhile, %v", len(parts), err)
		}
		if err := cmd.Process.Signal(s); err != nil {
			t.Fatal(err)
		}
		var exit *exec.ExitError
		if err := cmd.Wait(); !errors.As(err, &exit) || exit.ExitCode() != 128+int(s) {
			t.Errorf("%v: %v", s, err)
		}
		holds(t, path, "old")
	}
}

// No room leaves the old file whole, and is told.
func TestSaveWithoutRoom(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.svg")
	put(t, path, drawn("p", "old"), 0o600)
	out, err := child(t, "full", path).CombinedOutput()
	if err != nil || !strings.Contains(string(out), "error: -svg: "+path+": file too large") {
		t.Errorf("%v\n%s", err, out)
	}
	holds(t, path, drawn("p", "old"))
	if _, err := os.Stat("/dev/full"); err != nil {
		t.Skip("no full device: ", err)
	}
	if err := by("p").Draw("svg", "/dev/full", []byte("new")); err == nil || !strings.Contains(err.Error(), "-svg: /dev/full: no space left on device") {
		t.Error(err)
	}
}

// A folder that takes no new file leaves the old one.
func TestSaveInReadOnlyFolder(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "a.svg")
	put(t, path, drawn("p", "old"), 0o600)
	if err := os.Chmod(dir, 0o500); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = os.Chmod(dir, 0o700) })
	if f, err := os.Create(filepath.Join(dir, "try")); err == nil {
		_ = f.Close()
		t.Skip("this user writes into a folder that is read-only")
	}
	if err := by("p").Draw("svg", path, []byte("new")); err == nil || !strings.Contains(err.Error(), "permission denied") {
		t.Error(err)
	}
	holds(t, path, drawn("p", "old"))
}
