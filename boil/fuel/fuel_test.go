package fuel_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/units"
)

func wantBasis(t *testing.T, name string, err error) {
	t.Helper()
	var e *fuel.BasisError
	if !errors.As(err, &e) || !strings.HasPrefix(err.Error(), "fuel.") {
		t.Errorf("%s: error %v, want a BasisError", name, err)
	}
}

// An efficiency counts once: on heat of its own basis, and never on delivered
// heat.
func TestEfficiencyOnlyOnItsBasis(t *testing.T) {
	half := func(of fuel.Basis) fuel.Efficiency {
		return fuel.Efficiency{Low: 50 * units.Percent, High: 50 * units.Percent, Basis: of}
	}
	for heat := fuel.Basis(0); heat <= fuel.Delivered+1; heat++ {
		for of := fuel.Basis(0); of <= fuel.Delivered+1; of++ {
			f := fuel.Fuel[units.Volume]{Name: "x", Heat: units.Megajoule, Per: units.Liter, Basis: heat}
			at := half(of)
			if of == 0 {
				at = fuel.Efficiency{}
			}
			need, err := f.Needed(units.Megajoule, at)
			made, err2 := f.Makes(units.Liter, at)
			switch {
			case heat == fuel.Delivered && of == 0:
				if need.Low != need.Middle || need.High != need.Middle || made.Low != made.Middle || made.High != made.Middle {
					t.Errorf("delivered heat is no span: %v, %v", need, made)
				}
				if err != nil || err2 != nil || !near(need.Middle.Liters(), 1, 1e-12) || !near(made.Middle.Megajoules(), 1, 1e-12) {
					t.Errorf("delivered: %v, %v, %v, %v", need, err, made, err2)
				}
			case heat == of && of >= fuel.Gross && of <= fuel.Net:
				if err != nil || err2 != nil || !near(need.Middle.Liters(), 2, 1e-12) || !near(made.Middle.Megajoules(), 0.5, 1e-12) {
					t.Errorf("%v: %v, %v, %v, %v", heat, need, err, made, err2)
				}
			default:
				wantBasis(t, heat.String()+" at "+of.String(), err)
				wantBasis(t, heat.String()+" at "+of.String(), err2)
				if !math.IsNaN(float64(need.Low)) || !math.IsNaN(float64(made.High)) {
					t.Errorf("%v at %v: %v, %v, want NaN", heat, of, need, made)
				}
			}
		}
	}
}

// Every refusal tells which of the two is at fault, and the way out.
func TestBasisErrorTells(t *testing.T) {
	for _, tc := range []struct {
		heat, efficiency fuel.Basis
		want             string
	}{
		{fuel.Delivered, fuel.Gross, "delivered heat, which holds an efficiency already"},
		{0, fuel.Gross, "has no basis"},
		{fuel.Delivered + 1, fuel.Gross, "has no basis"},
		{0, 0, "has no basis"},
		{fuel.Gross, 0, "gross heat needs an efficiency"},
		{fuel.Net, 0, "net heat needs an efficiency"},
		{fuel.Net, fuel.Gross, "an efficiency on gross heat does not belong to net heat"},
		{fuel.LessMoisture, fuel.Net, "an efficiency on net heat does not belong to less moisture heat"},
	} {
		e := &fuel.BasisError{Func: "fuel.F", Heat: tc.heat, Efficiency: tc.efficiency}
		if got := e.Error(); !strings.HasPrefix(got, "fuel.F: ") || !strings.Contains(got, tc.want) {
			t.Errorf("%v at %v: %q, want %q", tc.heat, tc.efficiency, got, tc.want)
		}
	}
}

// A heat that makes no sense is told for one of what the fuel is sold by.
func TestFuelHeatTold(t *testing.T) {
	f := fuel.Fuel[units.Mass]{Heat: -5, Per: 2, Basis: fuel.Gross}
	var e *units.RangeError
	if _, err := f.Of(1); !errors.As(err, &e) || math.Abs(e.Value+2.5) > 1e-12 {
		t.Errorf("%v", err)
	}
}

// Half a joule is heat, none is not.
func TestFuelOfLittleHeat(t *testing.T) {
	f := fuel.Fuel[units.Mass]{Heat: 0.5, Per: 1, Basis: fuel.Gross}
	if h, err := f.Of(2); err != nil || !near(h.Energy.Joules(), 1, 1e-12) {
		t.Errorf("%v, %v", h, err)
	}
	f.Heat = 0
	if _, err := f.Of(2); err == nil {
		t.Error("a fuel without heat")
	} else if e := (*units.RangeError)(nil); !errors.As(err, &e) || e.Value != 0 || e.Low != 1e-6 {
		t.Error(err)
	}
	// By definition a therm and a kilowatt hour.
	if gas, current := fuel.NaturalGasTherms(), fuel.Electricity(); !near(gas.Heat.Joules()/gas.Per.Joules(), 1, 1e-3) || !strings.Contains(gas.Name, "gas") ||
		!near(current.Heat.Joules()/current.Per.Joules(), 1, 1e-3) || !strings.Contains(current.Name, "electricity") {
		t.Errorf("%+v, %+v", gas, current)
	}
}

func TestFuelLimits(t *testing.T) {
	limittest.Edges(t, "fuel.Fuel.Of", "heat of the fuel", 1e-6, 1e18, 1e7, func(x float64) (float64, error) {
		h, err := fuel.Fuel[units.Mass]{Heat: units.Energy(x), Per: 1, Basis: fuel.Gross}.Of(1)
		return h.Energy.Joules(), err
	})
	p, at := fuel.Propane(), fuel.Efficiency{Low: 1, High: 100, Basis: fuel.Gross}
	for _, x := range []float64{0, 1, 1e15} {
		if _, err := p.Needed(units.Energy(x), at); err != nil {
			t.Error(err)
		}
		if _, err := p.Makes(units.Volume(x), at); err != nil {
			t.Error(err)
		}
	}
	for _, x := range []float64{-1e-300, 1.001e15, math.NaN(), math.Inf(1), math.Inf(-1)} {
		v, err := p.Needed(units.Energy(x), at)
		limittest.Refuses(t, "fuel.Fuel.Needed", "amount", float64(v.Middle), err)
		e, err := p.Makes(units.Volume(x), at)
		limittest.Refuses(t, "fuel.Fuel.Makes", "amount", float64(e.Low), err)
		h, err := p.Of(units.Volume(x))
		limittest.Refuses(t, "fuel.Fuel.Of", "amount", float64(h.Energy), err)
	}
	for _, bad := range []fuel.Fuel[units.Mass]{
		{Basis: fuel.Gross}, {Basis: fuel.Gross, Heat: 1}, {Basis: fuel.Gross, Per: 1},
		{Basis: fuel.Gross, Heat: -1, Per: 1}, {Basis: fuel.Gross, Heat: units.Energy(math.NaN()), Per: 1},
		{Basis: fuel.Gross, Heat: 1, Per: units.Mass(math.Inf(1))},
	} {
		h, err := bad.Of(1)
		wantRange(t, "fuel without heat", err)
		if !math.IsNaN(float64(h.Energy)) {
			t.Errorf("%+v: %v, want NaN", bad, h)
		}
	}
	limittest.Edges(t, "fuel.Fuel.Needed", "efficiency", 1, 100, 50, func(x float64) (float64, error) {
		v, err := p.Needed(1, fuel.Efficiency{Low: units.Share(x), High: units.Share(x), Basis: fuel.Gross})
		return float64(v.Middle), err
	})
	n, err := fuel.NetWood(20)
	if err != nil {
		t.Fatal(err)
	}
	limittest.Edges(t, "fuel.Fuel.Needed", "efficiency", 1, 110, 50, func(x float64) (float64, error) {
		v, err := n.Needed(1, fuel.Efficiency{Low: units.Share(x), High: units.Share(x), Basis: fuel.Net})
		return float64(v.Middle), err
	})
	_, err = p.Needed(1, fuel.Efficiency{Low: 50, High: 40, Basis: fuel.Gross})
	wantRange(t, "ends the wrong way round", err)
}

// What is needed and what it makes are inverses at every end of the efficiency.
func TestNeededAndMakes(t *testing.T) {
	f := fuel.GenericCordwood()
	at := fuel.HomeBuiltPan()
	need, err := f.Needed(1e9, at)
	if err != nil {
		t.Fatal(err)
	}
	for _, tc := range []struct {
		wood units.Volume
		pick func(units.Span[units.Energy]) units.Energy
	}{
		{need.Low, func(s units.Span[units.Energy]) units.Energy { return s.High }},
		{need.Middle, func(s units.Span[units.Energy]) units.Energy { return s.Middle }},
		{need.High, func(s units.Span[units.Energy]) units.Energy { return s.Low }},
	} {
		made, err := f.Makes(tc.wood, at)
		if got := tc.pick(made); err != nil || !near(float64(got), 1e9, 1e-3) {
			t.Errorf("%v of wood make %v, %v", tc.wood, got, err)
		}
	}
	left := need.Left(need.Middle)
	if !near(float64(left.Middle), 0, 1e-12) || left.Low >= 0 || left.High <= 0 {
		t.Errorf("left of the middle need: %v", left)
	}
}

func BenchmarkFuelNeeded(b *testing.B) {
	f, at := fuel.Propane(), fuel.BuiltEvaporator()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := f.Needed(units.MillionBtuIT, at); err != nil {
			b.Fatal(err)
		}
	}
}
