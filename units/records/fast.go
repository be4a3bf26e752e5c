package records

import (
	"strings"
	"time"
	"unicode/utf8"
)

// What stands here reads the common cell quickly and leaves the rest to the
// standard library: a season of a million rows is read in a second or two.

// exact holds the powers of ten that a decimal may be divided by.
var exact = [...]float64{1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15}

// plainNumber reads digits with at most one point and a sign before them. With
// at most 15 digits both the digits as a whole number and the power of ten are
// exact, so that their quotient is the nearest float64, as of
// [strconv.ParseFloat].
func plainNumber(cell string) (x float64, ok bool) {
	digits, negative := strings.CutPrefix(cell, "-")
	if len(digits) == 0 || len(digits) > 16 {
		return 0, false
	}
	var whole uint64
	point := -1
	for i := range len(digits) {
		switch c := digits[i]; {
		case c >= '0' && c <= '9':
			whole = whole*10 + uint64(c-'0')
		case c == '.' && point < 0:
			point = i
		default:
			return 0, false
		}
	}
	after, count := 0, len(digits)
	if point >= 0 {
		after, count = len(digits)-point-1, len(digits)-1
	}
	if count == 0 || count > 15 {
		return 0, false
	}
	x = float64(whole) / exact[after]
	if negative {
		x = -x
	}
	return x, true
}

// The layouts that [plainTime] reads.
const (
	toMinute    = "2006-01-02 15:04"
	toMinuteISO = "2006-01-02T15:04"
)

// plainTime reads a date, or a date and a time to the minute, and returns the
// layout that it is written in.
func plainTime(cell string) (t time.Time, layout string, ok bool) {
	switch {
	case len(cell) == len(time.DateOnly):
		layout = time.DateOnly
	case len(cell) != len(toMinute) || cell[13] != ':':
		return t, "", false
	case cell[10] == ' ':
		layout = toMinute
	case cell[10] == 'T':
		layout = toMinuteISO
	}
	if layout == "" || cell[4] != '-' || cell[7] != '-' {
		return t, "", false
	}
	var parts [6]int // century and year apart: all have two digits
	for i, at := range [...]int{0, 2, 5, 8, 11, 14} {
		if at >= len(cell) {
			break
		}
		tens, ones := cell[at]-'0', cell[at+1]-'0'
		if tens > 9 || ones > 9 {
			return t, "", false
		}
		parts[i] = int(tens)*10 + int(ones)
	}
	year, month, day, hour, minute := parts[0]*100+parts[1], parts[2], parts[3], parts[4], parts[5]
	if month < 1 || month > 12 || day < 1 || hour > 23 || minute > 59 {
		return t, "", false
	}
	t = time.Date(year, time.Month(month), day, hour, minute, 0, 0, time.UTC)
	return t, layout, t.Day() == day // February 30 is March 2
}

// names keeps the words of a column that come again and again, so that a row
// with a known name takes no memory. It keeps a few only: a column of notes, all
// different, is no reason to grow.
type names map[string]string

const (
	mostNames   = 1024
	longestName = 64
)

// keep returns a string of its own for a cell, whose memory the CSV reader uses
// again.
func (n names) keep(cell string) string {
	if known, ok := n[cell]; ok {
		return known
	}
	cell = strings.Clone(cell)
	if len(n) < mostNames && len(cell) <= longestName {
		n[cell] = cell
	}
	return cell
}

// isText reports whether a cell is UTF-8 without NUL.
func isText(cell string) bool {
	for i := range len(cell) {
		switch c := cell[i]; {
		case c == 0:
			return false
		case c >= utf8.RuneSelf:
			return strings.IndexByte(cell[i:], 0) < 0 && utf8.ValidString(cell[i:])
		}
	}
	return true
}
