package coef

// SaturationHerzfeld lists the sucrose in a saturated solution, percent by mass,
// every 5 C from 0 to 100: 100 s/(100+s) of the printed grams s in 100 g of water.
//
// The print has 219.9 at 30 C, which breaks the run of its neighbors; Sokolovsky,
// with whom it agrees elsewhere, has 68.70 percent, 219.5 g, which does not. That
// stands here.
//
// Source: Herzfeld, as printed by Mohos, Confectionery and Chocolate Engineering
// (2010), table A2.2 (read).
func SaturationHerzfeld() []float64 {
	p := []float64{179.2, 184.7, 190.5, 197, 203.9, 211.4, 219.5, 228.4, 238.1, 248.7, 260.4,
		273.1, 287.3, 302.9, 320.5, 339.9, 362.1, 386.8, 415.7, 448.6, 487.2}
	for i, s := range p {
		p[i] = 100 * s / (100 + s)
	}
	return p
}

// SaturationSokolovsky lists the same every 10 C. The print has 80.84 at 90 C,
// where Herzfeld, with whom it agrees elsewhere to 0.005, has 80.61: a misprint of
// one of the two, and Herzfeld's lies on a smooth curve. His stands here.
//
// Source: Sokolovsky, as printed by Mohos, table A2.3 (read).
func SaturationSokolovsky() []float64 {
	return []float64{64.18, 65.58, 67.09, 68.70, 70.42, 72.25, 74.18, 76.22, 78.36, 80.61, 82.97}
}
