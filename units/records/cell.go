package records

import (
	"slices"
	"strings"
)

// Cell asks for a column whose cells the caller reads himself: they come as they
// are written, without the spaces around them. The header has one of the units
// behind the name, which goes into unit unless that is nil, or none if there are
// no units.
func Cell(name string, into, unit *string, units ...string) Col {
	want := []string{name}
	if len(units) > 0 {
		want = nil
		for _, u := range units {
			want = append(want, name+"_"+u)
		}
	}
	return Col{name: name, want: want[0], suffixes: strings.Join(want, " or "),
		clear: func() { *into = "" },
		bind: func(suffix string) (func(string) error, bool) {
			if !slices.Contains(units, suffix) && (suffix != "" || len(units) > 0) {
				return nil, false
			}
			if unit != nil {
				*unit = suffix
			}
			known := names{}
			return func(cell string) error { *into = known.keep(cell); return nil }, true
		}}
}
