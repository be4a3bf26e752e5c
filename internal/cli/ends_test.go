package cli_test

import (
	"bytes"
	"strings"
	"testing"
)

// One range is quoted for a boiling point, that of the weather and never that of
// the formula of steam, and its ends are accepted in both systems. By hand: water
// boils at 81.32 C under 50 kPa and at 102.29 under 110, 178.37 and 216.13 F;
// inside them to a tenth are 178.4 and 216.1 F, 81.4 and 102.2 C.
func TestWaterBoilsOneRange(t *testing.T) {
	run := func(boils string) string {
		var out, complaint bytes.Buffer
		barometer().Main([]string{"-water-boils=" + boils}, strings.NewReader(""), &out, &complaint)
		return complaint.String()
	}
	for _, boils := range []string{"40 F", "300 F", "500 F", "1 C", "120 C"} {
		if got := run(boils); !strings.Contains(got, "is outside 178.4 to 216.1 F (81.4 to 102.2 C)") {
			t.Errorf("%s: %s", boils, got)
		}
	}
	for _, boils := range []string{"178.4 F", "216.1 F", "81.4 C", "102.2 C"} {
		if got := run(boils); got != "" {
			t.Errorf("%s: %s", boils, got)
		}
	}
}
