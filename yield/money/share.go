package money

import (
	"cmp"
	"container/heap"
	"slices"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Limits of a division.
const (
	maxPlaces         = 12        // digits behind the point of a portion
	maxContributed    = 1e7       // kg of sugar, taps or hours of one contributor
	sugarPlaces       = 4         // sugar counts to a tenth of a gram
	hourPlaces        = 4         // hours count to a third of a second
	maxJars           = 1_000_000 // of all sizes
	maxShared         = 5_000_000 // contributors times sizes: 40 MB of counts
	labelPlaces       = 5         // labels count to a hundred-thousandth of a milliliter
	maxJarMilliliters = 1e7
)

// greatest is more than any weight or whole.
var greatest = decimal.New(1, maxDigits)

// A Contribution is what one person brought to a common boil: a name and a
// weight. [BySugar], [ByTaps] and [ByHours] make one; fixed parts are written
// as they are, Contribution{Name: "Orchard house", Weight:
// decimal.NewFromInt(2)}. All contributions of a division must count the same
// thing.
type Contribution struct {
	Name   string
	Weight decimal.Decimal
}

// BySugar returns the contribution of a mass of sugar, rounded to a tenth of a
// gram: the fair measure when sap of different strength is pooled.
//
// Range: 0 to 1e7 kg.
func BySugar(name string, sugar units.Mass) (Contribution, error) {
	if err := limit.In("money.BySugar", "sugar", sugar.Kilograms(), 0, maxContributed, "kg", "what one brings is not negative"); err != nil {
		return Contribution{}, err
	}
	return Contribution{name, toDecimal(sugar.Kilograms(), sugarPlaces)}, nil
}

// ByTaps returns the contribution of a number of taps.
//
// Range: 0 to 1e7.
func ByTaps(name string, taps int) (Contribution, error) {
	if err := limit.In("money.ByTaps", "taps", float64(taps), 0, maxContributed, "", "what one brings is not negative"); err != nil {
		return Contribution{}, err
	}
	return Contribution{name, decimal.NewFromInt(int64(taps))}, nil
}

// ByHours returns the contribution of a time of work, in hours to the fourth
// decimal.
//
// Range: 0 to 1e7 hours.
func ByHours(name string, worked time.Duration) (Contribution, error) {
	if err := limit.InAs("money.ByHours", "worked", "time", worked.Hours(), 0, maxContributed, "h", "what one brings is not negative"); err != nil {
		return Contribution{}, err
	}
	ns := decimal.NewFromInt(int64(worked))
	return Contribution{name, ns.DivRound(decimal.NewFromInt(int64(time.Hour)), hourPlaces)}, nil
}

// A Portion is what one contributor gets.
type Portion struct {
	Name   string
	Amount decimal.Decimal
}

// Divide divides a whole among contributors in proportion to their weights, in
// portions of a given number of decimals that add up to the whole exactly.
//
// The whole is an amount of anything: gallons of syrup, money, percent. It
// must not have more decimals than the portions. Each contributor first gets
// the proportional amount rounded down; the units of the last decimal that are
// left go one each to the largest remainders. Of equal remainders the one with
// the greater weight comes first, then the one that stands first in the list,
// so that the same list always gives the same portions.
//
// Range: places 0 to 12, a whole and weights from 0 to 1e30 with at most 30
// digits behind the point, at least one weight above 0, at most 100,000
// contributors. No portion is off its exact share by as much as one unit of the
// last decimal.
//
// Method: largest remainder (Hamilton). Check value: 120 US gal of sap at 2.4
// Brix, 200 at 1.8 and 80 at 3.0 share 32.44, 40.46 and 27.10 percent
// (computed).
func Divide(whole decimal.Decimal, places int32, among []Contribution) ([]Portion, error) {
	const fn = "money.Divide"
	if err := limit.In(fn, "places", float64(places), 0, maxPlaces, "", "2 for cents and percent, 0 for jars"); err != nil {
		return nil, err
	}
	if err := exactly(fn, "whole", "", whole, decimal.Zero, greatest, "a whole is not negative"); err != nil {
		return nil, err
	}
	if !whole.Truncate(places).Equal(whole) {
		return nil, &DecimalError{Func: fn, Arg: "whole", Value: whole.String(), Reason: "it has more decimals than the portions: ask for more decimals or round it first"}
	}
	total, err := totalWeight(fn, "among", "", among)
	if err != nil {
		return nil, err
	}
	portions := make([]Portion, len(among))
	remainders := make([]decimal.Decimal, len(among))
	order := make([]int, len(among))
	left := whole
	for i, c := range among {
		portions[i].Name = c.Name
		portions[i].Amount, remainders[i] = whole.Mul(c.Weight).QuoRem(total, places)
		left = left.Sub(portions[i].Amount)
		order[i] = i
	}
	slices.SortFunc(order, func(i, j int) int {
		return cmp.Or(remainders[j].Cmp(remainders[i]), among[j].Weight.Cmp(among[i].Weight), cmp.Compare(i, j))
	})
	unit := decimal.New(1, -places)
	for _, i := range order {
		if !left.IsPositive() {
			break
		}
		portions[i].Amount = portions[i].Amount.Add(unit)
		left = left.Sub(unit)
	}
	return portions, nil
}

// totalWeight checks the contributions and adds up their weights.
func totalWeight(fn, list, what string, among []Contribution) (decimal.Decimal, error) {
	total := decimal.Zero
	if err := limit.InAs(fn, list, what, float64(len(among)), 1, limit.MaxEntries, "", "give at least one entry"); err != nil {
		return total, err
	}
	for i, c := range among {
		if err := item(fn, list, i, "Weight", "weight", c.Weight, decimal.Zero, greatest, "what one brings is not negative"); err != nil {
			return total, err
		}
		total = total.Add(c.Weight)
	}
	if !total.IsPositive() {
		return total, &DecimalError{Func: fn, Arg: list, What: what, Value: total.String(), Reason: "nobody brought anything: give at least one weight above 0"}
	}
	return total, nil
}

// Jars is a number of filled containers of one size.
type Jars struct {
	Label units.Volume // volume on the label
	Count int
}

// A Basket is what one contributor gets in filled containers: Counts[k] of the
// k-th size.
type Basket struct {
	Name   string
	Counts []int
}

// DivideJars divides filled containers of several sizes among contributors, so
// that each gets the proportional volume as nearly as whole jars allow and
// every jar is given out.
//
// The largest size is handed out first, one jar at a time, each to whoever is
// then owed the greatest volume; so small jars even out what large ones left.
// Of equal claims the one with the greater weight comes first, then the one
// that stands first in the list. Labels count to a hundred-thousandth of a
// milliliter.
//
// Range: labels 1 mL to 10,000 L, counts 0 to 1,000,000 and as many in all,
// weights as in [Divide], contributors times sizes up to 5,000,000, which keeps
// the answer under 100 MB.
func DivideJars(jars []Jars, among []Contribution) ([]Basket, error) {
	return divideJars("money.DivideJars", jars, among, nil)
}

// divideJars divides jars where some syrup was already taken; nil if none was.
func divideJars(fn string, jars []Jars, among []Contribution, taken []units.Volume) ([]Basket, error) {
	total, err := totalWeight(fn, "among", "", among)
	if err != nil {
		return nil, err
	}
	if err := limit.Entries(fn, "jars", len(jars)); err != nil {
		return nil, err
	}
	if err := limit.InAs(fn, "jars", "sizes of jars", float64(len(jars)), 1, float64(maxShared/len(among)), "", "so many sizes among so many do not fit: divide among groups, and each group's jars among its people"); err != nil {
		return nil, err
	}
	labels := make([]decimal.Decimal, len(jars))
	order := make([]int, len(jars))
	volume, count := decimal.Zero, 0
	for k, j := range jars {
		ml := j.Label.Milliliters()
		if err := limit.InItem(fn, "jars", k, "Label", "size of the jars", ml, 1, maxJarMilliliters, "mL", "the volume on the label"); err != nil {
			return nil, err
		}
		if err := limit.InItem(fn, "jars", k, "Count", "number of jars", float64(j.Count), 0, float64(maxJars-count), "", "count the filled jars"); err != nil {
			return nil, err
		}
		labels[k], order[k] = toDecimal(ml, labelPlaces), k
		volume = volume.Add(labels[k].Mul(decimal.NewFromInt(int64(j.Count))))
		count += j.Count
	}
	slices.SortStableFunc(order, func(a, b int) int { return labels[b].Cmp(labels[a]) })

	had := make([]decimal.Decimal, len(among))
	for i, v := range taken {
		had[i] = toDecimal(v.Milliliters(), labelPlaces)
		volume = volume.Add(had[i])
	}
	baskets := make([]Basket, len(among))
	queue := make(claims, len(among))
	for i, c := range among {
		baskets[i] = Basket{c.Name, make([]int, len(jars))}
		queue[i] = claim{i, c.Weight, volume.Mul(c.Weight).Sub(had[i].Mul(total))}
	}
	heap.Init(queue)
	for _, k := range order {
		share := labels[k].Mul(total)
		for range jars[k].Count {
			baskets[queue[0].who].Counts[k]++
			queue[0].owed = queue[0].owed.Sub(share)
			heap.Fix(queue, 0)
		}
	}
	return baskets, nil
}

// A claim is what one contributor is still owed: volume times the total weight,
// so that nothing is divided and rounded.
type claim struct {
	who    int
	weight decimal.Decimal
	owed   decimal.Decimal
}

// claims is a heap with the next to get a jar in front. Its length does not
// change: Push and Pop are there for heap.Interface and never called.
type claims []claim

func (c claims) Len() int      { return len(c) }
func (c claims) Swap(i, j int) { c[i], c[j] = c[j], c[i] }
func (c claims) Push(any)      {}
func (c claims) Pop() any      { return nil }
func (c claims) Less(i, j int) bool {
	return cmp.Or(c[j].owed.Cmp(c[i].owed), c[j].weight.Cmp(c[i].weight), cmp.Compare(c[i].who, c[j].who)) < 0
}
