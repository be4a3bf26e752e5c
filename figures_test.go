package sapreckoner_test

import (
	"bufio"
	"bytes"
	"encoding/json"
	"math"
	"os"
	"os/exec"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

const figuresFile = "docs/figures.jsonl"

// The figures for other languages are what the program writes.
func TestFigures(t *testing.T) {
	out, err := exec.Command("go", "run", "./examples/conformance", "-jsonl").Output()
	if err != nil {
		t.Fatal(err)
	}
	if *update {
		if err := os.WriteFile(figuresFile, out, 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	kept, err := os.ReadFile(figuresFile)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(kept, out) {
		t.Errorf("%s is stale: go test -run Figures -update .", figuresFile)
	}
}

// A port reads the lines, knows some functions by name, and holds itself to
// them. This one knows three, and reads nothing but the file.
func TestFiguresProveAPort(t *testing.T) {
	text, err := os.ReadFile(figuresFile)
	if err != nil {
		t.Fatal(err)
	}
	type number = float64
	port := map[string]func(arg map[string]number) (number, error){
		"density.RefractiveIndex": func(arg map[string]number) (number, error) {
			n, err := density.RefractiveIndex(units.Brix(arg["brix"]))
			return float64(n), err
		},
		"boil.Rise": func(arg map[string]number) (number, error) {
			d, err := boil.Rise(units.Brix(arg["brix"]), units.Kilopascals(arg["p_kPa"]))
			return d.CelsiusDegrees(), err
		},
		"boil.PressureAt": func(arg map[string]number) (number, error) {
			p, err := boil.PressureAt(units.Feet(arg["altitude_ft"]))
			return p.PoundsPerSquareInch(), err
		},
	}
	// One of the tables of each function: 86 rows, 17 and 14 in docs/sources.md.
	tables := map[string]string{"icumsa-1974-nd20": "density.RefractiveIndex", "boiling-rise-exact": "boil.Rise", "us-standard-atmosphere": "boil.PressureAt"}
	held := 0
	for lines := bufio.NewScanner(bytes.NewReader(text)); lines.Scan(); {
		var f struct {
			Function, Table, Row       string
			Want, Deviation, Tolerance number
			Arguments                  []struct {
				Name  string
				Value number
			}
		}
		if err := json.Unmarshal(lines.Bytes(), &f); err != nil {
			t.Fatalf("%v: %s", err, lines.Text())
		}
		if tables[f.Table] != f.Function {
			continue
		}
		arg := map[string]number{}
		for _, a := range f.Arguments {
			arg[a.Name] = a.Value
		}
		got, err := port[f.Function](arg)
		// A figure on the very limit passes, whichever way float64 rounds it.
		if off := math.Abs(got - f.Want - f.Deviation); err != nil || !(off <= f.Tolerance*(1+1e-9)) {
			t.Errorf("%s %s: %v %v, want %v and %v, give or take %v", f.Table, f.Row, got, err, f.Want, f.Deviation, f.Tolerance)
		}
		held++
	}
	if held != 86+17+14 {
		t.Errorf("held to %d figures, docs/sources.md counts 86, 17 and 14", held)
	}
}
