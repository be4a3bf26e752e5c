package cli_test

import (
	"bytes"
	"strings"
	"testing"
)

// One range is quoted for a boiling point, that of the weather and never that of
// the formula of steam, and its ends are accepted in both systems. By hand: 178.5
// and 216 F are 81.39 and 102.22 C, and a tenth inside them 81.4 and 102.2.
func TestWaterBoilsOneRange(t *testing.T) {
	run := func(boils string) string {
		var out, complaint bytes.Buffer
		barometer().Main([]string{"-water-boils=" + boils}, strings.NewReader(""), &out, &complaint)
		return complaint.String()
	}
	for _, boils := range []string{"40 F", "300 F", "500 F", "1 C", "120 C"} {
		if got := run(boils); !strings.Contains(got, "is outside 178.5 to 216 F (81.4 to 102.2 C)") {
			t.Errorf("%s: %s", boils, got)
		}
	}
	for _, boils := range []string{"178.5 F", "216 F", "81.4 C", "102.2 C"} {
		if got := run(boils); got != "" {
			t.Errorf("%s: %s", boils, got)
		}
	}
}
