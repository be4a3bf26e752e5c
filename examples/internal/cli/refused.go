package cli

import (
	"errors"
	"strings"

	"example.org/sapreckoner/units"
)

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
