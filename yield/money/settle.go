package money

import (
	"math"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
)

// Years that a posting may be of: a day that was not told is of the year 1.
const (
	firstYear = 1900
	lastYear  = 9999
)

// A PostingKind is what an amount does to the account of a payee. The zero value
// is none and refused.
type PostingKind uint8

// The kinds of postings. Carried and Earned add to what a payee is owed, the
// others take from it.
const (
	Carried  PostingKind = iota + 1 // brought over from an older book, negative if too much was paid
	Earned                          // for sap that was bought
	Deducted                        // trucking, dues, jars taken
	Advanced                        // paid before the sap was
	Paid                            // paid out
)

var kindNames = enum.Names[PostingKind]{Type: "money.PostingKind", Zero: true,
	Of: []string{Carried: "carried", Earned: "earned", Deducted: "deducted", Advanced: "advanced", Paid: "paid"}}

// String returns the name of the kind, such as "deducted".
func (k PostingKind) String() string { return kindNames.String(k) }

// PostingKinds lists the kinds.
func PostingKinds() []PostingKind { return kindNames.List() }

// MarshalText returns what String returns, and nothing for none.
func (k PostingKind) MarshalText() ([]byte, error) { return kindNames.Marshal(k) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (k *PostingKind) UnmarshalText(text []byte) error { return kindNames.Unmarshal(k, text) }

// A Posting is one amount on the account of one payee.
type Posting struct {
	Day      time.Time // its date counts, in its own zone
	Payee    string
	Kind     PostingKind
	Category string          // such as "sap" or "trucking", for [Ledger]
	Amount   decimal.Decimal // a multiple of the cent, 0 to 1e9; only Carried may be negative
}

// A Balance is the account of one payee over a pay period:
//
//	Owed = Carried + Earned - Deducted - Advanced - Paid
//
// Due is what is to be paid now: Owed less PaidSince, and nothing if that is
// negative.
type Balance struct {
	Payee     string
	Carried   decimal.Decimal // left from before the period
	Earned    decimal.Decimal
	Deducted  decimal.Decimal
	Advanced  decimal.Decimal
	Paid      decimal.Decimal
	Owed      decimal.Decimal // at the end of the period
	PaidSince decimal.Decimal // paid after the period, so that it is not paid again
	Due       decimal.Decimal
}

// A Settlement is what is owed at the end of a pay period. Balances stand in
// the order in which payees first appear, and All is their sum: its Due may
// exceed its Owed, because one payee's debt does not pay another.
type Settlement struct {
	From, Through time.Time
	Balances      []Balance
	All           Balance
}

// add puts an amount where its kind belongs and brings Owed along.
func (b *Balance) add(kind PostingKind, amount decimal.Decimal) {
	switch kind {
	case Carried:
		b.Carried = b.Carried.Add(amount)
	case Earned:
		b.Earned = b.Earned.Add(amount)
	case Deducted:
		b.Deducted = b.Deducted.Add(amount)
	case Advanced:
		b.Advanced = b.Advanced.Add(amount)
	case Paid:
		b.Paid = b.Paid.Add(amount)
	}
	b.Owed = b.Owed.Add(signed(kind, amount))
}

// signed is what a posting adds to the amount owed.
func signed(kind PostingKind, amount decimal.Decimal) decimal.Decimal {
	if kind == Carried || kind == Earned {
		return amount
	}
	return amount.Neg()
}

// Settle adds up accounts for a pay period from its first day through its last.
// What was posted before the period is carried into it. Later postings are passed
// over, but for payments: a check of the day after pays for the period before. So
// what was once paid, and was posted, is not paid again. What is carried from an
// older book stands for its postings: leave those out.
//
// Range: 1 to 100,000 postings of the years 1900 to 9999, 1 to 36,600 days, cent
// from 1e-9 to 1e9. Nothing is rounded: sums are exact. Check value: 300 carried
// or earned, less 40, an advance of 100 and 50 paid, leave 110 due.
func Settle(postings []Posting, from, through time.Time, cent decimal.Decimal) (Settlement, error) {
	const fn = "money.Settle"
	p, err := periodOf(fn, from, through)
	if err == nil {
		err = checkPostings(fn, postings, cent)
	}
	if err != nil {
		return Settlement{}, err
	}
	s := Settlement{From: from, Through: through}
	places, since := map[string]int{}, map[string]decimal.Decimal{}
	for _, x := range postings {
		day := dayOf(x.Day)
		if day > p.through {
			if x.Kind == Paid {
				since[x.Payee] = since[x.Payee].Add(x.Amount)
			}
			continue
		}
		k, known := places[x.Payee]
		if !known {
			k = len(s.Balances)
			places[x.Payee] = k
			s.Balances = append(s.Balances, Balance{Payee: x.Payee})
		}
		kind, amount := x.Kind, x.Amount
		if day < p.from {
			kind, amount = Carried, signed(kind, amount)
		}
		s.Balances[k].add(kind, amount)
		s.All.add(kind, amount)
	}
	for i := range s.Balances {
		b := &s.Balances[i]
		b.PaidSince = since[b.Payee]
		b.Due = decimal.Max(b.Owed.Sub(b.PaidSince), decimal.Zero)
		s.All.PaidSince = s.All.PaidSince.Add(b.PaidSince)
		s.All.Due = s.All.Due.Add(b.Due)
	}
	return s, nil
}

// Payouts returns a posting of kind Paid for every payee who is due something.
// With these in the record, the same period settles to nothing due, whether they
// are of a day in it or after it.
func (s Settlement) Payouts(day time.Time, category string) []Posting {
	var out []Posting
	for _, b := range s.Balances {
		if b.Due.IsPositive() {
			out = append(out, Posting{Day: day, Payee: b.Payee, Kind: Paid, Category: category, Amount: b.Due})
		}
	}
	return out
}

// A period is first and last day, as dayOf counts them.
type period struct{ from, through int }

func periodOf(fn string, from, through time.Time) (period, error) {
	for _, d := range []struct {
		arg, what string
		day       time.Time
	}{{"from", "year of the first day", from}, {"through", "year of the last day", through}} {
		if err := limit.InAs(fn, d.arg, d.what, float64(d.day.Year()), firstYear, lastYear, "", "name the days of the pay period"); err != nil {
			return period{}, err
		}
	}
	p := period{dayOf(from), dayOf(through)}
	return p, limit.InAs(fn, "through", "days of the period", float64(p.through-p.from+1), 1, 36_600, "", "the last day does not come before the first")
}

// dayOf numbers the days by their dates alone.
func dayOf(t time.Time) int {
	y, m, d := t.Date()
	return int(math.Floor(float64(time.Date(y, m, d, 0, 0, 0, 0, time.UTC).Unix()) / 86400))
}

// checkPostings holds postings to their documented limits.
func checkPostings(fn string, postings []Posting, cent decimal.Decimal) error {
	if err := limit.Entries(fn, "postings", len(postings)); err != nil {
		return err
	}
	if err := exactly(fn, "cent", "step of payments", cent, minStep, maxMoney, "0.01 for cents"); err != nil {
		return err
	}
	for i, x := range postings {
		if err := limit.InItem(fn, "postings", i, "Kind", "kind of posting", float64(x.Kind), float64(Carried), float64(Paid), "", "say what the amount is: carried, earned, deducted, advanced or paid"); err != nil {
			return err
		}
		if err := limit.InItem(fn, "postings", i, "Day", "year", float64(x.Day.Year()), firstYear, lastYear, "", "an amount without its day may be paid twice"); err != nil {
			return err
		}
		low := decimal.Zero
		if x.Kind == Carried {
			low = maxMoney.Neg()
		}
		if err := item(fn, "postings", i, "Amount", "amount", x.Amount, low, maxMoney, "what was paid is not negative: its kind says which way it goes"); err != nil {
			return err
		}
		if !x.Amount.Mod(cent).IsZero() {
			return &DecimalError{Func: fn, Arg: limit.Item("postings", i, "Amount"), What: limit.Entry(i, "amount"), Value: x.Amount.String(),
				Reason: "it is not a multiple of " + cent.String() + ": round it before it is posted"}
		}
	}
	return nil
}
