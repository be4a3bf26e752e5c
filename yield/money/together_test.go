package money_test

import (
	"errors"
	"math"
	"testing"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
)

// By hand. A house that boils on halves takes 6 of 12 gallons; of the other 6, 30 kg
// of sugar bring 4.5 and 10 kg 1.5. Whoever stands in both measures gets both:
// half by hours of 1 and 3, half by wood of 1 and 1, are 3/8 and 5/8.
func TestTogether(t *testing.T) {
	sugar := []money.Contribution{{Name: "Creek lot", Weight: dec("30")}, {Name: "Hill house", Weight: dec("10")}}
	halves, err := money.Together(money.Measure{Part: dec("0.5"), Among: []money.Contribution{{Name: "House", Weight: dec("1")}}}, money.Measure{Part: dec("0.5"), Among: sugar})
	if err != nil {
		t.Fatal(err)
	}
	portions, err := money.Divide(dec("12"), 2, halves)
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []string{"6", "4.5", "1.5"} {
		if !portions[i].Amount.Equal(dec(want)) {
			t.Errorf("%v", portions)
		}
	}
	both, err := money.Together(
		money.Measure{Part: dec("1"), Among: []money.Contribution{{Name: "a", Weight: dec("1")}, {Name: "b", Weight: dec("3")}}},
		money.Measure{Part: dec("1"), Among: []money.Contribution{{Name: "b", Weight: dec("7")}, {Name: "a", Weight: dec("7")}}})
	if err != nil || len(both) != 2 || !both[0].Weight.Equal(dec("0.75")) || !both[1].Weight.Equal(dec("1.25")) {
		t.Errorf("%v, %v", both, err)
	}
	for name, measures := range map[string][]money.Measure{
		"none":     nil,
		"nothing":  {{Part: decimal.Zero, Among: sugar}},
		"negative": {{Part: dec("-1"), Among: sugar}},
		"nobody":   {{Part: dec("1")}},
		"no sugar": {{Part: dec("1"), Among: []money.Contribution{{Name: "a"}}}},
	} {
		if got, err := money.Together(measures...); !errors.Is(err, units.ErrRange) || got != nil {
			t.Errorf("%s: %v, %v", name, got, err)
		}
	}
}

// By hand: 10 pints are left and a took 6 already. Of 16 each has 8 coming, so
// that a gets 2 and b 8. Where a took 20 of 30, nothing is left for a; without
// anything taken the answer is that of DivideJars.
func TestDivideJarsAfter(t *testing.T) {
	pints, among := []money.Jars{{Label: units.USPint, Count: 10}}, weights("1", "1")
	for _, tt := range []struct{ taken, a, b int }{{6, 2, 8}, {20, 0, 10}, {0, 5, 5}} {
		got, err := money.DivideJarsAfter(pints, among, []units.Volume{units.Volume(tt.taken) * units.USPint, 0})
		if err != nil || got[0].Counts[0] != tt.a || got[1].Counts[0] != tt.b {
			t.Errorf("%d taken: %v, %v", tt.taken, got, err)
		}
	}
	for _, taken := range [][]units.Volume{nil, {0}, {0, 0, 0}, {0, -1}, {units.Volume(math.NaN()), 0}, {0, 11}} {
		if got, err := money.DivideJarsAfter(pints, among, taken); !errors.Is(err, units.ErrRange) || got != nil {
			t.Errorf("%v: %v, %v", taken, got, err)
		}
	}
}
