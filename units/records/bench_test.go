package records_test

import (
	"fmt"
	"io"
	"strings"
	"testing"

	"example.org/sapreckoner/units/records"
)

func BenchmarkReader(b *testing.B) {
	var file strings.Builder
	file.WriteString("time,source,sap_us_gal,reading_brix,temp_f\n")
	const rows = 10_000
	for i := range rows {
		fmt.Fprintf(&file, "2031-03-08 16:%02d,north,%d.5,2.1,41\n", i%60, i%90)
	}
	b.ReportAllocs()
	for b.Loop() {
		var g gathering
		r, err := records.New("day.csv", strings.NewReader(file.String()), g.cols()...)
		if err != nil {
			b.Fatal(err)
		}
		for err == nil {
			err = r.Next()
		}
		if err != io.EOF {
			b.Fatal(err)
		}
	}
	b.ReportMetric(rows*float64(b.N)/b.Elapsed().Seconds(), "rows/s")
}
