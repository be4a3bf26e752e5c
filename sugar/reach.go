package sugar

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/units"
)

// mostCans is how many cans one blend is looked for among.
const mostCans = 100

// A Can is syrup that may go into a blend, and its light transmission, which is
// not needed where color does not count.
type Can struct {
	Lot          Lot
	Transmission units.Share
}

// An Aim is what a blend is to reach. A limit of zero does not count, and one at
// least must.
type Aim struct {
	LeastLight, MostLight units.Share // 0.001 to 100 percent
	LeastBrix, MostBrix   units.Brix  // 1 to 85
}

// Aim returns what a blend must reach to be of the class: 50.0 to 74.9 percent for
// [Amber]. A photometer is off by a percent or two: aim inside. No class gives the
// zero Aim.
func (c ColorClass) Aim() Aim {
	if !c.known() {
		return Aim{}
	}
	a := Aim{LeastLight: units.Share(float64(classes[c].min) / 10)}
	if c > Golden {
		a.MostLight = units.Share(float64(classes[c].below-1) / 10)
	}
	return a
}

// A Reached is a blend that reaches its aim.
type Reached struct {
	Parts        []units.Share // of each can that is poured in, 0 to 100 percent
	Lot          Lot           // the blend
	Transmission units.Share   // of it; NaN where color does not count
	Left         units.Mass    // of all cans, not poured in
}

// Reach returns how much of each can to pour together for the aim, so that the
// least syrup is left over. A can that is passed by has a part of 0.
//
// Look into each can, then smell it, before it is poured in: blending mends the
// color and blends the flavor, off flavors too. Any mold: throw it away, do not
// taste or blend it.
//
// Range: 1 to 100 cans, none empty; light of 0.001 to 100 percent where color
// counts. If no proportion reaches the aim the answer is an [*InfeasibleError].
// Contraction on mixing is left out.
//
// Method: as [BlendTransmission] and [Blend], in which all limits are linear in
// the parts. Check value: of a gallon each at 46 and 82 percent, for 50.5 at
// least, all is poured: together they are at 61.4 (computed).
func (a Aim) Reach(cans ...Can) (Reached, error) {
	const fn = "sugar.Aim.Reach"
	if err := a.check(fn); err != nil {
		return Reached{}, err
	}
	if err := limit.InAs(fn, "cans", "number of cans", float64(len(cans)), 1, mostCans, "", "name the cans that may be poured, to 100"); err != nil {
		return Reached{}, err
	}
	light := a.LeastLight != 0 || a.MostLight != 0
	volumes, total := make([]float64, len(cans)), 0.0
	for i, c := range cans {
		if c.Lot.Empty() {
			return Reached{}, &InfeasibleError{Func: fn, Why: "a can is empty", Hint: "leave empty cans out"}
		}
		if light {
			if err := someLight.CheckItem(fn, "cans", i, "Transmission", float64(c.Transmission)); err != nil {
				return Reached{}, err
			}
		}
		v, err := c.Lot.VolumeAt(units.Celsius(20))
		if err != nil {
			return Reached{}, units.Under(fn, err)
		}
		volumes[i] = float64(v)
		total += volumes[i]
	}
	rows := a.rows(cans, volumes, total)
	most := make([]float64, len(rows), len(rows)+len(cans))
	value := make([]float64, len(cans))
	for i := range cans {
		value[i] = volumes[i] / total
		row := make([]float64, len(cans))
		row[i] = 1
		rows, most = append(rows, row), append(most, 1)
	}
	parts := numeric.Simplex(rows, most, value, 100*(len(cans)+4))
	poured := 0.0
	for i, p := range parts {
		poured += p * value[i]
	}
	if !(poured > 1e-6) {
		return Reached{}, a.never(fn, cans)
	}
	return pourTogether(cans, volumes, parts, light)
}

// check holds the aim to its documented limits.
func (a Aim) check(fn string) error {
	for _, l := range [...]struct {
		arg, what string
		least, x  units.Share
	}{{"Aim.LeastLight", "least light", 0.001, a.LeastLight}, {"Aim.MostLight", "most light", max(0.001, a.LeastLight), a.MostLight}} {
		if l.x != 0 {
			if err := limit.InAs(fn, l.arg, l.what, float64(l.x), float64(l.least), 100, "%", "percent of light at 560 nm, from the least to the most; zero if it does not count"); err != nil {
				return err
			}
		}
	}
	for _, l := range [...]struct {
		arg, what string
		least, x  units.Brix
	}{{"Aim.LeastBrix", "least strength", 1, a.LeastBrix}, {"Aim.MostBrix", "most strength", max(1, a.LeastBrix), a.MostBrix}} {
		if l.x != 0 {
			if err := limit.InAs(fn, l.arg, l.what, float64(l.x), float64(l.least), float64(strongest), "Brix", "from the least to the most; zero if it does not count"); err != nil {
				return err
			}
		}
	}
	if a == (Aim{}) {
		return &InfeasibleError{Func: fn, Why: "the aim has no limit", Hint: "name a color, a strength or both"}
	}
	return nil
}

// rows are the limits that count, each as a sum over the parts that is not above
// zero, in shares of all the syrup.
func (a Aim) rows(cans []Can, volumes []float64, total float64) [][]float64 {
	var rows [][]float64
	limitOf := func(counts bool, of func(i int, c Can) float64) {
		if !counts {
			return
		}
		row := make([]float64, len(cans))
		for i, c := range cans {
			row[i] = of(i, c)
		}
		rows = append(rows, row)
	}
	dark := func(i int, c Can) float64 { return volumes[i] / total * float64(absorb(c.Transmission)) }
	limitOf(a.LeastLight != 0, func(i int, c Can) float64 {
		return dark(i, c) - volumes[i]/total*float64(absorb(a.LeastLight))
	})
	limitOf(a.MostLight != 0, func(i int, c Can) float64 {
		return volumes[i]/total*float64(absorb(a.MostLight)) - dark(i, c)
	})
	mass := 0.0
	for _, c := range cans {
		mass += float64(c.Lot.Mass())
	}
	limitOf(a.LeastBrix != 0, func(_ int, c Can) float64 { return float64(a.LeastBrix.Sugar(c.Lot.Mass())-c.Lot.Sugar()) / mass })
	limitOf(a.MostBrix != 0, func(_ int, c Can) float64 { return float64(c.Lot.Sugar()-a.MostBrix.Sugar(c.Lot.Mass())) / mass })
	return rows
}

// pourTogether blends the parts.
func pourTogether(cans []Can, volumes, parts []float64, light bool) (Reached, error) {
	r := Reached{Parts: make([]units.Share, len(cans)), Transmission: units.Share(math.NaN())}
	lots, tinted := make([]Lot, len(cans)), make([]Tinted, len(cans))
	for i, c := range cans {
		p := min(parts[i], 1)
		r.Parts[i] = units.FractionShare(p)
		lots[i] = lot(units.Mass(p)*c.Lot.Mass(), c.Lot.Brix(), c.Lot.Temperature())
		tinted[i] = Tinted{units.Volume(p * volumes[i]), c.Transmission}
		r.Left += c.Lot.Mass() - lots[i].Mass()
	}
	var err error
	if r.Lot, err = Blend(lots...); err == nil && light {
		r.Transmission, err = BlendTransmission(tinted...)
	}
	if err != nil {
		return Reached{}, units.Under("sugar.Aim.Reach", err)
	}
	return r, nil
}

// never tells why no proportion reaches the aim.
func (a Aim) never(fn string, cans []Can) error {
	all := func(misses func(c Can) bool) bool {
		for _, c := range cans {
			if !misses(c) {
				return false
			}
		}
		return true
	}
	switch {
	case a.LeastLight != 0 && all(func(c Can) bool { return c.Transmission < a.LeastLight }):
		return &InfeasibleError{Func: fn, Why: "every can is too dark", Hint: "find a lighter one, or aim at a darker class"}
	case a.MostLight != 0 && all(func(c Can) bool { return c.Transmission > a.MostLight }):
		return &InfeasibleError{Func: fn, Why: "every can is too light", Hint: "aim at a lighter class, or find a darker one"}
	case a.LeastBrix != 0 && all(func(c Can) bool { return c.Lot.Brix() < a.LeastBrix }):
		return &InfeasibleError{Func: fn, Why: "every can is too thin", Hint: "boil one on, or find a denser one"}
	case a.MostBrix != 0 && all(func(c Can) bool { return c.Lot.Brix() > a.MostBrix }):
		return &InfeasibleError{Func: fn, Why: "every can is too dense", Hint: "thin one, or find a thinner one"}
	}
	return &InfeasibleError{Func: fn, Why: "no proportion of these cans reaches both the color and the strength", Hint: "mend the strength first, or find another can"}
}
