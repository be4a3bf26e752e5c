// Package boil tells where water and syrup boil, at the elevation and in the
// weather of the day, what it costs in heat to boil water off, and how fast a pan
// does it.
//
// # Pressure first
//
// A boiling point follows the pressure at the pan. There are three kinds of
// pressure, and only the first boils water:
//
//   - station pressure, what a barometer without any correction shows where it
//     hangs;
//   - an altimeter setting, what airports and weather stations report: station
//     pressure brought to sea level by the standard atmosphere. [StationPressure]
//     brings it back;
//   - sea-level pressure as on weather maps, reduced with the temperature of the
//     air: it cannot be brought back without that temperature. Within a few
//     hundred feet of the sea it may be used as an altimeter setting; higher up,
//     do not.
//
// The surest way needs no barometer: boil water before the run and read the
// thermometer. [PressureFromWater] turns that into the pressure at the probe,
// with the error of the thermometer already in it:
//
//	p, err := boil.PressureFromWater(units.Fahrenheit(208.9))
//	syrup, err := boil.SyrupPoint(66.9, p)
//
// # Boiling points
//
// [Water] boils where its vapor pressure is that of the air. Sugar lowers the
// vapor pressure by the water activity a, so that syrup of B Brix boils where
//
//	a(B, T) p_water(T) = p        T = Water(p) + Rise(B, p)
//
// [Rise] solves that, [BrixFromRise] goes back, and [SyrupPoint] is the sum. The
// rise is 7.56 F at 66.9 Brix and 1 atm and shrinks with the pressure, which a
// fixed "7 degrees over water" leaves out. Inverted sugar raises it: [sugar.Solute].
//
// # Heat
//
// [Heat] takes a lot of sap to a strength. With m the mass of the sap, h its
// enthalpy and L the latent heat of steam ([LatentHeat]),
//
//	water off = m (1 - B0/B1)
//	heat = m (h(boiling) - h(sap)) + sum of L over the water off + climb
//
// where climb warms what is left as its boiling point rises. A gallon of syrup
// from 2 Brix takes about 400,000 Btu, and 15 percent of them go into warming
// the sap: that is all a preheater can save, and only one that takes its heat
// from steam or smoke saves any ([HeatDemand.PreheaterCeiling],
// [example.org/sapreckoner/boil/fuel.Effects]).
//
// # Rooms
//
// Fuel and efficiency have a room of their own,
// [example.org/sapreckoner/boil/fuel], as have the pan through the day,
// [example.org/sapreckoner/boil/pan], and the finish,
// [example.org/sapreckoner/boil/finish]. They need this package and not each
// other. [PanRate] and [LevelRate] tell how much water goes off in an hour: by
// rule, and by a dipstick.
//
// # Numbers
//
// Amounts of sap are cold ones at the temperature given; levels, depths and
// volumes in a pan are hot. What ends in By is a standard uncertainty, two times
// of three, where package density reports an expanded one of twice that.
//
// Pressure at the pan goes from 20 to 120 kPa and strength from 0 to 92 Brix.
// Outside the range that its documentation gives, and for NaN, a function answers
// NaN or the zero value and a [*units.RangeError] that names the argument, its
// range and the way out; the documentation does not repeat this. NaN for one
// argument alone asks for its range.
//
// # Cautions
//
// Boiling sap and syrup scald, and syrup sticks: keep children and animals away,
// never leave the pan, keep its level above the least safe depth, and keep
// defoamer at hand. Burn only where smoke and carbon monoxide go outdoors, with
// the clearances of local code. A pan cleaned with acid is rinsed and never meets
// bleach: together they give off chlorine. A simulation does not watch the pan.
//
// In the book: docs/theory/boil.md derives the formulas and says what they leave out,
// docs/cookbook.md answers what a maker asks.
package boil
