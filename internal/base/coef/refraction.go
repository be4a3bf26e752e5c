package coef

// Refractive index nD20 against air of sucrose solutions in powers of the mass
// fraction: a fit to the ICUMSA 1974 scale, worst 6.1e-6 (0.003 Brix).
const (
	N0 = 1.33299
	N1 = 0.1426967
	N2 = 0.05509664
	N3 = 0.01107236
	N4 = 0.01448767
	N5 = -0.01007924
)

// ND20 lists the coefficients of the fit by power.
func ND20() [6]float64 { return [6]float64{N0, N1, N2, N3, N4, N5} }

// Refractive index n of water against vacuum, r density over 1000 kg/m3, T
// temperature over 273.15 K, L wavelength over 0.589 micrometers:
//
//	(n^2-1)/(n^2+2)/r = A0 + A1 r + A2 T + A3 L^2 T + A4/L^2 + A5/(L^2-UV^2) + A6/(L^2-IR^2) + A7 r^2
//
// Source: IAPWS, Release on the Refractive Index of Ordinary Water Substance as
// a Function of Wavelength, Temperature and Pressure (1997).
const (
	WaterA0 = 0.244257733
	WaterA1 = 9.74634476e-3
	WaterA2 = -3.73234996e-3
	WaterA3 = 2.68678472e-4
	WaterA4 = 1.58920570e-3
	WaterA5 = 2.45934259e-3
	WaterA6 = 0.900704920
	WaterA7 = -1.66626219e-2
	WaterUV = 0.2292020
	WaterIR = 5.432937
)

// WaterRefraction lists the coefficients of the refraction of water by name.
func WaterRefraction() map[string]float64 {
	return map[string]float64{
		"a0": WaterA0, "a1": WaterA1, "a2": WaterA2, "a3": WaterA3, "a4": WaterA4, "a5": WaterA5, "a6": WaterA6, "a7": WaterA7,
		"UV": WaterUV, "IR": WaterIR,
	}
}
