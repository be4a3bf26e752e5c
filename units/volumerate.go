package units

import "time"

// VolumeRate is a volume flow, in cubic meters per second: an evaporation rate,
// a permeate flow, a sap run.
type VolumeRate float64

// Units of volume flow.
const (
	CubicMeterPerSecond   VolumeRate = 1
	LiterPerMinute        VolumeRate = 1e-3 / 60
	LiterPerHour          VolumeRate = 1e-3 / 3600
	USGallonPerHour       VolumeRate = usGallon / 3600
	USGallonPerMinute     VolumeRate = usGallon / 60
	USGallonPerDay        VolumeRate = usGallon / 86400
	ImperialGallonPerHour VolumeRate = imperialGallon / 3600
)

// CubicMetersPerSecond returns a volume flow of n cubic meters per second.
func CubicMetersPerSecond(n float64) VolumeRate { return VolumeRate(n) }

// LitersPerHour returns a volume flow of n liters per hour.
func LitersPerHour(n float64) VolumeRate { return VolumeRate(n) * LiterPerHour }

// USGallonsPerHour returns a volume flow of n US gallons per hour.
func USGallonsPerHour(n float64) VolumeRate { return VolumeRate(n) * USGallonPerHour }

// USGallonsPerDay returns a volume flow of n US gallons per day.
func USGallonsPerDay(n float64) VolumeRate { return VolumeRate(n) * USGallonPerDay }

// ImperialGallonsPerHour returns a volume flow of n imperial gallons per hour.
func ImperialGallonsPerHour(n float64) VolumeRate { return VolumeRate(n) * ImperialGallonPerHour }

// CubicMetersPerSecond returns the volume flow in cubic meters per second.
func (q VolumeRate) CubicMetersPerSecond() float64 { return float64(q) }

// LitersPerHour returns the volume flow in liters per hour.
func (q VolumeRate) LitersPerHour() float64 { return float64(q / LiterPerHour) }

// USGallonsPerHour returns the volume flow in US gallons per hour.
func (q VolumeRate) USGallonsPerHour() float64 { return float64(q / USGallonPerHour) }

// USGallonsPerDay returns the volume flow in US gallons per day.
func (q VolumeRate) USGallonsPerDay() float64 { return float64(q / USGallonPerDay) }

// ImperialGallonsPerHour returns the volume flow in imperial gallons per hour.
func (q VolumeRate) ImperialGallonsPerHour() float64 { return float64(q / ImperialGallonPerHour) }

// In returns the volume flow in any unit: q.In(ImperialGallonPerHour).
func (q VolumeRate) In(unit VolumeRate) float64 { return float64(q / unit) }

// Over returns the volume that flows in time t.
func (q VolumeRate) Over(t time.Duration) Volume { return Volume(float64(q) * t.Seconds()) }

// Time returns how long the flow takes to move v.
func (q VolumeRate) Time(v Volume) time.Duration { return seconds(float64(v) / float64(q)) }

var volumeRates = table{parse: "units.ParseVolumeRate", display: 2, units: []unit{
	{float64(CubicMeterPerSecond), "m3/s", nil},
	{float64(LiterPerMinute), "L/min", nil},
	{float64(LiterPerHour), "L/h", []string{"L/hr"}},
	{float64(USGallonPerHour), "US gal/h", []string{"US gal/hr", "US gph"}},
	{float64(USGallonPerMinute), "US gal/min", []string{"US gpm"}},
	{float64(USGallonPerDay), "US gal/day", nil},
	{float64(ImperialGallonPerHour), "imp gal/h", []string{"imp gal/hr"}},
}, refused: map[string]string{
	"gal/h":   `"US gal/h" or "imp gal/h"`,
	"gal/hr":  `"US gal/h" or "imp gal/h"`,
	"gph":     `"US gal/h" or "imp gal/h"`,
	"gal/min": `"US gal/min"`,
	"gpm":     `"US gal/min"`,
}}

// ParseVolumeRate reads a volume flow such as "25 US gal/h". The unit is mandatory.
func ParseVolumeRate(s string) (VolumeRate, error) { return parse[VolumeRate](s, &volumeRates) }

// String prints the volume flow in L/h with 12 significant digits.
func (q VolumeRate) String() string { return str(q, &volumeRates) }

// Text prints the volume flow in the given unit with the given number of decimals.
// A unit that has no symbol here prints in m3/s.
func (q VolumeRate) Text(unit VolumeRate, decimals int) string {
	return text(q, unit, decimals, &volumeRates)
}

// TextIn prints it to so many significant digits in the units that a person reads in a system.
func (q VolumeRate) TextIn(in System, digits int) string {
	return telling(in, flowPairs, digits).one(float64(q))
}

// MarshalText prints the volume flow in m3/s without loss. NaN and infinity are errors.
func (q VolumeRate) MarshalText() ([]byte, error) { return marshal(q, &volumeRates) }

// UnmarshalText reads what [ParseVolumeRate] reads.
func (q *VolumeRate) UnmarshalText(text []byte) error { return unmarshal(q, text, &volumeRates) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (q VolumeRate) MarshalJSON() ([]byte, error) { return marshalJSON(q, &volumeRates) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (q *VolumeRate) UnmarshalJSON(text []byte) error { return unmarshalJSON(q, text, &volumeRates) }
