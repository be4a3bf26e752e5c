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
// hundreds of thousands of times, so that the answers are laid out at even
// steps with their slopes.
type hot [cells + 1]struct{ y, slope [4]float64 }

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
	for i := range h {
		for j := range 4 {
			h[i].y[j], h[i].slope[j] = c.sum(j, 2*float64(i)/cells-1)
		}
	}
	return h, nil
}

// sum returns column j at x from -1 to 1, and its slope over a cell, by
// Clenshaw's rule.
func (c *series) sum(j int, x float64) (y, slope float64) {
	var y1, y2, d1, d2 float64
	for k := nodes - 1; k > 0; k-- {
		d1, d2 = 2*(x*d1+y1)-d2, d1
		y1, y2 = 2*x*y1-y2+c[k][j], y1
	}
	return x*y1 - y2 + c[0][j], (x*d1 - d2 + y1) * 2 / cells
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
func (h *hot) at(w float64) boiling {
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
	a, b := &h[i], &h[i+1]
	// Hermite's cubics, as weights of the four numbers at the ends of the cell.
	e := 1 - x
	ya, yb := e*e*(1+2*x), x*x*(3-2*x)
	sa, sb := x*e*e, -x*x*e
	d := 6 * x * e // the slopes of yb and, turned round, of ya
	return boiling{
		point:  ya*a.y[0] + yb*b.y[0] + sa*a.slope[0] + sb*b.slope[0],
		volume: ya*a.y[1] + yb*b.y[1] + sa*a.slope[1] + sb*b.slope[1],
		latent: ya*a.y[2] + yb*b.y[2] + sa*a.slope[2] + sb*b.slope[2],
		heat:   ya*a.y[3] + yb*b.y[3] + sa*a.slope[3] + sb*b.slope[3],
		swell:  perFraction * (d*(b.y[1]-a.y[1]) + e*(1-3*x)*a.slope[1] + x*(3*x-2)*b.slope[1]),
	}
}
