package lookagain

import (
	"math"
	"slices"
	"strconv"
)

// What counts as far: see the package comment.
const (
	spreads     = 3.5
	normal      = 1.4826
	fewOfAName  = 5
	fewOfAll    = 3
	strongSap   = 6.0 // Brix, where there is nothing to compare with
	thinSyrup   = 60.0
	thickSyrup  = 72.0
	seasonReach = 60 // days
)

// bands are the shares of the median within which nothing is far.
var bands = [measures]struct {
	what      string
	low, high float64
}{
	strength: {"strength", 0.5, 1.5},
	volume:   {"volume", 0.1, 3},
	price:    {"price", 0.5, 2},
}

// usual is what most of some values are.
type usual struct {
	n            int
	middle, away float64 // median, and median distance from it
}

// usualOf describes values, and puts them into another order.
func usualOf(values []float64) usual {
	u := usual{n: len(values)}
	if u.n == 0 {
		return u
	}
	u.middle = median(values)
	away := make([]float64, len(values))
	for i, x := range values {
		away[i] = math.Abs(x - u.middle)
	}
	u.away = median(away)
	return u
}

// median is that of values, which are not empty and are put into another order.
func median(values []float64) float64 {
	n := len(values)
	high := nth(values, n/2)
	low := high
	if n%2 == 0 {
		low = slices.Max(values[:n/2])
	}
	return low/2 + high/2 // halves first: no overflow
}

// nth returns the value that has k smaller ones, or as many that are equal, before it
// when all are sorted, and puts these before it: by halves as a sort does, but into
// one of them alone.
func nth(values []float64, k int) float64 {
	from, to := 0, len(values) // where it is
	for rounds := 64; to-from > 12 && rounds > 0; rounds-- {
		a, b, c := values[from], values[(from+to)/2], values[to-1]
		middle := max(min(a, b), min(max(a, b), c))
		i, j := from, to-1
		for i <= j {
			for values[i] < middle {
				i++
			}
			for values[j] > middle {
				j--
			}
			if i <= j {
				values[i], values[j] = values[j], values[i]
				i, j = i+1, j-1
			}
		}
		switch {
		case k <= j:
			to = j + 1
		case k >= i:
			from = i
		default:
			return values[k]
		}
	}
	slices.Sort(values[from:to]) // few, or in an order that defies halving
	return values[k]
}

// beyond reports whether x scatters from the others more than chance has it.
func (u usual) beyond(x float64) bool { return math.Abs(x-u.middle) > spreads*normal*u.away }

// far finds values far from those of their name.
func (l *List) far(add adder) {
	for m := range measures {
		order := l.byNames(func(r *row) bool { x := r.value[m]; return x > 0 && x <= math.MaxFloat64 })
		values := func(rows []int32) []float64 {
			out := make([]float64, len(rows))
			for k, i := range rows {
				out[k] = l.rows[i].value[m]
			}
			return out
		}
		whole := order
		var all usual // known once it is asked for: mostly each name has values enough
		for len(order) > 0 {
			name := l.rows[order[0]].name
			n := 1
			for n < len(order) && l.rows[order[n]].name == name {
				n++
			}
			var of usual
			whose := "that of all rows"
			if n >= fewOfAName {
				of, whose = usualOf(values(order[:n])), "that of "+quoted(l.names[name])
			} else {
				if all.n == 0 {
					all = usualOf(values(whole))
				}
				of = all
			}
			for _, i := range order[:n] {
				i, x, b := int(i), l.rows[i].value[m], bands[m]
				switch {
				case m == strength && l.Of == Syrup:
					if !(x >= thinSyrup && x <= thickSyrup) {
						add(i, Far, b.what+" "+l.shown(m, x)+" is far from that of syrup, 66 to 69 Brix: read it again")
					}
				case of.n >= fewOfAll:
					if of.beyond(x) && !(x >= b.low*of.middle && x <= b.high*of.middle) {
						add(i, Far, b.what+" "+l.shown(m, x)+" is far from "+whose+", "+l.shown(m, of.middle)+" in the middle: has the point slipped?")
					}
				case m == strength && x > strongSap:
					add(i, Far, "strength "+l.shown(m, x)+" is more than sap has, 1 to 4 Brix: has the point slipped?")
				}
			}
			order = order[n:]
		}
	}
}

// byNames returns the indices of the rows that are asked for by their names, and of
// one name as they came.
func (l *List) byNames(asked func(*row) bool) []int32 {
	at := make([]int32, len(l.names)+1) // where the next row of a name goes
	for i := range l.rows {
		if r := &l.rows[i]; asked(r) {
			at[r.name+1]++
		}
	}
	for n := range l.names {
		at[n+1] += at[n]
	}
	order := make([]int32, at[len(l.names)])
	for i := range l.rows {
		if r := &l.rows[i]; asked(r) {
			order[at[r.name]] = int32(i)
			at[r.name]++
		}
	}
	return order
}

// shown prints a value with its unit.
func (l *List) shown(m int, x float64) string {
	unit := [measures]string{strength: "Brix", volume: l.VolumeUnit, price: l.PriceUnit}[m]
	s := strconv.FormatFloat(math.Round(x*100)/100, 'f', -1, 64)
	if math.Abs(x) < 0.01 || math.Abs(x) >= 1e9 {
		s = strconv.FormatFloat(x, 'g', 3, 64)
	}
	if unit != "" {
		s += " " + unit
	}
	return s
}

// season finds days far from the others.
func (l *List) season(add adder) {
	var days []float64
	for i := range l.rows {
		if l.rows[i].dated {
			days = append(days, float64(l.rows[i].day))
		}
	}
	of := usualOf(days)
	if of.n < fewOfAll {
		return
	}
	for i := range l.rows {
		r := &l.rows[i]
		if x := float64(r.day); r.dated && of.beyond(x) && math.Abs(x-of.middle) > seasonReach {
			add(i, OutOfSeason, day(r.day)+" is "+strconv.Itoa(int(math.Abs(x-of.middle)))+" days from "+day(int32(of.middle))+", the middle of the rows: check month and year")
		}
	}
}
