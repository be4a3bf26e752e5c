package main

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// watched is as long as anybody stays with a pan after the last wood: common
// practice, generously.
const watched = 3 * time.Hour

// coldArch tells what no clock of the page holds.
const coldArch = "The clock starts with a hot arch: the time and the wood that warm cold brick, iron and pan are left out. Light the fire so much earlier, and never over an empty pan."

// damp is what to do about coals that give too much: common practice.
const damp = "To hold the coals down shut the ash door, but leave the flue damper open, since a shut one sends carbon monoxide into the room, and stay with the pan. Live coals are never raked out."

// coalsWater is what boils off after the last wood: the heat of the full fire times
// half-life over ln 2, over the latent heat of water, which is the least that a
// kilogram takes.
func (p *plan) coalsWater(s *setup) (units.Mass, error) {
	power, err := p.power(s)
	if err != nil {
		return 0, err
	}
	latent, err := boil.LatentHeat(p.waterBoils)
	return (power.Over(s.coals) / math.Ln2).Divide(latent), err
}

// power is what gets into the pan, whose rate is told while cold sap is added.
func (p *plan) power(s *setup) (units.Power, error) {
	demand, err := boil.Heat(p.sap, s.target, p.pressure)
	if err != nil {
		return 0, err
	}
	return s.pan.Power(demand)
}

// needed is the depth that keeps the pan, or the compartment at the sap's end, above the
// safe depth whatever its coals boil off.
func (p page) needed() units.Length {
	area := p.given.pan.Area
	if p.run != nil {
		area = p.run.first
	}
	return p.given.safe + units.Length(float64(p.coals)/hotWater/float64(area))
}

// deep words a depth that is needed, rounded up to a quarter of an inch, or to half a
// centimeter.
func (p page) deep(l units.Length) string {
	unit, parts, name := units.Inch, 4.0, " in"
	if p.given.metric {
		unit, parts, name = units.Centimeter, 2, " cm"
	}
	return strconv.FormatFloat(math.Ceil(float64(l/unit)*parts*(1-1e-9))/parts, 'g', -1, 64) + name
}

// atLeast words a mass that is needed, with two digits rounded up.
func (p page) atLeast(m units.Mass) string {
	unit, name := units.Pound, " lb"
	if p.given.metric {
		unit, name = units.Kilogram, " kg"
	}
	x := float64(m / unit)
	step := math.Pow(10, math.Floor(math.Log10(x))-1)
	return strconv.FormatFloat(math.Round(math.Ceil(x/step)*step*1e6)/1e6, 'f', -1, 64) + name
}

// runsAway reports whether the coals alone do more than there is to boil: no such fire is
// lit.
func (p *plan) runsAway() bool { return p.overrun || p.run != nil && p.run.ToCome > 0 }

// lastWoodRows tells the two clocks of a simulated day over wood.
func (p page) lastWoodRows(part *cli.Part) {
	o := &p.run.Outcome
	if !p.run.wooded || o.ToCome > 0 {
		return
	}
	part.Row("last_wood", "Last wood on the fire", cli.Clock(p.start, p.start.Add(o.LastWood)), "no. 1 must then stand "+p.deep(p.run.depth)+" deep",
		cli.When(p.run.tank > 0, p.atLeast(p.run.tank)+" of sap still to go in"))
	part.Row("done", "The coals have done by", cli.Clock(p.start, p.start.Add(o.Ended)), "stay until then and look at no. 1: as it nears the safe depth pour in sap or water")
	part.Remark(damp)
}

// coalsOverrun says first what the coals do whenever the wood stops.
func (p page) coalsOverrun(part *cli.Part) {
	o := &p.run.Outcome
	if p.given.coals > 0 && slices.ContainsFunc(p.run.stops, func(s stop) bool { return s.what == pan.EventBanked.String() }) {
		part.Remark(fmt.Sprintf("The coals of a banked fire still boil off %s, which the timeline leaves out: put on the last wood before that while no. 1 stands %s deep, or pour in sap or water before it is low.", p.atLeast(p.coals), p.deep(p.needed())))
	}
	if !(o.ToCome > 0) {
		return
	}
	what := "take no. 1 below its safe depth of " + p.In(cli.Length(p.given.safe))
	if o.End == pan.EventFinished {
		what = "take it past the target"
	}
	part.Remark(fmt.Sprintf("DO NOT LIGHT THIS FIRE as it is: its coals alone boil off %s and %s at %s, even if no more wood goes on after the first. Without sap to pour in, no. 1 would have to stand %s deep at the last stick. Gather more sap or boil it in a pot, and if the fire burns already pour in sap, or water, before the level is low. %s",
		p.atLeast(p.coals), what, p.start.Add(o.Ended).Format("15:04"), p.deep(p.needed()), damp))
}

// hotWater is the least that a cubic meter of boiling sap weighs, in kg.
const hotWater = 955.0

// coalsEnd finds the last wood of a single pan, with the water that the coals boil off
// behind it, and the time at which they have done so within 0.1 Brix.
func (p *plan) coalsEnd(s *setup, at, end finish.Batch) error {
	p.lastWood = p.done
	if s.coals == 0 {
		return nil
	}
	rate := at.Evaporation
	p.lastWood = p.done - rate.Time(p.coals)
	last := units.Brix(100 * float64(end.Brix.Sugar(end.Mass)/(end.Mass+p.coals)))
	if left := p.coals - (at.Mass - end.Mass); left > 0 {
		// The sap that is left goes in as the coals make room for it.
		p.sapThen, p.stopAt = left, 0
		p.lastSap = max(p.lastWood, 0) + time.Duration(math.Log2(float64(p.coals/(p.coals-left)))*float64(s.coals))
	} else {
		p.stopAt = last
	}
	p.overrun = p.lastWood < p.heating
	take, err := finish.CoalsTime(max(last, 0.1), end.Brix, s.coals) // no fire is lit over more coals
	p.done = max(p.lastWood, 0) + take
	return cli.For("coals", err)
}

// cold is the volume of a liquid at the temperature of a label.
func cold(l pan.Liquid) units.Volume {
	v, err := l.VolumeAt(label)
	if err != nil {
		return 0
	}
	return v
}

// drawTable tells when the valve opens and what comes of it.
func (p page) drawTable(part *cli.Part) {
	if len(p.run.Draws) == 0 {
		return
	}
	unit, head := units.USQuart, "qt"
	key := "volume_us_qt"
	if p.given.metric {
		unit, head, key = units.Liter, "L", "volume_l"
	}
	var rows [][]cli.Value
	var all units.Volume
	told := 0.0 // of all, as the rows before tell it
	for i, d := range p.run.Draws {
		v := cold(d.Liquid)
		all += v
		if i < most {
			total := math.Round(float64(all/unit)*10) / 10
			rows = append(rows, []cli.Value{cli.Clock(p.start, p.start.Add(d.From)), cli.Clock(p.start, p.start.Add(d.To)),
				cli.Shown(float64(v/unit), total-told, 1), cli.Number(float64(d.Brix()), 1, ""), cli.Number(float64(all/unit), 1, "")})
			told = total
		}
	}
	part.Table("draws", []cli.Column{{Key: "opens", Head: "valve opens"}, {Key: "shuts", Head: "shuts"}, {Key: key, Head: head}, {Key: "brix", Head: "mean Brix"}, {Key: "total", Head: "total " + head}}, rows)
	part.If(p.run.thin()).Remark("A draw of less than " + sugar.KeepsFrom.Text(0) + " in the mean may not be sold as syrup and ferments: shut the valve earlier, or finish what was drawn in a pot.")
}

// thin reports whether a draw is too thin to keep.
func (r *run) thin() bool {
	return slices.ContainsFunc(r.Draws, func(d pan.Drawn) bool { return d.Brix() < sugar.KeepsFrom })
}
