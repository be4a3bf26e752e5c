package season

import (
	"fmt"
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Gear is a way to take the sap of a stand: pails, tubing, tubing with a pump.
type Gear struct {
	Name   string
	Method Method        // the vacuum at the hole; of a falling line, [NaturalVacuum]
	Falls  bool          // it is that of a falling line: air may take all of it away, in the poor season
	Depth  units.Length  // of the holes, as in [SapByDepth]
	Clean  units.Share   // its sap over that of new spouts and lines; see [CleaningFigures]
	Round  time.Duration // walking and pouring of a running day
	First  float64       // what it takes to begin, in one's own money
	Yearly float64       // spouts, cleaning, fuel and repairs of a season
}

// GearUse is what the gears are compared for.
type GearUse struct {
	Taps     int
	FlowDays float64      // as in [NewSapModel]
	Worth    float64      // what Per of sap is worth, in one's own money
	Per      units.Volume // such as a US gallon
	Hour     float64      // what an hour of one's own is worth; 0 if it is free
}

// GearSeason is a season with a gear, and what it brings beside the first of the
// list.
type GearSeason struct {
	Name    string
	Sap     Figure[units.Volume] // of all taps
	Spouts  int
	Walking time.Duration
	// LeastLeft and MostLeft is the worth of the sap less what the season takes, in
	// a poor and in a good season.
	LeastLeft, MostLeft float64
	// Pays says that in good seasons the gear pays back what it takes more to begin
	// than the first one, after PaysFrom seasons; Surely that it does in poor ones
	// too, after PaysTo.
	Pays, Surely     bool
	PaysFrom, PaysTo float64
}

// The range of gears.
const (
	maxGearTaps = 1_000_000
	maxMoney    = 1e9
	maxGears    = 100
	leastClean  = 0.1
)

// CompareGear reckons a season of one stand with every gear. The first is the one
// to compare with, such as the pails at hand.
//
// Sap is that of [SapModel.Season], by depth ([SapByDepth]) and cleanliness: wide
// bands, whose poor ends are compared with each other, and whose good ends. Poor
// and good is the season and what vacuum brings together.
//
// Range: 1 to 1,000,000 taps; flow days 1 to 120; money 0 to 1e9; per 0.001 to 100
// US gal; 1 to 100 gears, each with a depth of 1 to 4 in, 10 to 100 % of clean sap,
// a round of 0 to 24 hours. Prices and minutes are one's own: none is published
// here.
//
// Check value: 100 taps of gravity make 500 to 1500 US gal; at 0.40 a gallon and
// with 20 running days of an hour at 10 they leave 0 to 400.
func CompareGear(use GearUse, gears []Gear) ([]GearSeason, error) {
	const fn = "season.CompareGear"
	if err := use.check(fn); err != nil {
		return nil, err
	}
	if err := limit.WithinAs(fn, "gears", "number of gears", float64(len(gears)), 1, maxGears, 1, "", "give the gear at hand first"); err != nil {
		return nil, err
	}
	out := make([]GearSeason, 0, len(gears))
	for i, g := range gears {
		if err := g.check(fn, i); err != nil {
			return nil, err
		}
		s, err := use.season(g)
		if err != nil {
			return nil, units.Under(fn, err)
		}
		if i > 0 {
			s.payBack(g.First-gears[0].First, out[0])
		}
		out = append(out, s)
	}
	return out, nil
}

func (u GearUse) season(g Gear) (GearSeason, error) {
	m, err := NewSapModel(g.Method, u.FlowDays)
	if err != nil {
		return GearSeason{}, err
	}
	depth, err := SapByDepth(g.Depth)
	if err != nil {
		return GearSeason{}, err
	}
	sap := m.Season()
	if g.Falls {
		sap.Low = gravityLow
	}
	s := GearSeason{
		Name: g.Name, Spouts: u.Taps,
		Sap:     sap.Times(float64(u.Taps) * depth.Fraction() * g.Clean.Fraction()),
		Walking: time.Duration(u.FlowDays * float64(g.Round)),
	}
	takes := g.Yearly + u.Hour*s.Walking.Hours()
	s.LeastLeft = float64(u.Worth*float64(s.Sap.Low/u.Per)) - takes // not fused, so that nothing left is nothing
	s.MostLeft = float64(u.Worth*float64(s.Sap.High/u.Per)) - takes
	return s, nil
}

// payBack compares what is left with what the gear takes more to begin.
func (s *GearSeason) payBack(more float64, with GearSeason) {
	poor, good := s.LeastLeft-with.LeastLeft, s.MostLeft-with.MostLeft
	after := func(gain float64) (seasons float64, pays bool) {
		if more <= 0 {
			return 0, gain >= 0
		}
		return more / gain, gain > 0
	}
	one, pays := after(max(poor, good))
	two, surely := after(min(poor, good))
	if s.Pays = pays; pays {
		s.PaysFrom = one
	}
	if s.Surely = surely; surely {
		s.PaysTo = two
	}
}

func (u GearUse) check(fn string) error {
	if err := limit.InAs(fn, "GearUse.Taps", "taps", float64(u.Taps), 1, maxGearTaps, "", "the holes of the stand"); err != nil {
		return err
	}
	if err := limit.InAs(fn, "GearUse.FlowDays", "flow days", u.FlowDays, minFlowDays, maxFlowDays, "", "days in a season on which sap runs"); err != nil {
		return err
	}
	if err := limit.InAs(fn, "GearUse.Worth", "worth of sap", u.Worth, 0, maxMoney, "", "in your own money"); err != nil {
		return err
	}
	if err := checkGallons(fn, "GearUse.Per", "volume that the worth is of", u.Per, minPail, maxPail, "one gallon, say"); err != nil {
		return err
	}
	return limit.InAs(fn, "GearUse.Hour", "worth of an hour", u.Hour, 0, maxMoney, "", "0 if it is free")
}

func (g Gear) check(fn string, i int) error {
	what := func(s string) string { return fmt.Sprintf("gear %d: %s", i+1, s) }
	arg := func(field string) string { return limit.Item("gears", i, field) }
	if err := limit.WithinAs(fn, arg("Depth"), what("depth"), g.Depth, leastByDepth, deepest, units.Inch, "in", "1.5 in is usual"); err != nil {
		return err
	}
	if err := limit.WithinAs(fn, arg("Clean"), what("sap of new spouts and lines"), g.Clean, leastClean*units.Whole, units.Whole, units.Percent, "%", "100 % where all is new"); err != nil {
		return err
	}
	if err := limit.WithinAs(fn, arg("Round"), what("round"), float64(g.Round), 0, float64(24*time.Hour), float64(time.Hour), "h", "of a running day"); err != nil {
		return err
	}
	if err := limit.InAs(fn, arg("First"), what("money to begin"), g.First, 0, maxMoney, "", "in your own money"); err != nil {
		return err
	}
	return limit.InAs(fn, arg("Yearly"), what("money of a season"), g.Yearly, 0, maxMoney, "", "in your own money")
}
