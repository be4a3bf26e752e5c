package boil_test

import (
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/units"
)

// evening is 10 kg at 60 Brix that lose 10 kg in an hour.
var evening = finish.Batch{Mass: 10, Brix: 60, Evaporation: 10 * units.KilogramPerHour}

func quiet() units.TempDiff { return 0 }

// readings of the evening every step, n of them, each off by noise.
func readingsOf(t testing.TB, n int, step time.Duration, noise func() units.TempDiff) []finish.WatchReading {
	t.Helper()
	out := make([]finish.WatchReading, n)
	for i := range out {
		at := time.Duration(i) * step
		b, err := evening.After(at)
		if err != nil {
			t.Fatal(err)
		}
		point, err := boil.SyrupPoint(b, watched)
		if err != nil {
			t.Fatal(err)
		}
		out[i] = finish.WatchReading{At: at, Shown: point.Add(noise())}
	}
	return out
}

// watch is the watch of an invented evening: water boils where it should, and the
// readings are made by the formula, which leaves nothing of it to doubt.
func watch(t testing.TB) finish.Watch {
	t.Helper()
	water, err := boil.Water(watched)
	if err != nil {
		t.Fatal(err)
	}
	return finish.Watch{Target: 66.9, Water: water, ProbeBy: units.FahrenheitDegrees(0.1), Learned: true}
}

const watched = 95 * units.Kilopascal

// A kettle on a block arch, invented.
func kettle() pan.Rig {
	return pan.Rig{
		Compartments: []pan.Compartment{{
			Area: 6 * units.SquareFoot, Depth: 8 * units.Inch, SafeDepth: 0.1 * units.Inch,
		}},
		Heat: 25 * units.Kilowatt,
		Draw: pan.DrawOff{At: 66.0},
	}
}
