package main

import (
	"go/constant"
	"go/token"
	"strings"
)

// A kind is a way to change a program.
type kind int

const (
	last      kind = iota // the last digit of a number by one
	sign                  // its sign
	ten                   // its power of ten
	literals              // so many kinds change a number
	dropped   kind = iota - 1
	swallowed      // an error is taken no notice of
	swapped        // two arguments of one type change places
	early          // a function returns there
	bound          // a comparison takes its boundary in, or leaves it out
	turn           // it turns about
	arith          // minus for plus, over for times, and back
	logic          // or for and, and back
	kinds
)

var kindNames = [kinds]string{"last", "sign", "ten", "delete", "swallow", "swap", "early", "bound", "turn", "arith", "logic"}

// bump returns the literal changed in the way of k, as Go source that can stand
// in its place, and false if that makes no other number.
func bump(text string, tok token.Token, k kind) (string, bool) {
	var to string
	switch k {
	case last:
		to = bumpLast(text)
	case sign:
		to = "(-" + text + ")"
	case ten:
		to = bumpTen(text, tok)
	}
	x := constant.MakeFromLiteral(text, tok, 0)
	if to == "" || k == sign && constant.Sign(x) == 0 {
		return "", false
	}
	if k != sign && constant.Compare(x, token.EQL, constant.MakeFromLiteral(to, tok, 0)) {
		return "", false
	}
	return to, true
}

// bumpLast raises the last digit of the number before its exponent by one, or
// lowers a 9 to 8, so that the literal keeps its length.
func bumpLast(text string) string {
	end := mantissa(text)
	i := strings.LastIndexAny(text[:end], "0123456789abcdefABCDEF")
	if i < 0 {
		return ""
	}
	digit := text[i] + 1
	switch text[i] {
	case '9', 'f', 'F':
		digit = text[i] - 1
	case '1':
		if binary(text) {
			digit = '0'
		}
	case '7':
		if strings.HasPrefix(text, "0o") {
			digit = '6'
		}
	}
	return text[:i] + string(digit) + text[i+1:]
}

// bumpTen makes the number ten times as large, or sixteen, eight or two times
// where that is the base in which it is written.
func bumpTen(text string, tok token.Token) string {
	end := mantissa(text)
	if tok == token.INT {
		return text + "0"
	}
	if end < len(text) {
		// The exponent's last digit has the weight of the base.
		return text[:end] + bumpExponent(text[end:])
	}
	return text + "e1"
}

// bumpExponent raises an exponent such as e-3 by one.
func bumpExponent(exp string) string {
	digits := strings.TrimLeft(exp[1:], "+-")
	mark := exp[:1]
	n := 0
	for _, d := range digits {
		n = 10*n + int(d-'0')
	}
	if strings.HasPrefix(exp[1:], "-") {
		n = -n
	}
	return mark + constant.MakeInt64(int64(n)+1).ExactString()
}

// mantissa returns where the exponent starts, or the length of the text.
func mantissa(text string) int {
	marks := "eE"
	if strings.HasPrefix(text, "0x") || strings.HasPrefix(text, "0X") {
		marks = "pP"
	}
	if i := strings.IndexAny(text, marks); i >= 0 {
		return i
	}
	return len(text)
}

func binary(text string) bool { return strings.HasPrefix(text, "0b") || strings.HasPrefix(text, "0B") }
