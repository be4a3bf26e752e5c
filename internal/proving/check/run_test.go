package check

import "testing"

// TestRun shows the runner at work on a claim that holds; what makes a claim
// fail is tested on Evaluate, which it shares its comparison with.
func TestRun(t *testing.T) {
	Run(t,
		Claim{Table: "syrup-finish-rise", Column: "rise_F", Func: "published", Got: published("rise_F", 0)},
		Claim{Table: "weight-per-gallon", Column: "in_vacuo_icumsa", Func: "published", Got: published("in_vacuo_icumsa", 0)},
		Claim{Table: "weight-per-gallon", Column: "in_air_icumsa", Func: "published", Got: published("in_air_icumsa", 0)},
	)
}

func TestSubtestName(t *testing.T) {
	table, err := parse("sample", sample)
	if err != nil {
		t.Fatal(err)
	}
	c := Claim{Table: "sample", Column: "density", Func: "density.Solution"}
	for _, tt := range []struct {
		row   int
		named bool
		want  string
	}{
		{0, false, "first brix=10"},
		{0, true, "first brix=10 density density.Solution"},
		{1, false, "second brix=66 (from memory)"},
		{1, true, "second brix=66 density density.Solution (from memory)"},
	} {
		if got := subtestName(c, table.Rows[tt.row], tt.named); got != tt.want {
			t.Errorf("row %d: %q, want %q", tt.row, got, tt.want)
		}
	}
}
