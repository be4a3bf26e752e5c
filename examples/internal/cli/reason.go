package cli

import (
	"errors"
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

// FlagOf returns the flag, or the column, of the argument that an error of the library
// is about: args are an argument and its flag in turn, and an argument is named whole or
// by its last part. It is usual if none fits.
func FlagOf(err error, usual string, args ...string) string {
	var re *units.RangeError
	if !errors.As(err, &re) {
		return usual
	}
	field := re.Arg[strings.LastIndexByte(re.Arg, '.')+1:]
	for _, name := range []string{re.Arg, field} {
		for i := 0; i+1 < len(args); i += 2 {
			if args[i] == name {
				return args[i+1]
			}
		}
	}
	return usual
}

// ForArg is [For] the flag that [FlagOf] finds.
func ForArg(err error, usual string, args ...string) error {
	return For(FlagOf(err, usual, args...), err)
}
