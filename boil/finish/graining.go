package finish

import "example.org/sapreckoner/units"

// A Graining is how a product is brought to grain once it is off the fire: cooled
// to between Low and High, and then stirred or left.
type Graining struct {
	Product   string            // as in [Finish]
	Low, High units.Temperature // to which it cools before it is stirred
	// Least is what it must not cool below before that; Low where the source
	// gives none.
	Least    units.Temperature
	Obtained string // read or memory
	Source   string
	Note     string
}

// Grainings returns published ways to grain a product. Those that are stirred off
// the fire at once, as granulated sugar, those that are never stirred, as sugar on
// snow, and those of which no source was seen, are not in it.
//
// Cool without moving it: a jolt starts coarse grain. It is far hotter than syrup
// when it leaves the fire, and it sticks. Check value: soft molded candy cools
// to 200 to 210 F and not below 160 (read).
//
// Cites ontario-producers, usda-handbook-134, cornell-208.
func Grainings() []Graining {
	f := units.Fahrenheit
	return []Graining{
		{"soft molded candy", f(200), f(210), f(160), "read", "Ontario maple producers confection sheet", "then stir, and pour before it stiffens"},
		{"cream or butter", f(50), f(75), f(50), "memory", "USDA and Cornell", "cool fast and still, in a shallow pan on cold water; then stir without end until it loses its gloss"},
		{"fudge", f(110), f(120), f(110), "memory", "kitchen practice", "then beat until it loses its gloss"},
	}
}
