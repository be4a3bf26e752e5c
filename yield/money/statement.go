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
// listed and not paid.
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
	sellers := map[string]int{}
	for i, d := range deliveries {
		line, err := o.line(fn, i, d)
		if err != nil {
			return Statement{}, err
		}
		s.Lines[i] = line
		k, known := sellers[d.Seller]
		if !known {
			k = len(s.Payments)
			sellers[d.Seller] = k
			s.Payments = append(s.Payments, Payment{Seller: d.Seller})
		}
		if line.Bought {
			p := &s.Payments[k]
			p.USGallons, p.Amount = p.USGallons.Add(d.USGallons), p.Amount.Add(line.Amount)
			s.USGallons, s.Amount = s.USGallons.Add(d.USGallons), s.Amount.Add(line.Amount)
		}
	}
	return s, nil
}

// line prices one delivery.
func (o *Offer) line(fn string, i int, d Delivery) (Line, error) {
	if err := item(fn, "deliveries", i, "USGallons", "US gallons", d.USGallons, decimal.Zero, maxGallons, "what is delivered is not negative"); err != nil {
		return Line{}, err
	}
	sap := onSlip(d.Sap)
	if err := limit.InItem(fn, "deliveries", i, "Sap", "strength of the sap", float64(sap), minPriceBrix, maxRuleBrix, "Brix", "check the reading and its temperature"); err != nil {
		return Line{}, err
	}
	if sap < o.least() {
		return Line{Delivery: d}, nil
	}
	p, err := o.quote(fn, sap)
	if err != nil {
		return Line{}, err
	}
	return Line{
		Delivery:    d,
		Bought:      true,
		PerUSGallon: p.PerUSGallon,
		Amount:      toStep(d.USGallons.Mul(p.PerUSGallon), one, o.Cent),
	}, nil
}
