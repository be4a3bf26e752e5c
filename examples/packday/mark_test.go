package main

import (
	"bytes"
	"strings"
	"testing"
)

// Leave it, mend it or read again. The stem reads within 0.36 Brix, by hand from
// 0.29 of scale and steps and 0.2 of scale and temperature; from 66 to 68.9 Brix
// what lies from 66.36 to 68.54 is left, what lies under 65.64 or over 69.26 is
// mended, and what lies between is read again.
func TestMark(t *testing.T) {
	for _, c := range []struct{ args, want, not string }{
		{"-reading|67.0 Brix", "To do leave it", "Thin with"},
		{"-reading|67.0 Brix|-target|66.9 Brix", "To do leave it", "Thin with"},
		{"-reading|66.5 Brix", "To do leave it", "Boil off"},
		{"-reading|66.1 Brix", "To do read again", "Boil off"},
		{"-reading|65.0 Brix", "Boil off, water", "To do"},
		{"-reading|68.4 Brix", "from 68 Brix on crystals are likely", "Thin with"},
		{"-reading|68.8 Brix", "To do read again", "Thin with"},
		{"-reading|70 Brix", "Off the fire first. Thin it there with hot water or hot sap", "To do"},
		{"-reading|67.6 Brix|-target|66.9 Brix", "Thin with", "To do"},
		{"-reading|67.0 Brix|-place|Vermont", "To do read again", "Boil off"},
		{"-reading|64 Brix|-target|64 Brix", "may ferment in the jar", "Boil off"},
		{"-reading|64 Brix|-target|64 Brix", "from the target that you gave, which the rule forbids", "cost color"},
		{"-reading|70 Brix|-thin-with|64.5 Brix", "Thin it there with the lighter syrup, hot, in small pours", "hot sap"},
		// 66.9 + 0.37 = 67.27: 66.9 cannot be told from too thin, 67.3 can.
		{"-reading|64 Brix|-target|66.9 Brix|-place|Vermont", "To be sure of it finish denser, at 67.3 Brix", "To do"},
		{"-reading|64 Brix|-target|67.3 Brix|-place|Vermont", "By the rule on density inside (Vermont", "finish denser"},
	} {
		var out, complaint bytes.Buffer
		args := append([]string{"-volume", "3 US gal"}, strings.Split(c.args, "|")...)
		if status := program().Main(args, strings.NewReader(""), &out, &complaint); status != 0 {
			t.Errorf("%s: status %d, %s", c.args, status, complaint.String())
		}
		flat := strings.Join(strings.Fields(out.String()), " ")
		if !strings.Contains(flat, c.want) || strings.Contains(flat, c.not) {
			t.Errorf("%s: want %q and not %q\n%s", c.args, c.want, c.not, out.String())
		}
	}
}
