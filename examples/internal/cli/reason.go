package cli

import (
	"cmp"
	"errors"
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.org/sapreckoner/units"
)

// Names of Go: of a function in front of an error of the library, in brackets
// behind a way out, and anywhere.
var (
	name     = `\b(units|records|density|sugar|boil|fuel|pan|finish|yield|packing|money|tapping|season)(\.[A-Z]\w*)+`
	function = regexp.MustCompile(name + ": ")
	aside    = regexp.MustCompile(` \([^()]*` + name + `[^()]*\)`)
	anyName  = regexp.MustCompile(name)
	setting  = regexp.MustCompile(`\bset [A-Z]\w* to `) // a field
	twoWords = regexp.MustCompile(`\b[A-Z][a-z]+[A-Z]`)
)

// Reason words an error for a person at the keyboard: without names of Go, and a
// value outside its range in US customary and metric units.
func Reason(err error) string {
	s := err.Error()
	var re *units.RangeError
	if errors.As(err, &re) {
		s = strings.Replace(s, re.Error(), outside(re), 1)
	}
	return aside.ReplaceAllString(function.ReplaceAllString(s, ""), "")
}

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

// outside words a range error with the words of [units.RangeError.Text].
func outside(e *units.RangeError) string {
	told := *e
	told.What, told.Hint = cmp.Or(e.What, inWords(e.Arg)), forPeople(e.Hint)
	return told.Text(units.Both)
}

// forPeople leaves out of a way out what only a programmer can go.
func forPeople(hint string) string {
	hint = setting.ReplaceAllString(aside.ReplaceAllString(hint, ""), "give ")
	if anyName.MatchString(hint) {
		hint, _, _ = strings.Cut(hint, ", such as ")
	}
	if anyName.MatchString(hint) || twoWords.MatchString(hint) {
		return ""
	}
	return hint
}

// inWords makes words of an argument that is called by its field in Go:
// Container.Label is a label.
func inWords(arg string) string {
	_, field, ok := strings.Cut(arg, ".")
	if !ok || strings.ContainsRune(arg, ' ') {
		return arg
	}
	var b strings.Builder
	for i, c := range field {
		if unicode.IsUpper(c) && i > 0 {
			b.WriteByte(' ')
		}
		b.WriteRune(unicode.ToLower(c))
	}
	return b.String()
}
