package proof

import (
	"math"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/units"
)

// Pan returns the claims of package pan.
func Pan() []check.Claim {
	return []check.Claim{
		{Table: "plug-flow-worked", Column: "value", Func: "pan.PlugFlow", Select: when("quantity", "strength"),
			Got: func(r check.Row) (float64, error) {
				b, err := pan.PlugFlow(panSap(r), panSyrup(r), units.FractionShare(r.Float("way")))
				return float64(b), err
			}},
		{Table: "plug-flow-worked", Column: "value", Func: "pan.Rig.Steady", Select: mixed, Got: outlet},
		{Table: "plug-flow-worked", Column: "value", Func: "pan.Transit", Select: when("quantity", "transit"),
			Got: func(r check.Row) (float64, error) {
				t, err := pan.Transit(panSap(r), panSyrup(r), 2*units.Inch, 2*units.USGallonPerSquareFootHour, units.Atmosphere)
				return t.Minutes(), err
			}},
		{Table: "transit-published", Column: "transit", Func: "pan.Transit",
			Got: func(r check.Row) (float64, error) {
				t, err := pan.Transit(panSap(r), panSyrup(r), units.Inches(r.Float("depth_in")), 2*units.USGallonPerSquareFootHour, units.Atmosphere)
				return t.Minutes(), err
			}},
	}
}

func panSap(r check.Row) units.Brix   { return units.Brix(r.Float("sap_brix")) }
func panSyrup(r check.Row) units.Brix { return units.Brix(r.Float("syrup_brix")) }

// panParts is the number of compartments of the table.
const panParts = 4

// mixed selects the outlets of the compartments.
func mixed(r check.Row) bool {
	i := r.Float("way") * panParts
	return r.Text("quantity") == "strength" && math.Abs(i-math.Round(i)) < 1e-9
}

// outlet gives the strength at an outlet of a rig in which every compartment
// evaporates alike: the shares of the fire are what that takes.
func outlet(r check.Row) (float64, error) {
	hot, err := boil.Water(units.Atmosphere)
	if err != nil {
		return math.NaN(), err
	}
	rig := pan.Rig{Heat: 10 * units.Kilowatt, Draw: pan.DrawOff{At: panSyrup(r)}}
	for range panParts {
		rig.Compartments = append(rig.Compartments, pan.Compartment{
			Area: units.SquareMeter, Depth: 5 * units.Centimeter, SafeDepth: units.Centimeter, Fire: units.Whole / panParts,
		})
	}
	sap := pan.Sap{Brix: panSap(r), Temperature: hot}
	var s pan.Steady
	for range 20 {
		if s, err = rig.Steady(sap, units.Atmosphere); err != nil {
			return math.NaN(), err
		}
		in := s.Feed
		total := units.Share(0)
		for i := range rig.Compartments {
			c := &rig.Compartments[i]
			c.Fire *= units.Share(s.Evaporation / panParts / (in - s.Outflow[i]))
			in = s.Outflow[i]
			total += c.Fire
		}
		for i := range rig.Compartments {
			rig.Compartments[i].Fire *= units.Whole / total
		}
	}
	return float64(s.Brix[int(math.Round(r.Float("way")*panParts))-1]), nil
}
