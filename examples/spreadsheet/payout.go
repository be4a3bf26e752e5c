package main

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
)

// payFlag names the day on which what is due is paid.
const payFlag = "pay"

// payout shows what is due to whom, with what the folder would keep of it.
func (a *account) payout(e *cli.Env, f *cli.Flags) error {
	due := a.settled.Payouts(a.pay, "settled through "+a.period.through.Format(time.DateOnly))
	if err := a.payable(f, due); err != nil {
		return err
	}
	s := &cli.Sheet{Title: "What is due for sap", Metric: a.metric}
	a.brief(&s.Brief, f, due)
	a.balancesPart(s.Part("balances", "All accounts"))
	if err := a.pricesPart(s.Part("prices", "To post on the tank")); err != nil {
		return err
	}
	part := s.Part("how", "How it is reckoned")
	for _, term := range a.terms() {
		part.Remark("Price: " + term + ".")
	}
	part.Remark("Owed is what was carried and earned, less what was deducted, advanced and paid in the period. Due is that less what was paid since, and nothing if that is negative: what was paid too much is carried on.")
	part.Remark("Lines are rounded to " + cent.String() + ", halves up, and only then added. -out writes a statement for each seller.")
	if f.Source("in").File == "" && !f.Writes() { // deliveries of no folder: it keeps nothing of them
		return s.Show(e)
	}
	rows := folder.Rows{File: folder.PaidFile}
	for _, p := range due {
		rows.Rows = append(rows.Rows, folder.Row{{Column: "date", Text: p.Day.Format(time.DateOnly)}, {Column: a.paidWho, Text: p.Payee},
			{Column: "kind", Text: p.Kind.String()}, {Column: "amount", Text: p.Amount.StringFixed(2)}, {Column: "what", Text: p.Category}})
	}
	if err := s.Add(e, rows); err != nil {
		return err
	}
	return s.Show(e)
}

// payable refuses what would be kept wrong.
func (a *account) payable(f *cli.Flags, due []money.Posting) error {
	if a.pay.Before(a.period.through) {
		return cli.For(payFlag, fmt.Errorf("%s comes before %s, the last day of the period: end it earlier with -period, or pay later",
			a.pay.Format(time.DateOnly), a.period.through.Format(time.DateOnly)))
	}
	if !f.Writes() {
		return nil
	}
	for _, own := range []string{"in", "paid"} {
		if f.Dir() != "" && f.Source(own).Kind == cli.Told {
			return cli.For(own, errors.New("the folder keeps what its own files settle: leave this out with -write"))
		}
	}
	bargain := []string{"syrup-price", "share", "minimum"}
	if a.bySugar {
		bargain = bargain[2:]
	}
	for _, told := range bargain {
		if f.Source(told).Kind == cli.Assumed {
			return cli.For(told, errors.New("say what was agreed, here or in the settings of the folder: money is not paid by what is taken for granted"))
		}
	}
	for _, p := range due {
		if strings.Join(strings.Fields(p.Payee), " ") != p.Payee {
			return cli.For("write", fmt.Errorf("the name %q has two spaces together, which a line would not keep: write one where it stands", p.Payee))
		}
	}
	return nil
}

// brief is the first page.
func (a *account) brief(b *cli.Brief, f *cli.Flags, due []money.Posting) {
	all := a.settled.All
	b.Verdict = "Nothing is due."
	if len(due) > 0 {
		b.Verdict = fmt.Sprintf("%s %s due %s on %s.", cli.Plural(len(due), "account"), map[bool]string{true: "is", false: "are"}[len(due) == 1], a.inCurrency(all.Due), a.pay.Format(time.DateOnly))
	}
	b.Answer("due", "Due", cli.Amount(all.Due.StringFixed(2)))
	b.Answer("earned", "Sap of the period", cli.Amount(all.Earned.StringFixed(2)), a.periodText())
	if less := all.Deducted.Add(all.Advanced).Add(all.Paid); !less.IsZero() || !all.Carried.IsZero() {
		b.Answer("carried", "Carried into it", cli.Amount(all.Carried.StringFixed(2)))
		b.Answer("less", "Taken off or paid", cli.Amount(less.Add(all.PaidSince).StringFixed(2)))
	}
	over := decimal.Zero
	for _, x := range a.settled.Balances {
		over = over.Add(decimal.Max(x.PaidSince.Sub(x.Owed), decimal.Zero))
	}
	if !over.IsZero() {
		b.Answer("over", "Paid too much", cli.Amount(over.StringFixed(2)), "carried on")
	}
	var thin hundredths
	for i := range a.sellers {
		thin += a.sellers[i].thin
	}
	if thin > 0 {
		b.Answer("refused", "Not paid for", cli.Volume(units.USGallons(thin.float())), "below "+a.minimum.String())
	}
	rows := make([][]cli.Value, 0, len(due))
	for _, p := range due {
		rows = append(rows, []cli.Value{cli.Words(short(visible(p.Payee), 44)), cli.Amount(p.Amount.StringFixed(2))})
	}
	if len(rows) > 0 {
		b.List([]cli.Column{{Key: "seller", Head: "Seller"}, {Key: "due", Head: "Due"}}, rows)
	}
	if a.demo {
		b.House = "These deliveries and producers are invented."
	}
	b.Told(cli.Plural(a.file.read, "row") + " of deliveries")
	if len(a.posted) > 0 {
		b.Told(cli.Plural(len(a.posted), "row") + " of payments")
	}
	if a.bySugar {
		b.From(f, "sugar-price", a.told("sugar-price")+" of sugar")
	} else {
		b.From(f, "syrup-price", a.told("syrup-price")+" of syrup", "share", a.told("share")+" of it for sap")
	}
	b.From(f, "minimum", "paid from "+a.told("minimum"))
	b.Cautions = []string{"Add the lines once the money has gone out, and not before: what stands there counts as paid."}
	b.Further = append(b.Further, "-out statements.txt writes the pages to sign.")
}

// balancesPart lists all accounts.
func (a *account) balancesPart(part *cli.Part) {
	cols := []cli.Column{{Key: "seller", Head: "Seller"}, {Key: "carried", Head: "Carried"}, {Key: "earned", Head: "Earned"}, {Key: "less", Head: "Less"}, {Key: "owed", Head: "Owed"}, {Key: "paid_since", Head: "Since"}, {Key: "due", Head: "Due"}}
	var rows [][]cli.Value
	for _, b := range append(slices.Clip(a.settled.Balances), a.settled.All) {
		name := short(visible(b.Payee), 20)
		if name == "" {
			name = "All"
		}
		row := []cli.Value{cli.Words(name)}
		for _, x := range []decimal.Decimal{b.Carried, b.Earned, b.Deducted.Add(b.Advanced).Add(b.Paid), b.Owed, b.PaidSince, b.Due} {
			row = append(row, cli.Amount(x.StringFixed(2)))
		}
		rows = append(rows, row)
	}
	part.Table("accounts", cols, rows)
	part.Remark("Less is what was deducted, advanced and paid in the period; since, what was paid after it.")
}

// pricesPart lists what sap is worth by its strength, by tenths of a Brix from the
// minimum on, at the price of the day.
func (a *account) pricesPart(part *cli.Part) error {
	const span, step = 2, 0.1 // Brix
	prices, err := a.offer(a.prices[a.priceOn(a.pay)]).Prices(nil, a.minimum, min(a.minimum+span, maxSap), step)
	if err != nil {
		return err
	}
	var rows [][]cli.Value
	for _, p := range prices {
		rows = append(rows, []cli.Value{cli.Brix(p.Sap, 1), cli.Amount(p.PerUSGallon.StringFixed(4)), cli.Amount(p.PerPoundOfSugar.StringFixed(4))})
	}
	part.Table("prices", []cli.Column{{Key: "sap", Head: "Sap"}, {Key: "per_us_gal", Head: "A US gallon"}, {Key: "per_lb_sugar", Head: "A pound of its sugar"}}, rows)
	return nil
}

// inCurrency words an amount.
func (a *account) inCurrency(amount decimal.Decimal) string {
	return strings.TrimSpace(amount.StringFixed(2) + " " + a.currency)
}
