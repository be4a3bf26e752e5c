package season_test

import (
	"errors"
	"fmt"
	"time"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

func exampleModel() season.SapModel {
	m, _ := season.NewSapModel(season.Method{}, 30)
	return m
}

// 5 to 15 US gal a tap by gravity, from memory of extension leaflets.
func ExampleSapModel_Season() {
	s := exampleModel().Season()
	fmt.Println(s.Low.Text(units.USGallon, 0), "to", s.High.Text(units.USGallon, 0))
	// Output: 5 US gal to 15 US gal
}

// Forty taps on a good day: a band, since days are that different.
func ExampleSapModel_Day() {
	d := season.Day{Min: units.Fahrenheit(24), Max: units.Fahrenheit(41)}
	s := exampleModel().Day(d, season.SapFlowDay()).Times(40)
	fmt.Println(s.Low.Text(units.USGallon, 0), "to", s.High.Text(units.USGallon, 0))
	// Output: 2 US gal to 74 US gal
}

func ExampleSapModel_Days() {
	for _, d := range exampleModel().Days(exampleWeather(), season.SapFlowDay())[2:4] {
		fmt.Println(d.Date.Format("2 January"), d.Runs, d.Sap.High.Text(units.USGallon, 2))
	}
	// Output:
	// 3 March false 0.16 US gal
	// 4 March true 1.85 US gal
}

func ExampleSapModel() {
	var m season.SapModel
	fmt.Println(m.Season().High.Text(units.USGallon, 0))
	// Output: 0 US gal
}

func ExampleNewSapModel() {
	v, _ := season.WithVacuum(20 * units.InchMercury)
	m, _ := season.NewSapModel(v, 30)
	fmt.Println("at least", m.Season().Low.Text(units.USGallon, 0))
	// Output: at least 10 US gal
}

func ExampleSapDay() {
	d := exampleModel().Days(exampleWeather(), season.SapFlowDay())[0]
	fmt.Println(d.Date.Format("2 January"), d.Runs, d.Sap.Low.Text(units.USGallon, 0))
	// Output: 1 March false 0 US gal
}

// The sources disagree on what vacuum brings, and the span shows it.
func ExampleVacuumGain() {
	s, _ := season.VacuumGain(16.5 * units.InchMercury)
	fmt.Println(s.Low.Text(1), "to", s.High.Text(0))
	// Output: 82.5 % to 151 %
}

func ExampleWithVacuum() {
	_, err := season.WithVacuum(40 * units.InchMercury)
	fmt.Println(err)
	// Output: season.WithVacuum: vacuum 40 inHg is outside 0 to 28 inHg: inches of mercury below the pressure of the air, at the hole
}

func ExampleMethod() {
	var gravity season.Method
	fmt.Println(gravity.Vacuum().Text(units.InchMercury, 0))
	// Output: 0 inHg
}

func ExampleMethod_Vacuum() {
	m, _ := season.WithVacuum(18 * units.InchMercury)
	fmt.Println(m.Vacuum().Text(units.InchMercury, 0))
	// Output: 18 inHg
}

// A line that falls 18 ft.
func ExampleNaturalVacuum() {
	p, _ := season.NaturalVacuum(18 * units.Foot)
	fmt.Println(p.Text(units.InchMercury, 0))
	// Output: 16 inHg
}

func ExampleFigure() {
	s, _ := season.SapSugar(tapping.SugarMaple, season.WholeSeason)
	fmt.Println(s.Low.Text(1), "to", s.High.Text(1))
	fmt.Println(s.Source)
	// Output:
	// 1.5 Brix to 3.0 Brix
	// Quebec producers association; Houle et al. 2015
}

func ExampleFigure_Times() {
	s := exampleModel().Season().Times(40)
	fmt.Println(s.Low.Text(units.USGallon, 0), "to", s.High.Text(units.USGallon, 0))
	// Output: 200 US gal to 600 US gal
}

func ExampleSapSugar() {
	s, _ := season.SapSugar(tapping.Boxelder, season.WholeSeason)
	fmt.Println(s.Low.Text(1), "to", s.High.Text(1))
	_, err := season.SapSugar(tapping.RedMaple, season.WholeSeason)
	fmt.Println(errors.Is(err, tapping.ErrNotCovered))
	// Output:
	// 2.2 Brix to 2.8 Brix
	// true
}

func ExampleSugarFigures() {
	for _, f := range season.SugarFigures()[:2] {
		fmt.Println(f.What, f.Low, f.High, f.Source)
	}
	// Output:
	// sugar maple 1.5 Brix 3 Brix Quebec producers association
	// sugar maple 2 Brix 3 Brix Houle et al. 2015
}

func ExampleSugarFigure() {
	f := season.SugarFigures()[2]
	fmt.Println(f.What, f.Mean.Text(0))
	// Output: maple sap 2 Brix
}

func ExamplePart() {
	s, _ := season.SapSugar(tapping.SugarMaple, season.SeasonEnd)
	fmt.Println(s.Low.Text(2), "to", s.High.Text(2))
	// Output: 1.50 Brix to 2.25 Brix
}

func ExamplePart_String() {
	fmt.Println(season.WholeSeason, "or", season.SeasonEnd)
	// Output: whole season or end of the season
}

// Two gallons are in the pail; the next round is tomorrow.
func ExamplePailRound() {
	pails := []season.Pail{
		{Label: "by the road", Size: 4 * units.USGallon, Holds: 2 * units.USGallon, Taps: 2},
		{Label: "on the hill", Size: 4 * units.USGallon, Taps: 1},
	}
	sap := season.Figure[units.Volume]{Span: units.Span[units.Volume]{Low: 0.5 * units.USGallon, High: 1.5 * units.USGallon}}
	out, err := season.PailRound(pails, sap, 8*time.Hour, 24*time.Hour)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, o := range out {
		fmt.Println(o.Label, o.Overflow, o.FullAfter)
	}
	// Output:
	// by the road may overflow 5h20m0s
	// on the hill lasts 24h0m0s
}

func ExamplePail() {
	_, err := season.PailRound([]season.Pail{{Label: "A"}}, season.Figure[units.Volume]{}, time.Hour, time.Hour)
	fmt.Println(err)
	// Output: season.PailRound: size of pail A 0 US gal is outside 0.001 to 100 US gal: the volume to the brim
}

func ExamplePailOutlook() {
	pail := season.Pail{Label: "A", Size: 2 * units.USGallon, Taps: 1}
	sap := season.Figure[units.Volume]{Span: units.Span[units.Volume]{Low: 1 * units.USGallon, High: 3 * units.USGallon}}
	out, _ := season.PailRound([]season.Pail{pail}, sap, 8*time.Hour, 8*time.Hour)
	fmt.Println("up to", out[0].Spilled.High.Text(units.USGallon, 0), "on the ground")
	// Output: up to 1 US gal on the ground
}

func ExampleOverflow() {
	fmt.Println(season.Lasts, "-", season.MayOverflow, "-", season.WillOverflow)
	// Output: lasts - may overflow - will overflow
}

func ExampleOverflow_String() {
	fmt.Println(season.MayOverflow.String())
	// Output: may overflow
}
