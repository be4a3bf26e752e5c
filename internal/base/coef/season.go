package coef

// Probability p of a producing week: logit p = c0 + c1 N + c2 N^2 + c3 G, N the
// freeze-thaw events and G the growing degree-days over 5 C since 1 January.
//
// Source: Houle et al. 2015, PLoS ONE 10(12) e0144844, equations 1 and 2.
const (
	HouleC0 = -5.09
	HouleC1 = 0.722
	HouleC2 = -0.014
	HouleC3 = -0.07
)

// Houle lists the coefficients of the producing week by their names in the
// source.
func Houle() map[string]float64 {
	return map[string]float64{"c0": HouleC0, "c1": HouleC1, "c2": HouleC2, "c3": HouleC3}
}
