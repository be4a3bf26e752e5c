package main

import (
	"errors"
	"io"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/yield/money"
)

// A seller is what one brought in the pay period, and what was earned before it.
type seller struct {
	deliveries, refused int
	gallons, thin       decimal.Decimal // delivered, and of it not paid for
	strength            decimal.Decimal // gallons times Brix
	early, earned       decimal.Decimal
	lines               []string // of the deliveries, where statements list them
}

// mean is the strength of all that was delivered, by volume.
func (s *seller) mean() decimal.Decimal {
	if s.gallons.IsZero() {
		return decimal.Zero
	}
	return s.strength.DivRound(s.gallons, 2)
}

// credit counts a delivery on the account of its seller.
func (a *account) credit(k int, r *row) {
	s := &a.sellers[k]
	switch {
	case a.ask == span{}:
		a.period.widen(r.date)
	case r.date.After(a.period.through):
		return
	case r.date.Before(a.period.from):
		s.early = s.early.Add(r.amount)
		return
	}
	s.deliveries++
	s.gallons = s.gallons.Add(r.gallons)
	s.strength = s.strength.Add(r.gallons.Mul(r.strength))
	s.earned = s.earned.Add(r.amount)
	if !r.paid {
		s.refused++
		s.thin = s.thin.Add(r.gallons)
	}
	if a.listed {
		s.lines = append(s.lines, a.line(r))
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
	for k, p := range a.payments { // in their order
		s := &a.sellers[k]
		all = append(all, money.Posting{Day: a.period.from, Payee: p.Seller, Kind: money.Earned, Category: "sap", Amount: s.earned})
		if !s.early.IsZero() {
			all = append(all, money.Posting{Day: a.period.from.AddDate(0, 0, -1), Payee: p.Seller, Kind: money.Earned, Category: "sap", Amount: s.early})
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
		if _, err := a.next(); errors.Is(err, io.EOF) {
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
