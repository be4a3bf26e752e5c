package main

import (
	"bytes"
	"os"
	"strings"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

var glass = density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}

// A 60 F scale that reads 59.0 stands in 66.9 Brix at 211 F and in 66.78 at
// 209 F: hydrometer-worked. At 60 F it reads true.
func TestColumn(t *testing.T) {
	readings, err := os.Open("testdata/readings.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer readings.Close()
	want, err := os.ReadFile("testdata/true.csv")
	if err != nil {
		t.Fatal(err)
	}
	var got bytes.Buffer
	if err := run(glass, readings, &got); err != nil || got.String() != string(want) {
		t.Errorf("%v\n%s\nwant\n%s", err, &got, want)
	}
}

// What separates the cells of the table separates those of the answer, and a cell
// with a decimal comma stays as it was.
func TestColumnSeparator(t *testing.T) {
	for in, want := range map[string]string{
		"reads_brix;cup_f\n59,0;211\n":   "reads_brix;cup_f;true_brix\n59,0;211;66.9\n",
		"reads_brix\tcup_f\n59.0\t211\n": "reads_brix\tcup_f\ttrue_brix\n59.0\t211\t66.9\n",
	} {
		var got bytes.Buffer
		if err := run(glass, strings.NewReader(in), &got); err != nil || got.String() != want {
			t.Errorf("%q: %v, %q", in, err, &got)
		}
	}
}

func TestColumnRefuses(t *testing.T) {
	for _, tt := range []struct {
		name  string
		glass density.Hydrometer
		table string
		want  []string
	}{
		{"nothing", glass, "", []string{"empty"}},
		{"no unit", glass, "reads_brix,cup\n59,211\n", []string{"cup_f"}},
		{"no such column", glass, "brix,cup_f\n59,211\n", []string{"reads"}},
		{"a word", glass, "reads_brix,cup_f\n59,211\n59,hot\n", []string{"readings:3", "cup_f", `"hot"`}},
		{"too hot", glass, "reads_brix,cup_f\n59,211\n59,300\n", []string{"readings:3: column cup_f", "300 F", "32 to 230 F"}},
		{"too dense", glass, "reads_brix,cup_f\n95,211\n", []string{"readings:2: column reads_brix", "95 Brix"}},
		{"a cell too many", glass, "reads_brix,cup_f\n59,211,\n", []string{"readings:2"}},
		{"an open quote", glass, "reads_brix,cup_f\n59,\"211\n", []string{"quote"}},
		{"no scale", density.Hydrometer{}, "reads_brix,cup_f\n59,211\n", []string{"readings:2", "graduat"}},
	} {
		var got bytes.Buffer
		err := run(tt.glass, strings.NewReader(tt.table), &got)
		if err == nil || got.Len() > 0 {
			t.Errorf("%s: %v, and it wrote %q", tt.name, err, &got)
			continue
		}
		for _, want := range tt.want {
			if text := units.Reason(err, units.US); !strings.Contains(text, want) || strings.Contains(text, "density.") {
				t.Errorf("%s: %s: want %q in it, and no name of Go", tt.name, text, want)
			}
		}
	}
}
