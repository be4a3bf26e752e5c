package main

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/units"
)

// The published figures that a card can show stand on it.
func TestReferenceRows(t *testing.T) {
	shown := 0
	show := func(what, cell string, want float64) {
		t.Helper()
		shown++
		if got, half := read(t, cell); !(math.Abs(got-want) <= half) {
			t.Errorf("%s: the card says %s, the source %v", what, cell, want)
		}
	}
	row := func(cells [][]string, head string) []string {
		t.Helper()
		for _, c := range cells {
			if strings.TrimRight(c[0], "*") == head {
				return c
			}
		}
		t.Fatalf("no row %s", head)
		return nil
	}
	demo := tables(t, page(t))

	for _, r := range must(check.Load("hot-cold-volume-worked")).Rows {
		if r.Float("hot_F") > 190 {
			continue // no pour above 190 F stands on the card
		}
		shrink := r.Float("shrink") / 100
		cells := row(demo["fill"], r.Text("hot_F"))
		show("packing "+r.Name(), cells[2], 32*shrink/(1-shrink))
		show("packing "+r.Name(), cells[3], 1000*shrink/(1-shrink))
	}
	for _, r := range must(check.Load("hydrometer-worked")).Rows {
		if r.Float("graduated") == 38 && r.Float("at") == 60 {
			show("sap "+r.Name(), row(demo["sap"], "60")[2], r.Float("value")-r.Float("brix"))
		}
		if r.Float("graduated") == 60 && r.Text("gamma") == "25e-6" && r.Text("quantity") == "reading from truth" {
			// The chart of the cup reaches from 210 F; its source row is at 211.
			cup := row(demo["cup"], "210")
			if got, _ := read(t, cup[2]); !(got >= r.Float("value") && got <= r.Float("value")+0.2) {
				t.Errorf("cup %s: %s at 210 F, %v at 211", r.Name(), cup[2], r.Float("value"))
			}
			shown++
		}
	}
	at66 := tables(t, page(t, "-target", "66 Brix"))
	for _, r := range must(check.Load("ratio-rules-worked")).Rows {
		if x := r.Float("sap_brix"); r.Text("rule") == "86/X" && x != 10 {
			show("rule "+r.Name(), row(at66["ratio"], fmt.Sprintf("%.1f", x))[3], r.Float("error"))
		}
	}
	for _, r := range must(check.Load("boiling-rise-exact")).Rows {
		if b := r.Float("brix"); b < float64(cli.LeastTarget) || b > float64(cli.MostTarget) {
			continue
		}
		said := words(page(t, "-metric", "-target", r.Text("brix")+" Brix", "-pressure", r.Text("p_kPa")+" kPa"))
		m := regexp.MustCompile(`add ([^\x{a0}]+)\x{a0}°C`).FindStringSubmatch(said)
		if m == nil {
			t.Fatalf("no rise in %s", said)
		}
		show("rise "+r.Name(), m[1], r.Float("rise_K"))
	}
	for _, r := range must(check.Load("us-standard-atmosphere")).Rows {
		// The altitudes of the table beyond those of the card are passed over.
		if ft := r.Float("altitude_ft"); ft < -1600 || ft > 16000 {
			continue
		}
		psi := r.Float("psia")
		if d := r.Float("psia_deviation"); !math.IsNaN(d) {
			psi += d
		}
		said := words(page(t, "-elevation", r.Text("altitude_ft")+" ft"))
		m := regexp.MustCompile(`weather: ([^\x{a0}]+)\x{a0}inHg`).FindStringSubmatch(said)
		if m == nil {
			t.Fatalf("no pressure in %s", said)
		}
		// The source is good to 0.005 inHg, the card rounds by as much.
		got, half := read(t, m[1])
		if want := units.PoundsPerSquareInch(psi).InchesMercury(); !(math.Abs(got-want) <= half+0.005+0.001) {
			t.Errorf("atmosphere %s: the card says %s inHg, the source %.3f", r.Name(), m[1], want)
		}
		shown++
	}
	for _, r := range must(check.Load("iapws-if97-check")).Rows {
		if r.Text("p_MPa") == "0.1" {
			cells := row(tables(t, page(t, "-metric", "-pressure", "1000 hPa"))["boiling"], "1000")
			show("water "+r.Name(), cells[2], r.Float("value")-273.15)
		}
	}
	if shown < 30 {
		t.Errorf("only %d figures were held against their sources", shown)
	}
}
