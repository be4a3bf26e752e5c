package yield_test

import (
	"errors"
	"math"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/money"
	"example.org/sapreckoner/yield/packing"
)

// Every documented limit of a number: inside, on both ends, just outside, NaN
// and both infinities.
func TestLimits(t *testing.T) {
	pint := jar(units.USPint)
	syrup := lotOf(t, units.USGallon, 66.9, units.Celsius(20))
	bottle := glass(units.USPint, units.Grams(300))
	hot, cold := units.Celsius(85), units.Celsius(20)
	offered := func(change func(*money.Offer)) error {
		o := byBalance()
		change(&o)
		_, err := o.PerUSGallon(30)
		return err
	}
	habits := func(h packing.Habits) error {
		_, err := packing.LayIn(10, units.USGallon, pint, h)
		return err
	}
	measured := func(m yield.Measured) error {
		s := season(t)
		s.SapMeasured = m
		_, err := s.Account()
		return err
	}
	for name, tt := range map[string]struct {
		low, high float64
		try       func(x float64) error
	}{
		"syrup of Ratio": {0.1, 85, func(x float64) error { _, err := yield.Ratio(0.1, units.Brix(x)); return err }},
		"sap of Ratio":   {0.1, 66, func(x float64) error { _, err := yield.Ratio(units.Brix(x), 66); return err }},
		"syrup of BrixFromRatio": {0.1, 85, func(x float64) error {
			_, err := yield.BrixFromRatio(1, units.Brix(x))
			return err
		}},
		"sap of RuleOf86":  {0.5, 30, func(x float64) error { _, err := yield.RuleOf86(units.Brix(x)); return err }},
		"sugar of BySugar": {0, 1e7, func(x float64) error { _, err := money.BySugar("", units.Kilograms(x)); return err }},
		"label of DivideJars": {1, 1e7, func(x float64) error {
			_, err := money.DivideJars([]money.Jars{{Label: units.Milliliters(x), Count: 1}}, weights("1"))
			return err
		}},
		"syrup of Offer":   {60, 70, func(x float64) error { return offered(func(o *money.Offer) { o.Syrup = units.Brix(x) }) }},
		"minimum of Offer": {0, 30, func(x float64) error { return offered(func(o *money.Offer) { o.MinBrix = units.Brix(x) }) }},
		"step of Prices":   {0.01, 30, func(x float64) error { _, err := byRule().Prices(nil, 2, 3, units.Brix(x)); return err }},
		"side of a tank":   {0.01, 30, func(x float64) error { _, err := yield.LyingCylinder(units.Length(x), 1); return err }},
		"label of Fill":    {1e-6, 0.25, func(x float64) error { _, err := jar(units.Volume(x)).Fill(66, hot, 0); return err }},
		"margin of Fill":   {0, 10, func(x float64) error { _, err := pint.Fill(66, hot, units.Share(x)); return err }},
		"allowance": {0, 0.5, func(x float64) error {
			_, err := packing.CheckNet(units.Liter/2, 66, units.Liters(x), 0, []units.Mass{1})
			return err
		}},
		"weight of a jar": {0, 1000, func(x float64) error {
			_, err := packing.CheckNet(units.USPint, 66, 0, 0, []units.Mass{units.Mass(x)})
			return err
		}},
		"lot to pack":     {1e-6, 200, func(x float64) error { return packable(x) }},
		"volume limits":   {0.01, 50, func(x float64) error { return measured(yield.Measured{Volume: units.Share(x), Brix: 0.1}) }},
		"Brix limits":     {0.01, 5, func(x float64) error { return measured(yield.Measured{Volume: 1, Brix: units.Brix(x)}) }},
		"loss of Expect":  {0, 100, func(x float64) error { _, err := season(t).Expect(units.Share(x), 66); return err }},
		"syrup of Expect": {60, 85, func(x float64) error { _, err := season(t).Expect(0, units.Brix(x)); return err }},
		"syrup of a season": {0, 1e6, func(x float64) error {
			_, err := yield.PastSeason{Taps: 1, Syrup: units.Volume(x)}.PerTap()
			return err
		}},
		"sap of a day":     {0, 1e6, func(x float64) error { _, err := packing.PeakPerTap([]units.Volume{units.Volume(x)}, 1); return err }},
		"packing heat":     {0, 110, func(x float64) error { _, err := packing.PackingHeatOf(units.Celsius(x)); return err }},
		"fill of a bottle": {0, 110, func(x float64) error { _, err := bottle.AfterFilling(66, units.Celsius(x), cold); return err }},
		"wall of a bottle": {0, 110, func(x float64) error { _, err := bottle.AfterFilling(66, hot, units.Celsius(x)); return err }},
		"mass of a bottle": {0.001, 100, func(x float64) error {
			_, err := glass(units.Liters(200), units.Mass(x)).AfterFilling(66, hot, cold)
			return err
		}},
		"volume to filter":  {0, 1e6, func(x float64) error { _, err := packing.FiltersFor(units.Volume(x), units.USGallon); return err }},
		"volume for aid":    {0, 1e6, func(x float64) error { _, err := packing.FilterAid(units.Volume(x), 1); return err }},
		"dose of aid":       {0, 200, func(x float64) error { _, err := packing.FilterAid(1, units.Density(x)); return err }},
		"wet cake":          {0, 1e6, func(x float64) error { _, err := packing.CakeLoss(units.Mass(x), 0, 0, 66, hot); return err }},
		"dry aid":           {0, 5, func(x float64) error { _, err := packing.CakeLoss(5, units.Mass(x), 0, 66, hot); return err }},
		"niter":             {0, 3, func(x float64) error { _, err := packing.CakeLoss(5, 2, units.Mass(x), 66, hot); return err }},
		"a filter's volume": {0.1, 1000, func(x float64) error { _, err := packing.FiltersFor(1, units.USGallons(x)); return err }},
		"moisture":          {0, 35, func(x float64) error { _, err := finish.ProductWeight(syrup, units.Share(x)); return err }},
		"mass of a part":    {1e-6, 1e9, func(x float64) error { return bulk(x) }},
		"heat of the walls": {0.1, 5, func(x float64) error {
			c := bottle
			if c.SpecificHeat = units.KilojoulesPerKilogramKelvin(x); unset(x) {
				return units.ErrRange // zero stands for glass
			}
			_, err := c.AfterFilling(66, hot, cold)
			return err
		}},
		"habit, cord":   {0.1, 100, func(x float64) error { return habits(packing.Habits{SyrupPerCord: units.USGallons(x)}) }},
		"habit, filter": {0.1, 1000, func(x float64) error { return habits(packing.Habits{PerFilter: units.USGallons(x)}) }},
		"habit, peak":   {0.1, 20, func(x float64) error { return habits(packing.Habits{PeakPerTap: units.USGallons(x)}) }},
		"habit, held":   {1, 720, func(x float64) error { return habits(packing.Habits{Held: hours(x)}) }},
		"habit, spare":  {0, 100, func(x float64) error { return habits(packing.Habits{Spare: units.Share(x)}) }},
	} {
		// A part in a billion is what a trip through a unit may cost.
		eps := 1e-9 * math.Max(tt.high, 1e-3)
		if tt.low > 0 {
			eps = 1e-9 * tt.low
		}
		for _, x := range []float64{tt.low + eps, (tt.low + tt.high) / 2, tt.high * (1 - 1e-9)} {
			if err := tt.try(x); err != nil {
				t.Errorf("%s, inside at %v: %v", name, x, err)
			}
		}
		for _, x := range []float64{tt.low - eps, tt.low - 1, tt.high * (1 + 1e-9), 2 * tt.high, notNum, inf, -inf} {
			if err := tt.try(x); !errors.Is(err, units.ErrRange) {
				t.Errorf("%s, outside at %v: %v", name, x, err)
			}
		}
		// The message about no number tells the same limits, in its own unit.
		var e *units.RangeError
		if err := tt.try(notNum); errors.As(err, &e) && e.Value != e.Value && strings.HasPrefix(e.Func, "yield.") {
			if unit := e.High / tt.high; !(math.Abs(e.Low-tt.low*unit) <= 1e-9*e.High) {
				t.Errorf("%s is said to lie in %v to %v, want %v to %v: %v", name, e.Low, e.High, tt.low, tt.high, err)
			}
		}
	}
}

func unset(x float64) bool { return x >= 0 && x <= 0 }

// packable tries to pack a lot of a volume in m3.
func packable(x float64) error {
	lot, err := sugar.NewLot(units.Volume(x), 66.9, units.Celsius(20))
	if err != nil {
		return err
	}
	_, err = packing.FewestContainers(lot, 0, packing.Supply{Container: jar(units.Liters(200)), OnHand: packing.Plenty})
	return err
}

// bulk tries a part of a mass in kg.
func bulk(x float64) error {
	_, err := yield.NewBooks([]yield.Boil{{ID: "1"}}, []yield.BulkLot{{ID: "A", Parts: []yield.Part{{From: "1", Mass: units.Mass(x)}}}}, nil)
	return err
}

// hours returns x hours; a time that no Duration holds as the longest.
func hours(x float64) time.Duration {
	switch {
	case math.IsNaN(x) || x > 1e6:
		return math.MaxInt64
	case x < -1e6:
		return math.MinInt64
	case unset(x):
		return 1 // zero stands for a day
	}
	return time.Duration(math.Round(x * float64(time.Hour)))
}
