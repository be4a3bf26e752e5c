package main

import (
	"bufio"
	"encoding/csv"
	"fmt"
	"io"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/yield/money"
)

// statementMark begins a page of statements and a ledger of this program, which
// alone it replaces.
const (
	statementMark = "STATEMENT FOR SAP"
	ledgerMark    = "category,payee,kind,count,amount"
)

// statements writes a page for each payee, which a form feed parts from the next.
func (a *account) statements(out io.Writer) error {
	w := bufio.NewWriter(out)
	for i, b := range a.settled.Balances {
		if i > 0 {
			fmt.Fprint(w, "\f")
		}
		a.statement(w, b, i+1)
	}
	return w.Flush()
}

// statement writes the page of one payee.
func (a *account) statement(w io.Writer, b money.Balance, page int) {
	s := a.of(b.Payee)
	title := statementMark
	if a.house != "" {
		title += ": " + short(visible(a.house), 40)
	}
	fmt.Fprintf(w, "%s%*s\n", title, 76-utf8.RuneCountInString(title), fmt.Sprintf("page %d of %d", page, len(a.settled.Balances)))
	fmt.Fprintf(w, "%s\n", visible(b.Payee))
	fmt.Fprintf(w, "Season %d: %s, %s.\n", a.period.through.Year(), a.periodText(), a.inMoney())
	for i, term := range a.terms() {
		fmt.Fprintf(w, "%s %s\n", [2]string{"Price:", "      "}[min(i, 1)], term)
	}
	if a.demo {
		fmt.Fprint(w, "These deliveries and producers are invented.\n")
	}
	fmt.Fprintf(w, "\n%-12s%10s%8s%14s%12s\n", "Date", "US gal", "Brix", "per gallon", "amount")
	_, _ = w.Write(s.lines) // the buffer tells
	if s.deliveries == 0 {
		fmt.Fprint(w, "nothing in this period\n")
	} else {
		fmt.Fprintf(w, "\nDelivered %s US gal at %s Brix in the mean of the volume, %s.\n", s.gallons.fixed(), s.mean().StringFixed(2), times(s.deliveries))
	}
	if s.refused > 0 {
		fmt.Fprintf(w, "Not paid for: %s US gal, %s.\n", s.thin.fixed(), times(s.refused))
	}
	if s.syrup > 0 {
		fmt.Fprintf(w, "Paid sap makes %s US gal of %s syrup: on halves each has half of it.\n", s.syrup.fixed(), a.told("syrup"))
	}
	if s.near > 0 {
		fmt.Fprint(w, "Too close to call: the minimum lies within the uncertainty of the reading.\n")
	}
	fmt.Fprintln(w)
	line := func(what string, amount decimal.Decimal, less bool) {
		if less {
			amount = amount.Neg()
		}
		fmt.Fprintf(w, "%-44s%12s\n", what, amount.StringFixed(2))
	}
	line("Carried from before", b.Carried, false)
	line("Sap of this period", b.Earned, false)
	for _, l := range a.ledger {
		if l.Payee == b.Payee && (l.Kind == money.Deducted || l.Kind == money.Advanced || l.Kind == money.Paid) {
			what := upperFirst(l.Kind.String())
			if l.Category != l.Kind.String() {
				what += ": " + short(visible(l.Category), 30)
			}
			line(what, l.Amount, true)
		}
	}
	line("Owed", b.Owed, false)
	if b.Owed.IsNegative() {
		fmt.Fprint(w, "More was paid than is owed: it is carried into the next period.\n")
	}
	if !b.PaidSince.IsZero() {
		line("Paid since", b.PaidSince, true)
	}
	line("To be paid now", b.Due, false)
	fmt.Fprintf(w, "\n\nReceived ______________________________   Date ______________\n")
}

// line appends a delivery to those on a statement. Texts take less room than rows.
func (a *account) line(b []byte, r *row) []byte {
	b = pad(append(b, r.day...), 2)
	b = r.strength.append(r.gallons.append(b, 10), 8)
	if r.Bought {
		price := r.PerUSGallon.StringFixed(4)
		b = append(pad(b, 14-len(price)), price...)
		b = appendAmount(b, r.Amount, 12)
	} else {
		b = append(append(b, "  not paid: below "...), a.minimum.String()...)
	}
	if r.near {
		b = append(b, "  too close to call"...)
	}
	return append(b, '\n')
}

// appendAmount appends an amount at the right of a column.
func appendAmount(b []byte, amount decimal.Decimal, width int) []byte {
	if n, ok := cents(amount); ok {
		return n.append(b, width)
	}
	text := amount.StringFixed(2)
	return append(pad(b, width-len(text)), text...)
}

// inMoney says what the amounts are in.
func (a *account) inMoney() string {
	if a.currency == "" {
		return "in the currency of the price"
	}
	return "in " + a.currency
}

func times(n int) string {
	switch n {
	case 1:
		return "once"
	case 2:
		return "twice"
	}
	return strconv.Itoa(n) + " times"
}

// visible spells out signs that are not seen, or that turn the order of reading.
func visible(text string) string {
	var b strings.Builder
	for _, c := range text {
		if unicode.IsPrint(c) {
			b.WriteRune(c)
		} else {
			b.WriteString(strings.Trim(strconv.QuoteRune(c), "'"))
		}
	}
	return b.String()
}

// short cuts a text to so many letters.
func short(text string, most int) string {
	if letters := []rune(text); len(letters) > most {
		return string(letters[:most-3]) + "..."
	}
	return text
}

// book writes the ledger as CSV.
func (a *account) book(out io.Writer) error {
	w := csv.NewWriter(out)
	_ = w.Write(strings.Split(ledgerMark, ",")) // Flush tells
	for _, l := range a.ledger {
		_ = w.Write([]string{inert(l.Category), inert(l.Payee), l.Kind.String(), strconv.Itoa(l.Count), l.Amount.StringFixed(2)})
	}
	w.Flush()
	return w.Error()
}

// inert keeps a spreadsheet program from taking a name for a formula: it puts an
// apostrophe before it.
func inert(text string) string {
	if text != "" && strings.ContainsRune("=+-@\t\r'", rune(text[0])) {
		return "'" + visible(text)
	}
	return visible(text)
}
