package density_test

import (
	"errors"
	"fmt"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// A stem read to half a Brix at room temperature, with a thermometer good to 1
// F and a check good to 0.1 Brix.
func ExampleHydrometer_Measure() {
	h := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	m, err := h.Measure(66.56, units.Fahrenheit(68), density.Doubt{
		Division:    0.5,
		Thermometer: 1 * units.FahrenheitDegree,
		Calibration: 0.1,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f +/- %.1f Brix\n", m.Brix, m.Uncertainty)
	// Output: 66.9 +/- 0.3 Brix
}

// A thermometer that is off by as much one way as the other rules here: it is
// never further off than its limit, and so 95 of 100 readings lie closer together
// than twice the standard deviation tells. A Monte Carlo of the same case is among
// the tests of this package.
func ExampleMeasurement_Half95() {
	h := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	m, err := h.Measure(60, units.Celsius(80), density.Doubt{
		Division:    0.2,
		Thermometer: 5 * units.CelsiusDegree,
		Calibration: 0.1,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("k = 2: %.2f Brix, 95 of 100: %.2f Brix\n", m.Uncertainty, m.Half95())
	// Output: k = 2: 0.62 Brix, 95 of 100: 0.54 Brix
}

// The largest doubt is worth the most work: here the width of a mark.
func ExampleParts() {
	h := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	m, err := h.Measure(59.1, units.Fahrenheit(211), density.Doubt{
		Division:    0.5,
		Thermometer: 1 * units.FahrenheitDegree,
		Calibration: 0.1,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	p := m.Parts
	fmt.Printf("division %.2f, glass %.2f, calibration %.2f, surface %.2f, thermometer %.2f, model %.2f Brix\n",
		p.Division, p.Glass, p.Calibration, p.Surface, p.Thermometer, p.Model)
	fmt.Println("extrapolated:", m.Extrapolated)
	// Output:
	// division 0.14, glass 0.05, calibration 0.05, surface 0.04, thermometer 0.03, model 0.02 Brix
	// extrapolated: true
}

func ExampleDoubt() {
	h := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	_, err := h.Measure(66.5, units.Fahrenheit(68), density.Doubt{})
	fmt.Println(err)
	// Output: density.Hydrometer.Measure: division doubt must be more than 0 and at most 5 Brix: say how far off it may be: no instrument is perfect, and zero stands for not stated
}

func ExampleRefractometer_Measure() {
	m, err := density.Refractometer{}.Measure(66.5, units.Celsius(25), density.Doubt{
		Division:    0.2,
		Thermometer: 1 * units.CelsiusDegree,
		Calibration: 0.2,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f +/- %.2f Brix\n", m.Brix, m.Uncertainty)
	// Output: 66.9 +/- 0.25 Brix
}

func ExampleFlask_Measure() {
	f := density.Flask{Volume: 500 * units.Milliliter, CalibratedAt: units.Celsius(20)}
	m, err := f.Measure(663.4*units.Gram, units.Celsius(20), density.FlaskDoubt{
		Division:    0.1 * units.Gram,
		Calibration: 0.2 * units.Gram,
		Volume:      0.5 * units.Milliliter,
		Thermometer: 1 * units.CelsiusDegree,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f +/- %.1f Brix\n", m.Brix, m.Uncertainty)
	// Output: 66.8 +/- 0.2 Brix
}

func ExampleFlaskDoubt() {
	f := density.Flask{Volume: 500 * units.Milliliter, CalibratedAt: units.Celsius(20)}
	_, err := f.Measure(663.4*units.Gram, units.Celsius(20), density.FlaskDoubt{Division: 0.1 * units.Gram})
	fmt.Println(err)
	// Output: density.Flask.Measure: calibration doubt must be more than 0 and at most 66.34 g: say how far off it may be: no instrument is perfect, and zero stands for not stated
}

// By hand: weights 1 to 4, and the square of 0.4 over 0.04 + 0.01.
func ExampleCombine() {
	stem := density.Measurement{Brix: 66.9, Uncertainty: 0.4}
	prism := density.Measurement{Brix: 66.5, Uncertainty: 0.2}
	both, err := density.Combine(stem, prism)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f +/- %.2f Brix, chi-squared %.1f\n", both.Brix, both.Uncertainty, both.ChiSquared)
	// Output: 66.58 +/- 0.18 Brix, chi-squared 3.2
}

// By hand: the square of 0.2 over 0.05 is 0.8, and weights 1 to 4 make 66.74.
func ExampleCombination() {
	both, err := density.Combine(density.Measurement{Brix: 66.9, Uncertainty: 0.4}, density.Measurement{Brix: 66.7, Uncertainty: 0.2})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f Brix, chi-squared %.1f\n", both.Brix, both.ChiSquared)
	// Output: 66.74 Brix, chi-squared 0.8
}

// A Brix apart is more than the two can explain: 1 over 0.05 is 20, where chance
// leaves 3.84.
func ExampleDisagreeError() {
	_, err := density.Combine(density.Measurement{Brix: 66.9, Uncertainty: 0.4}, density.Measurement{Brix: 65.9, Uncertainty: 0.2})
	var apart *density.DisagreeError
	if errors.As(err, &apart) {
		fmt.Printf("read again: %s and %s, chi-squared %.0f\n", apart.A.Text(1), apart.B.Text(1), apart.ChiSquared)
	}
	// Output: read again: 66.9 Brix and 65.9 Brix, chi-squared 20
}

func ExampleMeasurement() {
	m := density.Measurement{Brix: 66.9, Uncertainty: 0.3}
	fmt.Printf("at least %.1f Brix in 39 of 40 cases\n", m.Brix-m.Uncertainty)
	// Output: at least 66.6 Brix in 39 of 40 cases
}
