package main

import (
	"errors"
	"fmt"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/money"
)

// Steps of the bargain. Number formats of the sheets go with them.
var (
	priceStep = decimal.New(1, -4)
	cent      = decimal.New(1, -2)
)

// settings is what the command line says.
type settings struct {
	house      string // that buys the sap; empty if no folder names it
	in, out    string
	paid       string
	ask        span      // pay period; the zero span is all of the file
	pay        time.Time // day on which what is due is paid; zero if nobody asks
	metric     bool
	currency   string
	hydrometer density.Hydrometer
	doubt      density.Doubt
	minimum    units.Brix
	syrup      units.Brix
	share      decimal.Decimal
	prices     []price // of a pound of that syrup, by their days
	bySugar    bool    // they are of a pound of sugar, and the share is all
	rule       yield.Rule
	accepts    []lines
	asked      []said // each flag that the sheets show
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
	{"in", "", "CSV of readings; - is standard input. Without it bought.csv of the folder, or invented deliveries",
		"", nil,
		func(s *settings, text string) error { s.in = text; return nil }},
	{"out", "-", "what to write, by its ending: .xlsx the spreadsheet, .txt a statement for each seller, .csv the ledger; - is the spreadsheet on standard output. A file that is there is replaced only if this program wrote it, and a spreadsheet if nobody changed it since",
		"", nil,
		func(s *settings, text string) error {
			s.out = text
			if text != "-" && !slices.Contains([]string{".xlsx", ".txt", ".csv"}, s.ending()) {
				return errors.New("name it with .xlsx at the end for a spreadsheet, .txt for statements or .csv for the ledger")
			}
			return nil
		}},
	{"paid", "", "CSV of what was advanced, deducted, paid and carried over. Without it paid.csv of the folder, if it is there",
		"", nil,
		func(s *settings, text string) error { s.paid = text; return nil }},
	{"period", "", "pay period, as \"2026-03-01 to 2026-03-15\": what was earned and paid before is carried, what came later waits. Without it all days of the files",
		"", nil,
		func(s *settings, text string) (err error) { s.ask, err = readSpan(text); return err }},
	{"accept", "", "lines that were looked at again and are right, as 12,17,40-45",
		"", nil,
		func(s *settings, text string) (err error) { s.accepts, err = readAccept(text); return err }},
	{"sap-hydrometer", "38 F", "graduation temperature printed on the sap hydrometer",
		"33.8 to 104 F, 1 to 40 C", []string{"Hydrometer.GraduatedAt"},
		func(s *settings, text string) (err error) {
			s.hydrometer.GraduatedAt, err = units.ParseTemperature(text)
			return err
		}},
	{"division", "0.2 Brix", "smallest step that is read on it",
		"above 0, to 5 Brix", []string{"Doubt.Division"},
		func(s *settings, text string) (err error) {
			s.doubt.Division, err = units.ParseBrix(text)
			return err
		}},
	{"calibration", "0.1 Brix", "uncertainty of its scale, from a check in a known solution",
		"above 0, to 5 Brix", []string{"Doubt.Calibration"},
		func(s *settings, text string) (err error) {
			s.doubt.Calibration, err = units.ParseBrix(text)
			return err
		}},
	{"thermometer", "2 F deg", "how far the thermometer in the cup may be off, either way",
		"above 0, to 18 F deg or 10 C deg", []string{"Doubt.Thermometer"},
		func(s *settings, text string) (err error) {
			s.doubt.Thermometer, err = units.ParseTempDiff(text)
			return err
		}},
	{"minimum", "1.5 Brix", "strength below which sap is listed and not paid",
		"0.5 to 30 Brix", []string{"sap", "Offer.MinBrix"},
		func(s *settings, text string) (err error) {
			s.minimum, err = units.ParseBrix(text)
			return err
		}},
	{"syrup", "66.9 Brix", "strength of the syrup that the price is for",
		"60 to 70 Brix", []string{"Offer.Syrup"},
		func(s *settings, text string) (err error) {
			s.syrup, err = units.ParseBrix(text)
			return err
		}},
	{"syrup-price", "2.50/lb", "price of a pound of that syrup, in your currency. Where it changed, with the day: 2.50/lb, 2.60/lb from 2026-03-20; what was delivered before keeps its price",
		"0 or more; 2.50 USD/lb names the currency", []string{"Offer.SyrupPerPound"},
		(*settings).readPrices},
	{"share", "50 %", "part of the syrup's price that is paid for its sap",
		"0 to 100 %", []string{"Offer.Share"},
		func(s *settings, text string) error {
			number, ok := strings.CutSuffix(text, "%")
			if !ok {
				return fmt.Errorf("%q has no unit: write it as 50 %%", text)
			}
			percent, err := plainNumber(number)
			s.share = percent.Shift(-2)
			return err
		}},
	{"sugar-price", "", "price of a pound of the sugar in sap, in place of -syrup-price and -share, as 1.87/lb, with days as there",
		"0 or more", []string{"Offer.SyrupPerPound"},
		func(s *settings, text string) error {
			if text == "" {
				return nil
			}
			s.prices, s.bySugar = nil, true
			return s.readPrices(text)
		}},
	{"rule", "", "rule of thumb by which the syrup in sap is priced, in place of the balance of its sugar: 86/X, 87.1/X, 88.2/X, 87.1/X - 0.32 or 88.2/X - 0.32 gallons to one of 11 lb",
		"", []string{"Offer.Rule"},
		func(s *settings, text string) error {
			err := s.rule.UnmarshalText([]byte(text))
			if err == nil && s.rule != 0 && s.bySugar {
				err = errors.New("sugar has one price by its balance: leave the rule out, or -sugar-price")
			}
			return err
		}},
}

// said is what the command line says by a flag.
type said struct{ flag, what, text string }

// told is the text of a flag.
func (s *settings) told(flag string) string {
	return s.asked[slices.IndexFunc(s.asked, func(x said) bool { return x.flag == flag })].text
}

// ending is that of the file to write.
func (s *settings) ending() string { return strings.ToLower(filepath.Ext(s.out)) }

// declare declares the flags and returns what reads them.
func declare(f *cli.Flags) func() (settings, error) {
	texts := make([]string, len(options))
	var pay time.Time
	var metric bool
	for i, o := range options {
		switch o.name {
		case "in":
			f.Group("Files and period")
		case "sap-hydrometer":
			f.Date(&pay, payFlag, "day on which what is due is paid, not before the period ends: shows who is due what, and what paid.csv of the folder would keep of it. No spreadsheet is then written unless -out names one")
			f.Adds("what is paid on the day of -pay, in paid.csv,")
			f.Group("Instruments")
		case "minimum":
			f.Group("Bargain")
		}
		help := o.says
		if o.allowed != "" {
			help += " (" + o.allowed + ")"
		}
		f.String(&texts[i], o.name, o.def, help)
	}
	f.Page(&metric)
	return func() (settings, error) {
		switch {
		case f.Writes() && pay.IsZero():
			return settings{}, cli.For("write", errors.New("say by -pay on which day what is due is paid"))
		case !pay.IsZero() && f.Given("out") && texts[1] == "-":
			return settings{}, cli.For("out", errors.New("the page of -pay takes standard output: name a file"))
		case f.Given("sugar-price") && (f.Given("syrup-price") || f.Given("share")):
			return settings{}, cli.For("sugar-price", errors.New("it takes the place of -syrup-price and -share: leave these out"))
		case pay.IsZero() && f.JSON():
			return settings{}, cli.For("json", errors.New("it has the page of -pay: give that day too"))
		}
		if f.Dir() != "" && texts[0] == "" { // an invented bill belongs to nobody
			return settings{}, fmt.Errorf("%s is not there: list the deliveries in it, or give -in", f.House().Shown(folder.BoughtFile))
		}
		s := settings{pay: pay, metric: metric}
		if f.Dir() != "" {
			s.house = f.House().Settings.Name
		}
		for i, o := range options {
			if err := o.read(&s, strings.TrimSpace(texts[i])); err != nil {
				return settings{}, cli.For(o.name, err)
			}
			if o.name != "in" && o.name != "out" && o.name != "paid" {
				what, _, _ := strings.Cut(o.says, ". ")
				s.asked = append(s.asked, said{o.name, upperFirst(what), texts[i]})
			}
		}
		err := s.try()
		if err == nil {
			return s, nil
		}
		k := slices.IndexFunc(options, func(o option) bool {
			return slices.Contains(o.args, argument(err)) && !(s.bySugar && o.name == "syrup-price")
		})
		if k < 0 {
			return settings{}, err
		}
		return settings{}, cli.For(options[k].name, fmt.Errorf("%q is out of range: it must be %s", clip.Text(texts[k]), options[k].allowed))
	}
}

// try asks the library for one answer, so that a setting that it does not accept
// is told before the file is read.
func (s *settings) try() error {
	if _, err := s.hydrometer.Measure(2, units.Celsius(10), s.doubt); err != nil {
		return err
	}
	for _, p := range s.prices {
		if _, err := s.offer(p).PerUSGallon(s.minimum); err != nil {
			return err
		}
	}
	return nil
}

// argument tells which argument the library refused.
func argument(err error) string {
	var outside *units.RangeError
	if errors.As(err, &outside) {
		return outside.Arg
	}
	var money *money.DecimalError
	if errors.As(err, &money) {
		return money.Arg
	}
	return ""
}

func upperFirst(s string) string { return strings.ToUpper(s[:1]) + s[1:] }
