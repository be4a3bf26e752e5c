package clitest

import (
	"slices"
	"testing"
)

func TestEnds(t *testing.T) {
	for s, want := range map[string][]string{
		"1 to 2 ft (30.48 to 60.9 cm)":                   {"1 ft", "2 ft", "30.48 cm", "60.9 cm"},
		"12.8 US fl oz (378.6 mL) to 20 US gal (75.7 L)": {"12.8 US fl oz", "20 US gal", "378.6 mL", "75.7 L"},
		"0 to 10 %":                  {"0 %", "10 %"},
		"0.3 to 40 Brix":             {"0.3 Brix", "40 Brix"},
		"-40 to 104 F (-40 to 40 C)": {"-40 F", "104 F", "-40 C", "40 C"},
	} {
		if got := ends(s); !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", s, got, want)
		}
	}
}
