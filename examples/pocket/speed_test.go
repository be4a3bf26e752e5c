package main

import (
	"fmt"
	"testing"
)

// BenchmarkReady opens the page. It tells the milliseconds from opening to ready,
// as the page itself counts them, and the bytes of the page and the library.
func BenchmarkReady(b *testing.B) {
	page, err := built()
	if err != nil {
		b.Fatal(err)
	}
	wasm, err := compile()
	if err != nil {
		b.Fatal(err)
	}
	_, packed, err := pack(wasm)
	if err != nil {
		b.Fatal(err)
	}
	p := opened(b, 390, 844)
	sum, most := 0.0, 0.0
	for b.Loop() {
		p.reload()
		ms := eval[float64](p, "Number(document.documentElement.dataset.ready)")
		sum, most = sum+ms, max(most, ms)
	}
	b.ReportMetric(sum/float64(b.N), "ready-ms")
	b.ReportMetric(most, "slowest-ms")
	b.ReportMetric(float64(len(page)), "html-bytes")
	b.ReportMetric(float64(len(wasm)), "wasm-bytes")
	b.ReportMetric(float64(packed), "gzip-bytes")
}

// BenchmarkKey presses a key in a filled screen, and waits until the answer stands
// on the page and the page is laid out anew.
func BenchmarkKey(b *testing.B) {
	p := opened(b, 390, 844)
	for _, s := range []struct {
		screen, last string
		typed        fields
	}{
		{"syrup", "reads", fields{"water": "209.6", "cup": "205", "reads": "59.5"}},
		{"tonight", "volume", fields{"reads": "2.1", "cold": "40", "lit": "14:00", "volume": "40"}},
		{"tonight", "volume", fields{"reads": "2.1", "cold": "40", "lit": "14:00", "by": "22:00", "volume": "90"}},
		{"book", "sap", fields{"sap": "40"}},
		{"mend", "reads", fields{"amount": "3", "cup": "66", "jar": "1", "reads": "70"}},
		{"tomorrow", "high1", fields{"low1": "24", "waiting": "40", "high1": "44"}},
		{"tree", "girth", fields{"girth": "63"}},
		{"card", "water", fields{"water": "209.6"}},
	} {
		name := s.screen
		if s.typed["by"] != "" {
			name += " done by"
		}
		b.Run(name, func(b *testing.B) {
			p.empty()
			p.screen(s.screen)
			p.ask(eval[string](p, "open.questions[0].key"), s.typed)
			for b.Loop() {
				ms := eval[[]float64](p, fmt.Sprintf(`(() => { const all = []; for (let i = 0; i < 40; i++) { const t = performance.now(); tFill({ %q: %q }); document.body.offsetHeight; all.push(performance.now() - t); } return all.slice(10).sort((a, b) => a - b); })()`, s.last, s.typed[s.last]))
				b.ReportMetric(ms[len(ms)/2], "median-ms")
				b.ReportMetric(ms[len(ms)-1], "slowest-ms")
			}
		})
	}
}
