package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
)

// A price that changes leaves alone what was delivered before, so that a period that
// was paid stays paid. By hand, from TestPaymentsByHand: 2.20 Brix holds 0.2761 lb of
// syrup a gallon, which is 0.3451 at half of 2.50 and 0.3589 at half of 2.60; 61.5 gal
// are 21.22 and 100 gal 35.89.
func TestPriceChangesByHand(t *testing.T) {
	const posted = paidHeader + "2026-03-16,North lane,paid,21.22,cheque 7\n"
	prices := []string{"-syrup-price", "2.50 USD/lb, 2.60 USD/lb from 2026-03-20"}
	page, got := statement(t, asked(t, ".txt", twoLanes, posted, append(prices, "-period", "2026-03-16 to 2026-03-31")...), "North lane")
	for what, want := range map[string]string{"Carried from before": "21.22", "Sap of this period": "35.89", "Paid: cheque 7": "-21.22", "To be paid now": "35.89"} {
		if got[what] != want {
			t.Errorf("%s: %q, not %q", what, got[what], want)
		}
	}
	for _, want := range []string{"Price: 50 % of 66.9 Brix syrup at 2.50 USD/lb\n       50 % of 66.9 Brix syrup at 2.60 USD/lb from 2026-03-20\n", "2026-03-20      100.00    2.20        0.3589       35.89\n"} {
		if !strings.Contains(page, want) {
			t.Errorf("no %q in\n%s", want, page)
		}
	}
	// The day before it is still the old one: 100 gal at 0.3451 are 34.51.
	prices[1] = "2.50 USD/lb, 2.60 USD/lb from 2026-03-21"
	if page, _ := statement(t, asked(t, ".txt", twoLanes, posted, prices...), "North lane"); !strings.Contains(page, "0.3451       34.51\n") {
		t.Errorf("the day before:\n%s", page)
	}
}

func TestPricesAreRefused(t *testing.T) {
	for text, want := range map[string]string{
		"2.50/lb from 2026-03-01":                          "the first price holds from the beginning",
		"2.50/lb, 2.60/lb":                                 `"2.60/lb": write the day from which it holds`,
		"2.50/lb, 2.60/lb from March":                      `"March" is not a day`,
		"2.50/lb, 2.60 from 2026-03-20":                    `"2.60" has no unit`,
		"2.50 USD/lb, 2 CAD/lb from 2026-03-20":            "all prices are in one currency",
		"2/lb, 3/lb from 2026-03-20, 4/lb from 2026-03-20": "write prices in the order of their days",
		"2/lb, -3/lb from 2026-03-20":                      "is out of range: it must be 0 or more",
		"2/lb,":                                            `"": write the day`,
	} {
		if status, out, errs := call(t, "", "-syrup-price", text); status != cli.BadInput || len(out) != 0 || !strings.HasPrefix(errs, program+": -syrup-price: ") || !strings.Contains(errs, want) {
			t.Errorf("%s: status %d, %s", text, status, errs)
		}
	}
}

// Who brought nothing and has nothing carried was not paid by that name: after a new
// name in the deliveries alone, all would be paid again.
func TestPaidUnderAnOldName(t *testing.T) {
	renamed := strings.ReplaceAll(twoLanes, "North lane", "Miller and daughter")
	for row, refused := range map[string]bool{
		"2026-03-16,North lane,paid,15,": true, "2026-03-16,North lane,advanced,15,": false,
		"2026-03-01,North lane,carried,15,left of 2025\n2026-03-16,North lane,paid,15,": false,
	} {
		status, _, errs := call(t, "", "-in", put(t, "bought.csv", renamed), "-paid", put(t, "paid.csv", paidHeader+row+"\n"), "-pay", "2026-03-31")
		if refused != (status == cli.BadInput) || refused && !strings.Contains(errs, `paid.csv:2: column producer: no sap of "North lane", and nothing carried: write the name of now`) {
			t.Errorf("%s: status %d, %s", row, status, errs)
		}
	}
}

// Other bargains, by hand. A pound of sugar at 1.87: a gallon of 2.20 Brix holds 0.2761
// lb of syrup of 66.9 Brix, 0.1847 lb of sugar, and is worth 0.3454; 61.5 gal are 21.24.
// By the rule of 86 sap of 2 Brix at half of 2.50 is worth 0.3198 (Farming Magazine,
// Boiling it down), and of 2.2 Brix 1.25 x 11 x 2.2/86 = 0.3517; 61.5 gal are 21.63.
func TestOtherBargainsByHand(t *testing.T) {
	for _, c := range []struct {
		args               []string
		term, line, posted string
	}{
		{[]string{"-sugar-price", "1.87 USD/lb"}, "Price: the sugar in the sap at 1.87 USD/lb\n", "2.20        0.3454       21.24\n", "2.2 Brix 0.3454 1.8700"},
		{[]string{"-rule", "86/X"}, "Price: 50 % of syrup at 2.50/lb, 1 gal of 11 lb from 86/X\n", "2.20        0.3517       21.63\n", "2.0 Brix 0.3198 "},
	} {
		page, _ := statement(t, asked(t, ".txt", twoLanes, paidHeader, c.args...), "North lane")
		if !strings.Contains(page, c.term) || !strings.Contains(page, c.line) {
			t.Errorf("%q:\n%s", c.args, page)
		}
		full := string(written(t, "", append(c.args, "-in", put(t, "bought.csv", twoLanes), "-pay", "2026-03-31", "-full")...))
		if !strings.Contains(strings.Join(strings.Fields(full), " "), c.posted) {
			t.Errorf("%q: no %q in\n%s", c.args, c.posted, full)
		}
	}
	for _, c := range [][]string{{"-rule: ", "-rule", "86"}, {"-rule: sugar has one price", "-rule", "86/X", "-sugar-price", "1/lb"},
		{"-sugar-price: it takes the place of", "-share", "40 %", "-sugar-price", "1/lb"}, {`-sugar-price: "-1/lb" is out of range: it must be 0 or more`, "-sugar-price", "-1/lb"}} {
		if status, out, errs := call(t, "", c[1:]...); status != cli.BadInput || len(out) != 0 || !strings.Contains(errs, c[0]) {
			t.Errorf("%q: status %d, %s", c[1:], status, errs)
		}
	}
}
