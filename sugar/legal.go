package sugar

import (
	"math"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// What [Standard.Judge] may be asked.
var (
	leastSolids = limit.Range{Arg: "Standard.Min", What: "least strength of the standard", Low: 1, High: 85, Unit: "Brix",
		Below: "a standard without a lower limit judges nothing: take the rule of a listed place, or give its least strength"}
	readingDoubt = limit.Range{Arg: "uncertainty", Low: 0.01, High: 10, Unit: "Brix",
		Below: "every reading has one: half of the field hydrometers checked lie within 0.2",
		Above: "such a reading tells nothing"}
)

// A Jurisdiction is a place whose rule on the density of maple syrup is known
// here: a state, a province or a country. States whose harvest is surveyed are
// others: [example.org/sapreckoner/yield.State]. The zero value is none.
type Jurisdiction uint8

// The jurisdictions, with the source of each in [Jurisdiction.Standard].
const (
	UnitedStates Jurisdiction = iota + 1
	Canada
	NewYork
	Maine
	Vermont
	Ontario
	NewHampshire
	UnitedStates1967 // superseded: for old records only
)

// A Standard is a rule on the soluble solids of maple syrup. It may be made by
// hand for a place that is not listed.
type Standard struct {
	Place    string            // whose rule it is
	Min      units.Brix        // least strength allowed
	Max      units.Brix        // most, or 0 if the rule sets none
	At       units.Temperature // where the rule measures, or NaN if it does not say
	Source   string            // with the date, where the source names one
	Obtained string            // "read" in a public copy of the source, or how else
	Note     string
}

var standards = [...]Standard{
	UnitedStates: {Place: "United States", Min: 66, Max: 68.9, At: unstated, Obtained: "read",
		Source: "USDA AMS, U.S. Standards for Grades of Maple Syrup, effective 2 March 2015, s. 52.5961-52.5962"},
	Canada: {Place: "Canada", Min: 66, Max: 68.9, At: units.Celsius(20), Obtained: "read",
		Source: "CFIA, Canadian Grade Compendium, vol. 7, s. 3-4"},
	NewYork: {Place: "New York", Min: 66, Max: 68.9, At: unstated, Obtained: "read",
		Source: "1 NYCRR 270.1"},
	Maine: {Place: "Maine", Min: 66, Max: 69, At: units.Fahrenheit(68), Obtained: "read",
		Source: "7 MRSA 892-A", Note: "68.9 on a contingency"},
	Vermont: {Place: "Vermont", Min: 66.9, Max: 68.9, At: units.Fahrenheit(60), Obtained: "read",
		Source: "University of Vermont Extension, statement of the rule", Note: "36 and 37 Baume, modulus 145"},
	Ontario: {Place: "Ontario", Min: 66, At: units.Celsius(20), Obtained: "read",
		Source: "O. Reg. 119/11"},
	NewHampshire: {Place: "New Hampshire", Min: 66.9, At: unstated, Obtained: "read second-hand",
		Source: "secondary pages only", Note: "ask the state for the rule itself"},
	UnitedStates1967: {Place: "United States before 2015", Min: 65, At: units.Fahrenheit(68), Obtained: "read",
		Source: "32 FR 7579 (1967)", Note: "not more than 35 percent water; 11 lb per US gallon at 68 F, which in air is 65.46 Brix: the two halves do not agree"},
}

// unstated is the temperature of a rule that names none.
var unstated = units.Celsius(math.NaN())

func (j Jurisdiction) known() bool { return j >= UnitedStates && j <= UnitedStates1967 }

var places = enum.Names[Jurisdiction]{Type: "sugar.Jurisdiction", Zero: true, Of: placeNames()}

func placeNames() []string {
	names := make([]string, len(standards))
	for i, s := range standards {
		names[i] = s.Place
	}
	return names
}

// String returns the name of the place, such as "New York".
func (j Jurisdiction) String() string { return places.String(j) }

// Jurisdictions lists the places whose rule is known here, a superseded rule last.
func Jurisdictions() []Jurisdiction { return places.List() }

// MarshalText returns what String returns, and nothing for none.
func (j Jurisdiction) MarshalText() ([]byte, error) { return places.Marshal(j) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (j *Jurisdiction) UnmarshalText(text []byte) error { return places.Unmarshal(j, text) }

// Standard returns the rule on density of the place, with its source.
//
// Local rules come first: a state, a province, a buyer or a packer may ask for
// more than is listed, for a license, an inspection or a label, and rules
// change. Where the source line names no date, none is known here. Read the
// text that is in force before selling.
//
// No or an unknown jurisdiction is an [*InfeasibleError].
//
// Cites usda-2015, canada-grades, new-york-270, maine-892a, vermont-rule,
// ontario-119-11, fr-7579-1967.
func (j Jurisdiction) Standard() (Standard, error) {
	if j.known() {
		return standards[j], nil
	}
	why := j.String() + " is not listed"
	if j == 0 {
		why = "no place is given"
	}
	return Standard{}, &InfeasibleError{Func: "sugar.Jurisdiction.Standard", Why: why, Hint: "take a listed place such as Vermont, or give the rule in force"}
}

// A Verdict is what a measured strength says about a rule. The zero value calls
// nothing.
type Verdict uint8

// The verdicts.
const (
	TooCloseToCall Verdict = iota // a limit lies within the uncertainty
	Inside                        // clearly inside
	TooThin                       // clearly below the least strength: it may ferment
	TooDense                      // clearly above the most: it may crystallize
)

var verdicts = enum.Names[Verdict]{Type: "sugar.Verdict", Of: []string{
	TooCloseToCall: "too close to call", Inside: "inside", TooThin: "too thin", TooDense: "too dense"}}

// String returns the verdict in words.
func (v Verdict) String() string { return verdicts.String(v) }

// MarshalText returns what String returns.
func (v Verdict) MarshalText() ([]byte, error) { return verdicts.Marshal(v) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (v *Verdict) UnmarshalText(text []byte) error { return verdicts.Unmarshal(v, text) }

// Judge compares a measured strength and its uncertainty with the rule: clearly
// inside, clearly too thin or too dense, or too close to call, which is when a
// limit lies between measured - uncertainty and measured + uncertainty. A limit
// met exactly by an end of that span counts as kept. Give the expanded uncertainty
// (k = 2), as an [example.org/sapreckoner/density.Measurement] has it: a standard
// one calls too much.
//
// Take the strength at the temperature of the instrument, or corrected for it
// (see [example.org/sapreckoner/density.Hydrometer]); percent by mass does not
// change with temperature, only readings do. The verdict is about density
// alone and about the reading, not a legal opinion: see [Jurisdiction.Standard].
//
// Range: 0 to 85 Brix measured, uncertainty 0.01 to 10. Outside the range the
// verdict is too close to call, and the error a [*units.RangeError]; a rule
// whose Max lies below its Min is an [*InfeasibleError].
//
// Check value: 66.9 with 0.2 against 66 to 68.9 is inside; 66.1 with 0.2 is too
// close to call.
func (s Standard) Judge(measured, uncertainty units.Brix) (Verdict, error) {
	const fn = "sugar.Standard.Judge"
	if err := leastSolids.Check(fn, float64(s.Min)); err != nil {
		return TooCloseToCall, err
	}
	if s.Max != 0 {
		if err := checkBrix(fn, "Standard.Max", "most strength of the standard", s.Max); err != nil {
			return TooCloseToCall, err
		}
		if s.Max < s.Min {
			return TooCloseToCall, &InfeasibleError{Func: fn, Why: "no syrup can keep a standard whose most lies below its least", Hint: "exchange the two"}
		}
	}
	if err := checkBrix(fn, "measured", "measured strength", measured); err != nil {
		return TooCloseToCall, err
	}
	if err := readingDoubt.Check(fn, float64(uncertainty)); err != nil {
		return TooCloseToCall, err
	}
	// 66.2 - 0.2 is a hair below 66 in binary: what no instrument can show must
	// not tip the verdict.
	const hair = 1e-9
	least, most := measured-uncertainty, measured+uncertainty
	switch limited := s.Max != 0; {
	case most < s.Min-hair:
		return TooThin, nil
	case limited && least > s.Max+hair:
		return TooDense, nil
	case least < s.Min-hair, limited && most > s.Max+hair:
		return TooCloseToCall, nil
	}
	return Inside, nil
}
