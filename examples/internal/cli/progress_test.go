package cli

import (
	"bytes"
	"io"
	"os"
	"strings"
	"testing"
	"time"
)

// clock gives a progress a clock of the test's own.
func clock(w io.Writer, on bool) (*Progress, *time.Time) {
	now := time.Date(2031, 3, 8, 16, 0, 0, 0, time.UTC)
	return &Progress{w: w, on: on, began: now, now: func() time.Time { return now }}, &now
}

func TestProgress(t *testing.T) {
	var out bytes.Buffer
	p, now := clock(&out, true)
	r := p.Reader("day.csv", 4e6, strings.NewReader(strings.Repeat("x", 4e6)))
	read := func() {
		if _, err := io.ReadFull(r, make([]byte, 1e6)); err != nil {
			t.Fatal(err)
		}
	}
	read()
	if out.Len() != 0 {
		t.Errorf("told at once: %q", out.String())
	}
	*now = now.Add(2 * time.Second)
	read()
	if got := out.String(); !strings.HasPrefix(got, "\rday.csv: 2.0 of 4.0 MB read, 50 %") {
		t.Errorf("told %q", got)
	}
	out.Reset()
	*now = now.Add(100 * time.Millisecond)
	read()
	if out.Len() != 0 {
		t.Errorf("told again after a tenth of a second: %q", out.String())
	}
	if _, err := io.WriteString(p, "day.csv:7: bad\n"); err != nil {
		t.Fatal(err)
	}
	wiped := "\r" + strings.Repeat(" ", width) + "\r"
	if got := out.String(); got != wiped+"day.csv:7: bad\n" {
		t.Errorf("a message came out as %q", got)
	}
	out.Reset()
	p.Done()
	if out.Len() != 0 {
		t.Errorf("wiped twice: %q", out.String())
	}
	*now = now.Add(time.Second)
	read()
	p.Done()
	if got := out.String(); !strings.Contains(got, "4.0 of 4.0 MB read, 100 %") || !strings.HasSuffix(got, wiped) {
		t.Errorf("at the end %q", got)
	}
}

// Of a stream nobody knows the size.
func TestProgress_stream(t *testing.T) {
	var out bytes.Buffer
	p, now := clock(&out, true)
	*now = now.Add(2 * time.Second)
	if _, err := p.Reader("-", 0, strings.NewReader(strings.Repeat("x", 3e6))).Read(make([]byte, 2e6)); err != nil {
		t.Fatal(err)
	}
	if got := strings.TrimRight(out.String(), " "); got != "\r-: 2.0 MB read" {
		t.Errorf("told %q", got)
	}
}

// A file that is written to instead of a terminal gets no progress.
func TestProgress_file(t *testing.T) {
	f, err := os.CreateTemp(t.TempDir(), "err")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	for _, w := range []io.Writer{f, new(bytes.Buffer)} {
		if p := (&Env{Err: w}).Progress(); p.on {
			t.Errorf("%T is taken for a terminal", w)
		}
	}
	var out bytes.Buffer
	p, now := clock(&out, false)
	*now = now.Add(time.Minute)
	if _, err := io.ReadAll(p.Reader("day.csv", 0, strings.NewReader("x"))); err != nil || out.Len() != 0 {
		t.Errorf("told %q, %v", out.String(), err)
	}
}
