package coef

// Density of air-free water at 1 atm, in kg/m3 and powers of degrees Celsius:
// (A0 + A1 t + ... + A5 t^5)/(1 + B t).
//
// Source: Kell, G. S., Journal of Chemical and Engineering Data 20 (1975)
// 97-105.
const (
	KellA0 = 999.83952
	KellA1 = 16.952577
	KellA2 = -7.9905127e-3
	KellA3 = -4.6241757e-5
	KellA4 = 1.0584601e-7
	KellA5 = -2.8103006e-10
	KellB  = 0.016887236
)

// Density of sucrose solutions less that of water, in kg/m3: Ski multiplies
// w^i ((t-20)/100)^k, w the mass fraction, t in degrees Celsius.
//
// Source: ICUMSA Specification and Standard SPS-4, as reprinted in Bubnik,
// Kadlec, Urban, Bruhns, Sugar Technologists Manual, 8th ed., Bartens 1995, p.
// 164.
const (
	S01 = 385.1761
	S02 = 135.3705
	S03 = 40.9299
	S04 = -3.9643
	S05 = 13.4853
	S06 = -17.289

	S11 = -46.272
	S12 = -7.172
	S13 = 1.1597
	S14 = 5.1126
	S15 = 17.5254

	S21 = 59.7712
	S22 = 7.2491
	S23 = 12.363
	S24 = -35.4791

	S31 = -47.2207
	S32 = -21.6977
	S33 = 27.6301

	S41 = 18.3184
	S42 = 12.3081
)

// Kell lists the coefficients of water by their names in the source.
func Kell() map[string]float64 {
	return map[string]float64{
		"a0": KellA0, "a1": KellA1, "a2": KellA2, "a3": KellA3, "a4": KellA4, "a5": KellA5, "b": KellB,
	}
}

// Sucrose lists the coefficients of sucrose solutions, [k][i-1].
func Sucrose() [5][6]float64 {
	return [5][6]float64{
		{S01, S02, S03, S04, S05, S06},
		{S11, S12, S13, S14, S15},
		{S21, S22, S23, S24},
		{S31, S32, S33},
		{S41, S42},
	}
}

// Saturation of sucrose in water, percent by mass, in powers of degrees
// Celsius. Source: Vavrinecz (from memory).
const (
	Vavrinecz0 = 64.447
	Vavrinecz1 = 0.08222
	Vavrinecz2 = 1.6169e-3
	Vavrinecz3 = -1.558e-6
	Vavrinecz4 = -4.63e-8
)
