package main

import (
	"errors"
	"fmt"
	"regexp"
	"strings"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/yield/money"
)

// A price of a pound of syrup holds from a day on, the first from the beginning.
type price struct {
	from     time.Time
	perPound decimal.Decimal
}

// readPrices reads 2.50 USD/lb, 2.60 USD/lb from 2026-03-20.
func (s *settings) readPrices(text string) error {
	for i, part := range strings.Split(text, ",") {
		part, day, dated := strings.Cut(strings.TrimSpace(part), " from ")
		var p price
		var err error
		switch {
		case i == 0 && dated:
			return errors.New("the first price holds from the beginning: name no day with it")
		case i > 0 && !dated:
			return fmt.Errorf("%q: write the day from which it holds, as 2.60/lb from 2026-03-20", clip.Text(part))
		case dated:
			if p.from, err = dateOf(strings.TrimSpace(day)); err != nil {
				return err
			}
			if last := s.prices[i-1].from; !p.from.After(last) {
				return errors.New("write prices in the order of their days")
			}
		}
		number, ok := strings.CutSuffix(part, "/lb")
		if !ok {
			return fmt.Errorf("%q has no unit: write the price of a pound as 2.50/lb", part)
		}
		number, currency, _ := strings.Cut(strings.TrimSpace(number), " ")
		switch {
		case !currencyPattern.MatchString(currency):
			return fmt.Errorf("%q is no currency: write the price of a pound as 2.50 USD/lb", clip.Text(currency))
		case i > 0 && currency != s.currency:
			return errors.New("all prices are in one currency: name it with each")
		}
		s.currency = currency
		if p.perPound, err = plainNumber(number); err != nil {
			return err
		}
		s.prices = append(s.prices, p)
	}
	return nil
}

// currencyPattern holds the name of a currency, or none.
var currencyPattern = regexp.MustCompile(`^[A-Za-z$€£ ]{0,16}$`)

// poundsByRule is what a gallon of syrup weighs by custom, where a rule of thumb counts
// gallons.
var poundsByRule = decimal.NewFromInt(11)

// offer is the bargain at a price.
func (s *settings) offer(p price) money.Offer {
	o := money.Offer{SyrupPerPound: p.perPound, Share: s.share, Syrup: s.syrup, MinBrix: s.minimum, PriceStep: priceStep, Cent: cent}
	if s.bySugar { // of which a pound of syrup holds its strength
		o.SyrupPerPound, o.Share = p.perPound.Mul(decimal.NewFromFloat(float64(s.syrup)).Shift(-2)), decimal.NewFromInt(1)
	}
	if s.rule != 0 {
		o.Rule, o.PoundsPerUSGallon, o.Syrup = s.rule, poundsByRule, 0
	}
	return o
}

// terms tell what a price is made of, a line for each.
func (s *settings) terms() []string {
	of, prices, by := s.told("share")+" of "+s.told("syrup")+" syrup at ", s.told("syrup-price"), ""
	switch {
	case s.bySugar:
		of, prices = "the sugar in the sap at ", s.told("sugar-price")
	case s.rule != 0: // which has a syrup of its own
		of, by = s.told("share")+" of syrup at ", ", 1 gal of 11 lb from "+s.rule.String()
	}
	all := strings.Split(prices, ",")
	for i, p := range all {
		all[i] = of + strings.TrimSpace(p) + by
	}
	return all
}

// priceOn tells which price holds on a day.
func (s *settings) priceOn(day time.Time) int {
	k := len(s.prices) - 1
	for k > 0 && day.Before(s.prices[k].from) {
		k--
	}
	return k
}
