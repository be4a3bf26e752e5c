package clip_test

import (
	"strings"
	"testing"

	"example.org/sapreckoner/internal/base/clip"
)

func TestText(t *testing.T) {
	for _, tc := range []struct{ text, want string }{
		{"", ""},
		{strings.Repeat("x", 48), strings.Repeat("x", 48)},
		{strings.Repeat("x", 49), strings.Repeat("x", 48) + "..."},
		{strings.Repeat("x", 47) + "é", strings.Repeat("x", 47) + "..."}, // no half of a letter
		{strings.Repeat("é", 1000), strings.Repeat("é", 24) + "..."},
		{strings.Repeat("\x80", 1000), strings.Repeat("\x80", 44) + "..."}, // nor a search for a start that is none
	} {
		if got := clip.Text(tc.text); got != tc.want {
			t.Errorf("%.60q: got %q, want %q", tc.text, got, tc.want)
		}
	}
}
