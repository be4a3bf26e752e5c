package tapping

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// ErrNotCovered is what the errors of silent sources unwrap to: a guideline says
// nothing about the trunk ([*NotCoveredError]), or nobody published a figure of
// the species here ([example.org/sapreckoner/tapping/season.SapSugar]).
var ErrNotCovered = errors.New("not covered")

// NotCoveredError says that a guideline is silent about a trunk. Silence is no
// permission: ask another guideline.
type NotCoveredError struct {
	Guideline string       // id of the guideline
	DBH       units.Length // the diameter asked
	Hint      string       // what the guideline does cover
}

// Error tells the guideline, the diameter and the way out.
func (e *NotCoveredError) Error() string {
	return "tapping: " + e.Text(units.Both)
}

// Text tells the same to a person, in the given units.
func (e *NotCoveredError) Text(in units.System) string {
	return fmt.Sprintf("guideline %s does not cover a trunk of %s: %s", cmp.Or(e.Guideline, "(none)"), e.DBH.TextIn(in, 4), e.Hint)
}

// Unwrap returns [ErrNotCovered].
func (e *NotCoveredError) Unwrap() error { return ErrNotCovered }

// GuidelineError says why steps make no guideline, where no number is to blame.
type GuidelineError struct {
	Func string // the function called
	Why  string // and the way out
}

// Error tells the function and the reason.
func (e *GuidelineError) Error() string { return e.Func + ": " + e.Why }

// Text tells the reason to a person.
func (e *GuidelineError) Text(units.System) string { return e.Why }

// Step is one class of a guideline: trunks from From to To, in the unit that
// the guideline is printed in, take Taps taps. The ends belong to the class
// unless After or Before says otherwise.
type Step struct {
	From, To float64 // To is +Inf in a class without an upper end
	After    bool    // From itself is outside: "more than 18 in"
	Before   bool    // To itself is outside: "less than 20 cm"
	Taps     int
}

func (s *Step) holds(x float64) bool {
	above := x > s.From || !s.After && x >= s.From
	below := x < s.To || !s.Before && x <= s.To
	return above && below
}

// GuidelineInfo is a guideline written out: what it is, and its steps.
type GuidelineInfo struct {
	ID           string
	Jurisdiction string // where it applies; empty where it is advice
	Kind         string // legal maximum, planning norm, advice
	Date         string // edition, or time in force
	Source       string
	Reading      string       // how its printed classes are read here
	Height       units.Length // breast height: where the diameter is measured
	Unit         units.Length // the unit that its steps are printed in
	Whole        bool         // printed in whole units: the diameter is rounded down
	Steps        []Step       // ascending and apart
}

// Guideline tells how many taps a healthy maple trunk can bear by its diameter.
// Make one with [NewGuideline], or take a published one from [Guidelines]. The
// zero Guideline covers nothing. Guidelines are immutable.
//
// Cites quebec-a-18.1, quebec-m-35.1, cornell-maple, uvm.
type Guideline struct{ info *GuidelineInfo }

const (
	maxSteps       = 100
	maxTaps        = 10
	roundTo        = 1e6 // diameters are compared in the printed unit to 1e-6
	guidelinesHint = "copy what the rule prints"
)

// NewGuideline returns a guideline of your own: a local rule, or a stricter
// house rule.
//
// It needs an ID, a unit from 1 mm to 1 m, and 1 to 100 ascending steps that do
// not overlap, each of 0 to 10 taps, between 0 and +Inf. Where no number is to
// blame the error is a [*GuidelineError].
func NewGuideline(info GuidelineInfo) (Guideline, error) {
	const fn = "tapping.NewGuideline"
	if info.ID == "" {
		return Guideline{}, &GuidelineError{fn, "a guideline without an ID: answers name it"}
	}
	if err := lengthAs(fn, "GuidelineInfo.Unit", "unit", info.Unit, units.Millimeter, units.Meter, "the unit that the rule is printed in"); err != nil {
		return Guideline{}, err
	}
	if err := limit.WithinAs(fn, "GuidelineInfo.Steps", "number of steps", float64(len(info.Steps)), 1, maxSteps, 1, "", guidelinesHint); err != nil {
		return Guideline{}, err
	}
	end := 0.0
	for i, s := range info.Steps {
		arg := func(field string) (name, what string) {
			return limit.Item("GuidelineInfo.Steps", i, field), fmt.Sprintf("step %d %s", i+1, strings.ToLower(field))
		}
		within := func(field string, x, low, high float64, hint string) error {
			name, what := arg(field)
			return limit.WithinAs(fn, name, what, x, low, high, 1, "", hint)
		}
		if err := within("Taps", float64(s.Taps), 0, maxTaps, guidelinesHint); err != nil {
			return Guideline{}, err
		}
		if err := within("From", s.From, end, math.MaxFloat64, "steps ascend and do not overlap"); err != nil {
			return Guideline{}, err
		}
		if i > 0 && !info.Steps[i-1].Before && !s.After && s.From <= end {
			return Guideline{}, &GuidelineError{fn, fmt.Sprintf("steps %d and %d both hold %g: end the first before it or begin the second after it", i, i+1, end)}
		}
		if err := within("To", s.To, s.From, math.Inf(1), "it ends above its start"); err != nil {
			return Guideline{}, err
		}
		if !(s.To > s.From) { // what it holds is open there
			name, what := arg("To")
			return Guideline{}, &units.RangeError{Func: fn, Arg: name, What: what, Value: s.To, Low: s.From, High: math.Inf(1), Hint: "it ends above its start"}
		}
		end = s.To
	}
	info.Steps = slices.Clone(info.Steps)
	return Guideline{&info}, nil
}

// ID returns the short name of the guideline.
func (g Guideline) ID() string {
	if g.info == nil {
		return ""
	}
	return g.info.ID
}

// String is [Guideline.ID], and "(none)" for the zero Guideline.
func (g Guideline) String() string { return cmp.Or(g.ID(), "(none)") }

// Info returns the guideline written out.
func (g Guideline) Info() GuidelineInfo {
	if g.info == nil {
		return GuidelineInfo{}
	}
	info := *g.info
	info.Steps = slices.Clone(info.Steps)
	return info
}

// Taps returns how many taps the guideline allows a healthy, vigorous maple
// trunk of the given diameter at breast height. [Trunk.Taps] also looks at
// species and vigor.
//
// Range: DBH 0 to 5 m. The comparison is exact: the diameter is taken in the
// unit of the printed rule and rounded to 1e-6 of it, so that 12 in is on the
// boundary of 12 in. Where the rule prints whole units the diameter is rounded
// down. Where the guideline is silent it returns 0 and a [*NotCoveredError].
//
// Check value: by NAMSPM-conservative 12 in takes one tap, 18 in one, 18.1 in
// two.
func (g Guideline) Taps(dbh units.Length) (int, error) {
	if err := diameterRange.CheckAs("tapping.Guideline.Taps", "dbh", float64(dbh)); err != nil {
		return 0, err
	}
	if n, ok := g.taps(dbh); ok {
		return n, nil
	}
	return 0, &NotCoveredError{g.ID(), dbh, g.silence()}
}

// taps is Taps of a checked diameter; ok is false where the guideline is silent.
func (g Guideline) taps(dbh units.Length) (n int, ok bool) {
	if g.info == nil {
		return 0, false
	}
	return g.info.tapsAt(printed(dbh, g.info.Unit))
}

// printed returns a length in the unit of a printed rule, rounded so that
// conversion leaves it on its boundary.
func printed(l, unit units.Length) float64 {
	return math.RoundToEven(float64(l/unit)*roundTo) / roundTo
}

// tapsAt is taps of a diameter already printed.
func (info *GuidelineInfo) tapsAt(x float64) (n int, ok bool) {
	if info.Whole {
		x = math.Floor(x)
	}
	for i := range info.Steps {
		if s := &info.Steps[i]; s.holds(x) {
			return s.Taps, true
		}
	}
	return 0, false
}

// silence tells what the guideline covers.
func (g Guideline) silence() string {
	if g.info == nil {
		return "no guideline was chosen: take a published one, a careful one to start with"
	}
	unit := g.info.Unit.Text(g.info.Unit, 0)[len("1 "):]
	s := "its classes are"
	for i, step := range g.info.Steps {
		if i > 0 {
			s += ","
		}
		to := " and up"
		if !math.IsInf(step.To, 1) {
			to = fmt.Sprintf(" to %g", step.To)
		}
		s += fmt.Sprintf(" %g%s", step.From, to)
	}
	return s + " " + unit + "; measure to its printed digit, or ask another guideline"
}
