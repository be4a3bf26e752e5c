package main

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/lookagain"
)

// A can is syrup as it is found.
type can struct {
	name    string
	lot     sugar.Lot
	reading units.Brix
	readAt  units.Temperature
	true    density.Measurement
	light   units.Share // NaN if it was not measured
}

func (s *setup) hydrometer() density.Hydrometer { return density.Hydrometer{GraduatedAt: s.stem} }

// newCan makes a can of an amount and a reading. The error names the column, or
// the flag of the same name, that is wrong.
func (s *setup) newCan(name string, volume units.Volume, weight units.Mass, reading units.Brix, readAt, temp units.Temperature, light units.Share) (c can, wrong string, err error) {
	c = can{name: name, reading: reading, readAt: readAt, light: light}
	amount := "weight"
	switch measured, weighed := !math.IsNaN(float64(volume)), !math.IsNaN(float64(weight)); {
	case measured == weighed:
		return c, "volume", errors.New("give either the volume or the weight")
	case measured:
		amount = "volume"
		if !(volume > 0 && volume <= most) {
			return c, amount, errors.New("more than nothing and no more than 500 US gal (1893 L): check its unit")
		}
	case !(weight > 0 && weight <= 1e4):
		return c, amount, errors.New("more than nothing and no more than 22,000 lb (10,000 kg): check its unit")
	}
	if c.true, err = s.hydrometer().Measure(reading-s.miss.Hydrometer, readAt.Add(-s.miss.Thermometer), s.doubt); err != nil {
		return c, cli.FlagOf(err, "reading", "at", "read_at"), err
	}
	const thinnest, densest = 40, 80
	if b := c.true.Brix; !(b >= thinnest && b <= densest) {
		return c, "reading", &units.RangeError{Arg: "syrup", Value: float64(b), Low: thinnest, High: densest, Unit: "Brix",
			Hint: "syrup is near 66: check reading and cup; what is far thinner goes back to the pan"}
	}
	if c.lot, err = lot(volume, weight, c.true.Brix, temp); err != nil {
		return c, cli.FlagOf(err, amount, "at", "temp"), err
	}
	if !math.IsNaN(float64(light)) {
		if _, err := sugar.AbsorbanceOf(light); err != nil {
			return c, "light", err
		}
	}
	return c, "", nil
}

// cans returns what is poured together: the lot of the flags, or batches.
func (s *setup) cans(h *folder.House, f *cli.Flags) (all []can, err error) {
	if f.Given("volume") || f.Given("weight") {
		c, wrong, err := s.newCan("one lot", s.volume, s.weight, s.reading, s.readAt, s.temp, s.light)
		return []can{c}, cli.For(strings.ReplaceAll(wrong, "_", "-"), err)
	}
	again := lookagain.List{Of: lookagain.Syrup, VolumeUnit: "L"}
	wanted, err := s.wanted(h, f.Given("season"))
	if err != nil {
		return nil, err
	}
	moldy := h.Moldy()
	for _, r := range h.Batches {
		if !wanted[r.Name] {
			continue
		}
		if moldy[r.Name] {
			name := r.Name
			if !r.Mold {
				name += " (moldy syrup was poured into it)"
			}
			s.moldy = append(s.moldy, name)
			continue
		}
		fail := func(column string, err error) error {
			return &records.Error{File: h.Shown(folder.BatchesFile), Line: r.Line, Column: column, Err: err}
		}
		if math.IsNaN(float64(r.Reading)) || math.IsNaN(r.Cup.Celsius()) {
			return nil, fail("reading", errors.New("reading and temperature of the cup belong together: read the can, or mark it moldy"))
		}
		at := r.Temp
		if math.IsNaN(at.Celsius()) {
			at, s.tempTaken = s.temp, true
		}
		c, wrong, err := s.newCan(r.Name, r.Volume, r.Weight, r.Reading, r.Cup, at, r.Light)
		if err != nil {
			return nil, fail(strings.Replace(wrong, "read_at", "cup", 1), err)
		}
		if all = append(all, c); len(all) > mostCans {
			return nil, fail("", fmt.Errorf("more than %d cans: pack them on several days", mostCans))
		}
		again.Add(lookagain.Row{File: h.Shown(folder.BatchesFile), Line: r.Line, Name: r.Name, Strength: float64(c.true.Brix), Volume: c.lot.Volume().Liters(),
			Whole: fmt.Sprintln(r.Name, r.Volume, r.Weight, r.Reading, r.Cup, at, r.Light)})
	}
	s.again = again.Findings()
	switch {
	case len(all) > 0:
		return all, nil
	case len(s.moldy) > 0:
		return nil, fmt.Errorf("%s: every can is marked moldy, or syrup of such a one was poured into it: throw them away, there is nothing to pack", h.Shown(folder.BatchesFile))
	}
	return nil, fmt.Errorf("%s: %s: add one, or say what there is, as 3 gal 67.8 at 66 F", h.Shown(folder.BatchesFile), noneWaits(h, f.Given("season")))
}

// noneWaits words why no batch waits for its jars.
func noneWaits(h *folder.House, asked bool) string {
	last := 0
	for _, b := range h.Batches {
		last = max(last, b.Date.Year())
	}
	of := func(b folder.Batch) bool { return h.InSeason(b.Date) }
	switch {
	case last == 0:
		return "no batch is written down"
	case slices.ContainsFunc(h.Batches, of):
		return "every batch of the season is bottled"
	case asked:
		return fmt.Sprintf("no batch of %d is written down", h.Season())
	}
	return fmt.Sprintf("no batch of %d is written down yet, and every one of %d is bottled", h.Season(), last)
}

// wanted names the batches that are packed: those of the flag, or those of the season,
// or if none is asked for of the year of the last batch, that were neither bottled nor
// poured into another. What is left of a bottled one stands in the filter.
func (s *setup) wanted(h *folder.House, asked bool) (map[string]bool, error) {
	wanted := map[string]bool{}
	if s.batch != "" {
		for name := range strings.SplitSeq(s.batch, "+") {
			b, ok := h.Batch(strings.TrimSpace(name))
			if !ok {
				return nil, cli.For("batch", fmt.Errorf("no batch of %s is called %q", h.Shown(folder.BatchesFile), clip.Text(strings.TrimSpace(name))))
			}
			wanted[b.Name] = true
		}
		return wanted, nil
	}
	last := h.Season()
	if !asked {
		last = 0
		for _, b := range h.Batches {
			last = max(last, b.Date.Year())
		}
	}
	for _, b := range h.Batches {
		wanted[b.Name] = b.Date.Year() == last
	}
	for _, j := range h.Bottled {
		wanted[j.Batch] = false
	}
	for _, p := range h.Blends {
		if b, ok := h.Batch(p.From); ok {
			wanted[b.Name] = false
		}
	}
	return wanted, nil
}

// most is the most syrup that one page packs: beyond it, it is a plant's work.
const most = 500 * units.USGallon

// lot returns the syrup of a can: of its volume, or of its weight where volume
// is NaN. What a scale in air shows is a little less than the mass.
func lot(volume units.Volume, weight units.Mass, b units.Brix, at units.Temperature) (sugar.Lot, error) {
	if !math.IsNaN(float64(volume)) {
		return sugar.NewLot(volume, b, at)
	}
	return yield.Weighed(weight, 0, b, at)
}
