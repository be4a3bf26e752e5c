package money_test

import (
	"encoding/json"
	"errors"
	"math/rand/v2"
	"strconv"
	"testing"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
)

func march(day int) time.Time { return time.Date(2034, time.March, day, 0, 0, 0, 0, time.UTC) }

var cent = decimal.New(1, -2)

// By hand. To 15 March Creek lot earns 36.39, less 4.00 of trucking and an advance
// of 20.00: 12.39, which is paid on the 16th. To the 31st it earns 10.00 more: 10.00
// is due and not 22.39. Hill house took an advance of 50.00 for 13.43: nothing is
// due, 36.57 is carried; with 40.00 more, 3.43 is.
func TestSettleByHand(t *testing.T) {
	record := []money.Posting{
		{Day: march(1), Payee: "Hill house", Kind: money.Advanced, Category: "advance", Amount: dec("50")},
		{Day: march(14), Payee: "Creek lot", Kind: money.Earned, Category: "sap", Amount: dec("19.51")},
		{Day: march(14), Payee: "Hill house", Kind: money.Earned, Category: "sap", Amount: dec("13.43")},
		{Day: march(15), Payee: "Creek lot", Kind: money.Earned, Category: "sap", Amount: dec("16.88")},
		{Day: march(15), Payee: "Creek lot", Kind: money.Deducted, Category: "trucking", Amount: dec("4")},
		{Day: march(2), Payee: "Creek lot", Kind: money.Advanced, Category: "advance", Amount: dec("20.00")},
		{Day: march(20), Payee: "Creek lot", Kind: money.Earned, Category: "sap", Amount: dec("10")},
		{Day: march(20), Payee: "Hill house", Kind: money.Earned, Category: "sap", Amount: dec("40")},
	}
	first, err := money.Settle(record, march(1), march(15), cent)
	if err != nil {
		t.Fatal(err)
	}
	holds(t, first.Balances[0], "Hill house", "0", "13.43", "0", "50", "0", "-36.57", "0")
	holds(t, first.Balances[1], "Creek lot", "0", "36.39", "4", "20", "0", "12.39", "12.39")
	holds(t, first.All, "", "0", "49.82", "4", "70", "0", "-24.18", "12.39")

	record = append(record, first.Payouts(march(16), "cheque")...)
	again, err := money.Settle(record, march(1), march(15), cent)
	if err != nil {
		t.Fatal(err)
	}
	// The same statement once more: 12.39 was owed on the 15th, and is paid since.
	holds(t, again.Balances[0], "Hill house", "0", "13.43", "0", "50", "0", "-36.57", "0")
	holds(t, again.Balances[1], "Creek lot", "0", "36.39", "4", "20", "0", "12.39", "0")
	if !again.Balances[1].PaidSince.Equal(dec("12.39")) || !again.All.PaidSince.Equal(dec("12.39")) || !again.Balances[0].PaidSince.IsZero() {
		t.Errorf("paid since: %+v", again)
	}
	second, err := money.Settle(record, march(16), march(31), cent)
	if err != nil {
		t.Fatal(err)
	}
	holds(t, second.Balances[0], "Hill house", "-36.57", "40", "0", "0", "0", "3.43", "3.43")
	holds(t, second.Balances[1], "Creek lot", "12.39", "10", "0", "0", "12.39", "10", "10")

	// The ledger of all of it: 46.39 and 53.43 of sap, advances, one cheque.
	lines, err := money.Ledger(record, march(1), march(31), cent)
	if err != nil {
		t.Fatal(err)
	}
	want := []money.LedgerLine{
		{"advance", "Hill house", money.Advanced, 1, dec("50")}, {"advance", "Creek lot", money.Advanced, 1, dec("20")},
		{"sap", "Creek lot", money.Earned, 3, dec("46.39")}, {"sap", "Hill house", money.Earned, 2, dec("53.43")},
		{"trucking", "Creek lot", money.Deducted, 1, dec("4")}, {"cheque", "Creek lot", money.Paid, 1, dec("12.39")},
	}
	if len(lines) != len(want) {
		t.Fatalf("%v", lines)
	}
	for i, w := range want {
		if g := lines[i]; g.Category != w.Category || g.Payee != w.Payee || g.Kind != w.Kind || g.Count != w.Count || !g.Amount.Equal(w.Amount) {
			t.Errorf("%v, not %v", g, w)
		}
	}
}

// holds compares a balance: carried, earned, deducted, advanced, paid, owed, due.
func holds(t *testing.T, b money.Balance, payee string, want ...string) {
	t.Helper()
	for i, got := range []decimal.Decimal{b.Carried, b.Earned, b.Deducted, b.Advanced, b.Paid, b.Owed, b.Due} {
		if !got.Equal(dec(want[i])) || b.Payee != payee {
			t.Errorf("%s: %v, want %s %v", b.Payee, b, payee, want)
			return
		}
	}
}

// Whatever is posted, paid out period by period, and whole cents kept apart by
// this test: nobody is paid more than was earned less what was taken, and at the
// end what was paid and what is owed is all of it.
func TestNothingIsPaidTwice(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 11))
	for range 200 {
		var record []money.Posting
		owed := map[string]int64{} // cents
		for range 1 + r.IntN(60) {
			n, who := int64(r.IntN(100_000)), "seller "+strconv.Itoa(r.IntN(5))
			kind := money.PostingKinds()[r.IntN(4)] // nothing paid yet
			switch kind {
			case money.Carried:
				if r.IntN(2) == 0 {
					n = -n
				}
				owed[who] += n
			case money.Earned:
				owed[who] += n
			default:
				owed[who] -= n
			}
			record = append(record, money.Posting{Day: march(1 + r.IntN(30)), Payee: who, Kind: kind, Amount: decimal.New(n, -2)})
		}
		for _, last := range []int{10, 20, 30} {
			s, err := money.Settle(record, march(last-9), march(last), cent)
			if err != nil {
				t.Fatal(err)
			}
			record = append(record, s.Payouts(march(last+r.IntN(2)), "")...) // on its last day, or the day after
			again, err := money.Settle(record, march(last-9), march(last), cent)
			if err != nil || !again.All.Due.IsZero() {
				t.Fatalf("%v due after all was paid, %v", again.All.Due, err)
			}
		}
		s, err := money.Settle(record, march(1), march(31), cent)
		if err != nil {
			t.Fatal(err)
		}
		for _, b := range s.Balances {
			if got := b.Owed.Add(b.Paid); !got.Equal(decimal.New(owed[b.Payee], -2)) {
				t.Fatalf("%s: %v paid and %v owed, of %d cents", b.Payee, b.Paid, b.Owed, owed[b.Payee])
			}
		}
	}
}

func TestSettleRefuses(t *testing.T) {
	good := money.Posting{Day: march(3), Payee: "a", Kind: money.Earned, Amount: dec("1.25")}
	settle := func(change func(p *money.Posting)) error {
		p := good
		change(&p)
		_, err := money.Settle([]money.Posting{good, p}, march(1), march(3), cent)
		_, err2 := money.Ledger([]money.Posting{good, p}, march(1), march(3), cent)
		if (err == nil) != (err2 == nil) {
			t.Errorf("%v, but the ledger %v", err, err2)
		}
		return err
	}
	for name, tt := range map[string]struct {
		arg    string
		change func(p *money.Posting)
	}{
		"no kind":       {"postings[1].Kind", func(p *money.Posting) { p.Kind = 0 }},
		"unknown kind":  {"postings[1].Kind", func(p *money.Posting) { p.Kind = 6 }},
		"no day":        {"postings[1].Day", func(p *money.Posting) { p.Day = time.Time{} }},
		"negative":      {"postings[1].Amount", func(p *money.Posting) { p.Amount = dec("-0.01") }},
		"half a cent":   {"postings[1].Amount", func(p *money.Posting) { p.Amount = dec("0.005") }},
		"too much":      {"postings[1].Amount", func(p *money.Posting) { p.Amount = dec("1000000000.01") }},
		"too many digi": {"postings[1].Amount", func(p *money.Posting) { p.Amount = decimal.New(1, 1<<30) }},
	} {
		err := settle(tt.change)
		var out *units.RangeError
		var exact *money.DecimalError
		switch {
		case errors.As(err, &out) && out.Arg == tt.arg, errors.As(err, &exact) && exact.Arg == tt.arg:
		default:
			t.Errorf("%s: %v", name, err)
		}
	}
	if err := settle(func(p *money.Posting) { p.Kind, p.Amount = money.Carried, dec("-3.10") }); err != nil {
		t.Error(err)
	}
	one := []money.Posting{good}
	for name, try := range map[string]func() (money.Settlement, error){
		"none":       func() (money.Settlement, error) { return money.Settle(nil, march(1), march(3), cent) },
		"backwards":  func() (money.Settlement, error) { return money.Settle(one, march(3), march(2), cent) },
		"no days":    func() (money.Settlement, error) { return money.Settle(one, time.Time{}, march(2), cent) },
		"no last":    func() (money.Settlement, error) { return money.Settle(one, march(2), time.Time{}, cent) },
		"no cent":    func() (money.Settlement, error) { return money.Settle(one, march(1), march(3), decimal.Zero) },
		"minus cent": func() (money.Settlement, error) { return money.Settle(one, march(1), march(3), cent.Neg()) },
	} {
		if s, err := try(); !errors.Is(err, units.ErrRange) || s.Balances != nil {
			t.Errorf("%s: %v, %v", name, s, err)
		}
	}
	// One day is a period; the hour of a posting does not matter.
	late := good
	late.Day = late.Day.Add(23 * time.Hour)
	if s, err := money.Settle([]money.Posting{late}, march(3), march(3), cent); err != nil || !s.All.Due.Equal(dec("1.25")) {
		t.Errorf("%v, %v", s, err)
	}
}

func TestPostingKindText(t *testing.T) {
	for _, k := range money.PostingKinds() {
		out, err := json.Marshal(money.Posting{Kind: k, Day: march(1), Amount: dec("-0.10")})
		var back money.Posting
		if err == nil {
			err = json.Unmarshal(out, &back)
		}
		if err != nil || back.Kind != k || !back.Amount.Equal(dec("-0.1")) {
			t.Errorf("%v: %s: %v, %v", k, out, back, err)
		}
	}
}
