package main

import (
	"fmt"
	"io"
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
	*measured
	verdict string
	syrup   hundredths // US gallons
	*money.Line
}

// measured is what a reading and its cup make of sap.
type measured struct {
	strength    hundredths // corrected Brix
	uncertainty hundredths // expanded, k = 2
	near        bool       // the minimum lies within it
	ratio       float64    // gallons of sap to one of syrup
	words       string     // reading and cup, as they count
}

// An account is what the sheets show. Rows pass through it and are not kept.
type account struct {
	settings
	*file
	strengths  map[[2]plain]*measured // by reading and cup
	batch      []row                  // that were read and priced together
	deliveries []money.Delivery       // of them, at one price
	places     []int                  // of these
	at         int                    // the next of them
	delivered  totals
	paid       totals
	amount     sum             // of the lines
	sellers    []seller        // in the order in which producers first appear
	posted     []money.Posting // advances, deductions and payments
	postedAt   []records.Error // where each stands, for a message
	paidWho    string          // what their header calls the producer
	period     span
	listed     bool // statements list the deliveries
	loads      int  // that statements of the workbook list, as many as may be
	counted    int  // deliveries
	settled    money.Settlement
	ledger     []money.LedgerLine
	last       time.Time // day of the latest delivery
	again      lookagain.List
	accepted   []lookagain.Finding
}

func newAccount(s settings, f *file) *account {
	return &account{settings: s, file: f, strengths: map[[2]plain]*measured{}, period: s.ask, paidWho: "seller", again: lookagain.List{VolumeUnit: "US gal"}}
}

type totals struct{ gallons, syrup hundredths }

func (t *totals) add(r *row) { t.gallons, t.syrup = t.gallons+r.gallons, t.syrup+r.syrup }

// atOnce deliveries are priced together: each strength among them is priced once.
const atOnce = 4096

// delivery corrects, prices and counts the next delivery. At the end it returns
// [io.EOF].
func (a *account) delivery() (*row, error) {
	if a.at == len(a.batch) {
		if err := a.fetch(); err != nil {
			return nil, err
		}
	}
	r := &a.batch[a.at]
	a.at++
	a.count(r)
	return r, nil
}

// fetch reads and prices the next deliveries.
func (a *account) fetch() error {
	a.batch, a.at = a.batch[:0], 0
	for len(a.batch) < atOnce {
		a.batch = append(a.batch, row{})
		r := &a.batch[len(a.batch)-1]
		err := a.next(&r.reading)
		if err == io.EOF && len(a.batch) > 1 {
			a.batch = a.batch[:len(a.batch)-1]
			break
		}
		if err == nil {
			r.measured, err = a.measure(&r.reading)
		}
		if err != nil {
			return err
		}
		r.syrup = hundredthsOf(r.gallons.float() / r.ratio)
	}
	for k, p := range a.prices {
		if err := a.priceAll(k, a.offer(p)); err != nil {
			return err
		}
	}
	return nil
}

// priceAll prices the rows at hand for which one of the prices holds.
func (a *account) priceAll(k int, offer money.Offer) error {
	a.deliveries, a.places = a.deliveries[:0], a.places[:0]
	for i := range a.batch {
		if r := &a.batch[i]; a.priceOn(r.date) == k {
			a.places = append(a.places, i)
			a.deliveries = append(a.deliveries, money.Delivery{Seller: r.producer, USGallons: r.gallons.decimal(), Sap: units.Brix(r.strength.float())})
		}
	}
	if len(a.places) == 0 {
		return nil
	}
	// Lines are rounded one by one and only then added: those of one long statement are
	// those of many.
	statement, err := offer.Statement(a.deliveries)
	if err != nil {
		return a.rows.Fail("", err)
	}
	for n, i := range a.places {
		r := &a.batch[i]
		r.Line = &statement.Lines[n]
		r.verdict = verdict(r.Bought, r.near)
	}
	return nil
}

// count adds a delivery to the totals, to what its producer is owed, and to what
// is looked at again.
func (a *account) count(r *row) {
	if r.who == len(a.sellers) {
		a.sellers = append(a.sellers, seller{name: r.producer})
	}
	s := &a.sellers[r.who]
	a.counted++
	a.credit(s, r)
	a.delivered.add(r)
	if r.Bought {
		a.paid.add(r)
		s.bought += r.gallons
		s.amount.add(r.Amount)
		a.amount.add(r.Amount)
	}
	if r.date.After(a.last) {
		a.last = r.date
	}
	a.look(r)
}

// mostStrengths bounds what is kept of readings: no instrument shows so many.
const mostStrengths = 1 << 14

// measure corrects one reading, or knows what it is.
func (a *account) measure(r *reading) (*measured, error) {
	key := [2]plain{r.read, r.cup}
	if m := a.strengths[key]; m != nil {
		return m, nil
	}
	m, err := a.correct(r.read.decimal(), r.cup.decimal())
	if err != nil {
		return nil, err
	}
	if len(a.strengths) == mostStrengths {
		clear(a.strengths)
	}
	a.strengths[key] = m
	return m, nil
}

// correct corrects one reading and tells how much syrup the sap makes.
func (a *account) correct(read, cup decimal.Decimal) (*measured, error) {
	at := a.cupTemp(cup.InexactFloat64())
	if at.Compare(minCup) < 0 || at.Compare(maxCup) > 0 {
		scale := units.ScaleFahrenheit
		if a.cupUnit == "C" {
			scale = units.ScaleCelsius
		}
		return nil, a.rows.Fail("cup", fmt.Errorf("%s %s is outside %s to %s: no cup of sap is so cold or so hot, check the unit in the header",
			cup, a.cupUnit, minCup.Text(scale, 0), maxCup.Text(scale, 0)))
	}
	m, err := a.hydrometer.Measure(units.Brix(read.InexactFloat64()), at, a.doubt)
	if err != nil {
		return nil, a.rows.Fail(columnOf(err), err)
	}
	// What is paid, and made into syrup, is the strength on the sheet.
	out := &measured{strength: hundredthsOf(float64(m.Brix)), uncertainty: hundredthsOf(float64(m.Uncertainty)), words: read.String() + "," + cup.String()}
	sap := units.Brix(out.strength.float())
	if !(sap >= minSap && sap <= maxSap) {
		return nil, a.rows.Fail("reading", &units.RangeError{
			Arg: "corrected strength", Value: float64(sap), Low: float64(minSap), High: float64(maxSap), Unit: "Brix",
			Hint: "that is not sap: check the reading and the cup"})
	}
	if out.ratio, err = yield.Ratio(sap, a.syrup); err != nil {
		return nil, a.rows.Fail("reading", err)
	}
	minimum := decimal.NewFromFloat(float64(a.minimum))
	out.near = out.strength.decimal().Sub(minimum).Abs().LessThanOrEqual(out.uncertainty.decimal())
	return out, nil
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
func verdict(paid, near bool) string {
	switch {
	case paid && near:
		return justPays
	case paid:
		return pays
	case near:
		return justFails
	}
	return fails
}
