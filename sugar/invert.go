package sugar

import (
	"fmt"
	"math"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// What the functions on inverted sugar may be asked for.
var (
	meterReading = limit.Range{Arg: "reading", Low: 20, High: 600, Unit: "mg/dL",
		Below: "under what such meters show: dilute less, 1:5 say, and give that dilution",
		Above: "over what such meters show: dilute more, 1:20 say, and give that dilution"}
	meterDilution = limit.Range{Arg: "dilution", Low: 1, High: 50,
		Below: "give parts of the whole to one part of syrup: 10 for 1:10",
		Above: "give parts of the whole to one part of syrup: 10 for 1:10"}
	invertedInLot = limit.Range{Arg: "inverted", What: "inverted sugar", Low: 0, High: 100, Unit: "%"}
)

// Glucose is a concentration of glucose as blood-glucose meters show it, in
// milligrams per deciliter.
type Glucose float64

// Units of glucose. The molar mass of glucose is 180.156 g/mol, so that a meter
// in mmol/L shows an eighteenth of one in mg/dL.
const (
	MilligramPerDeciliter Glucose = 1
	MillimolePerLiter     Glucose = 18.0156
)

// InvertedFromMeter returns the inverted sugar, glucose and fructose, in percent
// of the mass of the syrup, from a reading of a blood-glucose meter in diluted
// syrup.
//
// Arguments: the reading; the dilution as parts of the whole to one part of
// syrup by weight, 10 for 1:10. Range: 20 to 600 mg/dL (from memory: what
// common meters show), dilution 1 to 50. The source's table ends at 60 mg/dL;
// beyond it the line is extended. Uncertainty: a tenth of the answer or more,
// since meters are made for blood: use one meter and one dilution, and compare
// lots rather than trust the figure.
//
// Half of inverted sugar is glucose: 1 percent in ten parts of water is 50 mg in
// 100 g, which is where the 50 comes from (computed). The share of the sugar
// that is inverted, which the boiling point asks for, is the answer over the
// strength: 1.0 percent in syrup of 66.9 Brix is 1.5 percent of the sugar.
//
// Source: Cornell Maple Bulletin 208 (2007), Molded Sugar Candy, percent =
// reading/50 at 1:10. Check value: 20 mg/dL is 0.4 percent, 60 is 1.2 (read).
//
// Cites cornell-208.
func InvertedFromMeter(reading Glucose, dilution float64) (units.Share, error) {
	const fn = "sugar.InvertedFromMeter"
	if err := meterReading.Check(fn, float64(reading)); err != nil {
		return units.Share(math.NaN()), err
	}
	if err := meterDilution.Check(fn, dilution); err != nil {
		return units.Share(math.NaN()), err
	}
	return units.Share(float64(reading) * dilution / meterLine), nil
}

// meterLine is the reading of 1 percent undiluted, in mg/dL.
const meterLine = 500.0

// MeterFromInverted returns what the meter would show: the inverse of
// [InvertedFromMeter]. It tells the dilution that brings a lot into the meter's
// range of about 20 to 600 mg/dL, which it does not check.
//
// Range: 0 to 100 percent, dilution 1 to 50. Check value: 0.4 percent at 1:10
// shows 20 mg/dL.
func MeterFromInverted(inverted units.Share, dilution float64) (Glucose, error) {
	const fn = "sugar.MeterFromInverted"
	if err := invertedInLot.Check(fn, float64(inverted)); err != nil {
		return Glucose(math.NaN()), err
	}
	if err := meterDilution.Check(fn, dilution); err != nil {
		return Glucose(math.NaN()), err
	}
	return Glucose(float64(inverted) * meterLine / dilution), nil
}

// A Confection is a product whose making depends on inverted sugar: too little
// and it sets hard or coarse, too much and it stays soft or never sets. What a
// product weighs is told by [example.org/sapreckoner/boil/finish.ProductWeight]. The
// zero value is none.
type Confection uint8

// The confections.
const (
	MoldedSugar Confection = iota + 1
	MapleCream
)

// confections holds the inverted sugar that suits, in percent: from memory of
// producers' manuals. For cream the manuals give an upper limit alone.
var confections = [...]struct {
	name      string
	low, high units.Share
}{
	MoldedSugar: {"molded sugar", 0.5, 1.5},
	MapleCream:  {"maple cream", 0, 4},
}

func (c Confection) known() bool { return c >= MoldedSugar && c <= MapleCream }

var confectionNames = enum.Names[Confection]{Type: "sugar.Confection", Zero: true,
	Of: []string{MoldedSugar: confections[MoldedSugar].name, MapleCream: confections[MapleCream].name}}

// String returns the name of the confection.
func (c Confection) String() string { return confectionNames.String(c) }

// Confections lists the confections.
func Confections() []Confection { return confectionNames.List() }

// MarshalText returns what String returns, and nothing for none.
func (c Confection) MarshalText() ([]byte, error) { return confectionNames.Marshal(c) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (c *Confection) UnmarshalText(text []byte) error { return confectionNames.Unmarshal(c, text) }

// Inverted returns the inverted sugar of the syrup that suits the confection, in
// percent of its mass, both ends included: 0.5 to 1.5 for molded sugar, up to
// about 4 for cream. From memory of producers' manuals; NaN for none.
func (c Confection) Inverted() (low, high units.Share) {
	if !c.known() {
		return units.Share(math.NaN()), units.Share(math.NaN())
	}
	return confections[c].low, confections[c].high
}

// Suits reports whether syrup of that inverted sugar suits the confection.
//
// Range: 0 to 100 percent. An unknown confection is an [*InfeasibleError].
func (c Confection) Suits(inverted units.Share) (bool, error) {
	const fn = "sugar.Confection.Suits"
	if err := c.check(fn); err != nil {
		return false, err
	}
	if err := invertedInLot.Check(fn, float64(inverted)); err != nil {
		return false, err
	}
	return limit.Holds(inverted, confections[c].low, confections[c].high), nil
}

func (c Confection) check(fn string) error {
	if c.known() {
		return nil
	}
	why := c.String() + " is not listed"
	if c == 0 {
		why = "no confection is given"
	}
	return &InfeasibleError{Func: fn, Why: why, Hint: "take molded sugar or maple cream"}
}

// draw moves a share that is a hair outside two ends to the end.
func draw(x, low, high units.Share) units.Share {
	if limit.Holds(x, low, high) {
		return min(max(x, low), high)
	}
	return x
}

// Blend returns how much of another syrup, as least and most share of the mass
// of the blend, brings the syrup at hand into the range that suits the
// confection. Inverted sugar blends by mass.
//
// Arguments: the inverted sugar of the syrup at hand and of the other, in
// percent. Range: 0 to 100. If no blend of the two suits, the error is an
// [*InfeasibleError].
//
// Method: mass balance. Check value: syrup of 3 percent needs 60 to 100 percent
// of one with 0.5 for molded sugar: (3 - 1.5)/(3 - 0.5) (computed).
func (c Confection) Blend(have, other units.Share) (least, most units.Share, err error) {
	const fn = "sugar.Confection.Blend"
	none := units.Share(math.NaN())
	if err := c.check(fn); err != nil {
		return none, none, err
	}
	if err := invertedInLot.CheckAs(fn, "have", float64(have)); err != nil {
		return none, none, err
	}
	if err := invertedInLot.CheckAs(fn, "other", float64(other)); err != nil {
		return none, none, err
	}
	low, high := confections[c].low, confections[c].high
	have, other = draw(have, low, high), draw(other, low, high)
	if max(have, other) < low || min(have, other) > high {
		return none, none, &InfeasibleError{Func: fn, Why: fmt.Sprintf("both syrups lie on one side of the %.2g to %.2g percent of %s", float64(low), float64(high), c),
			Hint: "find a third syrup: late, dark lots hold more inverted sugar, early, light ones less"}
	}
	least, most = 0, units.Whole
	span := float64(other - have)
	switch {
	case have > high:
		least = units.FractionShare(float64(high-have) / span)
	case have < low:
		least = units.FractionShare(float64(low-have) / span)
	}
	switch {
	case other > high:
		most = units.FractionShare(float64(high-have) / span)
	case other < low:
		most = units.FractionShare(float64(low-have) / span)
	}
	return least, most, nil
}
