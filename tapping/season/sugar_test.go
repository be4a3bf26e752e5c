package season_test

import (
	"testing"

	"example.org/sapreckoner/tapping/season"
)

// What a source does not print stands as 0: a mean beside the range of Quebec's
// producers alone, and no range beside the two means.
func TestSugarFiguresNotPrinted(t *testing.T) {
	ranges, means := 0, 0
	for _, f := range season.SugarFigures() {
		if f.Low == 0 != (f.High == 0) {
			t.Errorf("%s, %s: half a range, %v to %v", f.What, f.Source, f.Low, f.High)
		}
		if f.Low != 0 {
			ranges++
		}
		if f.Mean != 0 {
			means++
		}
		if f.Low != 0 && f.Mean != 0 && f.Source != "Quebec producers association" {
			t.Errorf("%s, %s: a mean beside its range", f.What, f.Source)
		}
	}
	if ranges != 5 || means != 3 {
		t.Errorf("%d ranges and %d means, want 5 and 3", ranges, means)
	}
}
