package yield

import (
	"example.org/sapreckoner/density"
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

// HotVolume returns what a volume of syrup of b Brix at 68 F (20 C) fills at
// temperature at: what to fill so that the label holds on the shelf.
//
// Range: volume from 0 to 1e6 m3, 0 to 85 Brix, 0 to 110 C. Uncertainty: 0.01
// percent below 90 C, 0.05 percent above it, where the density is extrapolated
// (see [example.org/sapreckoner/density.Extrapolated]). Outside the range the
// answer is NaN and a [units.RangeError].
//
// Source: V68/Vhot = density(hot)/density(68 F). Check value: 66.9 Brix packed
// at 185 F shrinks by 2.896 percent to 68 F (computed).
func HotVolume(at68 units.Volume, b units.Brix, at units.Temperature) (units.Volume, error) {
	f, err := swelling("yield.HotVolume", at68, b, at)
	return at68 * units.Volume(f), err
}

// CoolVolume returns what a volume of syrup of b Brix, filled at temperature at,
// will be at 68 F (20 C): the inverse of [HotVolume], with the same range and
// uncertainty.
func CoolVolume(hot units.Volume, b units.Brix, at units.Temperature) (units.Volume, error) {
	f, err := swelling("yield.CoolVolume", hot, b, at)
	return hot / units.Volume(f), err
}

// swelling returns the hot volume over that at 68 F, NaN with an error.
func swelling(fn string, v units.Volume, b units.Brix, at units.Temperature) (float64, error) {
	if err := within(fn, "volume", v.CubicMeters(), 0, maxVolume, "m3", "check its unit"); err != nil {
		return nan[float64](), err
	}
	cool, err := density.Solution(b, label())
	if err != nil {
		return nan[float64](), units.Under(fn, err)
	}
	hot, err := density.Solution(b, at)
	if err != nil {
		return nan[float64](), units.Under(fn, err)
	}
	return float64(cool / hot), nil
}

// Fill returns how to fill the container with syrup of b Brix at temperature at
// so that it holds its label and the given margin above it at 68 F.
//
// What the law allows a single jar to fall short is not known here; the margin
// is what the filler's own scatter needs (see [CheckNet]).
//
// Range: label from 1 mL to 250 L, margin from 0 to 10 percent, 0 to 85 Brix, 0
// to 110 C, and a brim, if given, above the hot syrup. Uncertainty: that of
// [HotVolume]. Outside the range the answer is the zero Filling and a
// [units.RangeError].
//
// Check value: a US gallon of 66.9 Brix has a mass of 11.0843 lb and weighs
// 11.0759 lb in air (computed).
func (c Container) Fill(b units.Brix, at units.Temperature, margin units.Share) (Filling, error) {
	return c.fill("yield.Container.Fill", b, at, margin)
}

func (c *Container) fill(fn string, b units.Brix, at units.Temperature, margin units.Share) (Filling, error) {
	if err := within(fn, "Container.Label", c.Label.CubicMeters(), minContainer, maxContainer, "m3", containerHint); err != nil {
		return Filling{}, err
	}
	if err := within(fn, "margin", margin.Percents(), 0, maxMargin, "%", "what is filled above the label, such as 0.5 percent"); err != nil {
		return Filling{}, err
	}
	content := c.Label * units.Volume(1+margin.Fraction())
	f, err := swelling(fn, content, b, at)
	if err != nil {
		return Filling{}, err
	}
	rho, err := density.Solution(b, label())
	if err != nil {
		return Filling{}, units.Under(fn, err)
	}
	hot := content * units.Volume(f)
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
		if err := within(fn, "Container.Brimful", c.Brimful.CubicMeters(), hot.CubicMeters(), 2*maxContainer, "m3", "the hot syrup must fit under the brim: a larger container, or zero if the brim is not known"); err != nil {
			return Filling{}, err
		}
		fill.Headspace, fill.CooledHead = c.Brimful-hot, c.Brimful-content
	}
	return fill, nil
}
