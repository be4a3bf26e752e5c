package numeric

// Simplex maximizes value . x under rows . x <= most and x >= 0, where no entry of
// most is negative, and returns x. The columns of rows belong to x. It is made
// for a handful of rows that matter and is dense.
//
// Method: the tableau of Dantzig with the rule of Bland, under which it does not
// go in circles where rows meet in one corner (from memory). After steps
// exchanges it returns the best corner so far.
func Simplex(rows [][]float64, most, value []float64, steps int) []float64 {
	const nothing = 1e-12
	n, m := len(value), len(rows)
	// The last row is the value, the last column what is allowed. Labels below n are
	// those of x, the others of what is left of a row.
	table := make([][]float64, m+1)
	for i, row := range rows {
		table[i] = append(append(make([]float64, 0, n+1), row...), most[i])
	}
	table[m] = append(append(make([]float64, 0, n+1), value...), 0)
	free, held := make([]int, n), make([]int, m)
	for j := range free {
		free[j] = j
	}
	for i := range held {
		held[i] = n + i
	}
	for ; steps > 0; steps-- {
		in := -1
		for j := range free {
			if table[m][j] > nothing && (in < 0 || free[j] < free[in]) {
				in = j
			}
		}
		if in < 0 {
			break
		}
		out := -1
		for i := range held {
			if !(table[i][in] > nothing) {
				continue
			}
			if out < 0 {
				out = i
				continue
			}
			a, b := table[i][n]/table[i][in], table[out][n]/table[out][in]
			if a < b || a <= b && held[i] < held[out] {
				out = i
			}
		}
		if out < 0 {
			break // without bound
		}
		exchange(table, out, in)
		free[in], held[out] = held[out], free[in]
	}
	x := make([]float64, n)
	for i, label := range held {
		if label < n {
			x[label] = max(0, table[i][n])
		}
	}
	return x
}

// exchange lets the variable of a column into the corner and that of a row out.
func exchange(table [][]float64, out, in int) {
	pivot := table[out][in]
	for j := range table[out] {
		if j != in {
			table[out][j] /= pivot
		}
	}
	table[out][in] = 1 / pivot
	for i := range table {
		f := table[i][in]
		if i == out || f == 0 {
			continue
		}
		for j := range table[i] {
			if j != in {
				table[i][j] -= f * table[out][j]
			}
		}
		table[i][in] = -f / pivot
	}
}
