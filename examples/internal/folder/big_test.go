package folder

import (
	"bufio"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"testing"
)

// 200,000 days and as many deliveries, ten times what any sugarhouse writes in a
// lifetime, take less than 100 MB of memory that lives once they are read.
func TestBig(t *testing.T) {
	if testing.Short() {
		t.Skip("400,000 rows")
	}
	const rows = 200_000
	dir := t.TempDir()
	write := func(name, head string, row func(i int) string) {
		f, err := os.Create(filepath.Join(dir, name))
		if err != nil {
			t.Fatal(err)
		}
		w := bufio.NewWriter(f)
		fmt.Fprintln(w, head)
		for i := range rows {
			fmt.Fprintln(w, row(i))
		}
		if err := w.Flush(); err != nil {
			t.Fatal(err)
		}
		if err := f.Close(); err != nil {
			t.Fatal(err)
		}
	}
	date := func(i int) string { return fmt.Sprintf("%d-%02d-%02d", 2000+i/4000, 1+i/31%4, 1+i%28) }
	if err := os.WriteFile(filepath.Join(dir, SettingsFile), []byte("gallons: US\nbarrow: 1/25 cord\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	write(DaysFile, "date,tank,sap_gal,sugar_brix,read_at_f,boiled_gal,lit,out,syrup_gal,wood,note", func(i int) string {
		return fmt.Sprintf("%s,big,%d 1/2,2.1,41,40,2pm,20:30,1.1,6.5,", date(i), 10+i%60)
	})
	write(BoughtFile, "date,seller,volume_gal,reading_brix,cup_f", func(i int) string { return fmt.Sprintf("%s,lane %d,%d,2.1,41", date(i), i%40, 10+i%60) })
	live := func() uint64 {
		var m runtime.MemStats
		runtime.GC()
		runtime.ReadMemStats(&m)
		return m.HeapAlloc
	}
	before := live()
	h, err := Open(os.DirFS(dir), "", 0)
	if err != nil {
		t.Fatal(err)
	}
	grown := int64(live()) - int64(before)
	if len(h.Days) != rows || len(h.Bought) != rows || grown > 100<<20 {
		t.Errorf("%d days, %d deliveries, %d MB", len(h.Days), len(h.Bought), grown>>20)
	}
	t.Logf("%d MB live, season %d", grown>>20, h.Season())
}
