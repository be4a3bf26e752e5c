package check

import (
	"fmt"
	"math"
	"strings"
)

// A Claim binds a published column to the function that must reproduce it.
type Claim struct {
	Table  string                     // id of the table
	Column string                     // the want column
	Func   string                     // the function, such as "density.Solution"
	With   string                     // the arguments that no row gives, and what is taken from the answer; for a reader
	Select func(Row) bool             // the rows it speaks of; nil for all
	Got    func(Row) (float64, error) // the function's value, in the column's unit
	Exact  bool                       // it reckons, and meets every figure: its arithmetic is exact
}

// A Result is what came of one [Claim].
type Result struct {
	Claim    Claim
	Table    *Table
	Rows     int     // figures compared
	Exact    int     // those met but for rounding: constants that are copied, exact factors, counts
	Apart    int     // those with a documented deviation
	Worst    float64 // largest deviation as a share of its tolerance; 1 is the limit
	WorstRow string  // name of the row where it was found
	Compared []Row   // the rows of the figures, in the order of the table
	Failures []Failure
}

// A Failure is a row in which the function does not reproduce the figure.
// Want includes the documented deviation, if the row has one.
type Failure struct {
	Row       string
	Inputs    string
	Want      float64
	Got       float64
	Tolerance float64
	Err       error
}

// String tells the failure in one line.
func (f Failure) String() string {
	if f.Err != nil {
		return fmt.Sprintf("%s: inputs %s: want %v: %v", f.Row, f.Inputs, f.Want, f.Err)
	}
	return fmt.Sprintf("%s: inputs %s: want %v, got %v, off by %.3g, tolerance %.3g",
		f.Row, f.Inputs, f.Want, f.Got, f.Got-f.Want, f.Tolerance)
}

// Evaluate compares every figure that the claim speaks of. Its error is about
// the claim itself: an unknown table or column, or no row to compare. Figures
// that are not reproduced are in [Result].
func Evaluate(c Claim) (Result, error) {
	t, outcomes, err := evaluate(c)
	if err != nil {
		return Result{}, err
	}
	r := Result{Claim: c, Table: t, Rows: len(outcomes)}
	for _, o := range outcomes {
		r.Compared = append(r.Compared, o.row)
		if o.exact() {
			r.Exact++
		}
		if o.apart {
			r.Apart++
		}
		if s := o.share(); r.WorstRow == "" || s > r.Worst {
			r.Worst, r.WorstRow = s, o.row.Name()
		}
		if !o.pass() {
			r.Failures = append(r.Failures, o.failure())
		}
	}
	return r, nil
}

// evaluate gives one outcome for each published figure of the claim.
func evaluate(c Claim) (*Table, []outcome, error) {
	fail := func(format string, args ...any) (*Table, []outcome, error) {
		return nil, nil, fmt.Errorf("check: claim of %s on %s, column %s: %s", c.Func, c.Table, c.Column, fmt.Sprintf(format, args...))
	}
	t, err := Load(c.Table)
	if err != nil {
		return fail("%v", err)
	}
	col, ok := t.Column(c.Column)
	switch {
	case !ok || col.Kind != Want:
		return fail("the table has no such want column")
	case c.Func == "" || c.Got == nil:
		return fail("it names no function")
	}
	var outcomes []outcome
	for _, row := range t.Rows {
		if !c.covers(row) {
			continue
		}
		o, err := compare(c, col, row)
		if err != nil {
			return fail("line %d: %v", row.Line(), err)
		}
		outcomes = append(outcomes, o)
	}
	if len(outcomes) == 0 {
		return fail("it selects no row with a figure")
	}
	return t, outcomes, nil
}

// covers reports whether the row has a figure that the claim speaks of.
func (c Claim) covers(row Row) bool {
	return row.Text(c.Column) != "" && (c.Select == nil || c.Select(row))
}

// An outcome is one published figure and what the function made of it.
type outcome struct {
	row            Row
	want, got, tol float64
	apart          bool // the row documents a deviation, which is in want
	err            error
}

func compare(c Claim, col Column, row Row) (outcome, error) {
	o := outcome{row: row, want: row.Float(c.Column)}
	printed := row.Text(c.Column)
	if d := row.Text(c.Column + deviationSuffix); d != "" {
		printed = d
		o.apart = true
		o.want += row.Float(c.Column + deviationSuffix)
	}
	var err error
	if o.tol, err = col.Tolerance.of(row.Float(c.Column), printed); err != nil {
		return o, err
	}
	o.got, o.err = c.Got(row)
	return o, nil
}

// share is the deviation over the tolerance; infinite where the function fails.
func (o outcome) share() float64 {
	d := math.Abs(o.got - o.want)
	switch {
	case o.err != nil || math.IsNaN(d):
		return math.Inf(1)
	case d <= 0: // a tolerance of zero is met exactly or not at all
		return 0
	}
	return d / o.tol
}

// exact reports whether nothing but the rounding of float64 lies between.
func (o outcome) exact() bool {
	const rounding = 1e-12
	return o.err == nil && math.Abs(o.got-o.want) <= rounding*max(1, math.Abs(o.want))
}

// pass grants a deviation that lies on the limit, such as 0.3375 printed as
// 0.338, whichever way float64 rounds it.
func (o outcome) pass() bool { return o.share() <= 1+1e-9 }

func (o outcome) failure() Failure {
	return Failure{Row: o.row.Name(), Inputs: o.row.Inputs(), Want: o.want, Got: o.got, Tolerance: o.tol, Err: o.err}
}

// Orphans lists the published figures, as "table:row:column", that no claim
// speaks of.
func Orphans(claims []Claim) []string {
	var orphans []string
	for _, id := range IDs() {
		t, err := Load(id)
		if err != nil {
			orphans = append(orphans, id+":unreadable:"+err.Error())
			continue
		}
		for _, row := range t.Rows {
			for _, col := range t.Columns {
				if col.Kind == Want && row.Text(col.Name) != "" && !claimed(claims, id, col.Name, row) {
					orphans = append(orphans, strings.Join([]string{id, row.Name(), col.Name}, ":"))
				}
			}
		}
	}
	return orphans
}

func claimed(claims []Claim, id, column string, row Row) bool {
	for _, c := range claims {
		if c.Table == id && c.Column == column && c.covers(row) {
			return true
		}
	}
	return false
}

// A Residual is what a function made of one published figure. Want includes the
// documented deviation, where there is one, and then Apart is true.
type Residual struct {
	Row                  Row
	Want, Got, Tolerance float64
	Apart                bool
}

// Share is how far the function is off, with its sign, as a share of the
// tolerance.
func (r Residual) Share() float64 {
	if d := r.Got - r.Want; !(d >= 0 && d <= 0) {
		return d / r.Tolerance
	}
	return 0
}

// Residuals compares every figure that the claim speaks of, in the order of the
// table.
func Residuals(c Claim) ([]Residual, error) {
	_, outcomes, err := evaluate(c)
	if err != nil {
		return nil, err
	}
	var list []Residual
	for _, o := range outcomes {
		if o.err != nil {
			return nil, o.err
		}
		list = append(list, Residual{Row: o.row, Want: o.want, Got: o.got, Tolerance: o.tol, Apart: o.apart})
	}
	return list, nil
}
