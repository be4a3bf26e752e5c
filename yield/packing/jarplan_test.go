package packing_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// jarsOf plans a lot at 20 C and returns the counts.
func jarsOf(t *testing.T, lot units.Volume, margin units.Share, supplies ...packing.Supply) (counts []int, plan packing.PackPlan) {
	t.Helper()
	plan, err := packing.FewestContainers(lotOf(t, lot, 66.9, units.Celsius(20)), margin, supplies...)
	if err != nil {
		t.Fatal(err)
	}
	for _, l := range plan.Lines {
		counts = append(counts, l.Count)
	}
	return counts, plan
}

func plenty(label units.Volume) packing.Supply {
	return packing.Supply{Container: jar(label), OnHand: packing.Plenty}
}

// By hand, in quarts; a margin of 0.5 percent makes 1.005 of each quart.
func TestJarPlanByHand(t *testing.T) {
	quart, pint, half := plenty(units.USQuart), plenty(units.USPint), plenty(8*units.USFluidOunce)
	for name, tt := range map[string]struct {
		lot    units.Volume
		margin units.Share
		jars   []packing.Supply
		want   []int
		left   units.Volume
	}{
		// 11.055 and 0.5025 are 11.5575 of 12. 23 pints hold the same.
		"three gallons": {3 * units.USGallon, 0.5, []packing.Supply{quart, pint}, []int{11, 1}, 0.4425 * units.USQuart},
		// Of 0.4425 a half pint takes 0.25125.
		"with half pints": {3 * units.USGallon, 0.5, []packing.Supply{quart, pint, half}, []int{11, 1, 1}, 0.19125 * units.USQuart},
		// 384 less 12 fl oz are 11.625 quarts: 11.055 leave 0.57, a pint 0.0675.
		"less the filters": {372 * units.USFluidOunce, 0.5, []packing.Supply{quart, pint, half}, []int{11, 1, 0}, 0.0675 * units.USQuart},
		// Nothing is rounded up: 128 ounces are a gallon, to the last drop.
		"to the last drop": {units.USGallon, 0, []packing.Supply{plenty(units.USFluidOunce)}, []int{128}, 0},
		// 40 pints are 18.9271 L and 24 half pints 5.6781: of 33.3 L 8.6949 are left,
		// 34 x 0.25 = 8.5. 250 mL are more than a half pint: 33.3 - 18.9271 - 57 x
		// 0.25 = 0.1229, and 97 containers are fewer than 98.
		"small ones last": {units.Liters(33.3), 0, []packing.Supply{{Container: jar(units.USPint), OnHand: 40}, {Container: jar(units.USPint / 2), OnHand: 24}, plenty(units.Liters(0.25))},
			[]int{40, 0, 57}, units.Milliliters(33300 - 40*473.176473 - 57*250)},
		// The largest first would be 10 and eight of 1.
		"not the largest first": {units.Liters(18), 0, []packing.Supply{plenty(units.Liters(10)), plenty(units.Liters(9)), plenty(units.Liters(1))}, []int{0, 2, 0}, 0},
		// Two containers either way: 10 and 8 leave nothing, 10 and 7 a liter.
		"the least left": {units.Liters(18), 0, []packing.Supply{plenty(units.Liters(10)), plenty(units.Liters(7)), plenty(units.Liters(8))}, []int{1, 0, 1}, 0},
		// One of 20.1 is fewer than two of 20, and leaves half the lot.
		"not half the lot": {units.Liters(40), 0, []packing.Supply{plenty(units.Liters(20.1)), plenty(units.Liters(20))}, []int{0, 2}, 0},
		// 10 and nothing leave 0.4, under the twentieth of 0.52; of 10.6 they leave
		// 0.6, over 0.53, and two of 5.2 leave 0.2.
		"under a twentieth": {units.Liters(10.4), 0, []packing.Supply{plenty(units.Liters(10)), plenty(units.Liters(5.2))}, []int{1, 0}, units.Liters(0.4)},
		"over a twentieth":  {units.Liters(10.6), 0, []packing.Supply{plenty(units.Liters(10)), plenty(units.Liters(5.2))}, []int{0, 2}, units.Liters(0.2)},
		// The twentieth is of the whole lot, 0.53, orders of 4.2 included: of the 6.4
		// that remain 6 leave 0.4.
		"ordered too": {units.Liters(10.6), 0, []packing.Supply{plenty(units.Liters(6)), plenty(units.Liters(3.2)), {Container: jar(units.Liters(4.2)), OnHand: 1, AtLeast: 1}}, []int{1, 0, 1}, units.Liters(0.4)},
		// A jar of 1 L must not stay empty: 6 and 1 leave 3 of 10, 5 and 5 nothing.
		"none stays empty": {units.Liters(10), 0, []packing.Supply{plenty(units.Liters(6)), {Container: jar(units.Liters(5)), OnHand: 2}, {Container: jar(units.Liters(1)), OnHand: 1}}, []int{0, 2, 0}, 0},
		// Ordered: at least 6 pints; 12 - 3.015 = 8.985 quarts hold 8 and a pint.
		"at least": {3 * units.USGallon, 0.5, []packing.Supply{quart, {Container: jar(units.USPint), OnHand: packing.Plenty, AtLeast: 6}}, []int{8, 7}, 0.4425 * units.USQuart},
		// At most 2 quarts: 12 - 2.01 = 9.99 quarts are 19 pints, 9.5475.
		"at most": {3 * units.USGallon, 0.5, []packing.Supply{{Container: jar(units.USQuart), OnHand: 2}, pint}, []int{2, 19}, 0.4425 * units.USQuart},
		// Exactly 4 pints: 12 - 2.01 = 9.99 quarts hold 9.
		"exactly":             {3 * units.USGallon, 0.5, []packing.Supply{quart, {Container: jar(units.USPint), OnHand: 4, AtLeast: 4}}, []int{9, 4}, 0.945 * units.USQuart},
		"the same kind twice": {units.Liters(5.5), 0, []packing.Supply{{Container: jar(units.Liter), OnHand: 2}, {Container: jar(units.Liter), OnHand: 9}}, []int{2, 3}, units.Liters(0.5)},
	} {
		got, plan := jarsOf(t, tt.lot, tt.margin, tt.jars...)
		for i := range tt.want {
			if got[i] != tt.want[i] {
				t.Errorf("%s: %v, want %v", name, got, tt.want)
				break
			}
		}
		if !(math.Abs(float64(plan.Left-tt.left)) <= 1e-9*float64(tt.lot)) {
			t.Errorf("%s: %v left, want %v", name, plan.Left, tt.left)
		}
	}
}

// Against every combination, tried one by one: orders kept, no container empty
// that the rest would fill, then the fewest whole twentieths left, then the fewest
// containers, then the least left.
func TestJarPlanIsTheBest(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 1))
	labels := []units.Volume{units.USGallon, units.USQuart, units.Liters(0.75), units.Liters(0.5), units.USPint, units.Liters(0.25), units.USPint / 2, units.Milliliters(50)}
	for n := range 500 {
		margin := units.Share(float64(rng.IntN(3)) / 2)
		supplies := make([]packing.Supply, 1+rng.IntN(4))
		contents := make([]float64, len(supplies))
		whole := 0.0
		for i := range supplies {
			label := labels[rng.IntN(len(labels))]
			if n%2 == 1 {
				label = units.Milliliters(50 + 1000*rng.Float64())
			}
			supplies[i] = packing.Supply{Container: jar(label), OnHand: rng.IntN(9)}
			if n%3 == 0 {
				supplies[i].AtLeast = rng.IntN(min(supplies[i].OnHand, 2) + 1)
			}
			contents[i] = label.Liters() * (1 + margin.Fraction())
			whole += float64(supplies[i].OnHand) * contents[i]
		}
		lot := units.Liters(0.01 + 1.2*whole*rng.Float64())
		if n%5 == 0 { // a lot that some combination fills to the last drop
			sum := 0.0
			for i, s := range supplies {
				sum += float64(rng.IntN(s.OnHand+1)) * contents[i]
			}
			lot = units.Liters(max(sum, 0.01))
		}
		const hair = 1e-9
		parts, fewest, least := math.MaxInt, math.MaxInt, inf
		counts := make([]int, len(supplies))
		var try func(i, count int, rest float64)
		try = func(i, count int, rest float64) {
			if rest < -hair {
				return
			}
			if i < len(supplies) {
				for counts[i] = supplies[i].AtLeast; counts[i] <= supplies[i].OnHand; counts[i]++ {
					try(i+1, count+counts[i], rest-float64(counts[i])*contents[i])
				}
				return
			}
			for k, s := range supplies {
				if counts[k] < s.OnHand && rest-contents[k] >= -hair {
					return
				}
			}
			p := int((rest + hair) / (lot.Liters() / 20))
			if p < parts || p == parts && (count < fewest || count == fewest && rest < least) {
				parts, fewest, least = p, count, rest
			}
		}
		try(0, 0, lot.Liters())
		plan, err := packing.FewestContainers(lotOf(t, lot, 66.9, units.Celsius(20)), margin, supplies...)
		if fewest == math.MaxInt {
			if e := (*units.RangeError)(nil); !errors.As(err, &e) || e.Arg != "lot" || plan.Lines != nil {
				t.Errorf("%v into %v: %v, but no combination fills the orders", lot, supplies, err)
			}
			continue
		}
		if err != nil {
			t.Fatal(lot, supplies, err)
		}
		count := 0
		for i, l := range plan.Lines {
			count += l.Count
			if l.Count < supplies[i].AtLeast || l.Count > supplies[i].OnHand {
				t.Errorf("%v: %d filled", supplies[i], l.Count)
			}
		}
		if count != fewest || !(math.Abs(plan.Left.Liters()-max(least, 0)) <= 2*hair) {
			t.Errorf("%v at %v into %v: %d containers leave %v; best is %d and %v L", lot, margin, supplies, count, plan.Left, fewest, least)
		}
	}
}

// Thirty-two kinds within a few percent of each other and a lot of a tank: the
// search ends, and no container stays empty that the rest would fill.
func TestJarPlanOfManyKinds(t *testing.T) {
	rng := rand.New(rand.NewPCG(32, 200))
	for _, liters := range []float64{40, 900, 199_000} {
		supplies := make([]packing.Supply, 32)
		for i := range supplies {
			supplies[i] = plenty(units.Milliliters(450 + 50*rng.Float64()))
		}
		counts, plan := jarsOf(t, units.Liters(liters), 0.5, supplies...)
		smallest, n := inf, 0
		for i, l := range plan.Lines {
			smallest, n = min(smallest, float64(l.Filling.Content)), n+counts[i]
		}
		if !(float64(plan.Left) < smallest) || !(float64(plan.Left) >= 0) {
			t.Errorf("%v L: %v left in %d", liters, plan.Left, n)
		}
	}
}

func TestOrdersThatDoNotFit(t *testing.T) {
	lot := lotOf(t, units.USGallon, 66.9, units.Celsius(20))
	for name, s := range map[string]packing.Supply{
		"lot":                 {Container: jar(units.USQuart), OnHand: 5, AtLeast: 5}, // 5 quarts of 4
		"supplies[0].AtLeast": {Container: jar(units.USQuart), OnHand: 2, AtLeast: 3},
	} {
		p, err := packing.FewestContainers(lot, 0, s)
		if e := (*units.RangeError)(nil); !errors.As(err, &e) || e.Arg != name || p.Lines != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	if p, err := packing.FewestContainers(lot, 0, packing.Supply{Container: jar(units.USQuart), OnHand: 4, AtLeast: 4}); err != nil || p.Lines[0].Count != 4 {
		t.Errorf("4 of 4 quarts: %v, %v", p.Lines, err)
	}
	if _, err := packing.FewestContainers(lot, 0, packing.Supply{Container: jar(units.USQuart), OnHand: 4, AtLeast: -1}); !errors.Is(err, units.ErrRange) {
		t.Errorf("fewer than none: %v", err)
	}
}
