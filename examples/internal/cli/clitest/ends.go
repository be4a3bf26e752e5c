package clitest

import (
	"regexp"
	"slices"
	"strings"
	"testing"
)

var (
	flagLine = regexp.MustCompile(`(?m)^  -([a-z-]+)`)
	unitList = regexp.MustCompile(`use one of: ([^,\n]+)`)
	// A range as it is told: 0.1 to 20 US gal (378.6 mL to 75.7 L), each end with
	// its unit or both with one.
	aRange = regexp.MustCompile(`is outside (.+? to [^:\n]+)`)
	aUnit  = regexp.MustCompile(`^(\S+)(?: (.+))?$`)
)

// TakesEnds gives every flag of the program that takes a quantity a value far
// outside, and then, one by one, the ends of the range that the message quotes,
// in each unit that it tells them in: the flag must not be refused for its range
// again. Flags named in but are left out; each needs its reason at the call.
func (b Binary) TakesEnds(t *testing.T, but ...string) {
	t.Helper()
	if testing.Short() {
		t.Skip("starts the program hundreds of times")
	}
	t.Chdir(t.TempDir()) // some flags name a file to write
	_, help, _ := b.Run(t, "", "-h", "-full")
	tried := 0
	for _, m := range flagLine.FindAllStringSubmatch(help, -1) {
		flag := "-" + m[1]
		_, _, errs := b.Run(t, "", flag, "1 nosuchunit")
		unit := unitList.FindStringSubmatch(errs)
		if unit == nil || slices.Contains(but, flag) {
			continue
		}
		for _, far := range []string{"1e12 ", "-1e12 "} {
			_, _, errs := b.Run(t, "", flag, far+unit[1])
			said := aRange.FindStringSubmatch(errs)
			if said == nil || !strings.Contains(errs, flag+":") {
				continue
			}
			for _, end := range ends(said[1]) {
				tried++
				_, _, errs := b.Run(t, "", flag, end)
				if strings.Contains(errs, flag+":") && strings.Contains(errs, "outside") {
					t.Errorf("%s: %q is an end of %q, and is refused: %s", flag, end, said[1], errs)
				}
			}
		}
	}
	if tried == 0 {
		t.Error("no flag told a range")
	}
}

// ends parts a range into quantities: 1 to 2 ft (30.48 to 60.9 cm) has four.
func ends(s string) []string {
	var out []string
	// Systems of units stand in brackets, either round the whole or round one end.
	inner := regexp.MustCompile(` \(([^)]*)\)`)
	both := append([]string{inner.ReplaceAllString(s, "")}, "")
	if strings.Contains(s, "(") {
		sides := strings.Split(s, " to ")
		for i, side := range sides {
			if m := inner.FindStringSubmatch(side); m != nil && len(sides) == 2 {
				sides[i] = m[1]
			}
		}
		both[1] = strings.Join(sides, " to ")
		if _, after, ok := strings.Cut(s, "("); ok && len(sides) > 2 {
			both[1], _, _ = strings.Cut(after, ")")
		}
	}
	for _, text := range both {
		low, high, ok := strings.Cut(text, " to ")
		if !ok {
			continue
		}
		h := aUnit.FindStringSubmatch(strings.TrimSpace(high))
		l := aUnit.FindStringSubmatch(strings.TrimSpace(low))
		if h == nil || l == nil {
			continue
		}
		if l[2] == "" {
			l[2] = h[2]
		}
		out = append(out, strings.TrimSpace(l[1]+" "+l[2]), strings.TrimSpace(h[1]+" "+h[2]))
	}
	return out
}
