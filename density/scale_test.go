package density_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/density"
)

func TestScaleNames(t *testing.T) {
	for s, want := range map[density.Scale]string{density.ICUMSA: "ICUMSA", density.NBSC440: "NBS C440", 9: "Scale(9)"} {
		if got := s.String(); got != want {
			t.Errorf("scale %d is %q, want %q", s, got, want)
		}
	}
}

func TestTable114Curve(t *testing.T) {
	row := func(i int) float64 { return must(of(density.NBSC440.SG2020(bx(float64(i))))) }
	for i := range 95 {
		low, high := row(i), row(i+1)
		last := low
		for k := 1; k <= 20; k++ {
			x := float64(k) / 20
			got := must(of(density.NBSC440.SG2020(bx(float64(i) + x))))
			if !(got > last) {
				t.Fatalf("falls at %v", float64(i)+x)
			}
			if line := low + x*(high-low); !(math.Abs(got-line) <= 1e-5) {
				t.Errorf("%v: %v is %.2g from the line", float64(i)+x, got, got-line)
			}
			last = got
		}
	}
}
