package boil

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Standard atmosphere below 11 km.
const (
	seaLevelPressure    = 101325.0 // Pa
	seaLevelTemperature = 288.15   // K
	lapse               = 0.0065   // K per geopotential meter
	atmosphereExponent  = 5.255876
	earthRadius         = 6356766.0 // m
)

// Altimetry in inches of mercury and feet, as it is published.
const (
	altimeterExponent = 0.1903
	altimeterPerFoot  = 1.313e-5
)

// What pressures may be asked for.
var (
	elevationRange = limit.Range{Arg: "elevation", Low: -500, High: 5000, Unit: "m",
		Below: "that is below the Dead Sea: check the sign and the unit",
		Above: "no maple grows so high: check feet against meters"}
	altimeterRange = limit.Range{Arg: "altimeter", What: "altimeter setting", Low: 25, High: 32.5, Unit: "inHg",
		Below: "an altimeter setting is near 30 inHg at any elevation: a lower figure is the station pressure already",
		Above: "check the unit: an altimeter setting is near 30 inHg or 1013 hPa"}
	stationRange = limit.Range{Arg: "station", What: "station pressure", Low: 12, High: 36, Unit: "inHg",
		Below: "check the unit: station pressure is 30 inHg or 1013 hPa near the sea and half of it at 18,000 ft",
		Above: "check the unit: station pressure is 30 inHg or 1013 hPa near the sea"}
	depthRange = limit.Range{Arg: "depth", Low: 0, High: 2, Unit: "m",
		Below: "measure down from the surface",
		Above: "check the unit: a probe lies inches deep"}
	liquidRange = limit.Range{Arg: "liquid", What: "density", Low: 900, High: 1500, Unit: "kg/m3",
		Below: "check the unit: water is near 1000 kg/m3",
		Above: "check the unit: syrup is near 1300 kg/m3"}
)

// PressureAt returns the pressure at an elevation above sea level, in the
// standard atmosphere: an average of all weather.
//
// Range: -500 to 5,000 m (-1,640 to 16,404 ft). Uncertainty: weather moves the
// pressure by 3 percent and more to both sides; 0.3 inHg in a day is 0.5 F of
// the boiling point and 1.3 Brix of the syrup. Measure where you can: see
// [PressureFromWater].
//
// The elevation is geometric, as on a map; the formula takes the geopotential
// height H = r z/(r + z), which is less by 0.03 percent at 2,000 m.
//
// Source: U.S. Standard Atmosphere 1976: p = 101325 (1 - 0.0065 H/288.15)^5.255876
// Pa. Check value: 11.341 psi at 7,000 ft (ASHRAE Fundamentals, standard
// atmosphere table).
//
// Cites standard-atmosphere-1976, ashrae, colorado-extension.
func PressureAt(elevation units.Length) (units.Pressure, error) {
	z := elevation.Meters()
	if err := elevationRange.Check("boil.PressureAt", z); err != nil {
		return units.Pressure(math.NaN()), err
	}
	h := earthRadius * z / (earthRadius + z)
	return units.Pascals(seaLevelPressure * math.Pow(1-lapse*h/seaLevelTemperature, atmosphereExponent)), nil
}

// StationPressure returns the station pressure at an elevation from the
// altimeter setting that a nearby airport or weather station reports. The
// elevation is that of the pan, not that of the airport.
//
// An altimeter setting is not the sea-level pressure of a weather map, which is
// reduced with the temperature of the air: see the package comment.
//
// Range: settings of 25 to 32.5 inHg, elevations of -500 to 5,000 m. Uncertainty:
// 0.02 inHg within a few miles (from memory), and half a unit of the last digit
// reported.
//
// Source: the FAA's form, altimeter = (P^0.1903 + 1.313e-5 h)^(1/0.1903) in inHg
// and feet, turned round; it takes the elevation as geopotential height. With
// the unrounded constants of the standard atmosphere the answer differs by less
// than 1 Pa. Check value: 84,977 Pa of 30.2 inHg at 5,045 ft.
//
// Cites faa-altimeter.
func StationPressure(altimeter units.Pressure, elevation units.Length) (units.Pressure, error) {
	const fn = "boil.StationPressure"
	if err := altimeterRange.Check(fn, altimeter.InchesMercury()); err != nil {
		return units.Pressure(math.NaN()), err
	}
	if err := elevationRange.Check(fn, elevation.Meters()); err != nil {
		return units.Pressure(math.NaN()), err
	}
	return altimetry(altimeter, -elevation), nil
}

// AltimeterSetting returns the altimeter setting that belongs to a station
// pressure at an elevation: the inverse of [StationPressure], to compare a
// barometer in the sugarhouse with the airport's report.
//
// Range: station pressures of 12 to 36 inHg, elevations of -500 to 5,000 m; the
// answer may lie outside the settings that [StationPressure] takes if the two do
// not belong together. Check value: 30.2 inHg of 84,977 Pa at 5,045 ft.
func AltimeterSetting(station units.Pressure, elevation units.Length) (units.Pressure, error) {
	const fn = "boil.AltimeterSetting"
	if err := stationRange.Check(fn, station.InchesMercury()); err != nil {
		return units.Pressure(math.NaN()), err
	}
	if err := elevationRange.Check(fn, elevation.Meters()); err != nil {
		return units.Pressure(math.NaN()), err
	}
	return altimetry(station, elevation), nil
}

// altimetry brings a pressure down by h.
func altimetry(p units.Pressure, h units.Length) units.Pressure {
	a := math.Pow(p.InchesMercury(), altimeterExponent) + altimeterPerFoot*h.Feet()
	return units.InchesMercury(math.Pow(a, 1/altimeterExponent))
}

// PressureAtDepth returns the pressure at a depth in a liquid, under a surface
// that bears a pressure: what a probe near the bottom of the pan feels. Two
// inches of syrup add 0.32 F to its boiling point, which is 0.8 Brix; froth
// weighs less than the liquid and adds less.
//
// Where the pressure was found by boiling water with the same probe at the same
// depth, most of that is in it already: the heavier syrup adds a quarter of the
// water's share again.
//
// Range: 20 to 120 kPa at the surface, depths of 0 to 2 m, 900 to 1,500 kg/m3.
//
// Source: hydrostatics, p + d g h, with standard gravity. Check value: 648 Pa more
// under 2 in of 1,300 kg/m3 (computed).
func PressureAtDepth(pressure units.Pressure, depth units.Length, liquid units.Density) (units.Pressure, error) {
	const fn = "boil.PressureAtDepth"
	if err := panPressure.Check(fn, pressure.Kilopascals()); err != nil {
		return units.Pressure(math.NaN()), err
	}
	if err := depthRange.Check(fn, depth.Meters()); err != nil {
		return units.Pressure(math.NaN()), err
	}
	if err := liquidRange.Check(fn, float64(liquid)); err != nil {
		return units.Pressure(math.NaN()), err
	}
	return pressure + units.Pascals(float64(liquid)*units.StandardGravity*depth.Meters()), nil
}
