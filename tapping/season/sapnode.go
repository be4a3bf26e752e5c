package season

import (
	"math"

	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/units"
)

// A sapNode is one guess at how skewed the sap of days is and what part of a
// running day another day counts, with what is then known of the level. Given
// the shape of a sum of days, the sap over its scale has a gamma distribution;
// one over the scale is known as a gamma distribution too, of the shape a and the
// rate b. So the sap s of days to come has s/(s+b) by the beta distribution, and
// sap that was seen adds its shape to a and its amount to b (conjugate prior of
// the gamma distribution: common practice of statistics).
type sapNode struct {
	shape, other float64
	a, b         float64 // of one over the scale; b in L
	log          float64 // of the weight, but for a constant
}

// What is known before a gathering.
const (
	// skewOfRuns and skewOfAll are the shapes that make the best fifth of days give
	// 74 percent of the sap, if the source counts days that ran, and if it counts all
	// days of a season of which 30 in 84 run (computed; a test integrates the
	// distribution). The abstract does not tell which: they are taken as 8 in 10.
	skewOfRuns, skewOfAll = 0.325, 4.28
	eightInTen            = 1.2816 // half-width of 8 in 10 of the normal distribution, in standard deviations
	// seasonsDiffer is the relative variance of a season's level that two years of
	// the same trees show: ln(22.1/15.6)^2/2 (computed).
	seasonsDiffer = 0.0607
	// leastSap is what nobody tells from nothing, in L: 0.005 US gal.
	leastSap = 0.0189
)

// The guesses. A day that does not meet the criterion counts up to two fifths of
// one that does.
var (
	shapes = func() (all [14]float64) {
		for i := range all { // 0.1 to 12
			all[i] = 0.1 * math.Pow(120, float64(i)/float64(len(all)-1))
		}
		return all
	}()
	otherDays = [...]float64{0, 0.05, 0.15, 0.4}
)

// priorNodes is what the published band and skew say.
func priorNodes(m SapModel) []sapNode {
	season := m.Season()
	low, high := season.Low.Liters()/m.flowDays, season.High.Liters()/m.flowDays
	a := known(math.Pow(math.Log(high/low)/(2*eightInTen), 2))
	nodes := make([]sapNode, 0, len(shapes)*len(otherDays))
	for _, k := range shapes {
		z := 2 * eightInTen * math.Log(k/math.Sqrt(skewOfRuns*skewOfAll)) / math.Log(skewOfAll/skewOfRuns)
		for _, other := range otherDays {
			nodes = append(nodes, sapNode{k, other, a, math.Sqrt(low*high) / k * middle(a), -z * z / 2})
		}
	}
	return nodes
}

// known is the shape of a gamma variable whose logarithm has that variance: it is
// 1/a + 1/(2 a^2), nearly.
func known(variance float64) float64 { return (1 + math.Sqrt(1+2*variance)) / (2 * variance) }

// middle is the median of a gamma variable of that shape, nearly.
func middle(shape float64) float64 { return shape - 1./3 }

// learn takes in gatherings, those of other seasons first.
func (r *SapRecord) learn(taken []takenIn) {
	years := map[int]bool{}
	for _, t := range taken {
		if t.year == r.season {
			r.own++
		} else {
			years[t.year] = true
		}
	}
	r.taught = len(taken)
	for i := range r.nodes {
		n := &r.nodes[i]
		n.takeIn(taken, func(year int) bool { return year != r.season })
		n.forget(len(years))
		n.takeIn(taken, func(year int) bool { return year == r.season })
	}
}

func (n *sapNode) takeIn(taken []takenIn, wanted func(year int) bool) {
	for _, t := range taken {
		if !wanted(t.year) {
			continue
		}
		shape := n.of(t.runs, t.others)
		n.log += n.logChance(t.sap, shape)
		n.a += shape
		n.b += t.sap
	}
}

// forget widens what other seasons taught of the level to what seasons differ by,
// and keeps its middle. The mean of several years stands a little nearer.
func (n *sapNode) forget(years int) {
	if years == 0 {
		return
	}
	if most := known(seasonsDiffer * (1 + 1/float64(years))); n.a > most {
		n.b *= middle(most) / middle(n.a)
		n.a = most
	}
}

// of is the shape of the sum of so many days.
func (n *sapNode) of(runs, others int) float64 {
	return n.shape * (float64(runs) + n.other*float64(others))
}

// logChance is the logarithm of the density of the sap, in L, of days of that
// shape; of so little that nobody measures it, of its chance over the width.
func (n *sapNode) logChance(sap, shape float64) float64 {
	if sap <= leastSap {
		return math.Log(n.below(leastSap, shape) / leastSap)
	}
	if !(shape > 0) {
		return math.Inf(-1)
	}
	both, _ := math.Lgamma(n.a + shape)
	before, _ := math.Lgamma(n.a)
	own, _ := math.Lgamma(shape)
	return both - before - own + (shape-1)*math.Log(sap) + n.a*math.Log(n.b) - (n.a+shape)*math.Log(n.b+sap)
}

// below is the chance of less than so much sap.
func (n *sapNode) below(sap, shape float64) float64 {
	if !(shape > 0) {
		return 1
	}
	return numeric.BetaBelow(sap/(sap+n.b), shape, n.a)
}

// below is the chance that so many days together bring less than so much sap, in L.
func (r SapRecord) below(sap float64, runs, others int) float64 {
	top := math.Inf(-1)
	for i := range r.nodes {
		top = max(top, r.nodes[i].log)
	}
	sum, all := 0.0, 0.0
	for i := range r.nodes {
		n := &r.nodes[i]
		const faint = -14 // of a logarithm: under a millionth of the best guess
		if n.log-top < faint {
			continue
		}
		weight := math.Exp(n.log - top)
		sum += weight * n.below(sap, n.of(runs, others))
		all += weight
	}
	return sum / all
}

// span returns the sap of so many days together.
func (r SapRecord) span(runs, others int) units.Span[units.Volume] {
	if len(r.nodes) == 0 || runs+others == 0 {
		return units.Span[units.Volume]{}
	}
	at := func(chance float64) units.Volume {
		const most = 1e9 // L of a tap: far beyond any sum of days
		if r.below(leastSap, runs, others) >= chance {
			return 0
		}
		x, _ := numeric.Root(func(log float64) float64 { return r.below(math.Exp(log), runs, others) - chance }, math.Log(leastSap), math.Log(most), 1e-9)
		return units.Liters(math.Exp(x))
	}
	return units.Span[units.Volume]{Low: at(0.1), Middle: at(0.5), High: at(0.9)}
}
