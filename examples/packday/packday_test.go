package main

import (
	"encoding/json"
	"fmt"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
	"example.org/sapreckoner/examples/internal/folder"
)

func TestPackday(t *testing.T) {
	b := clitest.Build(t)
	t.Run("pages", func(t *testing.T) { pages(t, b) })
	t.Run("account closes", func(t *testing.T) { closes(t, b) })
	t.Run("checked by hand", func(t *testing.T) { byHand(t, b) })
	t.Run("doubt of the pool", func(t *testing.T) { pooledDoubt(t, b) })
	t.Run("heat at capping", func(t *testing.T) { seals(t, b) })
	t.Run("pours", func(t *testing.T) { pours(t, b) })
	t.Run("mold", func(t *testing.T) { moldy(t, b); moldyBlends(t, b) })
	t.Run("cool", func(t *testing.T) { tooCool(t, b); limits(t, b) })
	t.Run("thin syrup", func(t *testing.T) { thin(t, b) })
	t.Run("metric", func(t *testing.T) { metric(t, b) })
	t.Run("shares", func(t *testing.T) { shares(t, b) })
	t.Run("shares at once", func(t *testing.T) { sharesAtOnce(t, b) })
	t.Run("brief", func(t *testing.T) { briefs(t, b) })
	t.Run("scale", func(t *testing.T) { weighs(t, b) })
	t.Run("reach", func(t *testing.T) { reaches(t, b) })
	t.Run("borrowed", func(t *testing.T) { borrowed(t, b) })
	b.Refuses(t, "packday", badFlags())
	b.Refuses(t, "packday", badFiles(t))
}

// days are different ways of packing: boiled on, thinned with water, sap and a
// lighter syrup, at the mark already, by weight, with a press, too few jars.
var days = map[string][]string{
	"demo":      {},
	"call":      {"-volume", "3 US gal", "-reading", "67.8 Brix", "-read-at", "66 F"},
	"water":     {"-volume", "3 US gal", "-reading", "68.4 Brix"},
	"sap":       {"-volume", "14 L", "-reading", "69 Brix", "-thin-with", "2.2 Brix", "-thin-temp", "38 F"},
	"syrup":     {"-weight", "33 lb", "-reading", "69.5 Brix", "-thin-with", "64.5 Brix", "-light", "48 %", "-thin-light", "70 %", "-aid-dose", "0.1 lb/US gal", "-place", "Vermont"},
	"at mark":   {"-volume", "5 imp gal", "-reading", "66.9 Brix", "-filter-keeps", "0 mL"},
	"few jars":  {"-volume", "3 US gal", "-containers", "2x1 US qt, 3x 1 US pt"},
	"small":     {"-weight", "2 kg", "-containers", "any 50 mL"},
	"no margin": {"-margin", "0 %", "-containers", "any 1 US qt"},
}

func pages(t *testing.T, b clitest.Binary) {
	b.Golden(t, "demo.txt")
	b.Golden(t, "full.txt", "-full")
	b.Golden(t, "full-metric.txt", "-full", "-metric")
	b.Golden(t, "demo.json", "-json")
	b.Golden(t, "syrup.txt", append(days["syrup"], "-full")...)
	b.Golden(t, "boil-on.txt", "-volume", "3 US gal", "-reading", "65 Brix", "-elevation", "1000 ft", "-full")
	b.Golden(t, "few-jars.txt", append(days["few jars"], "-full")...)
	b.Golden(t, "help.txt", "-h")
}

// sheet is what the tests read of the JSON.
type sheet struct {
	Pool struct {
		Light *float64 `json:"light_pct"`
		Brix  float64  `json:"brix"`
		Doubt float64  `json:"uncertainty_brix"`
	} `json:"pool"`
	Mark struct {
		Add     float64 `json:"add_weight_lb"`
		BoilOff float64 `json:"boil_off_lb"`
		Volume  float64 `json:"volume_us_gal"`
	} `json:"mark"`
	Pack struct {
		Containers []struct {
			Container string  `json:"container"`
			Count     int     `json:"count"`
			Label     float64 `json:"label_us_fl_oz"`
		} `json:"containers"`
		Filling []struct {
			FillTo float64 `json:"fill_to_us_fl_oz"`
		} `json:"filling"`
		Count  int     `json:"count"`
		Labels float64 `json:"labels_us_gal"`
		Packed float64 `json:"packed_us_gal"`
		Left   float64 `json:"left_us_fl_oz"`
	} `json:"pack"`
	Filter struct {
		Kept float64 `json:"kept_us_fl_oz"`
	} `json:"filter"`
	Shares struct {
		Shares []map[string]any `json:"shares"`
	} `json:"shares"`
	Account struct {
		Account []struct {
			Line  string  `json:"line"`
			Mass  float64 `json:"mass_lb"`
			Sugar float64 `json:"sugar_lb"`
		} `json:"account"`
	} `json:"account"`
}

func run(t *testing.T, b clitest.Binary, args ...string) (s sheet) {
	t.Helper()
	parts(t, b, &s, args...)
	return s
}

// parts reads the parts of the JSON, and returns all of it as it stands.
func parts(t *testing.T, b clitest.Binary, into any, args ...string) string {
	t.Helper()
	status, out, errs := b.Run(t, "", append([]string{"-json"}, args...)...)
	if status != 0 || errs != "" {
		t.Fatalf("status %d, %s", status, errs)
	}
	page := struct{ Parts any }{into}
	if err := json.Unmarshal([]byte(out), &page); err != nil {
		t.Fatal(err)
	}
	return out
}

// folderOf is a folder with batches, each row without its date.
func folderOf(t *testing.T, batches string) string {
	head, rows, _ := strings.Cut(batches, "\n")
	return clitest.Folder(t, map[string]string{folder.BatchesFile: "date," + head + "\n" + strings.ReplaceAll("\n"+strings.TrimSuffix(rows, "\n"), "\n", "\n2034-03-05,")[1:] + "\n"})
}

// near allows for the nine digits of the JSON in a sum of a few lines.
func near(a, b float64) bool { return math.Abs(a-b) <= 1e-7*math.Max(math.Abs(a), math.Abs(b)) }

// Mass and sugar that come in go out: packed, left over, in the filter, boiled
// off. What is packed is summed jar by jar.
func closes(t *testing.T, b clitest.Binary) {
	for name, args := range days {
		t.Run(name, func(t *testing.T) {
			s := run(t, b, args...)
			var massIn, massOut, sugarIn, sugarOut float64
			seen := map[string]bool{}
			for _, l := range s.Account.Account {
				seen[l.Line] = true
				switch l.Line {
				case "in the cans", "added to thin":
					massIn, sugarIn = massIn+l.Mass, sugarIn+l.Sugar
				case "boiled off", "stays in the filter", "packed", "left over":
					massOut, sugarOut = massOut+l.Mass, sugarOut+l.Sugar
				default:
					t.Errorf("a line %q that no one reckons with", l.Line)
				}
			}
			for _, line := range []string{"in the cans", "stays in the filter", "packed", "left over"} {
				if !seen[line] {
					t.Errorf("no line %q", line)
				}
			}
			if !near(massIn, massOut) || !near(sugarIn, sugarOut) || !(massIn > 0) || !(sugarIn > 0) {
				t.Errorf("mass %v in, %v out; sugar %v in, %v out", massIn, massOut, sugarIn, sugarOut)
			}
			labels, count := 0.0, 0
			for _, c := range s.Pack.Containers {
				labels, count = labels+float64(c.Count)*c.Label/128, count+c.Count
			}
			if count != s.Pack.Count || !near(labels, s.Pack.Labels) || labels > s.Pack.Packed*(1+1e-9) {
				t.Errorf("%d containers of %v US gal; the page says %d, %v labeled, %v packed", count, labels, s.Pack.Count, s.Pack.Labels, s.Pack.Packed)
			}
			if whole := s.Pack.Packed + (s.Pack.Left+s.Filter.Kept)/128; !near(whole, s.Mark.Volume) {
				t.Errorf("%v US gal packed, left and filtered off; %v made", whole, s.Mark.Volume)
			}
		})
	}
}

// Check values from elsewhere, at 68 F throughout.
func byHand(t *testing.T, b clitest.Binary) {
	cold := []string{"-hydrometer", "68 F", "-read-at", "68 F", "-temp", "68 F", "-thin-temp", "68 F"}
	// A US gallon of 68.9 Brix has 11.187 lb; to 66.9 it takes 11.187 (68.9/66.9
	// - 1) = 0.3344 lb of water, of which air bears 0.105 percent: 0.3341 on the scale.
	s := run(t, b, append(cold, "-volume", "1 US gal", "-reading", "68.9 Brix", "-target", "66.9 Brix")...)
	if math.Abs(s.Mark.Add-0.33405) > 0.0001 || s.Mark.BoilOff != 0 {
		t.Errorf("thinned with %v lb", s.Mark.Add)
	}
	// 100 lb on the scale of 64 Brix are 100.08 of mass; to 66.9 it loses 100.08
	// (1 - 64/66.9) = 4.338 lb.
	s = run(t, b, append(cold, "-weight", "100 lb", "-reading", "64 Brix")...)
	if math.Abs(s.Mark.BoilOff-4.338) > 0.001 || s.Mark.Add != 0 {
		t.Errorf("boiled off %v lb", s.Mark.BoilOff)
	}
	// A quart of 66.9 Brix at 185 F swells to 1/(1 - 0.02896) = 1.02982.
	s = run(t, b, append(cold, "-volume", "1 US gal", "-reading", "66.9 Brix", "-pack-at", "185 F", "-margin", "0 %", "-containers", "any 1 US qt")...)
	if got := s.Pack.Filling[0].FillTo / 32; math.Abs(got-1.02982) > 0.00002 {
		t.Errorf("a quart is filled to %v", got)
	}
	// Equal volumes of 80 and 40 percent: the root of 0.8 x 0.4 is 56.57 percent.
	s = run(t, b, "-hydrometer", "20 C", "-dir", folderOf(t, "batch,volume_l,reading_brix,cup_c,temp_c,light_pct\na,5,66.9,20,20,80\nb,5,66.9,20,20,40\n"))
	if s.Pool.Light == nil || math.Abs(*s.Pool.Light-56.57) > 0.005 || math.Abs(s.Pool.Brix-66.9) > 1e-6 {
		t.Errorf("%v %% and %v Brix", *s.Pool.Light, s.Pool.Brix)
	}
}

// Four cans read with one hydrometer, at its own 60 F, share its error; only the
// steps of 0.5 Brix fall by chance. Of the step's variance 0.5^2/12, four times
// at k = 2, a quarter is left: the squares differ by 3/4 x 4 x 0.5^2/12 = 0.0625.
func pooledDoubt(t *testing.T, b clitest.Binary) {
	doubt := func(cans int) float64 {
		rows := ""
		for i := range cans {
			rows += fmt.Sprintf("%d,%d,66.9,60\n", i, 5)
		}
		return run(t, b, "-dir", folderOf(t, "batch,volume_l,reading_brix,cup_f\n"+rows)).Pool.Doubt
	}
	one, four := doubt(1), doubt(4)
	if math.Abs(one*one-four*four-0.0625) > 1e-6 {
		t.Errorf("one can %v, four %v", one, four)
	}
}

// Every jar that is packed goes to somebody, by hours, taps, sugar and parts.
func shares(t *testing.T, b clitest.Binary) {
	for _, file := range []string{
		"", // the demo
		"name,worked_min\nA,90\nB,0\nC,45\n",
		"name,taps\nA,31\nB,\nC,7\n",
		"name,sugar_kg\nA,3.25\nB,1.5\n",
		"name,parts\nA,1\nB,1\nC,0.5\n",
	} {
		var args []string
		if file != "" {
			args = []string{"-dir", clitest.Folder(t, map[string]string{folder.PeopleFile: file}), "-volume", "3 US gal"}
		}
		s := run(t, b, args...)
		for _, c := range s.Pack.Containers {
			given := 0.0
			for _, who := range s.Shares.Shares {
				n, ok := who["jars_"+key(c.Container)].(float64)
				if !ok {
					t.Fatalf("no count of %s in %v", c.Container, who)
				}
				given += n
			}
			if int(given) != c.Count {
				t.Errorf("%d of %s packed, %v given out", c.Count, c.Container, given)
			}
		}
		// Who brought nothing gets nothing.
		for _, who := range s.Shares.Shares {
			if who["name"] == "B" && (who["taps"] == 0.0 || who["worked_h"] == 0.0) && who["volume_us_gal"] != 0.0 {
				t.Errorf("%v", who)
			}
		}
	}
}

// By hand: hours of 1 and 3 and taps of 1 and 1 count alike, 0.375 and 0.625. Eight
// pints are packed and A took a quart already: of ten A has 3.75 coming and gets 2 more, B
// 6.25 and gets 6.
func sharesAtOnce(t *testing.T, b clitest.Binary) {
	dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\n", folder.PeopleFile: "name,worked_h,taps,taken_qt\nA,1,1,1\nB,3,1,\n"})
	status, out, errs := b.Run(t, "", "-dir", dir, "-volume", "1.2 US gal", "-containers", "8x1 US pt", "-full")
	words := strings.Join(strings.Fields(out), " ")
	if status != 0 || !strings.Contains(words, "A 37.5 % 2 ") || !strings.Contains(words, "B 62.5 % 6 ") || !strings.Contains(words, "What was taken already counts in each share") {
		t.Errorf("status %d, %s%s", status, errs, out)
	}
}

// The brief fits its size whatever is packed.
func briefs(t *testing.T, b clitest.Binary) {
	for _, args := range days {
		b.Brief(t, "", args...)
	}
	b.Brief(t, "", "-metric")
	if page, _ := b.Brief(t, "", "-volume", "30 US gal", "-containers", "9x1 US gal, 9x1 US qt, 9x1 US pt, 9x12 US fl oz, 9x8 US fl oz, 9x100 mL"); !strings.Contains(page, "\n100 mL             9\n") {
		t.Error(page)
	}
	b.Brief(t, "", "3", "US", "gal", "66.1", "at", "60", "F")
	b.Brief(t, "", "-volume", "3 US gal", "-reading", "65 Brix", "-aid-dose", "0.1 lb/US gal")
	b.Brief(t, "", "-volume", "3 US gal", "-reading", "64 Brix", "-target", "64 Brix", "-pack-at", "175 F")
}

// What a folder does not tell is told to be taken from the flag; a batch that tells it
// before or behind changes nothing.
func borrowed(t *testing.T, b clitest.Binary) {
	for file, want := range map[string]string{
		"batch,volume_l,reading_brix,cup_c\nblue,20,67,15\n":                         `taken as: -temp "60 F", -elevation "0 ft".`,
		"batch,volume_l,reading_brix,cup_c,temp_c\nhot,1,67,15,80\nblue,20,67,15,\n": `taken as: -temp "60 F", -elevation "0 ft".`,
		"batch,volume_l,reading_brix,cup_c,temp_c\nblue,20,67,15,15\n":               `taken as: -elevation "0 ft".`,
	} {
		status, out, errs := b.Run(t, "", "-full", "-dir", folderOf(t, file))
		if status != 0 || !strings.Contains(out, want) {
			t.Errorf("status %d, %s, no %q in\n%s", status, errs, want, out)
		}
	}
	status, out, errs := b.Run(t, "", "-dir", folderOf(t, "batch,volume_l,reading_brix,cup_c\nblue,20,67,15\n"), "-full", "-metric", "-temp", "15 C")
	for _, want := range []string{"at 15.0 C", "unknown", "20 L"} {
		if status != 0 || !strings.Contains(out, want) {
			t.Errorf("status %d, %s, no %q in\n%s", status, errs, want, out)
		}
	}
}
