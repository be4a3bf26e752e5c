package density

import (
	"math"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// A Scale says which relation of density to strength the marks of an
// instrument follow. Two are in use, and at equal specific gravity they lie
// 0.045 Brix apart at 66.
//
// The zero value is [ICUMSA], which every function takes that does not ask: it
// is the newer one, it covers temperature as well as strength, and the
// difference is half of what a good hydrometer is uncertain by. An instrument
// whose paper says NBS, Plato or Circular C440 is [NBSC440].
//
// Cites nbs-c440, gnu-units, icumsa-sps4.
type Scale uint8

const (
	// ICUMSA is the density polynomial of the International Commission for
	// Uniform Methods of Sugar Analysis: see [Solution]. It reaches to 85 Brix.
	ICUMSA Scale = iota
	// NBSC440 is Table 114 of Circular C440 of the National Bureau of Standards
	// (1942), after Plato (1900). It reaches to 95 Brix. Between the printed
	// rows a smooth monotone curve runs through them; it stays within 0.00001 of
	// straight lines.
	NBSC440
)

var scaleNames = enum.Names[Scale]{Type: "density.Scale", Of: []string{ICUMSA: "ICUMSA", NBSC440: "NBS C440"},
	Also: map[string]Scale{"NBSC440": NBSC440, "Circular C440": NBSC440}}

// Scales lists the scales.
func Scales() []Scale { return scaleNames.List() }

// String returns the scale's name.
func (s Scale) String() string { return scaleNames.String(s) }

// MarshalText returns the scale's name.
func (s Scale) MarshalText() ([]byte, error) { return scaleNames.Marshal(s) }

// UnmarshalText reads the name of a scale. An unknown one is an error that tells
// the nearest.
func (s *Scale) UnmarshalText(text []byte) error { return scaleNames.Unmarshal(s, text) }

// SG2020 returns the apparent specific gravity 20/20 C of the given strength on
// this scale.
//
// Range: 0 to 85 Brix on ICUMSA, 0 to 95 on NBSC440. Uncertainty 0.0001 against
// the truth, and half a unit of the fifth decimal against the printed table.
// Source of NBSC440: Bates et al., Polarimetry, Saccharimetry and the Sugars,
// NBS Circular C440 (1942), Table 114. Check values at 66 Brix: 1.32516 on
// NBSC440 (read), 1.32543 on ICUMSA (computed).
func (s Scale) SG2020(brix units.Brix) (SG2020, error) {
	if err := s.check("density.Scale.SG2020", brix); err != nil {
		return nan[SG2020](), err
	}
	return s.gravity(brix), nil
}

// Brix returns the strength on this scale of apparent specific gravity: the
// inverse of [Scale.SG2020], with its uncertainty over the slope, 0.02 Brix.
//
// Range: the gravities of the scale's own range. Check value: 66 Brix at
// 1.32516 on [NBSC440] (Table 114).
func (s Scale) Brix(sg SG2020) (units.Brix, error) {
	return s.brix("density.Scale.Brix", sg)
}

// Baume returns the degrees Baume, modulus 145, of the given strength on this
// scale. The range is that of [Scale.SG2020].
//
// Check values on NBSC440: 66.0, 66.9 and 68.9 Brix are 35.58, 36.03 and 37.04
// (computed from Table 114).
func (s Scale) Baume(brix units.Brix) (Baume145, error) {
	if err := s.check("density.Scale.Baume", brix); err != nil {
		return nan[Baume145](), err
	}
	return baume(s.gravity(brix)), nil
}

// BrixFromBaume returns the strength on this scale of degrees Baume, modulus
// 145: the inverse of [Scale.Baume], with its range.
//
// Check value: 66.9 Brix at 36.03 Be on [NBSC440] (computed from Table 114).
func (s Scale) BrixFromBaume(degrees Baume145) (units.Brix, error) {
	return s.brixFromBaume("density.Scale.BrixFromBaume", degrees)
}

// Convert returns what the syrup of the given strength on this scale is on
// scale to: the strength of equal specific gravity.
//
// Range: 0 Brix to the end of the shorter scale. Uncertainty 0.003 Brix, from
// the printed digits. Check value: 66 Brix on NBSC440 is 65.955 on ICUMSA
// (computed).
func (s Scale) Convert(brix units.Brix, to Scale) (units.Brix, error) {
	const fn = "density.Scale.Convert"
	if err := s.check(fn, brix); err != nil {
		return nan[units.Brix](), err
	}
	if err := scaleRange.CheckAs(fn, "to", float64(to)); err != nil {
		return nan[units.Brix](), err
	}
	if s == to {
		return brix, nil
	}
	if to == ICUMSA { // the shorter one
		if err := convertRange.Check(fn, float64(brix)); err != nil {
			return nan[units.Brix](), err
		}
		return clamp(icumsaFraction(s.gravity(brix))), nil
	}
	return to.brix(fn, s.gravity(brix))
}

// convertRange is what of [NBSC440] the scale of [ICUMSA] reaches.
var convertRange = limit.Range{Arg: "brix", What: "sugar content", Low: float64(minBrix), High: float64(NBSC440.fromICUMSA(maxBrix)), Unit: "Brix",
	Below: brixRange.Below, Above: brixRange.Above}

var scaleRange = limit.Range{Arg: "Scale", What: "scale", Low: float64(ICUMSA), High: float64(NBSC440),
	Above: "use ICUMSA or NBS C440"}

// What may be asked of each scale.
var scales = [...]struct{ brix, gravity, baume limit.Range }{
	ICUMSA:  scaleRanges(gravity(minBrix), gravity(maxBrix), maxBrix),
	NBSC440: scaleRanges(table114[0], table114[len(table114)-1], units.Brix(len(table114)-1)),
}

func scaleRanges(low, high SG2020, most units.Brix) struct{ brix, gravity, baume limit.Range } {
	return struct{ brix, gravity, baume limit.Range }{
		limit.Range{Arg: "brix", What: "sugar content", Low: float64(minBrix), High: float64(most), Unit: "Brix", Below: brixRange.Below, Above: brixRange.Above},
		limit.Range{Arg: "sg", What: "specific gravity", Low: float64(low), High: float64(high), Below: notGravity, Above: notGravity},
		limit.Range{Arg: "degrees", What: "Baume", Low: float64(baume(low)), High: float64(baume(high)), Unit: "Be", Below: notBaume, Above: notBaume},
	}
}

// check guards the scale and a strength on it.
func (s Scale) check(fn string, b units.Brix) error {
	if err := scaleRange.Check(fn, float64(s)); err != nil {
		return err
	}
	return scales[s].brix.Check(fn, float64(b))
}

// gravity is the apparent specific gravity of the given strength, unchecked.
func (s Scale) gravity(b units.Brix) SG2020 {
	if s == NBSC440 {
		sg, _ := tableGravity(float64(b))
		return sg
	}
	return gravity(b)
}

// brix is [Scale.Brix] in the name of fn.
func (s Scale) brix(fn string, sg SG2020) (units.Brix, error) {
	if err := scaleRange.Check(fn, float64(s)); err != nil {
		return nan[units.Brix](), err
	}
	r := &scales[s]
	x := snap(float64(sg), rounding, &r.gravity)
	if err := r.gravity.Check(fn, x); err != nil {
		return nan[units.Brix](), err
	}
	if s == ICUMSA {
		return clamp(icumsaFraction(SG2020(x))), nil
	}
	return min(max(tableBrix(SG2020(x)), 0), units.Brix(r.brix.High)), nil
}

// brixFromBaume is [Scale.BrixFromBaume] in the name of fn.
func (s Scale) brixFromBaume(fn string, be Baume145) (units.Brix, error) {
	if err := scaleRange.Check(fn, float64(s)); err != nil {
		return nan[units.Brix](), err
	}
	r := &scales[s].baume
	x := snap(float64(be), 100*rounding, r)
	if err := r.Check(fn, x); err != nil {
		return nan[units.Brix](), err
	}
	return s.brix(fn, gravityFromBaume(Baume145(x)))
}

// toICUMSA returns the ICUMSA strength of a mark on this scale and its change
// with the mark, unchecked.
func (s Scale) toICUMSA(mark units.Brix) (b units.Brix, slope float64) {
	if s != NBSC440 {
		return mark, 1
	}
	sg, bySG := tableGravity(float64(mark))
	w := icumsaFraction(sg)
	byW, _ := rhoSlopes(w, gravityC)
	return toBrix(w), 100 * bySG * (water20 - airDensity) / byW
}

// fromICUMSA returns the mark on this scale of ICUMSA strength b, unchecked.
func (s Scale) fromICUMSA(b units.Brix) units.Brix {
	if s != NBSC440 {
		return b
	}
	return tableBrix(gravity(b))
}

// tableGravity interpolates Table 114 at x Brix and gives the slope there: a
// cubic between two rows that takes its end slopes from the rows on either
// side. Beyond the ends it goes on straight.
func tableGravity(x float64) (sg SG2020, slope float64) {
	const last = len(table114) - 1
	switch {
	case x < 0:
		m := tableSlope(0)
		return table114[0] + SG2020(m*x), m
	case x >= float64(last):
		m := tableSlope(last)
		return table114[last] + SG2020(m*(x-float64(last))), m
	case math.IsNaN(x):
		return nan[SG2020](), math.NaN()
	}
	i := int(x)
	y, rise, m0, m1 := segment(i)
	t := x - float64(i)
	sg = SG2020(y + t*(m0+t*(3*rise-2*m0-m1+t*(m0+m1-2*rise))))
	return sg, m0 + t*(2*(3*rise-2*m0-m1)+t*3*(m0+m1-2*rise))
}

// segment gives the cubic from row i to the next: value, rise and end slopes.
func segment(i int) (y, rise, m0, m1 float64) {
	y = float64(table114[i])
	return y, float64(table114[i+1]) - y, tableSlope(i), tableSlope(i + 1)
}

// tableSlope is the slope of Table 114 at row i, per Brix.
func tableSlope(i int) float64 {
	const last = len(table114) - 1
	switch i {
	case 0:
		return float64(-3*table114[0]+4*table114[1]-table114[2]) / 2
	case last:
		return float64(3*table114[last]-4*table114[last-1]+table114[last-2]) / 2
	}
	return float64(table114[i+1]-table114[i-1]) / 2
}

// tableBrix is the inverse of [tableGravity], by Newton's method. The two
// scales lie within 0.5 Brix of each other even where the polynomial is
// stretched to 95, and the curve bends so little that three steps from the
// ICUMSA strength reach rounding.
func tableBrix(sg SG2020) units.Brix {
	x := 100 * icumsaFraction(sg)
	for range 3 {
		y, slope := tableGravity(x)
		x -= float64(y-sg) / slope
	}
	return units.Brix(x)
}
