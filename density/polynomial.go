package density

import "example.org/sapreckoner/internal/base/coef"

// The ICUMSA polynomial of sucrose solutions on the water of Kell. These are
// the kernels: mass fraction w and degrees Celsius c come in unchecked.

// expansion returns the variable of the temperature powers.
func expansion(c float64) float64 { return (c - 20) / 100 }

// rho is the density in kg/m3.
func rho(w, c float64) float64 {
	u := expansion(c)
	a1 := coef.S01 + u*(coef.S11+u*(coef.S21+u*(coef.S31+u*coef.S41)))
	a2 := coef.S02 + u*(coef.S12+u*(coef.S22+u*(coef.S32+u*coef.S42)))
	a3 := coef.S03 + u*(coef.S13+u*(coef.S23+u*coef.S33))
	a4 := coef.S04 + u*(coef.S14+u*coef.S24)
	a5 := coef.S05 + u*coef.S15
	return water(c) + w*(a1+w*(a2+w*(a3+w*(a4+w*(a5+w*coef.S06)))))
}

// rhoSlopes returns the change of density with mass fraction and with
// temperature, in kg/m3 and kg/m3 per kelvin.
func rhoSlopes(w, c float64) (byW, byC float64) {
	u := expansion(c)
	a1 := coef.S01 + u*(coef.S11+u*(coef.S21+u*(coef.S31+u*coef.S41)))
	a2 := coef.S02 + u*(coef.S12+u*(coef.S22+u*(coef.S32+u*coef.S42)))
	a3 := coef.S03 + u*(coef.S13+u*(coef.S23+u*coef.S33))
	a4 := coef.S04 + u*(coef.S14+u*coef.S24)
	a5 := coef.S05 + u*coef.S15
	byW = a1 + w*(2*a2+w*(3*a3+w*(4*a4+w*(5*a5+w*6*coef.S06))))

	b1 := coef.S11 + u*(2*coef.S21+u*(3*coef.S31+u*4*coef.S41))
	b2 := coef.S12 + u*(2*coef.S22+u*(3*coef.S32+u*4*coef.S42))
	b3 := coef.S13 + u*(2*coef.S23+u*3*coef.S33)
	b4 := coef.S14 + u*2*coef.S24
	byC = waterSlope(c) + w*(b1+w*(b2+w*(b3+w*(b4+w*coef.S15))))/100
	return byW, byC
}

// fraction returns the mass fraction that has density d at c: the inverse of
// [rho] in its first argument.
//
// The start lies within 0.015 of the root from -0.02 to 0.87 and 0 to 110 C.
// Halley's step cubes the error: two of them leave 2e-6 and then less than the
// rounding. The polynomial is smooth and rising far beyond the range, so that
// no bracket is needed.
func fraction(d, c float64) float64 {
	u := expansion(c)
	a1 := coef.S01 + u*(coef.S11+u*(coef.S21+u*(coef.S31+u*coef.S41)))
	a2 := coef.S02 + u*(coef.S12+u*(coef.S22+u*(coef.S32+u*coef.S42)))
	a3 := coef.S03 + u*(coef.S13+u*(coef.S23+u*coef.S33))
	a4 := coef.S04 + u*(coef.S14+u*coef.S24)
	a5 := coef.S05 + u*coef.S15
	d -= water(c)
	w := d / (a1 + 0.33*d)
	for range 2 {
		f := w*(a1+w*(a2+w*(a3+w*(a4+w*(a5+w*coef.S06))))) - d
		f1 := a1 + w*(2*a2+w*(3*a3+w*(4*a4+w*(5*a5+w*(6*coef.S06)))))
		f2 := a2 + w*(3*a3+w*(6*a4+w*(10*a5+w*(15*coef.S06)))) // half the second derivative
		w -= f * f1 / (f1*f1 - f*f2)
	}
	return w
}
