package yield_test

import (
	"errors"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// Called by itself, without encoding/json before it, a decoder refuses what is no
// JSON, and leaves the tank alone.
func TestTankDecoderRefuses(t *testing.T) {
	want, err := yield.UprightCylinder(units.Meter, units.Meter)
	if err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{`x`, `[]`, `{"shape":"upright cylinder","height":"1 m","diameter":"1 m","color":1}`} {
		tank := want
		if err := tank.UnmarshalJSON([]byte(text)); err == nil || tank != want {
			t.Errorf("%s: %v, %v", text, tank, err)
		}
	}
}

// A reason of another version comes back as its words.
func TestForeignReason(t *testing.T) {
	var e yield.TraceError
	if err := e.UnmarshalJSON([]byte(`{"id":"b1","reason":"washed away"}`)); err != nil || e.Err == nil || e.Err.Error() != "washed away" {
		t.Errorf("%+v, %v", e, err)
	}
}

// In both systems one range stands behind the other: 10 gal are 37.85 L, 20 are
// 75.71, 15 are 56.78.
func TestForecastInBoth(t *testing.T) {
	f := yield.Forecast{Basis: yield.OwnSeasons, Low: 10 * units.USGallon, Middle: 15 * units.USGallon, High: 20 * units.USGallon}
	const want = "10 US gal to 20 US gal, 15 US gal in the middle (38 L to 76 L, 57 L in the middle), by own past seasons"
	if got := f.Text(units.Both); got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// What is kept beyond what came in is told by its field and in words, each in its
// place.
func TestMoreKept(t *testing.T) {
	lot, err := sugar.NewLot(100*units.USGallon, 2, units.Celsius(4))
	if err != nil {
		t.Fatal(err)
	}
	s := yield.Season{Taps: 1, Days: 1, Sap: []sugar.Lot{lot}, HeldAfter: []sugar.Lot{lot, lot},
		SapMeasured: yield.Measured{Volume: 1, Brix: 0.1}, HeldMeasured: yield.Measured{Volume: 1, Brix: 0.1}, SyrupMeasured: yield.Measured{Volume: 1, Brix: 0.1}}
	_, err = s.Expect(10, 66)
	var e *units.RangeError
	if !errors.As(err, &e) || e.Arg != "Season.HeldAfter" || e.What != "sugar kept" || e.Unit != "kg" {
		t.Errorf("%+v", err)
	}
}
