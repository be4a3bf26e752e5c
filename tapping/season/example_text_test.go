package season_test

import (
	"encoding/json"
	"errors"
	"fmt"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// Weather goes out with its days and gaps, and is checked when it comes in.
func ExampleWeather_UnmarshalJSON() {
	const text = `{"days":[{"date":"2024-03-01","min":"14 F","max":"41 F"},{"date":"2024-03-03","min":"23 F","max":"50 F"}],"gaps":[]}`
	var w season.Weather
	err := json.Unmarshal([]byte(text), &w)
	fmt.Println(w.String(), err)
	out, _ := w.MarshalJSON()
	fmt.Println(string(out))

	err = w.UnmarshalJSON([]byte(`{"days":[{"date":"2024-03-01","min":"200 F","max":"41 F"}],"gaps":[]}`))
	fmt.Println(units.Reason(err, units.US))
	// Output:
	// 2 days, 2024-03-01 to 2024-03-03, 1 missing <nil>
	// {"days":[{"date":"2024-03-01","min":"-10 C","max":"5 C"},{"date":"2024-03-03","min":"-5 C","max":"10 C"}],"gaps":[{"from":"2024-03-02","to":"2024-03-02","line":0}]}
	// day 1: minimum 200 F is outside -139 to 140 F: mind the unit; leave the cell empty where the station has no figure
}

// A criterion of one's own goes out by its limits, a published one comes back as
// itself.
func ExampleCriterion_MarshalJSON() {
	own, _ := season.NewCriterion("our bush", units.Celsius(-2), units.Celsius(4))
	for _, c := range []season.Criterion{own, season.SapFlowDay()} {
		out, _ := c.MarshalJSON()
		var back season.Criterion
		fmt.Println(string(out), back.UnmarshalJSON(out), back == c, c.String() == c.Name())
	}
	// Output:
	// {"name":"our bush","below":"-2 C","above":"4 C"} <nil> true true
	// {"name":"sap-flow day, Skinner 2010","below":"-1.1 C","above":"2.2 C"} <nil> true true
}

func ExampleDegreeDayRule_MarshalJSON() {
	rule := season.BloomRule()
	out, _ := rule.MarshalJSON()
	fmt.Println(string(out), rule.UnmarshalJSON(out))
	fmt.Println(rule.Text(units.US))
	fmt.Println(rule.String())
	// Output:
	// {"method":"modified sine wave","base":"10 C","upper":"30 C"} <nil>
	// modified sine wave over 50.0 F up to 86.0 F
	// modified sine wave over 50.0 F (10.0 C) up to 86.0 F (30.0 C)
}

func ExampleMethod_MarshalJSON() {
	var m season.Method
	fmt.Println(m.String())
	err := m.UnmarshalJSON([]byte(`{"vacuum":"20 inHg"}`))
	fmt.Println(m.Text(units.US), err)
	out, _ := season.Method{}.MarshalJSON()
	fmt.Println(string(out))
	// Output:
	// gravity
	// vacuum of 20 inHg <nil>
	// {"vacuum":"0 Pa"}
}

// Models and timings are not kept: what they are made of is.
func ExampleSapModel_MarshalJSON() {
	model, _ := season.NewSapModel(season.Method{}, 20)
	_, err := model.MarshalJSON()
	fmt.Println(model.String())
	fmt.Println(units.Reason(err, units.US))
	fmt.Println(model.UnmarshalJSON([]byte("{}")) != nil)
	var timing season.TapTiming
	_, err = timing.MarshalJSON()
	fmt.Println(timing.String())
	fmt.Println(units.Reason(err, units.US))
	fmt.Println(timing.UnmarshalJSON([]byte("{}")) != nil)
	// Output:
	// gravity, 20 running days
	// it has no JSON: encode the method and the number of running days that it is made of
	// true
	// 0 springs, holes of 0 days
	// it has no JSON: encode the weather, the rule and the life of a hole that it is made of
	// true
}

// Degree-days name their scale in the text.
func ExampleParseDegreeDays() {
	d, err := season.ParseDegreeDays("34 F degree-days")
	fmt.Println(d.Text(1), err)
	_, err = season.ParseDegreeDays("34")
	fmt.Println(units.Reason(err, units.US))
	d = 2.5
	text, _ := d.MarshalText()
	out, _ := d.MarshalJSON()
	fmt.Println(d.String(), string(text), string(out))
	fmt.Println(d.UnmarshalText(text), d.UnmarshalJSON([]byte("null")), d)
	// Output:
	// 18.9 C degree-days <nil>
	// "34": no unit: write the unit behind the number, one of: C degree-days, F degree-days
	// 2.5 C degree-days 2.5 C degree-days "2.5 C degree-days"
	// <nil> <nil> NaN C degree-days
}

// The names of enumerations are read in any case, and a slip is told with the
// nearest name.
func ExampleHemisphere_UnmarshalText() {
	fmt.Println(season.Hemispheres(), season.Parts(), season.DegreeDayMethods())
	var (
		h season.Hemisphere
		p season.Part
		m season.DegreeDayMethod
		o season.Overflow
		v season.TapVerdict
	)
	fmt.Println(h.UnmarshalText([]byte("South")), p.UnmarshalText([]byte("end of the season")), m.UnmarshalText([]byte("single sine wave")),
		o.UnmarshalText([]byte("may overflow")), v.UnmarshalText([]byte("too late")))
	for _, e := range []interface{ MarshalText() ([]byte, error) }{h, p, m, o, v} {
		text, _ := e.MarshalText()
		fmt.Println(string(text))
	}
	fmt.Println(units.Reason(h.UnmarshalText([]byte("soth")), units.US))
	// Output:
	// [north south] [whole season end of the season] [daily mean single sine wave modified sine wave]
	// <nil> <nil> <nil> <nil> <nil>
	// south
	// end of the season
	// single sine wave
	// may overflow
	// too late
	// "soth": not one of the names: did you mean "south"? Use one of: north, south
}

// An ordinary outcome can be told from a mistake.
func ExampleNoFigureError() {
	_, err := season.SapSugar(tapping.OtherTree, season.WholeSeason)
	var none *season.NoFigureError
	fmt.Println(errors.As(err, &none), errors.Is(err, tapping.ErrNotCovered))
	fmt.Println(none.Text(units.US))
	fmt.Println(none.Error())
	_, err = season.History(season.Weather{}, season.Rule{})
	var rule *season.CriterionError
	fmt.Println(errors.As(err, &rule), errors.Is(err, units.ErrRange))
	fmt.Println(rule.Text(units.US))
	fmt.Println(rule.Error())
	// Output:
	// true true
	// the sugar of other tree sap: not covered: measure yours
	// season.SapSugar: the sugar of other tree sap: not covered: measure yours
	// true true
	// no criterion is set: take the sap-flow day to start with
	// season.History: no criterion is set: take the sap-flow day to start with
}

// A range prints the digits that its width leaves, and its source.
func ExampleFigure_Text() {
	model, _ := season.NewSapModel(season.Method{}, 20)
	fmt.Println(model.Season().Text(units.US))
	fmt.Println(model.Season())
	sweet, _ := season.SapSugar(tapping.Boxelder, season.WholeSeason)
	fmt.Println(sweet.String())
	gain, _ := season.VacuumGain(16 * units.InchMercury) // 5 % for each inHg; 2.51 to the power of 16/16.5, less 1
	fmt.Println(gain)
	// Output:
	// 5 US gal to 15 US gal, gravity from memory of extension leaflets
	// 5 US gal (19 L) to 15 US gal (57 L), gravity from memory of extension leaflets
	// 2.2 Brix to 2.8 Brix, Mathews et al. 2024, HortTechnology 34(1):52
	// 80 % to 144 %, University of Vermont 2018; Cornell 2011
}
