package main

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// readAim reads Amber; 66.5 to 67.5 Brix; or both with a comma between.
func readAim(text string) (aim sugar.Aim, class sugar.ColorClass, err error) {
	for _, part := range strings.Split(text, ",") {
		part = strings.TrimSpace(part)
		if low, high, ok := strings.Cut(part, " to "); ok {
			if !strings.HasSuffix(strings.TrimSpace(low), "Brix") {
				low += " Brix"
			}
			err = errors.Join(aim.LeastBrix.UnmarshalText([]byte(low)), aim.MostBrix.UnmarshalText([]byte(high)))
			if err == nil && !(aim.LeastBrix <= aim.MostBrix) {
				err = errors.New("upside down")
			}
		} else if err = class.UnmarshalText([]byte(part)); err == nil {
			a := class.Aim()
			aim.LeastLight, aim.MostLight = a.LeastLight, a.MostLight
		}
		if err != nil || part == "" {
			var names []string
			for _, c := range sugar.ColorClasses() {
				names = append(names, c.String())
			}
			return sugar.Aim{}, 0, fmt.Errorf("%q: write a class (%s), a strength as 66.5 to 67.5 Brix, or both with a comma between", clip.Text(text), strings.Join(names, ", "))
		}
	}
	return aim, class, nil
}

// reachSheet answers how much of each can to pour together.
func (s *setup) reachSheet(f *cli.Flags) (*cli.Sheet, error) {
	if err := s.check(f); err != nil {
		return nil, err
	}
	if f.Given("volume") || f.Given("weight") {
		return nil, cli.For("reach", errors.New("it blends batches of the folder: leave the lot out"))
	}
	aim, class, err := readAim(s.reach)
	if err != nil {
		return nil, cli.For("reach", err)
	}
	s.miss = f.Off("")
	cans, err := s.cans(f.House(), f)
	if err != nil {
		return nil, err
	}
	from := make([]sugar.Can, len(cans))
	for i, c := range cans {
		if class != 0 && math.IsNaN(float64(c.light)) {
			return nil, cli.For("reach", fmt.Errorf("the light of %s was not measured: write it into batches.csv, or name batches that have it with -batch", c.name))
		}
		from[i] = sugar.Can{Lot: c.lot, Transmission: c.light}
	}
	sheet := &cli.Sheet{Title: "A blend", Metric: s.metric}
	b := &sheet.Brief
	blend, err := aim.Reach(from...)
	var never *sugar.InfeasibleError
	switch {
	case errors.As(err, &never):
		b.Verdict = "No blend of these reaches " + s.reach + ": " + never.Text(units.Both) + "."
	case err != nil:
		return nil, cli.For("reach", err)
	default:
		if err := s.layBlend(sheet, cans, blend, class); err != nil {
			return nil, err
		}
	}
	var rows [][]cli.Value
	for _, c := range cans {
		rows = append(rows, []cli.Value{cli.Words(c.name), cli.Mass(c.lot.WeightInAir()), cli.Brix(c.true.Brix, 2), cli.Brix(c.true.Uncertainty, 2), cli.Share(c.light, 1)})
	}
	sheet.Part("cans", "Cans").Table("cans", []cli.Column{{Key: "can", Head: "can"}, {Key: "weight", Head: "weighs"}, {Key: "true", Head: "true"},
		{Key: "uncertainty", Head: "give or take"}, {Key: "light", Head: "light"}}, rows)
	b.House = f.Demo()
	b.Told(cli.Plural(len(cans), "can"))
	sheet.Mark(f, "hydrometer", "hydrometer", s.stem)
	b.Caution(true, s.outOfBlend())
	b.Caution(true, perhapsSour(cans))
	b.Caution(true, "Smell each can first. Any mold: throw it all away; do not taste, skim, boil or blend it.")
	b.Caution(class != 0, "A photometer is off by a percent or two: pour a little, measure, and keep away from the edge of a class.")
	b.Further = []string{"-full: the cans as they are. packday -batch: the day's work."}
	return sheet, nil
}

// layBlend lays out a blend that reaches its aim.
func (s *setup) layBlend(sheet *cli.Sheet, cans []can, blend sugar.Reached, class sugar.ColorClass) error {
	b := &sheet.Brief
	volume, err := blend.Lot.VolumeAt(label)
	if err != nil {
		return err
	}
	what := blend.Lot.Brix().Text(1)
	if class != 0 {
		what += ", " + class.String()
	}
	b.Verdict = "Pour these together: " + sheet.In(cli.Quarts(volume, cli.Down)) + " of " + what + "."
	b.Answer("strength", "Strength", cli.Brix(blend.Lot.Brix(), 1))
	b.If(class != 0).Answer("light", "Light", cli.Share(blend.Transmission, 1), "by the absorbances of the cans")
	b.Answer("left", "Left over", cli.Weight(blend.Left, cli.Nearest))
	var rows [][]cli.Value
	for i, c := range cans {
		v, err := c.lot.VolumeAt(label)
		if err != nil {
			return err
		}
		part := units.Volume(blend.Parts[i].Fraction())
		rows = append(rows, []cli.Value{cli.Words(c.name), cli.Share(blend.Parts[i], 0), cli.Digits(cli.Volume(v*part), 3), cli.Digits(cli.Mass(units.Mass(part)*c.lot.WeightInAir()), 3)})
	}
	b.List([]cli.Column{{Key: "can", Head: "can"}, {Key: "part", Head: "pour"}, {Key: "volume", Head: "at " + sheet.Degrees(label)}, {Key: "weight", Head: "on the scale"}}, rows)
	return nil
}
