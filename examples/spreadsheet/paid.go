package main

import (
	"bytes"
	_ "embed"
	"errors"
	"fmt"
	"io"
	"maps"
	"strings"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield/money"
)

// mostPaid rows of payments and deductions, with the sums of 20,000 producers,
// are as many postings as an account takes.
const mostPaid = 50_000

//go:embed testdata/coop/paid.csv
var demoPaid []byte

// readPaid reads what was advanced, deducted, paid and carried over; nothing if no
// file is named.
func (a *account) readPaid(e *cli.Env) error {
	name, in := a.settings.paid, io.NopCloser(bytes.NewReader(demoPaid))
	switch {
	case name != "":
		var err error
		if in, err = e.Open("paid", name); err != nil {
			return err
		}
	case a.demo:
		name = "paid.csv"
	default:
		return nil
	}
	defer in.Close()
	if name == "-" {
		name = "standard input"
	}
	return a.postings(name, in)
}

// postings reads the rows of such a file.
func (a *account) postings(name string, in io.Reader) error {
	var cell struct{ date, who, kind, amount, what string }
	rows, err := records.Open(name, in)
	who := "producer"
	if err == nil && rows.Names("seller") {
		who = "seller"
	}
	a.paidWho = who
	cols := []records.Col{
		records.Cell("date", &cell.date, nil), records.Cell(who, &cell.who, nil), records.Cell("kind", &cell.kind, nil),
		records.Cell("amount", &cell.amount, nil), records.Cell("what", &cell.what, nil).Optional(),
	}
	switch err {
	case nil:
		err = rows.Bind(cols...)
	case io.EOF: // which New words
		_, err = records.New(name, in, cols...)
	}
	if err != nil {
		return err
	}
	seen := map[string]int{}
	for {
		switch err := rows.Next(); {
		case err == io.EOF:
			return nil
		case err != nil:
			return err
		case len(a.posted) == mostPaid:
			return rows.Fail("", fmt.Errorf("more than %d rows: split the file by season", mostPaid))
		}
		p := money.Posting{Payee: cell.who, Category: cell.what}
		for _, c := range []struct {
			column string
			err    error
		}{
			{"date", into(&p.Day)(dateOf(cell.date))}, {who, nameOf(cell.who, "who is it of?")}, {"kind", kindOf(&p, cell.kind)},
			{"amount", into(&p.Amount)(amountOf(cell.amount))}, {"what", plainText(cell.what)},
		} {
			if c.err != nil {
				return rows.Fail(c.column, c.err)
			}
		}
		if p.Amount.IsNegative() && p.Kind != money.Carried {
			return rows.Fail("amount", errors.New("it is negative: the kind says which way it goes; a check that came back is carried"))
		}
		if p.Category == "" {
			p.Category = p.Kind.String()
		}
		key := strings.Join([]string{cell.date, p.Payee, p.Kind.String(), p.Amount.String(), p.Category}, "\x00")
		if line, twice := seen[key]; twice {
			return rows.Fail("", fmt.Errorf("the same row as line %d: if both are right, tell them apart in the column what", line))
		}
		seen[key] = rows.Line()
		a.posted = append(a.posted, p)
		a.postedAt = append(a.postedAt, records.Error{File: name, Line: rows.Line(), Column: who})
	}
}

// into keeps a value and passes its error on.
func into[V any](to *V) func(V, error) error {
	return func(v V, err error) error {
		*to = v
		return err
	}
}

func kindOf(p *money.Posting, text string) error {
	if err := p.Kind.UnmarshalText([]byte(text)); err != nil {
		return errors.New(cli.Reason(err))
	}
	if p.Kind == 0 || p.Kind == money.Earned {
		return errors.New("write carried, deducted, advanced or paid; what sap earned is reckoned from the deliveries")
	}
	return nil
}

// amountOf reads an amount in whole cents.
func amountOf(text string) (decimal.Decimal, error) {
	d, err := plainNumber(text)
	if err == nil && !d.Mod(cent).IsZero() {
		err = fmt.Errorf("%s is not a multiple of %s", clip.Text(text), cent)
	}
	return d, err
}

// known asks back for a payee who brought nothing and is called nearly as one who
// did, or was paid and has nothing to be paid for: what was paid to one by a wrong or
// an old name would be paid again.
func (a *account) known() error {
	carried := map[string]bool{}
	for _, p := range a.posted {
		carried[p.Payee] = carried[p.Payee] || p.Kind == money.Carried
	}
	for i, p := range a.posted {
		if _, ok := a.producers[p.Payee]; ok {
			continue
		}
		at := a.postedAt[i]
		if near, ok := enum.Nearest(p.Payee, maps.Keys(a.producers)); ok {
			at.Err = fmt.Errorf("no sap of %q: did you mean %q?", clip.Text(p.Payee), clip.Text(near))
			return &at
		}
		if p.Kind == money.Paid && !carried[p.Payee] {
			at.Err = fmt.Errorf("no sap of %q, and nothing carried: write the name of now, if it changed, or advanced where the sap is to come", clip.Text(p.Payee))
			return &at
		}
	}
	return nil
}

// A span is a pay period, first and last day. The zero span holds all days.
type span struct{ from, through time.Time }

// readSpan reads 2026-03-01 to 2026-03-15.
func readSpan(text string) (s span, err error) {
	if text == "" {
		return span{}, nil
	}
	first, last, ok := strings.Cut(text, " to ")
	if ok {
		if s.from, err = dateOf(strings.TrimSpace(first)); err == nil {
			s.through, err = dateOf(strings.TrimSpace(last))
		}
	}
	switch {
	case !ok || err != nil:
		return span{}, fmt.Errorf("%q is no period: write it as 2026-03-01 to 2026-03-15", clip.Text(text))
	case s.through.Before(s.from):
		return span{}, errors.New("it ends before it begins")
	}
	return s, nil
}

// widen makes an open span reach to a day.
func (s *span) widen(day time.Time) {
	if s.from.IsZero() || day.Before(s.from) {
		s.from = day
	}
	if day.After(s.through) {
		s.through = day
	}
}
