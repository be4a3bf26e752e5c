package main

import (
	"html"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

var (
	tableElement = regexp.MustCompile(`(?s)<table id="(\w+)">.*?<tbody>(.*?)</tbody>.*?</table>`)
	rowElement   = regexp.MustCompile(`(?s)<tr.*?</tr>`)
	cellElement  = regexp.MustCompile(`<t[hd][^>]*>([^<]*)</t[hd]>`)
	styleElement = regexp.MustCompile(`(?s)<head>.*</head>`)
	tag          = regexp.MustCompile(`<[^>]*>`)
	digitsOfPage = regexp.MustCompile(`[−+]?\d+(\.\d+)?`)
)

// tables reads the cells of the page.
func tables(t testing.TB, page string) map[string][][]string {
	t.Helper()
	all := map[string][][]string{}
	for _, m := range tableElement.FindAllStringSubmatch(page, -1) {
		for _, r := range rowElement.FindAllString(m[2], -1) {
			var cells []string
			for _, c := range cellElement.FindAllStringSubmatch(r, -1) {
				cells = append(cells, html.UnescapeString(c[1]))
			}
			all[m[1]] = append(all[m[1]], cells)
		}
	}
	return all
}

// read is the number in a cell and half a unit of its last digit.
func read(t testing.TB, cell string) (x, half float64) {
	t.Helper()
	s := strings.TrimRight(strings.TrimSuffix(cell, " %"), "*")
	s = strings.ReplaceAll(s, "−", "-")
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	half, err = check.HalfDigit(s)
	if err != nil {
		t.Fatal(err)
	}
	return x, half + 1e-9
}

func must[T any](x T, err error) T {
	if err != nil {
		panic(err)
	}
	return x
}

// Every cell of every table is what the library gives for the head of its row.
func TestTables(t *testing.T) {
	for _, tc := range []struct {
		args        []string
		target      units.Brix
		syrup, sap  units.Temperature
		metric      bool
		middle, bar float64 // station pressure, and the step of the band
	}{
		{nil, 66.9, units.Fahrenheit(60), units.Fahrenheit(38), false, must(boil.PressureAt(1200 * units.Foot)).InchesMercury(), 0.2},
		{[]string{"-metric"}, 66.9, units.Fahrenheit(60), units.Fahrenheit(38), true, must(boil.PressureAt(1200 * units.Foot)).Hectopascals(), 5},
		{[]string{"-water-boils", "207.4 F", "-target", "66 Brix", "-hydrometer", "20 C", "-sap-hydrometer", "20 C"}, 66,
			units.Celsius(20), units.Celsius(20), false, must(boil.PressureFromWater(units.Fahrenheit(207.4))).InchesMercury(), 0.2},
		{[]string{"-altimeter", "1030 hPa", "-elevation", "300 m", "-metric", "-target", "68.9 Brix"}, 68.9, units.Fahrenheit(60), units.Fahrenheit(38),
			true, must(boil.StationPressure(1030*units.Hectopascal, 300*units.Meter)).Hectopascals(), 5},
	} {
		all := tables(t, page(t, tc.args...))
		temperature, pressure := units.Fahrenheit, units.InchesMercury
		if tc.metric {
			temperature, pressure = units.Celsius, units.Hectopascals
		}
		// want gives the figures behind the head of a row.
		want := map[string]func(head float64) []float64{
			"boiling": func(x float64) []float64 {
				p := pressure(x)
				w, y := must(boil.Water(p)), must(boil.SyrupPoint(tc.target, p))
				if tc.metric {
					return []float64{p.InchesMercury(), w.Celsius(), w.Fahrenheit(), y.Celsius(), y.Fahrenheit()}
				}
				return []float64{p.Hectopascals(), w.Fahrenheit(), w.Celsius(), y.Fahrenheit(), y.Celsius()}
			},
			"cup": func(x float64) []float64 {
				b := must(density.Hydrometer{GraduatedAt: tc.syrup}.Reading(tc.target, temperature(x)))
				return []float64{other(temperature(x), tc.metric), float64(b), float64(must(density.BaumeFromBrix(b)))}
			},
			"sap": func(x float64) []float64 {
				b := must(density.Hydrometer{GraduatedAt: tc.sap}.Brix(2, temperature(x)))
				return []float64{other(temperature(x), tc.metric), float64(b) - 2}
			},
			"ratio": func(x float64) []float64 {
				exact := must(yield.Ratio(units.Brix(x), tc.target))
				return []float64{exact, 86 / x, 100 * (86/x/exact - 1)}
			},
			"fill": func(x float64) []float64 {
				cold, hot := must(density.Solution(tc.target, units.Celsius(20))), must(density.Solution(tc.target, temperature(x)))
				flOz, ml := 32*(float64(cold/hot)-1), 1000*(float64(cold/hot)-1)
				if tc.metric {
					flOz, ml = ml, flOz
				}
				return []float64{other(temperature(x), tc.metric), flOz, ml}
			},
		}
		for id, figures := range want {
			if len(all[id]) < 5 {
				t.Errorf("%q: table %s has %d rows", tc.args, id, len(all[id]))
			}
			for _, cells := range all[id] {
				head, _ := read(t, cells[0])
				exact := figures(head)
				if len(cells) != len(exact)+1 {
					t.Fatalf("%q: table %s: %d cells, want %d", tc.args, id, len(cells), len(exact)+1)
				}
				for i, x := range exact {
					if got, half := read(t, cells[i+1]); !(math.Abs(got-x) <= half) {
						t.Errorf("%q: table %s, row %s, column %d: %s, want %v", tc.args, id, cells[0], i+1, cells[i+1], x)
					}
				}
				if id == "fill" && temperature(head).Fahrenheit() > 190+1e-9 { // Ohio State University Extension: 180 to 190 F
					t.Errorf("%q: row %s asks for a pour above 190 F", tc.args, cells[0])
				}
				marked := strings.HasSuffix(cells[0], "*")
				if id == "cup" && marked != density.Extrapolated(temperature(head)) || id != "cup" && marked {
					t.Errorf("%q: table %s, row %s: wrongly marked or not marked", tc.args, id, cells[0])
				}
			}
		}
		if middle, _ := read(t, all["boiling"][bandSteps][0]); !(math.Abs(middle-tc.middle) <= tc.bar/2+1e-9) {
			t.Errorf("%q: the band stands around %v, want %v", tc.args, middle, tc.middle)
		}
		if n := len(all["boiling"]); n != 2*bandSteps+1 {
			t.Errorf("%q: the band has %d rows", tc.args, n)
		}
	}
}

// other is a temperature on the scale that stands second.
func other(t units.Temperature, metric bool) float64 {
	if metric {
		return t.Fahrenheit()
	}
	return t.Celsius()
}

// words is what the page says outside of its tables and charts.
func words(page string) string {
	for _, e := range []*regexp.Regexp{styleElement, svgElement, tableElement} {
		page = e.ReplaceAllString(page, " ")
	}
	return html.UnescapeString(tag.ReplaceAllString(page, " "))
}

// Every number outside of the tables, in the order of the page, is an input, a
// figure of the library or a name.
func TestNumbersInWords(t *testing.T) {
	p := must(boil.PressureAt(1200 * units.Foot))
	water, syrup := must(boil.Water(p)), must(boil.SyrupPoint(66.9, p))
	rise := must(boil.Rise(66.9, p))
	slip := must(boil.BrixFromRise(rise+0.5*units.FahrenheitDegree, p)) - 66.9
	cup := must(density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}.Reading(66.9, units.Fahrenheit(210)))
	type number struct {
		x        float64
		decimals int
		why      string
	}
	want := []number{
		{66.9, 1, "target"}, {float64(must(density.BaumeFromBrix(66.9))), 1, "target in Baume"},
		{1200, 0, "elevation, ft"}, {1200 * 0.3048, 0, "elevation, m"}, {p.InchesMercury(), 2, "station pressure"}, {p.Hectopascals(), 0, "station pressure"},
		{water.Fahrenheit(), 1, "water, F"}, {water.Celsius(), 1, "water, C"},
		{syrup.Fahrenheit(), 1, "syrup, F"}, {syrup.Celsius(), 1, "syrup, C"},
		{210, 0, "first cup, F"}, {units.Fahrenheit(210).Celsius(), 0, "first cup, C"},
		{float64(cup), 1, "first cup, Brix"}, {float64(must(density.BaumeFromBrix(cup))), 1, "first cup, Baume"},
		{rise.FahrenheitDegrees(), 1, "rise, F"}, {rise.CelsiusDegrees(), 1, "rise, C"},
		{0.5, 1, "slip, F"}, {0.5 / 1.8, 1, "slip, C"}, {float64(slip), 1, "slip, Brix"},
		{60, 1, "graduation, F"}, {units.Fahrenheit(60).Celsius(), 1, "graduation, C"},
		{0.1, 1, "uncertainty: TestUncertainty"}, {194, 0, "extrapolated above, F"}, {90, 0, "extrapolated above, C"}, {0.1, 1, "uncertainty: TestUncertainty"},
		{38, 1, "sap graduation, F"}, {units.Fahrenheit(38).Celsius(), 1, "sap graduation, C"},
		{2, 0, "sap corrected: TestSapCorrectionServesOtherReadings"}, {1, 0, "the same, from"}, {4, 0, "to"}, {0.05, 2, "within"},
		{68, 0, "label, F"}, {20, 0, "label, C"}, {190, 0, "hottest pour, F"}, {math.Floor(units.Fahrenheit(190).Celsius()), 0, "the same, C, rounded to the safe side"},
		{30, 0, "unfed, min: TestUnfed"}, {1, 0, "flat pan, US gal/ft2/h"}, {15, 0, "unfed, min"}, {2, 0, "flue pan, US gal/ft2/h"},
		{180, 0, "packing, F: TestCautions"}, {math.Ceil(units.Fahrenheit(180).Celsius()), 0, "packing, C, rounded to the safe side"},
		{97, 0, "name of IF97"}, {1997, 0, "year of Starzak and Peacock"}, {1976, 0, "year of the standard atmosphere"},
		{145, 0, "modulus of Baume"}, {86, 0, "name of the rule"}, {1946, 0, "year of the rule"},
	}
	got := digitsOfPage.FindAllString(words(page(t)), -1)
	var exact []string
	for _, n := range want {
		exact = append(exact, strconv.FormatFloat(n.x, 'f', n.decimals, 64))
	}
	if diff := cmp.Diff(exact, got); diff != "" {
		t.Errorf("numbers of the page, -want +got:\n%s", diff)
	}
}

// What the card says of its uncertainty holds from 60 to 75 Brix: 370e-6 of the
// density, and above 90 C the flattening of the polynomial, which for 66.9 Brix
// is 0.075 Brix at 105 C and less at any cup of the card.
func TestUncertainty(t *testing.T) {
	const instrument = 370e-6
	for b := cli.LeastTarget; b <= cli.MostTarget; b++ {
		rho := must(density.Solution(b, units.Celsius(20)))
		more := must(density.BrixFromDensity(rho*(1+instrument), units.Celsius(20)))
		if off := float64(more - b); !(off <= 0.1) {
			t.Errorf("%v: %.3f Brix", b, off)
		}
	}
	for _, s := range []system{newSystem(false), newSystem(true)} {
		if hottest := s.cups[0].Celsius(); !(hottest <= 105) {
			t.Errorf("a cup of %v C is beyond what is known of the error", hottest)
		}
		for _, at := range s.fills {
			if at.Compare(sealAt) < 0 {
				t.Errorf("the card packs at %v", at)
			}
		}
	}
}

// The sap table is made for readings of 2 Brix and serves from 1 to 4 within
// 0.05, as the card says.
func TestSapCorrectionServesOtherReadings(t *testing.T) {
	h := density.Hydrometer{GraduatedAt: units.Fahrenheit(38)}
	for _, at := range append(newSystem(false).saps, newSystem(true).saps...) {
		for _, reading := range []units.Brix{leastCorrected, mostCorrected} {
			here := must(h.Brix(reading, at)) - reading
			if made := must(h.Brix(correctedReading, at)) - correctedReading; !(math.Abs(float64(here-made)) < float64(correctedWithin)) {
				t.Errorf("%v Brix at %v: %v, the card %v", reading, at, here, made)
			}
		}
	}
}

func TestExtrapolationBegins(t *testing.T) {
	if density.Extrapolated(extrapolatedAbove) || !density.Extrapolated(extrapolatedAbove.Add(1e-6)) {
		t.Error("the mark does not begin where the library's does")
	}
}

// Each caution has its row among the sources.
func TestCautions(t *testing.T) {
	said := words(page(t))
	for _, r := range must(check.Load("cautions")).Rows {
		topic := r.Text("topic")
		if topic == "over-tapping" || topic == "species" {
			continue // a card for the sugarhouse: the trees are tapped elsewhere
		}
		word := map[string]string{
			"scald": "sticks", "boil-over and dry pan": "never leave", "chimney and fire": "grass", "carbon monoxide": "flue",
			"lead": "terne plate", "allergens": "avoid or declare", "filter-aid dust": "no dust", "hot packing": "180 F or above",
			"land": "owner", "selling": "labels and inspection differ by state and province",
		}[topic]
		if word == "" {
			t.Errorf("a new caution, %q: say whether it belongs on the card", topic)
			continue
		}
		if !strings.Contains(r.Text("fact"), word) {
			t.Errorf("the source of %q does not say %q", r.Text("topic"), word)
		}
		if on := strings.Replace(word, "180 F", "180\u00a0°F (83\u00a0°C)", 1); !strings.Contains(said, on) {
			t.Errorf("the card does not say %q", on)
		}
	}
}
