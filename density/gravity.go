package density

import (
	"math"

	"example.org/sapreckoner/units"
)

// SG2020 is apparent specific gravity 20/20 C: the weight in air of a solution
// at 20 C over that of the same volume of water at 20 C, both with brass or
// steel weights. The tables of the sugar trade print this one.
type SG2020 float64

// TrueSG2020 is true specific gravity 20/20 C: density in vacuo at 20 C over
// that of water at 20 C.
type TrueSG2020 float64

// Baume145 is degrees Baume of the US sugar scale, modulus 145 on [SG2020]:
//
//	Be = 145 - 145/SG
//
// The pairs that rules print, 66.9 Brix and 36 Be, are this scale rounded, even
// where the rule says "at 60 F": specific gravity 60/60 F taken literally
// would shift 36 Be by 0.24 Brix (computed).
type Baume145 float64

const (
	modulus  = 145.0
	gravityC = 20.0 // both temperatures of the gravities above
)

// isotherm20 is the isotherm of every specific gravity.
var isotherm20 = at(gravityC)

// SG2020FromBrix returns the apparent specific gravity 20/20 C of b Brix on
// the ICUMSA scale.
//
// Range: 0 to 85 Brix; outside it NaN and a [units.RangeError]. Uncertainty
// 0.0001. NBS Circular C440, Table 114, an older scale, prints up to 0.0006
// less. Check value: 1.32543 at 66 Brix (computed).
func SG2020FromBrix(b units.Brix) (SG2020, error) {
	if !(b >= minBrix && b <= maxBrix) {
		return nan[SG2020](), brixError("density.SG2020FromBrix", "sugar content", b)
	}
	return SG2020(gravity(b)), nil
}

// gravity is the apparent specific gravity, unchecked.
func gravity(b units.Brix) float64 {
	return (isotherm20.rho(b.Fraction()) - airDensity) / (isotherm20.a[0] - airDensity)
}

// BrixFromSG2020 returns the Brix of apparent specific gravity sg: the inverse
// of [SG2020FromBrix].
func BrixFromSG2020(sg SG2020) (units.Brix, error) {
	low, high := gravity(minBrix), gravity(maxBrix)
	if !(float64(sg) >= low && float64(sg) <= high) {
		return nan[units.Brix](), gravityError("density.BrixFromSG2020", float64(sg), low, high)
	}
	return clamp(isotherm20.fraction(airDensity + float64(sg)*(isotherm20.a[0]-airDensity))), nil
}

// clamp keeps a solved mass fraction inside the range against rounding.
func clamp(w float64) units.Brix {
	return toBrix(math.Min(math.Max(w, minBrix.Fraction()), maxBrix.Fraction()))
}

// TrueSG2020FromBrix returns the true specific gravity 20/20 C of b Brix on
// the ICUMSA scale.
//
// Range: 0 to 85 Brix; outside it NaN and a [units.RangeError]. Uncertainty
// 0.0001. Check value: 1.32504 at 66 Brix (computed).
func TrueSG2020FromBrix(b units.Brix) (TrueSG2020, error) {
	if !(b >= minBrix && b <= maxBrix) {
		return nan[TrueSG2020](), brixError("density.TrueSG2020FromBrix", "sugar content", b)
	}
	return TrueSG2020(isotherm20.rho(b.Fraction()) / isotherm20.a[0]), nil
}

// BrixFromTrueSG2020 returns the Brix of true specific gravity sg: the inverse
// of [TrueSG2020FromBrix].
func BrixFromTrueSG2020(sg TrueSG2020) (units.Brix, error) {
	low, high := 1.0, isotherm20.rho(maxBrix.Fraction())/isotherm20.a[0]
	if !(float64(sg) >= low && float64(sg) <= high) {
		return nan[units.Brix](), gravityError("density.BrixFromTrueSG2020", float64(sg), low, high)
	}
	return clamp(isotherm20.fraction(float64(sg) * isotherm20.a[0])), nil
}

func gravityError(fn string, sg, low, high float64) error {
	return &units.RangeError{Func: fn, Arg: "specific gravity", Value: sg, Low: low, High: high,
		Hint: "water is 1 and 85 Brix the most; a number near 66 is Brix"}
}

// BaumeFromBrix returns the degrees Baume, modulus 145, of b Brix on the ICUMSA
// scale.
//
// Range: 0 to 85 Brix; outside it NaN and a [units.RangeError]. Uncertainty
// 0.01. Check values: 66.0, 66.9 and 68.9 Brix are 35.60, 36.06 and 37.07
// (computed); from NBS Circular C440, Table 114, they are 35.58, 36.03, 37.04.
func BaumeFromBrix(b units.Brix) (Baume145, error) {
	if !(b >= minBrix && b <= maxBrix) {
		return nan[Baume145](), brixError("density.BaumeFromBrix", "sugar content", b)
	}
	return Baume145(baume(b)), nil
}

func baume(b units.Brix) float64 { return modulus - modulus/gravity(b) }

// BrixFromBaume returns the Brix of be degrees Baume, modulus 145: the inverse
// of [BaumeFromBrix].
func BrixFromBaume(be Baume145) (units.Brix, error) {
	low, high := baume(minBrix), baume(maxBrix)
	if !(float64(be) >= low && float64(be) <= high) {
		return nan[units.Brix](), &units.RangeError{Func: "density.BrixFromBaume", Arg: "Baume", Value: float64(be), Low: low, High: high, Unit: "Be",
			Hint: "syrup is near 36; a number near 66 is Brix"}
	}
	return clamp(isotherm20.fraction(gravityDensity(be))), nil
}

// gravityDensity is the true density at 20 C of be degrees Baume.
func gravityDensity(be Baume145) float64 {
	return airDensity + modulus/(modulus-float64(be))*(isotherm20.a[0]-airDensity)
}
