package ask

import "testing"

// BenchmarkAnswer answers the screens as a key press does.
func BenchmarkAnswer(b *testing.B) {
	for name, q := range map[string]Request{
		"syrup":    {Screen: "syrup", Fields: map[string][2]string{"water": {"209.6", "F"}, "cup": {"205", "F"}, "reads": {"59.5", "Brix"}}},
		"tonight":  {Screen: "tonight", Fields: map[string][2]string{"volume": {"40", "US gal"}, "reads": {"2.1", "Brix"}, "cold": {"40", "F"}, "lit": {"14:00", ""}}},
		"done by":  {Screen: "tonight", Fields: map[string][2]string{"volume": {"90", "US gal"}, "reads": {"2.1", "Brix"}, "cold": {"40", "F"}, "lit": {"14:00", ""}, "by": {"22:00", ""}}},
		"too much": {Screen: "tonight", Fields: map[string][2]string{"volume": {"90000", "US gal"}, "reads": {"2.1", "Brix"}, "cold": {"40", "F"}, "lit": {"14:00", ""}, "by": {"22:00", ""}}},
		"small":    {Screen: "tonight", Fields: map[string][2]string{"volume": {"400", "US gal"}, "reads": {"2.1", "Brix"}, "cold": {"40", "F"}, "lit": {"14:00", ""}, "by": {"22:00", ""}, "pan": {"0.5 ft2", ""}}},
		"hot":      {Screen: "tonight", Fields: map[string][2]string{"volume": {"4000", "US gal"}, "reads": {"2.1", "Brix"}, "cold": {"40", "F"}, "lit": {"14:00", ""}, "by": {"22:00", ""}, "pan": {"1 ft2", ""}, "rate": {"500", "US gal/h"}}},
		"mend":     {Screen: "mend", Fields: map[string][2]string{"amount": {"3", "US gal"}, "reads": {"70", "Brix"}, "cup": {"66", "F"}, "jar": {"1", "US qt"}}},
		"tomorrow": {Screen: "tomorrow", Fields: map[string][2]string{"low1": {"24", "F"}, "high1": {"44", "F"}, "waiting": {"40", "US gal"}}},
		"card":     {Screen: "card", Fields: map[string][2]string{"water": {"209.6", "F"}}},
	} {
		q.Do, q.Now = "ask", "2034-03-10T14:05:09"
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				q.Answer()
			}
		})
	}
}
