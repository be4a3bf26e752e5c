package money_test

import (
	"errors"
	"fmt"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
)

// Three invented neighbors pool their sap. What counts is the sugar they
// brought; portions of 100 with two decimals are percent that add up.
func ExampleDivide() {
	brought := []struct {
		name string
		sap  units.Volume
		brix units.Brix
	}{
		{"Hill house", units.USGallons(120), 2.4},
		{"Creek lot", units.USGallons(200), 1.8},
		{"Old orchard", units.USGallons(80), 3.0},
	}
	var among []money.Contribution
	for _, b := range brought {
		rho, err := density.Solution(b.brix, units.Celsius(20))
		if err != nil {
			fmt.Println(err)
			return
		}
		c, err := money.BySugar(b.name, b.brix.Sugar(rho.Mass(b.sap)))
		if err != nil {
			fmt.Println(err)
			return
		}
		among = append(among, c)
	}
	percent, err := money.Divide(decimal.NewFromInt(100), 2, among)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, p := range percent {
		fmt.Println(p.Name, p.Amount.StringFixed(2))
	}
	// Output:
	// Hill house 32.44
	// Creek lot 40.46
	// Old orchard 27.10
}

// Half of the syrup goes by taps and half by hours: two divisions, each exact.
func ExampleDivide_twoMeasures() {
	taps := []money.Contribution{{Name: "Ana", Weight: decimal.NewFromInt(40)}, {Name: "Bo", Weight: decimal.NewFromInt(20)}}
	hours := []money.Contribution{{Name: "Ana", Weight: decimal.NewFromInt(5)}, {Name: "Bo", Weight: decimal.NewFromInt(15)}}
	half := decimal.RequireFromString("6.20") // US gal, of 12.40
	byTaps, err1 := money.Divide(half, 2, taps)
	byHours, err2 := money.Divide(half, 2, hours)
	if err := errors.Join(err1, err2); err != nil {
		fmt.Println(err)
		return
	}
	for i := range byTaps {
		fmt.Println(byTaps[i].Name, byTaps[i].Amount.Add(byHours[i].Amount))
	}
	// Output:
	// Ana 5.68
	// Bo 6.72
}

func ExampleBySugar() {
	c, err := money.BySugar("Hill house", units.Pounds(24.3))
	fmt.Println(c.Name, c.Weight, "kg", err)
	// Output: Hill house 11.0223 kg <nil>
}

func ExampleByTaps() {
	c, err := money.ByTaps("Hill house", 60)
	fmt.Println(c.Weight, err)
	// Output: 60 <nil>
}

func ExampleByHours() {
	c, err := money.ByHours("Hill house", 7*time.Hour+45*time.Minute)
	fmt.Println(c.Weight, err)
	// Output: 7.75 <nil>
}

// Seven quarts and five pints for two people, two parts to one: of 9.5 quarts
// in all they are owed 6.33 and 3.17.
func ExampleDivideJars() {
	jars := []money.Jars{{Label: units.USQuart, Count: 7}, {Label: units.USPint, Count: 5}}
	parts := []money.Contribution{
		{Name: "Ana", Weight: decimal.NewFromInt(2)},
		{Name: "Bo", Weight: decimal.NewFromInt(1)},
	}
	baskets, err := money.DivideJars(jars, parts)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, b := range baskets {
		fmt.Println(b.Name, b.Counts[0], "quarts", b.Counts[1], "pints")
	}
	// Output:
	// Ana 5 quarts 3 pints
	// Bo 2 quarts 2 pints
}

func ExampleDecimalError() {
	_, err := money.Divide(decimal.NewFromInt(-3), 0, []money.Contribution{{Weight: decimal.NewFromInt(1)}})
	var e *money.DecimalError
	if errors.As(err, &e) {
		fmt.Println(e.Arg, e.Value, errors.Is(err, units.ErrRange))
	}
	// Output: whole -3 true
}

func ExampleDecimalError_Error() {
	_, err := money.Divide(decimal.NewFromInt(1), 0, []money.Contribution{{Weight: decimal.Zero}})
	fmt.Println(err)
	// Output: money.Divide: among 0: nobody brought anything: give at least one weight above 0
}

func ExampleDecimalError_Unwrap() {
	err := &money.DecimalError{Func: "money.Divide", Arg: "whole", Reason: "too many digits"}
	fmt.Println(err.Unwrap())
	// Output: out of range
}

// A decimal out of range is told without names of Go, and by a name to branch on.
func ExampleDecimalError_Text() {
	_, err := money.Divide(decimal.NewFromInt(10), 2, []money.Contribution{{Name: "a", Weight: decimal.NewFromInt(-1)}})
	var e *money.DecimalError
	if errors.As(err, &e) {
		fmt.Println(e.Arg)
		fmt.Println(e.Text(units.US))
		out, _ := e.MarshalJSON()
		fmt.Println(string(out))
		fmt.Println(e.UnmarshalJSON(out))
	}
	// Output:
	// among[0].Weight
	// entry 1: weight -1: it is outside 0 to 1000000000000000000000000000000: what one brings is not negative
	// {"arg":"among[0].Weight","value":"-1","reason":"it is outside 0 to 1000000000000000000000000000000: what one brings is not negative","text":"entry 1: weight -1: it is outside 0 to 1000000000000000000000000000000: what one brings is not negative","func":"money.Divide","what":"entry 1: weight"}
	// <nil>
}
