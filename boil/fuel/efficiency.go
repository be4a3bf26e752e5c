package fuel

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/measure"
	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/units"
)

// An Efficiency is the share of a fuel's heat that gets into the sap, between
// Low and High. It belongs to heat on one Basis: 60 percent of net heat are
// 50 of gross. There is no safe default: learn it from a past day
// ([LearnEfficiency]), or show the whole range ([HomeBuiltPan],
// [BuiltEvaporator]).
//
// Range: 1 to 100 percent of gross heat and of heat less moisture; to 110
// percent of net heat, where a fire that condenses its steam can pass 100. The
// zero Efficiency means that none applies.
type Efficiency struct {
	Low, High units.Share
	Basis     Basis
}

// Middle returns the middle between the ends: the best guess if the efficiency
// was learned, and only the middle of a range if it was published.
func (e Efficiency) Middle() units.Share { return (e.Low + e.High) / 2 }

// What an efficiency may be.
var (
	efficiencyRange = limit.Range{Arg: "Efficiency.Low", What: "efficiency", Low: 1, High: 110, Unit: "%",
		Below: "give both ends, in percent: 65, and not 0.65",
		Above: "no fire gives more than it gets: check the weight of the fuel and its heat"}
	wholeEfficiency = limit.Range{Arg: efficiencyRange.Arg, What: efficiencyRange.What, Low: 1, High: 100, Unit: "%",
		Below: efficiencyRange.Below, Above: efficiencyRange.Above}
)

// check tells whether the efficiency makes sense.
func (e Efficiency) check(fn string) error {
	r := rangeOn(e.Basis)
	if err := r.Check(fn, float64(e.Low)); err != nil {
		return err
	}
	if err := r.CheckAs(fn, "Efficiency.High", float64(e.High)); err != nil {
		return err
	}
	if !(e.Low <= e.High || limit.Same(e.Low, e.High)) {
		return &units.RangeError{Func: fn, Arg: "Efficiency.High", What: "efficiency, high end", Value: float64(e.High), Low: float64(e.Low), High: r.High, Unit: "%",
			Hint: "the ends are the wrong way round"}
	}
	return nil
}

// rangeOn returns the range of efficiencies on a basis.
func rangeOn(b Basis) *limit.Range {
	if b == Net {
		return &efficiencyRange
	}
	return &wholeEfficiency
}

// of returns the share of heat on a basis that gets into the sap, as a part of
// one.
func (e Efficiency) of(fn string, heat Basis) (units.Span[float64], error) {
	if heat == Delivered && e == (Efficiency{}) {
		return units.Span[float64]{Low: 1, Middle: 1, High: 1}, nil
	}
	if heat == Delivered || heat != e.Basis {
		return limit.NoSpan[float64](), &BasisError{Func: fn, Heat: heat, Efficiency: e.Basis}
	}
	if err := e.check(fn); err != nil {
		return limit.NoSpan[float64](), err
	}
	return units.Span[float64]{Low: e.Low.Fraction(), Middle: e.Middle().Fraction(), High: e.High.Fraction()}, nil
}

// airDry is the moisture of wood that was split and dried.
const airDry DryMoisture = 20

// OnNetWood returns an efficiency on the gross heat of wood as one on its net heat: as much
// of it gets into the sap from air-dry wood, of 20 percent on the dry basis.
//
// Range: efficiencies on gross heat of 1 to 100 percent; on another basis the error is a
// [*BasisError]. Uncertainty: wood of 10 or 30 percent is a percent of the answer off.
//
// Source: 8600 Btu/lb against [WoodHeat]. Check value: 100 percent become 109.9, of 7,167 and
// 6,519 Btu for a pound of it.
func OnNetWood(e Efficiency) (Efficiency, error) {
	const fn = "fuel.OnNetWood"
	none := Efficiency{Low: units.Share(math.NaN()), High: units.Share(math.NaN())}
	if e.Basis != Gross {
		return none, &BasisError{Func: fn, Heat: Gross, Efficiency: e.Basis}
	}
	if err := e.check(fn); err != nil {
		return none, err
	}
	wet := airDry.Wet()
	more := units.Share(ovenDryHeat * units.SpecificEnergy(1-wet/100) / woodHeat(wet))
	return Efficiency{Low: e.Low * more, High: e.High * more, Basis: Net}, nil
}

// HomeBuiltPan returns what a home-built flat pan over an open fire of wood
// makes of gross heat: 15 to 40 percent, from memory. Open pans of cane juice over
// a fire were measured at 15 to 29 percent, and at 25 to 50 with the air mended
// (reviewed in an abstract, read; the basis is not told there), which supports it. Between its ends
// the wood differs nearly threefold; a day's weighing narrows it ([LearnEfficiency]).
func HomeBuiltPan() Efficiency {
	return Efficiency{Low: 15 * units.Percent, High: 40 * units.Percent, Basis: Gross}
}

// BuiltEvaporator returns what built evaporators make of gross heat: 40 to 67
// percent. The low end and 60 are of Ohio State University Extension for wood;
// 65 is of the USDA Forest Service and Vermont AES for open pans, and 67 follows
// from 1.5 lb of steam for a pound of water (USDA Forest Service). The sources
// do not print the basis; the cord figures that belong to them are gross.
func BuiltEvaporator() Efficiency {
	return Efficiency{Low: 40 * units.Percent, High: 67 * units.Percent, Basis: Gross}
}

// A Firing is a past boil that was measured: the heat that got into the sap, as
// of [boil.HeatDemand.Total], and the fuel that burned, as of [Fuel.Of].
type Firing struct {
	Into   units.Energy
	Burned Heat
}

// A Learned is an efficiency learned from past boils.
type Learned struct {
	Efficiency             // holds the next boil two times of three
	Boils      int         // it was learned from
	Spread     units.Share // standard deviation from boil to boil; NaN of one
}

// String prints the efficiency with what the next boil may differ by, to the
// digit that it leaves: "44 +/- 5 % of gross heat".
func (l Learned) String() string {
	return measure.PlusMinus(float64(l.Middle()), float64(l.High-l.Low)/2, "%") + " of " + l.Basis.heat()
}

// oneDay is how far the only measured boil may mislead about the next, as a part
// of the efficiency: weighing wood by the armful and reading a tank by the inch,
// a judgment of ours and no published figure.
const oneDay = 0.2

// LearnEfficiency returns the efficiency that past boils had, all heat against
// all fuel, for the next boil. Its ends hold the next boil two times of three:
// the spread from boil to boil, wider the fewer they are. A single boil tells
// the middle, and its ends are a fifth to each side: a judgment of ours.
//
// Count the fuel of the whole boil, kindling and cold start included, and the
// heat of the sap that it boiled.
//
// Range: heats over 0, all on one basis that is not [Delivered]; at least one
// boil; a mean that is an [Efficiency]. Another basis gives a [*BasisError].
//
// Check value: three boils of 40, 44 and 48 percent of equal fuel are 44 percent
// with a spread of 4 (by arithmetic).
func LearnEfficiency(boils ...Firing) (Learned, error) {
	const fn = "fuel.LearnEfficiency"
	if len(boils) == 0 {
		return Learned{}, &units.RangeError{Func: fn, Arg: "boils", Low: 1, High: math.Inf(1),
			Hint: "nothing to learn from: take the published range of a home-built pan or of a built evaporator"}
	}
	basis := boils[0].Burned.Basis
	var into, burned float64
	for i, b := range boils {
		if b.Burned.Basis != basis || basis < Gross || basis > Net {
			return Learned{}, &BasisError{Func: fn, Heat: b.Burned.Basis, Efficiency: basis}
		}
		if err := heatRange.CheckItem(fn, "boils", i, "Into", b.Into.Joules()); err != nil {
			return Learned{}, err
		}
		if err := heatRange.CheckItem(fn, "boils", i, "Burned.Energy", b.Burned.Energy.Joules()); err != nil {
			return Learned{}, err
		}
		into += b.Into.Joules()
		burned += b.Burned.Energy.Joules()
	}
	mean := into / burned
	l := Learned{Boils: len(boils), Spread: units.Share(math.NaN())}
	apart := oneDay * mean
	if n := float64(len(boils)); n > 1 {
		var squares float64
		for _, b := range boils {
			off := b.Into.Joules()/b.Burned.Energy.Joules() - mean
			squares += b.Burned.Energy.Joules() / burned * off * off
		}
		s := math.Sqrt(squares * n / (n - 1))
		l.Spread = units.FractionShare(s)
		apart = s * numeric.Widen(len(boils)-1) * math.Sqrt(1+1/n)
	}
	// The middle stays the mean: ends that boils far apart put beyond what an
	// efficiency can be are drawn in on both sides.
	r := rangeOn(basis)
	if apart = min(apart, mean-r.Low/100, r.High/100-mean); apart < 0 {
		return Learned{}, r.CheckAs(fn, "answer", 100*mean)
	}
	l.Efficiency = Efficiency{Low: units.FractionShare(mean - apart), High: units.FractionShare(mean + apart), Basis: basis}
	return l, nil
}

var heatRange = limit.Range{Arg: "boils", What: "heat", Low: 1, High: 1e18, Unit: "J",
	Below: "a boil without fuel or without water teaches nothing: leave it out",
	Above: "check the unit of the heat"}
