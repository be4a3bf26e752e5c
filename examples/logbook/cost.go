package main

import (
	"errors"
	"fmt"
	"io"
	"math"
	"strings"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield/money"
)

// cent is the step of all money on the page.
var cent = decimal.New(1, -2)

// A spent is what one thing cost the season.
type spent struct {
	folder.Cost
	first int // season that it was bought for
	paid  decimal.Decimal
	part  decimal.Decimal
}

// money reads -wage and -price: of an hour, and of a US gallon.
func (s *setup) money() (wage, price decimal.Decimal, err error) {
	if s.wage != "" {
		number, ok := strings.CutSuffix(s.wage, "/h")
		if wage, err = plain(number); !ok || err != nil {
			return wage, price, cli.For("wage", fmt.Errorf("%q: write what an hour is counted at as 15/h", clip.Text(s.wage)))
		}
	}
	if s.price != "" {
		number, per, _ := strings.Cut(s.price, "/")
		price, err = plain(number)
		v, err2 := units.ParseVolume("1 " + strings.TrimSpace(per))
		if err != nil || err2 != nil {
			return wage, price, cli.For("price", fmt.Errorf("%q: write what syrup sells at as 60/US gal, 9/US pt or 25/L", clip.Text(s.price)))
		}
		price = price.DivRound(decimal.NewFromFloat(v.USGallons()), 12)
	}
	return wage, price, nil
}

// plain reads a number of up to nine digits before and six behind the point.
func plain(text string) (decimal.Decimal, error) {
	d, err := decimal.NewFromString(strings.TrimSpace(text))
	if err == nil && (d.IsNegative() || d.Exponent() < -6 || d.Exponent() > 0 || d.GreaterThan(decimal.New(1, 9))) {
		err = errors.New("no plain number")
	}
	return d, err
}

// costs are those of the season. What is bought from July on is for the next one;
// what lasts is spread over its years in equal parts.
func (b *book) costs() (all []spent, err error) {
	var wrong []error
	for _, c := range b.house.Costs {
		s := spent{Cost: c, first: c.Date.Year()}
		if c.Date.Month() >= time.July {
			s.first++
		}
		years := int(math.Ceil(c.Years))
		paid, err := plain(c.Paid)
		parts := []decimal.Decimal(nil)
		if err == nil {
			parts, err = money.StraightLine(paid, years, cent)
		}
		if err != nil {
			wrong = append(wrong, b.fail(folder.CostsFile, c.Line, "cost", errors.New(cli.Reason(err))))
			continue
		}
		if n := b.year - s.first; n >= 0 && n < years {
			s.part, s.paid = parts[n], paid
			all = append(all, s)
		}
	}
	if len(wrong) == 0 && len(all) == 0 {
		wrong = []error{fmt.Errorf("%s: nothing that season %d bears: write down what was paid and over how many years it is spread", b.house.Shown(folder.CostsFile), b.year)}
	}
	return all, errors.Join(wrong...)
}

// worked adds up the hours of people.csv, which are of the last season.
func (b *book) worked() (sum decimal.Decimal, told bool, err error) {
	in, there := b.house.File(folder.PeopleFile)
	if !there || b.year != b.lastYear() {
		return sum, false, nil
	}
	defer in.Close()
	var name string
	var hours time.Duration
	r, err := records.New(b.house.Shown(folder.PeopleFile), in, records.Text("name", &name), records.Hours("worked", &hours).Optional())
	for err == nil {
		if err = r.Next(); err == nil && hours > 0 {
			var c money.Contribution
			if c, err = money.ByHours(name, hours); err == nil {
				sum, told = sum.Add(c.Weight), true
			}
		}
	}
	if err == io.EOF {
		err = nil
	}
	return sum, told, err
}

// lastYear is that of the last day with a row.
func (b *book) lastYear() (year int) {
	for _, d := range b.house.Days {
		year = max(year, d.Date.Year())
	}
	return year
}

// costSheet answers what a gallon cost, and what an hour earned.
func (b *book) costSheet(syrup units.Volume) (*cli.Sheet, error) {
	if !(syrup > 0) {
		return nil, fmt.Errorf("no syrup of %d is written down: costs are by the gallon", b.year)
	}
	wage, price, err := b.given.money()
	if err != nil {
		return nil, err
	}
	costs, err := b.costs()
	if err != nil {
		return nil, err
	}
	hours, told, err := b.worked()
	if err != nil {
		return nil, err
	}
	v := money.Venture{USGallons: decimal.NewFromFloat(syrup.USGallons()).Round(2), Hours: hours, Wage: wage, Price: price, Step: cent}
	for _, c := range costs {
		v.Costs = append(v.Costs, money.Cost{Item: c.What, Amount: c.part})
	}
	r, err := v.Reckon()
	if err != nil {
		return nil, err
	}
	sheet := &cli.Sheet{Title: "What a gallon cost", Metric: b.given.metric}
	b.layCost(sheet, v, r, told)
	var rows [][]cli.Value
	for _, c := range costs {
		rows = append(rows, []cli.Value{cli.Words(c.What), cli.Words(c.Date.Format(time.DateOnly)), amount(c.paid), cli.Number(math.Ceil(c.Years), 0, ""), amount(c.part)})
	}
	sheet.Brief.List([]cli.Column{{Key: "what", Head: "what"}, {Key: "date", Head: "bought"}, {Key: "paid", Head: "paid"}, {Key: "years", Head: "years"}, {Key: "part", Head: "this season"}}, rows)
	part := sheet.Part("published", "Published budgets, in dollars of their year")
	rows = nil
	for _, p := range money.PublishedCosts() {
		what := p.What
		if p.SapOnly {
			what += "; sap only"
		}
		rows = append(rows, []cli.Value{cli.Count(p.Year, ""), amount(p.PerUSGallon), cli.Words(what)})
	}
	part.Table("published", []cli.Column{{Key: "year", Head: "year"}, {Key: "per_us_gal", Head: "US gal"}, {Key: "what", Head: "of what"}}, rows)
	part.Remark("Money of one year is not money of another: compare what bears on what, not the sums. All are of tubing and hundreds of taps; none of a few pails was found.")
	source := ""
	for _, p := range money.PublishedCosts() {
		if p.Source != source {
			source = p.Source
			part.Remark(fmt.Sprintf("From %d: %s.", p.Year, source))
		}
	}
	return sheet, nil
}

// layCost fills the brief.
func (b *book) layCost(sheet *cli.Sheet, v money.Venture, r money.Result, told bool) {
	brief := &sheet.Brief
	each := func(gallon, pint decimal.Decimal) (cli.Value, string) {
		return amount(gallon), "a US gallon, " + pint.StringFixed(2) + " a pint"
	}
	brief.Verdict = fmt.Sprintf("A US gallon of %d cost %s without wages.", b.year, r.PerUSGallon.StringFixed(2))
	value, note := each(r.PerUSGallon, r.PerUSPint)
	brief.Answer("gallon", "Without wages", value, note)
	wages := told && v.Wage.IsPositive()
	if wages {
		brief.Verdict = fmt.Sprintf("A US gallon of %d cost %s without wages and %s with them.", b.year, r.PerUSGallon.StringFixed(2), r.PerUSGallonWithWages.StringFixed(2))
		value, note = each(r.PerUSGallonWithWages, r.PerUSPintWithWages)
		brief.Answer("gallon_with_wages", "With wages", value, note)
	}
	if r.BreakEven.Valid {
		note = "to cover the costs"
		if wages {
			note += "; " + r.BreakEvenWithWages.Decimal.StringFixed(2) + " with wages"
		}
		brief.Answer("break_even", "Sell, US gal", amount(r.BreakEven.Decimal), note)
		brief.Answer("left", "Left if all sold", amount(r.Left.Decimal), "costs taken off, no wages")
	}
	brief.If(r.Hourly.Valid).Answer("hourly", "An hour earned", amount(r.Hourly.Decimal), v.Hours.String()+" hours")
	brief.Answer("costs", "Costs in all", amount(r.Costs), cli.Plural(len(v.Costs), "thing")+", for "+v.USGallons.String()+" US gal")
	brief.House = b.flags.Demo()
	brief.Told(fmt.Sprintf("costs and syrup of %d", b.year))
	switch {
	case !told:
		brief.Assumed("no hours: people.csv tells those of the last season")
	case v.Wage.IsZero():
		brief.Assumed("no wages (give -wage)")
	}
	brief.If(v.Price.IsZero()).Assumed("no price (give -price)")
	brief.Assumed("what lasts is spread in equal parts")
	brief.Cautions = []string{"This is no tax account: what may be written off, and over how many years, is law."}
	brief.Further = []string{"-full: published budgets beside yours."}
}

func amount(d decimal.Decimal) cli.Value { return cli.Number(d.InexactFloat64(), 2, "") }
