package money

import (
	"github.com/shopspring/decimal"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// A Delivery is a load of sap as the slip says.
type Delivery struct {
	Slip      string // number or day, printed back
	Seller    string
	USGallons decimal.Decimal // 0 to 1e7
	Sap       units.Brix      // as corrected for temperature
}

// A Line is one delivery on a statement.
type Line struct {
	Delivery
	Bought      bool            // false if thinner than the offer buys: nothing is paid
	PerUSGallon decimal.Decimal // price, rounded to PriceStep
	Amount      decimal.Decimal // rounded to Cent
}

// A Payment is what one seller is owed for the deliveries bought.
type Payment struct {
	Seller    string
	USGallons decimal.Decimal
	Amount    decimal.Decimal
}

// A Statement is a list of deliveries with what is paid for them. Amounts are
// rounded line by line and only then added, so that lines, payments and total
// agree to the cent.
type Statement struct {
	Lines     []Line
	Payments  []Payment // in the order in which sellers first appear
	USGallons decimal.Decimal
	Amount    decimal.Decimal
}

// Statement prices a list of deliveries. Sap below MinBrix, or below 0.5 Brix, is
// listed and not paid. Each strength is priced once, and what a whole number of 64 bits
// holds is reckoned in it: the same to the last cent, and quick for long lists.
//
// Range: 1 to 100,000 deliveries; sap from 0.01 to 30 Brix. The error
// names the delivery.
func (o Offer) Statement(deliveries []Delivery) (Statement, error) {
	const fn = "money.Offer.Statement"
	if err := limit.Entries(fn, "deliveries", len(deliveries)); err != nil {
		return Statement{}, err
	}
	if err := o.check(fn); err != nil {
		return Statement{}, err
	}
	s := Statement{Lines: make([]Line, len(deliveries))}
	till := till{offer: &o, prices: map[units.Brix]Price{}}
	var gallons, amount tally
	var of []struct{ gallons, amount tally } // as the payments
	sellers := map[string]int{}
	for i := range deliveries {
		d, line := &deliveries[i], &s.Lines[i]
		if err := till.line(fn, i, d, line); err != nil {
			return Statement{}, err
		}
		k, known := sellers[d.Seller]
		if !known {
			k = len(s.Payments)
			sellers[d.Seller] = k
			s.Payments = append(s.Payments, Payment{Seller: d.Seller})
			of = append(of, struct{ gallons, amount tally }{})
		}
		if line.Bought {
			of[k].gallons.add(d.USGallons)
			of[k].amount.add(line.Amount)
			gallons.add(d.USGallons)
			amount.add(line.Amount)
		}
	}
	for k := range s.Payments {
		s.Payments[k].USGallons, s.Payments[k].Amount = of[k].gallons.sum(), of[k].amount.sum()
	}
	s.USGallons, s.Amount = gallons.sum(), amount.sum()
	return s, nil
}

// A till prices deliveries of an offer that was checked, each strength once.
type till struct {
	offer  *Offer
	prices map[units.Brix]Price // by the strength on the slip
}

// line prices one delivery.
func (t *till) line(fn string, i int, d *Delivery, l *Line) error {
	if !fits(d.USGallons) {
		if err := item(fn, "deliveries", i, "USGallons", "US gallons", d.USGallons, decimal.Zero, maxGallons, "what is delivered is not negative"); err != nil {
			return err
		}
	}
	sap := onSlip(d.Sap)
	if err := limit.InItem(fn, "deliveries", i, "Sap", "strength of the sap", float64(sap), minPriceBrix, maxRuleBrix, "Brix", "check the reading and its temperature"); err != nil {
		return err
	}
	l.Delivery = *d
	if sap < t.offer.least() {
		return nil
	}
	p, known := t.prices[sap]
	if !known {
		var err error
		if p, err = t.offer.quote(fn, sap); err != nil {
			return err
		}
		t.prices[sap] = p // a strength on a slip is one of 3,000
	}
	l.Bought, l.PerUSGallon = true, p.PerUSGallon
	l.Amount = amount(d.USGallons, p.PerUSGallon, t.offer.Cent)
	return nil
}
