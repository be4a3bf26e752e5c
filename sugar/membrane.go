package sugar

import (
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// What a membrane may be asked for.
var (
	ratedFlow    = limit.Range{Arg: "Membrane.Flow", What: "rated flow", Low: 1e-8, High: 1, Unit: "m3/s", Below: "give the permeate flow that the maker rates", Above: "check its unit"}
	sugarPassage = limit.Range{Arg: "Membrane.Passage", What: "sugar passage", Low: 0, High: 50, Unit: "%", Below: "0 is a membrane that holds all the sugar", Above: "a membrane that lets half the sugar by is torn or of the wrong kind"}
	recovery     = limit.Range{Arg: "share", What: "recovery", Low: 0.1, High: 95, Unit: "%", Below: "give the share of the feed's mass that becomes permeate in a pass", Above: "no membrane takes that much in a pass: reckon with several"}
	passCount    = limit.Range{Arg: "passes", What: "number of passes", Low: 1, High: 1000, Below: "at least one pass"}
	flowFactor   = limit.Range{Arg: "factor", What: "flow factor", Low: 1, High: 400, Unit: "%", Below: "a factor of one is 100 percent", Above: "a factor of one is 100 percent"}
	pumpPressure = limit.Range{Arg: "Membrane.Pump", What: "pump pressure", Low: 0.1, High: 150, Unit: "bar", Below: "give the pressure at the membrane over that of the permeate", Above: "beyond any pump in a sugarhouse: check its unit"}
	membraneC    = limit.Range{Arg: "at", What: "temperature", Low: 0, High: 50, Unit: "C", Below: "sap freezes in the membrane", Above: "too hot for a membrane: see its maker's limit"}
)

// A Membrane is a reverse osmosis machine.
//
// Flow is the permeate flow that its maker rates, needed by [Membrane.Time]
// alone. Pump is the pressure at the membrane over that of the permeate; with
// it set, what the pump cannot do is refused (see [Membrane.Limit]), and left
// zero it is not looked at. Passage is how strong the permeate is, as a share
// of the strength of the liquid on the other side; the zero value holds all the
// sugar, which is close to the truth for a sound membrane. Read the permeate
// with a sap hydrometer or refractometer now and then: any sugar in it is lost.
//
// Concentrate spoils faster than sap, within hours and not days (from memory):
// boil it the same day.
//
// Cites centre-acer, ohio-extension.
type Membrane struct {
	Flow    units.VolumeRate
	Pump    units.Pressure
	Passage units.Share
}

// Concentrate returns concentrate and permeate of sap run through the membrane
// until the concentrate reaches the target: in one run, or recirculated through
// the tank, which by mass is the same.
//
// Range: target 0 to 85 Brix, passage 0 to 50 percent; in practice 6 to 16
// Brix, ultra-high to 40 (Centre ACER). An argument outside its range is a
// [*units.RangeError]; a target below the feed or beyond the pump, a feed
// without sugar, or an empty one, is an [*InfeasibleError]. Both lots come at
// the temperature of the feed; the pump warms them a little.
//
// Method: mass balance. With no passage the concentrate is m B0/B1. With a
// passage of s the permeate that leaves at any moment has s times the strength
// of the liquid, so that B grows as the mass shrinks, B1/B0 = (m/m1)^(1-s).
// Check value: 1 US gal of 2 Brix to 8 gives 0.2442 US gal of concentrate at 20
// C (computed).
func (m Membrane) Concentrate(feed Lot, target units.Brix) (Separation, error) {
	const fn = "sugar.Membrane.Concentrate"
	if err := sugarPassage.Check(fn, float64(m.Passage)); err != nil {
		return Separation{}, err
	}
	if err := checkThickening(fn, "target", feed, target); err != nil {
		return Separation{}, err
	}
	there := feed.has(target) // already: it takes no pump
	ask := target
	if there {
		ask = 0
	}
	if err := m.checkPump(fn, ask, feed.at); err != nil {
		return Separation{}, err
	}
	if there {
		return Separation{Concentrate: feed}, nil
	}
	kept := math.Pow(float64(feed.Brix()/target), 1/(1-m.Passage.Fraction()))
	return m.separate(feed, kept), nil
}

// Passes returns concentrate and permeate after n passes that each turn the
// given share of the mass of what is fed into permeate.
//
// Range: recovery 0.1 to 95 percent of the mass, 1 to 1000 passes, passage 0 to
// 50 percent. Passes that would take the concentrate over 85 Brix, or an empty
// feed, are an [*InfeasibleError].
//
// Method: as for [Membrane.Concentrate]. Check value: two passes of 50 percent
// bring 2 Brix to 8 (computed).
func (m Membrane) Passes(feed Lot, share units.Share, passes int) (Separation, error) {
	const fn = "sugar.Membrane.Passes"
	if err := sugarPassage.Check(fn, float64(m.Passage)); err != nil {
		return Separation{}, err
	}
	if err := recovery.Check(fn, float64(share)); err != nil {
		return Separation{}, err
	}
	if err := passCount.Check(fn, float64(passes)); err != nil {
		return Separation{}, err
	}
	if feed.Empty() {
		return Separation{}, nothing(fn)
	}
	kept := math.Pow(1-share.Fraction(), float64(passes))
	b := feed.Brix() * units.Brix(math.Pow(kept, m.Passage.Fraction()-1))
	if !limit.Holds(b, thinnest, strongest) { // NaN where nothing is left of plain water
		return Separation{}, &InfeasibleError{Func: fn, Why: "hardly anything is left, or more than 85 Brix", Hint: "take fewer passes, or less in each"}
	}
	if err := m.checkPump(fn, b, feed.at); err != nil {
		return Separation{}, err
	}
	return m.separate(feed, kept), nil
}

// checkPump returns an error if the pump is set and cannot press water out of
// concentrate of strength b.
func (m Membrane) checkPump(fn string, b units.Brix, t units.Temperature) error {
	if m.Pump == 0 {
		return nil
	}
	most, err := m.limit(fn, "feed", t)
	if err != nil {
		return err
	}
	if b > most && !limit.Same(b, most) {
		return &InfeasibleError{Func: fn,
			Why:  fmt.Sprintf("the osmotic pressure of %.3g Brix is more than the pump's; it stands still at %.3g Brix", float64(b), float64(most)),
			Hint: "stop below that and boil the rest, or find a stronger pump"}
	}
	return nil
}

// separate keeps the given share of the mass of the feed, unchecked.
func (m Membrane) separate(feed Lot, kept float64) Separation {
	mass := units.Mass(kept * float64(feed.mass))
	sugar := units.Mass(float64(feed.sugar) * math.Pow(kept, m.Passage.Fraction()))
	return Separation{
		Concentrate: parts(mass, sugar, feed.at),
		Removed:     parts(feed.mass-mass, feed.sugar-sugar, feed.at),
	}
}

// Time returns how long the membrane takes to make a volume of permeate.
//
// Arguments: the permeate, from [Membrane.Concentrate]; the flow on the day as a
// share of the rated one: from [FlowFactor] for the temperature of the sap, from
// the maker's table, or from one's own stopwatch. The rating is for thin sap and
// the maker's temperature, 55 F as a rule (Ohio State University Extension):
// as the concentrate's osmotic pressure comes near the pump's the flow falls
// further, and fouling takes its part, so that the answer is the least time.
//
// Range: flow 1e-8 to 1 m3/s (0.01 to 951,000 US gal/h), permeate 0 to 1e6 m3,
// factor 1 to 400 percent. Check value: 75 US gal at 50 US gal/h and 75 percent
// take 2 h.
func (m Membrane) Time(permeate units.Volume, factor units.Share) (time.Duration, error) {
	const fn = "sugar.Membrane.Time"
	if err := ratedFlow.Check(fn, float64(m.Flow)); err != nil {
		return 0, err
	}
	if err := lotVolume.CheckAs(fn, "permeate", float64(permeate)); err != nil {
		return 0, err
	}
	if err := flowFactor.Check(fn, float64(factor)); err != nil {
		return 0, err
	}
	return (m.Flow * units.VolumeRate(factor.Fraction())).Time(permeate), nil
}

// Limit returns the strength at which the osmotic pressure of the concentrate
// equals that of the pump: how far the machine can go at all. The flow has
// fallen to nothing there, so that the useful end lies well below.
//
// Arguments: the temperature of the sap. Range: Pump 0.1 to 150 bar, 0 to 50 C.
// Uncertainty: that of [OsmoticPressure].
//
// Method: [BrixFromOsmoticPressure]. Check value: a pump of 18.9 bar stops at
// 20 Brix at 55 F (computed).
func (m Membrane) Limit(at units.Temperature) (units.Brix, error) {
	return m.limit("sugar.Membrane.Limit", "at", at)
}

func (m Membrane) limit(fn, arg string, t units.Temperature) (units.Brix, error) {
	none := units.Brix(math.NaN())
	if err := pumpPressure.Check(fn, m.Pump.Bars()); err != nil {
		return none, err
	}
	if err := membraneC.CheckAs(fn, arg, t.Celsius()); err != nil {
		return none, err
	}
	b, err := BrixFromOsmoticPressure(m.Pump, t)
	if err != nil {
		return none, units.UnderArg(fn, "Membrane.Pump", err)
	}
	return b, nil
}
