package season_test

import (
	"math"
	"slices"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// springOf is so many days of a year: runs until April 1, or so many days later,
// and then 60 F night and day.
func springOf(year, later, days int) []season.Day {
	var all []season.Day
	last := time.Date(year, 4, 1+later, 0, 0, 0, 0, time.UTC)
	for i := range days {
		d := season.Day{Date: time.Date(year, 1, 1+i, 0, 0, 0, 0, time.UTC), Min: units.Fahrenheit(24), Max: units.Fahrenheit(42)}
		if d.Date.After(last) {
			d.Min, d.Max = units.Fahrenheit(60), units.Fahrenheit(60)
		}
		all = append(all, d)
	}
	return all
}

func pastSprings(t testing.TB, now []season.Day) season.Weather {
	t.Helper()
	all := slices.Concat(springOf(2030, 0, 181), springOf(2031, 4, 181), springOf(2032, 8, 181), now)
	return must[season.Weather](t)(season.NewWeather(all))
}

func look(t testing.TB, w season.Weather, today time.Time, q season.EndQuestion) season.EndOutlook {
	t.Helper()
	q.Rule.Criterion = season.SapFlowDay()
	return must[season.EndOutlook](t)(season.LookForEnd(w, today, q))
}

func in34(month time.Month, day int) time.Time {
	return time.Date(2034, month, day, 0, 0, 0, 0, time.UTC)
}

// Every day of 60 F, night and day, brings 10 F degree-days by any method. The last
// runs of three springs lie on April 1, 5 and 9, the last in a leap year, which is
// day 91, 95 and 100 of the year. Quartiles are days 93 and 97.5: April 3 and 7, the
// earlier at a tie. The 34 and 44 of sugar maple are reached on the fourth and the fifth
// warm day, 4 and 5 later: the lower quartile of the first is April 7, the upper of
// the second day 102.5, April 12.
func TestEndWindows(t *testing.T) {
	o := look(t, pastSprings(t, springOf(2034, 0, 74)), in34(3, 15), season.EndQuestion{Species: tapping.SugarMaple, Drilled: in34(3, 1)})
	for _, tc := range []struct {
		kind     season.EndKind
		state    season.EndState
		figure   float64
		from, to time.Time
	}{
		{season.Warmth, season.NoSign, 0, in34(4, 7), in34(4, 12)},
		{season.FrostFree, season.NoSign, 0, in34(4, 3), in34(4, 7)},
		{season.HoleAge, season.NoSign, 14, in34(3, 22), in34(4, 12)},
		{season.SugarFall, season.NotKnown, 0, time.Time{}, time.Time{}},
		// See TestEndOfWeeks: the logit of 26 events is 4.218, of 98.55 percent.
		{season.LastWeeks, season.NoSign, 100 / (1 + math.Exp(-4.218)), in34(4, 4), in34(4, 11)},
	} {
		s := o.Signs[tc.kind]
		if s.Kind != tc.kind || s.State != tc.state || !(math.Abs(s.Figure-tc.figure) < 1e-9) || !s.From.Equal(tc.from) || !s.To.Equal(tc.to) {
			t.Errorf("%+v, want %+v", s, tc)
		}
	}
	// What ends first, ends the season.
	if o.State != season.NoSign || !o.From.Equal(in34(3, 22)) || !o.To.Equal(in34(4, 7)) {
		t.Errorf("%v, %v to %v", o.State, o.From, o.To)
	}
}

// A day of 60 F makes 10 degree-days, two 20, three 30, four 40, five 50.
func TestEndBySpecies(t *testing.T) {
	w := pastSprings(t, springOf(2034, 0, 110))
	for _, tc := range []struct {
		species tapping.Species
		day     int // of April, the first warm one the 2nd
		want    season.EndState
	}{
		{tapping.RedMaple, 2, season.NoSign}, {tapping.RedMaple, 3, season.EndNear}, {tapping.RedMaple, 4, season.EndNear}, {tapping.RedMaple, 5, season.EndCome},
		{tapping.SilverMaple, 2, season.NoSign}, {tapping.SilverMaple, 5, season.EndCome}, {tapping.Maple, 5, season.EndCome},
		{tapping.SugarMaple, 4, season.NoSign}, {tapping.SugarMaple, 5, season.EndNear}, {tapping.SugarMaple, 6, season.EndCome},
		{tapping.Birch, 9, season.NotKnown},
	} {
		if s := look(t, w, in34(4, tc.day), season.EndQuestion{Species: tc.species}).Signs[season.Warmth]; s.State != tc.want {
			t.Errorf("%v on April %d: %v, want %v", tc.species, tc.day, s, tc.want)
		}
	}
	// Red maple never ends after sugar maple.
	for day := 1; day < 20; day++ {
		red := look(t, w, in34(4, day), season.EndQuestion{Species: tapping.RedMaple}).Signs[season.Warmth]
		hard := look(t, w, in34(4, day), season.EndQuestion{Species: tapping.SugarMaple}).Signs[season.Warmth]
		if red.State < hard.State || red.To.After(hard.To) {
			t.Errorf("April %d: red %v, sugar %v", day, red, hard)
		}
	}
}

// Three nights over freezing warn; they tell the end only when the last runs of
// past springs are over, April 7 in three of four.
func TestEndOfFrost(t *testing.T) {
	thaw := func(from, days int) []season.Day {
		all := springOf(2034, 20, days)
		for i := from; i < days; i++ {
			all[i].Min = units.Celsius(1)
		}
		return all
	}
	for _, tc := range []struct {
		from, days int // of the year, from 0
		want       season.EndState
	}{
		{72, 74, season.NoSign},  // two nights of March
		{71, 74, season.EndNear}, // three
		{94, 97, season.EndNear}, // up to April 7
		{95, 98, season.EndCome}, // and to the 8th
	} {
		days := thaw(tc.from, tc.days)
		today := days[len(days)-1].Date
		if s := look(t, pastSprings(t, days), today, season.EndQuestion{}).Signs[season.FrostFree]; s.State != tc.want {
			t.Errorf("%v: %v, want %v", today, s, tc.want)
		}
	}
	// A forecast of frost takes the warning off; weather that ends days ago tells
	// nothing.
	days := append(thaw(71, 74), springOf(2034, 20, 75)[74])
	if s := look(t, pastSprings(t, days), in34(3, 15), season.EndQuestion{}).Signs[season.FrostFree]; s.State != season.NoSign {
		t.Errorf("%v", s)
	}
	if s := look(t, pastSprings(t, thaw(71, 74)), in34(3, 17), season.EndQuestion{}).Signs[season.FrostFree]; s.State != season.NotKnown {
		t.Errorf("%v", s)
	}
}

// The middles of three are 2.4, 2.0, 1.6 and 1.4, of four readings on: 1.6 in 2.4 is
// 67 percent and warns under 70, 0.9 in 2.4 is 38 and lies under 40. One odd reading
// is no fall.
func TestEndOfSugar(t *testing.T) {
	w := pastSprings(t, springOf(2034, 0, 74))
	for _, tc := range []struct {
		sugar  []units.Brix
		state  season.EndState
		figure float64
	}{
		{[]units.Brix{2.4, 2.4}, season.NotKnown, 0},
		{[]units.Brix{2.3, 2.4, 2.5}, season.NoSign, 100},
		{[]units.Brix{2.3, 2.4, 2.5, 0.8}, season.NoSign, 100},
		{[]units.Brix{2.3, 2.4, 2.5, 1.8, 1.6, 1.5}, season.EndNear, 100 * 1.6 / 2.4},
		{[]units.Brix{2.3, 2.4, 2.5, 1.6, 0.9, 0.9}, season.EndCome, 100 * 0.9 / 2.4},
	} {
		q := season.EndQuestion{Sugar: []season.SugarReading{{Date: time.Date(2033, 3, 1, 0, 0, 0, 0, time.UTC), Sugar: 9}}}
		for i, b := range tc.sugar {
			q.Sugar = append(q.Sugar, season.SugarReading{Date: in34(3, 1+i), Sugar: b})
		}
		if s := look(t, w, in34(3, 15), q).Signs[season.SugarFall]; s.State != tc.state || !(math.Abs(s.Figure-tc.figure) < 1e-9) {
			t.Errorf("%v: %v, want %v", tc.sugar, s, tc.state)
		}
	}
}

// A hole of 3 to 6 weeks; under vacuum of 8 to 9.
func TestEndOfHoles(t *testing.T) {
	w := pastSprings(t, springOf(2034, 60, 160))
	vacuum := must[season.Method](t)(season.WithVacuum(20 * units.InchMercury))
	for _, tc := range []struct {
		days int
		m    season.Method
		want season.EndState
	}{
		{20, season.Method{}, season.NoSign}, {21, season.Method{}, season.EndNear}, {42, season.Method{}, season.EndCome},
		{55, vacuum, season.NoSign}, {56, vacuum, season.EndNear}, {63, vacuum, season.EndCome},
	} {
		q := season.EndQuestion{Drilled: in34(3, 1), Method: tc.m}
		if s := look(t, w, in34(3, 1+tc.days), q).Signs[season.HoleAge]; s.State != tc.want {
			t.Errorf("%d days: %v, want %v", tc.days, s, tc.want)
		}
	}
	if s := look(t, w, in34(2, 1), season.EndQuestion{Drilled: in34(3, 1)}).Signs[season.HoleAge]; s.State != season.NotKnown || !s.From.IsZero() {
		t.Errorf("not drilled yet: %+v", s)
	}
}

// A week of frost nights and thaws makes seven events, and of 26 the chance is over
// 51 percent up to (5.09 - 18.772 + 9.464 + 0.04)/0.07 = 59.7 degree-days. A day of 60
// F makes 10.56. Runs until April 1 end with a whole week, on day 91; the seven warm
// days after make 73.9, and the week is over on April 8. In the past springs the last
// weeks that hold end on days 91, 98 (3 warm days) and 105 (5 warm days): quartiles
// 94.5 and 101.5, April 4 and 11.
func TestEndOfWeeks(t *testing.T) {
	w := pastSprings(t, springOf(2034, 0, 110))
	for day, want := range map[int]season.EndState{1: season.NoSign, 7: season.NoSign, 8: season.EndCome, 15: season.EndCome} {
		if s := look(t, w, in34(4, day), season.EndQuestion{}).Signs[season.LastWeeks]; s.State != want {
			t.Errorf("April %d: %v", day, s)
		}
	}
	if s := look(t, w, in34(1, 6), season.EndQuestion{}).Signs[season.LastWeeks]; s.State != season.NotKnown {
		t.Errorf("no week is whole: %v", s)
	}
}

// Two past springs make no window, and a spring with holes in it tells no warmth.
func TestEndKnowsLittle(t *testing.T) {
	few := must[season.Weather](t)(season.NewWeather(slices.Concat(springOf(2030, 0, 181), springOf(2031, 4, 181), springOf(2034, 0, 74)[40:])))
	o := look(t, few, in34(3, 15), season.EndQuestion{})
	if s := o.Signs[season.Warmth]; s.State != season.NotKnown || !s.From.IsZero() {
		t.Errorf("%+v", s)
	}
	if s := o.Signs[season.FrostFree]; s.State != season.NoSign || !s.From.IsZero() || !o.From.IsZero() || !o.To.IsZero() {
		t.Errorf("%+v", s)
	}
}

func TestEndRefuses(t *testing.T) {
	w := pastSprings(t, nil)
	q := season.EndQuestion{Rule: season.Rule{Criterion: season.SapFlowDay()}}
	if _, err := season.LookForEnd(w, in34(8, 1), q); err == nil || !strings.Contains(err.Error(), "month 8 is outside 1 to 6") {
		t.Errorf("August in the north: %v", err)
	}
	if _, err := season.LookForEnd(w, time.Date(34, 3, 1, 0, 0, 0, 0, time.UTC), q); err == nil {
		t.Error("the year 34 passes")
	}
	if _, err := season.LookForEnd(w, in34(3, 1), season.EndQuestion{}); err == nil {
		t.Error("no criterion passes")
	}
	checkRange(t, "sugar", 0.1, 20, func(x float64) error {
		q := q
		q.Sugar = []season.SugarReading{{Date: in34(3, 1), Sugar: units.Brix(x)}}
		_, err := season.LookForEnd(w, in34(3, 2), q)
		return err
	})
}

// Past springs may lack a tenth of their 181 days, 18, and not 19: three that lack
// more tell no window.
func TestEndOfGappySprings(t *testing.T) {
	for lacking, want := range map[int]bool{0: true, 17: true, 18: true, 19: false} {
		var all []season.Day
		for _, year := range []int{2030, 2031, 2033} {
			spring := springOf(year, 0, 181)
			all = append(append(all, spring[:5]...), spring[5+lacking:]...)
		}
		w := must[season.Weather](t)(season.NewWeather(append(all, springOf(2034, 0, 74)...)))
		o := look(t, w, in34(3, 15), season.EndQuestion{Species: tapping.SugarMaple})
		if s := o.Signs[season.Warmth]; s.From.IsZero() == want || s.To.IsZero() == want {
			t.Errorf("%d days lacking: from %v to %v", lacking, s.From, s.To)
		}
	}
}

// Four days of 60 F, to April 5, bring 40 F degree-days: the window has begun on the
// day that is known, whatever past springs did.
func TestEndHasBegun(t *testing.T) {
	s := look(t, pastSprings(t, springOf(2034, 0, 95)), in34(4, 5), season.EndQuestion{Species: tapping.SugarMaple}).Signs[season.Warmth]
	if s.State != season.EndNear || !s.From.Equal(in34(4, 5)) || !s.To.After(in34(4, 5)) {
		t.Errorf("%+v", s)
	}
}

// Four days of 60 F bring 40 F degree-days: the 34 that warn, but not the 44 of the
// end. Without past springs nobody knows when those come, and no window is told.
func TestEndNearWithoutPastSprings(t *testing.T) {
	w := must[season.Weather](t)(season.NewWeather(springOf(2034, 0, 95)))
	s := look(t, w, in34(4, 5), season.EndQuestion{Species: tapping.SugarMaple}).Signs[season.Warmth]
	if s.State != season.EndNear || math.Abs(s.Figure-40) > 1e-9 || !s.From.IsZero() || !s.To.IsZero() {
		t.Errorf("%+v", s)
	}
}
