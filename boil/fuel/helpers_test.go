package fuel_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func lotOf(t testing.TB, mass units.Mass, b units.Brix, at units.Temperature) sugar.Lot {
	t.Helper()
	l, err := sugar.NewLotByMass(mass, b, at)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// mustHeat returns a demand.
func mustHeat(t testing.TB, lot sugar.Lot, to units.Brix, p units.Pressure) boil.HeatDemand {
	t.Helper()
	h, err := boil.Heat(lot, to, p)
	if err != nil {
		t.Fatal(err)
	}
	return h
}

func near(got, want, tol float64) bool { return math.Abs(got-want) <= tol }

// sap returns a lot by mass.
func sap(t testing.TB, m units.Mass, b units.Brix, at units.Temperature) sugar.Lot {
	t.Helper()
	l, err := sugar.NewLotByMass(m, b, at)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func wantRange(t *testing.T, name string, err error) {
	t.Helper()
	var e *units.RangeError
	if !errors.As(err, &e) || !errors.Is(err, units.ErrRange) {
		t.Errorf("%s: error %v, want a RangeError", name, err)
	}
}
