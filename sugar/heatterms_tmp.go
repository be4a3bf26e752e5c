package sugar

import "example.org/sapreckoner/units"

func heatTerms(b units.Brix) (at0, perC float64) {
	return 4186.8 - 25.1*float64(b), 0.075 * float64(b)
}
