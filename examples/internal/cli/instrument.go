package cli

import (
	"cmp"
	"strings"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
)

// Stem declares the graduation temperature of a hydrometer.
func (f *Flags) Stem(t *units.Temperature, name, def, of string) {
	f.Quantity(t, name, def, "graduation temperature printed on the "+of+" hydrometer")
	f.checks = append(f.checks, func() error { return Graduation(name, *t) })
}

// Mark says at what a hydrometer is taken to be marked, where nobody tells it: in the same
// syrup a stem marked at 68 F reads 0.3 Brix more than one at 60 F.
func (s *Sheet) Mark(f *Flags, name, of string, at units.Temperature) {
	if f.Source(name).Kind == Assumed {
		s.Brief.Assumed(of + " " + s.Marked(at))
	}
}

// Marked words what is printed on a hydrometer: marked at 60 F, or at 15.6 C.
func (s *Sheet) Marked(at units.Temperature) string {
	return "marked at " + strings.Replace(s.In(Temperature(at)), ".0 ", " ", 1)
}

// Doubt declares how far an instrument may be off, in flags that begin with prefix: its
// step, the thermometer that goes with it, unless that is empty, and its scale.
func (f *Flags) Doubt(d *density.Doubt, prefix, of, division, thermometer, calibration string) {
	const imperfect = "every instrument has one: give what is known of yours"
	f.Quantity(&d.Division, prefix+"division", division, "smallest step that you read on the "+of)
	if thermometer != "" {
		f.Quantity(&d.Thermometer, prefix+"thermometer", thermometer, "how far the thermometer that goes with it may be off, either way")
	}
	f.Quantity(&d.Calibration, prefix+"calibration", calibration, "how far its scale may be off (k = 2)")
	f.checks = append(f.checks, func() error {
		err := cmp.Or(
			Within(prefix+"division", "division", d.Division, 0.01, 5, 1, "Brix", imperfect),
			Within(prefix+"calibration", "uncertainty", d.Calibration, 0.01, 5, 1, "Brix", imperfect))
		if err == nil && thermometer != "" {
			err = Within(prefix+"thermometer", "error", d.Thermometer, units.FahrenheitDegree/100, 10*units.CelsiusDegree, units.FahrenheitDegree, "F deg", imperfect)
		}
		return err
	})
}

// Off is what the instruments of a sugarhouse show too much, as its settings tell.
type Off struct {
	Hydrometer  units.Brix
	Thermometer units.TempDiff
}

// Off returns what the instruments show too much. By is the flag that tells the
// pressure: a thermometer that told it in boiling water is off there as in the syrup,
// which drops out.
func (f *Flags) Off(by string) Off {
	s := f.house.Settings
	o := Off{s.HydrometerOff, s.ThermometerOff}
	if by == ByWaterBoils {
		o.Thermometer = 0
	}
	return o
}

// NoteHydrometer tells what was counted of a hydrometer that is off, in a note or in
// none.
func (o Off) NoteHydrometer() []string {
	if o.Hydrometer == 0 {
		return nil
	}
	return []string{"yours reads " + highOrLow(o.Hydrometer, o.Hydrometer.Text(1)) + ", as the settings say, and that is counted"}
}

// NoteThermometer does the same of a thermometer.
func (o Off) NoteThermometer(s *Sheet) []string {
	if o.Thermometer == 0 {
		return nil
	}
	return []string{"yours shows " + highOrLow(o.Thermometer, s.Difference(o.Thermometer)) + ", as the settings say, and that is counted"}
}

func highOrLow[Q ~float64](q Q, text string) string {
	if q < 0 {
		if text[0] == '-' {
			text = text[1:]
		}
		return text + " low"
	}
	return text + " high"
}

// OnScale shows what a syrup hydrometer must read, at the least: on the scale that the
// settings name, and on the other. A few hundredths above a tenth are forgiven, which no
// eye reads: 59.004 is 59.0, the mark of the trade.
func (f *Flags) OnScale(reads units.Brix) (own, other Value) {
	const unread, unreadBe = 0.03, 0.02 // both near a thirtieth of a Brix in syrup
	own = TenthBrix(reads-unread, Up)
	be, err := density.BaumeFromBrix(reads)
	if err != nil {
		return own, Words("-")
	}
	if other = TenthBaume(be-unreadBe, Up); f.house.Settings.Scale == folder.BaumeScale {
		own, other = other, own
	}
	return own, other
}
