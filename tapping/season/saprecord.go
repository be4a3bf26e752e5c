package season

import (
	"fmt"
	"slices"
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// Gathering is sap that was taken in, for one tap.
type Gathering struct {
	Date time.Time // the day of it, whose sap is in it
	// Since is the last day whose sap is not in it, such as that of drilling, and not
	// before the gathering before. Zero is the day of that, or a week ago for the first
	// of a year.
	Since  time.Time
	PerTap units.Volume // all that was gathered, over the number of taps
}

// SapRecord is what one's own gatherings, and the weather of their days, teach
// about the sap of a running day. Make it with [NewSapRecord]. The zero SapRecord
// knows nothing and gives no sap.
//
// The model: the sap of a running day has a gamma distribution, and a day that
// does not meet the criterion counts as an unknown small part of one, since no
// criterion is certain. Sums of such days have a gamma distribution again, so
// that a gathering of several days teaches, and a week has a range of its own.
// How much a running day gives, how skewed it is and what the other days count
// are learned together, by the rule of Bayes. They begin at what is known:
//
//   - the level at the band of [SapModel.Season], which is from memory by gravity,
//     its ends taken as 8 in 10;
//   - the skew where the best fifth of days gives 74 percent of the sap
//     (Kurokawa and others 2024): a shape of 0.325 if these are days that ran, 4.3
//     if they are all days of a season. The abstract does not tell, so these two
//     are taken as 8 in 10.
//
// Gatherings of other seasons teach the skew in full, and the level no better
// than seasons differ: the same trees gave 15.6 and 22.1 US gal a tap in two
// years (Northern Woodlands, A Tale of Two Seasons), a standard deviation of a
// quarter. Among themselves they count as of one level, which makes days look a
// little more skewed than they are. Days are taken as independent. That holes and
// seasons age is not in it.
type SapRecord struct {
	criterion         Criterion
	season            int
	taught, own       int // gatherings that taught, and those of the season
	leftOut, doubtful []time.Time
	nodes             []sapNode
}

// The range of gatherings.
const (
	maxGathered   = 100 * units.Liter
	maxGatherings = 10_000
	firstReach    = 7 // days that the first gathering of a season reaches back
)

// NewSapRecord learns from the gatherings for the season of the given year. The
// weather says which of their days ran.
//
// Range: a model and a criterion that were made; year 1700 to 2300; up to 10,000
// gatherings in order of their dates, one a day, each of 0 to 100 L a tap. One
// with a day without weather teaches nothing, nor does one above [LargestRun]
// for every running day, under vacuum times the [VacuumGain]:
// [SapRecord.LeftOut] tells them.
func NewSapRecord(m SapModel, c Criterion, w Weather, year int, gatherings []Gathering) (SapRecord, error) {
	const fn = "season.NewSapRecord"
	if err := limit.WithinAs(fn, "m", "running days of the model", m.flowDays, minFlowDays, maxFlowDays, 1, "", "make the model first"); err != nil {
		return SapRecord{}, err
	}
	if c == (Criterion{}) {
		return SapRecord{}, &CriterionError{fn, "no criterion is set: take the sap-flow day to start with"}
	}
	if err := limit.Count(fn, "year", year, minYear, maxYear, "the year of the season to learn for"); err != nil {
		return SapRecord{}, err
	}
	if err := limit.WithinAs(fn, "gatherings", "number of gatherings", float64(len(gatherings)), 0, maxGatherings, 1, "", "leave the oldest out"); err != nil {
		return SapRecord{}, err
	}
	if err := checkGatherings(fn, gatherings); err != nil {
		return SapRecord{}, err
	}
	r := SapRecord{criterion: c, season: year, nodes: priorNodes(m)}
	r.learn(r.intervals(m, w, gatherings))
	return r, nil
}

func checkGatherings(fn string, gatherings []Gathering) error {
	for i, g := range gatherings {
		if err := limit.InItem(fn, "gatherings", i, "PerTap", "sap of one tap", g.PerTap.Liters(), 0, maxGathered.Liters(), "L", "all that was gathered over the number of taps"); err != nil {
			return err
		}
		if err := limit.InItem(fn, "gatherings", i, "Date", "year", float64(g.Date.Year()), minYear, maxYear, "", "write the year with four digits"); err != nil {
			return err
		}
		wrong := func(first, second time.Time, why error) error {
			return &entryError{fn, "gathering", i, fmt.Errorf("%s after %s: %w", second.Format(time.DateOnly), first.Format(time.DateOnly), why)}
		}
		day := dayNumber(g.Date)
		if i > 0 {
			switch before := gatherings[i-1].Date; {
			case dayNumber(before) == day:
				return wrong(before, g.Date, records.ErrDuplicate)
			case dayNumber(before) > day:
				return wrong(before, g.Date, records.ErrOrder)
			}
		}
		if !g.Since.IsZero() && dayNumber(g.Since) >= day {
			return wrong(g.Since, g.Date, records.ErrOrder)
		}
		if i > 0 && !g.Since.IsZero() && dayNumber(g.Since) < dayNumber(gatherings[i-1].Date) {
			return wrong(gatherings[i-1].Date, g.Since, records.ErrOrder) // a day has its sap once
		}
	}
	return nil
}

// A takenIn is a gathering with the days that it is of.
type takenIn struct {
	year         int
	sap          float64 // of a tap, L
	runs, others int
}

// intervals counts the days of the gatherings, and leaves out those that cannot
// teach.
func (r *SapRecord) intervals(m SapModel, w Weather, gatherings []Gathering) []takenIn {
	taken := make([]takenIn, 0, len(gatherings))
	_, largest := LargestRun()
	_, gain := vacuumFactors(m.method.vacuum)
	for i, g := range gatherings {
		day := dayNumber(g.Date)
		since := day - firstReach
		if i > 0 && gatherings[i-1].Date.Year() == g.Date.Year() {
			since = dayNumber(gatherings[i-1].Date)
		}
		if !g.Since.IsZero() {
			since = dayNumber(g.Since)
		}
		days := w.days[w.from(since+1):w.from(day+1)]
		runs, others := r.count(days)
		switch {
		case len(days) < day-since:
			r.leftOut = append(r.leftOut, dateOf(day))
		case g.PerTap > largest*units.Volume(gain)*units.Volume(max(1, runs)):
			r.doubtful = append(r.doubtful, dateOf(day))
		default:
			taken = append(taken, takenIn{g.Date.Year(), g.PerTap.Liters(), runs, others})
		}
	}
	return taken
}

// count parts the days into those that run and the others.
func (r *SapRecord) count(days []Day) (runs, others int) {
	for _, d := range days {
		if r.criterion.Met(d) {
			runs++
		}
	}
	return runs, len(days) - runs
}

// Taught returns how many gatherings taught something, and how many of them are
// of the season itself.
func (r SapRecord) Taught() (all, own int) { return r.taught, r.own }

// LeftOut returns the dates of gatherings that taught nothing: those with a day
// that the weather lacks, and those with so much sap that the number of taps or
// the unit may be wrong. Look at both.
func (r SapRecord) LeftOut() (noWeather, tooMuch []time.Time) {
	return slices.Clone(r.leftOut), slices.Clone(r.doubtful)
}

// LikelyDay is the sap of one tap on a day to come.
type LikelyDay struct {
	Date time.Time
	Runs bool                     // the criterion is met
	Sap  units.Span[units.Volume] // as [SapRecord.Sum] gives it
}

// Days returns what every day of the weather is likely to bring. The ends do not
// add up: see [SapRecord.Sum].
func (r SapRecord) Days(w Weather) []LikelyDay {
	var known [2]units.Span[units.Volume]
	known[0], known[1] = r.span(0, 1), r.span(1, 0)
	out := make([]LikelyDay, len(w.days))
	for i, d := range w.days {
		out[i] = LikelyDay{d.Date, r.criterion.Met(d), known[0]}
		if out[i].Runs {
			out[i].Sap = known[1]
		}
	}
	return out
}

// Sum returns the sap of one tap on all days of the weather together. Middle is
// the likely sap: as often more as less. Low and High hold it 8 times in 10, one
// time in ten it is less and one more. A day's sap below 19 mL is told as none.
//
// Check value: without a gathering, a running day of a gravity season of 30 of them
// is likely to bring 0.21 US gal, and 0.02 to 0.73 in 8 cases of 10 (computed).
func (r SapRecord) Sum(w Weather) units.Span[units.Volume] { return r.span(r.count(w.days)) }

// Over returns the chance that a running day brings a tap more than so much: with
// the size of a pail over its taps, on what part of the days it runs over.
//
// Range: 0 to 100 L.
func (r SapRecord) Over(v units.Volume) (units.Share, error) {
	if err := limit.Within("season.SapRecord.Over", "v", v.Liters(), 0, maxGathered.Liters(), 1, "L", "of one tap"); err != nil {
		return nan[units.Share](), err
	}
	if len(r.nodes) == 0 {
		return 0, nil
	}
	return units.FractionShare(1 - r.below(v.Liters(), 1, 0)), nil
}
