package season_test

import (
	"bytes"
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

func date(s string) time.Time {
	d, err := time.Parse(time.DateOnly, s)
	if err != nil {
		panic(err)
	}
	return d
}

func day(s string, low, high float64) season.Day {
	return season.Day{Date: date(s), Min: units.Celsius(low), Max: units.Celsius(high)}
}

func weather(t testing.TB, days ...season.Day) season.Weather {
	return must[season.Weather](t)(season.NewWeather(days))
}

func gap(from, to string, line int) season.Gap {
	return season.Gap{From: date(from), To: date(to), Line: line}
}

func sameGaps(a, b []season.Gap) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if !a[i].From.Equal(b[i].From) || !a[i].To.Equal(b[i].To) || a[i].Line != b[i].Line {
			return false
		}
	}
	return true
}

func TestReadDaily(t *testing.T) {
	const table = "\ufeffDate,station,tmin_c,tmax_f\r\n" +
		"2024-02-27,\"Hill, upper\",-6.1,40\r\n" +
		"# no reading on the 28th\r\n" +
		"2024-02-28,,,\r\n" +
		"2024-02-29,,-2,50\r\n" +
		"2024-03-03,,-1,41\r\n" +
		"2024-03-04,,-1,\r\n" +
		"2024-03-05,,,41\r\n"
	w := must[season.Weather](t)(season.ReadWeather(strings.NewReader(table)))
	if w.Len() != 3 {
		t.Fatalf("%d days", w.Len())
	}
	d := w.Days()
	if !d[0].Date.Equal(date("2024-02-27")) || !near(d[0].Min.Celsius(), -6.1) || !near(d[0].Max.Fahrenheit(), 40) {
		t.Errorf("first day %+v", d[0])
	}
	want := []season.Gap{gap("2024-02-28", "2024-02-28", 4), gap("2024-03-01", "2024-03-02", 6), gap("2024-03-04", "2024-03-05", 7)}
	if !sameGaps(w.Gaps(), want) {
		t.Errorf("gaps %+v, want %+v", w.Gaps(), want)
	}
	if n := w.Gaps()[1].Days(); n != 2 {
		t.Errorf("2024-03-01 to 02 is %d days", n)
	}
}

func hourly(d string, skip int, temp func(h int) float64) string {
	var b strings.Builder
	for h := range 24 {
		if h >= skip {
			fmt.Fprintf(&b, "%sT%02d:00,%g\n", d, h, temp(h))
		}
	}
	return b.String()
}

func TestReadHourly(t *testing.T) {
	swing := func(h int) float64 { return -5 + 10*math.Sin(math.Pi*float64(h)/24) }
	table := "time,temp_c\n" + hourly("2024-03-01", 0, swing) + hourly("2024-03-02", 5, swing) + hourly("2024-03-03", 4, swing) + hourly("2024-03-06", 0, swing)
	w := must[season.Weather](t)(season.ReadWeather(strings.NewReader(table)))
	if w.Len() != 3 {
		t.Fatalf("%d days, gaps %+v", w.Len(), w.Gaps())
	}
	d := w.Days()
	if !near(d[0].Min.Celsius(), -5) || !near(d[0].Max.Celsius(), 5) {
		t.Errorf("first day %+v", d[0])
	}
	if !near(d[1].Min.Celsius(), math.Round(swing(23)*1e6)/1e6) && math.Abs(d[1].Min.Celsius()-swing(23)) > 1e-5 {
		t.Errorf("third day's minimum %v", d[1].Min)
	}
	// 19 readings are too few: the day is missing, and its first row is named.
	want := []season.Gap{gap("2024-03-02", "2024-03-02", 26), gap("2024-03-04", "2024-03-05", 65)}
	if !sameGaps(w.Gaps(), want) {
		t.Errorf("gaps %+v, want %+v", w.Gaps(), want)
	}
	for _, row := range []string{"2024-03-01 00:00,1", "2024-03-01T00:00:00,1", "2024-03-01 00:00:00,1"} {
		if _, err := season.ReadWeather(strings.NewReader("time,temp_f\n" + row + "\n")); err != nil {
			t.Errorf("%s: %v", row, err)
		}
	}
}

// The first hour of a day may be its coldest or its warmest, on either side of
// freezing.
func TestHourlyStartsAtTheExtreme(t *testing.T) {
	up := func(h int) float64 { return 5 + float64(h)/4 }
	down := func(h int) float64 { return -5 - float64(h)/4 }
	w := must[season.Weather](t)(season.ReadWeather(strings.NewReader("time,temp_c\n" + hourly("2024-03-01", 0, up) + hourly("2024-03-02", 0, down))))
	d := w.Days()
	if len(d) != 2 || !near(d[0].Min.Celsius(), 5) || !near(d[0].Max.Celsius(), 10.75) || !near(d[1].Max.Celsius(), -5) || !near(d[1].Min.Celsius(), -10.75) {
		t.Errorf("%+v", d)
	}
}

// The message tells the temperature that was given and the limits in Celsius.
func TestWeatherTellsTheTemperature(t *testing.T) {
	for _, c := range []struct {
		min, max, value, low, high float64
	}{
		{-96, 5, -96, -95, 60}, {-5, 61, 61, -95, 60}, {5, 4, 5, -95, 4},
	} {
		_, err := season.NewWeather([]season.Day{day("2024-03-01", c.min, c.max)})
		e := (*units.RangeError)(nil)
		if !errors.As(err, &e) || !near(e.Value, c.value) || !near(e.Low, c.low) || !near(e.High, c.high) {
			t.Errorf("%v to %v C: %v", c.min, c.max, err)
		}
	}
}

func TestReadWeatherRefuses(t *testing.T) {
	const daily, hours = "date,tmin_c,tmax_c\n", "time,temp_c\n"
	for _, c := range []struct {
		name, table string
		line        int
		column      string
		reason      error
	}{
		{"empty", "", 0, "", says("the table is empty")},
		{"no unit", "date,tmin,tmax\n", 1, "tmin", says("no unit that is known")},
		{"no maximum", "date,tmin_c\n", 1, "", says("no column for tmax")},
		{"no figures", "date,snow_cm\n", 1, "", says("the first line names date")},
		{"two scales", "date,tmin_c,tmin_f,tmax_c\n", 1, "tmin_f", says("a second column for tmin")},
		{"date", daily + "3/1/2024,-1,5\n", 2, "date", says("not a time such as")},
		{"no such day", daily + "2023-02-29,-1,5\n", 2, "date", says("not a time such as")},
		{"twice", daily + "2024-03-01,-1,5\n2024-03-01,-1,5\n", 3, "date", records.ErrDuplicate},
		{"twice, empty", daily + "2024-03-01,-1,5\n2024-03-01,,\n", 3, "date", records.ErrDuplicate},
		{"back", daily + "2024-03-02,-1,5\n2024-03-01,-1,5\n", 3, "date", records.ErrOrder},
		{"year", daily + "1600-03-02,-1,5\n", 2, "date", units.ErrRange},
		{"number", daily + "2024-03-02,M,5\n", 2, "tmin_c", says("not a plain number")},
		{"NaN", daily + "2024-03-02,-1,NaN\n", 2, "tmax_c", says("not a plain number")},
		{"missing as -9999", daily + "2024-03-02,-9999,5\n", 2, "tmin_c", units.ErrRange},
		{"too warm", daily + "2024-03-02,-1,61\n", 2, "tmax_c", units.ErrRange},
		{"crossed", daily + "2024-03-02,5,-1\n", 2, "tmin_c", units.ErrRange},
		{"time", hours + "2024-03-01,5\n", 2, "time", says("not a time such as")},
		{"zone", hours + "2024-03-01T00:00Z,5\n", 2, "time", says("not a time such as")},
		{"hour twice", hours + "2024-03-01T01:00,5\n2024-03-01 01:00,5\n", 3, "time", records.ErrDuplicate},
		{"hour back", hours + "2024-03-01T01:00,5\n2024-03-01T00:00,5\n", 3, "time", records.ErrOrder},
		{"hot hour", hours + "2024-03-01T01:00,500\n", 2, "temp_c", units.ErrRange},
		{"hour number", hours + "2024-03-01T01:00,warm\n", 2, "temp_c", says("not a plain number")},
		{"far year by hours", hours + "1600-03-01T01:00,5\n1600-03-02T01:00,5\n", 2, "time", units.ErrRange},
		{"far last year by hours", hours + "1600-03-01T01:00,\n", 2, "time", units.ErrRange},
	} {
		w, err := season.ReadWeather(strings.NewReader(c.table))
		rowError(t, c.name, err, c.line, c.column, c.reason)
		if w.Len() != 0 {
			t.Errorf("%s: days with an error", c.name)
		}
	}
}

// A single day that is missing is a gap, and empty rows and missing days that
// follow each other are one gap, also where it is the first.
func TestGapsOfADay(t *testing.T) {
	w := weather(t, day("2024-03-01", -5, 5), day("2024-03-03", -5, 5))
	if !sameGaps(w.Gaps(), []season.Gap{gap("2024-03-02", "2024-03-02", 0)}) {
		t.Errorf("gaps %+v", w.Gaps())
	}
	w = must[season.Weather](t)(season.ReadWeather(strings.NewReader("date,tmin_c,tmax_c\n2024-03-01,-1,5\n2024-03-02,,\n2024-03-05,-1,5\n")))
	if !sameGaps(w.Gaps(), []season.Gap{gap("2024-03-02", "2024-03-04", 3)}) {
		t.Errorf("gaps %+v", w.Gaps())
	}
}

// The message tells the difference that was asked for.
func TestShiftTellsTheDifference(t *testing.T) {
	_, err := weather(t, day("2024-03-01", -5, 5)).Shift(11 * units.CelsiusDegree)
	if e := (*units.RangeError)(nil); !errors.As(err, &e) || e.Value != 11 || e.Low != -10 || e.High != 10 {
		t.Errorf("11 C deg: %v", err)
	}
}

func TestNewWeather(t *testing.T) {
	w := weather(t, day("2023-12-30", -5, 5), day("2024-01-02", -5, 5))
	if !sameGaps(w.Gaps(), []season.Gap{gap("2023-12-31", "2024-01-01", 0)}) {
		t.Errorf("gaps %+v", w.Gaps())
	}
	// Of a date only year, month and day count, in its own zone.
	zone := time.FixedZone("far", 14*3600)
	late := season.Day{Date: time.Date(2024, 3, 1, 23, 30, 0, 0, zone), Max: units.Celsius(1)}
	if got := weather(t, late).Days()[0].Date; !got.Equal(date("2024-03-01")) {
		t.Errorf("1 March became %v", got)
	}
	for name, c := range map[string]struct {
		days   []season.Day
		reason error
	}{
		"twice": {[]season.Day{day("2024-01-01", 0, 1), day("2024-01-01", 0, 1)}, records.ErrDuplicate},
		"back":  {[]season.Day{day("2024-01-02", 0, 1), day("2024-01-01", 0, 1)}, records.ErrOrder},
		"cross": {[]season.Day{day("2024-01-02", 2, 1)}, units.ErrRange},
		"NaN":   {[]season.Day{day("2024-01-02", math.NaN(), 1)}, units.ErrRange},
	} {
		if w, err := season.NewWeather(c.days); !errors.Is(err, c.reason) || w.Len() != 0 {
			t.Errorf("%s: %v", name, err)
		}
	}
	for year, ok := range map[string]bool{"1699": false, "1700": true, "2300": true, "2301": false} {
		if _, err := season.NewWeather([]season.Day{day(year+"-06-01", 0, 1)}); errors.Is(err, units.ErrRange) == ok {
			t.Errorf("year %s: %v", year, err)
		}
	}
	checkRange(t, "minimum", -95, 60, func(x float64) error {
		_, err := season.NewWeather([]season.Day{day("2024-01-02", x, 60)})
		return err
	})
	checkRange(t, "maximum", -95, 60, func(x float64) error {
		_, err := season.NewWeather([]season.Day{day("2024-01-02", -95, x)})
		return err
	})
	checkRange(t, "Shift", -10, 10, func(x float64) error { _, err := w.Shift(units.TempDiff(x)); return err })
}

func FuzzReadWeather(f *testing.F) {
	f.Add([]byte("date,tmin_c,tmax_f\n2024-02-29,-6.1,40\n2024-03-02,,\n"))
	f.Add([]byte("time,temp_f\n2024-03-01T00:00,21\n2024-03-01 01:00,20.5\n"))
	f.Add([]byte("\ufeffdate,\"tmin_c\",tmax_c\r\n\"2024-03-01\",-1,5\r\n"))
	f.Fuzz(func(t *testing.T, data []byte) {
		w, err := season.ReadWeather(bytes.NewReader(data))
		if err != nil {
			var re *records.RowError
			if !errors.As(err, &re) || re.Line < 0 || w.Len() != 0 || len(err.Error()) > 1000 {
				t.Fatalf("error %v with %d days", err, w.Len())
			}
			return
		}
		again, err := season.NewWeather(w.Days())
		if err != nil || again.Len() != w.Len() {
			t.Fatalf("the days that were read are refused: %v", err)
		}
	})
}

// fiftyYears is invented weather: a sine over the year with noise.
func fiftyYears(r *rand.Rand) []season.Day {
	var days []season.Day
	for d := date("1975-01-01"); d.Year() < 2025; d = d.AddDate(0, 0, 1) {
		mean := 6 - 15*math.Cos(2*math.Pi*float64(d.YearDay()-15)/365) + 4*r.NormFloat64()
		half := 3 + 3*r.Float64()
		days = append(days, season.Day{Date: d, Min: units.Celsius(mean - half), Max: units.Celsius(mean + half)})
	}
	return days
}

func BenchmarkReadWeather(b *testing.B) {
	var text strings.Builder
	text.WriteString("date,tmin_c,tmax_c\n")
	for _, d := range fiftyYears(rand.New(rand.NewPCG(19, 20))) {
		fmt.Fprintf(&text, "%s,%.1f,%.1f\n", d.Date.Format(time.DateOnly), d.Min.Celsius(), d.Max.Celsius())
	}
	b.SetBytes(int64(text.Len()))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := season.ReadWeather(strings.NewReader(text.String())); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkHistory(b *testing.B) {
	w := weather(b, fiftyYears(rand.New(rand.NewPCG(19, 20)))...)
	rule := season.Rule{Criterion: season.SapFlowDay(), RunDays: 3}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := season.History(w, rule); err != nil {
			b.Fatal(err)
		}
	}
}
