package sugar

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// What the functions on color may be asked for.
var (
	seenLight  = limit.Range{Arg: "transmission", What: "light transmission", Low: 0, High: 100, Unit: "%", Above: "glycerol is 100: set the photometer with it"}
	someLight  = limit.Range{Arg: "transmission", What: "light transmission", Low: 0.001, High: 100, Unit: "%", Below: "too dark to reckon with: measure in a shorter cell", Above: "glycerol is 100: set the photometer with it"}
	absorbance = limit.Range{Arg: "Absorbance", What: "absorbance", Low: 0, High: 5, Below: "set the photometer with glycerol", Above: "no light comes through"}
	pathLength = limit.Range{Arg: "measured", What: "path length", Low: 1e-4, High: 1, Unit: "m", Below: "check its unit", Above: "check its unit"}
	fromBrix   = limit.Range{Arg: "from", What: "strength measured at", Low: 1, High: 85, Unit: "Brix", Below: "measure the color of syrup, not of sap", Above: "beyond 85 Brix the liquid sets as candy"}
)

// A ColorClass is a range of light transmission of syrup. The zero value is no
// class.
//
// A color class is not a grade. Grade A asks besides for the flavor of its
// class, for clarity, for density (see [Standard]) and for a clean taste;
// the taste named by [ColorClass.Taste] is what goes with the color as a rule,
// and only tasting tells.
type ColorClass uint8

// The classes, from the lightest. Limits in [ColorClass.Limits].
const (
	Golden ColorClass = iota + 1
	Amber
	Dark
	VeryDark
)

// classes holds name, taste and limits in tenths of a percent: at least min and
// less than below.
var classes = [...]struct {
	name, taste string
	min, below  int
}{
	Golden:   {"Golden", "delicate", 750, 1001},
	Amber:    {"Amber", "rich", 500, 750},
	Dark:     {"Dark", "robust", 250, 500},
	VeryDark: {"Very Dark", "strong", 0, 250},
}

func (c ColorClass) known() bool { return c >= Golden && c <= VeryDark }

var classNames = enum.Names[ColorClass]{Type: "sugar.ColorClass", Zero: true,
	Of: []string{Golden: classes[Golden].name, Amber: classes[Amber].name, Dark: classes[Dark].name, VeryDark: classes[VeryDark].name}}

// String returns the name of the class, such as "Very Dark".
func (c ColorClass) String() string { return classNames.String(c) }

// ColorClasses lists the classes, from the lightest.
func ColorClasses() []ColorClass { return classNames.List() }

// MarshalText returns what String returns, and nothing for none.
func (c ColorClass) MarshalText() ([]byte, error) { return classNames.Marshal(c) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (c *ColorClass) UnmarshalText(text []byte) error { return classNames.Unmarshal(c, text) }

// Taste returns the taste that goes with the class by law: delicate, rich,
// robust, strong; empty for no class.
func (c ColorClass) Taste() string {
	if !c.known() {
		return ""
	}
	return classes[c].taste
}

// Limits returns the light transmission of the class, from min, included, to
// below, excluded; for Golden below is 100.1, so that 100.0 lies in it. For no
// class both are NaN. Source as for [ColorClassOf].
func (c ColorClass) Limits() (min, below units.Share) {
	if !c.known() {
		return units.Share(math.NaN()), units.Share(math.NaN())
	}
	return units.Share(float64(classes[c].min) / 10), units.Share(float64(classes[c].below) / 10)
}

// ColorClassOf returns the class of a light transmission, measured at 560 nm in
// a 10 mm cell with glycerol as 100 percent.
//
// The transmission is rounded to 0.1 first, halves up, and each class holds its
// lower limit and not its upper one: the laws print 74.9 or "less than 75" for
// the same thing. Range: 0 to 100 percent. Uncertainty: that of the photometer,
// a percent or two (common practice); within it of a limit the class is open.
//
// Source: USDA AMS, U.S. Standards for Grades of Maple Syrup, 2015; Canada,
// C.R.C. c. 289, Schedule III; Quebec, O.C. 643-2016; New York, 1 NYCRR 270.1.
// Check value: 75.0 percent is Golden, 74.9 Amber.
//
// Cites usda-2015, canada-grades, quebec-643-2016, new-york-270.
func ColorClassOf(transmission units.Share) (ColorClass, error) {
	if err := seenLight.Check("sugar.ColorClassOf", float64(transmission)); err != nil {
		return 0, err
	}
	tenths := int(math.Round(10 * float64(transmission)))
	for c := Golden; c < VeryDark; c++ {
		if tenths >= classes[c].min {
			return c, nil
		}
	}
	return VeryDark, nil
}

// Absorbance is the decadic absorbance of light, -log10 of the part that is
// transmitted. Absorbances add where transmissions do not.
type Absorbance float64

// AbsorbanceOf returns the absorbance of a light transmission.
//
// Range: 0.001 to 100 percent. Source: the definition (Beer and Lambert). Check
// value: 50 percent is 0.301030 (computed).
func AbsorbanceOf(transmission units.Share) (Absorbance, error) {
	if err := someLight.Check("sugar.AbsorbanceOf", float64(transmission)); err != nil {
		return Absorbance(math.NaN()), err
	}
	return absorb(transmission), nil
}

// Transmission returns the light transmission of the absorbance: the inverse of
// [AbsorbanceOf].
//
// Range: 0 to 5. Check value: 0.301030 is 50 percent (computed).
func (a Absorbance) Transmission() (units.Share, error) {
	if err := absorbance.Check("sugar.Absorbance.Transmission", float64(a)); err != nil {
		return units.Share(math.NaN()), err
	}
	return transmit(a), nil
}

func absorb(t units.Share) Absorbance {
	return Absorbance(max(-math.Log10(t.Fraction()), 0)) // no minus zero
}

func transmit(a Absorbance) units.Share { return units.FractionShare(math.Pow(10, -float64(a))) }

// TransmissionAtPath returns the transmission that a cell of another thickness
// would show: a kit with bottles of 25 mm against the 10 mm of the law.
//
// Range: 0.001 to 100 percent, 0.1 mm to 1 m. Source: Beer and Lambert, T(L) =
// 100 (T10/100)^(L/10 mm). Check value: 50 percent in 10 mm is 25 in 20 mm.
func TransmissionAtPath(transmission units.Share, measured, wanted units.Length) (units.Share, error) {
	const fn = "sugar.TransmissionAtPath"
	err := someLight.Check(fn, float64(transmission))
	if err == nil {
		err = pathLength.Check(fn, float64(measured))
	}
	if err == nil {
		err = pathLength.CheckAs(fn, "wanted", float64(wanted))
	}
	if err != nil {
		return units.Share(math.NaN()), err
	}
	return transmit(absorb(transmission) * Absorbance(wanted/measured)), nil
}

// TransmissionAtBrix returns the transmission of the same syrup brought to
// another strength: thinned it is lighter, boiled down darker, since the
// coloring matter keeps with the sugar. Boiling down over fire also makes new
// color, which this leaves out.
//
// Arguments: the transmission measured at the strength from; the strength to.
// Range: 0.001 to 100 percent, from 1 to 85 Brix, to 0 to 85.
//
// Method: Beer and Lambert with the concentration of the sugar at 20 C, A2 =
// A1 rho2 B2/(rho1 B1). Check value: 50.0 percent at 68.9 Brix is 51.3 at 66.9
// (computed).
func TransmissionAtBrix(transmission units.Share, from, to units.Brix) (units.Share, error) {
	const fn = "sugar.TransmissionAtBrix"
	err := someLight.Check(fn, float64(transmission))
	if err == nil {
		err = fromBrix.Check(fn, float64(from))
	}
	if err == nil {
		err = checkBrix(fn, "to", "strength wanted", to)
	}
	if err != nil {
		return units.Share(math.NaN()), err
	}
	rho1, _ := density.Solution(from, units.Celsius(20)) // in range, as just checked
	rho2, _ := density.Solution(to, units.Celsius(20))
	ratio := float64(rho2) * to.Fraction() / (float64(rho1) * from.Fraction())
	return transmit(absorb(transmission) * Absorbance(ratio)), nil
}

// Tinted is a volume of syrup and its light transmission.
type Tinted struct {
	Volume       units.Volume
	Transmission units.Share
}

// BlendTransmission returns the light transmission of the syrups poured
// together: the absorbances are averaged by volume. The mean of the
// transmissions is always too light.
//
// Range: 0.001 to 100 percent, volumes of 0 to 1e6 m3 each; a volume of 0 is
// passed over. Contraction on mixing is left out, below 0.01 of the volume.
// Outside the range the answer is NaN and a [*units.RangeError]; nothing to
// blend is an [*InfeasibleError].
//
// Source: Beer and Lambert. Check value: equal volumes of 80 and 40 percent
// give 56.569, not 60 (computed).
func BlendTransmission(syrups ...Tinted) (units.Share, error) {
	const fn = "sugar.BlendTransmission"
	var sum, volume float64
	for _, s := range syrups {
		if err := lotVolume.CheckAs(fn, "Tinted.Volume", float64(s.Volume)); err != nil {
			return units.Share(math.NaN()), err
		}
		if s.Volume == 0 {
			continue
		}
		if err := someLight.CheckAs(fn, "Tinted.Transmission", float64(s.Transmission)); err != nil {
			return units.Share(math.NaN()), err
		}
		sum += float64(s.Volume) * float64(absorb(s.Transmission))
		volume += float64(s.Volume)
	}
	if volume == 0 {
		return units.Share(math.NaN()), &InfeasibleError{Func: fn, Why: "there is nothing to blend", Hint: "give at least one volume above 0"}
	}
	return transmit(Absorbance(sum / volume)), nil
}

// LightShare returns the share of a light syrup, by volume of the blend, that
// lifts a dark one to the target: to the lower limit of a class (see
// [ColorClass.Limits]), and better a percent above it, for the photometer's
// sake.
//
// Range: 0.001 to 100 percent. A target that does not lie between the two is an
// [*InfeasibleError]. Blending mends the color and blends the flavor, off
// flavors too: look into each drum, then smell it, before they are poured
// together. Any mold: throw it away, do not taste or blend it.
//
// Source: Beer and Lambert, (A_dark - A_target)/(A_dark - A_light). Check value:
// 46 lifted to 50.5 with 82 takes a share of 0.16145 (computed).
func LightShare(dark, light, target units.Share) (units.Share, error) {
	const fn = "sugar.LightShare"
	none := units.Share(math.NaN())
	for _, t := range [...]struct {
		arg   string
		value units.Share
	}{{"dark", dark}, {"light", light}, {"target", target}} {
		if err := someLight.CheckAs(fn, t.arg, float64(t.value)); err != nil {
			return none, err
		}
	}
	switch {
	case !(light > dark):
		return none, &InfeasibleError{Func: fn, Why: "the light syrup is no lighter than the dark one", Hint: "exchange the two, or find a lighter one"}
	case target < dark:
		return none, &InfeasibleError{Func: fn, Why: "the target is darker than the dark syrup", Hint: "it needs no lifting"}
	case target > light:
		return none, &InfeasibleError{Func: fn, Why: "the target is lighter than the light syrup", Hint: "find a lighter syrup, or aim at a darker class"}
	}
	a := absorb(dark)
	return units.FractionShare(float64((a - absorb(target)) / (a - absorb(light)))), nil
}
