package units

import "time"

// Volume is a volume, in cubic meters. Volumes of sugar solutions shrink and
// swell with temperature and contract on mixing: add masses, not volumes.
type Volume float64

// Units of volume. The US gallon is 231 cubic inches; the imperial gallon is
// 4.54609 L (NIST SP 811, App. B; NIST Handbook 44, App. C). There is no bare
// gallon: the two differ by 20 percent.
const (
	CubicMeter Volume = 1
	Liter      Volume = 1e-3
	Milliliter Volume = 1e-6

	USGallon     Volume = usGallon
	USQuart      Volume = usGallon / 4
	USPint       Volume = usGallon / 8
	USCup        Volume = usGallon / 16
	USFluidOunce Volume = usGallon / 128
	USTablespoon Volume = usGallon / 256
	USTeaspoon   Volume = usGallon / 768

	ImperialGallon     Volume = imperialGallon
	ImperialQuart      Volume = imperialGallon / 4
	ImperialPint       Volume = imperialGallon / 8
	ImperialFluidOunce Volume = imperialGallon / 160

	CubicInch Volume = inch * inch * inch
	CubicFoot Volume = foot * foot * foot

	// Cord is 128 cubic feet of stacked wood, 4 ft by 4 ft by 8 ft.
	Cord Volume = 128 * foot * foot * foot
	// FaceCord16 is a face of stacked wood 4 ft by 8 ft, 16 in deep: a custom
	// and not a legal measure, a third of a cord.
	FaceCord16 Volume = 4 * foot * 8 * foot * 16 * inch
	// Barrel31 is the liquid barrel of 31.5 US gallons. Barrels vary by law.
	Barrel31 Volume = 31.5 * usGallon

	usGallon       = 231 * inch * inch * inch
	imperialGallon = 4.54609e-3
)

// CubicMeters returns a volume of n cubic meters.
func CubicMeters(n float64) Volume { return Volume(n) }

// Liters returns a volume of n liters.
func Liters(n float64) Volume { return Volume(n) * Liter }

// Milliliters returns a volume of n milliliters.
func Milliliters(n float64) Volume { return Volume(n) * Milliliter }

// USGallons returns a volume of n US gallons.
func USGallons(n float64) Volume { return Volume(n) * USGallon }

// USQuarts returns a volume of n US liquid quarts.
func USQuarts(n float64) Volume { return Volume(n) * USQuart }

// USPints returns a volume of n US liquid pints.
func USPints(n float64) Volume { return Volume(n) * USPint }

// USCups returns a volume of n US cups.
func USCups(n float64) Volume { return Volume(n) * USCup }

// USFluidOunces returns a volume of n US fluid ounces.
func USFluidOunces(n float64) Volume { return Volume(n) * USFluidOunce }

// ImperialGallons returns a volume of n imperial gallons.
func ImperialGallons(n float64) Volume { return Volume(n) * ImperialGallon }

// ImperialQuarts returns a volume of n imperial quarts.
func ImperialQuarts(n float64) Volume { return Volume(n) * ImperialQuart }

// ImperialPints returns a volume of n imperial pints.
func ImperialPints(n float64) Volume { return Volume(n) * ImperialPint }

// ImperialFluidOunces returns a volume of n imperial fluid ounces.
func ImperialFluidOunces(n float64) Volume { return Volume(n) * ImperialFluidOunce }

// CubicInches returns a volume of n cubic inches.
func CubicInches(n float64) Volume { return Volume(n) * CubicInch }

// CubicFeet returns a volume of n cubic feet.
func CubicFeet(n float64) Volume { return Volume(n) * CubicFoot }

// Cords returns a volume of n full cords.
func Cords(n float64) Volume { return Volume(n) * Cord }

// CubicMeters returns the volume in cubic meters.
func (v Volume) CubicMeters() float64 { return float64(v) }

// Liters returns the volume in liters.
func (v Volume) Liters() float64 { return float64(v / Liter) }

// Milliliters returns the volume in milliliters.
func (v Volume) Milliliters() float64 { return float64(v / Milliliter) }

// USGallons returns the volume in US gallons.
func (v Volume) USGallons() float64 { return float64(v / USGallon) }

// USQuarts returns the volume in US liquid quarts.
func (v Volume) USQuarts() float64 { return float64(v / USQuart) }

// USPints returns the volume in US liquid pints.
func (v Volume) USPints() float64 { return float64(v / USPint) }

// USCups returns the volume in US cups.
func (v Volume) USCups() float64 { return float64(v / USCup) }

// USFluidOunces returns the volume in US fluid ounces.
func (v Volume) USFluidOunces() float64 { return float64(v / USFluidOunce) }

// ImperialGallons returns the volume in imperial gallons.
func (v Volume) ImperialGallons() float64 { return float64(v / ImperialGallon) }

// ImperialQuarts returns the volume in imperial quarts.
func (v Volume) ImperialQuarts() float64 { return float64(v / ImperialQuart) }

// ImperialPints returns the volume in imperial pints.
func (v Volume) ImperialPints() float64 { return float64(v / ImperialPint) }

// ImperialFluidOunces returns the volume in imperial fluid ounces.
func (v Volume) ImperialFluidOunces() float64 { return float64(v / ImperialFluidOunce) }

// CubicInches returns the volume in cubic inches.
func (v Volume) CubicInches() float64 { return float64(v / CubicInch) }

// CubicFeet returns the volume in cubic feet.
func (v Volume) CubicFeet() float64 { return float64(v / CubicFoot) }

// Cords returns the volume in full cords.
func (v Volume) Cords() float64 { return float64(v / Cord) }

// In returns the volume in any unit: v.In(Barrel31).
func (v Volume) In(unit Volume) float64 { return float64(v / unit) }

// Per returns the flow that moves the volume in time t.
func (v Volume) Per(t time.Duration) VolumeRate { return VolumeRate(float64(v) / t.Seconds()) }

// Depth returns how deep the volume stands over a flat area.
func (v Volume) Depth(a Area) Length { return Length(float64(v) / float64(a)) }

var volumes = table{parse: "units.ParseVolume", display: 1, units: []unit{
	{float64(CubicMeter), "m3", []string{"m^3"}},
	{float64(Liter), "L", []string{"l", "liter", "liters", "litre", "litres"}},
	{float64(Milliliter), "mL", []string{"ml"}},
	{float64(USGallon), "US gal", []string{"US gallon", "US gallons"}},
	{float64(USQuart), "US qt", []string{"US quart", "US quarts"}},
	{float64(USPint), "US pt", []string{"US pint", "US pints"}},
	{float64(USCup), "US cup", []string{"US cups"}},
	{float64(USFluidOunce), "US fl oz", nil},
	{float64(USTablespoon), "US tbsp", nil},
	{float64(USTeaspoon), "US tsp", nil},
	{float64(ImperialGallon), "imp gal", []string{"imperial gallon", "imperial gallons"}},
	{float64(ImperialQuart), "imp qt", []string{"imperial quart", "imperial quarts"}},
	{float64(ImperialPint), "imp pt", []string{"imperial pint", "imperial pints"}},
	{float64(ImperialFluidOunce), "imp fl oz", nil},
	{float64(CubicInch), "in3", []string{"cu in", "in^3"}},
	{float64(CubicFoot), "ft3", []string{"cu ft", "ft^3"}},
	{float64(Cord), "cord", []string{"cords", "full cord", "full cords"}},
	{float64(FaceCord16), "face cord 16 in", nil},
	{float64(Barrel31), "bbl 31.5 US gal", nil},
}, refused: map[string]string{
	"gal":          `"US gal" or "imp gal"`,
	"gals":         `"US gal" or "imp gal"`,
	"gallon":       `"US gal" or "imp gal"`,
	"gallons":      `"US gal" or "imp gal"`,
	"qt":           `"US qt" or "imp qt"`,
	"quart":        `"US qt" or "imp qt"`,
	"quarts":       `"US qt" or "imp qt"`,
	"pt":           `"US pt" or "imp pt"`,
	"pint":         `"US pt" or "imp pt"`,
	"pints":        `"US pt" or "imp pt"`,
	"fl oz":        `"US fl oz" or "imp fl oz"`,
	"fluid ounce":  `"US fl oz" or "imp fl oz"`,
	"fluid ounces": `"US fl oz" or "imp fl oz"`,
	"oz":           `a volume as "US fl oz" or "imp fl oz"; oz is a mass`,
	"cup":          `"US cup"`,
	"cups":         `"US cup"`,
	"tbsp":         `"US tbsp"`,
	"tsp":          `"US tsp"`,
	"face cord":    `its depth: "face cord 16 in"`,
	"bbl":          `"bbl 31.5 US gal", or the volume in gallons`,
}}

// ParseVolume reads a volume such as "60 US gal" or "2.5 L". The unit is mandatory.
func ParseVolume(s string) (Volume, error) { return parse[Volume](s, &volumes) }

// String prints the volume in L with 12 significant digits.
func (v Volume) String() string { return str(v, &volumes) }

// Text prints the volume in the given unit with the given number of decimals.
// A unit that has no symbol here prints in m3.
func (v Volume) Text(unit Volume, decimals int) string {
	return text(v, unit, decimals, &volumes)
}

// TextIn prints it to so many significant digits in the units that a person reads in a system.
func (v Volume) TextIn(in System, digits int) string {
	return telling(in, volumePairs, digits).one(float64(v))
}

// MarshalText prints the volume in m3 without loss. NaN and infinity are errors.
func (v Volume) MarshalText() ([]byte, error) { return marshal(v, &volumes) }

// UnmarshalText reads what [ParseVolume] reads.
func (v *Volume) UnmarshalText(text []byte) error { return unmarshal(v, text, &volumes) }

// MarshalJSON prints the text of MarshalText in quotes, and null for NaN.
func (v Volume) MarshalJSON() ([]byte, error) { return marshalJSON(v, &volumes) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN: not known.
func (v *Volume) UnmarshalJSON(text []byte) error { return unmarshalJSON(v, text, &volumes) }
