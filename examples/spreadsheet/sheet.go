package main

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"github.com/shopspring/decimal"
	"github.com/xuri/excelize/v2"
)

// maxDigits is how many digits of a number a spreadsheet program keeps.
const maxDigits = 15

// page writes a short sheet. The first line is its header.
func (b *book) page(sheet string, widths []float64, lines [][]any) error {
	if err := b.printable(sheet); err != nil {
		return err
	}
	for i, width := range widths {
		name, err := excelize.ColumnNumberToName(i + 1)
		if err != nil {
			return err
		}
		if err := b.SetColWidth(sheet, name, name, width); err != nil {
			return err
		}
	}
	if err := b.SetPanes(sheet, frozen); err != nil {
		return err
	}
	for y, line := range lines {
		height := 0.0
		for x, value := range line {
			if text, ok := value.(string); ok {
				height = max(height, tall(text, widths[x]))
			}
			if err := exact(&value); err != nil {
				return err
			}
			c, ok := value.(excelize.Cell)
			switch {
			case !ok && y == 0:
				c = cell(b.style.head, value)
			case !ok:
				c = cell(b.style.text, value)
			}
			at, err := excelize.CoordinatesToCellName(x+1, y+1)
			if err != nil {
				return err
			}
			if err := b.SetCellValue(sheet, at, c.Value); err != nil {
				return err
			}
			if err := b.SetCellStyle(sheet, at, at, c.StyleID); err != nil {
				return err
			}
		}
		if height > 0 {
			if err := b.SetRowHeight(sheet, y+1, height); err != nil {
				return err
			}
		}
	}
	return nil
}

// tall is the height, in points, of text that is wrapped in a column. Not every
// program measures rows when it opens a file, and one that is too low hides text.
func tall(text string, width float64) float64 {
	const (
		perLine = 15
		average = 0.85 // letters to a unit of width, in the wider fonts
	)
	lines, used := 1, 0
	for _, word := range strings.Fields(text) {
		n := utf8.RuneCountInString(word)
		if used > 0 && float64(used+1+n) > average*width {
			lines, used = lines+1, 0
		}
		if used > 0 {
			used++
		}
		used += n
	}
	return float64(perLine * lines)
}

// printable lays a sheet across the paper, as wide as the paper, with the row of
// headers on every page.
func (b *book) printable(sheet string) error {
	landscape, wide, long, fit := "landscape", 1, 0, true
	if err := b.SetPageLayout(sheet, &excelize.PageLayoutOptions{Orientation: &landscape, FitToWidth: &wide, FitToHeight: &long}); err != nil {
		return err
	}
	if err := b.SetSheetProps(sheet, &excelize.SheetPropsOptions{FitToPage: &fit}); err != nil {
		return err
	}
	return b.SetDefinedName(&excelize.DefinedName{Name: "_xlnm.Print_Titles", RefersTo: "'" + sheet + "'!$1:$1", Scope: sheet})
}

func cell(style int, value any) excelize.Cell { return excelize.Cell{StyleID: style, Value: value} }

// exact turns the decimal in a cell into the number that a sheet stores. A sheet
// holds binary fractions of 15 digits: up to there the number that comes out is
// the decimal that went in, and beyond it the cell is refused.
func exact(value *any) error {
	c, ok := (*value).(excelize.Cell)
	if !ok {
		return nil
	}
	d, ok := c.Value.(decimal.Decimal)
	if h, rounded := c.Value.(hundredths); rounded {
		d, ok = h.decimal(), true
	}
	if !ok {
		return nil
	}
	if d.NumDigits() > maxDigits {
		return fmt.Errorf("%s has more than the %d digits that a sheet keeps: check volumes and -syrup-price, or split the file", d, maxDigits)
	}
	c.Value = d.InexactFloat64()
	*value = c
	return nil
}
