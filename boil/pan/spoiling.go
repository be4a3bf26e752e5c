package pan

import (
	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/units"
)

// Growth is how fast bacteria grow in sap.
type Growth uint8

const (
	GrowthUnknown Growth = iota // no temperature was given
	GrowthSlow                  // below 40 F: days
	GrowthBetween               // 40 to 50 F: boil it soon
	GrowthFast                  // above 50 F: boil it today
)

var growths = enum.Names[Growth]{Type: "pan.Growth",
	Of: []string{GrowthUnknown: "unknown", GrowthSlow: "slow", GrowthBetween: "between slow and fast", GrowthFast: "fast"}}

// String tells the growth in words.
func (g Growth) String() string { return growths.String(g) }

// MarshalText returns what String returns, and an error for what is no growth.
func (g Growth) MarshalText() ([]byte, error) { return growths.Marshal(g) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (g *Growth) UnmarshalText(text []byte) error { return growths.Unmarshal(g, text) }

// Spoiling returns how fast bacteria grow in sap kept so warm: slowly
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
