package season

import (
	"math"
	"slices"
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// SugarReading is the strength of sap on a day.
type SugarReading struct {
	Date  time.Time
	Sugar units.Brix
}

// EndQuestion is what [LookForEnd] is asked about. What is not known is left out.
type EndQuestion struct {
	Rule    Rule            // which days run, and where the spring is
	Species tapping.Species // the one that blooms first of those tapped
	Method  Method          // how the sap is taken: a hole under vacuum lives longer
	Drilled time.Time       // the first of the holes; zero where it is not told
	Sugar   []SugarReading  // one's own, of any years and order; those of the season count
}

// EndSign is one sign of the season's end. Its figures are in the unit of its
// kind, and 0 where the state is [NotKnown].
type EndSign struct {
	Kind  EndKind
	State EndState
	// Figure is where the season stands; from Near on it warns, from Come on the
	// sign is there. Sugar and the chance of a week fall, the others rise.
	Figure, Near, Come float64
	// From and To are a window for it, zero where nothing tells: a warning and no
	// date.
	From, To time.Time
	Source   string
}

// EndOutlook is what all signs tell together. The last judge is none of them: the
// smell of the steam, and a spoonful of clear sap that was boiled. Sap that is
// cloudy, ropy or sour is never tasted.
type EndOutlook struct {
	State EndState  // the furthest of the signs
	Signs []EndSign // one of every kind, in the order of [EndKinds]
	// From and To are the first of the windows: what ends first, ends the season.
	// Zero where no sign has one.
	From, To time.Time
}

// What the signs turn on.
const (
	thawNights  = 3 // 72 hours
	sugarFell   = 0.4
	fewSprings  = 3 // that make a window
	fewReadings = 3
)

// RedMapleBloom returns the degree-days by [BloomRule] since 1 January at which
// red maple opens its first flowers and stands in full bloom: 44 and 75
// Fahrenheit degree-days (Ohio State University Phenology Calendar, quoted by its
// Extension, 16 February 2017; full bloom read second-hand). As with
// [SilverMapleBloom], take it as a warning and no date.
func RedMapleBloom() (first, full DegreeDays) {
	return FahrenheitDegreeDays(44), FahrenheitDegreeDays(75)
}

// LookForEnd looks for signs of the season's end on a day. The weather holds the
// days of this season up to it, the forecast after it, and past springs, which
// three or more of make windows.
//
// The signs, each with what it turns on:
//
//   - Warmth since the first of the year, by [BloomRule]. Buds turn sap before
//     they bloom, red and silver maple's before sugar maple's (from memory). Of
//     sugar maple, which is not in the calendar, it warns from the first bloom of
//     silver maple on and is there at that of red maple; of other maples, and of
//     one not told, at half of the former and at the former. The choice is our own.
//   - Nights without frost on end, up to the last one told: three, since sap may
//     run up to 72 hours without a new freeze under vacuum (Ohio State University
//     Extension, 2017). It is there when the last runs of past springs are over
//     besides: frost can come back.
//   - The age of the hole, by [tapping.LifeFigures].
//   - The sugar of the last three readings by the best three on end, as middles.
//     One maker's fell to 0.4 (a letter, 2008); from half way on it warns.
//   - Weeks of syrup as [ProducingWeeks] reckons them: over when one is past
//     [HouleThreshold] no more. It was made for Quebec and is unproven elsewhere.
//     More than 26 events count as 26, where the curve is highest.
//
// The windows come late rather than early: foretold on March 1 from invented springs
// about the normals of Quebec City it was April 24 to May 13, and syrup was ended
// there from April 5 to 25 (computed; Houle and others 2015).
//
// Range: the rule as in [Seasons]; a day within the half-year of the season, years
// 1700 to 2300; readings 0.1 to 20 Brix.
func LookForEnd(w Weather, today time.Time, q EndQuestion) (EndOutlook, error) {
	const fn = "season.LookForEnd"
	if err := q.Rule.check(fn); err != nil {
		return EndOutlook{}, err
	}
	if err := limit.WithinAs(fn, "today", "year", float64(today.Year()), minYear, maxYear, 1, "", "write the year with four digits"); err != nil {
		return EndOutlook{}, err
	}
	year, ok := q.Rule.Hemisphere.of(today)
	if first := int(q.Rule.Hemisphere.firstMonth()); !ok {
		return EndOutlook{}, limit.WithinAs(fn, "today", "month", float64(today.Month()), float64(first), float64(first+5), 1, "", "the season's half of the year")
	}
	if err := limit.InAs(fn, "EndQuestion.Species", "species", float64(q.Species), 0, float64(tapping.OtherTree), "", "choose one that is listed"); err != nil {
		return EndOutlook{}, err
	}
	for i, s := range q.Sugar {
		const low, high = 0.1, 20
		if b := float64(s.Sugar); !(b >= low && b <= high) {
			return EndOutlook{}, limit.InAs(fn, limit.Item("EndQuestion.Sugar", i, "Sugar"), limit.Entry(i, "sugar of the sap"), b, low, high, "Brix", "as the sap was read")
		}
	}
	l := endLook{w: w, q: q, today: dayNumber(today), year: year}
	l.first, l.last = q.Rule.Hemisphere.season(year)
	return joined([]EndSign{l.warmth(), l.frost(), l.hole(), l.sugar(), l.weeks()}), nil
}

// joined is what the signs tell together.
func joined(signs []EndSign) EndOutlook {
	o := EndOutlook{Signs: signs}
	for _, s := range signs {
		o.State = max(o.State, s.State)
		if s.From.IsZero() {
			continue
		}
		if o.From.IsZero() || s.From.Before(o.From) {
			o.From = s.From
		}
		if o.To.IsZero() || s.To.Before(o.To) {
			o.To = s.To
		}
	}
	return o
}

// sign makes one of a figure that rises.
func sign(kind EndKind, figure, near, come float64, source string) EndSign {
	s := EndSign{Kind: kind, Source: source}
	if math.IsNaN(figure) {
		return s
	}
	s.Figure, s.Near, s.Come = figure, near, come
	switch {
	case figure >= come-1e-9:
		s.State = EndCome
	case figure >= near-1e-9:
		s.State = EndNear
	default:
		s.State = NoSign
	}
	return s
}

// hole is the age of the first hole in days.
func (l *endLook) hole() EndSign {
	low, high := tapping.HoleLife()
	source := "a producer's notes of 2016; extension advice, from memory"
	if l.q.Method.vacuum > 0 {
		figures := tapping.LifeFigures()
		f := figures[len(figures)-1]
		low, high, source = f.Low, f.High, f.Source
	}
	const day = 24 * time.Hour
	age := math.NaN()
	drilled := dayNumber(l.q.Drilled)
	told := !l.q.Drilled.IsZero() && drilled <= l.today
	if told {
		age = float64(l.today - drilled)
	}
	s := sign(HoleAge, age, float64(low/day), float64(high/day), source)
	if told {
		s.From, s.To = dateOf(drilled+int(low/day)), dateOf(drilled+int(high/day))
	}
	return s
}

// sugar is the share that is left of it, in percent.
func (l *endLook) sugar() EndSign {
	var read []SugarReading
	for _, r := range l.q.Sugar {
		if n := dayNumber(r.Date); n >= l.first && n <= l.today {
			read = append(read, r)
		}
	}
	slices.SortStableFunc(read, func(a, b SugarReading) int { return dayNumber(a.Date) - dayNumber(b.Date) })
	best, last, share := 0.0, 0.0, math.NaN()
	for i := 0; i+fewReadings <= len(read); i++ {
		three := []float64{float64(read[i].Sugar), float64(read[i+1].Sugar), float64(read[i+2].Sugar)}
		slices.Sort(three)
		last = three[1]
		best = max(best, last)
	}
	if best > 0 {
		share = last / best
	}
	// A figure that falls is turned round for the ladder and told as it is.
	const near = (1 + sugarFell) / 2
	s := sign(SugarFall, -share, -near, -sugarFell, "a grower's letter, 2008, one maker")
	if s.State != NotKnown {
		s.Figure, s.Near, s.Come = 100*share, 100*near, 100*sugarFell
	}
	return s
}
