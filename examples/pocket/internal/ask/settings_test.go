package ask

import (
	"slices"
	"testing"
)

// A field that takes a line of the settings names one of the table, and what it
// takes as usual lies in its own range; so do the examples of the table.
func TestSettingsOfFields(t *testing.T) {
	fine := func(where string, in Input) {
		if in.check == nil {
			t.Errorf("%s: %q has no range", where, in.Key)
		} else if err := in.check(in.Start); in.Start != "" && in.Setting != "" && err != nil {
			t.Errorf("%s: %q: its own usual %q is refused: %v", where, in.Key, in.Start, err)
		}
	}
	taken := 0
	for _, s := range screens {
		for _, q := range s.Questions {
			for _, in := range q.Inputs {
				fine(s.Key, in)
				if in.Setting == "" {
					continue
				}
				taken++
				if !slices.ContainsFunc(settings, func(s Input) bool { return s.Key == in.Setting }) {
					t.Errorf("%s: %q takes %q, which is no line of the settings", s.Key, in.Key, in.Setting)
				}
			}
		}
	}
	if taken == 0 {
		t.Error("no field takes a line of the settings")
	}
}
