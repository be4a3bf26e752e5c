// Spreadsheet turns the deliveries of sap that a co-op has read into a
// spreadsheet: the strength corrected for the temperature of the cup, plus or
// minus how much, whether it pays, the syrup that it makes, and what is owed to
// the cent.
//
//	go -C examples/spreadsheet run . > demo.xlsx
//	go -C examples/spreadsheet run . -in "$PWD/readings.csv" -out "$PWD/payments.xlsx"
//
// # A program of your own
//
// This folder is a module of its own and stands where your program would stand.
// It imports the public packages of the library and nothing that is internal
// to it. To do the same, with the library in a folder beside your program:
//
//	go mod init example.org/my-program
//	go mod edit -require=example.org/sapreckoner@v0.0.0
//	go mod edit -replace=example.org/sapreckoner=../sapreckoner
//	go mod tidy
//
// The replace says where the library lies on this machine. To carry the library
// along, so that the program builds on any machine, without a network and for as
// long as there is a Go compiler, vendor it:
//
//	go mod vendor
//	go build -mod=vendor .
//
// Commit the folder vendor: it holds the packages that are used and no more. After
// a change of the library run go mod vendor again.
//
// # How it is built
//
// Settings come from flags (settings.go) and rows from a CSV file (readings.go);
// the library corrects and prices them (account.go); what looks wrong stops it
// until it was accepted (again.go); what comes out is written as sheets
// (workbook.go, sources.go) into a file that is whole or not there
// (output.go). The same input gives the same bytes.
package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

const program = "spreadsheet"

// Exit statuses.
const (
	failed   = 1 // the machine failed
	badInput = 2
)

func main() {
	err := run(os.Args[1:], os.Stdin, os.Stdout)
	if err == nil {
		return
	}
	text := []string{plain(err)}
	var look *lookError
	if errors.As(err, &look) {
		text = strings.Split(text[0], "\n") // the one error of many lines
	}
	for _, line := range text {
		fmt.Fprintf(os.Stderr, "%s: %s\n", program, strings.Join(strings.Fields(line), " "))
	}
	var machine *machineError
	if errors.As(err, &machine) {
		os.Exit(failed)
	}
	os.Exit(badInput)
}

func run(args []string, in io.Reader, out *os.File) error {
	s, err := readSettings(args)
	if errors.Is(err, flag.ErrHelp) {
		return asMachine(writeHelp(out))
	}
	if err != nil {
		return err
	}
	if err := s.refuseOutput(out); err != nil {
		return err
	}
	f, file, err := openFile(s.in, in)
	if err != nil {
		return err
	}
	defer file.Close()
	b, err := newBook(newAccount(s, f))
	if err != nil {
		return err
	}
	defer b.Close()
	return s.write(out, func(w io.Writer) error { return asMachine(b.Write(w)) })
}

// A machineError is not the fault of who typed.
type machineError struct{ err error }

func (e *machineError) Error() string { return e.err.Error() }
func (e *machineError) Unwrap() error { return e.err }

func asMachine(err error) error {
	if err == nil {
		return nil
	}
	return &machineError{err}
}

// plain words an error of the library for a person at the keyboard: without the
// name of the Go function.
func plain(err error) string {
	text := err.Error()
	var (
		outside *units.RangeError
		unread  *units.ParseError
		money   *yield.DecimalError
	)
	fn := ""
	switch {
	case errors.As(err, &outside):
		fn = outside.Func
	case errors.As(err, &unread):
		fn = unread.Func
	case errors.As(err, &money):
		fn = money.Func
	}
	if fn == "" {
		return text
	}
	return strings.Replace(text, fn+": ", "", 1)
}
