package main

import (
	"os"
	"testing"
	"testing/fstest"

	"example.org/sapreckoner/examples/internal/folder"
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
		house, err := folder.Open(fstest.MapFS{"seasons.csv": {Data: file}}, "", 3000)
		if err != nil {
			return
		}
		var past []yield.PastSeason
		for _, s := range house.PastSeasons() {
			past = append(past, yield.PastSeason{Year: s.Year, Taps: s.Taps, Syrup: s.Syrup})
		}
		if len(past) == 0 {
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
