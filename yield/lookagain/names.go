package lookagain

import (
	"cmp"
	"hash/maphash"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.org/sapreckoner/internal/base/clip"
)

// Bounds of the comparison of names.
const (
	shortName = 4         // letters; shorter names are not compared by the letter
	longName  = 80        // letters that are compared
	mostLeft  = 2_000_000 // remainders that are kept: of 80,000 names of 24 letters
	mostTwins = 8         // names that each is compared with for one remainder
)

// twins are letters that look like Latin ones, in small: Cyrillic and Greek.
// The list is short, of the letters that are drawn the same in most fonts.
var twins = strings.NewReplacer(
	"а", "a", "в", "b", "с", "c", "ԁ", "d", "е", "e", "һ", "h", "і", "i", "ј", "j", "к", "k", "м", "m", "н", "h", "о", "o", "р", "p", "ѕ", "s", "т", "t", "у", "y", "х", "x",
	"α", "a", "β", "b", "ε", "e", "η", "h", "ι", "i", "κ", "k", "μ", "m", "ν", "v", "ο", "o", "ρ", "p", "τ", "t", "υ", "y", "χ", "x", "ı", "i", "ß", "ss",
)

// unseen reports whether a sign is not seen or turns what stands around it.
func unseen(c rune) bool {
	return c != ' ' && !unicode.IsPrint(c) || unicode.Is(unicode.Other_Default_Ignorable_Code_Point, c) || unicode.Is(unicode.Variation_Selector, c)
}

// seen is a name as the eye takes it, with single spaces; capitals stay.
func seen(name string) string {
	return strings.Join(strings.Fields(strings.Map(func(c rune) rune {
		switch {
		case unicode.IsSpace(c):
			return ' '
		case unseen(c):
			return -1
		}
		return c
	}, name)), " ")
}

// folded is a name by which those that look the same are one.
func folded(name string) string { return twins.Replace(strings.ToLower(seen(name))) }

// hidden finds names with a sign that is not seen, or with Latin letters beside
// those that pass for them.
func (l *List) hidden(add adder) {
	first := l.firsts()
	for n, name := range l.names {
		mixed := strings.ContainsFunc(name, func(c rune) bool { return unicode.Is(unicode.Latin, c) }) &&
			strings.ContainsFunc(name, func(c rune) bool { return unicode.In(c, unicode.Cyrillic, unicode.Greek) })
		if strings.ContainsFunc(name, unseen) || mixed {
			add(first[n].row, HiddenSign, "the name "+spelled(name)+" has a sign that is not seen or looks like another: type it anew"+first[n].times())
		}
	}
}

// spelled quotes a name with every sign written out that is not plain ASCII.
func spelled(name string) string { return strconv.QuoteToASCII(clip.Text(name)) }

// uses are where a name stands first, and how often.
type uses struct{ row, count int }

func (u uses) times() string {
	if u.count == 1 {
		return ""
	}
	return " (in " + strconv.Itoa(u.count) + " rows)"
}

func (l *List) firsts() []uses {
	first := make([]uses, len(l.names))
	for i := range l.rows {
		u := &first[l.rows[i].name]
		if u.count == 0 {
			u.row = i
		}
		u.count++
	}
	return first
}

// alike finds names that look the same, and those a letter apart. Each is told
// once, at the first row of the rarer one.
func (l *List) alike(add adder) {
	first := l.firsts()
	told := map[int]bool{}
	tell := func(a, b int, how string) {
		rare, usual := a, b
		if x, y := first[a], first[b]; x.count > y.count || x.count == y.count && x.row < y.row {
			rare, usual = b, a
		}
		if told[rare] {
			return
		}
		told[rare] = true
		at := &l.rows[first[usual].row]
		where := "line " + strconv.Itoa(int(at.line))
		if f := l.rows[first[rare].row].file; f != at.file {
			where = clip.Text(l.files[at.file]) + ":" + strconv.Itoa(int(at.line))
		}
		show := quoted
		if how != byCapitals && how != byLetter {
			show = spelled
		}
		add(first[rare].row, AlikeName, "the name "+show(l.names[rare])+first[rare].times()+" differs "+how+" from "+show(l.names[usual])+" of "+where+": one or two?")
	}
	// Names that look the same stand together, so that each class is one name below.
	order := make([]int, 0, len(l.names))
	folds := make([]string, len(l.names))
	for n, name := range l.names {
		if folds[n] = folded(name); folds[n] != "" {
			order = append(order, n)
		}
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(folds[a], folds[b]) })
	var classes []int
	for k, n := range order {
		if k == 0 || folds[n] != folds[order[k-1]] {
			classes = append(classes, n)
			continue
		}
		tell(order[k-1], n, difference(l.names[order[k-1]], l.names[n]))
	}
	pairs, unheld := near(folds, classes)
	for _, pair := range pairs {
		tell(pair[0], pair[1], byLetter)
	}
	if len(unheld) > 0 {
		n := slices.MinFunc(unheld, func(a, b int) int { return cmp.Compare(first[a].row, first[b].row) })
		who := "the name " + quoted(l.names[n]) + first[n].times()
		if more := len(unheld) - 1; more > 0 {
			who += " and " + strconv.Itoa(more) + " more"
		}
		add(first[n].row, NotCompared, who+": not compared with others by the letter, since there are too many: split the file, or read the names through")
	}
}

const (
	byCapitals = "only in capitals"
	bySpaces   = "only by spaces or signs that are not seen"
	byLook     = "only by letters that look alike"
	byLetter   = "by a letter"
)

// difference tells how two names of one look differ.
func difference(a, b string) string {
	switch {
	case strings.EqualFold(a, b):
		return byCapitals
	case strings.EqualFold(seen(a), seen(b)):
		return bySpaces
	}
	return byLook
}

// near returns the pairs of names a letter apart. Two names are so near only if
// they leave the same when a letter is taken from each, or from one: remainders
// are hashed and sorted, and only those that fall together are looked at. It also
// returns the names that were left out, since no more remainders are held.
func near(folds []string, classes []int) (pairs [][2]int, unheld []int) {
	type remainder struct {
		hash uint64
		name int
	}
	var left []remainder
	var hash maphash.Hash
	for _, n := range classes {
		name := folds[n] // valid UTF-8: what is not was changed when it was folded
		letters := utf8.RuneCountInString(name)
		if letters < shortName || letters > longName {
			continue
		}
		if len(left)+letters+1 > mostLeft {
			unheld = append(unheld, n)
			continue
		}
		without := func(from, to int) {
			hash.Reset()
			_, _ = hash.WriteString(name[:from]) // a hash takes everything
			_, _ = hash.WriteString(name[to:])
			left = append(left, remainder{hash.Sum64(), n})
		}
		without(0, 0)
		last := rune(-1)
		for i, c := range name {
			if c != last { // beside its like it leaves the same
				without(i, i+utf8.RuneLen(c))
			}
			last = c
		}
	}
	slices.SortFunc(left, func(a, b remainder) int { return cmp.Or(cmp.Compare(a.hash, b.hash), cmp.Compare(a.name, b.name)) })
	for k := range left {
		for j := k - 1; j >= max(0, k-mostTwins) && left[j].hash == left[k].hash; j-- {
			if a, b := left[j].name, left[k].name; a != b && slip([]rune(folds[a]), []rune(folds[b])) {
				pairs = append(pairs, [2]int{min(a, b), max(a, b)})
			}
		}
	}
	slices.SortFunc(pairs, func(a, b [2]int) int { return cmp.Or(cmp.Compare(a[0], b[0]), cmp.Compare(a[1], b[1])) })
	return slices.Compact(pairs), unheld
}

// slip reports whether two names differ by one letter more, less, other, or
// changed over with its neighbor. Figures, and letters that stand alone, number
// things: line 1 and line 2, bush A and bush B are no slips.
func slip(a, b []rune) bool {
	if len(a) < len(b) {
		a, b = b, a
	}
	start := 0
	for start < len(b) && a[start] == b[start] {
		start++
	}
	end := 0
	for end < len(b)-start && a[len(a)-1-end] == b[len(b)-1-end] {
		end++
	}
	x, y := a[start:len(a)-end], b[start:len(b)-end]
	switch {
	case len(x) == 2 && len(y) == 2:
		return x[0] == y[1] && x[1] == y[0] && !numbers(a, start) && !numbers(a, start+1)
	case len(x) == 1 && len(y) == 1:
		return !numbers(a, start) && !numbers(b, start)
	}
	return len(x) == 1 && len(y) == 0 && !numbers(a, start)
}

// numbers reports whether the letter at i is a figure or stands alone.
func numbers(name []rune, i int) bool {
	letter := func(i int) bool { return i >= 0 && i < len(name) && unicode.IsLetter(name[i]) }
	return unicode.IsDigit(name[i]) || unicode.IsLetter(name[i]) && !letter(i-1) && !letter(i+1)
}
