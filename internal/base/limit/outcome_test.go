package limit_test

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

var brix = limit.Range{Arg: "Syrup.Brix", What: "sugar content", Low: 0, High: 85, Unit: "Brix"}

// The entry of a list is named by its place, and one thing by its field.
func TestCheckItem(t *testing.T) {
	for i, want := range map[int]string{0: "among[0].Brix", 12: "among[12].Brix", -1: "among.Brix"} {
		var e *units.RangeError
		if err := brix.CheckItem("f", "among", i, "Brix", 86); !errors.As(err, &e) || e.Arg != want || e.What != "sugar content" || e.Value != 86 {
			t.Errorf("%+v, want %s", err, want)
		}
		if err := brix.CheckItem("f", "among", i, "Brix", 85); err != nil {
			t.Error(err)
		}
	}
	if s := limit.Item("times", 3, ""); s != "times[3]" {
		t.Error(s)
	}
	if n := testing.AllocsPerRun(10, func() {
		if brix.CheckItem("f", "among", 3, "Brix", 66) != nil {
			t.Error("66 Brix is refused")
		}
	}); n > 0 {
		t.Errorf("%v allocations", n)
	}
}

// The first name of a pair becomes the second, the words stay, and what has
// another name is left as it is.
func TestRenamed(t *testing.T) {
	inner := brix.CheckAs("other.F", "brix", 86)
	for _, tc := range []struct {
		pairs   []string
		arg, fn string
	}{
		{[]string{"at", "cup", "brix", "syrup"}, "syrup", "f"}, {[]string{"at", "cup"}, "brix", "other.F"}, {nil, "brix", "other.F"}, {[]string{"brix"}, "brix", "other.F"},
	} {
		var e *units.RangeError
		if err := limit.Renamed("f", inner, tc.pairs...); !errors.As(err, &e) || e.Arg != tc.arg || e.Func != tc.fn || e.What != "sugar content" {
			t.Errorf("%q: %+v", tc.pairs, err)
		}
	}
	plain := errors.New("no")
	if limit.Renamed("f", nil, "a", "b") != nil || limit.Renamed("f", plain, "a", "b") != plain {
		t.Error("what is no range error is left as it is")
	}
}

// An outcome is both, is worded for a person, and goes out as the range error.
func TestOutcome(t *testing.T) {
	done := errors.New("done already")
	var e *units.RangeError
	if !errors.As(brix.Check("f", 86), &e) {
		t.Fatal("86 Brix is in the range")
	}
	var err error = &limit.Outcome{RangeError: e, Err: done}
	b, jsonErr := json.Marshal(err)
	if !errors.Is(err, done) || !errors.Is(err, units.ErrRange) || err.Error() != e.Error() || units.Reason(err, units.US) != e.Text(units.US) ||
		jsonErr != nil || !strings.Contains(string(b), `"arg":"Syrup.Brix"`) {
		t.Errorf("%v, %s, %v", err, b, jsonErr)
	}
}
