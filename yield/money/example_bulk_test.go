package money_test

import (
	"fmt"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/yield/money"
)

// (85 + 240 + 61.50)/15.5 = 24.935.
func ExampleCostPerUSGallon() {
	cost, err := money.CostPerUSGallon([]money.Cost{
		{Item: "wood", Amount: decimal.NewFromInt(85)},
		{Item: "hours", Amount: decimal.NewFromInt(240)},
		{Item: "jars", Amount: decimal.RequireFromString("61.50")},
	}, decimal.RequireFromString("15.5"), decimal.RequireFromString("0.01"))
	fmt.Println(cost, err)
	// Output: 24.94 <nil>
}
