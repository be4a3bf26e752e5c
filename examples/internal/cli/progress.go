package cli

import (
	"fmt"
	"io"
	"os"
	"time"
)

// When progress is told: not for work that is over at once, and not more often
// than a person can read.
const (
	quiet = time.Second
	pause = 400 * time.Millisecond
)

// Progress tells a person at a terminal how far a long reading has come. It is
// silent where standard error is not a terminal.
//
// It is a writer as well: what must be told meanwhile goes through it, so that
// the line of progress does not end up in the midst of it.
type Progress struct {
	w           io.Writer
	now         func() time.Time
	on          bool
	began, last time.Time
	shown       bool
}

// Progress returns the progress of the run.
func (e *Env) Progress() *Progress {
	p := &Progress{w: e.Err, now: time.Now}
	if f, ok := e.Err.(*os.File); ok {
		info, err := f.Stat()
		p.on = err == nil && info.Mode()&os.ModeCharDevice != 0
	}
	p.began = p.now()
	return p
}

// Reader returns r with its reading told, of size bytes under a name.
func (p *Progress) Reader(name string, size int64, r io.Reader) io.Reader {
	if !p.on {
		return r
	}
	return &told{p: p, name: name, size: size, r: r}
}

type told struct {
	p          *Progress
	name       string
	size, done int64
	r          io.Reader
}

func (t *told) Read(b []byte) (int, error) {
	n, err := t.r.Read(b)
	t.done += int64(n)
	t.p.tell(t.name, t.done, t.size)
	return n, err
}

func (p *Progress) tell(name string, done, size int64) {
	now := p.now()
	if now.Sub(p.began) < quiet || now.Sub(p.last) < pause {
		return
	}
	p.last, p.shown = now, true
	const mb = 1e6
	name = visible(name)
	line := fmt.Sprintf("%s: %.1f MB read", name, float64(done)/mb)
	if size > 0 {
		line = fmt.Sprintf("%s: %.1f of %.1f MB read, %d %%", name, float64(done)/mb, float64(size)/mb, 100*done/max(size, done))
	}
	// A terminal that cannot be written to is no reason to stop counting.
	_, _ = fmt.Fprintf(p.w, "\r%-*s", width, line)
}

// Write wipes the line of progress and writes b.
func (p *Progress) Write(b []byte) (int, error) {
	p.Done()
	return p.w.Write(b)
}

// Done wipes the line of progress.
func (p *Progress) Done() {
	if p.shown {
		_, _ = fmt.Fprintf(p.w, "\r%-*s\r", width, "")
		p.shown = false
	}
}
