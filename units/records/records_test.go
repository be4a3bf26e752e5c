package records_test

import (
	"errors"
	"io"
	"math"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// gathering is a row of the kind that the programs read.
type gathering struct {
	when   time.Time
	source string
	sap    units.Volume
	brix   units.Brix
	temp   units.Temperature
	fired  time.Duration
}

func (g *gathering) cols() []records.Col {
	return []records.Col{
		records.Time("time", &g.when, "2006-01-02 15:04"),
		records.Text("source", &g.source).Optional(),
		records.Volume("sap", &g.sap),
		records.Brix("reading", &g.brix),
		records.Temperature("temp", &g.temp).Optional(),
		records.Hours("fired", &g.fired).Optional(),
	}
}

// What the caller put where a value was missing does not reach the next row,
// whether the column is missing or only the cell.
func TestMissingInEachRow(t *testing.T) {
	for _, file := range []string{
		"time,sap_us_gal,reading_brix\n2031-03-08 16:30,40,2.1\n2031-03-08 17:00,1,2.5\n",
		"time,source,sap_us_gal,reading_brix,temp_f,fired_h\n2031-03-08 16:30,,40,2.1,,\n2031-03-08 17:00,,1,2.5,,\n",
	} {
		var g gathering
		r, err := records.New("day.csv", strings.NewReader(file), g.cols()...)
		if err != nil {
			t.Fatal(err)
		}
		for range 2 {
			if err := r.Next(); err != nil {
				t.Fatal(err)
			}
			if g.source != "" || !math.IsNaN(g.temp.Celsius()) || g.fired != 0 {
				t.Errorf("line %d: missing values read as %+v", r.Line(), g)
			}
			g.source, g.temp, g.fired = "south", units.Celsius(99), time.Hour
		}
	}
}

func TestRead(t *testing.T) {
	const file = "\ufeff# an invented day\r\ntime,Source,sap_us_gal,reading_brix,temp_f,fired_min,note\r\n" +
		"2031-03-08 16:30,north,40,2.1,41,90,\"two\r\nlines\"\r\n2031-03-08 17:00,,1,2.5,,,\r\n"
	var g gathering
	r, err := records.New("day.csv", strings.NewReader(file), g.cols()...)
	if err != nil {
		t.Fatal(err)
	}
	if err := r.Next(); err != nil {
		t.Fatal(err)
	}
	if g.source != "north" || math.Abs(g.sap.USGallons()-40) > 1e-12 || g.brix != 2.1 || g.fired != 90*time.Minute ||
		math.Abs(g.temp.Celsius()-5) > 1e-12 || g.when.Hour() != 16 || r.Line() != 3 {
		t.Errorf("line %d read as %+v", r.Line(), g)
	}
	if err := r.Next(); err != nil {
		t.Fatal(err)
	}
	if g.source != "" || !math.IsNaN(g.temp.Celsius()) || g.fired != 0 || r.Line() != 5 {
		t.Errorf("line %d: missing cells read as %+v", r.Line(), g)
	}
	if err := r.Next(); err != io.EOF {
		t.Errorf("at the end: %v", err)
	}
}

func TestRefuses(t *testing.T) {
	const head = "time,source,sap_us_gal,reading_brix,temp_f\n"
	const row = "2031-03-08 16:30,north,40,2.1,41\n"
	cases := map[string]struct {
		file, want string
		broken     bool
	}{
		"empty":          {"", "day.csv: the file is empty: the first line names the columns, such as time,source,sap_us_gal", false},
		"no column":      {"time,source,reading_brix\n", "day.csv:1: no column for sap: name it sap_us_gal or", false},
		"no unit":        {"time,sap,reading_brix\n", "day.csv:1: column sap: no unit that is known: name the column sap_us_gal or", false},
		"bare gallon":    {"time,sap_gal,reading_brix\n", "day.csv:1: column sap_gal: no unit that is known", false},
		"twice":          {"time,sap_l,sap_us_gal,reading_brix\n", "day.csv:1: column sap_us_gal: a second column for sap", false},
		"word":           {head + row + "2031-03-08 16:30,north,forty,2.1,41\n", "day.csv:3: column sap_us_gal: \"forty\" is not a plain number", false},
		"NaN":            {head + "2031-03-08 16:30,north,NaN,2.1,41\n", "day.csv:2: column sap_us_gal: \"NaN\" is not a plain number", false},
		"-inf":           {head + "2031-03-08 16:30,north,-inf,2.1,41\n", "day.csv:2: column sap_us_gal: \"-inf\" is not a plain number", false},
		"infinite":       {head + "2031-03-08 16:30,north,40,1e999,41\n", "day.csv:2: column reading_brix", false},
		"hexadecimal":    {head + "2031-03-08 16:30,north,0x10,2,41\n", "day.csv:2: column sap_us_gal", false},
		"time":           {head + "yesterday,north,40,2.1,41\n", "day.csv:2: column time: \"yesterday\" is not a time such as 2006-01-02 15:04", false},
		"short row":      {head + "2031-03-08 16:30,north\n", "day.csv:2: 2 cells where the header names 5 columns", false},
		"NUL":            {head + "2031-03-08 16:30,no\x00rth,40,2.1,41\n", "day.csv:2: column source: not text in UTF-8", false},
		"latin-1":        {head + "2031-03-08 16:30,\xe9rable,40,2.1,41\n", "day.csv:2: column source: not text in UTF-8", false},
		"open quote":     {head + "2031-03-08 16:30,\"north,40,2.1,41\n", "day.csv:2: ", true},
		"long line":      {head + row + strings.Repeat("x", 200<<10), "day.csv:3: a record longer than 64 KiB", true},
		"quote to heart": {head + "\"" + strings.Repeat("\n", 200<<10), "day.csv:2: a record longer than 64 KiB", true},
		"long header":    {strings.Repeat("x", 200<<10), "day.csv:1: a record longer than 64 KiB", true},
		"twice at once":  {"sap_l,sap_us_gal,time,reading_brix\n", "day.csv:1: column sap_us_gal: a second column for sap, beside sap_l", false},
		"no unit first":  {"sap,time,reading_brix\n", "day.csv:1: column sap: no unit that is known", false},
		"date alone":     {head + "2031-03-08,north,40,2.1,41\n", "day.csv:2: column time: \"2031-03-08\" is not a time such as 2006-01-02 15:04", false},
		"long comment":   {head + row + "#" + strings.Repeat("x", 200<<10), "day.csv:3: a record longer than 64 KiB", true},
		"48 letters":     {head + "2031-03-08 16:30,north," + strings.Repeat("x", 48) + ",2.1,41\n", "day.csv:2: column sap_us_gal: \"" + strings.Repeat("x", 48) + "\" is", false},
		"49 letters":     {head + "2031-03-08 16:30,north," + strings.Repeat("x", 49) + ",2.1,41\n", "day.csv:2: column sap_us_gal: \"" + strings.Repeat("x", 48) + "...\" is", false},
		"less than none": {"time,sap_l,reading_brix,fired_h\n2031-03-08 16:30,1,2,-0.01\n", "day.csv:2: column fired_h", false},
		"over a year":    {"time,sap_l,reading_brix,fired_h\n2031-03-08 16:30,1,2,8784.01\n", "day.csv:2: column fired_h", false},
		"columns":        {strings.Repeat("c,", 300) + "\n", "301 columns, more than 256", false},
		"a century":      {"time,sap_l,reading_brix,fired_h\n2031-03-08 16:30,1,2,876600\n", "day.csv:2: column fired_h", false},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			var g gathering
			r, err := records.New("day.csv", strings.NewReader(c.file), g.cols()...)
			for err == nil {
				err = r.Next()
			}
			var re *records.Error
			if !errors.As(err, &re) || !strings.Contains(err.Error(), c.want) {
				t.Fatalf("got %v, want a *records.Error with %q", err, c.want)
			}
			if strings.Contains(err.Error(), "\n") {
				t.Errorf("%q is more than one line", err)
			}
			if r != nil && r.Broken() != c.broken {
				t.Errorf("Broken is %v", r.Broken())
			}
		})
	}
}

// After a bad row the next ones are still read.
func TestGoesOn(t *testing.T) {
	var g gathering
	r, err := records.New("day.csv", strings.NewReader("time,sap_l,reading_brix\n2031-03-08 16:30,x,2\n2031-03-08 17:30,7,2\n"), g.cols()...)
	if err != nil {
		t.Fatal(err)
	}
	if err := r.Next(); err == nil || r.Broken() {
		t.Fatalf("bad row: %v, broken %v", err, r.Broken())
	}
	if err := r.Next(); err != nil || math.Abs(g.sap.Liters()-7) > 1e-12 {
		t.Errorf("next row: %v, %v", g.sap, err)
	}
	if got := r.Fail("sap", errors.New("too much")).Error(); got != "day.csv:3: column sap_l: too much" {
		t.Errorf("Fail: %q", got)
	}
}

// What lies just within the limits is read: 256 columns, and no time at all or
// a leap year of 8784 hours.
func TestJustWithin(t *testing.T) {
	var hours time.Duration
	file := "fired_h" + strings.Repeat(",c", 255) + "\n0" + strings.Repeat(",", 255) + "\n8784" + strings.Repeat(",", 255) + "\n"
	r, err := records.New("day.csv", strings.NewReader(file), records.Hours("fired", &hours))
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []time.Duration{0, 366 * 24 * time.Hour} {
		if err := r.Next(); err != nil || hours != want {
			t.Errorf("%v, %v, want %v", hours, err, want)
		}
	}
	if !r.Has("fired") {
		t.Error("the first column is not there")
	}
	if got := r.Fail("fired", errors.New("odd")).Error(); got != "day.csv:3: column fired_h: odd" {
		t.Errorf("Fail: %q", got)
	}
}

// A number has no unit, and a column that merely begins like the one asked for
// does not stand in its way.
func TestNamesAlike(t *testing.T) {
	var taps float64
	var sap units.Volume
	r, err := records.New("day.csv", strings.NewReader("taps_note,taps,sap_note,sap_l\nall,250,good,7\n"), records.Number("taps", &taps), records.Volume("sap", &sap))
	if err != nil {
		t.Fatal(err)
	}
	if err := r.Next(); err != nil || math.Abs(taps-250) > 1e-12 || math.Abs(sap.Liters()-7) > 1e-12 {
		t.Errorf("%v taps, %v, %v", taps, sap, err)
	}
	if _, err := records.New("day.csv", strings.NewReader("taps_l\n250\n"), records.Number("taps", &taps)); err == nil {
		t.Error("a number with a unit is read")
	}
}

// A column may have empty cells and yet be needed.
func TestBlank(t *testing.T) {
	var g gathering
	sap := records.Volume("sap", &g.sap).Blank()
	r, err := records.New("day.csv", strings.NewReader("sap_l,note\n,no run\n"), sap)
	if err != nil {
		t.Fatal(err)
	}
	if err := r.Next(); err != nil || !math.IsNaN(float64(g.sap)) {
		t.Errorf("an empty cell: %v, %v", g.sap, err)
	}
	if _, err := records.New("day.csv", strings.NewReader("note\nno run\n"), sap); err == nil {
		t.Error("the column is missing, and no error")
	}
}

// A file may come with one set of columns or another.
func TestOpen(t *testing.T) {
	r, err := records.Open("day.csv", strings.NewReader("time,sap_l,Vigour,note\n2031-03-08T16:30,7,,\n"))
	if err != nil {
		t.Fatal(err)
	}
	for name, want := range map[string]bool{"time": true, "sap": true, "sap_l": true, "sa": false, "temp": false, "vigour": true} {
		if got := r.Names(name); got != want {
			t.Errorf("%s is named: %v", name, got)
		}
	}
	var g gathering
	layouts := []string{"2006-01-02T15:04", "2006-01-02"}
	if err := r.Bind(records.Time("time", &g.when, layouts...), records.Volume("sap", &g.sap), records.Text("source", &g.source).Optional()); err != nil {
		t.Fatal(err)
	}
	if got := strings.Join(r.Unasked(), " "); got != "vigour note" {
		t.Errorf("nothing is asked of %q", got)
	}
	if err := r.Next(); err != nil || g.when.Hour() != 16 || math.Abs(g.sap.Liters()-7) > 1e-12 {
		t.Errorf("read as %+v, %v", g, err)
	}
	if err := r.Next(); err != io.EOF {
		t.Errorf("at the end: %v", err)
	}
	if _, err := records.Open("day.csv", strings.NewReader("# nothing\n")); err != io.EOF {
		t.Errorf("of an empty file: %v", err)
	}
}

func FuzzReader(f *testing.F) {
	f.Add("time,source,sap_us_gal,reading_brix,temp_f\n2031-03-08 16:30,north,40,2.1,41\n")
	f.Add("\ufefftime,sap_l,reading_brix\r\n\"2031-03-08 16:30\",7,2\r\n")
	f.Add("time,sap_l,reading_brix\n\"")
	f.Fuzz(func(t *testing.T, s string) {
		var g gathering
		r, err := records.New("f", strings.NewReader(s), g.cols()...)
		for n := 0; err == nil; n++ {
			if n > len(s) {
				t.Fatal("more records than bytes")
			}
			if err = r.Next(); err == nil && (math.IsNaN(float64(g.sap)) || math.IsInf(float64(g.sap), 0)) {
				t.Fatalf("sap %v", g.sap)
			}
		}
	})
}

func TestHas(t *testing.T) {
	var g gathering
	r, err := records.New("day.csv", strings.NewReader("time,sap_m3,reading_brix\n2031-03-08 16:30,0.2,2\n"), g.cols()...)
	if err != nil {
		t.Fatal(err)
	}
	if !r.Has("sap") || r.Has("temp") || r.Has("nosuch") {
		t.Errorf("sap %v, temp %v, nosuch %v", r.Has("sap"), r.Has("temp"), r.Has("nosuch"))
	}
	if err := r.Next(); err != nil || math.Abs(g.sap.Liters()-200) > 1e-9 {
		t.Errorf("%v L, %v", g.sap.Liters(), err)
	}
}
