package book

import (
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/internal/proving/proof"
)

// A drawn table is one with published figures that something is reckoned for.
type drawn struct {
	table  *check.Table
	claims []compared
}

type compared struct {
	check.Claim
	residuals []check.Residual
}

// published lists the tables with figures that were read or recalled and are
// reckoned, not copied, in the order of the claims.
func published() ([]drawn, error) {
	var list []drawn
	at := map[string]int{}
	for _, c := range proof.All() {
		result, err := check.Evaluate(c)
		if err != nil {
			return nil, err
		}
		if result.Exact == result.Rows {
			continue
		}
		all, err := check.Residuals(c)
		if err != nil {
			return nil, err
		}
		var seen []check.Residual
		for _, r := range all {
			if !strings.HasPrefix(r.Row.Obtained(), "computed") {
				seen = append(seen, r)
			}
		}
		if len(seen) == 0 {
			continue
		}
		i, ok := at[c.Table]
		if !ok {
			i = len(list)
			at[c.Table] = i
			list = append(list, drawn{table: result.Table})
		}
		list[i].claims = append(list[i].claims, compared{c, seen})
	}
	return list, nil
}

// across picks the input that the figures of a table are drawn over: the one
// with the most values, else the place in the table.
func across(t *check.Table, rs []check.Residual) (name string, xs []float64) {
	xs = make([]float64, len(rs))
	most := 2
	for i := range rs {
		xs[i] = float64(i + 1)
	}
	name = "row of the table"
	for _, c := range t.Columns {
		if c.Kind != check.Input || c.Unit == "unit" {
			continue
		}
		values := map[float64]bool{}
		column := make([]float64, len(rs))
		whole := true
		for i, r := range rs {
			column[i] = r.Row.Float(c.Name)
			whole = whole && !math.IsNaN(column[i])
			values[column[i]] = true
		}
		if whole && len(values) > most {
			most, xs = len(values), column
			name = strings.ReplaceAll(strings.TrimSuffix(c.Name, "_"+c.Unit), "_", " ") + ", " + c.Unit
		}
	}
	return name, xs
}

// svg draws the residuals of each claim over its range, in tolerances.
func (d drawn) svg() string {
	p := &plot{title: d.table.Title + ": what the library gives less what is printed, in tolerances"}
	for _, c := range d.claims {
		name, xs := across(d.table, c.residuals)
		low, high := span(xs)
		pad := 0.03 * (high - low)
		if !(pad > 0) {
			pad = 0.5
		}
		a := p.panel(fmt.Sprintf("%s, %s: %s", c.Func, c.Column, tolerances(d.table, c)), 84, low-pad, high+pad, -1.15, 1.15)
		ends := []float64{a.x0, a.x1}
		a.band(ends, []float64{-1, -1}, []float64{1, 1}, band)
		a.line(ends, []float64{0, 0}, "#999", "")
		var at, off, atApart, offApart []float64
		for i, r := range c.residuals {
			y := min(max(r.Share(), -1.15), 1.15)
			if r.Apart {
				atApart, offApart = append(atApart, xs[i]), append(offApart, y)
			} else {
				at, off = append(at, xs[i]), append(off, y)
			}
		}
		a.dots(at, off, blue, 4)
		a.dots(atApart, offApart, red, 5)
		step := tick(low, high+1e-9, 10)
		if name == "row of the table" {
			step = max(1, step)
		}
		a.axes(name, "tolerances", step, 1)
	}
	return p.svg()
}

// tolerances says how wide the band is.
func tolerances(t *check.Table, c compared) string {
	col, _ := t.Column(c.Column)
	var all []float64
	for _, r := range c.residuals {
		all = append(all, r.Tolerance)
	}
	low, high := span(all)
	unit := col.Unit
	switch unit {
	case "1":
		unit = ""
	case "unit":
		unit = "in the unit of the row"
	}
	if high-low < 1e-3*high {
		return strings.TrimSpace(fmt.Sprintf("1 is %.3g %s", high, unit))
	}
	return strings.TrimSpace(fmt.Sprintf("1 is %.3g to %.3g %s", low, high, unit))
}

func span(xs []float64) (low, high float64) {
	low, high = math.Inf(1), math.Inf(-1)
	for _, x := range xs {
		low, high = min(low, x), max(high, x)
	}
	return low, high
}

// overview draws all published tables on one page: each figure a dot, by how
// much of its tolerance it is off.
func overview(tables []drawn) string {
	p := &plot{title: "Every figure, read or recalled, that is reckoned, by table: what the library gives less what stands there, in tolerances"}
	const row = 13.0
	a := p.panel("what the library gives less what is printed, in tolerances; red: apart from the documented disagreement", row*float64(len(tables)), -2.6, 1.1, float64(len(tables)), 0)
	n := float64(len(tables))
	a.band([]float64{-1, 1}, []float64{n, n}, []float64{0, 0}, band)
	a.line([]float64{0, 0}, []float64{0, n}, "#999", "")
	var xs, ys, xr, yr []float64
	for i, d := range tables {
		y := float64(i) + 0.5
		a.text(left+4, a.py(y)+4, "start", d.table.ID)
		for _, c := range d.claims {
			for _, r := range c.residuals {
				// To a fiftieth: a dot is no narrower.
				x := math.Round(50*r.Share()) / 50
				if r.Apart {
					xr, yr = append(xr, x), append(yr, y)
				} else {
					xs, ys = append(xs, x), append(ys, y)
				}
			}
		}
	}
	a.dots(xs, ys, blue, 4)
	a.dots(xr, yr, red, 4)
	for x := -1.0; x <= 1; x++ {
		a.text(a.px(x), a.bottom+15, "middle", short(x))
	}
	return p.svg()
}
