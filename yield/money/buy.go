package money

import (
	"math"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/shelf"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// Limits of an offer and of what is delivered.
const (
	brixPlaces      = 2    // a slip's Brix counts to the hundredth
	minPriceBrix    = 0.01 // and so does the step of a table
	factorPlaces    = 9    // pounds of syrup in a gallon of sap, from the densities
	maxOfferedSyrup = 70.0 // Brix
)

var (
	one          = decimal.NewFromInt(1)
	maxMoney     = decimal.New(1, 9)
	minStep      = decimal.New(1, -9)
	minPoundsGal = decimal.NewFromInt(8)
	maxPoundsGal = decimal.NewFromInt(15)
	maxGallons   = decimal.New(1, 7)
)

// An Offer says how a buyer pays for sap: by its sugar, as a share of what the
// syrup in it is worth.
//
//	price of a gallon of sap = Share * SyrupPerPound * pounds of syrup in it
//
// The pounds of syrup come from a rule of thumb or from the exact balance:
//
//   - By rule: Rule is set and PoundsPerUSGallon is the weight of a US gallon of
//     syrup that goes with it, 11 lb by custom; Syrup is left zero. The pounds
//     are PoundsPerUSGallon/(86/X).
//   - Exact: Rule and PoundsPerUSGallon are left zero and Syrup is the strength
//     that the price is for. The pounds are those of the sugar's balance at 20
//     C, as a scale in air shows them.
//
// # Rounding
//
// The Brix of a delivery is rounded to a hundredth before anything is asked of
// it. A price is rounded to a multiple of PriceStep; a payment, gallons times
// that rounded price, to a multiple of Cent. Halves are rounded up.
//
// The zero Offer is refused: steps are part of the bargain and not a default.
//
// Cites farming-magazine.
type Offer struct {
	SyrupPerPound     decimal.Decimal // price of a pound of syrup, to 1e9
	Share             decimal.Decimal // part of it that is paid for the sap, 0 to 1
	Rule              yield.Rule      // rule of thumb; zero for the exact balance
	PoundsPerUSGallon decimal.Decimal // of syrup, with Rule only: 8 to 15
	Syrup             units.Brix      // with the exact balance only: the syrup priced, 60 to 70 Brix
	MinBrix           units.Brix      // thinner sap is not bought; zero for no limit
	PriceStep         decimal.Decimal // prices are multiples of it, such as 0.0001
	Cent              decimal.Decimal // payments are multiples of it, such as 0.01
}

// A Price is what sap of one strength is worth.
type Price struct {
	Sap             units.Brix
	PerUSGallon     decimal.Decimal // rounded to PriceStep
	PerPoundOfSugar decimal.Decimal // rounded to PriceStep
}

const offerHint = "it is part of the bargain"

// check holds the offer to its documented limits.
func (o *Offer) check(fn string) error {
	for _, f := range []struct {
		arg, what string
		d         decimal.Decimal
		low, high decimal.Decimal
	}{
		{"Offer.SyrupPerPound", "price of a pound of syrup", o.SyrupPerPound, decimal.Zero, maxMoney},
		{"Offer.Share", "share", o.Share, decimal.Zero, one},
		{"Offer.PriceStep", "step of prices", o.PriceStep, minStep, maxMoney},
		{"Offer.Cent", "step of payments", o.Cent, minStep, maxMoney},
	} {
		if err := exactly(fn, f.arg, f.what, f.d, f.low, f.high, offerHint); err != nil {
			return err
		}
	}
	if err := limit.InAs(fn, "Offer.MinBrix", "least strength bought", float64(o.MinBrix), 0, maxRuleBrix, "Brix", "zero for no limit"); err != nil {
		return err
	}
	if o.Rule == 0 {
		if err := limit.InAs(fn, "Offer.Syrup", "strength of the syrup", float64(o.Syrup), minSyrupBrix, maxOfferedSyrup, "Brix", "the syrup that the price is for, such as 66.9; or name a rule of thumb"); err != nil {
			return err
		}
		return exactly(fn, "Offer.PoundsPerUSGallon", "pounds of syrup in a US gallon", o.PoundsPerUSGallon, decimal.Zero, decimal.Zero, "the exact balance knows the weight of a gallon: leave it zero")
	}
	if _, err := o.Rule.Ratio(minRuleBrix); err != nil {
		return units.UnderArg(fn, "Offer.Rule", err)
	}
	if err := limit.InAs(fn, "Offer.Syrup", "strength of the syrup", float64(o.Syrup), 0, 0, "Brix", "the rule names its syrup: leave it zero"); err != nil {
		return err
	}
	return exactly(fn, "Offer.PoundsPerUSGallon", "pounds of syrup in a US gallon", o.PoundsPerUSGallon, minPoundsGal, maxPoundsGal, "11 lb by custom")
}

// PerUSGallon returns the price of a US gallon of sap, rounded to PriceStep.
//
// Range: sap from 0.5 to 30 Brix and not below MinBrix; the offer within the
// limits of its fields. Uncertainty: that of the reading, 5 percent for 0.1
// Brix at 2 Brix; sap metered at 40 F holds 0.17 percent more sugar than the
// exact balance says at 20 C.
//
// Source: Farming Magazine, Boiling it down: share times price per pound times
// 11 lb over 86/X. Check value: 2.50 per pound, 2 Brix and half share give 0.32
// (0.3198).
func (o Offer) PerUSGallon(sap units.Brix) (decimal.Decimal, error) {
	p, err := o.price("money.Offer.PerUSGallon", "sap", sap)
	return p.PerUSGallon, err
}

// PerPoundOfSugar returns the price of a pound of the sugar in sap, rounded to
// PriceStep. A pound is what a scale in air shows when the sugar is weighed as
// part of the syrup. By the exact balance it is the same for every sap; a rule
// of thumb pays thin sap and thick differently.
//
// Range and errors: those of [Offer.PerUSGallon]. Check value: at 2.50 per pound
// of 66.9 Brix syrup and half share, 1.25/0.669 = 1.8685 by the exact balance.
func (o Offer) PerPoundOfSugar(sap units.Brix) (decimal.Decimal, error) {
	p, err := o.price("money.Offer.PerPoundOfSugar", "sap", sap)
	return p.PerPoundOfSugar, err
}

// price returns both prices of sap that the offer buys.
func (o Offer) price(fn, arg string, sap units.Brix) (Price, error) {
	if err := o.check(fn); err != nil {
		return Price{}, err
	}
	sap = onSlip(sap)
	if err := limit.In(fn, arg, float64(sap), float64(o.least()), maxRuleBrix, "Brix", "the offer does not buy thinner sap; a concentrate stronger than 30 Brix is not sap"); err != nil {
		return Price{}, err
	}
	return o.quote(fn, sap)
}

// least returns the thinnest sap that the offer buys.
func (o *Offer) least() units.Brix { return max(minRuleBrix, o.MinBrix) }

// onSlip rounds a reading to a hundredth, halves away from zero. NaN and
// infinity stay.
func onSlip(sap units.Brix) units.Brix {
	if n, ok := slip(sap); ok {
		return units.Brix(n) / 100
	}
	if x := float64(sap); math.IsNaN(x) || math.IsInf(x, 0) {
		return sap
	}
	return units.Brix(toDecimal(float64(sap), brixPlaces).InexactFloat64())
}

// quote prices sap, as on the slip, that the offer buys.
func (o *Offer) quote(fn string, sap units.Brix) (Price, error) {
	x := toDecimal(float64(sap), brixPlaces)
	syrup := o.Syrup
	if o.Rule != 0 {
		syrup = o.Rule.Syrup()
	}
	pounds, err := syrupPounds(fn, sap, syrup)
	if err != nil {
		return Price{}, err
	}
	exact := toDecimal(pounds, factorPlaces)
	sugar := exact.Mul(toDecimal(syrup.Fraction(), factorPlaces))

	// The price of a gallon is worth/per; 11/(86/X - less) is 11 X/(86 - less X).
	worth, per := o.Share.Mul(o.SyrupPerPound).Mul(exact), one
	if o.Rule != 0 {
		over, less := o.Rule.Constants()
		worth = o.Share.Mul(o.SyrupPerPound).Mul(o.PoundsPerUSGallon).Mul(x)
		per = decimal.NewFromFloat(over).Sub(decimal.NewFromFloat(less).Mul(x))
	}
	return Price{
		Sap:             sap,
		PerUSGallon:     toStep(worth, per, o.PriceStep),
		PerPoundOfSugar: toStep(worth, per.Mul(sugar), o.PriceStep),
	}, nil
}

// syrupPounds returns the pounds, on a scale in air, of the syrup in a US gallon
// of sap at 20 C.
func syrupPounds(fn string, sap, syrup units.Brix) (float64, error) {
	in, err := shelf.Sugar(fn, sap)
	if err != nil {
		return math.NaN(), err
	}
	rho, err := density.Solution(syrup, shelf.Temperature())
	if err != nil {
		return math.NaN(), units.Under(fn, err)
	}
	out := float64(rho) * syrup.Fraction()
	return in / out * density.InAir(rho).PoundsPerUSGallon(), nil
}

// Prices appends to dst the prices of sap from one strength to another, both
// included, step by step, and returns the result: a table to post on the tank.
//
// Range: strengths as in [Offer.PerUSGallon], to not below from, step from 0.01
// to 30 Brix. An error returns dst as it was.
func (o Offer) Prices(dst []Price, from, to, step units.Brix) ([]Price, error) {
	const fn = "money.Offer.Prices"
	if err := limit.In(fn, "step", float64(step), minPriceBrix, maxRuleBrix, "Brix", "0.1 suits a hydrometer"); err != nil {
		return dst, err
	}
	if _, err := o.price(fn, "from", from); err != nil {
		return dst, err
	}
	if err := limit.In(fn, "to", float64(to), float64(from), maxRuleBrix, "Brix", "the strongest sap of the table"); err != nil {
		return dst, err
	}
	// A step that rounding left a hair short still counts.
	last := int(math.Floor(float64((to-from)/step) + 1e-6))
	table := dst
	for i := range last + 1 {
		p, err := o.quote(fn, onSlip(from+units.Brix(i)*step))
		if err != nil {
			return dst, err
		}
		table = append(table, p)
	}
	return table, nil
}
