package money

import (
	"time"

	"github.com/shopspring/decimal"
)

// A LedgerLine is the sum of the postings of one category, payee and kind.
type LedgerLine struct {
	Category string
	Payee    string
	Kind     PostingKind
	Count    int
	Amount   decimal.Decimal
}

// Ledger adds up the postings of a period by category, payee and kind, in the
// order in which categories, and in each of them payees and kinds, first appear.
//
// Range and errors: those of [Settle]. The lines of a kind add up to the sum of
// that kind in the settlement of the same period, but for what was carried into
// it.
func Ledger(postings []Posting, from, through time.Time, cent decimal.Decimal) ([]LedgerLine, error) {
	const fn = "money.Ledger"
	p, err := periodOf(fn, from, through)
	if err == nil {
		err = checkPostings(fn, postings, cent)
	}
	if err != nil {
		return nil, err
	}
	type key struct {
		payee string
		kind  PostingKind
	}
	type part struct {
		lines  []LedgerLine
		places map[key]int
	}
	var parts []*part
	named, count := map[string]*part{}, 0
	for _, x := range postings {
		if day := dayOf(x.Day); day < p.from || day > p.through {
			continue
		}
		c := named[x.Category]
		if c == nil {
			c = &part{places: map[key]int{}}
			named[x.Category], parts = c, append(parts, c)
		}
		at := key{x.Payee, x.Kind}
		k, known := c.places[at]
		if !known {
			k = len(c.lines)
			c.places[at] = k
			c.lines = append(c.lines, LedgerLine{Category: x.Category, Payee: x.Payee, Kind: x.Kind})
			count++
		}
		l := &c.lines[k]
		l.Count, l.Amount = l.Count+1, l.Amount.Add(x.Amount)
	}
	all := make([]LedgerLine, 0, count)
	for _, c := range parts {
		all = append(all, c.lines...)
	}
	return all, nil
}
