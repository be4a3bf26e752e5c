package sugar

import (
	"math"
	"strconv"

	"example.org/sapreckoner/internal/coef"
	"example.org/sapreckoner/internal/limit"
	"example.org/sapreckoner/internal/numeric"
	"example.org/sapreckoner/units"
)

// Solubility is a published formula for the sugar that water can hold. The two
// differ by a tenth of a Brix in the cellar and by half at 100 C, which is what
// a person should think of either.
type Solubility uint8

// The published formulas.
const (
	Vavrinecz Solubility = iota
	Charles
)

// solubilities holds the coefficients of the powers of degrees Celsius.
var solubilities = [...][5]float64{
	Vavrinecz: coef.Saturation()["Vavrinecz"],
	Charles:   coef.Saturation()["Charles"],
}

// What the saturation may be asked for.
var (
	saturationTemp = limit.Range{Arg: "temperature", Low: 0, High: 110, Unit: "C",
		Below: "ice may be forming: thaw it and let it mix",
		Above: "hotter than the formulas hold"}
	storageBrix = limit.Range{Arg: "sugar content", Low: 0, High: 85, Unit: "Brix",
		Below: "less than no sugar: check the instrument in plain water",
		Above: "beyond 85 Brix the liquid sets as candy"}
	solubilityRange = limit.Range{Arg: "solubility formula", Low: float64(Vavrinecz), High: float64(Charles),
		Above: "choose sugar.Vavrinecz or sugar.Charles"}
)

// String returns the author's name.
func (s Solubility) String() string {
	switch s {
	case Vavrinecz:
		return "Vavrinecz"
	case Charles:
		return "Charles"
	}
	return "Solubility(" + strconv.Itoa(int(s)) + ")"
}

// Saturation returns the sugar content at which a pure sucrose solution is
// saturated at temperature t: more would crystallize in time.
//
// Range: 0 to 110 C; the sources end near 100 (from memory). Uncertainty: the
// two formulas differ by 0.12 Brix at 20 C, 0.53 at 100. Inverted sugar and the
// other matter of syrup move the limit and slow the crystals. Outside the range
// the answer is NaN and a [units.RangeError].
//
// Source: Vavrinecz; Charles; both from memory. Check value: 66.72 Brix at 20 C
// (Vavrinecz, from memory).
func (s Solubility) Saturation(t units.Temperature) (units.Brix, error) {
	const fn = "sugar.Solubility.Saturation"
	if err := solubilityRange.Check(fn, float64(s)); err != nil {
		return units.Brix(math.NaN()), err
	}
	if err := saturationTemp.Check(fn, t.Celsius()); err != nil {
		return units.Brix(math.NaN()), err
	}
	b, _ := s.at(t.Celsius())
	return units.Brix(b), nil
}

// SaturationTemperature returns the temperature at which a pure sucrose solution
// of b Brix is saturated: the inverse of [Solubility.Saturation]. Kept below it,
// the syrup may grow crystals.
//
// Range: the saturations of 0 to 110 C. Thinner solutions freeze before they
// are saturated. Outside the range the answer is NaN and a [units.RangeError].
// Check value: 66.9 Brix is saturated at 21.3 C by Vavrinecz and at 22.1 C by
// Charles (computed).
func (s Solubility) SaturationTemperature(b units.Brix) (units.Temperature, error) {
	const fn = "sugar.Solubility.SaturationTemperature"
	nan := units.Celsius(math.NaN())
	if err := solubilityRange.Check(fn, float64(s)); err != nil {
		return nan, err
	}
	low, _ := s.at(saturationTemp.Low)
	high, _ := s.at(saturationTemp.High)
	if !limit.Holds(float64(b), low, high) {
		return nan, &units.RangeError{Func: fn, Arg: "sugar content", Value: float64(b), Low: low, High: high, Unit: "Brix",
			Hint: "thinner than that it is saturated at no temperature above 0 C, and thicker at none up to 110 C"}
	}
	b = units.Brix(min(max(float64(b), low), high))
	c, _ := numeric.Newton(func(c float64) (float64, float64) {
		y, slope := s.at(c)
		return y - float64(b), slope
	}, saturationTemp.Low, saturationTemp.High, 4*(float64(b)-low), 1e-12)
	return units.Celsius(c), nil
}

// at returns the saturation at c degrees Celsius and its slope.
func (s Solubility) at(c float64) (y, slope float64) {
	k := &solubilities[s]
	y = k[0] + c*(k[1]+c*(k[2]+c*(k[3]+c*k[4])))
	slope = k[1] + c*(2*k[2]+c*(3*k[3]+c*4*k[4]))
	return y, slope
}

// CrystalRisk says whether syrup may grow sugar crystals in storage.
type CrystalRisk uint8

// From safe to sure. The zero value is no answer.
const (
	CrystalsUnknown  CrystalRisk = iota
	CrystalsUnlikely             // below saturation by both formulas
	CrystalsPossible             // not below by both, and not more than 1 Brix above by both
	CrystalsLikely               // more than 1 Brix above saturation by both formulas
)

// clearExcess is the excess up to which syrup often stays clear, in Brix: what
// the saturation of syrup is uncertain by.
const clearExcess = 1.0

// String tells the risk in a word.
func (r CrystalRisk) String() string {
	switch r {
	case CrystalsUnknown:
		return "unknown"
	case CrystalsUnlikely:
		return "unlikely"
	case CrystalsPossible:
		return "possible"
	case CrystalsLikely:
		return "likely"
	}
	return "CrystalRisk(" + strconv.Itoa(int(r)) + ")"
}

// Crystals tells whether syrup of b Brix may grow crystals when it is stored at
// temperature storage, by both formulas of [Solubility]: the coldest the shelf
// gets is the temperature to ask for.
//
// Crystals take weeks at a small excess, and syrup a little above saturation
// often stays clear: common practice sees them in the jar from about 68 to 69
// Brix at room temperature. They do no harm: warm the jar in hot water.
//
// Range: 0 to 85 Brix, 0 to 110 C. Uncertainty: of the order of 1 Brix, by
// inverted sugar and other matter; an excess within that is possible and not
// likely. Outside the range the answer is CrystalsUnknown and a
// [units.RangeError]. Check values: at 20 C, where 66.6 and 66.7 Brix are
// saturated, likely for 68 Brix, possible for 66.9, unlikely for 66 (computed).
func Crystals(b units.Brix, storage units.Temperature) (CrystalRisk, error) {
	const fn = "sugar.Crystals"
	if err := storageBrix.Check(fn, float64(b)); err != nil {
		return CrystalsUnknown, err
	}
	if err := saturationTemp.Check(fn, storage.Celsius()); err != nil {
		return CrystalsUnknown, err
	}
	low, high := math.Inf(1), math.Inf(-1)
	for s := range solubilities {
		most, _ := Solubility(s).at(storage.Celsius())
		low, high = min(low, most), max(high, most)
	}
	switch {
	case float64(b) <= low:
		return CrystalsUnlikely, nil
	case float64(b) <= high+clearExcess:
		return CrystalsPossible, nil
	}
	return CrystalsLikely, nil
}
