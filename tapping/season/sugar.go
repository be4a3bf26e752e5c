package season

import (
	"slices"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// SugarFigure is a published sugar content of sap. A figure that the source does
// not print is 0, which no sap has.
type SugarFigure struct {
	What            string
	Species         []tapping.Species
	Low, High, Mean units.Brix
	Obtained        string
	Source          string
}

var sugarFigures = []SugarFigure{
	{"sugar maple", []tapping.Species{tapping.SugarMaple}, 1.5, 3, 2.2, "read", "Quebec producers association"},
	{"sugar maple", []tapping.Species{tapping.SugarMaple}, 2, 3, 0, "read", "Houle et al. 2015"},
	{"maple sap", []tapping.Species{tapping.Maple}, 0, 0, 2, "read", "van den Berg, Perkins, Isselhardt 2019, Agric. Sci. 10:32-45"},
	{"boxelder and Norway maple, Utah", []tapping.Species{tapping.Boxelder, tapping.NorwayMaple}, 2.2, 2.8, 0, "read", "Mathews et al. 2024, HortTechnology 34(1):52"},
	{"black walnut", []tapping.Species{tapping.BlackWalnut}, 1.0, 1.5, 0, "read", "Rechlin and Fotos"},
	{"birch", []tapping.Species{tapping.Birch}, 0.5, 2, 0, "read", "Farrell (Cornell)"},
	{"silver maple", []tapping.Species{tapping.SilverMaple}, 0, 0, 1.7, "memory", ""},
}

// SugarFigures returns the published sugar contents of sap. Black maple is tapped
// and counted as sugar maple (common practice). Of red maple no figure was found: an
// abstract calls the view that it is low a misconception (van den Berg, Vermont Maple
// Conference 2022, reported). Birch sap holds
// other sugars: the boiling points and densities of this module are not for it.
//
// Cites quebec-producers, houle-2015, van-den-berg-2019, mathews-2024,
// rechlin-fotos.
func SugarFigures() []SugarFigure {
	out := slices.Clone(sugarFigures)
	for i := range out {
		out[i].Species = slices.Clone(out[i].Species)
	}
	return out
}

// Part is the time of the season.
type Part uint8

// The parts that a figure can be told for.
const (
	WholeSeason Part = iota
	SeasonEnd        // the last weeks, when sugar falls
)

// String names the part.
func (p Part) String() string { return parts.String(p) }

var parts = enum.Names[Part]{Type: "season.Part", Of: []string{"whole season", "end of the season"}}

// Parts lists the parts.
func Parts() []Part { return parts.List() }

// MarshalText returns the name of the part.
func (p Part) MarshalText() ([]byte, error) { return parts.Marshal(p) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (p *Part) UnmarshalText(text []byte) error { return parts.Unmarshal(p, text) }

// NoFigureError says that no published figure of the species was found, and why. It
// unwraps to [tapping.ErrNotCovered].
type NoFigureError struct {
	Func    string // the function called
	Species tapping.Species
}

// Error tells the function, the species and the way out.
func (e *NoFigureError) Error() string { return e.Func + ": " + e.Text(units.Both) }

// Text tells the species and the way out to a person.
func (e *NoFigureError) Text(units.System) string {
	why := ""
	if e.Species == tapping.RedMaple {
		why = "no figure was found, and the University of Vermont calls it a misconception that it is low: "
	}
	return "the sugar of " + e.Species.String() + " sap: " + tapping.ErrNotCovered.Error() + ": " + why + "measure yours"
}

// Unwrap returns [tapping.ErrNotCovered].
func (e *NoFigureError) Unwrap() error { return tapping.ErrNotCovered }

// SapSugar returns the range of sugar published for the species. Towards the
// end of the season sugar falls (from memory): the range is then its lower
// half. Sugar differs from tree to tree and from year to year: the same trees
// of southern Vermont took 63 US gal of sap for one of syrup in 2018 and 50 in
// 2019 (Northern Woodlands, A Tale of Two Seasons). Measure yours.
//
// A species without a published figure gives a span of NaN and a
// [*NoFigureError]. Where only a mean was published, low and high are that
// mean. Check value: sugar maple, 1.5 to 3 Brix.
func SapSugar(s tapping.Species, part Part) (Figure[units.Brix], error) {
	const fn = "season.SapSugar"
	none := Figure[units.Brix]{Span: limit.NoSpan[units.Brix]()}
	if err := limit.WithinAs(fn, "part", "part of the season", float64(part), float64(WholeSeason), float64(SeasonEnd), 1, "", "the whole season or its end"); err != nil {
		return none, err
	}
	var span Figure[units.Brix]
	for _, f := range sugarFigures {
		if !slices.Contains(f.Species, s) {
			continue
		}
		low, high := f.Low, f.High
		if low == 0 {
			low, high = f.Mean, f.Mean
		}
		source := f.Source
		if source == "" {
			source = "from memory"
		}
		if span.Source == "" {
			span = figure(low, high, source)
			continue
		}
		span.Low, span.High = min(span.Low, low), max(span.High, high)
		span.Source += "; " + source
	}
	if span.Source == "" {
		return none, &NoFigureError{fn, s}
	}
	if part == SeasonEnd {
		span.High = span.Low + (span.High-span.Low)/2
		span.Source += "; the fall at the end from memory"
	}
	return span, nil
}
