package pan

import (
	"math"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// thickest is the most sugar that a pan may come to, in Brix. Beyond it syrup is
// candy in the making, and a pan over a fire will scorch it.
const thickest = 75.0

// firePressure is the pressure over a fire. Under the highest, 75 Brix boils at
// 109.3 C, which the densities still cover.
var firePressure = limit.Range{Arg: "pressure", What: "pressure", Low: 50, High: 110, Unit: "kPa",
	Below: "thinner air than where maples grow: check the unit of the pressure",
	Above: "above any weather: check the unit; pressure kettles are not covered"}

// boiling is what a boiling liquid of some sugar content is.
type boiling struct {
	point  float64 // boiling point, in C
	volume float64 // of a kilogram, in m3
	latent float64 // heat that takes a kilogram of water off, in J
	heat   float64 // specific heat, in J/(kg K)
	swell  float64 // change of volume with mass fraction of sugar, in m3
}

// sugarVolume and waterVolume are what a kilogram of sugar or of water adds to
// the volume of a large pan of mass fraction w.
func (l *boiling) sugarVolume(w float64) float64 { return l.volume + (1-w)*l.swell }
func (l *boiling) waterVolume(w float64) float64 { return l.volume - w*l.swell }

// nodes is the number of strengths at which the formulas are solved. They are
// smooth from water to the thickest syrup, and a Chebyshev series through 16 of
// them comes within 1e-7 K of the boiling point. cells is the number of cubic
// pieces that then stand for the series; they come within 1e-6 K.
const (
	nodes = 16
	cells = 192
)

// hot gives [boiling] under the pressure of the day. A simulation asks for it
// hundreds of thousands of times, so that the answers are laid out as pieces of
// even length: the four numbers of a cell are the coefficients of its cubic in the
// share of the way through it, for each field of [series].
type hot [cells][4][4]float64

// series holds the coefficients of the first four fields of [boiling].
type series [nodes][4]float64

// newHot solves the formulas under a pressure, which the caller calls arg.
func newHot(fn, arg string, p units.Pressure) (*hot, error) {
	if err := firePressure.CheckAs(fn, arg, p.Kilopascals()); err != nil {
		return nil, err
	}
	var c series
	for i := range nodes {
		angle := math.Pi * (float64(i) + 0.5) / nodes
		l, err := solveBoiling(units.Brix(thickest/2*(1+math.Cos(angle))), p)
		if err != nil {
			return nil, units.Under(fn, err)
		}
		for k := range c {
			f := 2.0 / nodes * math.Cos(float64(k)*angle)
			if k == 0 {
				f = 1.0 / nodes
			}
			for j, y := range [4]float64{l.point, l.volume, l.latent, l.heat} {
				c[k][j] += f * y
			}
		}
	}
	h := new(hot)
	y, slope := c.sum(-1)
	for i := range h {
		a, sa := y, slope
		y, slope = c.sum(2*float64(i+1)/cells - 1)
		for j := range a { // Hermite's cubic
			rise := y[j] - a[j]
			h[i][j] = [4]float64{a[j], sa[j], 3*rise - 2*sa[j] - slope[j], sa[j] + slope[j] - 2*rise}
		}
	}
	return h, nil
}

// sum returns the fields at x from -1 to 1, and their slopes over a cell.
func (c *series) sum(x float64) (y, slope [4]float64) {
	t, t1, d, d1 := 1.0, x, 0.0, 1.0 // the polynomials and their slopes, and the next ones
	for k := range c {
		for j, f := range c[k] {
			y[j] += f * t
			slope[j] += f * d * (2.0 / cells)
		}
		t, t1, d, d1 = t1, 2*x*t1-t, d1, 2*(t1+x*d1)-d
	}
	return y, slope
}

// solveBoiling asks the formulas.
func solveBoiling(b units.Brix, p units.Pressure) (boiling, error) {
	t, err := boil.SyrupPoint(b, p)
	if err != nil {
		return boiling{}, err
	}
	d, err := density.Solution(b, t)
	if err != nil {
		return boiling{}, err
	}
	l, err := boil.LatentHeat(t)
	if err != nil {
		return boiling{}, err
	}
	c, err := sugar.SpecificHeat(b, t)
	return boiling{point: t.Celsius(), volume: 1 / float64(d), latent: float64(l), heat: float64(c)}, err
}

// at returns the liquid of mass fraction w. Out of range, where only a step that
// will be taken back may lead, the cubic at the end goes on.
func (h *hot) at(w float64) (l boiling) {
	h.set(&l, w)
	return l
}

// set is at, into a place of the caller's: that takes half as long.
func (h *hot) set(to *boiling, w float64) {
	const perFraction = 100 * cells / thickest
	x := w * perFraction
	i := 0
	switch {
	case x >= cells:
		i = cells - 1
	case x > 0:
		i = int(x)
	}
	x -= float64(i)
	p, v, l, c := &h[i][0], &h[i][1], &h[i][2], &h[i][3]
	to.point = p[0] + x*(p[1]+x*(p[2]+x*p[3]))
	to.volume = v[0] + x*(v[1]+x*(v[2]+x*v[3]))
	to.latent = l[0] + x*(l[1]+x*(l[2]+x*l[3]))
	to.heat = c[0] + x*(c[1]+x*(c[2]+x*c[3]))
	to.swell = perFraction * (v[1] + x*(2*v[2]+x*3*v[3]))
}
