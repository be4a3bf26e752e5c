package ask

import (
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
)

// Settings in as many ways as a maker writes them; the folder's reader and the
// phone's must agree on every value that both know.
const written = `# An invented sugarhouse.
name: Long Wall
gallons: US
units: US # of the pages
elevation: 1150 ft
Pan: 2 x 4 ft
boils off: 8 gallons an hour
depth: 2 in
safe depth: 1 in
coals: 8 minutes
fire: under a roof
evening: 5 hours
taps: 60
collected by: pails
pail: 2 gallons, 2 taps
tank: big, 120 gallons, 2.5 gallons an inch
tank: barrel, 30 gallons
sap waits at: 42 F
sap hydrometer: marked at 38 F
syrup hydrometer: marked at 60 F
hydrometer off: 0.3 Brix low
thermometer off: 0.4 F deg high
target: 66.9 Brix
place: Vermont
fill at: 187 F
bit: 5/16 in
hole depth: 1.5 in
shelf: 50 F
`

// quantity brings a text of either reader to one figure. A text that is no
// quantity comes back as it is.
func quantity(text string) any {
	if a, err := parseArea(text); err == nil {
		return a.String()
	}
	if d, err := parseHours(text); err == nil {
		return d
	}
	for _, parse := range []func(string) (any, error){
		func(s string) (any, error) { v, err := units.ParseVolume(s); return v.String(), err },
		func(s string) (any, error) { v, err := units.ParseVolumeRate(s); return v.String(), err },
		func(s string) (any, error) { v, err := units.ParseLength(s); return v.String(), err },
		func(s string) (any, error) { v, err := units.ParseTemperature(s); return v.String(), err },
		func(s string) (any, error) { v, err := units.ParseBrix(s); return v.String(), err },
	} {
		if v, err := parse(text); err == nil {
			return v
		}
	}
	return text
}

func TestSettingsAsTheFolder(t *testing.T) {
	demo, err := os.ReadFile("../../../sugarhouse/sugarhouse.txt")
	if err != nil {
		t.Fatal(err)
	}
	imperial := strings.Replace(written, "gallons: US", "gallons: imperial", 1)
	for name, text := range map[string]string{"written": written, "imperial": imperial, "demo": string(demo), "windows": strings.ReplaceAll("\ufeff"+written, "\n", "\r\n")} {
		t.Run(name, func(t *testing.T) {
			house, err := folder.Open(fstest.MapFS{folder.SettingsFile: {Data: []byte(text)}}, "", 0)
			if err != nil {
				t.Fatal(err)
			}
			phone := readHouse(text)
			held := 0
			for _, in := range settings {
				line, ok := house.Settings.Set(in.Key)
				got := phone.value(in.Key)
				if ok != (got != "") {
					t.Errorf("%s: the phone reads %q, the folder has it: %v", in.Key, got, ok)
				}
				if !ok {
					continue
				}
				if err := in.check(got); err != nil {
					t.Errorf("%s: no field takes %q: %v", in.Key, got, err)
				}
				want := line.Value
				if len(line.Fills) > 0 {
					want = line.Fills[0].Text
				}
				switch in.Key {
				case "collected by", "units", "fire", "gallons":
					want = got // words, looked at below
				case "tank":
					var all units.Volume
					for _, tank := range house.Settings.Tanks {
						all += tank.Holds
					}
					want = all.String()
				case "hydrometer off":
					want = house.Settings.HydrometerOff.String()
				case "thermometer off":
					a, err := units.ParseTempDiff(got)
					if d := a - house.Settings.ThermometerOff; err != nil || d > 1e-9 || d < -1e-9 {
						t.Errorf("%s: %v, the folder says %v", in.Key, got, house.Settings.ThermometerOff)
					}
					continue
				}
				if quantity(got) != quantity(want) {
					t.Errorf("%s: the phone reads %v, the folder %v", in.Key, quantity(got), quantity(want))
				}
				held++
			}
			if held < 8 {
				t.Errorf("only %d settings compared", held)
			}
			if (phone.value("fire") == "under a roof") != house.Settings.Roof {
				t.Error("the roof")
			}
			if len(phone.tanks) != len(house.Settings.Tanks) {
				t.Fatalf("%d tanks, the folder has %d", len(phone.tanks), len(house.Settings.Tanks))
			}
			for i, tank := range house.Settings.Tanks {
				if p := phone.tanks[i]; p.name != tank.Name || p.holds.String() != tank.Holds.String() || p.byInch.String() != tank.ByInch.String() {
					t.Errorf("tank %+v, the folder has %+v", p, tank)
				}
			}
		})
	}
}

// What is written back is what came, but for the line that was set.
func TestSetKeepsTheFile(t *testing.T) {
	q := &Request{Do: "set", House: written, Name: "units", Value: "metric", Now: "2034-03-10T14:05:09"}
	want := strings.TrimRight(strings.Replace(written, "units: US #", "units: metric #", 1), "\n")
	if r := q.Answer(); r.House != want || r.Error != "" || len(r.Errors) > 0 {
		t.Errorf("%s, want\n%s (%v)", r.House, want, r.Errors)
	}
	q.Name, q.Value = "pan", ""
	if r := q.Answer(); strings.Contains(r.House, "Pan") || !strings.Contains(r.House, "boils off: 8 gallons an hour") {
		t.Error(r.House)
	}
	q.Name, q.Value = "guideline", "NAMSPM-conservative"
	if r := q.Answer(); !strings.HasSuffix(r.House, "\nguideline: NAMSPM-conservative") {
		t.Error(r.House, r.Errors)
	}
	// A refused value changes nothing, and says why.
	q.Name, q.Value = "target", "669 Brix"
	if r := q.Answer(); r.House != "" || r.Errors["target"] != "strength to finish at 669 Brix is outside 60 to 74 Brix" {
		t.Errorf("%+v", r)
	}
	// A bare gallon means nothing until the file names it.
	q.House, q.Name, q.Value = "", "boils off", "8 gallons an hour"
	if r := q.Answer(); !strings.Contains(r.Errors["boils off"], "US gal/h, US gal/min, US gal/day, imp gal/h") {
		t.Errorf("%+v", r)
	}
}
