package finish_test

import (
	"errors"
	"fmt"
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/units"
)

// Each outcome is told by its own error and by no other, and by the range error
// that it always was.
func TestOrdinaryOutcomes(t *testing.T) {
	b := finish.Batch{Mass: 20, Brix: 65, Evaporation: 10 * units.KilogramPerHour}
	w := watch(t)
	one := readingsOf(t, 1, time.Minute, quiet)
	point := func(b units.Brix, err error) error {
		if !math.IsNaN(float64(b)) {
			t.Errorf("%v beside %v", float64(b), err)
		}
		return err
	}
	look := func(_ finish.Outlook, err error) error { return err }
	all := []error{finish.ErrBurns, finish.ErrCoalsFinish, finish.ErrFewReadings}
	for _, tc := range []struct {
		name string
		err  error
		want error // nil: a plain range error
	}{
		// 20 kg (1 - 65/92) are 5.87 kg: two hours at 10 kg/h are more, and so is
		// what two hours of halving leave, 28.9 kg; 1 GJ boils off 440 kg.
		{"boiled on", point(b.After(2 * time.Hour)), finish.ErrBurns},
		{"coasted", point(b.Coast(2 * time.Hour)), finish.ErrBurns},
		{"on stored heat", point(b.CoastOn(units.Gigajoule, units.Atmosphere)), finish.ErrBurns},
		// 10 kg/h for a minute over ln 2 are 0.240 kg: 65 x 20/19.76 is 65.79.
		{"under what the coals do", point(b.LastFiring(65.7, time.Minute)), finish.ErrCoalsFinish},
		{"at the strength of the batch", point(b.LastFiring(65, time.Minute)), finish.ErrCoalsFinish},
		{"thinner than the batch", point(b.LastFiring(64, time.Minute)), nil},
		{"beyond the range", point(b.LastFiring(92.5, time.Minute)), nil},
		{"no target", point(b.LastFiring(units.Brix(math.NaN()), time.Minute)), nil},
		{"no time", point(b.Coast(-1)), nil},
		{"no reading", look(w.Outlook()), finish.ErrFewReadings},
		{"one reading", look(w.Outlook(one...)), finish.ErrFewReadings},
		{"one time twice", look(w.Outlook(one[0], one[0])), nil},
	} {
		wantRange(t, tc.name, tc.err)
		for _, is := range all {
			if errors.Is(tc.err, is) != (is == tc.want) {
				t.Errorf("%s: %v, is %q: %v", tc.name, tc.err, is, errors.Is(tc.err, is))
			}
		}
		if text := (*units.RangeError)(nil); !errors.As(tc.err, &text) || text.Error() != tc.err.Error() {
			t.Errorf("%s: %q is not what its range error says", tc.name, tc.err)
		}
	}
	if stop, err := b.LastFiring(65.8, time.Minute); err != nil || !(stop > 65 && stop < 65.1) {
		t.Errorf("over what the coals do: stop at %v, %v", float64(stop), err)
	}
}

// 20 kg of 65 Brix that lose 10 kg in an hour coast to 66.6 on coals that halve
// in 2 minutes: see [finish.Batch.Coast]. For a target of 66 it is too late to put
// wood on.
func Example_coalsFinish() {
	batch := finish.Batch{Mass: 20, Brix: 65, Evaporation: 10 * units.KilogramPerHour}
	stop, err := batch.LastFiring(66, 2*time.Minute)
	if errors.Is(err, finish.ErrCoalsFinish) {
		fmt.Println("No more wood: take the pan off as soon as it is syrup.")
		return
	}
	fmt.Println(stop, err)
	// Output: No more wood: take the pan off as soon as it is syrup.
}

// One reading is no line: that is no mistake, and the next one mends it.
func Example_fewReadings() {
	watch := finish.Watch{Target: 66.9, Water: units.Fahrenheit(212), ProbeBy: 0.1 * units.FahrenheitDegree}
	_, err := watch.Outlook(finish.WatchReading{At: 0, Shown: units.Fahrenheit(217.4)})
	if errors.Is(err, finish.ErrFewReadings) {
		fmt.Println("Wait for another reading.")
	}
	// Output: Wait for another reading.
}

// In two hours 20 kg of 65 Brix would lose all their water.
func Example_burns() {
	batch := finish.Batch{Mass: 20, Brix: 65, Evaporation: 10 * units.KilogramPerHour}
	_, err := batch.After(2 * time.Hour)
	fmt.Println(errors.Is(err, finish.ErrBurns))
	// Output: true
}
