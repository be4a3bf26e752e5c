package sugar

import "example.org/sapreckoner/internal/base/coef"

// between interpolates a table of percents that stand step degrees apart from 0
// C on, and returns the slope too: a cubic between two rows, with the slopes of
// the parabola through each row and its neighbors. At a row it is the row.
func between(table []float64, step, c float64) (y, slope float64) {
	last := len(table) - 1
	i := min(max(int(c/step), 0), last-1)
	x := c/step - float64(i)
	at := func(k int) float64 {
		switch k {
		case 0:
			return (-3*table[0] + 4*table[1] - table[2]) / 2
		case last:
			return (3*table[last] - 4*table[last-1] + table[last-2]) / 2
		}
		return (table[k+1] - table[k-1]) / 2
	}
	a, b, rise := at(i), at(i+1), table[i+1]-table[i]
	p, q := 3*rise-2*a-b, a+b-2*rise
	return table[i] + x*(a+x*(p+x*q)), (a + x*(2*p+3*x*q)) / step
}

// Tables of solubility, in percent.
var (
	herzfeld   = coef.SaturationHerzfeld()
	sokolovsky = coef.SaturationSokolovsky()
)
