package ask

import (
	"testing"
	"testing/fstest"
	"time"

	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
)

// The folder reads the lines that the phone wrote, in both systems of units.
func TestFolderReadsDays(t *testing.T) {
	for _, metric := range []bool{false, true} {
		q := &Request{Do: "days", Metric: metric, Now: "2034-03-11T20:00:00", Entries: []Entry{
			{Day: "2034-03-10", Time: "14:05", Sap: "40 US gal", Reads: "2.1 Brix", Cold: "41 F"},
			{Day: "2034-03-10", Time: "20:00", Syrup: "3 US qt", Wood: "6 load", Note: `late, "dark"`},
			{Day: "2034-03-11", Time: "19:30", Wood: "0.25 cord", Note: "=1+1"},
		}}
		file := q.Answer().File
		house, err := folder.Open(fstest.MapFS{folder.SettingsFile: {Data: []byte("gallons: US\nbarrow: 1/25 cord\n")}, folder.DaysFile: {Data: []byte(file)}}, "", 0)
		if err != nil {
			t.Fatalf("%v\n%s", err, file)
		}
		if len(house.Days) != 3 {
			t.Fatalf("%d days of\n%s", len(house.Days), file)
		}
		near := func(what string, got, want float64) {
			t.Helper()
			if d := got/want - 1; !(d < 1e-8 && d > -1e-8) {
				t.Errorf("%s is %v, want %v", what, got, want)
			}
		}
		a, b, c := house.Days[0], house.Days[1], house.Days[2]
		near("sap", a.Sap.USGallons(), 40)
		near("sugar", float64(a.Sugar), 2.1)
		near("heat of the sap", a.ReadAt.Fahrenheit(), 41)
		near("syrup", b.Syrup.USQuarts(), 3)
		near("wood", b.Wood.Cords(), 0.24) // 6 of 1/25 cord
		near("cords", c.Wood.Cords(), 0.25)
		if b.Note != `20:00 late, "dark"` || a.Date != time.Date(2034, 3, 10, 0, 0, 0, 0, time.UTC) {
			t.Errorf("%v %q", a.Date, b.Note)
		}
	}
}

// A line of every kind survives the change of its unit, to nine digits.
func TestReadingsFile(t *testing.T) {
	q := &Request{Do: "readings", Now: "2034-03-10T19:10:00", Zone: -300, Stamps: []Stamp{
		{At: time.Date(2034, 3, 11, 0, 1, 5, 0, time.UTC).UnixMilli(), Shown: "214.1 F"},
		{At: time.Date(2034, 3, 11, 0, 2, 0, 0, time.UTC).UnixMilli(), Shown: "101.5 C"},
	}}
	// 19:01:05 by a clock five hours behind; 101.5 C are 214.7 F.
	if got, want := q.Answer().File, "time,shown_f\n19:01:05,214.1\n19:02:00,214.7\n"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	q.Metric = true
	if got, want := q.Answer().File, "time,shown_c\n19:01:05,101.166667\n19:02:00,101.5\n"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// Every entry of the table is whole: it has words, a range, a kind that the page
// knows, and what it takes as usual is inside its range.
func TestTable(t *testing.T) {
	for _, s := range screens {
		if s.Title == "" || s.Lead == "" || len(s.Questions) == 0 {
			t.Errorf("screen %s is bare", s.Key)
		}
		seen := map[string]bool{}
		for _, q := range s.Questions {
			if q.Title == "" || q.answer == nil {
				t.Errorf("question %s has no title or no answer", q.Key)
			}
			for _, in := range q.Inputs {
				name := s.Key + "." + in.Key
				if seen[in.Key] {
					t.Errorf("%s stands twice", name)
				}
				seen[in.Key] = true
				if _, ok := kinds[in.Kind]; !ok || in.Label == "" || in.check == nil {
					t.Errorf("%s is not whole", name)
				}
				if in.Start != "" {
					if err := in.check(in.Start); err != nil {
						t.Errorf("%s takes %q as usual: %v", name, in.Start, err)
					}
				}
			}
		}
	}
	for _, in := range settings {
		if in.Start == "" {
			continue
		}
		h := readHouse("gallons: US\n" + in.Key + ": " + in.Start)
		if err := in.check(h.value(in.Key)); err != nil {
			t.Errorf("the example of %s: %v", in.Key, err)
		}
	}
}

// Nothing of a request, however it is torn, ends in a panic or in figures.
func FuzzAnswer(f *testing.F) {
	f.Add("syrup", "water", "209.6", "F", written)
	f.Add("tonight", "dip", "1e308 in", "", "tank: a, b, c\ntank:\n:\n#")
	f.Fuzz(func(t *testing.T, screen, key, text, unit, house string) {
		for _, do := range []string{"ask", "house", "set", "days", "readings"} {
			q := &Request{Do: do, Screen: screen, Fields: map[string][2]string{key: {text, unit}}, House: house, Now: "2034-03-10T14:05:09", Name: key, Value: text,
				Stamps: []Stamp{{At: 1, Shown: text}, {At: 0, Shown: unit}}, Entries: []Entry{{Day: key, Sap: text, Reads: unit, Wood: text}},
				Holes: []Scar{{Year: 2030, Along: text, Height: unit}}, Finger: &Finger{X: 7, Y: -1}}
			r := q.Answer()
			for _, a := range r.Answers {
				for _, row := range a.Rows {
					if row.Text == "NaN" || row.Text == "" {
						t.Errorf("%s %s is %q", a.Key, row.Key, row.Text)
					}
				}
			}
		}
	})
}

// By hand: (38 - 32) / 1.8 is 3.3 C, 8 US gal are 30.28 L, 8 ft2 are 0.743 m2.
func TestUsual(t *testing.T) {
	metric := table(units.Metric)
	want := map[string]string{"graduated": "3.3 C", "rate": "30.3 L/h", "pan": "0.743 m2", "depth": "5.08 cm", "target": "66.9 Brix", "coals": "8 min"}
	for _, s := range metric {
		if s.Key != "tonight" {
			continue
		}
		for _, q := range s.Questions {
			for _, in := range q.Inputs {
				if w, ok := want[in.Key]; ok && in.Start != w {
					t.Errorf("%s is usually %q, want %q", in.Key, in.Start, w)
				}
			}
		}
	}
	if got := table(units.US)[1].Questions[1].Inputs[2].Start; got != "8 US gal/h" {
		t.Errorf("in US units %q", got)
	}
}
