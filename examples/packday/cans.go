package main

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
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
	if c.true, err = s.hydrometer().Measure(reading, readAt, s.doubt); err != nil {
		return c, argument(err, "reading", "at", "read_at"), err
	}
	const thinnest, densest = 40, 80
	if b := c.true.Brix; !(b >= thinnest && b <= densest) {
		return c, "reading", &units.RangeError{Arg: "syrup", Value: float64(b), Low: thinnest, High: densest, Unit: "Brix",
			Hint: "syrup is near 66: check reading and cup; what is far thinner goes back to the pan"}
	}
	if c.lot, err = lot(volume, weight, c.true.Brix, temp); err != nil {
		return c, argument(err, amount, "at", "temp"), err
	}
	if !math.IsNaN(float64(light)) {
		if _, err := sugar.AbsorbanceOf(light); err != nil {
			return c, "light", err
		}
	}
	return c, "", nil
}

// argument returns other if err is about the argument arg, else usual.
func argument(err error, usual, arg, other string) string {
	var re *units.RangeError
	if errors.As(err, &re) && re.Arg == arg {
		return other
	}
	return usual
}

// cans returns what is poured together.
func (s *setup) cans(e *cli.Env, f *cli.Flags) (all []can, err error) {
	if f.Given("volume") || f.Given("weight") {
		if !f.Given("volume") {
			s.volume = units.Volume(math.NaN())
		}
		if !f.Given("weight") {
			s.weight = units.Mass(math.NaN())
		}
		c, wrong, err := s.newCan("one lot", s.volume, s.weight, s.reading, s.readAt, s.temp, s.light)
		return []can{c}, cli.For(strings.ReplaceAll(wrong, "_", "-"), err)
	}
	var (
		name         string
		volume       units.Volume
		weight       units.Mass
		reading      units.Brix
		readAt, temp units.Temperature
		light        units.Share
		mold         string
	)
	again := lookagain.List{Of: lookagain.Syrup, VolumeUnit: "L"}
	cols := []records.Col{
		records.Text("can", &name), records.Volume("volume", &volume).Optional(), records.Mass("weight", &weight).Optional(),
		records.Brix("reading", &reading).Blank(), records.Temperature("read_at", &readAt).Blank(), records.Text("mold", &mold).Optional(),
		records.Temperature("temp", &temp).Optional(), records.Share("light", &light).Optional(),
	}
	err = eachRow(e, "can-file", s.canFile, demoCans, mostCans, cols, func(r *records.Reader) error {
		switch mold {
		case "", "no":
		case "yes":
			s.moldy = append(s.moldy, name)
			return nil
		default:
			return r.Fail("mold", errors.New("write yes or no: a can with any mold is thrown away"))
		}
		if math.IsNaN(float64(reading)) || math.IsNaN(readAt.Celsius()) {
			return r.Fail("reading", errors.New("reading and temperature of the cup belong together: read the can, or mark it moldy"))
		}
		at := temp
		if math.IsNaN(at.Celsius()) {
			at, s.tempTaken = s.temp, true
		}
		c, wrong, err := s.newCan(name, volume, weight, reading, readAt, at, light)
		if err != nil {
			return r.Fail(wrong, err)
		}
		all = append(all, c)
		again.Add(lookagain.Row{File: s.canFile, Line: r.Line(), Name: name, Strength: float64(c.true.Brix), Volume: c.lot.Volume().Liters(),
			Whole: fmt.Sprintln(name, volume, weight, reading, readAt, at, light)})
		return nil
	})
	s.again = again.Findings()
	if err == nil && len(all) == 0 {
		return nil, cli.For("can-file", errors.New("every can is marked moldy: throw them away, there is nothing to pack"))
	}
	return all, err
}

// most is the most syrup that one page packs: beyond it, it is a plant's work.
const most = 500 * units.USGallon

// lot returns the syrup of a can: of its volume, or of its weight where volume
// is NaN. What a scale in air shows is a little less than the mass.
func lot(volume units.Volume, weight units.Mass, b units.Brix, at units.Temperature) (sugar.Lot, error) {
	if !math.IsNaN(float64(volume)) {
		return sugar.NewLot(volume, b, at)
	}
	rho, err := density.Solution(b, at)
	if err != nil {
		return sugar.Lot{}, err
	}
	return sugar.NewLotByMass(weight*units.Mass(rho/density.InAir(rho)), b, at)
}
