package main

import (
	"strings"
	"testing"
)

// By hand: an inch over a square foot is 0.623 US gallon of hot liquid, and when it
// is gone 0.958 of that were cold water, 0.597. At a gallon an hour of sap from 40 F
// the fire makes (970 + 1.03 x 172)/970 = 1.18 gallons of steam once it is not fed:
// 0.506 h, 30 min. Two centimeters are 20 L/m2, 19.2 cold, at 47.3 L/m2/h: 0.405 h.
func TestUnfed(t *testing.T) {
	for _, c := range []struct {
		args []string
		want string
	}{
		{nil, "Unfed it loses an inch in 30 min at 1 US gal/ft²/h, in 15 at 2, and it foams over: never leave it."},
		{[]string{"-metric"}, "Unfed it loses 2 cm in 24 min at 40 L/m²/h, in 12 at 80, and it foams over"},
	} {
		if got := strings.ReplaceAll(words(page(t, c.args...)), "\u00a0", " "); !strings.Contains(got, c.want) {
			t.Errorf("%q: no %q", c.args, c.want)
		}
	}
}
