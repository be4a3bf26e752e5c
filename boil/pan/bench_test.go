package pan

import (
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// BenchmarkNightAndMorning cools what stands in five compartments through a night
// and boils twelve hours over coals from there, with a thin stream and with a
// valve.
func BenchmarkNightAndMorning(b *testing.B) {
	for _, bm := range []struct {
		name  string
		until units.Brix
	}{{"stream", 0}, {"valve", 66}} {
		b.Run(bm.name, func(b *testing.B) {
			b.ReportAllocs()
			r, d := partitioned(), longDay()
			r.Coals, r.Draw.Until = 8*time.Minute, bm.until
			held := mustRun(b, r, d).Held
			for b.Loop() {
				m, err := held.Overnight(Night{Length: 12 * time.Hour, Air: units.Celsius(-4), Halving: 2 * time.Hour})
				if err != nil {
					b.Fatal(err)
				}
				d.Start = m.Contents.Thawed()
				if _, err := r.Run(d); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// BenchmarkFits finds what of the sap is done by a time, over coals.
func BenchmarkFits(b *testing.B) {
	r := partitioned()
	r.Coals = 8 * time.Minute
	for b.Loop() {
		if _, err := r.Fits(evening(400), Budget{Done: 22 * time.Hour}); err != nil {
			b.Fatal(err)
		}
	}
}
