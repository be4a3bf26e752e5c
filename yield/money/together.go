package money

import (
	"github.com/shopspring/decimal"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// togetherPlaces is how finely the parts of measures of different kinds count.
const togetherPlaces = 24

// A Measure is one way to count what was brought, and the part of the whole that
// goes by it.
type Measure struct {
	Part  decimal.Decimal // such as 0.5, or 1 of 2: only the proportion counts
	Among []Contribution
}

// Together returns the contributions of a division that goes by several measures
// at once: a part by sugar, a part by hours, a part by wood; or sap boiled on
// halves, where one half goes to whoever boils and the other by sugar. Each
// measure's part is divided by its own weights. People are told apart by name
// and stand in the order in which they first appear. Give the result to [Divide]
// or [DivideJars].
//
// Range: 1 to 100 measures, parts from 0 to 1e9 and not all 0, contributions as in
// [Divide]. Weights are rounded to 24 decimals. Check value: half to the house,
// half by sugar of 30 and 10 kg, are 0.5, 0.375 and 0.125.
func Together(measures ...Measure) ([]Contribution, error) {
	const fn = "money.Together"
	if err := limit.In(fn, "measures", float64(len(measures)), 1, 100, "", "name at least one measure, such as sugar or hours"); err != nil {
		return nil, err
	}
	var all []Contribution
	places, parts := map[string]int{}, decimal.Zero
	for i, m := range measures {
		if err := item(fn, "measures", i, "Part", "part of the whole", m.Part, decimal.Zero, maxMoney, "the part that goes by this measure, such as 0.5"); err != nil {
			return nil, err
		}
		total, err := totalWeight(fn, limit.Item("measures", i, "Among"), limit.Entry(i, "contributors"), m.Among)
		if err != nil {
			return nil, err
		}
		parts = parts.Add(m.Part)
		for _, c := range m.Among {
			k, known := places[c.Name]
			if !known {
				k = len(all)
				places[c.Name] = k
				all = append(all, Contribution{Name: c.Name})
			}
			all[k].Weight = all[k].Weight.Add(m.Part.Mul(c.Weight).DivRound(total, togetherPlaces))
		}
	}
	if !parts.IsPositive() {
		return nil, &DecimalError{Func: fn, Arg: "measures", Value: "0", Reason: "nothing goes by any measure: give at least one part above 0"}
	}
	return all, nil
}

// DivideJarsAfter is [DivideJars] where people already took some of the syrup,
// so much by their place in the list: shares are of jars and what was taken
// together, and who took more than the share gets nothing more.
//
// Range: that of DivideJars; taken from 0 to 10,000 L each, one for each
// contributor.
func DivideJarsAfter(jars []Jars, among []Contribution, taken []units.Volume) ([]Basket, error) {
	const fn = "money.DivideJarsAfter"
	if err := limit.InAs(fn, "taken", "entries of what was taken", float64(len(taken)), float64(len(among)), float64(len(among)), "", "one for each who shares, 0 for who took nothing"); err != nil {
		return nil, err
	}
	for i, v := range taken {
		if err := limit.InItem(fn, "taken", i, "", "volume taken", v.Milliliters(), 0, maxJarMilliliters, "mL", "the labels of the jars taken"); err != nil {
			return nil, err
		}
	}
	return divideJars(fn, jars, among, taken)
}
