package cli_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// pail is a small program that uses everything.
func pail() cli.Program {
	return cli.Program{
		Name: "pail", Does: "Tells how heavy a pail is.", Calls: []string{`pail -sap "3 US gal"`},
		Reads: "None.", Caution: "Lift with the knees.",
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			var (
				sap   units.Volume
				temp  units.Temperature
				note  string
				wood  string
				n     int
				exact bool
			)
			f.Group("Sap")
			f.Quantity(&sap, "sap", "2 US gal", "sap in the pail")
			f.Quantity(&temp, "temp", "", "its temperature")
			f.Group("Other")
			f.String(&note, "note", "", "words")
			f.Choice(&wood, "wood", "ash", []string{"ash", "oak"}, "wood of the yoke")
			f.Count(&n, "pails", 1, 1, 40, "pails")
			f.Bool(&exact, "exact", "all digits")
			return func(e *cli.Env) error {
				fmt.Fprintln(e.Out, "half a page")
				if err := f.Alone("exact", "note"); err != nil {
					return err
				}
				if sap < 0 {
					return cli.For("sap", &units.RangeError{Func: "density.Pail.Mass", Arg: "volume", Value: -1, Low: 0, High: 9, Unit: "L", Hint: "turn it over"})
				}
				if note == "break" {
					return errors.New("it broke\ninto pieces")
				}
				p := cli.NewPage(e.Out)
				p.Row("Sap", sap.Text(units.USGallon, 1), temp.Text(units.ScaleCelsius, 0))
				p.Row("Pails", fmt.Sprint(n), wood, fmt.Sprint(f.Given("pails")))
				return nil
			}
		},
	}
}

func run(args ...string) (status int, out, errs string) {
	var o, e bytes.Buffer
	status = pail().Main(args, strings.NewReader(""), &o, &e)
	return status, o.String(), e.String()
}

func TestMain_good(t *testing.T) {
	status, out, errs := run("-sap", "3 US gal", "-temp=50 F", "-pails", "2", "-wood", "OAK")
	want := "half a page\n" +
		"Sap                           3.0 US gal (10 C)\n" +
		"Pails                         2 (oak; true)\n"
	if status != cli.OK || out != want || errs != "" {
		t.Errorf("status %d, out:\n%s\nwant:\n%s\nerr: %q", status, out, want, errs)
	}
}

func TestMain_bad(t *testing.T) {
	for _, c := range []struct{ args, want string }{
		{"-sap|3 gal", `pail: -sap: "3 gal": ambiguous unit: write "US gal" or "imp gal"`},
		{"-sap|3", `pail: -sap: "3": no unit: write the unit behind the number`},
		{"-sap|-1 L", `pail: -sap: volume -0.2642 US gal (-1 L) is outside 0 to 2.377 US gal (0 to 9 L): turn it over`},
		{"-sap|NaN L", `pail: -sap: "NaN L": not a number with a unit`},
		{"-wood|pine", `pail: -wood: "pine" is not known: use one of ash, oak`},
		{"-pails|41", `pail: -pails: "41" is not a whole number from 1 to 40`},
		{"-pails|x", `pail: -pails: "x" is not a whole number`},
		{"-exact=maybe", `pail: -exact: "maybe" is neither true nor false`},
		{"-exact|-note|x", `pail: -note: says the same as -exact: give one of them`},
		{"-nosuch|1", `pail: no such flag (-h lists them): -nosuch`},
		{"-sap", `pail: flag needs an argument: -sap`},
		{"stray", `pail: "stray": there are flags only`},
		{"-note|break", `pail: it broke into pieces`},
	} {
		status, out, errs := run(strings.Split(c.args, "|")...)
		if status != cli.BadInput || out != "" {
			t.Errorf("%s: status %d, out %q", c.args, status, out)
		}
		if !strings.HasPrefix(errs, c.want) || strings.Count(errs, "\n") != 1 {
			t.Errorf("%s:\n got %q\nwant %q", c.args, errs, c.want)
		}
	}
}

func TestHelp(t *testing.T) {
	for _, flag := range []string{"-h", "-help"} {
		status, out, errs := run(flag)
		if status != cli.OK || errs != "" {
			t.Fatalf("status %d, %q", status, errs)
		}
		for _, want := range []string{`pail -sap "3 US gal"`, `-sap "2 US gal"`, "Lift with the knees.", "Sap\n---", "-exact"} {
			if !strings.Contains(out, want) {
				t.Errorf("help does not show %q:\n%s", want, out)
			}
		}
	}
}

type closedPipe struct{}

func (closedPipe) Write([]byte) (int, error) { return 0, errors.New("broken pipe") }

func TestOutputFails(t *testing.T) {
	var e bytes.Buffer
	if status := pail().Main(nil, strings.NewReader(""), closedPipe{}, &e); status != cli.Failed || e.String() != "pail: broken pipe\n" {
		t.Errorf("status %d, %q", status, e.String())
	}
}

func TestTable(t *testing.T) {
	var b bytes.Buffer
	cli.NewPage(&b).Table([]string{"Cup", "Reads"}, [][]string{{"200 F", "59.4"}, {"68 F", "66.9"}})
	const want = "Cup    Reads\n200 F   59.4\n68 F    66.9\n"
	if b.String() != want {
		t.Errorf("got\n%s\nwant\n%s", b.String(), want)
	}
}

// One content prints as a page in either system, and as JSON with the unit in
// the key.
func TestSheet(t *testing.T) {
	sheet := func(metric bool) *cli.Sheet {
		s := &cli.Sheet{Title: "Pail", Metric: metric}
		p := s.Part("pail", "The pail")
		p.Row("sap", "Sap", cli.Volume(3*units.USGallon), "cold")
		p.Row("temp", "At", cli.Temperature(units.Fahrenheit(50)))
		p.Row("brix", "Reads", cli.Brix(2.14, 1))
		p.Row("wood", "Burns", cli.Between(cli.Mass(30*units.Pound), cli.Mass(45.25*units.Pound)))
		p.Row("name", "Name", cli.Words("north \"pail\""))
		p.Table("cups", []cli.Column{{Key: "at", Head: "cup"}, {Key: "reads", Head: "reads"}},
			[][]cli.Value{{cli.Temperature(units.Celsius(20)), cli.Number(59, 1, "")}})
		p.Item("hot")
		return s
	}
	for _, c := range []struct {
		metric bool
		want   string
	}{
		{false, "Pail\n====\n\nThe pail\n--------\n" +
			"Sap                           3 US gal (11.36 L; cold)\n" +
			"At                            50.0 F (10.0 C)\n" +
			"Reads                         2.1 Brix\n" +
			"Burns                         30 to 45.25 lb (13.61 to 20.53 kg)\n" +
			"Name                          north \"pail\"\n" +
			"cup     reads\n68.0 F   59.0\n- hot\n"},
		{true, "Pail\n====\n\nThe pail\n--------\n" +
			"Sap                           11.36 L (3 US gal; cold)\n" +
			"At                            10.0 C (50.0 F)\n" +
			"Reads                         2.1 Brix\n" +
			"Burns                         13.61 to 20.53 kg (30 to 45.25 lb)\n" +
			"Name                          north \"pail\"\n" +
			"cup     reads\n20.0 C   59.0\n- hot\n"},
	} {
		e := &cli.Env{Out: new(bytes.Buffer)}
		sheet(c.metric).Print(e)
		if e.Out.String() != c.want {
			t.Errorf("got\n%s\nwant\n%s", e.Out.String(), c.want)
		}
	}
	e := &cli.Env{Out: new(bytes.Buffer)}
	if err := sheet(false).JSON(e); err != nil {
		t.Fatal(err)
	}
	const want = `{"title":"Pail","pail":{"sap_us_gal":3,"sap_l":11.3562354,"sap_note":"cold","temp_f":50,"temp_c":10,"brix":2.14,` +
		`"wood_lb":[30,45.25],"wood_kg":[13.6077711,20.5250547],"name":"north \"pail\"","cups":[{"at_f":68,"reads":59}],"remarks":["hot"]}}`
	var compact bytes.Buffer
	if err := json.Compact(&compact, e.Out.Bytes()); err != nil || compact.String() != want {
		t.Errorf("JSON %v:\n%s\nwant\n%s", err, compact.String(), want)
	}
}

// What is not known is a dash on the page and null in JSON.
func TestUnknown(t *testing.T) {
	s := &cli.Sheet{}
	p := s.Part("jar", "Jar")
	nan := math.NaN()
	for _, v := range []cli.Value{cli.SmallVolume(units.Volume(nan)), cli.Temperature(units.Celsius(nan)), cli.Brix(units.Brix(nan), 1), cli.Share(units.Share(nan), 1), cli.Length(units.Length(nan)), cli.Number(nan, 1, "mPa s")} {
		if got := s.In(v); got != "-" {
			t.Errorf("got %q", got)
		}
		p.Row("x", "X", v)
	}
	e := &cli.Env{Out: new(bytes.Buffer)}
	if err := s.JSON(e); err != nil || !strings.Contains(e.Out.String(), `"x_pct": null`) || !strings.Contains(e.Out.String(), `"x": null`) {
		t.Errorf("%v: %s", err, e.Out)
	}
}

func TestWithin(t *testing.T) {
	check := func(v units.Volume) error {
		return cli.Within("fill", "fill", v, units.USGallon, 2*units.USGallon, units.USGallon, "US gal", "use a pail")
	}
	for _, v := range []units.Volume{units.USGallon, 1.5 * units.USGallon, 2 * units.USGallon} {
		if err := check(v); err != nil {
			t.Error(err)
		}
	}
	if err := check(3 * units.USGallon); err == nil || cli.Reason(err) != "-fill: fill 3 US gal (11.36 L) is outside 1 to 2 US gal (3.786 to 7.57 L): use a pail" {
		t.Errorf("got %v", err)
	}
	for _, v := range []units.Volume{0.9 * units.USGallon, units.Volume(math.NaN()), units.Volume(math.Inf(1)), units.Volume(math.Inf(-1))} {
		if err := check(v); !errors.Is(err, units.ErrRange) {
			t.Errorf("%v: %v", v, err)
		}
	}
}

func TestGraduation(t *testing.T) {
	for _, c := range []float64{1, 20, 40} {
		if err := cli.Graduation("stem", units.Celsius(c)); err != nil {
			t.Errorf("%v C: %v", c, err)
		}
	}
	for _, c := range []float64{0.9, 40.1, math.NaN(), math.Inf(1), math.Inf(-1)} {
		if err := cli.Graduation("stem", units.Celsius(c)); !errors.Is(err, units.ErrRange) || !strings.HasPrefix(err.Error(), "-stem: graduation ") {
			t.Errorf("%v C: %v", c, err)
		}
	}
}

func TestClock(t *testing.T) {
	start := time.Date(1, 1, 1, 20, 0, 0, 0, time.UTC)
	s := &cli.Sheet{}
	for d, want := range map[time.Duration]string{
		0: "20:00", 3*time.Hour + 59*time.Minute + 31*time.Second: "00:00 the next day",
		5 * time.Hour: "01:00 the next day", 30 * time.Hour: "02:00 2 days on",
		-20 * time.Hour: "00:00", -21 * time.Hour: "23:00 the day before", -50 * time.Hour: "18:00 2 days before",
	} {
		if got := s.In(cli.Clock(start, start.Add(d))); got != want {
			t.Errorf("%v after 20:00 is %q, want %q", d, got, want)
		}
	}
}
