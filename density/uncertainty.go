package density

import (
	"math"

	"example.org/sapreckoner/internal/base/measure"
	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/units"
)

// Coverage is the factor k from a standard to an expanded uncertainty: with k =
// 2 about 95 of 100 readings lie within it. Source: JCGM 100:2008 (GUM), 6.3.
const Coverage = 2

// Parts tells where the doubt comes from: standard uncertainties in Brix.
// Parts that an instrument does not have are zero.
type Parts struct {
	Division    units.Brix // reading to a step
	Thermometer units.Brix
	Calibration units.Brix
	Glass       units.Brix // expansion of the glass
	Surface     units.Brix // surface tension on the stem
	Volume      units.Brix // of the flask
	Model       units.Brix // density or refraction formula, air
}

// total combines the parts, which do not depend on each other.
func (p Parts) total() units.Brix {
	return units.Brix(math.Sqrt(float64(p.Division*p.Division + p.Thermometer*p.Thermometer +
		p.Calibration*p.Calibration + p.Glass*p.Glass + p.Surface*p.Surface +
		p.Volume*p.Volume + p.Model*p.Model)))
}

// A Measurement is a strength with its expanded uncertainty (k = 2), where it
// comes from, and what to bear in mind.
//
// The uncertainty follows the law of propagation: JCGM 100:2008 (GUM), equation
// 10 (numbers of clauses here from memory), with the derivatives of the
// measurement equation in closed form. Twice the standard deviation of a Monte
// Carlo of the same inputs agrees within 3 percent. The interval of JCGM
// 101:2008 that holds 95 of 100 is shorter where steps or a thermometer rule:
// see [Measurement.Half95].
type Measurement struct {
	Brix        units.Brix
	Uncertainty units.Brix // expanded, k = 2
	Parts       Parts
	Caveats
}

// String prints the strength and its uncertainty, to the digit that it leaves:
// "66.8 +/- 0.3 Brix".
func (m Measurement) String() string {
	return measure.PlusMinus(float64(m.Brix), float64(m.Uncertainty), "Brix")
}

// Half95 returns the half-width that holds the strength 95 times of 100. It is
// 2 percent less than Uncertainty where normal errors rule, and up to 17 percent
// less where one does that is as likely anywhere between limits: the division,
// the thermometer, the glass.
//
// Uncertainty: within 3 percent of a Monte Carlo of the same inputs. Source: the
// sum of normal and rectangular distributions, as JCGM 101:2008 propagates them
// (clauses from memory). Check value: 0.304 for the 0.328 of a 60 F stem read at
// 59.0 to 0.5 Brix in a cup of 209 F within 1 F, calibrated to 0.1 (computed).
func (m Measurement) Half95() units.Brix {
	p := m.Parts
	normal := math.Sqrt(float64(p.Calibration*p.Calibration + p.Surface*p.Surface + p.Volume*p.Volume + p.Model*p.Model))
	flat := math.Sqrt(3)
	return units.Brix(numeric.Half95(normal, flat*float64(p.Division), flat*float64(p.Thermometer), flat*float64(p.Glass)))
}

// Standard uncertainties of what no user states.
const (
	// Of the density polynomial to 90 C, kg/m3: half of its 0.1 (from memory).
	densityDoubt = 0.05
	// Limit of the glass expansion about the conventional value, per kelvin:
	// borosilicate to soda glass (common practice).
	glassLimit = 5e-6
	// Surface tension, contact angle and temperature in use, as a share of the
	// density, k = 2. Source: Aguilera, Wright, Bean, Measurement Science and
	// Technology 19 (2008) 015104, abstract: 370e-6 or more.
	surfaceDoubt = 370e-6
	// Of the model of refraction against the table of 1936 in its worst column,
	// 70 Brix, and of the fit to the scale at 20 C, in Brix.
	refractionDoubt units.Brix = 0.02
	indexDoubt      units.Brix = 0.003
	// Limit of the density of air about 1.2 kg/m3: weather, and heights to 900 m.
	airLimit = 0.12
)

// rectangular is the standard uncertainty of a value that is as likely
// anywhere within plus or minus limit: JCGM 100:2008, 4.3.7.
func rectangular(limit float64) float64 { return limit / math.Sqrt(3) }

// modelDoubt is the standard uncertainty of the density at c, in kg/m3. Above 90
// C the artifact of the polynomial is its limit: at 66.9 Brix 0.035 Brix at 99 C
// and 0.075 at 105 C, on straight lines and on beyond (computed).
func modelDoubt(c float64) float64 {
	const (
		slope  = 6.16 // kg/m3 for a Brix at 66.9
		c1, a1 = 99.0, 0.035 * slope
		c2, a2 = 105.0, 0.075 * slope
	)
	limit := 0.0
	switch {
	case c > c1:
		limit = a1 + (c-c1)*(a2-a1)/(c2-c1)
	case c > extrapolatedAbove:
		limit = (c - extrapolatedAbove) * a1 / (c1 - extrapolatedAbove)
	}
	return math.Hypot(densityDoubt, rectangular(limit))
}

// Measure returns the strength of [Hydrometer.Brix] with its expanded
// uncertainty.
//
// Range and errors are those of [Hydrometer.Brix], and of the doubt: a division
// to 5 Brix, a thermometer to 10 K, a calibration to 5 Brix, each above zero.
// Of a Baume stem give the strength that the mark stands for, from
// [Scale.BrixFromBaume] of the stem's scale, and the doubt in Brix: a degree
// Baume is 2 Brix near syrup.
// Check value: a 60 F stem read at 59.0 to 0.5 Brix in a cup of 209 F within 1
// F, calibrated to 0.1, gives 66.78 plus or minus 0.33 (computed).
func (h Hydrometer) Measure(reading units.Brix, at units.Temperature, doubt Doubt) (Measurement, error) {
	const fn = "density.Hydrometer.Measure"
	if err := doubt.check(fn, true); err != nil {
		return Measurement{}, err
	}
	b, err := h.Brix(reading, at)
	if err != nil {
		return Measurement{}, units.Under(fn, err)
	}
	gamma := expansionOf(h.Expansion)
	c, c0 := at.Celsius(), h.GraduatedAt.Celsius()
	m, bySlope := h.Scale.toICUMSA(reading - h.ReadsHigh)

	// F = rho(b, t) (1 + gamma (t-t0)) - rho(m, t0) = 0 ties b to the inputs.
	d, growth := rho(b.Fraction(), c), 1+gamma*(c-c0)
	byW, byC := rhoSlopes(b.Fraction(), c)
	markW, _ := rhoSlopes(m.Fraction(), c0)
	per := 100 / (byW * growth) // Brix for a kg/m3 of F

	onScale := markW / 100 * bySlope * per
	p := doubt.onScale(onScale)
	p.Thermometer = part(per*(byC*growth+d*gamma), rectangular(float64(doubt.Thermometer)))
	p.Glass = part(per*d*(c-c0), rectangular(glassLimit))
	p.Surface = part(per*d*growth, surfaceDoubt/Coverage)
	p.Model = part(per*growth, modelDoubt(c))
	return measured(b, at, p), nil
}

// Measure returns the strength of [Refractometer.Brix] with its expanded
// uncertainty.
//
// Range and errors are those of [Refractometer.Brix], and of the doubt as for
// [Hydrometer.Measure]; a compensated instrument needs no thermometer. Check
// value: 66.5 read to 0.2 Brix at 25 C within 1 K, calibrated to 0.2, gives 66.89
// plus or minus 0.25 (computed).
func (r Refractometer) Measure(reading units.Brix, at units.Temperature, doubt Doubt) (Measurement, error) {
	const fn = "density.Refractometer.Measure"
	if err := doubt.check(fn, !r.Compensated); err != nil {
		return Measurement{}, err
	}
	b, err := r.Brix(reading, at)
	if err != nil {
		return Measurement{}, units.Under(fn, err)
	}
	if r.Compensated {
		p := doubt.onScale(1)
		p.Model = indexDoubt
		return measured(b, at, p), nil
	}
	// L(b, t) = L20(reading) ties b to the inputs.
	m := (reading - r.ReadsHigh).Fraction()
	_, byN := lorentz(index(m))
	_, byW, byC := lorentzAt(b.Fraction(), at.Celsius())
	p := doubt.onScale(byN * indexSlope(m) / byW)
	p.Thermometer = part(100*byC/byW, rectangular(float64(doubt.Thermometer)))
	p.Model = refractionDoubt
	return measured(b, at, p), nil
}

// Measure returns the strength of [Flask.Brix] with its expanded uncertainty.
//
// Range and errors are those of [Flask.Brix], and of the doubt: each field above
// zero, and masses and volume no more than a tenth of what is measured, the
// thermometer to 10 K. Check value: 500 mL at 20 C that weigh 663.4 g to 0.1 g,
// the scale good to 0.2 g, the volume to 0.5 mL, 1 K, give 66.84 plus or minus
// 0.24 (computed).
func (f Flask) Measure(net units.Mass, at units.Temperature, doubt FlaskDoubt) (Measurement, error) {
	const fn = "density.Flask.Measure"
	b, err := f.Brix(net, at)
	if err != nil {
		return Measurement{}, units.Under(fn, err)
	}
	if err := doubt.check(fn, net, f.Volume); err != nil {
		return Measurement{}, err
	}
	c, c0 := at.Celsius(), f.CalibratedAt.Celsius()
	d := rho(b.Fraction(), c)
	apparent := float64(InAir(units.Density(d)))
	byW, byC := rhoSlopes(b.Fraction(), c)
	const buoyed = 1 - airDensity/weightDensity
	per := 100 / byW // Brix for a kg/m3

	byMass := per * buoyed * apparent / float64(net)
	p := Parts{
		Division:    part(byMass, rectangular(float64(doubt.Division)/2)),
		Calibration: part(byMass, float64(doubt.Calibration)/Coverage),
		Volume:      part(per*buoyed*apparent/float64(f.Volume), float64(doubt.Volume)/Coverage),
		Thermometer: part(per*(byC+buoyed*apparent*expansionOf(f.Expansion)/(1+expansionOf(f.Expansion)*(c-c0))), rectangular(float64(doubt.Thermometer))),
	}
	air := rectangular(airLimit) * (1 - apparent/weightDensity)
	p.Model = part(per, math.Hypot(modelDoubt(c), air))
	return measured(b, at, p), nil
}

// part is the standard uncertainty that an input of standard uncertainty u
// makes through sensitivity s.
func part(s, u float64) units.Brix { return units.Brix(math.Abs(s) * u) }

func measured(b units.Brix, at units.Temperature, p Parts) Measurement {
	return Measurement{Brix: b, Uncertainty: Coverage * p.total(), Parts: p, Caveats: CaveatsOf(b, at)}
}
