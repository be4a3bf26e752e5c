package main

import (
	"bufio"
	"bytes"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// invent writes an invented stand of so many trees, and so many holes of each
// of the last years, and returns the flags that read it.
func invent(tb testing.TB, trees, years int) []string {
	tb.Helper()
	draw := rand.New(rand.NewPCG(20, 34))
	dir := tb.TempDir()
	write := func(name string, rows func(w io.Writer)) string {
		path := filepath.Join(dir, name)
		f, err := os.Create(path)
		if err != nil {
			tb.Fatal(err)
		}
		w := bufio.NewWriter(f)
		rows(w)
		if err := w.Flush(); err != nil {
			tb.Fatal(err)
		}
		if err := f.Close(); err != nil {
			tb.Fatal(err)
		}
		return path
	}
	vigor := []string{"healthy", "healthy", "healthy", "slow", "unhealthy", ""}
	species := []string{"sugar maple", "sugar maple", "red maple", "red maple?", "birch"}
	args := []string{"-tree-file", write("trees.csv", func(w io.Writer) {
		fmt.Fprintln(w, "tree,girth_in,species,vigor,growth_in")
		for i := range trees {
			fmt.Fprintf(w, "T%d,%.1f,%s,%s,0.0%d\n", i, 25+65*draw.Float64(), species[draw.IntN(len(species))], vigor[draw.IntN(len(vigor))], 2+draw.IntN(8))
		}
	})}
	if years == 0 {
		return args
	}
	return append(args, "-hole-file", write("holes.csv", func(w io.Writer) {
		fmt.Fprintln(w, "tree,year,bearing_deg,height_in,bit_in,depth_in")
		for i := range trees {
			for y := range years {
				fmt.Fprintf(w, "T%d,%d,%d,%d,0.3125,1.5\n", i, 2034-years+y, draw.IntN(360), 30+draw.IntN(24))
			}
		}
	}))
}

// What is kept of a trunk and its holes is bounded, whatever the stand's size.
func TestMemory(t *testing.T) {
	const trees, years, most = 40_000, 2, 1000 // bytes a trunk
	args := invent(t, trees, years)
	live := func() int64 {
		var m runtime.MemStats
		runtime.GC()
		runtime.ReadMemStats(&m)
		return int64(m.HeapAlloc)
	}
	before := live()
	s := &setup{treeFile: args[1], holeFile: args[3], bit: units.Inch / 4, depth: units.Inch}
	st, err := s.read(&cli.Env{Err: io.Discard})
	if err != nil {
		t.Fatal(err)
	}
	if grown := live() - before; grown > most*trees {
		t.Errorf("%d bytes a trunk", grown/trees)
	}
	if len(st.trunks) != trees || st.holes != trees*years {
		t.Errorf("%d trunks, %d holes", len(st.trunks), st.holes)
	}
}

// An endless cell ends the reading early, with its place.
func TestHostile(t *testing.T) {
	for _, c := range []struct{ head, fill, want string }{
		{"tree,girth_in,species,vigor\n", "x", "stand: -:2: a record longer than 64 KiB"},
		{"tree,girth_in,species,vigor\na,60,\"", "\n", "stand: -:2: a record longer than 64 KiB"},
		{"", "\x00", "stand: -:1: a record longer than 64 KiB"},
		{"tree", ",", "stand: -:1: a record longer than 64 KiB"},
	} {
		in := &counted{r: io.MultiReader(strings.NewReader(c.head), endless(c.fill[0]))}
		var out, errs bytes.Buffer
		if status := program().Main([]string{"-tree-file", "-"}, in, &out, &errs); status != cli.BadInput || out.Len() > 0 || !strings.HasPrefix(errs.String(), c.want) {
			t.Errorf("status %d, %q, want %q", status, errs.String(), c.want)
		}
		if in.n > 1<<20 {
			t.Errorf("%d bytes were read", in.n)
		}
	}
}

// endless gives one byte for ever.
type endless byte

func (e endless) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = byte(e)
	}
	return len(p), nil
}

// counted counts what is read.
type counted struct {
	r io.Reader
	n int
}

func (c *counted) Read(p []byte) (int, error) {
	n, err := c.r.Read(p)
	c.n += n
	return n, err
}

// A million trunks took 3.4 GB: the plan is refused past what a small machine
// holds, before anything is printed, with the way out.
func TestMostTrunks(t *testing.T) {
	var rows strings.Builder
	rows.WriteString("tree,girth_in,species,vigor\n")
	for i := range mostTrunks + 1 {
		fmt.Fprintf(&rows, "T%d,10,,\n", i)
	}
	var out, errs bytes.Buffer
	status := program().Main([]string{"-tree-file", "-"}, strings.NewReader(rows.String()), &out, &errs)
	const want = "stand: -:50002: more than 50000 trunks: plan the stand in parts, a file for each bush or section\n"
	if status != cli.BadInput || out.Len() > 0 || errs.String() != want {
		t.Errorf("status %d, %d bytes out, %q", status, out.Len(), errs.String())
	}
}

func BenchmarkStand(b *testing.B) {
	const trees = mostTrunks
	for _, years := range []int{0, 3} {
		for _, form := range []string{"page", "json"} {
			b.Run(fmt.Sprintf("%d holes a tree, %s", years, form), func(b *testing.B) {
				args := invent(b, trees, years)
				if form == "json" {
					args = append(args, "-json")
				}
				b.ReportAllocs()
				for b.Loop() {
					var errs bytes.Buffer
					if status := program().Main(args, nil, io.Discard, &errs); status != 0 {
						b.Fatal(errs.String())
					}
				}
				b.ReportMetric(trees*float64(b.N)/b.Elapsed().Seconds(), "trees/s")
			})
		}
	}
}
