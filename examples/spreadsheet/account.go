package main

import (
	"fmt"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/lookagain"
	"example.org/sapreckoner/yield/money"
)

// Verdicts on a delivery.
const (
	pays      = "pays"
	justPays  = "pays, too close to call"
	justFails = "not paid, too close to call"
	fails     = "not paid"
)

// Sap colder than this is ice, and hotter it is not sap as it is delivered.
var (
	minCup = units.Celsius(0)
	maxCup = units.Celsius(60)
)

// Strengths of sap that can be paid: yield.Ratio asks for the least, and
// money.Offer.Statement for the most.
const (
	minSap units.Brix = 0.1
	maxSap units.Brix = 30
)

// A row is one line of the sheet of deliveries. What it shows rounded is held
// rounded: what can be read from the sheet is what was reckoned with.
type row struct {
	reading
	strength    decimal.Decimal // corrected Brix, to a hundredth
	uncertainty decimal.Decimal // expanded, k = 2, to a hundredth
	verdict     string
	syrup       decimal.Decimal // US gallons, to a hundredth
	paid        bool
	price       decimal.Decimal // of a US gallon, if paid
	amount      decimal.Decimal
}

// An account is what the sheets show. Rows pass through it and are not kept.
type account struct {
	settings
	*file
	delivered totals
	paid      totals
	amount    decimal.Decimal // the sum of the lines
	payments  []money.Payment // in the order in which producers first appear
	producers map[string]int  // their places in payments and sellers
	sellers   []seller
	posted    []money.Posting // advances, deductions and payments
	postedAt  []records.Error // where each stands, for a message
	period    span
	listed    bool // statements list the deliveries
	settled   money.Settlement
	ledger    []money.LedgerLine
	last      time.Time // day of the latest delivery
	again     lookagain.List
	accepted  []lookagain.Finding
}

func newAccount(s settings, f *file) *account {
	return &account{settings: s, file: f, producers: map[string]int{}, period: s.ask, again: lookagain.List{VolumeUnit: "US gal"}}
}

type totals struct{ gallons, syrup decimal.Decimal }

func (t *totals) add(r *row) {
	t.gallons, t.syrup = t.gallons.Add(r.gallons), t.syrup.Add(r.syrup)
}

// next corrects and prices the next delivery and counts it. At the end it
// returns [io.EOF].
func (a *account) next() (row, error) {
	r, err := a.file.next()
	if err != nil {
		return row{}, err
	}
	m, err := a.measure(r)
	if err != nil {
		return row{}, err
	}
	sap := units.Brix(m.strength.InexactFloat64())
	// Lines are rounded one by one and only then added: priced one by one, they are
	// those of one long statement.
	statement, err := a.offer.Statement([]money.Delivery{{Slip: r.date.Format(time.DateOnly), Seller: r.producer, USGallons: r.gallons, Sap: sap}})
	if err != nil {
		return row{}, a.rows.Fail("", err)
	}
	l := statement.Lines[0]
	m.paid, m.price, m.amount = l.Bought, l.PerUSGallon, l.Amount
	m.verdict = a.verdict(&m)
	return m, a.count(&m)
}

// count adds a delivery to the totals, to what its producer is owed, and to what
// is looked at again.
func (a *account) count(m *row) error {
	k, known := a.producers[m.producer]
	if !known {
		if len(a.payments) == maxProducers {
			return a.rows.Fail(a.who, fmt.Errorf("more than %d producers: split the file", maxProducers))
		}
		k = len(a.payments)
		a.producers[m.producer] = k
		a.payments = append(a.payments, money.Payment{Seller: m.producer})
		a.sellers = append(a.sellers, seller{})
	}
	a.credit(k, m)
	a.delivered.add(m)
	if m.paid {
		a.paid.add(m)
		p := &a.payments[k]
		p.USGallons, p.Amount = p.USGallons.Add(m.gallons), p.Amount.Add(m.amount)
		a.amount = a.amount.Add(m.amount)
	}
	if m.date.After(a.last) {
		a.last = m.date
	}
	a.look(m)
	return nil
}

// measure corrects one reading and tells how much syrup the sap makes.
func (a *account) measure(r reading) (row, error) {
	cup := a.cupTemp(r.cup.InexactFloat64())
	if cup.Compare(minCup) < 0 || cup.Compare(maxCup) > 0 {
		scale := units.ScaleFahrenheit
		if a.cupUnit == "C" {
			scale = units.ScaleCelsius
		}
		return row{}, a.rows.Fail("cup", fmt.Errorf("%s %s is outside %s to %s: no cup of sap is so cold or so hot, check the unit in the header",
			r.cup, a.cupUnit, minCup.Text(scale, 0), maxCup.Text(scale, 0)))
	}
	m, err := a.hydrometer.Measure(units.Brix(r.read.InexactFloat64()), cup, a.doubt)
	if err != nil {
		return row{}, a.rows.Fail(columnOf(err), err)
	}
	// What is paid, and made into syrup, is the strength on the sheet.
	brix := round(float64(m.Brix))
	sap := units.Brix(brix.InexactFloat64())
	if !(sap >= minSap && sap <= maxSap) {
		return row{}, a.rows.Fail("reading", &units.RangeError{
			Arg: "corrected strength", Value: float64(sap), Low: float64(minSap), High: float64(maxSap), Unit: "Brix",
			Hint: "that is not sap: check the reading and the cup"})
	}
	ratio, err := yield.Ratio(sap, a.syrup)
	if err != nil {
		return row{}, a.rows.Fail("reading", err)
	}
	return row{
		reading:     r,
		strength:    brix,
		uncertainty: round(float64(m.Uncertainty)),
		syrup:       round(r.gallons.InexactFloat64() / ratio),
	}, nil
}

// columnOf tells which column an argument of the hydrometer came from.
func columnOf(err error) string {
	if argument(err) == "at" {
		return "cup"
	}
	return "reading"
}

// verdict says whether a delivery is paid, and whether the uncertainty of its
// reading reaches over the minimum.
func (a *account) verdict(r *row) string {
	minimum := decimal.NewFromFloat(float64(a.minimum))
	near := r.strength.Sub(minimum).Abs().LessThanOrEqual(r.uncertainty)
	switch {
	case r.paid && near:
		return justPays
	case r.paid:
		return pays
	case near:
		return justFails
	}
	return fails
}

// round rounds a finite number to a hundredth, halves away from zero.
func round(x float64) decimal.Decimal { return decimal.NewFromFloat(x).Round(2) }
