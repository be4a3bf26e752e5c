package proof

import (
	"strings"

	"example.org/sapreckoner/internal/proving/check"
)

// What no row says of a claim, in words for a port to another language: the
// arguments that are the same in all rows, and what is made of the answer.
const (
	coefficient = "a coefficient of the formula, not an answer"
	lookedUp    = "looked up, not reckoned"
)

var with = []struct{ table, column, fn, words string }{
	{"units", "value", "", "the size of one of the unit in SI units"},
	{"kell-1975-water", "value", "", coefficient},
	{"icumsa-density-coefficients", "c", "", coefficient},
	{"refractive-index-fit", "c", "", coefficient},
	{"iapws-water-refraction", "value", "", coefficient},
	{"hydrometer-constants", "value", "", "a constant"},
	{"water-density-published", "value", "", "over that at 4 C, or by itself, or a kilogram over it at 4 C in liters, as the row says"},
	{"syrup-density-published", "baume", "", "NBS C440 scale"},
	{"syrup-density-published", "lb_per_gallon", "", "a US gallon at 68 F"},
	{"solution-density-worked", "value", "", "a slope is the difference over 0.01 Brix or 0.01 K about the strength or the temperature"},
	{"nbs-c440-table114", "apparent_sg_20_20", "", "NBS C440 scale"},
	{"nbs-c440-table114", "apparent_sg_20_20_icumsa", "", "ICUMSA scale"},
	{"plato-d20-4", "d20_4", "", "NBS C440 scale; 0.0012 + SG (0.998234 - 0.0012) of the answer SG"},
	{"plato-d20-4", "d20_4_icumsa", "", "at 20 C, over the density of water at 4 C"},
	{"gallon-weight-brix", "brix", "", "NBS C440 scale, of the SG that is the weight in air over the weight in air of a US gallon of water at 68 F"},
	{"nbs-hydrometer-correction-20C", "correction", "", "a hydrometer graduated at 20 C, ICUMSA scale; the answer less the reading"},
	{"hydrometer-worked", "value", "", "ICUMSA scale"},
	{"hydrometer-traps-worked", "value", "", "ICUMSA; at 68 F, or at 60 F for the Baume; how far the wrong answer is off: a 60 F scale floats at 68 F, 145/(145 - 36) is taken for the true SG 60/60 F, a density is 370e-6 too high"},
	{"refractometer-correction-1936", "correction", "", "a prism without compensation, true at 20 C; the answer less the reading"},
	{"refractometer-temperature-worked", "correction", "", "a prism without compensation, true at 20 C; the strength less the answer"},
	{"cup-weights-published", "grams", "", "a US cup or half a US fluid ounce at 20 C"},
	{"weight-per-gallon", "in_vacuo_icumsa", "", "a US gallon at 20 C"},
	{"weight-per-gallon", "in_air_icumsa", "", "a US gallon at 20 C"},
	{"weight-per-gallon", "in_air_nbs_c440", "", "a US gallon at 20 C weighed in air, of the ICUMSA strength that has the SG of brix on the NBS C440 scale"},
	{"weight-per-gallon", "lb_sugar_in_air", "", "a US gallon at 20 C; the weight in air times brix/100"},
	{"hot-cold-volume-worked", "shrink", "", "cooled to 68 F"},
	{"water-activity-constants", "value", "", coefficient},
	{"saturation-coefficients", "c", "", coefficient},
	{"viscosity-coefficients", "value", "", coefficient},
	{"inversion-constants", "value", "", coefficient},
	{"inversion-worked", "inverted", "", "an hour"},
	{"osmotic-pressure", "osmotic_atm", "", "at 20 C; the strength is 342.3 g of sucrose a mole in 1000 g of water"},
	{"isopiestic-sucrose", "osmotic_coefficient", "", "at 25 C; minus its logarithm over the molality times 0.018015268 kg/mol; the strength is 342.3 g of sucrose a mole in 1000 g of water"},
	{"freezing-worked", "depression_K", "", "0 C less the answer"},
	{"freezing-point", "depression_K", "", "0 C less the answer"},
	{"saturation-herzfeld", "g_per_100g_water", "other author", "by Sokolovsky; 100 b/(100 - b) of the answer b in percent"},
	{"saturation-sokolovsky", "percent", "other author", "by Herzfeld"},
	{"water-heat-published", "value", "SpecificHeat", "of no sugar"},
	{"water-heat-published", "value", "Enthalpy", "of no sugar, over the temperature"},
	{"saturation-herzfeld", "g_per_100g_water", "", "by Herzfeld; 100 b/(100 - b) of the answer b in percent"},
	{"saturation-sokolovsky", "percent", "", "by Sokolovsky"},
	{"thinning-examples", "value", "Thin", "all volumes at 20 C"},
	{"thinning-examples", "value", "Concentrate", "all volumes at 20 C"},
	{"thinning-examples", "value", "Blend", "the mass parts of the square taken for gallons, at 20 C, and blended"},
	{"syrup-standards", "min", "", lookedUp},
	{"syrup-standards", "max", "", lookedUp},
	{"color-classes", "min_T", "", lookedUp},
	{"color-classes", "below_T", "", lookedUp},
	{"invert-by-glucose-meter", "inverted", "", "diluted to a tenth"},
	{"ro-worked", "value", "Concentrate", "a US gallon of sap at 20 C, all sugar held back"},
	{"ro-worked", "value", "EvaporationSaved", "a US gallon of sap at 20 C, all sugar held back"},
	{"iapws-if97-region4", "n", "", coefficient},
	{"iapws-sr1-86", "coefficient", "", coefficient},
	{"water-boiling-elevation", "boiling_F", "", "of the pressure of the standard atmosphere at that elevation"},
	{"sucrose-boiling-rise-1atm", "rise_K", "", "where water boils at 100 C"},
	{"syrup-point-published", "boils_C", "", "at 1 atm"},
	{"syrup-point-published", "boils_F", "", "at 1 atm"},
	{"pan-rate-published", "value", "", "a flue pan, the middle of the answer; barrels of 31.5 US gal"},
	{"preheater-published", "value", "", "sap of 2 Brix to syrup of 66 at 1 atm"},
	{"transit-published", "transit", "", "liquid that loses 2 US gal/ft2/h, at 1 atm"},
	{"confections", "boils_F", "", "the rise of high_F at 1 atm"},
	{"sap-cost-published", "usd", "", "so many times the cost of a tap, for one gallon"},
	{"net-contents-canada-lot", "t", "BetaBelow", "the t at which the answer for f/(f + t^2), f/2 and 1/2 is 0.01, f = n - 1"},
	{"cordwood-missouri", "MMBtu_per_cord", "Fuel.Of", "7,000 Btu to the pound, in tenths of a million"},
	{"syrup-finish-rise", "rise_F", "", "pure sucrose at 1 atm"},
	{"rise-inverted", "brix", "BrixFromRiseOf", "at 1 atm"},
	{"rise-inverted", "brix", "BrixFromWaterActivity", "where water of 1 atm boils, plus the rise; the activity is 1 atm over the pressure of water boiling there"},
	{"syrup-point-worked", "value", "BrixFromRise", "of the rise of brix at 1 atm; the answer less brix"},
	{"boiling-errors-worked", "value", "", "66 Brix at 1 atm; how far the answer moves when pressure, thermometer or depth over the probe is off by the change"},
	{"latent-heat", "value", "", "at the boiling point of water; Btu(IT) is of a US gallon of water at 60 F"},
	{"evaporation-heat-worked", "heat_Btu", "", "for a US gallon of syrup at 20 C: sap warmed from 40 F to 99.974 C at 4.145 kJ/(kg K), and its water boiled there"},
	{"evaporation-published", "heat_Btu", "", "for a US gallon of syrup at 20 C: sap warmed from 40 F to 99.974 C at 4.145 kJ/(kg K), and its water boiled there"},
	{"evaporation-worked", "value", "", "for a US gallon of syrup at 20 C; sap measured at 20 C"},
	{"boiling-heat-worked", "value", "PreheaterCeiling", "sap of 2 Brix to syrup of 66 at 1 atm"},
	{"boiling-heat-worked", "value", "LearnEfficiency", "22 times 400,000 Btu into the pan from a cord of that gross heat"},
	{"boiling-heat-worked", "value", "Area.Volume", "of a square foot"},
	{"confections", "low_F", "", lookedUp},
	{"confections", "high_F", "", lookedUp},
	{"confection-graining", "low_F", "", lookedUp},
	{"confection-graining", "high_F", "", lookedUp},
	{"confection-graining", "least_F", "", lookedUp},
	{"plug-flow-worked", "value", "Steady", "four compartments of equal evaporation, fed at the boil, 1 atm: the strength at the outlet of that share of the way"},
	{"plug-flow-worked", "value", "Transit", "2 in of liquid that loses 2 US gal/ft2/h, at 1 atm"},
	{"fuel-heat", "btu", "", lookedUp},
	{"flue-pan-worked", "water_gal", "", "a US gallon of syrup of 66 Brix, all volumes at 20 C"},
	{"firewood-net-constants", "value", "", "a constant of a (1 - M) - b (M + c (1 - M)), M the share of water"},
	{"ratio-rules-worked", "error", "", "the rule over the exact ratio of volumes at 20 C, less 100 %"},
	{"sap-to-syrup-rules", "constant", "", lookedUp},
	{"pool-shares-worked", "share", "", "100 % divided among all rows of the table by sugar, volumes at 20 C"},
	{"nass-yield-per-tap", "gal_per_tap", "State.PerTap", lookedUp},
	{"nass-yield-per-tap", "gal_per_tap", "PastSeason.PerTap", "production over taps"},
	{"confection-ceilings", "value", "", "of a US gallon at 20 C, weighed in air; a product has the moisture of syrup that boils at the rise, solids none"},
	{"season-account-worked", "value", "", "at 20 C"},
	{"capping-temperature", "value_F", "AfterFilling", "66.9 Brix, the glass from 20 C; the heat given is that of pouring"},
	{"capping-temperature", "value_F", "FillAt", "66.9 Brix, the glass from 20 C; the heat given is that to be left"},
	{"tank-factors", "factor", "", "1 in across, 1 in high"},
	{"tap-guidelines", "taps", "", "at both ends of the class, an end that is not included 0.01 inside it, and in the middle"},
	{"conductive-wood", "least_growth", "", "a band 30 in high, holes of 5/16 by 1.5 in, one tap, or two from 18 in; the target that the model is calibrated on"},
	{"growth-two-taps", "growth", "", "a band 30 in high, two holes of 5/16 by 1.5 in; twice the growth on the radius"},
	{"tree-growth", "mean", "", "an end of a straight line, looked up; the growth on the radius as basal area"},
	{"tree-growth", "least", "", "an end of a straight line, looked up; the growth on the radius as basal area"},
	{"natural-vacuum-worked", "column_ft", "NaturalVacuum", "the vacuum over that of a drop of 1 ft"},
	{"natural-vacuum-worked", "column_ft", "times g", "the vacuum over density times 9.80665 m/s2"},
	{"producing-week-coefficients", "value", "", coefficient},
	{"degree-day-methods", "mean", "", "base 50 F, no upper limit"},
	{"degree-day-methods", "single_sine", "", "base 50 F, no upper limit; single sine"},
	{"sap-sugar", "low", "", lookedUp},
	{"sap-sugar", "high", "", lookedUp},
	{"sap-sugar", "mean", "", lookedUp},
	{"cordwood-kentucky", "MMBtu_per_cord", "", lookedUp},
	{"cordwood-kentucky", "living_tree_mc_pct", "", lookedUp},
	{"cordwood-missouri", "MMBtu_per_cord", "", lookedUp},
	{"cordwood-missouri", "kansas_MMBtu_per_cord", "", lookedUp},
	{"cordwood-kentucky", "lb_per_cord", "", "without water"},
	{"cordwood-missouri", "green_lb_per_cord", "", "at the moisture of the living tree"},
	{"cordwood-missouri", "dry20_lb_per_cord", "", "with water of 20 % of the dry mass"},
}

// filled adds to each claim the words of the first line above of its table and
// column whose function its own ends in; a line without one means all of them.
func filled(claims []check.Claim) []check.Claim {
	for i := range claims {
		c := &claims[i]
		for _, w := range with {
			if w.table == c.Table && w.column == c.Column && strings.HasSuffix(c.Func, w.fn) {
				c.With = w.words
				break
			}
		}
	}
	return claims
}
