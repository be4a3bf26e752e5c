package pan

import (
	"errors"
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/numeric"
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

// ErrOffBoil is that of [Rig.Steady] and [Rig.HeatFor]: a compartment gets less
// heat than takes its feed to the boil, and there is no steady state. It comes
// with a [*units.RangeError].
var ErrOffBoil = errors.New("a compartment is off the boil")

// What a steady state may be asked for.
var (
	steadySap = limit.Range{Arg: "Sap.Brix", What: "sugar content of the sap", Low: 0.1, High: drawAt.High, Unit: "Brix",
		Below: "without sugar no syrup is drawn"}
	steadyRate = limit.Range{Arg: "water", What: "evaporation", Low: 1e-9, High: 1e6, Unit: "kg/s",
		Below: "check the unit of the evaporation"}
)

// Steady returns the steady state of the rig on a sap. Only the sugar content
// and the temperature of the sap count, and only At of the draw, which must be
// above the sap.
//
// Range: sap of 0.1 to 74 Brix and less than At, 0 to 100 C; 50 to 110 kPa.
// A rig with a compartment off the boil has no such state: [ErrOffBoil].
//
// Method: the balances of [Rig] without change in time, from the draw-off up.
// Check value: 33 kg of 2 Brix sap for each of syrup of 66 Brix, by the sugar.
func (r Rig) Steady(sap Sap, pressure units.Pressure) (Steady, error) {
	const fn = "pan.Rig.Steady"
	if err := r.check(fn, false); err != nil {
		return Steady{}, err
	}
	return r.steady(fn, sap, pressure)
}

// HeatFor returns the heat with which the rig boils off so much water in the
// steady state of [Rig.Steady]: what reaches the liquid if the rig was measured
// at that rate. The Heat of the rig is passed over.
//
// Range: as there, and 1e-9 to 1e6 kg/s. Check value: the Heat of a rig, for
// the Evaporation of its Steady.
func (r Rig) HeatFor(water units.MassRate, sap Sap, pressure units.Pressure) (units.Power, error) {
	const fn = "pan.Rig.HeatFor"
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
	s, err := r.steady(fn, sap, pressure)
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
	if err := sap.check(fn, "Sap", -1); err != nil {
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
	h, err := newHot(fn, "pressure", p)
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
			return Steady{}, &limit.Outcome{RangeError: &units.RangeError{Func: fn, Arg: "answer", What: "evaporation of a compartment", Value: off, Low: 0, High: math.Inf(1), Unit: "kg/s",
				Hint: "its share of the fire does not bring its feed to the boil: give it more, or simulate the day"}, Err: ErrOffBoil}
		}
		s.Outflow[i] = units.MassRate(m.flow[i+1])
		s.Brix[i] = units.Brix(100 * m.flow[n] * m.at / m.flow[i+1])
	}
	return s, nil
}
