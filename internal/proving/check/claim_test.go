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
	r, err := Evaluate(Claim{Table: "water-activity-worked", Column: "a_w", Func: "f", Got: published("a_w", 0.0001)})
	if err != nil {
		t.Fatal(err)
	}
	if r.Rows != 3 || len(r.Failures) != 0 || math.Abs(r.Worst-0.2) > 1e-9 || r.WorstRow == "" || r.Table.ID != r.Claim.Table {
		t.Errorf("result %+v", r)
	}
}

// What is copied is told from what is reckoned within a tolerance, and figures
// with a documented deviation from those without.
func TestExactAndApart(t *testing.T) {
	for _, tt := range []struct {
		table, column string
		off           float64
		exact, apart  int
	}{
		{"kell-1975-water", "value", 0, 7, 0},
		{"water-activity-worked", "a_w", 0, 3, 0},
		{"water-activity-worked", "a_w", 1e-11, 0, 0},
		{"syrup-finish-rise", "rise_F", 0.001, 0, 4},
	} {
		r, err := Evaluate(Claim{Table: tt.table, Column: tt.column, Func: "f", Got: published(tt.column, tt.off)})
		if err != nil || r.Exact != tt.exact || r.Apart != tt.apart {
			t.Errorf("%s off by %v: %d exact, %d apart, %v", tt.table, tt.off, r.Exact, r.Apart, err)
		}
	}
}

func TestTieAtTheLimitPasses(t *testing.T) {
	wisconsin := func(r Row) bool {
		return r.Name() == "Wisconsin year=2019 taps_thousand=800 production_thousand_gal=270"
	}
	c := Claim{Table: "nass-yield-per-tap", Column: "gal_per_tap", Func: "ratio", Select: wisconsin,
		Got: func(r Row) (float64, error) {
			return r.Float("production_thousand_gal") / r.Float("taps_thousand"), nil
		}}
	if r, err := Evaluate(c); err != nil || len(r.Failures) != 0 || r.Rows != 1 {
		t.Errorf("0.3375 is not 0.338 to three places: %+v, %v", r, err)
	}
	c.Got = func(r Row) (float64, error) { return 0.33749, nil }
	if r, err := Evaluate(c); err != nil || len(r.Failures) != 1 {
		t.Errorf("0.33749 passes for 0.338: %+v, %v", r, err)
	}
}

func TestWrongClaimFails(t *testing.T) {
	wrong := errors.New("out of range")
	tests := []struct {
		name string
		got  func(Row) (float64, error)
		err  error
	}{
		{"off by more than the tolerance", published("a_w", 0.0006), nil},
		{"NaN", func(Row) (float64, error) { return math.NaN(), nil }, nil},
		{"infinite", func(Row) (float64, error) { return math.Inf(1), nil }, nil},
		{"error", func(r Row) (float64, error) { return r.Float("a_w"), wrong }, wrong},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r, err := Evaluate(Claim{Table: "water-activity-worked", Column: "a_w", Func: "f", Got: tt.got})
			if err != nil {
				t.Fatal(err)
			}
			if len(r.Failures) != r.Rows || !(r.Worst > 1) {
				t.Fatalf("%d of %d rows fail, worst %v", len(r.Failures), r.Rows, r.Worst)
			}
			f := r.Failures[0]
			if f.Row != "brix=66 t_C=25" || f.Inputs != "brix=66 t_C=25" || !near(f.Want, 0.858) || !near(f.Tolerance, 0.0005) || !errors.Is(f.Err, tt.err) {
				t.Errorf("first failure %+v", f)
			}
			if s := f.String(); !strings.Contains(s, "0.858") || !strings.Contains(s, "brix=66 t_C=25") {
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
	good := Claim{Table: "water-activity-worked", Column: "a_w", Func: "f", Got: published("a_w", 0)}
	tests := []struct {
		name    string
		spoil   func(*Claim)
		message string
	}{
		{"unknown table", func(c *Claim) { c.Table = "water" }, `no table "water"`},
		{"unknown column", func(c *Claim) { c.Column = "activity" }, "no such want column"},
		{"input column", func(c *Claim) { c.Column = "brix" }, "no such want column"},
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
	row := "water-activity-worked:brix=66 t_C=25:a_w"
	if !slices.Contains(all, row) || slices.ContainsFunc(all, func(s string) bool { return strings.HasPrefix(s, "cautions:") }) {
		t.Fatalf("without claims, %d orphans: they must hold %s and no facts", len(all), row)
	}
	syrup := Claim{Table: "water-activity-worked", Column: "a_w", Func: "f", Select: func(r Row) bool { return r.Text("brix") == "66" }}
	if left := Orphans([]Claim{syrup}); len(left) != len(all)-1 || slices.Contains(left, row) {
		t.Errorf("a claim of one row leaves %d of %d orphans", len(left), len(all))
	}
	syrup.Select = nil
	if left := Orphans([]Claim{syrup}); len(left) != len(all)-3 {
		t.Errorf("a claim of 3 rows leaves %d of %d orphans", len(left), len(all))
	}
}
