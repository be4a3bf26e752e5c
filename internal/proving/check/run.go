package check

import (
	"fmt"
	"testing"
)

// Run makes a subtest of every published figure that the claims speak of,
// named after its table and row. A subtest that passes says nothing; one that
// fails prints inputs, want, got, tolerance and source. The worst row of each
// claim is logged under its table.
func Run(t *testing.T, claims ...Claim) {
	t.Helper()
	var order []string
	byTable := map[string][]Claim{}
	for _, c := range claims {
		if _, seen := byTable[c.Table]; !seen {
			order = append(order, c.Table)
		}
		byTable[c.Table] = append(byTable[c.Table], c)
	}
	for _, id := range order {
		group := byTable[id]
		t.Run(id, func(t *testing.T) {
			for _, c := range group {
				runClaim(t, c, len(group) > 1)
			}
		})
	}
}

// runClaim runs one claim; named adds the column and function to the names of
// its subtests, where a table has several claims.
func runClaim(t *testing.T, c Claim, named bool) {
	t.Helper()
	table, outcomes, err := evaluate(c)
	if err != nil {
		t.Error(err)
		return
	}
	col, _ := table.Column(c.Column)
	worst := outcomes[0]
	for _, o := range outcomes {
		if o.share() > worst.share() {
			worst = o
		}
		t.Run(subtestName(c, o.row, named), func(t *testing.T) {
			if !o.pass() {
				t.Errorf("%s, column %s in %s, line %d of %s.csv\n%s\ntolerance: %s: %s\nsource: %s (%s)",
					c.Func, c.Column, col.Unit, o.row.Line(), table.ID, o.failure(),
					col.Tolerance, col.Reason, table.Source, o.row.Obtained())
			}
		})
	}
	t.Logf("%s, column %s: %d figures; worst at %.2f of the tolerance: %s: want %v, got %v, tolerance %.3g",
		c.Func, c.Column, len(outcomes), worst.share(), worst.row.Name(), worst.want, worst.got, worst.tol)
}

func subtestName(c Claim, row Row, named bool) string {
	name := row.Name()
	if named {
		name += fmt.Sprintf(" %s %s", c.Column, c.Func)
	}
	if row.FromMemory() {
		name += " (from memory)"
	}
	return name
}
