package cli

import (
	"bytes"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/examples/internal/folder"
)

// gatherer adds what its flags tell to days.csv, and what hook does comes between
// reading and writing.
func gatherer(rows []folder.Row, hook func()) Program {
	return Program{Name: "gatherer", Setup: func(f *Flags) func(*Env) error {
		var metric bool
		f.Page(&metric)
		f.Adds("the day")
		return func(e *Env) error {
			s := &Sheet{Title: "a day", Brief: Brief{Verdict: "It ran."}}
			if hook != nil {
				hook()
			}
			if err := s.Add(e, folder.Rows{File: folder.DaysFile, Rows: rows}); err != nil {
				return err
			}
			return s.Show(e)
		}
	}}
}

var marchTenth = []folder.Row{{{Column: "date", Text: "2034-03-10"}, {Column: "sap", Text: "40 US gal"}}}

// run runs it in a folder.
func runIn(dir string, p Program, args ...string) (status int, out, errs string) {
	var o, e bytes.Buffer
	status = p.Main(append([]string{"-dir", dir}, args...), strings.NewReader(""), &o, &e)
	return status, o.String(), e.String()
}

const (
	daysBefore = "date,sap_l\r\n2034-03-09,10"
	daysAfter  = "date,sap_l\r\n2034-03-09,10\r\n2034-03-10,151.42\r\n" // 40 US gal of 3.785 L
)

// newFolder is one with days.csv, and its path.
func newFolder(t *testing.T, days string) (dir, path string) {
	t.Helper()
	dir = t.TempDir()
	put(t, filepath.Join(dir, folder.SettingsFile), "taps: 60\n", 0o644)
	path = filepath.Join(dir, folder.DaysFile)
	put(t, path, days, 0o640)
	return dir, path
}

// Lines are shown, and written only when it is asked for; the file as it was before
// the first of the day is kept, and a line is not added twice.
func TestAdd(t *testing.T) {
	dir, path := newFolder(t, daysBefore)
	status, out, errs := runIn(dir, gatherer(marchTenth, nil), "-full")
	if status != OK || !strings.Contains(out, "-write adds 1 line to days.csv") || !strings.Contains(out, "days.csv: 2034-03-10,151.42\n") {
		t.Errorf("%d\n%s%s", status, out, errs)
	}
	holds(t, path, daysBefore)
	if _, err := os.Stat(path + Before); err == nil {
		t.Error("a copy though nothing was written")
	}
	status, out, errs = runIn(dir, gatherer(marchTenth, nil), "-write")
	if status != OK || !strings.Contains(out, "Added 1 line to days.csv.") {
		t.Errorf("%d\n%s%s", status, out, errs)
	}
	holds(t, path, daysAfter)
	holds(t, path+Before, daysBefore)
	if info, err := os.Stat(path); err != nil || info.Mode().Perm() != 0o640 && runtime.GOOS != "windows" {
		t.Errorf("mode %v, %v", info.Mode(), err)
	}
	status, out, _ = runIn(dir, gatherer(marchTenth, nil), "-write")
	if status != OK || !strings.Contains(out, "The folder has these lines already") {
		t.Errorf("%d\n%s", status, out)
	}
	holds(t, path, daysAfter)
	// More of the same day leaves the copy as it is.
	next := []folder.Row{{{Column: "date", Text: "2034-03-11"}}}
	runIn(dir, gatherer(next, nil), "-write")
	holds(t, path, daysAfter+"2034-03-11,\r\n")
	holds(t, path+Before, daysBefore)
	// The first lines of another day renew it.
	yesterday := time.Now().AddDate(0, 0, -1)
	if err := os.Chtimes(path+Before, yesterday, yesterday); err != nil {
		t.Fatal(err)
	}
	runIn(dir, gatherer([]folder.Row{{{Column: "date", Text: "2034-03-12"}}}, nil), "-write")
	holds(t, path, daysAfter+"2034-03-11,\r\n2034-03-12,\r\n")
	holds(t, path+Before, daysAfter+"2034-03-11,\r\n")
}

// A file that is not there begins with the usual header.
func TestAddBegins(t *testing.T) {
	dir, path := newFolder(t, "")
	if err := os.Remove(path); err != nil {
		t.Fatal(err)
	}
	if status, _, errs := runIn(dir, gatherer(marchTenth, nil), "-write"); status != OK {
		t.Fatal(errs)
	}
	holds(t, path, "date,tank,sap_us_gal,dip_in,sugar_brix,read_at_f,boiled_us_gal,thrown_us_gal,lit,out,syrup_us_gal,wood,note\n2034-03-10,,40,,,,,,,,,,\n")
	if _, err := os.Stat(path + Before); err == nil {
		t.Error("a copy of nothing")
	}
}

// What somebody else did meanwhile is not lost: the run is refused.
func TestAddRefusesWhatChanged(t *testing.T) {
	for name, change := range map[string]func(dir, path string){
		"written to": func(_, path string) { put(t, path, daysBefore+"\r\n2034-03-10,9\r\n", 0o640) },
		"replaced": func(dir, path string) {
			put(t, filepath.Join(dir, "new"), daysBefore, 0o640)
			if err := os.Rename(filepath.Join(dir, "new"), path); err != nil {
				t.Fatal(err)
			}
		},
		"touched": func(_, path string) {
			if err := os.Chtimes(path, time.Time{}, time.Now().Add(-time.Hour)); err != nil {
				t.Fatal(err)
			}
		},
		"gone": func(_, path string) {
			if err := os.Remove(path); err != nil {
				t.Fatal(err)
			}
		},
	} {
		dir, path := newFolder(t, daysBefore)
		var then []byte
		status, out, errs := runIn(dir, gatherer(marchTenth, func() { change(dir, path); then, _ = os.ReadFile(path) }), "-write")
		if status != BadInput || out != "" || !strings.Contains(errs, "-write: "+path+": it changed while this ran: run it again") {
			t.Errorf("%s: %d, %q, %s", name, status, out, errs)
		}
		if name != "gone" {
			holds(t, path, string(then))
		} else if _, err := os.Stat(path); err == nil {
			t.Error("it is there again")
		}
		if _, err := os.Stat(path + Before); err == nil {
			t.Errorf("%s: a copy though nothing was written", name)
		}
	}
}

// The invented sugarhouse takes no lines, and what cannot be added stops a page only
// where it was to be written.
func TestAddRefuses(t *testing.T) {
	var out, errs bytes.Buffer
	if status := gatherer(marchTenth, nil).Main([]string{"-write"}, nil, &out, &errs); status != BadInput || !strings.Contains(errs.String(), "-write: give the folder of your sugarhouse by -dir") {
		t.Errorf("%d %s", status, errs.String())
	}
	dir, path := newFolder(t, "date\n2034-03-09\n")
	const why = "days.csv:1: no column for sap (40 US gal): write sap_us_gal at the end of this line"
	if status, page, errs := runIn(dir, gatherer(marchTenth, nil), "-full"); status != OK || !strings.Contains(strings.Join(strings.Fields(page), " "), why) {
		t.Errorf("%d %s%s", status, page, errs)
	}
	if status, _, errs := runIn(dir, gatherer(marchTenth, nil), "-write"); status != BadInput || !strings.Contains(errs, why) {
		t.Errorf("%d %s", status, errs)
	}
	holds(t, path, "date\n2034-03-09\n")
	// A protected file stays, and a folder in the place of the copy stops it.
	if runtime.GOOS != "windows" && runtime.GOOS != "js" {
		put(t, path, daysBefore, 0o440)
		if status, _, errs := runIn(dir, gatherer(marchTenth, nil), "-write"); status != BadInput || !strings.Contains(errs, "it is protected from writing") {
			t.Errorf("%d %s", status, errs)
		}
		holds(t, path, daysBefore)
	}
	put(t, path, daysBefore, 0o640)
	if err := os.Mkdir(path+Before, 0o755); err != nil {
		t.Fatal(err)
	}
	if status, _, errs := runIn(dir, gatherer(marchTenth, nil), "-write"); status != BadInput || !strings.Contains(errs, "is not a plain file") {
		t.Errorf("%d %s", status, errs)
	}
	holds(t, path, daysBefore)
}
