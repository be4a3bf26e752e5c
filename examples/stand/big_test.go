package main

import (
	"bufio"
	"bytes"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"path/filepath"
	"testing"
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

func BenchmarkStand(b *testing.B) {
	const trees = 100_000
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
