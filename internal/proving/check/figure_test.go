package check

import (
	"bytes"
	"encoding/json"
	"strings"
	"testing"
)

func figureLines(t *testing.T, c Claim) []string {
	t.Helper()
	var b bytes.Buffer
	if err := WriteFigures(&b, c); err != nil {
		t.Fatal(err)
	}
	return strings.Split(strings.TrimSuffix(b.String(), "\n"), "\n")
}

// The lines are typed from the tables: digits as printed there, units in full,
// those of another column in its words.
func TestWriteFigures(t *testing.T) {
	for _, tt := range []struct{ table, column, row, want string }{
		// Half a digit of the deviation, +0.0005, is 0.00005.
		{"boiling-rise-exact", "rise_K", "brix=66.0 p_kPa=101.325",
			`{"function":"f","arguments":[{"name":"brix","value":66.0,"unit":"%","of":"sugar by mass"},{"name":"p_kPa","value":101.325,"unit":"kPa"}],` +
				`"with":"pure sucrose","want":4.000,"deviation":0.0005,"tolerance":5e-05,"unit":"K","table":"boiling-rise-exact","row":"brix=66.0 p_kPa=101.325","column":"rise_K",` +
				`"obtained":"computed from the formulas named","source":"a_w(x,T) p_sat(T) = p with the water activity of Starzak and Peacock, Zuckerindustrie 122 (1997) 380-387, and IAPWS-IF97"}`},
		{"saturation", "value", "temperature at a percent Charles given=68",
			`{"function":"f","arguments":[{"name":"quantity","text":"temperature at a percent"},{"name":"author","text":"Charles"},{"name":"given","value":68,"unit":"% sugar by mass"}],` +
				`"with":"pure sucrose","want":29.0,"deviation":-0.055,"tolerance":0.0005,"unit":"C","table":"saturation","row":"temperature at a percent Charles given=68","column":"value",` +
				`"obtained":"computed","source":"Vavrinecz; Charles","note":"these coefficients give 28.945"}`},
		{"hydrometer-worked", "value", "truth from reading brix=2.0 graduated=38 at=60 F gamma=25e-6", `"name":"graduated","value":38,"unit":"F","of":"temperature of the scale"}`},
		{"tank-worked", "gallons", "horizontal cylinder across_in=36 length_in=60 depth_in=9", `"unit":"US gal"`},
		{"fuel-heat", "btu", "propane US gallon net read", `{"name":"unit","text":"US gallon"}`},
		{"fuel-heat", "btu", "propane US gallon net read", `"source":"USDA Forest Products Laboratory fuel value bulletin, 5th ed."`},
	} {
		c := Claim{Table: tt.table, Column: tt.column, Func: "f", With: "pure sucrose", Got: published(tt.column, 0),
			Select: func(r Row) bool { return r.Name() == tt.row }}
		lines := figureLines(t, c)
		if len(lines) != 1 || !strings.Contains(lines[0], tt.want) {
			t.Errorf("%s\ngot  %s\nwant %s", tt.row, strings.Join(lines, "\n"), tt.want)
		}
	}
}

// Every figure that is printed somewhere is a number to JSON too, and none is
// without the unit that it is printed in.
func TestFiguresAreJSON(t *testing.T) {
	for _, id := range IDs() {
		table, err := Load(id)
		if err != nil {
			t.Fatal(err)
		}
		for _, col := range table.Columns {
			if col.Kind != Want {
				continue
			}
			for _, line := range figureLines(t, Claim{Table: id, Column: col.Name, Func: "f", Got: published(col.Name, 0)}) {
				var f figure
				if err := json.Unmarshal([]byte(line), &f); err != nil {
					t.Errorf("%s: %v: %s", id, err, line)
				}
				if f.Unit == "" || len(f.Arguments) == 0 {
					t.Errorf("%s: no unit or nothing given: %s", id, line)
				}
				for _, a := range f.Arguments {
					if (a.Value == "") == (a.Text == "") || (a.Value != "") != (a.Unit != "") {
						t.Errorf("%s: argument %+v: %s", id, a, line)
					}
				}
			}
		}
	}
}

func TestWriteFiguresOfNothing(t *testing.T) {
	for _, c := range []Claim{{}, {Table: "units", Column: "no", Func: "f", Got: published("no", 0)}} {
		if err := WriteFigures(&bytes.Buffer{}, c); err == nil {
			t.Errorf("%+v: no error", c)
		}
	}
}

// A column whose unit stands in another needs that other.
func TestUnitOfAnotherColumn(t *testing.T) {
	head := "# id: x\n# title: t\n# source: s\n# obtained: read\n# kind: figures\n# column a: input unit see the column b\n"
	tail := "# column c: want 1\n# tolerance c: 0: exact\n"
	if _, err := parse("x", head+tail+"a,c\n1,2\n"); err == nil || !strings.Contains(err.Error(), `"b"`) {
		t.Errorf("without the column: %v", err)
	}
	if _, err := parse("x", head+"# column b: text -\n"+tail+"a,b,c\n1,F,2\n"); err != nil {
		t.Error(err)
	}
}
