package cli

import (
	"math"
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.org/sapreckoner/units"
)

// shown is the number that a view prints, in units of its last digit.
func shown(t *testing.T, v view, decimals int) int {
	t.Helper()
	text, _, _ := strings.Cut(v.text, " ")
	_, fraction, _ := strings.Cut(text, ".")
	n, err := strconv.Atoi(strings.Replace(text, ".", "", 1))
	if err != nil || len(fraction) != decimals {
		t.Fatalf("%q has not %d decimals: %v", v.text, decimals, err)
	}
	return n
}

// By hand: 10/3 gal three times are 10.00 gal to four digits, in cents of a gallon
// 333 333 333, and one is missing: the first gets it. In liters 37.85 is
// 1261.8 three times, so 1261 and two of the three get one more.
func TestAddUpByHand(t *testing.T) {
	third := Volume(10 * units.USGallon / 3)
	got := AddUp(4, Volume(10*units.USGallon), third, third, third)
	var us, metric []string
	for _, v := range got {
		us, metric = append(us, v.us.text), append(metric, v.metric.text)
	}
	if !slices.Equal(us, []string{"3.34 US gal", "3.33 US gal", "3.33 US gal"}) || !slices.Equal(metric, []string{"12.62 L", "12.62 L", "12.61 L"}) {
		t.Errorf("%q %q", us, metric)
	}
	if got := Total(4, Volume(10*units.USGallon)); got.us.text != "10.00 US gal" || got.metric.text != "37.85 L" {
		t.Errorf("%+v", got)
	}
	// Never coarser than whole ones: 12,345.4 = 0.7 + 12,344.7, rounded down 0 and
	// 12344, and one is missing: the first of two that lose as much.
	got = AddUp(3, Mass(12345.4*units.Pound), Mass(0.7*units.Pound), Mass(12344.7*units.Pound))
	if got[0].us.text != "1 lb" || got[1].us.text != "12344 lb" {
		t.Errorf("%q %q", got[0].us.text, got[1].us.text)
	}
	// Of a total that is nothing: more burned than was laid in.
	got = AddUp(3, Wood(0), Wood(0.08*units.Cord), Wood(-0.08*units.Cord))
	if got[0].us.text != "0.08000 cord" || got[1].us.text != "-0.08000 cord" {
		t.Errorf("%q %q", got[0].us.text, got[1].us.text)
	}
	// What nobody knows, and what makes no part of the total.
	got = AddUp(3, Mass(10*units.Pound), Mass(units.Mass(math.NaN())), Mass(4.26*units.Pound))
	if got[0].us.text != "-" || got[1].us.text != "4.3 lb" {
		t.Errorf("%q %q", got[0].us.text, got[1].us.text)
	}
}

// By hand: of 10 lb 3.5 and 6.5 are printed as 4 and 6, a tie that the first wins. 1.6
// and 1.9 are the 3.5, rounded down 1 and 1: of 4 two are missing, so 2 and 2. Printed
// again they are 4, and with the 6 the 10.
func TestSplitByHand(t *testing.T) {
	in := Mass(10 * units.Pound)
	got := AddUp(2, in, Mass(3.5*units.Pound), Mass(6.5*units.Pound))
	parts := Split(got[0], Mass(1.6*units.Pound), Mass(1.9*units.Pound))
	if got[0].us.text != "4 lb" || parts[0].us.text != "2 lb" || parts[1].us.text != "2 lb" {
		t.Errorf("%+v %+v", got, parts)
	}
	if sum := Sum(parts[0], parts[1], got[1]); sum.us.text != "10 lb" {
		t.Errorf("%+v", sum)
	}
	// Of nothing each is nothing, to the digit of the total; what nobody knows stays so.
	none := Split(AddUp(2, in, in, Mass(0))[1], Mass(0.0004*units.Pound), Mass(units.Mass(math.NaN())))
	if none[0].us.text != "0 lb" || none[1].us.text != "-" {
		t.Errorf("%+v", none)
	}
	if sum := Sum(in, none[1]); sum.us.text != "-" || sum.us.json != nil {
		t.Errorf("%+v", sum)
	}
}

// Printed parts add up to the printed total, and none is off by more than one of
// its last digit; one that is nothing stays nothing.
func TestAddUp(t *testing.T) {
	draw := rand.New(rand.NewPCG(13, 16))
	for range 5_000 {
		size := math.Pow(10, 8*draw.Float64()-3)
		var parts []Value
		sum := units.Mass(0)
		for range 1 + draw.IntN(40) {
			m := units.Mass(size * draw.ExpFloat64())
			switch draw.IntN(8) {
			case 0:
				m = 0
			case 1:
				m = -m / 8
			case 2:
				m = units.Mass(math.Round(float64(m/units.Pound)*10)) * units.Pound / 10
			}
			parts, sum = append(parts, Mass(m)), sum+m
		}
		n := 2 + draw.IntN(4)
		total := Mass(sum)
		all := AddUp(n, total, parts...)
		for _, system := range []func(Value) view{func(v Value) view { return v.us }, func(v Value) view { return v.metric }} {
			decimals := system(total).decimals(n)
			added := 0
			for i, v := range all {
				x, part := system(parts[i]).json.(float64), shown(t, system(v), decimals)
				added += part
				if off := math.Abs(float64(part) - x*math.Pow10(decimals)); off > 1+1e-5 || x == 0 && part != 0 {
					t.Errorf("%v is shown as %s", x, system(v).text)
				}
			}
			if want := shown(t, system(Total(n, total)), decimals); added != want {
				t.Errorf("%d parts add up to %d, the total is %d", len(parts), added, want)
			}
		}
	}
}
