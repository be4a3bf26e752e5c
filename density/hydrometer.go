package density

import (
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// GlassExpansion is the conventional cubical expansion of a glass hydrometer,
// per kelvin. Source: ISO 1768:1975, clause 3.
//
// Cites iso-1768.
const GlassExpansion = 25e-6

const (
	// A stem reads a little below its zero in warm water or cold: the scale is
	// continued so far.
	minReading units.Brix = -1
	// stemRounding is [rounding] in Brix, which are percent: how far a reading or
	// an answer at an end of the scale may land outside it when it was worked out
	// forth and back. On the Baume scale, whose degree holds about as much, it
	// serves as well.
	stemRounding = 100 * rounding

	offStem = "the float would sink below its scale or rise above it: check the temperature, or let the cup cool"
	notBrix = "check the reading and its scale: Brix near 66 is Baume near 36"
)

var (
	graduationRange = limit.Range{Arg: "Hydrometer.GraduatedAt", What: "hydrometer graduation", Low: 1, High: 40, Unit: "C",
		Below: "give the temperature printed on the scale, such as 60 F or 20 C",
		Above: "give the temperature printed on the scale, such as 60 F or 20 C"}
	glassRange = limit.Range{Arg: "Hydrometer.Expansion", What: "expansion", Low: 0, High: 100e-6, Unit: "1/K",
		Below: "leave it zero for the conventional 25e-6 of glass", Above: "check its unit: glass is 25e-6"}
	// More than this is no error of a scale but a broken instrument.
	offsetRange = limit.Range{Arg: "Hydrometer.ReadsHigh", What: "instrument error", Low: -5, High: 5, Unit: "Brix",
		Below: "check the temperature and the liquid again; an instrument this far off is broken",
		Above: "check the temperature and the liquid again; an instrument this far off is broken"}
	readingRange = limit.Range{Arg: "reading", Low: float64(minReading), High: float64(maxBrix), Unit: "Brix", Below: notBrix, Above: notBrix}
	liquidRange  = limit.Range{Arg: "brix", What: "sugar content", Low: float64(minReading), High: float64(maxBrix), Unit: "Brix", Below: brixRange.Below, Above: brixRange.Above}
	answerRange  = limit.Range{Arg: "answer", Low: float64(minReading), High: float64(maxBrix), Unit: "Brix", Below: offStem, Above: offStem}
)

// A Hydrometer is a glass hydrometer with a Brix scale, a Baume scale or both.
//
// GraduatedAt is the temperature at which its scale is true: 20 C (68 F) and
// 60 F are in use for syrup, often 38 F for sap. It is printed on the scale and
// part of the instrument; a hydrometer without one is refused. At 66.9 Brix
// the scales of 60 F and 68 F differ by 0.34 Brix.
//
// Scale says which relation of density and strength its Brix marks follow; the
// zero value is [ICUMSA]. Answers are always true strength on ICUMSA. A Baume
// mark stands for a specific gravity and needs no scale.
//
// ReadsHigh is the error of the instrument in Brix of its scale, found by
// [Hydrometer.CheckedIn]: what it reads too much.
//
// Expansion is the cubical expansion of the glass per kelvin; zero means the
// conventional [GlassExpansion].
//
// # How it works
//
// A hydrometer graduated at t0 and floating at t shows the solution whose
// density at t0 is
//
//	rho(reading, t0) = rho(b, t) (1 + gamma (t - t0))
//
// because the glass has grown by gamma (t - t0) and displaces more.
//
// Cites icumsa-sps4, iso-1768, aguilera-2008, nist-sp250-78, plato-1900.
type Hydrometer struct {
	GraduatedAt units.Temperature
	Scale       Scale
	ReadsHigh   units.Brix
	Expansion   float64
}

// Brix returns the sugar content of a solution at the given temperature in which the hydrometer shows the given
// reading.
//
// Range: readings (less ReadsHigh) and answers from -1 to 85 Brix (a result
// below zero says how far the instrument or the temperature is off), at from 0
// to 110 C, graduation 1 to 40 C. Above 90 C the density is extrapolated: see
// [Extrapolated]. Uncertainty: 370e-6 of the density or more in use, about 0.08
// Brix at 66.9, from surface tension and temperature (Aguilera, Wright, Bean,
// Measurement Science and Technology 19 (2008) 015104, abstract);
// [Hydrometer.Measure] works it out.
//
// Check value: a 20 C scale that reads 65.0 at 30 C stands in 65.80 Brix
// (computed; NBS Circular C440 corrects by +0.80, from memory).
func (h Hydrometer) Brix(reading units.Brix, at units.Temperature) (units.Brix, error) {
	const fn = "density.Hydrometer.Brix"
	gamma, err := h.check(fn, "at", at)
	if err != nil {
		return nan[units.Brix](), err
	}
	mark := reading - h.ReadsHigh
	if err := checkStem(fn, mark, &readingRange); err != nil {
		return nan[units.Brix](), err
	}
	m, _ := h.Scale.toICUMSA(mark)
	return h.truth(fn, m.Fraction(), at, gamma)
}

// Reading returns what the hydrometer shows in a solution of the given strength
// at the given temperature: the inverse of [Hydrometer.Brix], with the same
// range and uncertainty. It is also where a mark for that strength and
// temperature must stand.
//
// Check value: 66.9 Brix at 211 F reads 59.00 on a 60 F scale (computed).
func (h Hydrometer) Reading(brix units.Brix, at units.Temperature) (units.Brix, error) {
	const fn = "density.Hydrometer.Reading"
	m, err := h.mark(fn, "brix", "at", brix, at)
	if err != nil {
		return nan[units.Brix](), err
	}
	r, err := answer(fn, h.Scale.fromICUMSA(m))
	return r + h.ReadsHigh, err
}

// BrixFromBaume returns the sugar content of a solution at the given
// temperature in which the hydrometer shows the given reading on its
// Baume scale. A Baume mark
// is a Brix mark under another name, related by specific gravity 20/20 C,
// whatever the temperature of graduation.
//
// Range, uncertainty and errors are those of [Hydrometer.Brix]. Check value: a
// 60 F stem at 36.06 Be and 60 F stands in 66.9 Brix (computed).
func (h Hydrometer) BrixFromBaume(reading Baume145, at units.Temperature) (units.Brix, error) {
	const fn = "density.Hydrometer.BrixFromBaume"
	gamma, err := h.check(fn, "at", at)
	if err != nil {
		return nan[units.Brix](), err
	}
	r := limit.Range{Arg: "reading", Unit: "Be", Below: notBaume, Above: notBaume,
		Low:  float64(baume(gravity(minReading + h.ReadsHigh))),
		High: float64(baume(gravity(maxBrix + h.ReadsHigh)))}
	if err := r.Check(fn, snap(float64(reading), stemRounding, &r)); err != nil {
		return nan[units.Brix](), err
	}
	return h.truth(fn, icumsaFraction(gravityFromBaume(reading))-h.ReadsHigh.Fraction(), at, gamma)
}

// Baume returns what the hydrometer shows on its Baume scale in a solution of
// the given strength at the given temperature: the inverse of
// [Hydrometer.BrixFromBaume], with the same range and uncertainty.
//
// Check value: 66.9 Brix at 60 F shows 36.06 Be on a 60 F stem (computed).
func (h Hydrometer) Baume(brix units.Brix, at units.Temperature) (Baume145, error) {
	const fn = "density.Hydrometer.Baume"
	m, err := h.mark(fn, "brix", "at", brix, at)
	if err != nil {
		return nan[Baume145](), err
	}
	m, err = answer(fn, m)
	return baume(gravity(m + h.ReadsHigh)), err
}

// CheckedIn returns the hydrometer with ReadsHigh set to what it read too much
// in a solution of known strength at the given temperature: 0 Brix is plain
// water. A check near the strength that will be measured is worth more than one
// in water, since the spacing of the marks may be off as well.
//
// Range: as for [Hydrometer.Brix], and an error of no more than 5 Brix. Check
// value: a 60 F scale that reads 0.3 in water of 60 F reads 0.3 high.
func (h Hydrometer) CheckedIn(brix units.Brix, at units.Temperature, reading units.Brix) (Hydrometer, error) {
	const fn = "density.Hydrometer.CheckedIn"
	h.ReadsHigh = 0
	m, err := h.mark(fn, "brix", "at", brix, at)
	if err != nil {
		return Hydrometer{}, err
	}
	if h.ReadsHigh, err = offset(fn, reading, h.Scale.fromICUMSA(m)); err != nil {
		return Hydrometer{}, err
	}
	return h, nil
}

// offset returns what an instrument reads too much where it should read want.
func offset(fn string, reading, want units.Brix) (units.Brix, error) {
	d := reading - want
	if offsetRange.Check(fn, float64(d)) == nil {
		return d, nil
	}
	return nan[units.Brix](), &units.RangeError{Func: fn, Arg: "reading", Value: float64(reading), Unit: "Brix",
		Low: float64(want) + offsetRange.Low, High: float64(want) + offsetRange.High, Hint: offsetRange.Above}
}

// check guards the instrument and the temperature of the cup, and returns the
// expansion of the glass.
func (h Hydrometer) check(fn, atArg string, at units.Temperature) (gamma float64, err error) {
	if err := graduationRange.Check(fn, h.GraduatedAt.Celsius()); err != nil {
		return 0, err
	}
	if err := tempRange.CheckAs(fn, atArg, at.Celsius()); err != nil {
		return 0, err
	}
	if err := scaleRange.CheckAs(fn, "Hydrometer.Scale", float64(h.Scale)); err != nil {
		return 0, err
	}
	if err := offsetRange.Check(fn, float64(h.ReadsHigh)); err != nil {
		return 0, err
	}
	return expansionOf(h.Expansion), glassRange.Check(fn, h.Expansion)
}

// expansionOf returns an expansion, the conventional one of glass for zero.
func expansionOf(gamma float64) float64 {
	if gamma == 0 {
		return GlassExpansion
	}
	return gamma
}

// truth is the strength at the given temperature of a solution that floats the
// stem to the ICUMSA mark m, a mass fraction.
func (h Hydrometer) truth(fn string, m float64, at units.Temperature, gamma float64) (units.Brix, error) {
	c, c0 := at.Celsius(), h.GraduatedAt.Celsius()
	return answer(fn, toBrix(fraction(rho(m, c0)/(1+gamma*(c-c0)), c)))
}

// mark is the ICUMSA mark to which a solution of the given strength at the
// given temperature floats the stem, on its scale or off it.
func (h Hydrometer) mark(fn, arg, atArg string, b units.Brix, at units.Temperature) (units.Brix, error) {
	gamma, err := h.check(fn, atArg, at)
	if err != nil {
		return nan[units.Brix](), err
	}
	if err := liquidRange.CheckAs(fn, arg, snap(float64(b), stemRounding, &liquidRange)); err != nil {
		return nan[units.Brix](), err
	}
	c, c0 := at.Celsius(), h.GraduatedAt.Celsius()
	return toBrix(fraction(rho(b.Fraction(), c)*(1+gamma*(c-c0)), c0)), nil
}

// checkStem guards a reading or a strength against one of the ranges of a stem.
func checkStem(fn string, b units.Brix, r *limit.Range) error {
	return r.Check(fn, snap(float64(b), stemRounding, r))
}

// answer guards a solved strength or reading.
func answer(fn string, b units.Brix) (units.Brix, error) {
	if err := checkStem(fn, b, &answerRange); err != nil {
		return nan[units.Brix](), err
	}
	return b, nil
}
