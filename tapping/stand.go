package tapping

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// GuidelineTotal is what one guideline makes of a whole stand.
type GuidelineTotal struct {
	Guideline  Guideline
	Taps       int
	Tapped     int // trunks with a tap or more
	NotCovered int // trunks of which it says nothing
}

func (t *GuidelineTotal) count(n int, ok bool) {
	if !ok {
		t.NotCovered++
		return
	}
	t.Taps += n
	if n > 0 {
		t.Tapped++
	}
}

// StandClass is one class of the histogram: trunks from From up to, but not
// with, To.
type StandClass struct {
	From, To units.Length
	Trunks   int
	Taps     int
}

// StandCount is a stand counted.
type StandCount struct {
	Trees, Trunks int
	GuidelineTotal
	Others    []GuidelineTotal // the other published guidelines
	ByTaps    []int            // trunks that take 0, 1, 2, ... taps; trunks not covered are left out
	Classes   []StandClass     // diameter classes from zero to the thickest trunk
	BasalArea units.Area
}

// CountStand counts trees, taps by the guideline, a histogram in classes of the
// given width, the totals by the other published guidelines, and basal area.
//
// Range: class width 1 cm to 1 m. Check value: trunks of 11, 12, 18 and 19 in
// take 4 taps.
func CountStand(trees []Tree, g Guideline, class units.Length) (StandCount, error) {
	if err := lengthAs("tapping.CountStand", "class", "class width", class, units.Centimeter, units.Meter, "2 in or 5 cm are usual"); err != nil {
		return StandCount{}, err
	}
	c := StandCount{Trees: len(trees), GuidelineTotal: GuidelineTotal{Guideline: g}}
	for _, other := range published {
		if other != g {
			c.Others = append(c.Others, GuidelineTotal{Guideline: other})
		}
	}
	for _, tree := range trees {
		for _, trunk := range tree.Stems {
			c.add(trunk, class)
		}
	}
	return c, nil
}

func (c *StandCount) add(trunk Trunk, class units.Length) {
	c.Trunks++
	c.BasalArea += trunk.BasalArea()
	n, ok := trunk.taps(c.Guideline)
	c.count(n, ok)
	if ok {
		for len(c.ByTaps) <= n {
			c.ByTaps = append(c.ByTaps, 0)
		}
		c.ByTaps[n]++
	}
	// Guidelines of the same unit follow each other: the diameter is printed once
	// for all of them.
	var unit units.Length
	var x float64
	for i := range c.Others {
		o := &c.Others[i]
		if u := o.Guideline.info.Unit; u != unit {
			unit, x = u, printed(trunk.dbh, u)
		}
		o.count(trunk.bear(o.Guideline.info.tapsAt(x)))
	}
	// Rounded as guidelines are, so that 12 in opens the class from 12 in.
	i := int(printed(trunk.dbh, class))
	for k := len(c.Classes); k <= i; k++ {
		c.Classes = append(c.Classes, StandClass{From: units.Length(k) * class, To: units.Length(k+1) * class})
	}
	c.Classes[i].Trunks++
	c.Classes[i].Taps += n
}

// The range of grounds, from a garden to a district.
const (
	minGround = 1 * units.SquareMeter
	maxGround = 1e6 * units.Hectare
)

// TapsPer returns the taps on each unit of ground, such as [units.Acre] or
// [units.Hectare].
//
// Range: ground and unit 1 m2 to 1e6 ha. Check value: 360 taps on 4 acres are
// 90 an acre, 222.4 a hectare.
func (c StandCount) TapsPer(unit, ground units.Area) (float64, error) {
	if err := checkGround("tapping.StandCount.TapsPer", unit, ground); err != nil {
		return math.NaN(), err
	}
	return float64(c.Taps) * float64(unit/ground), nil
}

// BasalAreaPer returns the basal area on each unit of ground, as
// [StandCount.TapsPer] does for taps.
func (c StandCount) BasalAreaPer(unit, ground units.Area) (units.Area, error) {
	if err := checkGround("tapping.StandCount.BasalAreaPer", unit, ground); err != nil {
		return nan[units.Area](), err
	}
	return units.Area(float64(c.BasalArea) * float64(unit/ground)), nil
}

func checkGround(fn string, unit, ground units.Area) error {
	const hint = "the area that the counted trees stand on, and an acre or a hectare"
	if err := limit.Within(fn, "unit", unit, minGround, maxGround, units.Acre, "ac", hint); err != nil {
		return err
	}
	return limit.Within(fn, "ground", ground, minGround, maxGround, units.Acre, "ac", hint)
}
