package main

import (
	"fmt"
	"strings"
	"testing"
)

// manyRows are deliveries of forty sellers, as a file has them.
func manyRows(n int) string {
	var b strings.Builder
	b.WriteString(header)
	for i := range n {
		fmt.Fprintf(&b, "2026-03-%02d,Lane %d,%d.%02d,%d.%d,%d\n", 1+i%28, i%40, 10+i%200, i/200%100, 1+i%3, i%10, 34+i%20)
	}
	return b.String()
}

// BenchmarkSettlement reads, prices, looks again at and settles deliveries, as for a
// ledger.
func BenchmarkSettlement(b *testing.B) {
	const many = 100_000
	text := manyRows(many)
	s := demoSettings(b)
	b.ReportAllocs()
	for b.Loop() {
		f := &file{name: "f"}
		if err := f.begin(strings.NewReader(text)); err != nil {
			b.Fatal(err)
		}
		if err := newAccount(s, f).run(); err != nil {
			b.Fatal(err)
		}
	}
	b.ReportMetric(many*float64(b.N)/b.Elapsed().Seconds(), "rows/s")
}

// demoSettings are the settings without flags.
func demoSettings(tb testing.TB) settings {
	tb.Helper()
	var s settings
	for _, o := range options {
		if err := o.read(&s, o.def); err != nil {
			tb.Fatal(err)
		}
	}
	return s
}
