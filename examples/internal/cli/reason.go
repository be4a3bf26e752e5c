package cli

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.org/sapreckoner/units"
)

// Reason words an error for a person at the keyboard, in US customary and metric
// units.
func Reason(err error) string { return units.Reason(err, units.Both) }

// Line words an error for a person as one line of what can be printed: names of
// files and words of their cells may hold anything.
func Line(err error) string { return visible(strings.Join(strings.Fields(Reason(err)), " ")) }

// visible spells out what would steer a terminal, or turn the order in which
// text is read.
func visible(s string) string {
	var b strings.Builder
	for i, c := range s {
		switch {
		case c == utf8.RuneError && !strings.HasPrefix(s[i:], string(utf8.RuneError)):
			fmt.Fprintf(&b, `\x%02x`, s[i])
		case unicode.IsPrint(c):
			b.WriteRune(c)
		default:
			b.WriteString(strings.Trim(strconv.QuoteRune(c), "'"))
		}
	}
	return b.String()
}
