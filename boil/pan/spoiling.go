package pan

import "example.org/sapreckoner/units"

// Growth is how fast bacteria grow in sap.
type Growth uint8

const (
	GrowthUnknown Growth = iota // no temperature was given
	GrowthSlow                  // below 40 F: days
	GrowthBetween               // 40 to 50 F: boil it soon
	GrowthFast                  // above 50 F: boil it today
)

// String tells the growth in words.
func (g Growth) String() string {
	switch g {
	case GrowthSlow:
		return "slow"
	case GrowthBetween:
		return "between slow and fast"
	case GrowthFast:
		return "fast"
	}
	return "unknown"
}

// Spoiling returns how fast bacteria grow in sap kept at temperature t: slowly
// below 40 F, fast above 50 F. It is a guide and no clock. Concentrate from a
// membrane spoils faster at any temperature. NaN gives GrowthUnknown.
//
// Source: Ohio State University Extension, Handling Sap and Syrup During the
// Season.
func Spoiling(at units.Temperature) Growth {
	switch f := at.Fahrenheit(); {
	case f < 40:
		return GrowthSlow
	case f > 50:
		return GrowthFast
	case f >= 40:
		return GrowthBetween
	}
	return GrowthUnknown
}
