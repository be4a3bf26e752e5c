// Column adds a column of true strength to a CSV of readings of a hydrometer in
// hot cups, and passes on every other column as it is:
//
//	go -C examples/consumers run ./column -scale "60 F" <readings.csv >true.csv
//
// The header tells the units: reads_brix, and cup_f or cup_c. The scale has no
// default: stems of 60 F and of 68 F differ by a third of a Brix at syrup.
package main

import (
	"bytes"
	"encoding/csv"
	"errors"
	"flag"
	"fmt"
	"io"
	"math"
	"os"
	"slices"
	"strconv"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

func main() {
	var glass density.Hydrometer
	flag.Var(units.AsFlag(&glass.GraduatedAt, ""), "scale", "`temperature` printed on the hydrometer, such as 60 F; needed")
	flag.Parse()
	if flag.NArg() > 0 {
		fmt.Fprintf(os.Stderr, "column: %q: the table comes from standard input: column -scale \"60 F\" <%s\n", flag.Arg(0), flag.Arg(0))
		os.Exit(2)
	}
	if err := run(glass, os.Stdin, os.Stdout); err != nil {
		fmt.Fprintln(os.Stderr, "column:", units.Reason(err, units.US))
		os.Exit(2)
	}
}

// run writes the whole table or nothing.
func run(glass density.Hydrometer, in io.Reader, out io.Writer) error {
	var (
		reads units.Brix
		cup   units.Temperature
		page  bytes.Buffer
	)
	rows, err := records.New("readings", in, records.Brix("reads", &reads).Blank(), records.Temperature("cup", &cup).Blank())
	if err != nil {
		return err
	}
	w := csv.NewWriter(&page)
	w.Comma = rows.Comma()
	added := "true_brix"
	for err == nil {
		if err := w.Write(append(slices.Clone(rows.Cells()), added)); err != nil {
			return err
		}
		if err = rows.Next(); err == nil {
			if added, err = strength(glass, reads, cup); err != nil {
				err = rows.Fail(cellOf(err), err)
			}
		}
	}
	if !errors.Is(err, io.EOF) {
		return err
	}
	if w.Flush(); w.Error() != nil {
		return w.Error()
	}
	_, err = page.WriteTo(out)
	return err
}

// strength gives the cell: empty where a reading is, and no more digits than a
// hydrometer has.
func strength(glass density.Hydrometer, reads units.Brix, cup units.Temperature) (string, error) {
	if math.IsNaN(float64(reads)) || math.IsNaN(cup.Celsius()) {
		return "", nil
	}
	b, err := glass.Brix(reads, cup)
	return strconv.FormatFloat(float64(b), 'f', 1, 64), err
}

// cellOf names the column that an error is about, by the argument that the
// library names; none where it is the hydrometer.
func cellOf(err error) string {
	var e *units.RangeError
	if !errors.As(err, &e) {
		return ""
	}
	return map[string]string{"reading": "reads", "at": "cup"}[e.Arg]
}
