package coef

// Region4 lists the coefficients n1 to n10 of the saturation line of water,
// with temperatures in kelvin and pressures in megapascals.
//
// Source: IAPWS R7-97(2012), Table 34.
func Region4() [10]float64 {
	return [10]float64{
		0.11670521452767e4,
		-0.72421316703206e6,
		-0.17073846940092e2,
		0.12020824702470e5,
		-0.32325550322333e7,
		0.14915108613530e2,
		-0.48232657361591e4,
		0.40511340542057e6,
		-0.23855557567849,
		0.65017534844798e3,
	}
}

// A Power is a term C tau^(Sixths/6) of a saturation equation, tau = 1 -
// T/647.096 K. All exponents are whole sixths.
type Power struct {
	Sixths int
	C      float64
}

// VaporPressure lists the terms y of ln(p/22.064 MPa) = (647.096 K/T) y.
//
// Source of this series and the next two: IAPWS SR1-86(1992), from memory, and
// seen again in the source of a general-purpose library of its formulations.
func VaporPressure() [6]Power {
	return [6]Power{
		{6, -7.85951783}, {9, 1.84408259}, {18, -11.7866497},
		{21, 22.6807411}, {24, -15.9618719}, {45, 1.80122502},
	}
}

// LiquidDensity lists the terms y of rho = 322 kg/m3 (1 + y).
func LiquidDensity() [6]Power {
	return [6]Power{
		{2, 1.99274064}, {4, 1.09965342}, {10, -0.510839303},
		{32, -1.75493479}, {86, -45.5170352}, {220, -6.74694450e5},
	}
}

// VaporDensity lists the terms y of ln(rho/322 kg/m3) = y.
func VaporDensity() [6]Power {
	return [6]Power{
		{2, -2.03150240}, {4, -2.68302940}, {8, -5.38626492},
		{18, -17.2991605}, {37, -44.7586581}, {71, -63.9201063},
	}
}
