package check

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"
)

// published gives back the figure of a row, with its deviation and an error of
// the given size added: a function that is as good or as bad as a test needs.
func published(column string, off float64) func(Row) (float64, error) {
	return func(r Row) (float64, error) {
		v := r.Float(column)
		if d := r.Float(column + deviationSuffix); !math.IsNaN(d) {
			v += d
		}
		return v + off, nil
	}
}

func TestEvaluate(t *testing.T) {
	r, err := Evaluate(Claim{Table: "us-standard-atmosphere", Column: "psia", Func: "f", Got: published("psia", 0.0006)})
	if err != nil {
		t.Fatal(err)
	}
	if r.Rows != 13 || len(r.Failures) != 0 || math.Abs(r.Worst-0.2) > 1e-9 || r.WorstRow == "" || r.Table.ID != r.Claim.Table {
		t.Errorf("result %+v", r)
	}
}

func TestWrongClaimFails(t *testing.T) {
	wrong := errors.New("out of range")
	tests := []struct {
		name string
		got  func(Row) (float64, error)
		err  error
	}{
		{"off by more than the tolerance", published("psia", 0.0036), nil},
		{"NaN", func(Row) (float64, error) { return math.NaN(), nil }, nil},
		{"infinite", func(Row) (float64, error) { return math.Inf(1), nil }, nil},
		{"error", func(r Row) (float64, error) { return r.Float("psia"), wrong }, wrong},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r, err := Evaluate(Claim{Table: "us-standard-atmosphere", Column: "psia", Func: "f", Got: tt.got})
			if err != nil {
				t.Fatal(err)
			}
			if len(r.Failures) != r.Rows || !(r.Worst > 1) {
				t.Fatalf("%d of %d rows fail, worst %v", len(r.Failures), r.Rows, r.Worst)
			}
			f := r.Failures[0]
			if f.Row != "altitude_ft=-1000" || f.Inputs != "altitude_ft=-1000" || !near(f.Want, 15.236) || !near(f.Tolerance, 0.003) || !errors.Is(f.Err, tt.err) {
				t.Errorf("first failure %+v", f)
			}
			if s := f.String(); !strings.Contains(s, "15.236") || !strings.Contains(s, "altitude_ft=-1000") {
				t.Errorf("it prints as %q", s)
			}
		})
	}
}

func TestDeviationHoldsTheDisagreement(t *testing.T) {
	finish := Claim{Table: "syrup-finish-rise", Column: "rise_F", Func: "f", Got: published("rise_F", 0)}
	r, err := Evaluate(finish)
	if err != nil {
		t.Fatal(err)
	}
	if len(r.Failures) != 0 {
		t.Errorf("the documented disagreement fails: %v", r.Failures)
	}
	// Agreement with the printed figure is a change, and must be seen.
	finish.Got = func(r Row) (float64, error) { return r.Float("rise_F"), nil }
	if r, err = Evaluate(finish); err != nil {
		t.Fatal(err)
	}
	if len(r.Failures) != r.Rows {
		t.Errorf("%d of %d rows notice that the disagreement is gone", len(r.Failures), r.Rows)
	}
	if f := r.Failures[1]; math.Abs(f.Want-7.2) > 1e-12 || !near(f.Tolerance, 0.005) {
		t.Errorf("want %v within %v, expected 7.20 within 0.005", f.Want, f.Tolerance)
	}
}

func TestZeroToleranceIsMetExactlyOrNotAtAll(t *testing.T) {
	kell := Claim{Table: "kell-1975-water", Column: "value", Func: "f", Got: published("value", 0)}
	r, err := Evaluate(kell)
	if err != nil || len(r.Failures) != 0 || r.Worst > 0 {
		t.Errorf("the constants themselves: %+v, %v", r, err)
	}
	kell.Got = func(r Row) (float64, error) { return math.Nextafter(r.Float("value"), math.Inf(1)), nil }
	r, err = Evaluate(kell)
	if err != nil || len(r.Failures) != r.Rows || !math.IsInf(r.Worst, 1) {
		t.Errorf("constants one bit off: %+v, %v", r, err)
	}
}

func TestClaimErrors(t *testing.T) {
	good := Claim{Table: "us-standard-atmosphere", Column: "psia", Func: "f", Got: published("psia", 0)}
	tests := []struct {
		name    string
		spoil   func(*Claim)
		message string
	}{
		{"unknown table", func(c *Claim) { c.Table = "atmosphere" }, `no table "atmosphere"`},
		{"unknown column", func(c *Claim) { c.Column = "kPa" }, "no such want column"},
		{"input column", func(c *Claim) { c.Column = "altitude_ft" }, "no such want column"},
		{"no function", func(c *Claim) { c.Got = nil }, "names no function"},
		{"no name of a function", func(c *Claim) { c.Func = "" }, "names no function"},
		{"no rows", func(c *Claim) { c.Select = func(Row) bool { return false } }, "selects no row"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			c := good
			tt.spoil(&c)
			r, err := Evaluate(c)
			if err == nil || !strings.Contains(err.Error(), tt.message) {
				t.Errorf("Evaluate = %+v, %v, want an error with %q", r, err, tt.message)
			}
		})
	}
}

func TestEmptyFiguresArePassedOver(t *testing.T) {
	r, err := Evaluate(Claim{Table: "nbs-c440-table114", Column: "apparent_sg_20_20_icumsa", Func: "f", Got: published("apparent_sg_20_20", 0)})
	if err != nil || r.Rows != 86 || len(r.Failures) != 0 {
		t.Errorf("the figures from 0 to 85 Brix: %d rows, %d failures, %v", r.Rows, len(r.Failures), err)
	}
}

func TestOrphans(t *testing.T) {
	all := Orphans(nil)
	row := "us-standard-atmosphere:altitude_ft=0:psia"
	if !slices.Contains(all, row) || slices.ContainsFunc(all, func(s string) bool { return strings.HasPrefix(s, "cautions:") }) {
		t.Fatalf("without claims, %d orphans: they must hold %s and no facts", len(all), row)
	}
	sea := Claim{Table: "us-standard-atmosphere", Column: "psia", Func: "f", Select: func(r Row) bool { return math.Abs(r.Float("altitude_ft")) < 1 }}
	if left := Orphans([]Claim{sea}); len(left) != len(all)-1 || slices.Contains(left, row) {
		t.Errorf("a claim of one row leaves %d of %d orphans", len(left), len(all))
	}
	sea.Select = nil
	if left := Orphans([]Claim{sea}); len(left) != len(all)-13 {
		t.Errorf("a claim of 13 rows leaves %d of %d orphans", len(left), len(all))
	}
}
