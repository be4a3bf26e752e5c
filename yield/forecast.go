package yield

import (
	"slices"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Sap that a tap gives in a season by gravity into buckets or bags, from memory
// of extension leaflets.
const (
	gravityLow  = 5 * units.USGallon
	gravityHigh = 15 * units.USGallon
)

// A Basis is what a forecast rests on, best first. (That of a heat is a
// [example.org/sapreckoner/boil/fuel.Basis].)
type Basis uint8

const (
	noBasis       Basis = iota
	OwnSeasons          // the user's own past seasons
	GravityFigure       // what leaflets say of buckets and bags
	StateAverage        // what a state's producers made, all methods mixed
)

var bases = [...]string{
	noBasis:       "no basis",
	OwnSeasons:    "own past seasons",
	GravityFigure: "gravity figures, from memory of extension leaflets",
	StateAverage:  "state averages, all methods mixed",
}

// String returns the basis in words.
func (b Basis) String() string {
	if int(b) >= len(bases) {
		b = noBasis
	}
	return bases[b]
}

var basisNames = enum.Names[Basis]{Type: "yield.Basis", Zero: true,
	Of: []string{OwnSeasons: bases[OwnSeasons], GravityFigure: bases[GravityFigure], StateAverage: bases[StateAverage]}}

// MarshalText returns what String returns, and nothing for none.
func (b Basis) MarshalText() ([]byte, error) { return basisNames.Marshal(b) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (b *Basis) UnmarshalText(text []byte) error { return basisNames.Unmarshal(b, text) }

// Warning returns what a reader must know of a forecast on this basis; empty if
// there is nothing to warn of.
func (b Basis) Warning() string {
	switch b {
	case OwnSeasons:
		return ""
	case GravityFigure:
		return "the sap of a tap is from memory and differs threefold between trees and seasons: keep a record and use it next year"
	case StateAverage:
		return "state averages mix all methods, much of it vacuum tubing, and mislead users of buckets: expect less"
	}
	return "no forecast"
}

// A Forecast is the syrup to expect of a season, at 20 C.
type Forecast struct {
	Basis             Basis
	Low, Middle, High units.Volume
	Seasons           int // how many seasons it rests on; 0 for gravity figures
}

// String prints the forecast for a person, "12 US gal to 35 US gal, 23 US gal in
// the middle, by own past seasons".
func (f Forecast) String() string { return f.Text(units.Both) }

// Text prints the forecast in one system of units, or both, with the two digits
// that its range leaves.
func (f Forecast) Text(in units.System) string {
	if f.Basis == noBasis {
		return f.Basis.Warning()
	}
	span := func(in units.System) string {
		return f.Low.TextIn(in, 2) + " to " + f.High.TextIn(in, 2) + ", " + f.Middle.TextIn(in, 2) + " in the middle"
	}
	s := span(in)
	if in == units.Both {
		s = span(units.US) + " (" + span(units.Metric) + ")"
	}
	return s + ", by " + f.Basis.String()
}

// A PastSeason is what a sugarhouse made in a year.
type PastSeason struct {
	Year  int
	Taps  int
	Syrup units.Volume
}

// PerTap returns the syrup of a tap.
//
// Range: 1 to 1e8 taps, syrup to 1e6 m3. Check value: Vermont, 2021: 1,540,000
// US gal of 5,900,000 taps are 0.261 US gal (USDA NASS, Crop Production,
// January 2022).
func (p PastSeason) PerTap() (units.Volume, error) {
	return p.perTap("yield.PastSeason.PerTap", "PastSeason")
}

func (p PastSeason) perTap(fn, arg string) (units.Volume, error) {
	if err := limit.InAs(fn, arg+".Taps", "taps", float64(p.Taps), 1, maxTaps, "", "the taps of that season"); err != nil {
		return nan[units.Volume](), err
	}
	if err := limit.InAs(fn, arg+".Syrup", "syrup", p.Syrup.CubicMeters(), 0, maxVolume, "m3", "the syrup of that season"); err != nil {
		return nan[units.Volume](), err
	}
	return p.Syrup / units.Volume(p.Taps), nil
}

// ForecastFromPast forecasts from one's own past seasons: the median of the
// syrup per tap, between the least and the most. One season alone says nothing
// of the range; three or more are worth having.
//
// Range: taps from 1 to 1e8, 1 to 1000 seasons as in [PastSeason.PerTap].
func ForecastFromPast(taps int, past []PastSeason) (Forecast, error) {
	const fn = "yield.ForecastFromPast"
	if err := limit.InAs(fn, "past", "number of past seasons", float64(len(past)), 1, 1000, "", "without a past season forecast by gravity figures"); err != nil {
		return Forecast{}, err
	}
	perTap := make([]units.Volume, len(past))
	for i, p := range past {
		v, err := p.perTap(fn, limit.Item("past", i, ""))
		if err != nil {
			return Forecast{}, err
		}
		perTap[i] = v
	}
	return forecast(fn, OwnSeasons, taps, perTap)
}

// forecast multiplies taps with the range and the median of the given yields.
func forecast(fn string, basis Basis, taps int, perTap []units.Volume) (Forecast, error) {
	if err := limit.In(fn, "taps", float64(taps), 1, maxTaps, "", "the taps to be set"); err != nil {
		return Forecast{}, err
	}
	slices.Sort(perTap)
	n, all := len(perTap), units.Volume(taps)
	return Forecast{
		Basis:   basis,
		Low:     all * perTap[0],
		Middle:  all * (perTap[(n-1)/2] + perTap[n/2]) / 2,
		High:    all * perTap[n-1],
		Seasons: n,
	}, nil
}

// ForecastFromGravity forecasts for buckets and bags without a past season, from
// 5 to 15 US gal of sap per tap and the exact [Ratio].
//
// Range: taps from 1 to 1e8, sap and syrup as in [Ratio]. Uncertainty: the
// range itself, which is from memory of extension leaflets; single woods gave
// 15.6 and 22.1 US gal per tap in two years (Northern Woodlands, A Tale of Two
// Seasons). Check value: 100 taps, 2.0 Brix sap and 66.0 Brix syrup give 11.5
// to 34.6 US gal, by 43.389 to one (computed).
//
// Cites northern-woodlands.
func ForecastFromGravity(taps int, sap, syrup units.Brix) (Forecast, error) {
	const fn = "yield.ForecastFromGravity"
	ratio, err := Ratio(sap, syrup)
	if err != nil {
		return Forecast{}, units.Under(fn, err)
	}
	f, err := forecast(fn, GravityFigure, taps, []units.Volume{gravityLow / units.Volume(ratio), gravityHigh / units.Volume(ratio)})
	f.Seasons = 0
	return f, err
}

// A State is a state of the US whose maple producers are surveyed, or all of
// them together. Places whose law on syrup is known are others:
// [example.org/sapreckoner/sugar.Jurisdiction].
type State uint8

// The states of the survey, and their sum.
const (
	noState      State = iota
	Maine              // Maine
	Michigan           // Michigan
	NewHampshire       // New Hampshire
	NewYork            // New York
	Pennsylvania       // Pennsylvania
	Vermont            // Vermont
	Wisconsin          // Wisconsin
	UnitedStates       // all states surveyed
)

// First and last year of the survey kept here.
const (
	firstYear = 2019
	lastYear  = 2021
)

// states holds US gal per tap for each year from firstYear. Source: USDA NASS,
// Crop Production annual summary, January 2022.
var states = [...]struct {
	name   string
	perTap [lastYear - firstYear + 1]float64
}{
	noState:      {name: "no state"},
	Maine:        {"Maine", [...]float64{0.267, 0.299, 0.262}},
	Michigan:     {"Michigan", [...]float64{0.315, 0.298, 0.273}},
	NewHampshire: {"New Hampshire", [...]float64{0.274, 0.291, 0.240}},
	NewYork:      {"New York", [...]float64{0.293, 0.287, 0.223}},
	Pennsylvania: {"Pennsylvania", [...]float64{0.231, 0.241, 0.231}},
	Vermont:      {"Vermont", [...]float64{0.345, 0.342, 0.261}},
	Wisconsin:    {"Wisconsin", [...]float64{0.338, 0.340, 0.353}},
	UnitedStates: {"United States", [...]float64{0.312, 0.314, 0.257}},
}

// String returns the name of the state.
func (s State) String() string {
	if int(s) >= len(states) {
		s = noState
	}
	return states[s].name
}

var stateNames = enum.Names[State]{Type: "yield.State", Zero: true, Of: func() []string {
	names := make([]string, len(states))
	for i := Maine; i <= UnitedStates; i++ {
		names[i] = states[i].name
	}
	return names
}()}

// States lists the states of the survey, and all of them together.
func States() []State { return stateNames.List() }

// MarshalText returns the name of the state, and nothing for none.
func (s State) MarshalText() ([]byte, error) { return stateNames.Marshal(s) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (s *State) UnmarshalText(text []byte) error { return stateNames.Unmarshal(s, text) }

// PerTap returns the syrup of a tap that the state's producers reported for a
// year, all methods mixed.
//
// Range: the states named here, 2019 to 2021. Source: USDA NASS, Crop
// Production annual summary, January 2022. Check value: Vermont, 2021: 0.261 US
// gal.
//
// Cites nass-2022.
func (s State) PerTap(year int) (units.Volume, error) {
	const fn = "yield.State.PerTap"
	if err := s.valid(fn, "State"); err != nil {
		return nan[units.Volume](), err
	}
	if err := limit.In(fn, "year", float64(year), firstYear, lastYear, "", "the years that are kept here"); err != nil {
		return nan[units.Volume](), err
	}
	return units.USGallons(states[s].perTap[year-firstYear]), nil
}

func (s State) valid(fn, arg string) error {
	return limit.InAs(fn, arg, "state", float64(s), float64(Maine), float64(UnitedStates), "", "choose one, such as Vermont")
}

// ForecastFromState forecasts from a state's averages of 2019 to 2021, for want
// of anything better: show [Basis.Warning] beside it.
//
// Range: taps from 1 to 1e8, the states named here. Source: that of
// [State.PerTap]. Check value: 1000 taps in Vermont give 261, 342 and 345 US
// gal.
func ForecastFromState(taps int, s State) (Forecast, error) {
	const fn = "yield.ForecastFromState"
	if err := s.valid(fn, "s"); err != nil {
		return Forecast{}, err
	}
	perTap := make([]units.Volume, len(states[s].perTap))
	for i, v := range states[s].perTap {
		perTap[i] = units.USGallons(v)
	}
	return forecast(fn, StateAverage, taps, perTap)
}
