//go:build !race

// What memory a run takes says nothing under the race detector.

package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"github.com/shopspring/decimal"
	"github.com/xuri/excelize/v2"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// Fifty thousand deliveries are streamed into the sheet. Measured on amd64 the
// program takes 100 MB for them, and 384 MB if the sheet is kept in memory as
// cells: the bound lies between. Afterwards no temporary file is left.
func TestBigFile(t *testing.T) {
	if testing.Short() {
		t.Skip("writes and reads 50,000 rows")
	}
	const many, most = 50_000, 256 << 20
	peak, f := bigFile(t, many)
	t.Logf("%d rows: %d MiB", many, peak>>20)
	if peak > most {
		t.Errorf("%d rows take %d MiB", many, peak>>20)
	}
	rows, err := f.Rows(sheetDeliveries)
	if err != nil {
		t.Fatal(err)
	}
	defer rows.Close()
	n, sum, total := 0, decimal.Zero, ""
	for rows.Next() {
		cells, err := rows.Columns(excelize.Options{RawCellValue: true})
		if err != nil {
			t.Fatal(err)
		}
		switch n++; {
		case cells[0] == "Paid for":
			total = cells[10]
		case n > 1 && len(cells) == 11:
			sum = sum.Add(decimal.RequireFromString(cells[10]))
		}
	}
	if n != many+3 || total == "" || !sum.Equal(decimal.RequireFromString(total)) {
		t.Errorf("%d rows add up to %s, the total is %s", n, sum, total)
	}
}

// bigFile runs the program on n deliveries and returns the most memory that it
// took, in bytes, and the spreadsheet.
func bigFile(t *testing.T, n int) (peak int64, f *excelize.File) {
	t.Helper()
	peak, out := bigRun(t, n, ".xlsx")
	f, err := excelize.OpenFile(out)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = f.Close() })
	return peak, f
}

// bigRun is bigFile for a file of any ending, which it leaves.
func bigRun(t *testing.T, n int, ending string) (peak int64, out string) {
	t.Helper()
	dir, temp := t.TempDir(), t.TempDir()
	var b strings.Builder
	b.WriteString(header)
	for i := range n {
		fmt.Fprintf(&b, "2026-03-%02d,Lane %d,%d.%02d,%d.%d,%d\n", 1+i%28, i%40, 10+i%200, i/200%100, 1+i%3, i%10, 34+i%20)
	}
	in, out := filepath.Join(dir, "readings.csv"), filepath.Join(dir, "payments"+ending)
	if err := os.WriteFile(in, []byte(b.String()), 0o644); err != nil {
		t.Fatal(err)
	}
	cmd := clitest.Build(t).Command("-in", in, "-out", out)
	cmd.Env = append(cmd.Env, "TMPDIR="+temp, "GOMAXPROCS=2")
	if msg, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, msg)
	}
	if left, err := os.ReadDir(temp); err != nil || len(left) != 0 {
		t.Errorf("%d temporary files are left, %v", len(left), err)
	}
	usage, ok := cmd.ProcessState.SysUsage().(*syscall.Rusage)
	if !ok {
		t.Fatal("the system does not tell how much memory was taken")
	}
	return int64(usage.Maxrss) << 10, out // Linux counts in KiB
}

// A hundred thousand deliveries are settled without a workbook in less than 100 MB,
// the list of what is looked at again in it. Measured on amd64: 55 MB with every
// delivery on a statement, 42 MB for the ledger.
func TestBigSettlement(t *testing.T) {
	if testing.Short() {
		t.Skip("settles 100,000 rows")
	}
	for _, ending := range []string{".txt", ".csv"} {
		const many, most = 100_000, 100_000_000
		peak, out := bigRun(t, many, ending)
		t.Logf("%s of %d rows: %d MiB", ending, many, peak>>20)
		if peak > most {
			t.Errorf("%s of %d rows takes %d bytes", ending, many, peak)
		}
		if info, err := os.Stat(out); err != nil || info.Size() < 1000 {
			t.Errorf("%v, %v", info, err)
		}
	}
}
