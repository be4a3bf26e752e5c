package main

import (
	"encoding/json"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// A cord holds the same dry wood, so cords go as the net heat of a pound of that:
// 8600 - 1050 (0.54 + m) Btu, 7,823 at 20 and 7,508 at 50 percent of moisture on
// the dry basis, 4.2 percent more cords. Pounds go up by 1.5/1.2 besides. So it is
// with a range and with an efficiency that is given.
func wood(t *testing.T, b clitest.Binary) {
	for _, more := range [][]string{nil, {"-efficiency", "30 %"}} {
		var cords, pounds [2]float64
		for i, m := range []string{"20 %", "50 %"} {
			status, out, errs := b.Run(t, "", append([]string{"-json", "-moisture", m}, more...)...)
			if status != 0 {
				t.Fatal(errs)
			}
			var page struct {
				Parts struct {
					Fuel map[string]any `json:"fuel"`
				} `json:"parts"`
			}
			if err := json.Unmarshal([]byte(out), &page); err != nil {
				t.Fatal(err)
			}
			read := func(key string) float64 {
				switch x := page.Parts.Fuel[key].(type) {
				case float64:
					return x
				case []any:
					return x[0].(float64)
				}
				t.Fatalf("no %s in %v", key, page.Parts.Fuel)
				return 0
			}
			cords[i], pounds[i] = read("burns_cord"), read("wood_lb")
		}
		if r := cords[1] / cords[0]; !(r > 1.041 && r < 1.043) {
			t.Errorf("%v: %v times the cords", more, r)
		}
		if r := pounds[1] / pounds[0]; !(r > 1.301 && r < 1.304) {
			t.Errorf("%v: %v times the pounds", more, r)
		}
	}
}
