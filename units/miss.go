package units

// A Miss is what comes of following a rule of thumb, less what was meant or what
// is so. Syrup off the fire too soon is thinner than meant and more of it: Brix
// is negative then and Syrup positive. A rule that promises too much syrup has a
// positive Syrup as well.
//
// Brix is 0 where the rule does not touch the strength. Syrup is measured at 20
// C (68 F).
type Miss struct {
	Brix  Brix
	Syrup Volume
}

// Worth returns what the syrup of the miss is worth at a price for a volume, in
// the money of the price. A negative worth is sugar given away in syrup stronger
// than meant, or syrup that the rule left out. A positive one is money that will
// not come, or that of syrup thinner than meant, which no law lets you sell
// under its limit.
//
// Check value: 0.36 US gal at 50 a US gallon is 18.
func (m Miss) Worth(price float64, per Volume) float64 { return float64(m.Syrup/per) * price }
