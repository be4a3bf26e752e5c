package coef

// Water activity over sucrose solutions, x the mole fraction of the sugar:
// ln gamma = Q/(R T) x^2 (1 + a x + b x^2).
//
// Source: Starzak, M., Peacock, S. D., Zuckerindustrie 122 (1997) 380-387.
const (
	ActivityQ = -17638.0 // J/mol
	ActivityA = -1.0038
	ActivityB = -0.24653

	MolarSucrose = 342.3 // g/mol
	MolarWater   = 18.02 // g/mol

	// Of the closed form of the boiling point rise, in degrees Celsius.
	AntoineB = 3797.06
	AntoineC = 226.28

	// Of the inversion of sucrose by heat and acid.
	InversionRate   = 8.12831e16 // cm3/g a minute
	InversionKelvin = 13055.7    // K
)

// Inversion lists the constants of the inversion of sucrose by name.
func Inversion() map[string]float64 {
	return map[string]float64{"rate": InversionRate, "exponent": InversionKelvin}
}

// Activity lists the constants of the water activity by name.
func Activity() map[string]float64 {
	return map[string]float64{
		"Q": ActivityQ, "a": ActivityA, "b": ActivityB, "Antoine B": AntoineB, "Antoine C": AntoineC,
		"molar mass of sucrose": MolarSucrose, "molar mass of water": MolarWater,
	}
}

// Saturation lists the coefficients of sucrose saturation by the author's name,
// percent by mass in powers of degrees Celsius.
//
// Source: Vavrinecz; Charles; both from memory.
func Saturation() map[string][5]float64 {
	return map[string][5]float64{
		"Vavrinecz": {Vavrinecz0, Vavrinecz1, Vavrinecz2, Vavrinecz3, Vavrinecz4},
		"Charles":   {64.397, 0.07251, 0.0020569, -9.035e-6, 0},
	}
}

// Viscosity of sucrose solutions, n = B/(1900 - 18 B): log10 mPa s = slope n +
// offset + (warm - t)/(zero + t) (factor + power n^raised).
//
// Source: Genotelle, from memory.
const (
	ViscositySlope  = 22.46
	ViscosityOffset = -0.114
	ViscosityWarm   = 30.0
	ViscosityZero   = 91.0
	ViscosityFactor = 1.1
	ViscosityPower  = 43.1
	ViscosityRaised = 1.25
)

// Viscosity lists the constants of the viscosity by name.
func Viscosity() map[string]float64 {
	return map[string]float64{
		"slope with n": ViscositySlope, "offset": ViscosityOffset,
		"temperature, numerator": ViscosityWarm, "temperature, denominator": ViscosityZero,
		"factor, constant": ViscosityFactor, "factor, power of n": ViscosityPower, "exponent": ViscosityRaised,
	}
}
