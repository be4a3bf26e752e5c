package lookagain_test

import (
	"math/rand/v2"
	"testing"
)

// The names a letter apart are those that an exact comparison of all pairs finds.
func TestNearIsExact(t *testing.T) {
	draw := rand.New(rand.NewPCG(3, 7))
	for range 200 {
		word := func() string {
			b := make([]byte, 4+draw.IntN(3))
			for i := range b {
				b[i] = "abc"[draw.IntN(3)]
			}
			return string(b)
		}
		a, b := word(), word()
		if got, want := found(names(a, b)) != "", a != b && apart(a, b); got != want {
			t.Errorf("%s and %s: %v, want %v", a, b, got, want)
		}
	}
}

// apart reports whether a becomes b by one letter taken out, put in, changed, or
// changed over with its neighbor.
func apart(a, b string) bool {
	for i := range a {
		if a[:i]+a[i+1:] == b || i > 0 && a[:i-1]+a[i:i+1]+a[i-1:i]+a[i+1:] == b {
			return true
		}
		for c := byte('a'); c <= 'c'; c++ {
			if a[:i]+string(c)+a[i+1:] == b {
				return true
			}
		}
	}
	for i := 0; i <= len(a); i++ {
		for c := byte('a'); c <= 'c'; c++ {
			if a[:i]+string(c)+a[i:] == b {
				return true
			}
		}
	}
	return false
}

// A name of 80 letters, none like its neighbor, leaves 81 remainders, with its
// whole: 2,000,000 / 81 = 24,691.4 names are held. The last ones by the alphabet
// are left out.
func TestTooManyNames(t *testing.T) {
	if testing.Short() {
		t.Skip("two million remainders")
	}
	draw := rand.New(rand.NewPCG(5, 8))
	word := func(start string) string {
		b := []byte(start)
		for i := len(start); i < 80; i++ {
			b = append(b, byte('a'+draw.IntN(12)+12*(i%2)))
		}
		return string(b)
	}
	all := []string{word("zy"), word("za")}
	for range 24_690 {
		all = append(all, word("a"))
	}
	if got := found(names(all[:24_691]...)); got != "" {
		t.Errorf("%q", got)
	}
	want := `r.csv:2: names that were not compared: the name "` + all[0][:48] + `...": not compared with others by the letter, since there are too many: split the file, or read the names through` + "\n"
	if got := found(names(all...)); got != want {
		t.Errorf("%q", got)
	}
}
