package sugar

import (
	"math"

	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/units"
)

// Solubility is a published formula or table for the sugar that water can hold.
// They differ by half a Brix in the cellar, which is what a person should think of
// any of them.
//
// Cites vavrinecz, charles, mohos-2010.
type Solubility uint8

// The published formulas, and the tables, between the rows of which the library
// interpolates.
const (
	Vavrinecz Solubility = iota
	Charles
	Herzfeld   // a table of every 5 C, read
	Sokolovsky // a table of every 10 C, read
)

// Solubilities lists them all.
func Solubilities() []Solubility { return []Solubility{Vavrinecz, Charles, Herzfeld, Sokolovsky} }

// solubilities holds the coefficients of the powers of degrees Celsius.
var solubilities = [...][5]float64{
	Vavrinecz: coef.Saturation()["Vavrinecz"],
	Charles:   coef.Saturation()["Charles"],
}

// What the saturation may be asked for.
var (
	saturationTemp = limit.Range{Arg: "at", What: "temperature", Low: 0, High: 110, Unit: "C",
		Below: "ice may be forming: thaw it and let it mix",
		Above: "hotter than the formulas hold"}
	tabledTemp = limit.Range{Arg: "at", What: "temperature", Low: 0, High: 100, Unit: "C",
		Below: "ice may be forming: thaw it and let it mix",
		Above: "hotter than the tables go"}
	storageBrix = limit.Range{Arg: "brix", What: "sugar content", Low: 0, High: 85, Unit: "Brix",
		Below: "less than no sugar: check the instrument in plain water",
		Above: "beyond 85 Brix the liquid sets as candy"}
	solubilityRange = limit.Range{Arg: "Solubility", What: "solubility formula", Low: float64(Vavrinecz), High: float64(Sokolovsky),
		Above: "choose Vavrinecz, Charles, Herzfeld or Sokolovsky"}
)

var authors = enum.Names[Solubility]{Type: "sugar.Solubility", Of: []string{
	Vavrinecz: "Vavrinecz", Charles: "Charles", Herzfeld: "Herzfeld", Sokolovsky: "Sokolovsky"}}

// String returns the author's name.
func (s Solubility) String() string { return authors.String(s) }

// MarshalText returns what String returns.
func (s Solubility) MarshalText() ([]byte, error) { return authors.Marshal(s) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (s *Solubility) UnmarshalText(text []byte) error { return authors.Unmarshal(s, text) }

// Saturation returns the sugar content at which a pure sucrose solution is
// saturated at the given temperature: more would crystallize in time.
//
// Range: 0 to 110 C, by the tables to 100; the sources of the formulas end near
// 100 (from memory). Uncertainty: the formulas differ by 0.12 Brix at 20 C,
// 0.53 at 100; the tables lie 0.37 above Vavrinecz at 20 C. Inverted sugar and
// the other matter of syrup move the limit and slow the crystals.
//
// Source: Vavrinecz; Charles; both from memory. Herzfeld; Sokolovsky; both as
// printed by Mohos (2010), tables A2.2 and A2.3 (read). They agree to 0.005 Brix but
// for a figure of each that breaks its own run, Herzfeld's at 30 C and Sokolovsky's
// at 90: a misprint, and the other's stands there. Check values: 66.72 Brix at 20 C
// (Vavrinecz, from memory), 67.09 (Herzfeld, read).
//
// Cites vavrinecz, charles, mohos-2010.
func (s Solubility) Saturation(at units.Temperature) (units.Brix, error) {
	const fn = "sugar.Solubility.Saturation"
	if err := solubilityRange.Check(fn, float64(s)); err != nil {
		return units.Brix(math.NaN()), err
	}
	if err := s.temps().Check(fn, at.Celsius()); err != nil {
		return units.Brix(math.NaN()), err
	}
	b, _ := s.at(at.Celsius())
	return units.Brix(b), nil
}

// SaturationTemperature returns the temperature at which a pure sucrose
// solution of the given strength is saturated: the inverse of
// [Solubility.Saturation]. Kept below it, the syrup may grow crystals.
//
// Range: the saturations of 0 to 110 C, by the tables to 100. Thinner solutions
// freeze before they are saturated. Check value: 66.9 Brix is saturated at 21.3
// C by Vavrinecz and at 22.1 C by Charles (computed).
func (s Solubility) SaturationTemperature(brix units.Brix) (units.Temperature, error) {
	const fn = "sugar.Solubility.SaturationTemperature"
	nan := units.Celsius(math.NaN())
	if err := solubilityRange.Check(fn, float64(s)); err != nil {
		return nan, err
	}
	span := s.temps()
	low, _ := s.at(span.Low)
	high, _ := s.at(span.High)
	if !limit.Holds(float64(brix), low, high) {
		return nan, &units.RangeError{Func: fn, Arg: "brix", What: "sugar content", Value: float64(brix), Low: low, High: high, Unit: "Brix",
			Hint: "thinner than that it is saturated at no temperature above 0 C, and thicker at none that the source holds for"}
	}
	brix = units.Brix(min(max(float64(brix), low), high))
	c, _ := numeric.Newton(func(c float64) (float64, float64) {
		y, slope := s.at(c)
		return y - float64(brix), slope
	}, span.Low, span.High, min(4*(float64(brix)-low), span.High), 1e-12)
	return units.Celsius(c), nil
}

// temps returns where the source holds.
func (s Solubility) temps() *limit.Range {
	if s >= Herzfeld {
		return &tabledTemp
	}
	return &saturationTemp
}

// Supersaturation returns the sugar to a gram of water in a solution of the
// given strength, as a multiple of what a gram of water holds at the given
// temperature: 1 where it is saturated, above 1 where crystals can grow.
//
// Range: 0 to 85 Brix, and temperatures as for [Solubility.Saturation]. Check value: 66.9 Brix at 20
// C are 202.1 g to 100 g of water, which holds 203.9 by Herzfeld: 0.991 (by
// hand).
func (s Solubility) Supersaturation(brix units.Brix, at units.Temperature) (float64, error) {
	const fn = "sugar.Solubility.Supersaturation"
	if err := storageBrix.Check(fn, float64(brix)); err != nil {
		return math.NaN(), err
	}
	most, err := s.Saturation(at)
	if err != nil {
		return math.NaN(), units.Under(fn, err)
	}
	return float64(brix/(100-brix)) / float64(most/(100-most)), nil
}

// at returns the saturation at c degrees Celsius and its slope.
func (s Solubility) at(c float64) (y, slope float64) {
	switch s {
	case Herzfeld:
		return between(herzfeld, 5, c)
	case Sokolovsky:
		return between(sokolovsky, 10, c)
	}
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
	CrystalsUnlikely             // below saturation by every source
	CrystalsPossible             // above it by one, or above it by all and thinner than 68 Brix
	CrystalsLikely               // above saturation by every source, and at 68 Brix or denser
)

var risks = enum.Names[CrystalRisk]{Type: "sugar.CrystalRisk", Of: []string{
	CrystalsUnknown: "unknown", CrystalsUnlikely: "unlikely", CrystalsPossible: "possible", CrystalsLikely: "likely"}}

// String tells the risk in a word.
func (r CrystalRisk) String() string { return risks.String(r) }

// MarshalText returns what String returns.
func (r CrystalRisk) MarshalText() ([]byte, error) { return risks.Marshal(r) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (r *CrystalRisk) UnmarshalText(text []byte) error { return risks.Unmarshal(r, text) }

// Crystals tells whether syrup of the given strength may grow crystals when it
// is stored at temperature storage, by all of [Solubilities] and by practice:
// the coldest the shelf gets is the temperature to ask for.
//
// Likely is only what practice and the sources agree on: from [KeepsTo] on
// crystals are likely from room temperature down (OMAFRA 2013), and it must be more
// than water holds. Thinner syrup above saturation often stays clear for long; crystals
// take weeks. They do no harm: warm the jar in hot water.
//
// Range: 0 to 85 Brix, 0 to 100 C. Uncertainty: of the order of 1 Brix, by
// inverted sugar and other matter. Check values: at 20 C, where 66.6 to 67.1
// Brix are saturated, likely for 68 Brix, possible for 66.9, unlikely for 66
// (computed).
func Crystals(brix units.Brix, storage units.Temperature) (CrystalRisk, error) {
	const fn = "sugar.Crystals"
	if err := storageBrix.Check(fn, float64(brix)); err != nil {
		return CrystalsUnknown, err
	}
	if err := tabledTemp.CheckAs(fn, "storage", storage.Celsius()); err != nil {
		return CrystalsUnknown, err
	}
	low, high := math.Inf(1), math.Inf(-1)
	for s := Vavrinecz; s <= Sokolovsky; s++ {
		most, _ := s.at(storage.Celsius())
		low, high = min(low, most), max(high, most)
	}
	switch {
	case float64(brix) <= low:
		return CrystalsUnlikely, nil
	case float64(brix) <= high || !thick(brix):
		return CrystalsPossible, nil
	}
	return CrystalsLikely, nil
}
