package density

import (
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// A Doubt states what is known about a reading on a Brix scale. A field left at
// zero is refused, except Thermometer for a compensated refractometer: no
// instrument is perfect.
//
// Cites gum, gum-s1.
type Doubt struct {
	// Division is the smallest step that is read: the distance of two marks, or
	// half of it for a reader who halves it by eye. The truth lies anywhere in
	// that step.
	Division units.Brix
	// Thermometer is the limit of its error, plus or minus, with that of the
	// liquid not being equally warm. Any value within is as likely.
	Thermometer units.TempDiff
	// Calibration is the expanded uncertainty (k = 2) of the scale itself, from
	// a certificate or from a check in a known syrup. For a refractometer that
	// compensates, that of the compensation is in it.
	Calibration units.Brix
}

// A FlaskDoubt states what is known about a weighing of a [Flask].
type FlaskDoubt struct {
	Division    units.Mass     // smallest step of the scale
	Calibration units.Mass     // expanded uncertainty (k = 2) of the net weight
	Volume      units.Volume   // expanded uncertainty (k = 2) of the volume, filling included
	Thermometer units.TempDiff // limit of error, plus or minus
}

// onScale returns the parts that go with the marks, s Brix of strength for one
// of the scale.
func (d Doubt) onScale(s float64) Parts {
	return Parts{
		Division:    part(s, rectangular(float64(d.Division)/2)),
		Calibration: part(s, float64(d.Calibration)/Coverage),
	}
}

// Largest doubts that are still a measurement.
const (
	maxDoubt       units.Brix     = 5
	maxThermometer units.TempDiff = 10
	maxShare                      = 0.1
)

func (d Doubt) check(fn string, thermometer bool) error {
	if err := checkDoubt(fn, "Doubt.Division", "division doubt", float64(d.Division), float64(maxDoubt), "Brix"); err != nil {
		return err
	}
	if err := checkDoubt(fn, "Doubt.Calibration", "calibration doubt", float64(d.Calibration), float64(maxDoubt), "Brix"); err != nil {
		return err
	}
	if !thermometer {
		return nil
	}
	return checkDoubt(fn, "Doubt.Thermometer", "thermometer doubt", float64(d.Thermometer), float64(maxThermometer), "C deg")
}

func (d FlaskDoubt) check(fn string, net units.Mass, v units.Volume) error {
	if err := checkDoubt(fn, "FlaskDoubt.Division", "division doubt", d.Division.Grams(), maxShare*net.Grams(), "g"); err != nil {
		return err
	}
	if err := checkDoubt(fn, "FlaskDoubt.Calibration", "calibration doubt", d.Calibration.Grams(), maxShare*net.Grams(), "g"); err != nil {
		return err
	}
	if err := checkDoubt(fn, "FlaskDoubt.Volume", "volume doubt", d.Volume.Milliliters(), maxShare*v.Milliliters(), "mL"); err != nil {
		return err
	}
	return checkDoubt(fn, "FlaskDoubt.Thermometer", "thermometer doubt", float64(d.Thermometer), float64(maxThermometer), "C deg")
}

func checkDoubt(fn, arg, what string, v, high float64, unit string) error {
	if v > 0 && limit.Holds(v, 0, high) {
		return nil
	}
	return &units.RangeError{Func: fn, Arg: arg, What: what, Value: v, Low: 0, High: high, Unit: unit,
		Hint: "say how far off it may be: no instrument is perfect, and zero stands for not stated"}
}
