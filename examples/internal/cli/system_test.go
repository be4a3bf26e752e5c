package cli_test

import (
	"fmt"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// Who says only metric units is answered in them; a gallon, a pound or a
// degree of Fahrenheit beside them keeps the page as it is.
func TestAnsweredInUnitsSaid(t *testing.T) {
	for words, want := range map[string]bool{
		"2.1 at 5 C": true, "150 L 2.1 at 5 C": true, "150 l 2.1 at 5 C": true, "500 ml 66.9 at 20 C": true, "5 kg 66.9 at 20 C": true,
		"40 US gal 2.1 at 5 C": false, "5 lb 66.9 at 20 C": false, "2.1 at 41 F": false, "40 US gal 2.1 at 41 F": false,
	} {
		p := cli.Program{Name: "day", Does: "Days.", Setup: func(f *cli.Flags) func(*cli.Env) error {
			var sap units.Volume
			metric := false
			f.Quantity(&sap, "sap", "", "sap")
			f.Bool(&metric, "metric", "metric units first")
			f.Words("40 US gal 2.1 at 41 F", func(*cli.Spoken) error { return nil })
			return func(e *cli.Env) error { fmt.Fprint(e.Out, metric); return nil }
		}}
		if out, errs := answer(p, strings.Fields(words)...); out != fmt.Sprint(want) {
			t.Errorf("%s: %q, %q, want %v", words, out, errs, want)
		}
	}
}
