package fuel

import (
	"math"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Basis tells what a published heat of a fuel has already paid for. A figure
// without its basis is worth little: the tables of firewood in circulation stand
// on different ones, and an efficiency applied to a figure that holds one
// already counts the losses twice.
type Basis uint8

// The bases. The zero value is none of them and is refused.
const (
	// Gross is all the heat of the bone-dry fuel, its steam condensed.
	Gross Basis = iota + 1
	// LessMoisture is gross heat less the evaporation of the fuel's own
	// moisture, but not of the water that burning makes: neither gross nor net.
	LessMoisture
	// Net is gross heat less the evaporation of all water in the smoke.
	Net
	// Delivered is what a boiler or stove gave out: an efficiency is in it.
	Delivered
)

var bases = enum.Names[Basis]{Type: "fuel.Basis", Zero: true, Of: []string{Gross: "gross", LessMoisture: "less moisture", Net: "net", Delivered: "delivered"}}

// Bases lists the bases.
func Bases() []Basis { return bases.List() }

func (b Basis) known() bool { return b >= Gross && b <= Delivered }

// String names the basis, such as "gross".
func (b Basis) String() string {
	if !b.known() {
		return "no basis"
	}
	return bases.String(b)
}

// heat tells of what heat an efficiency is a share.
func (b Basis) heat() string {
	if b == LessMoisture {
		return "heat " + b.String()
	}
	return b.String() + " heat"
}

// MarshalText returns the name, and nothing for none.
func (b Basis) MarshalText() ([]byte, error) { return bases.Marshal(b) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (b *Basis) UnmarshalText(text []byte) error { return bases.Unmarshal(b, text) }

// A BasisError says that an efficiency does not belong to a heat: that of a
// delivered figure is in it already, and one learned on gross heat is not one
// on net heat.
type BasisError struct {
	Func       string
	Heat       Basis // of the fuel
	Efficiency Basis // of the efficiency; zero if there was none
}

// Error tells the function, both bases and the way out.
func (e *BasisError) Error() string { return e.Func + ": " + e.Text(units.Both) }

// Text tells what [BasisError.Error] tells, without the function.
func (e *BasisError) Text(units.System) string {
	switch {
	case e.Heat == Delivered && e.Efficiency != 0:
		return "the heat of this fuel is delivered heat, which holds an efficiency already: use the gross figure, or no efficiency"
	case !e.Heat.known():
		return "the heat of this fuel has no basis: say whether it is gross, less moisture, net or delivered"
	case e.Efficiency == 0:
		return e.Heat.String() + " heat needs an efficiency, and none is safe to assume: learn it from past days, or take a published range"
	}
	return "an efficiency on " + e.Efficiency.String() + " heat does not belong to " + e.Heat.String() + " heat"
}

// Heat is heat in a fuel, with what it has already paid for. An efficiency
// is learned from it: see [LearnEfficiency].
type Heat struct {
	Energy units.Energy
	Basis  Basis
}

// A Fuel is a fuel sold by volume, by mass or by energy, and the heat in it:
// Heat for each Per of it. Cords are volumes of stacked wood.
type Fuel[Q units.Volume | units.Mass | units.Energy] struct {
	Name     string
	Heat     units.Energy
	Per      Q
	Basis    Basis
	Obtained string // read, computed or memory
	Source   string
}

// check tells whether the fuel makes sense.
func (f Fuel[Q]) check(fn string) error {
	if !f.Basis.known() {
		return &BasisError{Func: fn, Heat: f.Basis}
	}
	if !(f.Per > 0) {
		return &units.RangeError{Func: fn, Arg: "Fuel.Per", What: "amount of the fuel", Value: float64(f.Per), Low: 0, High: math.Inf(1), Hint: howFuel}
	}
	return fuelRange.Check(fn, f.each())
}

// each returns the heat in one base unit.
func (f Fuel[Q]) each() float64 { return float64(f.Heat) / float64(f.Per) }

// fuelRange is far wider than any fuel: it catches what was not set.
var fuelRange = limit.Range{Arg: "Fuel.Heat", What: "heat of the fuel", Low: 1e-6, High: 1e18, Below: howFuel, Above: howFuel}

const howFuel = "give a heat and the amount of fuel that holds it, such as 91,333 Btu and a US gallon"

// Of returns the heat in an amount of the fuel, on the basis of its figure.
//
// Range: amounts of 0 to 1e15, in the base unit. A fuel without a basis gives a
// [*BasisError]. Check value: 182,666 Btu gross in 2 US gal of propane of
// 91,333 each.
func (f Fuel[Q]) Of(amount Q) (Heat, error) {
	return f.of("fuel.Fuel.Of", amount)
}

func (f Fuel[Q]) of(fn string, amount Q) (Heat, error) {
	err := f.check(fn)
	if err == nil {
		err = amountRange.Check(fn, float64(amount))
	}
	if err != nil {
		return Heat{Energy: units.Energy(math.NaN())}, err
	}
	return Heat{Energy: units.Energy(f.each() * float64(amount)), Basis: f.Basis}, nil
}

// Needed returns the fuel that brings heat into the sap: the heat of
// [boil.Heat] for a night, or of a power over the time between two firings. The
// high end of the answer is what a poor efficiency takes. Give the zero
// [Efficiency] for a delivered figure.
//
// Range: heats of 0 to 1e15 J; efficiencies as in [Efficiency], on the basis of
// the fuel. An efficiency of another basis, one for a delivered figure, and none
// for another figure give a [*BasisError].
//
// Source: fuel = heat/(heat value x efficiency). Check value: 8.86 US gallons of
// propane (91,333 Btu gross) for 404,680 Btu at 50 percent (computed).
func (f Fuel[Q]) Needed(heat units.Energy, at Efficiency) (units.Span[Q], error) {
	const fn = "fuel.Fuel.Needed"
	if err := f.check(fn); err != nil {
		return limit.NoSpan[Q](), err
	}
	if err := amountRange.CheckAs(fn, "heat", float64(heat)); err != nil {
		return limit.NoSpan[Q](), err
	}
	share, err := at.of(fn, f.Basis)
	if err != nil {
		return limit.NoSpan[Q](), err
	}
	whole := Q(float64(heat) / f.each())
	return units.Span[Q]{Low: whole / Q(share.High), Middle: whole / Q(share.Middle), High: whole / Q(share.Low)}, nil
}

// Makes returns the heat that an amount of the fuel brings into the sap: what
// the wood on hand can still boil. Range and errors as for [Fuel.Needed].
//
// Check value: 22 times 400,000 Btu of a cord of 20 million Btu at 44 percent
// (Ohio State University Extension: 22 gallons of syrup to the cord).
func (f Fuel[Q]) Makes(amount Q, at Efficiency) (units.Span[units.Energy], error) {
	const fn = "fuel.Fuel.Makes"
	whole, err := f.of(fn, amount)
	if err != nil {
		return limit.NoSpan[units.Energy](), err
	}
	share, err := at.of(fn, f.Basis)
	if err != nil {
		return limit.NoSpan[units.Energy](), err
	}
	e := whole.Energy
	return units.Span[units.Energy]{Low: e * units.Energy(share.Low), Middle: e * units.Energy(share.Middle), High: e * units.Energy(share.High)}, nil
}

// amountRange holds amounts that are counted, whatever their unit.
var amountRange = limit.Range{Arg: "amount", What: "amount", Low: 0, High: 1e15,
	Below: "an amount cannot be less than none",
	Above: "check its unit: there is no such heap"}
