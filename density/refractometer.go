package density

import (
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// prismRange holds the temperatures at which the model of refraction was
// compared with the table of 1936.
var prismRange = limit.Range{Arg: "at", What: "prism temperature", Low: 10, High: 30, Unit: "C",
	Below: "bring instrument and drop to room temperature, 20 C at best",
	Above: "bring instrument and drop to room temperature, 20 C at best"}

// prismAnswerRange is [answerRange] with the way out for a prism.
var prismAnswerRange = limit.Range{Arg: "answer", Low: float64(minReading), High: float64(maxBrix), Unit: "Brix",
	Below: "check the instrument in plain water", Above: "check the reading and the temperature of the prism"}

// A Refractometer reads strength in a drop of liquid on a prism, on the ICUMSA
// 1974 scale at 20 C. The zero value is a plain one, without compensation, that
// reads true.
//
// Compensated says that the instrument corrects itself for temperature, as many
// hand instruments marked ATC and most digital ones do; correcting its reading
// again would be wrong by up to 0.8 Brix.
//
// ReadsHigh is the error of the instrument in Brix, found by
// [Refractometer.CheckedIn]: what it reads too much.
//
// # In use
//
// What counts is the temperature of drop and prism together. A drop of hot
// syrup on a cold prism takes a while to settle, loses water while it does, and
// scalds (common practice). Sugar other than sucrose bends light a little less:
// syrup in which much of the sugar is inverted reads low.
//
// Cites iapws-refraction-1997, commission-1936, icumsa-sps4.
type Refractometer struct {
	Compensated bool
	ReadsHigh   units.Brix
}

// Brix returns the sugar content of a liquid that reads reading with drop and
// prism at the given temperature.
//
// Range: readings (less ReadsHigh) and answers from -1 to 85 Brix, at from 10
// to 30 C, where the model was compared with published corrections. Colder is
// refused: the table at hand begins at 10 C, and where one goes on the model
// misses it by up to 0.06 Brix (told, not read here). Uncertainty: 0.008 Brix
// (standard, against the rows read) with that of the instrument;
// [Refractometer.Measure] works it out.
//
// Source: refraction of Lorentz and Lorenz with the water of IAPWS (1997) and the
// density of [Solution]; compared with the International Commission table of
// 1936, from which it differs by up to 0.04 Brix, at 70 Brix and 10 C. Check
// value: 66.9 read at 30 C is 67.69 Brix (computed).
func (r Refractometer) Brix(reading units.Brix, at units.Temperature) (units.Brix, error) {
	const fn = "density.Refractometer.Brix"
	if err := r.check(fn, at); err != nil {
		return nan[units.Brix](), err
	}
	mark := reading - r.ReadsHigh
	if err := checkStem(fn, mark, &readingRange); err != nil {
		return nan[units.Brix](), err
	}
	if r.Compensated {
		return mark, nil
	}
	return prismAnswer(fn, toBrix(prismFraction(mark.Fraction(), at.Celsius())))
}

// Reading returns what the instrument shows in the given strength with drop and
// prism at the given temperature: the inverse of [Refractometer.Brix], with the
// same range and uncertainty.
//
// Check value: 66.9 Brix at 30 C reads 66.10 (computed).
func (r Refractometer) Reading(brix units.Brix, at units.Temperature) (units.Brix, error) {
	return r.reading("density.Refractometer.Reading", brix, at)
}

// CheckedIn returns the refractometer with ReadsHigh set to what it read too
// much in a solution of known strength at the given temperature: 0 Brix is
// plain water.
//
// Range: as for [Refractometer.Brix], and an error of no more than 5 Brix.
// Check value: a compensated instrument that reads 0.2 in water reads 0.2 high.
func (r Refractometer) CheckedIn(brix units.Brix, at units.Temperature, reading units.Brix) (Refractometer, error) {
	const fn = "density.Refractometer.CheckedIn"
	r.ReadsHigh = 0
	want, err := r.reading(fn, brix, at)
	if err != nil {
		return Refractometer{}, err
	}
	if r.ReadsHigh, err = offset(fn, reading, want); err != nil {
		return Refractometer{}, err
	}
	return r, nil
}

func (r Refractometer) reading(fn string, b units.Brix, at units.Temperature) (units.Brix, error) {
	if err := r.check(fn, at); err != nil {
		return nan[units.Brix](), err
	}
	if err := checkStem(fn, b, &liquidRange); err != nil {
		return nan[units.Brix](), err
	}
	if r.Compensated {
		return b + r.ReadsHigh, nil
	}
	l, _, _ := lorentzAt(b.Fraction(), at.Celsius())
	m, err := prismAnswer(fn, toBrix(indexFraction(unlorentz(l))))
	return m + r.ReadsHigh, err
}

// prismAnswer guards a solved strength.
func prismAnswer(fn string, b units.Brix) (units.Brix, error) {
	if err := checkStem(fn, b, &prismAnswerRange); err != nil {
		return nan[units.Brix](), err
	}
	return b, nil
}

// prismFraction is the mass fraction that at c has the index of mark w0 at 20
// C, by Newton's method. A kelvin is worth about 0.076 Brix, which starts it
// within 0.001 of the root; each step squares that.
func prismFraction(w0, c float64) float64 {
	want, _ := lorentz(index(w0))
	w := w0 + 0.00076*(c-gravityC)
	for range 2 {
		l, byW, _ := lorentzAt(w, c)
		w -= (l - want) / byW
	}
	return w
}

func (r Refractometer) check(fn string, at units.Temperature) error {
	if err := prismRange.Check(fn, at.Celsius()); err != nil {
		return err
	}
	return offsetRange.CheckAs(fn, "Refractometer.ReadsHigh", float64(r.ReadsHigh))
}
