package main

import (
	"errors"
	"fmt"
	"io"
	"math"
	"strings"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/packing"
)

// stores is the syrup of the season and what to lay in for it.
type stores struct {
	forecast yield.Forecast
	laid     packing.Stores
	tank     units.Volume
}

// mostSeasons is what yield.ForecastFromPast takes.
const mostSeasons = 1000

// readPast reads a person's own seasons.
func readPast(path string, in io.Reader) ([]yield.PastSeason, error) {
	var (
		year, taps float64
		syrup      units.Volume
		past       []yield.PastSeason
	)
	r, err := records.Open(path, in)
	if err == io.EOF {
		return nil, fmt.Errorf("%s: the file is empty: the first line names the columns, such as year,taps,syrup_us_gal", path)
	}
	if err != nil {
		return nil, err
	}
	if err := syrupColumn(r); err != nil {
		return nil, err
	}
	if err := r.Bind(records.Number("year", &year), records.Number("taps", &taps), records.Volume("syrup", &syrup)); err != nil {
		return nil, err
	}
	seen := map[int]bool{}
	for {
		switch err := r.Next(); {
		case err == io.EOF && len(past) == 0:
			return nil, r.Fail("", errors.New("no season below the header"))
		case err == io.EOF:
			return past, nil
		case err != nil:
			return nil, err
		}
		if !(year >= 1700 && year <= 2300) || year != math.Trunc(year) {
			return nil, r.Fail("year", errors.New("write the year with four digits"))
		}
		if !(taps >= 1 && taps <= 1e8) || taps != math.Trunc(taps) {
			return nil, r.Fail("taps", errors.New("the taps of that season, a whole number from 1 on"))
		}
		season := yield.PastSeason{Year: int(year), Taps: int(taps), Syrup: syrup}
		perTap, err := season.PerTap()
		if err == nil {
			err = limit.Within("", "syrup of a tap", perTap, 0, mostPerTap, units.USGallon, "US gal", "give the syrup and not the sap, and all taps of that season")
		}
		if err != nil {
			return nil, r.Fail("syrup", err)
		}
		if seen[season.Year] {
			return nil, r.Fail("year", fmt.Errorf("%d is given twice", season.Year))
		}
		if seen[season.Year] = true; len(past) == mostSeasons {
			return nil, r.Fail("", fmt.Errorf("more than %d seasons", mostSeasons))
		}
		past = append(past, season)
	}
}

// mostPerTap is far more syrup of a tap than any survey reports: 0.35 US gal in
// the best state of yield.State.
const mostPerTap = 2 * units.USGallon

// syrupColumn wants a column of syrup in a unit that syrup is measured in: a cord
// is a volume too, and none of it.
func syrupColumn(r *records.Reader) error {
	const names = "name it syrup_us_gal, syrup_imp_gal or syrup_l"
	for _, unit := range []string{"us_gal", "imp_gal", "l", "ml", "us_qt", "us_fl_oz", "m3"} {
		if r.Names("syrup_" + unit) {
			return nil
		}
	}
	for _, h := range r.Unasked() {
		if strings.HasPrefix(h, "syrup_") {
			return r.Fail(h, errors.New("no unit of syrup that is known: "+names))
		}
	}
	return r.Fail("", errors.New("no column for syrup: "+names))
}

// expectSyrup forecasts the season, by own seasons or by the published figures of
// sap by gravity.
func (p *plan) expectSyrup(e *cli.Env) error {
	s := p.given
	past, err := p.pastSeasons(e)
	if err != nil {
		return err
	}
	if len(past) > 0 {
		p.forecast, err = yield.ForecastFromPast(s.taps, past)
		return cli.For("past", err)
	}
	thin, err := yield.ForecastFromGravity(s.taps, p.sugar.Low, s.syrup)
	if err != nil {
		return cli.For("sugar", err)
	}
	sweet, err := yield.ForecastFromGravity(s.taps, p.sugar.High, s.syrup)
	if err != nil {
		return cli.For("sugar", err)
	}
	p.forecast = sweet
	p.forecast.Low = more(thin.Low, p.gain.Low)
	p.forecast.High = more(sweet.High, p.gain.High)
	return nil
}

// pastSeasons are those of -past, or else what seasons and days of the folder tell.
func (p *plan) pastSeasons(e *cli.Env) (past []yield.PastSeason, err error) {
	if p.flags.Source("past").Kind == cli.Told {
		in, err := e.Open("past", p.given.past)
		if err != nil {
			return nil, err
		}
		defer in.Close()
		return readPast(p.given.past, in)
	}
	for _, s := range p.house().PastSeasons() {
		past = append(past, yield.PastSeason{Year: s.Year, Taps: s.Taps, Syrup: s.Syrup})
	}
	return past, nil
}

// more is a volume and what a vacuum adds to it.
func more(v units.Volume, gain units.Share) units.Volume {
	return v * units.Volume(1+gain.Fraction())
}

// layIn finds the stores for the high end of the forecast.
func (p *plan) layIn() (err error) {
	s := p.given
	p.laid, err = packing.LayIn(s.taps, p.forecast.High, packing.Container{Label: s.jar}, packing.Habits{
		SyrupPerCord: units.Volume(s.perCord), PeakPerTap: p.best, Held: s.keep, Spare: s.spare,
	})
	p.tank = p.laid.Tank
	return cli.For(flagOf(err, "taps", map[string]string{
		"Container.Label": "jar", "Habits.SyrupPerCord": "syrup-per-cord", "Habits.PeakPerTap": "peak", "Habits.Spare": "spare", "answer": "jar",
	}), err)
}
