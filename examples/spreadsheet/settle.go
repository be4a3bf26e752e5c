package main

import (
	"errors"
	"io"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/yield/money"
)

// A seller is what one brought in the pay period, and what was earned before it.
type seller struct {
	name                string
	bought              hundredths // gallons that are paid for, in and out of the period
	amount              sum        // and what they pay
	deliveries, refused int
	near                int        // too close to call
	syrup               hundredths // of what is paid for
	gallons, thin       hundredths // delivered, and of it not paid for
	strength            int64      // gallons times Brix, in ten thousandths
	early, earned       sum
	lines               []byte // of the deliveries, where statements list them
	loads               []load // where the workbook does
}

// mean is the strength of all that was delivered, by volume.
func (s *seller) mean() decimal.Decimal {
	if s.gallons == 0 {
		return decimal.Zero
	}
	return decimal.New(s.strength, -4).DivRound(s.gallons.decimal(), 2)
}

// credit counts a delivery on the account of its seller.
func (a *account) credit(s *seller, r *row) {
	switch {
	case a.ask == span{}:
		a.period.widen(r.date)
	case r.date.After(a.period.through):
		return
	case r.date.Before(a.period.from):
		s.early.add(r.Amount)
		return
	}
	s.deliveries++
	s.gallons += r.gallons
	s.strength += int64(r.gallons) * int64(r.strength)
	s.earned.add(r.Amount)
	if r.Bought {
		s.syrup += r.syrup
	} else {
		s.refused++
		s.thin += r.gallons
	}
	if r.near {
		s.near++
	}
	if a.listed {
		s.lines = a.line(s.lines, r)
	}
	if a.loads > 0 {
		a.loads--
		s.loads = append(s.loads, a.load(r))
	}
}

// settle adds up the accounts, once all deliveries are counted.
func (a *account) settle() error {
	if err := a.known(); err != nil {
		return err
	}
	if (a.ask == span{}) {
		for _, p := range a.posted {
			a.period.widen(p.Day)
		}
	}
	var all []money.Posting
	for k := range a.sellers { // in their order
		s := &a.sellers[k]
		all = append(all, money.Posting{Day: a.period.from, Payee: s.name, Kind: money.Earned, Category: "sap", Amount: s.earned.decimal()})
		if early := s.early.decimal(); !early.IsZero() {
			all = append(all, money.Posting{Day: a.period.from.AddDate(0, 0, -1), Payee: s.name, Kind: money.Earned, Category: "sap", Amount: early})
		}
	}
	all = append(all, a.posted...)
	var err error
	if a.settled, err = money.Settle(all, a.period.from, a.period.through, cent); err != nil {
		return err
	}
	a.ledger, err = money.Ledger(all, a.period.from, a.period.through, cent)
	return err
}

// run reads all deliveries where no workbook is asked for.
func (a *account) run() error {
	for {
		if _, err := a.delivery(); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			return err
		}
	}
	if err := a.accept(); err != nil {
		return err
	}
	return a.settle()
}

// of returns what a payee brought: nothing if the account knows advances alone.
func (a *account) of(payee string) *seller {
	if k, ok := a.producers[payee]; ok {
		return &a.sellers[k]
	}
	return &seller{}
}
