package records_test

import (
	"strings"
	"testing"

	"example.org/sapreckoner/units/records"
)

// A header without a comma is told for what it is, whatever columns are asked.
func TestSeparator(t *testing.T) {
	for header, want := range map[string]string{
		"time;sap_l;reading_brix":   "day.csv:1: no comma in the header: columns are separated by commas",
		"time\tsap_l\treading_brix": "day.csv:1: no comma in the header: columns are separated by commas",
		"time,sap_l;reading_brix":   "",
		"time":                      "",
	} {
		_, err := records.Open("day.csv", strings.NewReader(header+"\n"))
		if (err == nil) != (want == "") || err != nil && !strings.HasPrefix(err.Error(), want) {
			t.Errorf("%q: %v", header, err)
		}
	}
}
