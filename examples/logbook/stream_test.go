package main

import (
	"bufio"
	"fmt"
	"io"
	"io/fs"
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// invent writes gatherings of an invented season of 60 days and 40 sources, and
// returns the volume of the sap as measured.
func invent(w io.Writer, rows int) (sap units.Volume, err error) {
	draw := rand.New(rand.NewPCG(20, 34))
	out := bufio.NewWriter(w)
	fmt.Fprintln(out, "# An invented season.\ntime,source,volume_us_gal,reading_brix,read_at_f,temp_f")
	for i := range rows {
		day := i * 60 / rows
		tenths := 50 + draw.IntN(600)
		sap += units.USGallons(float64(tenths) / 10)
		fmt.Fprintf(out, "2034-%02d-%02d %02d:%02d,line %d,%d.%d,%.1f,%d,%d\n", 2+day/28, 1+day%28, draw.IntN(24), draw.IntN(60), draw.IntN(40),
			tenths/10, tenths%10, 1.5+draw.Float64()*1.5, 34+draw.IntN(20), 33+draw.IntN(12))
	}
	return sap, out.Flush()
}

// folder writes an invented season into a folder.
func folder(t testing.TB, rows int) (dir string, sap units.Volume) {
	t.Helper()
	dir = t.TempDir()
	f, err := os.Create(filepath.Join(dir, "gatherings.csv"))
	if err != nil {
		t.Fatal(err)
	}
	sap, err = invent(f, rows)
	if err == nil {
		err = f.Close()
	}
	if err != nil {
		t.Fatal(err)
	}
	return dir, sap
}

// season returns a book that reads a folder, and what it tells of wrong rows.
func season(dir string) (*book, *strings.Builder) {
	told := new(strings.Builder)
	return seasonOf(os.DirFS(dir), told), told
}

// seasonOf returns a book that reads files.
func seasonOf(files fs.FS, told io.Writer) *book {
	s := &setup{dir: "folder", files: files, sapStem: units.Fahrenheit(38), stem: units.Fahrenheit(60), target: 66.9, moisture: 25, pressure: units.Atmosphere}
	return newBook(s, &cli.Env{Err: told})
}

// memory returns what was allocated until now, and what of it lives. What the
// heap takes from the machine is not asked for: it grows with the garbage that
// waits, and that waits longer where the machine is busy.
func memory() (allocated, live uint64) {
	var m runtime.MemStats
	runtime.GC()
	runtime.ReadMemStats(&m)
	return m.TotalAlloc, m.HeapAlloc
}

// watched are files that note how much lives while they are read.
type watched struct {
	fs.FS
	most uint64
}

func (w *watched) Open(name string) (fs.File, error) {
	f, err := w.FS.Open(name)
	return &watchedFile{File: f, files: w}, err
}

type watchedFile struct {
	fs.File
	files *watched
	read  int // since it was noted
}

func (f *watchedFile) Read(p []byte) (int, error) {
	if f.read >= 1<<20 {
		_, live := memory()
		f.files.most, f.read = max(f.files.most, live), 0
	}
	n, err := f.File.Read(p)
	f.read += n
	return n, err
}

// A million gatherings are counted to the last one, in no more memory than the
// reader's buffers, the totals by day and source, and the first rows that are looked
// at again, 100,000 of some 64 bytes.
func TestMillion(t *testing.T) {
	if testing.Short() {
		t.Skip("a million rows")
	}
	const rows = million
	dir, sap := folder(t, rows)
	_, live := memory()
	files, told := &watched{FS: os.DirFS(dir)}, new(strings.Builder)
	b := seasonOf(files, told)
	if err := b.read(); err != nil {
		t.Fatal(err)
	}
	_, liveAfter := memory()
	if grown := int64(files.most) - int64(live); files.most == 0 || grown > 12<<20 {
		t.Errorf("%d MB live while the file is read", grown>>20)
	}
	if grown := int64(liveAfter) - int64(live); grown > 1<<20 {
		t.Errorf("%d KB are kept", grown>>10)
	}
	counted, volume := 0, 0.0
	for i := range b.days {
		counted += b.days[i].sap.rows
		lot, err := b.days[i].sap.lot()
		if err != nil {
			t.Fatal(err)
		}
		volume += lot.Volume().CubicMeters()
	}
	if counted != rows || b.wrong.rows != 0 || told.Len() != 0 || len(b.sources) != 40 {
		t.Errorf("%d rows, %d wrong, %d sources, told %q", counted, b.wrong.rows, len(b.sources), told)
	}
	// Cold sap fills up to 0.2 percent less than at 68 F.
	if r := volume / sap.CubicMeters(); math.Abs(r-1.001) > 0.001 {
		t.Errorf("volume is %v of what was written", r)
	}
}

// A million rows that are all wrong are told and forgotten.
func TestAllWrong(t *testing.T) {
	const rows = 50_000
	dir := t.TempDir()
	body := "time,source,volume_us_gal,reading_brix,read_at_f\n2034-03-01 10:00,line,10,2,40\n" + strings.Repeat("2034-03-01 10:00,line,ten,2,40\n", rows)
	if err := os.WriteFile(filepath.Join(dir, "gatherings.csv"), []byte(body), 0o644); err != nil {
		t.Fatal(err)
	}
	b, told := season(dir)
	if err := b.read(); err != nil {
		t.Fatal(err)
	}
	if b.wrong.rows != rows || len(b.wrong.first) != shownWrong || strings.Count(told.String(), "\n") != rows {
		t.Errorf("%d rows wrong, %d shown, %d told", b.wrong.rows, len(b.wrong.first), strings.Count(told.String(), "\n"))
	}
}

// endless gives a file of n bytes without holding it.
type endless struct {
	head string
	fill byte
	left int
}

func (e *endless) Read(p []byte) (int, error) {
	if e.head != "" {
		n := copy(p, e.head)
		e.head = e.head[n:]
		return n, nil
	}
	if e.left == 0 {
		return 0, io.EOF
	}
	n := min(len(p), e.left)
	for i := range p[:n] {
		p[i] = e.fill
	}
	e.left -= n
	return n, nil
}

// Files that are no table end the reading, with a place and in little memory.
func TestHostile(t *testing.T) {
	const head = "time,source,volume_us_gal,reading_brix,read_at_f\n2034-03-01 10:00,line,10,2,40\n"
	const big = 100 << 20
	for name, c := range map[string]struct {
		file io.Reader
		want string
	}{
		"a line of 100 MB":          {&endless{head, 'x', big}, "gatherings.csv:3: a record longer than 64 KiB"},
		"an open quote over 100 MB": {&endless{head + `"`, '\n', big}, "gatherings.csv:3: a record longer than 64 KiB"},
		"a quote at the end":        {&endless{head + `"x`, 'x', 10}, "gatherings.csv:3: "},
		"100 MB of NULs":            {&endless{"", 0, big}, "gatherings.csv:1: a record longer than 64 KiB"},
		"many columns":              {&endless{"time,source", ',', 1000}, "gatherings.csv:1: 1002 columns, more than 256"},
		"nothing":                   {&endless{}, "gatherings.csv: the file is empty"},
		"a header only":             {&endless{head: strings.SplitAfter(head, "\n")[0]}, "no gathering that counts"},
	} {
		t.Run(name, func(t *testing.T) {
			dir := t.TempDir()
			f, err := os.Create(filepath.Join(dir, "gatherings.csv"))
			if err != nil {
				t.Fatal(err)
			}
			if _, err := io.Copy(f, c.file); err != nil {
				t.Fatal(err)
			}
			if err := f.Close(); err != nil {
				t.Fatal(err)
			}
			before, _ := memory()
			b, _ := season(dir)
			err = b.read()
			if err == nil || !strings.Contains(err.Error(), c.want) {
				t.Errorf("got %v, want %q", err, c.want)
			}
			if after, _ := memory(); after-before > 8<<20 {
				t.Errorf("%d MB were allocated", (after-before)>>20)
			}
		})
	}
}

// What is kept is bounded: a column of notes taken for sources ends the reading.
func TestTooMany(t *testing.T) {
	for file, c := range map[string]struct {
		head, row, want string
		most            int
	}{
		"gatherings.csv": {"time,source,volume_us_gal,reading_brix,read_at_f", "2034-03-01 10:00,line %d,10,2,40", "column source: more than 500 sources", mostSources},
		"draws.csv":      {"time,lot,weight_lb,reading_brix,cup_f", "2034-03-01 10:00,lot %d,10,59,211", "column lot: more than 5000 lots", mostLots},
		"packing.csv":    {"day,lot,size_ml,count", "2034-03-01,A,%d,1", "column size_ml: more than 100 sizes", mostSizes},
		"boils.csv":      {"lit,fired_h,sap_us_gal,reading_brix,read_at_f,burned_cord", "2034-03-01 10:00,%d,10,2,40,0.03", "more than 5000 boils", mostBoils},
	} {
		t.Run(file, func(t *testing.T) {
			dir, _ := folder(t, 10)
			var rows strings.Builder
			fmt.Fprintln(&rows, c.head)
			for i := range c.most {
				fmt.Fprintf(&rows, c.row+"\n", i+1)
			}
			name := filepath.Join(dir, file)
			if err := os.WriteFile(name, []byte(rows.String()), 0o644); err != nil {
				t.Fatal(err)
			}
			b, told := season(dir)
			if err := b.read(); err != nil || b.wrong.rows != 0 {
				t.Fatalf("%d are refused: %v %s", c.most, err, told)
			}
			fmt.Fprintf(&rows, c.row+"\n", c.most+1)
			if err := os.WriteFile(name, []byte(rows.String()), 0o644); err != nil {
				t.Fatal(err)
			}
			b, _ = season(dir)
			err := b.read()
			if err == nil || !strings.Contains(err.Error(), c.want) || !strings.Contains(err.Error(), fmt.Sprintf("%s:%d", file, c.most+2)) {
				t.Errorf("got %v, want %q in line %d", err, c.want, c.most+2)
			}
		})
	}
}

func BenchmarkGatherings(b *testing.B) {
	const rows = 200_000
	dir, _ := folder(b, rows)
	b.ReportAllocs()
	for b.Loop() {
		book, _ := season(dir)
		if err := book.read(); err != nil {
			b.Fatal(err)
		}
		if book.wrong.rows > 0 {
			b.Fatal(book.wrong.first)
		}
	}
	b.ReportMetric(rows*float64(b.N)/b.Elapsed().Seconds(), "rows/s")
}
