package main

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/units"
)

// mostLoads are the deliveries that the statements of a workbook list: more of them
// make a sheet that is slow to open.
const mostLoads = 5000

// A load is one delivery on a statement of the workbook.
type load struct {
	row    int // of the sheet of deliveries
	what   string
	amount decimal.Decimal
}

func (a *account) load(r *row) load {
	what := r.day + ": " + r.gallons.fixed() + " US gal of " + r.strength.fixed() + " Brix, "
	if r.Bought {
		what += "at " + r.PerUSGallon.StringFixed(4)
	} else {
		what += "not paid"
	}
	return load{a.counted + 1, what, r.Amount} // below the header
}

// payFormula gives the formula of what a delivery of the sheet pays, by its row: zero
// below the minimum, and else volume times price. The price is reckoned anew from the
// strength X,
//
//	share x price of a pound x pounds of syrup in a gallon of sap
//
// where the pounds by the balance are X rho(X) of the sap over that of the syrup, times
// the pounds in a gallon of syrup by a scale in air. At 20 C rho is a polynomial, which
// a sheet can hold. By a rule they are the pounds of a gallon over a/X - b, which is
// X/(a - b X). Each figure is rounded as the library rounds it.
func (s *settings) payFormula() (func(row int) string, error) {
	at := units.Celsius(20)
	water, err := density.Solution(0, at)
	if err != nil {
		return nil, err
	}
	syrup, err := density.Solution(s.syrup, at)
	if err != nil {
		return nil, err
	}
	number := func(x float64) string { return strconv.FormatFloat(x, 'g', 13, 64) } // the same on every machine
	sucrose := coef.Sucrose()[0]
	rho := "" // by Horner's rule, from within
	for i := len(sucrose) - 1; i >= 0; i-- {
		rho = "(" + number(sucrose[i]) + rho + ")*X"
		rho = "+" + rho
	}
	rho = number(float64(water)) + rho
	pounds := density.InAir(syrup).PoundsPerUSGallon() / (float64(syrup) * s.syrup.Fraction())
	const little = "0.000000000001" // a half that binary fractions hold a hair too low goes up
	worth := ""
	for _, p := range s.prices { // the last that holds, from without
		o := s.offer(p)
		if k := o.Share.Mul(o.SyrupPerPound).String(); worth == "" {
			worth = k
		} else {
			worth = fmt.Sprintf("IF(D!A#<DATE(%d,%d,%d),%s,%s)", p.from.Year(), p.from.Month(), p.from.Day(), worth, k)
		}
	}
	in := fmt.Sprintf("ROUND(%s*X*(%s),9)", number(pounds), rho)
	if s.rule != 0 {
		a, b := s.rule.Constants()
		in = fmt.Sprintf("%s*X/(%s-%s*X)", poundsByRule, number(a/100), number(b))
	}
	price := fmt.Sprintf("ROUND(%s*%s+%s,%d)", worth, in, little, -priceStep.Exponent())
	formula := fmt.Sprintf("IF(D!F#<%s,0,ROUND(D!C#*%s+0.000000001,2))", number(float64(s.minimum)), strings.ReplaceAll(price, "X", "(D!F#/100)"))
	return func(row int) string {
		return strings.NewReplacer("D!", sheetDeliveries+"!$", "#", "$"+strconv.Itoa(row)).Replace(formula)
	}, nil
}
