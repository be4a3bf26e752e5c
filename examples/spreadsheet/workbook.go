package main

import (
	"errors"
	"io"
	"strconv"
	"time"

	"github.com/shopspring/decimal"
	"github.com/xuri/excelize/v2"

	"example.org/sapreckoner/examples/internal/cli"
)

// The sheets, in order.
const (
	sheetDeliveries = "Deliveries"
	sheetSources    = "Sources"
	sheetProducers  = "Producers"
	sheetStatements = "Statements"
	sheetPaid       = "Paid"
	sheetAgain      = "Look again"
	sheetNotes      = "Notes"
)

// title is what the properties of a workbook say of it.
const title = "Payments for sap"

// A book is a workbook while it is filled.
type book struct {
	*excelize.File
	remove func() error
	style  struct{ head, text, date, tenth, hundredth, price, money, sumText, sumHundredth, sumMoney int }
}

// newBook fills a workbook with the account of a file. The same file gives the
// same bytes: the only time in it is the day of the latest delivery. The caller
// closes the book.
func newBook(a *account) (*book, error) {
	temp, remove, err := cli.TempDir()
	if err != nil {
		return nil, err
	}
	b := &book{File: excelize.NewFile(excelize.Options{TmpDir: temp}), remove: remove}
	if err := b.fill(a); err != nil {
		return nil, errors.Join(err, b.Close())
	}
	return b, nil
}

// Close removes what was too big for memory.
func (b *book) Close() error { return errors.Join(b.File.Close(), b.remove()) }

func (b *book) fill(a *account) error {
	if err := b.prepare(); err != nil {
		return err
	}
	a.loads = mostLoads
	// Only the long sheet is streamed: it is the first thing in the file, and with a
	// second one the order of the two would be left to chance.
	if err := b.deliveries(a); err != nil {
		return err
	}
	if err := a.accept(); err != nil {
		return err
	}
	if err := a.settle(); err != nil {
		return err
	}
	if err := b.properties(a); err != nil {
		return err
	}
	if err := b.page(sheetSources, []float64{24, 34, 62, 52}, sources(a)); err != nil {
		return err
	}
	if err := b.producers(a); err != nil {
		return err
	}
	if err := b.statementsSheet(a); err != nil {
		return err
	}
	if err := b.paidSheet(a); err != nil {
		return err
	}
	if err := b.page(sheetAgain, []float64{10, 36, 100}, again(a)); err != nil {
		return err
	}
	return b.page(sheetNotes, []float64{100, 24}, notes(a))
}

// properties tells what the file is.
func (b *book) properties(a *account) error {
	day := a.last.Format(time.RFC3339)
	return b.SetDocProps(&excelize.DocProperties{
		Title: title, Creator: program, LastModifiedBy: program, Created: day, Modified: day,
	})
}

// prepare makes the sheets and the styles.
func (b *book) prepare() error {
	if err := b.SetSheetName("Sheet1", sheetDeliveries); err != nil {
		return err
	}
	for _, name := range []string{sheetSources, sheetProducers, sheetStatements, sheetPaid, sheetAgain, sheetNotes} {
		if _, err := b.NewSheet(name); err != nil {
			return err
		}
	}
	bold := &excelize.Font{Bold: true}
	wrap := &excelize.Alignment{WrapText: true, Vertical: "top"}
	rule := []excelize.Border{{Type: "top", Style: 1, Color: "000000"}}
	date, tenth, hundredth, price, money := "yyyy-mm-dd", "0.0", "#,##0.00", "#,##0.0000", "#,##0.00"
	for _, s := range []struct {
		into  *int
		style excelize.Style
	}{
		{&b.style.head, excelize.Style{Font: bold, Alignment: wrap}},
		{&b.style.text, excelize.Style{Alignment: wrap}},
		{&b.style.date, excelize.Style{CustomNumFmt: &date}},
		{&b.style.tenth, excelize.Style{CustomNumFmt: &tenth}},
		{&b.style.hundredth, excelize.Style{CustomNumFmt: &hundredth}},
		{&b.style.price, excelize.Style{CustomNumFmt: &price}},
		{&b.style.money, excelize.Style{CustomNumFmt: &money}},
		{&b.style.sumText, excelize.Style{Font: bold, Border: rule}},
		{&b.style.sumHundredth, excelize.Style{Font: bold, Border: rule, CustomNumFmt: &hundredth}},
		{&b.style.sumMoney, excelize.Style{Font: bold, Border: rule, CustomNumFmt: &money}},
	} {
		id, err := b.NewStyle(&s.style)
		if err != nil {
			return err
		}
		*s.into = id
	}
	return nil
}

// frozen keeps the row of headers in sight.
var frozen = &excelize.Panes{Freeze: true, YSplit: 1, TopLeftCell: "A2", ActivePane: "bottomLeft"}

// deliveries writes the first sheet, row by row.
func (b *book) deliveries(a *account) error {
	if err := b.printable(sheetDeliveries); err != nil {
		return err
	}
	w, err := b.NewStreamWriter(sheetDeliveries)
	if err != nil {
		return err
	}
	if err := w.SetPanes(frozen); err != nil {
		return err
	}
	heads := []struct {
		name  string
		width float64
	}{
		{"Date", 14}, {"Producer", 26}, {"Volume, US gal", 12}, {"Read, Brix", 10}, {"Cup, " + a.cupUnit, 8},
		{"Corrected, Brix", 14}, {"Plus or minus, Brix", 11}, {"Verdict", 32},
		{"Syrup of " + a.syrup.Text(1) + ", US gal", 13}, {"Price per US gal", 12}, {"Payment", 13},
	}
	line, height := make([]any, len(heads)), 0.0
	for i, h := range heads {
		height = max(height, tall(h.name, h.width))
		if err := w.SetColWidth(i+1, i+1, h.width); err != nil {
			return err
		}
		line[i] = excelize.Cell{StyleID: b.style.head, Value: h.name}
	}
	n := 1
	if err := w.SetRow("A1", line, excelize.RowOpts{Height: height}); err != nil {
		return err
	}
	add := func(cells ...any) error {
		n++
		for i := range cells {
			if err := exact(&cells[i]); err != nil {
				return err
			}
		}
		return w.SetRow("A"+strconv.Itoa(n), cells)
	}
	st := &b.style
	for {
		r, err := a.delivery()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return err
		}
		var price any
		if r.Bought {
			price = cell(st.price, r.PerUSGallon)
		}
		if err := add(cell(st.date, r.date), r.producer, cell(st.hundredth, r.gallons), cell(st.hundredth, r.read.decimal()),
			cell(st.tenth, r.cup.decimal()), cell(st.hundredth, r.strength), cell(st.hundredth, r.uncertainty), r.verdict,
			cell(st.hundredth, r.syrup), price, cell(st.money, r.Amount)); err != nil {
			return err
		}
	}
	blank := cell(st.sumText, nil)
	for _, sum := range []struct {
		name   string
		totals totals
		amount any
	}{
		{"All delivered", a.delivered, blank},
		{"Paid for", a.paid, cell(st.sumMoney, a.amount.decimal())},
	} {
		if err := add(cell(st.sumText, sum.name), blank, cell(st.sumHundredth, sum.totals.gallons), blank, blank, blank, blank,
			blank, cell(st.sumHundredth, sum.totals.syrup), blank, sum.amount); err != nil {
			return err
		}
	}
	if a.demo {
		if err := add("These deliveries and producers are invented."); err != nil {
			return err
		}
	}
	return w.Flush()
}

// producers writes what each producer is owed.
func (b *book) producers(a *account) error {
	st := &b.style
	lines := [][]any{{"Producer", "Paid for, US gal", "Payment"}}
	sum := decimal.Zero
	for k := range a.sellers {
		s := &a.sellers[k]
		amount := s.amount.decimal()
		lines = append(lines, []any{s.name, cell(st.hundredth, s.bought), cell(st.money, amount)})
		sum = sum.Add(amount)
	}
	lines = append(lines, []any{cell(st.sumText, "All"), cell(st.sumHundredth, a.paid.gallons), cell(st.sumMoney, sum)})
	return b.page(sheetProducers, []float64{32, 16, 16}, lines)
}
