package boil

import (
	"math"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/limit"
	"example.org/sapreckoner/internal/numeric"
	"example.org/sapreckoner/units"
)

// Steady is what a rig comes to after hours of one sap, with a float feed and a
// thin stream drawn: see [Rig.Steady]. Sugar flows at one rate S through every
// compartment, so that each holds S over what flows out of it.
type Steady struct {
	Feed        units.MassRate // sap
	Syrup       units.MassRate // drawn
	Evaporation units.MassRate // water, from all compartments
	Brix        []units.Brix   // in each compartment
	Outflow     []units.MassRate
}

// What a steady state may be asked for.
var (
	steadySap = limit.Range{Arg: "sugar content of the sap", Low: 0.1, High: drawAt.High, Unit: "Brix",
		Below: "without sugar no syrup is drawn"}
	steadyRate = limit.Range{Arg: "evaporation", Low: 1e-9, High: 1e6, Unit: "kg/s",
		Below: "check the unit of the evaporation"}
)

// Steady returns the steady state of the rig on a sap, under pressure p. Of the
// sap only its sugar content and temperature count; of the draw only At, which
// must be above the sap.
//
// Range: sap of 0.1 to 74 Brix and less than At, 0 to 100 C; 50 to 110 kPa. If a
// compartment would be off the boil there is no such state. Outside the range
// the answer is zero and a [units.RangeError].
//
// Method: the balances of [Rig] without change in time, from the draw-off up.
func (r Rig) Steady(sap Sap, p units.Pressure) (Steady, error) {
	const fn = "boil.Rig.Steady"
	if err := r.check(fn, false); err != nil {
		return Steady{}, err
	}
	return r.steady(fn, sap, p)
}

// HeatFor returns the heat with which the rig boils off so much water in the
// steady state of [Rig.Steady]: what reaches the liquid if the rig was measured
// at that rate. Whatever Heat the rig has is passed over.
//
// Range: as there, and 1e-9 to 1e6 kg/s. Outside the range the answer is NaN
// and a [units.RangeError].
func (r Rig) HeatFor(water units.MassRate, sap Sap, p units.Pressure) (units.Power, error) {
	const fn = "boil.Rig.HeatFor"
	nan := units.Power(math.NaN())
	if err := steadyRate.Check(fn, float64(water)); err != nil {
		return nan, err
	}
	// All flows go with the heat. Any heat will do that is not too much for the
	// least compartment.
	r.Heat = units.Power(rigHeat.Low)
	if err := r.check(fn, false); err != nil {
		return nan, err
	}
	s, err := r.steady(fn, sap, p)
	if err != nil {
		return nan, err
	}
	r.Heat *= units.Power(water / s.Evaporation)
	if err := r.check(fn, false); err != nil {
		return nan, err
	}
	return r.Heat, nil
}

func (r *Rig) steady(fn string, sap Sap, p units.Pressure) (Steady, error) {
	if err := sap.check(fn); err != nil {
		return Steady{}, err
	}
	if err := drawAt.Check(fn, float64(r.Draw.At)); err != nil {
		return Steady{}, err
	}
	thin := steadySap
	thin.High = float64(r.Draw.At) - leastGap
	thin.Above = "the sap is as thick as the syrup to be drawn"
	if err := thin.Check(fn, float64(sap.Brix)); err != nil {
		return Steady{}, err
	}
	h, err := newHot(fn, p)
	if err != nil {
		return Steady{}, err
	}
	feed, err := newFeed(h, sap.Brix.Fraction(), sap.Temperature.Celsius(), r.PreheatTo.Celsius())
	if err != nil {
		return Steady{}, units.Under(fn, err)
	}
	m := march{hot: h, q: r.fire(), feed: feed, at: r.Draw.At.Fraction(), flow: make([]float64, len(r.Compartments)+1)}
	// The sap's strength follows from the draw. Were all heat to evaporate at
	// the least latent heat, the draw would be this.
	most := feed.w / (m.at - feed.w) * float64(r.Heat) / h.at(m.at).latent * (1 + 1e-9)
	draw, ok := numeric.Root(func(draw float64) float64 { return m.up(draw) - feed.w }, 0, most, 0)
	if !ok {
		draw = math.NaN()
	}
	m.up(draw)
	return m.answer(fn)
}

// march goes up a rig from the draw-off.
type march struct {
	hot  *hot
	q    []float64
	feed stream
	at   float64
	flow []float64 // into each compartment; the last is the draw
}

// up finds the flows that belong to a draw and returns the strength of the feed.
func (m *march) up(draw float64) float64 {
	n := len(m.q)
	sugar := draw * m.at
	b := m.at
	m.flow[n] = draw
	for i := n - 1; i >= 0; i-- {
		l := m.hot.at(b)
		from := m.feed
		in := m.flow[i+1] + m.q[i]/l.latent
		// What flows in has to be warmed by a little, which depends on its strength:
		// each round takes that dependence down by a factor of twenty or more.
		for range 20 {
			if i > 0 {
				w := sugar / in
				before := m.hot.at(w)
				from = stream{w: w, point: before.point, heat: before.heat}
			}
			next := (m.flow[i+1] + m.q[i]/l.latent) / (1 + from.warm(l.point)/l.latent)
			done := math.Abs(next-in) <= 1e-15*in
			in = next
			if done {
				break
			}
		}
		m.flow[i] = in
		b = sugar / in
	}
	return b
}

func (m *march) answer(fn string) (Steady, error) {
	n := len(m.q)
	s := Steady{
		Feed:        units.MassRate(m.flow[0]),
		Syrup:       units.MassRate(m.flow[n]),
		Evaporation: units.MassRate(m.flow[0] - m.flow[n]),
		Brix:        make([]units.Brix, n),
		Outflow:     make([]units.MassRate, n),
	}
	for i := range n {
		if off := m.flow[i] - m.flow[i+1]; !(off >= 0) {
			return Steady{}, &units.RangeError{Func: fn, Arg: "evaporation of a compartment", Value: off, Low: 0, High: math.Inf(1), Unit: "kg/s",
				Hint: "its share of the fire does not bring its feed to the boil: give it more, or simulate the day"}
		}
		s.Outflow[i] = units.MassRate(m.flow[i+1])
		s.Brix[i] = units.Brix(100 * m.flow[n] * m.at / m.flow[i+1])
	}
	return s, nil
}

// What plug flow may be asked for.
var (
	plugSap = limit.Range{Arg: "sugar content of the sap", Low: 0.1, High: 92, Unit: "Brix",
		Below: "without sugar nothing gets thicker"}
	plugWay  = limit.Range{Arg: "share of the way", Low: 0, High: 100, Unit: "%"}
	plugDeep = limit.Range{Arg: "depth", Low: 0, High: rigDepth.High, Unit: "m",
		Below: "a depth cannot be negative"}
	plugFlux = limit.Range{Arg: "evaporation", Low: 1e-9, High: 1, Unit: "m/s",
		Below: "without evaporation nothing moves on",
		Above: "check the unit of the evaporation"}
)

// PlugFlow returns the strength in a pan so long and narrow that nothing mixes
// along it, where so large a share of the way, as the water evaporates, is done.
// It is what a partitioned pan comes to with many compartments, and what a few
// well-mixed ones hold at their outlets if way is the share of the evaporation
// up to there.
//
// Range: sap from 0.1 Brix, syrup up to 92 and thicker, 0 to 100 percent.
// Outside the range the answer is NaN and a [units.RangeError].
//
// Source: mass balance, B = B0/(1 - f (1 - B0/Bs)). Check value: 18.5 Brix at 92
// percent of the way from 2 to 66 (computed).
func PlugFlow(sap, syrup units.Brix, way units.Share) (units.Brix, error) {
	const fn = "boil.PlugFlow"
	if err := checkPlug(fn, sap, syrup); err != nil {
		return units.Brix(math.NaN()), err
	}
	if err := plugWay.Check(fn, float64(way)); err != nil {
		return units.Brix(math.NaN()), err
	}
	return sap / (1 - units.Brix(way.Fraction())*(1-sap/syrup)), nil
}

func checkPlug(fn string, sap, syrup units.Brix) error {
	if err := plugSap.Check(fn, float64(sap)); err != nil {
		return err
	}
	thick := limit.Range{Arg: "sugar content of the syrup", Low: float64(sap), High: plugSap.High, Unit: "Brix",
		Below: "syrup is thicker than its sap"}
	return thick.Check(fn, float64(syrup))
}

// Transit returns how long liquid takes through a plug-flow pan of an even
// depth, where so much water evaporates from every part of it: how old syrup is
// when it comes off. A well-mixed rig takes about as long on the average, but
// holds some of the oldest liquid back.
//
// The depth is that of the hot liquid. The evaporation is a volume of water at
// 60 F.
//
// Range: sap from 0.1 Brix, syrup to 75 Brix and thicker, depths to 10 m, 50 to
// 110 kPa. Uncertainty: foam holds less than its depth of liquid. Outside the
// range the answer is zero and a [units.RangeError].
//
// Source: mass balance, t = (h/e) times the integral of rho/rho60 over the
// logarithm of B. Check value: 135.5 minutes for 2 inches from 2 to 66 Brix at 2
// US gal/ft2/h and 1 atm (computed).
func Transit(sap, syrup units.Brix, depth units.Length, evaporation units.Flux, p units.Pressure) (time.Duration, error) {
	const fn = "boil.Transit"
	if err := checkPlug(fn, sap, syrup); err != nil {
		return 0, err
	}
	if err := sapBrix.Check(fn, float64(syrup)); err != nil {
		return 0, err
	}
	if err := plugDeep.Check(fn, float64(depth)); err != nil {
		return 0, err
	}
	if err := plugFlux.Check(fn, float64(evaporation)); err != nil {
		return 0, err
	}
	h, err := newHot(fn, p)
	if err != nil {
		return 0, err
	}
	water, err := density.Water(units.Fahrenheit(60))
	if err != nil {
		return 0, units.Under(fn, err)
	}
	// Gauss's rule of five points on each of a few stretches of ln B.
	const stretches = 8
	span := math.Log(float64(syrup/sap)) / stretches
	sum := 0.0
	for i := range stretches {
		for k, x := range gaussPoints {
			b := sap.Fraction() * math.Exp(span*(float64(i)+(1+x)/2))
			sum += gaussWeights[k] / 2 * span / h.at(b).volume
		}
	}
	return units.VolumeRate(evaporation).Time(units.Volume(float64(depth) * sum / float64(water))), nil
}

// Gauss-Legendre quadrature on -1 to 1.
var (
	gaussPoints  = [5]float64{-0.9061798459386640, -0.5384693101056831, 0, 0.5384693101056831, 0.9061798459386640}
	gaussWeights = [5]float64{0.2369268850561891, 0.4786286704993665, 128.0 / 225, 0.4786286704993665, 0.2369268850561891}
)
