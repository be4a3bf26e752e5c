package main

import (
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// share is one of the parts that make a stop uncertain: as the page gives it, and
// its standard uncertainty.
type share struct {
	what  string
	given cli.Value
	brix  units.Brix
}

func (t *thermometer) shares() []share {
	if t.learned != nil {
		return []share{{"your past stops", cli.TempDiff(k2 * t.learned.by), t.learned.cost}}
	}
	all := []share{
		{"the probe", cli.TempDiff(k2 * t.stop.ProbeBy), t.parts.Probe},
		{"the depth of the probe", cli.Rough(cli.Length(k2 * t.stop.DepthBy)), t.parts.Depth},
		{"the barometer", cli.Rough(cli.Pressure(k2 * t.stop.BarometerBy)), t.parts.Barometer},
	}
	// A share that is taken as sure has no part, but the library solves for one.
	if t.stop.InvertedBy > 0 {
		all = append(all, share{"the inverted sugar", cli.Share(k2*t.stop.InvertedBy, 1), t.parts.Inverted})
	}
	return append(all, share{"the formula", cli.Words(""), t.parts.Formula})
}

func (h *float) shares() []share {
	return []share{
		{"the temperature of the cup", cli.TempDiff(k2 * h.stop.CupBy), h.parts.Cup},
		{"the scale", cli.Brix(k2*h.stop.ScaleBy, 2), h.parts.Scale},
		{"the eye at the stem", cli.Brix(k2*h.stop.ReadingBy, 2), h.parts.Reading},
		{"surface tension", cli.Words(""), h.parts.Float},
		{"expansion near the boil", cli.Words(""), h.parts.Expansion},
	}
}

// largest names the part that counts most.
func largest(shares []share) string {
	most := shares[0]
	for _, s := range shares {
		if s.brix > most.brix {
			most = s
		}
	}
	return most.what
}
