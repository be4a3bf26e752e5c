package folder

import (
	"strings"
	"testing"
)

// A file whose name is nearly right is named with the way out, and others are
// nobody's business.
func TestUnread(t *testing.T) {
	h, err := house("Days.csv", "date\n", "batches_2026.csv", "x", "batches.csv", "batch,date,volume_gal\n", "tree.csv", "x", "hole list.csv", "x", "weather.xlsx", "x",
		"days.csv.bak", "x", "photo.jpg", "x", "notes.txt", "x", "letters.csv", "x", "Day.csv", "x", "bottle.csv", "x", "batch 2033.csv", "x", "ba.csv", "x", "stops.csv.txt", "x", "2034 weather.csv", "x")
	if err != nil {
		t.Fatal(err)
	}
	want := []string{
		"2034 weather.csv is not read: name it weather.csv",
		"Day.csv is not read: name it days.csv",
		"Days.csv is not read: name it days.csv",
		"batch 2033.csv is not read: put its rows into batches.csv, which keeps all years",
		"batches_2026.csv is not read: put its rows into batches.csv, which keeps all years",
		"bottle.csv is not read: name it bottled.csv",
		"stops.csv.txt is not read: name it stops.csv",
		"tree.csv is not read: name it trees.csv",
		"weather.xlsx is not read: save it as CSV under the name weather.csv",
	}
	if got := strings.Join(h.Unread(), "\n"); got != strings.Join(want, "\n") {
		t.Errorf("got\n%s", got)
	}
}
