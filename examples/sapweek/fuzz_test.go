package main

import (
	"bytes"
	"os"
	"testing"

	"example.org/sapreckoner/yield"
)

// Whatever a file of past seasons holds, it is refused or a forecast comes of it.
func FuzzPast(f *testing.F) {
	seasons, err := os.ReadFile("testdata/grove/seasons.csv")
	if err != nil {
		f.Fatal(err)
	}
	f.Add(seasons)
	f.Add([]byte("year,taps,syrup_l\n2029,1e8,0\n"))
	f.Add([]byte("taps,syrup_us_gal,year,note\n50,1e9,2029,\"\n"))
	f.Fuzz(func(t *testing.T, file []byte) {
		past, err := readPast("past.csv", bytes.NewReader(file))
		if err != nil {
			return
		}
		years := map[int]bool{}
		for _, s := range past {
			if years[s.Year] {
				t.Errorf("%d stands twice", s.Year)
			}
			years[s.Year] = true
		}
		forecast, err := yield.ForecastFromPast(60, past)
		if err != nil {
			t.Fatal(err)
		}
		if !(0 <= forecast.Low && forecast.Low <= forecast.Middle && forecast.Middle <= forecast.High) {
			t.Errorf("%+v of %+v", forecast, past)
		}
	})
}
