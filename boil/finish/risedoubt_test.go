package finish_test

import (
	"math"
	"testing"
	"time"
)

// A formula that is off by its doubt moves the answers of a watch by what is
// stated, however many readings there are; in learned readings it is not stated.
func TestWatchDoubtsTheFormula(t *testing.T) {
	w := watch(t)
	r := readingsOf(t, 40, 5*time.Second, quiet)
	sure, err := w.Outlook(r...)
	if err != nil {
		t.Fatal(err)
	}
	w.Learned = false
	unsure, err := w.Outlook(r...)
	if err != nil || !near(float64(unsure.Now), float64(sure.Now), 1e-12) || !near(float64(unsure.PerMinute), float64(sure.PerMinute), 1e-12) || unsure.Left != sure.Left {
		t.Fatalf("%+v, %v; learned %+v", unsure, err, sure)
	}
	w.Learned = true
	for i := range r { // as much hotter as the formula may be off
		r[i].Shown = w.Water.Add(r[i].Shown.Sub(w.Water) * (1 + 0.1/4.199))
	}
	moved, err := w.Outlook(r...)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		name                string
		move, with, without float64
	}{
		{"strength", float64(moved.Now - sure.Now), float64(unsure.NowBy), float64(sure.NowBy)},
		{"climb", float64(moved.PerMinute - sure.PerMinute), float64(unsure.PerMinuteBy), float64(sure.PerMinuteBy)},
		{"time left", float64(moved.Left - sure.Left), float64(unsure.LeftBy), float64(sure.LeftBy)},
	} {
		if stated := math.Sqrt(c.with*c.with - c.without*c.without); !near(math.Abs(c.move), stated, 1e-3*stated+1e-9) {
			t.Errorf("it moves the %s by %v, stated %v", c.name, c.move, stated)
		}
	}
	if !(unsure.NowBy > 0.3) { // 0.43 Brix at the stop, less of it below
		t.Errorf("forty readings leave %v", unsure.NowBy)
	}
}
