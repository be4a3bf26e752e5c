// Package clip bounds how much of a text that came from outside a message
// repeats.
package clip

import "unicode/utf8"

const most = 48 // bytes

// Text returns a short text as it is, and of a long one the start.
func Text(s string) string {
	if len(s) <= most {
		return s
	}
	n := most
	for n > most-utf8.UTFMax && !utf8.RuneStart(s[n]) {
		n--
	}
	return s[:n] + "..."
}
