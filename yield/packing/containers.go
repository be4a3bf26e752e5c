package packing

import (
	"errors"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/shelf"
	"example.org/sapreckoner/units"
)

// Limits of containers and margins.
const (
	minContainer = 1e-6 // m3, a milliliter
	maxContainer = 0.25 // m3, more than a drum of 55 US gal
	maxMargin    = 10.0 // percent above the label
	maxVolume    = 1e6  // m3
)

const containerHint = "containers from 1 mL to 250 L"

// A Container is a jar, jug, tin or drum to be filled.
//
// Brimful, Mass and SpecificHeat may be left zero where they are not known: no
// headspace is told then, and no temperature at capping.
type Container struct {
	Name         string
	Label        units.Volume       // content stated on the label, at 68 F (20 C)
	Brimful      units.Volume       // to the brim
	Mass         units.Mass         // empty
	SpecificHeat units.SpecificHeat // of its walls; zero means glass, see [GlassHeat]
}

// litersAs is [limit.Liters] with the argument in words besides.
func litersAs(fn, arg, what string, v, low, high units.Volume, hint string) error {
	return limit.WithinAs(fn, arg, what, v, low, high, units.Liter, "L", hint)
}

// A Filling is what goes into one container.
type Filling struct {
	Content    units.Volume // at 68 F: the label and the margin above it
	Hot        units.Volume // the same at the temperature of filling: fill to this
	Overfill   units.Share  // Hot above Label, in percent of Label
	NetMass    units.Mass   // mass of the content
	NetWeight  units.Mass   // what a scale in air shows for it, without the container
	Headspace  units.Volume // above the hot syrup; NaN if the brim is not known
	CooledHead units.Volume // above it at 68 F; NaN if the brim is not known
}

// Fill returns how to fill the container with syrup of that Brix at that temperature
// so that it holds its label and the given margin above it at 68 F.
//
// The law's allowance for a single jar is not known here; the margin is what
// the filler's own scatter needs (see [CheckNet]).
//
// Range: label from 1 mL to 250 L, margin from 0 to 10 percent, 0 to 85 Brix, 0
// to 110 C, and a brim, if given, above the hot syrup. Uncertainty: that of
// [example.org/sapreckoner/density.HotVolume].
//
// Check value: a US gallon of 66.9 Brix has a mass of 11.0843 lb and weighs
// 11.0759 lb in air (computed).
func (c Container) Fill(brix units.Brix, at units.Temperature, margin units.Share) (Filling, error) {
	return c.fill("packing.Container.Fill", brix, at, margin)
}

func (c *Container) fill(fn string, brix units.Brix, at units.Temperature, margin units.Share) (Filling, error) {
	if err := litersAs(fn, "Container.Label", "content on the label", c.Label, minContainer, maxContainer, containerHint); err != nil {
		return Filling{}, err
	}
	if err := limit.In(fn, "margin", margin.Percents(), 0, maxMargin, "%", "what is filled above the label, such as 0.5 percent"); err != nil {
		return Filling{}, err
	}
	content := c.Label * units.Volume(1+margin.Fraction())
	hot, err := density.HotVolume(content, brix, at)
	if err != nil {
		var e *units.RangeError
		if errors.As(err, &e) && e.Arg != "brix" {
			return Filling{}, units.UnderArg(fn, "at", err)
		}
		return Filling{}, units.Under(fn, err)
	}
	rho, err := density.Solution(brix, shelf.Temperature())
	if err != nil {
		return Filling{}, units.Under(fn, err)
	}
	fill := Filling{
		Content:    content,
		Hot:        hot,
		Overfill:   units.FractionShare(float64(hot/c.Label) - 1),
		NetMass:    rho.Mass(content),
		NetWeight:  density.InAir(rho).Mass(content),
		Headspace:  nan[units.Volume](),
		CooledHead: nan[units.Volume](),
	}
	if !(c.Brimful >= 0 && c.Brimful <= 0) { // NaN must not pass for unknown
		if err := litersAs(fn, "Container.Brimful", "brimful", c.Brimful, hot, 2*maxContainer, "the hot syrup must fit under the brim: a larger container, or zero if the brim is not known"); err != nil {
			return Filling{}, err
		}
		fill.Headspace, fill.CooledHead = max(0, c.Brimful-hot), c.Brimful-content
	}
	return fill, nil
}
