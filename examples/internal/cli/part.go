package cli

import (
	"errors"
	"io"
	"io/fs"
	"math/rand/v2"
	"os"
	"os/signal"
	"path/filepath"
	"strconv"
	"sync"
	"syscall"
)

// replace writes the content into a part beside the file, which takes the
// file's name in the end: the file is whole or as it was. The mode is that of
// the old file; a new one, of mode 0, gets what the system gives. Still, unless nil,
// is asked last of all: an error leaves the file as it was.
func replace(path string, mode fs.FileMode, content func(io.Writer) error, still func() error) error {
	first := mode
	if mode == 0 {
		first = 0o666 // less the umask
	} else {
		first = 0o600 // nobody else reads what is not finished
	}
	// The interrupt is awaited before there is a part. It keeps the lock: none comes
	// into being behind its back.
	var lock sync.Mutex
	var part *os.File
	forget := onInterrupt(func() {
		if lock.Lock(); part != nil {
			_ = part.Close() // where an open file cannot be removed
			_ = os.Remove(part.Name())
		}
	})
	defer forget()
	lock.Lock()
	made, err := newPart(filepath.Dir(path), first)
	part = made
	lock.Unlock()
	if err != nil {
		return err
	}
	err = fill(part, content)
	if err == nil && mode != 0 {
		err = os.Chmod(part.Name(), mode)
	}
	if err == nil && still != nil {
		err = still()
	}
	if err == nil {
		err = os.Rename(part.Name(), path)
	}
	if err != nil {
		// Perhaps an interrupt has closed the part: then forget, which comes after
		// this, does not return, and no error is told.
		_ = os.Remove(part.Name())
	}
	return err
}

// newPart makes a file of a random name.
func newPart(folder string, mode fs.FileMode) (*os.File, error) {
	const tries = 100
	for i := 0; ; i++ {
		name := filepath.Join(folder, ".unfinished-"+strconv.FormatUint(rand.Uint64(), 36))
		f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
		if err == nil || !errors.Is(err, fs.ErrExist) || i == tries {
			return f, err
		}
	}
}

// TempDir makes a folder for what is too big for memory, and returns how to
// remove it. It goes when the program is interrupted, too.
func TempDir() (path string, remove func() error, err error) {
	var lock sync.Mutex // as in replace
	made := ""
	forget := onInterrupt(func() {
		if lock.Lock(); made != "" {
			_ = os.RemoveAll(made)
		}
	})
	lock.Lock()
	made, err = os.MkdirTemp("", ".unfinished-*")
	lock.Unlock()
	if err != nil {
		forget()
		return "", nil, err
	}
	return made, func() error {
		defer forget()
		return os.RemoveAll(made)
	}, nil
}

// interrupts is what is to be done before an interrupted program ends.
var interrupts struct {
	sync.Mutex
	signals chan os.Signal
	pending map[*func()]bool
}

// hangup comes when the window of the terminal is closed. Not every system has
// the name, and those without send none.
const hangup = syscall.Signal(1)

// onInterrupt has something done when the program is interrupted, until forget
// is called. Once an interrupt has come forget does not return: the program
// ends, with the status of a program that the signal ended.
func onInterrupt(do func()) (forget func()) {
	in := &interrupts
	in.Lock()
	defer in.Unlock()
	if len(in.pending) == 0 {
		in.pending = map[*func()]bool{}
		in.signals = make(chan os.Signal, 1)
		for _, s := range []os.Signal{os.Interrupt, syscall.SIGTERM, hangup} {
			if !signal.Ignored(s) {
				signal.Notify(in.signals, s)
			}
		}
		go await(in.signals)
	}
	in.pending[&do] = true
	return func() {
		in.Lock()
		defer in.Unlock()
		if in.pending[&do] {
			delete(in.pending, &do)
			if len(in.pending) == 0 {
				signal.Stop(in.signals)
				close(in.signals)
			}
		}
	}
}

func await(signals <-chan os.Signal) {
	s, ok := <-signals
	if !ok {
		return
	}
	interrupts.Lock() // for good
	for do := range interrupts.pending {
		(*do)()
	}
	status := 128 // and the number of the signal, as shells have it
	if n, ok := s.(syscall.Signal); ok {
		status += int(n)
	}
	os.Exit(status)
}
