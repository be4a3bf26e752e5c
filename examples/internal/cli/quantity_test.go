package cli

import (
	"bytes"
	"io/fs"
	"math"
	"os"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// A cubic inch is 16.387064 mL (SP 811).
func TestTinyVolume(t *testing.T) {
	v := TinyVolume(16.387064 * units.Milliliter)
	for metric, want := range map[bool]string{false: "1 in3", true: "16.39 mL"} {
		if got := (&Sheet{Metric: metric}).In(v); got != want {
			t.Errorf("%s, want %s", got, want)
		}
	}
}

// A page names a day by its weekday; a program that reads JSON needs the year.
func TestDate(t *testing.T) {
	s := Sheet{}
	v := Date(time.Date(2024, time.February, 29, 0, 0, 0, 0, time.UTC)) // a Thursday
	if got, want := s.In(v), "Thu Feb 29"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
	s.Part("p", "P").Row("day", "Day", v)
	e := &Env{Out: new(bytes.Buffer)}
	if err := s.JSON(e); err != nil || !strings.Contains(e.Out.String(), `"day": "2024-02-29"`) {
		t.Errorf("%v: %s", err, e.Out)
	}
}

// 34 F degree-days are 18.9 C degree-days: a degree F is 5/9 of a degree C.
func TestDegreeDays(t *testing.T) {
	s := Sheet{}
	v := DegreeDays(units.FahrenheitDegrees(34))
	if got, want := s.In(v), "34.0 F degree-days"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
	s.Metric = true
	if got, want := s.In(v), "18.9 C degree-days"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
	if got := s.In(DegreeDays(units.TempDiff(math.NaN()))); got != "-" {
		t.Errorf("unknown: %s", got)
	}
}

// 10 US gallons of 3.785411784 L an hour (NIST Handbook 44) are 37.85 L/h.
func TestFlow(t *testing.T) {
	for metric, want := range map[bool]string{false: "10 US gal/h", true: "37.85 L/h"} {
		if got := (&Sheet{Metric: metric}).In(Flow(10 * units.USGallonPerHour)); got != want {
			t.Errorf("%s, want %s", got, want)
		}
	}
}

// The names of files that a program made for itself tell a user nothing.
func TestCause(t *testing.T) {
	for _, err := range []error{
		fs.ErrExist, &fs.PathError{Op: "open", Path: "days.csv.tmp", Err: fs.ErrExist}, &os.LinkError{Op: "rename", Old: "days.csv.tmp", New: "days.csv", Err: fs.ErrExist},
	} {
		if got := cause(err).Error(); got != fs.ErrExist.Error() {
			t.Errorf("%v: %s", err, got)
		}
	}
}

func TestDegrees(t *testing.T) {
	if got := (&Sheet{}).Degrees(units.Celsius(20)); got != "68 F" {
		t.Error(got)
	}
	if got := (&Sheet{Metric: true}).Degrees(units.Celsius(20)); got != "20 C" {
		t.Error(got)
	}
}

// Money keeps all its digits in JSON, where other numbers have nine.
func TestAmount(t *testing.T) {
	e := &Env{Out: new(bytes.Buffer)}
	s := Sheet{Title: "t"}
	s.Part("p", "P").Row("due", "Due", Amount("1234567890123.05"))
	if err := s.JSON(e); err != nil || !strings.Contains(e.Out.String(), `"due": 1234567890123.05`) {
		t.Errorf("%s, %v", e.Out, err)
	}
}
