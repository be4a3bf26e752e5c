package density

import "example.org/sapreckoner/units"

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

// water20 is the density of water that the gravities are counted from.
var water20 = water(gravityC)

// SG2020FromBrix returns the apparent specific gravity 20/20 C of b Brix on
// the [ICUMSA] scale; [Scale.SG2020] takes another.
//
// Range: 0 to 85 Brix; outside it NaN and a [units.RangeError]. Uncertainty
// 0.0001. NBS Circular C440, Table 114, an older scale, prints up to 0.0006
// less. Check value: 1.32543 at 66 Brix (computed).
func SG2020FromBrix(b units.Brix) (SG2020, error) {
	if err := checkBrix("density.SG2020FromBrix", b); err != nil {
		return nan[SG2020](), err
	}
	return gravity(b), nil
}

// BrixFromSG2020 returns the Brix of apparent specific gravity sg on the
// [ICUMSA] scale: the inverse of [SG2020FromBrix].
func BrixFromSG2020(sg SG2020) (units.Brix, error) {
	return brixFromGravity("density.BrixFromSG2020", sg)
}

// TrueSG2020FromBrix returns the true specific gravity 20/20 C of b Brix on
// the [ICUMSA] scale.
//
// Range: 0 to 85 Brix; outside it NaN and a [units.RangeError]. Uncertainty
// 0.0001. Check value: 1.32504 at 66 Brix (computed).
func TrueSG2020FromBrix(b units.Brix) (TrueSG2020, error) {
	if err := checkBrix("density.TrueSG2020FromBrix", b); err != nil {
		return nan[TrueSG2020](), err
	}
	return TrueSG2020(rho(b.Fraction(), gravityC) / water20), nil
}

// BrixFromTrueSG2020 returns the Brix of true specific gravity sg: the inverse
// of [TrueSG2020FromBrix].
func BrixFromTrueSG2020(sg TrueSG2020) (units.Brix, error) {
	low, high := 1.0, rho(maxBrix.Fraction(), gravityC)/water20
	if x := float64(sg); x >= low-rounding && x <= high+rounding {
		if b, ok := solved(fraction(x*water20, gravityC)); ok {
			return b, nil
		}
	}
	return nan[units.Brix](), gravityError("density.BrixFromTrueSG2020", float64(sg), low, high)
}

// BaumeFromBrix returns the degrees Baume, modulus 145, of b Brix on the
// [ICUMSA] scale; [Scale.Baume] takes another.
//
// Range: 0 to 85 Brix; outside it NaN and a [units.RangeError]. Uncertainty
// 0.01. Check values: 66.0, 66.9 and 68.9 Brix are 35.60, 36.06 and 37.07
// (computed); from NBS Circular C440, Table 114, they are 35.58, 36.03, 37.04.
func BaumeFromBrix(b units.Brix) (Baume145, error) {
	if err := checkBrix("density.BaumeFromBrix", b); err != nil {
		return nan[Baume145](), err
	}
	return baume(gravity(b)), nil
}

// BrixFromBaume returns the Brix of be degrees Baume, modulus 145, on the
// [ICUMSA] scale: the inverse of [BaumeFromBrix].
func BrixFromBaume(be Baume145) (units.Brix, error) {
	const fn = "density.BrixFromBaume"
	if err := checkBaume(fn, be, ICUMSA); err != nil {
		return nan[units.Brix](), err
	}
	return brixFromGravity(fn, gravityFromBaume(be))
}

func brixFromGravity(fn string, sg SG2020) (units.Brix, error) {
	low, high := gravity(minBrix), gravity(maxBrix)
	if sg >= low-rounding && sg <= high+rounding {
		if b, ok := solved(icumsaFraction(sg)); ok {
			return b, nil
		}
	}
	return nan[units.Brix](), gravityError(fn, float64(sg), float64(low), float64(high))
}

// gravity is the apparent specific gravity of b Brix on the ICUMSA scale,
// unchecked.
func gravity(b units.Brix) SG2020 {
	return SG2020((rho(b.Fraction(), gravityC) - airDensity) / (water20 - airDensity))
}

// icumsaFraction is the mass fraction of apparent gravity sg, unchecked.
func icumsaFraction(sg SG2020) float64 {
	return fraction(airDensity+float64(sg)*(water20-airDensity), gravityC)
}

func baume(sg SG2020) Baume145 { return Baume145(modulus - modulus/float64(sg)) }

func gravityFromBaume(be Baume145) SG2020 { return SG2020(modulus / (modulus - float64(be))) }

// checkBaume guards a reading in degrees Baume of the strengths of scale s.
func checkBaume(fn string, be Baume145, s Scale) error {
	low, high := baume(s.gravity(minBrix)), baume(s.gravity(s.most()))
	if be >= low-rounding && be <= high+rounding {
		return nil
	}
	return &units.RangeError{Func: fn, Arg: "Baume", Value: float64(be), Low: float64(low), High: float64(high), Unit: "Be",
		Hint: "syrup is near 36; a number near 66 is Brix"}
}

func gravityError(fn string, sg, low, high float64) error {
	return &units.RangeError{Func: fn, Arg: "specific gravity", Value: sg, Low: low, High: high,
		Hint: "water is 1, syrup near 1.33; a number near 66 is Brix"}
}
