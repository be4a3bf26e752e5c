package season

import (
	"math"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// DegreeDays is warmth summed over days, in Celsius degrees times days. Sums
// over a base of 50 F are printed in Fahrenheit degree-days: see
// [DegreeDays.Fahrenheit].
type DegreeDays float64

// Celsius returns Celsius degree-days.
func (d DegreeDays) Celsius() float64 { return float64(d) }

// Fahrenheit returns Fahrenheit degree-days, 1.8 times as many.
func (d DegreeDays) Fahrenheit() float64 { return units.TempDiff(d).FahrenheitDegrees() }

// FahrenheitDegreeDays returns n Fahrenheit degree-days.
func FahrenheitDegreeDays(n float64) DegreeDays { return DegreeDays(units.FahrenheitDegrees(n)) }

// GrowingDegreeDays returns what a day adds to the sum of growing degree-days
// by the daily mean. In spring, when the mean stays below the base, other
// methods sum far more of the same weather: see [DegreeDayRule].
//
// It takes any day and any base, and adds nothing where a temperature is NaN.
//
// Formula: max(0, (Tmax + Tmin)/2 - base), Ohio State University Extension.
// Check value: 40 and 64 F over a base of 50 F add 2 Fahrenheit degree-days.
//
// Cites baskerville-emin-1969, allen-1976.
func GrowingDegreeDays(d Day, base units.Temperature) DegreeDays {
	mean := d.Min.Add(d.Max.Sub(d.Min) / 2)
	if warm := mean.Sub(base); warm > 0 {
		return DegreeDays(warm)
	}
	return 0
}

// DegreeDayMethod is how a day's low and high become its warmth over a base. A
// number of degree-days means something by its own method alone.
type DegreeDayMethod uint8

// The methods.
const (
	DailyMean    DegreeDayMethod = iota // of the low and the high, as [GrowingDegreeDays]
	SingleSine                          // a sine wave through the low and the high of the day
	ModifiedSine                        // two half waves: the second falls to the low of the next day
)

var degreeDayMethodNames = enum.Names[DegreeDayMethod]{Type: "season.DegreeDayMethod", Of: []string{"daily mean", "single sine wave", "modified sine wave"}}

// String returns the name of the method.
func (m DegreeDayMethod) String() string { return degreeDayMethodNames.String(m) }

// DegreeDayMethods lists the methods.
func DegreeDayMethods() []DegreeDayMethod { return degreeDayMethodNames.List() }

// MarshalText returns the name of the method.
func (m DegreeDayMethod) MarshalText() ([]byte, error) { return degreeDayMethodNames.Marshal(m) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (m *DegreeDayMethod) UnmarshalText(text []byte) error {
	return degreeDayMethodNames.Unmarshal(m, text)
}

// DegreeDayRule is a method with its base and its upper limit: what a calendar
// of degree-days must tell. Make it with [NewDegreeDayRule]; [BloomRule] is
// that of the bloom of maples. The zero rule is the daily mean over 0 C up to
// 0 C, and sums nothing.
type DegreeDayRule struct {
	method      DegreeDayMethod
	base, upper float64 // C
}

// NewDegreeDayRule returns the rule of a method, a base, and an upper limit
// above which more heat counts no further; +Inf where there is none.
//
// Range: base -95 to 60 C; upper base to +Inf.
func NewDegreeDayRule(m DegreeDayMethod, base, upper units.Temperature) (DegreeDayRule, error) {
	const fn = "season.NewDegreeDayRule"
	if err := limit.Count(fn, "method", int(m), 0, int(ModifiedSine), "choose one that is listed"); err != nil {
		return DegreeDayRule{}, err
	}
	if err := limit.Within(fn, "base", base.Celsius(), minAir, maxAir, 1, "C", "50 F is usual for buds"); err != nil {
		return DegreeDayRule{}, err
	}
	if err := limit.Within(fn, "upper", upper.Celsius(), base.Celsius(), math.Inf(1), 1, "C", "no colder than the base; +Inf for none"); err != nil {
		return DegreeDayRule{}, err
	}
	return DegreeDayRule{m, base.Celsius(), upper.Celsius()}, nil
}

// Method returns the method.
func (r DegreeDayRule) Method() DegreeDayMethod { return r.method }

// Base returns the temperature above which warmth counts.
func (r DegreeDayRule) Base() units.Temperature { return units.Celsius(r.base) }

// Upper returns the temperature above which more heat counts no further.
func (r DegreeDayRule) Upper() units.Temperature { return units.Celsius(r.upper) }

// Day returns the warmth of one day by itself, for [ModifiedSine] as if the next
// night were as cold as this one; [DegreeDayRule.Days] knows better. It adds
// nothing where a temperature is NaN.
//
// Formulas, T the mean and W half the range of the day, b the base: the daily
// mean T - b; the sine wave ((T-b)(pi/2-q) + W cos q)/pi with q = asin((b-T)/W)
// where b lies between low and high (Baskerville and Emin 1969). The same
// formula over the upper limit is taken off; the mean takes temperatures no
// higher than that. Check value: 60 and 40 F over 50 F make 3.183 Fahrenheit
// degree-days by the sine, none by the mean.
func (r DegreeDayRule) Day(d Day) DegreeDays {
	low, high := d.Min.Celsius(), d.Max.Celsius()
	return r.of(low, high, low)
}

// Days returns the warmth of every day of the weather. The modified sine wave
// falls to the low of the next day; where that is missing, to its own (Allen
// 1976).
func (r DegreeDayRule) Days(w Weather) []DegreeDays {
	out := make([]DegreeDays, len(w.days))
	for i, d := range w.days {
		next := d.Min
		if i+1 < len(w.days) && dayNumber(w.days[i+1].Date) == dayNumber(d.Date)+1 {
			next = w.days[i+1].Min
		}
		out[i] = r.of(d.Min.Celsius(), d.Max.Celsius(), next.Celsius())
	}
	return out
}

func (r DegreeDayRule) of(low, high, next float64) DegreeDays {
	warm := 0.0
	switch r.method {
	case DailyMean:
		warm = (min(low, r.upper)+min(high, r.upper))/2 - r.base
	case SingleSine:
		warm = r.wave(low, high)
	case ModifiedSine:
		// A night warmer than the day before it has no wave to fall to.
		warm = (r.wave(low, high) + r.wave(min(next, high), high)) / 2
	}
	if warm > 0 {
		return DegreeDays(warm)
	}
	return 0
}

// wave is the warmth of a sine wave between the base and the upper limit.
func (r DegreeDayRule) wave(low, high float64) float64 {
	return waveOver(low, high, r.base) - waveOver(low, high, r.upper)
}

func waveOver(low, high, base float64) float64 {
	mean, half := (low+high)/2, (high-low)/2
	switch {
	case high <= base:
		return 0
	case low >= base:
		return mean - base
	}
	q := math.Asin((base - mean) / half)
	return ((mean-base)*(math.Pi/2-q) + half*math.Cos(q)) / math.Pi
}

// bloomRule is that of the calendar that SilverMapleBloom is from.
var bloomRule = DegreeDayRule{ModifiedSine, units.Fahrenheit(50).Celsius(), units.Fahrenheit(86).Celsius()}

// BloomRule returns how the calendar of [SilverMapleBloom] sums warmth from 1
// January: the modified sine wave over 50 F up to 86 F.
//
// Source: Ohio State University Phenology Calendar; that it uses the sine wave
// was read only second-hand.
//
// Cites ohio-phenology.
func BloomRule() DegreeDayRule { return bloomRule }

// SilverMapleBloom returns the degree-days by [BloomRule] since 1 January at
// which silver maple, among the first of the maples, opens its first flowers
// and stands in full bloom: 34 and 42 Fahrenheit degree-days (Ohio State
// University Phenology Calendar). Sap of a tree in bud gives syrup of an off
// flavor. No source ties that flavor to a number: take it as a warning and no
// date. The daily mean gives far fewer for the same weather.
func SilverMapleBloom() (first, full DegreeDays) {
	return FahrenheitDegreeDays(34), FahrenheitDegreeDays(42)
}
