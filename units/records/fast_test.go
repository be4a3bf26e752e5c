package records

import (
	"fmt"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"
	"time"
)

// A number is the one that the standard library reads, to the last bit.
func TestPlainNumber(t *testing.T) {
	for _, s := range []string{"", "-", ".", "-.", "1e3", "0x10", "1_0", "+1", "1.2.3", ".1.2", " 1", "NaN", "inf", "1234567890123456", "12345678.12345678"} {
		if x, ok := plainNumber(s); ok {
			t.Errorf("%q is read as %v", s, x)
		}
	}
	draw := rand.New(rand.NewPCG(3, 9))
	for _, s := range []string{"0", "-0", "5.", ".5", "-.5", "2.1", "999999999999999", "0.00000000000001", "00000000000000.1", "12345678.1234567", "-12345678.1234567"} {
		same(t, s)
	}
	for after := range 16 { // a digit that divides by no power of two
		same(t, "0."[:min(2, 1+after)]+strings.Repeat("0", max(0, after-2))+"7")
		same(t, "123456789012347"[:15-after]+"."+"123456789012347"[15-after:])
	}
	for range 20_000 {
		s := fmt.Sprintf("%.*f", draw.IntN(8), (draw.Float64()-0.5)*float64(uint64(1)<<draw.IntN(28)))
		same(t, s)
	}
}

func same(t *testing.T, s string) {
	t.Helper()
	x, ok := plainNumber(s)
	want, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	if strings.Count(s, "")-1-strings.Count(s, ".")-strings.Count(s, "-") <= 15 && !ok {
		t.Errorf("%q is not read", s)
	}
	if ok && strconv.FormatFloat(x, 'b', -1, 64) != strconv.FormatFloat(want, 'b', -1, 64) {
		t.Errorf("%q is read as %v, not %v", s, x, want)
	}
}

// A time is the one that the standard library reads, or is left to it.
func TestPlainTime(t *testing.T) {
	for _, s := range []string{"2031-02-29 10:00", "2031-13-01 10:00", "2031-00-01 10:00", "2031-03-00 10:00", "2031-03-01 24:00",
		"2031-03-01 10:60", "2031-03-01t10:00", "2031-03-01 1a:00", "2031/03/01 10:00", "2031-03-01 -1:00",
		"2031-02-29", "2031-13-01", "2031-00-01", "2031-03-00", "2031/03/01", "31-03-01", "2031-03-1a", "2031-0:-01", "2031-03-:1", "2031-03-01 10:00:00", ""} {
		if got, _, ok := plainTime(s); ok {
			t.Errorf("%q is read as %v", s, got)
		}
	}
	draw := rand.New(rand.NewPCG(4, 9))
	for range 20_000 {
		date := fmt.Sprintf("%04d-%02d-%02d", draw.IntN(10_000), draw.IntN(14), draw.IntN(33))
		clock := fmt.Sprintf("%02d:%02d", draw.IntN(26), draw.IntN(62))
		for layout, s := range map[string]string{time.DateOnly: date, toMinute: date + " " + clock, toMinuteISO: date + "T" + clock} {
			want, err := time.Parse(layout, s)
			got, gotLayout, ok := plainTime(s)
			if ok != (err == nil) || ok && (!got.Equal(want) || gotLayout != layout) {
				t.Errorf("%q: %v in %q %v, want %v %v", s, got, gotLayout, ok, want, err)
			}
		}
	}
}

func TestNames(t *testing.T) {
	n := names{}
	row := []byte("north")
	for i := range 2 * mostNames {
		if got := n.keep(string(row) + strconv.Itoa(i)); got != "north"+strconv.Itoa(i) {
			t.Fatalf("kept as %q", got)
		}
	}
	if len(n) != mostNames {
		t.Errorf("%d names are kept", len(n))
	}
	long := strings.Repeat("x", longestName)
	if n = (names{}); n.keep(long) != long || len(n) != 1 {
		t.Errorf("the longest name is not kept")
	}
	long += "x"
	if n = (names{}); n.keep(long) != long || len(n) != 0 {
		t.Errorf("a long name is kept")
	}
}

func TestIsText(t *testing.T) {
	for s, want := range map[string]bool{"": true, "érable": true, "a\x00": false, "é\x00": false, "a\xe9": false, "a\x80b": false, "a b\n": true} {
		if got := isText(s); got != want {
			t.Errorf("%q: %v", s, got)
		}
	}
}
