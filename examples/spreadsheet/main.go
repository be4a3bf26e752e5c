// Spreadsheet turns the deliveries of sap that a co-op has read into a
// spreadsheet: the strength corrected for the temperature of the cup, plus or
// minus how much, whether it pays, the syrup that it makes, and what is owed to
// the cent; or into a statement for each seller, or a ledger.
//
//	go -C examples/spreadsheet run . -out "$PWD/demo.xlsx"
//	go -C examples/spreadsheet run . -in "$PWD/readings.csv" -out "$PWD/payments.xlsx"
//	go -C examples/spreadsheet run . -dir testdata/coop -pay 2026-03-31
//
// # How it is built
//
// Settings come from flags (settings.go) and rows from a CSV file (readings.go);
// the library corrects and prices them (account.go); what looks wrong stops it
// until it was accepted (again.go); advances, deductions and payments come from a
// second file (paid.go) and are settled with them over a pay period (settle.go), and
// what is then paid is added to it (payout.go);
// what comes out is written as sheets (workbook.go, statements.go, sources.go) or as
// text (statement.go) into a file that is whole or not there (output.go). The same
// input gives the same bytes.
package main

import (
	"os"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
)

const program = "spreadsheet"

func main() { sheets().Exit() }

// sheets is the program with its flags.
func sheets() cli.Program {
	return cli.Program{
		Name: program,
		Does: "Writes a spreadsheet of what is owed for sap: strength corrected for the temperature of the cup, plus or minus how much, whether it pays, the syrup that it makes, and payments that add up to the cent. Without flags it reckons invented deliveries and writes to standard output, which must not be a terminal.",
		Calls: []string{
			`go -C examples/spreadsheet run . -out "$PWD/demo.xlsx"`,
			`go -C examples/spreadsheet run . -in "$PWD/readings.csv" -out "$PWD/payments.xlsx"`,
			`go -C examples/spreadsheet run . -dir testdata/coop -pay 2026-03-31`,
			`go -C examples/spreadsheet run . -dir "$PWD/sugarhouse" -out "$PWD/statements.txt"`,
			`go -C examples/spreadsheet run . -dir "$PWD/sugarhouse" -period "2026-03-16 to 2026-03-31" -out "$PWD/ledger.csv"`,
			`go -C examples/spreadsheet run . -dir "$PWD/sugarhouse" -period "2026-03-16 to 2026-03-31" -pay 2026-04-02 -write`,
			`go -C examples/spreadsheet run . -in - -minimum "1.8 Brix" -share "45 %" -out "$PWD/payments.xlsx" < readings.csv`,
		},
		Reads: `-C moves to the folder of the program: paths are then whole, as with $PWD, or counted from there.
Without -in, bought.csv of the folder of a sugarhouse, if -dir names one that has it; its settings syrup price, sap share, least sap and sap hydrometer are the bargain.
-in: CSV in UTF-8, commas between columns, a header with the unit in the name, plain numbers with a point below it. Lines that begin with # are remarks and not counted: put a name that begins with #, in the first column, into quotes. At most 1,000,000 deliveries of 20,000 producers, which are streamed. Columns in any order; others are passed over:
- date: as 2026-03-09.
- producer, or seller: to 80 letters.
- volume_us_gal, volume_imp_gal or volume_l: to a hundredth of a US gallon.
- reading_brix: what the hydrometer reads.
- cup_f or cup_c: temperature of the cup.
-paid: CSV of what moved beside the sap; add a row for each payment, so that it is not paid again, or let -pay and -write add those of a period to paid.csv of your folder. Columns:
- date, and producer or seller: as above. A name that brought no sap and is nearly that of one who did is asked back.
- kind: carried (from an older book; below 0 if too much was paid), deducted, advanced or paid.
- amount: whole cents.
- what: such as trucking or cheque 7; may be missing.
-out: an .xlsx has the sheets Deliveries, Sources, Producers, Statements, Paid, Look again, Notes; its cells are values, but for the column Live of the statements, formulas that must show the same. A .txt has a statement for each seller, a form feed between pages. A .csv has the ledger of the period by category and payee. Some shells spoil what > writes: -out does not.
Nothing is written until each line that looks wrong was mended or accepted with -accept: the same row twice; a strength or volume far from what its producer brings (3.5 spreads from the median, and outside half to one and a half of it for strengths, a tenth to three times for volumes); days far from the others; names that differ by a letter, by capitals or by a sign that is not seen. What was accepted stands on a sheet.`,
		Caution: "Buying and selling by measure is ruled by law: meters, scales and hydrometers may have to be approved and inspected. Agree on the minimum, and on what is done when a reading is too close to call, before the season. Sap that ran over lead solder or old terneplate is not bought at any strength. Local rules come first.",
		Needs:   []string{folder.BoughtFile, folder.PaidFile},
		Setup: func(flags *cli.Flags) func(*cli.Env) error {
			read := declare(flags)
			return func(e *cli.Env) error {
				s, err := read()
				if err == nil {
					err = s.refuseTerminal(os.Stdout)
				}
				if err != nil {
					return err
				}
				f, in, err := openFile(e, s.in)
				if err != nil {
					return err
				}
				defer in.Close()
				a := newAccount(s, f)
				if err := a.readPaid(e); err != nil {
					return err
				}
				if s.pay.IsZero() {
					return a.write(e)
				}
				if s.out == "-" {
					err = a.run()
				} else {
					err = a.write(e)
				}
				if err != nil {
					return err
				}
				return a.payout(e, flags)
			}
		},
	}
}
