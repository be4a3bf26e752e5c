package money

import (
	"github.com/shopspring/decimal"

	"example.org/sapreckoner/internal/base/limit"
)

// A Cost is what was paid for one thing, or what one's own hours and wood are
// counted at.
type Cost struct {
	Item   string
	Amount decimal.Decimal // 0 to 1e9
}

// CostPerUSGallon returns what a US gallon of syrup cost: the sum of the costs
// over the gallons, rounded to a multiple of step, halves up.
//
// Range: 1 to 100,000 costs from 0 to 1e9, gallons from 0.001 to 1e7, step from
// 1e-9 to 1e9. Prices are the caller's; none is known here. Check value: 100
// and 50 for 12 gallons are 12.50.
func CostPerUSGallon(costs []Cost, gallons, step decimal.Decimal) (decimal.Decimal, error) {
	return costPerGallon("money.CostPerUSGallon", "costs", "gallons", "step", costs, gallons, step)
}

// costPerGallon is [CostPerUSGallon] under the names of who asks.
func costPerGallon(fn, list, made, steps string, costs []Cost, gallons, step decimal.Decimal) (decimal.Decimal, error) {
	if err := limit.InAs(fn, list, "costs", float64(len(costs)), 1, limit.MaxEntries, "", "give at least one entry"); err != nil {
		return decimal.Zero, err
	}
	sum := decimal.Zero
	for i, c := range costs {
		if err := item(fn, list, i, "Amount", "amount", c.Amount, decimal.Zero, maxMoney, "what was paid"); err != nil {
			return decimal.Zero, err
		}
		sum = sum.Add(c.Amount)
	}
	if err := exactly(fn, made, "gallons", gallons, minGallons, maxGallons, "the syrup that was made"); err != nil {
		return decimal.Zero, err
	}
	if err := exactly(fn, steps, "step", step, minStep, maxMoney, "0.01 for cents"); err != nil {
		return decimal.Zero, err
	}
	return toStep(sum, gallons, step), nil
}

// minGallons is the least syrup that costs are spread over.
var minGallons = decimal.New(1, -3)
