package proof

import (
	"fmt"
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// Season returns the claims of package season.
func Season() []check.Claim {
	return []check.Claim{
		{Table: "natural-vacuum-worked", Column: "column_ft", Func: "season.NaturalVacuum", Got: vacuumColumn},
		{Table: "natural-vacuum-worked", Column: "column_ft", Func: "density.Solution times g", Got: columnByWeight},
		{Table: "producing-week-coefficients", Column: "value", Func: "season.HouleProbability", Got: houleCoefficient},
		{Table: "producing-week-worked", Column: "p", Func: "season.HouleProbability", Got: houleProbability},
		{Table: "degree-day-methods", Column: "mean", Func: "season.GrowingDegreeDays", Exact: true, Got: meanDegreeDays},
		{Table: "degree-day-methods", Column: "mean", Func: "season.DegreeDayRule.Day", Exact: true, Got: degreeDays(season.DailyMean)},
		{Table: "degree-day-methods", Column: "single_sine", Func: "season.DegreeDayRule.Day", Got: degreeDays(season.SingleSine)},
		{Table: "sap-sugar", Column: "low", Func: "season.SugarFigures", Got: sapSugar(func(f season.SugarFigure) units.Brix { return f.Low })},
		{Table: "sap-sugar", Column: "high", Func: "season.SugarFigures", Got: sapSugar(func(f season.SugarFigure) units.Brix { return f.High })},
		{Table: "sap-sugar", Column: "mean", Func: "season.SugarFigures", Got: sapSugar(func(f season.SugarFigure) units.Brix { return f.Mean })},
	}
}

// vacuumColumn is the drop in feet that draws the vacuum of the row: the
// vacuum is in proportion to the drop.
func vacuumColumn(r check.Row) (float64, error) {
	p, err := season.NaturalVacuum(1 * units.Foot)
	return r.Float("vacuum_inHg") / p.InchesMercury(), err
}

// columnByWeight is the column whose weight draws the vacuum of the row.
func columnByWeight(r check.Row) (float64, error) {
	d, err := density.Solution(units.Brix(r.Float("sap_brix")), celsius(r))
	vacuum := units.InchesMercury(r.Float("vacuum_inHg"))
	return units.Meters(vacuum.Pascals() / (d.KilogramsPerCubicMeter() * units.StandardGravity)).Feet(), err
}

func houleCoefficient(r check.Row) (float64, error) {
	if r.Text("name") == "threshold of p" {
		return season.HouleThreshold, nil
	}
	return listed(coef.Houle(), r.Text("name"))
}

func houleProbability(r check.Row) (float64, error) {
	return season.HouleProbability(int(r.Float("N")), season.DegreeDays(r.Float("G")))
}

func sapSugar(figure func(season.SugarFigure) units.Brix) func(check.Row) (float64, error) {
	return func(r check.Row) (float64, error) {
		for _, f := range season.SugarFigures() {
			if f.What == r.Text("what") && f.Source == r.Text("source") {
				return float64(figure(f)), nil
			}
		}
		return math.NaN(), fmt.Errorf("no figure %q of %q", r.Text("what"), r.Text("source"))
	}
}
