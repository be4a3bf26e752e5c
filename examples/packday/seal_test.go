package main

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
	"example.org/sapreckoner/examples/internal/folder"
)

// sealing is what the page says of the heat at capping.
type sealing struct {
	Pack struct {
		Note string `json:"at_note"`
	} `json:"pack"`
	Capping struct {
		Seals []struct {
			Container string   `json:"container"`
			Warmed    float64  `json:"warmed_f"`
			Seals     string   `json:"seals"`
			Warm      *float64 `json:"warm_f"`
		} `json:"seals"`
		Remarks []string `json:"remarks"`
	} `json:"capping"`
	Care struct {
		Remarks []string `json:"remarks"`
	} `json:"care"`
}

func sealed(t *testing.T, b clitest.Binary, args ...string) (s sealing) {
	t.Helper()
	parts(t, b, &s, args...)
	return s
}

// Every container that would be capped below 180 F is named, and what the page
// tells to do brings it there.
func seals(t *testing.T, b clitest.Binary) {
	demo := sealed(t, b)
	if len(demo.Capping.Seals) != 4 {
		t.Fatalf("%+v", demo.Capping)
	}
	for i, c := range demo.Capping.Seals {
		if !(c.Warmed < 180) || c.Seals != "may not" || c.Warm == nil {
			t.Fatalf("%+v", c)
		}
		for _, said := range []string{demo.Pack.Note, demo.Capping.Remarks[0]} {
			if !strings.Contains(said, c.Container) {
				t.Errorf("%s is not named: %s", c.Container, said)
			}
		}
		if got := sealed(t, b, "-wall", fmt.Sprint(*c.Warm, " F")).Capping.Seals[i].Warmed; !(math.Abs(got-180) < 0.05) {
			t.Errorf("%s, %v F: %v F once warmed", c.Container, *c.Warm, got)
		}
	}
	if !strings.Contains(demo.Capping.Remarks[1], "190 F") {
		t.Errorf("%q, %q", demo.Pack.Note, demo.Capping.Remarks)
	}
	// Warm enough, all of them seal and nothing is to do.
	warm := sealed(t, b, "-wall", "160 F")
	for _, c := range warm.Capping.Seals {
		if c.Seals != "yes" || c.Warm != nil {
			t.Errorf("%+v", c)
		}
	}
	if !strings.HasPrefix(warm.Pack.Note, "right at the filler: ") || len(warm.Capping.Remarks) != 1 {
		t.Errorf("%q, %q", warm.Pack.Note, warm.Capping.Remarks)
	}
	// Syrup below 180 F is heated: no warm bottle makes up for it.
	for _, c := range sealed(t, b, "-pack-at", "175 F").Capping.Seals {
		if c.Seals != "may not" || c.Warm != nil {
			t.Errorf("%+v", c)
		}
	}
}

// No page asks for a pour above 190 F, and a pour that cannot seal is heated first.
func pours(t *testing.T, b clitest.Binary) {
	for _, args := range [][]string{{}, {"-metric"}, {"-pack-at", "175 F"}, {"-volume", "3 US gal"}, {"-wall", "160 F"}} {
		_, out, _ := b.Run(t, "", append(args, "-full")...)
		for _, m := range regexp.MustCompile(`([0-9.]+) F\b`).FindAllStringSubmatch(out[strings.Index(out, "\nFill\n"):], -1) {
			if f, err := strconv.ParseFloat(m[1], 64); err != nil || f > 190 {
				t.Errorf("%v: %s", args, m[0])
			}
		}
		for _, want := range []string{"never above", "probe one filled jar"} {
			if len(args) < 2 && !strings.Contains(strings.Join(strings.Fields(out), " "), want) {
				t.Errorf("%v: no %q", args, want)
			}
		}
	}
}

// A moldy can enters no blend: the page is that of the other cans, and says so.
func moldy(t *testing.T, b clitest.Binary) {
	const head = "batch,volume_l,reading_brix,cup_c,mold\n"
	var got [2]sheet
	for i, file := range []string{head + "a,5,66.9,20,\n", head + "old,7,,,yes\na,5,66.9,20,no\n"} {
		out := parts(t, b, &got[i], "-dir", folderOf(t, file))
		if strings.Contains(out, "Moldy, and in no blend: old. Throw it away") != (i == 1) || strings.Contains(out, "taste before") {
			t.Errorf("%d: %s", i, out)
		}
	}
	if !near(got[0].Mark.Volume, got[1].Mark.Volume) || !(got[0].Mark.Volume > 0) {
		t.Errorf("%v and %v US gal", got[0].Mark.Volume, got[1].Mark.Volume)
	}
}

// What moldy syrup was poured into is moldy too, at once or by way of others; what was
// poured out of a can before the mold came into it is not. Of 4 cans d alone is packed:
// a is marked, b took of a, c of b after that, d of b before.
func moldyBlends(t *testing.T, b clitest.Binary) {
	dir := clitest.Folder(t, map[string]string{
		folder.BatchesFile: "batch,date,volume_l,reading_brix,cup_c,mold\na,2034-03-01,5,66.9,20,yes\nb,2034-03-01,5,66.9,20,\nc,2034-03-01,5,66.9,20,\nd,2034-03-01,5,66.9,20,\n",
		folder.BlendsFile:  "date,from,into,volume_l\n2034-03-04,b,c,1\n2034-03-03,a,b,1\n2034-03-02,b,d,1\n",
	})
	for _, c := range []struct{ args, want string }{
		{"", "Told: d. Assumed"},
		{"-batch|b + c + d", "Moldy, and in no blend: b (moldy syrup was poured into it) and c (moldy syrup was poured into it). Throw it away."},
		{"-batch|b + c + d|-reach|66.5 to 67.5 Brix", "Moldy, and in no blend: b (moldy"},
	} {
		args := append([]string{"-dir", dir}, strings.FieldsFunc(c.args, func(r rune) bool { return r == '|' })...)
		status, out, errs := b.Run(t, "", args...)
		if words := strings.Join(strings.Fields(out), " "); status != 0 || !strings.Contains(words, c.want) {
			t.Errorf("%v: status %d, no %q: %s%s", args, status, c.want, errs, out)
		}
	}
	status, out, errs := b.Run(t, "", "-dir", dir, "-batch", "b")
	if status == 0 || out != "" || !strings.Contains(errs, "there is nothing to pack") {
		t.Errorf("status %d, %s%s", status, errs, out)
	}
}

// Syrup that is poured below 180 F seals nowhere (the least heat at capping of every
// source read): the first page says so where it tells the heat. From there to 185 F it
// is too cool at the filler (OMAFRA 2014), since it cools on the way to the cap.
func tooCool(t *testing.T, b clitest.Binary) {
	const (
		never = "(too cool: no jar seals below 180 F, heat it to 185 F first)"
		soon  = "(cool for the filler, and it cools on the way: heat it to 185 F first)"
		right = "(into warm jars, smallest first; cap at once"
	)
	for at, want := range map[string]string{"150 F": never, "179 F": never, "180 F": soon, "184 F": soon, "185 F": right, "187 F": right, "190 F": right} {
		_, out, _ := b.Run(t, "", "-pack-at", at)
		if words := strings.Join(strings.Fields(out), " "); !strings.Contains(words, want) {
			t.Errorf("%s: %s", at, out)
		}
	}
}

// Published advice pours at 190 F at most, 87.78 C, and caps at 180 F at least, 82.22 C:
// a page in whole degrees C says 87 and 83, and nowhere 88 or 82.
func limits(t *testing.T, b clitest.Binary) {
	_, out, errs := b.Run(t, "", "-full", "-metric", "-volume", "12 L")
	words := strings.Join(strings.Fields(out), " ")
	for _, want := range []string{"never above 87 C", "it must hold 83 C", "Seal at 83 C or above", "probe one: 83 C", "Heat to 87 C"} {
		if !strings.Contains(words, want) {
			t.Errorf("no %q: %s%s", want, errs, out)
		}
	}
	if strings.Contains(words, " 88 C") || strings.Contains(words, " 82 C") {
		t.Error(out)
	}
}

// Syrup that is packed thinner than it keeps, or than the rule allows, has a
// caution of its own.
func thin(t *testing.T, b clitest.Binary) {
	for _, c := range []struct{ args, want string }{
		{"-target|64 Brix", "Syrup of 64.0 Brix is thin: below 66 Brix it ferments or molds in the jar"},
		{"-target|65.9 Brix", "Syrup of 65.9 Brix is thin: below 66 Brix it ferments"},
		{"-target|66 Brix", ""},
		{"-target|66 Brix|-place|Vermont", "Syrup of 66.0 Brix is thinner than the rule allows (Vermont: 66.9 to 68.9 Brix)"},
		{"-target|66.9 Brix|-place|Vermont", ""},
	} {
		first := sealed(t, b, strings.Split(c.args, "|")...).Care.Remarks[0]
		if c.want == "" && strings.HasPrefix(first, "Syrup of ") || !strings.HasPrefix(first, c.want) {
			t.Errorf("%s: %s", c.args, first)
		}
	}
}

// With -metric no temperature stands in F before the same in C.
func metric(t *testing.T, b clitest.Binary) {
	status, press, errs := b.Run(t, "", "-full", "-metric", "-volume", "5 L", "-aid-dose", "0.1 lb/US gal")
	if status != 0 || !strings.Contains(press, "12.0 kg/m3") {
		t.Errorf("%s, no dose in metric units in\n%s", errs, press)
	}
	status, out, errs := b.Run(t, "", "-full", "-metric")
	if status != 0 {
		t.Fatal(errs)
	}
	for _, line := range strings.Split(out, "\n") {
		if f := fahrenheit.FindStringIndex(line); f != nil && !strings.Contains(line[:f[0]], " C (") {
			t.Errorf("%s", line)
		}
	}
}

var fahrenheit = regexp.MustCompile(`[0-9] F\b`)
