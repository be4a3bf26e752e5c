package season

import (
	"math"
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Figure is a range of a quantity, with where it comes from. It is a range of
// what was seen or reckoned and not a bound: a year can lie outside. Middle is
// half way between the ends.
type Figure[T ~float64] struct {
	units.Span[T]
	Source string
}

// figure returns the range between two ends.
func figure[T ~float64](low, high T, source string) Figure[T] {
	return Figure[T]{units.Span[T]{Low: low, Middle: low + (high-low)/2, High: high}, source}
}

// Times returns n times as much: the sap of n taps where f is that of one.
func (f Figure[T]) Times(n float64) Figure[T] {
	return figure(f.Low*T(n), f.High*T(n), f.Source)
}

// Method is how the sap leaves the tree. The zero Method is gravity, an open
// spout over a pail or a line without a pump; [WithVacuum] makes the others.
type Method struct{ vacuum units.Pressure }

// maxVacuum is near the best that a pump does at sea level.
const maxVacuum = 28 * units.InchMercury

// WithVacuum returns collecting with that much vacuum at the hole, which is
// less than at the pump.
//
// Range: vacuum 0 (gravity) to 28 inHg below the air outside.
func WithVacuum(vacuum units.Pressure) (Method, error) {
	if err := checkVacuum("season.WithVacuum", vacuum); err != nil {
		return Method{}, err
	}
	return Method{vacuum}, nil
}

// Vacuum returns the vacuum at the hole, 0 for gravity.
func (m Method) Vacuum() units.Pressure { return m.vacuum }

func checkVacuum(fn string, p units.Pressure) error {
	return limit.Within(fn, "vacuum", p, 0, maxVacuum, units.InchMercury, "inHg", "inches of mercury below the pressure of the air, at the hole")
}

// Published gains, and the rate that compounds to the largest of them.
const (
	gainPerInch   = 0.05 // each inHg
	gainPublished = 1.51 // at 16 to 17 inHg, the most
	gainAt        = 16.5 // inHg
)

// VacuumGain returns how much more sap a hole gives under vacuum than by
// gravity. The sources disagree, and the span shows it.
//
// Range: vacuum 0 to 28 inHg at the hole.
//
// Low: about 5 % for each inHg, added up (University of Vermont, Understanding
// the relationship between tree size and yield, 2018). High: compounded so that
// it passes through +151 % at 16.5 inHg, the most that Cornell measured at 16
// to 17 inHg (+110 to +151 %, Maple Tubing and Taphole Sanitation Research,
// 2011). Huyler found +28 % for tubing with vacuum against pails in 1975 (USFS
// Research Note NE-216); its vacuum is not known here. Check value: 16.5 inHg
// gives 82.5 to 151 %.
//
// Cites cornell-maple, huyler-1975.
func VacuumGain(vacuum units.Pressure) (Figure[units.Share], error) {
	if err := checkVacuum("season.VacuumGain", vacuum); err != nil {
		return Figure[units.Share]{Span: limit.NoSpan[units.Share]()}, err
	}
	low, high := vacuumFactors(vacuum)
	return figure(units.FractionShare(low-1), units.FractionShare(high-1),
		"University of Vermont 2018; Cornell 2011"), nil
}

// vacuumFactors returns the sap under vacuum over the sap by gravity.
func vacuumFactors(p units.Pressure) (low, high float64) {
	inches := p.InchesMercury()
	return 1 + gainPerInch*inches, math.Pow(1+gainPublished, inches/gainAt)
}

// Of a falling line.
const (
	columnPerInch = 1.125 * units.Foot // of sap, for each inHg
	maxDrop       = 1000 * units.Foot
)

// LongestDrop is the fall of a full line beyond which it draws no more vacuum:
// 28 inHg of sap, 31.5 ft.
const LongestDrop = 28 * columnPerInch

// NaturalVacuum returns the vacuum that a line full of falling sap draws at its
// upper end: narrow tubing without leaks, kept full by many taps. Further down
// the line there is less, in proportion to the drop that is left. A fall of more
// than 31.5 ft draws no more than one of 31.5 ft: the column of sap breaks.
//
// Range: drop 0 to 1000 ft. Uncertainty: what the line really holds; air in it
// takes most of the vacuum away.
//
// Formula: hydrostatic, 1.125 ft of sap for 1 inHg (computed). Check value: 18
// ft draws 16 inHg, 40 ft 28 inHg.
func NaturalVacuum(drop units.Length) (units.Pressure, error) {
	if err := limit.Within("season.NaturalVacuum", "drop", drop, 0, maxDrop, units.Foot, "ft", "the height that the full line falls, not its length"); err != nil {
		return nan[units.Pressure](), err
	}
	return units.Pressure(min(drop, LongestDrop)/columnPerInch) * units.InchMercury, nil
}

// Gravity yields, from memory of extension leaflets.
const (
	gravityLow  = 5 * units.USGallon
	gravityHigh = 15 * units.USGallon
)

// How the sap of a season is spread over its days: the best fifth of them gave
// 74 % in one studied season (Kurokawa et al. 2024, iForest 17:323-330).
const (
	bestDays  = 0.20
	bestShare = 0.74
	bestMean  = bestShare / bestDays             // mean best day over mean day
	restMean  = (1 - bestShare) / (1 - bestDays) // mean of the other days over mean day
)

// SapModel reckons the sap of one tap from the way it is collected and the
// number of running days in a season. Make one with [NewSapModel]; the zero
// SapModel gives none.
//
// Cites kurokawa-2024.
type SapModel struct {
	method   Method
	flowDays float64
}

// The range of running days in a season.
const (
	minFlowDays = 1.0
	maxFlowDays = 120.0
)

// NewSapModel returns the model of one tap.
//
// Range: flow days 1 to 120 in a season, such as [Window].FlowDays of a station
// near by; 12 to 15 runs of one or several days are usual in Vermont
// (University of Vermont Extension, Beginning Sugarmaking).
func NewSapModel(m Method, flowDays float64) (SapModel, error) {
	if err := limit.WithinAs("season.NewSapModel", "flowDays", "flow days", flowDays, minFlowDays, maxFlowDays, 1, "", "days in a season on which sap runs: a station's past tells them"); err != nil {
		return SapModel{}, err
	}
	return SapModel{m, flowDays}, nil
}

// Season returns the sap of one tap in a season.
//
// By gravity it is 5 to 15 US gal, from memory of extension leaflets; vacuum
// adds [VacuumGain]. Trees of southern Vermont gave 15.6 and 22.1 US gal a tap
// in 2018 and 2019 (Northern Woodlands, A Tale of Two Seasons); the source does
// not say how they were collected.
func (s SapModel) Season() Figure[units.Volume] {
	if s.flowDays == 0 {
		return Figure[units.Volume]{}
	}
	low, high := vacuumFactors(s.method.vacuum)
	span := figure(gravityLow*units.Volume(low), gravityHigh*units.Volume(high),
		"gravity from memory of extension leaflets")
	if s.method.vacuum > 0 {
		span.Source += "; vacuum: University of Vermont 2018, Cornell 2011"
	}
	return span
}

// Day returns the sap of one tap on a day. If it meets the criterion, low is
// the mean of an ordinary running day of a poor season and high the mean of
// the best fifth of the days of a good one; a peak day gives more than that.
// If it does not, low is nothing and high an ordinary day of a good season: no
// criterion is certain.
//
// The span is wide because days are that different. Your own record of a season
// or two makes it narrow.
func (s SapModel) Day(d Day, c Criterion) Figure[units.Volume] {
	season := s.Season()
	if s.flowDays == 0 {
		return season
	}
	mean := season.Times(1 / s.flowDays)
	low, high := units.Volume(0), mean.High*restMean
	if c.Met(d) {
		low, high = mean.Low*restMean, mean.High*bestMean
	}
	return figure(low, high, season.Source+"; days: Kurokawa et al. 2024")
}

// SapDay is the sap of one tap on one day of a forecast.
type SapDay struct {
	Date time.Time
	Runs bool // the criterion is met
	Sap  Figure[units.Volume]
}

// Days returns [SapModel.Day] for every day of the weather.
func (s SapModel) Days(w Weather, c Criterion) []SapDay {
	out := make([]SapDay, 0, len(w.days))
	for _, d := range w.days {
		out = append(out, SapDay{d.Date, c.Met(d), s.Day(d, c)})
	}
	return out
}
