package pan

import (
	"testing"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// Sap at the ice point takes more heat than as much sap of a degree: 4.15 kJ a
// kilogram, of water's 4.214 (steam tables, from memory) and sugar's 1.2.
func TestPlanHeatOfIceColdSap(t *testing.T) {
	b := sugarhouse()
	b.Hours = 24 * time.Hour
	const mass = 100 * units.Kilogram
	var heat [2]float64
	for i, c := range []float64{0, 1} {
		at := units.Celsius(c)
		rho, err := density.Solution(2, at)
		if err != nil {
			t.Fatal(err)
		}
		p, err := b.Plan(Gathering{Volume: mass.Volume(rho), Brix: 2, Temperature: at})
		if err != nil {
			t.Fatal(err)
		}
		heat[i] = p.Heat.In(units.Kilojoule)
	}
	if got := (heat[0] - heat[1]) / mass.Kilograms(); !near(got, 4.154, 0.01) {
		t.Errorf("a degree takes %v kJ/kg", got)
	}
}

// A plan in which nothing spills, waits too long or is left says so, and a liter
// too much does not go unseen.
func TestPlanSmall(t *testing.T) {
	b := sugarhouse()
	sap := Gathering{Volume: 20 * units.Liter, Brix: 2, Temperature: units.Celsius(4)}
	p, err := b.Plan(Gathering{}, sap)
	if err != nil || p.FirstSpill != -1 || p.FirstOverdue != -1 || p.Evenings[0].First != -1 || p.Evenings[1].First != 1 {
		t.Errorf("a small day: %+v, %v", p, err)
	}
	b.Storage, b.Hours = 19*units.Liter, 0
	p, err = b.Plan(Gathering{}, sap, Gathering{}, Gathering{})
	if err != nil || p.FirstSpill != 1 || !near(p.Spilled.Liters(), 1, 1e-12) {
		t.Errorf("20 L into 19 L: %+v, %v", p, err)
	}
	// What spills again does not move the day on which it first did.
	p2, err := b.Plan(sap, sap)
	if err != nil || p2.FirstSpill != 0 || !near(p2.Spilled.Liters(), 21, 1e-12) {
		t.Errorf("twice 20 L into 19 L: %+v, %v", p2, err)
	}
	// Two days old on the fourth day.
	if p.FirstOverdue != 3 || !near(p.Evenings[3].Overdue.Liters(), 19, 1e-12) {
		t.Errorf("19 L kept too long: %+v", p)
	}
}

// Half an hour decides between saps of different days: 47.5 h from the second
// day on end before 72 h from the first.
func TestPlanHalfAnHour(t *testing.T) {
	b := sugarhouse()
	b.Heat = 5 * units.Kilowatt
	first := Gathering{Volume: 500 * units.Liter, Brix: 2, Temperature: units.Celsius(4), Keep: 72 * time.Hour}
	second := first
	for keep, want := range map[time.Duration]int{47*time.Hour + 30*time.Minute: 1, 48*time.Hour + 30*time.Minute: 0} {
		second.Keep = keep
		if p, err := b.Plan(first, second); err != nil || p.Evenings[1].First != want {
			t.Errorf("kept %v: %+v, %v", keep, p, err)
		}
	}
}

func TestPlanUrgentFirst(t *testing.T) {
	b := sugarhouse()
	b.Heat = 20 * units.Kilowatt
	sap := Gathering{Volume: 100 * units.USGallon, Brix: 2, Temperature: units.Celsius(4)}
	concentrate := sap
	concentrate.Brix, concentrate.Keep = 8, 12*time.Hour
	p, err := b.Plan(sap, concentrate, sap, Gathering{}, Gathering{})
	if err != nil {
		t.Fatal(err)
	}
	if p.Evenings[0].First != 0 || p.Evenings[1].First != 1 {
		t.Errorf("first %d and %d", p.Evenings[0].First, p.Evenings[1].First)
	}
	if p.FirstOverdue < 1 {
		t.Errorf("overdue on day %d", p.FirstOverdue)
	}
	b.Keep = 0
	p, err = b.Plan(sap, sap, sap, sap)
	if err != nil || p.FirstOverdue != -1 || p.Evenings[3].First > 3 {
		t.Errorf("without a keep time: overdue on day %d, %v", p.FirstOverdue, err)
	}
	for i := range 3 {
		if p.Evenings[i].First > p.Evenings[i+1].First {
			t.Errorf("day %d before day %d", p.Evenings[i].First, p.Evenings[i+1].First)
		}
	}
}
