package ask

import (
	"slices"

	"example.org/sapreckoner/units"
)

// usual words what a field takes as usual in the person's units. What counts is
// the text of the table, which has the digits of the trade.
func (in *Input) usual(system units.System) string {
	if system != units.Metric || in.Start == "" {
		return in.Start
	}
	switch in.Kind {
	case "temperature":
		if t, err := units.ParseTemperature(in.Start); err == nil {
			return t.TextIn(system, 1)
		}
	case "volume", "small":
		return inMetric(in.Start, units.ParseVolume)
	case "length", "height":
		return inMetric(in.Start, units.ParseLength)
	case "rate":
		return inMetric(in.Start, units.ParseVolumeRate)
	case "area":
		return inMetric(in.Start, units.ParseArea)
	}
	return in.Start
}

func inMetric[Q interface {
	TextIn(units.System, int) string
}](text string, parse func(string) (Q, error)) string {
	q, err := parse(text)
	if err != nil {
		return text
	}
	return q.TextIn(units.Metric, 3)
}

// table is the screens in the person's units.
func table(system units.System) []Screen {
	all := slices.Clone(screens)
	for i := range all {
		all[i].Questions = slices.Clone(all[i].Questions)
		for j := range all[i].Questions {
			q := &all[i].Questions[j]
			q.Inputs = slices.Clone(q.Inputs)
			for k := range q.Inputs {
				q.Inputs[k].Start = q.Inputs[k].usual(system)
			}
		}
	}
	return all
}
