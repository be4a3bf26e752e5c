package tapping

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/units"
)

// Where diameter at breast height is measured.
const (
	breastHeightUS     = 4.5 * units.Foot
	breastHeightQuebec = 130 * units.Centimeter
)

const quebecPublic = "Quebec, public land"

var unbounded = math.Inf(1)

// published holds the guidelines in the order of [Guidelines]. Nothing writes
// to it.
var published = []Guideline{
	{&GuidelineInfo{
		ID:     "NAMSPM-conservative",
		Kind:   "advice, conservative",
		Source: "Cornell, A History of Taps and Tree Size (abstract): one tap at 12 in, a second in trees of more than 18 in",
		Height: breastHeightUS, Unit: units.Inch,
		Steps: []Step{
			{From: 0, To: 12, Before: true, Taps: 0},
			{From: 12, To: 18, Taps: 1},
			{From: 18, After: true, To: unbounded, Taps: 2},
		},
	}},
	{&GuidelineInfo{
		ID:      "UVM-school",
		Kind:    "advice, moderate: no more than",
		Source:  "University of Vermont, school sheet",
		Reading: "printed in whole inches: the diameter is rounded down; below 10 and above 24 in it says nothing",
		Height:  breastHeightUS, Unit: units.Inch, Whole: true,
		Steps: []Step{
			{From: 10, To: 17, Taps: 1},
			{From: 18, To: 24, Taps: 2},
		},
	}},
	{&GuidelineInfo{
		ID:      "NAMSPM-traditional",
		Kind:    "advice, traditional",
		Source:  "Cornell, A History of Taps and Tree Size (abstract): one tap for each 5 in above 10 in",
		Reading: "classes overlap in print: a boundary belongs to the class above it",
		Height:  breastHeightUS, Unit: units.Inch,
		Steps: []Step{
			{From: 0, To: 10, Before: true, Taps: 0},
			{From: 10, To: 15, Before: true, Taps: 1},
			{From: 15, To: 20, Before: true, Taps: 2},
			{From: 20, To: 25, Before: true, Taps: 3},
			{From: 25, To: unbounded, Taps: 4},
		},
	}},
	{&GuidelineInfo{
		ID:           "QC-private-plan-2023",
		Jurisdiction: "Quebec, private land",
		Kind:         "planning norm",
		Date:         "version of 20 September 2023",
		Source:       "Quebec, regulation M-35.1 r. 8.1, s. 6",
		Reading:      "boundaries are printed to 0.1 cm: between 23 and 23.1 cm, and 39 and 39.1 cm, it says nothing",
		Height:       breastHeightQuebec, Unit: units.Centimeter,
		Steps: []Step{
			{From: 0, To: 23, Taps: 0},
			{From: 23.1, To: 39, Taps: 1},
			{From: 39.1, To: unbounded, Taps: 2},
		},
	}},
	{&GuidelineInfo{
		ID:           "QC-public-2018to2022",
		Jurisdiction: quebecPublic,
		Kind:         "legal maximum",
		Date:         "in force to the end of 2022",
		Source:       "Quebec, regulation A-18.1 r. 8.1, s. 58",
		Reading:      "boundaries are printed to 0.1 cm: within the tenth between two classes it says nothing",
		Height:       breastHeightQuebec, Unit: units.Centimeter,
		Steps: []Step{
			{From: 0, To: 19.1, Before: true, Taps: 0},
			{From: 19.1, To: 39, Taps: 1},
			{From: 39.1, To: 59, Taps: 2},
			{From: 59.1, To: 79, Taps: 3},
			{From: 79.1, To: unbounded, Taps: 4},
		},
	}},
	{&GuidelineInfo{
		ID:           "QC-public-2004",
		Jurisdiction: quebecPublic,
		Kind:         "legal maximum",
		Date:         "2004, replaced in 2018",
		Source:       "Quebec, regulation A-18.1 r. 2 (O.C. 732-2004), s. 3",
		Reading:      "printed in whole centimeters, 20 to 39 and 40 to 59: a class ends where the next begins",
		Height:       breastHeightQuebec, Unit: units.Centimeter,
		Steps: []Step{
			{From: 0, To: 20, Before: true, Taps: 0},
			{From: 20, To: 40, Before: true, Taps: 1},
			{From: 40, To: 60, Before: true, Taps: 2},
			{From: 60, To: 80, Before: true, Taps: 3},
			{From: 80, To: unbounded, Taps: 4},
		},
	}},
}

// Guidelines returns the published guidelines, the careful ones first. Those of
// Quebec are law or a norm there, some of them past: read Date, and see what
// is in force where the tree stands.
func Guidelines() []Guideline { return slices.Clone(published) }

// GuidelineByID returns the published guideline of that ID, such as
// "NAMSPM-conservative". Another ID is a [*units.ParseError] that tells the nearest.
func GuidelineByID(id string) (Guideline, error) {
	var ids []string
	for _, g := range published {
		if g.ID() == id {
			return g, nil
		}
		ids = append(ids, g.ID())
	}
	hint := "use one of: " + strings.Join(ids, ", ")
	if near, ok := enum.Nearest(id, slices.Values(ids)); ok {
		hint = fmt.Sprintf("did you mean %q? Use one of: %s", near, strings.Join(ids, ", "))
	}
	return Guideline{}, &units.ParseError{Func: "tapping.GuidelineByID", Input: id, Err: units.ErrName, Hint: hint}
}

// DefaultGuideline returns NAMSPM-conservative: no tap under 12 in, never more
// than two.
//
// It is the default because it covers every diameter, asks for a thicker trunk
// than any other guideline here before the first tap and before the second, and
// never gives the third and fourth tap of older rules. It is advice and not law:
// where a law counts less, the law counts.
func DefaultGuideline() Guideline { return published[0] }
