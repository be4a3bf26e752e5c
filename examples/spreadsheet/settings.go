package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// Steps of the bargain. Number formats of the sheets go with them.
var (
	priceStep = decimal.New(1, -4)
	cent      = decimal.New(1, -2)
)

// settings is what the command line says.
type settings struct {
	in, out    string
	hydrometer density.Hydrometer
	doubt      density.Doubt
	minimum    units.Brix
	syrup      units.Brix
	offer      yield.Offer
	accepts    []lines
	asked      [][2]string // each flag that the sheets show, in words
}

// An option is one flag. Whether its value is allowed the library decides: args
// names the arguments of the library that it goes into.
type option struct {
	name, def, says string
	allowed         string
	args            []string
	read            func(s *settings, text string) error
}

// options lists the flags in the order of the help.
var options = []option{
	{"in", "", "CSV of readings; - is standard input. Without it, invented deliveries",
		"", nil,
		func(s *settings, text string) error { s.in = text; return nil }},
	{"out", "-", "spreadsheet to write, a name that ends in .xlsx; - is standard output",
		"", nil,
		func(s *settings, text string) error {
			s.out = text
			if text != "-" && !strings.HasSuffix(strings.ToLower(text), ".xlsx") {
				return errors.New("name it with .xlsx at the end, so that a spreadsheet program opens it")
			}
			return nil
		}},
	{"accept", "", "lines that were looked at again and are right, as 12,17,40-45",
		"", nil,
		func(s *settings, text string) (err error) { s.accepts, err = readAccept(text); return err }},
	{"sap-hydrometer", "38 F", "graduation temperature printed on the sap hydrometer",
		"33.8 to 104 F, 1 to 40 C", []string{"hydrometer graduation"},
		func(s *settings, text string) (err error) {
			s.hydrometer.GraduatedAt, err = units.ParseTemperature(text)
			return err
		}},
	{"division", "0.2 Brix", "smallest step that is read on it",
		"above 0, to 5 Brix", []string{"division doubt"},
		func(s *settings, text string) (err error) {
			s.doubt.Division, err = units.ParseBrix(text)
			return err
		}},
	{"calibration", "0.1 Brix", "uncertainty of its scale, from a check in a known solution",
		"above 0, to 5 Brix", []string{"calibration doubt"},
		func(s *settings, text string) (err error) {
			s.doubt.Calibration, err = units.ParseBrix(text)
			return err
		}},
	{"thermometer", "2 F deg", "how far the thermometer in the cup may be off, either way",
		"above 0, to 18 F deg or 10 C deg", []string{"thermometer doubt"},
		func(s *settings, text string) (err error) {
			s.doubt.Thermometer, err = units.ParseTempDiff(text)
			return err
		}},
	{"minimum", "1.5 Brix", "strength below which sap is listed and not paid",
		"0.5 to 30 Brix", []string{"sap", "Offer.MinBrix"},
		func(s *settings, text string) (err error) {
			s.minimum, err = units.ParseBrix(text)
			s.offer.MinBrix = s.minimum
			return err
		}},
	{"syrup", "66.9 Brix", "strength of the syrup that the price is for",
		"60 to 70 Brix", []string{"Offer.Syrup"},
		func(s *settings, text string) (err error) {
			s.syrup, err = units.ParseBrix(text)
			s.offer.Syrup = s.syrup
			return err
		}},
	{"syrup-price", "2.50/lb", "price of a pound of that syrup, in your currency",
		"0 or more", []string{"Offer.SyrupPerPound"},
		func(s *settings, text string) (err error) {
			number, ok := strings.CutSuffix(text, "/lb")
			if !ok {
				return fmt.Errorf("%q has no unit: write the price of a pound as 2.50/lb", text)
			}
			s.offer.SyrupPerPound, err = plainNumber(number)
			return err
		}},
	{"share", "50 %", "part of the syrup's price that is paid for its sap",
		"0 to 100 %", []string{"Offer.Share"},
		func(s *settings, text string) error {
			number, ok := strings.CutSuffix(text, "%")
			if !ok {
				return fmt.Errorf("%q has no unit: write it as 50 %%", text)
			}
			percent, err := plainNumber(number)
			s.offer.Share = percent.Shift(-2)
			return err
		}},
}

// readSettings reads the command line. It returns flag.ErrHelp when help is
// asked for.
func readSettings(args []string) (settings, error) {
	set := flag.NewFlagSet(program, flag.ContinueOnError)
	set.SetOutput(io.Discard)
	texts := make([]string, len(options))
	for i, o := range options {
		set.StringVar(&texts[i], o.name, o.def, o.says)
	}
	if err := set.Parse(args); errors.Is(err, flag.ErrHelp) {
		return settings{}, err
	} else if err != nil {
		return settings{}, fmt.Errorf("%w: -h lists the flags", err)
	}
	if set.NArg() > 0 {
		return settings{}, fmt.Errorf("%q is no flag: put a value with spaces in quotes; -h lists the flags", set.Arg(0))
	}
	s := settings{offer: yield.Offer{PriceStep: priceStep, Cent: cent}}
	for i, o := range options {
		if err := o.read(&s, strings.TrimSpace(texts[i])); err != nil {
			return settings{}, flagError(o.name, err)
		}
		if o.name != "in" && o.name != "out" {
			s.asked = append(s.asked, [2]string{upperFirst(o.says), texts[i]})
		}
	}
	if err := s.try(); err != nil {
		k := slices.IndexFunc(options, func(o option) bool { return slices.Contains(o.args, argument(err)) })
		if k < 0 {
			return settings{}, err
		}
		return settings{}, flagError(options[k].name, fmt.Errorf("%q is out of range: it must be %s", clip(texts[k]), options[k].allowed))
	}
	return s, nil
}

// try asks the library for one answer, so that a setting that it does not accept
// is told before the file is read.
func (s *settings) try() error {
	if _, err := s.hydrometer.Measure(2, units.Celsius(10), s.doubt); err != nil {
		return err
	}
	_, err := s.offer.PerUSGallon(s.minimum)
	return err
}

// argument tells which argument the library refused.
func argument(err error) string {
	var outside *units.RangeError
	if errors.As(err, &outside) {
		return outside.Arg
	}
	var money *yield.DecimalError
	if errors.As(err, &money) {
		return money.Arg
	}
	return ""
}

func flagError(name string, err error) error { return fmt.Errorf("-%s: %w", name, err) }

func upperFirst(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// width is the longest line of the help: it fits a terminal.
const width = 78

// writeHelp prints what -h prints.
func writeHelp(w io.Writer) error {
	var b strings.Builder
	heading := func(s string) { fmt.Fprintf(&b, "\n%s\n%s\n", s, strings.Repeat("-", len(s))) }
	text := func(lead, s string) {
		for _, line := range wrap(s, width-len(lead)) {
			fmt.Fprintf(&b, "%s%s\n", lead, line)
		}
	}
	fmt.Fprintf(&b, "%s\n%s\n", program, strings.Repeat("=", len(program)))
	text("", "Writes a spreadsheet of what is owed for sap: strength corrected for the temperature of the cup, plus or minus how much, whether it pays, the syrup that it makes, and payments that add up to the cent. Without flags it reckons invented deliveries and writes to standard output, which must not be a terminal.")
	heading("Calls")
	b.WriteString(`  go -C examples/spreadsheet run . > demo.xlsx
  go -C examples/spreadsheet run . -in "$PWD/readings.csv" \
      -out "$PWD/payments.xlsx"
  go -C examples/spreadsheet run . -in - -minimum "1.8 Brix" \
      -share "45 %" < readings.csv > payments.xlsx
`)
	text("", "-C moves to the folder of the program: paths are then whole, as with $PWD, or counted from there. A file that exists is replaced when the new one is whole.")
	heading("Flags")
	for _, o := range options {
		name := "-" + o.name
		switch {
		case strings.Contains(o.def, " "):
			name += ` "` + o.def + `"`
		case o.def != "":
			name += " " + o.def
		}
		says := o.says
		if o.allowed != "" {
			says += " (" + o.allowed + ")"
		}
		fmt.Fprintf(&b, "  %s\n", name)
		text("      ", says)
	}
	heading("The file of readings")
	text("", "CSV in UTF-8, commas between columns, a header with the unit in the name, plain numbers with a point below it. Columns in any order; others are passed over:")
	b.WriteString(`  date                                        as 2026-03-09
  producer                                    to 80 letters
  volume_us_gal, volume_imp_gal or volume_l   to a hundredth of a US gallon
  reading_brix                                what the hydrometer reads
  cup_f or cup_c                              temperature of the cup
`)
	text("", "At most 1,000,000 deliveries of 20,000 producers. Rows are streamed.")
	heading("Look again")
	text("", "Nothing is written until each line that looks wrong was mended or accepted with -accept: the same row twice; a strength or volume far from what its producer brings (3.5 spreads from the median, and outside half to one and a half of it for strengths, a tenth to three times for volumes); days far from the others; names that differ by a letter, by capitals or by a sign that is not seen. What was accepted stands on a sheet.")
	heading("Sheets")
	text("", "Deliveries, Sources, Producers, Look again, Notes. Cells are values and not formulas.")
	heading("Take care")
	text("", "Buying and selling by measure is ruled by law: meters, scales and hydrometers may have to be approved and inspected. Agree on the minimum, and on what is done when a reading is too close to call, before the season. Sap that ran over lead solder or old terneplate is not bought at any strength. Local rules come first.")
	_, err := io.WriteString(w, b.String())
	return err
}

// wrap breaks s into lines of at most n bytes at spaces.
func wrap(s string, n int) (lines []string) {
	line := ""
	for _, word := range strings.Fields(s) {
		if line != "" && len(line)+1+len(word) > n {
			lines, line = append(lines, line), ""
		}
		line = strings.TrimLeft(line+" "+word, " ")
	}
	return append(lines, line)
}
