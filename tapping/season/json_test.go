package season_test

import (
	"encoding/json"
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// back sends a value out and in again.
func back[T any](t *testing.T, v T) T {
	t.Helper()
	b, err := json.Marshal(v)
	var got T
	if err == nil {
		err = json.Unmarshal(b, &got)
	}
	if err != nil {
		t.Fatalf("%s: %v", b, err)
	}
	return got
}

// Weather comes back with its days and its gaps, also those before the first day
// and behind the last and the lines where the file shows them.
func TestWeatherJSON(t *testing.T) {
	const file = `date,tmin_c,tmax_c
2024-02-27,,
2024-02-28,-6.1,4.4
2024-03-03,-1,5
2024-03-04,,
2024-03-06,-0.3,7.7
2024-03-07,,
`
	w := must[season.Weather](t)(season.ReadWeather(strings.NewReader(file)))
	got := back(t, w)
	if d := cmp.Diff(w.Days(), got.Days()) + cmp.Diff(w.Gaps(), got.Gaps()); d != "" || len(w.Gaps()) != 4 {
		t.Errorf("%v came back as %v: %s", w, got, d)
	}
	if s := w.String(); s != "3 days, 2024-02-28 to 2024-03-06, 7 missing" { // 1, 3 since February has 29 days, 2 and 1
		t.Errorf("it prints %q", s)
	}
	// A gap that is not told is found.
	var found season.Weather
	err := json.Unmarshal([]byte(`{"days":[{"date":"2024-03-01","min":"20 F","max":"40 F"},{"date":"2024-03-03","min":"20 F","max":"40 F"}],"gaps":[]}`), &found)
	if err != nil || len(found.Gaps()) != 1 || found.Gaps()[0].Days() != 1 {
		t.Errorf("%v, %v", found, err)
	}
}

func TestRulesJSON(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 3))
	for range 300 {
		c := must[season.Criterion](t)(season.NewCriterion("mine", units.Celsius(-20+20*r.Float64()), units.Celsius(10*r.Float64())))
		base := units.Celsius(10 * r.Float64())
		rule := must[season.DegreeDayRule](t)(season.NewDegreeDayRule(season.SingleSine, base, base.Add(units.CelsiusDegrees(20*r.Float64()))))
		m := must[season.Method](t)(season.WithVacuum(units.Pressure(r.Float64()) * 28 * units.InchMercury))
		if back(t, c) != c || back(t, rule) != rule || back(t, m) != m {
			t.Fatalf("%v, %v, %v came back otherwise", c, rule, m)
		}
	}
	for _, c := range season.Criteria() {
		if back(t, c) != c {
			t.Errorf("%v came back as another", c)
		}
	}
	none := must[season.DegreeDayRule](t)(season.NewDegreeDayRule(season.DailyMean, units.Celsius(5), units.Celsius(math.Inf(1))))
	if got := back(t, none); got != none {
		t.Errorf("%v came back as %v", none, got)
	}
	d := season.DegreeDays(1.0 / 3)
	if back(t, d) != d {
		t.Errorf("%v came back otherwise", d)
	}
}

// What a constructor refuses is refused with the range of its argument.
func TestJSONRefused(t *testing.T) {
	day := `{"date":"2024-03-01","min":"-1 C","max":"5 C"}`
	for _, c := range []struct {
		into      any
		text, arg string
	}{
		{new(season.Criterion), `{"name":"mine","below":"-100 C","above":"2 C"}`, "below"},
		{new(season.Criterion), `{"name":"mine","below":"-1 C","above":null}`, "above"},
		{new(season.DegreeDayRule), `{"method":"daily mean","base":"10 C","upper":"5 C"}`, "upper"},
		{new(season.DegreeDayRule), `{"method":"daily mean","base":null,"upper":"+Inf"}`, "base"},
		{new(season.Method), `{}`, "vacuum"},
		{new(season.Method), `{"vacuum":"29 inHg"}`, "vacuum"},
		{new(season.Weather), `{"days":[` + day + `,{"date":"2024-03-02","min":"6 C","max":"5 C"}],"gaps":[]}`, "days[1].Min"},
		{new(season.Weather), `{"days":[{"date":"2024-03-02","min":"1 C","max":null}],"gaps":[]}`, "days[0].Max"},
		{new(season.Weather), `{"days":[{"date":"0024-03-02","min":"1 C","max":"2 C"}],"gaps":[]}`, "days[0].Date"},
	} {
		err := json.Unmarshal([]byte(c.text), c.into)
		var e *units.RangeError
		if !errors.As(err, &e) || e.Arg != c.arg || !strings.HasSuffix(e.Func, ".UnmarshalJSON") {
			t.Errorf("%T, %s: %v, want an error about %s", c.into, c.text, err, c.arg)
		}
	}
	for text, want := range map[string]error{
		`{"days":[` + day + `,` + day + `],"gaps":[]}`:                                     records.ErrDuplicate,
		`{"days":[` + day + `],"gaps":[{"from":"2024-03-01","to":"2024-03-02","line":0}]}`: records.ErrDuplicate,
		`{"days":[],"gaps":[{"from":"2024-03-03","to":"2024-03-02","line":0}]}`:            records.ErrOrder,
		`{"days":[{"date":"1 March","min":"1 C","max":"2 C"}],"gaps":[]}`:                  units.ErrSyntax,
	} {
		w := must[season.Weather](t)(season.NewWeather([]season.Day{{Date: time.Unix(0, 0), Min: units.Celsius(1), Max: units.Celsius(2)}}))
		if err := json.Unmarshal([]byte(text), &w); !errors.Is(err, want) || w.Len() != 1 {
			t.Errorf("%s: %v, %v, want %v", text, w, err, want)
		}
	}
	for _, v := range []any{season.SapModel{}, season.TapTiming{}} {
		if _, err := json.Marshal(v); err == nil || !strings.Contains(err.Error(), "it has no JSON: encode the ") {
			t.Errorf("%T goes out: %v", v, err)
		}
	}
}
