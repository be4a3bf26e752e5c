package cli

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/folder"
)

// A mistake in a file that the program does not need stops nothing: the file is left
// aside, which is told in one line. In one that it needs, and in the settings, it
// stops.
func TestNeeds(t *testing.T) {
	run := func(needs []string) (int, string, string) {
		dir, _ := newFolder(t, "date,sap_us_gal\n2034-03-09,40\n33-03-10,1\n")
		put(t, filepath.Join(dir, folder.WeatherFile), "date,tmin_f,tmax_f\n2035-03-10,20,113\n", 0o644)
		put(t, filepath.Join(dir, folder.StopsFile), "day,water_boils_f,stop_f,cup_brix\n2034-03-10,210,218,66.9\n", 0o644)
		p := Program{Name: "watch", Needs: needs, Setup: func(f *Flags) func(*Env) error {
			return func(e *Env) error {
				_, days := f.House().File(folder.DaysFile)
				_, stops := f.House().File(folder.StopsFile)
				fmt.Fprint(e.Out, f.House().Season(), len(f.House().Days), days, stops)
				return nil
			}
		}}
		return runIn(dir, p)
	}
	status, out, errs := run([]string{folder.StopsFile})
	if status != OK || out != "2034 0 false true" || strings.Count(errs, "\n") != 1 || !strings.HasPrefix(errs, "watch: left aside for the mistakes in it: days.csv, weather.csv (folder check -dir ") {
		t.Errorf("%d, %q, %s", status, out, errs)
	}
	if status, out, errs := run([]string{folder.StopsFile, folder.DaysFile}); status != BadInput || out != "" || !strings.Contains(errs, "days.csv:3: ") || strings.Contains(errs, "113 F") {
		t.Errorf("%d, %q, %s", status, out, errs)
	}
	if status, _, errs := run(nil); status != BadInput || !strings.Contains(errs, "days.csv:3: ") || !strings.Contains(errs, "weather.csv:2: ") {
		t.Errorf("%d, %s", status, errs)
	}
}

// A file whose name is nearly right is named by whatever program runs, on a page and
// beside mistakes, which may come of it.
func TestUnreadIsNamed(t *testing.T) {
	dir, path := newFolder(t, daysBefore)
	put(t, filepath.Join(dir, "batch.csv"), "batch,date,volume_l\n34-1,2034-03-10,3\n", 0o644)
	note := "gatherer: " + filepath.Join(dir, "batch.csv") + " is not read: name it batches.csv\n"
	if status, _, errs := runIn(dir, gatherer(marchTenth, nil)); status != OK || errs != note {
		t.Errorf("%d, %s", status, errs)
	}
	put(t, filepath.Join(dir, folder.BottledFile), "date,batch,size,count\n2034-03-11,34-1,1 L,3\n", 0o644)
	if status, out, errs := runIn(dir, gatherer(marchTenth, nil)); status != BadInput || out != "" || strings.Count(errs, "\n") != 2 || !strings.Contains(errs, `no batch "34-1"`) || !strings.HasSuffix(errs, note) {
		t.Errorf("%d, %s", status, errs)
	}
	holds(t, path, daysBefore)
}
