package main

import (
	"errors"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// How a refractometer minds the temperature of its prism.
const (
	plain       = "plain"
	compensated = "compensated"
)

func (s *setup) declareRefractometer(f *cli.Flags) {
	f.Choice(&s.refractometer, "refractometer", "", []string{plain, compensated}, "the sap is read by a refractometer and not by a hydrometer: plain if drop and prism at -read-at have still to be allowed for, compensated if it does that itself, as those marked ATC and most digital ones do")
	f.Doubt(&s.sapDoubt, "sap-", "instrument of the sap; see what it reads in plain water", "0.2 Brix", "", "0.2 Brix")
}

// checkRefractometer refuses flags that belong to another instrument.
func (s *setup) checkRefractometer(f *cli.Flags) error {
	s.sapDoubt.Thermometer = s.doubt.Thermometer
	switch {
	case s.refractometer != "" && f.Given("sap-hydrometer"):
		return cli.For("sap-hydrometer", errors.New("the sap is read by one instrument: leave this out, or -refractometer"))
	case s.refractometer == compensated && f.Given("read-at"):
		return cli.For("read-at", errors.New("a compensated refractometer allows for its temperature itself: leave this out, or say -refractometer plain"))
	}
	return nil
}

// readSap returns the strength of sap by the instrument of the day.
func (s *setup) readSap(reading units.Brix, at units.Temperature) (density.Measurement, error) {
	var m density.Measurement
	var err error
	switch s.refractometer {
	case plain:
		m, err = density.Refractometer{}.Measure(reading, at, s.sapDoubt)
	case compensated:
		m, err = density.Refractometer{Compensated: true}.Measure(reading, units.Celsius(20), s.sapDoubt)
	default:
		m, err = density.Hydrometer{GraduatedAt: s.sapStem}.Measure(reading, at, s.sapDoubt)
	}
	if err != nil {
		return m, err
	}
	return m, sapStrength(m.Brix)
}

// sapStrength refuses what is not sap.
func sapStrength(b units.Brix) error {
	const low, high = 0.3, 40
	if b >= low && b <= high {
		return nil
	}
	return &units.RangeError{Arg: "sap", Value: float64(b), Low: low, High: high, Unit: "Brix",
		Hint: "sap is near 2 Brix, membrane concentrate up to 40: check the reading, its temperature and the instrument in water"}
}

// doubted is the doubt about the strength of all sap. The readings are of one
// instrument, whose scale is as wrong in each of them.
func (p *plan) doubted() units.Brix {
	var sum float64
	var all units.Mass
	for _, g := range p.gatherings {
		sum += float64(g.doubt) * float64(g.lot.Mass())
		all += g.lot.Mass()
	}
	return units.Brix(sum / float64(all))
}

// readingRow shows the one reading of a day.
func (p page) readingRow(part *cli.Part) {
	g := p.gatherings[0]
	at := p.In(cli.Temperature(g.read))
	if from := p.given.readings; from != "" {
		part.Row("reading", "Not read today", cli.Brix(g.reading, 2), "learned from "+from)
		return
	}
	switch p.given.refractometer {
	case plain:
		part.Row("reading", "Refractometer reads", cli.Brix(g.reading, 1), "drop and prism at "+at)
	case compensated:
		part.Row("reading", "Refractometer reads", cli.Brix(g.reading, 1), "it allows for its temperature itself")
	default:
		part.Row("reading", "Hydrometer reads", cli.Brix(g.reading, 1), "in the cup at "+at+", graduated at "+p.In(cli.Temperature(p.given.sapStem)))
	}
}

// doubtRow shows how well the strength is known, and with it the syrup.
func (p page) doubtRow(part *cli.Part) {
	u := p.doubted()
	part.Row("doubt", "Give or take", cli.Brix(u, 1), "steps and scale of the instrument, temperature, formula", units.Share(100*u/p.pooled().Brix()).Text(0)+" of the syrup to expect")
	part.Remark(cli.NineteenOfTwenty)
}
