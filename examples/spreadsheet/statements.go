package main

import (
	"fmt"
	"strconv"
	"strings"
	"time"

	"github.com/shopspring/decimal"
	"github.com/xuri/excelize/v2"

	"example.org/sapreckoner/yield/money"
)

// Bounds of the sheet of statements: each formula looks through all deliveries.
const (
	mostStatements = 500
	mostLooked     = 2_000_000 // deliveries times statements
)

// paidSheet lists what was advanced, deducted, paid and carried over.
func (b *book) paidSheet(a *account) error {
	lines := [][]any{{"Date", "Producer", "Kind", "Amount", "What"}}
	for _, p := range a.posted {
		lines = append(lines, []any{cell(b.style.date, p.Day), p.Payee, p.Kind.String(), cell(b.style.money, p.Amount), p.Category})
	}
	return b.page(sheetPaid, []float64{14, 32, 14, 16, 40}, lines)
}

// A live is a formula beside a value, in a row of the sheet.
type live struct {
	row     int
	formula string
	style   int
}

// statementsSheet writes a block for each payee, each on a page of its own: what was
// reckoned, and beside it what the sheet makes of its own cells.
func (b *book) statementsSheet(a *account) error {
	balances := a.settled.Balances
	if len(balances) > mostStatements || len(balances)*a.read > mostLooked {
		return b.page(sheetStatements, []float64{100}, [][]any{{"Statements"}, {"So many deliveries or producers make a sheet that nobody opens: write the statements with -out statements.txt."}})
	}
	title := "Statement for sap, " + a.inMoney()
	if a.house != "" {
		title = visible(a.house) + ": " + title
	}
	pays, err := a.payFormula()
	if err != nil {
		return err
	}
	lines := [][]any{{title, "Reckoned", "Live"}}
	var formulas []live
	var breaks []int
	for i, balance := range balances {
		if i > 0 {
			breaks = append(breaks, len(lines)+1)
		}
		lines, formulas = b.block(a, balance, i+1, pays, lines, formulas)
	}
	if err := b.page(sheetStatements, []float64{44, 32, 16}, lines); err != nil {
		return err
	}
	for _, f := range formulas {
		at := "C" + strconv.Itoa(f.row)
		array := excelize.STCellFormulaTypeArray // of all rows of the other sheets, one by one
		if err := b.SetCellFormula(sheetStatements, at, f.formula, excelize.FormulaOpts{Type: &array, Ref: &at}); err != nil {
			return err
		}
		if err := b.SetCellStyle(sheetStatements, at, at, f.style); err != nil {
			return err
		}
	}
	for _, row := range breaks {
		if err := b.InsertPageBreak(sheetStatements, "A"+strconv.Itoa(row)); err != nil {
			return err
		}
	}
	return b.SetHeaderFooter(sheetStatements, &excelize.HeaderFooterOptions{OddFooter: "&Cpage &P of &N"})
}

// block adds the statement of one payee.
func (b *book) block(a *account, m money.Balance, page int, pays func(row int) string, lines [][]any, formulas []live) ([][]any, []live) {
	st, s := &b.style, a.of(m.Payee)
	put := func(what string, value any) int {
		lines = append(lines, []any{what, value})
		return len(lines)
	}
	beside := func(what string, style int, value any, formula string) int {
		row := put(what, cell(style, value))
		formulas = append(formulas, live{row, formula, style})
		return row
	}
	put(fmt.Sprintf("Statement %d of %d, season %d", page, len(a.settled.Balances), a.period.through.Year()), "")
	who := put("Producer", m.Payee)
	from := put("From", cell(st.date, a.period.from))
	through := put("Through", cell(st.date, a.period.through))

	for _, l := range s.loads {
		beside(l.what, st.money, l.amount, pays(l.row))
	}
	if s.deliveries > len(s.loads) {
		put(fmt.Sprintf("%d more: on the sheet of deliveries", s.deliveries-len(s.loads)), "")
	}

	in := strings.NewReplacer("WHO", fmt.Sprintf("$B$%d", who), "FROM", fmt.Sprintf("$B$%d", from), "THROUGH", fmt.Sprintf("$B$%d", through),
		"D!", sheetDeliveries+"!", "P!", sheetPaid+"!", "#D", strconv.Itoa(a.read+1), "#P", strconv.Itoa(max(len(a.posted), 1)+1))
	const (
		own     = "EXACT(D!$B$2:$B$#D,WHO)"
		within  = own + "*(D!$A$2:$A$#D>=FROM)*(D!$A$2:$A$#D<=THROUGH)"
		volume  = "D!$C$2:$C$#D"
		pay     = "ROUND(D!$C$2:$C$#D*D!$J$2:$J$#D+0.000000001,2)" // a half cent is not seen as less
		posted  = "EXACT(P!$B$2:$B$#P,WHO)"
		counted = posted + "*(P!$A$2:$A$#P>=FROM)*(P!$A$2:$A$#P<=THROUGH)"
		carried = `(P!$C$2:$C$#P="carried")`
		amounts = "P!$D$2:$D$#P"
	)
	sum := func(factors ...string) string { return in.Replace("SUM(" + strings.Join(factors, "*") + ")") }
	beside("Deliveries", st.text, s.deliveries, sum(within, "1"))
	gallons := beside("Delivered, US gal", st.hundredth, s.gallons, "ROUND("+sum(within, volume)+",2)")
	beside("Mean of the volume, Brix", st.hundredth, s.mean(), fmt.Sprintf("IF(C%d=0,0,ROUND(%s/C%d,2))", gallons, sum(within, volume, "D!$F$2:$F$#D"), gallons))
	beside("Not paid for: below "+a.minimum.String()+", US gal", st.hundredth, s.thin, "ROUND("+sum(within, volume, `(D!$J$2:$J$#D="")`)+",2)")
	rows := []int{
		beside("Carried from before", st.money, m.Carried, "ROUND("+sum(own, "(D!$A$2:$A$#D<FROM)", pay)+"+"+
			sum(posted, "(P!$A$2:$A$#P<FROM)", "(2*"+carried+"-1)", amounts)+"+"+sum(counted, carried, amounts)+",2)"),
		beside("Sap of this period", st.money, m.Earned, "ROUND("+sum(within, pay)+",2)"),
	}
	for _, less := range []struct {
		kind   money.PostingKind
		amount decimal.Decimal
	}{{money.Deducted, m.Deducted}, {money.Advanced, m.Advanced}, {money.Paid, m.Paid}} {
		rows = append(rows, beside(upperFirst(less.kind.String()), st.money, less.amount,
			"ROUND("+sum(counted, `(P!$C$2:$C$#P="`+less.kind.String()+`")`, amounts)+",2)"))
	}
	owed := beside("Owed", st.sumMoney, m.Owed, fmt.Sprintf("ROUND(C%d+C%d-C%d-C%d-C%d,2)", rows[0], rows[1], rows[2], rows[3], rows[4]))
	since := beside("Paid since", st.money, m.PaidSince, "ROUND("+sum(posted, "(P!$A$2:$A$#P>THROUGH)", `(P!$C$2:$C$#P="paid")`, amounts)+",2)")
	beside("To be paid now", st.sumMoney, m.Due, fmt.Sprintf("MAX(0,ROUND(C%d-C%d,2))", owed, since))
	put("Received, and date", "")
	return lines, formulas
}

// periodText names the pay period.
func (a *account) periodText() string {
	return a.period.from.Format(time.DateOnly) + " to " + a.period.through.Format(time.DateOnly)
}
