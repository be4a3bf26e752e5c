package cli_test

import (
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestKeeping(t *testing.T) {
	for _, c := range []struct {
		b    units.Brix
		want string
	}{
		{62, "Syrup of 62.0 Brix is thin: below 66 Brix it ferments"},
		{65.9, "is thin"},
		{66, ""}, {66.9, ""}, {67.9, ""},
		{68, "Syrup of 68.0 Brix is thick: from 68 Brix on crystals are likely"},
		{68 - 1e-13, "from 68 Brix on crystals are likely"}, // two cans of 68 poured together
		{68.9, "is thick"},
		{69, "is too thick: most rules end at 68.9 Brix"},
	} {
		if got := cli.Keeping(c.b); !strings.Contains(got, c.want) || c.want == "" && got != "" {
			t.Errorf("%v: %q, want %q", c.b, got, c.want)
		}
	}
	rule, err := sugar.UnitedStates.Standard()
	if err != nil || cli.Keeping(rule.Max+0.001) == cli.Keeping(rule.Max) {
		t.Errorf("too thick does not begin above %v, %v", rule.Max, err)
	}
}

func TestTarget(t *testing.T) {
	for b, ok := range map[float64]bool{60: true, 66.9: true, 74: true, 59.99: false, 74.01: false, math.NaN(): false} {
		if err := cli.Target("target", units.Brix(b)); (err == nil) != ok {
			t.Errorf("%v: %v", b, err)
		}
	}
}

// By hand: 2 F under 208.5 F is 206.5, and whole degrees under that are 206 F and,
// of 96.9 C, 96 C. At sea level syrup of 66.9 Brix boils at 219.5 F, over 211.
func TestCup(t *testing.T) {
	for _, c := range []struct {
		boils, want float64
		metric      bool
	}{{219.5, 211, false}, {213, 211, false}, {212.9, 210, false}, {208.5, 206, false}, {208.5, 204.8, true}} {
		if got := cli.UsualCup(units.Fahrenheit(c.boils), c.metric).Fahrenheit(); !(math.Abs(got-c.want) <= 1e-9) {
			t.Errorf("boils at %v: cup at %v, want %v", c.boils, got, c.want)
		}
	}
	s := new(cli.Sheet)
	boils, by := units.Fahrenheit(208.5), 2*units.FahrenheitDegree
	if err := s.Cup("cup", units.Fahrenheit(210.4), boils, by); err != nil {
		t.Error(err)
	}
	if err := s.Cup("cup", units.Fahrenheit(210.6), boils, by); err == nil || !strings.Contains(err.Error(), "-cup: syrup boils at 208.5 F today") {
		t.Error(err)
	}
	// The density is extrapolated above 90 C, 194 F.
	for _, c := range []struct {
		at   float64
		told bool
		want string
	}{
		{194, true, "in the cup at 194.0 F"},
		{194.1, true, "in the cup at 194.1 F; above 194 F the density is extrapolated, by less than 0.1 Brix"},
		{194, false, "in the cup at 194.0 F, as is usual: measure yours and give -cup"},
	} {
		if got := strings.Join(s.InCup(units.Fahrenheit(c.at), c.told), "; "); got != c.want {
			t.Errorf("%v F: %q, want %q", c.at, got, c.want)
		}
	}
}
