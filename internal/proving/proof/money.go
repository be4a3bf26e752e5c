package proof

import (
	"fmt"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/money"
)

// Money returns the claims of package money.
func Money() []check.Claim {
	return []check.Claim{
		{Table: "sap-purchase", Column: "usd", Func: "money.Offer.PerUSGallon", Exact: true, Got: sapPrice},
		{Table: "sap-cost-published", Column: "usd", Func: "money.CostPerUSGallon", Exact: true, Got: func(row check.Row) (float64, error) {
			taps := make([]money.Cost, int(row.Float("taps")))
			for i := range taps {
				taps[i] = money.Cost{Item: "a tap", Amount: decimal.NewFromFloat(row.Float("usd_per_tap"))}
			}
			cost, err := money.CostPerUSGallon(taps, decimal.NewFromInt(1), decimal.New(1, -2))
			return cost.InexactFloat64(), err
		}},
		{Table: "pool-shares-worked", Column: "share", Func: "money.Divide", Exact: true, Got: poolShare},
		{Table: "maple-costs", Column: "usd", Func: "money.PublishedCosts", Got: publishedCost},
	}
}

// sapPrice rounds as the row says.
func sapPrice(row check.Row) (float64, error) {
	step := decimal.New(1, -4)
	if row.Text("quantity") == "price, rounded to a cent" {
		step = decimal.New(1, -2)
	}
	offer := money.Offer{
		SyrupPerPound:     decimal.NewFromFloat(row.Float("price_per_lb")),
		Share:             decimal.NewFromFloat(row.Float("share")),
		Rule:              yield.Jones1946,
		PoundsPerUSGallon: decimal.NewFromFloat(row.Float("lb_per_gallon")),
		PriceStep:         step,
		Cent:              decimal.New(1, -2),
	}
	price, err := offer.PerUSGallon(units.Brix(row.Float("sap_brix")))
	return price.InexactFloat64(), err
}

// poolShare divides 100 percent among all rows of the table and returns that of
// this row.
func poolShare(row check.Row) (float64, error) {
	table, err := check.Load("pool-shares-worked")
	if err != nil {
		return 0, err
	}
	var among []money.Contribution
	for _, r := range table.Rows {
		b := units.Brix(r.Float("sap_brix"))
		rho, err := density.Solution(b, units.Celsius(20))
		if err != nil {
			return 0, err
		}
		c, err := money.BySugar(r.Name(), b.Sugar(rho.Mass(units.USGallons(r.Float("gallons")))))
		if err != nil {
			return 0, err
		}
		among = append(among, c)
	}
	portions, err := money.Divide(decimal.NewFromInt(100), 2, among)
	if err != nil {
		return 0, err
	}
	for _, p := range portions {
		if p.Name == row.Name() {
			return p.Amount.InexactFloat64(), nil
		}
	}
	return 0, fmt.Errorf("no portion %q", row.Name())
}

// publishedCost finds the budget of a row by what it is of and its year.
func publishedCost(row check.Row) (float64, error) {
	for _, p := range money.PublishedCosts() {
		if p.What == row.Text("item") && float64(p.Year) == row.Float("year") && p.SapOnly == (row.Text("scope") == "sap") {
			return p.PerUSGallon.InexactFloat64(), nil
		}
	}
	return 0, fmt.Errorf("no budget %q", row.Text("item"))
}
