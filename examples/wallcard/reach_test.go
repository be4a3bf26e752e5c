package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/units"
)

// No row of the cup or of the filling is as hot as the syrup boils, nor is the
// cup in the head of the card: at 2600 m 66.9 Brix boils at 95.1 C.
func TestRowsWithinReach(t *testing.T) {
	for _, tc := range []struct {
		args   []string
		metric bool
		brix   units.Brix
		at     units.Length
		cup    string // in the head of the card
		hotter bool   // rows are left out
	}{
		{[]string{"-elevation", "2600 m", "-metric"}, true, 66.9, 2600 * units.Meter, "Cup at 92", true},
		{[]string{"-elevation", "1800 m"}, false, 66.9, 1800 * units.Meter, "Cup at 205", true},
		{[]string{"-elevation", "5000 m"}, false, 60, 5000 * units.Meter, "Cup at 180", true},
		{nil, false, 66.9, 1200 * units.Foot, "Cup at 210", false},
	} {
		args := append(tc.args, "-target", tc.brix.Text(1))
		boils := must(boil.SyrupPoint(tc.brix, must(boil.PressureAt(tc.at))))
		limit, html := boils.Fahrenheit(), page(t, args...)
		if tc.metric {
			limit = boils.Celsius()
		}
		for _, id := range []string{"cup", "fill"} {
			rows := tables(t, html)[id]
			if len(rows) == 0 {
				t.Errorf("%q: table %s is empty", args, id)
			}
			for _, cells := range rows {
				if x, _ := read(t, cells[0]); !(x < limit) {
					t.Errorf("%q: table %s has a row at %s, syrup boils at %.1f", args, id, cells[0], limit)
				}
			}
		}
		said := words(html)
		if !strings.Contains(said, tc.cup) {
			t.Errorf("%q: the card does not say %q", args, tc.cup)
		}
		if got := strings.Contains(said, "no cup is hotter"); got != tc.hotter {
			t.Errorf("%q: rows left out: %v, said: %v", args, tc.hotter, got)
		}
		if starred := strings.Contains(html, "*</th>"); starred != strings.Contains(said, "* above") {
			t.Errorf("%q: stars in the table: %v, and not so in the note", args, starred)
		}
	}
}

// The elevation beside an instrument is held against it. By hand, as in the tests of
// the place: average weather boils water at 210.1 F at 1,000 ft.
func TestPlaceHeld(t *testing.T) {
	for _, tc := range []struct {
		args []string
		want string
	}{
		{[]string{"-water-boils", "213.5 F", "-elevation", "1000 ft"}, `your thermometer shows 3.4 F deg more, which no weather explains`},
		{[]string{"-water-boils", "209.8 F", "-elevation", "1000 ft"}, "they agree"},
		{[]string{"-pressure", "28.4 inHg", "-elevation", "1500 ft"}, "they agree"},
		{[]string{"-water-boils", "209.8 F"}, ""},
		{[]string{"-elevation", "1000 ft"}, ""},
	} {
		said := words(page(t, tc.args...))
		if tc.want == "" && (strings.Contains(said, "weather explains") || strings.Contains(said, "beside -")) || !strings.Contains(said, tc.want) {
			t.Errorf("%q: want %q in %s", tc.args, tc.want, said)
		}
	}
}

// Syrup that does not keep is told so.
func TestStrengthThatKeeps(t *testing.T) {
	const thin, thick = "below 66\u00a0Brix it ferments", "from 68\u00a0Brix on crystals are likely"
	for _, tc := range []struct {
		brix, want string
	}{{"60", thin}, {"65.9", thin}, {"66", ""}, {"66.9", ""}, {"67.9", ""}, {"68", thick}, {"74", thick}} {
		said := words(page(t, "-target", tc.brix+" Brix"))
		for _, caution := range []string{thin, thick} {
			if got := strings.Contains(said, caution); got != (caution == tc.want) {
				t.Errorf("%s Brix: says %q: %v", tc.brix, caution, got)
			}
		}
	}
}
