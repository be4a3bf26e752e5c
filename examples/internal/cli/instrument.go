package cli

import (
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
)

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

// NoteHydrometer and NoteThermometer tell what was counted, in a note or in none.
func (o Off) NoteHydrometer() []string {
	if o.Hydrometer == 0 {
		return nil
	}
	return []string{"yours reads " + highOrLow(o.Hydrometer, o.Hydrometer.Text(1)) + ", as the settings say, and that is counted"}
}

func (o Off) NoteThermometer(s *Sheet) []string {
	if o.Thermometer == 0 {
		return nil
	}
	return []string{"yours shows " + highOrLow(o.Thermometer, s.degrees(o.Thermometer)) + ", as the settings say, and that is counted"}
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
// settings name, and on the other.
func (f *Flags) OnScale(reads units.Brix) (own, other Value) {
	own = TenthBrix(reads, Up)
	be, err := density.BaumeFromBrix(reads)
	if err != nil {
		return own, Words("-")
	}
	if other = TenthBaume(be, Up); f.house.Settings.Scale == folder.BaumeScale {
		own, other = other, own
	}
	return own, other
}
