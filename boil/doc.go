// Package boil tells where water and syrup boil, at the elevation and in the
// weather of the day, and what it costs to boil water off.
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
// thermometer. [PressureFromWater] turns that into the pressure at the probe, with the
// error of the thermometer already in it:
//
//	p, err := boil.PressureFromWater(units.Fahrenheit(208.9))
//	syrup, err := boil.SyrupPoint(66.9, p)
//
// # Cautions
//
// Boiling sap and syrup scald, and syrup sticks: keep children and animals away,
// never leave the pan, keep its level above the least safe depth, and keep
// defoamer at hand. Burn only where smoke and carbon monoxide go outdoors.
package boil
