package main

import (
	"cmp"
	"fmt"
	"math"
	"strings"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// page lays a season out.
type page struct {
	*book
	*cli.Sheet
	yield.Account
}

func (b *book) sheet(a yield.Account) (*cli.Sheet, error) {
	sheet := &cli.Sheet{Title: "The book of a season", Metric: b.given.metric}
	p := page{b, sheet, a}
	p.brief()
	sheet.PartIf(b.again.rows > 0 || b.unseen > 0, "again", "Look again", p.againPart)
	p.seasonPart(sheet.Part("season", "Season"))
	p.balancePart(sheet.Part("balance", "Where the sugar went"))
	if err := cmp.Or(p.daysPart(sheet.Part("days", "By day")), p.sourcesPart(sheet.Part("sources", "By source"))); err != nil {
		return nil, err
	}
	sheet.PartIf(len(b.boils) > 0, "boils", "Boils", p.boilsPart)
	if b.wood > 0 && b.given.Fuel != "pellets" {
		if err := p.firePart(sheet.Part("fire", "What the fire makes of its fuel")); err != nil {
			return nil, err
		}
	}
	if len(b.lots) > 0 {
		if err := p.lotsPart(sheet.Part("batches", "Syrup by batch, at "+p.Degrees(label))); err != nil {
			return nil, err
		}
	}
	sheet.PartIf(len(b.sizes) > 0, "bottled", "Bottled", p.bottledPart)
	sheet.Part("care", "Take care").Item(
		"This page counts sugar and tells nothing of safety: moldy syrup may hold toxins that boiling leaves, and is not for eating.",
		"Where syrup is sold, records by lot are often asked for: local rules come first.")
	return sheet, nil
}

// span returns the first and the last day with sap.
func (b *book) span() (first, last int) {
	first = -1
	for i := range b.days {
		if b.days[i].sap.rows == 0 {
			continue
		}
		if first < 0 {
			first = i
		}
		last = i
	}
	return first, last
}

func (p page) seasonPart(part *cli.Part) {
	first, last := p.span()
	days, rows := 0, 0
	for i := range p.days {
		if n := p.days[i].sap.rows; n > 0 {
			days++
			rows += n
		}
	}
	part.Row("first", "First gathering", cli.Words(p.date(first).Format(time.DateOnly)))
	part.Row("last", "Last gathering", cli.Words(p.date(last).Format(time.DateOnly)))
	part.Row("days", "Days with sap", cli.Count(days, ""))
	part.Row("gatherings", "Gatherings", cli.Count(rows, ""))
	part.If(p.given.Taps > 0).Row("taps", "Taps", cli.Count(p.given.Taps, ""))
	if lacks := p.lacks(); len(lacks) > 0 {
		part.Remark("Nothing of the season in " + strings.Join(lacks, ", ") + ".")
	}
	part.If(p.unread > 0).Remark(fmt.Sprintf("Of %s nobody read the sugar: counted at %s.", cli.Plural(p.unread, "gathering"), p.mean.Text(1)))
	part.Remark(p.tellApart())
}

// lacks names the files without a row of the season.
func (b *book) lacks() (names []string) {
	for _, file := range []struct {
		name string
		has  bool
	}{{folder.BatchesFile, b.byBatches()}, {folder.BottledFile, len(b.sizes) > 0}, {folder.PanFile, len(b.lastSweet()) > 0}} {
		if !file.has {
			names = append(names, file.name)
		}
	}
	return names
}

// date returns a day of the season by its place in the year.
func (b *book) date(day int) time.Time {
	return time.Date(b.year, 1, day, 0, 0, 0, 0, time.UTC)
}

// Digits of totals and of their parts, which add up as they are printed.
const (
	sapDigits   = 4 // and of syrup and sugar, so that a day is known to three
	sugarDigits = 4
	waterDigits = 3
)

// addUp shows one column of a table as the parts of a total.
func addUp(n int, total cli.Value, rows [][]cli.Value, column int) {
	parts := make([]cli.Value, len(rows))
	for i, row := range rows {
		parts[i] = row[column]
	}
	for i, v := range cli.AddUp(n, total, parts...) {
		rows[i][column] = v
	}
}

// gauged shows what a gauge and a hydrometer measured, which is known to some
// percent, to three digits.
func gauged(v cli.Value) cli.Value { return cli.Digits(v, 3) }

func (p page) balancePart(part *cli.Part) {
	a := p.Account
	part.Row("sap", "Sap at "+p.Degrees(label), cli.Total(sapDigits, cli.Volume(a.Sap)), a.SapBrix.Text(2)+" on average")
	in := cli.Mass(a.SugarIn)
	went := cli.AddUp(sugarDigits, in, cli.Mass(a.SugarOut), cli.Mass(a.Kept), cli.Mass(a.Lost))
	part.Row("sugar_in", "Sugar in", cli.Total(sugarDigits, in), cli.When(p.given.heldBefore > 0, "with what was held before"))
	part.If(a.Syrup > 0).Row("syrup", "Syrup at "+p.Degrees(label), cli.Total(sapDigits, cli.Volume(a.Syrup)), a.SyrupBrix.Text(1)+" on average")
	part.Row("sugar_out", "Sugar out", went[0])
	part.Row("kept", "Held now", went[1])
	part.Row("lost", "Lost", went[2], a.LostShare.Text(0)+" of the sugar")
	part.Row("lost_limits", "Known to within", cli.Rough(cli.Mass(a.Uncertainty)), "from the limits of your instruments")
	if !math.IsNaN(a.Ratio) {
		part.Row("ratio", "Sap to one of syrup", cli.Number(a.Ratio, 1, ""), "what is held counts as syrup")
		part.Row("exact", "Without a loss", cli.Number(a.Exact, 1, ""))
	}
	if p.given.Taps > 0 {
		part.Row("sap_a_tap", "Sap by the tap", gauged(cli.Volume(a.SapPerTap)))
		part.Row("sap_a_tap_day", "By the tap and day with sap", gauged(cli.Volume(a.SapPerTapDay)))
		part.Row("sugar_a_tap", "Sugar by the tap", gauged(cli.Mass(a.SugarPerTap)))
		part.If(a.Syrup > 0).Row("syrup_a_tap", "Syrup by the tap", gauged(cli.SmallVolume(a.SyrupPerTap)))
	}
	switch {
	case a.Syrup == 0:
		part.Remark("No syrup is written down: what is still in the pan counts as lost here.")
	case a.Impossible:
		part.Remark("More sugar came out than went in, beyond what the instruments leave open: a reading, a volume or a row is wrong or missing.")
	case math.Abs(float64(a.Lost)) <= float64(a.Uncertainty):
		part.Remark("The loss is smaller than what the instruments leave open: there may be none.")
	default:
		part.Remark("The loss is what is missing: filters, foam, spills, scorched pans, sap that stood warm, and all that was not written down.")
	}
}

// amounts returns the volume of a lot and the sugar in it; NaN, which pages show
// as a dash, if there is none.
func amounts(l sugar.Lot) (units.Volume, units.Mass) {
	if l.Empty() {
		return units.Volume(math.NaN()), units.Mass(math.NaN())
	}
	return l.Volume(), l.Sugar()
}

func (p page) daysPart(part *cli.Part) error {
	var rows [][]cli.Value
	for i := range p.days {
		d := &p.days[i]
		syrup, err := p.drawn(d)
		if err != nil {
			return err
		}
		if d.sap.rows == 0 && syrup.Empty() {
			continue
		}
		sap, err := d.sap.lot()
		if err != nil {
			return err
		}
		volume, sweet := amounts(sap)
		drawn, _ := amounts(syrup)
		rows = append(rows, []cli.Value{cli.Words(p.date(i).Format(time.DateOnly)), gauged(cli.Volume(volume)), cli.Brix(sap.Brix(), 2),
			gauged(cli.Mass(sweet)), gauged(cli.Volume(drawn))})
	}
	addUp(sapDigits, cli.Volume(p.Sap), rows, 1)
	addUp(sugarDigits, cli.Mass(p.SugarIn), rows, 3)
	addUp(sapDigits, cli.Volume(p.Syrup), rows, 4)
	part.Table("days", []cli.Column{{Key: "day", Head: "day"}, {Key: "sap", Head: "sap"}, {Key: "true", Head: "true"},
		{Key: "sugar", Head: "sugar"}, {Key: "syrup", Head: "syrup drawn"}}, rows)
	return nil
}

func (p page) sourcesPart(part *cli.Part) error {
	var rows [][]cli.Value
	for _, name := range p.bySugar() {
		t := p.sources[name]
		lot, err := t.lot()
		if err != nil {
			return err
		}
		if name == "" {
			name = "(not named)"
		}
		rows = append(rows, []cli.Value{cli.Words(name), cli.Count(t.rows, ""), gauged(cli.Volume(lot.Volume())), cli.Brix(lot.Brix(), 2), gauged(cli.Mass(lot.Sugar()))})
	}
	addUp(sapDigits, cli.Volume(p.Sap), rows, 2)
	addUp(sugarDigits, cli.Mass(p.SugarIn), rows, 4)
	part.Table("sources", []cli.Column{{Key: "source", Head: "source"}, {Key: "gatherings", Head: "gatherings"}, {Key: "sap", Head: "sap"},
		{Key: "true", Head: "true"}, {Key: "sugar", Head: "sugar"}}, rows)
	return nil
}
