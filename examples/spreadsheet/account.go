package main

import (
	"fmt"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
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
// yield.Offer.Statement for the most.
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

// An account is what the sheets show.
type account struct {
	settings
	*file
	rows      []row
	delivered totals
	paid      totals
	amount    decimal.Decimal // the statement's own total
	payments  []yield.Payment
	last      time.Time // day of the latest delivery
}

type totals struct{ gallons, syrup decimal.Decimal }

func (t *totals) add(r *row) {
	t.gallons, t.syrup = t.gallons.Add(r.gallons), t.syrup.Add(r.syrup)
}

// reckon corrects and prices every delivery.
func reckon(s settings, f *file) (*account, error) {
	a := &account{settings: s, file: f, rows: make([]row, len(f.readings))}
	deliveries := make([]yield.Delivery, len(f.readings))
	for i, r := range f.readings {
		m, err := a.measure(r)
		if err != nil {
			return nil, err
		}
		a.rows[i] = m
		deliveries[i] = yield.Delivery{
			Slip:      r.date.Format(time.DateOnly),
			Seller:    r.producer,
			USGallons: r.gallons,
			Sap:       units.Brix(m.strength.InexactFloat64()),
		}
		if r.date.After(a.last) {
			a.last = r.date
		}
	}
	statement, err := s.offer.Statement(deliveries)
	if err != nil {
		return nil, err
	}
	for i, l := range statement.Lines {
		r := &a.rows[i]
		r.paid, r.price, r.amount = l.Bought, l.PerUSGallon, l.Amount
		r.verdict = a.verdict(r)
		a.delivered.add(r)
		if r.paid {
			a.paid.add(r)
		}
	}
	a.amount, a.payments = statement.Amount, statement.Payments
	return a, nil
}

// measure corrects one reading and tells how much syrup the sap makes.
func (a *account) measure(r reading) (row, error) {
	cup := a.cupTemp(r.cup.InexactFloat64())
	if cup.Compare(minCup) < 0 || cup.Compare(maxCup) > 0 {
		scale := units.ScaleFahrenheit
		if a.cupUnit == "C" {
			scale = units.ScaleCelsius
		}
		return row{}, a.at(r.line, a.column.cup, fmt.Errorf("%s %s is outside %s to %s: no cup of sap is so cold or so hot, check the unit in the header",
			r.cup, a.cupUnit, minCup.Text(scale, 0), maxCup.Text(scale, 0)))
	}
	m, err := a.hydrometer.Measure(units.Brix(r.read.InexactFloat64()), cup, a.doubt)
	if err != nil {
		return row{}, a.at(r.line, a.columnOf(err), err)
	}
	// What is paid, and made into syrup, is the strength on the sheet.
	brix := round(float64(m.Brix))
	sap := units.Brix(brix.InexactFloat64())
	if !(sap >= minSap && sap <= maxSap) {
		return row{}, a.at(r.line, a.column.reading, &units.RangeError{
			Arg: "corrected strength", Value: float64(sap), Low: float64(minSap), High: float64(maxSap), Unit: "Brix",
			Hint: "that is not sap: check the reading and the cup"})
	}
	ratio, err := yield.Ratio(sap, a.syrup)
	if err != nil {
		return row{}, a.at(r.line, a.column.reading, err)
	}
	return row{
		reading:     r,
		strength:    brix,
		uncertainty: round(float64(m.Uncertainty)),
		syrup:       round(r.gallons.InexactFloat64() / ratio),
	}, nil
}

// columnOf tells which column an argument of the hydrometer came from.
func (a *account) columnOf(err error) string {
	if argument(err) == "temperature" {
		return a.column.cup
	}
	return a.column.reading
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
