package main

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// mostGears fit on a page.
const mostGears = 20

// A gear is a line of -gear-file.
type gear struct {
	season.Gear
	pail units.Volume // of one tap; NaN where there is none
}

// readGear reads the gears to compare.
func (s *setup) readGear(e *cli.Env) (gears []gear, err error) {
	if s.gearFile == "" {
		return nil, nil
	}
	var name string
	var vacuum, minutes, first, yearly, perPail float64
	var drop, depth units.Length
	var pail units.Volume
	var clean units.Share
	t := table{cols: []records.Col{
		records.Text("gear", &name), records.Number("vacuum_inhg", &vacuum).Optional(), records.Length("drop", &drop).Optional(),
		records.Length("depth", &depth).Optional(), records.Share("clean", &clean).Optional(),
		records.Volume("pail", &pail).Optional(), records.Number("taps_per_pail", &perPail).Optional(),
		records.Number("minutes", &minutes), records.Number("first", &first), records.Number("yearly", &yearly),
	}}
	t.row = func(r *records.Reader) error {
		if len(gears) == mostGears {
			return r.Fail("", fmt.Errorf("more than %d gears: compare fewer", mostGears))
		}
		if err := checkLabel(name); err != nil {
			return r.Fail("gear", err)
		}
		g := gear{Gear: season.Gear{Name: name, Depth: cli.Or(depth, s.depth), Clean: cli.Or(clean, units.Whole), First: first, Yearly: yearly}, pail: pail}
		if !(minutes >= 0 && minutes <= 24*60) {
			return r.Fail("minutes", errors.New("minutes of walking and pouring on a running day, 0 to 1440"))
		}
		g.Round = time.Duration(minutes * float64(time.Minute))
		inches := units.InchesMercury(cli.Or(vacuum, 0))
		if told := !math.IsNaN(float64(drop)); told && inches > 0 {
			return r.Fail("drop", errors.New("a pump or a falling line: give vacuum_inhg or drop"))
		} else if told {
			g.Falls = true
			if inches, err = season.NaturalVacuum(drop); err != nil {
				return r.Fail("drop", err)
			}
		}
		if g.Method, err = season.WithVacuum(inches); err != nil {
			return r.Fail("vacuum_inhg", err)
		}
		if wrong, err := g.hang(cli.Or(perPail, 1)); err != nil {
			return r.Fail(wrong, err)
		}
		// A gear is tried by itself, so that its line is told.
		if _, err := season.CompareGear(season.GearUse{Taps: 1, FlowDays: 1, Per: units.USGallon}, []season.Gear{g.Gear}); err != nil {
			return r.Fail("", err)
		}
		gears = append(gears, g)
		return nil
	}
	progress := e.Progress()
	defer progress.Done()
	return gears, eachRow(e, progress, "gear-file", s.gearFile, t)
}

// hang shares a pail among its taps.
func (g *gear) hang(taps float64) (wrong string, err error) {
	if !(taps >= 1 && taps <= 100 && taps == math.Trunc(taps)) {
		return "taps_per_pail", errors.New("whole taps that run into a pail, 1 to 100")
	}
	if v := g.pail; !math.IsNaN(float64(v)) && !(v > 0 && v <= 100*units.USGallon) {
		return "pail", errors.New("what a pail holds to the brim, up to 100 US gal")
	}
	g.pail /= units.Volume(taps)
	return "", nil
}

// gearPart compares the gears over a season of this stand.
func (p page) gearPart(part *cli.Part, gears []gear) error {
	s := p.given
	use := season.GearUse{Taps: max(1, p.asked.Taps), FlowDays: float64(s.flowDays), Worth: float64(s.worth), Per: units.USGallon, Hour: float64(s.hour)}
	all := make([]season.Gear, len(gears))
	for i, g := range gears {
		all[i] = g.Gear
	}
	seasons, err := season.CompareGear(use, all)
	if err != nil {
		return err
	}
	part.Row("taps", "Taps, each with a spout", cli.Count(use.Taps, ""), fmt.Sprintf("%d running days; a US gallon of sap is worth %.2f, an hour %.2f of your money", s.flowDays, use.Worth, use.Hour))
	left := func(x float64) cli.Value { return cli.Number(x, 0, "") }
	var rows [][]cli.Value
	for i, g := range seasons {
		pays := "never"
		switch {
		case i == 0:
			pays = "-"
		case g.Surely && g.PaysTo == 0:
			pays = "at once"
		case g.Surely:
			pays = fmt.Sprintf("after %.1f to %.1f", g.PaysFrom, g.PaysTo)
		case g.Pays:
			pays = fmt.Sprintf("after %.1f if good", g.PaysFrom)
		}
		spill, err := p.spills(gears[i])
		if err != nil {
			return err
		}
		rows = append(rows, []cli.Value{cli.Words(g.Name), rough(g.Sap), cli.Number(g.Walking.Hours(), 0, "h"), cli.Words(spill), cli.Between(left(g.LeastLeft), left(g.MostLeft)), cli.Words(pays)})
	}
	part.Table("gears", []cli.Column{{Key: "gear", Head: "gear"}, {Key: "sap", Head: "sap"}, {Key: "walking", Head: "walking"}, {Key: "over", Head: "runs over"}, {Key: "left", Head: "left a season"}, {Key: "pays", Head: "pays back"}}, rows)
	part.Remark("Left is the worth of the sap less what a season takes, in a poor season and in a good one: bands as wide as the sources. Pays back: after so many seasons it has brought what it takes more to begin than the first, if all are good and if all are poor. Sap by gravity is 5 to 15 US gal a tap (from memory), with a vacuum more by " + p.vacuumSource() + ". By depth: 63 % at 1 in, 125 % at 2 in, nothing more beyond (University of Vermont, under vacuum). Runs over: on so many running days, with a round a day, before any record of your own.")
	part.Remark("What clean and new spouts bring, for the column clean:")
	for _, f := range season.CleaningFigures() {
		words, what := f.Low.Text(0), " more sap"
		if f.High > f.Low {
			words += " to " + f.High.Text(0)
		}
		if f.Left {
			what = " of the sap of new"
		}
		part.Item(f.What + ": " + words + what + " (" + f.Source + ", " + f.Obtained + ").")
	}
	part.Remark("A vacuum takes more from the tree: judge growth and vigor before it. A falling line with air in it draws no vacuum at all: its poor season is without. Prices and minutes are yours, and none is published here.")
	return nil
}

func (p page) vacuumSource() string {
	f, err := season.VacuumGain(units.InchMercury)
	if err != nil {
		return ""
	}
	return f.Source + ", which do not agree"
}

// spills words on how many running days a pail runs over.
func (p page) spills(g gear) (string, error) {
	if math.IsNaN(float64(g.pail)) {
		return "-", nil
	}
	m, err := season.NewSapModel(g.Method, float64(p.given.flowDays))
	if err != nil {
		return "", err
	}
	record, err := season.NewSapRecord(m, season.SapFlowDay(), season.Weather{}, 2000, nil)
	if err != nil {
		return "", err
	}
	over, err := record.Over(min(g.pail, 100*units.Liter))
	return cli.Plural(int(math.Ceil(over.Fraction()*float64(p.given.flowDays))), "day"), err
}

func rough(f season.Figure[units.Volume]) cli.Value {
	return cli.Between(cli.Rough(cli.Volume(f.Low)), cli.Rough(cli.Volume(f.High)))
}

// A money is an amount of one's own money.
type money float64

// UnmarshalText reads a plain amount.
func (m *money) UnmarshalText(text []byte) error {
	x, err := strconv.ParseFloat(string(text), 64)
	if err != nil || !(x >= 0 && x <= 1e6) {
		return errors.New("a plain amount, 0 to 1000000, such as 0.40")
	}
	*m = money(x)
	return nil
}
