package density

import (
	"example.org/sapreckoner/internal/base/limit"
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

// water20 is the density of water that the gravities are counted from.
var water20 = water(gravityC)

var trueGravityRange = limit.Range{Arg: "sg", What: "specific gravity", Low: 1, High: rho(maxBrix.Fraction(), gravityC) / water20,
	Below: notGravity, Above: notGravity}

const (
	notGravity = "water is 1, syrup near 1.33; a number near 66 is Brix"
	notBaume   = "syrup is near 36; a number near 66 is Brix"
)

// SG2020FromBrix returns the apparent specific gravity 20/20 C of the given
// strength on the [ICUMSA] scale; [Scale.SG2020] takes another.
//
// Range: 0 to 85 Brix. Uncertainty 0.0001. NBS Circular C440, Table 114, an
// older scale, prints up to 0.0006 less. Check value: 1.32543 at 66 Brix
// (computed).
func SG2020FromBrix(brix units.Brix) (SG2020, error) {
	if err := brixRange.Check("density.SG2020FromBrix", float64(brix)); err != nil {
		return nan[SG2020](), err
	}
	return gravity(brix), nil
}

// BrixFromSG2020 returns the Brix of apparent specific gravity on the [ICUMSA]
// scale: the inverse of [SG2020FromBrix], with its uncertainty over the slope,
// 0.02 Brix.
//
// Range: the gravities of 0 to 85 Brix. Check value: 66.00 Brix at 1.32543
// (computed).
func BrixFromSG2020(sg SG2020) (units.Brix, error) {
	return ICUMSA.brix("density.BrixFromSG2020", sg)
}

// TrueSG2020FromBrix returns the true specific gravity 20/20 C of the given
// strength on the [ICUMSA] scale.
//
// Range: 0 to 85 Brix. Uncertainty 0.0001. Check value: 1.32504 at 66 Brix
// (computed).
func TrueSG2020FromBrix(brix units.Brix) (TrueSG2020, error) {
	if err := brixRange.Check("density.TrueSG2020FromBrix", float64(brix)); err != nil {
		return nan[TrueSG2020](), err
	}
	return TrueSG2020(rho(brix.Fraction(), gravityC) / water20), nil
}

// BrixFromTrueSG2020 returns the Brix of true specific gravity: the inverse of
// [TrueSG2020FromBrix], with its uncertainty over the slope, 0.02 Brix.
//
// Range: the gravities of 0 to 85 Brix. Check value: 66.00 Brix at 1.32504
// (computed).
func BrixFromTrueSG2020(sg TrueSG2020) (units.Brix, error) {
	x := snap(float64(sg), rounding, &trueGravityRange)
	if err := trueGravityRange.Check("density.BrixFromTrueSG2020", x); err != nil {
		return nan[units.Brix](), err
	}
	return clamp(fraction(x*water20, gravityC)), nil
}

// BaumeFromBrix returns the degrees Baume, modulus 145, of the given strength
// on the [ICUMSA] scale; [Scale.Baume] takes another.
//
// Range: 0 to 85 Brix. Uncertainty 0.01. Check values: 66.0, 66.9 and 68.9 Brix
// are 35.60, 36.06 and 37.07 (computed); from NBS Circular C440, Table 114,
// they are 35.58, 36.03, 37.04.
func BaumeFromBrix(brix units.Brix) (Baume145, error) {
	if err := brixRange.Check("density.BaumeFromBrix", float64(brix)); err != nil {
		return nan[Baume145](), err
	}
	return baume(gravity(brix)), nil
}

// BrixFromBaume returns the Brix of degrees Baume, modulus 145, on the [ICUMSA]
// scale: the inverse of [BaumeFromBrix], with its uncertainty over the slope,
// 0.02 Brix.
//
// Range: the degrees of 0 to 85 Brix. Check value: 66.90 Brix at 36.06 Be
// (computed).
func BrixFromBaume(degrees Baume145) (units.Brix, error) {
	return ICUMSA.brixFromBaume("density.BrixFromBaume", degrees)
}

// clamp keeps a solved mass fraction inside the range against rounding.
func clamp(w float64) units.Brix { return min(max(toBrix(w), minBrix), maxBrix) }

// gravity is the apparent specific gravity of the given strength on the ICUMSA
// scale, unchecked.
func gravity(b units.Brix) SG2020 {
	return SG2020((rho(b.Fraction(), gravityC) - airDensity) / (water20 - airDensity))
}

// icumsaFraction is the mass fraction of apparent gravity sg, unchecked.
func icumsaFraction(sg SG2020) float64 {
	return fraction(airDensity+float64(sg)*(water20-airDensity), gravityC)
}

func baume(sg SG2020) Baume145 { return Baume145(modulus - modulus/float64(sg)) }

func gravityFromBaume(be Baume145) SG2020 { return SG2020(modulus / (modulus - float64(be))) }
