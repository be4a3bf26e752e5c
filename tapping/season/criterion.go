package season

import (
	"math"
	"slices"

	"example.org/sapreckoner/units"
)

// Criterion tells by its lowest and highest temperature whether a day is one of
// a kind: a day on which sap flows, a day of a strong run. Take a published
// one from [Criteria], or make your own with [NewCriterion]. The zero Criterion
// is met by no day.
type Criterion struct {
	name, source     string
	minFrom, minTo   float64 // C: minFrom <= min < minTo
	maxAbove, maxEnd float64 // C: maxAbove < max < maxEnd
}

// Name returns the name of the criterion.
func (c Criterion) Name() string { return c.name }

// Source returns where it was published, and how it was obtained and read.
func (c Criterion) Source() string { return c.source }

// Met reports whether the day meets the criterion. Limits are compared in C,
// rounded to 1e-6.
func (c Criterion) Met(d Day) bool {
	low, high := rounded(d.Min), rounded(d.Max)
	return low >= c.minFrom && low < c.minTo && high > c.maxAbove && high < c.maxEnd
}

func rounded(t units.Temperature) float64 { return math.Round(t.Celsius()*roundTo) / roundTo }

// NewCriterion returns a criterion of your own: the day's minimum is below the
// first temperature and its maximum above the second.
//
// Range: both -95 to 60 C. It needs a name, else the error is a
// [*CriterionError].
func NewCriterion(name string, below, above units.Temperature) (Criterion, error) {
	const fn = "season.NewCriterion"
	if name == "" {
		return Criterion{}, &CriterionError{fn, "a criterion without a name: answers name it"}
	}
	for _, t := range []struct {
		arg, what string
		at        units.Temperature
	}{{"below", "minimum below", below}, {"above", "maximum above", above}} {
		if err := checkAir(fn, t.arg, t.what, t.at, "mind the unit: nights of runs are in the 20s F, days in the 30s and 40s"); err != nil {
			return Criterion{}, err
		}
	}
	return Criterion{name, "your own", math.Inf(-1), rounded(below), rounded(above), math.Inf(1)}, nil
}

// CriterionError says that a rule names no criterion, or that one has no name.
// It unwraps to [units.ErrRange].
type CriterionError struct {
	Func string // the function called
	Why  string // and the way out
}

// Error tells the function and the reason.
func (e *CriterionError) Error() string { return e.Func + ": " + e.Why }

// Text tells the reason to a person.
func (e *CriterionError) Text(units.System) string { return e.Why }

// Unwrap returns [units.ErrRange].
func (e *CriterionError) Unwrap() error { return units.ErrRange }

// The published criteria.
var (
	skinner = Criterion{
		name:    "sap-flow day, Skinner 2010",
		source:  "Skinner, DeGaetano, Chabot 2010, Climatic Change 100:685-702, from memory: minimum below -1.1 C (30 F), maximum above 2.2 C (36 F)",
		minFrom: math.Inf(-1), minTo: -1.1, maxAbove: 2.2, maxEnd: math.Inf(1),
	}
	vigorous = Criterion{
		name:    "vigorous run, UVM",
		source:  "University of Vermont Extension, Beginning Sugarmaking: highs mid-30s to 40s F, lows in the 20s F; read as 35 to 49.9 and 20 to 29.9 F",
		minFrom: fahrenheit(20), minTo: fahrenheit(30), maxAbove: math.Nextafter(fahrenheit(35), -1), maxEnd: fahrenheit(50),
	}
	houleEvent = Criterion{
		name:    "freeze-thaw event, Houle 2015",
		source:  "Houle et al. 2015, PLoS ONE 10(12) e0144844: events with a 3 C threshold; read as a maximum above and a minimum below 3 C, the exact definition stands in a supplement that was not seen",
		minFrom: math.Inf(-1), minTo: houleThreshold, maxAbove: houleThreshold, maxEnd: math.Inf(1),
	}
)

const houleThreshold = 3.0

func fahrenheit(f float64) float64 { return rounded(units.Fahrenheit(f)) }

// SapFlowDay returns the criterion of Skinner, DeGaetano and Chabot 2010: a
// night below 30 F and a day above 36 F, from memory of the paper. It is the
// one to start with.
//
// Cites skinner-2010.
func SapFlowDay() Criterion { return skinner }

// VigorousRun returns the criterion of the University of Vermont for a strong
// run: highs in the mid-30s to 40s F after lows in the 20s F.
func VigorousRun() Criterion { return vigorous }

// FreezeThawEvent returns the event that [HouleProbability] counts, as it is
// read here: see its Source.
func FreezeThawEvent() Criterion { return houleEvent }

// Criteria returns the published criteria.
func Criteria() []Criterion { return slices.Clone([]Criterion{skinner, vigorous, houleEvent}) }
