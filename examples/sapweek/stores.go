package main

import (
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/packing"
)

// stores is the syrup of the season and what to lay in for it.
type stores struct {
	forecast yield.Forecast
	laid     packing.Stores
	tank     units.Volume
}

// expectSyrup forecasts the season, by own seasons or by the published figures of
// sap by gravity.
func (p *plan) expectSyrup() (err error) {
	s := p.given
	var past []yield.PastSeason
	for _, s := range p.house().PastSeasons() {
		past = append(past, yield.PastSeason{Year: s.Year, Taps: s.Taps, Syrup: s.Syrup})
	}
	if len(past) > 0 {
		p.forecast, err = yield.ForecastFromPast(s.taps, past)
		return cli.For("taps", err)
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

// more is a volume and what a vacuum adds to it.
func more(v units.Volume, gain units.Share) units.Volume {
	return v * units.Volume(1+gain.Fraction())
}

// layIn finds the stores for the high end of the forecast.
func (p *plan) layIn() (err error) {
	s := p.given
	if s.metric && !p.flags.Given("jar") {
		s.jar = units.Liter / 2
	}
	p.laid, err = packing.LayIn(s.taps, p.forecast.High, packing.Container{Label: s.jar}, packing.Habits{
		SyrupPerCord: units.Volume(s.perCord), PeakPerTap: p.best, Held: s.keep, Spare: s.spare,
	})
	p.tank = p.laid.Tank
	return cli.ForArg(err, "taps",
		"Container.Label", "jar", "Habits.SyrupPerCord", "syrup-per-cord", "Habits.PeakPerTap", "peak", "Habits.Spare", "spare", "answer", "jar")
}
