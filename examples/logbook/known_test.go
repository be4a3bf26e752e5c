package main

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// A season of one gallon, whose figures are known: 43.389 US gal of sap of 2.0
// Brix make one of syrup of 66.0 (by the balance of sugar), boiling them takes
// 400,000 Btu (Ohio State University Extension; 404,680 computed from sap at 40
// F), and 100 lb of pellets hold 820,000 Btu (16.4 million a short ton, USDA
// Forest Products Laboratory, from memory), of which that is 49.35 percent. A
// US gallon of syrup of 66.9 Brix has a mass of 11.0843 lb and weighs 11.0759 lb
// on a scale in air (the check value of density.InAir). Instruments are read at
// the temperature they are graduated at.
func known(t *testing.T, b clitest.Binary) {
	dir := write(t, map[string]string{
		"gatherings.csv": "time,source,volume_us_gal,reading_brix,read_at_f,temp_f\n2034-03-01 16:00,hill,43.389,2.0,38,68\n",
		"boils.csv":      "lit,fired_min,sap_us_gal,reading_brix,read_at_f,temp_f,end_brix,kind,weighed_lb\n2034-03-02 08:00,240,43.316,2.0,38,40,66,pellets,100\n",
		"draws.csv":      "time,lot,weight_lb,reading_brix,cup_f\n2034-03-02 12:00,A,5.53795,66.9,60\n2034-03-02 12:10,A,5.53795,66.9,60\n",
		"packing.csv":    "day,lot,size_us_qt,count\n2034-03-02,A,1,3\n2034-03-02,A,0.5,1\n",
		"fuel.csv":       "day,kind,weighed_kg\n2033-10-02,Pellets,100\n",
	})
	status, out, errs := b.Run(t, "", "-dir", dir, "-taps", "4", "-elevation", "0 ft", "-json")
	if status != 0 {
		t.Fatal(errs)
	}
	var page struct {
		Balance struct {
			Sap   float64 `json:"sap_us_gal"`
			Exact float64 `json:"exact"`
			Tap   float64 `json:"sap_a_tap_us_gal"`
			Out   float64 `json:"sugar_out_lb"`
		} `json:"balance"`
		Boils struct {
			Hours float64 `json:"hours_h"`
			Water float64 `json:"water_lb"`
		} `json:"boils"`
		Fire struct {
			Fire []struct {
				Basis string     `json:"basis"`
				In    float64    `json:"efficiency_pct"`
				Next  [2]float64 `json:"next_pct"`
			} `json:"fire"`
		} `json:"fire"`
		Fuel struct {
			Fuel []struct {
				Left float64 `json:"left_lb"`
			} `json:"fuel"`
		} `json:"fuel"`
		Lots struct {
			Lots []struct {
				Drawn float64 `json:"drawn_us_gal"`
				Left  float64 `json:"left_us_gal"`
			} `json:"lots"`
		} `json:"lots"`
		Packing struct {
			Containers int     `json:"containers"`
			Volume     float64 `json:"volume_us_gal"`
		} `json:"packing"`
	}
	if err := json.Unmarshal([]byte(out), &page); err != nil {
		t.Fatal(err)
	}
	if len(page.Fire.Fire) != 1 || len(page.Lots.Lots) != 1 || len(page.Fuel.Fuel) != 1 || page.Fire.Fire[0].Basis != "gross" || page.Packing.Containers != 4 {
		t.Fatalf("page %+v", page)
	}
	for _, c := range []struct {
		what            string
		got, want, free float64
	}{
		{"sap", page.Balance.Sap, 43.389, 0.001},
		{"sap to one of 66.9 Brix", page.Balance.Exact, 43.389 * 66.9 * 11.0843 / (66.0 * 1.32516 * 8.3304), 0.007}, // NBS C440: 66.0 Brix is 1.32516 times water, 8.3304 lb to the gallon
		{"sap by the tap", page.Balance.Tap, 43.389 / 4, 0.001},
		{"sugar out", page.Balance.Out, 0.669 * 11.0843, 0.0001},
		{"hours", page.Boils.Hours, 4, 1e-9},
		{"water boiled off", page.Boils.Water, 353.22, 0.4},
		{"efficiency", page.Fire.Fire[0].In, 49.35, 0.06},
		{"of the next boil at least", page.Fire.Fire[0].Next[0], 49.35 * 0.8, 0.06}, // one boil: a fifth to each side
		{"of the next boil at most", page.Fire.Fire[0].Next[1], 49.35 * 1.2, 0.06},
		{"pellets left", page.Fuel.Fuel[0].Left, 100/0.45359237 - 100, 1e-4},
		{"drawn", page.Lots.Lots[0].Drawn, 1, 1e-4},
		{"not packed", page.Lots.Lots[0].Left, 1 - 0.875, 1e-4},
		{"packed", page.Packing.Volume, 0.875, 1e-9},
	} {
		if !(math.Abs(c.got-c.want) <= c.free) {
			t.Errorf("%s: %v, want %v within %v", c.what, c.got, c.want, c.free)
		}
	}
}

// A hot cup of syrup reads 59 Brix; written down as a cup of 60 F it is no syrup.
func unlikely(t *testing.T, b clitest.Binary) {
	const sap = "time,source,volume_us_gal,reading_brix,read_at_f\n2034-03-01 16:00,hill,600,2.0,38\n"
	for cup, odd := range map[string]bool{"208": false, "60": true} {
		dir := write(t, map[string]string{"gatherings.csv": sap, "draws.csv": "time,lot,volume_us_gal,reading_brix,cup_f\n2034-03-02 12:00,A,1,59,208\n2034-03-02 13:00,A,1,59," + cup + "\n"})
		status, out, errs := b.Run(t, "", "-dir", dir)
		words := strings.Join(strings.Fields(out), " ")
		if status != 0 || strings.Contains(words, "A has 1 of 2 draws under 60 Brix or over 72 Brix") != odd {
			t.Errorf("a cup of %s F: %s%s", cup, out, errs)
		}
	}
}

// Each cup of syrup tells how hot its own measure was, where the file has no
// temp column and where its cells are empty. 10 US gal at 70 F shrink to 9.9955
// at 68 F: by the correction of a stem graduated at 20 C, 1.65 Brix at 40 C in 60
// Brix (NBS Circular C440), syrup of 66 Brix, 6.1 kg/m3 denser with each Brix,
// expands by 0.04 percent a degree C, the glass of the stem with it.
func cups(t *testing.T, b clitest.Binary) {
	const sap = "time,source,volume_us_gal,reading_brix,read_at_f\n2034-03-01 16:00,hill,600,2.0,38\n"
	for _, draws := range []string{
		"time,lot,volume_us_gal,reading_brix,cup_f\n2034-03-02 12:00,A,1,59.5,208\n2034-03-02 12:10,B,10,66,70\n",
		"time,lot,volume_us_gal,reading_brix,cup_f,temp_f\n2034-03-02 12:00,A,1,59.5,208,\n2034-03-02 12:10,B,10,66,70,\n",
	} {
		dir := write(t, map[string]string{"gatherings.csv": sap, "draws.csv": draws})
		status, out, errs := b.Run(t, "", "-dir", dir, "-json")
		if status != 0 {
			t.Fatal(errs)
		}
		var page struct {
			Lots struct {
				Lots []struct {
					Drawn float64 `json:"drawn_us_gal"`
				} `json:"lots"`
			} `json:"lots"`
		}
		if err := json.Unmarshal([]byte(out), &page); err != nil {
			t.Fatal(err)
		}
		if len(page.Lots.Lots) != 2 {
			t.Fatalf("lots %+v", page.Lots.Lots)
		}
		if got := page.Lots.Lots[1].Drawn; !(math.Abs(got-9.9955) < 0.001) {
			t.Errorf("10 US gal at 70 F are %v at 68 F", got)
		}
	}
}
