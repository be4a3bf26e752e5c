package records

import (
	"bufio"
	"bytes"
	"strings"
)

// Comma returns what stands between the cells of the file: a comma, a semicolon
// or a tab. Among semicolons and tabs a number may have a decimal comma. Among tabs
// 1,200 is refused: it may be a thousand.
func (r *Reader) Comma() rune { return r.csv.Comma }

// separator finds what separates the columns of the header, and leaves the
// header unread. That which stands there most often outside quotes does; a
// header behind a whole buffer of remarks is taken to have commas.
func separator(br *bufio.Reader) rune {
	line := outside(header(br))
	best, most := ',', 0
	for _, c := range [...]rune{',', ';', '\t'} {
		if n := strings.Count(line, string(c)); n > most {
			best, most = c, n
		}
	}
	return best
}

// header peeks at the first line that is neither empty nor a remark.
func header(br *bufio.Reader) string {
	for want := 1; ; {
		_, err := br.Peek(want)
		seen, _ := br.Peek(br.Buffered())
		for len(seen) > 0 {
			line, rest, whole := bytes.Cut(seen, []byte{'\n'})
			if !whole && err == nil && br.Buffered() < br.Size() {
				break
			}
			if text := bytes.TrimRight(line, "\r"); len(text) > 0 && text[0] != '#' {
				return string(text)
			}
			seen = rest
		}
		if err != nil || br.Buffered() == br.Size() {
			return ""
		}
		want = br.Buffered() + 1
	}
}

// outside drops what stands in quotes.
func outside(line string) string {
	var b strings.Builder
	for i, part := range strings.Split(line, `"`) {
		if i%2 == 0 {
			b.WriteString(part)
		}
	}
	return b.String()
}

// thousand finds what one country writes for a thousand and another for one with
// three decimals: 1,200 and -150,000, not 0,125. A file of semicolons is of a country
// with decimal commas; one of tabs may be of either.
func thousand(cell string) bool {
	whole, part, ok := strings.Cut(cell, ",")
	if strings.HasPrefix(whole, "-") || strings.HasPrefix(whole, "+") {
		whole = whole[1:]
	}
	return ok && len(part) == 3 && len(whole) >= 1 && len(whole) <= 3 && whole[0] != '0' && strings.Trim(whole+part, "0123456789") == ""
}

// pointed writes a decimal comma as a point.
func pointed(cell string) string {
	if whole, part, ok := strings.Cut(cell, ","); ok && !strings.ContainsAny(part, ",.") && !strings.Contains(whole, ".") {
		return whole + "." + part
	}
	return cell
}
