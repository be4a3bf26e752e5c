package main

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"math/big"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
	"github.com/xuri/excelize/v2"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/money"
)

// opened opens a spreadsheet.
func opened(t *testing.T, data []byte) *excelize.File {
	t.Helper()
	f, err := excelize.OpenReader(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = f.Close() })
	return f
}

// table returns the cells of a sheet, as stored or as shown.
func table(t *testing.T, f *excelize.File, sheet string, stored bool) [][]string {
	t.Helper()
	rows, err := f.GetRows(sheet, excelize.Options{RawCellValue: stored})
	if err != nil {
		t.Fatal(err)
	}
	return rows
}

// demoRows are the invented deliveries, read without the program.
func demoRows(t *testing.T) [][]string {
	t.Helper()
	rows, err := csv.NewReader(bytes.NewReader(demo)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return rows[1:]
}

func hundredth(x float64) string { return strconv.FormatFloat(x, 'f', 2, 64) }

func number(t *testing.T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// wantDeliveries is what the sheet of the demo must show, with the strengths
// straight from the library and the money in fractions of whole numbers. The
// verdicts were found by hand from strength, uncertainty and the minimum of 1.5
// Brix.
func wantDeliveries(t *testing.T) [][]string {
	t.Helper()
	verdicts := []string{pays, pays, pays, pays, fails, justPays, pays, justPays, pays, justFails}
	want := [][]string{{"Date", "Producer", "Volume, US gal", "Read, Brix", "Cup, F", "Corrected, Brix", "Plus or minus, Brix", "Verdict",
		"Syrup of 66.9 Brix, US gal", "Price per US gal", "Payment"}}
	h := density.Hydrometer{GraduatedAt: units.Fahrenheit(38)}
	doubt := density.Doubt{Division: 0.2, Calibration: 0.1, Thermometer: 2 * units.FahrenheitDegree}
	offer := money.Offer{SyrupPerPound: decimal.New(25, -1), Share: decimal.New(5, -1), Syrup: 66.9, MinBrix: 1.5,
		PriceStep: decimal.New(1, -4), Cent: decimal.New(1, -2)}
	var volume, paidVolume, syrup, paidSyrup, amount big.Rat
	rat := func(text string) *big.Rat {
		r, ok := new(big.Rat).SetString(text)
		if !ok {
			t.Fatalf("%q is no number", text)
		}
		return r
	}
	for i, r := range demoRows(t) {
		m, err := h.Measure(units.Brix(number(t, r[3])), units.Fahrenheit(number(t, r[4])), doubt)
		if err != nil {
			t.Fatal(err)
		}
		strength := hundredth(float64(m.Brix))
		ratio, err := yield.Ratio(units.Brix(number(t, strength)), 66.9)
		if err != nil {
			t.Fatal(err)
		}
		makes := hundredth(number(t, r[2]) / ratio)
		price, pay := "", "0.00"
		volume.Add(&volume, rat(r[2]))
		syrup.Add(&syrup, rat(makes))
		if verdicts[i] == pays || verdicts[i] == justPays {
			p, err := offer.PerUSGallon(units.Brix(number(t, strength)))
			if err != nil {
				t.Fatal(err)
			}
			price = p.StringFixed(4)
			pay = new(big.Rat).Mul(rat(r[2]), rat(price)).FloatString(2) // halves away from zero
			paidVolume.Add(&paidVolume, rat(r[2]))
			paidSyrup.Add(&paidSyrup, rat(makes))
			amount.Add(&amount, rat(pay))
		}
		want = append(want, []string{r[0], r[1], hundredth(number(t, r[2])), hundredth(number(t, r[3])),
			strconv.FormatFloat(number(t, r[4]), 'f', 1, 64), strength, hundredth(float64(m.Uncertainty)), verdicts[i], makes, price, pay})
	}
	return append(want,
		[]string{"All delivered", "", volume.FloatString(2), "", "", "", "", "", syrup.FloatString(2)},
		[]string{"Paid for", "", paidVolume.FloatString(2), "", "", "", "", "", paidSyrup.FloatString(2), "", amount.FloatString(2)},
		[]string{"These deliveries and producers are invented."})
}

// same compares the cells of two tables; empty cells at the end of a row do not
// count.
func same(t *testing.T, sheet string, got, want [][]string) {
	t.Helper()
	if len(got) != len(want) {
		t.Fatalf("%s: %d rows, not %d", sheet, len(got), len(want))
	}
	at := func(row []string, i int) string {
		if i < len(row) {
			return row[i]
		}
		return ""
	}
	for y := range want {
		for x := range max(len(got[y]), len(want[y])) {
			if g, w := at(got[y], x), at(want[y], x); g != w {
				t.Errorf("%s: row %d column %d: %q, not %q", sheet, y+1, x+1, g, w)
			}
		}
	}
}

func TestDeliveries(t *testing.T) {
	f := opened(t, written(t, ""))
	if got := f.GetSheetList(); !slices.Equal(got, []string{"Deliveries", "Sources", "Producers", "Statements", "Paid", "Look again", "Notes"}) {
		t.Fatalf("sheets %v", got)
	}
	want := wantDeliveries(t)
	same(t, "Deliveries", table(t, f, "Deliveries", false), want)

	// As stored, a number is the one that is shown and no hair beside it; a date is
	// the number of its day, 46090 for 9 March 2026.
	stored := table(t, f, "Deliveries", true)
	if stored[1][0] != "46090" {
		t.Errorf("9 March 2026 is stored as %s", stored[1][0])
	}
	for y := 1; y < len(stored)-1; y++ {
		for x := 2; x < len(stored[y]); x++ {
			if got, w := stored[y][x], want[y][x]; got != w && !decimal.RequireFromString(got).Equal(decimal.RequireFromString(w)) {
				t.Errorf("row %d column %d: stored %s, shown %s", y+1, x+1, got, w)
			}
		}
	}
}

// By hand: sap of 2.20 Brix, read at 38 F where the scale is right, weighs 8.401 lb
// a gallon and holds 0.2761 lb of syrup by a scale in air; at half of 2.50 that is
// 0.3451, and 61.5 gal at 0.3451 are 21.22365. The total is the sum of the cells.
func TestPaymentsByHand(t *testing.T) {
	rows := table(t, opened(t, written(t, "")), "Deliveries", true)
	sum := decimal.Zero
	for _, r := range rows[1 : len(rows)-3] {
		sum = sum.Add(decimal.RequireFromString(r[10]))
	}
	if rows[1][10] != "21.22" || rows[1][9] != "0.3451" {
		t.Errorf("the first payment is %s at %s", rows[1][10], rows[1][9])
	}
	if total := rows[len(rows)-2][10]; !sum.Equal(decimal.RequireFromString(total)) {
		t.Errorf("payments add up to %s, the total is %s", sum, total)
	}
}

func TestProducers(t *testing.T) {
	f := opened(t, written(t, ""))
	owed := map[string]decimal.Decimal{}
	gallons := map[string]decimal.Decimal{}
	rows := table(t, f, "Deliveries", false)
	for _, r := range rows[1 : len(rows)-3] {
		owed[r[1]] = owed[r[1]].Add(decimal.RequireFromString(r[10]))
		if r[9] != "" {
			gallons[r[1]] = gallons[r[1]].Add(decimal.RequireFromString(r[2]))
		}
	}
	want := [][]string{{"Producer", "Paid for, US gal", "Payment"}}
	for _, name := range []string{"North lane", "Creek lot", "Hill house", "Schoolhouse buckets"} {
		want = append(want, []string{name, gallons[name].StringFixed(2), owed[name].StringFixed(2)})
	}
	paid := rows[len(rows)-2]
	want = append(want, []string{"All", paid[2], paid[10]})
	same(t, "Producers", table(t, f, "Producers", false), want)
}

func TestSourcesAndNotes(t *testing.T) {
	f := opened(t, written(t, "", "-minimum", "1.8 Brix"))
	sources := table(t, f, "Sources", false)
	for y, r := range sources {
		if len(r) != 4 || slices.Contains(r, "") {
			t.Errorf("Sources: row %d has an empty cell: %q", y+1, r)
		}
	}
	for y, want := range []string{"Function", "density.Hydrometer.Brix", "density.Hydrometer.Measure", "yield.Ratio", "money.Offer.Statement",
		"money.Offer.Statement", "money.Settle", "units.USGallon, units.ParseTemperature", "example.org/sapreckoner"} {
		if sources[y][1] != want {
			t.Errorf("Sources: row %d tells of %s, not %s", y+1, sources[y][1], want)
		}
	}
	if got := sources[8][2]; got != "taken from a folder" {
		t.Errorf("the library is %q", got)
	}
	notes := table(t, f, "Notes", false)
	settings := map[string]string{}
	for _, r := range notes {
		if len(r) == 2 {
			settings[r[0]] = r[1]
		}
	}
	for name, want := range map[string]string{
		"Strength below which sap is listed and not paid":  "1.8 Brix",
		"Price of a pound of that syrup, in your currency": "2.50/lb",
		"Latest delivery": "2026-03-15",
	} {
		if settings[name] != want {
			t.Errorf("Notes: %s: %q, not %q", name, settings[name], want)
		}
	}
	text := fmt.Sprint(notes)
	for _, want := range []string{"too close to call", "weights and measures", "lead solder", "values and not formulas"} {
		if !strings.Contains(strings.ToLower(text), want) {
			t.Errorf("Notes do not speak of %s", want)
		}
	}
}
