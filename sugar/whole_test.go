package sugar_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"testing"

	"example.org/sapreckoner/internal/base/object"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Nothing is no separation: a field that is missing is told, not taken for none.
func TestNothingIsRefused(t *testing.T) {
	for _, into := range []any{new(sugar.Separation), new(sugar.Addition), new(sugar.Tinted)} {
		if err := json.Unmarshal([]byte(`{}`), into); !errors.Is(err, object.ErrMissing) {
			t.Errorf("%T reads {}: %v", into, err)
		}
	}
}

// What goes out comes back. A field that is missing is refused.
func ExampleSeparation_UnmarshalJSON() {
	lot, _ := sugar.NewLotByMass(64*units.Kilogram, 2, units.Celsius(4))
	parted, _ := sugar.Concentrate(lot, 8)
	thinned, _ := sugar.Thin(parted.Concentrate, 0, units.Celsius(4), 4)
	syrup := sugar.Tinted{Volume: units.Liter, Transmission: 50}

	var (
		s sugar.Separation
		a sugar.Addition
		v sugar.Tinted
	)
	one, _ := json.Marshal(parted)
	two, _ := json.Marshal(thinned)
	three, _ := json.Marshal(syrup)
	fmt.Println(s.UnmarshalJSON(one), a.UnmarshalJSON(two), v.UnmarshalJSON(three))
	fmt.Println(s == parted, a == thinned, v == syrup)
	fmt.Println(units.Reason(v.UnmarshalJSON([]byte(`{"Volume":"1 L"}`)), units.US))
	// Output:
	// <nil> <nil> <nil>
	// true true true
	// Transmission: missing
}
