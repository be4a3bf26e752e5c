package fuel

import "example.org/sapreckoner/units"

// Sources of the tables of firewood.
const (
	sourceKentucky = "University of Kentucky, Department of Forestry, Comparison of Properties Affecting Firewood"
	sourceMissouri = "Missouri Department of Conservation"
)

// FirewoodKentucky returns the table of the University of Kentucky, Department
// of Forestry, Comparison of Properties Affecting Firewood.
//
// Its heats come to about 8,230 Btu for a pound of its weights in hardwoods and
// 8,620 in conifers. That is [Gross] heat of oven-dry wood, whatever the label
// says, and the weights are taken as oven-dry. The table has the moisture of the
// living tree on the dry basis. Its row of beech stands out and is probably a
// slip.
//
// Cites kentucky-firewood.
func FirewoodKentucky() []Firewood {
	wood := func(species string, heat, green, weight float64, note string) Firewood {
		return Firewood{Species: species, Weight: units.Pounds(weight), WeighedAt: 0, Heat: units.MillionBtusIT(heat),
			Basis: Gross, Green: DryMoisture(green), Note: note, Source: sourceKentucky}
	}
	return []Firewood{
		wood("Osage-orange", 30.5, 0, 3688, ""),
		wood("Hickory", 29.3, 70, 3560, ""),
		wood("Black locust", 28.3, 55, 3440, ""),
		wood("White oak", 27.9, 64, 3392, ""),
		wood("Bur oak", 26.3, 65, 3192, ""),
		wood("Beech", 26.3, 55, 3144, "more heat for its weight than any other hardwood: probably a slip of the source"),
		wood("Sugar maple", 25.9, 65, 3144, ""),
		wood("Pin oak", 25.9, 83, 3144, ""),
		wood("Red oak", 25.9, 80, 3144, ""),
		wood("White ash", 24.6, 45, 2992, ""),
		wood("Honey locust", 24.6, 0, 2992, ""),
		wood("Blue ash", 23.8, 45, 2896, ""),
		wood("Black walnut", 22.6, 90, 2744, ""),
		wood("Hackberry", 21.7, 61, 2640, ""),
		wood("Slippery elm", 21.7, 66, 2640, ""),
		wood("Sweetgum", 21.3, 79, 2592, ""),
		wood("Virginia pine", 20.7, 32, 2400, ""),
		wood("Black cherry", 20.5, 58, 2496, ""),
		wood("American elm", 20.5, 95, 2496, ""),
		wood("Sycamore", 20.2, 114, 2448, ""),
		wood("Red-cedar", 20.2, 33, 2344, ""),
		wood("Silver maple", 19.3, 58, 2344, ""),
		wood("Sassafras", 18.9, 0, 2296, ""),
		wood("Yellow-poplar", 17.3, 83, 2096, ""),
		wood("Hemlock", 17.3, 97, 2000, ""),
		wood("Willow", 16.0, 98, 1944, ""),
		wood("Basswood", 15.2, 81, 1848, ""),
		wood("White pine", 15.0, 62, 1744, ""),
	}
}

// FirewoodMissouri returns the table of the Missouri Department of Conservation,
// with the heats of Kansas State Research and Extension beside them as
// OtherHeat.
//
// Its heats are 7,000 Btu for a pound of wood at 20 percent moisture on the dry
// basis: 8,600 Btu oven-dry, less the evaporation of that moisture, but not of
// the water that burning makes. That is [LessMoisture].
//
// Cites missouri-firewood, kansas-firewood.
func FirewoodMissouri() []Firewood {
	wood := func(species string, green, weight, heat, kansas float64) Firewood {
		const dry = 20
		return Firewood{Species: species, Weight: units.Pounds(weight), WeighedAt: dry, Heat: units.MillionBtusIT(heat),
			Basis: LessMoisture, OtherHeat: units.MillionBtusIT(kansas), Green: DryMoisture(green/weight*(100+dry) - 100), Source: sourceMissouri}
	}
	return []Firewood{
		wood("Ash", 3940, 3370, 23.6, 22.8),
		wood("Basswood", 3360, 2100, 14.7, 0),
		wood("Box elder", 3500, 2500, 17.5, 0),
		wood("Cottonwood", 3920, 2304, 16.1, 15.9),
		wood("Elm (American)", 4293, 2868, 20.1, 19.8),
		wood("Elm (red)", 4480, 3056, 21.4, 20.6),
		wood("Hackberry", 4000, 3080, 21.6, 21.0),
		wood("Hickory (shagbark)", 4980, 4160, 29.1, 0),
		wood("Locust (black)", 4640, 4010, 28.1, 28.3),
		wood("Maple (silver)", 3783, 2970, 20.8, 18.9),
		wood("Maple (sugar)", 4386, 3577, 25.0, 24.0),
		wood("Oak (red)", 4988, 3609, 25.3, 24.0),
		wood("Oak (white)", 4942, 3863, 27.0, 0),
		wood("Osage orange", 5480, 4380, 30.7, 32.6),
		wood("Pine (shortleaf)", 4120, 2713, 19.0, 0),
		wood("Red cedar", 3260, 2700, 18.9, 0),
		wood("Sycamore", 4160, 2956, 20.7, 19.5),
	}
}
