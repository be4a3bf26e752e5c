package folder

import (
	"example.org/sapreckoner/units"
)

// Settings are what stands in the settings file. The zero value is that of a
// folder in which nothing was set.
type Settings struct {
	Name    string
	Gallon  units.Volume // what a bare gallon means; 0 if the file does not say
	Metric  bool
	Tanks   []Tank
	Measure Measure // of the wood column
	Scale   Scale   // of a bare reading of syrup; 0 if the file does not say

	SapHydrometer, SyrupHydrometer units.Temperature // graduation; 38 F and 60 F if not set
	ThermometerOff                 units.TempDiff    // what it shows too much
	HydrometerOff                  units.Brix        // what it reads too much
	Taps                           int               // 0 if not set

	lines []Line
}

// A Tank is a named tank that is read with a stick.
type Tank struct {
	Name   string
	Holds  units.Volume
	ByInch units.Volume // sap in an inch of depth; 0 if it is not told
}

// Measure is the wood that goes to the fire at a time: a barrow, a face cord.
type Measure struct {
	Name string // as the settings call it; empty if they do not
	Wood units.Volume
}

// Scale is the scale of a syrup hydrometer.
type Scale uint8

// Scales.
const (
	NoScale Scale = iota
	BrixScale
	BaumeScale
)

// A Line is one setting as it was written.
type Line struct {
	Name, Value string
	Number      int // of the line in the file; 0 if it was set on the command line
}

// Spell turns a quantity as people write it into one that package units reads:
// a bare gallon becomes the one of the settings, "8 gallons an hour" becomes "8 US gal/h".
func (s *Settings) Spell(text string) string { return text }

func (h *House) readSettings(set []string) []error { return nil }
